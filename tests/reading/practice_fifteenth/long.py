"""Layouts in which a row is a value: lists of parameters, inspection lists, exports of CAD parameters."""

from collections.abc import Iterator

from practice.grammar import Size

from practice_fifteenth.lexicon import NAMES
from practice_fifteenth.meaning import Machine
from practice_fifteenth.pieces import Plan, foot, head, planned, refs, show, unit_text
from practice_fifteenth.sheet import Sheet
from practice_fifteenth.style import Field, Style

FORMS = {"behind": "{n} {p}", "before": "{p} {n}", "brackets": "{n} ({p})", "dash": "{n} - {p}", "colon": "{p}: {n}"}
GAUGES = {"en": "Micrometer|Bore gauge|Roughness tester|Dial gauge|CMM",
          "de": "Bügelmessschraube|Innenmessgerät|Rauheitsmessgerät|Messuhr|KMG",
          "zh": "千分尺|内径表|粗糙度仪|百分表|三坐标"}  # fmt: skip


def _lines(machines: list[Machine], plan: Plan, style: Style, by: str) -> Iterator[tuple[int, Field, int]]:
    """Machine, field and position of each line: by position, or feature by feature."""
    scopes = ("bearing", "shaft", "housing")
    for m, machine in enumerate(machines):
        places = range(len(machine.positions))
        if by == "position":
            yield from ((m, f, s) for s in places for scope in scopes for f in planned(style, plan, scope))
        else:
            yield from ((m, f, s) for scope in scopes for f in planned(style, plan, scope) for s in places)
        yield from ((m, f, -1) for f in planned(style, plan, "machine"))


def long_list(
    style: Style,
    machines: list[Machine],
    plan: Plan,
    top: str = "name dwg rev",
    way: str = "lines",
    where: str = "behind",
    by: str = "position",
    extra: tuple[str, ...] = (),
    order: str = "param value unit",
    wide: bool = False,
    gauges: bool = False,
    mark: str = "{}",
) -> Sheet:
    """A list of parameter, value, unit; ``where`` the position stands: in the name, above (group), in a column.

    With ``wide`` a seat's class and deviations stand in columns of their own.
    """
    sheet = Sheet(style)
    many = len(machines) > 1
    head(sheet, machines[:1], "" if many else top, way, extra)
    columns = order.split()
    if wide:
        parts: tuple[str, ...] = ("cls", "up", "lo") if style.form == "class and deviation columns" else ("cls",)
        parts = ("up", "lo") if style.form == "deviation columns" else parts
        k = columns.index("value") + 1
        columns = [*columns[:k], *parts, *columns[k:]]
    columns = [*(["name"] if many else []), *columns]
    at = {name: c for c, name in enumerate(columns, 1)}
    top_row = sheet.row
    for name, c in at.items():
        sheet.put(top_row, c, style.heading(style.word(name), Field("shaft", "seat", name, "fine"), wide)
                  if name in ("up", "lo") else style.word(name))  # fmt: skip
    if gauges:
        sheet.put(top_row, len(at) + 1, {"de": "Prüfmittel", "zh": "量具"}.get(
            style.language, "Instrument"))  # fmt: skip
        for k, word in enumerate(
            {"de": "Ist 1|Ist 2", "zh": "实测1|实测2"}.get(style.language, "Actual 1|Actual 2").split("|")
        ):
            sheet.put(top_row, len(at) + 2 + k, word)
    sheet.row += 1
    seen: set[tuple[int, int, str]] = set()
    group, count = 0, 0
    for m, f, s in _lines(machines, plan, style, by):
        if wide and f.key == "seat" and f.part:
            continue
        machine = machines[m]
        position = machine.positions[s] if s >= 0 else ""
        state = (m, s, "" if where == "group" else f.scope)
        if where in ("group", "group part") and state not in seen:
            seen.add(state)
            group = sheet.row
            if where == "group":
                text, told = (position or style.word("machine")), [(m, "", "station", s)] if position else []
            else:
                text, told = (f"{style.word(f.scope)} {position}" if position else style.word("machine")), []
            sheet.put(group, at["param"], mark.format(text), told if mark == "{}" else [])
            sheet.row += 1
        r = sheet.row
        count += 1
        if "no" in at:
            sheet.put(r, at["no"], str(count * 10 if style.voice % 2 else count))
        if many:
            sheet.put(r, 1, machine.name, [(m, "machine", "name", -1)], [(top_row, 1)])
        grouped = where == "group part" or ("part" in at and s >= 0)
        name = style.short(f) if grouped else style.full(f)
        if where in FORMS and position:
            name = FORMS[where].format(n=name, p=position)
        if "unit" not in at:
            name = style.heading(name, f)
        sheet.put(r, at["param"], name)
        heads = [(r, at["param"])]
        if where in ("group", "group part"):
            heads.append((group, at["param"]))
        if "station" in at and s >= 0:
            sheet.put(r, at["station"], position, [(m, "", "station", s)], [(top_row, at["station"])])
            heads.append((r, at["station"]))
        if "part" in at and s >= 0:
            sheet.put(r, at["part"], style.word(f.scope))
            heads.append((r, at["part"]))
        sheet.put(r, at["value"], show(style, machine, f, s), refs(f, m, s), heads)
        if wide and f.key == "seat":
            for part in (p for p in ("cls", "up", "lo") if p in at):
                own = Field(f.scope, "seat", part, "fine" if part != "cls" else "")
                sheet.put(r, at[part], show(style, machine, own, s), refs(f, m, s), [*heads, (top_row, at[part])])
        if "unit" in at:
            sheet.put(r, at["unit"], unit_text(f, style))
        if gauges and f.scope in ("shaft", "housing"):
            tools = GAUGES[style.language].split("|")
            k = {"seat": 0, "sh": 0, "ra": 2, "cyl": 4, "run": 3, "shr": 3}.get(f.key, 4)
            sheet.put(r, len(at) + 1, tools[k + (f.scope == "housing" and k == 0)])
        if "remark" in at and f.key == "fil":
            sheet.put(r, at["remark"], "max.")
        sheet.row += 1
    foot(sheet, extra)
    return sheet


