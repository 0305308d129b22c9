"""The templates of letters and sheets: ours, and the maker's own in their place, in a sandbox.

A template may show what it is given, choose and repeat. It can build nothing that grows: no
assignments, macros, imports or ranges, loops over what it is given alone and three deep at most,
and a short list of filters. So none runs for long, whoever wrote it.
"""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterator, Mapping
from pathlib import Path
from types import MappingProxyType
from typing import Any, Final

from jinja2 import DictLoader, StrictUndefined, TemplateSyntaxError, nodes
from jinja2.sandbox import ImmutableSandboxedEnvironment
from markupsafe import Markup

from ledgerstone.errors import ProfileError, ProfileFault, TemplateFault
from ledgerstone.message import Message

TEMPLATE_NAMES: Final = (
    "reply.txt", "reply.html", "answer.html", "sheet.html", "cards.html", "job_sheet.html",
)  # fmt: skip
TEMPLATES_FOLDER: Final = "templates"  # beside the profile
LARGEST_TEMPLATE: Final = 100_000
DEEPEST_LOOP: Final = 3
_NUMBER_AND_UNIT: Final = re.compile(r"(?<=\d) (?=(?:mm|cm|m|m²|in|ft|kg|lb|l|%|£|€|°C|°F)(?!\w))")
_HELD: Final = "\x1f"  # what no sentence holds, and no fold breaks at
_TEXTS: Final = Path(__file__).with_name("texts")
_FILTERS: Final = (
    "capitalize", "default", "e", "escape", "first", "join", "last", "length", "lower", "title",
    "trim", "upper", "urlencode",
)  # fmt: skip
_ALLOWED: Final = (
    nodes.Template, nodes.Output, nodes.TemplateData, nodes.Name, nodes.Getattr, nodes.Getitem,
    nodes.If, nodes.For, nodes.Filter, nodes.Test, nodes.Compare, nodes.Operand, nodes.And,
    nodes.Or, nodes.Not, nodes.CondExpr, nodes.Const, nodes.Concat, nodes.Tuple, nodes.Keyword,
)  # fmt: skip


class Templates:
    """The templates of one workshop.

    Parameters
    ----------
    sources
        The text of each, by its name.
    """

    def __init__(self, sources: Mapping[str, str]) -> None:
        self._environment = _environment(sources)

    def fill(self, name: str, content: Mapping[str, Any]) -> str:
        """Fill one template in.

        Raises
        ------
        TemplateFault
            It uses a variable that does not exist.
        """
        try:
            return self._environment.get_template(name).render(**content)
        except Exception as reason:  # a maker's template can raise anything
            raise TemplateFault(name, f"{reason}.") from reason


def _environment(sources: Mapping[str, str]) -> ImmutableSandboxedEnvironment:
    environment = ImmutableSandboxedEnvironment(
        loader=DictLoader(dict(sources)),
        autoescape=lambda name: name is not None and name.endswith(".html"),
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    filters = {name: environment.filters[name] for name in _FILTERS}
    environment.filters = {**filters, "folded": folded}
    environment.globals = {}
    return environment


def folded(text: str, indent: int = 0) -> str:
    """Fold a paragraph at 72 characters, later lines set in; a number keeps its unit beside it."""
    plain = text.unescape() if isinstance(text, Markup) else text
    inside = " " * min(indent, 20)
    held = _NUMBER_AND_UNIT.sub(_HELD, plain)
    lines = textwrap.fill(
        held, 72, subsequent_indent=inside, break_long_words=False, break_on_hyphens=False
    )
    return lines.replace(_HELD, " ")


def built_in() -> dict[str, str]:
    """Return the text of each template that comes with the service."""
    return {name: (_TEXTS / name).read_text(encoding="utf-8") for name in TEMPLATE_NAMES}


BUILT_IN: Final = MappingProxyType(built_in())


def templates_in(folder: Path) -> Templates:
    """Return the templates of the workshop whose profile lies in a folder.

    A file of the same name in its folder ``templates`` replaces one of ours.

    Raises
    ------
    ProfileError
        With every fault of every template there.
    """
    sources = dict(BUILT_IN)
    faults: list[ProfileFault] = []
    for name in TEMPLATE_NAMES:
        path = folder / TEMPLATES_FOLDER / name
        if path.is_file():
            text, found = _read(path)
            faults += [ProfileFault(line, f"{TEMPLATES_FOLDER}/{name}", why) for line, why in found]
            sources[name] = text
    if faults:
        raise ProfileError(faults)
    return Templates(sources)


def _read(path: Path) -> tuple[str, list[tuple[int, Message]]]:
    try:
        text = path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError):
        return "", [(0, Message("fault-own-not-utf8"))]
    if len(text) > LARGEST_TEMPLATE:
        return "", [(0, Message("fault-own-too-long", most=LARGEST_TEMPLATE))]
    return text, list(template_faults(text))


def template_faults(text: str) -> Iterator[tuple[int, Message]]:
    """Yield what a template does that it may not, each with its line."""
    environment = _environment({})
    try:
        found = list(_faults(environment.parse(text), 0))
        if not found:  # compiling works out what is constant, so that it comes last
            environment.compile(text)
    except TemplateSyntaxError as fault:
        found = [(fault.lineno, Message("fault-template-unread", reason=str(fault.message)))]
    except RecursionError:
        found = [(1, Message("fault-template-deep"))]
    yield from found


def _faults(node: nodes.Node, depth: int) -> Iterator[tuple[int, Message]]:
    if not isinstance(node, _ALLOWED):
        yield node.lineno, Message("fault-template-may-not", what=type(node).__name__.lower())
        return
    if isinstance(node, nodes.For):
        depth += 1
        if depth > DEEPEST_LOOP or node.recursive or not _is_given(node.iter):
            yield node.lineno, Message("fault-template-loop")
    if isinstance(node, nodes.Getattr) and node.attr.startswith("_"):
        yield node.lineno, Message("fault-template-hidden")
    for child in node.iter_child_nodes():
        yield from _faults(child, depth)


def _is_given(node: nodes.Node) -> bool:
    """Return whether a loop goes over a name, or a member of one."""
    if isinstance(node, nodes.Getattr | nodes.Getitem):
        return _is_given(node.node)
    return isinstance(node, nodes.Name)
