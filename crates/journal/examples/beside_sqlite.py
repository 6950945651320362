#!/usr/bin/env python3
"""The journal beside SQLite (write-ahead log, synchronous=FULL) on the same work in one run.

    cargo build --release -p quarterturn-journal --example appends
    crates/journal/examples/beside_sqlite.py target/release/examples/appends [FOLDER [ENDS]]

Three rounds, one after the other in turn: so many ends of four shots are added, each synced; the program is killed as
it stands; then the file is opened again and everything read. Prints Markdown.
"""
import os
import signal
import sqlite3
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

APPENDS = str(Path(sys.argv[1]).resolve())
WHERE = sys.argv[2] if len(sys.argv) > 2 else None
ENDS = int(sys.argv[3]) if len(sys.argv) > 3 else 1000
ROUNDS = 3

SQLITE = """
import sqlite3, sys, time
path, ends = sys.argv[1], int(sys.argv[2])
base = sqlite3.connect(path, isolation_level=None)
base.execute("pragma journal_mode=wal")
base.execute("pragma synchronous=full")
base.execute("create table ends (n integer primary key, at text, evening text)")
base.execute("create table shots (n integer, shaft text, index_deg real, x_mm real, y_mm real, lean_x_deg real, lean_y_deg real)")
for n in range(1, ends + 1):
    shots = [(n, "R" if k == 0 else str((n + k * 3) % 12 + 1), 0.0, (n * 7 + k * 31) % 97 - 48.25,
              (n * 13 + k * 17) % 89 - 44.5, 0.5, -1.5) for k in range(4)]
    begun = time.perf_counter()
    base.execute("begin immediate")
    base.execute("insert into ends values (?, ?, ?)", (n, "2027-03-02T10:15:00+01:00", "2027-03-02"))
    base.executemany("insert into shots values (?, ?, ?, ?, ?, ?, ?)", shots)
    base.execute("commit")
    print(round((time.perf_counter() - begun) * 1e6))
print("done", flush=True)
time.sleep(1000)
"""


def added(command):
    """Microseconds of each append; the program is killed where it stands after the last."""
    child = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    times = []
    for line in child.stdout:
        if line.strip() == "done":
            break
        times.append(int(line))
    child.send_signal(signal.SIGKILL)
    child.wait()
    assert len(times) == ENDS, times
    return times


def opened_sqlite(path):
    begun = time.perf_counter()
    base = sqlite3.connect(path)
    base.execute("pragma synchronous=full")
    ends = base.execute("select * from ends").fetchall()
    shots = base.execute("select * from shots").fetchall()
    taken = (time.perf_counter() - begun) * 1e6
    assert (len(ends), len(shots)) == (ENDS, 4 * ENDS)
    base.close()
    return taken


def opened_journal(path):
    taken, events = subprocess.run([APPENDS, "open", path], capture_output=True, text=True, check=True).stdout.split()
    assert int(events) == ENDS
    return float(taken)


def row(name, journal, sqlite):
    print(f"| {name} | {journal} | {sqlite} |")


def main():
    found = {"journal": [], "sqlite": []}
    size, first, again = {}, {"journal": [], "sqlite": []}, {"journal": [], "sqlite": []}
    for _ in range(ROUNDS):
        with tempfile.TemporaryDirectory(dir=WHERE) as folder:
            journal, base = os.path.join(folder, "evening.journal"), os.path.join(folder, "evening.db")
            found["journal"] += added([APPENDS, "add", journal, str(ENDS)])
            found["sqlite"] += added([sys.executable, "-c", SQLITE, base, str(ENDS)])
            size["journal"] = os.path.getsize(journal)
            size["sqlite"] = sum(os.path.getsize(base + end) for end in ("", "-wal", "-shm"))
            with open(journal, "ab") as torn:
                torn.write(b'{"v":1,"seq":')
            first["journal"].append(opened_journal(journal))
            first["sqlite"].append(opened_sqlite(base))
            again["journal"].append(opened_journal(journal))
            again["sqlite"].append(opened_sqlite(base))
    print(f"{ROUNDS} rounds of {ENDS} ends of four shots, SQLite {sqlite3.sqlite_version}\n")
    print("| | journal | SQLite |\n|---|---|---|")
    def share(times, part):
        return f"{statistics.quantiles(times, n=100)[part - 1] / 1e3:.2f} ms"
    for part, name in ((50, "an end added and synced, median"), (99, "the same, 99 of 100")):
        row(name, share(found["journal"], part), share(found["sqlite"], part))
    def middle(times):
        return f"{statistics.median(times) / 1e3:.1f} ms"
    row("opened and read after the kill", middle(first["journal"]), middle(first["sqlite"]))
    row("opened and read again", middle(again["journal"]), middle(again["sqlite"]))
    row("bytes on the disk", f"{size['journal']:,}", f"{size['sqlite']:,}")


main()
