# ruff: noqa: E501  (a line of a form is a line of a table)
"""The offices that write German."""

from practice_twentieth.office import Export, Office, style

WORDS = """steel=Vergütungsstahl;cast iron=Grauguss;aluminium=Aluminium;horizontal=waagrecht;vertical=senkrecht;
continuous=Dauerbetrieb;intermittent=Aussetzbetrieb;grease=Fett;locating=Festlager;floating=Loslager;inner=Innenring;
deep groove ball=Rillenkugellager;angular contact ball=Schrägkugellager;cylindrical roller=Zylinderrollenlager;
open=offen;shield=Deckscheiben;contact seal=Dichtscheiben;polyamide=Polyamid;pressed steel=Stahlblech;
machined brass=Messing massiv;spring=Feder"""
#: Spindles: deviations in µm.
SPINDLES = Office(
    "de", 0, "Innenschleifspindel IS 42|Frässpindel FS 63|Bohrspindel BS 30|Wuchtspindel WS 12",
    "7006 C|7007 C|7205 AC|7206 AC", style(WORDS, comma=True), (
        Export("row per position", "csv ; cp1252", "vorne,hinten", """
Lagersitze Spindel - Zusammenstellung
Spindel;{name};;Zeichnung;{dwg};;Änd.;{rev}
Drehzahl max. [1/min];{nmax};;Lagerabstand [mm];{span};;Vorspannkraft Feder [N];{pf}

# Lagerstelle;Lager;Druckwinkel [°];Genauigkeitsklasse;Welle Ø [mm];ob. Abmaß Welle [µm];unt. Abmaß Welle [µm];Zylindrizität Welle [µm];Ra Welle [µm];Planlauf Wellenschulter [µm];Gehäuse Ø [mm];ob. Abmaß Gehäuse [µm];unt. Abmaß Gehäuse [µm];Zylindrizität Gehäuse [µm];Ra Gehäuse [µm];Planlauf Gehäuseschulter [µm];geprüft
%pos
{pos};{des};{alpha};{prec};{s.N};{s.U:um};{s.L:um};{s.cyl:um};{s.ra};{s.shr:um};{h.N};{h.U:um};{h.L:um};{h.cyl:um};{h.ra};{h.shr:um};Bm
%end

Abmaße gelten bei 20 °C
""".replace(";", "|"), also="preload_method"),
        Export("blocks", "xlsx", "vorn,hinten", """
Datenblatt Spindellagerung
Spindel|{name}
Zeichnung|{dwg}
Drehzahl max.|{nmax}|1/min
Wuchtgüte|G {bal}
Lagerabstand|{span}|mm

%pos
Lager {pos}
Kurzzeichen|{des}
Druckwinkel|{alpha}|°
Radialkraft|{Fr}|N
Axialkraft|{Fa}|N
Wellensitz Nennmaß|{s.N}|mm
Wellensitz oberes Abmaß|{s.U:um}|µm
Wellensitz unteres Abmaß|{s.L:um}|µm
Wellensitz Rauheit Ra|{s.ra}|µm
Wellenschulter Durchmesser|{s.sh}|mm
Gehäusesitz Nennmaß|{h.N}|mm
Gehäusesitz oberes Abmaß|{h.U:um}|µm
Gehäusesitz unteres Abmaß|{h.L:um}|µm
Gehäusesitz Rauheit Ra|{h.ra}|µm
Gehäuseschulter Durchmesser|{h.sh}|mm

%end
"""),
        Export("transposed", "csv ; utf-8-sig", "A,B", """
Spindel;;<m{name};m>
Zeichnung;;<m{dwg};m>
Drehzahl max.;1/min;<m{nmax};m>
# Lagerstelle;Einheit;<m<p{pos}p>m>
Lagerbezeichnung;;<m<p{des}p>m>
Radiallast;N;<m<p{Fr}p>m>
Wellensitz;mm;<m<p{s.N} {s.U:um}/{s.L:um} µmp>m>
Wellensitz Ra;µm;<m<p{s.ra}p>m>
Wellensitz Zylindrizität;µm;<m<p{s.cyl:um}p>m>
Wellenschulter-Ø;mm;<m<p{s.sh}p>m>
Gehäusebohrung;mm;<m<p{h.N} {h.U:um}/{h.L:um} µmp>m>
Gehäusebohrung Ra;µm;<m<p{h.ra}p>m>
Gehäusebohrung Zylindrizität;µm;<m<p{h.cyl:um}p>m>
Gehäuseschulter-Ø;mm;<m<p{h.sh}p>m>
""".replace(";", "|"), 2),
    ),
)  # fmt: skip
#: Fans and blowers of one works.
BLOWERS = Office(
    "de", 1, "Drehkolbengebläse DG 80|Seitenkanalverdichter SV 40|Radiallüfter RL 315|Absaugventilator AV 22",
    "6304-2Z|6305-2Z|6306-2Z/C3|6205-2Z", style(WORDS, comma=True, group="."), (
        Export("row per seat", "xlsx", "AS,BS", """
Passungsliste Lagerung||||Stand 03/2025
Maschine|{name}
Zeichnungs-Nr.|{dwg}
Höchstdrehzahl in 1/min|{nmax}

# Seite|Lager|Bauteil|Maß|Toleranz|Höchstmaß|Mindestmaß|Ra|Zylindrizität|Rundlauf gesamt|Schulter Ø|Radius max.|Bemerkung
# |||mm|ISO 286|mm|mm|µm|mm|mm|mm|mm|
%pos
{pos}|{des}|Welle|{s.N}|{s.C}|{s.X}|{s.M}|{s.ra}|{s.cyl}|{s.run}|{s.sh}|{s.fil}|geschliffen
^^|^^|Gehäuse|{h.N}|{h.C}|{h.X}|{h.M}|{h.ra}|{h.cyl}|{h.run}|{h.sh}|{h.fil}|
%end
"""),
        Export("row per machine", "csv ; utf-8", "Antriebsseite,Lüfterseite", """
# Typ;Zeichnungs-Nr.;Drehzahl max. [1/min];Läufermasse [kg];<p{pos};;;;;p>;Preisgruppe
# ;;;;<pLager;Wellenpassung;Wellen-Ø [mm];Bohrungspassung;Bohrungs-Ø [mm];Radiallast [kN]p>;
%machine
{name};{dwg};{nmax};{mass};<p{des};{s.C};{s.N};{h.C};{h.N};{Fr:kN}p>;C
%end
""".replace(";", "|"), 3),
        Export("row per position", "csv ; cp1252", "AS,BS", """
Maschine: {name}
Zeichnung: {dwg}, Index {rev}
Höchstdrehzahl: {nmax} 1/min
Lebensdauer L10h soll: {life} h

# Seite;Lager;Lagerluft;Lagerung;Fr in N;Passung Welle;Passung Gehäuse;Ra Wellensitz in µm;Ra Gehäusesitz in µm;Zylinderform Wellensitz in mm;Zylinderform Gehäusesitz in mm;Schulter-Ø Welle in mm;Schulter-Ø Gehäuse in mm;Nachschmierfrist in h;Lief.-Nr.
%pos
{pos};{des};{clr};{role};{Fr};{s.N} {s.C};{h.N} {h.C};{s.ra};{h.ra};{s.cyl};{h.cyl};{s.sh};{h.sh};{regr};70044
%end
""".replace(";", "|")),
    ),
)  # fmt: skip
#: Parameters of a model, and their export as JSON.
CAD = Office(
    "de", 0, "Rührwerk RW 9|Hubwerk HW 5|Förderschnecke FS 20", "6206-2RSR|6207-2RSR|6208-2RSR|6306-2RSR",
    style(WORDS, comma=True), (
        Export("model", "csv ; utf-8", "A,B", """
# Parametername;Wert;Einheit;Beschreibung
Maschine;{name};;Benennung der Maschine
Zeichnungsnummer;{dwg};;
n_max;{nmax};1/min;höchste Drehzahl
L10h_soll;{life};h;geforderte Lebensdauer
%pos
Lager_{pos}_Typ;{des};;Lagerbezeichnung Lager {pos}
Lager_{pos}_Fr;{Fr};N;Radialkraft Lager {pos}
Lager_{pos}_Fa;{Fa};N;Axialkraft Lager {pos}
Welle_{pos}_d;{s.N};mm;Durchmesser Wellensitz Lager {pos}
Welle_{pos}_Tol;{s.C};;Toleranzklasse Wellensitz Lager {pos}
Welle_{pos}_Ra;{s.ra};µm;Rauheit Ra Wellensitz Lager {pos}
Welle_{pos}_Zyl;{s.cyl};mm;Zylindrizität Wellensitz Lager {pos}
Welle_{pos}_Schulter;{s.sh};mm;Durchmesser Wellenschulter Lager {pos}
Gehaeuse_{pos}_D;{h.N};mm;Durchmesser Gehäusesitz Lager {pos}
Gehaeuse_{pos}_Tol;{h.C};;Toleranzklasse Gehäusesitz Lager {pos}
Gehaeuse_{pos}_Ra;{h.ra};µm;Rauheit Ra Gehäusesitz Lager {pos}
Gehaeuse_{pos}_Zyl;{h.cyl};mm;Zylindrizität Gehäusesitz Lager {pos}
Gehaeuse_{pos}_Schulter;{h.sh};mm;Durchmesser Gehäuseschulter Lager {pos}
%end
""".replace(";", "|")),
        Export("nested", "json", "Festlagerseite,Loslagerseite", {
            "Maschine": "{name}",
            "Zeichnungsnummer": "{dwg}",
            "Revision": "{rev}",
            "Betriebsdaten": {
                "Drehzahl_max_1_min": "{nmax}", "Umgebungstemperatur_C": "{tamb}", "Lebensdauer_L10h_gefordert_h": "{life}",
            },
            "Lagerstellen": ["%pos", {
                "Lagerstelle": "{pos}",
                "Lager": {"Bezeichnung": "{des}", "Radiallast_N": "{Fr}", "Axiallast_N": "{Fa}"},
                "Wellensitz": {
                    "Nennmass_mm": "{s.N}", "Toleranzklasse": "{s.C}", "Ra_um": "{s.ra}",
                    "Zylindrizitaet_mm": "{s.cyl}", "Schulterdurchmesser_mm": "{s.sh}",
                },
                "Gehaeusesitz": {
                    "Nennmass_mm": "{h.N}", "Toleranzklasse": "{h.C}", "Ra_um": "{h.ra}",
                    "Zylindrizitaet_mm": "{h.cyl}", "Schulterdurchmesser_mm": "{h.sh}",
                },
                "Pruefer": "Lz",
            }],
        }, also="axial_role"),
    ),
)  # fmt: skip
#: A maker of electrical machines: parts lists and attributes.
ELECTRIC = Office(
    "de", 1, "Synchronmotor SY 112|Generator GE 20|Getriebemotor GT 63", "6206-2Z|6207-2Z|6208-2Z/C3|6308-2Z",
    style(WORDS + ";bearing steel=Wälzlagerstahl;steel=C45E;cast iron=EN-GJL-200;aluminium=EN AC-46000", comma=True), (
        Export("parts list", "xlsx", "D-Seite,N-Seite", """
Stückliste Läufer komplett|||Typ|{name}||Zeichn.-Nr.|{dwg}
||||||Erstellt|12.03.2025 Hu

# Pos|Menge|Benennung|Einbauort|Norm / Bezeichnung|Durchmesser mm|Passung|Ra µm|Zylindrizität mm|Planlauf Schulter mm|Schulter Ø mm|Radiallast N|Werkstoff|Gewicht kg
%pos
1|1|Rillenkugellager|{pos}|{des}|||||||{Fr}|{rmat}|0,2
2|1|Wellensitz|{pos}||{s.N}|{s.C}|{s.ra}|{s.cyl}|{s.shr}|{s.sh}||{smat}|
3|1|Lagerschildbohrung|{pos}||{h.N}|{h.C}|{h.ra}|{h.cyl}|{h.shr}|{h.sh}||{hmat}|
%end
9|1|Passfeder||DIN 6885 A8x7x40||||||||C45+C|0,02
"""),
        Export("long", "csv ; utf-16", "DS,NS", """
# Objekt;Bereich;Merkmal;Sollwert;Einheit;Status
%machine
{name};Allgemein;Zeichnungsnummer;{dwg};;frei
{name};Allgemein;Maximaldrehzahl;{nmax};min-1;frei
%pos
{name};Lager {pos};Lagerbezeichnung;{des};;frei
{name};Lager {pos};Radiale Lagerlast;{Fr};N;frei
{name};Lager {pos};Wellensitz Durchmesser;{s.N} {s.C};mm;frei
{name};Lager {pos};Wellensitz Ra;{s.ra};µm;frei
{name};Lager {pos};Wellensitz Gesamtrundlauf;{s.run};mm;frei
{name};Lager {pos};Gehäusesitz Durchmesser;{h.N} {h.C};mm;frei
{name};Lager {pos};Gehäusesitz Ra;{h.ra};µm;in Arbeit
{name};Lager {pos};Gehäusesitz Gesamtrundlauf;{h.run};mm;frei
%end
%end
""".replace(";", "|"), 2),
    ),
)  # fmt: skip
#: Inspection of features.
FEATURES = Office(
    "de", 0, "Vakuumpumpe VP 16|Zentrifuge Z 400|Dosierpumpe DP 6", "6004-2Z|6005-2Z|6204-2Z|6205-2Z",
    style(WORDS, comma=True), (
        Export("row per feature", "csv ; cp1252", "1,2", """
Merkmalsliste zu Zeichnung;{dwg};;Erzeugnis;{name}

# Lfd. Nr.;Lagerstelle;Merkmal;Nennmaß;Einheit;OT;UT;Kurzz. ISO;Prüfmittel
%pos
1;Lager {pos};Wellensitz Durchmesser;{s.N};mm;{s.U};{s.L};{s.C};Mikrometer
2;Lager {pos};Wellensitz Zylindrizität;{s.cyl};mm;;;;Formmessgerät
3;Lager {pos};Wellensitz Rauheit Ra;{s.ra};µm;;;;Tastschnitt
4;Lager {pos};Wellenschulter Durchmesser;{s.sh};mm;;;;Messschieber
5;Lager {pos};Wellenschulter Planlauf;{s.shr};mm;;;;Messuhr
6;Lager {pos};Wellensitz Gesamtrundlauf;{s.run};mm;;;;Messuhr
7;Lager {pos};Gehäusesitz Durchmesser;{h.N};mm;{h.U};{h.L};{h.C};Innenmessgerät
8;Lager {pos};Gehäusesitz Zylindrizität;{h.cyl};mm;;;;Formmessgerät
9;Lager {pos};Gehäusesitz Rauheit Ra;{h.ra};µm;;;;Tastschnitt
10;Lager {pos};Gehäuseschulter Durchmesser;{h.sh};mm;;;;Messschieber
11;Lager {pos};Gehäuseschulter Planlauf;{h.shr};mm;;;;Messuhr
12;Lager {pos};Gehäusesitz Gesamtrundlauf;{h.run};mm;;;;Messuhr
%end
""".replace(";", "|")),
        Export("row per position", "xlsx", "links,rechts", """
Erzeugnis|{name}||Drehzahl max. 1/min|{nmax}
Zeichnung|{dwg}||Temperatur °C|{?temp}

# Lagerstelle|Kurzzeichen|d x D x B mm|Welle mm|Gehäuse mm|Rauheit Ra µm|<<|Zylindrizität mm|<<|Schulterdurchmesser mm|<<|Freistich Welle DIN 509
# ^^|^^|^^|^^|^^|Welle|Gehäuse|Welle|Gehäuse|Welle|Gehäuse|^^
%pos
{pos}|{des}|{d} x {D} x {B}|{s.N} {s.U}/{s.L}|{h.N} {h.U}/{h.L}|{s.ra}|{h.ra}|{s.cyl}|{h.cyl}|{s.sh}|{h.sh}|Form {s.uf}
%end
"""),
    ),
)  # fmt: skip
