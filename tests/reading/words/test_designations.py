"""Designations: laws that hold for every number and every sign, what is asked, and what other text is told apart."""

import csv
import string
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import linter.reading.words.designations as module
from linter.mechanics import boundary
from linter.model.vocabulary import parameter
from linter.reading.words.bearing_geometry import internal_geometry
from linter.reading.words.bearing_tables import designation_sources
from linter.reading.words.designations import designation_strength, looks_like_designation, read_designation

DATA = Path(module.__file__).parent / "data"
PARAMETERS = (
    "bearing_type", "bore_diameter", "outside_diameter", "ring_width", "ring_chamfer", "contact_angle", "closure",
    "clearance_class", "tolerance_class", "cage", "ball_material",
)  # fmt: skip
_laws = settings(derandomize=True, deadline=None, max_examples=300)


def table(name):
    with (DATA / f"designation_{name}.csv").open(newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


SIZES, SIGNS = table("sizes"), table("suffixes")
WRITINGS = (
    "{}", " {} ", "{} C3", "{}/C3", "{}-P5", "{}.C2.P6", "{}_C4", "Rillenkugellager {}", "Pos. 7: {} C3", "{} (2 pcs)",
    "DIN 625-{}", "DIN 625-1:2011 {}/C3", "GB/T 276-94 {}", "3 x {}", "{}\u2013C3", "Lager\u00a0{}/P6",
    "no. 4711 {}/P5",
)  # fmt: skip


def spaced(basic):
    """A number with its letters set apart, as ``NU 204``."""
    letters = basic.rstrip(string.digits + "/.X-A") or ""
    return f"{letters} {basic[len(letters) :]}" if letters in ("NU", "NJ", "NUP", "N", "MR", "R") else basic


def full_width(text):
    return "".join(chr(ord(sign) + 0xFEE0) if "!" <= sign <= "~" else sign for sign in text)


def says_size(found, row):
    assert found.basic == row["basic"], (found.as_written, found.refusal)
    assert found.bearing_type == row["type"]
    assert found.bore_diameter == float(row["bore_mm"])
    assert found.outside_diameter == float(row["outside_diameter_mm"])
    widths = {float(row["width_mm"]), float(row["closed_width_mm"] or row["width_mm"])}
    assert found.ring_width in widths if found.ring_width is not None else len(widths) == 2 and found.refusal


@pytest.mark.parametrize("writing", WRITINGS)
def test_every_size_is_read_back_from_its_written_forms(writing):
    for row in SIZES:
        for number in (row["basic"], spaced(row["basic"]), row["basic"].lower(), full_width(row["basic"])):
            says_size(read_designation(writing.format(number)), row)


def test_closed_and_open_widths():
    assert sum(bool(row["closed_width_mm"]) for row in SIZES) == 59
    for row in SIZES:
        if row["type"] == "deep groove ball":
            assert read_designation(row["basic"] + " ZZ").ring_width == float(row["closed_width_mm"] or row["width_mm"])
            assert read_designation(row["basic"] + "-open").ring_width == float(row["width_mm"])
            both = float(row["closed_width_mm"] or row["width_mm"]) != float(row["width_mm"])
            assert ("ring_width" in read_designation(row["basic"]).derived) is not both


@given(
    st.sampled_from(SIZES),
    st.lists(
        st.sampled_from([row["sign"] for row in SIGNS if row["group"] != "bore" and row["sign"] != "RK"]),
        min_size=1,
        max_size=5,
    ),
    st.sampled_from([" ", "-", "/", ".", "_", ", ", " \u2013 "]),
)
@_laws
def test_no_sign_changes_the_size(row, signs, joint):
    says_size(read_designation(joint.join([row["basic"], *signs])), row)


@given(st.sampled_from(SIZES), st.sampled_from([row["sign"] for row in SIGNS if row["group"] != "bore"]))
@_laws
def test_a_joined_sign_never_gives_another_size(row, sign):
    found = read_designation(row["basic"] + sign)
    if found.basic == row["basic"]:
        says_size(found, row)
    else:  # a digit, an X or an A at the joint belongs to the number
        assert sign[0] in string.digits + "XA" or (found.basic is None and found.refusal)


@given(
    st.sampled_from(["6205", "NU204", "7205", "608"]),
    st.sampled_from(["", "C3", "P5", "C3 P6"]),
    st.text(alphabet="XIO", min_size=2, max_size=6),
)
@_laws
def test_a_sign_that_is_not_known_is_reported_and_never_read(basic, known, sign):
    with_it, without = read_designation(f"{basic} {known} {sign}"), read_designation(f"{basic} {known}")
    assert {name: value.value for name, value in with_it.derived.items()} == {
        name: value.value for name, value in without.derived.items()
    }
    assert sign in [part for part, _ in with_it.reported]


@given(st.permutations(["2Z", "C3", "P6", "TN9"]), st.sampled_from([" ", "-", "/", "."]))
@_laws
def test_order_and_joints_carry_no_meaning(signs, joint):
    found = read_designation("6305" + joint + joint.join(signs))
    assert (found.closure, found.clearance_class, found.tolerance_class, found.cage) == (
        "shield",
        "C3",
        "P6",
        "polyamide",
    )
    assert found.reported == () and found.refusal is None


@given(
    st.text(max_size=300)
    | st.text(alphabet="0123456789ZRSNUMRCPX /-.,xX()½²٣８Ⅷ\u200b\u202e\x00\t\ufeff", max_size=220)
)
@_laws
def test_hostile_text_never_raises_and_never_gives_half_a_size(text):
    found = read_designation(text)
    assert found.as_written == text and found.strength in ("certain", "possible", "no")
    assert set(found.derived) <= set(PARAMETERS) and not set(found.derived) & set(found.defaults)
    if found.basic is None:
        assert found.refusal and not found.derived and not found.defaults and found.arrangement is None
    else:
        assert {"bearing_type", "bore_diameter", "outside_diameter"} <= set(found.derived)
        assert found.bore_diameter < found.outside_diameter
        assert found.ring_width is not None or found.refusal


@pytest.mark.parametrize(
    "text", ["6" * 100_000, "Z2R" * 60, "N" * 199, "1x" * 99, "6203 " + "C" * 190, "(" * 190, "٦٢٠٣", "6203²"]
)
def test_long_and_strange_text_is_refused(text):
    found = read_designation(text)
    assert found.refusal or found.reported
    assert not looks_like_designation(text)


@given(st.decimals(0, 100_000, places=3) | st.integers(0, 1_000_000))
@_laws
def test_a_plain_number_is_never_a_designation_for_certain(number):
    assert designation_strength(str(number)) != "certain"


@pytest.mark.parametrize(
    ("text", "strength"),
    [
        ("608-2Z/C3", "certain"), ("NU204", "certain"), ("nj 308", "certain"), ("6203 LLU", "certain"),
        ("MR84", "certain"), ("6205 ABEC 5", "certain"),
        ("625", "possible"), ("6203", "possible"), ("6203.0", "possible"), ("R8", "possible"),
        ("62/22", "possible"), ("7005C", "possible"), ("6000 N", "possible"), ("6200 MA", "possible"),
        ("RNU204", "possible"), ("QJ206", "possible"), ("620", "no"), ("6299", "no"), ("6203.5", "no"), ("0.625", "no"),
        ("20", "no"), ("12 k6", "no"), ("100 H7", "no"), ("Ra 0.8", "no"), ("42CrMo4", "no"), ("", "no"),
        ("bearing", "no"),
        ("2026-11-28", "no"), ("1500 r/min", "no"), ("M8x20", "no"), ("C3", "no"), ("P5", "no"),
    ],
)  # fmt: skip
def test_strength(text, strength):
    assert designation_strength(text) == strength
    assert looks_like_designation(text) is (strength == "certain")


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("6299", "bore code 99 of series 62 would be 495 mm"),
        ("6023", "bore code 23 of series 60 would be 115 mm"),
        ("620", "0 is no bore"),
        ("618", "series without a bore"),
        ("62/27", "62/27 is not in the table"),
        ("638/2RS", "can be 638 with 2R"),
        ("6202-10", "follows no rule"),
        ("6202/16", "follows no rule"),
        ("6203.5", "number with decimals"),
        ("62O5", "letter where a digit belongs"),
        ("6O8ZZ", "608 may be meant"),
        ("RNU 204", "the shaft is the raceway"),
        ("HK 1010", "the shaft is the raceway"),
        ("RN 205", "the housing is the raceway"),
        ("30205 A", "tapered roller"),
        ("22208 E", "spherical roller"),
        ("1205 K", "self-aligning"),
        ("3205", "double-row angular"),
        ("51105", "thrust"),
        ("QJ 206", "four-point"),
        ("UCF205", "insert"),
        ("RB 6013", "crossed roller"),
        ("180205", "GOST 3189"),
        ("R-2280ZZ", "own number"),
        ("NU 299", "NU299 is not in the table"),
        ("MR99", "MR99 is not in the table"),
        ("XYZ6203", "“XYZ” joined to 6203"),
        ("B6203", "“B” joined to 6203"),
        ("W7005C", "“W” joined to 7005"),
        ("FNU204", "“FNU” joined to NU204"),
        ("6203ZZ / 6204ZZ", "two numbers"),
        ("6203 + NU204", "two numbers"),
        ("6203 + NU 204", "6203 and NU204"),
        ("6203-2RS 608", "6203 and 608"),
        ("6203 / 62/22", "6203 and 62/22"),
        ("6203 30205", "6203 and 30205"),
        ("6203 (RNU 204)", "6203 and RNU204"),
        ("6203 17x42x12", "one of the two is wrong"),
        ("6205K", "tapered bore"),
        ("6205 \x07", "has no place"),
        ("6٢05", "has no place"),
        ("", "no basic number"),
        ("x" * 201, "201 signs"),
    ],
)
def test_a_refusal_says_why(text, words):
    found = read_designation(text)
    assert words in (found.refusal or ""), found.refusal
    assert found.basic is None and not found.derived


