"""Liveness, readiness with the profile's state, and metrics."""

from __future__ import annotations

import time
from dataclasses import dataclass, field
from datetime import datetime
from ipaddress import ip_address
from typing import Any

from flask import Blueprint, Response, jsonify, request

from ledgerstone import __version__
from ledgerstone.api import guard
from ledgerstone.api.app_context import AppContext
from ledgerstone.api.counts import Counts
from ledgerstone.api.lane import ActiveClients, Lane
from ledgerstone.api.limits import Gate, is_forwarded
from ledgerstone.codec.service_schemas import HEALTH
from ledgerstone.message import Message
from ledgerstone.wording import Speech, workshop_speech

_TEXT = "text/plain; version=0.0.4; charset=utf-8"


@dataclass(frozen=True, slots=True)
class Refusal:
    """A changed profile that was not loaded because of its faults."""

    at: datetime
    faults: int


@dataclass(slots=True)
class Running:
    """State that is kept when the profile is reloaded: gate, lane, counters, refused profile."""

    gate: Gate = field(default_factory=lambda: Gate(most_waiting=16))
    counts: Counts | None = None
    refused: Refusal | None = None
    lane: Lane = field(default_factory=Lane)
    active_clients: ActiveClients = field(default_factory=ActiveClients)


def health_routes(context: AppContext, running: Running) -> Blueprint:
    """Make the routes that report the state of the service."""
    health = Blueprint("health", __name__)

    @health.get("/v1/health/live")
    def live() -> Response:
        return jsonify(HEALTH.dump({"status": "live"}))

    @health.get("/v1/health/ready")
    def ready() -> Response:
        members = {"status": "ready", "version": __version__, **_sources(context)}
        speech = _speech(context)
        return jsonify(HEALTH.dump({**members, **_refused(running.refused, speech)}))

    @health.get("/metrics")
    def metrics() -> Response:
        if not _asked_from_here():
            guard.must_be_maker(context.settings)
        text = running.counts.text() if running.counts is not None else ""
        return Response(text, content_type=_TEXT)

    return health


def _sources(context: AppContext) -> dict[str, Any]:
    """Return the state of the profile, and of the calendar if there is one."""
    values = context.workshop.standing
    sources: dict[str, Any] = {
        "profile": context.workshop.fingerprint,
        "profile_values": {
            "yours": values.yours,
            "usual": values.usual,
            "invented": values.invented,
            "trial": values.trial,
        },
    }
    calendar = context.calendar
    if calendar.path is None:
        return sources
    today = context.today()
    fault, read = calendar.fault(today), calendar.read(today)
    members = {"status": "read"}
    if fault is not None:
        members = {"status": "not-read", "says": _speech(context).say(fault)}
    if read.fingerprint:
        members["bookings"] = read.fingerprint
    age_hours = calendar.age_hours(time.time())
    return {**sources, "calendar": {**members, "age_hours": age_hours}}


def _speech(context: AppContext) -> Speech:
    return workshop_speech(context.workshop.workshop.language, context.workshop)


def _refused(refusal: Refusal | None, speech: Speech) -> dict[str, dict[str, str]]:
    if refusal is None:
        return {}
    text = speech.say(Message("profile-refused", faults=refusal.faults))
    return {"profile_refused": {"at": refusal.at.isoformat(timespec="seconds"), "says": text}}


def _asked_from_here() -> bool:
    """Return whether the request comes from this machine itself, not forwarded by a proxy."""
    if is_forwarded():
        return False
    try:
        return ip_address(request.remote_addr or "").is_loopback
    except ValueError:
        return False
