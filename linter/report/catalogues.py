"""What there is to translate, gathered from templates, program and rulebook; ``python -m linter.report.catalogues``.

It brings the catalogues up to date: messages that are new stand in them without a translation, those that are no longer
there are left out.
"""

import ast
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from linter.model.vocabulary import vocabulary
from linter.report.language.catalogue import JOINTS, SLOT
from linter.report.language.po import po_text, read_po
from linter.report.language.speech import DATA, LANGUAGES
from linter.report.language.texts import TEXTS
from linter.rulebook.load import load
from linter.rulebook.model import Clause, Rulebook

ROOM = Path(__file__).resolve().parents[1]
#: Functions whose first texts are messages of the report's own frame.
_SAYING = {"say": (0,), "_said": (0,), "counted": (1, 2), "_counted": (1, 2), "_by": (0, 1)}
#: Where texts of records are made: whole rooms, or single modules of one.
_MADE = (
    "checks", "model/digits.py", "model/wording.py", "model/stations.py", "model/possible.py", "model/reviewed.py",
    "review/messages.py", "review/assess.py", "review/defaults.py", "review/concessions.py", "review/plan",
    "report/pages.py", "report/unknown.py", "report/pictures.py", "report/balls.py", "report/verdict.py",
    "report/drawings", "reading",
)  # fmt: skip
#: Modules that hold words of tables, not of reports.
_WORDS = (
    "codes.py", "bearing_words.py", "deviation_names.py",
    "unit_table.py", "columns.py", "headings.py", "measured_words.py", "measured.py", "title.py", "formats.py",
    "proposal.py", "column_words.py", "places.py", "eastern.py", "dictionary.py", "turning.py", "inside.py",
    "told_parts.py", "parts.py", "machine_words.py", "run_sorts.py", "json_shapes.py", "json_things.py",
    "pair_cells.py", "words_around.py", "titled_machines.py", "joined_names.py", "no_names.py", "seats_of_others.py",
)  # fmt: skip
_TEXT = re.compile(r"[A-Za-z]{2,}")
#: Patterns, types, lists of words in many languages: no sentences.
_NO_TEXT = re.compile(
    r"\\|\(\?|\| |\[\^|[à-èê-ÿа-я一-鿿]|^#|^<|^t |^zone|^seen |^here |guess$|half whole|width=|\n| \*\*? |deg\."
    r"|^an? angular$|AM/PM$|h:mm$|^class no$|^names stand$"
    r"|^\{1\} (?:seat )?diameter$|^\(sep= line\)$|^\{1\} for \{2\} by \{3\}"
    r"|: gate \{|^\^|^\[A-Za-z\]|^ambient (?:air|range)$|ambiant$|ambiente$|^(?:low|high) limit$|^drawing number$"
    r"|^frame \{1\}$"
)


def messages(rulebooks: tuple[Rulebook, ...] = ()) -> dict[str, list[str]]:
    """Every message with the files that it comes from, those of the frame first.

    Parameters
    ----------
    rulebooks : tuple of Rulebook
        Those to have in all languages; the next release and the default one where empty.

    Returns
    -------
    dict of str to list of str
    """
    found: dict[str, list[str]] = {joint: ["linter/report/language/catalogue.py"] for joint in JOINTS}
    for place, text in (*_frame(), *_choices(), *_rulebook(rulebooks), *_made(), *_composed()):
        if _TEXT.search(SLOT.sub("", text)) or text in TEXTS:
            found.setdefault(text, []).append(place)
    return found


