"""A page on the loopback address for those who will not use a terminal; needs the extra ``ringseat[desk]``."""
