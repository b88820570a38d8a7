"""The offices that write German."""

from practice_twentyseventh.paper import Office

#: A design table of the CAD system: one row for each configuration.
DESIGN_TABLE = Office(
    language="de",
    kind="machine rows",
    file="xlsx",
    sheet="Konfigurationen",
    count=3,
    comma=True,
    machines=(
        "Schraubengebläse SG-55: 6306/C3 + NU206",
        "Schraubengebläse SG-75: 6308/C3 + NU208",
        "Schraubengebläse SG-37: 6305/C3 + NU205",
        "Zahnradpumpe ZP-8: 6202-2Z + 6201-2Z",
        "Zahnradpumpe ZP-12: 6203-2Z + 6202-2Z",
        "Zahnradpumpe ZP-20: 6204-2Z + 6203-2Z",
        "Drohnenmotor DR-5: 625 + 624",
        "Drohnenmotor DR-9: 608-2Z + 607-2Z",
        "Drohnenmotor DR-14: 6000-2Z + 609-2Z",
    ),
    positions="A,B",
    drawing="K00.000",
    fits=("h5 k5 k6 m5", "H6 H7 J6 K6"),
    page="""
Tabelle für Konfigurationen, Maße in mm

# Konfiguration | Zeichnungsnr. | Index | n_max [1/min] | Lagerabstand | Lager A | dW_A Nennmaß | dW_A Toleranz |\
Ra Welle A [µm] | dG_A Nennmaß | dG_A Toleranz | Ra Gehäuse A [µm] | Lager B | dW_B Nennmaß | dW_B Toleranz |\
Ra Welle B [µm] | dG_B Nennmaß | dG_B Toleranz | Ra Gehäuse B [µm] | Farbe | Bemerkung
[machines]
{m} | {dwg} | {rev} | {nmax} | {span} | {1.brg} | {1.ss.n} | {1.ss.c} | {1.sra} | {1.hs.n} | {1.hs.c} | {1.hra} |\
{2.brg} | {2.ss.n} | {2.ss.c} | {2.sra} | {2.hs.n} | {2.hs.c} | {2.hra} | RAL {pick 7035/5015} | {pick Serie/Muster}
[end]
""",
)

#: A list of requirements in sections, with minimum demand or wish, as the office keeps it in its word processor.
DEMANDS = Office(
    language="de",
    kind="long",
    file="csv ; cp1252",
    units="column",
    comma=True,
    machines=(
        "Drehspindel DS-45: 71908C/P4 + 6008/C3",
        "Rezirkulationsgebläse HR-6: 6202-2Z/C3",
        "Rührwerksantrieb RA-30: 6212 + 6210",
    ),
    positions="Lagerstelle vorn,Lagerstelle hinten",
    drawing="ANF-000",
    words="grease=Fett;oil bath=Ölbad;steel=42CrMo4;aluminium=AlSi9Cu3;cast iron=EN-GJL-250;"
    "horizontal=waagerecht;vertical=senkrecht;locating=Festlager;floating=Loslager;spring-loaded=federbelastet",
    page="""
Anforderungsliste
Erzeugnis | {m}
Zeichnungs-Nr. | {dwg} | Stand | {rev} | Bearbeiter | {pick Hr. Kern/Fr. Aust} | Datum | {day}.09.2025

# Nr. | Lagerstelle | Bauteil | Anforderung | Wert | Einheit | F/W | Quelle
{#} | | | Höchstdrehzahl | {nmax} | 1/min | F | Lastenheft
{#} | | | Geforderte Lebensdauer | {life} | h | F | Lastenheft
{#} | | | Rotormasse | {mass} | kg | F | CAD
@02 {#} | | | Wellenlage | {axis} | | F | Lastenheft
@1 {#} | | | Werkstoff Welle | {smat} | | W | Konstruktion
@1 {#} | | | Werkstoff Gehäuse | {hmat} | | W | Konstruktion
{#} | | | Umgebungstemperatur | {tamb} | °C | F | Lastenheft
[positions]
{#} | {st} | Lager | Kurzzeichen | {brg} | | F | Katalog
{#} | {st} | Lager | Funktion axial | {role} | | F | Entwurf
{#} | {st} | Lager | Radialkraft Fr | {Fr} | N | F | Berechnung
{#} | {st} | Lager | Schmierung | {lub} | | W | Konstruktion
@0 {#} | {st} | Lager | Nachschmierfrist | {regreasing_interval} | h | W | Wartungsplan
{#} | {st} | Welle | Sitzdurchmesser | {ss.n} {ss.c} ({ss.u} / {ss.l}) | mm | F | DIN EN ISO 286
{#} | {st} | Welle | Zylinderform | {scyl:,4} | mm | F | Konstruktion
{#} | {st} | Welle | Rauheit Ra | {sra} | µm | F | Konstruktion
{#} | {st} | Welle | Schulterdurchmesser | {sda} | mm | F | Katalog
{#} | {st} | Welle | Planlauf der Schulter | {sax:,4} | mm | W | Konstruktion
{#} | {st} | Gehäuse | Bohrungsdurchmesser | {hs.n} {hs.c} ({hs.u} / {hs.l}) | mm | F | DIN EN ISO 286
{#} | {st} | Gehäuse | Zylinderform | {hcyl:,4} | mm | F | Konstruktion
{#} | {st} | Gehäuse | Rauheit Ra | {hra} | µm | F | Konstruktion
{#} | {st} | Gehäuse | Schulterdurchmesser | {hda} | mm | F | Katalog
[end]

F = Forderung, W = Wunsch
""",
)

