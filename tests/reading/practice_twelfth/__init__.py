"""Sixty tables drawn from a grammar: layout, language, unit, form of the tolerance, title block, encoding."""
