"""Sixty tables of thirty offices, motor shops, pump makers and spindle repairers, two of each, with their meaning."""
