"""Bytes to grids of text cells, each with its place; bounds of reading."""
