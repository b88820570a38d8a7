import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.reading.cells.signs import ReadError
from linter.reading.cells.tolerance import Size, read_deviation_pair, read_size


def size(text: str, unit: str | None = "mm", decimal: str | None = ".", ranges: bool = False) -> Size:
    found = read_size(text, unit, decimal, ranges=ranges)  # type: ignore[arg-type]
    assert isinstance(found, Size), found
    return found


def code(text: str, unit: str | None = "mm", decimal: str | None = ".", ranges: bool = False) -> str:
    found = read_size(text, unit, decimal, ranges=ranges)  # type: ignore[arg-type]
    assert isinstance(found, ReadError), found
    assert found.read == text and found.expected and found.sentence
    return found.code


@pytest.mark.parametrize("text", ["7.5±0.01", "7.5 ± 0.01", "7.5 +/-0.01", "7.5 +-0.01", "7.5 p/m 0.01", "Ø7.5 ±10 µm"])
def test_symmetric(text: str) -> None:
    found = size(text)
    assert (found.nominal, found.lower, found.upper, found.limits) == (7.5, -0.01, 0.01, False)


def test_symmetric_with_a_comma() -> None:
    found = size("7.5 ± 0,01")
    assert (found.nominal, found.lower, found.upper) == (7.5, -0.01, 0.01)


@pytest.mark.parametrize(
    "text",
    [
        "7.5 +0.012/+0.004", "7.5 +0.012 +0.004", "7.5 (+0.012; +0.004)", "7.5 (+0.012, +0.004)", "7.5 +12/+4 µm",
        "7.5 +0.012\n+0.004", "7.5 +0.012|+0.004", "7.5mm +0.012/+0.004", "7.5 mm +12/+4 µm", "7,5 +0,012/+0,004",
    ],
)  # fmt: skip
def test_two_deviations(text: str) -> None:
    found = size(text)
    assert (found.nominal, found.lower, found.upper, found.unit) == (7.5, 0.004, 0.012, "mm")
    assert not found.reversed


def test_reversed_deviations_are_sorted_and_marked() -> None:
    found = size("7.5 +0.004/+0.012")
    assert (found.lower, found.upper, found.reversed) == (0.004, 0.012, True)


@pytest.mark.parametrize(
    ("text", "lower", "upper"),
    [
        ("7.5 +0.01/0", 0.0, 0.01), ("7.5 +0.01/-0", 0.0, 0.01), ("7.5 0/-0.008", -0.008, 0.0),
        ("7.5 0 -0.008", -0.008, 0.0),
        ("Ø7.500 +.000/-.005", -0.005, 0.0), ("7.5 -0,005/-0,010", -0.010, -0.005), ("-4 0/-0.12", -0.12, 0.0),
    ],
)  # fmt: skip
def test_unilateral(text: str, lower: float, upper: float) -> None:
    found = size(text)
    assert (found.lower, found.upper) == (lower, upper)
    assert "one-sided" not in found.notes


@pytest.mark.parametrize(
    ("text", "lower", "upper"),
    [
        ("7.5 -0.008", -0.008, None),
        ("7.5-0.008", -0.008, None),
        ("7.5 -0", 0.0, None),
        ("7.5 +0", None, 0.0),
        ("25 +0.01", None, 0.01),
    ],
)
def test_a_single_deviation_leaves_the_other_open(text: str, lower: float | None, upper: float | None) -> None:
    found = size(text)
    assert (found.lower, found.upper) == (lower, upper)
    assert "one-sided" in found.notes


