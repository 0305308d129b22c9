"""How gunicorn runs the service, in a container and under ``service/serve`` alike."""

import os
import sys
from pathlib import Path

from gunicorn.arbiter import Arbiter

# Set before the application imports NumPy: one worker a core, so one BLAS thread a worker.
for _name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(_name, "1")

wsgi_app = "ledgerstone.api.wsgi:app"
worker_class = "sync"  # a quote is all arithmetic: threads only queue behind one another
workers = int(os.environ.get("WEB_CONCURRENCY") or min(4, os.cpu_count() or 1))
preload_app = True  # read the profile once, share its memory, and fail before a port is open
timeout = 20
graceful_timeout = 20
max_requests = 2000
max_requests_jitter = 500
limit_request_fields = 50
limit_request_line = 8190  # a drawing's link carries its slabs
control_socket_disable = True  # it would be written into $HOME
loglevel = "warning"
if Path("/dev/shm").is_dir():
    worker_tmp_dir = "/dev/shm"  # a worker's heartbeat must not wait for a disk


def when_ready(server: Arbiter) -> None:
    """Say where the service listens, once it does."""
    addresses = [listener.getsockname() for listener in server.LISTENERS]
    where = ", ".join(f"http://{host}:{port}/" for host, port, *_ in addresses)
    sys.stdout.write(f"Ready at {where}\n")
    sys.stdout.flush()
