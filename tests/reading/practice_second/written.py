# ruff: noqa: E501
"""Tables written by hand after the manner of exports of design offices; invented machines, every value with its meaning."""

from practice.grammar import Table

from .pages import document, grid, page


def tables() -> list[Table]:
    """The written tables, numbered from 1: odd ones may be looked at, even ones stay unseen."""
    return [make(number) for number, make in enumerate(_MAKERS, 1)]


def _user_parameters(number: int) -> Table:
    rows = grid("""
Name|Unit|Expression|Value|Comment
DE_shaft_seat_dia|mm|12 mm|12.00 «1.ss=12//»|bearing seat drive end
DE_housing_seat_dia|mm|28 mm|28.00 «1.hs=28//»|
DE_bearing_bore|mm|12 mm|12.00 «1.d»|
DE_bearing_OD|mm|28 mm|28.00 «1.D»|
DE_bearing_width|mm|8 mm|8.00 «1.B»|
DE_shaft_shoulder_dia|mm|DE_bearing_bore + 3 mm|15.00 «1.sS»|
DE_shaft_fillet_max|mm|0.2 mm|0.20 «1.sF»|
NDE_shaft_seat_dia|mm|10 mm|10.00 «2.ss=10//»|bearing seat non drive end
NDE_housing_seat_dia|mm|26 mm|26.00 «2.hs=26//»|
NDE_bearing_bore|mm|10 mm|10.00 «2.d»|
NDE_bearing_OD|mm|26 mm|26.00 «2.D»|
NDE_bearing_width|mm|8 mm|8.00 «2.B»|
NDE_shaft_shoulder_dia|mm|13 mm|13.00 «2.sS»|
NDE_shaft_fillet_max|mm|0.2 mm|0.20 «2.sF»|
n_max|rpm|24000 rpm|24000 «.n»|
rotor_mass|kg|0.42 kg|0.42 «.m»|
""")
    return page(number, rows, (("DE", "NDE"),), shape="parameters with prefix", language="en")


def _merkmale(number: int) -> Table:
    rows = grid("""
Prüfmerkmale Rotor Kühlmittelpumpe KP-80|||||||
Zeichnungsnummer:|KP-8012-04 «.dn»||Index:|C «.dr»|||
|||||||
Lagerstelle A-Seite «1.st=A-Seite»|||||||
Nr|Merkmal|Nennmaß|o. Abm.|u. Abm.|Einheit|Ra|Bemerkung
1|Lagersitz Welle|15 «1.ss=15/+1/+9/»|+0,009|+0,001|mm|0,8 «1.sR»|
2|Lagersitz Gehäuse|32 «1.hs=32/0/+16/»|+0,016|0|mm|1,6 «1.hR»|
3|Zylinderform Lagersitz Welle|0,003 «1.sC»|||mm||
4|Wellenschulter|18 «1.sS»|||mm||
Lagerstelle B-Seite «2.st=B-Seite»|||||||
Nr|Merkmal|Nennmaß|o. Abm.|u. Abm.|Einheit|Ra|Bemerkung
5|Lagersitz Welle|12 «2.ss=12/+1/+9/»|+0,009|+0,001|mm|0,8 «2.sR»|
6|Lagersitz Gehäuse|28 «2.hs=28/0/+13/»|+0,013|0|mm|1,6 «2.hR»|
7|Zylinderform Lagersitz Welle|0,002 «2.sC»|||mm||
8|Wellenschulter|15 «2.sS»|||mm||
""")
    return page(number, rows, (("A-Seite", "B-Seite"),), write=";", shape="list with group lines", language="de")