@pytest.mark.parametrize(
    ("text", "words", "missing"),
    [
        ("6205C9", "C9: no clearance group", "clearance_class"),
        ("6205 2RS 2Z", "contact seal and shield are both stated", "closure"),
        ("6205 C3 C4", "C3 and C4 are both stated", "clearance_class"),
        ("6205 P6 ABEC 7", "P6 and P4 are both stated", "tolerance_class"),
        ("688", "4 mm open and 5 mm closed", "ring_width"),
        ("W693ZZ", "3 mm open and 4 mm closed", "ring_width"),
    ],
)
def test_what_is_asked_leaves_the_rest_standing(text, words, missing):
    found = read_designation(text)
    assert words in found.refusal and missing not in found.derived and missing not in found.defaults
    assert found.bore_diameter is not None and found.outside_diameter is not None


@pytest.mark.parametrize(
    ("text", "fragment"),
    [
        ("6205-2RSL", "2RSL"), ("6205DD", "DD"), ("6205V", "V"), ("608ZZ MC3", "MC3"), ("6205 CM", "CM"),
        ("6205 C08", "C08"),
        ("6205 P4A", "P4A"), ("608 P24", "P24"), ("6205 T", "T"), ("7205 E", "E"), ("7005 CA", "CA"),
        ("7205B C3", "C3"),
        ("S608ZZ", "S"), ("F608ZZ", "F"), ("6205ZNR", "ZNR"), ("6205-Z/Z2", "Z2"), ("6205 C3GJN", "GJN"),
        ("NORVIK 6205", "NORVIK"), ("6205/25.4", "/25.4"), ("608 ABEC 5P", "ABEC5P"), ("6205ZZE", "ZZE"),
    ],
)  # fmt: skip
def test_makers_differ_is_reported(text, fragment):
    found = read_designation(text)
    assert fragment in [part for part, _ in found.reported], found.reported
    assert found.basic is not None


