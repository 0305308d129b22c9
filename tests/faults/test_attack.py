"""What one caller can do to the others: heavy orders at once, and heavy orders that never end."""

import http.client
import json
import threading
import time
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import pytest

from support.demonstration import EXAMPLE_ORDER, MAKER_KEY
from support.documents import Json
from support.hardest import crowded
from support.serving import ROOT, TYPE, Served, ask, served, wait_for

ATTACKER, CUSTOMER = "203.0.113.7", "203.0.113.8"  # RFC 5737: addresses of no one's
HEAVY_AT_ONCE = 16
ORDINARY_S, PAGE_S = 2.0, 0.5
LONGEST_S = 20.0
MAX_MB = 250.0  # of one worker, at its heaviest
ORDER = json.dumps(EXAMPLE_ORDER).encode()


@dataclass(frozen=True, slots=True)
class Seen:
    """What one caller got, and after how long."""

    path: str
    status: int
    took_s: float
    retry_after: str | None


@pytest.fixture(scope="module")
def service() -> Iterator[Served]:
    """Two workers and the page, told by a proxy who asks."""
    with served(forked=False, PROXIES="1", WEB=str(ROOT / "web")) as running:
        ask(running.port)
        yield running


def _asked(port: int, address: str, path: str, body: bytes | None = None) -> Seen:
    """Ask once from an address."""
    began_s = time.monotonic()
    caller = http.client.HTTPConnection("127.0.0.1", port, timeout=LONGEST_S)
    try:
        headers = {"X-Forwarded-For": address, **(TYPE if body else {})}
        caller.request("POST" if body else "GET", path, body, headers)
        got = caller.getresponse()
        got.read()
        found = got.status, got.getheader("Retry-After")
    except OSError:
        found = 0, None
    finally:
        caller.close()
    return Seen(path, found[0], time.monotonic() - began_s, found[1])


def _heavy(number: int) -> bytes:
    order: Json = crowded(1, 20, "units", 20)
    order["slabs"][0]["outline"]["length"] -= number
    return json.dumps(order).encode()


def _customer(port: int, until: threading.Event) -> list[Seen]:
    """An ordinary customer beside it all: the page, how the service is, a link's order, a quote."""
    seen = []
    for _ in range(6):
        for path, body in (("/", None), ("/v1/health/live", None), ("/v1/choices", None)):
            seen.append(_asked(port, CUSTOMER, path, body))
        seen.append(_asked(port, CUSTOMER, "/v1/quotes", ORDER))
        if until.wait(0.1):
            break
    return seen


def _held(seen: Sequence[Seen]) -> None:
    priced = [one for one in seen if one.path == "/v1/quotes"]
    others = [one for one in seen if one.path != "/v1/quotes"]
    print(
        f"customer: {len(priced)} quotes, slowest {max(one.took_s for one in priced):.2f} s;"
        f" page and health, slowest {max(one.took_s for one in others):.2f} s"
    )
    assert {one.status for one in seen} == {200}
    assert max(one.took_s for one in priced) <= ORDINARY_S
    assert max(one.took_s for one in others) <= PAGE_S


@pytest.mark.alone
def test_heavy_orders_at_once_from_one_address(service: Served) -> None:
    """Of sixteen some get Retry-After; a customer has a price in 2 s, a page in 0.5 s."""
    got: list[Seen] = []
    threads = [
        threading.Thread(
            target=lambda n=n: got.append(_asked(service.port, ATTACKER, "/v1/quotes", _heavy(n)))
        )
        for n in range(HEAVY_AT_ONCE)
    ]
    for thread in threads:
        thread.start()
    seen = _customer(service.port, threading.Event())
    for thread in threads:
        thread.join()
    counts = {
        status: sum(one.status == status for one in got) for status in {o.status for o in got}
    }
    print(f"attacker: {counts}, the last after {max(one.took_s for one in got):.1f} s")
    _held(seen)
    refused = [one for one in got if one.status in (429, 503)]
    assert len(refused) + counts.get(200, 0) == HEAVY_AT_ONCE
    assert refused
    assert all(one.retry_after for one in refused)


@pytest.mark.alone
def test_two_who_never_stop(service: Served) -> None:
    """Two addresses that always ask for something heavy keep one worker, and never the other."""
    stop = threading.Event()

    def go_on(address: str, first: int) -> None:
        number = first
        while not stop.is_set():
            number += 1
            _asked(service.port, address, "/v1/quotes", _heavy(number))
            stop.wait(0.05)

    threads = [threading.Thread(target=go_on, args=(f"203.0.113.{20 + k}", 60 * k)) for k in (1, 2)]
    for thread in threads:
        thread.start()
    time.sleep(0.5)
    try:
        seen = _customer(service.port, threading.Event())
    finally:
        stop.set()
        for thread in threads:
            thread.join()
    _held(seen)


def _counted(service: Served, status: int) -> float:
    """Return how many orders have been answered with a status, by the service's counters."""
    text = ask(service.port, "/metrics", None).body.decode()
    named = f'route="/v1/quotes",status="{status}"'
    return sum(float(line.rpartition(" ")[2]) for line in text.splitlines() if named in line)


def test_who_has_disconnected_is_worked_for_no_more(service: Served) -> None:
    """An order whose caller leaves at once is dropped before its work, and never quoted."""
    before = _counted(service, 200), _counted(service, 503)
    caller = http.client.HTTPConnection("127.0.0.1", service.port, timeout=LONGEST_S)
    caller.request("POST", "/v1/quotes", _heavy(300), {**TYPE, "X-Forwarded-For": ATTACKER})
    caller.close()
    wait_for(lambda: (_counted(service, 200), _counted(service, 503)) != before)
    assert (_counted(service, 200), _counted(service, 503)) == (before[0], before[1] + 1)


def test_papers_are_printed_apart(service: Served) -> None:
    """A large order's job sheet as PDF leaves no worker larger than the heaviest order may."""
    as_pdf = {**TYPE, "Authorization": f"Bearer {MAKER_KEY}", "Accept": "application/pdf"}
    for number in range(2):
        order = crowded(2, 6, "units", 6)
        order["slabs"][0]["outline"]["length"] -= number
        caller = http.client.HTTPConnection("127.0.0.1", service.port, timeout=LONGEST_S)
        caller.request("POST", "/v1/job-sheets", json.dumps({"order": order}), as_pdf)
        assert caller.getresponse().read(5) == b"%PDF-"
        caller.close()
    most = max(service.rss_mb("VmHWM"))
    print(f"most that a worker held: {most:.0f} MB")
    assert most <= MAX_MB


def test_a_worker_that_stays_large_hands_over(service: Served) -> None:
    """After many heavy orders no worker holds more between requests than its bound, 180 MB."""
    for number in range(4):
        _asked(service.port, CUSTOMER, "/v1/quotes", _heavy(310 + number))
    time.sleep(1.0)
    print(f"workers hold {[round(mb) for mb in service.rss_mb()]} MB")
    assert max(service.rss_mb()) <= 180.0