@pytest.mark.parametrize(
    "text",
    [
        "7.500-7.495", "7.500/7.495", "7.495…7.500", "7.495..7.500", "7.495 to 7.500", "7.495 bis 7.500",
        "7.495 ÷ 7.500",
        "max 7.500 min 7.495", "7.500 max 7.495 min", "7.500 max / 7.495 min", "min. 7.495 max. 7.500",
        "7.495 - 7.500",
        "Ø7.500–7.495", "7.495 mm … 7.500 mm",
    ],
)  # fmt: skip
def test_limits(text: str) -> None:
    found = size(text)
    assert (found.nominal, found.lower, found.upper, found.limits) == (None, 7.495, 7.5, True)
    assert not found.reversed
    about = found.about(7.5)
    assert (about.nominal, about.lower, about.upper, about.limits) == (7.5, -0.005, 0.0, False)


def test_limits_need_a_settled_decimal_mark() -> None:
    assert code("7.500-7.495", decimal=None) == "ambiguous-number"
    assert size("7,500-7,495", decimal=",").upper == 7.5


def test_a_mark_proved_in_the_text_goes_before_the_mark_of_the_file() -> None:
    found = size("Ø13,000 +0,008 0", decimal=".")
    assert (found.nominal, found.lower, found.upper) == (13.0, 0.0, 0.008)


@pytest.mark.parametrize("text", ["4,006/4,001", "4,006", "4,006 h5"])
def test_a_length_with_the_other_mark_is_no_slip_of_three_decades(text: str) -> None:
    assert code(text, decimal=".") == "ambiguous-number"
    assert size("1,250", "N", ".").nominal == 1250.0


@pytest.mark.parametrize("text", ["0.3 max", "max. 0.3", "≤0.3", "≤ 0.3"])
def test_one_limit_alone(text: str) -> None:
    found = size(text)
    assert (found.nominal, found.lower, found.upper, found.limits) == (None, None, 0.3, True)
    assert "one-sided" in found.notes


def test_limits_beside_a_nominal_become_deviations() -> None:
    found = size("7.5 h5 (7.494-7.500)")
    assert (found.nominal, found.lower, found.upper, found.tolerance_class) == (7.5, -0.006, 0.0, "h5")


@pytest.mark.parametrize("text", ["3-8", "8-3", "1-4", "60/22", "1/2", "10-12"])
def test_a_range_of_sizes_or_a_date_is_no_size(text: str) -> None:
    assert code(text) in ("range-of-sizes", "ambiguous-number", "not-a-size", "unsigned-deviations")


def test_wide_ranges_where_they_are_meant() -> None:
    found = size("5-20", "µm", ranges=True)
    assert (found.lower, found.upper, found.limits) == (5.0, 20.0, True)
    found = size("5 ±2 µm", "µm", ranges=True)
    assert (found.nominal, found.lower, found.upper) == (5.0, -2.0, 2.0)


@pytest.mark.parametrize(
    ("text", "nominal", "tolerance_class"),
    [
        ("Ø7.5 H6", 7.5, "H6"), ("7.5 h5", 7.5, "h5"), ("7.5 (h5)", 7.5, "h5"), ("7.5h5", 7.5, "h5"),
        ("Ø7.5 h5", 7.5, "h5"),
        ("7.5 H7/g6", 7.5, "H7/g6"), ("JS6", None, "JS6"), ("js6", None, "js6"), ("7.5 JS6", 7.5, "JS6"),
        ("25e8", 25.0, "e8"),
        ("7.5 Н7", 7.5, "H7"), ("7.5 к5", 7.5, "k5"), ("7.5 М6", 7.5, "M6"), ("7,5 Ｈ７", 7.5, "H7"),
        ("4 k5", 4.0, "k5"),
        ("7.5 mm h5", 7.5, "h5"), ("7.5 h5 mm", 7.5, "h5"), ("7.5 IT5", None, None), ("40 zc11", 40.0, "zc11"),
        ("7.5 h01", 7.5, "h01"),
    ],
)  # fmt: skip
def test_classes(text: str, nominal: float | None, tolerance_class: str | None) -> None:
    if tolerance_class is None:
        assert code(text) == "not-a-size"
        return
    found = size(text)
    assert (found.nominal, found.tolerance_class) == (nominal, tolerance_class)
    assert found.lower is None and found.upper is None


