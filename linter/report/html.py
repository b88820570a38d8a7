"""The findings report: one HTML file without script and without anything from outside."""

import base64
import hashlib
import re
from collections.abc import Iterable
from functools import cache
from pathlib import Path
from typing import Any

from jinja2 import Environment, StrictUndefined, pass_context
from markupsafe import Markup, escape

from linter.model.digits import one_side_text, with_digits
from linter.model.findings import SEVERITIES, Assessment, ReviewResult
from linter.model.plan import Decision
from linter.model.visible import visible
from linter.model.vocabulary import vocabulary
from linter.model.wording import number_text, quantity_text, unit_text
from linter.report.answers import answers
from linter.report.balls import ball_tables
from linter.report.cells import cells_of, cells_to_change, same_change
from linter.report.compiled import CompiledLoader
from linter.report.drawings.half_section import half_section, listed_features, not_stated
from linter.report.drawings.machine_sheet import Position
from linter.report.drawings.steps import after_text, limit_name, percent, step_bars
from linter.report.entries import same_observed
from linter.report.language import choice_of, in_words, name_of, say, speaking, tag, template, told
from linter.report.language.catalogue import fill
from linter.report.pages import (
    DETAILS,
    LARGEST,
    MEANING,
    POSITIONS,
    MachinePart,
    named_cells,
    named_places,
    place_name,
    prose,
    report_of,
    same_text,
    value_of,
)
from linter.report.pictures import counts_faults, machine_pictures, marked, picture
from linter.rulebook.model import Rulebook

_HERE = Path(__file__).resolve().parent


@pass_context
def _shown(_context: Any, value: Any) -> Any:
    """What a report shows for a value; it takes the context, so that no template is compiled with a result of it."""
    return visible(value) if isinstance(value, str) and not isinstance(value, Markup) else value


@cache
def environment() -> Environment:
    """The templates: everything escaped, everything hidden made visible, an unknown name is an error."""
    made = Environment(
        loader=CompiledLoader(_HERE / "templates"),
        optimized=False,
        autoescape=True,
        undefined=StrictUndefined,
        finalize=_shown,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=False,
    )
    made.filters.update(
        words=in_words,
        told=told,
        named=name_of,
        choice=choice_of,
        label=label,
        formula=formula,
        unit=unit_text,
        plural=_plural,
        sentence=_sentence,
        stopped=_stopped,
        basename=_basename,
        prose=prose,
        shortened=shortened,
        capitalize_first=lambda text: text[:1].upper() + text[1:],
    )
    made.globals.update(
        cells_to_change=cells_to_change,
        same_change=same_change,
        same_observed=same_observed,
        limits_text=limits_text,
        quantity=quantity_text,
        number=number_text,
        value_of=value_of,
        place_name=place_name,
        severities=SEVERITIES,
        meaning=MEANING,
        half_section=half_section,
        not_stated=not_stated,
        marked=marked,
        listed_features=listed_features,
        named_cells=named_cells,
        named_places=named_places,
        same_text=same_text,
        policy=policy,
        titles=_titles,
        helpful=_helpful,
        cells_of=cells_of,
        answers=answers,
        step_bars=step_bars,
        limit_name=limit_name,
        percent=percent,
        after_text=after_text,
        style=style,
        say=_said,
        counted=_counted,
        language_tag=tag,
    )
    return made


def _plural(count: int, word: str, many: str = "") -> str:
    return f"{number_text(float(count))} {word if count == 1 else many or word + 's'}"


def _said(message: str, **values: Any) -> Markup:
    """A message of a page with its placeholders filled; markup of the message stays, values are escaped."""
    return Markup(fill(template(message), {name: str(escape(_shown(None, value))) for name, value in values.items()}))


def _counted(count: int, one: str, many: str, **values: Any) -> Markup:
    """One of two messages by a count, which is ``{count}`` in both."""
    return _said(one if count == 1 else many, count=number_text(float(count)), **values)


_SUBSCRIPT = re.compile(r"(?<![^\W_])([^\W\d_])_([^\W_]+(?: (?:min|max)\b)?)")


def formula(text: str) -> Markup:
    """A formula or symbol with its subscripts set low: ``d_m``, ``r_s min``."""
    return Markup(_SUBSCRIPT.sub(r"\1<sub>\2</sub>", str(escape(visible(text)))))


def label(name: str) -> Markup:
    """A parameter in words with its symbol, where it has one."""
    entry = vocabulary().get(name)
    if entry is None or not entry.symbol:
        return escape(visible(in_words(name)))
    return escape(in_words(name)) + Markup(' <span class="sym">{}</span>').format(formula(entry.symbol))


def _basename(file: str) -> str:
    """The last part of a file name as given, whichever way its folders are written."""
    return re.split(r"[/\\]", file)[-1] or file


def shortened(text: str, most: int = 160, told: bool = True) -> str:
    """A text of a table, cut where it is long; ``told``: with a word on its length."""
    text = visible(text)
    if not told and len(text) > most:
        return f"{text[:most].rsplit(' ', 1)[0].rstrip(' ,;:(')}…"
    return text if len(text) <= most else f"{text[:most].rstrip()}… ({say('{count} characters', count=len(text))})"


