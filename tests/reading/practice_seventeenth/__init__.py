"""Sixty tables of sixty firms, drawn from a grammar of how parameter tables are exported, with their meaning."""
