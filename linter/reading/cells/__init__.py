"""One cell's text to a value: numbers, units, tolerances, choices."""
