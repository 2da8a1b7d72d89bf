"""Measures the program and writes the table of DEVELOPERS.md anew. `bash tests/benchmark/run` calls it.

measure.py BUILD [--print]
"""
import csv
import json
import os
import platform
import resource
import shutil
import subprocess
import sys
import tempfile
import time

HERE = os.path.dirname(os.path.abspath(__file__))
TOP = os.path.dirname(os.path.dirname(HERE))
BUILD = os.path.abspath(sys.argv[1])
PROGRAM = os.path.join(BUILD, "boardmark")
MIX = os.path.join(TOP, "examples", "quay-wall.yaml")
PRICED_MIX = os.path.join(TOP, "examples", "flowing-wall.yaml")
ROWS = 100_000
MIB = 1024  # KiB
NOT_MEASURED = "not measured"


def run(words, cwd, **more):
    """Wall and processor seconds and peak MiB of a command that may say that a limit is broken."""
    begun = time.perf_counter()
    process = subprocess.Popen(words, cwd=cwd, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                               **more)
    _, status, used = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode not in (0, 1):
        sys.exit(f"{' '.join(words)} ends with {process.returncode}")
    return time.perf_counter() - begun, used.ru_utime + used.ru_stime, used.ru_maxrss / MIB


def best(words, cwd, times=3):
    return min((run(words, cwd) for _ in range(times)), key=lambda one: one[0])


def engine(least):
    """Nanoseconds of processor time, the least of many short repetitions and of those before: what
    else the machine does makes a long one slow."""
    told = subprocess.run([os.path.join(BUILD, "benchmark-engine"), "--benchmark_format=json",
                           "--benchmark_min_time=0.05", "--benchmark_repetitions=20"],
                          cwd=TOP, capture_output=True, check=True).stdout
    scale = {"ns": 1, "us": 1e3, "ms": 1e6}
    for one in json.loads(told)["benchmarks"]:
        if one["run_type"] == "iteration":
            took = one["cpu_time"] * scale[one["time_unit"]]
            least[one["run_name"]] = min(took, least.get(one["run_name"], took))
    return least


def other(words, cwd, needs):
    """What another program says of the same formulas, or nothing where it is not installed."""
    if not needs:
        return None
    ran = subprocess.run(words, cwd=cwd, capture_output=True, text=True,
                         env={**os.environ, "PYTHONPATH": HERE})
    if ran.returncode != 0:
        print(ran.stderr, file=sys.stderr)
        return None
    return json.loads(ran.stdout)


def has(module):
    return subprocess.run(["/usr/bin/python3", "-c", f"import {module}"],
                          capture_output=True).returncode == 0


def held_against_formulas(folder):
    """The largest difference between rows of the program and formulas.py, of the larger of a figure
    and 1; the rows have twelve digits."""
    asked = os.path.join(folder, "mixes.csv")
    told = subprocess.run([PROGRAM, "proportion", "--table", asked, "--base", MIX, "-q"],
                          capture_output=True, text=True).stdout
    with open(os.path.join(folder, "told.csv"), "w", newline="") as file:
        file.write(told)
    script = ("import numpy,csv,formulas\n"
              "given=list(csv.reader(open('mixes.csv')))[1:]\n"
              "found=formulas.figures(numpy,*[numpy.array(c,float) for c in zip(*given)])\n"
              "told=list(csv.reader(open('told.csv')))\n"
              "names=[h.split(' ')[0] for h in told[0]]\n"
              "worst=0\n"
              "for name,mine in found.items():\n"
              "    theirs=numpy.array([float(r[names.index(name)]) for r in told[1:]])\n"
              "    apart=numpy.abs(mine-theirs)/numpy.maximum(theirs,1)\n"
              "    worst=max(worst,float(numpy.max(apart)))\n"
              "print(worst)\n")
    ran = subprocess.run(["/usr/bin/python3", "-c", script], cwd=folder, text=True,
                         capture_output=True, env={**os.environ, "PYTHONPATH": HERE})
    if ran.returncode != 0:
        sys.exit(ran.stderr)
    if not float(ran.stdout) < 1e-9:
        sys.exit(f"the program differs from formulas.py by {ran.stdout.strip()}")
    return float(ran.stdout)


