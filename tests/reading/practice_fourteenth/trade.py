"""What the grammar knows of the trade: deviations, inch bearings, codes and names of parameters, machines, suffixes."""

#: Upper and lower deviation in um by the size step (up to and with, mm); from memory of ISO 286-1.
SHAFT_STEPS = (6, 10, 18, 30, 50)
SHAFT = {
    "h5": ((0, -5), (0, -6), (0, -8), (0, -9), (0, -11)), "h6": ((0, -8), (0, -9), (0, -11), (0, -13), (0, -16)),
    "g6": ((-4, -12), (-5, -14), (-6, -17), (-7, -20), (-9, -25)),
    "j5": ((3, -2), (4, -2), (5, -3), (5, -4), (6, -5)),
    "k5": ((6, 1), (7, 1), (9, 1), (11, 2), (13, 2)), "k6": ((9, 1), (10, 1), (12, 1), (15, 2), (18, 2)),
    "m5": ((9, 4), (12, 6), (15, 7), (17, 8), (20, 9)),
    "js6": ((4, -4), (4.5, -4.5), (5.5, -5.5), (6.5, -6.5), (8, -8)),
}  # fmt: skip
HOUSING_STEPS = (18, 30, 50, 80)
HOUSING = {
    "H5": ((8, 0), (9, 0), (11, 0), (13, 0)), "H6": ((11, 0), (13, 0), (16, 0), (19, 0)),
    "H7": ((18, 0), (21, 0), (25, 0), (30, 0)), "J6": ((6, -5), (8, -5), (10, -6), (13, -6)),
    "G6": ((17, 6), (20, 7), (25, 9), (29, 10)), "K6": ((2, -9), (2, -11), (3, -13), (4, -15)),
    "JS6": ((5.5, -5.5), (6.5, -6.5), (8, -8), (9.5, -9.5)),
}  # fmt: skip
#: Inch bearings in mm: bore, outside diameter, width, chamfer (from memory of makers' lists).
INCH = {"R6": (9.525, 22.225, 7.142, 0.4), "R8": (12.7, 28.575, 7.938, 0.4)}
#: The GOST number and the designation it means (from memory of GOST 3189).
GOST = {"80204": "6204-2Z", "80203": "6203-2Z", "180202": "6202-2RS", "180201": "6201-2RS"}
CODES = {
    "machine": "machine", "dwg": "drawing_number", "rev": "drawing_revision", "n": "speed_max",
    "life": "required_life", "orient": "shaft_orientation", "span": "bearing_span", "mass": "rotor_mass",
    "bal": "balance_grade", "pf": "preload_force", "shm": "shaft_material", "hom": "housing_material",
    "tmax": "temperature_max", "tmin": "temperature_min", "tamb": "ambient_temperature",
    "coax": "coaxiality_of_bores", "st": "station", "des": "bearing_designation", "d": "bore_diameter",
    "D": "outside_diameter", "B": "ring_width", "role": "axial_role", "lub": "lubrication", "Fr": "radial_load",
    "Fa": "axial_load", "top": "operating_temperature",
}  # fmt: skip
FEATURES = {
    ".seat": "{}_seat_diameter", ".ra": "{}_seat_roughness", ".cyl": "{}_seat_cylindricity", ".run": "{}_seat_runout",
    ".sh": "{}_shoulder_diameter", ".shr": "{}_shoulder_runout", ".fil": "{}_fillet_radius",
}  # fmt: skip
QUANTITY = {
    "n": "speed", "life": "life", "span": "length", "mass": "mass", "bal": "grade", "pf": "load", "tmax": "heat",
    "tmin": "heat", "tamb": "heat", "top": "heat", "coax": "form", "d": "length", "D": "length", "B": "length",
    "Fr": "load", "Fa": "load", ".seat": "length", ".ra": "rough", ".cyl": "form", ".run": "form", ".sh": "length",
    ".shr": "form", ".fil": "length",
}  # fmt: skip
PLACES = {"length": 3, "form": 4, "rough": 2, "speed": 0, "life": 0, "mass": 3, "load": 1, "heat": 0, "grade": 1}
FACTOR = {
    "mm": 1.0, "µm": 0.001, "in": 25.4, "µin": 0.0254, "kg": 1.0, "g": 0.001, "lb": 0.45359237, "N": 1.0,
    "lbf": 4.4482216152605, "мм": 1.0, "мкм": 0.001, "кг": 1.0, "Н": 1.0, "г": 0.001, "kN": 1000.0,
}  # fmt: skip
KINDS = {
    "en": ("Blower", "Motor spindle", "Circulation pump", "Lab centrifuge", "Servo motor"),
    "de": ("Gebläse", "Motorspindel", "Umwälzpumpe", "Laborzentrifuge", "Servomotor"),
    "fr": ("Soufflante", "Électrobroche", "Pompe", "Centrifugeuse"),
    "it": ("Soffiante", "Elettromandrino", "Pompa", "Centrifuga"),
    "es": ("Soplante", "Electrohusillo", "Bomba", "Centrífuga"),
    "ru": ("Воздуходувка", "Электрошпиндель", "Насос"),
    "zh": ("鼓风机", "电主轴", "循环泵", "离心机"),
    "ja": ("ブロワ", "モータスピンドル", "循環ポンプ", "遠心機"),
}
SUFFIXES = ("-2Z/C3", "ZZ C3", "-2RS1", "-2RSR", "ZZ", "DDU C3", "-2Z", "LLU/C3", "", " 2Z C3", "-2RSH/C3")
MARKS = {"ru": ("",), "zh": ("φ", "", "Φ"), "ja": ("φ", "")}
SMALL = ("608", "626", "6000", "6001", "6002", "6003", "6201", "6202", "6203", "6004", "6204", "6005")
SPINDLE = ("7002C/P4", "7004C/P4", "7005C/P4", "7003AC/P4", "71904C/P4", "71905AC/P5", "7204AC/P5")
