"""QIF documents in the shape of the published schema.

Element and attribute names: schema files Characteristics.xsd, IntermediatesPMI.xsd and Units.xsd of QIF 3.0 and the
samples QIF_Results_Sample.QIF (2.1) and All-in-one.QIF (3.0), all in the public repository qif-community. The numbers
are invented.
"""

import numpy as np
import pytest

from linter.reading import InputError, read_table
from linter.reading.words.mapping import Mapping
from linter.reading.words.names import Names

MM = "<LinearUnit><SIUnitName>meter</SIUnitName><UnitName>mm</UnitName>{}</LinearUnit>".format(
    "<UnitConversion><Factor>0.001</Factor></UnitConversion>"
)
DEGREE = (
    "<AngularUnit><SIUnitName>radian</SIUnitName><UnitName>degree</UnitName>"
    "<UnitConversion><Factor>0.017453292519943</Factor></UnitConversion></AngularUnit>"
)
OTHERS = (
    '<OtherUnits n="3"><LinearUnit><UnitName>micrometre</UnitName><UnitConversion><Factor>0.000001</Factor>'
    "</UnitConversion></LinearUnit><LinearUnit><UnitName>Zoll</UnitName><UnitConversion><Factor>0.0254</Factor>"
    "</UnitConversion></LinearUnit><LinearUnit><UnitName>span</UnitName><UnitConversion><Factor>0.2286</Factor>"
    "</UnitConversion></LinearUnit></OtherUnits>"
)


def document(*items: tuple[str, str, str, str], units: str = MM + DEGREE, others: str = OTHERS, version: str = "3.0.0",
             more: str = "", before: str = "") -> str:  # fmt: skip
    """A document from (kind, name, inside of the nominal, inside of the definition)."""
    definitions = nominals = characteristics = ""
    for number, (kind, name, nominal, definition) in enumerate(items):
        one, two, three = 3 * number + 101, 3 * number + 102, 3 * number + 103
        definitions += f'<{kind}CharacteristicDefinition id="{one}">{definition}</{kind}CharacteristicDefinition>'
        nominals += (
            f'<{kind}CharacteristicNominal id="{two}"><CharacteristicDefinitionId>{one}</CharacteristicDefinitionId>'
            f"{nominal}</{kind}CharacteristicNominal>"
        )
        characteristics += (
            f'<{kind}CharacteristicItem id="{three}">{name}<CharacteristicNominalId>{two}</CharacteristicNominalId>'
            f"</{kind}CharacteristicItem>"
        )
    space = f"http://qifstandards.org/xsd/qif{version[0]}"
    return (
        f'<?xml version="1.0" encoding="UTF-8"?>\n{before}<QIFDocument xmlns="{space}" versionQIF="{version}">'
        f"<FileUnits><PrimaryUnits>{units}</PrimaryUnits>{others}</FileUnits>"
        f'<Product><PartSet n="1"><Part id="1"><ModelNumber>RB_4</ModelNumber></Part></PartSet></Product>{more}'
        f"<Characteristics><CharacteristicDefinitions>{definitions}</CharacteristicDefinitions><CharacteristicNominals>"
        f"{nominals}</CharacteristicNominals><CharacteristicItems>{characteristics}</CharacteristicItems>"
        "</Characteristics></QIFDocument>"
    )


def size(name: str, target: str, tolerance: str, kind: str = "Diameter") -> tuple[str, str, str, str]:
    return kind, f"<Name>{name}</Name>", f"<TargetValue>{target}</TargetValue>" if target else "", tolerance


def limits(high: str, low: str, flag: str, attribute: str = "") -> str:
    return (
        f"<Tolerance><MaxValue{attribute}>{high}</MaxValue><MinValue{attribute}>{low}</MinValue>"
        f"<DefinedAsLimit>{flag}</DefinedAsLimit></Tolerance>"
    )


@pytest.fixture
def read(tmp_path):
    def reader(text: str, names: Names | None = None):
        path = tmp_path / "part.qif"
        path.write_text(text, encoding="utf-8")
        return read_table(path, names)

    return reader


def codes(reading) -> list[str]:
    return [p.code for p in reading.stations.problems]


