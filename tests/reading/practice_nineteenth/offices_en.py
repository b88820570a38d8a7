"""The offices that write English."""

from practice_nineteenth.office import Office

JOURNALS = Office(
    language="en",
    layout="position_rows",
    kind="two-row headings",
    file="csv , utf-8-sig",
    machines="Ash conveyor fan ACF-3,Slitter arbor SA-40",
    positions="Brg 1,Brg 2",
    bearing="ball -2Z;ball -2RSR/C3;angular C P5",
    dwg="RS-00000",
    title="""
Rotor bearing seats - design table
Assembly | {machine} | Drg | {drawing_number} | Iss. | {drawing_revision}
Prepared | JW | {day} Mar 2025 | Checked | TL
Max. running speed | {speed_max:rpm} | rpm
L10h target | {required_life:h} | h
@0 Rotor weight | {rotor_mass:kg} | kg
@1 Axis in service | {shaft_orientation}
""",
    choices="grease=Grease;oil bath=Oil sump;horizontal=horizontal;vertical=vertical;locating=Fixed;floating=Free",
    lines="""
Brg. pos. | station
@0 Axial location | axial_role
Bearing > Designation | bearing_designation
Bearing > Fr (N) | radial_load | N
Bearing > Fa (N) | axial_load | N
Bearing > Lubricant type | lubrication
Shaft journal > Nom. dia. (mm) | shaft_seat_diameter | mm/µm | {n}
Shaft journal > Tol. zone | shaft_seat_diameter | mm/µm | {c}
Shaft journal > es (µm) | shaft_seat_diameter | mm/µm | {u}
Shaft journal > ei (µm) | shaft_seat_diameter | mm/µm | {l}
Shaft journal > Ra (µm) | shaft_seat_roughness | µm
Shaft journal > Cylindricity (µm) | shaft_seat_cylindricity | µm
@1 Shaft journal > Total run-out (µm) | shaft_seat_runout | µm
Shaft journal > Abutment dia. (mm) | shaft_shoulder_diameter | mm
Housing bore > Nom. dia. (mm) | housing_seat_diameter | mm/µm | {n}
Housing bore > Tol. zone | housing_seat_diameter | mm/µm | {c}
Housing bore > ES (µm) | housing_seat_diameter | mm/µm | {u}
Housing bore > EI (µm) | housing_seat_diameter | mm/µm | {l}
Housing bore > Ra (µm) | housing_seat_roughness | µm
Housing bore > Cylindricity (µm) | housing_seat_cylindricity | µm
@1 Housing bore > Total run-out (µm) | housing_seat_runout | µm
Housing bore > Abutment dia. (mm) | housing_shoulder_diameter | mm
Remarks | - | ;ground after hardening
""",
)
PDM = Office(
    language="en",
    layout="nested",
    file="json",
    machines="Circulator head CH-6,Polishing spindle PL-22",
    positions="impeller end,motor end",
    bearing="ball -2Z C3;angular C;ball",
    dwg="CH0000-A00",
    choices="grease=grease;oil bath=oil bath;steel=42CrMo4;cast iron=EN-GJL-250;aluminium=EN AC-43000",
    more={"at": "bearing_positions"},
    lines="""
export > source | - | item master
export > author | - | svc-plm
export > date | - | 2025-02-14
item > title | machine
item > drawing_no | drawing_number
item > revision | drawing_revision
duty > max_speed_rpm | speed_max | rpm
duty > operating_speed_rpm | speed_operating | rpm
duty > required_L10h | required_life | h
duty > ambient_temperature_C | ambient_temperature | °C
materials > shaft | shaft_material
materials > housing | housing_material
position | station
bearing > designation | bearing_designation
bearing > boundary_dimensions_mm > d | bore_diameter | mm
bearing > boundary_dimensions_mm > D | outside_diameter | mm
bearing > boundary_dimensions_mm > B | ring_width | mm
@0 bearing > C_N | dynamic_rating | N
@0 bearing > C0_N | static_rating | N
@1 bearing > Cu_N | fatigue_load_limit | N
@1 bearing > limiting_speed_rpm | limiting_speed | rpm
bearing > lubrication | lubrication
shaft_seat > nominal_diameter_mm | shaft_seat_diameter | mm/µm | {n}
shaft_seat > tolerance_class | shaft_seat_diameter | mm/µm | {c}
shaft_seat > upper_deviation_um | shaft_seat_diameter | mm/µm | {u}
shaft_seat > lower_deviation_um | shaft_seat_diameter | mm/µm | {l}
shaft_seat > surface_roughness_Ra_um | shaft_seat_roughness | µm
shaft_seat > cylindricity_um | shaft_seat_cylindricity | µm
shaft_seat > abutment_diameter_mm | shaft_shoulder_diameter | mm
shaft_seat > max_fillet_radius_mm | shaft_fillet_radius | mm
housing_seat > nominal_diameter_mm | housing_seat_diameter | mm/µm | {n}
housing_seat > tolerance_class | housing_seat_diameter | mm/µm | {c}
housing_seat > upper_deviation_um | housing_seat_diameter | mm/µm | {u}
housing_seat > lower_deviation_um | housing_seat_diameter | mm/µm | {l}
housing_seat > surface_roughness_Ra_um | housing_seat_roughness | µm
housing_seat > cylindricity_um | housing_seat_cylindricity | µm
housing_seat > abutment_diameter_mm | housing_shoulder_diameter | mm
""",
)
INCHES = Office(
    language="en",
    layout="listing",
    kind="characteristics",
    file="csv , utf-8",
    machines="Pan feeder drive PFD-2,Yarn twister YT-11",
    positions="Inboard,Outboard",
    bearing="ball;ball -2RS;ball ZZ",
    dwg="000-00000",
    title="""
BEARING FIT CHARACTERISTICS (in. unless noted)
P/N: | {drawing_number} | REV | {drawing_revision} | MODEL: | {machine}
MAX SPEED (RPM): | {speed_max:rpm}
@1 ROTOR WT (LB): | {rotor_mass:lb}
""",
    foot="""
Inspect at 68 F after temperature has settled.
""",
    more={
        "columns": """
Char. no. | no
Location | position
Feature | name
Min. | value | {min} | size
Max. | value | {max}
Unit | unit
Gage | - | air gage;indicator;profilometer
Class | - | major;minor
""",
        "units": "column",
    },
    lines="""
Bearing journal diameter | shaft_seat_diameter | in | -
Journal cylindricity | shaft_seat_cylindricity | in
Journal surface finish Ra | shaft_seat_roughness | µin
@0 Journal total runout | shaft_seat_runout | in
Shaft shoulder face runout | shaft_shoulder_runout | in
Shaft fillet radius | shaft_fillet_radius | in
Housing bore diameter | housing_seat_diameter | in | -
Housing bore cylindricity | housing_seat_cylindricity | in
Housing bore surface finish Ra | housing_seat_roughness | µin
@0 Housing bore total runout | housing_seat_runout | in
Housing shoulder face runout | housing_shoulder_runout | in
@0 Housing fillet radius | housing_fillet_radius | in
""",
)
DUMP = Office(
    language="en",
    layout="listing",
    kind="long",
    file="txt tab utf-16",
    machines="Degassing blower DB-9,Degassing blower DB-14,Ring spinner RS-2,Ring spinner RS-5",
    positions="A-side,B-side",
    bearing="ball -2Z;ball -2RZ/C3",
    dwg="P0000000",
    count=2,
    choices="grease=grease;oil bath=oil bath;locating=locating;floating=non-locating;cast iron=grey cast iron;"
    "aluminium=aluminium alloy",
    title="""
Attribute report | class ROTOR_BRG | run {day}-Jan-2025
""",
    more={
        "columns": """
Item | machine
Position | position
Attribute | name
Value | value | {n} {c}
UoM | unit
Status | - | released
""",
        "units": "column",
        "whole": "(all)",
    },
    lines="""
Drawing | drawing_number
Speed, maximum | speed_max | 1/min
Rating life, required | required_life | h
@1 Balance grade | balance_grade | mm/s | G {n}
Material, housing | housing_material
Rolling bearing | bearing_designation
Axial function | axial_role
Lubrication | lubrication
Radial load | radial_load | N
Axial load | axial_load | N
Diameter, shaft seat | shaft_seat_diameter | mm
Roughness Ra, shaft seat | shaft_seat_roughness | µm
Cylindricity, shaft seat | shaft_seat_cylindricity | µm
Diameter, shaft shoulder | shaft_shoulder_diameter | mm
Diameter, housing seat | housing_seat_diameter | mm
Roughness Ra, housing seat | housing_seat_roughness | µm
Cylindricity, housing seat | housing_seat_cylindricity | µm
Diameter, housing shoulder | housing_shoulder_diameter | mm
@0 Temperature, operating | operating_temperature | °C
@1 Base oil viscosity at 40 °C | base_oil_viscosity_40 | mm²/s
""",
)
NAMES = Office(
    language="en",
    layout="listing",
    kind="names with position",
    file="csv , utf-8",
    machines="Web roll WR-60,Vane pump drive VP-4",
    positions="DE,NDE",
    bearing="ball -2Z;ball -2RS1/C3",
    dwg="00-0000-A",
    choices="grease=GREASE;oil bath=OIL_BATH;steel=STEEL_C45;cast iron=CAST_IRON;aluminium=ALUMINIUM;locating=FIXED;"
    "floating=FLOATING",
    title="""
# user parameters, model {machine}, drawing {drawing_number}
""",
    more={
        "columns": """
Parameter | name
Value | value | {n}
Unit | unit
Tolerance | value | {c} | size
Type | - | Length;Real;Real
""",
        "units": "column",
        "gap": "0",
    },
    lines="""
SPEED_MAX | speed_max | rpm
ROTOR_MASS | rotor_mass | kg
BEARING_SPAN | bearing_span | mm
HOUSING_MATERIAL | housing_material
{p}_BEARING | bearing_designation
{p}_LUBRICATION | lubrication
{p}_AXIAL_ROLE | axial_role
{p}_RADIAL_LOAD | radial_load | N
{p}_SHAFT_SEAT_DIA | shaft_seat_diameter | mm
{p}_SHAFT_SEAT_RA | shaft_seat_roughness | µm
{p}_SHAFT_SEAT_CYLINDRICITY | shaft_seat_cylindricity | mm
{p}_SHAFT_SHOULDER_DIA | shaft_shoulder_diameter | mm
@1 {p}_SHAFT_FILLET_RADIUS | shaft_fillet_radius | mm
{p}_HOUSING_SEAT_DIA | housing_seat_diameter | mm
{p}_HOUSING_SEAT_RA | housing_seat_roughness | µm
{p}_HOUSING_SEAT_CYLINDRICITY | housing_seat_cylindricity | mm
{p}_HOUSING_SHOULDER_DIA | housing_shoulder_diameter | mm
""",
)
APART = Office(
    language="en",
    layout="position_rows",
    kind="a table for each machine",
    file="xlsx",
    machines="Lab fan LF-1,Lab fan LF-2,Edger spindle ES-7,Edger spindle ES-9",
    positions="Front,Rear",
    bearing="ball ZZ;angular C",
    dwg="SK-000",
    count=2,
    choices="grease=Grease packed;oil bath=Oil bath",
    title="""
Machine: | {machine} | | Sketch: | {drawing_number}
Max rpm: | {speed_max:rpm} | | Ambient (°C): | {ambient_temperature:°C}
""",
    more={"apart": "", "gap": "0", "sheet": "Fits"},
    lines="""
Bearing end | station
Bearing no. | bearing_designation
Lube | lubrication
Radial load, N | radial_load | N
Thrust load, N | axial_load | N
Shaft OD at bearing, mm | shaft_seat_diameter | mm | {max} / {min}
Shaft finish, µm Ra | shaft_seat_roughness | µm
Shaft cylindricity, mm | shaft_seat_cylindricity | mm:3
Shaft shoulder dia., mm | shaft_shoulder_diameter | mm
Housing ID at bearing, mm | housing_seat_diameter | mm | {max} / {min}
Housing finish, µm Ra | housing_seat_roughness | µm
Housing cylindricity, mm | housing_seat_cylindricity | mm:3
Housing shoulder dia., mm | housing_shoulder_diameter | mm
""",
)
ODD = (JOURNALS, PDM, NAMES)
EVEN = (INCHES, DUMP, APART)
