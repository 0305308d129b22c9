"""Whose the values of a profile are, as its maker ticks it, written into its text."""

from __future__ import annotations

from collections.abc import Sequence

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.placed_text import NoSuchPlace
from ledgerstone.workshop.standing import key_of

_YOURS = '"yours"'


def confirm(draft: ProfileDraft, path: KeyPath) -> None:
    """Write that a table, all items of a list or one value are the maker's.

    Raises
    ------
    NoSuchPlace
    """
    draft.settle()
    if path in draft.found().pairs and not draft.is_items(path):
        _confirm_value(draft, path)
        return
    tables = _tables_to_confirm(draft, path)
    if not tables:
        raise NoSuchPlace(path)
    for table in tables:
        draft.put((*table, key_of(table)), _YOURS)
        draft.settle()


def confirm_all(draft: ProfileDraft, paths: Sequence[KeyPath]) -> None:
    """Write that several values or tables are the maker's.

    Raises
    ------
    NoSuchPlace
    """
    draft.settle()
    values = [path for path in paths if path in draft.found().pairs and not draft.is_items(path)]
    by_table: dict[KeyPath, list[KeyPath]] = {}
    for path in values:
        by_table.setdefault(path[:-1], []).append(path)
    for table, inside in by_table.items():
        if _word(draft, table) is None:
            words = ", ".join(f"{path[-1]} = {_YOURS}" for path in inside)
            draft.insert((*table, key_of(table)), f"{{ {words} }}")
        else:
            for path in inside:
                confirm(draft, path)
    for path in (path for path in paths if path not in values):
        confirm(draft, path)


def unconfirm(draft: ProfileDraft, path: KeyPath) -> None:
    """Remove the confirmation of a table, all items of a list or one value.

    Raises
    ------
    NoSuchPlace
    """
    draft.settle()
    value = path in draft.found().pairs and not draft.is_items(path)
    tables = [path[:-1]] if value else _tables_to_confirm(draft, path)
    if not tables:
        raise NoSuchPlace(path)
    for table in tables:
        word, key = _word(draft, table), key_of(table)
        if value and word == _YOURS:
            draft.put((*table, key), f'{{ all = {_YOURS}, {path[-1]} = "invented" }}')
        elif value and (*table, key, path[-1]) in draft.found().values:
            draft.take_from_line((*table, key, path[-1]))
        elif not value and word:
            draft.take_line((*table, key))


def _confirm_value(draft: ProfileDraft, path: KeyPath) -> None:
    table, name = path[:-1], path[-1]
    word, key = _word(draft, table), key_of(table)
    if word is None:
        draft.insert((*table, key), f"{{ {name} = {_YOURS} }}")
    elif word.startswith("{"):
        draft.put((*table, key, name), _YOURS)
    elif word != _YOURS:
        draft.put((*table, key), f"{{ all = {word}, {name} = {_YOURS} }}")


def _word(draft: ProfileDraft, table: KeyPath) -> str | None:
    span = draft.found().values.get((*table, key_of(table)))
    return None if span is None else draft.text[span[0] : span[1]]


def _tables_to_confirm(draft: ProfileDraft, path: KeyPath) -> list[KeyPath]:
    """The table itself where it has a place of its own, else those right within it."""
    if draft.header(path) is not None or draft.written(path).startswith("{"):
        return [path]
    if draft.is_items(path):
        return [(*path, k) for k in range(draft.count(path))]
    inside = dict.fromkeys(h.path[: len(path) + 1] for h in draft.headers_within(path))
    return [table for inner in inside for table in _tables_to_confirm(draft, inner)]
