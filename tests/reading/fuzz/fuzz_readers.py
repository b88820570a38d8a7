"""Coverage-guided fuzzing of one reader, bounded in time; not part of the normal test run.

Needs ``atheris`` from PyPI. Usage: ``python tests/reading/fuzz/fuzz_readers.py READER SECONDS [FOLDER]``, READER one
of text, equations, json, qif, workbook. Every input gives a reading or the project's own input error; anything else
stops the run and leaves the input in FOLDER (default: the current folder).
"""

import io
import sys
import tempfile
import zipfile
from pathlib import Path

import atheris

with atheris.instrument_imports(include=["linter.reading"]):
    import linter.reading.csv_text
    import linter.reading.equations
    import linter.reading.json_layouts
    import linter.reading.json_text
    import linter.reading.layouts
    import linter.reading.qif
    import linter.reading.table
    import linter.reading.xlsx  # noqa: F401
    from linter.reading import InputError, read_names, read_table

SEEDS = {
    "text": [
        b'machine,station,bore_diameter,shaft_seat_diameter\nM,A,4,4 k5\n,B,"4,5",4 +0.006/+0.001\n',
        b"Name;Wert;Einheit;Lagerstelle\nBohrungsdurchmesser;4,25;mm;A\nDrehzahl max;40 000;1/min;\n",
        b"Units: mm\n\nmachine  station  bore_diameter\nM        A        4\n",
        "machine\tstation\tBore\nM\tA\t4\n".encode("utf-16"),
    ],
    "equations": [b'"machine"= M\r\r\n"bore_diameter@A"= 4.00mm \'note\r\r\n"D1@x"="bore_diameter A"\r\r\n'],
    "json": [
        b'{"machines":[{"machine":"M","stations":[{"station":"A","bore_diameter":4,"shaft_seat_diameter":'
        b'{"nominal":4,"upper":0.006,"lower":0.001,"unit":"mm"}}]}]}',
        b'[{"name":"bore_diameter A","value":"4,25","unit":"mm"}]',
    ],
    "qif": [
        b"<QIFDocument><FileUnits><PrimaryUnits><LinearUnit><UnitConversion><Factor>0.001</Factor></UnitConversion>"
        b"</LinearUnit></PrimaryUnits></FileUnits><Characteristics><CharacteristicDefinitions>"
        b'<X id="1"><Tolerance><MaxValue>0.01</MaxValue><MinValue>0</MinValue></Tolerance></X>'
        b'</CharacteristicDefinitions><CharacteristicNominals><X id="2"><CharacteristicDefinitionId>1'
        b"</CharacteristicDefinitionId><TargetValue>4</TargetValue></X></CharacteristicNominals><CharacteristicItems>"
        b'<X id="3"><Name>shaft_seat_diameter A</Name><CharacteristicNominalId>2</CharacteristicNominalId></X>'
        b"</CharacteristicItems></Characteristics></QIFDocument>"
    ],
    "workbook": [
        b'<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1">'
        b'<c r="A1" t="inlineStr"><is><t>station</t></is></c><c r="B1" t="inlineStr"><is><t>bore_diameter</t></is></c>'
        b'</row><row r="2" hidden="1"><c r="A2" t="inlineStr"><is><t>A</t></is></c><c r="B2"><f>1+1</f><v>2</v></c>'
        b'</row></sheetData><mergeCells><mergeCell ref="A1:A2"/></mergeCells></worksheet>'
    ],
}


def _book() -> dict[str, bytes]:
    """Members of a workbook around its one sheet, which the fuzzer writes."""
    import openpyxl

    stream = io.BytesIO()
    openpyxl.Workbook().save(stream)
    with zipfile.ZipFile(stream) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


def main() -> None:
    """Fuzz the reader that the command line names."""
    reader, seconds = sys.argv[1], int(sys.argv[2])
    folder = Path(sys.argv[3] if len(sys.argv) > 3 else ".")
    work = Path(tempfile.mkdtemp())
    seeds = work / "seeds"
    seeds.mkdir()
    for index, seed in enumerate(SEEDS[reader]):
        (seeds / str(index)).write_bytes(seed)
    members = _book() if reader == "workbook" else {}
    path = work / "t"

    def one(data: bytes) -> None:
        if reader == "workbook":
            with zipfile.ZipFile(path, "w") as archive:
                for name, content in members.items():
                    archive.writestr(name, data if name == "xl/worksheets/sheet1.xml" else content)
        else:
            path.write_bytes(data)
        for read in (read_table, read_names):
            try:
                result = read(path)
            except InputError as error:
                assert "\n" not in str(error), str(error)
                continue
            if read is read_table:
                assert all("\n" not in problem.message for problem in result.stations.problems)
                assert len(result.understood) >= 0

    atheris.Setup(
        [sys.argv[0], f"-max_total_time={seconds}", "-max_len=3000", f"-artifact_prefix={folder}/{reader}-",
         "-rss_limit_mb=1500", "-timeout=20", str(seeds)],
        one,
    )  # fmt: skip
    atheris.Fuzz()


if __name__ == "__main__":
    main()
