"""Names as different people write them, looked up alone: most are known, and none is taken for another.

``names_<language>.csv`` holds names by what they mean (``parameter`` or ``parameter:aspect``; ``-`` for what is no
parameter of a review): abbreviations, word orders, names of variables.
"""

from collections import Counter
from pathlib import Path

import pytest

from linter.reading.words.headings import Words
from linter.reading.words.names import Names

HERE = Path(__file__).resolve().parent
WORDS = Words(Names.built_in())


def said(name: str) -> str:
    """What a name is taken for: parameter, aspect where it is not the value, station and unit; empty for nothing."""
    heading = WORDS.heading(name)
    if heading is None:
        return ""
    aspect = {"value": "", "tolerance": ":class"}.get(heading.aspect, f":{heading.aspect}")
    behind = "".join(f" {told}" for told in (heading.station and f"at {heading.station}", heading.unit) if told)
    return f"{heading.parameter}{aspect}{behind}"


@pytest.mark.parametrize("language", ["en", "de"])
def test_most_written_names_are_known_and_none_is_taken_for_another(language: str) -> None:
    count: Counter[bool] = Counter()
    wrong = []
    for line in (HERE / f"names_{language}.csv").read_text(encoding="utf-8").splitlines()[1:]:
        target, names = line.split(";")
        for name in names.split(" | "):
            found = said(name)
            count[found.partition(" ")[0] == target] += target != "-"
            if found and (found.partition(" ")[0] != target or " at " in found):
                wrong.append(f"{name} is {target}, taken for {found}")
    assert wrong == []
    assert count[True] >= 0.88 * count.total(), count


@pytest.mark.parametrize(
    ("name", "meant"),
    [
        ("Shaft tol +", "shaft_seat_diameter:upper"), ("Hsg tol -", "housing_seat_diameter:lower"),
        ("Shaft dia +tol", "shaft_seat_diameter:upper"), ("Shaft dia + tol", "shaft_seat_diameter"),
        ("Shaft dia+tol", "shaft_seat_diameter"), ("Shaft fit dia", "shaft_seat_diameter"),
        ("Hsg bore dia (min)", "housing_seat_diameter:min"), ("Hsg. O.D.", "housing_outer_diameter"),
        ("Shaft I.D. (mm)", "shaft_bore mm"), ("O.D. x I.D.", ""),
        ("Ambient (°C)", "ambient_temperature °C"), ("Ambient", ""), ("Rated rpm", "speed_operating rpm"),
        ("Radial [N]", "radial_load N"), ("Rotor (kg)", "rotor_mass kg"), ("Housing (°C)", "housing_temperature °C"),
        ("Balance grade ISO 21940-11", "balance_grade"), ("Auswuchtgüte nach DIN ISO 21940", "balance_grade"),
        ("Tol. class ISO 492", "tolerance_class"), ("with EP additives", ""), ("mit Feder vorgespannt", ""),
        ("REGREASE_H", "regreasing_interval h"), ("1st critical speed", "first_critical_speed"),
        ("Mating bore dia", "housing_seat_diameter"), ("R shaft max", "shaft_fillet_radius"), ("Shaft max", ""),
        ("m Rotor", "rotor_mass"),
        ("Rotor", "machine"),
        ("T housing", "housing_temperature"), ("T shaft", ""), ("Gehäusesitz OA", "housing_seat_diameter:upper"),
        ("Cylindricity (shaft/housing)", "shaft_seat_cylindricity:with housing_seat_cylindricity"),
        ("Rundlauf (innen/außen)", ""),
        ("Rotating ring (inner/outer)", "rotating_ring"),
        ("Shaft tol (+)", "shaft_seat_diameter:upper"), ("Gehäuse u. Abmaß", "housing_seat_diameter:lower"),
        ("Nominal rpm", "speed_operating"), ("Welle T (°C)", "shaft_temperature °C"),
        ("Fettfüllgrad %", "grease_fill %"),
        ("Koaxialität Gehäusebohrungen", "coaxiality_of_bores"), ("Bore to bore runout", "coaxiality_of_bores"),
        ("Journal to journal runout", "coaxiality_of_shaft_seats"),
        ("Rundlauf der Wellensitze zueinander", "coaxiality_of_shaft_seats"),
        ("Взаимное биение шеек вала", "coaxiality_of_shaft_seats"), ("两轴颈相互跳动", "coaxiality_of_shaft_seats"),
    ],
)  # fmt: skip
def test_what_signs_units_and_word_parts_tell(name: str, meant: str) -> None:
    assert said(name) == meant