def start_up(folder):
    """Of one mix and of one without a mix against /bin/true, each started a thousand times, and of
    one mix by the program as it is once installed: how its pages came into memory counts."""
    subprocess.run(["cmake", "--install", BUILD, "--prefix", folder, "--component", "program"],
                   capture_output=True, check=True)
    installed = os.path.join(folder, "bin", "boardmark")
    unresolved = os.path.join(folder, "unresolved.yaml")
    with open(MIX) as sound, open(unresolved, "w") as file:
        file.write(sound.read().replace("strength: 5000 psi\n", "strength: 9900 psi\n", 1))
    out = os.path.join(folder, "start-up.json")
    subprocess.run(["hyperfine", "-N", "-i", "--warmup", "50", "--runs", "1000", "--export-json",
                    out, "/bin/true", f"{PROGRAM} proportion {MIX}",
                    f"{PROGRAM} proportion {unresolved}", f"{installed} proportion {MIX}"], capture_output=True, check=True)
    with open(out) as file:
        return [sorted(one["times"])[len(one["times"]) // 4] * 1000
                for one in json.load(file)["results"]]


def spoken(count):
    return f"{count / 1e6:.2f} million" if count >= 1e6 else f"{count:,.0f}"


def shown_peak(mib):
    """A process that this script begins counts the script's own memory as its own."""
    own = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / MIB
    return f"{mib:.0f}" if mib > own + 1 else f"under {own:.0f}"


def memory_limit():
    with open("/proc/meminfo") as file:
        total = int(file.readline().split()[1]) / MIB
    try:
        with open("/sys/fs/cgroup/memory.max") as file:
            limit = file.read().strip()
        total = total if limit == "max" else min(total, int(limit) / 2**20)
    except OSError:
        pass
    return total


def processor():
    with open("/proc/cpuinfo") as file:
        for line in file:
            if line.startswith("model name"):
                return line.split(":", 1)[1].strip()
    return platform.processor()


def main():
    folder = tempfile.mkdtemp()
    try:
        lines = table(folder)
    finally:
        shutil.rmtree(folder)
    text = "\n".join(lines) + "\n"
    print(text)
    if "--print" in sys.argv:
        return
    path = os.path.join(TOP, "DEVELOPERS.md")
    with open(path) as file:
        whole = file.read()
    before, rest = whole.split("<!-- benchmark -->\n", 1)
    _, after = rest.split("<!-- end of benchmark -->\n", 1)
    with open(path, "w") as file:
        file.write(f"{before}<!-- benchmark -->\n{text}<!-- end of benchmark -->\n{after}")


def table(folder):
    with open(os.path.join(folder, "mixes.csv"), "w", newline="") as file:
        from rows import HEADINGS, rows
        writer = csv.writer(file)
        writer.writerow(HEADINGS)
        writer.writerows(rows(10_000))
    with open(os.path.join(folder, "bulk.csv"), "w", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(HEADINGS)
        writer.writerows(rows(ROWS))

    took = engine({})
    python = "/usr/bin/python3"
    numpy = other([python, os.path.join(HERE, "formulas.py")], folder, has("numpy"))
    octave = other(["octave-cli", "--no-gui", "-q", os.path.join(HERE, "figures.m")], folder,
                   shutil.which("octave-cli"))
    sheet = other([python, os.path.join(HERE, "spreadsheet.py"), "10000", folder], folder,
                  shutil.which("soffice") and has("uno"))
    took = engine(took)
    figures = 1e9 / took["figures_of_a_mix"]
    judged = 1e9 / (took["figures_of_a_mix"] + took["verdicts_of_a_mix"])
    told = 1e9 / (took["proportions_with_reasons"] + took["checks_with_messages"])
    for one in (octave, sheet):
        if one and numpy and abs(one["sand"] / numpy["sand"] - 1) > 1e-8:
            sys.exit(f"another sand: {one}, numpy {numpy['sand']}")
    difference = f"{held_against_formulas(folder):.0e}" if has("numpy") else NOT_MEASURED

    def beside(one):
        if one is None:
            return f"{NOT_MEASURED} | | "
        theirs = one["mixes_a_second"]
        return f"{spoken(theirs)} | {figures / theirs:,.2g} × | {judged / theirs:,.2g} ×"

    def version(one):
        return "" if one is None else " " + one["version"]

    true, mix, unresolved, installed = start_up(folder)
    cores = os.cpu_count()
    risk = best([PROGRAM, "risk", "--samples", "1000000", MIX], folder)
    bulk = best([PROGRAM, "proportion", "--table", "bulk.csv", "--base", MIX, "-q"], folder)
    check = best([PROGRAM, "check", "--table", "bulk.csv", "--base", MIX, "-q"], folder)
    economy = best([PROGRAM, "economy", "--least", "carbon", PRICED_MIX], folder)
    one = best([PROGRAM, "proportion", MIX], folder)

    return [
        f"{processor()}, {cores} cores, {memory_limit():,.0f} MiB; {time.strftime('%Y-%m-%d')}, "
        f"load {os.getloadavg()[0]:.1f}; written by `bash tests/benchmark/run`.",
        "",
        "| mixes a second, one core, processor time | | figures here | figures and verdicts here |",
        "|---|---|---|---|",
        f"| boardmark, figures | {spoken(figures)} | 1 | |",
        f"| boardmark, figures and verdicts | {spoken(judged)} | | 1 |",
        f"| boardmark, every reason and sentence | {spoken(told)} | | |",
        f"| numpy{version(numpy)}, figures | {beside(numpy)} |",
        f"| Octave{version(octave)}, figures | {beside(octave)} |",
        f"| LibreOffice Calc{version(sheet)}, figures | {beside(sheet)} |",
        "",
        "The others compute the figures of the same mixes by the same formulas, no checks and no "
        f"reasons; cell by cell the program differs from them by at most {difference}.",
        "",
        "| run | wall, s | processor, s | peak, MiB |",
        "|---|---|---|---|",
        *[f"| {name} | {wall:.2f} | {cpu:.2f} | {shown_peak(peak)} |" for name, (wall, cpu, peak) in [
            ("`risk --samples 1000000`", risk),
            (f"`proportion --table` of {ROWS:,} rows", bulk),
            (f"`check --table` of {ROWS:,} rows", check),
            ("`economy --least carbon`", economy),
            ("`proportion` of one mix", one)]],
        "",
        "| start to finish, ms (lower quartile of 1000) | | of `/bin/true` |",
        "|---|---|---|",
        f"| `/bin/true` | {true:.2f} | 1 |",
        f"| `proportion` of one mix | {mix:.2f} | {mix / true:.2f} |",
        f"| of one that leads to no mix | {unresolved:.2f} | {unresolved / true:.2f} |",
        f"| one mix, installed by `cmake --install` | {installed:.2f} | {installed / true:.2f} |",
    ]


sys.path.insert(0, HERE)
main()
