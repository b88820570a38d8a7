"""A fifth set of tables in practice, held out: it is measured, never developed on."""
