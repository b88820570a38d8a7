"""Writes report files: whole or not at all, never over an input."""

import os
import tempfile
from collections.abc import Iterable
from pathlib import Path


class WriteRefused(OSError):
    """A report that must not be written there."""


def file_ids(paths: Iterable[Path]) -> frozenset[tuple[int, int]]:
    """What tells files apart whatever they are called: device and number of each that is there."""
    found = set()
    for path in paths:
        try:
            state = path.stat()
        except OSError:
            continue
        found.add((state.st_dev, state.st_ino))
    return frozenset(found)


def write_file(
    path: Path, content: bytes | Iterable[bytes], inputs: Iterable[Path] | frozenset[tuple[int, int]] = ()
) -> None:
    """Write a report by way of a temporary file beside it.

    Parameters
    ----------
    path : Path
        Where it goes; its folder is made if need be.
    content : bytes or iterable of bytes
        The whole report, or its pieces.
    inputs : iterable of Path, or what :func:`file_ids` gives
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
    own = file_ids([path])
    if own and own & (inputs if isinstance(inputs, frozenset) else file_ids(inputs)):
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
