"""Bad requests: what is sent, and the answer that it must have. Data, not code.

The kinds are those of the issue's "Bad input" and the first thirty of the field notes' list.
"""

import gzip
import json
import math
import random
from collections.abc import Mapping
from dataclasses import dataclass, field

from conftest import EXAMPLE_ORDER
from support.asking import JSON, body_of, changed, raw, without

SLAB, CUTOUT = "/slabs/0", "/slabs/0/cutouts/0"
LENGTH = f"{SLAB}/outline/length"
FULL = {"kind": "full"}


@dataclass(frozen=True, slots=True)
class Bad:
    """One bad request: its kind, its bytes, where the fault must point, the status."""

    name: str
    body: bytes
    pointer: str | None = None
    status: int = 400
    headers: Mapping[str, str] = field(default_factory=lambda: {"Content-Type": JSON})


def _slab(name: str, pointer: str, value: object, at: str | None = None, status: int = 400) -> Bad:
    """A value put somewhere in the example order; the fault points there, or at ``at``."""
    return Bad(name, body_of(changed((pointer, value))), pointer if at is None else at, status)


def _polygon(name: str, points: list[tuple[float, float]], at: str = "points") -> Bad:
    """The example order as a bare polygon."""
    outline = {"kind": "polygon", "points": [{"x": x, "y": y} for x, y in points]}
    order = changed(
        (f"{SLAB}/outline", outline),
        (f"{SLAB}/cutouts", []),
        (f"{SLAB}/edges", {}),
        (f"{SLAB}/rests", FULL),
    )
    return Bad(name, body_of(order), f"{SLAB}/outline/{at}")


def _length(name: str, text: str, at: str = LENGTH) -> Bad:
    """The slab's length written as raw JSON."""
    return Bad(f"length: {name}", raw(text), at)


def _ring(count: int) -> list[tuple[float, float]]:
    turn = 2 * math.pi / count
    return [
        (round(400 + 400 * math.cos(turn * i), 3), round(400 + 400 * math.sin(turn * i), 3))
        for i in range(count)
    ]


_SHUFFLED = random.Random(7)  # noqa: S311  the same knot every time
_KNOT = [(_SHUFFLED.uniform(0, 2000), _SHUFFLED.uniform(0, 1000)) for _ in range(200)]
_ORDER = body_of(EXAMPLE_ORDER)
_PADDED = _ORDER + b" " * (64 * 1024 + 1 - len(_ORDER))
_CIRCLE = {"kind": "circle", "diameter": 30, "centre": {"x": 100, "y": 100}}

NUMBERS = (
    _length("NaN", "NaN", ""),
    _length("Infinity", "Infinity", ""),
    _length("minus Infinity", "-Infinity", ""),
    _length("past the largest double", "1e999", ""),
    _length("1e308", "1e308"),
    _length("minus 1e308", "-1e308"),
    _length("minus zero", "-0.0"),
    _length("the smallest double", "5e-324"),
    _length("under every double", "1e-400"),
    _length("5 000 figures", "1" + "0" * 5000, ""),
    _length("zero", "0"),
    _length("negative", "-1450"),
    _length("a ten-thousandth of a millimetre", "0.0001"),
    _length("true", "true"),
    _length("null", "null"),
    _length("a list", "[1450]"),
    _length("an object", '{"value": 1450, "unit": "mm"}'),
)

UNITS = (
    _length("no unit", '"1450"'),
    _length("empty", '""'),
    _length("full-width figures", '"１４５０ mm"'),
    _length("Arabic figures", '"٣٠٠ mm"'),
    _length("a superscript", '"145² mm"'),
    _length("two readings of a comma", '"1,5 m"'),
    _length("two readings of a blank", '"2 400 mm"'),
    _length("point and comma", '"1.200,5 mm"'),
    _length("a tower of exponents", '"10**10**7 mm"'),
    _length("an exponent", '"1e3 mm"'),
    _length("nan with a unit", '"nan mm"'),
    _length("a fraction over zero", '"1/0 in"'),
    _length("a fraction of three", '"1/3 in"'),
    _length("twelve inches after feet", '"4\' 12\\""'),
    _length("an unknown unit", '"1 lightyear"'),
    _length("a sum", '"7 ft + 10.5 in"'),
    _length("a comment", '"1450 mm # x"'),
    _length("a second line", '"1450 mm\\n6"'),
    _length("a zero byte", '"1450\\u0000 mm"'),
    _length("half a character", '"1450 \\ud800mm"'),
    _length("30 000 brackets", '"' + "(" * 30_000 + '"'),
    _length("50 000 figures", '"' + "9" * 50_000 + ' mm"'),
    _length("longer than twenty metres", '"20.001 m"'),
)

