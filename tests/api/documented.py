"""The calls that the service documents, and the committed document that tells of them."""

from functools import cache
from pathlib import Path
from typing import Any, Final

import yaml

from ledgerstone.contract.calls import CALLS

# What tests are collected by: making the whole document takes seconds.
OPERATIONS: Final = [(call.path, call.method) for call in CALLS]


@cache
def committed() -> dict[str, Any]:
    """The committed OpenAPI document, as an independent YAML reader reads it."""
    path = Path(__file__).resolve().parents[2] / "openapi" / "openapi.yaml"
    text = path.read_text(encoding="utf-8")
    document: dict[str, Any] = yaml.load(text, Loader=yaml.CSafeLoader)
    return document


def operations() -> list[tuple[str, str, dict[str, Any]]]:
    """Each call of the document: its path, its method, what the document says of it."""
    paths = committed()["paths"]
    return [(path, method, paths[path][method]) for path in paths for method in paths[path]]
