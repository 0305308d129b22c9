"""The same order on the same day is answered by the same bytes, whichever process answers."""

import json
import os
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis import strategies as st

from support.strategies.orders import modest_orders, orders

TESTS = Path(__file__).resolve().parents[1]
ANSWERING = """
import hashlib, json, sys
from datetime import date
from support.demonstration import MAKER_KEY, SIGNING_KEYS
from ledgerstone.api import Settings, create_app
day = date(2026, 11, 25)
settings = Settings(maker_key=MAKER_KEY, signing_keys=SIGNING_KEYS, today=lambda _: day)
client = create_app(settings).test_client()
for order in json.load(sys.stdin):
    answer = client.post("/v1/quotes", json=order)
    document = answer.get_json()
    document.pop("instance", None)  # a problem's own number, of this request alone
    said = json.dumps(document).encode()
    print(answer.status_code, hashlib.sha256(said).hexdigest())
"""


# Cut in two by its remedy, each piece with the walls that it meets.
BETWEEN_WALLS: dict[str, Any] = {
    "slabs": [
        {
            "outline": {"kind": "rectangle", "length": 750, "width": 1100},
            "thickness": 30,
            "size_from": "between-walls",
            "edges": {},
            "shade": {"name": "chalk"},
        }
    ],
    "delivery": {
        "kind": "fitted",
        "postcode": "HR9 7XX",
        "turn": {"from": 690, "into": 750},
        "lift": {"width": 630, "depth": 640, "door": 640, "height": 970, "rated_kg": 630},
    },
}


def _drawn(count: int, drawn_from: st.SearchStrategy[dict[str, Any]]) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = []

    @seed(10)
    @settings(
        max_examples=count,
        deadline=None,
        database=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(drawn_from)
    def draw(order: dict[str, Any]) -> None:
        found.append(order)

    draw()
    return found


def _begun(hash_seed: str) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, "-c", ANSWERING],
        env={
            **os.environ,
            "PYTHONHASHSEED": hash_seed,
            "OMP_NUM_THREADS": "1",
            "OPENBLAS_NUM_THREADS": "1",
            "PYTHONPATH": os.pathsep.join([str(TESTS), str(TESTS.parent / "service")]),
        },
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    )


def _answers(process: subprocess.Popen[str], asked: list[dict[str, Any]]) -> list[str]:
    said, _ = process.communicate(json.dumps(asked))
    assert process.returncode == 0
    return said.splitlines()


def _agree(asked: list[dict[str, Any]]) -> None:
    # Under these two seeds a set of "left" and "right" is gone through in two sequences.
    both = ((_begun("0"), asked), (_begun("1"), asked[::-1]))
    with ThreadPoolExecutor(2) as pool:
        one, other = pool.map(lambda pair: _answers(*pair), both)
    assert len(one) == len(asked)
    quoted = sum(line.startswith("200") for line in one)
    print(f"{len(asked)} orders, {quoted} quoted, two hash seeds and two sequences")
    assert one == other[::-1]


def test_a_few_orders_are_answered_alike() -> None:
    """Two processes with two hash seeds, asked in opposite sequence, answer to the byte alike."""
    _agree([BETWEEN_WALLS, *_drawn(4, modest_orders())])


@pytest.mark.long
@pytest.mark.parametrize("drawn_from", [modest_orders(), orders()], ids=["usual", "any"])
def test_a_thousand_orders_are_answered_alike(
    drawn_from: st.SearchStrategy[dict[str, Any]],
) -> None:
    """A thousand orders, two processes, two hash seeds, opposite sequences: the same bytes.

    Of usual orders most are quoted, of any most are sent back.
    """
    _agree(_drawn(1000, drawn_from))
