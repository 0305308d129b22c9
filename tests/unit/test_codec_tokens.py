"""Signed links: what opens, what does not, and names that can be read over the telephone."""

import itertools

import pytest

from ledgerstone.codec.tokens import LONGEST_TOKEN, Tokens, reference
from ledgerstone.errors import TokenError

OLD, NEW = "an older key that is long enough to be one", "a newer key that is long enough to be one"
CONTENT = {"order": {"slabs": [1, 2, 3]}, "total": "967.00"}


def signed(kind: str = "quote", *keys: str) -> str:
    """Sign the content."""
    token = Tokens(keys or (NEW,)).sign(kind, CONTENT)
    assert token is not None
    return token


def test_what_was_signed_opens() -> None:
    """The content comes back as it was, and the same content signs to the same link."""
    assert Tokens((NEW,)).open("quote", signed()) == CONTENT
    assert signed() == signed()


def test_a_link_is_safe_in_an_address() -> None:
    """Letters, figures, hyphens, underscores and dots alone."""
    assert set(signed()) <= set("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_.")


def test_a_drawings_link_opens_no_quote() -> None:
    """Each kind has its own salt."""
    with pytest.raises(TokenError):
        Tokens((NEW,)).open("quote", signed("drawing"))


def test_an_older_key_still_opens_and_no_longer_signs() -> None:
    """The last key signs; all of them open."""
    both = Tokens((OLD, NEW))
    assert both.open("quote", signed("quote", OLD)) == CONTENT
    assert both.sign("quote", CONTENT) == signed("quote", NEW)


def test_another_workshops_link_is_not_ours() -> None:
    """A link signed with a key that we have not got is refused."""
    with pytest.raises(TokenError):
        Tokens((NEW,)).open("quote", signed("quote", OLD))


@pytest.mark.parametrize("at", [0, 1, 10, -30, -2])
def test_a_link_with_one_letter_changed_is_not_ours(at: int) -> None:
    """Every letter counts, of the content and of the signature."""
    token = signed()
    other = "A" if token[at] != "A" else "B"
    changed = token[:at] + other + (token[at + 1 :] if at != -1 else "")
    with pytest.raises(TokenError):
        Tokens((NEW,)).open("quote", changed)


@pytest.mark.parametrize(
    "token", ["", ".", "a.b", "é", "\ud800", "a" * (LONGEST_TOKEN + 1), "W10.x", "null"]
)
def test_what_is_no_link_is_not_ours(token: str) -> None:
    """Nothing is inflated or read that was not signed."""
    with pytest.raises(TokenError):
        Tokens((NEW,)).open("quote", token)


def test_content_that_is_no_object_is_not_ours() -> None:
    """A list that was signed with our own key is no quote."""
    token = Tokens((NEW,)).sign("quote", [1, 2])  # type: ignore[arg-type]  # what must not be
    assert token is not None
    with pytest.raises(TokenError):
        Tokens((NEW,)).open("quote", token)


def test_a_link_too_long_to_open_is_not_signed() -> None:
    """Content that cannot be made short enough gets no link, rather than a dead one."""
    noise = {str(i): (i * 2654435761) % 2**32 for i in range(2000)}
    assert Tokens((NEW,)).sign("quote", noise) is None


@pytest.mark.parametrize("keys", [(), ("short",), (NEW, "short"), ("",)])
def test_a_key_is_long_enough(keys: tuple[str, ...]) -> None:
    """Thirty-two bytes at least, each of them."""
    with pytest.raises(TokenError):
        Tokens(keys)


def test_a_reference_can_be_read_over_the_telephone() -> None:
    """Two groups of four, without letters or figures that are taken for one another."""
    seen = {reference(str(n).encode()) for n in range(2000)}
    assert len(seen) == 2000
    letters = set(itertools.chain.from_iterable(name.split("-")[0] for name in seen))
    assert letters.isdisjoint("0O1I5S8B2ZLG")
    assert all(len(name) == 9 and name[4] == "-" for name in seen)
