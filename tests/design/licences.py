"""The licences of what the service is installed with: ``python tests/design/licences.py``.

Read from what each library says of itself; where it says nothing, from where that is written here.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from importlib.metadata import distribution
from pathlib import Path
from typing import Final

ROOT: Final = Path(__file__).resolve().parents[2]
LOCK: Final = ROOT / "docker/requirements.lock"
LIST: Final = ROOT / "docker/licences.md"

# What a maker may run and change without owing anything but a notice; and the LGPL, whose
# libraries are used as they come and can be exchanged for others.
ALLOWED: Final = {
    "0BSD", "Apache-2.0", "BSD", "BSD-2-Clause", "BSD-3-Clause", "CC0-1.0", "LGPL-2.1-only",
    "LGPL-2.1-or-later", "LGPL-3.0-or-later", "MIT", "PSF-2.0", "Zlib",
    "GPL-3.0-or-later WITH GCC-exception-3.1",
}  # fmt: skip
_CLASSIFIERS: Final = {
    "OSI Approved :: MIT License": "MIT",
    "OSI Approved :: BSD License": "BSD",
    "OSI Approved :: Apache Software License": "Apache-2.0",
    "OSI Approved :: GNU Lesser General Public License v3 or later (LGPLv3+)": "LGPL-3.0-or-later",
}
# Those that say nothing of themselves, and what compiled libraries bring inside.
_SAID_ELSEWHERE: Final = {
    "imapclient": "BSD-3-Clause",  # the COPYING in its wheel
    "resvg-py": "MIT",  # the LICENSE in its wheel
}
_ALGEBRA: Final = (
    "OpenBLAS (BSD-3-Clause), libgfortran (GPL-3.0-or-later WITH GCC-exception-3.1), "
    "libquadmath (LGPL-2.1-or-later)"
)
_INSIDE: Final = {
    "numpy": _ALGEBRA,
    "scipy": _ALGEBRA,
    "shapely": "GEOS (LGPL-2.1-only)",
    "resvg-py": "resvg (Apache-2.0 OR MIT)",
}
_HEAD: Final = """# Licences

What the service is installed with, beside Python itself, and under which licence each part comes.
Made by `python tests/design/licences.py > docker/licences.md`; a test holds it to the lock.
The drawings' typeface is under the SIL Open Font License 1.1, which lies beside it.

| library | licence | inside it |
|---|---|---|
"""


def names() -> list[str]:
    """Names of all libraries in the service's lock."""
    found = re.findall(r"(?m)^([a-z0-9.-]+)==", LOCK.read_text(encoding="utf-8"))
    return sorted(set(found))


def licence_of(name: str) -> str:
    """What a library says of its licence, as an SPDX expression."""
    told = distribution(name).metadata
    said = told["License-Expression"] if "License-Expression" in told else ""  # noqa: SIM401 - its type has no get
    if not said:
        classed = [c.removeprefix("License :: ") for c in told.get_all("Classifier") or ()]
        said = " OR ".join(_CLASSIFIERS[c] for c in classed if c in _CLASSIFIERS)
    return said or _SAID_ELSEWHERE.get(name) or str(told["License"])


def parts(expression: str) -> set[str]:
    """The licences in an SPDX expression, or in a list of what is inside."""
    inner = re.sub(r"[^()]*\(([^()]*)\)", r"\1 AND ", expression)
    return {part for part in re.split(r" AND | OR |, ", inner) if part}


def rows() -> Iterator[tuple[str, str, str]]:
    """Each library, its licence, and what it brings inside."""
    for name in names():
        yield name, licence_of(name), _INSIDE.get(name, "")


def written() -> str:
    """The list, as it is committed."""
    return _HEAD + "".join(f"| {' | '.join(row)} |\n" for row in rows())


if __name__ == "__main__":
    print(written(), end="")
