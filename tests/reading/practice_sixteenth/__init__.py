"""Sixty tables drawn from sixty exports as offices lay them out, with their meaning."""
