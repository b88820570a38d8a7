"""Reports are written whole or not at all, and never over an input, a link or a folder."""

import pytest

from linter.report.writing import WriteRefused, write_file


def test_writes_and_replaces(tmp_path):
    path = tmp_path / "a" / "b.html"
    write_file(path, b"one")
    write_file(path, b"two")
    assert path.read_bytes() == b"two"
    assert [p.name for p in path.parent.iterdir()] == ["b.html"]


def test_an_input_is_never_overwritten(tmp_path):
    table = tmp_path / "t.csv"
    table.write_bytes(b"table")
    with pytest.raises(WriteRefused, match="input"):
        write_file(table, b"report", inputs=(table,))
    assert table.read_bytes() == b"table"


def test_a_link_or_a_folder_is_refused(tmp_path):
    target = tmp_path / "elsewhere"
    target.write_bytes(b"kept")
    link = tmp_path / "report.html"
    link.symlink_to(target)
    for path in (link, tmp_path):
        with pytest.raises(WriteRefused, match="link or a folder"):
            write_file(path, b"report")
    assert target.read_bytes() == b"kept"
