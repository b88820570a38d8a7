"""QIF documents (ISO 23952): dimensions with nominal and tolerance, mapped to parameters by their names.

A characteristic is a chain of three elements joined by ids: item (name), nominal (target value) and definition
(tolerance). Element names as in the published samples of the format. Only what the names map to is used.
"""

from collections.abc import Iterator
from typing import Any

import numpy as np
from attrs import define, field

from linter.places import Place
from linter.reading.blocks import Block, Found, Strip
from linter.reading.grids import object_column
from linter.reading.headings import Heading, Words
from linter.reading.intake import Source, visible
from linter.stations import Problem, Unused
from linter.vocabulary import parameter

MOST_ELEMENTS = 400_000
DEEPEST = 100
#: Factor of a linear unit to metre, and its usual spelling.
_UNITS = {1e-3: "mm", 1e-2: "cm", 1.0: "m", 1e-6: "µm", 0.0254: "in"}


def _tag(element: Any) -> str:
    return str(element.tag).rpartition("}")[2]


def _child(element: Any, *path: str) -> Any:
    """First descendant along a path of element names, or None."""
    for name in path:
        element = next((node for node in element if _tag(node) == name), None) if element is not None else None
    return element


def _text(element: Any, *path: str) -> str:
    node = _child(element, *path)
    return (node.text or "").strip() if node is not None else ""


def lay_out_qif(source: Source, words: Words, found: Found) -> None:
    """Add the dimensions of a QIF document to what was found.

    Raises
    ------
    InputError
        For XML that is broken, declares a document type, is too large, or is no QIF document.
    """
    root = _parse(source)
    if _tag(root) != "QIFDocument":
        raise source.refuse(
            "unknown-xml",
            f"an XML document of the kind {visible(_tag(root), 60)}",
            "QIF (ISO 23952), .xlsx, CSV or JSON",
        )
    _Document(source, root, words, found).read()


