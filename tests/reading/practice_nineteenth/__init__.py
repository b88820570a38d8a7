"""Sixty tables of thirty offices, two of each, drawn from a grammar of their habits, with their meaning."""
