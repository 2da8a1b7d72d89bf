"""What the checks of papers share: running, reading, and whether the text holds a figure that the JSON lacks."""
import json, math, re, subprocess, sys


def numbers_of(tree):
    """Every number of the JSON, those inside its sentences too."""
    if isinstance(tree, dict):
        for value in tree.values():
            yield from numbers_of(value)
    elif isinstance(tree, list):
        yield float(len(tree))
        for value in tree:
            yield from numbers_of(value)
    elif isinstance(tree, bool) or tree is None:
        return
    elif isinstance(tree, (int, float)):
        yield float(tree)
    else:
        yield from (float(found) for found in re.findall(r"\d+(?:\.\d+)?", tree))


def missing_figures(text, told):
    """Numbers of a text in SI that no number of the JSON rounds to: lengths stand there in m or mm, times in d, h or
    min, probabilities as parts of one."""
    known = [factor * number for number in numbers_of(told)
             for factor in (1, 1000, 1 / 1000, 24, 1 / 24, 60, 1 / 60, 100)]
    plain = re.sub(r"\d+ hold \(--all", "", text.partition("\nWritten by ")[0])
    plain = re.sub(r"^  \d+\. ", "", plain, flags=re.M) # numbers of a list
    for found in sorted(set(re.findall(r"\d+(?:\.\d+)?", plain))):
        step = 10.0 ** -len(found.partition(".")[2])
        if not any(abs(number - float(found)) <= 0.5001 * step for number in known):
            yield found


class Papers:
    def __init__(self, boardmark, command):
        self.boardmark, self.command, self.wrong = boardmark, command, []

    def run(self, *words, code=0, command=None):
        done = subprocess.run([self.boardmark, command or self.command, "--quiet", *words], capture_output=True, text=True)
        if code is not None and done.returncode != code:
            self.wrong.append(f"{words}: exit {done.returncode}, not {code}: {done.stderr}{done.stdout[:400]}")
        return done.stdout

    def code_of(self, *words):
        return subprocess.run([self.boardmark, *words], capture_output=True).returncode

    def result(self, *words, code=0):
        return json.loads(self.run("--format", "json", *words, code=code))

    def hold(self, expected, got, what):
        same = math.isclose(expected, got, rel_tol=1e-9, abs_tol=1e-9) if isinstance(got, float) else expected == got
        if not same:
            self.wrong.append(f"{what}: {got}, expected {expected}")

    def hold_forms(self, *words, code=0):
        """Text no wider than 100 columns, no figure in it that the JSON lacks, a page that is whole."""
        told = self.result(*words, code=code)
        for system in ("us", "si"):
            for line in self.run("--reporting", system, "--explain", *words, code=code).split("\n"):
                if len(line) > 100:
                    self.wrong.append(f"{words}: wider than 100 columns: {line}")
        text = self.run("--reporting", "si", "--explain", *words, code=code)
        for figure in missing_figures(text, told):
            self.wrong.append(f"{words}: {figure} stands in the text and not in the JSON")
        if not list(missing_figures("987.654 " + text, told)):
            self.wrong.append("a figure that nobody told is not missed")
        page = self.run("--format", "html", *words, code=code)
        if not page.rstrip().endswith("</html>"):
            self.wrong.append(f"{words}: no whole page")
        return told

    def end(self):
        print("\n".join(self.wrong))
        sys.exit(1 if self.wrong else 0)
