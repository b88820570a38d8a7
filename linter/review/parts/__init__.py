"""Parts in hand: measured values against the drawing and against function, and which parts go together."""
