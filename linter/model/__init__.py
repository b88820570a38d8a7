"""What every room speaks of: vocabulary, stations, places, findings, wording."""
