"""Sixty tables drawn from pictures of what thirty offices export, with their meaning."""
