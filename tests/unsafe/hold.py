#!/usr/bin/env python3
"""Holds a table of unsafe situations: what is changed in a sound file, and the verdict that must come out.

    hold.py PROGRAM TABLE

A table is blocks of `key: value` lines with a blank line between them; `#` begins a comment:

    situation: the crew fills faster than the rise that the forms were planned for
    base: wall.yaml                     a file beside the table; `mix` files are found beside it
    edit: rise: 4 ft/h => rise: 8 ft/h  text that stands once in the base; `\\n` is a line end
    edit mix.yaml: slump: 4 in => slump: 9 in    the same in another file beside the table
    command: wall                       default: wall
    arguments: --moisture sand=5%       optional
    check: placing.rise                 id of the check
    part: retaining wall                optional: the part of the walls that the check is of
    verdict: fails                      one, or several that are all acceptable: fails | watch; or absent
    exit: 1                             optional
    says: 6.0 ft/h                      optional, any number: text that the result or diagnostic holds
    source: ACI 347R-14 4.2.2           why this verdict; "common practice, no source" for the trade's rules

Without `check` only `exit` and `says` are held, as for a file that must be refused.
"""
import json
import os
import shutil
import subprocess
import sys
import tempfile

KEYS = {"situation", "base", "command", "arguments", "check", "part", "verdict", "exit", "says", "source"}


def blocks(path):
    block = []
    for number, line in enumerate(open(path, encoding="utf-8"), 1):
        line = line.rstrip("\n")
        if line.startswith("#"):
            continue
        if not line.strip():
            if block:
                yield block
            block = []
            continue
        key, found, value = line.partition(": ")
        if not found or (key not in KEYS and not key.startswith("edit")):
            sys.exit(f"{path}:{number}: 'key: value' expected, not '{line}'")
        block.append((key, value.strip()))
    if block:
        yield block


def one(block, key, default=None):
    values = [value for name, value in block if name == key]
    if len(values) > 1 or (not values and default is None):
        sys.exit(f"{block[0][1]}: '{key}' stands {len(values)} times")
    return values[0] if values else default


def edited(folder, base, key, value):
    name = key[len("edit"):].strip() or base
    path = os.path.join(folder, name)
    text = open(path, encoding="utf-8").read()
    before, arrow, after = (part.replace("\\n", "\n") for part in value.partition(" => "))
    if not arrow or text.count(before) != 1:
        sys.exit(f"'{before}' stands {text.count(before)} times in {name}")
    open(path, "w", encoding="utf-8").write(text.replace(before, after))


def faults(program, table, block):
    """What is wrong with one situation, as sentences."""
    for key in ("situation", "source"):
        one(block, key)
    home = os.path.dirname(os.path.abspath(table))
    base = one(block, "base")
    with tempfile.TemporaryDirectory() as folder:
        for name in os.listdir(home):
            if name.endswith((".yaml", ".csv")):
                shutil.copy(os.path.join(home, name), folder)
        for key, value in block:
            if key.startswith("edit"):
                edited(folder, base, key, value)
        command = [program, one(block, "command", "wall"), base, *one(block, "arguments", "").split()]
        told = subprocess.run(command + ["--format", "json"], cwd=folder, capture_output=True, text=True)
        words = subprocess.run(command + ["--all"], cwd=folder, capture_output=True, text=True)
    said = " ".join((told.stdout + told.stderr + words.stdout).split())
    for text in (value for name, value in block if name == "says"):
        if text not in said:
            yield f"nothing says '{text}': {told.stderr.strip() or 'it went through'}"
    wanted_exit = one(block, "exit", "")
    if wanted_exit and told.returncode != int(wanted_exit):
        yield f"exit {told.returncode}, not {wanted_exit}: {told.stderr.strip()}"
    check_id = one(block, "check", "")
    if not check_id:
        if not wanted_exit:
            yield "neither a check nor an exit code is held"
        return
    if told.returncode not in (0, 1):
        yield f"exit {told.returncode}: {told.stderr.strip()}"
        return
    result = json.loads(told.stdout)
    part = one(block, "part", "")
    of_id = [check for check in result["checks"] + result.get("mix_checks", [])
             if check["id"] == check_id and part in ("", check.get("part"))]
    verdicts = {check["verdict"] for check in of_id} or {"absent"}
    acceptable = {verdict.strip() for verdict in one(block, "verdict").split("|")}
    if not verdicts & acceptable or (part and verdicts - acceptable):
        yield (f"{check_id} {part} is {sorted(verdicts)}, not {sorted(acceptable)}: "
               + "; ".join(check["message"] for check in of_id))


def main():
    program, table = os.path.abspath(sys.argv[1]), sys.argv[2]
    held = wrong = 0
    for block in blocks(table):
        held += 1
        for fault in faults(program, table, block):
            wrong += 1
            print(f"{one(block, 'situation')}\n    {fault}")
    print(f"{held} situations, {wrong} faults")
    sys.exit(1 if wrong or not held else 0)


main()
