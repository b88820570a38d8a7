"""Writers of what an archive looks like under one rulebook or two: text for the terminal, one page, tables."""

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from linter.model.visible import visible
from linter.report.html import environment

if TYPE_CHECKING:
    from linter.review.archive.compare import Portfolio

#: Rows of a table that the page shows; the whole stands in the Parquet and CSV files.
SHOWN = 200
#: Headings of the columns in words.
WORDS: Mapping[str, str] = {
    "at_the_gate": "at the gate",
    "not_assessed": "not assessed",
    "undecided": "keep the gate undecided",
    "old_at_the_gate": "at the gate, old",
    "new_at_the_gate": "at the gate, new",
    "newly_not_assessed": "newly not assessed",
    "worse_gates": "gates it closes or leaves undecided",
    "better_gates": "gates it opens",
    "worse": "gates worse",
    "better": "gates better",
}


def portfolio_text(found: "Portfolio") -> str:
    """The portfolio for the terminal: counts, gates and the clauses that change them."""
    lines = [
        f"{found.drawings} files, {found.unread.num_rows} of them not read, {found.machines.num_rows} machines, "
        f"{found.stations} stations; rulebook {' against '.join(found.versions)}"
    ]
    for row in found.gates.to_pylist():
        if "gate" in row:
            lines.append(f"  gate {row['gate']}: {row['machines']}")
        else:
            lines.append(f"  gate {row['old']} -> {row['new']}: {row['machines']}")
    changed = [row for row in found.clauses.to_pylist() if row.get("worse_gates") or row.get("better_gates")]
    lines += [
        f"  {row['clause']}: {row['worse_gates']} gates worse, {row['better_gates']} better; {row['appeared']} "
        f"findings appeared, {row['cleared']} cleared"
        for row in changed[:20]
    ]
    lines += [f"  not read: {row['reason']}" for row in found.unread.slice(0, 20).to_pylist()]
    return "".join(visible(line) + "\n" for line in lines)


def turned(found: "Portfolio") -> list[dict[str, Any]]:
    """Machines whose gate is another under the new rulebook, the worse first; empty with one rulebook."""
    if len(found.versions) < 2:
        return []
    rank = {"open": 0, "undecided": 1, "closed": 2}
    old, new = (f"gate {version}" for version in found.versions)
    rows = [row for row in found.machines.to_pylist() if row[old] != row[new]]
    return sorted(rows, key=lambda row: (rank[row[old]] - rank[row[new]], row["drawing"], row["machine"]))


def portfolio_html(found: "Portfolio", gate: str) -> str:
    """The portfolio as one page without script, in the style of the findings report."""
    rows = turned(found)
    return (
        environment()
        .get_template("archive.html.j2")
        .render(
            found=found,
            gate=gate,
            turned=rows[:SHOWN],
            turned_count=len(rows),
            old=f"gate {found.versions[0]}",
            new=f"gate {found.versions[-1]}",
            tables=[
                ("Gates", "Machines by gate.", found.gates),
                ("Clauses", "Findings by clause.", found.clauses),
                ("Kinds and sizes", "Machines by kind and bore of their first bearing.", found.kinds),
            ],
            unread=found.unread.slice(0, SHOWN).to_pylist(),
            words=lambda name: WORDS.get(name, name),
            shown=SHOWN,
        )
    )
