"""The page asks for all its modules at once, and for none that it does not load at once."""

import re
from pathlib import Path

from design.page_modules import WEB, form_modules, modules, with_links
from ledgerstone.wording import LANGUAGES


def test_the_document_asks_for_each_module_that_is_imported() -> None:
    """Its links are those of the modules' graph; tests/run --generate writes them."""
    document = (WEB / "index.html").read_text(encoding="utf-8")
    assert document == with_links(document)
    asked = re.findall(r'<link rel="modulepreload" fetchpriority="low" href="([^"]+)">', document)
    assert {"app.js", "page.js", "lib/json.js", "answer/panel.js"} <= set(asked)
    assert "answer/opened.js" not in asked
    assert all((WEB / name).is_file() for name in asked)


def test_the_forms_modules_are_asked_for_apart() -> None:
    """All of them together, once there is a price, and none that loaded before it.

    The plan that is drawn by hand comes after the form.
    """
    document = (WEB / "index.html").read_text(encoding="utf-8")
    later = re.findall(r'<link rel="modulepreload" href="([^"]+)">', document)
    assert later == form_modules()
    assert {"form/live.js", "form/rows.js"} <= set(later)
    assert "sketch/sketch.js" not in later
    assert not set(later) & set(modules())


def test_no_document_asks_for_messages_beforehand() -> None:
    """Which language is spoken is found out first: one alone is loaded. The modules are all one."""
    for language in LANGUAGES:
        name = "index.html" if language == LANGUAGES[0] else f"index.{language}.html"
        document = (WEB / name).read_text(encoding="utf-8")
        asked = re.findall(
            r'<link rel="modulepreload" fetchpriority="low" href="([^"]+)">', document
        )
        assert asked == modules()


def test_modules_are_found_through_others_and_once(tmp_path: Path) -> None:
    """Imports over several lines, exports from and folders are followed; what may wait is not."""
    (tmp_path / "lib").mkdir()
    (tmp_path / "app.js").write_text('import {\n  a,\n} from "./lib/a.js";\nimport("./late.js");\n')
    (tmp_path / "lib/a.js").write_text('export { b } from "./b.js";\nimport "../c.js";\n')
    (tmp_path / "lib/b.js").write_text('import { a } from "./a.js";\n')
    (tmp_path / "c.js").write_text("")
    assert modules(tmp_path) == ["app.js", "lib/a.js", "lib/b.js", "c.js"]
