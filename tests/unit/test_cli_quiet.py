"""A command whose reader goes away ends without a word, whatever it was about to print."""

import subprocess
import sys

from ledgerstone.cli.quiet import READER_GONE
from ledgerstone.workshop import DEMONSTRATION


def test_a_command_ends_quietly_without_a_reader() -> None:
    """Nothing is written to the errors, and the status is a shell's for a closed pipe."""
    command = [sys.executable, "-m", "ledgerstone.workshop", "check", str(DEMONSTRATION)]
    with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE) as running:
        assert running.stdout is not None
        assert running.stderr is not None
        running.stdout.close()
        errors = running.stderr.read()
    assert (running.returncode, errors) == (READER_GONE, b"")
