"""Command lines that explain themselves in the maker's language."""

from __future__ import annotations

import argparse
from functools import partial
from pathlib import Path
from typing import Any, NoReturn

from ledgerstone.message import Message
from ledgerstone.wording import Speech


class CommandParser(argparse.ArgumentParser):
    """Reads one command's arguments; its help is said in one language.

    Parameters
    ----------
    speech
        The language.
    command
        Its name in the catalogues.
    """

    def __init__(self, speech: Speech, command: str, **more: Any) -> None:
        does = speech.say(Message("cli-does", command=command))
        super().__init__(description=does, add_help=False, **more)
        self._speech = speech
        self._positionals.title = self._part("positional")
        self._optionals.title = self._part("optional")
        self.add_argument("-h", "--help", action="help", help=self.about("help"))

    def about(self, argument: str) -> str:
        """Return what an argument is for."""
        return self._speech.say(Message("cli-argument", argument=argument)).replace("%", "%%")

    def add_path(self, *names: str, about: str, **more: Any) -> None:
        """Add an argument that is a file's path."""
        self.add_argument(*names, type=Path, help=self.about(about), **more)

    def add_commands(self, metavar: str) -> Any:  # noqa: ANN401  argparse's own is private
        """Return what commands are added to, each by ``add_command``."""
        made: Any = partial(type(self), self._speech)
        return self.add_subparsers(
            dest="command", required=True, metavar=metavar, title=self._part("commands"),
            parser_class=made,
        )  # fmt: skip

    def add_command(self, commands: Any, name: str) -> CommandParser:  # noqa: ANN401  as above
        """Add a command."""
        does = self._speech.say(Message("cli-does", command=name))
        added: CommandParser = commands.add_parser(name, command=name, help=does)
        return added

    def format_usage(self) -> str:
        """Return the usage, in the language."""
        return super().format_usage().replace("usage: ", self._part("usage"), 1)

    def format_help(self) -> str:
        """Return the help, in the language."""
        return super().format_help().replace("usage: ", self._part("usage"), 1)

    def error(self, message: str) -> NoReturn:  # noqa: ARG002  it is in English
        """Print the usage and leave with status 2."""
        self.exit(2, f"{self.format_usage()}{self._part('wrong')}\n")

    def _part(self, part: str) -> str:
        text = self._speech.say(Message("cli-part", part=part))
        return f"{text} " if part == "usage" else text
