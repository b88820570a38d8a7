"""The sheet of assembly: rings, forces, temperatures and steps of each machine, as a page and as text."""

from collections.abc import Sequence

from linter.model.visible import visible
from linter.report.html import environment
from linter.report.sheet.page import About, style
from linter.review.assembly import Assembly

CAUTION = (
    "Forces are for seats without burrs at the stated fit and the friction of the rulebook; what the table leaves open "
    "is not assumed. The instructions of the bearing maker come first."
)


def assembly_text(found: Sequence[Assembly], about: About) -> str:
    """The assembly of every machine as plain text.

    Parameters
    ----------
    found : sequence of Assembly
        From :func:`linter.review.assembly.assemblies`.
    about : About
        Of the specification that it goes with.

    Returns
    -------
    str
        With a line end.
    """
    lines = []
    for machine in found:
        lines.append(f"ASSEMBLY: {machine.machine}")
        for station in machine.stations:
            lines += [f"position {station.station}, {ring.text()}" for ring in (station.inner, station.outer)]
        lines += [f"{number}. {step}" for number, step in enumerate(machine.steps, 1)]
        lines.append("")
    lines += [CAUTION, f"{about.rulebook}; gate {about.gate}; table {about.file} of {about.date}; {about.tool}"]
    if about.warning:
        lines.append(about.warning)
    return "\n".join(map(visible, lines)) + "\n"


def assembly_html(found: Sequence[Assembly], about: About) -> str:
    """The same as one HTML document, a page for each machine; arguments as :func:`assembly_text`."""
    template = environment().get_template("assembly.html.j2")
    return template.render(about=about, machines=found, css=style(), caution=CAUTION)