DOCUMENTS = (
    Bad("empty", b"", ""),
    Bad("blanks", b" \n ", ""),
    Bad("null", b"null", ""),
    Bad("a list", b"[]", ""),
    Bad("a text", b'"x"', ""),
    Bad("a number", b"3", ""),
    Bad("an empty order", b"{}", "/slabs"),
    Bad("no slabs", b'{"slabs": []}', "/slabs"),
    Bad("slabs that are an object", b'{"slabs": {}}', "/slabs"),
    Bad("a slab that is null", b'{"slabs": [null]}', "/slabs/0"),
    Bad("a slab that is a number", b'{"slabs": [1]}', "/slabs/0"),
    Bad("something after the end", _ORDER + b" x", ""),
    Bad("two documents", _ORDER + _ORDER, ""),
    Bad("a byte order mark", b"\xef\xbb\xbf" + _ORDER, ""),
    Bad("a comment", b"/* order */" + _ORDER, ""),
    Bad("single quotation marks", b"{'slabs': []}", ""),
    Bad("a comma too many", b'{"slabs": [1,]}', ""),
    Bad("cut off", _ORDER[:-40], ""),
    Bad("UTF-16", json.dumps(EXAMPLE_ORDER).encode("utf-16"), ""),
    Bad("UTF-32", json.dumps(EXAMPLE_ORDER).encode("utf-32"), ""),
    Bad("Latin-1", raw('"Évier"', '"Seed-tray bench"').decode().encode("latin-1"), ""),
    Bad("a raw control character", b'{"slabs": "\x01"}', ""),
    Bad("a zero byte", b"\x00", ""),
    Bad("1 000 lists deep", b"[" * 1000 + b"]" * 1000, ""),
    Bad("30 000 lists deep, never closed", b"[" * 30_000, ""),
    Bad("10 000 objects deep", b'{"a":' * 10_000, ""),
    Bad("a text of backslashes", b'"' + b"\\" * 60_001, ""),
    Bad("a key twice", b'{"slabs": [], "slabs": []}', ""),
    Bad(
        "a key twice, inside", _ORDER.replace(b'"quantity": 1', b'"quantity": 1, "quantity": 2'), ""
    ),
    Bad("half a character as a key", b'{"\\ud800": 1}', ""),
    Bad("a key of 10 000 letters", b'{"' + b"k" * 10_000 + b'": 1}', ""),
    Bad("5 000 unknown keys", body_of({f"k{i}": 1 for i in range(5000)}), "/k0"),
)

KEYS = (
    _slab("an unknown key", f"{SLAB}/colour", "grey"),
    _slab("a slip of the finger", f"{SLAB}/thicknes", 40),
    _slab("the wrong case", f"{SLAB}/Outline", {}),
    _slab("a Cyrillic o", f"{SLAB}/\u043eutline", {}),
    _slab("__proto__", "/__proto__", {}),
    _slab("constructor", "/constructor", {}),
    _slab("an empty key", "/", 1),
    _slab("a key with a slash and a tilde", "/a~1b~0c", 1),
    _slab("markup as a key", "/<script>", 1),
    _slab("a member of another shape", f"{SLAB}/outline/diameter", 5),
    Bad("no outline", body_of(without(f"{SLAB}/outline")), f"{SLAB}/outline"),
    Bad("no kind of outline", body_of(without(f"{SLAB}/outline/kind")), f"{SLAB}/outline/kind"),
)

TEXTS = (
    _slab("a zero in a label", f"{SLAB}/label", "a\x00b"),
    _slab("a bell in a label", f"{SLAB}/label", "a\x07b"),
    _slab("a C1 control in a label", f"{SLAB}/label", "a\x85b"),
    _slab("a mail header in a label", f"{SLAB}/label", "a\r\nBcc: x"),
    _slab("a tab at the start of a label", f"{SLAB}/label", "\t=1+1"),
    _slab("a non-character", f"{SLAB}/label", "\ufffe"),
    _slab("a byte order mark in a label", f"{SLAB}/label", "\ufeffbench"),
    _slab("right-to-left override", f"{SLAB}/label", "a\u202egpj.exe"),
    _slab("an isolate", f"{SLAB}/label", "a\u2066b"),
    _slab("a zero-width space", f"{SLAB}/label", "a\u200bb"),
    _slab("a line separator", f"{SLAB}/label", "a\u2028b"),
    _slab("a blank letter", f"{SLAB}/label", "\u3164"),
    _slab("invisible tags", f"{SLAB}/label", "a\U000e0041"),
    _slab("a tower of accents", f"{SLAB}/label", "a" + "\u0301" * 60),
    _slab("half a character in a label", f"{SLAB}/label", "\ud800"),
    _slab("121 letters", f"{SLAB}/label", "x" * 121),
    _slab("10 000 letters", f"{SLAB}/label", "x" * 10_000),
    _slab("a label that is a number", f"{SLAB}/label", 5),
    _slab("a label that is null", f"{SLAB}/label", None),
    _slab("a path as a shade", f"{SLAB}/shade/name", "../../etc/passwd"),
    _slab("a zero in a shade", f"{SLAB}/shade/name", "graphite\x00"),
    _slab("a path as a sealer", f"{SLAB}/finish/sealer", "/etc/passwd"),
    _slab("a path as a side", f"{SLAB}/edges/..~1front", {}),
)

