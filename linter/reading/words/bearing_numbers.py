"""The basic number of a designation in a cell: where it stands, its row of the table of sizes, or why it has none."""

import re
from typing import Literal

from attrs import frozen

from linter.reading.cells.signs import shown
from linter.reading.words.bearing_tables import Size, prefix_table, refusal_of, series, size_table

#: How surely a text is a designation by itself, without a heading that says so.
Strength = Literal["certain", "possible", "no"]

#: Letters that belong to the basic number, longest first.
_TYPE_LETTERS = ("NUP", "NU", "NJ", "NF", "MF", "MR", "N", "R")
#: A single number of digits, with the letters in front of it (joined, or behind one blank or hyphen).
_RUN = re.compile(r"(?<![0-9])(?:(?<![^\W\d_])(?P<letters>[A-Z]{1,8})(?P<joint>[ -]?))?(?P<digits>[0-9]{1,8})(?![0-9])")
_SLASH = re.compile(r"/([0-9]{1,3}(?:[.,][0-9]{1,4})?)(?![0-9])")
_DECIMALS = re.compile(r"[.,]([0-9]{1,8})(?![0-9A-Z])")
_INCH = re.compile(r"-[0-9](?![0-9])|A")
_THREE_SIZES = re.compile(
    r"(?<![0-9A-Z.,/])D? ?=? ?([0-9]{1,4}(?:[.,][0-9]{1,4})?) ?(?:MM)? ?[X*] ?([0-9]{1,4}(?:[.,][0-9]{1,4})?) ?(?:MM)?"
    r" ?[X*] ?([0-9]{1,4}(?:[.,][0-9]{1,4})?) ?(?:MM)?(?![0-9A-Z])"
)
_PIECES = "(?:PCS|PC|PIECES|STK|ST(?:Ü|ü)CK|OFF|EA|SZT|件|個|个)"
_QUANTITY = re.compile(
    rf"^ ?[(]?(?:[0-9]{{1,2}} ?X(?= ?[A-Z]{{0,5}}[ -]?[0-9])|[0-9]{{1,3}} ?(?:{_PIECES}\b|ST[.]))[.]? ?[)]?"
    rf"|\bQTY[.]?:? ?[0-9]{{1,3}}\b|[(, ](?:[0-9] ?X|[0-9]{{1,3}} ?{_PIECES})[.]?[)]?$|[ (]X ?[0-9]{{1,3}}[)]?$"
)
#: Where a word of Chinese or Japanese ends and a number begins.
_SCRIPT_ENDS = re.compile(r"(?<=[\u3040-\u9fff])(?=[0-9A-Z])")
# Standards that a parts list names beside a bearing; their numbers are no basic numbers.
_STANDARD = re.compile(
    r"\b(?:DIN(?: EN)?(?: ISO)?|EN|ISO)[ -]?(?:15|281|492|616|620|623|625|628|630|711|720|728|5401|5412|5753)"
    r"(?:-[0-9]{1,2}(?![0-9/]))?(?:[-:](?:19|20)[0-9]{2})?(?![0-9A-Z])"
    r"|\bJIS ?B ?15[0-9]{2}(?![0-9])|\bGB(?:/T)? ?(?:27[1-6]|28[1-9]|29[0-9])(?:-(?:19|20)?[0-9]{2})?(?![0-9])"
    r"|\b(?:GOST|ГOCT) ?(?:520|831|832|3189|8328|8338)(?:-(?:19|20)?[0-9]{2})?(?![0-9])"
)
CHUNK = re.compile(r"[^ \-/.,;:_()\[\]{}+&*'\"|=#]+")
_LETTER_FOR_DIGIT = {"O": "0", "I": "1", "L": "1", "Z": "2", "S": "5", "B": "8"}


@frozen
class Found:
    """The basic number in a text.

    Attributes
    ----------
    size : Size
        Its row.
    start, end : int
        Where it stands, with the signs joined in front of it.
    prefixes : tuple of str
        Those signs.
    letters : str
        Letters that belong to the number (``NU``); empty where it is of digits alone.
    special_bore : float or None
        Bore in mm that is written behind the number in place of the row's.
    """

    size: Size
    start: int
    end: int
    prefixes: tuple[str, ...]
    letters: str
    special_bore: float | None = None


class Refused(Exception):
    """Why a text gives no size, and how surely it is a designation all the same; caught where a cell is read."""

    def __init__(self, why: str, strength: Strength = "no") -> None:
        super().__init__(why)
        self.why, self.strength = why, strength


