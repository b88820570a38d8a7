"""The report in other languages: nothing lost in translation, nothing changed but the words."""

import html as markup
import json
import re
import subprocess
from pathlib import Path

import pytest
from attrs import evolve

from linter.report.html import html_text
from linter.report.index import Listed, index_text
from linter.report.language import LANGUAGES, say, speaking, told
from linter.report.language.catalogue import SLOT, Catalogue, fill
from linter.report.language.po import CatalogueError, po_text, read_po
from linter.report.language.speech import DATA, entries_of
from linter.report.result_json import result_text
from linter.rulebook.load import load
from tests.report.drawings.looked_at import CHROMIUM, faults
from tests.report.languages import OTHERS, demo, demos, page, still_english, texts
from tests.report.pseudo import Pseudo, longer

#: Words of English grammar that no other language has a place for.
ENGLISH_ONLY = {"article"}


@pytest.mark.parametrize("language", OTHERS)
def test_every_placeholder_of_every_message_is_in_its_translation(language):
    wrong = [
        (message, text)
        for message, text in read_po(DATA / f"{language}.po").items()
        if text and set(SLOT.findall(message)) - ENGLISH_ONLY != set(SLOT.findall(text)) - ENGLISH_ONLY
    ]
    assert wrong == []


@pytest.mark.parametrize("language", OTHERS)
def test_a_demo_report_is_translated_whole_and_says_that_nobody_released_it(language):
    result = demo("coolant-pump.csv")
    text, lost = page(result, language)
    assert lost == [] and still_english(result, language) == []
    assert f'<html lang="{LANGUAGES[language][0]}">' in text
    with speaking(language):
        assert say("translation not yet released") in text
    english = html_text(result, load(None))
    figures = re.compile("\\d+(?:[.\u00a0]\\d+)*\u00a0(?:µm|mm|N|MPa|h|r/min)")
    assert sorted(figures.findall(" ".join(texts(text)))) == sorted(figures.findall(" ".join(texts(english))))


@pytest.mark.slow
@pytest.mark.parametrize("language", OTHERS)
def test_all_demo_reports_are_translated_whole(language):
    for result in demos():
        assert (page(result, language)[1], still_english(result, language)) == ([], [])


def test_the_result_file_only_records_the_language():
    result = demo("coolant-pump.csv")
    english, german = (json.loads(result_text(evolve(result, language=word))) for word in ("en", "de"))
    assert german.pop("language") == "de" and english == german


def test_a_sentence_is_found_back_with_what_stands_for_its_placeholders():
    entries = {
        "the {part} is {value}, at least {limit}{more}": "{part}: {value}, mindestens {limit}{more}",
        "shaft seat": "Wellensitz", "{1} and {2}": "{1} und {2}", "and counts": "zählt", ",{1}": ", {1}",
    }  # fmt: skip
    catalogue = Catalogue(entries, own=["spindle of the firm"])
    assert catalogue.sentence("The shaft seat is 3 µm, at least 2 µm") == "Wellensitz: 3 µm, mindestens 2 µm"
    assert catalogue.sentence("shaft seat and spindle of the firm") == "Wellensitz und spindle of the firm"
    assert catalogue.sentence("shaft_seat_diameter 7 h5 and 3 mm") == "shaft_seat_diameter 7 h5 und 3 mm"
    assert list(catalogue.lost) == []
    assert catalogue.sentence("the shaft seat is loose, at least 2 µm") == "Wellensitz: loose, mindestens 2 µm"
    assert list(catalogue.lost) == ["loose"]


def test_the_name_of_a_parameter_stays_one():
    entries = {
        "Change shaft_bore to {size}.": "shaft_bore auf {size} setzen.",
        "Set {side}_bore to {size}.": "{side}_bore auf {size} setzen.",
        "shaft": "Welle",
    }
    with speaking("de", catalogue=Catalogue(entries)):
        assert told("Change shaft_bore to 4 mm.") == told("Set shaft_bore to 4 mm.") == "shaft_bore auf 4 mm setzen."


def test_english_reads_no_catalogue():
    with speaking("en") as spoken:
        assert spoken is None and told("shaft seat") == "shaft seat" and say("{n} of them", n=3) == "3 of them"
    with pytest.raises(ValueError, match="no language 'eo'; known are en, de, ja, zh"), speaking("eo"):
        pass


def test_the_page_over_all_tables_is_translated():
    listed = [Listed.of(demo("coolant-pump.csv"), "")]
    for language in OTHERS:
        text = index_text(listed, language=language)
        assert f'lang="{LANGUAGES[language][0]}"' in text and "The gate" not in text


def test_a_catalogue_says_where_it_is_broken(tmp_path: Path):
    path = tmp_path / "xx.po"
    path.write_text(po_text("xx", {'a "b"\n': ["x"], "c": []}, {'a "b"\n': "d\\"}), encoding="utf-8")
    assert read_po(path) == {'a "b"\n': "d\\", "c": ""}
    path.write_text('msgid "a"\nmsgstr "b"\nmsgid "a"\nmsgstr "c"\n', encoding="utf-8")
    with pytest.raises(CatalogueError, match=r"xx\.po, line 5: the message 'a' stands twice"):
        read_po(path)
    path.write_text("msgid a\n", encoding="utf-8")
    with pytest.raises(CatalogueError, match=r"line 1: read 'msgid a'; expected"):
        read_po(path)


