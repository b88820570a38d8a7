"""Writers: each takes the same result object and gives the bytes of one kind of report."""
