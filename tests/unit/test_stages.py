"""The stages of a quote: each record holds what its stage worked out, and the one before it."""

from dataclasses import fields, replace

from ledgerstone.stages import Assessed, Planned, Scheduled, judge
from ledgerstone.workshop import Workshop
from support.day import TODAY
from support.slabs import box, order_of, slab_json, stages_of


def test_a_record_copies_no_other(workshop: Workshop) -> None:
    """What one stage worked out is in no record of a later one but by way of its own record."""
    order = order_of(workshop, slab_json(box(900, 500), rests={"kind": "full"}))
    stages = stages_of(order, workshop, TODAY)
    held: list[object] = []
    for record in (stages.planned, stages.known, stages.scheduled, stages.judged, stages.priced):
        values = [getattr(record, field.name) for field in fields(record)]
        own = [
            value
            for value in values
            if value and not isinstance(value, float | Planned | Assessed | Scheduled)
        ]
        assert own
        assert not [value for value in own if any(value is other for other in held)]
        held += own


def test_what_is_never_ready_has_no_age(workshop: Workshop) -> None:
    """Where there is no day on which it is ready, no slab is judged as too young on it."""
    order = order_of(
        workshop, slab_json(box(900, 500), rests={"kind": "full"}), slab_json(box(600, 500))
    )
    stages = stages_of(order, workshop, TODAY)
    assert judge(stages.known, replace(stages.scheduled, lead_time=None)).too_young == (None, None)