def test_limits_and_fits(read):
    h7 = (
        '<LimitsAndFitsSpecification zoneVariance="{}"><FormVariance>{}</FormVariance><Grade>{}</Grade>'
        "</LimitsAndFitsSpecification>"
    )
    reading = read(
        document(
            size("Shaft seat diameter A", "4", h7.format("SHAFT", "k", "5")),
            size("Housing seat diameter A", "13", h7.format("HOLE", "H", "IT6")),
        )
    )
    assert reading.stations.problems == ()
    assert reading.stations.size("shaft_seat_diameter").tolerance_class.tolist() == ["k5"]
    assert reading.stations.size("housing_seat_diameter").tolerance_class.tolist() == ["H6"]
    wrong = read(
        document(
            size("Shaft seat diameter A", "4", h7.format("SHAFT", "H", "5")),
            size("Housing seat diameter A", "13", h7.format("HOLE", "H", "first")),
        )
    )
    assert sorted(codes(wrong)) == ["limits-and-fits", "not-a-size"]
    assert wrong.stations.size("shaft_seat_diameter").tolerance_class.tolist() == [""]


@pytest.mark.parametrize("version", ["2.1.0", "3.0.0"])
def test_units_of_single_values(read, version):
    um = ' linearUnit="micrometre"'
    reading = read(
        document(
            size("Shaft seat diameter A", "4", limits("6", "1", "false", um)),
            ("Diameter", "<Name>Bore diameter A</Name>", '<TargetValue linearUnit="Zoll">0.1575</TargetValue>', ""),
            ("SurfaceTexture", "<Name>Shaft seat A</Name>", "", f"<RoughnessAverage{um}>0.4</RoughnessAverage>"),
            size("Contact angle A", "15", "", "Angle"),
            size("Housing seat diameter A", "13", limits("0.008", "0", "false")),
            version=version,
        )
    )
    assert codes(reading) == []
    shaft = reading.stations.size("shaft_seat_diameter")
    assert (shaft.nominal[0], shaft.lower[0], shaft.upper[0]) == pytest.approx((4, 0.001, 0.006))
    assert reading.stations.number("bore_diameter")[0] == pytest.approx(4.0005)
    assert reading.stations.number("shaft_seat_roughness")[0] == pytest.approx(0.4)
    assert reading.stations.number("contact_angle")[0] == pytest.approx(15)
    assert reading.stations.size("housing_seat_diameter").upper[0] == pytest.approx(0.008)
    assert f"QIF version {version}" in reading.notes
    assert reading.stations.place("bore_diameter", 0).pointer == "/CharacteristicNominals/105/TargetValue"


def test_angles_are_radians_where_no_conversion_says_otherwise(read):
    radian = "<AngularUnit><UnitName>radian</UnitName></AngularUnit>"
    reading = read(document(size("Contact angle A", "0.2617993878", "", "Angle"), units=MM + radian))
    assert reading.stations.number("contact_angle")[0] == pytest.approx(15)


def test_pmi_units_go_before_the_others(read):
    inch = MM.replace("LinearUnit", "PMILinearUnit").replace(">mm<", ">inch<").replace("0.001", "0.0254")
    reading = read(document(size("Shaft seat diameter A", "0.25", limits("0.0002", "0", "false")), units=MM + inch))
    assert reading.stations.size("shaft_seat_diameter").nominal[0] == pytest.approx(6.35)


def test_a_unit_that_is_not_known_or_contradicts_itself_is_asked_for(read):
    unknown = read(
        document(("Diameter", "<Name>Bore diameter A</Name>", '<TargetValue linearUnit="span">1</TargetValue>', ""))
    )
    assert codes(unknown) == ["unknown-unit"]
    mm_of_an_inch = MM.replace("0.001", "0.0254")
    wrong = read(document(size("Bore diameter A", "4", ""), units=mm_of_an_inch))
    assert codes(wrong) == ["unit-missing"]
    assert any("a unit of lengths is not clear: mm with the factor 0.0254" in note for note in wrong.notes)
    none = read(document(size("Bore diameter A", "4", ""), units="", others=""))
    assert codes(none) == ["unit-missing"]
    stated = read(document(size("Bore diameter A", "4", ""), units="", others=""), Names(Mapping(default_unit="mm")))
    assert stated.stations.number("bore_diameter").tolist() == [4]


def test_flag_and_numbers_that_contradict_each_other_are_asked_about(read):
    """The published 2.1 sample states 2.200 and 1.800 as deviations of the target 2.000."""
    for high, low, flag in (("2.200", "1.800", "false"), ("0.2", "-0.2", "true")):
        reading = read(document(size("Shaft seat diameter A", "2.000", limits(high, low, flag))))
        assert codes(reading) == ["limit-flag"]
        problem = reading.stations.problems[0]
        assert high in problem.message and "2.000" in problem.message and "DefinedAsLimit" in problem.message
        assert problem.place.pointer == "/CharacteristicDefinitions/101/Tolerance"
        assert np.isnan(reading.stations.size("shaft_seat_diameter").upper[0])
    um = ' linearUnit="micrometre"'
    small = read(document(size("Shaft seat diameter A", "0.004", limits("3", "1", "false", um))))
    assert codes(small) == []


