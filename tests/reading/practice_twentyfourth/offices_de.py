"""The offices that write German: gearbox and motor builders, a blower works, a spindle workshop."""

from practice_twentyfourth.office import Office

GROUPS = Office(
    language="de",
    layout="position rows, two-row headings",
    file="xlsx",
    machines="Radialventilator RV 450,Prüfstandsmotor PM 18",
    positions="AS,BS",
    bearings="6306-2Z/C3+6205-2Z/C3;6207-2RS1+6207-2RS1",
    dwg="0.000.000",
    comma=True,
    sheet="Passungen",
    choices="grease=Fett;oil bath=Ölbad;steel=42CrMo4;stainless steel=1.4021;cast iron=EN-GJL-250;"
    "housing_material.steel=S355;aluminium=AlSi10Mg;locating=Festlager;floating=Loslager;horizontal=waagerecht;"
    "vertical=senkrecht",
    template="""
Passungstabelle Wälzlagersitze | < | < | < | <
Erzeugnis | {machine} | | Zeichnungsnr. | {dwg} | | Änderungsstand | {rev}
Höchstdrehzahl [1/min] | {nmax} | | Läufermasse [kg] | {mass} | | Wuchtgüte | G{G}
Werkstoff Welle | {smat} | | Werkstoff Gehäuse | {hmat} | | Einbaulage der Welle | {ori}

# Lagerstelle | Wälzlager | < | < | < | < | Wellensitz | < | < | < | < | < | < | Gehäusesitz | < | < | < | < | < | < \
| Bemerkung
# ^ | Kurzzeichen | Funktion | Schmierung | Fr [N] | Fa [N] \
| Nennmaß [mm] | Toleranzfeld | ob. Abmaß [µm] | unt. Abmaß [µm] \
| Ra [µm] | Zylinderform [µm] | Schulter-Ø [mm] | Nennmaß [mm] | Toleranzfeld | ob. Abmaß [µm] | unt. Abmaß [µm] \
| Ra [µm] | Zylinderform [µm] | Schulter-Ø [mm] | ^
p> {p} | {bd} | {role} | {lub} | {fr} | {fa} | {sd.n} | {sd.c} | {sd.u:µm} | {sd.l:µm} | {sra} | {scy:µm} | {ssh} \
| {hd.n} | {hd.c} | {hd.u:µm} | {hd.l:µm} | {hra} | {hcy:µm} | {hsh} | {;;geschliffen}
--

Erstellt: Kn | {day}.03.2025 | Geprüft: Wb
""",
)
CHARACTERISTICS = Office(
    language="de",
    layout="long list",
    file="csv ; cp1252",
    machines="Schleifspindel SSP 80,Frässpindel FSP 24",
    positions="vorn,hinten",
    bearings="7008 C/P4+7006 C/P4;71907 C/P4+71906 C/P4",
    fits="js5 h5 k5/JS6 H6 K6",
    dwg="SP00.0000",
    comma=True,
    choices="grease=Fettschmierung;oil bath=Ölbadschmierung;spring=Federanstellung;none=ohne",
    template="""
Merkmalliste Spindellagerung
Benennung |  | {machine}
Zeichnung |  | {dwg}
# Lfd. Nr. | Lagerung | Merkmal | Soll | Toleranz | Einheit | Prüfmittel
{#} | gesamt | Drehzahl max. | {nmax} |  | 1/min |
{#} | gesamt | Lagerabstand | {span} |  | mm |
{#} | gesamt | Masse des Läufers | {mass} |  | kg | Waage
{#} | gesamt | Vorspannkraft | {pf} |  | N |
@1 {#} | gesamt | Koaxialität der Bohrungen | {cob} |  | mm | Messmaschine
for p:
{#} | {p} | Lagerbezeichnung | {bd} |  |  |
{#} | {p} | Schmierung | {lub} |  |  |
{#} | {p} | Radialkraft | {fr} |  | N |
{#} | {p} | Axialkraft | {fa} |  | N |
{#} | {p} | Durchmesser Lagersitz Welle | {sd.n} | {sd.c} ({sd.u}/{sd.l}) | mm | Feinzeiger
{#} | {p} | Rauheit Ra Lagersitz Welle | {sra} |  | µm | Tastschnitt
{#} | {p} | Zylindrizität Lagersitz Welle | {scy} |  | mm | Formtester
{#} | {p} | Planlauf Wellenschulter | {ssr} |  | mm | Messuhr
{#} | {p} | Durchmesser Wellenschulter | {ssh} |  | mm |
{#} | {p} | Durchmesser Lagerbohrung Gehäuse | {hd.n} | {hd.c} ({hd.u}/{hd.l}) | mm | Innenmessgerät
{#} | {p} | Rauheit Ra Lagerbohrung Gehäuse | {hra} |  | µm | Tastschnitt
{#} | {p} | Zylindrizität Lagerbohrung Gehäuse | {hcy} |  | mm | Formtester
{#} | {p} | Planlauf Gehäuseschulter | {hsr} |  | mm | Messuhr
end
""",
)
SEATS = Office(
    language="de",
    layout="seat rows",
    file="csv ; utf-8-sig",
    machines="Drehkolbengebläse DG 65,Seitenkanalverdichter SV 3",
    positions="A,B",
    bearings="NU208+6208/C3;6305+6305",
    fits="k5 m5 k6 j6/H7 J7 K7",
    dwg="DG-00-000",
    comma=True,
    choices="grease=Fett;oil bath=Öl (Tauchschmierung)",
    template="""
Gebläsebau / Konstruktion
Typ: {machine} | Zg.-Nr.: {dwg} | Index: {rev}
Maße in mm, Rauheit in µm
n max | {nmax} | min-1
@1 Läufergewicht | {mass} | kg

# Pos. | Bauteil | Lagerstelle | Lager \
| Sitz Ø | Höchstmaß | Mindestmaß | Rauheit Ra | Zylinderformtoleranz | Rundlauf gesamt | \
Anlageschulter Ø | Übergangsradius max. | Rohteil-Nr.
for p:
{#} | Welle | {p} | {bd} | {sd.n}{sd.c} | {sd.max} | {sd.min} | {sra} | {scy} | {sru} | {ssh} | {sfi} | W-118
{#} | Gehäuse | {p} | {bd} | {hd.n}{hd.c} | {hd.max} | {hd.min} | {hra} | {hcy} | {hru} | {hsh} | {hfi} | G-204
end
""",
)
KEYED = Office(
    language="de",
    layout="json keyed by position",
    file="json",
    machines="Kühlmittelpumpe KP 12,Servomotor SM 71",
    positions="Antriebsseite,Lüfterseite",
    bearings="6203-2RSR+6202-2RSR;6304-2ZR C3+6303-2ZR C3",
    fits="k5 j5 k6/H6 H7 J6",
    dwg="KP.00.000",
    choices="grease=Fettfüllung;oil bath=Ölbad;steel=C45E;stainless steel=X39CrMo17-1;cast iron=EN-GJL-200;"
    "housing_material.steel=S355J2;aluminium=EN AC-46000;continuous=Dauerbetrieb;intermittent=Aussetzbetrieb;"
    "locating=Festlager;floating=Loslager",
    template="""
{"Kopf": {"Benennung": "{machine}", "Zeichnungsnummer": "{dwg}", "Revision": "{rev}", "System": "Stammdaten"},
 "Betrieb": {"Drehzahl_max_1/min": "{nmax}", "Betriebsdrehzahl_1/min": "{nop}", "Solllebensdauer_h": "{life}",
  "Betriebsart": "{duty}", "Umgebungstemperatur_°C": "{amb}"},
 "Werkstoffe": {"Welle": "{smat}", "Gehäuse": "{hmat}"},
 "Lagerstellen": {"@p {p}": {
  "Lager": {"Bezeichnung": "{bd}", "Innendurchmesser_mm": "{d}", "Außendurchmesser_mm": "{D}", "Breite_mm": "{B}",
   "Aufgabe": "{role}", "Schmierung": "{lub}", "Radiallast_N": "{fr}", "Axiallast_N": "{fa}"},
  "Wellensitz": {"Durchmesser_mm": "{sd.n}", "Toleranzklasse": "{sd.c}", "Ra_µm": "{sra}", "Zylinderform_mm": "{scy}",
   "Gesamtrundlauf_mm": "{sru}", "Schulterdurchmesser_mm": "{ssh}"},
  "Gehäusebohrung": {"Durchmesser_mm": "{hd.n}", "Toleranzklasse": "{hd.c}", "Ra_µm": "{hra}",
   "Zylinderform_mm": "{hcy}", "Schulterdurchmesser_mm": "{hsh}", "@1 Außendurchmesser_Gehäuse_mm": "{hod}"}}}}
""",
)
ODD = (GROUPS, CHARACTERISTICS)
EVEN = (SEATS, KEYED)