#: Names as users of CAD spell them: part, feature and position put together.
CAD = {
    "snake": ("{k}_{p}", {
        "shaft seat": "d_shaft", "housing seat": "d_housing", "shaft ra": "Ra_shaft", "housing ra": "Ra_housing",
        "shaft cyl": "cylindricity_shaft", "housing cyl": "cylindricity_housing", "shaft run": "runout_shaft",
        "housing run": "runout_housing", "shaft sh": "d_shoulder_shaft", "housing sh": "d_shoulder_housing",
        "shaft fil": "r_fillet_shaft", "housing fil": "r_fillet_housing", "bearing des": "bearing",
        "bearing d": "bearing_bore", "bearing D": "bearing_OD", "bearing B": "bearing_width",
        "bearing Fr": "radial_load", "bearing Fa": "axial_load", "machine nmax": "speed_max",
        "machine span": "bearing_span", "machine mass": "rotor_mass", "machine life": "required_life",
        "machine smat": "shaft_material", "machine hmat": "housing_material", "up": "dev_up", "lo": "dev_low",
        "cls": "tol"}),
    "upper": ("{k}_{p}", {
        "shaft seat": "SHAFT_SEAT_DIA", "housing seat": "HOUSING_SEAT_DIA", "shaft ra": "SHAFT_SEAT_RA",
        "housing ra": "HOUSING_SEAT_RA", "shaft cyl": "SHAFT_SEAT_CYL", "housing cyl": "HOUSING_SEAT_CYL",
        "shaft run": "SHAFT_SEAT_RUNOUT", "housing run": "HOUSING_SEAT_RUNOUT", "shaft sh": "SHAFT_SHOULDER_DIA",
        "housing sh": "HOUSING_SHOULDER_DIA", "shaft fil": "SHAFT_FILLET_R", "housing fil": "HOUSING_FILLET_R",
        "bearing des": "BEARING_TYPE", "bearing d": "BEARING_ID", "bearing D": "BEARING_OD",
        "bearing B": "BEARING_WIDTH", "bearing Fr": "RADIAL_LOAD", "bearing Fa": "AXIAL_LOAD",
        "machine nmax": "MAX_SPEED", "machine span": "BEARING_SPAN", "machine mass": "ROTOR_MASS",
        "machine life": "REQUIRED_LIFE", "machine smat": "SHAFT_MATERIAL", "machine hmat": "HOUSING_MATERIAL",
        "up": "UPPER_DEV", "lo": "LOWER_DEV", "cls": "TOL"}),
    "deutsch": ("{p}_{k}", {
        "shaft seat": "WelleSitzD", "housing seat": "GehaeuseSitzD", "shaft ra": "WelleSitzRa",
        "housing ra": "GehaeuseSitzRa", "shaft cyl": "WelleZylindrizitaet", "housing cyl": "GehaeuseZylindrizitaet",
        "shaft run": "WelleRundlauf", "housing run": "GehaeuseRundlauf", "shaft sh": "WelleSchulterD",
        "housing sh": "GehaeuseSchulterD", "shaft fil": "WelleHohlkehlR", "housing fil": "GehaeuseHohlkehlR",
        "bearing des": "Lagertyp", "bearing d": "LagerInnenD", "bearing D": "LagerAussenD",
        "bearing B": "LagerBreite", "bearing Fr": "Radiallast", "bearing Fa": "Axiallast",
        "machine nmax": "Drehzahl_max", "machine span": "Lagerabstand", "machine mass": "Rotormasse",
        "machine life": "Lebensdauer_soll", "machine smat": "Werkstoff_Welle", "machine hmat": "Werkstoff_Gehaeuse",
        "up": "OberesAbmass", "lo": "UnteresAbmass", "cls": "Toleranz"}),
}  # fmt: skip