def _stations_as_columns(number: int) -> Table:
    rows = grid("""
BEARING ARRANGEMENT - COMPRESSOR SPINDLE||||
DWG|CS-2201 «.dn»|REV|D «.dr»|
Max speed|42000 rpm «.n=42000»|||
||||
Feature|Unit|FRONT BEARING «1.st=FRONT BEARING»|REAR BEARING «2.st=REAR BEARING»|Remarks
Bearing||7002 C P4 «1.bd=7002 C P4»|7001 C P4 «2.bd=7001 C P4»|
Shaft seat|mm|15 j5 «1.ss=15///j5»|12 j5 «2.ss=12///j5»|
Shaft seat cylindricity|µm|1.5 «1.sC=0.0015»|1.5 «2.sC=0.0015»|
Shaft seat Ra|µm|0.2 «1.sR»|0.2 «2.sR»|
Shaft shoulder|mm|18.2 «1.sS»|15 «2.sS»|
Housing bore|mm|32 JS5 «1.hs=32///JS5»|28 JS5 «2.hs=28///JS5»|
Housing bore cylindricity|µm|2 «1.hC=0.002»|2 «2.hC=0.002»|
Housing bore Ra|µm|0.4 «1.hR»|0.4 «2.hR»|
Housing shoulder|mm|29 «1.hS»|25 «2.hS»|
Radial load|N|85 «1.Fr»|40 «2.Fr»|
Location||locating «1.role=locating»|floating «2.role=floating»|
""")
    return page(number, rows, (("FRONT BEARING", "REAR BEARING"),), shape="stations as columns", language="en")


def _attribute_dump(number: int) -> Table:
    rows = grid("""
Level|Item|Description|Qty|Attribute|Attribute value|UoM
1|10|Rotor assembly|1|Speed max|18000 «.n»|1/min
1|10|Rotor assembly|1|Rotor mass|0.85 «.m»|kg
2|20|Bearing A|1|Designation|6001-2Z «1.bd=6001-2Z»|
2|20|Bearing A|1|Shaft seat diameter|12 k5 «1.ss=12///k5»|mm
2|20|Bearing A|1|Housing seat diameter|28 H6 «1.hs=28///H6»|mm
2|20|Bearing A|1|Shaft fillet radius|0.2 «1.sF»|mm
2|30|Bearing B|1|Designation|6000-2Z «2.bd=6000-2Z»|
2|30|Bearing B|1|Shaft seat diameter|10 k5 «2.ss=10///k5»|mm
2|30|Bearing B|1|Housing seat diameter|26 H6 «2.hs=26///H6»|mm
2|30|Bearing B|1|Shaft fillet radius|0.2 «2.sF»|mm
""")
    return page(number, rows, (("A", "B"),), write=";", shape="attribute dump", language="en")


def _cartouche(number: int) -> Table:
    rows = grid("""
TABLEAU DES PORTÉES DE ROULEMENT||||||
Plan n° :|TR-1180 «.dn»|Ind. :|B «.dr»|Échelle :|1:1|
Ensemble :|Turbine radiale «.ma»|||||Cotes en mm
||||||
Repère palier|Roulement|Portée arbre|Alésage logement|Ra portée arbre (µm)|Ra alésage (µm)|Congé arbre max.
AV «1.st=AV»|6203-2Z/C3 «1.bd=6203-2Z/C3»|Ø17 k5 «1.ss=17///k5»|Ø40 H6 «1.hs=40///H6»|0,4 «1.sR»|0,8 «1.hR»|0,6 «1.sF»
AR «2.st=AR»|6202-2Z/C3 «2.bd=6202-2Z/C3»|Ø15 k5 «2.ss=15///k5»|Ø35 H7 «2.hs=35///H7»|0,4 «2.sR»|0,8 «2.hR»|0,6 «2.sF»
Vitesse de rotation max. : 15000 tr/min||||||
""")
    return page(
        number,
        rows,
        (("AV", "AR"),),
        ("Turbine radiale",),
        write=";",
        encoding="cp1252",
        shape="cartouche",
        language="fr",
    )


def _three_heading_rows(number: int) -> Table:
    rows = grid("""
Macchina|Albero||||Sede alloggiamento||||Cuscinetto||
|Ø nominale|Tolleranza||Ra|Ø nominale|Tolleranza||Ra|Sigla|C|C0
|mm|sup. µm|inf. µm|µm|mm|sup. µm|inf. µm|µm||kN|kN
Ventilatore V1 / lato A «1.st=?lato A»|17 «1.ss=17/+1/+9/»|+9|+1|0,8 «1.sR»|40 «1.hs=40/0/+16/»|+16|0|1,6 «1.hR»|6203 «1.bd=6203»|9,6 «1.C=9600»|4,8 «1.C0=4800»
Ventilatore V1 / lato B «2.st=?lato B»|15 «2.ss=15/+1/+9/»|+9|+1|0,8 «2.sR»|35 «2.hs=35/0/+16/»|+16|0|1,6 «2.hR»|6202 «2.bd=6202»|7,7 «2.C=7700»|3,75 «2.C0=3750»
""")
    return page(number, rows, (("Ventilatore V1 / lato A", "Ventilatore V1 / lato B"),), write=";",
                shape="three heading rows", language="it")  # fmt: skip


