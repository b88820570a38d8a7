"""The search under plan, proposal and room: cells that move, their values, trials by the whole rulebook, the plan."""
