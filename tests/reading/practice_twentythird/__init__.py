"""Sixty tables of thirty offices of small machines, two of each, written from templates with their meaning."""
