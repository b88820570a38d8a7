"""The offices that write German."""

from practice_nineteenth.office import Office

SHEET = Office(
    language="de",
    layout="transposed",
    file="xlsx",
    machines="Drehvorrichtung DV 30,Spülgebläse SG 5",
    positions="Lager links,Lager rechts",
    bearing="ball -2Z;angular C;ball -2RS1/C3",
    dwg="4.000.000-00",
    comma=True,
    choices="grease=Lebensdauer-Fettfüllung;oil bath=Ölbad;horizontal=waagerecht;vertical=senkrecht;steel=C45;"
    "cast iron=EN-GJL-250;aluminium=EN AW-6082;clamped=geklemmt;none=keine",
    title="""
Auslegungsblatt Lagersitze
Baugruppe: | {machine} | | Zeichn.-Nr.: | {drawing_number}
Änd.-Index: | {drawing_revision} | | erstellt: | KTB {day}.03.2025
Drehzahl max. [1/min]: | {speed_max:1/min} | | Wellenlage: | {shaft_orientation}
@0 Lagerabstand [mm]: | {bearing_span:mm} | | Rotormasse [kg]: | {rotor_mass:kg}
@1 Werkstoff Welle: | {shaft_material} | | Werkstoff Gehäuse: | {housing_material}
""",
    more={
        "columns": """
Nr. | no
Merkmal | name
Einh. | unit
{n} | values
Bemerkung | - | geschliffen;;nach Härten
""",
        "units": "column",
        "none": "-",
        "sheet": "Lagersitze",
    },
    lines="""
Wälzlager > Lagerkurzzeichen | bearing_designation
Wälzlager > Bohrungsdurchmesser d | bore_diameter | mm
Wälzlager > Außendurchmesser D | outside_diameter | mm
Wälzlager > Lagerbreite B | ring_width | mm
@0 Wälzlager > dyn. Tragzahl C | dynamic_rating | kN
Wälzlager > Radiallast | radial_load | N
Wälzlager > Axiallast | axial_load | N
Welle > Sitz Ø | shaft_seat_diameter | mm | {n} {c} ({u}/{l})
Welle > Zylinderform | shaft_seat_cylindricity | mm:3
Welle > Gesamtrundlauf | shaft_seat_runout | mm:3
Welle > Mittenrauwert Ra | shaft_seat_roughness | µm
Welle > Anlageschulter Ø | shaft_shoulder_diameter | mm
Welle > Planlauf Anlageschulter | shaft_shoulder_runout | mm:3
@1 Welle > Hohlkehle R max. | shaft_fillet_radius | mm
Gehäuse > Sitz Ø | housing_seat_diameter | mm | {n} {c} ({u}/{l})
Gehäuse > Zylinderform | housing_seat_cylindricity | mm:3
Gehäuse > Gesamtrundlauf | housing_seat_runout | mm:3
Gehäuse > Mittenrauwert Ra | housing_seat_roughness | µm
Gehäuse > Anlageschulter Ø | housing_shoulder_diameter | mm
@1 Gehäuse > Außendurchmesser | housing_outer_diameter | mm
""",
)
PARTS = Office(
    language="de",
    layout="seat_rows",
    kind="parts list",
    file="csv ; cp1252",
    machines="Kühlerlüfter KL 7,Ritzelwelle RW 22",
    positions="vorn,hinten",
    bearing="ball -2Z/C3;ball -2RSR;ball",
    dwg="00-00000",
    comma=True,
    title="""
Stückliste mit Passungen; siehe auch Zeichnung
Erzeugnis | {machine}
Zeichnung | {drawing_number} | Rev. {drawing_revision}
Drehzahl max. (U/min) | {speed_max:U/min}
@0 Geforderte Lebensdauer L10h (h) | {required_life:h}
Auswuchtgüte | G {balance_grade}
""",
    foot="""
Allgemeintoleranzen ISO 2768-mK
""",
    more={
        "parts": "bearing=Rillenkugellager;shaft=Welle, Lagersitz;housing=Gehäuse, Lagerbohrung",
        "order": "bearing shaft housing",
    },
    lines="""
Pos. | #
Menge | - | 1
Benennung | part
Einbauort | station
Kurzzeichen / Nennmaß [mm] | bearing_designation
Kurzzeichen / Nennmaß [mm] | *_seat_diameter | mm | {n}
Toleranzfeld | *_seat_diameter | mm | {c}
@0 oberes Abmaß [mm] | *_seat_diameter | mm | {u}
@0 unteres Abmaß [mm] | *_seat_diameter | mm | {l}
Ra [µm] | *_seat_roughness | µm
Zylindrizität [mm] | *_seat_cylindricity | mm:3
Gesamtlauf radial [mm] | *_seat_runout | mm:3
Schulter-Ø [mm] | *_shoulder_diameter | mm
Kehlradius max. [mm] | *_fillet_radius | mm
Radiallast [N] | radial_load | N
Axiallast [N] | axial_load | N
Lieferant | - | Zukauf;Fertigung;Gießerei
Preis [EUR] | - | 4,20;;
""",
)
FOOT = Office(
    language="de",
    layout="position_rows",
    file="xlsx",
    machines="Umwälzer UW 2,Messerwelle MW 16",
    positions="AS,BS",
    bearing="roller;ball -2Z",
    dwg="K000.000",
    comma=True,
    choices="grease=Fett;oil bath=Ölsumpf;locating=Fest;floating=Los",
    title="""
@0 Passungstabelle {machine}
@1 Passungstabelle
@1 Maschine | {machine}
Zg. | {drawing_number} | Ausg. | {drawing_revision}
n max. [1/min] | {speed_max:1/min}
Umgebungstemperatur [°C] | {ambient_temperature:°C}
""",
    foot="""
Maße in mm; Abmaße, Form- und Lagetoleranzen in µm; Ra in µm; Kräfte in N
gepr. MSK {day}.11.2024
""",
    more={"units": "foot", "sheet": "Passungen"},
    lines="""
Lagerstelle | station
Lager | bearing_designation
Fest/Los | axial_role
Schmierung | lubrication
Fr | radial_load | N
Fa | axial_load | N
Wellensitz Nennmaß | shaft_seat_diameter | mm/µm | {n}
Wellensitz ob. Abmaß | shaft_seat_diameter | mm/µm | {u}
Wellensitz unt. Abmaß | shaft_seat_diameter | mm/µm | {l}
Wellensitz Ra | shaft_seat_roughness | µm
Wellensitz Zylindrizität | shaft_seat_cylindricity | µm
@1 Wellenschulter Ø | shaft_shoulder_diameter | mm
@1 Wellenschulter Planlauf | shaft_shoulder_runout | µm
Gehäusesitz Nennmaß | housing_seat_diameter | mm/µm | {n}
Gehäusesitz ob. Abmaß | housing_seat_diameter | mm/µm | {u}
Gehäusesitz unt. Abmaß | housing_seat_diameter | mm/µm | {l}
Gehäusesitz Ra | housing_seat_roughness | µm
Gehäusesitz Zylindrizität | housing_seat_cylindricity | µm
@0 Gehäuseschulter Ø | housing_shoulder_diameter | mm
Kostenstelle | - | 4410;4415
""",
)
OBJECTS = Office(
    language="de",
    layout="attributes",
    file="json",
    machines="Faserlüfter FL 6,Schälmaschine SM 12",
    positions="Antriebsseite,Abtriebsseite",
    bearing="ball -2Z;angular B;ball C3",
    dwg="A000000",
    choices="grease=Fett;oil bath=Ölbad;locating=Festlager;floating=Loslager;steel=Stahl;cast iron=Grauguss;"
    "aluminium=Aluminium",
    more={
        "keys": "Merkmal Wert Einheit",
        "item": "Objekttyp Einbauort Merkmale",
        "items": "Objekte",
        "whole": "Rotorbaugruppe",
        "head": "Export=Sachmerkmale;Stand=2025-01-20;Bearbeiter=PDM",
        "units": "attribute",
    },
    lines="""
Bezeichnung | machine
Zeichnungsnummer | drawing_number
Revisionsstand | drawing_revision
Höchstdrehzahl | speed_max | 1/min
Betriebsdrehzahl | speed_operating | 1/min
Gehäusewerkstoff | housing_material
Wälzlager > Kurzzeichen nach DIN 623 | bearing_designation
Wälzlager > Lageranordnung | axial_role
Wälzlager > Schmierung | lubrication
@1 Wälzlager > Nachschmierfrist | regreasing_interval | h
Wälzlager > Radialkraft Fr | radial_load | N
Wälzlager > Axialkraft Fa | axial_load | N
@0 Wälzlager > Statische Tragzahl C0 | static_rating | N
Wellensitz > Durchmesser | shaft_seat_diameter | mm | {n} {c}
Wellensitz > Rauheit Ra | shaft_seat_roughness | µm
Wellensitz > Zylindrizität | shaft_seat_cylindricity | mm
Wellensitz > Gesamtrundlauf | shaft_seat_runout | mm
Wellensitz > Schulterdurchmesser | shaft_shoulder_diameter | mm
@1 Wellensitz > Anzugsmoment Wellenmutter | nut_torque | Nm
Gehäusesitz > Durchmesser | housing_seat_diameter | mm | {n} {c}
Gehäusesitz > Rauheit Ra | housing_seat_roughness | µm
Gehäusesitz > Zylindrizität | housing_seat_cylindricity | mm
Gehäusesitz > Gesamtrundlauf | housing_seat_runout | mm
Gehäusesitz > Schulterdurchmesser | housing_shoulder_diameter | mm
""",
)
BLOCKS_DOWN = Office(
    language="de",
    layout="blocks",
    file="csv ; utf-8",
    machines="Wirbelgebläse WG 8,Trennscheibe TS 5",
    positions="Lagerstelle A,Lagerstelle B",
    bearing="ball -2Z;ball",
    dwg="E 0000.00",
    comma=True,
    choices="grease=Fett;oil bath=Öl;locating=Festlager;floating=Loslager",
    title="""
Datenblatt Lagerung {machine}
Zeichnung {drawing_number}, Index {drawing_revision}
Max. Betriebsdrehzahl;{speed_max:min⁻¹};min⁻¹
Umgebungstemperatur;{ambient_temperature:°C};°C
""".replace(";", " | "),
    foot="""
Freigabe: Konstruktion, {day}.05.2025
""",
    more={"unit": "last", "units": "column"},
    lines="""
Wälzlager | bearing_designation
Anordnung | axial_role
Schmierstoff | lubrication
Betriebstemperatur | operating_temperature | °C
Radialbelastung | radial_load | N
Axialbelastung | axial_load | N
Welle > Sitzdurchmesser | shaft_seat_diameter | mm | {n} {u}/{l}
Welle > Rauheit Ra | shaft_seat_roughness | µm
Welle > Zylindrizität | shaft_seat_cylindricity | µm
Welle > Schulterdurchmesser | shaft_shoulder_diameter | mm
Welle > Planlauf der Schulter | shaft_shoulder_runout | µm
Bohrung > Sitzdurchmesser | housing_seat_diameter | mm | {n} {u}/{l}
Bohrung > Rauheit Ra | housing_seat_roughness | µm
Bohrung > Zylindrizität | housing_seat_cylindricity | µm
Bohrung > Schulterdurchmesser | housing_shoulder_diameter | mm
@1 Bohrung > Planlauf der Schulter | housing_shoulder_runout | µm
""",
)
ODD = (SHEET, PARTS, BLOCKS_DOWN)
EVEN = (FOOT, OBJECTS)
