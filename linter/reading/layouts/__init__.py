"""How a table is laid out: each layout finds its parameters and stations in a grid."""
