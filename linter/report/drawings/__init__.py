"""Inline drawings: SVG by hand, classes only, with text alternatives; the same bytes for the same values."""
