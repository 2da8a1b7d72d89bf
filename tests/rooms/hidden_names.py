#!/usr/bin/env python3
"""usage: hidden_names.py SOURCE

Several files of a room are one unit. A private function that has the name and the arguments of one that a header
of the room declares would be called in its place by every file behind it, and no compiler says so.
"""
import collections
import pathlib
import re
import sys

ROOMS = ("core", "units", "text", "reference", "input", "record", "report", "front", "commands")
FREE_FUNCTION = re.compile(r"^(?!return|struct|class|using|template|namespace)[A-Za-z][\w:<>,*& ]*?[ *&](\w+)"
                           r"\(([^;{}]*?)\)(?: noexcept)?(?=;| \{)", re.MULTILINE)
PRIVATE = re.compile(r"^namespace \{$(.*?)^\} // namespace$", re.MULTILINE | re.DOTALL)
# What is turned into one another without a word.
ALIKE = {name: "number" for name in ("double", "int", "float", "bool", "size_t", "std::size_t", "int64_t")}
ALIKE |= {name: "text" for name in ("std::string", "std::string_view", "char*")}


def types_of(arguments):
    """("const core::Wall& wall, double mm") -> ("Wall", "number")"""
    types = []
    for argument in re.split(r",(?![^<]*>)", " ".join(arguments.split())):
        words = [word for word in re.sub(r"=.*|[&]", "", argument).split() if word != "const"]
        if words:
            name = "".join(words[:-1] or words)
            types.append(ALIKE.get(name, name.removeprefix("core::")))
    return tuple(types)


def functions(text):
    return {(name, types_of(arguments)) for name, arguments in FREE_FUNCTION.findall(text)}


source = pathlib.Path(sys.argv[1])
looked, hidden = 0, []
for room in ROOMS:
    declared = collections.defaultdict(list)
    for folder in (source / "src" / room, source / "include" / "boardmark" / room):
        for header in sorted(folder.rglob("*.hpp")):
            for function in functions(header.read_text()):
                declared[function].append(header.name)
    for file in sorted((source / "src" / room).rglob("*.cpp")):
        for private in PRIVATE.findall(file.read_text()):
            for function in functions(private):
                looked += 1
                if function in declared:
                    hidden.append(f"{file.relative_to(source)}: {function[0]}{function[1]} is also declared in "
                                  f"{', '.join(declared[function])}: give it a name of its own, or use that one")
print("\n".join(hidden) or f"{looked} private functions, none hides another")
sys.exit(1 if hidden or looked < 1000 else 0)
