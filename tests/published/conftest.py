import json
from pathlib import Path

import pytest

_FILES = sorted((Path(__file__).parent / "data").glob("cases*.json"))
_CASES = {c["id"]: c for file in _FILES for c in json.loads(file.read_text(encoding="utf-8"))}


class Case:
    """One case of the published figures: its inputs, and the comparison of every expected figure."""

    def __init__(self, case_id):
        self.id = case_id
        self._case = _CASES[case_id]

    def __getitem__(self, name):
        return self._case["inputs"][name]["value"]

    @property
    def inputs(self):
        return {name: entry["value"] for name, entry in self._case["inputs"].items()}

    @property
    def names(self):
        """Names of the expected figures."""
        return list(self._case["expected"])

    def numbers(self, prefix):
        """The figure or input names that start with a prefix, with the number that follows it."""
        names = [*self._case["inputs"], *self._case["expected"]]
        return {n: float(n.removeprefix(prefix)) for n in names if n.startswith(prefix)}

    def printed(self, name):
        """One expected figure."""
        return self._case["expected"][name]["value"]

    def agree(self, lacking=(), **computed):
        """Every figure of the case inside the tolerance stated with it, but those that no function gives."""
        expected = self._case["expected"]
        assert sorted([*computed, *lacking]) == sorted(expected)
        for name in computed:
            figure = expected[name]
            assert computed[name] == pytest.approx(figure["value"], rel=figure["rel_tol"], abs=0.0), (self.id, name)


@pytest.fixture(scope="session")
def case():
    return Case
