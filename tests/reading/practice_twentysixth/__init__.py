"""A set of sixty tables of thirty offices; see written.py."""