def _japanese_sheet(number: int) -> Table:
    rows = grid("""
図番|MT-3308 «.dn»|改訂|2 «.dr=2»||
最高回転数|30000 min-1 «.n=30000»||||
|||||
項目|単位|前側 «1.st=前側»|後側 «2.st=後側»||備考
軸受呼び番号||6002ZZ «1.bd=6002ZZ»|6001ZZ «2.bd=6001ZZ»||
軸はめあい部直径|mm|15 «1.ss=15///k5»|12 «2.ss=12///k5»||
軸公差||k5|k5||
ハウジング穴径|mm|32 «1.hs=32///H6»|28 «2.hs=28///H6»||
穴公差||H6|H6||
軸 表面粗さ Ra|μm|0.4 «1.sR»|0.4 «2.sR»||
軸肩径|mm|18 «1.sS»|15 «2.sS»||
隅の丸み 軸|mm|0.2 «1.sF»|0.2 «2.sF»||
ラジアル荷重|N|60 «1.Fr»|45 «2.Fr»||
""")
    return page(number, rows, (("前側", "後側"),), encoding="cp932", shape="stations as columns", language="ja")


def _chinese_list(number: int) -> Table:
    rows = grid("""
轴承配合参数表||||||
图号：ZC-0917 «.dn=ZC-0917»||版本：A «.dr=A»||||
||||||
序号|位置|轴承型号|轴颈直径 (mm)|轴颈公差带|轴承座孔直径 (mm)|座孔公差带
1|驱动端 «1.st=驱动端»|6205 «1.bd=6205»|25 «1.ss=25///k6»|k6|52 «1.hs=52///H7»|H7
2|非驱动端 «2.st=非驱动端»|6204 «2.bd=6204»|20 «2.ss=20///k6»|k6|47 «2.hs=47///H7»|H7
""")
    return page(
        number, rows, (("驱动端", "非驱动端"),), encoding="gb18030", shape="title block and list", language="zh"
    )


def _stacked_titles(number: int) -> Table:
    rows = grid("""
Blower BL-40||||||
Position|Bearing|Shaft seat [mm]|Housing seat [mm]|Fr [N]|n max [rpm]|
A «a1.st=A»|608-2Z «a1.bd=608-2Z»|8 h5 «a1.ss=8///h5»|22 H6 «a1.hs=22///H6»|12 «a1.Fr»|30000 «a.n»|
B «a2.st=B»|608-2Z «a2.bd=608-2Z»|8 h5 «a2.ss=8///h5»|22 H6 «a2.hs=22///H6»|9 «a2.Fr»|30000 «a.n»|
||||||
Blower BL-65||||||
Position|Bearing|Shaft seat [mm]|Housing seat [mm]|Fr [N]|n max [rpm]|
A «b1.st=A»|6001-2Z «b1.bd=6001-2Z»|12 h5 «b1.ss=12///h5»|28 H6 «b1.hs=28///H6»|31 «b1.Fr»|18000 «b.n»|
B «b2.st=B»|6000-2Z «b2.bd=6000-2Z»|10 h5 «b2.ss=10///h5»|26 H6 «b2.hs=26///H6»|22 «b2.Fr»|18000 «b.n»|
""")
    return page(number, rows, (("A", "B"), ("A", "B")), ("Blower BL-40", "Blower BL-65"), shape="stacked under titles",
                language="en")  # fmt: skip


