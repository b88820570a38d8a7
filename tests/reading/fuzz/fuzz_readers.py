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
    from linter.reading import InputError, read_names, read_table

SEEDS = {
    "text": [
        b'machine,station,bore_diameter,shaft_seat_diameter\nM,A,4,4 k5\n,B,"4,5",4 +0.006/+0.001\n',
        b"Name;Wert;Einheit;Lagerstelle\nBohrungsdurchmesser;4,25;mm;A\nDrehzahl max;40 000;1/min;\n",
        b"Units: mm\n\nmachine  station  bore_diameter\nM        A        4\n",
        "machine\tstation\tBore\nM\tA\t4\n".encode("utf-16"),
        b'"machine","station","bore_diameter","note"\n"M","A","4","say ""so"", or\nnot"\n"M","B",3/8","x"y"\n',
        b"sep=|\nmachine|station|d|D|B|upper|lower\nM|A|4|13|5|+6|+1\n|B|*|*|*|-0,008|0\n",
        b"machine;" + b";".join(b"d S%d" % index for index in range(60)) + b"\nM;" + b"4;" * 60 + b"\nN;5\n",
        b"Drawing: D-1;Rev: B\nUnits: mm\n\n;A;B\nbore_diameter;4;5\nspeed_max;40 000;\n\n# end\nName;Value\nd A;4\n",
        b"d;t_up;t_low;station;machine;;d;station;machine\n4;6 \xc2\xb5m;1;A;M;;5;B;N\n4/0;max 4;3-8;B;M;;4 H7/g6;C\n",
    ],
    "equations": [
        b'# head\n"Bore@A"= 4.25in\n"x ""y"" z"= "d@A" * 2\n"d B"= 1\'234,5 mm \'one\'s note\nplain\n"="="\'\n',
        b'"machine"= M\r\r\n"bore_diameter@A"= 4.00mm \'note\r\r\n"D1@x"="bore_diameter A"\r\r\n',
    ],
    "json": [
        b'{"machines":[{"machine":"M","stations":[{"station":"A","bore_diameter":4,"shaft_seat_diameter":'
        b'{"nominal":4,"upper":0.006,"lower":0.001,"unit":"mm"}}]}]}',
        b'[{"name":"bore_diameter A","value":"4,25","unit":"mm"}]',
        b'{"units":{"length":"in"},"M":{"A":{"bore_diameter":"4 k5"},"B":{"d":null,"D":true,"B":[1,2]}}}',
        b'{"bore_diameter A":4.5e-1,"shaft_seat_diameter A":{"max":4.1,"min":"4,0"},"station":"\\u00d8","machine":7}',
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
        b'</row></sheetData><mergeCells><mergeCell ref="A1:A2"/></mergeCells></worksheet>',
        b'<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:dimension ref="A1:XFD9"/>'
        b'<x:cols><x:col min="2" max="3" hidden="1"/></x:cols><x:sheetData><x:row r="2"><x:c r="B2" t="str">'
        b'<x:v>machine</x:v></x:c><x:c r="C2" t="str"><x:v>shaft_seat_diameter</x:v></x:c>'
        b'<x:c r="F2" t="str"><x:v>station</x:v></x:c>'
        b'</x:row><x:row r="3"><x:c r="C3" t="str"><x:v>nominal</x:v></x:c><x:c r="D3" t="str"><x:v>upper</x:v></x:c>'
        b'<x:c r="E3" t="str"><x:v>lower</x:v></x:c></x:row><x:row><x:c t="str"><x:v>M</x:v></x:c>'
        b"<x:c><x:v>4</x:v></x:c>"
        b'<x:c t="b"><x:v>1</x:v></x:c><x:c t="e"><x:v>#REF!</x:v></x:c><x:c r="F4"><x:f>A1</x:f></x:c></x:row>'
        b'</x:sheetData><x:mergeCells><x:mergeCell ref="C2:E2"/><x:mergeCell ref="B2:B3"/><x:mergeCell ref="B4:B9"/>'
        b"</x:mergeCells></x:worksheet>",
    ],
}


#: Words that a fuzzer does not come upon by itself.
TOKENS = (
    "machine", "station", "bore_diameter", "shaft_seat_diameter", "speed_max", "lubrication", "Name", "Value", "Unit",
    "upper", "lower", "nominal", "Units: mm", "4 k5", "+0.006", "1,234", "1.234,5", "*", "3/8", "\u00d8", "\u00b5m",
    "sep=;", '"', '""', '","', '"\n"', "<c r=", "mergeCell ref=", "<f>", 't="s"', "hidden=", "A1:B9",
    "MaxValue", "TargetValue",
)  # fmt: skip


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
    words = work / "words"
    escaped = ("".join(f"\\x{byte:02x}" for byte in token.encode()) for token in TOKENS)
    words.write_text("".join(f'"{token}"\n' for token in escaped))
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
         "-rss_limit_mb=1500", "-timeout=20", f"-dict={words}", str(seeds)],
        one,
    )  # fmt: skip
    atheris.Fuzz()


if __name__ == "__main__":
    main()
