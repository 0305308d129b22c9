"""The HTTP service: ``create_app`` makes it. The only package that knows flask."""

from __future__ import annotations

from dataclasses import replace

from flask import Flask, Response
from flask.json.provider import DefaultJSONProvider
from werkzeug.middleware.proxy_fix import ProxyFix

from ledgerstone.api import guard, keys, lane, limits, logs, metrics, problems
from ledgerstone.api.app_context import APP_CONTEXT, AppContext
from ledgerstone.api.counts import Counts
from ledgerstone.api.desk_routes import desk_routes
from ledgerstone.api.enquiry_routes import enquiry_routes
from ledgerstone.api.health import Running, health_routes
from ledgerstone.api.languages import WORKSHOP_EXTENSION, request_speech
from ledgerstone.api.offer_routes import offer_routes
from ledgerstone.api.page import page_routes
from ledgerstone.api.paper_routes import paper_routes
from ledgerstone.api.routes import routes
from ledgerstone.api.workshop_routes import workshop_routes
from ledgerstone.calendar_file import calendar_file_of
from ledgerstone.codec.problem_kinds import PROBLEM_KINDS
from ledgerstone.codec.strict_json import LARGEST_BYTES
from ledgerstone.codec.tokens import Tokens
from ledgerstone.media_types import TEXT
from ledgerstone.papers.templates import templates_in
from ledgerstone.settings import Settings
from ledgerstone.wording.own import load_workshop
from ledgerstone.workshop.records import Workshop

__all__ = ["Settings", "create_app"]


def create_app(settings: Settings | None = None, running: Running | None = None) -> Flask:
    """Make the service of one workshop.

    Parameters
    ----------
    running
        State that is kept when a changed profile replaces this app by another one.

    Raises
    ------
    ProfileError
        The profile, or a template beside it, has faults.
    TokenError
        A signing key is too short.
    """
    running = running if running is not None else Running()
    settings = settings if settings is not None else Settings()
    templates = templates_in(settings.workshop_path.parent)
    workshop = _workshop(settings)
    calendar = calendar_file_of(workshop, settings.workshop_path, settings.calendar_path)
    context = AppContext(settings, workshop, Tokens(settings.signing_keys), templates, calendar)
    app = Flask("ledgerstone", static_folder=None)
    app.extensions[APP_CONTEXT] = context
    app.extensions[WORKSHOP_EXTENSION] = workshop
    # One byte more is allowed so that it can be counted: a chunked body is truncated, not refused.
    app.config["MAX_CONTENT_LENGTH"] = LARGEST_BYTES + 1
    provider = DefaultJSONProvider(app)
    provider.sort_keys = False  # members keep the order of their schema
    app.json = provider
    app.register_blueprint(routes(context))
    app.register_blueprint(offer_routes(context))
    app.register_blueprint(paper_routes(context))
    app.register_blueprint(enquiry_routes(context))
    app.register_blueprint(desk_routes(context))
    app.register_blueprint(workshop_routes(context))
    app.register_blueprint(health_routes(context, running))
    _watched(app, settings, running)
    problems.register(app)
    guard.register(app, context.workshop)
    _problem_pages(app)
    if settings.web_folder is not None:
        page_routes(app, settings.web_folder, context)
    if running.counts is None:
        running.counts = Counts(sorted({rule.rule for rule in app.url_map.iter_rules()}))
    metrics.register(app, running.counts)
    return app


def _watched(app: Flask, settings: Settings, running: Running) -> None:
    """Log every request and limit its rate; client addresses come from trusted proxies."""
    logs.register(app)
    lane.register(app, running.lane)
    limits.register(app, settings, running.gate, running.active_clients)
    keys.register(app, settings)
    if settings.proxies:
        app.wsgi_app = ProxyFix(app.wsgi_app, x_for=settings.proxies)  # type: ignore[method-assign]  # as flask documents


def _workshop(settings: Settings) -> Workshop:
    workshop = load_workshop(settings.workshop_path)
    if settings.base_url is None:
        return workshop
    base = settings.base_url
    return replace(workshop, web=replace(workshop.web, base_url=base, page_url=f"{base}/"))


def _problem_pages(app: Flask) -> None:
    """Serve a page about each problem at the address in its ``type``."""

    @app.get("/problems/<kind>")
    def problem_page(kind: str) -> Response:
        for known in PROBLEM_KINDS:
            if known.name == kind:
                speech = request_speech()
                title, usual = speech.say(known.title), speech.say(known.usual)
                text = f"{known.status} {title}\n{usual}\n"
                response = Response(text, mimetype=TEXT)
                response.vary.add("Accept-Language")
                return response
        return problems.problem(404)