def test_limits_without_a_target_and_tolerances_by_reference(read):
    shared = (
        '<ToleranceDefinitions n="1"><LinearTolerance id="7"><MaxValue>0.006</MaxValue><MinValue>0.001</MinValue>'
        "</LinearTolerance></ToleranceDefinitions>"
    )
    by_id = "<Tolerance><DefinitionId>7</DefinitionId><DefinedAsLimit>false</DefinedAsLimit></Tolerance>"
    reading = read(
        document(
            size("Shaft seat diameter A", "4", by_id),
            size("Housing seat diameter A", "", limits("13.008", "13", "true")),
            more=shared,
        )
    )
    shaft, housing = reading.stations.size("shaft_seat_diameter"), reading.stations.size("housing_seat_diameter")
    assert (shaft.lower[0], shaft.upper[0]) == pytest.approx((0.001, 0.006))
    assert (housing.smallest[0], housing.largest[0]) == pytest.approx((13, 13.008))


def test_what_is_toleranced_decides_the_parameter_of_a_feature(read):
    zone = "<ToleranceValue>{}</ToleranceValue>"
    frame = "<DatumReferenceFrameId>53</DatumReferenceFrameId>"
    datums = (
        '<DatumDefinitions n="2"><DatumDefinition id="54"><DatumLabel>A</DatumLabel></DatumDefinition><DatumDefinition '
        'id="55"><DatumLabel>B</DatumLabel></DatumDefinition></DatumDefinitions><DatumReferenceFrames n="1">'
        '<DatumReferenceFrame id="53"><Datums n="1"><Datum><SimpleDatum><DatumDefinitionId>54</DatumDefinitionId>'
        "</SimpleDatum></Datum></Datums></DatumReferenceFrame></DatumReferenceFrames>"
        '<Features><FeatureItems n="1"><CylinderFeatureItem id="46"><FeatureName>Shaft seat A</FeatureName>'
        "</CylinderFeatureItem></FeatureItems></Features>"
    )
    linked = '<Name>{}</Name><FeatureItemIds n="1"><Id>46</Id></FeatureItemIds>'
    reading = read(
        document(
            ("Diameter", linked.format("Diameter1"), "<TargetValue>4</TargetValue>", limits("0.006", "0.001", "false")),
            ("Cylindricity", linked.format("Cylindricity1"), "", zone.format("0.002")),
            ("TotalRunout", linked.format("Runout1"), "", zone.format("0.003") + frame),
            ("Circularity", linked.format("Circularity1"), "", zone.format("0.001")),
            ("Length", linked.format("Length1"), "<TargetValue>12</TargetValue>", ""),
            ("Perpendicularity", "<Name>Shaft shoulder A</Name>", "", zone.format("0.003") + frame),
            ("Position", "<Name>Housing seat A</Name>", "",
             zone.format("0.01") + frame + "<MaterialCondition>MAXIMUM</MaterialCondition>"
             "<ZoneShape><DiametricalZone/></ZoneShape>"),
            ("Cylindricity", "<Name>Bore diameter A</Name>", "", zone.format("0.002")),
            more=datums,
        )
    )  # fmt: skip
    stations = reading.stations
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [4]
    assert stations.number("shaft_seat_cylindricity").tolist() == [0.002]
    assert stations.number("shaft_seat_runout").tolist() == [0.003]
    assert stations.number("shaft_shoulder_runout").tolist() == [0.003]
    assert stations.number("coaxiality_of_bores").tolist() == [0.01]
    assert not stations.known("bore_diameter").any()
    assert [(p.kind, p.code) for p in stations.problems] == [("assumption", "characteristic")]
    message = stations.problems[0].message
    assert "datum A is taken for the other seat" in message and "material condition" in message
    assert {(u.name, u.value) for u in reading.unused} == {
        ("Shaft seat A", "0.001"), ("Shaft seat A", "12"), ("Bore diameter A", "0.002")
    }  # fmt: skip


