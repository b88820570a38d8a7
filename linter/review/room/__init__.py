"""The room of every value: what it may be with all else fixed, which clause bounds it, how far the present one is."""