def _side_by_side_titles(number: int) -> Table:
    rows = grid("""
Fräskopf FK 2||||Fräskopf FK 3|||
||||||||
Merkmal|vorn «a1.st=vorn»|hinten «a2.st=hinten»||Merkmal|vorn «b1.st=vorn»|hinten «b2.st=hinten»|
Lager|61903 «a1.bd=61903»|61902 «a2.bd=61902»||Lager|61904 «b1.bd=61904»|61903 «b2.bd=61903»|
Wellensitz [mm]|17 js5 «a1.ss=17///js5»|15 js5 «a2.ss=15///js5»||Wellensitz [mm]|20 js5 «b1.ss=20///js5»|17 js5 «b2.ss=17///js5»|
Gehäusesitz [mm]|30 H5 «a1.hs=30///H5»|28 H5 «a2.hs=28///H5»||Gehäusesitz [mm]|37 H5 «b1.hs=37///H5»|30 H5 «b2.hs=30///H5»|
Radiallast [N]|40 «a1.Fr»|25 «a2.Fr»||Radiallast [N]|55 «b1.Fr»|35 «b2.Fr»|
""")
    return page(number, rows, (("vorn", "hinten"), ("vorn", "hinten")), ("Fräskopf FK 2", "Fräskopf FK 3"), write="xlsx",
                shape="side by side under titles", language="de")  # fmt: skip


def _plm_json(number: int) -> Table:
    def attribute(name: str, value: str, unit: str | None = None) -> dict[str, object]:
        return {"attributeName": name, "valueType": "string", "content": {"amount": value, "measure": unit}}

    tree = {
        "exportDate": "2026-03-02",
        "item": {"number": "AR-7714 «.dn»", "version": "C «.dr»", "title": "Air motor rotor «.ma»"},
        "classification": [attribute("Maximum speed", "#60000 «.n»", "rpm"), attribute("Rotor mass", "#0.11 «.m»", "kg")],
        "positions": [
            {"label": "Front «1.st»", "classification": [
                attribute("Bearing designation", "624ZZ «1.bd»"), attribute("Shaft seat diameter", "4 h5 «1.ss=4///h5»", "mm"),
                attribute("Housing seat diameter", "13 H5 «1.hs=13///H5»", "mm"),
                attribute("Shaft seat roughness Ra", "#0.4 «1.sR»", "um"),
                attribute("Radial load", "#4.5 «1.Fr»", "N"),
            ]},
            {"label": "Rear «2.st»", "classification": [
                attribute("Bearing designation", "625ZZ «2.bd»"), attribute("Shaft seat diameter", "5 h5 «2.ss=5///h5»", "mm"),
                attribute("Housing seat diameter", "16 H5 «2.hs=16///H5»", "mm"),
                attribute("Shaft seat roughness Ra", "#0.4 «2.sR»", "um"),
                attribute("Radial load", "#3.0 «2.Fr»", "N"),
            ]},
        ],
    }  # fmt: skip
    return document(number, tree, (("Front", "Rear"),), ("Air motor rotor",), shape="nested attributes", language="en")


def _flat_keys_json(number: int) -> Table:
    tree = {
        "Welle.Lagersitz_A.Durchmesser": "#10.0 «1.ss=10/+1/+7/»",
        "Welle.Lagersitz_A.Abmass_oben": "#0.007",
        "Welle.Lagersitz_A.Abmass_unten": "#0.001",
        "Welle.Lagersitz_A.Rauheit_Ra": "#0.4 «1.sR»",
        "Welle.Lagersitz_B.Durchmesser": "#8.0 «2.ss=8/+1/+7/»",
        "Welle.Lagersitz_B.Abmass_oben": "#0.007",
        "Welle.Lagersitz_B.Abmass_unten": "#0.001",
        "Welle.Lagersitz_B.Rauheit_Ra": "#0.4 «2.sR»",
        "Gehaeuse.Lagersitz_A.Durchmesser": "#26.0 «1.hs=26/0/+13/»",
        "Gehaeuse.Lagersitz_A.Abmass_oben": "#0.013",
        "Gehaeuse.Lagersitz_A.Abmass_unten": "#0.0",
        "Gehaeuse.Lagersitz_B.Durchmesser": "#22.0 «2.hs=22/0/+13/»",
        "Gehaeuse.Lagersitz_B.Abmass_oben": "#0.013",
        "Gehaeuse.Lagersitz_B.Abmass_unten": "#0.0",
        "Einheit_Laenge": "mm",
        "Drehzahl_max_1_min": "#36000 «.n»",
    }
    return document(number, tree, (("A", "B"),), shape="flat keys", language="de")


