"""Look at written reports with axe-core in headless Chromium: wide and narrow, light and dark.

    python tests/report/accessibility/check_accessibility.py REPORT.html [...]

Needs ``chromium`` and ``npm`` (or the path of ``axe.min.js`` in AXE_CORE). The copy that is looked at has its
Content-Security-Policy taken out and its folded parts opened; the report itself is not touched. Exit status 1 where
something is violated, 2 where it could not be run.
"""

import html
import json
import os
import re
import shutil
import subprocess
import sys
import tarfile
import tempfile
from pathlib import Path

RUN = """<script>
const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
axe.run(document, {runOnly: rules}).then(found => {
  const example = node => "    " + node.html.slice(0, 160);
  const violated = found.violations.map(v => [v.id + ": " + v.help, ...v.nodes.slice(0, 3).map(example)].join("\\n"));
  document.documentElement.textContent = "BEGIN" + JSON.stringify({passed: found.passes.length, violated}) + "END";
});
</script>"""
FLAGS = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--virtual-time-budget=60000",
    "--dump-dom",
]


def axe(folder: Path) -> str:
    if "AXE_CORE" in os.environ:
        return Path(os.environ["AXE_CORE"]).read_text(encoding="utf-8")
    npm = shutil.which("npm")
    if npm is None:
        raise OSError("neither AXE_CORE nor npm is there")
    subprocess.run([npm, "pack", "axe-core@4", "--silent"], cwd=folder, check=True, capture_output=True)
    with tarfile.open(next(folder.glob("axe-core-*.tgz"))) as archive:
        member = archive.extractfile("package/axe.min.js")
        assert member is not None
        return member.read().decode("utf-8")


def look(report: Path, script: str, folder: Path, width: int, dark: bool) -> dict:
    text = report.read_text(encoding="utf-8")
    text = re.sub(r'<meta http-equiv="Content-Security-Policy"[^>]*>', "", text).replace("<details", "<details open")
    inside = script.replace("</script", "<\\/script")
    text = text.replace("</head>", f"<script>{inside}</script></head>").replace("</body>", f"{RUN}</body>")
    page = folder / "page.html"
    page.write_text(text, encoding="utf-8")
    scheme = ["--blink-settings=preferredColorScheme=0"] if dark else []
    with tempfile.TemporaryDirectory() as profile:
        size = [f"--window-size={width},2000", f"--user-data-dir={profile}"]
        call = ["chromium", *FLAGS, *scheme, *size, page.as_uri()]
        out = subprocess.run(call, capture_output=True, text=True, timeout=300, check=True).stdout
    found = re.search(r"BEGIN(\{.*\})END", out, re.DOTALL)
    if found is None:
        raise OSError(f"{report}: the browser gave no answer")
    return json.loads(html.unescape(found[1]))


def main(reports: list[str]) -> int:
    if not reports or shutil.which("chromium") is None:
        print("not run: give reports, and have chromium installed", file=sys.stderr)
        return 2
    bad = 0
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        try:
            script = axe(folder)
            for report in map(Path, reports):
                for width, dark in ((1200, False), (500, True)):
                    found = look(report, script, folder, width, dark)
                    bad += len(found["violated"])
                    seen = f"{report.name}, {width} px, {'dark' if dark else 'light'}"
                    print(f"{seen}: {found['passed']} rules hold, {len(found['violated'])} violated")
                    print("".join(f"  {line}\n" for line in found["violated"]), end="")
        except (OSError, subprocess.SubprocessError) as error:
            print(f"not run: {error}", file=sys.stderr)
            return 2
    return 1 if bad else 0


if __name__ == "__main__":
    raise SystemExit(main(sys.argv[1:]))
