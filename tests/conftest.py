"""For all tests: properties are tried on the same examples every time, and no example fails for being slow."""

from hypothesis import settings

settings.register_profile("repeatable", derandomize=True, deadline=None)
settings.load_profile("repeatable")