def test_letter_case_is_the_whole_meaning() -> None:
    assert size("7.5 H5").tolerance_class != size("7.5 h5").tolerance_class


@pytest.mark.parametrize("text", ["4 k5 (+0.006/+0.001)", "4 k5 +0.006 +0.001", "4k5(+6/+1 µm)"])
def test_class_and_deviations_are_both_kept(text: str) -> None:
    found = size(text)
    assert (found.nominal, found.tolerance_class, found.lower, found.upper) == (4.0, "k5", 0.001, 0.006)


def test_class_and_deviations_without_a_nominal() -> None:
    found = size("k5 (+0.006/+0.001)")
    assert (found.nominal, found.tolerance_class, found.lower, found.upper) == (None, "k5", 0.001, 0.006)


@pytest.mark.parametrize(
    ("text", "note", "nominal"),
    [
        ("(7.5)", "reference", 7.5), ("7.5 REF", "reference", 7.5), ("[7.5]", "basic", 7.5),
        ("7.5 basic", "basic", 7.5),
        ("7.5 E", "envelope", 7.5), ("7.5 h5 Ⓔ", "envelope", 7.5), ("ISO 2768-mK", "general tolerance", None),
        ("m", "general tolerance", None), ("f", "general tolerance", None),
        ("untoleranced", "general tolerance", None),
        ("7.5 ISO 2768-mK", "general tolerance", 7.5),
    ],
)  # fmt: skip
def test_sizes_without_a_tolerance_of_their_own(text: str, note: str, nominal: float | None) -> None:
    found = size(text)
    assert note in found.notes
    assert (found.nominal, found.lower, found.upper) == (nominal, None, None)


@pytest.mark.parametrize(
    ("text", "kind", "count", "nominal"),
    [
        ("Ø7.5", "diameter", 1, 7.5), ("⌀ 7.5", "diameter", 1, 7.5), ("ø7.5", "diameter", 1, 7.5),
        ("φ7.5", "diameter", 1, 7.5),
        ("Φ7.5", "diameter", 1, 7.5), ("Ф7.5", "diameter", 1, 7.5), ("∅7.5", "diameter", 1, 7.5),
        ("dia 7.5", "diameter", 1, 7.5),
        ("DIA. 7.5", "diameter", 1, 7.5), ("diam 7.5", "diameter", 1, 7.5), ("D=7.5", "", 1, 7.5),
        ("R0.3", "radius", 1, 0.3),
        ("SR2", "radius", 1, 2.0), ("SØ5", "sphere", 1, 5.0), ("□8", "square", 1, 8.0), ("C1", "chamfer", 1, 1.0),
        ("2x 7.5", "", 2, 7.5), ("4X Ø5", "diameter", 4, 5.0), ("(2) 7.5", "", 2, 7.5), ("2×Ø5", "diameter", 2, 5.0),
    ],
)  # fmt: skip
def test_prefixes(text: str, kind: str, count: int, nominal: float) -> None:
    found = size(text)
    assert (found.kind, found.count, found.nominal) == (kind, count, nominal)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("M8x1", "thread"), ("6H", "thread"), ("2B", "thread"), ("abc", "not-a-size"), ("7.5 ±", "not-a-size"),
        ("7.5 h5 k6", "not-a-size"), ("7.5 +12/+4", "unlikely-deviations"),
        ("7.5 0.012/0.004", "unsigned-deviations"),
        ("", "empty"), ("-", "not-applicable"), ("TBD", "not-known"), ("*", "see-above"), ("7.5 m", "ambiguous-unit"),
        ("min 7.5 max 7.4", "reversed-limits"), ("7" * 201, "too-long"), ("7.5 N", "wrong-unit"),
        ("7.5 ±0.01 ±0.02", "not-a-size"),
        ("7.5 h5)", "not-a-size"), ("~7.5", "not-a-size"), ("7.5 /", "not-a-size"), ("/7.5", "not-a-size"),
        ("ca. 7.5", "not-a-size"), ("max 7.5 max 7.4", "not-a-size"), ("7.5 hS", "not-a-size"),
        ("7.5 mm ±1 kN", "wrong-unit"),
    ],
)  # fmt: skip
def test_what_is_refused(text: str, expected: str) -> None:
    assert code(text) == expected


