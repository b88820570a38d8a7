"""The one place that knows where stations are made from rows."""

from linter.model.stations import Stations, stations_from_rows

__all__ = ["Stations", "stations_from_rows"]
