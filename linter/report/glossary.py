"""The glossary: terms of the trade and of the program, then every parameter with its symbol, unit and meaning."""

from linter.model.vocabulary import vocabulary
from linter.model.wording import unit_text, words_of

_TERMS = (
    ("abutment", "d_a, D_a", "the shoulder, spacer or circlip that a ring face rests against, with its diameter"),
    ("axial role", "", "what a position does along the axis: locating, floating, spring-loaded or cross-located"),
    ("band", "", "the range of a fit, from the loosest pair of parts within tolerance to the tightest"),
    ("clearance", "", "what is left between ring and seat; an interference below zero is called a clearance"),
    ("concession", "", "an accepted deviation with number, revision and last day; its finding stays listed"),
    ("creep", "", "the slow turning of a ring on its seat under a rotating load"),
    ("finding", "", "a clause that is not met at a position, with its severity, figures, working and source"),
    ("fit", "", "clearance or interference between a ring and its seat, from the tolerances of both"),
    ("free ring", "", "the ring that has to slide on its seat so that shaft and housing may expand"),
    ("gate", "", "open, closed or undecided: whether the drawing may go on to release under this rulebook"),
    (
        "interference",
        "U",
        "by how much, before mounting, a shaft seat is larger than its bore or a housing seat smaller than its ring",
    ),
    ("internal clearance", "G_r", "radial play between the rings and the balls: as delivered, mounted, in operation"),
    ("land", "d_1, D_1", "the shoulder of a ring beside its raceway"),
    ("layer", "", "a company's rules on top of a released rulebook"),
    ("not assessed", "", "a clause that applies and needs a value which the table does not state; never a pass"),
    (
        "operating clearance",
        "",
        "internal clearance after fits, temperature and speed; below zero: radial preload",
    ),
    ("plan", "", "changes that together open the gate, or lower what closes it, reviewed as a whole"),
    ("position", "", "one bearing of a machine with its two seats; a station in the table"),
    (
        "preload window",
        "",
        "the forces above every minimum (rolling, contact), below every maximum (stress, rating)",
    ),
    (
        "rotating load",
        "",
        "a load whose direction turns relative to a ring: that ring is held, the other may slide",
    ),
    ("rulebook", "", "the clauses with limits and sources, in versions; a released one never changes"),
    ("severity", "", "critical, major, minor or remark: how serious a finding is"),
    ("size-for-size fit", "", "a fit whose nominal clearance is zero"),
    ("speed factor", "n\u00b7d_m", "speed times mean diameter (d + D)/2: how fast a bearing runs for its size"),
)

_HEAD = """# Glossary

Terms of the report. The symbols of its workings stand in [nomenclature.md](nomenclature.md). This page is generated:
`python -m linter.refresh`.

| term | symbol | meaning |
| --- | --- | --- |
"""

_PARAMETERS = """
## Parameters

As a report calls them, and their names in a file.

| parameter | symbol | unit | name in a file | meaning |
| --- | --- | --- | --- | --- |
"""


def glossary_text() -> str:
    """The page as Markdown."""
    terms = "".join(f"| {term} | {symbol} | {meaning} |\n" for term, symbol, meaning in _TERMS)
    rows = "".join(
        f"| {words_of(entry.name)} | {_cell(entry.symbol)} | {unit_text(entry.unit)} | `{entry.name}` | "
        f"{_cell(entry.meaning)} |\n"
        for entry in vocabulary().values()
    )
    return _HEAD + terms + _PARAMETERS + rows


def _cell(text: str) -> str:
    return text.replace("|", "\\|").replace("*", "\\*")