def test_names_of_parameters_come_from_the_headings_of_tables():
    assert entries_of("de")["shaft seat diameter"] == "Wellensitz"
    assert entries_of("ja")["bore diameter"] == "軸受内径" and entries_of("zh")["bore diameter"] == "轴承内径"
    assert fill(longer("{n} of {m}"), {"n": "3", "m": "4"}).startswith("[3 of 4 ")


MEASURE = """<script>addEventListener('load', () => {
  const frame = document.querySelector('iframe').contentDocument;
  const cut = [...frame.querySelectorAll('.scroll')].filter(e => e.scrollWidth > e.clientWidth + 1);
  const found = [frame.documentElement.scrollWidth, cut.map(e => e.getAttribute('aria-label'))];
  document.documentElement.textContent = 'BEGIN' + JSON.stringify(found) + 'END';
});</script>"""


@pytest.mark.slow
@pytest.mark.skipif(CHROMIUM is None, reason="chromium is not installed")
def test_longer_words_break_no_page(tmp_path: Path):
    from tests.report.drawings.test_labels import of_result

    result = demo("respirator-blower.xlsx")
    with speaking("xx", catalogue=Pseudo()):
        drawn = list(of_result("pseudo", result, load(None)))
    assert len(drawn) > 20 and faults(drawn, tmp_path, 390) == []
    text = re.sub(r'<meta http-equiv="Content-Security-Policy"[^>]*>', "", page(result, "de", Pseudo())[0])
    # 320 px on a screen; 190 mm between the margins of A4 at 96 px an inch, with the rules for paper
    for width, shown in ((320, text), (718, text.replace("@media print", "@media all"))):
        outer = tmp_path / "page.html"
        frame = f'<iframe style="width:{width}px;height:900px;border:0" srcdoc="{markup.escape(shown)}"></iframe>'
        outer.write_text(f"<!DOCTYPE html><meta charset=utf-8>{frame}{MEASURE}", encoding="utf-8")
        call = [CHROMIUM, "--headless", "--no-sandbox", "--disable-gpu", "--window-size=1400,1000", "--dump-dom"]
        dom = subprocess.run([*call, outer.as_uri()], capture_output=True, text=True, check=True, timeout=120).stdout
        (found,) = re.findall(r"BEGIN(.*)END", dom, re.DOTALL)
        wide, cut = json.loads(markup.unescape(found))
        assert wide <= width and (width == 320 or cut == [])


@pytest.mark.slow
def test_every_message_of_generated_designs_is_found_in_german():
    from linter.reading import Reading
    from linter.review.records import review_reading
    from linter.rulebook.load import CURRENT
    from tests.designs.faults import faulty_design

    lost: dict[str, None] = {}
    book, entries, seen = load(CURRENT), entries_of("de"), 0
    for seed in range(8):
        stations = faulty_design(seed)[0].stations()
        result = review_reading(Reading("", "", "", stations, (), (), understand=list), book, full=True)
        catalogue = Catalogue(entries, stations.machines)
        for item in result.assessments:
            for text in (item.title, item.message, item.remedy, *(line.meaning for line in item.working)):
                if text:
                    catalogue.sentence(text)
                    seen += 1
        lost.update(catalogue.lost)
    assert seen > 5000 and list(lost) == []


def test_a_list_of_things_at_places_is_split_before_each_is_told():
    entries = {"{number} at {place}": "{number}（{place}）", "{1}, {2}": "{1}、{2}", "cell{s} of {n}": "{n} のセル{s}"}
    entries |= {"{1} at {2}": "{1}（{2}）", "(and {n} more)": "（ほか {n} 件）", "“{1}”{2} holds": "「{1}」{2} が有効"}
    catalogue = Catalogue(entries, own=["impeller end", "motor end"])
    told = catalogue.sentence("bore_diameter 4 mm at impeller end, bore_diameter 4 mm at motor end")
    assert told == "bore_diameter 4 mm（impeller end）、bore_diameter 4 mm（motor end）"
    assert catalogue.sentence("cells of 3") == "3 のセル" == catalogue.sentence("cell of 3")
    assert catalogue.sentence("“7” (and 2 more) holds") == "「7」（ほか 2 件） が有効"
    assert catalogue.sentence("bore_diameter (and 2 more)") == "bore_diameter（ほか 2 件）"
    assert catalogue.sentence("“7” (4 mm at motor end) holds") == "「7」 (4 mm（motor end）) が有効"
    assert list(catalogue.lost) == []
    assert catalogue.sentence("4 mm of 3 mm") == "4 mm of 3 mm" and list(catalogue.lost) == ["4 mm of 3 mm"]
