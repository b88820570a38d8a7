"""Checks: one module or more a chapter; a check is a pure function from columns and limits to a result for all rows."""
