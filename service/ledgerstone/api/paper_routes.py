"""The maker's routes: replies, sheets and the job sheet, in the requested format."""

from __future__ import annotations

from flask import Blueprint, Response, json

from ledgerstone.api import guard
from ledgerstone.api.app_context import AppContext
from ledgerstone.api.problems import problem, problem_response
from ledgerstone.application.answers import write_sent_back
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.cutting import make_cut_file
from ledgerstone.application.letters import draft_letter, write_letter
from ledgerstone.application.papers import FORMS, make_paper, make_plan, render
from ledgerstone.application.resolving import ResolvedRequest
from ledgerstone.media_types import DXF, EML, HTML, ICS, JSON_TYPE, PDF, SVG
from ledgerstone.message import Message
from ledgerstone.papers.kinds import JOB, SHEETS
from ledgerstone.quote import SentBack

_POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'"


def paper_routes(context: AppContext) -> Blueprint:
    """Make the ``/v1`` routes of one workshop's papers."""
    v1 = Blueprint("papers", __name__, url_prefix="/v1")

    @v1.post("/replies")
    def replies() -> Response:
        guard.must_be_maker(context.settings)
        kind = guard.accepted(JSON_TYPE, EML)
        quote_context, templates = context.quote_context(for_maker=True), context.templates
        document = guard.json_body()
        if kind == EML:
            return _download(draft_letter(document, quote_context, templates), EML, "reply.eml")
        return Response(
            json.dumps(write_letter(document, quote_context, templates)), mimetype=JSON_TYPE
        )

    @v1.post("/sheets/<kind>")
    def sheets(kind: str) -> Response:
        guard.must_be_maker(context.settings)
        form = guard.accepted(*FORMS)
        if kind not in SHEETS:
            return problem(404, Message("no-such-sheet", kinds=", ".join(SHEETS)))
        return _paper(kind, form, context)

    @v1.post("/job-sheets")
    def job_sheets() -> Response:
        guard.must_be_maker(context.settings)
        form = guard.accepted(*FORMS, ICS, DXF, SVG)
        if form in (DXF, SVG):
            return _cut_file(form, context)
        return _plan(context) if form == ICS else _paper(JOB, form, context)

    return v1


def _paper(kind: str, form: str, context: AppContext) -> Response:
    quote_context = context.quote_context(for_maker=True)
    paper = make_paper(kind, guard.json_body(), quote_context)
    if isinstance(paper, ResolvedRequest):
        return _sent_back(paper, quote_context)
    written = render(paper, form, context.templates)
    if form == PDF:
        return _download(written, form, f"{kind}.pdf")
    response = Response(written, mimetype=form)
    if form == HTML:
        response.headers["Content-Security-Policy"] = _POLICY
    return response


def _plan(context: AppContext) -> Response:
    quote_context = context.quote_context(for_maker=True)
    plan = make_plan(guard.json_body(), quote_context)
    if isinstance(plan, ResolvedRequest):
        return _sent_back(plan, quote_context)
    return Response(plan, mimetype=ICS)


def _cut_file(form: str, context: AppContext) -> Response:
    quote_context = context.quote_context(for_maker=True)
    lines = make_cut_file(guard.json_body(), form, quote_context)
    if isinstance(lines, ResolvedRequest):
        return _sent_back(lines, quote_context)
    return _download(lines, form, "moulds.dxf" if form == DXF else "moulds.svg")


def _sent_back(resolved: ResolvedRequest, context: QuoteContext) -> Response:
    if not isinstance(resolved.answer, SentBack):
        return problem(500)
    return problem_response(write_sent_back(resolved.answer, resolved.document, context))


def _download(content: str | bytes, mimetype: str, name: str) -> Response:
    response = Response(content, mimetype=mimetype)
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response
