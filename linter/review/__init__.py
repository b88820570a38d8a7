"""A rulebook over stations: assessment, records, changes, concessions, comparison."""
