"""A comparison of our own: a workbook with twenty of the commoner checks as formulas, recalculated by LibreOffice.

A check says what one of a review says, each in a cell: what was observed, its limit, whether it is met, how grave it
is if not, and a sentence with the figures, or which inputs it wants where one is blank. The workbook is loaded, worked
out and saved as a workbook that a person can open; the time of the recalculation is the difference between doing so
with and without it.
"""

import re
import resource
import shutil
import subprocess
import tempfile
import zipfile
from pathlib import Path

SETTINGS = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse">
<value>{mode}</value></prop></item></oor:items>
"""
ALWAYS, NEVER = 0, 1
#: Inputs of a row, columns A to Y; sizes in mm, deviations, roughness and clearance in µm.
INPUTS = (
    "bore", "outside", "width", "chamfer", "speed", "lubrication", "es", "ei", "ES", "EI", "Ra shaft", "Ra housing",
    "run-out", "cylindricity", "d_a", "D_a", "fillet", "C", "P", "hours wanted", "shaft temperature",
    "housing temperature", "limiting speed", "clearance", "span",
)  # fmt: skip
#: Rows that repeat.
ROWS = [
    [word if word[0].isalpha() else float(word) for word in line.split()]
    for line in (
        "8 22 7 0.3 42000 grease 7 1 9 -12 0.4 0.8 0.003 0.002 10.2 19.8 0.2 3300 60 8000 70 55 48000 9 40",
        "10 26 8 0.3 30000 mist 10 4 13 -8 0.3 0.6 0.002 0.001 12.4 23.6 0.3 4600 95 10000 80 60 40000 11 55",
        "17 35 10 0.3 18000 grease 12 1 16 0 0.5 0.9 0.005 0.004 19.4 32.6 0.3 6000 150 20000 65 50 28000 12 70",
        "25 47 12 0.6 14000 jet 15 2 25 0 0.4 0.8 0.004 0.003 28.5 43.5 0.6 11900 400 20000 85 60 20000 14 120",
    )
]
LIMIT = "VLOOKUP(F{r},T!$A$1:$B$4,2,FALSE)"
#: By check what is observed, the limit, the two marks between minor, major and critical, and the unit; ``{r}`` is the
#: row. Limit and marks only stand for those of a rulebook: what is measured is their cost.
CHECKS = {
    "speed factor": ("E{r}*(A{r}+B{r})/2", LIMIT, f"1.15*{LIMIT}", f"1.3*{LIMIT}"),
    "limiting speed": ("E{r}/W{r}", "0.8", "1", "1.2"),
    "shaft interference": ("-H{r}", "0", "2", "5"),
    "shaft stress": ("206*(G{r}+8)/A{r}/2*(1+(A{r}/(0.7*A{r}+0.3*B{r}))^2)", "80", "120", "150"),
    "interference at speed": (
        "-(H{r}-2*K{r}-0.00000785*(3.3*(A{r}/2000)^2*(E{r}*PI()/30)^2)/206000*A{r}*1000)", "0", "2", "5"
    ),
    "warm interference": ("-(H{r}+A{r}*0.012*(U{r}-V{r})*0.2)", "0", "2", "5"),
    "housing clearance": ("I{r}", "15", "25", "40"),
    "outer slides": ("-(J{r}+B{r}*ABS(0.0115*(U{r}-20)-0.0125*(V{r}-20)))", "0", "6", "12"),
    "operating clearance": (
        "-(X{r}-0.8*MAX(0,G{r})-0.7*MAX(0,-J{r})-0.0125*(U{r}-V{r})*(A{r}+B{r})/2)", "0", "3", "6"
    ),
    "roughness of the shaft": ("K{r}", "IF(A{r}<=80,0.4,0.8)", "0.8", "1.6"),
    "roughness of the housing": ("L{r}", "IF(B{r}<=80,0.8,1.6)", "1.6", "3.2"),
    "run-out": ("M{r}*1000", "0.45*A{r}^(1/3)+0.001*A{r}+1", "4", "8"),
    "cylindricity": ("N{r}*1000", "(0.45*A{r}^(1/3)+0.001*A{r})*1.5", "3", "6"),
    "shaft shoulder": ("A{r}+2*(D{r}+0.5)-O{r}", "0", "0.3", "0.6"),
    "shoulder and other ring": ("O{r}-(A{r}+0.3*(B{r}-A{r}))", "0", "0.2", "0.5"),
    "housing shoulder": ("P{r}-(B{r}-2*(D{r}+0.5))", "0", "0.3", "0.6"),
    "fillet": ("Q{r}/D{r}", "0.95", "1", "1.3"),
    "rating life": ("T{r}/(1000000/(60*E{r})*(R{r}/S{r})^3)", "1", "1.3", "2"),
    "smallest load": ("0.01*R{r}/S{r}", "1", "1.5", "3"),
    "tilt": ("ATAN(M{r}/Y{r})*180/PI()*60", "1", "2", "4"),
}  # fmt: skip


UNITS = {
    "speed factor": "mm·r/min", "shaft stress": "MPa", "tilt": "arcmin", "limiting speed": "", "fillet": "",
    "rating life": "", "smallest load": "", "shaft shoulder": "mm", "housing shoulder": "mm",
    "shoulder and other ring": "mm",
}  # fmt: skip
PARTS = ("observed", "limit", "outcome", "severity", "message")


def formulas(name: str, row: int, first: int) -> list[str]:
    """The cells of one check in a row (counted from 1), the first of them in column ``first`` (counted from 0)."""
    from xlsxwriter.utility import xl_col_to_name

    value, limit, major, critical = (text.replace("{r}", str(row)) for text in CHECKS[name])
    wanted = dict.fromkeys(re.findall(rf"\b([A-Y]){row}\b", f"{value} {limit} {major} {critical}"))
    observed, at_most, outcome = (f"{xl_col_to_name(first + k)}{row}" for k in range(3))
    blank = f"OR({','.join(f'ISBLANK({column}{row})' for column in wanted)})"
    named = "&".join(f'IF(ISBLANK({column}{row}),"{INPUTS[ord(column) - 65]}, ","")' for column in wanted)
    unit = UNITS.get(name, "µm")
    told = [f'TEXT({cell},"#,##0.###")&" {unit}"' for cell in (observed, at_most)]
    return [
        f'=IF({blank},"",{value})',
        f'=IF({observed}="","",{limit})',
        f'=IF({observed}="","not assessed",IF({observed}<={at_most},"met","finding"))',
        f'=IF({outcome}<>"finding","",IF({observed}<={major},"minor",IF({observed}<={critical},"major","critical")))',
        f'=IF({outcome}="not assessed","Not assessed: the table does not state "&{named},'
        f'"The {name} is "&{told[0]}&IF({outcome}="met",", within ",", more than ")&{told[1]})',
    ]


def write_workbook(path: Path, rows: int) -> int:
    """A workbook with all checks in every row, and other inputs in each; gives the number of checks."""
    import xlsxwriter

    with xlsxwriter.Workbook(str(path)) as book:
        sheet, limits = book.add_worksheet("Seats"), book.add_worksheet("T")
        for at, (word, limit) in enumerate(
            [("grease", 600_000), ("mist", 1_000_000), ("jet", 1_300_000), ("bath", 500_000)]
        ):
            limits.write_row(at, 0, [word, limit])
        sheet.write_row(0, 0, [*INPUTS, *(f"{name}: {part}" for name in CHECKS for part in PARTS)])
        for row in range(1, rows + 1):
            varied = 1 + row / 50_000  # no row is like another, as no text of it is
            cells = ROWS[row % len(ROWS)]
            sheet.write_row(row, 0, [cell if isinstance(cell, str) else cell * varied for cell in cells])
            for at, name in enumerate(CHECKS):
                first = len(INPUTS) + at * len(PARTS)
                for column, formula in enumerate(formulas(name, row + 1, first), first):
                    sheet.write_formula(row, column, formula)
    return rows * len(CHECKS)


def office() -> str | None:
    """The program, where there is one."""
    return shutil.which("soffice")


def recalculation(rows: int, rounds: int = 3) -> tuple[float, float, int]:
    """What a workbook costs in processor seconds.

    Returns
    -------
    recalculated, whole : float
        One recalculation of the formulas alone; and what the rows cost to load, work out and save in all, without the
        start of the program (against a workbook of a tenth of the rows).
    checks : int
        Checks, of five formulas each.

    Raises
    ------
    RuntimeError
        If the formulas were not worked out.
    """
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        large, small = folder / "seats.xlsx", folder / "small.xlsx"
        checks, few = write_workbook(large, rows), write_workbook(small, rows // 10)
        spent: dict[tuple[Path, int], list[float]] = {}
        for _ in range(rounds + 1):
            for call in ((large, ALWAYS), (large, NEVER), (small, ALWAYS)):
                spent.setdefault(call, []).append(_loaded(*call, folder))
        # the first round makes the profile of the program
        recalculated, plain, tenth = (min(each[1:]) for each in spent.values())
        return recalculated - plain, (recalculated - tenth) * checks / (checks - few), checks


def _loaded(table: Path, mode: int, folder: Path) -> float:
    """Processor seconds to load a workbook and save it as another; a formula has no text where it is not worked out."""
    profile = folder / f"profile{mode}"
    settings = profile / "user" / "registrymodifications.xcu"
    if not settings.exists():
        settings.parent.mkdir(parents=True)
        settings.write_text(SETTINGS.format(mode=mode), encoding="utf-8")
    out = folder / f"out{mode}"
    call = [
        str(office()),
        "--headless",
        f"-env:UserInstallation={profile.as_uri()}",
        "--convert-to",
        "xlsx",
        "--outdir",
    ]
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run([*call, str(out), str(table)], check=True, capture_output=True, timeout=300)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    worked = _texts(out / table.name)
    if (worked > 0) != (mode == ALWAYS):
        raise RuntimeError(f"{worked} sentences of {table.name} were worked out with recalculation mode {mode}")
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def _texts(path: Path) -> int:
    """How many cells of a workbook have a sentence of a check as their value."""
    with zipfile.ZipFile(path) as book:
        sheet = book.read("xl/worksheets/sheet1.xml").decode("utf-8")
    return sum(text.startswith(("The ", "Not assessed")) for text in re.findall(r"<v>([^<]*)</v>", sheet))
