"""What follows from a bearing's designation: sizes, type and execution."""

import re

from practice.grammar import Value

#: d, D, B and r_s min in mm by basic designation (ISO 15, ISO 355, from memory of makers' catalogues).
SIZES: dict[str, tuple[float, float, float, float]] = {
    "607": (7, 19, 6, 0.3), "608": (8, 22, 7, 0.3), "626": (6, 19, 6, 0.3), "6000": (10, 26, 8, 0.3),
    "6001": (12, 28, 8, 0.3), "6002": (15, 32, 9, 0.3), "6003": (17, 35, 10, 0.3), "6004": (20, 42, 12, 0.6),
    "6005": (25, 47, 12, 0.6), "6006": (30, 55, 13, 1), "6007": (35, 62, 14, 1), "6008": (40, 68, 15, 1),
    "6200": (10, 30, 9, 0.6), "6201": (12, 32, 10, 0.6), "6202": (15, 35, 11, 0.6), "6203": (17, 40, 12, 0.6),
    "6204": (20, 47, 14, 1), "6205": (25, 52, 15, 1), "6206": (30, 62, 16, 1), "6207": (35, 72, 17, 1.1),
    "6208": (40, 80, 18, 1.1), "6210": (50, 90, 20, 1.1), "6212": (60, 110, 22, 1.5), "6303": (17, 47, 14, 1),
    "6304": (20, 52, 15, 1.1), "6305": (25, 62, 17, 1.1), "6306": (30, 72, 19, 1.1), "6307": (35, 80, 21, 1.5),
    "6308": (40, 90, 23, 1.5), "6310": (50, 110, 27, 2), "6900": (10, 22, 6, 0.3), "6902": (15, 28, 7, 0.3),
    "61904": (20, 37, 9, 0.3), "7003": (17, 35, 10, 0.3), "7004": (20, 42, 12, 0.6), "7005": (25, 47, 12, 0.6),
    "7006": (30, 55, 13, 1), "7007": (35, 62, 14, 1), "7008": (40, 68, 15, 1), "7010": (50, 80, 16, 1),
    "7012": (60, 95, 18, 1.1), "7204": (20, 47, 14, 1), "7205": (25, 52, 15, 1), "7206": (30, 62, 16, 1),
    "7208": (40, 80, 18, 1.1), "7305": (25, 62, 17, 1.1), "7308": (40, 90, 23, 1.5), "7900": (10, 22, 6, 0.3),
    "71904": (20, 37, 9, 0.3), "71905": (25, 42, 9, 0.3), "71906": (30, 47, 9, 0.3), "71908": (40, 62, 12, 0.6),
    "71910": (50, 72, 12, 0.6), "N1008": (40, 68, 15, 1), "N1010": (50, 80, 16, 1), "NU206": (30, 62, 16, 1),
    "NU208": (40, 80, 18, 1.1), "NU210": (50, 90, 20, 1.1), "NU305": (25, 62, 17, 1.1), "NU308": (40, 90, 23, 1.5),
    "R8": (12.7, 28.575, 6.35, 0.4), "R10": (15.875, 34.925, 7.142, 0.8),
}  # fmt: skip
ANGLES = {"C": 15.0, "E": 25.0, "AC": 25.0, "A5": 25.0, "A": 30.0, "B": 40.0, "BE": 40.0, "BW": 40.0}


def follows(designation: str) -> dict[str, Value]:
    """What a designation says of sizes, type and execution."""
    text = designation.upper().replace(" ", "-")
    base = re.match(r"(?:[BH]+|S)?(?P<base>(?:NU|N|R)?\d+)(?P<rest>.*)", text.removeprefix("HC").removeprefix("XC"))
    known: dict[str, Value] = {}
    if not base or base["base"] not in SIZES:
        return known
    rest = base["rest"]
    first = base["base"]
    known |= dict(zip(("bore_diameter", "outside_diameter", "ring_width", "ring_chamfer"), SIZES[first], strict=True))
    known["bearing_type"] = (
        "cylindrical roller" if first[0] == "N" else "angular contact ball" if first[0] == "7" else "deep groove ball"
    )
    if first[0] == "7":
        letter = re.match(r"[-.]?(AC|A5|BE|BW|A|B|C|E)(?!\d)", rest)
        if letter:
            known["contact_angle"] = ANGLES[letter[1]]
    else:
        known["contact_angle"] = 0.0
    if re.search(r"2RS|2RSR|DDU?|LLU", rest):
        known["closure"] = "contact seal"
    elif re.search(r"2RZ|2LLB|VV|LLB", rest):
        known["closure"] = "non-contact seal"
    elif re.search(r"2?Z(?!\w)|ZZ", rest):
        known["closure"] = "shield"
    else:
        known["closure"] = "open"
    clearance = re.search(r"(?:(?<![A-Z])|(?<=ZZ)|(?<=RS)|(?<=VV))C([2345])(?!\d)|(?<![A-Z])C(M)(?![A-Z])", rest)
    if first[0] != "7":
        known["clearance_class"] = f"C{clearance[1]}" if clearance and clearance[1] else "CN"
    precision = re.search(r"(?<![A-Z])P([2456])(?!\d)", rest)
    known["tolerance_class"] = f"P{precision[1]}" if precision else "Normal"
    if re.search(r"TVP|TN|T9|TVH", rest):
        known["cage"] = "polyamide"
    elif re.search(r"(?<![A-Z])(?:M|MA|MB)(?![A-Z])|ECM", rest):
        known["cage"] = "machined brass"
    if "HC" in text:
        known["ball_material"] = "silicon nitride"
    return known
