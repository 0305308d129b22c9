"""What answers hold, as JSON Schema 2020-12 written by hand; tests hold real answers to it."""

from __future__ import annotations

from ledgerstone.codec.faults_out import MOST_FAULTS
from ledgerstone.contract._openapi_choices import CHOICES
from ledgerstone.contract._openapi_parts import (
    JSONSchema,
    list_of,
    number,
    object_of,
    ref,
    text,
    whole,
)

_DAY = text(format="date")
_AMOUNT = text(pattern="^-?[0-9]+\\.[0-9]{2}$")
_MEASURES: JSONSchema = {
    "type": "object",
    "description": "Named quantities; each key ends in its unit, or names a day.",
    "additionalProperties": {"type": ["number", "string"]},
}
_PLACE = object_of(
    {
        "type": {"enum": ["Point", "LineString", "Polygon", "MultiPolygon"]},
        "coordinates": {"type": "array"},
    },
    says="A place in GeoJSON's shape (RFC 7946 §4), in plane slab millimetres.",
)

_MORE = whole("How many more there are; absent where all are listed.", minimum=1)
_FINDING = object_of(
    {
        "id": text("Stays the same while the finding does: check, slab, part."),
        "check": text("Which check says it, in kebab-case."),
        "level": {"enum": ["stops", "caution", "note"]},
        "slab": whole("The slab's index; absent where it is about the whole order."),
        "at": list_of(text(format="json-pointer"), "The parts of the order that it is about."),
        "says": text("What happened, and what would put it right."),
        "measured": _MEASURES,
        "limit": _MEASURES,
        "where_mm": _PLACE,
        "source": text("What rule this is."),
        "remedies": list_of(ref("Remedy")),
    },
    optional=("slab", "where_mm"),
)

_PATCH: JSONSchema = {
    "type": "array",
    "description": (
        "RFC 6902, onto the order exactly as it was sent. It begins by testing what it changes."
    ),
    "items": object_of(
        {
            "op": {"enum": ["test", "replace", "add", "remove"]},
            "path": text(format="json-pointer"),
            "value": {},
        },
        optional=("value",),
    ),
}

_REMEDY = object_of(
    {
        "says": text("The change, in the customer's words and units."),
        "patch": _PATCH,
        "settles": list_of(text(), "The ids of the findings that it settles."),
        "price_change": ref("Money"),
        "price": ref("Price"),
        "lighter_by_kg": number("Of a way to save: how much lighter all slabs together are."),
        "sooner_by_days": whole("Of a way to save: how many days sooner it arrives."),
        "verified": {
            "const": True,
            "description": "The patched order was read again and passed by every check.",
        },
    },
    optional=("price_change", "price", "lighter_by_kg", "sooner_by_days"),
    says="A change that settles a finding. It has a price, or a change of it, where one is known.",
)

_FIX = object_of(
    {
        "says": list_of(text(), "Each change, in the customer's words and units."),
        "patch": _PATCH,
        "settles": list_of(text(), "The ids of the findings that it settles."),
        "price": ref("Price"),
        "verified": {"const": True},
    },
    says="One patch after which the order quotes, and what it would then cost.",
)

_LEAD_TIME = object_of(
    {
        "ready_on": _DAY,
        "if_ordered_by": _DAY,
        "arrives": object_of({"earliest": _DAY, "latest": _DAY}),
        "stages": list_of(object_of({"name": text(), "starts": _DAY, "ends": _DAY, "why": text()})),
    },
    says="Days in the workshop's time zone. The day is held once the workshop books it.",
)

_WEIGHT = object_of(
    {
        "slabs": list_of(
            object_of(
                {
                    "label": text(),
                    "slab_kg": number(),
                    "people_to_lift": whole(),
                    "says": text("The mass with the hands that it wants; no safe limit."),
                }
            )
        ),
        "packed_kg": number("As it leaves, packing and all."),
    }
)

_HEX = "^#[0-9a-fA-F]{6}$"

_SHADE = {
    "name": text(),
    "match": text("The colour that was asked for, where it was none of the palette."),
    "hex": text("Dry and unsealed.", pattern=_HEX),
    "hex_wet": text(pattern=_HEX),
    "hex_sealed": text("Under the sealer that was asked for.", pattern=_HEX),
    "lab": list_of(number(), "CIELAB (D65) of `hex`."),
    "by_eye": {"type": "boolean"},
    "dose_percent": number("Pigment, of the cement's mass."),
    "uncertainty_delta_e": number("How far a piece may lie from `lab`, CIEDE2000."),
    "away_delta_e": number("How far `lab` stays from the colour to match, CIEDE2000."),
    "says": text("How sure the colour is, for the customer."),
}

_SLAB_ANSWER = object_of(
    {
        "finished_mm": object_of(
            {"length_mm": number(), "width_mm": number(), "thickness_mm": number()}
        ),
        "area_m2": number("Net of cut-outs."),
        "volume_l": number("Net of cut-outs and bevels."),
        "strength": object_of(
            {
                "worst_case": text(),
                "utilisation": number("Stress over what is allowed: over 1 stops."),
                "where_mm": _PLACE,
            },
            optional=("where_mm",),
        ),
        "shade": object_of(_SHADE, optional=tuple(_SHADE)),
    },
    optional=("strength",),
)

