"""The desk: what it lets through, what it refuses, what it leaves behind; and twelve tasks in a real browser."""

import http.client
import os
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import pytest

pytest.importorskip("starlette")
pytest.importorskip("multipart")
httpx = pytest.importorskip("httpx")

from linter.command.desk.app import _merged, _toml  # noqa: E402
from linter.command.desk.jobs import PREFIX, remove_left, safe_name  # noqa: E402

ROOT = Path(__file__).parents[2]
SAMPLES = ROOT / "sample_exports"
BARE = "Maschine;Stelle;Lagerdings;Welle X\nF;A;608;8 k5\nF;B;608;8 k5\n"


class Running:
    """A desk in a process of its own, and its folder for temporary files."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        env = os.environ | {"TMPDIR": str(folder), "PYTHONPATH": str(ROOT)}
        self.process = subprocess.Popen(
            [sys.executable, "-m", "linter.command.cli", "desk"], stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
            text=True, env=env, cwd=folder,
        )  # fmt: skip
        assert self.process.stdout is not None
        line = self.process.stdout.readline()
        assert "the desk is open at " in line, line + self.process.stdout.read()
        self.address = line.split(" at ")[1].strip()
        self.origin = "/".join(self.address.split("/")[:3])
        for _ in range(100):
            try:
                httpx.get(self.address)
                break
            except httpx.ConnectError:
                time.sleep(0.1)

    def left(self) -> list[Path]:
        return list(self.folder.glob(f"{PREFIX}*"))

    def end(self, how: int = signal.SIGTERM) -> None:
        if self.process.poll() is None:
            self.process.send_signal(how)
        self.process.communicate(timeout=30)


@pytest.fixture(scope="module")
def desk(tmp_path_factory):
    running = Running(tmp_path_factory.mktemp("desk"))
    yield running
    running.end()
    assert running.left() == []


def post(desk, path: str, **sent):
    headers = {"Origin": desk.origin}
    return httpx.post(desk.address + path, headers=headers, follow_redirects=True, timeout=60, **sent)


def review(desk, *paths: Path, wait: bool = True, **data):
    files = [("tables", (path.name, path.read_bytes())) for path in paths]
    answer = post(desk, "review", files=files, data={"gate": "major", "rulebook": "2026.4", **data})
    return wait_for(answer) if wait and answer.status_code == 200 else answer


def wait_for(answer, seconds: float = 120.0):
    end = time.monotonic() + seconds
    while 'http-equiv="refresh"' in answer.text and time.monotonic() < end:
        time.sleep(0.2)
        answer = httpx.get(str(answer.url))
    return answer


def test_two_tables_are_reviewed(desk):
    page = review(desk, SAMPLES / "coolant-pump.csv", SAMPLES / "respirator-blower.xlsx")
    assert "The gate is open" in page.text and "The gate is closed" in page.text
    report = httpx.get(f"{page.url}/file/coolant-pump.html")
    assert report.status_code == 200 and "sandbox" in report.headers["content-security-policy"]
    workbook = httpx.get(f"{page.url}/file/respirator-blower.findings.xlsx")
    assert workbook.content[:2] == b"PK"
    assert httpx.get(f"{page.url}/file/../../names.toml").status_code == 404


def test_headers_keep_everything_on_this_machine(desk):
    page = httpx.get(desk.address)
    policy = page.headers["content-security-policy"]
    assert "default-src 'none'" in policy and "form-action 'self'" in policy and "unsafe" not in policy
    assert page.headers["x-content-type-options"] == "nosniff" and page.headers["cache-control"] == "no-store"
    assert "http://" not in page.text.replace(desk.origin, "") and "https://" not in page.text


@pytest.mark.parametrize(
    ("path", "headers", "status"),
    [
        ("/", {}, 404), ("/wrong/", {}, 404), ("", {"Host": "evil.example"}, 403),
        ("", {"Host": "evil.example:80"}, 403),
    ],
)  # fmt: skip
def test_a_foreign_host_and_a_missing_token_are_refused(desk, path, headers, status):
    address = desk.origin + path if path else desk.address
    assert httpx.get(address, headers=headers).status_code == status


@pytest.mark.parametrize("origin", [None, "null", "http://evil.example", "https://127.0.0.1"])
def test_a_form_of_another_page_is_refused(desk, origin):
    headers = {} if origin is None else {"Origin": origin}
    answer = httpx.post(desk.address + "review", headers=headers, files={"tables": ("a.csv", b"x")})
    assert answer.status_code == 403 and "own pages only" in answer.text


@pytest.mark.parametrize(
    ("data", "files", "told"),
    [
        ({"gate": "major"}, {}, "No table was chosen"),
        ({"gate": "none"}, {"tables": ("a.csv", b"x")}, "read &#39;none&#39;"),
        ({"gate": "major", "rulebook": "1999"}, {"tables": ("a.csv", b"x")}, "read &#39;1999&#39;"),
    ],
)
def test_a_wrong_form_is_told(desk, data, files, told):
    answer = post(desk, "review", data=data, files=files or {"other": ("b", b"")})
    assert answer.status_code == 400 and told in answer.text


def test_a_wrong_file_and_the_rest_is_reviewed(desk, tmp_path):
    wrong = tmp_path / "picture.png"
    wrong.write_bytes(b"\x89PNG\r\n\x1a\n" + bytes(100))
    page = review(desk, wrong, SAMPLES / "coolant-pump.csv")
    assert "could not be carried out" in page.text and "picture.png" in page.text
    assert "The gate is open" in page.text


def test_hostile_names_stay_in_their_folder(desk, tmp_path):
    content = (SAMPLES / "coolant-pump.csv").read_bytes()
    names = [
        "../../evil.csv",
        "..\\..\\evil.csv",
        "<script>alert(1)</script>.csv",
        "-rf.csv",
        "CON.csv",
        "a" * 300 + ".csv",
    ]
    files = [("tables", (name, content)) for name in names]
    page = wait_for(post(desk, "review", files=files, data={"gate": "major", "rulebook": "2026.4"}))
    assert "<script>alert" not in page.text
    assert page.text.count("The gate is open") == len(names)
    assert not list(desk.folder.parent.glob("evil*"))


def test_a_column_is_said_and_the_table_reviewed_again(desk, tmp_path):
    table = tmp_path / "foreign.csv"
    table.write_text(
        "machine;station;bearing type;bore;Wellenzapfen vorn neu\n"
        "F;A;deep groove ball;8;8 k5\nF;B;deep groove ball;8;8 k5\n",
        encoding="utf-8",
    )
    page = review(desk, table)
    assert "Columns that were not used" in page.text
    data = {"word-0": "Wellenzapfen vorn neu", "means-0": "shaft_seat_diameter", "aspect-0": "value"}
    answer = post(desk, str(page.url).removeprefix(desk.address) + "/names", data=data)
    again = wait_for(answer)
    assert str(again.url) != str(page.url) and "Wellenzapfen" not in again.text


def test_a_review_can_be_stopped(desk, tmp_path):
    big = tmp_path / "big.csv"
    head, *rows = (SAMPLES / "coolant-pump.csv").read_text(encoding="utf-8").splitlines()
    big.write_text("\n".join([head, *rows * 400]) + "\n", encoding="utf-8")
    page = review(desk, big, wait=False)
    stopped = post(desk, str(page.url).removeprefix(desk.address) + "/stop")
    assert "Stopped" in stopped.text or "Finished" in stopped.text or "carried out" in stopped.text
    assert 'http-equiv="refresh"' not in stopped.text


def test_too_large_is_refused(desk):
    host, port = desk.origin.removeprefix("http://").split(":")
    line = http.client.HTTPConnection(host, int(port), timeout=20)
    line.putrequest("POST", "/" + desk.address.split("/", 3)[3] + "review")
    line.putheader("Origin", desk.origin)
    line.putheader("Content-Length", str(10**9))
    line.endheaders()
    assert line.getresponse().status == 413
    line.close()


def test_unknown_reviews_and_files(desk):
    assert httpx.get(desk.address + "job/0123").status_code == 404
    assert httpx.get(desk.address + "nothing").status_code == 404
    assert httpx.get(desk.address + "review").status_code == 405


def test_a_port_in_use_is_told(desk):
    port = desk.origin.rpartition(":")[2]
    done = subprocess.run(
        [sys.executable, "-m", "linter.command.cli", "desk", "--port", port], capture_output=True, text=True,
        cwd=ROOT, timeout=60, check=False,
    )  # fmt: skip
    assert done.returncode == 2 and f"--port {port}" in done.stderr


@pytest.mark.skipif(os.name != "posix", reason="signals")
def test_what_a_killed_desk_leaves_is_removed_by_the_next(tmp_path):
    first = Running(tmp_path)
    first.end(signal.SIGKILL)
    assert len(first.left()) == 1
    second = Running(tmp_path)
    assert len(second.left()) == 1 and str(second.process.pid) in second.left()[0].name
    second.end(signal.SIGTERM)
    assert second.left() == []


def test_folders_of_living_desks_stay(tmp_path, monkeypatch):
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path))
    mine = tmp_path / f"{PREFIX}{os.getpid()}-x"
    mine.mkdir()
    remove_left()
    assert mine.exists()


@pytest.mark.parametrize(
    ("name", "safe"),
    [("../a.csv", "a.csv"), ("C:\\x\\b.xlsx", "b.xlsx"), ("", "table"), ("...", "table"), ("nul.csv", "_nul.csv"),
     ("轴承 座.csv", "轴承 座.csv"), ("a\nb.csv", "a_b.csv"), ("-o.csv", "o.csv")],
)  # fmt: skip
def test_safe_names(name, safe):
    assert safe_name(name) == safe


def test_mappings_are_merged_and_quoted():
    assert _toml('a"b\\\n') == '"a\\u0022b\\u005c\\u000a"'
    merged = _merged('[names]\n"a" = "bore_diameter"\n"b" = "speed_max"\n', ["[names]", '"a" = "ring_width"'])
    assert '"a" = "ring_width"' in merged and '"b" = "speed_max"' in merged and "bore_diameter" not in merged


# -- in a browser -----------------------------------------------------------------------------------------------------

CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser") or shutil.which("google-chrome")


@pytest.fixture(scope="module")
def browser():
    sync_api = pytest.importorskip("playwright.sync_api")
    if CHROMIUM is None:
        pytest.skip("no chromium here: the desk was not looked at in a browser")
    with sync_api.sync_playwright() as play:
        made = play.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox"])
        yield made
        made.close()


@pytest.fixture
def page(browser, desk):
    context = browser.new_context(viewport={"width": 1280, "height": 900})
    opened = context.new_page()
    opened.asked = []
    opened.on("request", lambda request: opened.asked.append(request.url))
    opened.goto(desk.address)
    yield opened
    assert [url for url in opened.asked if not url.startswith(desk.origin)] == []
    context.close()


def finished(page):
    page.get_by_role("status").filter(has_text=re.compile("Finished|could not be|Stopped")).wait_for(timeout=120_000)


def send(page, *paths: Path):
    page.set_input_files("input[name=tables]", [str(path) for path in paths])
    page.click("button[type=submit]")
    finished(page)


@pytest.mark.slow
def test_browser_one_table_and_its_report(page):
    send(page, SAMPLES / "coolant-pump.csv")
    assert page.locator("text=The gate is open").count() == 1
    page.click("text=Open the report")
    assert "coolant" in page.content().lower() and page.locator("h1").count() >= 1


@pytest.mark.slow
def test_browser_two_files(page):
    send(page, SAMPLES / "coolant-pump.csv", SAMPLES / "grinding-spindle.csv")
    assert page.locator(".verdict").count() == 2


@pytest.mark.slow
def test_browser_drop(page):
    text = (SAMPLES / "coolant-pump.csv").read_text(encoding="utf-8")
    page.evaluate(
        """text => { const data = new DataTransfer(); data.items.add(new File([text], 'dropped.csv'));
        const drop = new DragEvent('drop', {dataTransfer: data, bubbles: true, cancelable: true});
        document.querySelector('main').dispatchEvent(drop); }""",
        text,
    )
    page.keyboard.press("Enter")
    finished(page)
    assert page.locator("h1").inner_text() == "dropped.csv"


@pytest.mark.slow
def test_browser_wrong_file(page, tmp_path):
    wrong = tmp_path / "wrong.pdf"
    wrong.write_bytes(b"%PDF-1.7\n")
    send(page, wrong)
    assert "could not be carried out" in page.locator("[role=status]").inner_text()
    assert "wrong.pdf" in page.locator(".said").inner_text()


@pytest.mark.slow
def test_browser_sixty_megabytes(page, tmp_path):
    big = tmp_path / "big.csv"
    with big.open("w", encoding="utf-8") as stream:
        stream.write("machine;station;bore_diameter\n")
        stream.writelines(f"M{k};A;8\n" for k in range(5_000_000))
    assert big.stat().st_size > 55 * 2**20
    page.set_default_timeout(180_000)
    send(page, big)
    assert "big.csv" in page.locator(".said").inner_text()


@pytest.mark.slow
def test_browser_hostile_tables(page, tmp_path):
    hostile = tmp_path / "hostile.csv"
    hostile.write_text(
        'machine;station;bore_diameter;"<img src=http://evil.example/x onerror=alert(1)>"\n'
        "<script>alert(2)</script>;A;8;x\n<script>alert(2)</script>;B;8;=1+1\n", encoding="utf-8",
    )  # fmt: skip
    page.on("dialog", lambda dialog: pytest.fail("a script of the table ran"))
    send(page, hostile)
    page.click("text=Open the report")
    assert page.locator("img").count() == 0


@pytest.mark.slow
def test_browser_misread_column(page, tmp_path):
    table = tmp_path / "foreign.csv"
    rows = "".join(f"F;{station};deep groove ball;8;8 k5\n" for station in "AB")
    table.write_text("machine;station;bearing type;bore;Zapfen neu\n" + rows, encoding="utf-8")
    send(page, table)
    page.select_option("select[name^=means-]", "shaft_seat_diameter")
    with page.expect_navigation():
        page.get_by_role("button", name="Review again").click()
    finished(page)
    assert page.locator("text=Zapfen neu").count() == 0


@pytest.mark.slow
def test_browser_keyboard_only(page):
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Skip to the content"
    page.set_input_files("input[name=tables]", str(SAMPLES / "coolant-pump.csv"))
    for _ in range(12):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.textContent.trim()") == "Review":
            break
    page.keyboard.press("Enter")
    finished(page)
    assert page.locator("text=The gate is open").count() == 1
    unnamed = page.evaluate(
        "[...document.querySelectorAll('input:not([type=hidden]),select')]"
        ".filter(e => !e.labels?.length && !e.ariaLabel).length"
    )
    assert unnamed == 0


@pytest.mark.slow
@pytest.mark.parametrize("width", [320, 1280])
def test_browser_narrow_and_wide(page, width):
    page.set_viewport_size({"width": width, "height": 800})
    send(page, SAMPLES / "respirator-blower.xlsx")
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    page.goto(page.url.rpartition("/job/")[0] + "/")
    assert page.evaluate("document.documentElement.scrollWidth") <= width


@pytest.mark.slow
def test_browser_print(page):
    send(page, SAMPLES / "coolant-pump.csv")
    assert page.pdf()[:4] == b"%PDF"


@pytest.mark.slow
def test_browser_second_tab(page, desk):
    page.set_input_files("input[name=tables]", str(SAMPLES / "grinding-spindle.csv"))
    page.click("button[type=submit]")
    other = page.context.new_page()
    other.goto(desk.address)
    send(other, SAMPLES / "coolant-pump.csv")
    finished(page)
    assert "grinding-spindle.csv" in page.locator("h1").inner_text()
    assert "coolant-pump.csv" in other.locator("h1").inner_text()


@pytest.mark.slow
def test_browser_stop_during_review(page, tmp_path):
    big = tmp_path / "big.csv"
    head, *rows = (SAMPLES / "coolant-pump.csv").read_text(encoding="utf-8").splitlines()
    big.write_text("\n".join([head, *rows * 400]) + "\n", encoding="utf-8")
    page.set_input_files("input[name=tables]", str(big))
    page.click("button[type=submit]")
    page.click("text=Stop this review")
    finished(page)


@pytest.mark.slow
def test_browser_token_missing(page, desk):
    page.goto(desk.origin + "/")
    assert "whole address" in page.content()
