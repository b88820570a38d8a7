"""What the checks of several chapters use."""
