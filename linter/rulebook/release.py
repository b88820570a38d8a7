"""Freezes a version: ``python -m linter.rulebook.release 2026.1`` records its hash in ``ruleset/released.toml``.

From then on a test compares the folder with the record, and the version never changes again. Run it in a checkout, as
the last step of a release.
"""

import sys

from linter.model.packaged import data_folder
from linter.rulebook.load import folder_hash, load, recorded_hashes, released_versions
from linter.rulebook.model import RulebookError

HEADER = "# Hash of each frozen version (folder_hash in linter/rulebook/load.py). It never changes again.\n"


def freeze(version: str) -> str:
    """Record the hash of a version.

    Parameters
    ----------
    version : str
        A version that ships with the program; what it extends is frozen before it.

    Returns
    -------
    str
        The hash.

    Raises
    ------
    RulebookError
        If there is no such version, if it cannot be loaded, if what it extends is not frozen, or if it is frozen with
        another hash.
    """
    if version not in released_versions():
        raise RulebookError("released.toml", None, f"{version!r} is none of {', '.join(released_versions())}")
    known = recorded_hashes()
    for layer in load(version).layers[1:]:
        if layer.version not in known:
            raise RulebookError("released.toml", None, f"{version} extends {layer.version}, which is not frozen yet")
    digest = folder_hash(data_folder("ruleset") / version)
    if known.get(version, digest) != digest:
        raise RulebookError("released.toml", None, f"{version} is frozen with another hash; make a new version instead")
    lines = "".join(f'"{name}" = "{value}"\n' for name, value in sorted({**known, version: digest}.items()))
    path = data_folder("ruleset") / "released.toml"
    path.write_text(f"{HEADER}\n[sha256]\n{lines}", encoding="utf-8")
    return digest


if __name__ == "__main__":
    try:
        print(*(f"{version}: {freeze(version)}" for version in sys.argv[1:]), sep="\n")
    except RulebookError as error:
        sys.exit(str(error))
