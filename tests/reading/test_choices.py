import pytest
from hypothesis import given
from hypothesis import strategies as st

from linter.model.vocabulary import vocabulary
from linter.reading.cells.choices import choice_texts, read_choice
from linter.reading.cells.signs import ReadError

CHOICES = [entry for entry in vocabulary().values() if entry.kind == "choice"]


@pytest.mark.parametrize("entry", CHOICES, ids=lambda entry: entry.name)
def test_every_text_of_the_data_stands_for_words_of_the_vocabulary(entry) -> None:  # type: ignore[no-untyped-def]
    for text, words in choice_texts(entry.name).items():
        assert set(words) <= set(entry.choices)
        found = read_choice(entry.name, text)
        if len(words) == 1:
            assert found == words[0]
            assert read_choice(entry.name, f" {text.upper()}\u00a0") == words[0]
        else:
            assert isinstance(found, ReadError) and found.code == "ambiguous-choice"
    for word in entry.choices:
        assert read_choice(entry.name, word) == word


@pytest.mark.parametrize("language", ["de", "fr", "es", "it", "ja", "zh", "ru"])
def test_every_language_has_most_words(language: str) -> None:
    import csv

    from linter.reading.cells.choices import _DATA

    with _DATA.open(encoding="utf-8", newline="") as stream:
        spoken = {row["parameter"] for row in csv.DictReader(stream) if row["language"] == language}
    # classes and groups are signs (P5, C3) that need no translation
    lacking = {entry.name for entry in CHOICES} - spoken - {"tolerance_class", "clearance_class", "cleanliness"}
    assert lacking == set(), f"add the words of these in {language} to linter/reading/cells/data/{_DATA.name}"


@pytest.mark.parametrize(
    ("name", "text", "word"),
    [
        ("tolerance_class", "P0", "Normal"), ("tolerance_class", "ABEC 1", "Normal"),
        ("tolerance_class", "ABEC5", "P5"),
        ("tolerance_class", "p5", "P5"), ("tolerance_class", "Ｐ５", "P5"), ("tolerance_class", "Р5", "P5"),
        ("clearance_class", "C3", "C3"), ("clearance_class", "Normal", "CN"), ("clearance_class", "С3", "C3"),
        ("ball_material", "Si3N4", "silicon nitride"), ("ball_material", "Stahl", "steel"),
        ("closure", "2RS", "contact seal"),
        ("closure", "ZZ", "shield"), ("closure", "open", "open"), ("cage", "none", "none (full complement)"),
        ("preload_method", "none", "none"), ("preload_method", "None", "none"), ("housing_split", "Ja", "yes"),
        ("axial_role", "Festlager", "locating"), ("axial_role", "spring_loaded", "spring-loaded"),
        ("lubrication", "Ölnebel", "oil mist"), ("bearing_type", "深沟球轴承", "deep groove ball"),
        ("housing_material", "ЧУГУН", "cast iron"),
    ],
)  # fmt: skip
def test_usual_texts(name: str, text: str, word: str) -> None:
    assert read_choice(name, text) == word


@pytest.mark.parametrize(
    ("name", "text", "word"),
    [
        ("cage", "gabbia massiccia in ottone", "machined brass"), ("cage", "jaula de chapa", "pressed steel"),
        ("cage", "стеклонаполненный полиамид", "polyamide"), ("cage", "poliamida reforzada", "polyamide"),
        ("closure", "schermi metallici su due lati", "shield"), ("closure", "sin tapas", "open"),
        ("closure", "контактные с двух сторон", "contact seal"), ("closure", "2 tapas", "shield"),
        ("axial_role", "supporto libero", "floating"), ("axial_role", "поджата пружиной", "spring-loaded"),
        ("axial_role", "bloqueado axialmente", "locating"), ("lubrication", "engrasado de por vida", "grease"),
        ("lubrication", "a bagno d'olio", "oil bath"), ("lubrication", "разбрызгиванием", "oil bath"),
        ("preload_method", "molle ondulate", "spring"), ("preload_method", "дистанционные втулки", "rigid"),
        ("rotating_ring", "aro int.", "inner"), ("shaft_orientation", "ось вертикальная", "vertical"),
        ("duty", "marcia continua", "continuous"), ("housing_material", "fundición de aluminio", "aluminium"),
    ],
)  # fmt: skip
def test_phrases_of_italian_spanish_and_russian_cells(name: str, text: str, word: str) -> None:
    assert read_choice(name, text) == word


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("axial_role", "Lado libre"), ("axial_role", "lato libero"),  # a free end of the machine
        ("load_direction", "циркуляционное"),  # of the load against a ring, not in space
        ("load_direction", "costante"), ("housing_material", "lega leggera"), ("cage", "lamiera di ottone"),
        ("closure", "tenute"), ("closure", "два уплотнения"),  # in contact or not
    ],
)  # fmt: skip
def test_texts_that_can_mean_another_thing_are_asked(name: str, text: str) -> None:
    assert isinstance(read_choice(name, text), ReadError)


@pytest.mark.parametrize(
    ("name", "text", "code"),
    [
        ("ball_material", "ceramic", "ambiguous-choice"), ("closure", "sealed", "ambiguous-choice"),
        ("ball_material", "steal", "unknown-choice"), ("tolerance_class", "P7", "unknown-choice"),
        ("closure", "—", "not-applicable"), ("closure", "", "empty"), ("closure", "TBD", "not-known"),
        ("cage", "*", "see-above"), ("cage", "x" * 300, "too-long"),
    ],
)  # fmt: skip
def test_nothing_is_matched_by_likeness(name: str, text: str, code: str) -> None:
    found = read_choice(name, text)
    assert isinstance(found, ReadError)
    assert found.code == code and found.read == text and found.expected.startswith("one of")


def test_a_mapping_goes_first() -> None:
    assert read_choice("ball_material", "Ceramic", {"ceramic": "silicon nitride"}) == "silicon nitride"


@given(st.text(), st.sampled_from([entry.name for entry in CHOICES]))
def test_any_text_gives_a_word_or_an_error(text: str, name: str) -> None:
    assert isinstance(read_choice(name, text), (str, ReadError))


@pytest.mark.parametrize("text", ["for life", "à vie", "a vita", "de por vida", "lebensdauergeschmiert", "终身润滑"])
def test_a_lubrication_for_life_is_grease(text):
    assert read_choice("lubrication", text) == "grease"
