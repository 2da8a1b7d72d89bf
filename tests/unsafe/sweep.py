#!/usr/bin/env python3
"""Puts a slip of the hand into every figure of the examples and counts what becomes of it.

    sweep.py PROGRAM EXAMPLES [--all]

Every figure is multiplied by 0.001, 0.01, 0.1, 10, 100 and 1000, and every one is put in its neighbour's place.
A slip is `refused` (exit 2 or 3), `asked back` (a warning on standard error that the sound file does not
have), `told` (a check that the sound file does not have in that verdict: it fails, is watched or open)
or `silent`. Every silent slip must be explained in sweep.explained; a stale explanation is a fault.
`--all` lists every slip.
"""
import collections
import concurrent.futures
import fnmatch
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile

import yaml

COMMANDS = {
    "quay-wall.yaml": ["batch", "--volume", "2ft3"],
    "flowing-wall.yaml": ["check"],
    "submitted-mix.yaml": ["check"],
    "quay-wall-trial.yaml": ["yield", "--today", "2026-11-25"],
    "winter-wall.yaml": ["check"],
    "terrace-walls.yaml": ["wall"],
    "strength-results.yaml": ["strength", "--today", "2026-11-25"],
}
FACTORS = {"x 0.001": 0.001, "x 0.01": 0.01, "x 0.1": 0.1, "x 10": 10, "x 100": 100, "x 1000": 1000}
NUMBER = r"-?(?:\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?)"
QUANTITY = re.compile(rf"^({NUMBER})( *)(.*)$")
KINDS = ("refused", "asked back", "told", "silent")


def scalars(node, path=()):
    """Every scalar with its dotted path; keys that are figures are paths of their own."""
    if isinstance(node, yaml.ScalarNode):
        yield ".".join(path), node
    elif isinstance(node, yaml.MappingNode):
        for key, value in node.value:
            if QUANTITY.match(key.value):
                yield ".".join((*path, key.value, "(key)")), key
            yield from scalars(value, (*path, key.value))
    else:
        for number, value in enumerate(node.value):
            yield from scalars(value, (*path, str(number)))


def number_of(written):
    return sum(int(part.split("/")[0]) / int(part.split("/")[1]) if "/" in part else float(part)
               for part in written.split(" "))


def figures(text):
    for path, node in scalars(yaml.compose(text)):
        match = QUANTITY.match(node.value)
        dated = re.match(r"\d{4}-\d{2}-\d{2}$", node.value)
        named = path in ("boardmark",) or re.search(r"title|source|bar$|name|\.mix$|^mix$", path)
        if match and not dated and not named and node.style is None:
            yield path, node.start_mark.index, node.end_mark.index, match


def slips(text):
    found = list(figures(text))
    for path, start, end, match in found:
        for name, factor in FACTORS.items() if number_of(match[1]) else ():
            slipped = f"{number_of(match[1]) * factor:.10g}{match[2]}{match[3]}"
            yield path, name, text[:start] + slipped + text[end:]
    for (path, start, end, _), (_, next_start, next_end, _) in zip(found, found[1:]):
        one, other = text[start:end], text[next_start:next_end]
        if one != other:
            yield path, "with its neighbour", (text[:start] + other + text[end:next_start] + one +
                                                text[next_end:])


def outcome(program, folder, file, text, thread):
    with tempfile.TemporaryDirectory(dir=thread) as own:
        for name in os.listdir(folder):
            if name.endswith((".yaml", ".csv")):
                shutil.copy(os.path.join(folder, name), own)
        path = os.path.join(own, file)
        with open(path, "w", encoding="utf-8") as out:
            out.write(text)
        told = subprocess.run([program, *COMMANDS[file], "--format", "json", file], cwd=own,
                              capture_output=True, text=True)
    if told.returncode not in (0, 1, 2, 3):
        sys.exit(f"{file}: exit {told.returncode}: {told.stderr}")
    checks = set()
    if told.returncode in (0, 1):
        result = json.loads(told.stdout)
        checks = {(check["id"], check.get("part"), check["verdict"])
                  for check in result["checks"] + result.get("mix_checks", [])
                  if check["verdict"] != "holds"}
    warnings = {line for line in told.stderr.splitlines() if "warning:" in line}
    return told.returncode, warnings, checks


def kind_of(sound, slipped):
    code, warnings, checks = slipped
    return ("refused" if code in (2, 3) else "asked back" if warnings - sound[1]
            else "told" if checks - sound[2] else "silent")


def explanations(path):
    """FILE PATH SLIP: why, one a line; `*` stands for anything."""
    for line in open(path, encoding="utf-8"):
        if line.strip() and not line.startswith("#"):
            where, _, why = line.partition(": ")
            file, figure, slip = where.split(None, 2)
            yield file, figure, slip, why.strip()


def main():
    program, folder = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
    listed = "--all" in sys.argv
    known = list(explanations(os.path.join(os.path.dirname(os.path.abspath(__file__)),
                                           "sweep.explained")))
    used, counts, unexplained = set(), collections.Counter(), []
    with tempfile.TemporaryDirectory() as scratch, concurrent.futures.ThreadPoolExecutor(2) as pool:
        for file in COMMANDS:
            text = open(os.path.join(folder, file), encoding="utf-8").read()
            sound = outcome(program, folder, file, text, scratch)
            if sound[0] not in (0, 1):
                sys.exit(f"{file} itself is refused")
            made = list(slips(text))
            run = lambda slip: kind_of(sound, outcome(program, folder, file, slip[2], scratch))
            for (path, name, _), kind in zip(made, pool.map(run, made)):
                counts[file, name, kind] += 1
                if listed:
                    print(f"{kind:10}  {file} {path} {name}")
                if kind != "silent":
                    continue
                reason = next((number for number, (a, b, c, _) in enumerate(known)
                               if fnmatch.fnmatch(file, a) and fnmatch.fnmatch(path, b)
                               and fnmatch.fnmatch(name, c)), None)
                if reason is None:
                    unexplained.append(f"{file} {path} {name}")
                else:
                    used.add(reason)
    print(f"{'file':24}{'slip':20}" + "".join(f"{kind:>12}" for kind in KINDS))
    for file in COMMANDS:
        for name in (*FACTORS, "with its neighbour"):
            print(f"{file:24}{name:20}" + "".join(f"{counts[file, name, kind]:12}" for kind in KINDS))
    total = {kind: sum(n for (_, _, k), n in counts.items() if k == kind) for kind in KINDS}
    print(f"{'all':44}" + "".join(f"{total[kind]:12}" for kind in KINDS))
    for slip in unexplained:
        print("silent and not explained: " + slip)
    stale = [known[i] for i in range(len(known)) if i not in used]
    for row in stale:
        print("explains nothing: " + " ".join(row))
    sys.exit(1 if unexplained or stale or not total["refused"] else 0)


main()
