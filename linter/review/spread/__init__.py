"""The share of assemblies that lie beyond a limit, and which tolerances make it: random draws through the rulebook."""
