"""What follows from a bearing's designation: type, sizes, execution.

Sizes are those of ISO 15 with the chamfers of ISO 582, from memory; the suffixes are the usual ones of the trade.
"""

import re

from practice.grammar import Value

#: Bore, outside diameter, width, smallest chamfer in mm by the basic number.
SIZES = {
    "606": (6, 17, 6, 0.3), "607": (7, 19, 6, 0.3), "608": (8, 22, 7, 0.3), "609": (9, 24, 7, 0.3),
    "623": (3, 10, 4, 0.15), "624": (4, 13, 5, 0.2), "625": (5, 16, 5, 0.3), "626": (6, 19, 6, 0.3),
    "627": (7, 22, 7, 0.3), "629": (9, 26, 8, 0.3), "696": (6, 15, 5, 0.2), "698": (8, 19, 6, 0.3),
    "6000": (10, 26, 8, 0.3), "6001": (12, 28, 8, 0.3), "6002": (15, 32, 9, 0.3), "6003": (17, 35, 10, 0.3),
    "6004": (20, 42, 12, 0.6), "6005": (25, 47, 12, 0.6), "6006": (30, 55, 13, 1.0), "6007": (35, 62, 14, 1.0),
    "6008": (40, 68, 15, 1.0), "6009": (45, 75, 16, 1.0), "6010": (50, 80, 16, 1.0), "6011": (55, 90, 18, 1.1),
    "6012": (60, 95, 18, 1.1), "6014": (70, 110, 20, 1.1),
    "6200": (10, 30, 9, 0.6), "6201": (12, 32, 10, 0.6), "6202": (15, 35, 11, 0.6), "6203": (17, 40, 12, 0.6),
    "6204": (20, 47, 14, 1.0), "6205": (25, 52, 15, 1.0), "6206": (30, 62, 16, 1.0), "6207": (35, 72, 17, 1.1),
    "6208": (40, 80, 18, 1.1), "6209": (45, 85, 19, 1.1), "6210": (50, 90, 20, 1.1), "6211": (55, 100, 21, 1.5),
    "6212": (60, 110, 22, 1.5), "6213": (65, 120, 23, 1.5), "6214": (70, 125, 24, 1.5),
    "6216": (80, 140, 26, 2.0),
    "6300": (10, 35, 11, 0.6), "6301": (12, 37, 12, 1.0), "6302": (15, 42, 13, 1.0), "6303": (17, 47, 14, 1.0),
    "6304": (20, 52, 15, 1.1), "6305": (25, 62, 17, 1.1), "6306": (30, 72, 19, 1.1), "6307": (35, 80, 21, 1.5),
    "6308": (40, 90, 23, 1.5), "6309": (45, 100, 25, 1.5), "6310": (50, 110, 27, 2.0), "6311": (55, 120, 29, 2.0),
    "6312": (60, 130, 31, 2.1), "6313": (65, 140, 33, 2.1), "6314": (70, 150, 35, 2.1),
    "6316": (80, 170, 39, 2.1),
    "6900": (10, 22, 6, 0.3), "6901": (12, 24, 6, 0.3), "6902": (15, 28, 7, 0.3), "6903": (17, 30, 7, 0.3),
    "6904": (20, 37, 9, 0.3), "6905": (25, 42, 9, 0.3), "6800": (10, 19, 5, 0.3), "6801": (12, 21, 5, 0.3),
    "71904": (20, 37, 9, 0.3), "71905": (25, 42, 9, 0.3), "71906": (30, 47, 9, 0.3), "71907": (35, 55, 10, 0.6),
    "71908": (40, 62, 12, 0.6), "71910": (50, 72, 12, 0.6), "719/8": (8, 19, 6, 0.3),
    "22212": (60, 110, 28, 1.5), "22216": (80, 140, 33, 2.0), "22220": (100, 180, 46, 2.1),
    "NN3010": (50, 80, 23, 1.0), "NN3012": (60, 95, 26, 1.1),
}  # fmt: skip
#: Type by the series, and the series whose sizes it has.
KINDS = (
    ("NN30", "cylindrical roller", "NN30"), ("NU10", "cylindrical roller", "60"), ("N10", "cylindrical roller", "60"),
    ("NU2", "cylindrical roller", "62"), ("NU3", "cylindrical roller", "63"), ("NJ2", "cylindrical roller", "62"),
    ("N2", "cylindrical roller", "62"), ("222", "spherical roller", "222"), ("719", "angular contact ball", "719"),
    ("70", "angular contact ball", "60"), ("72", "angular contact ball", "62"), ("73", "angular contact ball", "63"),
    ("60", "deep groove ball", "60"), ("62", "deep groove ball", "62"), ("63", "deep groove ball", "63"),
    ("68", "deep groove ball", "68"), ("69", "deep groove ball", "69"),
)  # fmt: skip
ANGLES = {"C": 15.0, "E": 25.0, "AC": 25.0, "A5": 25.0, "A": 30.0, "B": 40.0}
CLOSURES = (
    (r"2RZ|VV|LLB", "non-contact seal"),
    (r"2RS|DDU|LLU|(?<!\d)DD|2NSE", "contact seal"),
    (r"2Z|ZZ|(?<![A-Z0-9])Z(?![A-Z])", "shield"),
)
CAGES = ((r"TN9|TVP|TVH|TYN|ECP|TNG", "polyamide"), (r"ECM|(?<![A-Z])M1?(?![A-Z0-9])", "machined brass"))


def basic(designation: str) -> tuple[str, str, tuple[float, float, float, float]] | None:
    """Type, the rest of the designation, sizes; None for one that is not in the lists."""
    text = designation.strip().upper()
    for sign, kind, series in KINDS:
        letters = sign.rstrip("0123456789")
        if found := re.match(rf"{letters} ?{sign[len(letters) :]}(/?\d?\d)(?!\d)(.*)", text):
            size = SIZES.get(series + found[1])
            if size:
                return kind, found[2], size
    return None


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
    known = basic(designation)
    if known is None:
        return {}
    kind, rest, (bore, outside, width, chamfer) = known
    values: dict[str, Value] = {
        "bearing_type": kind, "bore_diameter": float(bore), "outside_diameter": float(outside),
        "ring_width": float(width), "ring_chamfer": chamfer, "closure": "open", "clearance_class": "CN",
        "tolerance_class": "Normal",
    }  # fmt: skip
    if kind != "angular contact ball":
        values["contact_angle"] = 0.0
    elif letter := re.match(r"\W*(AC|A5|[CEBA])", rest):
        values["contact_angle"] = ANGLES[letter[1]]
    for name, choices in (("closure", CLOSURES), ("cage", CAGES)):
        for pattern, value in choices:
            if re.search(pattern, rest):
                values[name] = value
                break
    for name, pattern in (("clearance_class", r"C[2345]"), ("tolerance_class", r"P[2456]")):
        if stated := re.search(pattern, rest):
            values[name] = stated[0]
    return values