def test_the_reason_names_the_sign():
    assert "a maker's class" in dict(read_designation("6205 P4S").reported)["P4S"]
    assert "low-friction" in dict(read_designation("6205 LLH").reported)["LLH"]
    assert "grease" in dict(read_designation("6205 C3GJN").reported)["GJN"]


@pytest.mark.parametrize("text", ["6205 P4A", "6205 P4S", "6205 P4Y", "6205P4DFX", "608 P24", "608 ABEC 5P"])
def test_a_makers_class_is_never_cut_down_to_an_iso_class(text):
    assert read_designation(text).tolerance_class is None


@pytest.mark.parametrize("text", ["6205 C08", "6205C083", "6205 CM", "6205 C3P", "608ZZMC3", "7205B C3", "7005C DB C3"])
def test_no_group_is_read_out_of_another_sign(text):
    assert read_designation(text).clearance_class is None


@pytest.mark.parametrize(
    ("text", "angle"),
    [
        ("7005C", 15), ("7005 C", 15), ("7005AC", 25), ("7005ACD", 25), ("7005A5", 25), ("7205A", 30), ("7205B", 40),
        ("7205BEP", 40), ("7205", None), ("7205E", None), ("71905A", None), ("71905B", None), ("7005 P4 C", None),
        ("6205C", 0), ("NU205 A", 0), ("6205-B", 0),
    ],
)  # fmt: skip
def test_contact_angle(text, angle):
    assert read_designation(text).contact_angle == angle


