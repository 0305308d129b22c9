"""Browsers that the tests may find installed, by the commands that start them."""

BROWSERS = (
    "chromium-headless-shell",
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
)