def _parse(source: Source) -> Any:
    from xml.etree.ElementTree import ParseError

    from defusedxml.common import DefusedXmlException
    from defusedxml.ElementTree import DefusedXMLParser

    if b"<!DOCTYPE" in source.data[: 2**16]:
        raise source.refuse(
            "document-type", "a document type declaration (entities could be expanded from it)", "XML without one"
        )
    if source.data.count(b"<") > 2 * MOST_ELEMENTS:
        raise source.refuse("too-many-cells", "a document of very many elements", f"at most {MOST_ELEMENTS} elements")
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
    piles: dict[tuple[Heading, str], tuple[list[str], list[int], list[str]]] = field(factory=dict)
    rows: dict[str, int] = field(factory=dict)
    machine: str = ""

    def read(self) -> None:
        """Walk the characteristic items and close the block."""
        root = self.root
        part = next((node for node in root.iter() if _tag(node) == "Part"), None)
        if part is not None:
            self.machine = _text(part, "Name") or _text(part, "ModelNumber")
        drawing = next((node for node in root.iter() if _tag(node) == "PrintedDrawing"), None)
        if drawing is not None:
            self._add(
                Heading("drawing_number"),
                "DrawingNumber",
                _text(drawing, "DrawingNumber"),
                "/PrintedDrawing/DrawingNumber",
                "",
            )
            self._add(Heading("drawing_revision"), "Version", _text(drawing, "Version"), "/PrintedDrawing/Version", "")
        unit = self._length_unit()
        definitions = self._by_id("CharacteristicDefinitions")
        nominals = self._by_id("CharacteristicNominals")
        features = {key: _text(node, "FeatureName") for key, node in self._by_id("FeatureItems").items()}
        for item in self._items():
            nominal = nominals.get(_text(item, "CharacteristicNominalId"))
            definition_id = _text(nominal, "CharacteristicDefinitionId") if nominal is not None else ""
            self._item(item, nominal, definitions.get(definition_id), features)
        block = Block([self.machine] * len(self.rows), list(self.rows), [], unit)
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

    def _by_id(self, group: str) -> dict[str, Any]:
        return {node.get("id", ""): node for parent in self.root.iter() if _tag(parent) == group for node in parent}

    def _items(self) -> Iterator[Any]:
        for parent in self.root.iter():
            if _tag(parent) == "CharacteristicItems":
                yield from parent

    def _length_unit(self) -> str:
        """Unit of lengths from its factor to metre."""
        linear = _child(self.root, "FileUnits", "PrimaryUnits", "LinearUnit")
        text = _text(linear, "UnitConversion", "Factor") if linear is not None else ""
        try:
            factor = float(text or "nan")
        except ValueError:
            factor = float("nan")
        if linear is not None and not text and _text(linear, "UnitName") in ("m", "meter", "metre"):
            factor = 1.0
        unit = next((name for value, name in _UNITS.items() if abs(factor - value) <= 1e-9 * value), "")
        self.found.say(
            f"lengths are stated in {unit}" if unit else "the document states no unit of lengths that is known"
        )
        return unit

    def _heading(self, labels: list[str]) -> tuple[Heading | None, str]:
        for label in labels:
            heading = self.words.heading(label) if label else None
            if heading is not None:
                return heading, label
        return None, next((label for label in labels if label), "")

    def _item(self, item: Any, nominal: Any, definition: Any, features: dict[str, str]) -> None:
        """One characteristic."""
        names = [_text(item, "Name"), _text(item, "Description")]
        ids = _child(item, "FeatureItemIds")
        linked = [features.get((node.text or "").strip(), "") for node in ids] if ids is not None else []
        heading, label = self._heading([*names, *linked])
        pointer = f"/CharacteristicItems/{item.get('id', '')}"
        target = _text(nominal, "TargetValue") if nominal is not None else ""
        zone = _text(definition, "ToleranceValue") if definition is not None else ""
        if heading is None:
            self.found.seen.append(label)
            if target or zone:
                place = Place(self.source.file, pointer=pointer)
                self.found.leave(Unused(visible(label), visible(target or zone), place, self.words.why(label)))
            return
        if parameter(heading.parameter).kind == "number" and zone and not target:
            self._add(
                heading,
                label,
                zone,
                f"/CharacteristicDefinitions/{definition.get('id', '')}/ToleranceValue",
                heading.station,
            )
            return
        if target:
            self._add(
                heading, label, target, f"/CharacteristicNominals/{nominal.get('id', '')}/TargetValue", heading.station
            )
        tolerance = _child(definition, "Tolerance") if definition is not None else None
        if tolerance is not None and parameter(heading.parameter).kind == "toleranced":
            self._tolerance(heading, label, target, tolerance, definition.get("id", ""))

    def _tolerance(self, heading: Heading, label: str, target: str, tolerance: Any, identity: str) -> None:
        """Deviations or limits, as the flag says, unless the numbers contradict the flag."""
        high, low = _text(tolerance, "MaxValue"), _text(tolerance, "MinValue")
        limits = _text(tolerance, "DefinedAsLimit") in ("true", "1")
        where = f"/CharacteristicDefinitions/{identity}/Tolerance"
        try:
            size, numbers = float(target or "nan"), [float(text) for text in (high, low) if text]
        except ValueError:
            size, numbers = float("nan"), []
        if numbers and size:
            near = all(abs(number - size) < 0.5 * abs(size) for number in numbers)
            if near != limits and size == size and any(numbers):
                place = Place(self.source.file, pointer=where)
                said = "limits" if limits else "deviations"
                message = (
                    f"{place}: {high} and {low} are said to be {said}, which does not go with the size {target}; "
                    "expected limits or deviations as flagged; the tolerance is not used."
                )
                self.found.problems.append(
                    Problem(
                        "disagreement",
                        None,
                        heading.parameter,
                        place,
                        visible(f"{high} {low}"),
                        "limits or deviations as flagged",
                        message,
                        "limit-flag",
                    )
                )
                return
        for text, aspect, name in (
            (high, "max" if limits else "upper", "MaxValue"),
            (low, "min" if limits else "lower", "MinValue"),
        ):
            if text:
                part = Heading(heading.parameter, heading.station, heading.unit, aspect, False)
                self._add(part, label, text, f"{where}/{name}", heading.station)

    def _add(self, heading: Heading, label: str, text: str, pointer: str, station: str) -> None:
        if not text:
            return
        row = self.rows.setdefault(station, len(self.rows))
        # own_unit is dropped: the unit of the document holds for every length in it
        key = Heading(heading.parameter, heading.station, heading.unit, heading.aspect, False)
        cells, rows, pointers = self.piles.setdefault((key, label), ([], [], []))
        try:
            cells.append(float(text))  # type: ignore[arg-type]
        except ValueError:
            cells.append(text)
        rows.append(row)
        pointers.append(pointer)
