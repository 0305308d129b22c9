"""The route of the job sheet: what the workshop works from once the customer says yes."""

from __future__ import annotations

from flask import Blueprint, Response, json

from ledgerstone.api import guard
from ledgerstone.api.app_context import AppContext
from ledgerstone.api.problems import problem, problem_response
from ledgerstone.application.answers import write_sent_back
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.job_sheets import make_job, write_job
from ledgerstone.application.resolving import ResolvedRequest
from ledgerstone.papers.job_sheet import job_page, job_print
from ledgerstone.quote import SentBack
from ledgerstone.schedule.plan_ics import plan_ics

_JSON, _HTML, _PDF = "application/json", "text/html", "application/pdf"
_ICS = "text/calendar"
_POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'"


def job_routes(context: AppContext) -> Blueprint:
    """Make the ``/v1`` route of one workshop's job sheets."""
    v1 = Blueprint("jobs", __name__, url_prefix="/v1")

    @v1.post("/job-sheets")
    def job_sheets() -> Response:
        guard.must_be_maker(context.settings)
        form = guard.accepted(_JSON, _HTML, _PDF, _ICS)
        asked = context.quote_context(for_maker=True)
        job = make_job(guard.json_body(), asked)
        if isinstance(job, ResolvedRequest):
            return _sent_back(job, asked)
        if form == _PDF:
            response = Response(job_print(job), mimetype=_PDF)
            response.headers["Content-Disposition"] = 'attachment; filename="job-sheet.pdf"'
            return response
        if form == _ICS:
            plan = plan_ics(job.quote.lead_time, job.quote.order, job.workshop)
            return Response(plan, mimetype=_ICS)
        if form == _JSON:
            return Response(json.dumps(write_job(job)), mimetype=_JSON)
        response = Response(job_page(job, context.templates), mimetype=_HTML)
        response.headers["Content-Security-Policy"] = _POLICY
        return response

    return v1


def _sent_back(resolved: ResolvedRequest, context: QuoteContext) -> Response:
    if not isinstance(resolved.answer, SentBack):
        return problem(500)
    return problem_response(write_sent_back(resolved.answer, resolved.document, context))
