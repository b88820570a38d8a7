# ruff: noqa: E501 - a line of a picture is a line of the table
"""Offices that write German."""

from practice_twentyfirst.marks import Office

BLOCKS = Office(
    language="de", layout="blocks per position", file="csv ; cp1252", comma=True, positions="A-Seite,B-Seite",
    machines="Siebtrommelantrieb STA 4,Seitenkanalverdichter SKV 12", bearing="ball -2RSR;ball -2Z-C3", number="4.000.000",
    choices="grease=Fett;steel=42CrMo4;cast iron=EN-GJL-250;aluminium=AlSi9Cu3;horizontal=waagerecht;vertical=senkrecht;locating=Festlager;floating=Loslager",
    fits="k5 m5 k6 j5/H6 H7 K6 J6",
    picture="""
Auslegungsblatt Wälzlagerung
Baugruppe | {ma}
Zeichnungs-Nr. | {dn} | Änderungsstand | {rv}
Bearbeiter | Kuhn | Datum | {day}.02.2025
Drehzahl max. | {nx} | 1/min
Lebensdauer L10h gefordert | {li} | h
Wellenlage | {or}
Werkstoff Welle | {ms}
Werkstoff Gehäuse | {mh}
%each

Lagerstelle {st}
Lagerbezeichnung | {bd}
Lagerart | {ax}
Dyn. Tragzahl C | {C~kN} | kN
Radialkraft | {fr} | N
Axialkraft | {fa} | N
Schmierung | {lu}
Wellensitz Ø | {sd=n c (u/l)} | mm
Wellensitz Rauheit Ra | {sa} | µm
Wellensitz Zylindrizität | {sc} | mm
Wellensitz Gesamtrundlauf | {sr} | mm
Wellenschulter Ø | {ss} | mm
@0 Hohlkehlradius Welle max. | {sf} | mm
Gehäusesitz Ø | {hd=n c (u/l)} | mm
Gehäusesitz Rauheit Ra | {ha} | µm
Gehäusesitz Zylindrizität | {hc} | mm
Gehäuseschulter Ø | {hs} | mm
%end

Allgemeintoleranzen ISO 2768-mK
""",
)  # fmt: skip
PROGRAM = Office(
    language="de", layout="row per machine, two-row headings", file="xlsx", sheet="Baureihe", comma=True, count=3,
    machines="Kreiselpumpe KP 25,Kreiselpumpe KP 32,Kreiselpumpe KP 40,Gebläse GB 5,Gebläse GB 7,Gebläse GB 9",
    positions="A,B", bearing="ball;ball -2Z", number="000-000",
    fits="k5 k6 m5/H7 J7 K7", choices="steel=C45;cast iron=GJL-200;aluminium=AlSi10Mg;grease=Fett",
    picture="""
Baureihenübersicht Lagersitze | | | Maße in mm, Rauheit Ra in µm

^. | . | . | . | <<Lager {st} | | | | | | | >> | .
^Typ | Zeichnung | n max [min-1] | Masse Rotor [kg] | <<Typ Wälzlager | Welle Ø | Passung Welle | Ra Welle | Bohrung Ø | Passung Gehäuse | Ra Gehäuse | Schulter Welle Ø>> | Bemerkung
%machines
{ma} | {dn} | {nx} | {rm} | <<{bd} | {sd=n} | {sd=c} | {sa} | {hd=n} | {hd=c} | {ha} | {ss}>> | {pick=Serie;Nullserie;}
%end

Stand {day}.01.2025, gepr. Lenz
""",
)  # fmt: skip
BOM = Office(
    language="de", layout="parts list with seats", file="xlsx", sheet="Stückliste", comma=True,
    machines="Trennschleifspindel TSP 80,Umluftgebläse UG 315", positions="Festlager,Loslager", bearing="angular C-P4;ball -2Z",
    number="SP-0000.00", choices="grease=Fett;steel=16MnCr5", fits="h5 js5 k5/H6 JS6 K6",
    picture="""
Stückliste mit Lagersitzen | | | {ma} | | Zg.-Nr. | {dn} | Index | {rv}
Max. Drehzahl in 1/min | {nx}

^Pos. | Menge | Benennung | Lagerstelle | Sachnummer / Typ | Sitz-Ø [mm] | ISO-Toleranz | ob. Abmaß [µm] | unt. Abmaß [µm] | Ra [µm] | Zylinderform [µm] | Rundlauf gesamt [µm] | Werkstoff | Gewicht [kg] | Lieferant
{#} | 1 | Welle, kpl. | | {num=100.000} | | | | | | | | {ms} | {pick=1,25;2,4;3,1} | eigen
%each
{#} | 1 | Wälzlager | {st} | {bd} | | | | | | | | | {pick=0,11;0,08;0,2} | Handel
{#} | | Lagersitz Welle | {st} | | {sd~mm/µm=n} | {sd~mm/µm=c} | {sd~mm/µm=u} | {sd~mm/µm=l} | {sa} | {sc~µm} | {sr~µm} | | |
{#} | | Lagersitz Gehäuse | {st} | | {hd~mm/µm=n} | {hd~mm/µm=c} | {hd~mm/µm=u} | {hd~mm/µm=l} | {ha} | {hc~µm} | {hr~µm} | | |
%end
{#} | 2 | Wellendichtring | | {num=100.000} | | | | | | | | NBR | 0,02 | Handel
{#} | 1 | Nutmutter | | {num=100.000} | | | | | | | | 8 | 0,05 | Handel
""",
)  # fmt: skip
DATABASE = Office(
    language="de", layout="JSON nested", file="json", machines="Prüfstandspindel PX-3,Rührwerksantrieb RWA-11",
    positions="vorn,hinten", bearing="angular C/P5;ball -2Z C3", number="PX.0000", fits="h5 js5 k5 m5/H6 JS6 K6 M6",
    choices="grease=Fettschmierung;steel=Stahl;cast iron=Grauguss;aluminium=Aluminium",
    picture="""
{
"Kopf": {"System": "PDM-Auszug", "erstellt_am": "2025-05-{day}", "Ersteller": "wk"},
"Einheiten": {"Länge": "mm", "Abmaß": "µm", "Rauheit": "µm", "Kraft": "N", "Drehzahl": "1/min"},
"Baugruppe": {
 "Benennung": "{ma}", "Zeichnungsnummer": "{dn}", "Revision": "{rv}",
 "Höchstdrehzahl": "={nx}", "Betriebsdrehzahl": "={no}", "Lagerabstand": "={sp}", "Solllebensdauer_h": "={li}",
 "Wellenwerkstoff": "{ms}", "Gehäusewerkstoff": "{mh}"
},
"Lagerungen": [
%each
 {"Lagerstelle": "{st}",
  "Wälzlager": {"Kurzzeichen": "{bd}", "Bohrung": "={d}", "Außendurchmesser": "={D}", "Breite": "={B}", "Schmierung": "{lu}", "Viskosität_Grundöl_40C_mm2_s": "={v4}", "Radiallast": "={fr}", "Axiallast": "={fa}"},
  "Welle": {"Sitzdurchmesser": "={sd~mm/µm=n}", "Toleranzfeld": "{sd~mm/µm=c}", "oberes_Abmaß": "={sd~mm/µm=u}", "unteres_Abmaß": "={sd~mm/µm=l}", "Ra": "={sa}", "Anlagedurchmesser": "={ss}"},
  "Gehäuse": {"Sitzdurchmesser": "={hd~mm/µm=n}", "Toleranzfeld": "{hd~mm/µm=c}", "oberes_Abmaß": "={hd~mm/µm=u}", "unteres_Abmaß": "={hd~mm/µm=l}", "Ra": "={ha}", "Anlagedurchmesser": "={hs}"}
 },
%end
]
}
""",
)  # fmt: skip
FEATURES = Office(
    language="de", layout="row per feature", file="csv ; utf-8-sig", comma=True, machines="Axialventilator AV 630,Poliermotor PM 2",
    positions="1,2", bearing="ball;small -2Z", number="AV-00-000", fits="", left=True,
    picture="""
Prüfmerkmale Lagersitze
Teil: | {ma} | Zeichnung: | {dn} | Rev.: | {rv}

^Merkmal-Nr. | Lagerstelle | Merkmal | Sollwert | Toleranzklasse | Größtmaß | Kleinstmaß | Einheit | Prüfmittel
%each
{#=00} | Lager {st} | Durchmesser Wellensitz | {sd=n} | {sd=c} | {sd=M} | {sd=m} | mm | Feinzeiger
{#=00} | Lager {st} | Zylindrizität Wellensitz | {sc~µm} | | | | µm | Formtester
{#=00} | Lager {st} | Gesamtrundlauf Wellensitz | {sr~µm} | | | | µm | Formtester
{#=00} | Lager {st} | Rauheit Ra Wellensitz | {sa} | | | | µm | Tastschnitt
{#=00} | Lager {st} | Planlauf Wellenschulter | {sw~µm} | | | | µm | Formtester
{#=00} | Lager {st} | Durchmesser Wellenschulter | {ss} | | | | mm | Messschieber
{#=00} | Lager {st} | Durchmesser Gehäusebohrung | {hd=n} | {hd=c} | {hd=M} | {hd=m} | mm | Innenmessgerät
{#=00} | Lager {st} | Zylindrizität Gehäusebohrung | {hc~µm} | | | | µm | Formtester
{#=00} | Lager {st} | Rauheit Ra Gehäusebohrung | {ha} | | | | µm | Tastschnitt
{#=00} | Lager {st} | Planlauf Gehäuseschulter | {hw~µm} | | | | µm | Formtester
{#=00} | Lager {st} | Durchmesser Gehäuseschulter | {hs} | | | | mm | Messschieber
%end
""",
)  # fmt: skip
ODD = (BLOCKS, PROGRAM)
EVEN = (BOM, DATABASE, FEATURES)
