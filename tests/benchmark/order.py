"""Writes src/start_order.ld anew: what short runs touch of the program, to stand together in it.

order.py BUILD, where BUILD holds a Release build of the program. `bash tests/benchmark/order` calls it.
"""
import bisect
import os
import re
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
TOP = os.path.dirname(os.path.dirname(HERE))
BUILD = os.path.abspath(sys.argv[1])
ORDER = os.path.join(TOP, "src", "start_order.ld")
MIX = os.path.join(TOP, "examples", "quay-wall.yaml")
RUNS = [["proportion", MIX], ["check", MIX], ["compare", MIX], ["proportion", "unresolved.yaml"]]
# Of the pieces whose names begin alike so much has to be touched for the beginning to stand for all.
ENOUGH = {".text": 0.8, ".rodata": 1, ".data.rel.ro": 1}
# What valgrind does not run: C functions for newer processors, and how the kernel's own are found.
UNSEEN = {".text": ["*libc.a:*-evex*.o(.text*)", "*libc.a:*-avx*.o(.text*)", "*libc.a:dl-object.o(.text)",
                    "*libc.a:dl-lookup.o(.text)", "*crt1.o(.text)"],
          ".rodata": ["*(.rodata*.str1.* .rodata*.cst*)"],  # words, which the linker puts together
          ".data.rel.ro": []}
SECTION = re.compile(r"^ (\.(?:text|rodata|data\.rel\.ro)\S*)\s+0x([0-9a-f]+)\s+0x([0-9a-f]+) (\S+)$", re.MULTILINE)
WORDS = re.compile(r"\.rodata.*\.(str1\.|cst)")


def link(program, link_map):
    """The program as the build links it, but with its symbols and in the linker's own order."""
    commands = subprocess.run(["ninja", "-t", "commands", "boardmark"], cwd=BUILD, check=True,
                              capture_output=True, text=True).stdout.splitlines()
    line = re.search(r"\S*c\+\+ .* -o boardmark .*?(?= &&)", commands[-1]).group()
    line = re.sub(r" -s | -Wl,-T,\S+", " ", line).replace(" -o boardmark ", f" -o {program} ")
    subprocess.run(f"{line} -Wl,-Map={link_map}", shell=True, cwd=BUILD, check=True)


def sections(link_map):
    """Address, size, name and file of each piece of code and of data that stays as it is."""
    with open(link_map) as file:
        text = file.read()
    text = text[text.index("Linker script and memory map"):]
    return sorted((int(address, 16), int(size, 16), name, place)
                  for name, address, size, place in SECTION.findall(text) if int(size, 16))


def touched(program, folder, pieces):
    """The pieces of which some run takes something."""
    starts = [piece[0] for piece in pieces]
    found = set()
    for words in RUNS:
        trace = os.path.join(folder, "trace")
        subprocess.run(["valgrind", "--tool=lackey", "--trace-mem=yes", f"--log-file={trace}", program, *words],
                       cwd=folder, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        with open(trace) as file:
            addresses = {int(line[3:].split(",")[0], 16) for line in file if line[:2] in ("I ", " L", " S", " M")}
        for address in addresses:
            at = bisect.bisect(starts, address) - 1
            if at >= 0 and address < pieces[at][0] + pieces[at][1]:
                found.add(pieces[at])
    return found


def named(beginning, group, wanted, enough):
    """The shortest beginnings of names that bring in what is wanted and little besides."""
    size = sum(piece[1] for piece in group)
    asked = sum(piece[1] for piece in group if piece in wanted)
    if not asked:
        return []
    if asked >= enough * size:
        return [f"*({beginning}*)"]
    parts = {}
    for piece in group:
        parts.setdefault(piece[2][:len(beginning) + 1], []).append(piece)
    lines = []
    for part, pieces in sorted(parts.items()):
        if part == beginning:
            lines += [f"*({beginning})"] if any(piece in wanted for piece in pieces) else []
        else:
            alone = len({piece[2] for piece in pieces}) == 1
            longer = part if alone else os.path.commonprefix([piece[2] for piece in pieces])
            lines += named(longer, pieces, wanted, enough)
    return lines


def of_libraries(kind, wanted):
    """Files of libraries that are not compiled a section to a function."""
    members = (re.search(r"([^/]+)\((.*)\)$", place) for _, _, name, place in wanted if name == kind)
    return sorted({f"*{member[1]}:{member[2]}({kind})" for member in members if member})


def lines_of(kind, pieces, wanted):
    own = [piece for piece in pieces if piece[2].startswith(f"{kind}.") and not WORDS.match(piece[2])]
    return named(f"{kind}.", own, wanted, ENOUGH[kind]) + UNSEEN[kind] + of_libraries(kind, wanted)


def main():
    with tempfile.TemporaryDirectory() as folder:
        program, link_map = os.path.join(folder, "boardmark"), os.path.join(folder, "map")
        with open(MIX) as sound, open(os.path.join(folder, "unresolved.yaml"), "w") as file:
            file.write(sound.read().replace("strength: 5000 psi\n", "strength: 9900 psi\n"))
        link(program, link_map)
        pieces = sections(link_map)
        wanted = touched(program, folder, pieces)
    with open(ORDER, "w") as file:
        file.write("/* Written by tests/benchmark/order. What short runs touch of the program stands together, so that\n"
                   "   fewer of its pages are wanted. Names that nothing has any more do no harm, and results do not\n"
                   "   depend on any of it. */\n")
        for kind in ENOUGH:
            file.write(f"SECTIONS\n{{\n  {kind}.first :\n  {{\n")
            file.writelines(f"    {line}\n" for line in lines_of(kind, pieces, wanted))
            file.write(f"  }}\n}}\nINSERT BEFORE {kind};\n")
    print(f"{sum(piece[1] for piece in wanted):,} bytes of {sum(piece[1] for piece in pieces):,}")


main()
