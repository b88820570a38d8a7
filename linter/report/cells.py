"""Which of the cells a finding rests on is the one to change."""

from linter.findings import Assessment, Used


def cells_to_change(item: Assessment) -> tuple[Used, ...]:
    """Cells that a finding asks to change; the others it rests on are only looked at.

    Parameters
    ----------
    item : Assessment
        Any assessment.

    Returns
    -------
    tuple of Used
        Cells of the parameters that a change clears; where no change is known those that the remedy names; where it
        names none all cells. In the order of ``item.places``.
    """
    cleared = {change.parameter for change in item.clears_with}
    for chosen in (
        tuple(used for used in item.places if used.parameter in cleared),
        tuple(used for used in item.places if used.parameter in item.remedy),
    ):
        if chosen:
            return chosen
    return item.places


def what_to_change(item: Assessment) -> str:
    """The changes that clear a finding and its remedy, in one line of plain text; empty where there is nothing."""
    alone = [f"{change.parameter}: {change.text}" for change in item.clears_with if not change.together]
    sets: dict[int, list[str]] = {}
    for change in item.clears_with:
        if change.together:
            sets.setdefault(change.together, []).append(f"{change.parameter}: {change.text}")
    ways = [*alone, *(" together with ".join(group) for group in sets.values())]
    parts = [f"Clears it: {'; or '.join(ways)}."] if ways else []
    if item.remedy:
        parts.append(item.remedy)
    return " ".join(parts)
