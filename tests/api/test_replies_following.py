"""A letter that sends an order back says what follows from a thing under it, once."""

from flask.testing import FlaskClient

from support.demonstration import MAKER_KEY

KEY = {"Authorization": f"Bearer {MAKER_KEY}"}
THIN = {
    "slabs": [
        {
            "outline": {"kind": "rectangle", "length": 900, "width": 500},
            "thickness": 12,
            "finish": {"surface": "polished"},
        }
    ]
}


def test_what_follows_is_stated_once_and_has_no_number(client: FlaskClient) -> None:
    """A slab too thin is one thing to change, its edges and its steel said under that."""
    letter = client.post("/v1/replies", json={"order": THIN}, headers=KEY).get_json()
    quote = client.post("/v1/quotes", json=THIN).get_json()
    says = {one["check"]: one["says"] for one in quote["findings"]}
    for text in (letter["text"], letter["html"]):
        plain = " ".join(text.split())
        for check in ("too-thin", "edge-too-thin-for-finish", "cover-too-thin"):
            assert plain.count(says[check]) == 1
    assert "1. The slab is 12 mm thick" in letter["text"]
    assert "2. " not in letter["text"]
