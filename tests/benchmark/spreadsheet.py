"""The formulas of formulas.py as cells of a spreadsheet: writes figures.fods, has LibreOffice
calculate it anew on one core, and gives the rows a second and the mean of the sand.

/usr/bin/python3 spreadsheet.py COUNT FOLDER
"""
import json
import os
import subprocess
import sys
import time
from xml.sax.saxutils import quoteattr

from rows import rows

# Cell H and on, each from those before it; a mix in each row.
FORMULAS = [
    "480*(1.16+(18-15)/5*(1.08-1.16))",                                          # H deviation
    "MAX([.A#]+1.34*[.H#];IF([.A#]<=5000;[.A#]+2.33*[.H#]-500;0.9*[.A#]+2.33*[.H#]))",  # I
    "IF([.I#]>6200;0.36+0.04*LN(6900/[.I#])/LN(6900/6200);"
    "IF([.I#]>=5400;0.4+0.05*LN(6200/[.I#])/LN(6200/5400);0.45))",               # J by strength
    "MIN([.J#];0.4)",                                                            # K w/cm
    "IF([.B#]<=4+3/25.4;305;305+([.B#]-4)/2*20)",                                # L table water
    "IF([.E#]<=8;8+([.E#]-4)/4*8;16+([.E#]-8)/4*6)",                             # M reduction
    "[.L#]*(1-[.M#]/100)",                                                       # N water
    "[.N#]/[.K#]",                                                               # O binder
    "[.O#]*[.C#]/100",                                                           # P cement
    "[.O#]*[.D#]/100",                                                           # Q slag
    "[.E#]*[.O#]/100*231/128/1728",                                              # R reducer, ft3
    "[.R#]*1.07*62.4",                                               # S reducer, lb
    "[.N#]-[.S#]*(1-0.35)",                                                      # T batched water
    "0.9-0.1*[.F#]",                                                             # U coarse volume
    "[.U#]*27*100*1.005",                                                        # V stone
    "[.V#]/([.G#]*62.4)",                                            # W stone, ft3
    "[.T#]/62.4+[.P#]/(3.15*62.4)+[.Q#]/(2.9*62.4)"
    "+[.W#]+[.R#]+0.06*27",                                                      # X all but sand
    "(27-[.X#])*2.64*62.4",                                          # Y sand
    "([.T#]+[.P#]+[.Q#]+[.V#]+[.Y#]+[.S#])/27",                                  # Z density
    "([.X#]-[.W#]-0.06*27)/27*100",                                              # AA paste
    "(27-[.W#])/27*100",                                                         # AB mortar
]


def write_sheet(path, count):
    with open(path, "w") as sheet:
        sheet.write('<?xml version="1.0" encoding="UTF-8"?>\n<office:document '
                    'xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
                    'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" '
                    'xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" '
                    'office:version="1.2" '
                    'office:mimetype="application/vnd.oasis.opendocument.spreadsheet">'
                    '<office:body><office:spreadsheet><table:table table:name="mixes">\n')
        for number, row in enumerate(rows(count), 1):
            cells = [f'<table:table-cell office:value-type="float" office:value="{value}"/>'
                     for value in row]
            cells += [f'<table:table-cell table:formula={quoteattr("of:=" + formula.replace("#", str(number)))}/>'
                      for formula in FORMULAS]
            sheet.write(f"<table:table-row>{''.join(cells)}</table:table-row>\n")
        sheet.write("</table:table></office:spreadsheet></office:body></office:document>\n")


def connected(uno, pipe):
    resolver = uno.getComponentContext().ServiceManager.createInstance(
        "com.sun.star.bridge.UnoUrlResolver")
    for _ in range(300):
        try:
            return resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
        except Exception:  # the office is not up yet
            time.sleep(0.1)
    sys.exit("the spreadsheet did not start")


def core_seconds():
    """What the spreadsheet's threads have used of the processor so far; the kernel tells it to the nanosecond."""
    total = 0
    for entry in filter(str.isdigit, os.listdir("/proc")):
        try:
            with open(f"/proc/{entry}/comm") as name:
                if name.read().strip() not in ("soffice.bin", "oosplash"):
                    continue
            for thread in os.listdir(f"/proc/{entry}/task"):
                with open(f"/proc/{entry}/task/{thread}/schedstat") as used:
                    total += int(used.read().split()[0])
        except OSError:  # ended meanwhile
            continue
    return total / 1e9


def main():
    count, folder = int(sys.argv[1]), os.path.realpath(sys.argv[2])
    sheet = os.path.join(folder, "figures.fods")
    write_sheet(sheet, count)
    import uno
    pipe = f"benchmark-{os.getpid()}"
    office = subprocess.Popen(
        ["taskset", "-c", "0", "soffice", "--headless", "--norestore",
         f"-env:UserInstallation=file://{folder}/profile", f"--accept=pipe,name={pipe};urp;"],
        stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    try:
        context = connected(uno, pipe)
        desktop = context.ServiceManager.createInstanceWithContext(
            "com.sun.star.frame.Desktop", context)
        hidden = uno.createUnoStruct("com.sun.star.beans.PropertyValue")
        hidden.Name, hidden.Value = "Hidden", True
        document = desktop.loadComponentFromURL(f"file://{sheet}", "_blank", 0, (hidden,))
        best = float("inf")
        for _ in range(40):  # as many as the engine's repetitions
            begun = core_seconds()
            document.calculateAll()
            best = min(best, core_seconds() - begun)
        cells = document.Sheets.getByIndex(0)
        sand = [row[0] for row in cells.getCellRangeByName(f"Y1:Y{count}").getDataArray()]
        version = subprocess.run(["soffice", "--version"], capture_output=True, text=True).stdout
        print(json.dumps({"version": version.split()[1], "mixes_a_second": count / best,
                          "sand": sum(sand) / count}))
        document.close(True)
        desktop.terminate()
    finally:
        try:
            office.wait(10)
        except subprocess.TimeoutExpired:
            office.kill()


main()
