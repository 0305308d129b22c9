"""What the profile's form calls its values, and where a sentence sends the maker to them."""

import pytest

from ledgerstone.wording import Message, speech_in
from ledgerstone.wording.profile import label_in
from ledgerstone.workshop.records._trading import Identity
from ledgerstone.workshop.records.members import Member, member_at, members_of


def _label(language: str, member: Member) -> str:
    label = label_in(language, member)
    return label[:1].upper() + label[1:]


@pytest.mark.parametrize("language", ["en", "de"])
def test_whose_workshop_it_is_is_asked_in_plain_words(language: str) -> None:
    """No standard's number: what to type is stated, with an example."""
    labels = [_label(language, one) for one in members_of(Identity)]
    assert len(labels) > 5
    assert not [one for one in labels if "ISO" in one or "IANA" in one]


@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("key", ["payment", "balance_due"])
def test_what_a_deposit_request_lacks_is_named_as_the_form_does(language: str, key: str) -> None:
    """The maker finds the field by the words that stand at it."""
    member = member_at(("offer", key))
    assert member is not None
    for what in (key, "both"):
        says = speech_in(language).say(Message("note-lacks", what=what))
        assert _label(language, member).partition(":")[0] in says