def test_deviations_in_micrometres_need_a_stated_unit_of_the_size() -> None:
    assert code("7.5 +12/+4 µm", None) == "ambiguous-unit"
    assert size("25 +2/-1 µm", "µm").unit == "µm"


def test_inches() -> None:
    assert (size("3/8 in").nominal, size("3/8 in").unit) == (0.375, "in")
    assert size("1 1/4 in").nominal == 1.25
    found = size("0.3 in ±2 thou")
    assert (found.nominal, found.lower, found.upper, found.unit) == (0.3, -0.002, 0.002, "in")
    assert size("3/8", "in").nominal == 0.375


@pytest.mark.parametrize(
    ("text", "lower", "upper", "tolerance_class", "unit"),
    [
        ("+0.012/+0.004", 0.004, 0.012, "", "mm"), ("±0.2", -0.2, 0.2, "", "mm"), ("k5", None, None, "k5", "mm"),
        ("+12/+4 µm", 4.0, 12.0, "", "µm"), ("0/-0.008", -0.008, 0.0, "", "mm"),
        ("k5 (+6/+1 µm)", 1.0, 6.0, "k5", "µm"),
        ("-0.02", -0.02, None, "", "mm"),
    ],
)  # fmt: skip
def test_tolerance_columns(
    text: str, lower: float | None, upper: float | None, tolerance_class: str, unit: str
) -> None:
    found = read_deviation_pair(text, "mm", ".")
    assert isinstance(found, Size)
    assert (found.nominal, found.lower, found.upper) == (None, lower, upper)
    assert (found.tolerance_class, found.unit) == (tolerance_class, unit)


def test_half_or_full_band_must_be_declared() -> None:
    found = read_deviation_pair("0.08", "mm")
    assert isinstance(found, ReadError) and found.code == "half-or-full-band"
    declared = read_deviation_pair("0.08", "mm", half_width=True)
    assert isinstance(declared, Size) and (declared.lower, declared.upper) == (-0.08, 0.08)


NUMBERS = st.integers(1000, 99999).map(lambda v: v / 1000)
SMALL = st.integers(-90, 90).map(lambda v: v / 1000)


def spell(value: float, mark: str, signed: bool) -> str:
    text = f"{value:+.4f}" if signed else f"{value:.4f}"
    return ("0" if signed and value == 0 else text).replace(".", mark)


@given(
    NUMBERS,
    SMALL,
    SMALL,
    st.sampled_from(".,"),
    st.sampled_from(["/", " ", "; ", " / "]),
    st.booleans(),
    st.sampled_from(["", "Ø", "2x ", "Ø "]),
)
def test_two_deviations_written_are_read(
    nominal: float, first: float, second: float, mark: str, between: str, brackets: bool, prefix: str
) -> None:
    lower, upper = sorted((first, second))
    pair = f"{spell(upper, mark, True)}{between}{spell(lower, mark, True)}"
    text = f"{prefix}{spell(nominal, mark, False)} {f'({pair})' if brackets else pair}"
    found = size(text, decimal=None)
    assert (found.nominal, found.lower, found.upper) == (nominal, lower, upper)
    assert not found.reversed


@given(
    NUMBERS,
    st.integers(1, 90).map(lambda v: v / 1000),
    st.sampled_from(".,"),
    st.sampled_from(["-", "/", "…", " to ", "..", " - "]),
    st.booleans(),
)
def test_limits_written_are_read(low: float, width: float, mark: str, between: str, large_first: bool) -> None:
    high = round(low + width, 4)
    pair = [spell(low, mark, False), spell(high, mark, False)]
    text = between.join(reversed(pair) if large_first else pair)
    found = size(text, decimal=None)
    assert (found.lower, found.upper, found.limits) == (low, high, True)


