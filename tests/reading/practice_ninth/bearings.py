"""What follows from a bearing's designation: type, sizes, execution.

Sizes are those of ISO 15 with the chamfers of ISO 582, from memory; the suffixes are the usual ones of the trade.
"""

import re

from practice.grammar import Value

#: Outside diameter, width, smallest chamfer in mm by dimension series and bore code.
SIZES = {
    "10": {
        0: (26, 8, 0.3), 1: (28, 8, 0.3), 2: (32, 9, 0.3), 3: (35, 10, 0.3), 4: (42, 12, 0.6), 5: (47, 12, 0.6),
        6: (55, 13, 1.0), 7: (62, 14, 1.0), 8: (68, 15, 1.0), 10: (80, 16, 1.0), 12: (95, 18, 1.1), 14: (110, 20, 1.1),
    },
    "02": {
        4: (47, 14, 1.0), 5: (52, 15, 1.0), 6: (62, 16, 1.0), 7: (72, 17, 1.1), 8: (80, 18, 1.1), 9: (85, 19, 1.1),
        10: (90, 20, 1.1), 11: (100, 21, 1.5), 12: (110, 22, 1.5), 16: (140, 26, 2.0),
    },
    "03": {
        5: (62, 17, 1.1), 6: (72, 19, 1.1), 7: (80, 21, 1.5), 8: (90, 23, 1.5), 9: (100, 25, 1.5), 10: (110, 27, 2.0),
        11: (120, 29, 2.0), 12: (130, 31, 2.1), 16: (170, 39, 2.1),
    },
    "22": {12: (110, 28, 1.5), 16: (140, 33, 2.0), 20: (180, 46, 2.1)},
}  # fmt: skip
#: Type and dimension series by the series of the designation.
SERIES = {
    "60": ("deep groove ball", "10"), "62": ("deep groove ball", "02"), "63": ("deep groove ball", "03"),
    "70": ("angular contact ball", "10"), "72": ("angular contact ball", "02"), "73": ("angular contact ball", "03"),
    "NU2": ("cylindrical roller", "02"), "NU3": ("cylindrical roller", "03"), "222": ("spherical roller", "22"),
}  # fmt: skip
BORES = {0: 10.0, 1: 12.0, 2: 15.0, 3: 17.0}
ANGLES = {"C": 15.0, "E": 25.0, "B": 40.0}


def follows(designation: str) -> dict[str, Value]:
    """The values of the vocabulary that follow from a designation; an unknown series gives none.

    Parameters
    ----------
    designation : str
        As on the parts list, ``6308-2Z/C3``.

    Returns
    -------
    dict
        Parameter and value in canonical units.
    """
    found = re.fullmatch(r"(NU ?[23]|222|6[023]|7[023])(\d\d)(.*)", designation.strip())
    if not found:
        return {}
    kind, series = SERIES[found[1].replace(" ", "")]
    code, rest = int(found[2]), found[3]
    outside, width, chamfer = SIZES[series][code]
    values: dict[str, Value] = {
        "bearing_type": kind, "bore_diameter": BORES.get(code, 5.0 * code), "outside_diameter": float(outside),
        "ring_width": float(width), "ring_chamfer": chamfer, "closure": "open", "clearance_class": "CN",
        "tolerance_class": "Normal",
    }  # fmt: skip
    if kind != "angular contact ball":
        values["contact_angle"] = 0.0
    elif letter := re.match(r"\s*([CEB])\b", rest):
        values["contact_angle"] = ANGLES[letter[1]]
    if re.search(r"2?ZZ?", rest):
        values["closure"] = "shield"
    elif "2RS" in rest:
        values["closure"] = "contact seal"
    for name, pattern in (("clearance_class", r"C[2345]"), ("tolerance_class", r"P[2456]")):
        if stated := re.search(pattern, rest):
            values[name] = stated[0]
    return values
