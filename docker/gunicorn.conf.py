"""How gunicorn runs the service, in a container and under ``service/serve`` alike."""

import ctypes
import gc
import os
import signal
import threading
import time
from contextlib import suppress
from pathlib import Path

from gunicorn.arbiter import Arbiter
from gunicorn.http.message import Request
from gunicorn.workers.base import Worker

# Set before the application imports NumPy: one worker a core, so one BLAS thread a worker.
for _name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(_name, "1")

# What a start makes stays: to look through it for garbage takes a sixth of the start. On again for
# the workers, in ``pre_fork``.
gc.disable()

wsgi_app = "ledgerstone.api.wsgi:app"
worker_class = "ledgerstone.api.worker.AnsweringWorker"
logger_class = "ledgerstone.api.worker.ServerLog"
workers = int(os.environ.get("WEB_CONCURRENCY") or min(4, os.cpu_count() or 1))
preload_app = True  # read the profile once, share its memory, and fail before a port is open
timeout = 20
graceful_timeout = 20
max_requests = 2000
max_requests_jitter = 500
SETTLED_MB = 180.0  # what a worker may hold between two requests
limit_request_fields = 50
limit_request_line = 8190  # a drawing's link carries its slabs
control_socket_disable = True  # it would be written into $HOME
loglevel = "warning"
backlog = 256  # the service itself turns away long before that; see ledgerstone.api.limits
if Path("/dev/shm").is_dir():
    worker_tmp_dir = "/dev/shm"  # a worker's heartbeat must not wait for a disk


_give_back = getattr(ctypes.CDLL(None), "malloc_trim", None)  # the GNU C library's alone


def when_ready(server: Arbiter) -> None:
    """Say where the service listens, once it does, and look after the workshop's file from then."""
    addresses = [listener.getsockname() for listener in server.LISTENERS]
    where = ", ".join(f"http://{host}:{port}/" for host, port, *_ in addresses)
    with suppress(OSError):  # a full disk, or nobody who reads, keeps nothing from starting
        os.write(1, f"Ready at {where}\n".encode())
    threading.Thread(target=_watch, args=(server,), daemon=True).start()


def _watch(server: Arbiter) -> None:
    """Reload when the workshop's file has changed, whether anybody asks meanwhile or not."""
    while True:
        time.sleep(1.0)
        if server.app.wsgi().has_changed():
            os.kill(os.getpid(), signal.SIGHUP)


def pre_fork(server: Arbiter, worker: Worker) -> None:  # noqa: ARG001 - gunicorn names both
    """Leave what is loaded to all workers: a collection would copy its pages into each."""
    gc.freeze()
    gc.enable()


def post_worker_init(worker: Worker) -> None:
    """Tell the service which queue it stands at, where it counts, and that it is watched."""
    running = worker.wsgi.running
    running.gate.watch(worker.sockets)
    running.counts.take_row(worker.age)
    running.active_clients.take_row(worker.age)
    worker.wsgi.is_watched = True


def post_request(worker: Worker, req: Request, environ: object, resp: object) -> None:  # noqa: ARG001 - gunicorn names all four
    """Give back what large orders left free; a worker that stays too large hands over."""
    if _give_back is not None and (worker.nr % 8 == 0 or _held_mb() > SETTLED_MB):
        _give_back(0)
    if _held_mb() > SETTLED_MB:
        worker.alive = False


def _held_mb() -> float:
    """What this process holds in memory, MB; 0 where the machine does not tell."""
    with suppress(OSError):
        pages = int(Path("/proc/self/statm").read_text(encoding="ascii").split()[1])
        return pages * os.sysconf("SC_PAGE_SIZE") / 2**20
    return 0.0


def on_reload(server: Arbiter) -> None:
    """Read the profile again before new workers start: all of them get it, or none does."""
    server.app.wsgi().reload()
    gc.unfreeze()  # what the profile before it left is garbage now
    gc.collect()
