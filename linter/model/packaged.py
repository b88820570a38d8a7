"""Where the project's data files are: inside the installed package, or beside it in a checkout."""

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parents[1]


def data_folder(name: str) -> Path:
    """Folder of packaged data.

    Parameters
    ----------
    name : str
        ``"ruleset"`` or ``"schemas"``.

    Returns
    -------
    Path
        ``linter/<name>`` in an installed wheel, ``<name>`` at the top of a checkout.

    Raises
    ------
    FileNotFoundError
        If the installation is incomplete.
    """
    for folder in (_PACKAGE / name, _PACKAGE.parent / name):
        if folder.is_dir():
            return folder
    raise FileNotFoundError(f"the data folder {name!r} is missing beside {_PACKAGE}; install ringseat again")
