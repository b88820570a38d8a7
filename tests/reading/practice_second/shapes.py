# ruff: noqa: E501, PERF401
"""A small seeded grammar of shapes that the first grammar does not have: three levels of headings, a column per position
with rows for deviations, group lines inside a list, names with prefix and instance, tables under a title that names the
machine, values beside each other in blocks, attribute trees of a document store.

Seeds 1 to 36; odd ones may be looked at, even ones stay unseen.
"""

import random
from collections.abc import Callable
from typing import Any

from practice.grammar import Table, deviations

from .pages import SIZES, document, page

SHAPES = (
    "features down",
    "group lines",
    "prefixed names",
    "three levels",
    "titled stack",
    "blocks beside",
    "store",
    "feature rows",
    "wide dump",
)
LANGUAGES = ("en", "de", "fr", "it", "ja", "zh", "es")

#: Word of each value by language; the grammar joins part and feature as the language does.
WORDS: dict[str, dict[str, str]] = {
    "en": {
        "shaft": "Shaft", "housing": "Housing", "bearing": "Bearing", "ss": "Shaft seat diameter", "hs": "Housing seat diameter",
        "sR": "Shaft seat roughness Ra", "hR": "Housing seat roughness Ra", "sC": "Shaft seat cylindricity",
        "hC": "Housing seat cylindricity", "sS": "Shaft abutment diameter", "hS": "Housing abutment diameter",
        "sF": "Shaft fillet radius max.", "hF": "Housing fillet radius max.", "bd": "Rolling bearing", "n": "Maximum speed",
        "Fr": "Radial force", "Fa": "Axial force", "L": "Required life", "dn": "Drawing", "dr": "Revision", "up": "upper deviation",
        "low": "lower deviation", "nom": "nominal", "tol": "tolerance", "feature": "Feature", "unit": "Unit", "value": "Value",
        "dia": "Diameter", "rough": "Roughness Ra", "position": "Position", "part": "Part", "abut": "Abutment diameter",
        "fillet": "Fillet radius max.", "cyl": "Cylindricity",
    },
    "de": {
        "shaft": "Welle", "housing": "Gehäuse", "bearing": "Lager", "ss": "Durchmesser Lagersitz Welle",
        "hs": "Durchmesser Lagersitz Gehäuse", "sR": "Rauheit Ra Lagersitz Welle", "hR": "Rauheit Ra Lagersitz Gehäuse",
        "sC": "Zylindrizität Lagersitz Welle", "hC": "Zylindrizität Lagersitz Gehäuse", "sS": "Anlagedurchmesser Welle",
        "hS": "Anlagedurchmesser Gehäuse", "sF": "Hohlkehle Welle max.", "hF": "Hohlkehle Gehäuse max.", "bd": "Kugellager",
        "n": "Maximaldrehzahl", "Fr": "Radialkraft", "Fa": "Axialkraft", "L": "Lebensdauer gefordert", "dn": "Zeichnung",
        "dr": "Index", "up": "oberes Abmaß", "low": "unteres Abmaß", "nom": "Nennmaß", "tol": "Toleranz", "feature": "Merkmal",
        "unit": "Einheit", "value": "Wert", "dia": "Durchmesser", "rough": "Rauheit Ra", "position": "Lagerstelle",
        "part": "Bauteil", "abut": "Anlagedurchmesser", "fillet": "Hohlkehle max.", "cyl": "Zylindrizität",
    },
    "fr": {
        "shaft": "Arbre", "housing": "Logement", "bearing": "Roulement", "ss": "Diamètre portée arbre",
        "hs": "Diamètre alésage logement", "sR": "Rugosité Ra portée arbre", "hR": "Rugosité Ra alésage logement",
        "sC": "Cylindricité portée arbre", "hC": "Cylindricité alésage logement", "sS": "Diamètre épaulement arbre",
        "hS": "Diamètre épaulement logement", "sF": "Congé arbre maxi", "hF": "Congé logement maxi", "bd": "Roulement à billes",
        "n": "Vitesse maxi", "Fr": "Charge radiale", "Fa": "Charge axiale", "L": "Durée de vie requise", "dn": "Plan",
        "dr": "Indice", "up": "écart supérieur", "low": "écart inférieur", "nom": "nominal", "tol": "tolérance",
        "feature": "Caractéristique", "unit": "Unité", "value": "Valeur", "dia": "Diamètre", "rough": "Rugosité Ra",
        "position": "Palier", "part": "Pièce", "abut": "Diamètre épaulement", "fillet": "Congé maxi", "cyl": "Cylindricité",
    },
    "it": {
        "shaft": "Albero", "housing": "Alloggiamento", "bearing": "Cuscinetto", "ss": "Diametro sede albero",
        "hs": "Diametro sede alloggiamento", "sR": "Rugosità Ra sede albero", "hR": "Rugosità Ra sede alloggiamento",
        "sC": "Cilindricità sede albero", "hC": "Cilindricità sede alloggiamento", "sS": "Diametro spallamento albero",
        "hS": "Diametro spallamento alloggiamento", "sF": "Raggio di raccordo albero", "hF": "Raggio di raccordo alloggiamento",
        "bd": "Cuscinetto a sfere", "n": "Velocità massima", "Fr": "Carico radiale", "Fa": "Carico assiale", "L": "Durata richiesta",
        "dn": "Disegno", "dr": "Revisione", "up": "scostamento superiore", "low": "scostamento inferiore", "nom": "nominale",
        "tol": "tolleranza", "feature": "Caratteristica", "unit": "Unità", "value": "Valore", "dia": "Diametro",
        "rough": "Rugosità Ra", "position": "Supporto", "part": "Parte", "abut": "Diametro spallamento",
        "fillet": "Raggio di raccordo", "cyl": "Cilindricità",
    },
    "ja": {
        "shaft": "軸", "housing": "ハウジング", "bearing": "軸受", "ss": "軸はめあい径", "hs": "ハウジング穴径", "sR": "軸 粗さRa",
        "hR": "ハウジング 粗さRa", "sC": "軸 円筒度", "hC": "ハウジング 円筒度", "sS": "軸の肩径", "hS": "ハウジングの肩径",
        "sF": "軸 隅R最大", "hF": "ハウジング 隅R最大", "bd": "玉軸受", "n": "最高回転速度", "Fr": "ラジアル荷重", "Fa": "アキシアル荷重",
        "L": "要求寿命", "dn": "図面番号", "dr": "改訂", "up": "上の寸法許容差", "low": "下の寸法許容差", "nom": "呼び寸法", "tol": "公差",
        "feature": "項目", "unit": "単位", "value": "値", "dia": "直径", "rough": "粗さRa", "position": "軸受位置", "part": "部品",
        "abut": "肩径", "fillet": "隅R最大", "cyl": "円筒度",
    },
    "zh": {
        "shaft": "轴", "housing": "轴承座", "bearing": "轴承", "ss": "轴颈直径", "hs": "轴承座孔直径", "sR": "轴颈粗糙度Ra",
        "hR": "轴承座孔粗糙度Ra", "sC": "轴颈圆柱度", "hC": "轴承座孔圆柱度", "sS": "轴肩直径", "hS": "座孔挡肩直径", "sF": "轴圆角半径最大",
        "hF": "座孔圆角半径最大", "bd": "轴承代号", "n": "最高转速", "Fr": "径向载荷", "Fa": "轴向载荷", "L": "要求寿命", "dn": "图号",
        "dr": "版本", "up": "上偏差", "low": "下偏差", "nom": "公称尺寸", "tol": "公差", "feature": "项目", "unit": "单位", "value": "数值",
        "dia": "直径", "rough": "粗糙度Ra", "position": "轴承位置", "part": "零件", "abut": "挡肩直径", "fillet": "圆角半径最大", "cyl": "圆柱度",
    },
    "es": {
        "shaft": "Eje", "housing": "Alojamiento", "bearing": "Rodamiento", "ss": "Diámetro asiento eje",
        "hs": "Diámetro asiento alojamiento", "sR": "Rugosidad Ra asiento eje", "hR": "Rugosidad Ra asiento alojamiento",
        "sC": "Cilindricidad asiento eje", "hC": "Cilindricidad asiento alojamiento", "sS": "Diámetro resalte eje",
        "hS": "Diámetro resalte alojamiento", "sF": "Radio de acuerdo eje máx.", "hF": "Radio de acuerdo alojamiento máx.",
        "bd": "Rodamiento de bolas", "n": "Velocidad máxima", "Fr": "Fuerza radial", "Fa": "Fuerza axial", "L": "Vida requerida",
        "dn": "Plano", "dr": "Revisión", "up": "desviación superior", "low": "desviación inferior", "nom": "nominal",
        "tol": "tolerancia", "feature": "Característica", "unit": "Unidad", "value": "Valor", "dia": "Diámetro",
        "rough": "Rugosidad Ra", "position": "Apoyo", "part": "Pieza", "abut": "Diámetro resalte",
        "fillet": "Radio de acuerdo máx.", "cyl": "Cilindricidad",
    },
}  # fmt: skip
POSITIONS = {
    "en": [("DE", "NDE"), ("Left", "Right"), ("P1", "P2"), ("Impeller end", "Free end")],
    "de": [("AS", "BS"), ("links", "rechts"), ("L1", "L2"), ("Laufradseite", "Motorseite")],
    "fr": [("gauche", "droite"), ("AV", "AR"), ("côté roue", "côté moteur")],
    "it": [("sinistra", "destra"), ("lato motore", "lato girante"), ("A", "B")],
    "ja": [("左", "右"), ("前側", "後側"), ("A", "B")],
    "zh": [("左端", "右端"), ("A", "B"), ("电机侧", "叶轮侧")],
    "es": [("izquierda", "derecha"), ("lado motor", "lado rodete"), ("A", "B")],
}
MACHINES = {
    "en": ["Gas booster GB-7", "Test rig 14", "Vacuum stage VS-3"], "de": ["Spinnrotor SR 9", "Zentrifuge Z-12", "Kleinturbine KT 5"],
    "fr": ["Turbopompe TP-2", "Broche B12"], "it": ["Mandrino M-30", "Girante G7"], "ja": ["主軸ユニットS5", "送風機F2"],
    "zh": ["离心机LX3", "主轴ZZ8"], "es": ["Centrífuga C-5", "Cabezal H20"],
}  # fmt: skip
UNITS = {"ss": "mm", "hs": "mm", "sR": "µm", "hR": "µm", "sC": "mm", "hC": "mm", "sS": "mm", "hS": "mm", "sF": "mm",
         "hF": "mm", "Fr": "N", "Fa": "N", "n": "1/min", "L": "h", "bd": ""}  # fmt: skip
