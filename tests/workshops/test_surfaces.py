"""Every surface of the German workshop: none holds a sentence that an English catalogue has."""

import io
import re
from datetime import date
from functools import cache
from pathlib import Path
from typing import Any, Final

import pypdfium2
import pytest

import ledgerstone
from ledgerstone.cli.orders import run as run_order
from ledgerstone.cli.profiles import run as run_profile
from ledgerstone.schedule.ical import read_bookings
from ledgerstone.wording import speech_in
from ledgerstone.workshop import DEMONSTRATION, load_profile
from ledgerstone.workshop.reading.loader import profile_text
from ledgerstone.workshop.records import BookingRules
from ledgerstone.workshop.starting.profile_text import starting_profile
from support.catalogue_reader import entries_in, texts_of
from support.profile_form import ASKED, form
from workshops.conftest import KEY, TYPED, WorkshopCase, workshop_case
from workshops.reading import read
from workshops.strange_words import STRANGE

CATALOGUES: Final = Path(ledgerstone.__file__).parent / "wording" / "catalogues"
FEWEST: Final = 4  # words in a row that tell a sentence; fewer may be a name
WORD: Final = re.compile(r"[^\W\d_]+(?:['’-][^\W\d_]+)*")
SPOILT: Final = ["x", "-7", "", "99999999999", "true"]
GERMANY: Final = DEMONSTRATION.with_name("germany.toml")
AN_L: Final = {
    "kind": "l-shape", "length": "1,8 m", "width": "1,5 m",
    "notch": {"corner": "front-right", "length": "1,2 m", "width": "90 cm"},
}  # fmt: skip


def _runs(text: str) -> set[tuple[str, ...]]:
    words = WORD.findall(text)
    return {tuple(words[i : i + FEWEST]) for i in range(len(words) - FEWEST + 1)}


@cache
def english_runs() -> frozenset[tuple[str, ...]]:
    """Every run of words in an English catalogue that no German one has."""
    told: dict[str, set[tuple[str, ...]]] = {"en": set(), "de": set()}
    for file in CATALOGUES.rglob("*.ftl"):
        language = "de" if "de" in (file.stem, file.parent.name) else "en"
        for entry in entries_in(file):
            for text in texts_of(entry):
                told[language] |= _runs(text)
    return frozenset(told["en"] - told["de"])


def english_in(*documents: Any) -> list[str]:
    """What is still English in documents: a catalogue's run of words, or a small English word."""
    pattern = re.compile(STRANGE["germany"])
    return [
        text
        for document in documents
        for text in read(document)
        if _runs(text) & english_runs() or pattern.search(text)
    ]


@pytest.fixture(scope="module")
def german() -> WorkshopCase:
    """The German workshop."""
    return workshop_case("germany")


def kitchen(german: WorkshopCase) -> dict[str, Any]:
    """Two pieces that are joined, one of them an L."""
    top = german.order()["slabs"][0]
    bend = {**top, "label": "Winkel", "outline": AN_L, "cutouts": []}
    join = {
        "one": {"slab": 0, "side": "right"}, "other": {"slab": 1, "side": "left"}, "gap": "2 mm",
    }  # fmt: skip
    return {**german.order(), "slabs": [{**top, "cutouts": []}, bend], "joins": [join]}


def test_english_is_seen() -> None:
    """A sentence of an English catalogue is told from its German one, each alone."""
    assert len(english_runs()) > 3000
    assert english_in(["Measure both rulers before"]) != []
    assert english_in(["Messen Sie beide Maßstäbe"]) == []


def test_pieces_together_are_drawn_in_german(german: WorkshopCase) -> None:
    """The assembled drawing: its title, its words for who cannot see it, each row of text."""
    links = german.asked("/v1/drawings", kitchen(german))
    svg = german.client.get(links["assembled"]).get_data(as_text=True)
    texts = [" ".join(text.split()) for text in re.findall(r">([^<>]+)<", svg) if text.strip()]
    assert any("Winkel" in text for text in texts)
    assert english_in(texts) == []
    assert not [text for text in texts if "Message(" in text or "FRONT" in text]
    assert not [text for text in texts if re.search(r"\d\.\d mm", text)]