def test_a_tolerance_of_a_parameter_without_one_and_measured_values_are_left_and_said(read):
    measured = (
        "<Results><MeasurementResultsSet><MeasurementResults id='1'><MeasuredCharacteristics>"
        "<CharacteristicMeasurements>"
        "<DiameterCharacteristicMeasurement id='8'><CharacteristicItemId>103</CharacteristicItemId><Value>4.5</Value>"
        "</DiameterCharacteristicMeasurement></CharacteristicMeasurements></MeasuredCharacteristics></MeasurementResults>"
        "</MeasurementResultsSet></Results>"
    )
    reading = read(document(size("Bore diameter A", "4", limits("0", "-0.005", "false")), more=measured))
    assert reading.stations.number("bore_diameter").tolist() == [4]
    assert {(u.name, u.reason) for u in reading.unused} == {
        ("Bore diameter A", "bore_diameter carries no tolerance"),
        ("Results", "measured values; the design states what is reviewed"),
    }


def test_designators_by_a_name_mapping(read, tmp_path):
    mapping = tmp_path / "names.toml"
    mapping.write_text('[names]\n"K-1" = {parameter = "shaft_seat_diameter", station = "A"}\n', encoding="utf-8")
    item = "<Name>Ø 4</Name><CharacteristicDesignator><Designator>K-1</Designator></CharacteristicDesignator>"
    text = document(("Diameter", item, "<TargetValue>4</TargetValue>", limits("4.006", "4.001", "true")))
    assert read(text, Names.load(mapping)).stations.size("shaft_seat_diameter").upper[0] == pytest.approx(0.006)
    with pytest.raises(InputError, match="no known parameter name"):
        read(text)


def test_a_namespace_prefix_changes_nothing(read):
    text = document(size("Shaft seat diameter A", "4", limits("4.006", "4.001", "true")))
    text = text.replace("xmlns=", "xmlns:q=").replace("</", "</q:").replace("<", "<q:").replace("<q:/q:", "</q:")
    text = text.replace("<q:?xml", "<?xml")
    assert read(text).stations.size("shaft_seat_diameter").lower[0] == pytest.approx(0.001)


@pytest.mark.parametrize(
    "before",
    [
        '<!DOCTYPE QIFDocument SYSTEM "http://example.org/q.dtd">',
        '<!DOCTYPE q [<!ENTITY a SYSTEM "file:///etc/hostname">]>',
    ],
)
def test_document_types_and_outside_entities_are_refused(read, before):
    with pytest.raises(InputError) as caught:
        read(document(size("Bore diameter A", "4", ""), before=before))
    assert caught.value.code == "document-type"


def test_another_kind_of_xml_is_named(read):
    with pytest.raises(InputError, match="an XML document of the kind Drawing"):
        read("<Drawing><a/></Drawing>")
    with pytest.raises(InputError, match=r"a STEP model as XML \(ISO 10303\), whose tolerances \(AP242\)"):
        read(
            '<n0:Uos xmlns:n0="http://standards.iso.org/iso/ts/10303/-3000/-ed-1/tech/xml-schema/bo_model"><a/></n0:Uos>'
        )


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("ISO-10303-21;\nHEADER;\n", "a STEP exchange file"),
        ("/* written by a modeller */\nISO-10303-21;\nHEADER;\n", "a STEP exchange file"),
        ("Seat of a blower".ljust(72) + "S      1\n" + "1H,,1H;,5Hplate".ljust(72) + "G      1\n", "an IGES model"),
        ("  0\nSECTION\n  2\nHEADER\n", "a DXF drawing"),
        ("  0\r\nSECTION\r\n  2\r\nHEADER\r\n", "a DXF drawing"),
        ("solid seat\n facet normal 0 0 1\n  outer loop\n", "an STL mesh"),
        ("DMISMN/'seat', 05.2\n", "a DMIS measuring program"),
        ("%!PS-Adobe-3.0\n", "a PostScript document"),
        ("{\\rtf1\\ansi seat}", "a formatted text document"),
    ],
)
def test_drawings_and_models_are_named_and_refused(read, text, name):
    with pytest.raises(InputError) as caught:
        read(text)
    assert caught.value.read.startswith(name)
    assert "CSV" in caught.value.expected


def test_a_letter_in_a_balloon_is_no_symbol_of_a_size(tmp_path):
    letter = (
        "LinearCoordinate",
        "<CharacteristicDesignator><Designator>B</Designator></CharacteristicDesignator>",
        "<TargetValue>2466</TargetValue>",
        "",
    )
    path = tmp_path / "t.qif"
    path.write_text(document(letter, size("Bore diameter A", "10", "")), encoding="utf-8")
    stations = read_table(path).stations
    assert stations.number("bore_diameter").tolist() == [10.0]
    assert not stations.known("ring_width").any()