VALUES = (
    _slab("a number as text", f"{SLAB}/quantity", "1"),
    _slab("true as a number", f"{SLAB}/quantity", value=True),
    _slab("one and a half pieces", f"{SLAB}/quantity", 1.5),
    _slab("no pieces", f"{SLAB}/quantity", 0),
    _slab("25 pieces", f"{SLAB}/quantity", 25),
    _slab("1e20 pieces", f"{SLAB}/quantity", 1e20),
    _slab("yes for true", f"{CUTOUT}/heat", "yes"),
    _slab("one for true", f"{CUTOUT}/heat", 1),
    _slab("a turn past a whole one", f"{CUTOUT}/turn_degrees", 361),
    _slab("a turn that is text", f"{CUTOUT}/turn_degrees", "90"),
    _slab("an unknown place", f"{SLAB}/place", "moon"),
    _slab("an unknown use", f"{SLAB}/use", ["worktop"]),
    _slab("an unknown kind", f"{CUTOUT}/kind", "hexagon"),
    _slab("a kind that is a list", f"{CUTOUT}/kind", ["circle"]),
    _slab("no kind of rests", f"{SLAB}/rests", {}, f"{SLAB}/rests/kind"),
    _slab("an unknown side", f"{SLAB}/edges/top", {}),
    _slab("a bevel without its size", f"{SLAB}/edges/front", {"profile": "bevel"},
          f"{SLAB}/edges/front/size"),
    _slab("edges that are null", f"{SLAB}/edges", None),
    _slab("an edge that is a text", f"{SLAB}/edges/front", "bevel"),
    _slab("a shade by name and by colour", f"{SLAB}/shade",
          {"name": "graphite", "match": "#555555"}),
    _slab("a colour without its mark", f"{SLAB}/shade", {"match": "5b5d5a"}, f"{SLAB}/shade/match"),
    _slab("an unknown shade", f"{SLAB}/shade/name", "grafite"),
    _slab("a day that is not in the calendar", "/needed_by", "2027-02-30"),
    _slab("a day the other way round", "/needed_by", "25/03/2027"),
    _slab("a day in full-width figures", "/needed_by", "２０２７-03-25"),
    _slab("a delivery that is a text", "/delivery", "pallet"),
    _slab("an unknown delivery", "/delivery/kind", "drone"),
    _slab("a turn without its widths", "/delivery/turn", {}, "/delivery/turn/from"),
    _slab("minus one step", "/delivery/steps", -1),
    _slab("a token of 10 000 letters", "/since", "x" * 10_000),
    _slab("a join with no such slab", "/joins",
          [{"one": {"slab": 0, "side": "left"}, "other": {"slab": 1, "side": "right"}, "gap": 3}],
          "/joins/0/other/slab"),
)  # fmt: skip

