# Every name and every text of a file as one that holds braces, in which phrases have their figures: what comes out
# is the same, byte by byte, as with a plain word of the same length in its place.
#
#   names.py PROGRAM FOLDER [PART OF A NAME]   the files of FOLDER, each by the commands that read it
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

import yaml

PLAIN = "Zqabcdefghiqz"
BRACES = "Zq{limit}{}{z"
CHECKSUM = re.compile("[0-9a-f]{12,64}")

COMMANDS = {
    "mix": [["proportion", "--explain"], ["batch", "--volume", "1 m3", "--explain"], ["compare", "--explain"],
            ["compare", "--methods"], ["dose"], ["specify", "--explain"], ["check", "--all"],
            ["economy"], ["sweep", "--vary", "w_cm=0.36..0.45/3"], ["proportion", "--w-cm", "0.36,0.40", "--volume", "1 ft3"],
            ["risk", "--samples", "1000"]],
    "submitted": [["check", "--explain"], ["check", "--against", "issued-wall.yaml"], ["batch", "--volume", "1 m3"]],
    "trial": [["yield", "--explain"]],
    "results": [["strength", "--explain", "--today", "2026-11-25"]],
    "wall": [["wall", "--explain"], ["brief"], ["pour", "--start", "07:00"], ["specify"], ["specify", "--submittals"],
             ["specify", "--tests"], ["draw", "--format", "html"], ["panels"]],
}


def kind_of(tree):
    for key, kind in (("trial", "trial"), ("specimens", "results"), ("tests", "results"), ("walls", "wall"),
                      ("planters", "wall"), ("benches", "wall"), ("panels", "wall"), ("proportions", "submitted"),
                      ("mixture", "mix")):
        if key in tree:
            return kind
    return None


def scalars(node):
    """Every scalar of a tree, keys and values."""
    if isinstance(node, yaml.MappingNode):
        for key, value in node.value:
            yield from scalars(key)
            yield from scalars(value)
    elif isinstance(node, yaml.SequenceNode):
        for item in node.value:
            yield from scalars(item)
    else:
        yield node


def with_word(text, nodes, word):
    """The text with another word at these nodes."""
    for node in sorted(nodes, key=lambda one: -one.start_mark.index):
        text = text[:node.start_mark.index] + f'"{word}"' + text[node.end_mark.index:]
    return text


def run(program, command, name):
    form = [] if "--format" in command else ["--format"]
    results = []
    for kind in ("text", "json", "csv", "html") if form else ("",):
        done = subprocess.run([program, *command, *form, *([kind] if form else []), name], capture_output=True,
                              text=True)
        told = [CHECKSUM.sub("sum", words).replace("&#123;", "{").replace("&#125;", "}")
                for words in (done.stdout, done.stderr)]
        results.append((done.returncode, *told))
    return results


def faults(program, name, text):
    tree = yaml.safe_load(text)
    kind = kind_of(tree) if isinstance(tree, dict) else None
    if not kind:
        return
    words = {}
    for node in scalars(yaml.compose(text)):
        words.setdefault(node.value, []).append(node)
    for word, nodes in words.items():
        if not re.search("[A-Za-z]", word):
            continue
        plain, braces = with_word(text, nodes, PLAIN), with_word(text, nodes, BRACES)
        for command in COMMANDS[kind]:
            open(name, "w").write(plain)
            expected = run(program, command, name)
            if all(code == 2 for code, _, _ in expected):
                continue  # a word that the program knows, or a figure
            open(name, "w").write(braces)
            for (code, out, err), (code_now, out_now, err_now) in zip(expected, run(program, command, name)):
                if "should not happen" in err_now:
                    yield f"{name}: '{word}' in {' '.join(command)}: {err_now.strip()}"
                elif code_now == 2 and code != 2:
                    yield f"{name}: '{word}' in {' '.join(command)} is refused: {err_now.strip().splitlines()[0]}"
                elif out.replace(PLAIN, BRACES) != out_now or err.replace(PLAIN, BRACES) != err_now:
                    lines = [two for two in zip(out.replace(PLAIN, BRACES).splitlines() + err.splitlines(),
                                                out_now.splitlines() + err_now.splitlines()) if two[0] != two[1]]
                    yield f"{name}: '{word}' in {' '.join(command)}: {lines[:1]}"
    open(name, "w").write(text)


def main():
    program, folder = os.path.abspath(sys.argv[1]), pathlib.Path(sys.argv[2])
    part = sys.argv[3] if len(sys.argv) > 3 else ""
    texts = {path.name: path.read_text() for path in sorted(folder.glob("*.yaml"))}
    wrong = 0
    with tempfile.TemporaryDirectory() as place:
        for path in folder.iterdir():
            if path.is_file():
                shutil.copy(path, place)
        os.chdir(place)
        for name, text in texts.items():
            if part in name:
                for fault in faults(program, name, text):
                    wrong += 1
                    print(fault, flush=True)
    print(f"{wrong} faults")
    sys.exit(1 if wrong else 0)


main()
