"""What goes to the terminal: shown on any console, whatever it can encode and whatever stands in a table."""

import gc
import os
import re
import sys
import time
import warnings
from collections.abc import Iterable
from typing import Any, NoReturn

import click

INTERRUPTED = 130
#: Seconds after which the pace of the tables is shown.
PACE_AFTER = 2.0
#: Objects made between two looks for garbage. A review makes records by the hundred thousand and hardly a circle, which
#: the usual 700 would look through again and again (measured: a tenth of a cold review).
OBJECTS_BETWEEN = 50_000
#: Colour of what a line says, where the terminal has colours and NO_COLOR is not set.
_COLOURS = (
    (re.compile(r"gate closed|\b[1-9]\d* critical\b"), "red"),
    (re.compile(r"gate undecided|\b[1-9]\d* major\b"), "yellow"),
    (re.compile(r"gate open"), "green"),
)


def safe(text: str) -> str:
    """Text for a terminal: control and direction signs are shown, not obeyed."""
    return "".join(c if c.isprintable() or c in "\n\u00a0" else f"\\x{ord(c):02x}" for c in text)


def has_colours(stream: Any) -> bool:
    """Whether colours may be written to a stream: a terminal that is not dumb, and NO_COLOR is not set."""
    return stream.isatty() and not os.environ.get("NO_COLOR") and os.environ.get("TERM") != "dumb"


def say(text: str) -> None:
    """One line on standard output, its verdict and counts in colours where there are any."""
    text = safe(text)
    if has_colours(sys.stdout):
        for pattern, colour in _COLOURS:
            text = pattern.sub(click.style(r"\g<0>", fg=colour, bold=True), text)
    click.echo(text, color=has_colours(sys.stdout))


def complain(text: str) -> None:
    """One line on standard error."""
    lead = click.style("ringseat:", fg="red", bold=True) if has_colours(sys.stderr) else "ringseat:"
    click.echo(f"{lead} {safe(text)}", err=True, color=has_colours(sys.stderr))


def did_you_mean(word: str, known: Iterable[str]) -> str:
    """``; did you mean fit.grade?``, or nothing where no known word is near."""
    from difflib import get_close_matches

    found = get_close_matches(word.lower(), list(known), 2, 0.6)
    return f"; did you mean {' or '.join(found)}?" if found else ""


class OneOf(click.Choice[str]):
    """One of some words; of another the nearest of them is told."""

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> str:
        """The word."""
        if value not in self.choices:
            hint = did_you_mean(str(value), self.choices)
            self.fail(f"{value!r} is none of {', '.join(self.choices)}{hint}", param, ctx)
        return super().convert(value, param, ctx)


class Progress:
    """One line on standard error that says what is being done; nothing where that is no terminal."""

    def __init__(self, count: int) -> None:
        self.shown = sys.stderr.isatty() and os.environ.get("TERM") != "dumb"
        self.count, self.number, self.table = count, 0, ""
        self.begun = time.monotonic()

    def begin(self, table: str) -> None:
        """The next table."""
        self.number, self.table = self.number + 1, table
        self.step("reading")

    def finish(self, table: str) -> None:
        """A table was finished, by one of several processes."""
        self.number, self.table = self.number + 1, table
        self.step("finished")

    def pace(self) -> str:
        """Tables a second and the time left, when there is something to tell them by."""
        seconds, finished = time.monotonic() - self.begun, self.number - 1
        if finished < 1 or seconds < PACE_AFTER or self.count < 2:
            return ""
        left = round((self.count - finished) * seconds / finished)
        return f"({finished / seconds:.2g}/s, {left // 60}:{left % 60:02d} left) "

    def step(self, what: str) -> None:
        """What is being done with it."""
        if self.shown:
            place = f"{self.number}/{self.count} {self.pace()}" if self.count > 1 else ""
            click.echo(f"\r{place}{safe(self.table):.50}: {safe(what):.50}\x1b[K", nl=False, err=True, color=True)

    def end(self) -> None:
        """The line is taken away."""
        if self.shown:
            click.echo("\r\x1b[K", nl=False, err=True, color=True)


class Console(click.Group):
    """The group of commands as a program of its own: nothing but its own words on the two streams."""

    def main(self, *args: Any, **options: Any) -> Any:
        """Run a command; called without arguments, as the program itself."""
        if args or options.get("args") is not None:
            return self._run(*args, **options)
        gc.set_threshold(OBJECTS_BETWEEN)
        for stream in (sys.stdout, sys.stderr):
            if hasattr(stream, "reconfigure"):
                stream.reconfigure(errors="backslashreplace")
        if not sys.warnoptions:
            warnings.simplefilter("ignore")
        try:
            return self._run(**options)
        finally:
            gc.freeze()  # all of it goes now: no last search for circles (a tenth of a cold review)

    def _run(self, *args: Any, **options: Any) -> NoReturn:
        """Run and end: every error is one line of the same shape, whoever found it."""
        try:
            options["standalone_mode"] = False
            status = super().main(*args, **options)
        except click.exceptions.NoArgsIsHelpError as error:
            error.show()
            sys.exit(error.exit_code)
        except click.ClickException as error:
            complain(error.format_message())
            if isinstance(error, click.UsageError) and error.ctx is not None:
                complain(f"`{error.ctx.command_path} --help` lists what can be asked")
            sys.exit(error.exit_code)
        except click.Abort:
            sys.exit(INTERRUPTED)
        sys.exit(status if isinstance(status, int) else 0)

    def resolve_command(self, ctx: click.Context, args: list[str]) -> Any:
        """The command named; of one that is not there the nearest ones are told."""
        if args and self.get_command(ctx, args[0]) is None and not args[0].startswith("-"):
            raise _no_command(self, ctx, args[0])
        return super().resolve_command(ctx, args)

    def invoke(self, ctx: click.Context) -> Any:
        """Run the command of a context; an interrupt from the keyboard ends with 130."""
        try:
            return super().invoke(ctx)
        except KeyboardInterrupt:
            complain("interrupted; reports of the tables that were finished are whole")
            raise SystemExit(INTERRUPTED) from None


class Commands(click.Group):
    """A group inside the program."""

    def resolve_command(self, ctx: click.Context, args: list[str]) -> Any:
        """The command named; of one that is not there the nearest ones are told."""
        if args and self.get_command(ctx, args[0]) is None and not args[0].startswith("-"):
            raise _no_command(self, ctx, args[0])
        return super().resolve_command(ctx, args)


def _no_command(group: click.Group, ctx: click.Context, name: str) -> click.UsageError:
    known = group.list_commands(ctx)
    hint = did_you_mean(name, known) or f"; there are {', '.join(known)}"
    return click.UsageError(f"there is no command {name!r}{hint}", ctx)
