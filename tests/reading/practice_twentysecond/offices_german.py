"""The offices that write German."""

from practice_twentysecond.firm import Firm

BESIDE = Firm(
    language="de",
    layout="blocks per position",
    file="xlsx",
    machines="Kreiselpumpe KP 80-200,Kreiselpumpe KP 100-315",
    positions="A,B;1,2",
    bearing="ball /C3;angular B",
    fits="k5 k6 m5/H6 H7 J6",
    dwg="KP 00.000-0",
    comma=True,
    choices="grease=Fett;oil bath=Ölsumpf;locating=Festlager;floating=Loslager;steel=C45+N;cast iron=EN-GJS-400-15;"
    "aluminium=EN AC-43000;horizontal=waagrecht;vertical=senkrecht",
    more={"sheet": "Lagerung"},
    lines="""
Lagerung der Pumpenwelle | | | | Blatt 1 von 1
Pumpentyp | {mach} | | | Zeichnung | {dwg} | {rev}
Nenndrehzahl | {nop:1/min} | 1/min | | Wellenwerkstoff | {mats}
Drehzahl max. | {nmax:1/min} | 1/min | | Lagerträger | {math}
Soll-Lebensdauer L10h | {life:h} | h | | Bearbeiter | Hn

Lager {1.P} | | | | Lager {2.P}
Bezeichnung | {1.bd} | | | Bezeichnung | {2.bd}
Schmierung | {1.lub} | | | Schmierung | {2.lub}
@0 Funktion | {1.role} | | | Funktion | {2.role}
Radialkraft | {1.Fr:kN} | kN | | Radialkraft | {2.Fr:kN} | kN
Axialkraft | {1.Fa:kN} | kN | | Axialkraft | {2.Fa:kN} | kN
Wellendurchmesser | {1.Sd.n:mm} {1.Sd.c} | mm | | Wellendurchmesser | {2.Sd.n:mm} {2.Sd.c} | mm
Rauheit Welle Ra | {1.Sr:µm} | µm | | Rauheit Welle Ra | {2.Sr:µm} | µm
Zylinderform Welle | {1.Sc:mm:3} | mm | | Zylinderform Welle | {2.Sc:mm:3} | mm
Wellenbund Ø | {1.Sa:mm} | mm | | Wellenbund Ø | {2.Sa:mm} | mm
Planlauf Wellenbund | {1.Sb:mm:3} | mm | | Planlauf Wellenbund | {2.Sb:mm:3} | mm
Gehäusebohrung | {1.Hd.n:mm} {1.Hd.c} | mm | | Gehäusebohrung | {2.Hd.n:mm} {2.Hd.c} | mm
Rauheit Bohrung Ra | {1.Hr:µm} | µm | | Rauheit Bohrung Ra | {2.Hr:µm} | µm
Zylinderform Bohrung | {1.Hc:mm:3} | mm | | Zylinderform Bohrung | {2.Hc:mm:3} | mm
@1 Gehäuseschulter Ø | {1.Ha:mm} | mm | | Gehäuseschulter Ø | {2.Ha:mm} | mm

Stopfbuchspackung und Kupplung: siehe Stückliste
""",
)
TWO_ROWS = Firm(
    language="de",
    layout="two-row headings",
    file="csv ; cp1252",
    machines="Asynchronmotor AM 160,Asynchronmotor AM 180,Asynchronmotor AM 200,Asynchronmotor AM 225",
    positions="AS,BS",
    bearing="ball /C3;ball -2Z/C3",
    fits="k5 k6 j5/H6 J6 H7",
    dwg="5.0000.00",
    comma=True,
    count=2,
    choices="grease=Fett;oil bath=Ölbad",
    lines="""
Lagersitze Baureihe AM, Stand {day}.01.2025
Alle Maße in mm, Abmaße und Rauheiten in µm
^Baugröße | Seite | Lagerschild | | | | | Läuferwelle | | | | | | Wälzlager | | | | Läufer | Anmerkung
^ | | Bohrung | Passung | ES | EI | Ra | Zapfen | Passung | es | ei | Ra | Schulter Ø | Typ | Fr [N] | Fa [N] | \
Schmierung | nmax [1/min] |
[m
p {mach} | {P} | {Hd.n:mm} | {Hd.c} | {Hd.u:µm} | {Hd.l:µm} | {Hr:µm} | {Sd.n:mm} | {Sd.c} | {Sd.u:µm} | {Sd.l:µm} | \
{Sr:µm} | {Sa:mm} | {bd} | {Fr:N} | {Fa:N} | {lub} | {nmax:1/min} | {=;mit Abdrückgewinde}
]
""",
)
FEATURES = Firm(
    language="de",
    layout="row per feature",
    file="csv ; utf-8-sig",
    machines="Spindelgetriebe SG 63,Spindelgetriebe SG 100",
    positions="Antrieb,Abtrieb",
    bearing="ball;roller",
    dwg="SG-00-000",
    comma=True,
    choices="grease=Fett;oil bath=Tauchschmierung",
    lines="""
Prüfmerkmale Lagersitze
Erzeugnis: | {mach} | Zeichnungs-Nr.: | {dwg} | Index: | {rev}
Drehzahl max.: | {nmax:min-1} | min-1 | Lagerabstand: | {span:mm} | mm
@0 Koaxialität der Lagerbohrungen: | {coax:mm:3} | mm

^Merkm.-Nr. | Lagerstelle | Element | Merkmal | Nennmaß / Toleranz | oberes Abmaß | unteres Abmaß | Einheit | Prüfmittel
[p
{#} | {P} | Wälzlager | Kurzbezeichnung | {bd} | | | | Sicht
{#} | {P} | Welle | Durchmesser | {Sd.n:mm} | {Sd.u:mm} | {Sd.l:mm} | mm | Feinzeiger
{#} | {P} | Welle | Zylindrizität | {Sc:mm:3} | | | mm | Formtester
{#} | {P} | Welle | Gesamtrundlauf | {St:mm:3} | | | mm | Formtester
{#} | {P} | Welle | Ra | {Sr:µm} | | | µm | Tastschnitt
{#} | {P} | Welle | Durchmesser Anlagebund | {Sa:mm} | | | mm | Messschieber
{#} | {P} | Welle | Planlauf Anlagebund | {Sb:mm:3} | | | mm | Formtester
{#} | {P} | Gehäuse | Durchmesser | {Hd.n:mm} | {Hd.u:mm} | {Hd.l:mm} | mm | Innenmessgerät
{#} | {P} | Gehäuse | Zylindrizität | {Hc:mm:3} | | | mm | Formtester
{#} | {P} | Gehäuse | Gesamtrundlauf | {Ht:mm:3} | | | mm | Formtester
{#} | {P} | Gehäuse | Ra | {Hr:µm} | | | µm | Tastschnitt
{#} | {P} | Gehäuse | Durchmesser Anlagebund | {Ha:mm} | | | mm | Messschieber
@1 {#} | {P} | Gehäuse | Planlauf Anlagebund | {Hb:mm:3} | | | mm | Formtester
]

Prüfumfang: 5 Teile je Los
""",
    more={"label": "3 4"},
)
PDM = Firm(
    language="de",
    layout="json attributes",
    file="json",
    machines="Drehkolbengebläse DK 50,Drehkolbengebläse DK 80",
    positions="LS1,LS2",
    bearing="ball /C3;ball",
    dwg="DK-0000-00",
    choices="grease=Fett;oil bath=Ölbad;steel=C45E;cast iron=EN-GJL-200;aluminium=EN AW-6082;horizontal=horizontal;"
    "vertical=vertikal",
    more={"name": "bez", "units": "attribute"},
    lines="",
    tree={
        "zeichnung": "{dwg}",
        "index": "{rev}",
        "benennung": "{mach}",
        "freigabe": "2025-04-{day}",
        "merkmale": [
            {"bez": "Maximaldrehzahl", "einheit": "min-1", "wert": "{nmax:min-1}"},
            {"bez": "Rotorgewicht", "einheit": "kg", "wert": "{mass:kg}"},
            {"bez": "Umgebungstemperatur", "einheit": "°C", "wert": "{tamb:°C}"},
            {"bez": "Temperatur", "einheit": "°C", "wert": "{?top+thou:°C}"},
            {"bez": "Werkstoff Welle", "einheit": "", "wert": "{mats}"},
            {"bez": "Farbe", "einheit": "", "wert": "RAL 7016"},
        ],
        "lagerstellen": [
            "@p",
            {
                "stelle": "{P}",
                "merkmale": [
                    {"bez": "Lagertyp", "einheit": "", "wert": "{bd}"},
                    {"bez": "Radiallast", "einheit": "N", "wert": "{Fr:N}"},
                    {"bez": "Axiallast", "einheit": "N", "wert": "{Fa:N}"},
                    {"bez": "Schmierung", "einheit": "", "wert": "{lub}"},
                    {"bez": "Wellensitz Durchmesser", "einheit": "mm", "wert": "{Sd.n:mm} {Sd.c}"},
                    {"bez": "Wellensitz Rauheit Ra", "einheit": "µm", "wert": "{Sr:µm}"},
                    {"bez": "Wellensitz Zylindrizität", "einheit": "µm", "wert": "{Sc:µm}"},
                    {"bez": "Wellenschulter Durchmesser", "einheit": "mm", "wert": "{Sa:mm}"},
                    {"@": "1", "bez": "Wellenschulter Planlauf", "einheit": "µm", "wert": "{Sb:µm}"},
                    {"bez": "Gehäusesitz Durchmesser", "einheit": "mm", "wert": "{Hd.n:mm} {Hd.c}"},
                    {"bez": "Gehäusesitz Rauheit Ra", "einheit": "µm", "wert": "{Hr:µm}"},
                    {"bez": "Gehäusesitz Zylindrizität", "einheit": "µm", "wert": "{Hc:µm}"},
                    {"bez": "Gehäuseschulter Durchmesser", "einheit": "mm", "wert": "{Ha:mm}"},
                ],
            },
        ],
    },
)
ACROSS = Firm(
    language="de",
    layout="transposed",
    file="xlsx",
    machines="Radialventilator RV 400,Radialventilator RV 630",
    positions="Laufradseite,Kupplungsseite",
    bearing="ball /C3;roller /C3",
    dwg="RV-00000",
    comma=True,
    choices="grease=Fett;oil bath=Ölbad;locating=fest;floating=los;horizontal=horizontal;vertical=vertikal",
    more={"sheet": "Lagerdaten", "label": "1"},
    lines="""
Ventilator | {mach}
Zeichnungsnummer / Änderungsstand | {dwg} | {rev}
Betriebsdrehzahl [1/min] | {nop:1/min}
max. zul. Drehzahl [1/min] | {nmax:1/min}
@0 1. biegekritische Drehzahl [1/min] | {ncrit:1/min}
Masse Läufer [kg] | {mass:kg}
Auswuchtgütestufe | G {G}
@1 Einbaulage Welle | {ori}

^ | *{P} | Einheit | Quelle
Lager
Lagerbezeichnung | *{bd} | | Katalog
Lagerfunktion | *{role} | |
Schmierung | *{lub} | |
Grundölviskosität bei 40 °C | *{visc:mm²/s} | mm²/s | Datenblatt
Äußere Radialkraft | *{Fr:N} | N | Berechnung
Äußere Axialkraft | *{Fa:N} | N | Berechnung
Welle
Sitzdurchmesser Grenzmaße | *{Sd.min:mm} - {Sd.max:mm} | mm |
Ra Sitz | *{Sr:µm} | µm |
Zylindrizität Sitz | *{Sc:µm} | µm |
Schulterdurchmesser | *{Sa:mm} | mm | Katalog
Gehäuse
Sitzdurchmesser Grenzmaße | *{Hd.min:mm} - {Hd.max:mm} | mm |
Ra Sitz | *{Hr:µm} | µm |
Zylindrizität Sitz | *{Hc:µm} | µm |
Schulterdurchmesser | *{Ha:mm} | mm | Katalog
""",
)
ODD = (BESIDE, TWO_ROWS)
EVEN = (FEATURES, PDM, ACROSS)