def _class_and_microns(number: int) -> Table:
    rows = grid("""
Machine|Brg. location|Brg. no.|Journal dia. w/ tol.|Bore dia. w/ tol.|Journal finish Ra|Bore finish Ra|Speed, max.
Pump P-11 «.ma»|inboard «1.st»|6203 LLU C3 «1.bd»|17.000 k5 +9/+1 µm «1.ss=17/+1/+9/k5»|40.000 H6 +16/0 µm «1.hs=40/0/+16/H6»|0.8 µm «1.sR=0.8»|1.6 µm «1.hR=1.6»|6,000 rpm «.n=6000»
Pump P-11 «.ma»|outboard «2.st»|6203 LLU C3 «2.bd»|17.000 k5 +9/+1 µm «2.ss=17/+1/+9/k5»|40.000 G7 +34/+9 µm «2.hs=40/+9/+34/G7»|0.8 µm «2.sR=0.8»|1.6 µm «2.hR=1.6»|6,000 rpm «.n=6000»
""")
    return page(number, rows, (("inboard", "outboard"),), ("Pump P-11",), write="\t", shape="tolerances in cells",
                language="en")  # fmt: skip


def _inch_sheet(number: int) -> Table:
    rows = grid("""
BEARING FIT SHEET||||||
UNLESS OTHERWISE SPECIFIED DIMENSIONS ARE IN INCHES||||||
DWG NO|7731-204 «.dn»|REV|B «.dr»|||
||||||
Brg Loc|Brg P/N|Shaft Dia Max|Shaft Dia Min|Hsg Bore Max|Hsg Bore Min|Shaft Shoulder Dia
FWD «1.st»|R8ZZ «1.bd»|.5000 «1.ss=12.7/-7.62/0/limits»|.4997|1.1256 «1.hs=28.575/0/+15.24/limits»|1.1250|.590 «1.sS=14.986»
AFT «2.st»|R6ZZ «2.bd»|.3750 «2.ss=9.525/-7.62/0/limits»|.3747|.8756 «2.hs=22.225/0/+15.24/limits»|.8750|.460 «2.sS=11.684»
""")
    return page(number, rows, (("FWD", "AFT"),), shape="limits in inches", language="en")


def _upper_lower_rows(number: int) -> Table:
    rows = grid("""
Característica||Ud.|Apoyo A «1.st=?Apoyo A»|Apoyo B «2.st=?Apoyo B»
Rodamiento|||6204-2RS «1.bd=6204-2RS»|6203-2RS «2.bd=6203-2RS»
Asiento del eje|nominal|mm|20 «1.ss=20/+2/+11/»|17 «2.ss=17/+1/+9/»
|desv. superior|µm|+11|+9
|desv. inferior|µm|+2|+1
Asiento del alojamiento|nominal|mm|47 «1.hs=47/0/+25/»|40 «2.hs=40/0/+25/»
|desv. superior|µm|+25|+25
|desv. inferior|µm|0|0
Rugosidad Ra del eje||µm|0,8 «1.sR»|0,8 «2.sR»
Velocidad máxima||min-1|9000 «.n»|9000 «.n»
""")
    return page(number, rows, (("Apoyo A", "Apoyo B"),), write=";", shape="deviations in rows", language="es")


def _numbered_instances(number: int) -> Table:
    rows = grid("""
Parameter|Value|Unit|Type
P_BRG_1_DESIGNATION|61901-2RZ «1.bd=61901-2RZ»||String
P_BRG_1_SHAFT_SEAT_D|12 «1.ss=12/+1/+9/»|mm|Real
P_BRG_1_SHAFT_SEAT_D_UPPER|0.009|mm|Real
P_BRG_1_SHAFT_SEAT_D_LOWER|0.001|mm|Real
P_BRG_1_HOUSING_SEAT_D|24 «1.hs=24/0/+13/»|mm|Real
P_BRG_1_HOUSING_SEAT_D_UPPER|0.013|mm|Real
P_BRG_1_HOUSING_SEAT_D_LOWER|0|mm|Real
P_BRG_1_SHAFT_SEAT_RA|0.4 «1.sR»|um|Real
P_BRG_2_DESIGNATION|61900-2RZ «2.bd=61900-2RZ»||String
P_BRG_2_SHAFT_SEAT_D|10 «2.ss=10/+1/+7/»|mm|Real
P_BRG_2_SHAFT_SEAT_D_UPPER|0.007|mm|Real
P_BRG_2_SHAFT_SEAT_D_LOWER|0.001|mm|Real
P_BRG_2_HOUSING_SEAT_D|22 «2.hs=22/0/+13/»|mm|Real
P_BRG_2_HOUSING_SEAT_D_UPPER|0.013|mm|Real
P_BRG_2_HOUSING_SEAT_D_LOWER|0|mm|Real
P_BRG_2_SHAFT_SEAT_RA|0.4 «2.sR»|um|Real
P_SPEED_MAX|28000 «.n»|rpm|Real
""")
    return page(number, rows, (("1", "2"),), shape="numbered names", language="en")


