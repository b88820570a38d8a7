"""What the words of a table mean: headings, names, name mappings, designations."""
