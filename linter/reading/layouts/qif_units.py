"""Units of a QIF document: the primary ones, others by their names, each with its factor to the SI unit.

Source: schema file Units.xsd of QIF 3.0 (types PrimaryUnitsType, OtherUnitsType, UnitConversionType), in the public
repository qif-community: a value has the unit that its attribute names, else the primary one; PMI units go before the
others for characteristics; the SI value is (value + offset) times factor.
"""

from typing import Any

from attrs import define, field

from linter.reading.cells.signs import shown
from linter.reading.cells.units import conversion, known_unit

#: Element of a unit by dimension, and the attribute that names such a unit beside a value.
_KINDS = {
    "length": ("LinearUnit", "linearUnit"),
    "angle": ("AngularUnit", "angularUnit"),
    "force": ("ForceUnit", "forceUnit"),
    "mass": ("MassUnit", "massUnit"),
    "temperature": ("TemperatureUnit", "temperatureUnit"),
    "time": ("TimeUnit", "timeUnit"),
    "velocity": ("SpeedUnit", "speedUnit"),
}
#: Spelling of a unit by its factor to the SI unit and its offset.
_SPELLED = {
    "length": {(1e-3, 0.0): "mm", (1e-2, 0.0): "cm", (1.0, 0.0): "m", (1e-6, 0.0): "µm", (0.0254, 0.0): "in",
               (2.54e-5, 0.0): "thou", (0.3048, 0.0): "ft"},
    "angle": {(0.017453292519943295, 0.0): "deg", (1.0, 0.0): "rad"},
    "force": {(1.0, 0.0): "N", (1000.0, 0.0): "kN", (9.80665, 0.0): "kgf", (4.4482216, 0.0): "lbf"},
    "mass": {(1.0, 0.0): "kg", (1e-3, 0.0): "g", (0.45359237, 0.0): "lb"},
    "temperature": {(1.0, 0.0): "K", (1.0, 273.15): "degC", (5 / 9, 459.67): "degF"},
    "time": {(1.0, 0.0): "s", (60.0, 0.0): "min", (3600.0, 0.0): "h"},
    "velocity": {(1.0, 0.0): "m/s", (1e-3, 0.0): "mm/s"},
}  # fmt: skip
_NEAR = 1e-5


def tag(element: Any) -> str:
    """Name of an element without its namespace."""
    return str(element.tag).rpartition("}")[2]


def child(element: Any, *path: str) -> Any:
    """First descendant along a path of element names, or None."""
    for name in path:
        element = next((node for node in element if tag(node) == name), None) if element is not None else None
    return element


def text_of(element: Any, *path: str) -> str:
    """Text of the first descendant along a path, empty for none."""
    node = child(element, *path)
    return (node.text or "").strip() if node is not None else ""


@define(eq=False)
class Units:
    """Units of one document.

    Attributes
    ----------
    primary : dict of str to str
        Unit text by dimension; what cannot be told is missing.
    named : dict of (str, str) to str
        Unit text by the attribute that names a unit, and the name.
    """

    primary: dict[str, str] = field(factory=dict)
    named: dict[tuple[str, str], str] = field(factory=dict)

    @classmethod
    def of(cls, root: Any) -> "Units":
        """The units that a document declares."""
        units = cls()
        primary, others = child(root, "FileUnits", "PrimaryUnits"), child(root, "FileUnits", "OtherUnits")
        for dimension, (element, attribute) in _KINDS.items():
            for node in primary if primary is not None else ():
                if tag(node) in (element, f"PMI{element}"):
                    unit = _spelled(node, dimension)
                    units.named.setdefault((attribute, text_of(node, "UnitName")), unit)
                    if unit and (tag(node) != element or dimension not in units.primary):
                        units.primary[dimension] = unit
                    elif tag(node) != element:
                        units.primary.pop(dimension, None)  # the unit of characteristics is stated and not known
            for node in others if others is not None else ():
                if tag(node) == element:
                    units.named.setdefault((attribute, text_of(node, "UnitName")), _spelled(node, dimension))
        return units

    def of_value(self, element: Any, dimension: str) -> str:
        """Unit text of a value: the one that its attribute names, else the primary one; empty where not known.

        A name that the document does not explain, or explains otherwise than the name says, comes back as it stands
        and is refused where the value is read.
        """
        for attribute in ("unitName", *(attribute for _, attribute in _KINDS.values())):
            if name := element.get(attribute, "").strip():
                return self.named.get((attribute, name), name) or f"{name} as declared"
        return self.primary.get(dimension, "")


def _spelled(unit: Any, dimension: str) -> str:
    """The spelling of a declared unit, empty where it is not known or its name contradicts its factor."""
    name, factor_text = text_of(unit, "UnitName"), text_of(unit, "UnitConversion", "Factor")
    stated = known_unit(name) if name else None
    fits = stated is not None and stated.dimension == dimension
    if not factor_text:
        return name if fits else ""
    try:
        factor, offset = float(factor_text), float(text_of(unit, "UnitConversion", "Offset") or 0.0)
    except ValueError:
        return ""
    found = next(
        (
            spelling
            for (value, shift), spelling in _SPELLED[dimension].items()
            if abs(factor - value) <= _NEAR * value and abs(offset - shift) <= _NEAR
        ),
        "",
    )
    ratio = conversion(name, found) if fits and found and dimension != "temperature" else None
    return found if ratio is None or abs(ratio - 1.0) <= _NEAR else ""


def contradiction(root: Any) -> str:
    """Names of declared length units whose factor says another unit, for a note; empty for none."""
    found = []
    for node in root.iter():
        if tag(node) in ("LinearUnit", "PMILinearUnit"):
            name, factor = text_of(node, "UnitName"), text_of(node, "UnitConversion", "Factor")
            stated = known_unit(name) if name else None
            if factor and stated is not None and stated.dimension == "length" and not _spelled(node, "length"):
                found.append(f"{shown(name)} with the factor {shown(factor)}")
    return ", ".join(dict.fromkeys(found))
