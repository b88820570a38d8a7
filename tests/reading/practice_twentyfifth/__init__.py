"""Sixty tables of thirty offices of machine builders, quality departments and CAD exports, with their meaning."""
