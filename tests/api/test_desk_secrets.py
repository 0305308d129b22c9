"""Costs, hours and margins without the key: every call in each of its forms, and all its links."""

import email
import email.policy
import io
import json
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest
from PIL import Image
from PIL.PngImagePlugin import PngInfo

from ledgerstone.contract.calls import CALLS
from ledgerstone.contract.example_orders import ORDERS
from support.asking import keys
from support.demonstration import EXAMPLE_ORDER
from support.offered import MAKER, reworded, service
from support.postbox import ASKED, Postbox

if TYPE_CHECKING:
    from flask.testing import FlaskClient

# Members that belong to the maker alone, and figures of a profile that nothing else comes to.
OURS = {"costs", "governing", "margin_percent", "hands_minutes", "operations", "deposit_round_to"}
HOUR, MARGIN = "61.37", "43.21"
WEB = Path(__file__).resolve().parents[2] / "web"
FORM = {
    "outline/kind": "rectangle",
    "outline/length": "1450",
    "outline/width": "560",
    "thickness": "40",
    "place": "indoors",
    "delivery/kind": "collect",
    "unit": "mm",
}
TO_SEND = (
    ("/v1/replies", ("application/json", "message/rfc822")),
    *((f"/v1/sheets/{kind}", ("text/html", "application/pdf")) for kind in ("approval", "care")),
    ("/v1/sheets/fitting", ("application/pdf",)),
)


@pytest.fixture(scope="module")
def asked(tmp_path_factory: pytest.TempPathFactory) -> "FlaskClient":
    """A service whose hour and margin are figures of their own."""
    changes = (
        ("\nhour = 38.00", f"\nhour = {HOUR}"),
        ("\nmargin_percent = 40", f"\nmargin_percent = {MARGIN}"),
    )
    profile = reworded(tmp_path_factory.mktemp("own"), *changes)
    return service(profile=profile, web_folder=WEB)


@pytest.fixture(scope="module")
def secrets(asked: "FlaskClient") -> set[str]:
    """Figures for the maker only, with their values for the maker."""
    told = asked.post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()
    assert {"costs", "governing", "margin_percent"} <= set(keys(told))
    secrets = {"Hours: ", MARGIN, told["costs"]["total"]}
    assert all(secret in json.dumps(told) for secret in secrets)
    return secrets | {HOUR}


def text_of(mimetype: str, content: bytes) -> str:
    """All text of an answer: a PDF's pages and properties, a picture's notes, a mail's parts."""
    if mimetype == "message/rfc822":
        mail = email.message_from_bytes(content, policy=email.policy.default)
        parts = [part for part in mail.walk() if not part.is_multipart()]
        read = (text_of(p.get_content_type(), bytes(p.get_payload(decode=True))) for p in parts)
        return " ".join([str(mail.items()), *read])
    if mimetype == "application/pdf":
        printed = ("pdftotext", "-", "-"), ("pdfinfo", "-")
        runs = [subprocess.run(c, input=content, capture_output=True, check=True) for c in printed]
        return " ".join(run.stdout.decode() for run in runs)
    if mimetype == "image/png":
        picture = Image.open(io.BytesIO(content))
        picture.load()  # what stands after the picture's data too
        return json.dumps({**picture.info, **picture.getexif()}, default=str)
    return content.decode()


def linked(client: "FlaskClient", body: dict[str, Any]) -> Iterator[tuple[str, Any]]:
    """What the links of an order's drawings lead to: in lines, in points, on paper, the stress."""
    for link in {body[name] for name in ("plan", "view", "assembled", "true_size") if name in body}:
        path = link[link.index("/v1/") :]
        for each in {path, path.replace(".svg", ".png"), path.replace("plan.svg", "stress.svg")}:
            yield each, client.get(each)


def answers(client: "FlaskClient") -> Iterator[tuple[str, Any]]:
    """Every call, in each of its forms, as someone without the key asks it, and every link."""
    for name, (_, order) in ORDERS.items():
        quoted = client.post("/v1/quotes", json=order)
        yield f"quote of {name}", quoted
        drawn = client.post("/v1/drawings", json=order)
        yield from linked(client, drawn.get_json())
        token = quoted.get_json().get("token")
        if token:
            yield f"link of {name}", client.get(f"/v1/quotes/{token}")
            again = {**order, "since": token, "language": "de"}
            yield f"German revision of {name}", client.post("/v1/quotes", json=again)
        brief = client.post("/v1/quotes", json=order, headers={"Prefer": "return=minimal"})
        yield f"minimal quote of {name}", brief
    yield "form without a script", client.post("/", data=FORM)
    for call, form, asked in called(client):
        yield f"{call} as {form}", asked


