"""A bare Flask echo, for a baseline: a server that has nothing to think about."""

from flask import Flask, Response, jsonify, request

app = Flask("echo")


@app.post("/v1/quotes")
def echo() -> Response:
    """Answer with the JSON that was sent."""
    return jsonify(request.get_json())


@app.get("/v1/health/live")
def live() -> Response:
    """Say that it is there."""
    return jsonify({"status": "live"})
