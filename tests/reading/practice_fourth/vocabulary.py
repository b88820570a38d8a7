"""The order of parameters, choices and frame words that every language follows, and their units."""

from . import words_east, words_west

_PARAMETERS = (
    "machine drawing_number drawing_revision speed_max speed_operating required_life shaft_temperature "
    "housing_temperature shaft_material housing_material bearing_span rotor_mass balance_grade preload_method "
    "preload_force spring_rate shaft_orientation ambient_temperature station axial_role bearing_designation "
    "bore_diameter outside_diameter ring_width ring_chamfer tolerance_class clearance_class cage closure "
    "dynamic_rating static_rating fatigue_load_limit limiting_speed lubrication base_oil_viscosity_40 radial_load "
    "axial_load shaft_seat_diameter shaft_seat_cylindricity shaft_seat_runout shaft_seat_roughness "
    "shaft_shoulder_diameter shaft_shoulder_runout shaft_fillet_radius housing_seat_diameter "
    "housing_seat_cylindricity housing_seat_runout housing_seat_roughness housing_shoulder_diameter "
    "housing_shoulder_runout housing_fillet_radius housing_outer_diameter"
)
PARAMETERS = tuple(_PARAMETERS.split(" "))
_SEAT = "seat_diameter seat_cylindricity seat_runout seat_roughness shoulder_diameter shoulder_runout fillet_radius"
SEAT = tuple(_SEAT.split())
_CHOICES = (
    "locating;floating;spring-loaded;steel;stainless steel;aluminium;cast iron;spring;none;horizontal;vertical;"
    "pressed steel;polyamide;machined brass;open;shield;contact seal;grease;oil bath;oil mist"
)
CHOICES = tuple(_CHOICES.split(";"))
_FRAME = (
    "parameter value unit shaft housing bearing operation nominal class upper lower max min plusminus item remark "
    "title lengths forms rough fit part characteristic requirement deviations seat of"
)
FRAME = tuple(_FRAME.split())
LANGUAGES = ("en", "de", "fr", "it", "es", "ja", "zh", "ru")


def _all(name: str) -> dict[str, str]:
    return {**getattr(words_west, name), **getattr(words_east, name)}


HEADINGS = {
    language: {name: line.split("|") for name, line in zip(PARAMETERS, block.strip().split("\n"), strict=True)}
    for language, block in _all("BLOCKS").items()
}
CHOICE_WORDS = {
    language: dict(zip(CHOICES, text.split(";"), strict=True)) for language, text in _all("CHOICES").items()
}
FRAME_WORDS = {language: dict(zip(FRAME, text.split(";"), strict=True)) for language, text in _all("FRAME").items()}
FEATURE_WORDS: dict[str, dict[str, str]] = {}
for _language, _text in _all("FEATURES").items():
    FEATURE_WORDS[_language] = {}
    for _feature, _word in zip(SEAT, _text.split(";"), strict=True):
        for _part, _own in zip(("shaft", "housing"), (_word.split("~") * 2)[:2], strict=True):
            FEATURE_WORDS[_language][f"{_part}_{_feature}"] = _own
STATIONS: dict[str, tuple[tuple[str, str], ...]] = {**words_west.STATIONS, **words_east.STATIONS}  # type: ignore[dict-item]
MACHINES = {**words_west.MACHINES, **words_east.MACHINES}

#: Kind of unit of each parameter that has one.
UNIT_KIND = {
    **dict.fromkeys(("speed_max", "speed_operating", "limiting_speed"), "speed"),
    "required_life": "hours",
    **dict.fromkeys(("shaft_temperature", "housing_temperature", "ambient_temperature"), "temperature"),
    **dict.fromkeys(("dynamic_rating", "static_rating"), "rating"),
    **dict.fromkeys(("radial_load", "axial_load", "preload_force", "fatigue_load_limit"), "load"),
    "rotor_mass": "mass",
    "spring_rate": "rate",
    "base_oil_viscosity_40": "viscosity",
    **dict.fromkeys(
        (f"{part}_{what}" for part in ("shaft", "housing")
         for what in ("seat_cylindricity", "seat_runout", "shoulder_runout")), "form"),
    **dict.fromkeys(("shaft_seat_roughness", "housing_seat_roughness"), "rough"),
    **dict.fromkeys(
        ("bore_diameter", "outside_diameter", "ring_width", "ring_chamfer", "bearing_span", "housing_outer_diameter",
         *(f"{part}_{what}" for part in ("shaft", "housing")
           for what in ("seat_diameter", "shoulder_diameter", "fillet_radius"))), "length"),
}  # fmt: skip
#: Parameters whose value is a word of :data:`CHOICES`.
CHOSEN = (
    "shaft_material", "housing_material", "preload_method", "shaft_orientation", "axial_role", "cage", "closure",
    "lubrication",
)  # fmt: skip
RUSSIAN = {
    "mm": "мм", "µm": "мкм", "N": "Н", "kN": "кН", "kg": "кг", "g": "г", "N/mm": "Н/мм", "h": "ч", "mm²/s": "мм²/с",
    "rpm": "об/мин", "1/min": "мин⁻¹", "r/min": "об/мин", "min-1": "об/мин", "cSt": "сСт",
}  # fmt: skip
#: Names as a CAD design table or a list of parameters has them, in whatever language the rest is.
CODES = {
    "axial_role": "Axial_Role", "bearing_designation": "Brg_No", "bore_diameter": "Brg_Bore",
    "outside_diameter": "Brg_OD", "ring_width": "Brg_Width", "ring_chamfer": "Brg_Chamfer_min",
    "tolerance_class": "Brg_Tol_Class", "clearance_class": "Brg_Clearance", "cage": "Brg_Cage", "closure": "Brg_Seal",
    "dynamic_rating": "Brg_Dyn_Rating_C", "static_rating": "Brg_Stat_Rating_C0", "fatigue_load_limit": "Brg_Fatigue_Cu",
    "limiting_speed": "Brg_Limit_Speed", "lubrication": "Lubrication", "base_oil_viscosity_40": "Oil_Visc_40C",
    "radial_load": "Radial_Load", "axial_load": "Axial_Load", "housing_outer_diameter": "Hsg_OD",
    "shaft_seat_diameter": "Shaft_Seat_Dia", "shaft_seat_cylindricity": "Shaft_Seat_Cyl",
    "shaft_seat_runout": "Shaft_Seat_Total_Runout", "shaft_seat_roughness": "Shaft_Seat_Ra",
    "shaft_shoulder_diameter": "Shaft_Shoulder_Dia", "shaft_shoulder_runout": "Shaft_Shoulder_Axial_Runout",
    "shaft_fillet_radius": "Shaft_Fillet_R", "housing_seat_diameter": "Hsg_Bore_Dia",
    "housing_seat_cylindricity": "Hsg_Bore_Cyl", "housing_seat_runout": "Hsg_Bore_Total_Runout",
    "housing_seat_roughness": "Hsg_Bore_Ra", "housing_shoulder_diameter": "Hsg_Shoulder_Dia",
    "housing_shoulder_runout": "Hsg_Shoulder_Axial_Runout", "housing_fillet_radius": "Hsg_Fillet_R",
}  # fmt: skip
#: Ends of such names for the columns of a size.
CODE_ENDS = {
    "class": "_Tol_Class", "upper": "_Upper_Dev", "lower": "_Lower_Dev", "max": "_Max", "min": "_Min",
    "plusminus": "_Tol_PM",
}  # fmt: skip
