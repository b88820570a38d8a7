"""Writers: each takes the one result object and returns a report."""
