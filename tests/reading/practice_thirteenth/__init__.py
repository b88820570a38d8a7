"""Forty tables of bearing arrangements, each from another office, written by hand with their meaning."""
