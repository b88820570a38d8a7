"""Tables of bearing seats as firms of eight languages export them: a fourth grammar, of its own words and layouts."""
