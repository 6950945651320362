#!/usr/bin/env python3
"""Fills a small disk, limits the size of files, and takes the right to write away: R9 of what a journal must stand.

    .ci/full_disk.py PROGRAM

A disk of its own needs the right to mount one; where that is missing this part says so and the others run.
"""
import json
import os
import resource
import subprocess
import sys
import tempfile
from pathlib import Path

PROGRAM = str(Path(sys.argv[1]).resolve())
JOURNAL = "evening.journal"
NEW = f"new {JOURNAL} --shafts 1-3 --reference R --distance 18.3m --tolerance 25mm".split()
END = ["end", JOURNAL, "R 0, 1 r31 u8, 2 l4 u15"]


def run(folder, arguments, **more):
    return subprocess.run([PROGRAM, *arguments], cwd=folder, capture_output=True, text=True, **more)


def whole(folder):
    answer = run(folder, ["check", JOURNAL, "--json"])
    assert answer.returncode == 0, answer.stderr
    return json.loads(answer.stdout)["records"]


def fill(folder, **more):
    """Enters ends until no more go in; everything that was confirmed must be there, and nothing else be left."""
    confirmed = 1
    while (done := run(folder, END, **more)).returncode == 0:
        confirmed += 1
        assert confirmed < 10_000, "it never fills"
    assert done.returncode == 5 and done.stderr.startswith("error: "), done.stderr
    assert whole(folder) == confirmed
    picture = run(folder, ["plot", JOURNAL], **more)
    left = sorted(path.name for path in folder.iterdir())
    if picture.returncode == 0:
        left.remove("evening.svg")
    assert set(left) <= {JOURNAL, JOURNAL + ".lock"}, left
    return confirmed


def limited():
    resource.setrlimit(resource.RLIMIT_FSIZE, (20_000, 20_000))
    # As a shell that ignores the signal: the write fails instead.
    import signal
    signal.signal(signal.SIGXFSZ, signal.SIG_IGN)


def main():
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        assert run(folder, NEW).returncode == 0
        confirmed = fill(folder, preexec_fn=limited)
        assert run(folder, END).returncode == 0 and whole(folder) == confirmed + 1
        with open("/dev/full", "w") as full:
            said = subprocess.run([PROGRAM, "show", JOURNAL], cwd=folder, stdout=full, stderr=subprocess.PIPE, text=True)
        assert said.returncode == 5 and "could not print" in said.stderr, said
    print(f"files of limited size: {confirmed} confirmed, all there")
    with tempfile.TemporaryDirectory() as name:
        mounted = subprocess.run(["mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", name], capture_output=True)
        if mounted.returncode != 0:
            print("a disk of its own cannot be mounted here: the simulated disk stands for a full one")
            return
        try:
            folder = Path(name)
            assert run(folder, NEW).returncode == 0
            confirmed = fill(folder)
            print(f"a disk of 64 KiB: {confirmed} confirmed, all there")
            subprocess.run(["mount", "-o", "remount,ro", name], check=True)
            for arguments in (END, ["undo", JOURNAL], ["plot", JOURNAL], ["new", "other.journal", *NEW[2:]]):
                done = run(folder, arguments)
                assert done.returncode == 5 and "Read-only" in done.stderr, done.stderr
            assert run(folder, ["next", JOURNAL]).returncode == 0 and whole(folder) == confirmed
            print("a disk that may only be read: refused, and read")
        finally:
            os.sync()
            subprocess.run(["umount", name], check=True)


main()
