"""The offices that write German."""

from practice_nineteenth.office import Office

DATA_SHEET = Office(
    language="de",
    layout="chapters",
    file="xlsx",
    machines="Tellerseparator TS 20,Turbogebläse TG 300",
    positions="Halslager,Fußlager",
    bearing="angular C;ball /C3",
    dwg="20.000-00.0",
    comma=True,
    choices="grease=Fett;oil bath=Ölbad;vertical=vertikal;horizontal=horizontal;locating=Festlager;floating=Loslager;"
    "deep groove ball=Rillenkugellager;angular contact ball=Schrägkugellager;"
    "polyamide=Polyamid;pressed steel=Stahlblech;machined brass=Messing massiv",
    title="""
Lagerungsdatenblatt | | {machine}
Zeichnungs-Nr. | {drawing_number} | Rev. {drawing_revision} | Bearb.: | T. Konstr. | {day}.06.2025
""",
    foot="""
Freigabe Konstruktion: ____________ Freigabe Qualität: ____________
""",
    more={"station": "Lagerstelle", "units": "heading", "sheet": "Datenblatt"},
    lines="""
1 Betriebsdaten > Höchstdrehzahl | speed_max | min-1
1 Betriebsdaten > Betriebsdrehzahl | speed_operating | min-1
1 Betriebsdaten > Läufermasse | rotor_mass | kg
1 Betriebsdaten > Geforderte Lagerlebensdauer L10h | required_life | h
1 Betriebsdaten > Wellenlage | shaft_orientation
1 Betriebsdaten > Umgebungstemperatur | ambient_temperature | °C
2 Wälzlager > Bauart | bearing_type
2 Wälzlager > Bezeichnung | bearing_designation
2 Wälzlager > d [mm] | bore_diameter | mm
2 Wälzlager > D [mm] | outside_diameter | mm
2 Wälzlager > B [mm] | ring_width | mm
2 Wälzlager > Käfig | cage
2 Wälzlager > Funktion | axial_role
2 Wälzlager > Schmierung | lubrication
2 Wälzlager > Fr [N] | radial_load | N
2 Wälzlager > Fa [N] | axial_load | N
3 Lagersitze auf der Welle > Nennmaß [mm] | shaft_seat_diameter | mm/µm | {n}
3 Lagersitze auf der Welle > ISO-Toleranz | shaft_seat_diameter | mm/µm | {c}
3 Lagersitze auf der Welle > es [µm] | shaft_seat_diameter | mm/µm | {u}
3 Lagersitze auf der Welle > ei [µm] | shaft_seat_diameter | mm/µm | {l}
3 Lagersitze auf der Welle > Zylindrizität [µm] | shaft_seat_cylindricity | µm
3 Lagersitze auf der Welle > Ra [µm] | shaft_seat_roughness | µm
3 Lagersitze auf der Welle > Schulterdurchmesser [mm] | shaft_shoulder_diameter | mm
4 Lagersitze im Gehäuse > Nennmaß [mm] | housing_seat_diameter | mm/µm | {n}
4 Lagersitze im Gehäuse > ISO-Toleranz | housing_seat_diameter | mm/µm | {c}
4 Lagersitze im Gehäuse > ES [µm] | housing_seat_diameter | mm/µm | {u}
4 Lagersitze im Gehäuse > EI [µm] | housing_seat_diameter | mm/µm | {l}
4 Lagersitze im Gehäuse > Zylindrizität [µm] | housing_seat_cylindricity | µm
4 Lagersitze im Gehäuse > Ra [µm] | housing_seat_roughness | µm
4 Lagersitze im Gehäuse > Schulterdurchmesser [mm] | housing_shoulder_diameter | mm
""",
)
MARKS = Office(
    language="de",
    layout="records",
    kind="json characteristics",
    file="json",
    machines="Kreiselpumpe KP 50-200,Motorspindel MS 120",
    positions="Lager A,Lager B",
    bearing="roller;angular C/P4",
    dwg="KP-00-0000",
    more={
        "items": "pruefmerkmale",
        "head": """
dokument = Prüfplan Lagersitze
baugruppe = {machine}
zeichnung = {drawing_number}
aenderungsstand = {drawing_revision}
ersteller = QS Eingang
""",
        "columns": """
merkmal_nr | no
lagerstelle | position
bauteil | part
merkmal | name
sollwert | value | {n}
oberes_abmass | value | {u} | size
unteres_abmass | value | {l} | size
einheit | unit
istwert | null
""",
        "units": "key",
    },
    lines="""
Welle > Lagersitz Durchmesser | shaft_seat_diameter | mm
Welle > Lagersitz Zylinderform | shaft_seat_cylindricity | mm
Welle > Lagersitz Gesamtrundlauf | shaft_seat_runout | mm
Welle > Lagersitz Rauheit Ra | shaft_seat_roughness | µm
Welle > Wellenschulter Durchmesser | shaft_shoulder_diameter | mm
Welle > Wellenschulter Planlauf | shaft_shoulder_runout | mm
Welle > Hohlkehlradius | shaft_fillet_radius | mm
Gehäuse > Lagerbohrung Durchmesser | housing_seat_diameter | mm
Gehäuse > Lagerbohrung Zylinderform | housing_seat_cylindricity | mm
Gehäuse > Lagerbohrung Gesamtrundlauf | housing_seat_runout | mm
Gehäuse > Lagerbohrung Rauheit Ra | housing_seat_roughness | µm
@1 Gehäuse > Gehäuseschulter Durchmesser | housing_shoulder_diameter | mm
Gehäuse > Gehäuseschulter Planlauf | housing_shoulder_runout | mm
""",
)
CAD = Office(
    language="de",
    layout="exported",
    kind="cad parameters",
    file="csv ; cp1252",
    machines="Wickelwalze WW 90,Rührwerk RW 4",
    positions="FS,AS",
    bearing="ball -2RSR;ball -2Z/C3",
    dwg="W0.00.000",
    comma=True,
    title="""
Modell: {machine} | | | | {drawing_number} / {drawing_revision}
""",
    more={
        "columns": """
Parametername | name
Formel | expression | {v} {u}
Wert | value
Einheit | unit
Kommentar | comment
""",
        "units": "column",
        "by": "line",
        "gap": "0",
    },
    lines="""
Drehzahl maximal > N_MAX | speed_max | 1/min
Abstand der Lagermitten > LAGERABSTAND | bearing_span | mm
Masse Rotor > MASSE_ROTOR | rotor_mass | kg
Bohrung Lager {p} > D_INNEN_LAGER_{p} | bore_diameter | mm
Außendurchmesser Lager {p} > D_AUSSEN_LAGER_{p} | outside_diameter | mm
Breite Lager {p} > BREITE_LAGER_{p} | ring_width | mm
Nennmaß Wellensitz {p} > D_WELLENSITZ_{p} | shaft_seat_diameter | mm | {n}
oberes Abmaß Wellensitz {p} > AO_WELLENSITZ_{p} | shaft_seat_diameter | mm/µm | {u}
unteres Abmaß Wellensitz {p} > AU_WELLENSITZ_{p} | shaft_seat_diameter | mm/µm | {l}
Nennmaß Gehäusesitz {p} > D_GEHAEUSESITZ_{p} | housing_seat_diameter | mm | {n}
oberes Abmaß Gehäusesitz {p} > AO_GEHAEUSESITZ_{p} | housing_seat_diameter | mm/µm | {u}
unteres Abmaß Gehäusesitz {p} > AU_GEHAEUSESITZ_{p} | housing_seat_diameter | mm/µm | {l}
Wellenschulter {p} > D_WELLENSCHULTER_{p} | shaft_shoulder_diameter | mm
Gehäuseschulter {p} > D_GEHAEUSESCHULTER_{p} | housing_shoulder_diameter | mm
Hohlkehle Welle {p} > R_HOHLKEHLE_WELLE_{p} | shaft_fillet_radius | mm
Rauheit Wellensitz {p} > RA_WELLENSITZ_{p} | shaft_seat_roughness | µm
Rauheit Gehäusesitz {p} > RA_GEHAEUSESITZ_{p} | housing_seat_roughness | µm
Zylindrizität Wellensitz {p} > ZYL_WELLENSITZ_{p} | shaft_seat_cylindricity | mm
@1 Zylindrizität Gehäusesitz {p} > ZYL_GEHAEUSESITZ_{p} | housing_seat_cylindricity | mm
""",
)
BLOCKS = Office(
    language="de",
    layout="blocks",
    file="csv ; utf-8",
    machines="Magnetrührwerk MR 15,Seitenkanalverdichter SV 7",
    positions="Lagerung oben,Lagerung unten",
    bearing="ball -2RS1;angular B",
    dwg="MR.000.00",
    comma=True,
    choices="grease=Fett, lebensdauergeschmiert;oil bath=Ölbad;clamped=geklemmt;none=keine;"
    "locating=fest;floating=los;inner=Innenring;continuous=Dauerbetrieb;intermittent=Aussetzbetrieb",
    title="""
Projekt | {machine}
Zeichnung | {drawing_number}
Index | {drawing_revision}
nmax | {speed_max:1/min} | 1/min
Betriebsart | {duty}
umlaufender Ring | {rotating_ring}
""",
    more={"unit": "last", "none": "-", "units": "column"},
    lines="""
Eingebautes Lager | bearing_designation
Axiale Führung | axial_role
Schmierung | lubrication
Grundölviskosität bei 40 °C | base_oil_viscosity_40 | mm²/s
Fettfüllung | grease_fill | %
Radialkraft | radial_load | N
Axialkraft | axial_load | N
Betriebstemperatur Lager | operating_temperature | °C
Wellensitz | shaft_seat_diameter | mm | Ø{n} {c} ({u} / {l})
Zylinderform Wellensitz | shaft_seat_cylindricity | mm:3
Gesamtrundlauf Wellensitz | shaft_seat_runout | mm:3
Oberflächenrauheit Ra Wellensitz | shaft_seat_roughness | µm
Bunddurchmesser Welle | shaft_shoulder_diameter | mm
Gehäusebohrung | housing_seat_diameter | mm | Ø{n} {c} ({u} / {l})
Zylinderform Gehäusebohrung | housing_seat_cylindricity | mm:3
Gesamtrundlauf Gehäusebohrung | housing_seat_runout | mm:3
Oberflächenrauheit Ra Gehäusebohrung | housing_seat_roughness | µm
Bunddurchmesser Gehäuse | housing_shoulder_diameter | mm
Sicherung Innenring gegen Drehen | inner_ring_retention
Sicherung Außenring gegen Drehen | outer_ring_retention
""",
)
TEST_PLAN = Office(
    language="de",
    layout="transposed",
    kind="inspection plan",
    file="csv ; utf-8-sig",
    machines="Radialventilator RV 450,Schleifspindel SP 24",
    positions="Lüfterseite,Antriebsseite",
    bearing="ball -2Z/C3;angular C/P5",
    dwg="000 000 00",
    comma=True,
    title="""
Maßprüfblatt Lagerstellen
Erzeugnis: {machine}; Zeichnung: {drawing_number}; Rev.: {drawing_revision}
""",
    foot="""
Prüfer: | | Datum: | | Stempel:
""",
    more={
        "columns": """
Lfd. Nr. | no
Bauteil | part
Prüfmerkmal | name
Maßeinheit | unit
Soll {n} | values
Prüfmittel | - | Feinzeiger;Formprüfer;Tastschnitt
Ist-Wert | empty
""",
        "units": "column",
        "none": "",
    },
    lines="""
Welle > Sitzdurchmesser Höchstmaß | shaft_seat_diameter | mm | {max}
Welle > Sitzdurchmesser Mindestmaß | shaft_seat_diameter | mm | {min}
Welle > Zylindrizität Sitz | shaft_seat_cylindricity | mm:3
Welle > Gesamtrundlauf Sitz | shaft_seat_runout | mm:3
Welle > Ra Sitz | shaft_seat_roughness | µm
Welle > Schulterdurchmesser | shaft_shoulder_diameter | mm
Welle > Planlauf Schulter | shaft_shoulder_runout | mm:3
Welle > Übergangsradius max. | shaft_fillet_radius | mm
Gehäuse > Bohrungsdurchmesser Höchstmaß | housing_seat_diameter | mm | {max}
Gehäuse > Bohrungsdurchmesser Mindestmaß | housing_seat_diameter | mm | {min}
Gehäuse > Zylindrizität Bohrung | housing_seat_cylindricity | mm:3
Gehäuse > Gesamtrundlauf Bohrung | housing_seat_runout | mm:3
Gehäuse > Ra Bohrung | housing_seat_roughness | µm
Gehäuse > Schulterdurchmesser | housing_shoulder_diameter | mm
Gehäuse > Planlauf Schulter | housing_shoulder_runout | mm:3
""",
)
SEATS = Office(
    language="de",
    layout="seat_rows",
    file="xlsx",
    machines="Servomotor SV 71,Zentrifuge ZF 8",
    positions="A-Seite,B-Seite",
    bearing="ball -2Z;angular",
    dwg="SV71-000",
    comma=True,
    title="""
Lieferantenspezifikation Lagersitze
Maschine: | {machine} | Zeichnungsnummer: | {drawing_number} | Ausgabe: | {drawing_revision}
Max. Drehzahl: | {speed_max:min⁻¹} | min⁻¹ | Wuchtgüte G: | {balance_grade}
""",
    more={
        "parts": "shaft=Wellenzapfen;housing=Lagerschild",
        "order": "shaft housing",
        "by": "side",
        "units": "heading",
        "sheet": "Sitze",
    },
    lines="""
Teil | part
Seite | station
Nenn-Ø [mm] | *_seat_diameter | mm/µm | {n}
Tol.-Klasse | *_seat_diameter | mm/µm | {c}
Abmaße [µm] | *_seat_diameter | mm/µm | {u} / {l}
Zylindrizität [µm] | *_seat_cylindricity | µm
Gesamtlauf [µm] | *_seat_runout | µm
Ra max. [µm] | *_seat_roughness | µm
Anlage-Ø [mm] | *_shoulder_diameter | mm
Planlauf Anlage [µm] | *_shoulder_runout | µm
Lager | bearing_designation
Materialnr. | - | 400123;400124
Bemerkung | - | gehärtet;
""",
)
ODD = (DATA_SHEET, MARKS, CAD)
EVEN = (BLOCKS, TEST_PLAN, SEATS)