SHAPES = (
    _polygon("a bow tie", [(0, 0), (1000, 500), (1000, 0), (0, 500)]),
    _polygon("a spike", [(0, 0), (1000, 0), (2000, 0), (1000, 0), (1000, 500), (0, 500)]),
    _polygon("points on one line", [(0, 0), (500, 0), (1000, 0)]),
    _polygon("a point twice", [(0, 0), (0, 0), (1000, 0), (0, 500)], "points/1"),
    _polygon("two points", [(0, 0), (1000, 0)]),
    _polygon("a closed ring", [(0, 0), (1000, 0), (0, 500), (0, 0)], "points/3"),
    _polygon("201 points", _ring(201)),
    _polygon("1 500 points", _ring(1500)),
    _polygon("a knot of 200 points", _KNOT),
    _polygon("a point a light year away", [(0, 0), (1e19, 0), (0, 500)], "points/1/x"),
    _polygon("a point past twenty metres", [(0, 0), (20_001, 0), (0, 500)], "points/1/x"),
    _slab("a point without y", f"{CUTOUT}/centre", {"x": 5}, f"{CUTOUT}/centre/y"),
    _slab("a point that is a list", f"{CUTOUT}/centre", [1, 2]),
    _slab("a notch as long as the slab", f"{SLAB}/outline",
          {"kind": "l-shape", "length": 1450, "width": 560,
           "notch": {"corner": "front-left", "length": 1450, "width": 100}},
          f"{SLAB}/outline/notch/length"),
    _slab("a corner rounder than its sides", f"{SLAB}/outline/corner_radius", "281 mm"),
    _slab("a cut-out of no size", f"{CUTOUT}/diameter", 0),
    _slab("a negative cut-out", f"{CUTOUT}/diameter", "-360 mm"),
    _slab("21 cut-outs", f"{SLAB}/cutouts", [_CIRCLE] * 21),
    _slab("500 cut-outs", f"{SLAB}/cutouts", [_CIRCLE] * 500),
    _slab("a tenth of a millimetre thick", f"{SLAB}/thickness", 0.1),
    _slab("nine slabs", "/slabs", EXAMPLE_ORDER["slabs"] * 9),
    _slab("a ledge of no length", f"{SLAB}/rests",
          {"kind": "ledges", "lines": [{"start": {"x": 0, "y": 0}, "end": {"x": 0, "y": 0},
                                        "depth": 50}]},
          f"{SLAB}/rests/lines/0"),
)  # fmt: skip

NOT_TO_BE_MADE = (
    _slab("a cut-out off the slab", f"{CUTOUT}/centre/x", "5 m", CUTOUT, 422),
    _slab("two cut-outs in one place", f"{CUTOUT}/centre/y", "505 mm", CUTOUT, 422),
    _slab("a hole as large as the slab", f"{CUTOUT}",
          {"kind": "rectangle", "length": 1450, "width": 560, "centre": {"x": 725, "y": 280}},
          f"{SLAB}/cutouts", 422),
    _slab("thicker than wide", f"{SLAB}/thickness", "900 mm", f"{SLAB}/thickness", 422),
    _slab("five millimetres thick", f"{SLAB}/thickness", 5, f"{SLAB}/thickness", 422),
    _slab("needed in the year one", "/needed_by", "0001-01-01", "/needed_by", 422),
    _slab("a path as a postcode", "/delivery/postcode", "../../etc", "/delivery/postcode", 422),
)  # fmt: skip

WRAPPINGS = (
    Bad("no type", _ORDER, status=415, headers={}),
    Bad("plain text", _ORDER, status=415, headers={"Content-Type": "text/plain"}),
    Bad("a form", b"slabs=1", status=415,
        headers={"Content-Type": "application/x-www-form-urlencoded"}),
    Bad("parts", b"--x--", status=415, headers={"Content-Type": "multipart/form-data; boundary=x"}),
    Bad("another kind of JSON", _ORDER, status=415,
        headers={"Content-Type": "application/vnd.x+json"}),
    Bad("UTF-16 by its own word", json.dumps(EXAMPLE_ORDER).encode("utf-16"), status=415,
        headers={"Content-Type": "application/json; charset=utf-16"}),
    Bad("gzipped", gzip.compress(_ORDER), status=415,
        headers={"Content-Type": JSON, "Content-Encoding": "gzip"}),
    Bad("a packed bomb", gzip.compress(b" " * 10_000_000), status=415,
        headers={"Content-Type": JSON, "Content-Encoding": "gzip"}),
    Bad("Brotli by its own word", _ORDER, status=415,
        headers={"Content-Type": JSON, "Content-Encoding": "br"}),
    Bad("64 kB and one byte", _PADDED, status=413),
    Bad("5 MB", b" " * 5_000_000, status=413),
    Bad("images only", _ORDER, status=406,
        headers={"Content-Type": JSON, "Accept": "image/webp"}),
    Bad("nothing at all", _ORDER, status=406, headers={"Content-Type": JSON, "Accept": "*/*;q=0"}),
    Bad("8 kB of other types", _ORDER, status=406,
        headers={"Content-Type": JSON, "Accept": ", ".join(["text/x"] * 1000)}),
)  # fmt: skip

ROWS = (
    *NUMBERS, *UNITS, *DOCUMENTS, *KEYS, *TEXTS, *VALUES, *SHAPES, *NOT_TO_BE_MADE, *WRAPPINGS,
)  # fmt: skip

# Hostile and honest alike: text that is allowed, and must do no harm where it is drawn.
MARKUP = (
    "</text><script>alert(1)</script>",
    "]]>",
    "&#x3c;b&#x3e;",
    "javascript:alert(1)",
    '" onload="alert(1)',
    '=HYPERLINK("x")',
    "+44",
    "@SUM(A1)",
    "-1",
    "Küche für Zoë 台所 مطبخ",
)
