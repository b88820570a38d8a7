"""Thirty tables of bearing arrangements, each written by hand as one firm would send it, with their meaning."""
