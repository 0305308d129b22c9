"""DEVELOPERS.md says what is so."""

import re

from design.import_order import ORDER
from design.source import PACKAGE, ROOT

DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


def test_its_modules_stand_in_the_order_of_imports() -> None:
    """Its table of what each knows lists every module, as they may import one another."""
    table = DEVELOPERS[DEVELOPERS.index("| module of `service/ledgerstone`") :].split("\n\n")[0]
    rows = table.splitlines()[2:]
    listed = [name for row in rows for name in re.findall(r"`(\w+)/?`", row.split("|")[1])]
    private = {name for name in ORDER if name.startswith("_")}
    assert listed == [name for name in ORDER if name not in private]
    packages = {path.name for path in PACKAGE.iterdir() if path.is_dir()}
    written = {name for row in rows for name in re.findall(r"`(\w+)/`", row.split("|")[1])}
    assert written == packages & set(ORDER)
