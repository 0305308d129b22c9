"""The page as the answer to its own form, for a browser without scripts."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from ledgerstone import form_page as page
from ledgerstone.application.changed_orders import patched
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.letter_pictures import picture_addresses
from ledgerstone.application.maker_terms import split_maker_terms
from ledgerstone.application.replying import fix_of, letter_effort, quote_view, sent_back_view
from ledgerstone.application.resolving import ResolvedRequest, Wanted, resolve
from ledgerstone.codec.faults_out import fault_members
from ledgerstone.errors import Fault, NotUnderstood, TooIntricate
from ledgerstone.form_page import Filling, Form, Habits, Sent, SpokenFault
from ledgerstone.papers import Letter, Templates
from ledgerstone.papers.reply import PageAnswer, answer_in_page
from ledgerstone.quote import SentBack
from ledgerstone.shade import palette_shade_seen
from ledgerstone.wording import Speech, known_language, workshop_speech
from ledgerstone.wording.page import page_differences, page_messages
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True)
class FormAnswer:
    """A page and its HTTP status."""

    html: str
    status: int


@dataclass(frozen=True, slots=True)
class _PageContext:
    """The page to answer with, its language, and the context."""

    plain: page.HtmlElement
    speech: Speech
    context: QuoteContext
    templates: Templates


def answer_form(
    pairs: page.Pairs | None, document: str, context: QuoteContext, templates: Templates
) -> FormAnswer:
    """Answer a submitted form with the page: the answer, and the form as it was filled in.

    Parameters
    ----------
    pairs
        The submitted names and values; None if they could not be read.
    document
        The page's HTML, in the language of the answer.

    Raises
    ------
    TemplateFault
    """
    plain = page.page_of(document)
    language = known_language(plain.get("lang"), context.workshop.workshop.language)
    speech = workshop_speech(language, context.workshop)
    page_context = _PageContext(plain, speech, context.of_one_request(), templates)
    try:
        sent = page.read_sent(pairs, Form(plain).pointers())
    except NotUnderstood as fault:
        form, filling = _filled(Sent({}), page_context)
        return _page(form, _report_unread(form, fault, speech, filling))
    if sent.is_edit:
        return _page(_filled(sent, page_context)[0], 200)
    return _answered(sent, page_context)


def _page(form: Form, status: int) -> FormAnswer:
    return FormAnswer(f"<!doctype html>\n{form.page.html()}\n", status)


def _filled(sent: Sent, page_context: _PageContext) -> tuple[Form, Filling]:
    """Fill a form in as it was sent."""
    form = Form(page_context.plain.copy())
    filling = _filling(sent, page_context.speech, page_context.context.workshop)
    page.fill(form, filling)
    page.without_scripts(form)
    return form, filling


def _answered(sent: Sent, page_context: _PageContext) -> FormAnswer:
    """Answer an order, with the fix for everything applied first if the form asks for it."""
    form, filling = _filled(sent, page_context)
    controls = {control.pointer: control for control in form.controls()}
    try:
        resolved = _resolved(sent, controls, page_context)
        if sent.takes_fix and _can_fix(resolved):
            fixed = _fixed(resolved, controls)
            return _answered(replace(sent, typed=fixed, takes_fix=False), page_context)
    except NotUnderstood as fault:
        refused = NotUnderstood(tuple(map(_of_order, fault.faults)))
        return _page(form, _report_unread(form, refused, page_context.speech, filling))
    except TooIntricate as fault:
        page.show_summary(form, [("", page_context.speech.say(fault.message))])
        return _page(form, 422)
    answer = _page_answer(resolved, page_context)
    page.put_answer(form, answer.html)
    page.put_title(form, answer.title)
    stops = [
        finding for finding in resolved.answer.findings if finding.level == "stops" and finding.at
    ]
    page.show_faults(
        form, [(stop.at[0], page_context.speech.say(stop.message)) for stop in stops], filling
    )
    return _page(form, 422 if isinstance(resolved.answer, SentBack) else 200)


def _resolved(
    sent: Sent, controls: Mapping[str, page.Control], page_context: _PageContext
) -> ResolvedRequest:
    """Answer a form's order as if it had come as JSON.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    habits = Habits(page_context.speech.formats.point, page_context.context.workshop.place.masses)
    order = {**page.order_of(sent, controls, habits), "language": page_context.speech.language}
    document, context = split_maker_terms(order, page_context.context)
    return resolve({"order": document}, context, Wanted(letter_effort))


def _can_fix(resolved: ResolvedRequest) -> bool:
    """Return whether there is one fix for everything that a form of one slab can hold."""
    sent = resolved.answer
    fix = fix_of(sent) if isinstance(sent, SentBack) else None
    return fix is not None and len(patched(resolved.document, fix.state)["slabs"]) == 1


def _fixed(resolved: ResolvedRequest, controls: Mapping[str, page.Control]) -> page.Typed:
    """Return the form's entries with the fix for everything applied."""
    sent = resolved.answer
    fix = fix_of(sent) if isinstance(sent, SentBack) else None
    document = resolved.document if fix is None else patched(resolved.document, fix.state)
    return page.typed_of(document, controls)


def _page_answer(resolved: ResolvedRequest, page_context: _PageContext) -> PageAnswer:
    speech, context = page_context.speech, page_context.context
    pictures = picture_addresses(resolved, context)
    letter = Letter(workshop=context.workshop, speech=speech, today=context.today)
    if isinstance(resolved.answer, SentBack):
        view = sent_back_view(resolved.document, resolved.answer, pictures, context)
        return answer_in_page(view, letter, page_context.templates, may_fix=_can_fix(resolved))
    views = [quote_view(resolved, resolved.answer, pictures, speech)]
    return answer_in_page(views, letter, page_context.templates)


def _of_order(fault: Fault) -> Fault:
    """Return a fault with its pointer relative to the order."""
    return Fault(fault.pointer.removeprefix("/order"), fault.message)


def _report_unread(form: Form, fault: NotUnderstood, speech: Speech, filling: Filling) -> int:
    """Show what was not understood above the form and beside its fields; return the status."""
    refused = fault_members(fault, speech)["faults"]
    faults: Sequence[SpokenFault] = [(refusal["pointer"], refusal["says"]) for refusal in refused]
    page.show_faults(form, faults, filling)
    page.show_summary(form, faults)
    page.put_title(form, filling.say("form.error-title", title=filling.say("page.title")))
    return 400


def _filling(sent: Sent, speech: Speech, workshop: Workshop) -> Filling:
    differences = page_differences(speech.language, workshop.place, speech.own)
    words = page_messages(speech.language) | differences
    shades = (palette_shade_seen(shade, workshop) for shade in workshop.palette)
    surfaces = [str(finish.surface) for finish in workshop.finishes]
    profiles = [edge.profile for edge in workshop.edges]
    offered: dict[str, list[tuple[str, str, str]]] = {
        "shade-name": [(seen.name, seen.name, seen.hex) for seen in shades],
        "finish-surface": [(surface, str(words[f"surface.{surface}"]), "") for surface in surfaces],
        "finish-sealer": [(sealer.name, sealer.name, "") for sealer in workshop.sealers],
        "profiles": [(profile, str(words[f"profile.{profile}"]), "") for profile in profiles],
    }
    return Filling(sent=sent, words=words, offered=offered)
