"""Many drawings under one or two rulebooks: files to Parquet of stations, stations to verdicts, verdicts compared."""