def prepared(key: str) -> tuple[tuple[float, ...], str]:
    """Sizes that are written beside a number, and the text without them, without standards and numbers of pieces.

    Raises
    ------
    Refused
        If a sign has no place in a designation.
    """
    strange = next((sign for sign in key if not sign.isprintable() or (sign.isdigit() and not sign.isascii())), None)
    if strange is not None:
        raise Refused(f"the sign “{shown(strange)}” has no place in a designation")
    sizes, key = _sizes_beside(_STANDARD.sub(" ", key))
    return sizes, _SCRIPT_ENDS.sub(" ", _QUANTITY.sub(" ", key))


def _sizes_beside(key: str) -> tuple[tuple[float, ...], str]:
    """Sizes d x D x B written beside the number, and the text without them."""
    match = _THREE_SIZES.search(key)
    if match is None:
        return (), key
    sizes = tuple(float(part.replace(",", ".")) for part in match.groups())
    return sizes, key[: match.start()] + " " + key[match.end() :]


def check_sizes_beside(found: Found, sizes: tuple[float, ...]) -> None:
    """Raises where sizes written beside a number are not those of its row."""
    if not sizes:
        return
    size = found.size
    bore = size.bore if found.special_bore is None else found.special_bore
    widths = {size.width, size.width if size.closed_width is None else size.closed_width}
    near = [abs(sizes[0] - bore) < 0.01, abs(sizes[1] - size.outside) < 0.01]
    if not all(near) or all(abs(sizes[2] - width) > 0.01 for width in widths):
        raise Refused(
            f"{size.basic} is {bore:g} x {size.outside:g} x {size.width:g} mm, but "
            f"{' x '.join(f'{part:g}' for part in sizes)} is written beside it: one of the two is wrong",
            "possible",
        )


def basic_number(key: str) -> Found:
    """The basic number in a text in capitals; raises where there is none, or one that gives no size."""
    nearest: str | None = None
    for match in _RUN.finditer(key):
        letters, joint, digits = match["letters"] or "", match["joint"] or "", match["digits"]
        before = key[: match.start("digits")]
        if before[-1:] in (".", ",") and before[-2:-1].isdigit():
            continue
        found = _at(key, match.start(), match.start("digits"), match.end("digits"), letters, joint, digits)
        if found is not None:
            return found
        if (joint or not letters) and len(digits) >= 3 and nearest is None:
            nearest = digits
    if typo := _letter_for_digit(key):
        raise Refused(typo)
    if nearest is None:
        raise Refused("no basic number of a bearing is in it")
    raise Refused(_missing(nearest))


def other_number(text: str) -> str | None:
    """A second number of a bearing behind the first one, of the table or of another kind; None where there is none."""
    for match in _RUN.finditer(text):
        letters, joint, digits = match["letters"] or "", match["joint"] or "", match["digits"]
        before = text[: match.start("digits") if joint else match.start()][-1:]
        if before.isalnum() or before == ".":
            continue
        try:
            found = _at(text, match.start(), match.start("digits"), match.end("digits"), letters, joint, digits)
        except Refused:
            if (len(letters) > 1 or len(digits) == 5) and refusal_of(letters + digits):
                return letters + digits
        else:
            if found is not None:
                return found.size.basic
    return None


def _at(key: str, start: int, at: int, end: int, letters: str, joint: str, digits: str) -> Found | None:
    """The basic number at one run of digits; None where the run is none, raises where it is one that gives no size."""
    unknown: tuple[str, str] | None = None
    for kind in _TYPE_LETTERS:
        if not letters.endswith(kind) or (joint and letters != kind):
            continue
        chain = _prefix_chain(letters[: -len(kind)])
        if kind == "MF":
            kind, chain = "MR", None if chain is None else (*chain, "F")
        lettered = _lettered(key, end, kind, digits)
        if lettered is None:
            continue
        if chain is None or not _suits(chain, lettered[0]):
            unknown = letters, lettered[0].basic
            continue
        return Found(lettered[0], start, lettered[1], chain, kind)
    if letters and (why := refusal_of(letters + digits)):
        raise Refused(f"{letters}{digits} is {why}", "possible")
    if letters in _TYPE_LETTERS and len(digits) >= 2:
        raise Refused(f"{letters}{digits} is not in the table of sizes: {_plan(letters)}", "possible")
    if unknown is not None:
        raise _joined(*unknown)
    bare = _bare(key, end, digits)
    if bare is None:
        return None
    size, stop, special = bare
    if joint or not letters:
        return Found(size, at, stop, (), "", special)
    chain = _prefix_chain(letters)
    if chain is None or not _suits(chain, size):
        raise _joined(letters, size.basic)
    return Found(size, start, stop, chain, "", special)


