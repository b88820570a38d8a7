"""ringseat: reviews parameter tables of rolling-bearing seats against a versioned rulebook."""

__version__ = "0.1.0"
