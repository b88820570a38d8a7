"""Forty tables drawn from a grammar of what design offices export, with their meaning."""
