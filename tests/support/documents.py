"""What tests hold of JSON documents."""

from typing import Any

Json = dict[str, Any]  # an object, the test's own to change
