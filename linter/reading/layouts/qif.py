"""QIF documents (ISO 23952): characteristics with nominal and tolerance, mapped to parameters by their names.

A characteristic is a chain of three elements joined by ids: item (name), nominal (target value) and definition
(tolerance). What the definition is decides which parameter of a named feature is meant, as in characteristic lists.
Element names: schema files Characteristics.xsd, IntermediatesPMI.xsd and Units.xsd of QIF 3.0 and the samples of QIF
2.1 in the public repository qif-community; the two versions differ in their namespace, not in the elements read here.
"""

import re
from collections.abc import Iterator
from typing import Any

import numpy as np
from attrs import define, evolve, field

from linter.model.places import Place
from linter.model.stations import Problem, Unused
from linter.reading.cells.requirements import SIZES, Requirement, assumed, parameter_of
from linter.reading.cells.units import conversion, dimension_of
from linter.reading.files.grids import object_column
from linter.reading.files.intake import Source, visible
from linter.reading.layouts.qif_units import Units, child, contradiction, tag, text_of
from linter.reading.layouts.strips import Block, Found, Strip
from linter.reading.words.headings import Heading, Words

MOST_ELEMENTS = 400_000
DEEPEST = 100
#: Characteristics by the beginning of their element's name; one that is missing here says nothing of its kind.
KINDS = {
    **dict.fromkeys(("Diameter", "SphericalDiameter"), "diameter"),
    **dict.fromkeys(("Radius", "SphericalRadius"), "radius"),
    **dict.fromkeys(
        ("Length", "Width", "Depth", "Height", "Thickness", "Chord", "Square", "CurveLength", "DistanceBetween",
         "DistanceFrom", "LinearCoordinate"), "length",
    ),
    **dict.fromkeys(("Angle", "AngleBetween", "AngleFrom", "AngularCoordinate"), "angle"),
    **dict.fromkeys(("Coaxiality", "Concentricity"), "coaxiality"),
    "Straightness": "straightness", "Flatness": "flatness", "Circularity": "roundness",
    "Cylindricity": "cylindricity", "LineProfile": "line profile", "SurfaceProfile": "surface profile",
    "PointProfile": "surface profile", "Perpendicularity": "perpendicularity", "Angularity": "angularity",
    "Parallelism": "parallelism", "Position": "position", "Symmetry": "symmetry", "Thread": "thread",
    "CircularRunout": "circular run-out", "TotalRunout": "total run-out", "SurfaceTexture": "roughness Ra",
}  # fmt: skip
_MATERIAL = {"MAXIMUM": "(M)", "LEAST": "(L)"}
_GRADE = re.compile(r"(?:IT)? ?(01|1[0-8]|[0-9])")


def lay_out_qif(source: Source, words: Words, found: Found) -> None:
    """Add the dimensions of a QIF document to what was found.

    Raises
    ------
    InputError
        For XML that is broken, declares a document type, is too large, or is no QIF document.
    """
    root = parse(source)
    if tag(root) != "QIFDocument":
        raise source.refuse(
            "unknown-xml",
            "a STEP model as XML (ISO 10303), whose tolerances (AP242) are not read"
            if "10303" in str(root.tag)
            else f"an XML document of the kind {visible(tag(root), 60)}",
            "QIF (ISO 23952), .xlsx, CSV or JSON",
        )
    _Document(source, root, words, found).read()


def parse(source: Source) -> Any:
    """The root of an XML document that may be parsed; InputError for one that may not."""
    from xml.etree.ElementTree import ParseError

    from defusedxml.common import DefusedXmlException
    from defusedxml.ElementTree import DefusedXMLParser

    if b"<!DOCTYPE" in source.data[: 2**16]:
        raise source.refuse(
            "document-type", "a document type declaration (entities could be expanded from it)", "XML without one"
        )
    if source.data.count(b"<") > 2 * MOST_ELEMENTS:
        raise source.refuse("too-many-cells", "a document of very many elements", f"at most {MOST_ELEMENTS} elements")
    if source.data.count(b"=") > 2 * MOST_ELEMENTS:
        most = f"at most {2 * MOST_ELEMENTS} attributes"
        raise source.refuse("too-many-cells", "a document of very many attributes", most)
    depth = 0
    data = source.data
    parser = DefusedXMLParser(forbid_dtd=True)
    try:
        parser.feed(data)
        root = parser.close()
    except (ParseError, DefusedXmlException, ValueError, LookupError, RecursionError) as error:
        raise source.refuse(
            "broken-xml", f"XML that does not parse ({visible(str(error), 100)})", "well-formed QIF"
        ) from None
    level = [root]
    while level:
        depth += 1
        if depth > DEEPEST:
            raise source.refuse("too-deep", "elements nested too deeply", f"at most {DEEPEST} levels")
        level = [child for node in level for child in node]
    return root


