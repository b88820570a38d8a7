"""The engineering: pure broadcasting functions that know nothing of tables, clauses or reports."""
