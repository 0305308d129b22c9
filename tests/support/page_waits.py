"""Waiting for a page: how long at most, and until its answer is the whole one."""

from typing import Final

from playwright.sync_api import Frame, FrameLocator, Page

PATIENCE_MS: Final = 60_000  # a bound on waiting, not a measure: the machine may be busy


def settled(page: Page | Frame | FrameLocator) -> None:
    """Wait until the form is live and its answer is the whole answer to the order as it stands.

    The first answer is shown before the form listens, and what is typed until then is lost. Once it
    listens the page says what becomes of the draft.
    """
    page.locator("#draft-says:not(:empty)").wait_for(state="attached")
    page.locator("ledgerstone-answer[data-state=settled]").wait_for()