def _joined(letters: str, basic: str) -> Refused:
    return Refused(f"“{letters}” joined to {basic} is not known there: it may make it another part", "possible")


def _suits(chain: tuple[str, ...], size: Size) -> bool:
    """Whether signs in front of a number are signs of its type."""
    return all(not (types := prefix_table()[sign].types) or size.type in types for sign in chain)


def _prefix_chain(letters: str) -> tuple[str, ...] | None:
    """Known signs that a run of letters in front of a number is made of, longest first; None where it is not."""
    if not letters:
        return ()
    for length in (3, 2, 1):
        if letters[:length] in prefix_table() and (rest := _prefix_chain(letters[length:])) is not None:
            return (letters[:length], *rest)
    return None


def _plan(letters: str) -> str:
    return {
        "R": "inch numbers are taken from the table alone",
        "MR": "the digits are D and d, but the width is taken from the table alone",
    }.get(letters, "D and B cannot be worked out from a number")


def _lettered(key: str, end: int, letters: str, digits: str) -> tuple[Size, int] | None:
    """Row and end of a basic number that begins with letters."""
    sizes = size_table()
    if letters == "R" and (more := _INCH.match(key, end)) and (size := sizes.get("R" + digits + more[0])):
        return size, more.end()
    if key[end : end + 1] == "X" and (size := sizes.get(letters + digits + "X")):
        return size, end + 1
    size = sizes.get(letters + digits)
    return None if size is None else (size, end)


def _bare(key: str, end: int, digits: str) -> tuple[Size, int, float | None] | None:
    """Row, end and special bore of a basic number of digits alone; raises where it is one that gives no size."""
    sizes = size_table()
    plain = sizes.get(digits)
    if slash := _SLASH.match(key, end):
        number, behind = slash[1].replace(",", "."), key[slash.end() : slash.end() + 1]
        size = sizes.get(f"{digits}/{number}")
        if number == "2" and behind in ("Z", "R"):
            if plain is not None and size is not None:
                raise Refused(
                    f"{digits}/2{behind} can be {digits} with 2{behind}…, or {digits}/2 with {behind}…: write a blank "
                    f"where the number ends",
                    "possible",
                )
            if plain is not None:
                return plain, end, None
        if size is not None:
            return size, slash.end(), None
        if plain is not None and not (behind.isascii() and behind.isalpha()):
            return _special_bore(plain, number, slash.end())
        if plain is None and len(digits) in (2, 3) and digits.startswith("6"):
            raise Refused(f"{digits}/{number} is not in the table of sizes: D and B cannot be worked out", "possible")
    if plain is None and key[end : end + 1] == "X":
        plain, end = sizes.get(digits + "X"), end + 1
    elif key[end : end + 1] == "X" and digits + "X" in sizes:
        plain, end = sizes[digits + "X"], end + 1
    if plain is not None:
        if decimals := _DECIMALS.match(key, end):
            if decimals[1].strip("0"):
                raise Refused(f"{digits}{decimals[0]} is a number with decimals, no designation")
            end = decimals.end()  # a number that a worksheet wrote with decimals
        return plain, end, None
    if len(digits) >= 3 and (why := refusal_of(digits)):
        raise Refused(f"{digits} is {why}", "no")
    return None


def _special_bore(plain: Size, number: str, end: int) -> tuple[Size, int, float | None]:
    """A bore in mm behind the number (``6202/15.875``); a whole number there follows no rule."""
    bore = float(number)
    if "." in number and plain.bore * 0.5 < bore < (plain.bore + plain.outside) / 2:
        return plain, end, bore
    raise Refused(f"“/{number}” behind {plain.basic} follows no rule: a special bore is written in mm with decimals")


def _missing(digits: str) -> str:
    """Why a number of digits gives no size."""
    stem, code = digits[:-2], digits[-2:]
    if stem in series():
        bore = {"00": 10, "01": 12, "02": 15, "03": 17}.get(code, int(code) * 5)
        return (
            f"{digits} is not in the table of sizes: bore code {code} of series {stem} would be {bore} mm, and D and B "
            f"cannot be worked out from a number"
        )
    return f"{digits} is no basic number of the table of sizes"


def _letter_for_digit(key: str) -> str | None:
    """A hint where letters in place of digits would give a number."""
    for word in CHUNK.findall(key):
        for written in (word[:length] for length in (5, 4, 3) if word[:1].isdigit()):
            digits = "".join(_LETTER_FOR_DIGIT.get(sign, sign) for sign in written)
            if digits != written and digits in size_table():
                return f"“{written}” holds a letter where a digit belongs; {digits} may be meant, but is not written"
    return None