SEATS = ("ss", "hs")

Row = list[str]


class Sheet:
    """One table in the making: language, decimal mark, form of the tolerances, and the values of each position."""

    def __init__(self, seed: int) -> None:
        self.rng = random.Random(f"second {seed}")
        self.seed = seed
        self.shape = SHAPES[(seed - 1) // 2 % len(SHAPES)]
        self.language = LANGUAGES[(seed - 1 + (seed - 1) // 14) % len(LANGUAGES)]
        self.words = WORDS[self.language]
        self.comma = self.language in ("de", "fr", "it", "es")
        self.form = self.rng.choice(["class", "deviations", "class and deviations"])
        self.positions = self.rng.choice(POSITIONS[self.language])
        count = 2 if self.shape in ("titled stack", "three levels", "blocks beside") else 1
        self.machines = tuple(self.rng.sample(MACHINES[self.language], count))
        self.keys = ["bd", "ss", "hs", *self.rng.sample(["sR", "hR", "sC", "hC", "sS", "hS", "sF", "hF"], 5), "Fr"]
        self.values = {(m, s): self._mean() for m in range(count) for s in range(2)}

    def _mean(self) -> dict[str, Any]:
        rng = self.rng
        name = rng.choice(
            [k for k in SIZES if k[0] == "6" and len(k) != 3 and int(SIZES[k][0]) in (10, 12, 15, 17, 20, 25)]
        )
        d, big, _, chamfer = SIZES[name]
        shaft, hole = rng.choice(["h5", "j5", "k5", "k6", "m5"]), rng.choice(["H6", "H7", "J6", "G7"])
        return {
            "bd": name + rng.choice(["", "-2Z", "-2RS1", "-2Z/C3"]), "ss": (float(d), shaft), "hs": (float(big), hole),
            "sR": rng.choice([0.2, 0.4, 0.8]), "hR": rng.choice([0.4, 0.8, 1.6]), "sC": rng.choice([0.0015, 0.002, 0.0025]),
            "hC": rng.choice([0.002, 0.003, 0.004]), "sS": d + rng.choice([2.6, 3.2, 3.5]), "hS": big - rng.choice([2.6, 3.2, 3.5]),
            "sF": round(chamfer * 0.6, 2), "hF": round(chamfer * 0.6, 2), "Fr": float(rng.choice([12, 25, 60, 140])),
            "Fa": float(rng.choice([5, 8, 20])),
        }  # fmt: skip

    def number(self, value: float, sign: bool = False) -> str:
        text = f"{value:+.4f}" if sign else f"{value:.4f}"
        text = text.rstrip("0").rstrip(".")
        text = {"+0": "0", "-0": "0"}.get(text, text)
        return text.replace(".", ",") if self.comma else text

    def where(self, m: int, s: int | None) -> str:
        return f"{chr(97 + m)}{'' if s is None else s + 1}"

    def meaning(self, m: int, s: int, key: str) -> str:
        """The note of a value, in the units of the vocabulary."""
        value = self.values[m, s][key]
        if key in SEATS:
            nominal, cls = value
            low, up = (round(x * 1000, 3) for x in deviations(cls, nominal))
            stated = {"class": f"{nominal:g}///{cls}", "deviations": f"{nominal:g}/{low:g}/{up:g}/",
                      "class and deviations": f"{nominal:g}/{low:g}/{up:g}/{cls}"}[self.form]  # fmt: skip
            return f"{self.where(m, s)}.{key}={stated}"
        return f"{self.where(m, s)}.{key}={value if isinstance(value, str) else f'{value:g}'}"

    def cell(self, m: int, s: int, key: str, *, whole: bool = True) -> str:
        """The text of a value with its note; a seat with its tolerance where ``whole``."""
        value = self.values[m, s][key]
        if key == "bd":
            text = value
        elif key in SEATS:
            text = self.number(value[0])
            if whole:
                low, up = deviations(value[1], value[0])
                microns = f"{up * 1000:+g}/{low * 1000:+g} µm".replace("+0", "0").replace(
                    ".", "," if self.comma else "."
                )
                both = f"{self.number(up, True)}/{self.number(low, True)}"
                text += {
                    "class": f" {value[1]}",
                    "deviations": f" {both}",
                    "class and deviations": f" {value[1]} ({microns})",
                }[self.form]
        else:
            text = self.number(value)
        return f"{text} «{self.meaning(m, s, key)}»"

    def station(self, m: int, s: int) -> str:
        return f"{self.positions[s]} «{self.where(m, s)}.st»"

    def title(self) -> list[Row]:
        number = f"{self.rng.choice(['QX', 'LN', 'HV'])}-{self.rng.randint(100, 999)}"
        revision = self.rng.choice("BCDE")
        gap = self.rng.choice(["", ":", " :"])
        return [
            [self.words["dn"] + gap, f"{number} «.dn»"],
            [self.words["dr"] + gap, f"{revision} «.dr»"],
        ]

    def unit(self, key: str) -> str:
        return f" [{UNITS[key]}]" if UNITS[key] else ""


def _features_down(sheet: Sheet) -> list[Row]:
    """Features down, a column per position; deviations in rows of their own."""
    w = sheet.words
    rows: list[Row] = [*sheet.title(), [], [w["feature"], w["unit"], *(sheet.station(0, s) for s in range(2))]]
    for key in sheet.keys:
        rows.append([w[key], UNITS[key], *(sheet.cell(0, s, key, whole=False) for s in range(2))])
        if key in SEATS:
            seats = [sheet.values[0, s][key] for s in range(2)]
            if "class" in sheet.form:
                rows.append([f"{w[key]}, {w['tol']}", "", *(cls for _, cls in seats)])
            if "deviations" in sheet.form:
                for word, k in (("up", 1), ("low", 0)):
                    rows.append(
                        [f"{w[key]}, {w[word]}", "mm", *(sheet.number(deviations(c, d)[k], True) for d, c in seats)]
                    )
    rows.append([w["n"], UNITS["n"], "18000 «.n=18000»", "18000 «.n=18000»"])
    return rows


def _group_lines(sheet: Sheet) -> list[Row]:
    """A list whose position and part stand in lines of their own."""
    w = sheet.words
    rows: list[Row] = [*sheet.title(), [], [w["feature"], w["nom"], w["tol"], w["unit"]]]
    if sheet.form != "class":
        rows[-1] = [
            w["feature"],
            w["nom"],
            *([w["tol"]] if "class" in sheet.form else []),
            w["up"],
            w["low"],
            w["unit"],
        ]
    blank = [""] * (len(rows[-1]) - 3)
    short = {"ss": "dia", "hs": "dia", "sR": "rough", "hR": "rough", "sC": "cyl", "hC": "cyl", "sS": "abut", "hS": "abut",
             "sF": "fillet", "hF": "fillet"}  # fmt: skip
    for s in range(2):
        rows.append([f"{w['position']} {sheet.positions[s]} «{sheet.where(0, s)}.st={sheet.positions[s]}»"])
        rows.append([w["bd"], sheet.cell(0, s, "bd")])
        for part, first in (("shaft", "s"), ("housing", "h")):
            rows.append([w[part]])
            for key in (k for k in sheet.keys if k in short and k.startswith(first)):
                row = [w[short[key]], sheet.cell(0, s, key, whole=False), *blank, UNITS[key]]
                if key in SEATS:
                    nominal, cls = sheet.values[0, s][key]
                    low, up = (sheet.number(x, True) for x in deviations(cls, nominal))
                    row[2:-1] = {"class": [cls], "deviations": [up, low], "class and deviations": [cls, up, low]}[
                        sheet.form
                    ]
                rows.append(row)
    return rows


_NAMES = {"bd": "DESIGNATION", "ss": "SHAFT_SEAT_DIA", "hs": "HOUSING_SEAT_DIA", "sR": "SHAFT_SEAT_RA", "hR": "HOUSING_SEAT_RA",
          "sC": "SHAFT_SEAT_CYL", "hC": "HOUSING_SEAT_CYL", "sS": "SHAFT_SHOULDER_DIA", "hS": "HOUSING_SHOULDER_DIA",
          "sF": "SHAFT_FILLET_R", "hF": "HOUSING_FILLET_R", "Fr": "RADIAL_LOAD"}  # fmt: skip


def _prefixed_names(sheet: Sheet) -> list[Row]:
    """Names of a CAD file: prefix, name, instance; lower or mixed case, a value and a unit."""
    rng = sheet.rng
    pattern = rng.choice(["BRG{i}_{n}", "{n}_BRG{i}", "Brg{i}.{n}", "{n}_{i}"])
    style: Callable[[str], str] = rng.choice([str, str.lower, str.title])
    rows: list[Row] = [["Name", "Value", "Unit", "Source"]]
    sheet.comma = False
    for s in range(2):
        for key in sheet.keys:
            rows.append(
                [
                    pattern.format(i=s + 1, n=style(_NAMES[key])),
                    sheet.cell(0, s, key),
                    UNITS[key],
                    rng.choice(["part", "skeleton"]),
                ]
            )
    rows.append([style("SPEED_MAX"), "24000 «.n»", "rpm", "skeleton"])
    sheet.positions = ("1", "2")
    return rows


def _three_levels(sheet: Sheet) -> list[Row]:
    """A row per machine; position over part over feature."""
    w = sheet.words
    top, middle, low, units = (
        [""],
        [""],
        [w["feature"].replace(w["feature"], {"en": "Machine"}.get(sheet.language, w["feature"]))],
        [""],
    )
    low[0] = {
        "en": "Machine",
        "de": "Maschine",
        "fr": "Machine",
        "it": "Macchina",
        "ja": "機械",
        "zh": "机器",
        "es": "Máquina",
    }[sheet.language]
    for s in range(2):
        columns = [
            ("bearing", "bd", w["bd"]),
            ("shaft", "ss", w["dia"]),
            ("shaft", "sR", w["rough"]),
            ("housing", "hs", w["dia"]),
            ("housing", "hR", w["rough"]),
        ]
        for k, (part, key, word) in enumerate(columns):
            top.append(f"{w['position']} {sheet.positions[s]}" if k == 0 else "")
            first = k == 0 or columns[k - 1][0] != part
            middle.append(w[part] if first else "")
            low.append(word)
            units.append(UNITS[key])
    rows = [top, middle, low, units]
    for m, name in enumerate(sheet.machines):
        rows.append([f"{name} «{sheet.where(m, None)}.ma»"])
        rows[-1] += [sheet.cell(m, s, key) for s in range(2) for key in ("bd", "ss", "sR", "hs", "hR")]
    return rows


def _titled_stack(sheet: Sheet) -> list[Row]:
    """A table per machine under a line with its name."""
    w = sheet.words
    rows: list[Row] = []
    for m, name in enumerate(sheet.machines):
        rows.append([f"{name} «{sheet.where(m, None)}.ma»"])
        rows.append([w["position"], *(w[key] + sheet.unit(key) for key in sheet.keys)])
        rows += [[sheet.station(m, s), *(sheet.cell(m, s, key) for key in sheet.keys)] for s in range(2)]
        rows.append([])
    return rows[:-1]


def _blocks_beside(sheet: Sheet) -> list[Row]:
    """Two machines beside each other, each with its name above, features down."""
    w = sheet.words
    rows: list[Row] = [[f"{sheet.machines[0]} «a.ma»", "", "", "", f"{sheet.machines[1]} «b.ma»", "", ""]]
    rows.append(
        [
            w["feature"],
            sheet.station(0, 0),
            sheet.station(0, 1),
            "",
            w["feature"],
            sheet.station(1, 0),
            sheet.station(1, 1),
        ]
    )
    for key in sheet.keys:
        name = w[key] + sheet.unit(key)
        rows.append(
            [name, sheet.cell(0, 0, key), sheet.cell(0, 1, key), "", name, sheet.cell(1, 0, key), sheet.cell(1, 1, key)]
        )
    return rows


def _feature_rows(sheet: Sheet) -> list[Row]:
    """A row per feature with position and part in columns before it."""
    w = sheet.words
    short = {"ss": ("shaft", "dia"), "hs": ("housing", "dia"), "sR": ("shaft", "rough"), "hR": ("housing", "rough"), "sC": ("shaft", "cyl"),
             "hC": ("housing", "cyl"), "sS": ("shaft", "abut"), "hS": ("housing", "abut"), "sF": ("shaft", "fillet"), "hF": ("housing", "fillet")}  # fmt: skip
    rows: list[Row] = [*sheet.title(), [], [w["position"], w["part"], w["feature"], w["value"], w["unit"]]]
    for s in range(2):
        for key in sheet.keys:
            part, word = short.get(key, ("bearing", key))
            rows.append([sheet.positions[s], w[part], w[word], sheet.cell(0, s, key), UNITS[key]])
    return rows


def _wide_dump(sheet: Sheet) -> list[Row]:
    """One row per position with many columns that say nothing of seats among them."""
    w = sheet.words
    noise = ["GUID", "Status", "Owner", "Mass [kg]", "Modified"]
    rows: list[Row] = [[*noise[:2], w["position"], *(w[key] + sheet.unit(key) for key in sheet.keys), *noise[2:]]]
    for s in range(2):
        rows.append([f"{sheet.rng.getrandbits(32):08x}", "released", sheet.station(0, s), *(sheet.cell(0, s, key) for key in sheet.keys),
                     "team 3", sheet.number(0.1 * (s + 1)), "2026-01-12"])  # fmt: skip
    return rows


def _store(sheet: Sheet) -> Any:
    """Records of a document store with lists of properties."""
    w = sheet.words
    sheet.comma = False
    keys = sheet.rng.choice(
        [("property", "data", "unitSymbol"), ("caption", "nominalValue", "unitOfMeasure"), ("title", "reading", "dim")]
    )

    def entry(m: int, s: int, key: str) -> dict[str, str]:
        found = {keys[0]: w[key], keys[1]: sheet.cell(m, s, key)}
        if UNITS[key]:
            found[keys[2]] = UNITS[key]
        return found

    return {
        "document": {"number": "ST-4471 «.dn»", "revision": "A «.dr»"},
        "bearingPositions": [
            {"position": sheet.station(0, s), "properties": [entry(0, s, key) for key in sheet.keys]} for s in range(2)
        ],
    }  # fmt: skip


_MAKERS: dict[str, Callable[[Sheet], list[Row]]] = {
    "features down": _features_down, "group lines": _group_lines, "prefixed names": _prefixed_names, "three levels": _three_levels,
    "titled stack": _titled_stack, "blocks beside": _blocks_beside, "feature rows": _feature_rows, "wide dump": _wide_dump,
}  # fmt: skip


def make(seed: int) -> Table:
    """The table of a seed, 1 to 36; the same for the same seed."""
    sheet = Sheet(seed)
    if sheet.shape == "store":
        tree = _store(sheet)
        return document(100 + seed, tree, (sheet.positions,), shape="store", language=sheet.language)
    rows = _MAKERS[sheet.shape](sheet)
    named = sheet.shape in ("titled stack", "blocks beside", "three levels")
    machines = sheet.machines if named else ("",)
    width = max(map(len, rows))
    rows = [[*row, *[""] * (width - len(row))] for row in rows]
    write = "xlsx" if sheet.rng.random() < 0.3 else ";" if sheet.comma else ","
    if sheet.language == "ja":  # the micro sign of the Japanese code page
        rows = [[cell.replace("µ", "μ") for cell in row] for row in rows]
    if write == "xlsx":
        rows = [[_typed(cell, sheet.comma) for cell in row] for row in rows]
    encoding = sheet.rng.choice(["utf-8", {"ja": "cp932", "zh": "gb18030"}.get(sheet.language, "cp1252")])
    return page(100 + seed, rows, (sheet.positions,) * len(machines), machines, write=write, encoding=encoding,
                shape=sheet.shape, language=sheet.language)  # fmt: skip


def _typed(cell: str, comma: bool) -> str:
    """A number of a workbook is a number, whatever the decimal mark on the screen."""
    text = cell.split(" «")[0].replace(",", ".")
    try:
        float(text)
    except ValueError:
        return cell
    return "#" + text + cell[len(text) :]
