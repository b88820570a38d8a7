"""The offices that write German."""

from practice_twentythird.office import Office

BLOCKS = Office(
    language="de",
    layout="blocks",
    file="xlsx",
    machines="Servomotor SMB 71,Servomotor SMB 100",
    positions="A,B",
    bearing="ball -2Z/C3;ball -2RS/C3",
    dwg="0.0000.0",
    comma=True,
    choices="grease=Fett;locating=Festlager;floating=Loslager;steel=C45E;stainless steel=1.4301;cast iron=GJL-250;"
    "aluminium=AlMgSi1;continuous=Dauerbetrieb S1;intermittent=Aussetzbetrieb S3",
    sheet="Lagerung",
    page="""
Datenblatt Läuferlagerung
Typ | {m}
Zeichnungs-Nr. | {dwg}
Änderungsstand | {rev}
Höchstdrehzahl | {n} | min⁻¹
Läufermasse | {mass:kg} | kg
Gehäusewerkstoff | {hmat}

[p | Lagerstelle {p} | | | | p]
[p | Lagerbezeichnung | {brg} | | | p]
[p | Lagerfunktion | {role} | | | p]
[p | Schmierung | {lub} | | | p]
@0 [p | Fettfüllung | {grease_fill} | % | | p]
@1 [p | Lagerluft | {clr} | | | p]
[p | Radialkraft | {fr} | N | | p]
[p | Axialkraft | {fa} | N | | p]
[p | Durchmesser Wellensitz | {ss.n} {ss.c} | mm | | p]
[p | Rauheit Ra Wellensitz | {sra} | µm | | p]
[p | Zylindrizität Wellensitz | {scy:um} | µm | | p]
[p | Schulterdurchmesser Welle | {ssh} | mm | | p]
@1 [p | Planlauf Wellenschulter | {ssr:um} | µm | | p]
[p | Kehlradius Welle max. | {sfi} | mm | | p]
[p | Durchmesser Gehäusebohrung | {hs.n} {hs.c} | mm | | p]
[p | Rauheit Ra Gehäusebohrung | {hra} | µm | | p]
[p | Zylindrizität Gehäusebohrung | {hcy:um} | µm | | p]
[p | Schulterdurchmesser Gehäuse | {hsh} | mm | | p]

Bearbeiter: Abt. EK | {day}.01.2026
""",
)
SEATS = Office(
    language="de",
    layout="seat rows",
    file="csv ; cp1252",
    machines="Axiallüfter AL 200,Radiallüfter RL 160",
    positions="AS,BS",
    bearing="ball -2Z;ball -2RZ",
    dwg="LU-0000",
    comma=True,
    page="""
Sitze der Wälzlager
Gerät: | {m} | Zeichnung: | {dwg} | Stand: | {rev}
Drehzahl max.: | {n} | 1/min
Durchmesser in mm, Abmaße, Rauheit, Form und Lauf in µm

> Seite | Teil | Lager | Nennmaß | ISO-Toleranz | oberes Abmaß | unteres Abmaß | Rauheit Ra \
| Zylinderform | Gesamtrundlauf | Schulter-Ø | Planlauf Schulter | Prüfmittel
%p
{p} | Welle | {brg} | {ss.n} | {ss.c} | {ss.u:um} | {ss.l:um} | {sra} | {scy:um} | {sro:um} | {ssh} | {ssr:um} \
| Feinzeiger
{p} | Gehäuse | {brg} | {hs.n} | {hs.c} | {hs.u:um} | {hs.l:um} | {hra} | {hcy:um} | {hro:um} | {hsh} | {hsr:um} \
| Messdorn
%end
AS = Antriebsseite, BS = Gegenseite
""",
)
DUMP = Office(
    language="de",
    layout="long",
    file="txt tab utf-16",
    machines="Schleifspindel HS 60,Schleifspindel HS 90",
    positions="vorn,hinten",
    bearing="angular C/P4;angular AC/P5",
    dwg="HS00000",
    comma=True,
    choices="grease=Lebensdauerfett;spring=Feder",
    page="""
Sachnummer | {dwg}
Benennung | {m}
Status | freigegeben
Exportdatum | {day}.02.2026

> Merkmal | Wert | Einheit | Quelle
Drehzahl, maximal | {n} | 1/min | Pflichtenheft
Vorspannkraft | {prel} | N | Berechnung
@1 Vorspannung durch | {preload_method} | | Berechnung
@0 Auswuchtgüte | G {G} | | Zeichnung
Lagerabstand | {span} | mm | CAD
%p
Lager {p}, Bezeichnung | {brg} | | Stückliste
Lager {p}, Radiallast | {fr} | N | Berechnung
Lager {p}, Axiallast | {fa} | N | Berechnung
Lager {p}, Wellensitz Durchmesser | {ss.n} {ss.c} | mm | CAD
Lager {p}, Wellensitz oberes Abmaß | {ss.u:um} | µm | CAD
Lager {p}, Wellensitz unteres Abmaß | {ss.l:um} | µm | CAD
@1 Lager {p}, Schmierung | {lub} | | Stückliste
Lager {p}, Wellensitz Rauheit Ra | {sra} | µm | CAD
Lager {p}, Wellensitz Zylindrizität | {scy:um} | µm | CAD
Lager {p}, Gehäusesitz Durchmesser | {hs.n} {hs.c} | mm | CAD
Lager {p}, Gehäusesitz oberes Abmaß | {hs.u:um} | µm | CAD
Lager {p}, Gehäusesitz unteres Abmaß | {hs.l:um} | µm | CAD
Lager {p}, Gehäusesitz Rauheit Ra | {hra} | µm | CAD
Lager {p}, Gehäusesitz Zylindrizität | {hcy:um} | µm | CAD
@0 Lager {p}, Wellenschulter Durchmesser | {ssh} | mm | CAD
@0 Lager {p}, Gehäuseschulter Durchmesser | {hsh} | mm | CAD
%end
""",
)
TWO_ROWS = Office(
    language="de",
    layout="two-row headings",
    file="csv ; utf-8-sig",
    machines="Kleingenerator KG 2,Kleingenerator KG 5",
    positions="D,N",
    bearing="ball -2RS;ball -2Z/C3",
    dwg="G-000.000",
    comma=True,
    choices="grease=Fett;horizontal=horizontal;vertical=vertikal;locating=Fest;floating=Los",
    page="""
Lagersitze {m} | | | | Zeichnungsnummer | {dwg} | | Index | {rev}
Nenndrehzahl max. (1/min) | {n} | | Einbaulage | {ori}
@0 geforderte Lebensdauer L10h (h) | {life}
@1 Umgebungstemperatur (°C) | {amb}

> Lager- | Lager | | | | Lagersitz Welle | | | | | Lagersitz Gehäuse
> stelle | Kurzzeichen | Fest/Los | Fr (N) | Fa (N) | Maß (mm) | Abmaße (mm) | Ra (µm) | Zylindrizität (mm) \
| Gesamtrundlauf (mm) | Maß (mm) | Abmaße (mm) | Ra (µm) | Zylindrizität (mm) | Gesamtrundlauf (mm) | gepr.
*{p} | {brg} | {role} | {fr} | {fa} | {ss.n} {ss.c} | {ss.u:mm} / {ss.l:mm} | {sra} | {scy:mm:3} | {sro:mm:3} \
| {hs.n} {hs.c} | {hs.u:mm} / {hs.l:mm} | {hra} | {hcy:mm:3} | {hro:mm:3} | {~Sz;}
""",
)
FEATURES = Office(
    language="de",
    layout="JSON attributes",
    file="json",
    machines="Membrandosierpumpe MD 4,Membrandosierpumpe MD 10",
    positions="Motorseite,Pumpenseite",
    bearing="mini -2RS;ball -2RS",
    dwg="MD-000-00",
    choices="grease=Fettschmierung;steel=42CrMo4;stainless steel=X5CrNi18-10;cast iron=EN-GJL-250;"
    "aluminium=EN AC-AlSi12;locating=Festlager;floating=Loslager",
    named="Merkmal",
    page="""
{"Artikel": "{m}", "Zeichnungsnummer": "{dwg}", "Revision": "{rev}", "Status": "Serie",
 "Merkmale": [
  {"Merkmal": "Maximale Drehzahl", "Wert": "{n}", "Einheit": "1/min"},
  {"Merkmal": "Wellenwerkstoff", "Wert": "{smat}", "Einheit": ""},
  {"Merkmal": "Gehäusewerkstoff", "Wert": "{hmat}", "Einheit": ""}],
 "Lagerstellen": ["*p", {"Lagerstelle": "{p}", "Merkmale": [
  {"Merkmal": "Wälzlager", "Wert": "{brg}", "Einheit": ""},
  {"Merkmal": "Fest-/Loslager", "Wert": "{role}", "Einheit": ""},
  {"Merkmal": "Schmierung", "Wert": "{lub}", "Einheit": ""},
  {"Merkmal": "Grundölviskosität bei 40 °C", "Wert": "{visc}", "Einheit": "mm²/s"},
  {"Merkmal": "Betriebstemperatur", "Wert": "{operating_temperature}", "Einheit": "°C"},
  {"Merkmal": "Radiallast", "Wert": "{fr}", "Einheit": "N"},
  {"Merkmal": "Wellendurchmesser", "Wert": "{ss.n}", "Toleranz": "{ss.c}", "Einheit": "mm"},
  {"Merkmal": "Rauheit Wellensitz Ra", "Wert": "{sra}", "Einheit": "µm"},
  {"Merkmal": "Zylindrizität Wellensitz", "Wert": "{scy}", "Einheit": "mm"},
  {"Merkmal": "Schulterdurchmesser Welle", "Wert": "{ssh}", "Einheit": "mm"},
  {"Merkmal": "Bohrungsdurchmesser Gehäuse", "Wert": "{hs.n}", "Toleranz": "{hs.c}", "Einheit": "mm"},
  {"Merkmal": "Rauheit Gehäusesitz Ra", "Wert": "{hra}", "Einheit": "µm"},
  {"Merkmal": "Zylindrizität Gehäusesitz", "Wert": "{hcy}", "Einheit": "mm"},
  {"Merkmal": "Schulterdurchmesser Gehäuse", "Wert": "{hsh}", "Einheit": "mm"},
  {"Merkmal": "Prüfer", "Wert": "KA", "Einheit": ""}]}]}
""",
)
ODD = (BLOCKS, SEATS)
EVEN = (DUMP, TWO_ROWS, FEATURES)
