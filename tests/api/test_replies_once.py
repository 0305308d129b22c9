"""POST /v1/replies of what is sent back: no change is named twice."""

import re
from typing import TYPE_CHECKING

from support.asking import changed
from support.offered import MAKER

if TYPE_CHECKING:
    from flask.testing import FlaskClient

STOPPED = changed(("/slabs/0/cutouts/0/centre/y", "218 mm"))


def test_a_letter_names_each_change_once(client: "FlaskClient") -> None:
    """What settles one finding and everything is told once; other ways stand by their finding."""
    sent = client.post("/v1/quotes", json=STOPPED).get_json()
    above = sent["fix_all"]
    shown = [one for finding in sent["findings"] for one in finding["remedies"]]
    assert above["patch"] in [one["patch"] for one in shown]
    made = client.post("/v1/replies", json={"order": STOPPED}, headers=MAKER).get_json()
    for part in (made["text"], made["html"]):
        text = " ".join(re.sub(r"<[^>]+>", " ", part).split())
        for says in {one["says"] for one in shown} | {" ".join(above["says"])}:
            assert text.count(says) == 1, says
