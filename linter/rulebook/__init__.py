"""The rulebook: clauses and limits as data, in versions and layers."""
