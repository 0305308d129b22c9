"""The entry point of gunicorn in tests of the page: as dated, and it shares what it works out."""

from support import dated_service, shared_results

shared_results.share()
app = dated_service.app
