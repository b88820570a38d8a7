"""Templates compiled once: their bytecode is kept as Python keeps that of its own modules.

It lies in ``__pycache__`` beside the template, so that whoever can write it can write the program itself; it is written
by rename, is compared with time and size of its template, and nothing is kept where the folder cannot be written or
Python is told to keep no bytecode (``PYTHONDONTWRITEBYTECODE``, ``PYTHONPYCACHEPREFIX``).
"""

import zlib
from collections.abc import Mapping, MutableMapping
from importlib.machinery import SourceFileLoader
from pathlib import Path
from typing import Any

import jinja2
from jinja2 import BaseLoader, Environment, Template, TemplateNotFound


class CompiledLoader(BaseLoader):
    """Templates of one folder.

    Parameters
    ----------
    folder : Path
        Where they are.
    """

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def load(self, environment: Environment, name: str, globals: MutableMapping[str, Any] | None = None) -> Template:
        """The template of a name, compiled now or earlier."""
        path = self.folder / name
        if not path.is_file():
            raise TemplateNotFound(name)
        source = _Source(name, path, environment)
        try:
            code = source.get_code(name)
        except (EOFError, ValueError, TypeError, ImportError):  # the file in __pycache__ is damaged
            code = source.source_to_code(path.read_bytes(), str(path))
        return environment.template_class.from_code(environment, code, globals or {})  # type: ignore[arg-type]


class _Source(SourceFileLoader):
    """One template as a source of bytecode; what that follows from besides the text is part of its time stamp."""

    def __init__(self, name: str, path: Path, environment: Environment) -> None:
        super().__init__(name, str(path))
        self.environment = environment

    def path_stats(self, path: Any) -> Mapping[str, Any]:
        stats = super().path_stats(path)
        return {**stats, "mtime": int(stats["mtime"]) ^ _form(self.environment)}

    def source_to_code(self, data: Any, path: Any, *, _optimize: int = -1) -> Any:  # type: ignore[override]
        return self.environment.compile(bytes(data).decode("utf-8"), self.name, str(path))


def _form(environment: Environment) -> int:
    """A number for what turns a template into code: version of the library, and how it is told to go about it."""
    told = (
        environment.trim_blocks, environment.lstrip_blocks, environment.keep_trailing_newline, environment.autoescape,
        environment.optimized, environment.finalize is None, environment.newline_sequence,
    )  # fmt: skip
    return zlib.crc32(repr((jinja2.__version__, told)).encode())
