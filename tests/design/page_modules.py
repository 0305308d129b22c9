"""The modules that the page loads at once and for its form, and the links that ask for them.

``python tests/design/page_modules.py`` writes the links into ``web/index.html``.
"""

import re
from pathlib import Path

WEB = Path(__file__).resolve().parents[2] / "web"
FIRST, FORM = "app.js", "form/live.js"
_IMPORT = re.compile(r'^(?:import|export)\b[^;]*?"(\.[^"]+)";', re.MULTILINE)
_FIRST_LINKS = re.compile(r'(?:<link rel="modulepreload"[^>]*>\n)*(?=</head>)')
_FORM_LINKS = re.compile(r'(?<=<template id="form-modules">\n)(?:<link[^>]*>\n)*(?=</template>)')


def modules(web: Path = WEB, first: str = FIRST) -> list[str]:
    """Every module that the first one imports, itself or through others.

    What is imported only when it is wanted is none of them: the messages are of one language,
    which the first module finds out.
    """
    found = [first]
    for name in found:
        for path in _IMPORT.findall((web / name).read_text(encoding="utf-8")):
            target = (web / name).parent / path
            other = target.resolve().relative_to(web.resolve()).as_posix()
            found += [] if other in found else [other]
    return found


def form_modules(web: Path = WEB) -> list[str]:
    """Every module of the live form that has not loaded for the first price."""
    before = modules(web)
    return [name for name in modules(web, FORM) if name not in before]


def with_links(document: str, web: Path = WEB) -> str:
    """Ask in a document for these modules: at the end of its head, and once there is a price."""
    first = _links('fetchpriority="low" ', modules(web))
    document = _FIRST_LINKS.sub(lambda _: first, document, count=1)
    return _FORM_LINKS.sub(lambda _: _links("", form_modules(web)), document, count=1)


def _links(how: str, names: list[str]) -> str:
    return "".join(f'<link rel="modulepreload" {how}href="{name}">\n' for name in names)


if __name__ == "__main__":
    page = WEB / "index.html"
    page.write_text(with_links(page.read_text(encoding="utf-8")), encoding="utf-8")
