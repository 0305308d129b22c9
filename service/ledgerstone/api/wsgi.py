"""What gunicorn loads: ``ledgerstone.api.wsgi:app``."""

from ledgerstone.api import create_app
from ledgerstone.api.settings import settings_from

app = create_app(settings_from())
