"""Start values for what a table leaves blank, in the order a designer works, each with clause, source and reason."""
