"""Check of a slab's age on its ready day: loads it may not carry yet, and until when."""

from __future__ import annotations

from collections.abc import Iterable

from ledgerstone.checks.finding import Finding
from ledgerstone.stages import Judged, TooYoung
from ledgerstone.wording import Listed, Message, slab_name


def old_enough_in_place(judged: Judged) -> Iterable[Finding]:
    """A slab ready before 28 days at 20 °C may not carry a person yet.

    A slab that could not carry its permanent loads stays in the workshop until it can.
    """
    slabs = judged.planned.order.slabs
    for i, young in enumerate(judged.too_young):
        if young is not None:
            yield _too_young(i, slab_name(slabs[i], i, len(slabs)), young)


def _too_young(i: int, name: Message, young: TooYoung) -> Finding:
    doing = (Message("person-doing", does=verdict.case) for verdict in young.verdicts)
    message = Message(
        "young-for-people", doing=Listed(tuple(doing), joined="or"), slab=name, day=young.until
    )
    return Finding(
        "young-in-place",
        "caution",
        message,
        "EN 1992-1-1 (3.4) and (B.10), as warm as the workshop",
        slab=i,
        at=(f"/slabs/{i}",),
        measured={"age_days": round(young.age_days, 2)},
        limit={"age_days": round(young.needed_days, 2)},
    )
