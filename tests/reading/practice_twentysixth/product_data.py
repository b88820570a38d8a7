"""Exports of product data: attribute lists, JSON documents, dumps of one attribute a line."""

from typing import Any

from practice_nineteenth.office import Office


def quantity(name: str, value: str, unit: str = "") -> dict[str, str]:
    """An attribute of an English list."""
    return {"attribute": name, "value": value, "uom": unit}


def feature(name: str, value: str, unit: str = "") -> dict[str, str]:
    """An attribute of a Chinese list."""
    return {"属性名称": name, "属性值": value, "单位": unit}


DOCUMENTS: dict[str, Any] = {
    "attribute list": {
        "export": "item attributes", "exportedBy": "pdm-batch", "drawingNumber": "{dn}", "revision": "{rev}",
        "description": "{m}", "lifecycleState": "In Work",
        "classes": [
            {"class": "Machine", "attributes": [
                quantity("Maximum speed", "{nmax}", "rpm"), quantity("Required rating life", "{life}", "h"),
                quantity("Rotor mass", "{mass}", "kg"), quantity("Shaft orientation", "{ori}"),
            ]},
            ["@s", {"class": "Bearing location", "position": "{st}", "attributes": [
                quantity("Bearing designation", "{bd}"), quantity("Radial load", "{Fr}", "N"),
                quantity("Axial load", "{Fa}", "N"), quantity("Lubrication", "{lub}"),
                quantity("Shaft seat diameter", "{sd.n:mm}", "mm"), quantity("Shaft seat tolerance", "{sd.c}"),
                quantity("Shaft seat upper deviation", "{sd.u:µm}", "µm"),
                quantity("Shaft seat lower deviation", "{sd.l:µm}", "µm"),
                quantity("Shaft seat roughness Ra", "{sa}", "µm"), quantity("Shaft seat cylindricity", "{sc}", "mm"),
                quantity("Shaft shoulder diameter", "{ss}", "mm"),
                quantity("Housing bore diameter", "{hd.n:mm}", "mm"), quantity("Housing bore tolerance", "{hd.c}"),
                quantity("Housing bore upper deviation", "{hd.u:µm}", "µm"),
                quantity("Housing bore lower deviation", "{hd.l:µm}", "µm"),
                quantity("Housing bore roughness Ra", "{ha}", "µm"),
                quantity("Housing bore cylindricity", "{hc}", "mm"),
                quantity("Checked by", "n.n."),
            ]}],
        ],
    },
    "nested": {
        "stammdaten": {
            "benennung": "{m}", "zeichnungsnummer": "{dn}", "index": "{rev}", "freigabestatus": "in Arbeit",
            "klassifikation": "AX-40",
        },
        "betriebsdaten": {
            "drehzahl_max_1_min": "{nmax}", "lebensdauer_soll_h": "{life}", "umgebungstemperatur_C": "{amb}",
        },
        "lagerstellen": ["@s", {
            "bezeichnung": "{st}",
            "waelzlager": {
                "kurzzeichen": "{bd}", "bohrung_mm": "{d}", "aussendurchmesser_mm": "{D}", "breite_mm": "{B}",
                "radialkraft_N": "{Fr}", "axialkraft_N": "{Fa}", "lagerluft": "{cl}",
            },
            "wellensitz": {
                "durchmesser_mm": "{sd.n}", "toleranzklasse": "{sd.c}", "zylindrizitaet_mm": "{sc}", "ra_um": "{sa}",
                "schulterdurchmesser_mm": "{ss}", "hohlkehlradius_max_mm": "{sf}",
            },
            "gehaeusesitz": {
                "durchmesser_mm": "{hd.n}", "toleranzklasse": "{hd.c}", "zylindrizitaet_mm": "{hc}", "ra_um": "{ha}",
                "schulterdurchmesser_mm": "{hs}",
            },
            "lieferant": "freigegeben",
        }],
    },
    "boxed": {
        "図面番号": "{dn}", "改訂": "{rev}", "名称": "{m}",
        "運転条件": {
            "最高回転数": {"値": "{nmax}", "単位": "min-1"}, "ロータ質量": {"値": "{mass}", "単位": "kg"},
            "軸受間距離": {"値": "{span}", "単位": "mm"},
        },
        "軸受部": ["@s", {
            "位置": "{st}",
            "軸受": {
                "型番": "{bd}", "内径": {"値": "{d}", "単位": "mm"}, "外径": {"値": "{D}", "単位": "mm"},
                "幅": {"値": "{B}", "単位": "mm"}, "ラジアル荷重": {"値": "{Fr}", "単位": "N"},
                "アキシアル荷重": {"値": "{Fa}", "単位": "N"}, "潤滑方法": "{lub}",
            },
            "軸": {
                "はめあい部直径": {"値": "{sd.n}", "単位": "mm"}, "公差": "{sd.c}",
                "円筒度": {"値": "{sc:µm}", "単位": "µm"}, "表面粗さRa": {"値": "{sa}", "単位": "µm"},
                "肩の直径": {"値": "{ss}", "単位": "mm"},
            },
            "ハウジング": {
                "はめあい部直径": {"値": "{hd.n}", "単位": "mm"}, "公差": "{hd.c}",
                "円筒度": {"値": "{hc:µm}", "単位": "µm"}, "表面粗さRa": {"値": "{ha}", "単位": "µm"},
                "肩の直径": {"値": "{hs}", "単位": "mm"},
            },
        }],
    },
    "feature list": {
        "图号": "{dn}", "版本": "{rev}", "物料名称": "{m}",
        "属性组": [
            {"组名": "整机参数", "属性": [
                feature("最高转速", "{nmax}", "r/min"), feature("转子质量", "{mass}", "kg"),
                feature("设计寿命", "{life}", "h"),
            ]},
            ["@s", {"组名": "轴承参数", "安装位置": "{st}", "属性": [
                feature("轴承型号", "{bd}"), feature("径向载荷", "{Fr}", "N"), feature("轴向载荷", "{Fa}", "N"),
                feature("润滑方式", "{lub}"),
            ]}, {"组名": "轴颈参数", "安装位置": "{st}", "属性": [
                feature("轴颈直径", "{sd.n}{sd.c}({sd.u:mm}/{sd.l:mm})", "mm"), feature("轴颈圆柱度", "{sc}", "mm"),
                feature("轴颈粗糙度Ra", "{sa}", "μm"), feature("轴肩直径", "{ss}", "mm"),
                feature("轴肩圆角半径", "{sf}", "mm"),
            ]}, {"组名": "轴承座参数", "安装位置": "{st}", "属性": [
                feature("座孔直径", "{hd.n}{hd.c}({hd.u:mm}/{hd.l:mm})", "mm"), feature("座孔圆柱度", "{hc}", "mm"),
                feature("座孔粗糙度Ra", "{ha}", "μm"), feature("座孔挡肩直径", "{hs}", "mm"),
            ]}],
        ],
    },
    "keyed": {
        "изделие": "{m}", "чертёж": "{dn}", "изменение": "{rev}",
        "единицы": {"длина": "мм", "шероховатость": "мкм", "сила": "Н"},
        "частота вращения макс., об/мин": "{nmax}", "требуемый ресурс, ч": "{life}",
        "опоры": {"{st}": {
            "подшипник": {
                "обозначение": "{bd}", "класс точности": "{tc}", "радиальная нагрузка, Н": "{Fr}",
                "осевая нагрузка, Н": "{Fa}", "рабочая температура, °C": "{T}",
            },
            "вал": {
                "посадочный диаметр, мм": "{sd.n} {sd.c}", "допуск цилиндричности, мм": "{sc}", "Ra, мкм": "{sa}",
                "диаметр заплечика, мм": "{ss}", "радиус галтели, мм": "{sf}",
            },
            "корпус": {
                "посадочный диаметр, мм": "{hd.n} {hd.c}", "допуск цилиндричности, мм": "{hc}", "Ra, мкм": "{ha}",
                "диаметр заплечика, мм": "{hs}",
            },
        }},
    },
    "flat": {
        "disegno": "{dn}", "revisione": "{rev}", "denominazione": "{m}", "peso_grezzo_kg": 4.1,
        "velocita_max_giri_min": "{nmax}", "massa_rotore_kg": "{mass}",
        "cuscinetti": ["@s", {
            "posizione": "{st}", "sigla": "{bd}", "carico_radiale_N": "{Fr}", "carico_assiale_N": "{Fa}",
            "gioco": "{cl}", "lubrificazione": "{lub}",
            "albero_diametro_sede_mm": "{sd.n:mm}", "albero_tolleranza": "{sd.c}",
            "albero_scostamento_superiore_um": "{sd.u:µm}", "albero_scostamento_inferiore_um": "{sd.l:µm}",
            "albero_rugosita_Ra_um": "{sa}", "albero_cilindricita_um": "{sc:µm}",
            "albero_diametro_spallamento_mm": "{ss}",
            "alloggiamento_diametro_sede_mm": "{hd.n:mm}", "alloggiamento_tolleranza": "{hd.c}",
            "alloggiamento_scostamento_superiore_um": "{hd.u:µm}",
            "alloggiamento_scostamento_inferiore_um": "{hd.l:µm}",
            "alloggiamento_rugosita_Ra_um": "{ha}", "alloggiamento_cilindricita_um": "{hc:µm}",
            "alloggiamento_diametro_spallamento_mm": "{hs}",
        }],
    },
}  # fmt: skip
ATTRIBUTES = Office(
    language="en",
    layout="JSON attribute list",
    file="json",
    lines="attribute list",
    machines="Conveyor drum CD-320,Head drum HD-500",
    positions="Drive side,Idle side",
    bearing="large -2Z/C3;ball /C3",
    fits="k6 m6 k5/H7 J7 K7",
    dwg="CD0000-00",
    choices="horizontal=Horizontal;vertical=Vertical;grease=Grease;oil bath=Oil bath",
)
NESTED = Office(
    language="de",
    layout="JSON nested",
    file="json",
    lines="nested",
    machines="Trommelantrieb TA 63,Umlenktrommel UT 40",
    positions="Antriebsseite,Gegenseite",
    bearing="large /C3;ball -2RS1",
    fits="k6 m6 k5/H7 J7 K7",
    dwg="TA-00.00.00",
)
BOXED = Office(
    language="ja",
    layout="JSON nested, value and unit",
    file="json",
    lines="boxed",
    machines="キャンドポンプ CP-20,循環ポンプ JP-32",
    positions="羽根車側,反羽根車側",
    bearing="small;ball /C3",
    fits="h5 j5 k5/H6 H7 JS6",
    dwg="CP0-0000",
    choices="grease=グリース潤滑;oil bath=油浴潤滑",
)
FEATURES = Office(
    language="zh",
    layout="JSON attribute list",
    file="json",
    lines="feature list",
    machines="测功机 CG-75,电涡流测功机 DW-40",
    positions="联轴器端,自由端",
    bearing="ball /C3;large",
    fits="k5 k6 m5/H6 H7 J6",
    dwg="CG.000.00",
    choices="grease=脂润滑;oil bath=油浴润滑",
)
KEYED = Office(
    language="ru",
    layout="JSON nested, keyed",
    file="json",
    lines="keyed",
    machines="Турбокомпрессор ТК-18,Нагнетатель НЦ-7",
    positions="Опора А,Опора Б",
    bearing="angular C/P5;ball /P6",
    fits="k5 js5 h5/H6 JS6",
    dwg="ТК-00.00",
    comma=True,
    choices="Normal=0",
    more={"strings": "1"},
)
FLAT = Office(
    language="it",
    layout="JSON records",
    file="json",
    lines="flat",
    machines="Elettromandrino EM 40,Mandrino portafresa MP 15",
    positions="anteriore,posteriore",
    bearing="ball /C3;small -2Z",
    fits="h5 js5 k5/H6 JS6 J6",
    dwg="EM0000",
    choices="grease=grasso;oil bath=bagno d'olio",
)
DUMP = Office(
    language="fr",
    layout="long, one attribute a line",
    file="csv ; utf-8",
    machines="Broche de fraisage BF 9,Broche de perçage BP 4",
    positions="côté outil,côté moteur",
    bearing="angular C/P4;small",
    fits="h5 js5 k5/H6 JS6 J6",
    dwg="BF00-00",
    choices="grease=graisse;oil bath=bain d'huile;locating=fixe;floating=libre",
    lines="""
^N° de plan;Révision;Objet;Emplacement;Caractéristique;Valeur;Unité;Modifié le
{dn};{rev};Machine;;Désignation;{m};;2025-02-{day}
{dn};{rev};Machine;;Vitesse maximale;{nmax};tr/min;2025-02-{day}
{dn};{rev};Machine;;Masse du rotor;{mass};kg;2025-02-{day}
%s
{dn};{rev};Roulement;{st};Référence du roulement;{bd};;2025-02-{day}
{dn};{rev};Roulement;{st};Fonction axiale;{role};;2025-02-{day}
{dn};{rev};Roulement;{st};Charge radiale;{Fr};N;2025-02-{day}
{dn};{rev};Roulement;{st};Charge axiale;{Fa};N;2025-02-{day}
{dn};{rev};Roulement;{st};Lubrification;{lub};;2025-02-{day}
{dn};{rev};Arbre;{st};Diamètre nominal de portée;{sd.n:mm};mm;2025-03-{day}
{dn};{rev};Arbre;{st};Écart supérieur;{sd.u:mm};mm;2025-03-{day}
{dn};{rev};Arbre;{st};Écart inférieur;{sd.l:mm};mm;2025-03-{day}
{dn};{rev};Arbre;{st};Cylindricité de portée;{sc};mm;2025-03-{day}
{dn};{rev};Arbre;{st};Rugosité Ra de portée;{sa};µm;2025-03-{day}
{dn};{rev};Carter;{st};Diamètre nominal d'alésage;{hd.n:mm};mm;2025-03-{day}
{dn};{rev};Carter;{st};Écart supérieur;{hd.u:mm};mm;2025-03-{day}
{dn};{rev};Carter;{st};Écart inférieur;{hd.l:mm};mm;2025-03-{day}
{dn};{rev};Carter;{st};Cylindricité d'alésage;{hc};mm;2025-03-{day}
{dn};{rev};Carter;{st};Rugosité Ra d'alésage;{ha};µm;2025-03-{day}
%end
""".replace(";", "|"),
    more={"labels": "3 5", "units": "column"},
)
TABBED = Office(
    language="en",
    layout="long, names with position",
    file="txt tab utf-16",
    machines="Bench centrifuge BC-9,Decanter DC-220",
    positions="Upper bearing,Lower bearing",
    bearing="small -2Z;ball /C3",
    fits="h5 k5 js5/H6 JS6 H7",
    dwg="BC-000-0",
    choices="vertical=vertical;horizontal=horizontal;grease=grease for life;oil bath=oil bath;"
    "steel=steel;cast iron=cast iron;aluminium=aluminium",
    lines="""
PDM attribute export
Drawing number|{dn}
Revision|{rev}
Title|{m}
Owner|Mechanical design

^Attribute|Value|Unit|Source
Maximum speed|{nmax}|r/min|user
Shaft orientation|{ori}||user
Housing material|{hm}||library
Temperature|{?amb,Th,tmax,T}|°C|user
%s
{st} - bearing|{bd}||library
{st} - radial load|{Fr}|N|user
{st} - axial load|{Fa}|N|user
{st} - lubrication|{lub}||user
{st} - shaft seat diameter|{sd.n} {sd.c}|mm|model
{st} - shaft seat cylindricity|{sc}|mm|drawing
{st} - shaft seat roughness Ra|{sa}|µm|drawing
{st} - shaft shoulder diameter|{ss}|mm|model
{st} - shaft fillet radius max.|{sf}|mm|model
{st} - housing seat diameter|{hd.n} {hd.c}|mm|model
{st} - housing seat cylindricity|{hc}|mm|drawing
{st} - housing seat roughness Ra|{ha}|µm|drawing
{st} - housing shoulder diameter|{hs}|mm|model
%end
""",
    more={"labels": "1", "units": "column"},
)
ODD = (ATTRIBUTES, BOXED, FLAT, DUMP)
EVEN = (NESTED, FEATURES, KEYED, TABBED)
