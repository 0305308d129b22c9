"""The modules that the page loads at once, and the links by which all are asked for together.

``python tests/design/page_modules.py`` writes the links into ``web/index.html``.
"""

import re
from pathlib import Path

WEB = Path(__file__).resolve().parents[2] / "web"
FIRST = "app.js"
_IMPORT = re.compile(r'^(?:import|export)\b[^;]*?"(\.[^"]+)";', re.MULTILINE)
_LINKS = re.compile(r'(?:<link rel="modulepreload"[^>]*>\n)*(?=</head>)')


def modules(web: Path = WEB) -> list[str]:
    """Every module that the first one imports, itself or through others.

    What is imported only when it is wanted is none of them: the messages are of one language,
    which the first module finds out.
    """
    found = [FIRST]
    for name in found:
        for path in _IMPORT.findall((web / name).read_text(encoding="utf-8")):
            target = (web / name).parent / path
            other = target.resolve().relative_to(web.resolve()).as_posix()
            found += [] if other in found else [other]
    return found


def with_links(document: str, names: list[str]) -> str:
    """Ask in a document for these modules, last of what its head asks for."""
    links = "".join(
        f'<link rel="modulepreload" fetchpriority="low" href="{name}">\n' for name in names
    )
    return _LINKS.sub(lambda _: links, document, count=1)


if __name__ == "__main__":
    page = WEB / "index.html"
    page.write_text(with_links(page.read_text(encoding="utf-8"), modules()), encoding="utf-8")
