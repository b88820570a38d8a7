"""Sixty tables of twenty-four drawing offices, each with its own words, order and marks, with their meaning."""
