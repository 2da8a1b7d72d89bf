"""No number of a limit and no name of a code or a class stands in src/ or include/: they are data.

usage: limits.py SOURCE_FOLDER

A line that speaks of what codes limit and holds a figure that some table of data/ prints as a limit,
or that writes the name of a code or of a class, is told, unless limits.explained says why it may
stand. That the search finds anything at all is proven first, on lines made for it.
"""
import re
import sys
from pathlib import Path

WORDS = re.compile(
    r"w_cm|w/cm|w_c\b|strength|mpa|cement|binder|chloride|slag|ash_|fume|alkali|air_percent|"
    r"exposure|sulfate|share|k_value|reduction|tolerance|margin", re.I)
FIGURE = re.compile(r"(?<![\w.])(\d+\.\d+|\d+)(?![\w.]*[\w])")
TABLES = ("exposure", "air", "air-rules", "supplementary", "seawater", "soil-sulfate", "additions",
          "least-cement", "cement-by-size", "cement-most", "chloride")


def without_comment(line):
    return line.split("//")[0]


def figures_of_limits(data):
    """Every figure that a table of a code prints, small whole numbers left out: they count things."""
    figures = set()
    for listed in re.findall(r"name: ([\w-]+), cells", (data / "codes.yaml").read_text()):
        for table in TABLES:
            path = data / f"{listed}-{table}.yaml"
            if path.exists():
                for cells in re.findall(r"cells: \[([^]]*)\]", path.read_text()):
                    figures.update(float(cell) for cell in re.findall(r"-?\d+(?:\.\d+)?", cells))
    for path in (data / "alkali-loading.yaml",):
        for cells in re.findall(r"cells: \[([^]]*)\]", path.read_text()):
            figures.update(float(cell) for cell in re.findall(r"\d+(?:\.\d+)?", cells))
    return {abs(figure) for figure in figures if figure not in (0, 1, 2, 3, 4, 5, 6, 7, 8, 10, 100)}


def names_of_codes(data):
    """Codes and their classes, as a string literal would write them."""
    names = set()
    for listed in re.findall(r"name: ([\w-]+), cells", (data / "codes.yaml").read_text()):
        text = (data / f"{listed}-exposure.yaml").read_text()
        names.update(re.findall(r"^  work: (.+)$", text, re.M)[:1])
        names.update(re.findall(r"name: ([A-Z][A-Z0-9-]*[0-9L])\b", text))
    return names


def told(lines, figures, names):
    for line in lines:
        code = without_comment(line)
        if any(f'"{name}"' in code for name in names):
            yield line
        elif WORDS.search(code):
            plain = re.sub(r'"(?:[^"\\]|\\.)*"', '""', code)
            if any(float(found) in figures for found in FIGURE.findall(plain)):
                yield line


def prove(figures, names):
    """Lines that must be found, and lines that must not."""
    bad = ['if (w_cm > 0.45) {', 'const double least_cement_kg_m3 = 340;',
           'return exposure.name == "C2";', 'constexpr double strength_mpa = 31;',
           'if (code.name == "EN 206") {', 'double most_chloride = 0.15;']
    good = ['if (w_cm > limit.w_cm) { // 0.45 in most codes', 'const double half = 0.45;',
            'strength_mpa * 100', 'told.message = {"air {value}, 4.5 of it", {}};']
    missed = [line for line in bad if not list(told([line], figures, names))]
    wrong = [line for line in good if list(told([line], figures, names))]
    for line in missed:
        print("the search does not find:", line)
    for line in wrong:
        print("the search finds what is none:", line)
    return not missed and not wrong


def main():
    top = Path(sys.argv[1])
    figures = figures_of_limits(top / "data")
    names = names_of_codes(top / "data")
    sound = prove(figures, names)
    explained = {}
    for entry in (top / "tests/rooms/limits.explained").read_text().splitlines():
        if entry and not entry.startswith("#"):
            path, text, _ = entry.split(" | ")
            explained[(path, text)] = False
    for folder in ("src", "include"):
        for path in sorted((top / folder).rglob("*.[ch]pp")):
            name = str(path.relative_to(top))
            for line in told(path.read_text().splitlines(), figures, names):
                key = (name, line.strip())
                if key in explained:
                    explained[key] = True
                else:
                    print(f"{name}: a limit or a name of a code in the program: {line.strip()}")
                    sound = False
    for (name, text), used in explained.items():
        if not used:
            print(f"limits.explained names a line that {name} does not have: {text}")
            sound = False
    return 0 if sound else 1


sys.exit(main())
