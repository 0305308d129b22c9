"""Parts of an answer as its schemas write them."""

from collections.abc import Sequence

from ledgerstone.application.answers import finding_members, shade_members
from ledgerstone.checks import Finding
from ledgerstone.codec.finding_schemas import FINDING, FixSchema, RemedySchema
from ledgerstone.codec.quote_schemas import ShadeAnswerSchema
from ledgerstone.codec.remedies_out import fix_members, remedy_members, saving_members
from ledgerstone.order import Slab
from ledgerstone.price import Price
from ledgerstone.remedies import Found, Saving
from ledgerstone.wording import speech_in
from ledgerstone.workshop import Workshop
from support.documents import Json

_FIX, _REMEDIES, _SHADE = FixSchema(), RemedySchema(many=True), ShadeAnswerSchema()


def write_finding(finding: Finding) -> Json:
    """Write one finding."""
    written: Json = FINDING.dump(finding_members(finding, speech_in("en")))
    return written


def write_remedies(document: Json, found: Found | None, finding: str) -> list[Json]:
    """Write what settles one finding."""
    written: list[Json] = _REMEDIES.dump(remedy_members(document, found, finding, speech_in("en")))
    return written


def write_fixes(document: Json, found: Found | None, stops: Sequence[str]) -> Json:
    """Write the fixes of an order, or why there is none; one that was not found is not there."""
    fixes = fix_members(document, found, stops, speech_in("en"))
    names = ("fix_all", "nearest_makeable")
    written = {name: _FIX.dump(fixes[name]) for name in names if fixes.get(name) is not None}
    why = fixes.get("why_no_fix")
    return written if why is None else {**written, "why_no_fix": why}


def write_ways(document: Json, ways: Sequence[Saving], now: Price) -> list[Json]:
    """Write ways to save."""
    written: list[Json] = _REMEDIES.dump(saving_members(document, ways, now, speech_in("en")))
    return written


def write_shade(slab: Slab, workshop: Workshop) -> Json:
    """Write how a slab's shade looks."""
    written: Json = _SHADE.dump(shade_members(slab, workshop, speech_in("en")))
    return written
