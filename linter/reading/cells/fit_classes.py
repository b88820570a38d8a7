"""Classes of fits (ISO 286-1) as cells hold them: alone, behind their size, of one sort."""

import re

_GRADE = "(?:[3-9]|1[0-2])"
_SIZE = r"[Ø⌀øφΦ]? ?"
_REST = r"(?: ?\(.*\))?"
#: Of shafts and holes that carry bearings, alone; with more in brackets; behind a size.
CLASS = re.compile(f"(?:JS|js|Js|[D-Hd-hJKMNPRjkmnpr]){_GRADE}")
CLASS_ONLY = re.compile(f"{CLASS.pattern}{_REST}")
SIZE_AND_CLASS = re.compile(rf"{_SIZE}\d[\d.,]* ?(?:mm )?{CLASS.pattern}(?: mm)?{_REST}")
#: Of one sort, with or without a size, whatever stands behind them.
HOLE = re.compile(rf"(?:{_SIZE}[\d.,]+ ?)?(?:JS|Js|[D-HJKMNPR]){_GRADE}(?!\d).*")
SHAFT = re.compile(rf"(?:{_SIZE}[\d.,]+ ?)?(?:js|[d-hjkmnpr]){_GRADE}(?!\d).*")
#: Of any part, which a table of roughness or of lengths may hold.
ANY_CLASS = re.compile(rf"\s*\(?(?:JS|js|[A-Za-z]){_GRADE}\)?\s*")