def _protocol(number: int) -> Table:
    rows = grid("""
Messplan Nr. 5512|||||||||
Teil|Läufer Schleifspindel «.ma»||||||||
Zeichnung|SPX-0440 «.dn»||||||||
|||||||||
Merkmal-Nr.|Bauteil|Stelle|Merkmal|Sollwert|OT|UT|Einh.|Toleranzklasse|Prüfmittel
100|Welle|Lager vorn|Durchmesser|17,000 «1.ss=17/-8/0/h5»|0|-0,008|mm|h5|Messschraube
110|Welle|Lager vorn|Zylindrizität|0,0025 «1.sC»|||mm||Formtester
120|Welle|Lager vorn|Ra|0,2 «1.sR»|||µm||Tastschnitt
130|Welle|Lager hinten|Durchmesser|15,000 «2.ss=15/-8/0/h5»|0|-0,008|mm|h5|Messschraube
140|Welle|Lager hinten|Zylindrizität|0,0025 «2.sC»|||mm||Formtester
150|Welle|Lager hinten|Ra|0,2 «2.sR»|||µm||Tastschnitt
200|Gehäuse|Lager vorn|Durchmesser|35,000 «1.hs=35/0/+16/H6»|+0,016|0|mm|H6|Innenmessgerät
210|Gehäuse|Lager vorn|Ra|0,4 «1.hR»|||µm||Tastschnitt
220|Gehäuse|Lager hinten|Durchmesser|32,000 «2.hs=32/0/+16/H6»|+0,016|0|mm|H6|Innenmessgerät
230|Gehäuse|Lager hinten|Ra|0,4 «2.hR»|||µm||Tastschnitt
""")
    return page(number, rows, (("Lager vorn", "Lager hinten"),), ("Läufer Schleifspindel",), write=";",
                shape="measuring plan", language="de")  # fmt: skip


def _key_value_blocks(number: int) -> Table:
    rows = grid("""
[Machine]|
Name|Laboratory centrifuge LC-2 «.ma=?»|
Speed|16000 1/min «.n=16000»
Shaft material|42CrMo4 «.sM=steel»
Housing material|AlSi10Mg «.hM=aluminium»
|
[Bearing position: upper]|
Designation|6201-2Z «1.bd=6201-2Z»
Seat shaft|12 j5 «1.ss=12///j5»
Seat housing|32 H6 «1.hs=32///H6»
Radial load|55 N «1.Fr=55»
|
[Bearing position: lower]|
Designation|6202-2Z «2.bd=6202-2Z»
Seat shaft|15 j5 «2.ss=15///j5»
Seat housing|35 H6 «2.hs=35///H6»
Radial load|90 N «2.Fr=90»
""")
    rows = [row[:2] for row in rows]
    rows[1][1] = "Laboratory centrifuge LC-2 «.ma»"
    return page(number, rows, (("upper", "lower"),), ("Laboratory centrifuge LC-2",), write=";",
                shape="key-value blocks", language="en")  # fmt: skip


