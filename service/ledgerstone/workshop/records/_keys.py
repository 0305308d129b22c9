"""What a record says of one key of the profile: its comment and its bounds."""

from __future__ import annotations

from dataclasses import field
from typing import Any


def about(about: str, **bounds: Any) -> dict[str, Any]:
    """Metadata of a key: the comment a starting profile prints, and its bounds."""
    return {"about": about, **bounds}


def above_0(about: str) -> Any:  # noqa: ANN401  dataclasses.field is typed by its use
    """A key whose numbers lie above zero."""
    return field(metadata={"about": about, "above": 0})


def at_least_0(about: str) -> Any:  # noqa: ANN401  as above
    """A key whose numbers are zero or more."""
    return field(metadata={"about": about, "at_least": 0})


def may_be_0(about: str) -> Any:  # noqa: ANN401  as above
    """A key whose numbers are zero or more, and zero if it is left out."""
    return field(default=0.0, metadata={"about": about, "at_least": 0})


def percentage(about: str) -> Any:  # noqa: ANN401  as above
    """A key whose numbers are zero to a hundred."""
    return field(metadata={"about": about, "at_least": 0, "at_most": 100})


def documented(about: str, **more: Any) -> Any:  # noqa: ANN401  as above
    """A key without bounds; ``kind`` where its type does not say how a form writes it."""
    return field(metadata={"about": about, **more})
