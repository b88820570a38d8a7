"""Messages that no place of the program writes in one piece: words of verdicts, fits, and sentences put together."""

TEXTS = (
    # verdicts
    "critical", "major", "minor", "remark", "open", "closed", "undecided", "met", "not assessed", "not applicable",
    "conceded", "finding", "applied", "expired", "exceeded",
    # states, sides and parts by one word
    "cold", "running", "soaked", "assembled", "rate", "installed", "free", "solid", "material", "ball", "ring", "seat",
    "shaft", "housing", "inner", "outer", "both", "given", "bore", "inner ring", "outer ring", "shaft seat",
    "housing seat", "clearance", "interference",
    # fits
    "{size} clearance", "{size} interference", "clearance {size}", "interference {size}",
    "clearance {small} to {large}", "interference {small} to {large}",
    # plans
    "clears {titles}", "lowers {titles}", "what forbids it: {facts}", "{before} -> {after}", "not stated -> {after}",
    # facts
    "cage {figure}", "spin of a ball {figure}", "balls over the outer ring {figure}",
    "balls over the inner ring {figure}",
    "blades {figure}", "a {kind} of {size} bore", "an {kind} of {size} bore", "viscosity", "Ra at most {limit}",
    "{figure}\u00a01e6 revolutions", "seat that stands worse", "spring solid", "its tolerance",
    "expected {what}", "read as {layout}: {counts}",
    "{count} names stand in one row", "{count} names stand in one column",
    "{count} in one row", "{count} in one column",
    "{count} names stand in a heading over one row per seat", "{count} in a heading over one row per seat",
    "printed for {bearing} by {maker}: {source}",
    "solved by ISO 281 and ISO 76 from the ratings that are printed for {bearing} by {maker}: {source}",
    "{place}: {what} has no station; it is not reviewed; expected {expected}.", "{size} on {material}",
    "{place}: {what} is of no machine, in a table of several; it is not reviewed; expected {expected}.",
    # why a cell is not read
    "one of: {choices}", "not a choice of {name}", "not a unit that is known", "not part of a size",
    "no basic number of a bearing is in it", "length", "force", "temperature", "ratio", "{one} here and {other}",
    "a unit of {kind} ({unit}), and a {wanted} is wanted", "the deviations in “{text}” have no sign",
    "“{text}” looks like a range of sizes or a date rather than two limits of one size",
    "deviations in the unit of the size, or with their own unit behind them",
    "deviations with their signs, such as {example}",
    "above the table", "cell note", "sep= line", "row", "rows", "column", "columns", "printed", "{count} rows",
    "{count} row", "{count} columns", "{count} column", "{count} cells", "{count} stations", "{count} machines",
    "the value is not used.", "a value", "the cell shows a spreadsheet error",
    "point", "comma", "semicolon", "tab", "decimal sign: {sign}", "{before} → {after}",
    "yes", "no", "unlimited", "not known", "not stated",
    # leading stops
    ":{1}", ";{1}", ",{1}", "{text}.",
)  # fmt: skip