@define(eq=False)
class _Document:
    source: Source
    root: Any
    words: Words
    found: Found
    units: Units = field(factory=Units)
    piles: dict[tuple[Heading, str], tuple[list[Any], list[int], list[str]]] = field(factory=dict)
    rows: dict[str, int] = field(factory=dict)
    machine: str = ""
    definitions: dict[str, Any] = field(factory=dict)
    nominals: dict[str, Any] = field(factory=dict)
    tolerances: dict[str, Any] = field(factory=dict)
    features: dict[str, str] = field(factory=dict)
    frames: dict[str, str] = field(factory=dict)

    def read(self) -> None:
        """Walk the characteristic items and close the block."""
        root = self.root
        part = next((node for node in root.iter() if tag(node) == "Part"), None)
        if part is not None:
            self.machine = text_of(part, "Name") or text_of(part, "ModelNumber")
        drawing = next((node for node in root.iter() if tag(node) == "PrintedDrawing"), None)
        if drawing is not None:
            for name, element in (("drawing_number", "DrawingNumber"), ("drawing_revision", "Version")):
                self._add(Heading(name), element, child(drawing, element), f"/PrintedDrawing/{element}")
        self._say_units()
        self.definitions = self._by_id("CharacteristicDefinitions")
        self.nominals = self._by_id("CharacteristicNominals")
        self.tolerances = self._by_id("ToleranceDefinitions")
        self.features = {key: text_of(node, "FeatureName") for key, node in self._by_id("FeatureItems").items()}
        self.frames = self._datums()
        for item in self._children_of("CharacteristicItems"):
            self._item(item)
        self._leave_results()
        block = Block([self.machine] * len(self.rows), list(self.rows))
        for (heading, label), (cells, rows, pointers) in self.piles.items():
            block.strips.append(
                Strip(
                    heading.parameter,
                    object_column(cells),
                    np.array(rows, dtype=np.intp),
                    pointers=pointers,
                    **heading.traits(label),
                )
            )
        self.found.blocks.append(block)
        self.found.layouts.append("QIF, one characteristic per parameter")

    def _say_units(self) -> None:
        version = self.root.get("versionQIF", "")
        if version:
            self.found.say(f"QIF version {visible(version, 20)}")
        self.units = Units.of(self.root)
        unit = self.units.primary.get("length", "")
        # published samples state millimetres and declare no unit, though the schema means metre then: it is asked for
        self.found.say(
            f"lengths are stated in {unit}" if unit else "the document states no unit of lengths that is known"
        )
        if wrong := contradiction(self.root):
            self.found.say(f"a unit of lengths is not clear: {wrong}")

    def _children_of(self, group: str) -> Iterator[Any]:
        for parent in self.root.iter():
            if tag(parent) == group:
                yield from parent

    def _by_id(self, group: str) -> dict[str, Any]:
        return {node.get("id", ""): node for node in self._children_of(group)}

    def _datums(self) -> dict[str, str]:
        """Letters of each datum reference frame, in their order."""
        letters = {key: text_of(node, "DatumLabel") for key, node in self._by_id("DatumDefinitions").items()}
        return {
            key: " ".join(
                filter(
                    None,
                    (letters.get((n.text or "").strip(), "") for n in node.iter() if tag(n) == "DatumDefinitionId"),
                )
            )
            for key, node in self._by_id("DatumReferenceFrames").items()
        }

    def _heading(self, labels: list[str]) -> tuple[Heading | None, str]:
        for label in labels:
            heading = self.words.heading(label) if label else None
            if heading is not None:
                return heading, label
        return None, next((label for label in labels if label), "")

    def _item(self, item: Any) -> None:
        """One characteristic."""
        nominal = self.nominals.get(text_of(item, "CharacteristicNominalId"))
        definition = self.definitions.get(text_of(nominal, "CharacteristicDefinitionId"))
        ids = child(item, "FeatureItemIds")
        linked = [self.features.get((node.text or "").strip(), "") for node in ids] if ids is not None else []
        designator = text_of(item, "CharacteristicDesignator", "Designator")
        if len(designator) < 3 and not self.words.mapped(designator):
            designator = ""  # a letter in a balloon is no symbol of a size
        own = [text_of(item, "Name"), text_of(item, "Description"), designator]
        heading, label = self._heading([*own, *linked, text_of(nominal, "Name"), text_of(definition, "Name")])
        target, where = child(nominal, "TargetValue"), f"/CharacteristicDefinitions/{self._id(definition)}"
        zone = next(
            (node for name in ("ToleranceValue", "RoughnessAverage") if (node := child(definition, name)) is not None),
            None,
        )
        kind = KINDS.get(tag(item).partition("Characteristic")[0], "")
        at = f"/CharacteristicNominals/{self._id(nominal)}/TargetValue"
        value, pointer = (
            (target, at) if target is not None else (zone, f"{where}/{tag(zone)}" if zone is not None else "")
        )
        if heading is None:
            self.found.seen.append(label)
            if value is not None:
                place = Place(self.source.file, pointer=f"/CharacteristicItems/{item.get('id', '')}")
                self.found.leave(Unused(visible(label), visible(value.text or ""), place, self.words.why(label)))
            return
        if kind:
            name, reason = parameter_of(heading.parameter, kind)
            if not name:
                self._leave(label, value, pointer, reason)
                return
            if kind not in SIZES and zone is not None:
                self._assume(heading, name, kind, zone, definition, f"{where}/{tag(zone)}")
                value, pointer = zone, f"{where}/{tag(zone)}"
            if name != heading.parameter:
                heading = evolve(heading, parameter=name, own_unit=False)
        if value is not None:
            self._add(heading, label, value, pointer)
        if definition is not None:
            self._toleranced(heading, label, target, definition, where)

    @staticmethod
    def _id(element: Any) -> str:
        return element.get("id", "") if element is not None else ""

    def _assume(self, heading: Heading, name: str, kind: str, zone: Any, definition: Any, pointer: str) -> None:
        """Say what is taken for granted where a geometrical tolerance is used."""
        material = _MATERIAL.get(text_of(definition, "MaterialCondition"), "")
        stated = Requirement(
            kind,
            (zone.text or "").strip(),
            diametral=child(definition, "ZoneShape", "DiametricalZone") is not None,
            modifiers=(material,) if material else (),
            datums=self.frames.get(text_of(definition, "DatumReferenceFrameId"), ""),
        )
        if sentence := assumed(name, stated, heading.parameter):
            self._tell(
                "assumption", "characteristic", name, pointer, stated.number, "the requirement in full", sentence
            )

    def _toleranced(self, heading: Heading, label: str, target: Any, definition: Any, where: str) -> None:
        """The tolerance of a size: limits or deviations, or a class of limits and fits."""
        tolerance, fits = child(definition, "Tolerance"), child(definition, "LimitsAndFitsSpecification")
        if heading.entry.kind != "toleranced":
            for node in (tolerance, fits):
                if node is not None:
                    values = ("MaxValue", "MinValue", "FormVariance", "Grade")
                    read = " ".join(filter(None, (text_of(node, name) for name in values)))
                    place = Place(self.source.file, pointer=f"{where}/{tag(node)}")
                    reason = f"{heading.parameter} carries no tolerance"
                    self.found.leave(Unused(visible(label), visible(read), place, reason))
            return
        if tolerance is not None:
            self._limits(heading, label, target, tolerance, where)
        if fits is not None:
            self._fit(heading, label, fits, f"{where}/LimitsAndFitsSpecification")

    def _fit(self, heading: Heading, label: str, fits: Any, pointer: str) -> None:
        """A class of limits and fits: letter, grade, and whether it is one of a hole or of a shaft."""
        letter, grade, zone = text_of(fits, "FormVariance"), text_of(fits, "Grade"), fits.get("zoneVariance", "")
        number = _GRADE.fullmatch(grade)
        read = f"{letter}{grade}"
        expected = "a letter in FormVariance (capital for a hole), a number in Grade, HOLE or SHAFT in zoneVariance"
        if number is None or not letter.isalpha():
            sentence = f"“{visible(read)}” is no class of limits and fits"
            self._tell("unreadable", "not-a-size", heading.parameter, pointer, read, expected, sentence)
        elif (zone == "HOLE" and not letter[0].isupper()) or (zone == "SHAFT" and not letter[0].islower()):
            sentence = f"{visible(read)} is said to be of a {zone.lower()}, which its letter is not"
            self._tell("disagreement", "limits-and-fits", heading.parameter, pointer, read, expected, sentence)
        else:
            part = Heading(heading.parameter, heading.station, heading.unit, "tolerance", False)
            self._pile(part, label, f"{letter}{number[1]}", pointer)

    def _limits(self, heading: Heading, label: str, target: Any, tolerance: Any, where: str) -> None:
        """Deviations or limits, as the flag says, unless the numbers contradict the flag."""
        pointer, limits = f"{where}/Tolerance", text_of(tolerance, "DefinedAsLimit") in ("true", "1")
        if (shared := text_of(tolerance, "DefinitionId")) and shared in self.tolerances:
            pointer, tolerance = f"/ToleranceDefinitions/{shared}", self.tolerances[shared]
        ends = [(name, node) for name in ("MaxValue", "MinValue") if (node := child(tolerance, name)) is not None]
        size, numbers = self._number(heading, target), [self._number(heading, node) for _, node in ends]
        if size and numbers and size == size and any(numbers):
            near = all(abs(number - size) < 0.5 * abs(size) for number in numbers)
            if near != limits:
                stated = " and ".join((node.text or "").strip() for _, node in ends)
                said, other = ("limits", "deviations") if limits else ("deviations", "limits")
                sentence = (
                    f"{stated} are said to be {said} of the size {(target.text or '').strip()}, and their numbers look "
                    f"like {other}"
                )
                expected = "DefinedAsLimit true beside limits, false beside deviations"
                end = "; the tolerance is not used"
                self._tell("disagreement", "limit-flag", heading.parameter, pointer, stated, expected, sentence, end)
                return
        for name, node in ends:
            aspect = ("max" if limits else "upper") if name == "MaxValue" else ("min" if limits else "lower")
            self._add(evolve(heading, aspect=aspect), label, node, f"{pointer}/{name}")

    def _number(self, heading: Heading, element: Any) -> float:
        """A value in the unit of its parameter, for comparing; NaN where there is none."""
        try:
            number = float((element.text or "") if element is not None else "nan")
        except ValueError:
            return float("nan")
        wanted = heading.entry.unit
        unit = self.units.of_value(element, dimension_of(wanted)) if wanted and element is not None else ""
        return number * ((conversion(unit, wanted) if unit else None) or 1.0)

    def _leave(self, label: str, value: Any, pointer: str, reason: str) -> None:
        if value is not None:
            place = Place(self.source.file, pointer=pointer)
            self.found.leave(Unused(visible(label), visible((value.text or "").strip()), place, reason))

    def _leave_results(self) -> None:
        """Measured values are no design values."""
        count = sum(1 for _ in self._children_of("CharacteristicMeasurements"))
        if count:
            place = Place(self.source.file, pointer="/Results")
            reason = "measured values; the design states what is reviewed"
            self.found.leave(Unused("Results", f"{count} measured characteristics", place, reason))

    def _tell(
        self, kind: str, code: str, name: str, pointer: str, read: str, expected: str, sentence: str, end: str = ""
    ) -> None:
        place = Place(self.source.file, pointer=pointer)
        end = end or ("" if kind == "assumption" else "; the value is not used")
        message = f"{place}: {sentence}; expected {expected}{end}."
        self.found.problems.append(
            Problem(kind, None, name, place, visible(read), expected, message, code)  # type: ignore[arg-type]
        )

    def _add(self, heading: Heading, label: str, element: Any, pointer: str) -> None:
        """Keep a value with the unit that holds for it."""
        text = (element.text or "").strip() if element is not None else ""
        if not text:
            return
        unit = heading.entry.unit
        if unit and unit != "1":
            heading = evolve(heading, unit=self.units.of_value(element, dimension_of(unit)) or heading.unit)
        self._pile(heading, label, text, pointer)

    def _pile(self, heading: Heading, label: str, text: str, pointer: str) -> None:
        row = self.rows.setdefault(heading.station, len(self.rows))
        # own_unit is dropped: the units of the document hold for every length in it
        key = Heading(heading.parameter, heading.station, heading.unit, heading.aspect, False)
        cells, rows, pointers = self.piles.setdefault((key, label), ([], [], []))
        try:
            cells.append(float(text))
        except ValueError:
            cells.append(text)
        rows.append(row)
        pointers.append(pointer)