def _frame() -> Iterator[tuple[str, str]]:
    """Messages that templates and writers say."""
    from jinja2 import nodes

    from linter.report.html import environment

    for path in sorted((ROOM / "report" / "templates").glob("*.j2")):
        for call in environment().parse(path.read_text(encoding="utf-8")).find_all(nodes.Call):
            for k in _SAYING.get(getattr(call.node, "name", ""), ()):
                for text in _constants_of_template(call.args[k]):
                    yield f"linter/report/templates/{path.name}", text
    for path in sorted((ROOM / "report").rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
                for k in _SAYING.get(node.func.id, ()):
                    for text in _constants(node.args[k]) if k < len(node.args) else ():
                        yield _shown(path), text


def _constants_of_template(node: Any) -> Iterator[str]:
    from jinja2 import nodes

    if isinstance(node, nodes.Const):
        yield str(node.value)


def _constants(node: ast.expr) -> Iterator[str]:
    """The texts that an argument may be: a constant, or either of two."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value
    elif isinstance(node, ast.IfExp):
        yield from (*_constants(node.body), *_constants(node.orelse))


def _choices() -> Iterator[tuple[str, str]]:
    for entry in vocabulary().values():
        for choice in entry.choices:
            yield "schemas/vocabulary.csv", choice


def _rulebook(rulebooks: tuple[Rulebook, ...]) -> Iterator[tuple[str, str]]:
    """Texts of rulebooks that a report shows."""
    for book in rulebooks or (load(str(ROOM.parent / "ruleset" / "current")), load(None)):
        yield "ruleset", book.title
        for source in book.sources.values():
            yield "ruleset/sources.toml", source.note
        for default in book.defaults:
            yield "ruleset/rulebook.toml", default.why
        for clause in book.clauses.values():
            place = f"ruleset, {clause.id}"
            for text in _cells(clause):
                yield f"ruleset/tables, {clause.id}", text
            for text in (clause.title, clause.question, clause.arithmetic, clause.consequence, clause.remedy):
                yield place, text
            for text in clause.messages.values():
                yield place, text


def _cells(clause: Clause) -> Iterator[str]:
    """Words in the tables of a clause that a message may quote."""
    for table in clause.tables.values():
        for row in table.rows:
            for column, cell in zip(table.columns, row, strict=True):
                text = str(cell)
                if column in ("why", "machines", "process", "kind") and ";" not in text and re.search("[a-z]{3}", text):
                    yield text


def _composed() -> Iterator[tuple[str, str]]:
    for text in TEXTS:
        yield "linter/report/language/texts.py", text


def _made() -> Iterator[tuple[str, str]]:
    """Texts of checks, readers and plans: sentences, and those with values in them."""
    for name in _MADE:
        path = ROOM / name
        for file in sorted(path.rglob("*.py")) if path.is_dir() else [path]:
            if file.exists() and file.name not in _WORDS:
                for text in _texts(ast.parse(file.read_text(encoding="utf-8"))):
                    if _NO_TEXT.search(text):
                        continue
                    own = len(re.sub(r"[^A-Za-z]", "", SLOT.sub("", text)))
                    if "{" not in text or own >= (16 if "}{" in text else 5):  # less would be found in any text
                        yield _shown(file), text


def _texts(tree: ast.AST) -> Iterator[str]:
    apart: set[int] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            apart.add(id(node.value))  # a docstring
        elif isinstance(node, (ast.Raise, ast.Subscript)):
            apart.update(map(id, ast.walk(node)))
        elif isinstance(node, ast.JoinedStr):
            apart.update(map(id, node.values))
            apart.update(id(v.format_spec) for v in node.values if isinstance(v, ast.FormattedValue))
    for node in ast.walk(tree):
        if id(node) in apart:
            continue
        if isinstance(node, ast.JoinedStr):
            number, text = 0, ""
            for piece in node.values:
                if isinstance(piece, ast.Constant):
                    text += str(piece.value)
                else:
                    number += 1
                    text += f"{{{number}}}"
            if " " in text.strip():
                yield text.strip().lstrip(";,: ")
        elif isinstance(node, ast.Constant) and isinstance(node.value, str) and " " in node.value.strip():
            yield node.value.strip().lstrip(";,: ")
        elif isinstance(node, ast.Call) and getattr(node.func, "id", "") == "Working":
            for k, argument in enumerate(node.args):
                if k in (2, 5) and isinstance(argument, ast.Constant) and isinstance(argument.value, str):
                    yield argument.value


def _shown(path: Path) -> str:
    return path.relative_to(ROOM.parent).as_posix()


def refreshed(language: str) -> str:
    """The catalogue of a language as it should be, with the translations that it has."""
    path = DATA / f"{language}.po"
    return po_text(LANGUAGES[language][0], messages(), read_po(path) if path.exists() else {})


def main() -> None:
    """Write the catalogues anew, and say how much of each is translated."""
    for language in LANGUAGES:
        if language != "en":
            text = refreshed(language)
            (DATA / f"{language}.po").write_text(text, encoding="utf-8")
            done = read_po(DATA / f"{language}.po")
            print(f"{language}: {sum(map(bool, done.values()))} of {len(done)} messages")


if __name__ == "__main__":
    main()
