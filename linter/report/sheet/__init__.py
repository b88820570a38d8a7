"""The seat specification for the drawing: characteristics, page, text to paste and inspection list."""