def test_defaults_are_kept_apart():
    bare = read_designation("6205")
    assert {name: value.value for name, value in bare.defaults.items()} == {
        "closure": "open", "tolerance_class": "Normal", "clearance_class": "CN",
    }  # fmt: skip
    assert not {"closure", "tolerance_class", "clearance_class"} & set(bare.derived)
    assert not read_designation("6205 2RSL CM P4A").defaults
    assert set(read_designation("7205B").defaults) == {"closure", "tolerance_class"}
    assert "closure" not in read_designation("NU204").defaults
    assert "closure" not in read_designation("688").defaults


def test_sizes_beside_the_number_settle_the_width():
    assert read_designation("688 8x16x5").ring_width == 5
    assert read_designation("688 (8 × 16 × 4 mm)").ring_width == 4
    assert read_designation("688 8*16*6").basic is None
    assert read_designation("6202/15.875 15.875x35x11").bore_diameter == 15.875


def test_equal_texts_are_read_once():
    assert read_designation("6205-2RS1") is read_designation("6205-2RS1")
    assert read_designation("6205 - 2rs1").normalised == "6205 2RS1"
    assert read_designation("S 608 zz/c3").normalised == "S 608 ZZ C3"


def test_internal_geometry_is_that_of_the_size():
    paper = internal_geometry(read_designation("6203-2RS"))
    assert (paper.ball_count, paper.published) == (8, True) and paper.ball_diameter == pytest.approx(6.746)
    assert len(paper.differing) == 2 and "29.05" in " ".join(paper.differing)
    assert internal_geometry(read_designation("6903")) is internal_geometry(read_designation("61903"))
    solved = internal_geometry(read_designation("6204"))
    assert solved is not None and not solved.published and solved.dynamic_rating
    spindle = internal_geometry(read_designation("7005C"))
    assert spindle.published and spindle.static_rating
    for text in ("7005", "7005AC", "NU204", "688", "6299", "6205/25.4"):
        assert internal_geometry(read_designation(text)) is None, text


def test_internal_geometry_fits_into_the_rings():
    rows = table("geometry")
    assert len(rows) > 200
    for row in rows:
        d, outer, width = (float(row[name]) for name in ("bore_mm", "outside_diameter_mm", "width_mm"))
        ball, count = float(row["ball_diameter_mm"]), int(row["ball_count"])
        pitch = float(row["pitch_diameter_mm"] or (d + outer) / 2)
        assert ball < (outer - d) / 2 and ball < width and d + ball < pitch < outer - ball, row
        assert count * ball < np.pi * pitch, row
        assert row["provenance"].startswith("derived") or row["provenance"] == "published"


def test_tables_agree_with_the_boundary_sizes():
    series = {
        "17": "617", "18": "618", "19": "619", "00": "160", "10": "60", "02": "62", "03": "63", "04": "64", "22": "622",
        "23": "623", "28": "628", "30": "630", "38": "638",
    }  # fmt: skip
    seen = 0
    for row in SIZES:
        sizes = [float(row[name]) for name in ("bore_mm", "outside_diameter_mm", "width_mm")]
        if row["type"] == "deep groove ball" and row["dimension_series"] in series and boundary.boundary_match(*sizes):
            assert boundary.dimension_series(*sizes) == series[row["dimension_series"]], row
            seen += 1
    assert seen > 200


def test_one_size_per_dimension_series_and_bore():
    found = {}
    for row in SIZES:
        if len(row["dimension_series"]) == 2:
            key = row["dimension_series"], row["bore_mm"]
            size = found.setdefault(key, (row["outside_diameter_mm"], row["width_mm"]))
            assert size == (row["outside_diameter_mm"], row["width_mm"]), row


def test_every_row_names_its_source():
    for name in ("sizes", "geometry", "suffixes", "prefixes", "refusals", "words"):
        for row in table(name):
            assert row["source"], row
    keys = set(designation_sources())
    for name in ("suffixes", "prefixes", "refusals"):
        for row in table(name):
            for part in row["source"].split("; "):
                assert part.split(" ")[0] in keys or part.startswith(("from memory of", "common practice")), row


def test_signs_read_choices_of_the_vocabulary():
    for row in (*SIGNS, *table("prefixes")):
        for part in filter(None, row["reads"].split("|")):
            name, value = part.split("=")
            assert name in PARAMETERS
            assert name == "contact_angle" or value in parameter(name).choices, row
        assert row["reads"] or row["says"] or row["group"] == "arrangement", row
    assert {row["type"] for row in SIZES} <= set(parameter("bearing_type").choices)