_DRAWINGS = object_of(
    {
        "plan": text("An SVG. With `.png` in place of `.svg`, a picture; `slab` picks one."),
        "view": text("An SVG, or a picture, as the plan."),
        "assembled": text("An SVG, or a picture: all pieces together, where the order joins any."),
        "true_size": text("A PDF: a cut-out on paper, 1 : 1, where there is one."),
        "says": list_of(text(), "Each slab's drawings in words, in the order's order."),
    },
    optional=("plan", "view", "assembled", "true_size", "says"),
    says="Links to the drawings. None where the slabs are too detailed for a link.",
)

_QUOTE = object_of(
    {
        "reference": text("A short name to say on the telephone."),
        "token": text("The quote, signed. None where it is longer than any address can be."),
        "link": text("The page that opens it. None where it is too long for a link."),
        "order": ref("Order"),
        "issued": _DAY,
        "valid_until": _DAY,
        "standing": {"enum": ["estimate", "quotation"]},
        "depends_on": list_of(text(), "What the price and the day rest on."),
        "no_link": ref("NoLink"),
        "changes": ref("Changes"),
        "price": ref("Price"),
        "lead_time": _LEAD_TIME,
        "weight": _WEIGHT,
        "findings": list_of(ref("Finding"), "Cautions and notes."),
        "more_findings": _MORE,
        "drawings": ref("Drawings"),
        "slabs": list_of(ref("SlabAnswer"), "In the order's order."),
        "costs": ref("Costs"),
        "ways_to_save": list_of(ref("Remedy")),
    },
    optional=("token", "link", "no_link", "changes", "costs", "ways_to_save", "more_findings"),
    says="The answer when nothing stops the order.",
)

_PROBLEM = object_of(
    {
        "type": text("Leads to a page that says what it is.", format="uri-reference"),
        "title": text("The same for every problem of this type."),
        "status": whole(),
        "detail": text("What happened this time."),
        "instance": text("This request, as `X-Request-Id` names it.", format="uri"),
    },
    says="RFC 9457.",
)

_NOT_UNDERSTOOD: JSONSchema = {
    "description": (
        "The first 50 faults at once, each at its JSON Pointer (RFC 6901) into the request, and"
        " how many more there are."
    ),
    "allOf": [
        ref("Problem"),
        object_of(
            {
                "faults": list_of(
                    object_of({"pointer": text(format="json-pointer"), "says": text()})
                )
                | {"maxItems": MOST_FAULTS},
                "more_faults": whole("Left out where there are no more.", minimum=1),
            },
            optional=("more_faults",),
        ),
    ],
}

_SENT_BACK: JSONSchema = {
    "description": "The answer when something stops the order: every finding and its remedies.",
    "allOf": [
        ref("Problem"),
        object_of(
            {
                "order": ref("Order"),
                "findings": list_of(ref("Finding"), "The gravest first."),
                "more_findings": _MORE,
                "not_checked": list_of(
                    {"enum": ["shape", "strength", "promise"]},
                    "Stages that did not run, because an earlier one stopped the order.",
                ),
                "drawings": ref("Drawings"),
                "fix_all": ref("Fix"),
                "nearest_makeable": ref("Fix"),
                "why_no_fix": text("Why neither was found."),
            },
            optional=("more_findings", "fix_all", "nearest_makeable", "why_no_fix"),
        ),
    ],
}

_HEALTH = object_of(
    {
        "status": text(),
        "version": text(),
        "profile": text("The fingerprint of the profile that is in use."),
        "profile_refused": object_of(
            {"at": text(format="date-time"), "says": text()},
            says="A changed profile with faults, which was not taken up.",
        ),
        "calendar": object_of(
            {
                "status": {"enum": ["read", "not-read"]},
                "says": text("Why it could not be read."),
                "bookings": text("The fingerprint of what is booked."),
                "age_hours": number("How long ago the file was last written."),
            },
            optional=("says", "bookings", "age_hours"),
            says="The file of what is booked, where there is one.",
        ),
    },
    optional=("version", "profile", "profile_refused", "calendar"),
)

ANSWERS: dict[str, JSONSchema] = {
    "Choices": CHOICES,
    "Drawings": _DRAWINGS,
    "Finding": _FINDING,
    "Fix": _FIX,
    "Health": _HEALTH,
    "Money": object_of({"currency": text("ISO 4217."), "amount": _AMOUNT}),
    "NotUnderstood": _NOT_UNDERSTOOD,
    "Price": object_of(
        {
            "currency": text("ISO 4217."),
            "lines": list_of(object_of({"label": text(), "amount": _AMOUNT})),
            "net": _AMOUNT,
            "tax": _AMOUNT,
            "tax_percent": number(),
            "total": _AMOUNT,
            "deposit": _AMOUNT,
        },
        says="The lines add up to the net; net and tax to the total.",
    ),
    "Problem": _PROBLEM,
    "Quote": _QUOTE,
    "Remedy": _REMEDY,
    "SentBack": _SENT_BACK,
    "SlabAnswer": _SLAB_ANSWER,
}
