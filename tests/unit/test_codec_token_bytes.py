"""Signed tokens: ours to the letter, by any key still held, opened within bounds."""

import base64
import os
import time
import zlib

import pytest

from ledgerstone.codec import tokens as module
from ledgerstone.codec.token_words import PRESET_DICTIONARY
from ledgerstone.codec.tokens import LONGEST_CONTENT, LONGEST_TOKEN, Tokens
from ledgerstone.errors import TokenError

OLD, NEW, OTHER = ("the older key, of 32 bytes or more", "the newer key, of 32 bytes or more",
                   "a stranger's key, of 32 bytes or more")  # fmt: skip
CONTENT = {"order": {"slabs": [{"label": "Bench ½ 台"}]}, "total": "967.00", "n": 1.5}
ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_"


@pytest.fixture
def tokens() -> Tokens:
    """A signer with one key."""
    return Tokens([OLD])


def _opens(tokens: Tokens, token: str, kind: str = "quote") -> bool:
    try:
        tokens.open(kind, token)
    except TokenError:
        return False
    return True


def test_what_is_signed_comes_back(tokens: Tokens) -> None:
    """A token opens to the content it was made of, and is made the same twice."""
    token = tokens.sign("quote", CONTENT)
    assert token is not None
    assert tokens.open("quote", token) == CONTENT
    assert tokens.sign("quote", CONTENT) == token


def test_every_other_letter_anywhere_is_refused(tokens: Tokens) -> None:
    """Each character of a token, put to each of its neighbours in the alphabet, opens nothing.

    The last letter of a base64 signature has two bits to spare, so that three other letters spell
    the same signature: they are refused too.
    """
    token = tokens.sign("quote", CONTENT)
    assert token is not None
    for at, letter in enumerate(token):
        near = ALPHABET.find(letter)
        others = {ALPHABET[(near + step) % 64] for step in (-3, -2, -1, 1, 2, 3)} | {".", "=", "é"}
        for other in others - {letter}:
            assert not _opens(tokens, token[:at] + other + token[at + 1 :]), (at, other)


def test_every_last_letter_but_one_is_refused(tokens: Tokens) -> None:
    """Of the 64 letters a token could end in, one opens it."""
    token = tokens.sign("quote", CONTENT)
    assert token is not None
    assert [c for c in ALPHABET if _opens(tokens, token[:-1] + c)] == [token[-1]]


def test_no_shorter_or_longer_token_opens(tokens: Tokens) -> None:
    """A token cut anywhere, or with anything before or after it, is refused."""
    token = tokens.sign("quote", CONTENT)
    assert token is not None
    assert not any(_opens(tokens, token[:at]) for at in range(len(token)))
    assert not any(_opens(tokens, token[at:]) for at in range(1, len(token)))
    for more in ("A", "=", " ", "\n", ".", "%00", "!", "\u200b", ".AAAA"):
        assert not _opens(tokens, token + more)
        assert not _opens(tokens, more + token)


def test_keys_take_turns() -> None:
    """The newest key signs; tokens of older ones open while the key is held, and not after."""
    old, both, new = Tokens([OLD]), Tokens([OLD, NEW]), Tokens([NEW])
    token, then = old.sign("quote", CONTENT), both.sign("quote", CONTENT)
    assert token is not None
    assert then is not None
    assert then == new.sign("quote", CONTENT)
    assert both.open("quote", token) == CONTENT
    assert both.open("quote", then) == CONTENT
    assert not _opens(new, token)
    assert not _opens(Tokens([OTHER]), then)


def test_the_kinds_keep_apart(tokens: Tokens) -> None:
    """A drawing's token opens no quote, nor the other way round."""
    quote, drawing = tokens.sign("quote", CONTENT), tokens.sign("drawing", CONTENT)
    assert quote is not None
    assert drawing is not None
    assert not _opens(tokens, quote, "drawing")
    assert not _opens(tokens, drawing, "quote")


def test_nothing_is_inflated_before_its_signature_is_known(
    tokens: Tokens, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A token that is not ours reaches the signature and no further."""
    token = tokens.sign("quote", CONTENT)
    assert token is not None
    inflated: list[bytes] = []

    def noted(packed: bytes) -> bytes:
        inflated.append(packed)
        return b"{}"

    monkeypatch.setattr(module, "_unpacked", noted)
    for spoilt in (token[:-1] + ("A" if token[-1] != "A" else "B"), "A" + token, token[1:]):
        assert not _opens(tokens, spoilt)
    assert inflated == []
    assert _opens(tokens, token)
    assert len(inflated) == 1


def _signed(tokens: Tokens, packed: bytes) -> str:
    payload = base64.urlsafe_b64encode(packed).rstrip(b"=")
    return tokens._signers["quote"].sign(payload).decode()


def test_even_a_bomb_of_our_own_opens_within_bounds(tokens: Tokens) -> None:
    """Content past its bound is refused when signed, and never inflated past it when opened."""
    assert tokens.sign("quote", {"x": "a" * LONGEST_CONTENT}) is None
    packer = zlib.compressobj(9, zlib.DEFLATED, -15, 9, zlib.Z_DEFAULT_STRATEGY, PRESET_DICTIONARY)
    bomb = packer.compress(b'{"x":"' + b"a" * 5_000_000 + b'"}') + packer.flush()
    token = _signed(tokens, bomb)
    assert len(token) <= LONGEST_TOKEN
    assert not _opens(tokens, token)


@pytest.mark.parametrize(
    "packed", [b"", b"\x00", b"not deflated", module._packed(b"[1]"), module._packed(b'{"a":'),
               module._packed(b"{}") + b"more", module._packed(b"\xff{}")],
)  # fmt: skip
def test_what_we_would_never_sign_opens_nothing(tokens: Tokens, packed: bytes) -> None:
    """A good signature over what is no JSON object of ours is refused, not an internal fault."""
    assert not _opens(tokens, _signed(tokens, packed))


def test_an_endless_token_is_refused_at_once(tokens: Tokens) -> None:
    """A token longer than any of ours is refused before its signature is looked at."""
    started = time.process_time()
    for _ in range(100):
        assert not _opens(tokens, "A" * 1_000_000 + "." + "A" * 43)
    assert time.process_time() - started < 1.0


def test_what_is_too_long_to_open_is_not_signed(tokens: Tokens) -> None:
    """Content that cannot be packed into the longest token has none."""
    assert tokens.sign("quote", {"x": os.urandom(LONGEST_TOKEN).hex()}) is None


def test_a_refusal_takes_as_long_for_every_wrong_letter(tokens: Tokens) -> None:
    """Refusing a signature wrong in its first letter takes as long as one wrong in its last.

    Compared by the least of many runs, and to a factor of two: the machine is shared, and a
    comparison that stops at the first wrong byte differs by nanoseconds in any case. What is held
    here is that no path does more work, such as inflating, for a nearly right token.
    """
    token = tokens.sign("quote", CONTENT)
    assert token is not None
    body, _, signature = token.rpartition(".")
    first, last = (("B" if signature[at] == "A" else "A") for at in (0, -2))
    wrong = [
        f"{body}.{first}{signature[1:]}",
        f"{body}.{signature[:-2]}{last}{signature[-1]}",
    ]
    rounds = [[_time_of(tokens, spoilt) for spoilt in wrong] for _ in range(200)]
    took = [min(times) for times in zip(*rounds, strict=True)]
    assert max(took) < 2 * min(took)


def _time_of(tokens: Tokens, token: str) -> float:
    started = time.perf_counter()
    assert not _opens(tokens, token)
    return time.perf_counter() - started
