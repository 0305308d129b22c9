"""The compose file: of the published schema, with every setting passed, pinned, and kept apart."""

import json
import re
from fnmatch import fnmatch
from importlib.resources import files
from typing import Any

import jsonschema
import pytest
import yaml

from design.source import ROOT
from ledgerstone.settings import _NAMES

COMPOSE = yaml.safe_load((ROOT / "docker/compose.yaml").read_text(encoding="utf-8"))
SERVICES: dict[str, dict[str, Any]] = COMPOSE["services"]
EXAMPLE = (ROOT / "docker/env.example").read_text(encoding="utf-8")
# Told by the container itself, or of no use behind the proxy.
_NOT_PASSED = {"WEB", "RATE", "MOST_WAITING"}


def test_the_file_is_of_the_published_schema() -> None:
    """The Compose Specification's own JSON Schema has nothing to say of it."""
    vendor = files("check_jsonschema") / "builtin_schemas" / "vendor" / "compose-spec.json"
    schema = json.loads(vendor.read_text(encoding="utf-8"))
    jsonschema.validators.validator_for(schema)(schema).validate(COMPOSE)
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate({**COMPOSE, "services": {"service": {"mem_limits": 1}}}, schema)


def test_every_setting_reaches_the_service() -> None:
    """Every setting of the service is passed to it."""
    passed = {name.removeprefix("LEDGERSTONE_") for name in SERVICES["service"]["environment"]}
    assert set(_NAMES) - _NOT_PASSED <= passed


def test_what_is_asked_of_the_maker_is_in_the_example() -> None:
    """Every variable that the file takes from docker/.env is in env.example, and no other."""
    text = (ROOT / "docker/compose.yaml").read_text(encoding="utf-8")
    asked = set(re.findall(r"(?<!\$)\$\{([A-Z_0-9]+)", text))
    given = set(re.findall(r"(?m)^([A-Z_0-9]+)=", EXAMPLE))
    assert asked == given


def test_images_from_elsewhere_are_pinned() -> None:
    """No image that is fetched is whatever was newest that day."""
    fetched = [one["image"] for one in SERVICES.values() if "build" not in one]
    assert len(fetched) == 2
    base = re.findall(r"(?m)^ARG BASE=(.*)$", (ROOT / "docker/Dockerfile").read_text("utf-8"))
    for image in [*fetched, *base]:
        assert re.search(r":v?\d+\.\d+|@sha256:[0-9a-f]{64}$", image), image


def test_the_makers_folder_is_written_by_init_alone_unless_the_maker_says() -> None:
    """Only init mounts docker/shop to write in it, but where docker/.env lets the form write."""
    mounts = {
        name: [mount for mount in one.get("volumes", ()) if mount.startswith("./shop:")]
        for name, one in SERVICES.items()
    }
    assert mounts["init"] == ["./shop:/shop"]
    assert SERVICES["init"]["profiles"] == ["init"]
    assert mounts.pop("service") == ["./shop:/shop:${SHOP_MODE:-ro}"]
    assert [name for name, found in mounts.items() if found] == ["init"]
    assert re.search(r"(?m)^SHOP_MODE=ro$", EXAMPLE)
    assert re.search(r"(?m)^LEDGERSTONE_WORKSHOP_WRITABLE=$", EXAMPLE)


def test_nothing_serves_as_root() -> None:
    """The service's user is the image's own, or the one that the maker names."""
    image = re.findall(r"(?m)^USER (.*)$", (ROOT / "docker/Dockerfile").read_text("utf-8"))
    assert image == ["10001:10001"]
    assert SERVICES["service"]["user"] == "${SHOP_OWNER:-10001:10001}"
    assert re.search(r"(?m)^SHOP_OWNER=10001:10001$", EXAMPLE)


def test_kept_drawings_are_no_part_of_the_proxys_memory() -> None:
    """The cache lies on a volume; what lies in memory is small beside the proxy's limit."""
    nginx = (ROOT / "docker/nginx.conf").read_text(encoding="utf-8")
    places = set(re.findall(r"proxy_cache_path (\S+)/\w+ ", nginx))
    assert places == {"/var/cache/ledgerstone"}
    assert "drawings:/var/cache/ledgerstone" in SERVICES["proxy"]["volumes"]
    assert SERVICES["proxy"]["tmpfs"] == ["/tmp:size=8m"]  # noqa: S108 - the container's
    assert SERVICES["proxy"]["mem_limit"] == "64m"


def test_every_file_that_is_mounted_is_there() -> None:
    """No mount of a file makes an empty folder in its place."""
    mounts = [m for one in SERVICES.values() for m in one.get("volumes", ()) if m[0] == "."]
    assert len(mounts) > 5
    for mount in mounts:
        assert (ROOT / "docker" / mount.partition(":")[0]).exists(), mount


@pytest.mark.parametrize("name", ["docker/.env", "docker/shop/workshop.toml", "docker/shop/a.ics"])
def test_what_is_the_makers_own_is_ignored_by_git(name: str) -> None:
    """Keys and the workshop's files are not put under version control by accident."""
    lines = (ROOT / ".gitignore").read_text(encoding="utf-8").split()
    assert any(fnmatch(name, line) for line in lines)
    assert f"!{name}" not in lines


def _megabytes(text: str) -> float:
    return float(re.fullmatch(r"(\d+)m", text)[1])  # type: ignore[index]  # else the test fails


def _setting(name: str) -> str:
    found = re.search(rf"(?m)^{name}=(.*)$", EXAMPLE)
    assert found
    return found[1]


def test_the_limits_of_memory_add_up() -> None:
    """The service's limit is its workers' bounds and their heartbeats, in every place the same."""
    conf = (ROOT / "docker/gunicorn.conf.py").read_text(encoding="utf-8")
    settled = float(re.search(r"(?m)^SETTLED_MB = ([\d.]+)", conf)[1])  # type: ignore[index]
    hardest = (ROOT / "tests/load/test_hardest.py").read_text(encoding="utf-8")
    heaviest = float(re.search(r"(?m)^MAX_MB = ([\d.]+)", hardest)[1])  # type: ignore[index]
    workers, limit = int(_setting("WEB_CONCURRENCY")), _setting("SERVICE_MEMORY")
    heartbeats = _megabytes(SERVICES["service"]["shm_size"])
    assert heaviest + (workers - 1) * settled + heartbeats == _megabytes(limit)
    assert SERVICES["service"]["mem_limit"] == f"${{SERVICE_MEMORY:-{limit}}}"
    assert SERVICES["service"]["environment"]["WEB_CONCURRENCY"].endswith(f":-{workers}}}")
    assert _megabytes(limit) + _megabytes(SERVICES["proxy"]["mem_limit"]) <= 512
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    for said in (f"{settled:.0f} MB", f"{heaviest:.0f} MB", f"{_megabytes(limit):.0f} MB"):
        assert said in readme
        assert said in EXAMPLE.replace("\n# ", " ")
