"""A letter that sends an order back says what follows from a thing under it, once."""

from flask.testing import FlaskClient

from conftest import MAKER_KEY

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


def test_what_follows_is_said_once_and_has_no_number(client: FlaskClient) -> None:
    """A slab too thin is one thing to change, its edges and its steel said under that."""
    letter = client.post("/v1/replies", json={"order": THIN}, headers=KEY).get_json()
    for text in (letter["text"], letter["html"]):
        plain = " ".join(text.split())
        assert plain.count("the thinnest we cast is 25 mm") == 1
        assert plain.count("we need 15 mm of upright edge") == 1
        assert plain.count("1 mm of concrete over its steel") == 1
    assert "1. The slab is 12 mm thick" in letter["text"]
    assert "2. " not in letter["text"]
