"""Words of a table to parameters: what a heading, a row label or a JSON key names, each distinct text looked up once."""

from typing import Any

from attrs import define, field, frozen

from linter.reading.units import split_heading_unit
from linter.vocabulary import Parameter, parameter, vocabulary


@frozen
class Heading:
    """What one word names.

    Attributes
    ----------
    parameter : str
        Name in the vocabulary.
    station : str
        Station that the word itself names, or empty.
    unit : str
        Unit that stands with the word, or empty.
    aspect : str
        What the cells state; see :class:`linter.reading.blocks.Strip`.
    own_unit : bool
        True where the word is the vocabulary's own name, so that its canonical unit is agreed.
    """

    parameter: str
    station: str = ""
    unit: str = ""
    aspect: str = "value"
    own_unit: bool = False

    @property
    def entry(self) -> Parameter:
        """The parameter itself."""
        return parameter(self.parameter)

    def traits(self, label: str) -> dict[str, Any]:
        """Arguments of a strip."""
        return {"aspect": self.aspect, "unit": self.unit, "own_unit": self.own_unit, "label": label}


@define(eq=False)
class Words:
    """The name mapping with a memory of what was looked up."""

    names: Any
    _known: dict[str, Heading | None] = field(factory=dict)
    _groups: dict[str, str] = field(factory=dict)

    def heading(self, text: str) -> Heading | None:
        """What a word names, or None."""
        text = text.strip()
        if text not in self._known:
            self._known[text] = self._find(text) if 0 < len(text) <= 200 else None
        return self._known[text]

    def group(self, text: str) -> str:
        """Kind of heading word (``NAME``, ``VALUE``, ``UNIT``, ``EXPR``, ...), or empty."""
        text = text.strip()
        if text not in self._groups:
            group = self.names.group(text) if self.names is not None and 0 < len(text) <= 60 else None
            self._groups[text] = group or ""
        return self._groups[text]

    def _find(self, text: str) -> Heading | None:
        if self.names is None:
            plain, unit = split_heading_unit(text)
            return Heading(plain, unit=unit, own_unit=True) if plain in vocabulary() else None
        match = self.names.find(text)
        if match is None:
            return None
        return Heading(
            match.parameter,
            match.station or "",
            match.unit or "",
            match.aspect or "value",
            match.parameter in text,
        )
