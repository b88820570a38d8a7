"""ringseat: reviews parameter tables of rolling-bearing seats against a versioned rulebook."""

from linter.model.version import __version__

__all__ = ["__version__"]
