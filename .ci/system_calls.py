#!/usr/bin/env python3
"""Kills the program at every system call that touches a file, and makes each of them fail, with strace.

    .ci/system_calls.py PROGRAM            kills in every command, errors in `new` and `end`
    .ci/system_calls.py PROGRAM --long     errors in every command too

After each run the journal must be whole, hold everything that was confirmed, and take the next entry.
"""
import json
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

PROGRAM = str(Path(sys.argv[1]).resolve())
LONG = "--long" in sys.argv
JOURNAL = "evening.journal"
# What changes a file, and what else a journal is read with.
WRITING = ["write", "fdatasync", "fsync", "rename", "link", "linkat", "unlink", "ftruncate", "openat", "chmod"]
READING = ["read", "lseek", "statx", "flock"]
ERRORS = ["ENOSPC", "EIO", "EROFS", "EACCES", "EINTR", "EDQUOT"]
NEW = f"new {JOURNAL} --shafts 1-3 --reference R --distance 18.3m --tolerance 25mm".split()
END = ["end", JOURNAL, "R 0, 1 r31 u8, 2 l4 u15"]
COMMANDS = {
    "new": NEW,
    "end": END,
    "end after a torn end": END,
    "undo": ["undo", JOURNAL],
    "shaft": ["shaft", JOURNAL, "3", "--lost"],
    "repair": ["repair", JOURNAL],
    "plot": ["plot", JOURNAL],
}


def run(folder, arguments, *strace):
    return subprocess.run([*strace, PROGRAM, *arguments], cwd=folder, capture_output=True, text=True)


def prepared(command):
    """A folder in which the command can be run."""
    folder = Path(tempfile.mkdtemp(prefix="calls-"))
    if command != "new":
        for arguments in (NEW, END, END):
            assert run(folder, arguments).returncode == 0
    journal = folder / JOURNAL
    if command == "repair":
        journal.write_text(journal.read_text().replace('"x_mm":31.0', '"x_mm":13.0', 1))
    if command == "end after a torn end":
        journal.write_text(journal.read_text() + '{"v":1,"seq":4')
    return folder


def records(folder, command):
    """How many records there are; the journal must be whole, but before it was made or mended."""
    if command == "new" and not (folder / JOURNAL).exists():
        return 0
    answer = run(folder, ["check", JOURNAL, "--json"])
    if command == "repair" and answer.returncode == 3:
        return 0
    assert answer.returncode == 0, answer.stderr
    return json.loads(answer.stdout)["records"]


def calls(log):
    """The calls of the program itself, not of the loader before it: name and how often it came before and in all."""
    lines = [line.split("(")[0] for line in log]
    start = next(n for n, line in enumerate(log) if JOURNAL in line and not line.startswith("execve"))
    for call in dict.fromkeys(lines[start:]):
        yield call, lines[:start].count(call) + 1, lines.count(call)


def order(command, log):
    """The confirmation comes after the sync of the file, and of the folder where a name was given."""
    said = max(n for n, line in enumerate(log) if line.startswith("write(1,"))
    syncs = [n for n, line in enumerate(log) if re.match("f(data)?sync", line)]
    named = [n for n, line in enumerate(log) if re.match("(rename|link)", line)]
    written = [n for n, line in enumerate(log) if line.startswith("write(") and n < said and '{\\"v\\"' in line]
    assert syncs and syncs[-1] < said, f"{command}: the answer before the sync"
    for n in written:
        assert any(n < sync < said for sync in syncs), f"{command}: written and not synced"
    for n in named:
        assert any(log[sync].startswith("fsync") and n < sync < said for sync in syncs), f"{command}: a name not synced"


def hold(command, template, fault, what):
    """One run with a fault; then everything that is promised."""
    folder = Path(tempfile.mkdtemp(prefix="calls-")) / "run"
    shutil.copytree(template, folder)
    before = records(folder, command)
    journal = folder / JOURNAL
    bytes_before = journal.read_bytes() if journal.exists() else b""
    done = run(folder, COMMANDS[command], "strace", "-o", "/dev/null", "-e", "trace=" + fault.split(":")[0], "-e", "inject=" + fault)
    told = f"{what}: exit {done.returncode}\n{done.stderr}"
    assert done.returncode in (0, 5, -9, 137), told
    assert "panicked" not in done.stderr and "fault of the program" not in done.stderr, told
    if done.returncode == 5:
        assert re.search("^error: ", done.stderr, re.MULTILINE), told
    after = records(folder, command)
    if command == "repair":
        assert after or journal.read_bytes() == bytes_before, told
        assert done.returncode != 0 or after, told
    elif command == "plot":
        assert journal.read_bytes() == bytes_before, told
        picture = folder / "evening.svg"
        assert not picture.exists() or picture.read_text().rstrip().endswith("</svg>"), told
    else:
        assert after in (before, before + 1), told
        assert done.returncode != 0 or after == before + 1, told
        assert "nothing was recorded" not in done.stderr or after == before, told
    again = run(folder, [*COMMANDS[command], "--force"] if command == "plot" else COMMANDS[command])
    there = command == "new" and after == 1
    refused = command == "shaft" and after > before
    assert again.returncode == (5 if there else 3 if refused else 0), f"{told}\nand then {again.stderr}"
    parts = [path.name for path in folder.iterdir() if ".part-" in path.name]
    assert done.returncode not in (0, 5) or not parts or "unlink" in fault, f"{told}: {parts} was left"
    shutil.rmtree(folder.parent)


def main():
    faults = 0
    for command in COMMANDS:
        template = prepared(command)
        folder = Path(tempfile.mkdtemp(prefix="calls-")) / "run"
        shutil.copytree(template, folder)
        log = folder.parent / "log"
        clean = run(folder, COMMANDS[command], "strace", "-s", "64", "-o", str(log), "-e", "trace=execve," + ",".join(WRITING + READING))
        assert clean.returncode == 0, clean.stderr
        lines = [line for line in log.read_text().splitlines() if not line.startswith(("+++", "---"))]
        order(command, lines)
        for call, first, last in calls(lines):
            for n in range(first, last + 1):
                if call in WRITING:
                    hold(command, template, f"{call}:signal=KILL:when={n}", f"{command}: killed at {call} {n}")
                    faults += 1
                if LONG or command in ("new", "end"):
                    for error in ERRORS:
                        hold(command, template, f"{call}:error={error}:when={n}", f"{command}: {error} at {call} {n}")
                        faults += 1
                if call == "write" and (LONG or command in ("new", "end")):
                    hold(command, template, f"write:retval=1:when={n}", f"{command}: only said to be written, {n}")
                    faults += 1
        shutil.rmtree(template)
        shutil.rmtree(folder.parent)
    print(f"{faults} system calls were killed or failed: nothing confirmed was lost, every next run worked")


main()
