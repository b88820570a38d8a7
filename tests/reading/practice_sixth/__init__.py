"""A sixth set of tables of practice: sixty, by a grammar of its own, judged as the others are."""
