"""Changes as JSON Patch (RFC 6902) against an order exactly as it was sent."""

from __future__ import annotations

import copy
from collections.abc import Callable, Sequence
from typing import Any

from ledgerstone.codec.order_in import escape
from ledgerstone.codec.order_out import write_member
from ledgerstone.errors import NotUnderstood
from ledgerstone.json_types import JSON, value_at
from ledgerstone.remedies import Change, Outcome, State, Trial

Patch = list[dict[str, Any]]


def write_patch(sent: dict[str, Any], state: State) -> Patch:
    """Return the patch of a sent document that turns its order into a state of it.

    It begins with tests of what it changes, so that a stale patch fails: the member itself if it
    was sent, else the object around it.
    """
    document = copy.deepcopy(sent)
    tests: Patch = []
    steps: Patch = []
    for change in state.changes():
        path, step = change.path, _step(document, change)
        if path[0] == "slabs" and int(path[1]) >= len(sent["slabs"]):
            k = int(path[1])
            path, step = ("slabs", state.pieces[k].of, "outline"), _piece(sent, state, k)
        test = _test(sent, path)
        tests += [test] if test not in tests else []
        steps.append(step)
        apply(document, [step])
    return tests + steps


def _piece(sent: dict[str, Any], state: State, k: int) -> dict[str, JSON]:
    """Return the operation that adds a piece: the slab as it was sent, with the piece's changes."""
    document = {"slabs": [copy.deepcopy(sent["slabs"][state.pieces[k].of])]}
    for change in state.of_piece(k, 0):
        apply(document, [_step(document, change)])
    return {"op": "add", "path": _pointer(["slabs", k]), "value": document["slabs"][0]}


def _step(document: JSON, change: Change) -> dict[str, JSON]:
    """Return the operation of one change: replace, remove or add."""
    path = list(change.path)
    known = _known(document, path)
    if known == len(path):
        if change.new is None:
            return {"op": "remove", "path": _pointer(path)}
        return {"op": "replace", "path": _pointer(path), "value": _value(change.new)}
    value = _value(change.new)
    for step in reversed(path[known + 1 :]):
        value = {step: value}
    return {"op": "add", "path": _pointer(path[: known + 1]), "value": value}


def _test(sent: JSON, path: Sequence[str | int]) -> dict[str, JSON]:
    """Return the test of the member that a change replaces, or of the object around it.

    A small object is tested whole, and a slab by its outline.
    """
    around = list(path[: _known(sent, path)])
    if len(around) < len(path) and len(around) <= 2:
        index = around[1] if len(around) == 2 and around[0] == "slabs" else 0
        around = ["slabs", index, "outline"]
    return {"op": "test", "path": _pointer(around), "value": value_at(sent, around)}


def _value(new: JSON) -> JSON:
    return write_member(new, compact=True)


def _known(document: JSON, path: Sequence[str | int]) -> int:
    """Return how many steps of a path exist in a document."""
    here = document
    for depth, step in enumerate(path):
        inside = range(len(here)) if isinstance(here, list) else here
        if step not in inside:
            return depth
        here = here[step]
    return len(path)


def _pointer(path: Sequence[str | int]) -> str:
    return "".join(f"/{escape(str(step))}" for step in path)


def apply(document: JSON, patch: Patch) -> None:
    """Apply one of our patches to a document in place, without its tests.

    Values are copied, so that later operations do not change the patch.
    """
    for operation in copy.deepcopy(patch):
        if operation["op"] == "test":
            continue
        *parents, last = [
            part.replace("~1", "/").replace("~0", "~") for part in operation["path"].split("/")[1:]
        ]
        here = document
        for part in parents:
            here = here[int(part)] if isinstance(here, list) else here[part]
        _apply_one(here, last, operation)


def _apply_one(here: JSON, last: str, operation: dict[str, JSON]) -> None:
    if operation["op"] == "remove":
        del here[int(last) if isinstance(here, list) else last]
    elif isinstance(here, list) and operation["op"] == "add":
        here.insert(len(here) if last == "-" else int(last), operation["value"])
    else:
        here[int(last) if isinstance(here, list) else last] = operation["value"]


def trial_of(sent: dict[str, Any], check: Callable[[dict[str, Any]], Outcome]) -> Trial:
    """Return the trial of an order: patch its document, parse it, run every check.

    Parameters
    ----------
    check
        Reads a document and checks the order in it.
    """

    def trial(state: State) -> Outcome | None:
        document = copy.deepcopy(sent)
        apply(document, write_patch(sent, state))
        try:
            return check(document)
        except NotUnderstood:
            return None

    return trial
