"""Sixty tables of thirty offices of middle-sized machines, two of each, each with its own form, and their meaning."""