#: An extraction of the goods system: field names of the data base above the readable ones.
EXTRACTION = Office(
    language="de",
    kind="position rows",
    file="csv ; cp1252",
    comma=True,
    machines=(
        "Turbine TB-18: 7005C/P4 + 6004/C3",
        "Generator GN-90: 6310/C3 + NU210",
        "Spannrolle SR-40: 6204-2RS + 6203-2RS",
    ),
    positions="AS,BS",
    drawing="00000000",
    words="locating=fest;floating=los;spring-loaded=angestellt mit Feder",
    page="""
# ZEINR | ZEIVR | MAKTX | ZZ_LSTELLE | ZZ_AXFKT | ZZ_LAGER | ZZ_LUFT | ZZ_DI | ZZ_DA | ZZ_BR | ZZ_WS_DM |\
ZZ_WS_TK | ZZ_WS_AO | ZZ_WS_AU | ZZ_WS_RA | ZZ_WS_ZYL | ZZ_WS_SCH | ZZ_GB_DM | ZZ_GB_TK | ZZ_GB_AO | ZZ_GB_AU |\
ZZ_GB_RA | ZZ_GB_ZYL | ZZ_GB_SCH | ZZ_DREHZ | BRGEW
# Zeichnungsnummer | Zeichnungsversion | Materialkurztext | Lagerstelle | Axiale Funktion | Lagerbezeichnung |\
Lagerluftklasse | Innendurchmesser [mm] | Außendurchmesser [mm] | Breite [mm] | Wellensitz Durchmesser [mm] |\
Wellensitz Toleranzklasse | Wellensitz oberes Abmaß [µm] | Wellensitz unteres Abmaß [µm] | Wellensitz Ra [µm] |\
Wellensitz Zylindrizität [µm] | Wellenschulter Durchmesser [mm] | Gehäusebohrung Durchmesser [mm] |\
Gehäusebohrung Toleranzklasse | Gehäusebohrung oberes Abmaß [µm] | Gehäusebohrung unteres Abmaß [µm] |\
Gehäusebohrung Ra [µm] | Gehäusebohrung Zylindrizität [µm] | Gehäuseschulter Durchmesser [mm] |\
Max. Drehzahl [1/min] | Bruttogewicht
[positions]
{dwg} | {rev} | {m} | {st} | {role} | {brg} | {clr} | {d} | {D} | {B} | {ss.n:mm,3} | {ss.c} | {ss.u:u} |\
{ss.l:u} | {sra:,1} | {scyl:u,1} | {sda:mm,1} | {hs.n:mm,3} | {hs.c} | {hs.u:u} | {hs.l:u} | {hra:,1} |\
{hcyl:u,1} | {hda:mm,1} | {nmax} | 0,000
[end]
""",
)

#: A spreadsheet with positions across, parts as bold rows, a column of remarks and one of pictures.
ACROSS = Office(
    language="de",
    kind="transposed",
    file="xlsx",
    sheet="Auslegung",
    units="column",
    comma=True,
    machines=(
        "E-Bike-Motor EB-36: 6902-2RS + 6001-2RS",
        "Drehmaschinenspindel DM-60: 71910C/P4 + 6010/C3",
        "Wasserstoffgebläse WG-4: 6201-2Z/C3 + 6200-2Z/C3",
    ),
    positions="Abtriebsseite,Motorseite",
    drawing="L-0000",
    words="grease=Fett;oil bath=Öltauchschmierung;none=keine;spring=Feder",
    page="""
Auslegung Lagersitze | | | {m}
Zeichnung | | | {dwg} | Änderungsindex | {rev}

Drehzahl max. | | 1/min | {nmax}
Nennlebensdauer gefordert | | h | {life}
@01 Auswuchtgüte G | | mm/s | {G}
@1 Vorspannung | | - | {preload_method}
@0 Koaxialität der Gehäusebohrungen | | µm | {coax:u}

# Größe | Zeichen | Einheit | {1.st} | {2.st} | Anmerkung
Wälzlager
Lagertyp | | - | {1.brg} | {2.brg} | Hersteller frei
Bohrung | d | mm | {1.d} | {2.d}
Außendurchmesser | D | mm | {1.D} | {2.D}
Breite | B | mm | {1.B} | {2.B}
Tragzahl dynamisch | C | kN | {1.C:kN} | {2.C:kN} | Katalog
Radiallast | Fr | N | {1.Fr} | {2.Fr} | aus Riemen und Gewicht
Axiallast | Fa | N | {1.Fa} | {2.Fa}
Schmierung | | - | {1.lub} | {2.lub}
Welle
Sitz-Ø Höchstmaß | | mm | {1.ss.max} | {2.ss.max} | geschliffen
Sitz-Ø Mindestmaß | | mm | {1.ss.min} | {2.ss.min}
Zylinderform | | µm | {1.scyl:u} | {2.scyl:u}
Gesamtrundlauf | | µm | {1.srun:u} | {2.srun:u}
Ra | | µm | {1.sra} | {2.sra}
Schulter-Ø | da | mm | {1.sda} | {2.sda}
@02 Ausrundung max. | ra | mm | {1.sfil} | {2.sfil}
Gehäuse
Sitz-Ø Höchstmaß | | mm | {1.hs.max} | {2.hs.max} | gebohrt
Sitz-Ø Mindestmaß | | mm | {1.hs.min} | {2.hs.min}
Zylinderform | | µm | {1.hcyl:u} | {2.hcyl:u}
Gesamtrundlauf | | µm | {1.hrun:u} | {2.hrun:u}
Ra | | µm | {1.hra} | {2.hra}
Schulter-Ø | Da | mm | {1.hda} | {2.hda}
@02 Ausrundung max. | rb | mm | {1.hfil} | {2.hfil}

erstellt {pick Wendt/Okafor} {day}.08.2025
""",
)
ODD = (DESIGN_TABLE, DEMANDS)
EVEN = (EXTRACTION, ACROSS)