@given(
    NUMBERS,
    st.sampled_from(
        ["cd", "d", "e", "f", "g", "h", "js", "j", "k", "m", "n", "p", "r", "s", "H", "JS", "K", "M", "N", "P"]
    ),
    st.integers(1, 18),
    st.sampled_from(["", " ", " (", "\u00a0"]),
)
def test_classes_written_are_read(nominal: float, letters: str, grade: int, between: str) -> None:
    found = size(f"{nominal:.4f}{between}{letters}{grade}{')' if '(' in between else ''}")
    assert (found.nominal, found.tolerance_class) == (nominal, f"{letters}{grade}")


@given(
    st.text() | st.text(alphabet="0123456789.,+-±/()[]ØRSMxXhHkK µm'\"min max…;", max_size=40),
    st.booleans(),
    st.sampled_from([None, "mm", "µm", "in", "N"]),
)
def test_any_text_gives_a_size_or_an_error(text: str, ranges: bool, unit: str | None) -> None:
    assert isinstance(read_size(text, unit, None, ranges=ranges), (Size, ReadError))
    assert isinstance(read_deviation_pair(text, unit, "."), (Size, ReadError))


@pytest.mark.parametrize(
    "text",
    [
        "ISO 2768" + "a" * 190 + "!", "ISO 2768" + "-a" * 95 + "!", "7.5 " * 49 + "ISO 2768", "(" * 200,
        "+" * 200, "1" * 199 + "x",
        "1,1" * 66 + "x", "1 " * 99 + "x", "±" * 200, "R" * 200, "Ø " * 100, "D=" * 100, "M8x" * 66, "h5" * 100,
        "max " * 50,
    ],
)  # fmt: skip
def test_a_hostile_text_of_full_length_is_refused_like_any_other(text: str) -> None:
    assert isinstance(read_size(text, "mm"), ReadError)
    assert isinstance(read_deviation_pair(text, "mm"), ReadError)


def test_small_deviations_of_a_small_size_are_not_doubted():
    size = read_size("0.15 ±0.05", "mm", ".")
    assert (size.nominal, size.lower, size.upper) == (0.15, -0.05, 0.05)


@pytest.mark.parametrize("text", ["6000 P5", "7203 P4", "623 P6"])
def test_a_bearing_with_its_tolerance_class_is_no_size(text: str) -> None:
    error = read_size(text, "mm", ".")
    assert isinstance(error, ReadError) and error.code == "not-a-size"
    assert isinstance(read_size("40 P6", "mm", "."), Size)


@pytest.mark.parametrize(
    ("text", "nominal", "said"),
    [
        ("10 mm, Toleranz h5 (0 / -6 µm)", 10, "h5"), ("Ø 20 tolerance k5", 20, "k5"), ("10 mm, class: h5", 10, "h5"),
        ("20 mm ajustement js6", 20, "js6"), ("17公差带k5", 17, "k5"), ("20 mm, посадка k6", 20, "k6"),
        ("20 mm はめあい h5", 20, "h5"), ("25 tol. k6", 25, "k6"), ("52 mm, tolleranza H6 (+19/0 µm)", 52, "H6"),
        ("20 мм, допуск k6", 20, "k6"),
    ],
)  # fmt: skip
def test_a_word_for_the_class_may_stand_right_before_it(text, nominal, said):
    size = read_size(text, "mm")
    assert isinstance(size, Size)
    assert (size.nominal, size.tolerance_class) == (nominal, said)


@pytest.mark.parametrize("text", ["10 mm, tolerance 5", "20 fit", "20 mm tolerance k5 k6", "20 mm, class P5"])
def test_a_word_for_a_class_without_one_is_no_size(text):
    assert isinstance(read_size(text, "mm"), ReadError)
