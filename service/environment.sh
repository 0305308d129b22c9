# The Python environment that service/serve and tests/run share. Sourced by them; expects $root.

venv=$root/.venv

# Small banded systems are solved fastest by one thread; two workers with two each only get in the way.
export OMP_NUM_THREADS=1 OPENBLAS_NUM_THREADS=1

# The GNU C library gives an array of a megabyte back as it is freed; left alone, it comes to keep
# ever larger ones, and a worker holds up to 10 MB more.
export MALLOC_MMAP_THRESHOLD_=1048576

stop() {
    printf '%s\n' "$@" >&2
    exit 1
}

new_enough() {
    "$1" -c 'import sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null
}

# Prints the first Python on the PATH that is new enough.
find_python() {
    for name in python3 python3.14 python3.13 python3.12 python3.11 python; do
        if new_enough "$name"; then
            command -v "$name"
            return 0
        fi
    done
    return 1
}

has_venv() {
    "$1" -c 'import ensurepip, venv' 2>/dev/null
}

# Makes .venv where there is none, or where what is there no longer runs.
make_venv() {
    new_enough "$venv/bin/python" && "$venv/bin/python" -m pip --version >/dev/null 2>&1 && return 0
    python=$(find_python) || stop \
        "Ledgerstone needs Python 3.11 or later; this machine has $(python3 --version 2>/dev/null || echo none)." \
        "On Debian 12 or Ubuntu 24.04 and later: apt install python3 python3-venv"
    has_venv "$python" || stop \
        "$python has no venv or ensurepip module, which Ledgerstone needs to keep its libraries apart." \
        "On Debian or Ubuntu: apt install python3-venv"
    "$python" -m venv --clear "$venv" || stop "The environment $venv was not made; see above."
}

# install_parts LOCK: its packages in four parts, two of them at a time: each is unpacked by one
# process, and none of them asks for another.
install_parts() {
    parts=$(mktemp -d)
    awk -v parts="$parts" '/^[^ ]/ { k = (k + 1) % 4 } { print > (parts "/" k) }' "$1"
    printf '%s\0' "$parts"/* | xargs -0 -P 2 -n 1 "$venv/bin/python" -m pip install --quiet \
        --no-input --disable-pip-version-check --only-binary :all: --require-hashes --no-deps \
        --requirement
    code=$?
    rm -r "$parts"
    return $code
}

# install LOCK [COVERED]: brings .venv to what docker/LOCK pins, once. Copies of the locks that it
# then satisfies (LOCK, and COVERED where LOCK holds all of it) say that it is done.
# Nothing is ever taken out, so what the tests need stays when the service installs its own.
install() {
    if cmp -s "$root/docker/$1" "$venv/installed/$1" && "$venv/bin/python" -c '' 2>/dev/null; then
        return 0
    fi
    make_venv
    echo "Installing what docker/$1 pins into .venv (once; a minute or so) ..." || :
    install_parts "$root/docker/$1" ||
        stop "Not everything that docker/$1 pins could be installed; see above."
    packages=$("$venv/bin/python" -c 'import sysconfig; print(sysconfig.get_path("purelib"))')
    echo ../../../../service >"$packages/ledgerstone.pth" # seen from there; a moved clone still works
    rm -rf "$venv/installed"
    mkdir "$venv/installed"
    for lock in "$@"; do cp "$root/docker/$lock" "$venv/installed/"; done
}