def called(client: "FlaskClient") -> Iterator[tuple[str, str, Any]]:
    """Every call in each of its forms, asked by what it takes."""
    token = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()["token"]
    drawing = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["plan"].split("/")[-2]
    slab = {**EXAMPLE_ORDER["slabs"][0], "cutouts": []}
    bodies = {
        "createQuote": EXAMPLE_ORDER,
        "createDrawings": EXAMPLE_ORDER,
        "createPlacing": {"slab": slab, "add": "basin"},
        "createRequest": {"token": token, **ASKED},
    }
    for call in CALLS:
        if call.name == "getDocument":
            continue  # it names the members, and holds the examples of the demonstration
        named = {
            "token": drawing if "drawings" in call.path else token,
            "name": "plan",
            "kind": "too-many" if call.name == "getProblem" else "care",
        }
        for form in call.answers[200].forms:
            asked = client.open(
                call.path.format(**named),
                method=call.method.upper(),
                json=bodies.get(call.name, {"order": EXAMPLE_ORDER}),
                headers={"Accept": str(form)},
            )
            yield call.name, str(form), asked


def told_of(name: str, answer: Any, secrets: set[str]) -> tuple[str, set[str]]:  # noqa: ANN401  a response
    """What an answer tells that is the maker's alone."""
    members = OURS & set(keys(answer.get_json(silent=True)))
    text = f"{text_of(answer.mimetype, answer.data)} {answer.headers}"
    return name, members | {secret for secret in secrets if secret in text}


def test_every_call_answers_without_the_key_or_needs_it(asked: "FlaskClient") -> None:
    """So that what is looked through below is answers; a request goes to no mail server here."""
    needs = {call.name for call in CALLS if call.maker == "must"}
    for name, form, answer in called(asked):
        wanted = 401 if name in needs else 404 if name == "createRequest" else 200
        assert answer.status_code == wanted, f"{name} as {form}: {answer.text[:200]}"


def test_a_request_that_is_sent_tells_none_of_them(
    mailing: "FlaskClient", postbox: Postbox, token: str
) -> None:
    """Neither its answer nor the letter that it sends."""
    told = mailing.post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()
    costs = {"Hours: ", told["costs"]["total"]}
    answer = mailing.post("/v1/requests", json={"token": token, **ASKED})
    assert answer.status_code == 200
    assert told_of("request", answer, costs) == ("request", set())
    letter = postbox.letter().as_string()
    assert not [cost for cost in costs if cost in letter]


def test_no_answer_without_the_key_tells_them(asked: "FlaskClient", secrets: set[str]) -> None:
    """In JSON, SVG, a picture's own notes, a PDF's text and properties; some are refused."""
    seen = [(name, answer, *told_of(name, answer, secrets)[1:]) for name, answer in answers(asked)]
    assert [(name, told) for name, _, told in seen if told] == []
    forms = {answer.mimetype for _, answer, _ in seen if answer.status_code == 200}
    wanted = {"application/json", "application/pdf", "image/png", "image/svg+xml", "text/html"}
    assert forms >= wanted
    refused = {name.rpartition("/")[2] for name, answer, _ in seen if answer.status_code == 401}
    assert "stress.svg" in refused


@pytest.mark.parametrize(("path", "forms"), TO_SEND)
def test_no_paper_that_is_sent_on_tells_them(
    asked: "FlaskClient", secrets: set[str], path: str, forms: tuple[str, ...]
) -> None:
    """Nor do letters, drafts and customers' sheets, which the maker asks for with the key."""
    for form in forms:
        answer = asked.post(path, json={"order": EXAMPLE_ORDER}, headers=MAKER | {"Accept": form})
        assert answer.status_code == 200, answer.text
        assert told_of(form, answer, secrets) == (form, set())


def test_the_eye_that_looks_sees_what_is_there(asked: "FlaskClient") -> None:
    """It reads a picture's notes and a printed sheet: an empty list above is no blind eye's."""
    notes, file = PngInfo(), io.BytesIO()
    notes.add_itxt("Comment", f"Margin {MARGIN}", zip=True)
    Image.new("L", (2, 2)).save(file, "png", pnginfo=notes)
    assert MARGIN in text_of("image/png", file.getvalue())
    accept = MAKER | {"Accept": "application/pdf"}
    sheet = asked.post("/v1/job-sheets", json={"order": EXAMPLE_ORDER}, headers=accept)
    assert "Seed-tray bench" in text_of("application/pdf", sheet.data)