@pytest.mark.parametrize("part", ["cutout=0", "cutout=1", "corner=front-left"])
def test_true_size_is_printed_in_german(german: WorkshopCase, part: str) -> None:
    """A cut-out and a corner at true size: what is drawn, the rulers, the sheets."""
    link = german.asked("/v1/drawings", german.order())["true_size"].partition("?")[0]
    pdf = german.client.get(f"{link}?{part}").get_data()
    said = [page.get_textpage().get_text_range() for page in pypdfium2.PdfDocument(pdf)]
    assert all("Maßstäbe" in page for page in said)
    assert english_in(*([" ".join(page.split())] for page in said)) == []


@pytest.mark.parametrize(
    "body",
    [
        {},
        {"slabs": []},
        {"slabs": [{"outline": {"kind": "blob"}}]},
        {"slabs": [{"outline": {"kind": "rectangle", "length": "vier", "width": "99 m"}}]},
        {"slabs": [{"outline": {"kind": "rectangle", "length": "1;2 m", "width": 1e9}}]},
        {"slabs": [{"outlin": 1}], "deliver": {}},
        {"slabs": "none", "language": "de"},
    ],
)
def test_what_is_not_understood_is_reported_in_german(
    german: WorkshopCase, body: dict[str, Any]
) -> None:
    """A body that is no order: each fault, the title and the detail."""
    answer = german.client.post("/v1/quotes", json=body)
    assert answer.status_code == 400
    assert english_in(answer.get_json()) == []


@pytest.mark.parametrize("path", ["/v1/quotes/none", "/v1/drawings/none/plan.svg", "/v1/nothing"])
def test_what_is_not_there_is_reported_in_german(german: WorkshopCase, path: str) -> None:
    """A link that is none, and a place that is none."""
    answer = german.client.get(path)
    assert answer.status_code in (400, 404)
    assert english_in(answer.get_json()) == []


@pytest.mark.parametrize(
    ("path", "headers", "status"),
    [
        ("/v1/replies", {}, 401),
        ("/v1/quotes", {"Content-Type": "text/plain"}, 415),
        ("/v1/quotes", {"Content-Type": "application/json"}, 400),
    ],
)
def test_a_call_that_is_refused_is_refused_in_german(
    german: WorkshopCase, path: str, headers: dict[str, str], status: int
) -> None:
    """Without the maker's key, in another type, and with no JSON in it."""
    answer = german.client.post(path, data="{", headers=headers)
    assert answer.status_code == status
    assert english_in(answer.get_json()) == []


def test_an_enquiry_is_read_in_german(german: WorkshopCase) -> None:
    """What was taken, what is left open, and the draft letter."""
    text = (
        "Guten Tag, wir hätten gern eine Arbeitsplatte 2,4 m x 62 cm, 4 cm dick, in Graphit,"
        " mit Spülbecken 50 x 40 cm. Bis März wäre schön. Viele Grüße, A. Huber"
    )
    answer = german.client.post("/v1/enquiries", json={"message": text}, headers=KEY)
    assert answer.status_code == 200, answer.get_data(as_text=True)
    told = answer.get_json()
    entries = [one for key in ("doubtful", "missing", "assumed") for one in told[key]]
    assert entries
    assert english_in([one.get("says", one.get("asks", "")) for one in entries]) == []


def test_the_form_of_the_profile_is_in_german(tmp_path: Path) -> None:
    """A new German file: each label and help, what rests on a table, and hundreds of faults."""
    mine = tmp_path / "meine.toml"
    spoken("init", str(mine), "--country", "DE")
    client = form(mine, language="de")
    told = client.get(ASKED).get_json()
    labels = [
        {"told": [one.get("label", ""), one.get("help", "")]}
        for one in (*told["tables"], *told["values"])
    ]
    values = [one for one in told["values"] if "value" in one]
    spoilt = [
        {"op": "set", "pointer": one["pointer"], "value": word}
        for one, word in zip(values, SPOILT * len(values), strict=False)
    ]
    asked = {"version": told["version"], "changes": spoilt[:400]}
    faults = client.post(ASKED, json=asked).get_json()["faults"]
    assert len(faults) > 100
    said = list(
        read([labels, told["invented"], faults])
    )  # which may name what is written in a file
    assert [text for text in said if _runs(text) & english_runs()] == []


