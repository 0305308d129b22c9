"""Every part of a request has its name in the catalogues, and no name is left over."""

from collections.abc import Iterator
from typing import Any

import pytest

from ledgerstone.codec.desk_schemas import NoteAskSchema
from ledgerstone.codec.enquiry_schemas import EnquiryAskSchema
from ledgerstone.codec.fields import Strict
from ledgerstone.codec.maker_terms_schemas import MakerTermsSchema
from ledgerstone.codec.order_schemas import OrderSchema
from ledgerstone.codec.placing_schemas import PlacingAskSchema
from ledgerstone.codec.request_schemas import RequestSchema
from ledgerstone.codec.workshop_schemas import WorkshopTrialSchema
from ledgerstone.wording import LANGUAGES
from support.catalogue_reader import messages

# What is read, each with the schemas of its parts.
READ = (
    EnquiryAskSchema,
    MakerTermsSchema,
    NoteAskSchema,
    OrderSchema,
    PlacingAskSchema,
    RequestSchema,
    WorkshopTrialSchema,
)
# Fields that have no label of their own, and name themselves where they refuse something.
BY_ITSELF = {"order", "message", "note", "this"}


def schemas(kind: type[Strict] = Strict) -> Iterator[type[Strict]]:
    """Every schema of a request."""
    for below in kind.__subclasses__():
        yield below
        yield from schemas(below)


def labels(field: Any) -> Iterator[str]:  # noqa: ANN401  any field of marshmallow's
    """What a field, and what it holds, are called."""
    label = field.metadata.get("label")
    if label:
        yield label
    if hasattr(field, "inner"):
        yield from labels(field.inner)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_part_of_a_request_has_its_name(language: str) -> None:
    """Each field and each object is one of the names, and each name is one of these."""
    assert set(READ) <= set(schemas())
    called = BY_ITSELF | {schema.about for schema in schemas()}
    for schema in schemas():
        called |= {label for field in schema().fields.values() for label in labels(field)}
    assert len(called) > 120
    assert set(messages(language)["field"].chosen["field"]) == called