def _merged_over_station(number: int) -> Table:
    rows = grid("""
Spindel|Lagerung Antriebsseite||||Lagerung Gegenseite||||Drehzahl max.
|Lager|Welle Ø|Gehäuse Ø|Ra Welle|Lager|Welle Ø|Gehäuse Ø|Ra Welle|1/min
S-10 «a.ma»|6001 «a1.bd=6001»|12 k5 «a1.ss=12///k5»|28 H6 «a1.hs=28///H6»|#0.4 «a1.sR»|6000 «a2.bd=6000»|10 k5 «a2.ss=10///k5»|26 H6 «a2.hs=26///H6»|#0.4 «a2.sR»|#20000 «a.n»
S-15 «b.ma»|6003 «b1.bd=6003»|17 k5 «b1.ss=17///k5»|35 H6 «b1.hs=35///H6»|#0.4 «b1.sR»|6002 «b2.bd=6002»|15 k5 «b2.ss=15///k5»|32 H6 «b2.hs=32///H6»|#0.4 «b2.sR»|#16000 «b.n»
""")
    stations = ("Antriebsseite", "Gegenseite")
    return page(number, rows, (stations, stations), ("S-10", "S-15"), write="xlsx", merges=((0, 1, 4), (0, 5, 8)),
                shape="merged over the position", language="de")  # fmt: skip


def _bill_with_seats(number: int) -> Table:
    rows = grid("""
Pos|Qty|Part no.|Denomination|Mating part shaft|Mating part housing|Clearance|Grease
1|1|4402-118|Deep groove ball bearing 6203-2Z «1.bd=?6203-2Z»|Ø17 k5 «1.ss=17///k5»|Ø40 H6 «1.hs=40///H6»|C3 «1.cc=C3»|polyurea
2|1|4402-119|Deep groove ball bearing 6202-2Z «2.bd=?6202-2Z»|Ø15 k5 «2.ss=15///k5»|Ø35 H6 «2.hs=35///H6»|C3 «2.cc=C3»|polyurea
3|4|4402-300|Hex screw M5x16||||
4|1|4402-301|Wave spring 34x0.4||||
""")
    return page(number, rows, (("1", "2"),), write=";", shape="bill with seats", language="en")


def _ratings_sheet(number: int) -> Table:
    rows = grid("""
Auslegung Lagerung Getriebestufe 1|||
||Lager links «1.st=links»|Lager rechts «2.st=rechts»
Lagertyp||6205 «1.bd=6205»|6204 «2.bd=6204»
dyn. Tragzahl C|kN|14,0 «1.C=14000»|12,8 «2.C=12800»
stat. Tragzahl C0|kN|7,85 «1.C0=7850»|6,6 «2.C0=6600»
Radialkraft Fr|N|420 «1.Fr»|310 «2.Fr»
Axialkraft Fa|N|110 «1.Fa»|0 «2.Fa»
Wellensitz-Ø|mm|25 k6 «1.ss=25///k6»|20 k6 «2.ss=20///k6»
Gehäusesitz-Ø|mm|52 H7 «1.hs=52///H7»|47 H7 «2.hs=47///H7»
Temperatur Welle|°C|70 «.Ts»|70 «.Ts»
Temperatur Gehäuse|°C|60 «.Th»|60 «.Th»
Lebensdauer gefordert|h|20.000 «.L=20000»|20.000 «.L=20000»
Drehzahl|min⁻¹|6.000 «.n=6000»|6.000 «.n=6000»
""")
    return page(number, rows, (("links", "rechts"),), write=";", shape="stations as columns", language="de")


def _pm_symbols(number: int) -> Table:
    rows = grid(
        """
Station;Ø seat shaft;± tol;Ø seat housing;± tol;Fillet r max.;Bearing
A «1.st»;10 «1.ss=10/-3/3/»;0.003;26 «1.hs=26/-6.5/6.5/»;0.0065;0.2 «1.sF»;6000 «1.bd»
B «2.st»;10 «2.ss=10/-3/3/»;0.003;26 «2.hs=26/-6.5/6.5/»;0.0065;0.2 «2.sF»;6000 «2.bd»
;;;;;;
(all dimensions in mm);;;;;;
""".replace("|", "/").replace(";", "|")
    )
    return page(number, rows, (("A", "B"),), write="\t", shape="plus-minus beside", language="en")


_MAKERS = (
    _user_parameters, _merkmale, _stations_as_columns, _attribute_dump, _cartouche, _three_heading_rows, _japanese_sheet,
    _chinese_list, _stacked_titles, _side_by_side_titles, _plm_json, _flat_keys_json, _class_and_microns, _inch_sheet,
    _upper_lower_rows, _numbered_instances, _protocol, _key_value_blocks, _merged_over_station, _bill_with_seats,
    _ratings_sheet, _pm_symbols,
)  # fmt: skip
