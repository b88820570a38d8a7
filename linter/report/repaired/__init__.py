"""A table with values changed: the texts of its cells, the kinds of file, and the check by reading it again."""