def limits_text(item: Assessment) -> tuple[str, str]:
    """What was observed and what is required, with three digits where that still tells them apart; empty without them.

    A count of faults has neither: its message says which they are. What the table states stays as it is stated, and a
    negative clearance is an interference.
    """
    limits = [
        (word, q) for word, q in (("at least {limit}", item.lower), ("at most {limit}", item.upper)) if q is not None
    ]
    if item.observed is None or counts_faults(item):
        return "", ""
    seen, name = item.observed, item.quantity
    kinds = {"clearance": "clearance", "gap": "clearance", "play": "clearance", "interference": "interference"}
    kind = next((kind for word, kind in kinds.items() if word in name), "")
    if kind and seen.value < 0:
        name, shown = "", told(one_side_text(seen.value, seen.unit, kind))
    else:
        shown = quantity_text(seen.value, seen.unit)

    def limit_text(value: float, unit: str) -> str:
        """A limit; beside an observed value of the other kind it says which of the two it is."""
        if not kind or seen.value >= 0:
            return quantity_text(value, unit)
        return told(one_side_text(value, unit, kind))

    between = f" {say('and')} ".join(say(word, limit=limit_text(q.value, q.unit)) for word, q in limits)
    if kind and seen.value < 0 and item.lower is not None and item.lower.value == 0.0 and item.upper is None:
        between = say("no clearance") if kind == "interference" else say("no interference")
    if len(limits) == 2 and limits[0][1] == limits[1][1]:
        between = quantity_text(limits[0][1].value, limits[0][1].unit)
    text = with_digits(f"{told(name)} {shown}; {between}".strip(), 3, lambda: [used.text for used in item.places])
    first, _, rest = text.partition("; ")
    return first, rest


def _sentence(text: str) -> Markup:
    """The text in plain words and with a full stop, where it has none of its own."""
    return _stopped(told(text))


def _stopped(text: str) -> Markup:
    """A text as it stands in plain words and with a full stop, where it has none of its own."""
    text = prose(text)
    return formula(text if text.endswith((".", "!", "?", ":", "…", "。")) or not text else say("{text}.", text=text))


@cache
def style() -> Markup:
    """The style sheet, as it stands between the tags."""
    return Markup((_HERE / "report.css").read_text(encoding="utf-8"))


def policy(sheet: str | None = None) -> str:
    """The Content-Security-Policy: nothing is allowed but one style sheet (:func:`style` by default), by its hash."""
    digest = base64.b64encode(hashlib.sha256((sheet or style()).encode("utf-8")).digest()).decode("ascii")
    return f"default-src 'none'; style-src 'sha256-{digest}'; base-uri 'none'; form-action 'none'"


def _titles(clauses: Iterable[str], rulebook: Rulebook) -> str:
    """Clauses by their titles, with commas."""
    return ", ".join(told(rulebook.clauses[name].title) if name in rulebook.clauses else name for name in clauses)


def _helpful(decisions: Iterable[Decision]) -> list[Decision]:
    """The decisions that clear something, or with which the gate is no longer closed."""
    return [decision for decision in decisions if decision.clears or decision.gate != "closed"]


def _pictures(part: MachinePart, rulebook: Rulebook) -> dict[str, Markup]:
    """The pictures of one machine; see :func:`linter.report.pictures.machine_pictures`."""
    positions = [Position(s.station or "", s.values, marked(s.here)) for s in part.sections if s.values is not None]
    whole = dict.fromkeys(number for section in part.sections if section.station is None for number, _ in section.here)
    return machine_pictures(positions, list(whole), rulebook)


def html_text(result: ReviewResult, rulebook: Rulebook, *, date: str | None = None, brief: bool = False) -> str:
    """The findings report of one table.

    Parameters
    ----------
    result : ReviewResult
        As reviewed; its language is that of the report.
    rulebook : Rulebook
        The one it was reviewed with.
    date : str, optional
        A date to print; none is printed where absent, so that the same inputs give the same bytes.
    brief : bool
        Whether to end after verdict, changes and what is not known.

    Returns
    -------
    str
        HTML that can be encoded as UTF-8.
    """
    with speaking(result.language, () if result.language == "en" else _own(result)):
        return _html_text(result, rulebook, date, brief)


def _own(result: ReviewResult) -> set[str]:
    """Texts of the table itself, which no language translates: names of machines and stations, what its cells say."""
    found = {result.input.file, result.rulebook.name, *(note.number for note in result.concessions)}
    for machine in result.machines:
        found.update((machine.machine, machine.drawing_number or "", machine.drawing_revision or "", *machine.stations))
    for cell in result.understood:
        found.update((cell.read, cell.place.short(), cell.place.sheet or ""))
    for entry in result.unrecognised:
        found.update((entry.name, entry.value, entry.place.short(), entry.place.sheet or ""))
    for item in result.to_act_on:
        if item.outcome in ("finding", "conceded"):
            found.update(used.place.short() for used in item.places)
    return found - {choice for entry in vocabulary().values() for choice in entry.choices}


def _html_text(result: ReviewResult, rulebook: Rulebook, date: str | None, brief: bool) -> str:
    page = environment().get_template("report.html.j2")
    found = result.outcomes["finding"] + result.outcomes["conceded"]
    text = ""
    positions = sum(len(machine.stations) for machine in result.machines)
    for detail, most in DETAILS.items():
        if most is not None and (found > most or positions > POSITIONS):
            continue
        text = page.render(
            result=result,
            rulebook=rulebook,
            report=report_of(result, rulebook, detail),
            date=date,
            brief=brief,
            picture=lambda item: picture(item, rulebook),
            pictures=lambda part: _pictures(part, rulebook),
            ball_tables=lambda sections: ball_tables(
                [(section.station, section.values) for section in sections if section.values is not None], rulebook
            ),
        )
        if len(text.encode("utf-8")) <= LARGEST:
            break
    return text
