"""What one maker can do, charges and stocks: frozen records, one for each table of the profile.

The loader builds its checks from these records: a field's type says what may stand there, its
``metadata`` the bounds (``at_least``, ``above``, ``at_most``) and, as ``about``, the comment that
the starting profile prints beside it. A field with a default may be left out of the profile.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from ledgerstone.workshop.countries import RegionalSettings
from ledgerstone.workshop.records._bench import Bench, BookingRules, Tent
from ledgerstone.workshop.records._boards import Boards, Foam
from ledgerstone.workshop.records._carrying import Crate, PackingSettings, PackingWay, Pallet, Van
from ledgerstone.workshop.records._conventions import Conventions, WordChoice, place_of
from ledgerstone.workshop.records._handling import (
    BrokenStrip,
    ConcreteSettings,
    HandlingSettings,
    Lifting,
    Loads,
    Steel,
    Way,
)
from ledgerstone.workshop.records._hours import Hours, JobHours, MouldHours, PieceHours, PourHours
from ledgerstone.workshop.records._keys import about, documented
from ledgerstone.workshop.records._look import (
    Dose,
    EdgeOffered,
    FinishOffered,
    PaletteShade,
    Pigment,
    Sealer,
)
from ledgerstone.workshop.records._mixing import Mixer, SlurryFor, SlurryRule
from ledgerstone.workshop.records._rails import Rails, RailSection
from ledgerstone.workshop.records._recipe import Added, Bag, Constituent, FaceCoat, Recipe
from ledgerstone.workshop.records._shade import CementBase, Colouring, PigmentSample
from ledgerstone.workshop.records._shaping import CastingTable, Shaping, StripRule
from ledgerstone.workshop.records._trading import (
    DeliveryArea,
    Identity,
    Offer,
    Sample,
    Services,
    Tax,
    Web,
)
from ledgerstone.workshop.records._working import Calendar, Closure, DaySettings, Rates
from ledgerstone.workshop.records._writing import Mailbox, MailSettings, OwnSentences, ReplySettings
from ledgerstone.workshop.standing import ProfileStanding

__all__ = [
    "Added",
    "Bag",
    "Bench",
    "Boards",
    "BookingRules",
    "BrokenStrip",
    "Calendar",
    "CastingTable",
    "CementBase",
    "Closure",
    "Colouring",
    "ConcreteSettings",
    "Constituent",
    "Conventions",
    "Crate",
    "DaySettings",
    "DeliveryArea",
    "Dose",
    "EdgeOffered",
    "FaceCoat",
    "FinishOffered",
    "Foam",
    "HandlingSettings",
    "Hours",
    "Identity",
    "JobHours",
    "Lifting",
    "Loads",
    "MailSettings",
    "Mailbox",
    "Mixer",
    "MouldHours",
    "Offer",
    "OwnSentences",
    "PackingSettings",
    "PackingWay",
    "PaletteShade",
    "Pallet",
    "PieceHours",
    "Pigment",
    "PigmentSample",
    "PourHours",
    "RailSection",
    "Rails",
    "Rates",
    "Recipe",
    "RegionalSettings",
    "ReplySettings",
    "Sample",
    "Sealer",
    "Services",
    "Shaping",
    "SlurryFor",
    "SlurryRule",
    "Steel",
    "StripRule",
    "Tax",
    "Tent",
    "Van",
    "Way",
    "Web",
    "WordChoice",
    "Workshop",
]


@dataclass(frozen=True, slots=True, kw_only=True)
class Workshop:
    """The whole profile of one maker."""

    workshop: Identity = documented("whose workshop it is")
    table: CastingTable = documented("the casting table")
    shaping: Shaping = documented("shapes that are made")
    recipe: Recipe = documented("the concrete")
    mixer: Mixer = documented("the mixer and the scales")
    slurry: SlurryRule = documented("the slurry that fills voids")
    boards: Boards = documented("boards and small things for moulds")
    palette: tuple[PaletteShade, ...] = documented("shades offered")
    pigments: tuple[Pigment, ...] = documented("pigments on the shelf")
    shade: Colouring = documented("how pigment is weighed and limited")
    finishes: tuple[FinishOffered, ...] = documented("surfaces offered")
    sealers: tuple[Sealer, ...] = documented("sealers offered")
    edges: tuple[EdgeOffered, ...] = documented("edge profiles offered")
    hours: Hours = documented("rules for hours of hands")
    days: DaySettings = documented("waits")
    rates: Rates = documented("rates: hours and small things")
    tax: Tax = documented("tax")
    offer: Offer = documented("how a price is offered")
    areas: tuple[DeliveryArea, ...] = field(
        default=(), metadata=about("delivery areas; without any, customers collect")
    )
    calendar: Calendar = documented("working days")
    concrete: ConcreteSettings = documented("how far the concrete is trusted")
    handling: HandlingSettings = documented("how a young slab is moved")
    loads: Loads = documented("what a slab must bear in place")
    steel: Steel = documented("the reinforcement on the rack")
    packing: PackingSettings = documented("packing, by how an order leaves")
    lifting: Lifting = documented("what people carry")
    web: Web = documented("where the page stands")
    services: Services = field(
        default_factory=Services, metadata=about("services beside the making")
    )
    sample: Sample | None = field(
        default=None, metadata=about("sample tiles; without this table none are cast")
    )
    bench: Bench = field(default_factory=Bench, metadata=about("what runs at once in the workshop"))
    tent: Tent | None = field(default=None, metadata=about("a heated tent, where there is one"))
    bookings: BookingRules | None = field(
        default=None, metadata=about("the calendar file of what is booked")
    )
    rails: Rails = field(
        default_factory=Rails, metadata=about("what carries across the front and back of units")
    )
    conventions: Conventions = field(
        default_factory=Conventions,
        metadata=about("units, paper and words that are not the usual ones of the country"),
    )
    reply: ReplySettings = field(default_factory=ReplySettings, metadata=about("what replies say"))
    mail: MailSettings | None = field(
        default=None, metadata=about("the server that sends requests")
    )
    sentences: tuple[OwnSentences, ...] = field(default=(), metadata={"computed": True})
    mailbox: Mailbox | None = field(
        default=None, metadata=about("the mailbox that drafts are put into")
    )
    standing: ProfileStanding = field(default_factory=ProfileStanding, metadata={"computed": True})
    fingerprint: str = field(default="", metadata={"computed": True})

    @property
    def place(self) -> RegionalSettings:
        """What is usual where the workshop stands, and what it says otherwise."""
        return place_of(self.workshop.country, self.conventions)

    @property
    def ways(self) -> tuple[Way, ...]:
        """The ways of moving a slab that there are people for; else those for the fewest."""
        every = self.handling.ways
        most = max(self.lifting.most_people, min((way.people for way in every), default=0))
        return tuple(way for way in every if way.people <= most)
