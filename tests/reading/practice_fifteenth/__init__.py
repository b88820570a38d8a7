"""Sixty tables drawn from a grammar of what design offices, shops and suppliers export, with their meaning."""
