"""What goes to the terminal: shown on any console, whatever it can encode and whatever stands in a table."""

import gc
import sys
import warnings
from typing import Any

import click

INTERRUPTED = 130
#: Objects made between two looks for garbage. A review makes records by the hundred thousand and hardly a circle, which
#: the usual 700 would look through again and again (measured: a tenth of a cold review).
OBJECTS_BETWEEN = 50_000


def safe(text: str) -> str:
    """Text for a terminal: control and direction signs are shown, not obeyed."""
    return "".join(c if c.isprintable() or c in "\n\u00a0" else f"\\x{ord(c):02x}" for c in text)


def complain(text: str) -> None:
    """One line on standard error."""
    click.echo(safe(f"ringseat: {text}"), err=True)


class Console(click.Group):
    """The group of commands as a program of its own: nothing but its own words on the two streams."""

    def main(self, *args: Any, **options: Any) -> Any:
        """Run a command; called without arguments, as the program itself."""
        if args or options.get("args") is not None:
            return super().main(*args, **options)
        gc.set_threshold(OBJECTS_BETWEEN)
        for stream in (sys.stdout, sys.stderr):
            if hasattr(stream, "reconfigure"):
                stream.reconfigure(errors="backslashreplace")
        if not sys.warnoptions:
            warnings.simplefilter("ignore")
        try:
            return super().main(**options)
        finally:
            gc.freeze()  # all of it goes now: no last search for circles (a tenth of a cold review)

    def invoke(self, ctx: click.Context) -> Any:
        """Run the command of a context; an interrupt from the keyboard ends with 130."""
        try:
            return super().invoke(ctx)
        except KeyboardInterrupt:
            complain("interrupted; reports of the tables that were finished are whole")
            raise SystemExit(INTERRUPTED) from None
