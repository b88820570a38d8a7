"""Drawings as headless Chromium lays them out: which labels overlap, which are cut off."""

import json
import re
import shutil
import subprocess
from collections.abc import Iterable
from pathlib import Path

from markupsafe import Markup

from linter.report.html import environment, style

CHROMIUM = shutil.which("chromium")

MEASURE = """<script>
addEventListener('load', () => {
  const found = [];
  const inside = (a, b) => Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const above = (a, b) => Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  for (const svg of document.querySelectorAll('svg.d')) {
    const frame = svg.getBoundingClientRect();
    const scale = frame.width / svg.viewBox.baseVal.width;
    const seen = t => t.textContent.trim() && t.getBoundingClientRect().width;
    const texts = [...svg.querySelectorAll('text')].filter(seen);
    const boxes = texts.map(t => t.getBoundingClientRect());
    const name = svg.dataset.name;
    boxes.forEach((box, k) => {
      const out = Math.max(frame.left - box.left, box.right - frame.right, frame.top - box.top - 2 * scale,
                           box.bottom - frame.bottom - 2 * scale);
      if (out > 0.5) found.push([name, 'cut', texts[k].textContent, '', Math.round(out)]);
      for (let j = 0; j < k; j++) {
        const wide = inside(box, boxes[j]), high = above(box, boxes[j]);
        if (wide > 1 && high > 3.5 * scale) {
          found.push([name, 'overlap', texts[j].textContent, texts[k].textContent, Math.round(wide)]);
        }
      }
    });
  }
  document.documentElement.textContent = 'BEGIN' + JSON.stringify(found) + 'END';
});
</script>"""


def faults(drawings: Iterable[tuple[str, Markup]], folder: Path, width: int = 1400) -> list[list[object]]:
    """Labels that overlap or are cut off, as (drawing, kind, text, other text, by how many pixels).

    Parameters
    ----------
    drawings : iterable of (str, Markup)
        A name for each, and the drawing.
    folder : Path
        Where the page may be written.
    width : int
        Of the window: a drawing is as wide as in a report of that width, at least 240 px.
    """
    column = 400 if width > 700 else width - 40
    figures = "".join(
        f'<div style="width:{max(column, 240)}px;margin:1rem">'
        + re.sub("<svg ", f'<svg data-name="{name}" ', str(svg), count=1) + "</div>"
        for name, svg in drawings
    )  # fmt: skip
    sprite = environment().get_template("base.html.j2").render()
    defs = sprite[sprite.index('<svg class="sprite"') : sprite.index("</svg>", sprite.index('<svg class="sprite"')) + 6]
    page = folder / "drawings.html"
    page.write_text(
        f"<!DOCTYPE html><html><head><meta charset=utf-8><style>{style()}</style></head><body>{defs}{figures}{MEASURE}"
        "</body></html>",
        encoding="utf-8",
    )
    assert CHROMIUM is not None
    call = [CHROMIUM, "--headless", "--no-sandbox", "--disable-gpu", f"--window-size={width},900", "--dump-dom"]
    dom = subprocess.run([*call, page.as_uri()], capture_output=True, text=True, check=True, timeout=300).stdout
    (text,) = re.findall(r"BEGIN(.*)END", dom, re.DOTALL)
    found: list[list[object]] = json.loads(text.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&"))
    return found