def spoken(*arguments: str, answers: str = "") -> str:
    """What a command of the maker's prints."""
    out, err = io.StringIO(), io.StringIO()
    run_profile(arguments, out, err, {"LANG": "de_DE.UTF-8"}, io.StringIO(answers))
    return out.getvalue() + err.getvalue()


def test_the_maker_s_commands_is_in_german(tmp_path: Path) -> None:
    """`init`, `init --ask` and `check`, with a good file and with one of every line spoilt."""
    mine = tmp_path / "meine.toml"
    said = [spoken("init", str(mine), "--country", "DE"), spoken("check", str(mine))]
    said += [spoken("check", str(tmp_path / "fehlt.toml")), spoken("init", str(mine))]
    said.append(spoken("init", str(tmp_path / "neu.toml"), "--ask", answers="D\nDE\nBY\n"))
    german = load_profile(GERMANY)
    lines = starting_profile(german).splitlines()
    for i in range(0, len(lines), 25):
        spoilt = [line.replace(" = ", " = -1.5 # ") if k % 25 == i % 25 else line
                  for k, line in enumerate(lines)]  # fmt: skip
        mine.write_text("\n".join(spoilt), encoding="utf-8")
        said.append(spoken("check", str(mine)))
    texts = [line for text in said for line in text.replace(str(tmp_path), "").splitlines()]
    assert len(texts) > 100
    assert english_in(texts) == []


def test_an_order_s_command_is_in_german(tmp_path: Path) -> None:
    """A letter on the command line, and what it cannot read."""
    file = tmp_path / "auftrag.json"
    file.write_text('{"slabs": [{"outline": 3}]}', encoding="utf-8")
    out, err = io.StringIO(), io.StringIO()
    told = {"LEDGERSTONE_WORKSHOP": str(GERMANY)}
    run_order(["quote", str(file)], out, err, told, date(2026, 11, 25))
    assert english_in(err.getvalue().splitlines()) == []


@pytest.mark.parametrize("text", [
    "Guten Tag,\nwir brauchen eine Arbeitsplatte, 1,83 m x 62 cm, mit einem runden Becken.\n",
    "Guten Tag,\nwir brauchen eine Arbeitsplatte aus Beton.\n",
    "Guten Tag,\nwann haben Sie offen?\n",
])  # fmt: skip
def test_a_message_s_command_speaks_german(tmp_path: Path, text: str) -> None:
    """What was read, what is to be asked, and that nothing can be priced yet."""
    file = tmp_path / "nachricht.txt"
    file.write_text(text, encoding="utf-8")
    out, err = io.StringIO(), io.StringIO()
    told = {"LEDGERSTONE_WORKSHOP": str(GERMANY), "LEDGERSTONE_SIGNING_KEYS": "k" * 40}
    run_order(["enquiry", str(file)], out, err, told, date(2026, 11, 25))
    lines = (out.getvalue() + err.getvalue()).splitlines()
    assert len(lines) > 0
    said = [re.sub(r"/slabs\S*|/delivery\S*|/needed_by", "", line) for line in lines]
    assert english_in(said) == []


def test_a_calendar_that_cannot_be_read_is_reported_in_german() -> None:
    """Each reason why nothing of a calendar file is trusted."""
    speech = speech_in("de")
    entry = "BEGIN:VEVENT\r\nSUMMARY:Tisch\r\nDTSTART:20261201T080000Z\r\n{}END:VEVENT\r\n"
    whole = "BEGIN:VCALENDAR\r\n{}END:VCALENDAR"
    texts = ["", "BEGIN:VCALENDAR", "BEGIN:VCALENDAR" + "x" * 4_000_001]
    texts.append(whole.format(entry.format("RRULE:FREQ=SECONDLY\r\n")))
    rules = BookingRules(file="kalender.ics", table_words=("Tisch",))
    found = [read_bookings(text, rules, "Europe/Berlin", date(2026, 11, 25)) for text in texts]
    why = [one.why_not for one in found]
    assert None not in why
    assert english_in([speech.say(one) for one in why if one is not None]) == []


def test_the_german_profile_says_nothing_in_english() -> None:
    """Its comments, and what it says to customers."""
    lines = [line for line in profile_text(GERMANY).splitlines() if not line.startswith("#")]
    said = [part for line in lines for part in re.findall(r'"([^"]*)"', line)]
    assert english_in(said) == []
    assert TYPED["germany"]
