"""Several statements of one parameter to one value; strips to stations."""
