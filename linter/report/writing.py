"""Writes report files: whole or not at all, never over an input."""

import os
import tempfile
from collections.abc import Iterable
from pathlib import Path


class WriteRefused(OSError):
    """A report that must not be written there."""


def write_file(path: Path, content: bytes | Iterable[bytes], inputs: Iterable[Path] = ()) -> None:
    """Write a report by way of a temporary file beside it.

    Parameters
    ----------
    path : Path
        Where it goes; its folder is made if need be.
    content : bytes or iterable of bytes
        The whole report, or its pieces.
    inputs : iterable of Path
        Files that must not be overwritten.

    Raises
    ------
    WriteRefused
        If the path is one of the inputs, a folder or a symbolic link.
    OSError
        If the system refuses.
    """
    if path.is_symlink() or path.is_dir():
        raise WriteRefused(f"{path}: is a link or a folder; a report is not written there")
    for source in inputs:
        if path.exists() and source.exists() and path.samefile(source):
            raise WriteRefused(f"{path}: is an input of this review and is not overwritten")
    path.parent.mkdir(parents=True, exist_ok=True)
    handle, name = tempfile.mkstemp(dir=path.parent, prefix=".ringseat-")
    try:
        with os.fdopen(handle, "wb") as stream:
            stream.writelines([content] if isinstance(content, bytes) else content)
        Path(name).chmod(0o644)
        Path(name).replace(path)
    except BaseException:
        Path(name).unlink(missing_ok=True)
        raise