def cad(
    style: Style,
    machines: list[Machine],
    plan: Plan,
    names: str = "snake",
    heads: str = "Name,Expression,Unit,Comment",
    by: str = "position",
    extra: tuple[str, ...] = (),
) -> Sheet:
    """An export of the parameters of a CAD model, others of the model among them."""
    sheet = Sheet(style)
    head(sheet, machines, "", "", extra)
    form, words = CAD[names]
    titles = heads.split(",")
    top = sheet.row
    sheet.line(*titles)
    others = [("L_total", "312"), ("n_screws", "6"), ("alpha_chamfer", "30")]
    if names == "deutsch":
        others = [("Gesamtlaenge", "312"), ("Schraubenanzahl", "6"), ("Fasenwinkel", "30")]
    units = {"L": "mm", "G": "mm", "a": "deg", "F": "°"}
    value = next(c for c, t in enumerate(titles, 1) if t in ("Expression", "Value", "Wert", "Ausdruck"))
    unit = next((c for c, t in enumerate(titles, 1) if t in ("Unit", "Units", "Einheit")), 0)
    note = next(c for c, t in enumerate(titles, 1) if t in ("Comment", "Description", "Kommentar"))
    for number, (m, f, s) in enumerate(_lines(machines, plan, style, by)):
        if number in (5, 11, 17):
            name, text = others.pop(0)
            name = name.upper() if names == "upper" else name
            sheet.put(sheet.row, 1, name)
            sheet.put(sheet.row, value, text)
            sheet.put(sheet.row, unit, units.get(text and name[0], "")) if unit else None
            sheet.row += 1
        r, position = sheet.row, machines[m].positions[s].replace(" ", "_").replace("-", "_") if s >= 0 else ""
        key = words[f"{f.scope} {f.key}"]
        if f.part:
            key = f"{key}_{words[f.part]}"
        sheet.put(r, 1, form.format(k=key, p=position) if position else key)
        text = show(style, machines[m], f, s)
        sheet.put(r, value, text, refs(f, m, s), [(r, 1), (top, value)])
        if unit:
            sheet.put(r, unit, unit_text(f, style))
        sheet.put(r, note, _comment(style, machines[m], f, s))
        sheet.row += 1
    foot(sheet, extra)
    return sheet


def _comment(style: Style, machine: Machine, f: Field, s: int) -> str:
    """A comment on some of the parameters, as an engineer leaves one."""
    if f.key == "seat" and not f.part and s >= 0 and isinstance(machine.values[f.scope, "seat", s], Size):
        return style.full(f)
    if f.key in ("nmax", "span", "life"):
        return NAMES[style.language][f.key][0]
    return ""
