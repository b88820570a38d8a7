"""The offices that write English."""

from practice_nineteenth.office import Office

FIRST_ARTICLE = Office(
    language="en",
    layout="sections",
    kind="first article sheet",
    file="csv , utf-8",
    machines="Turbo Blower TB-180,Turbo Blower TB-240",
    positions="Impeller side bearing,Motor side bearing",
    bearing="angular C/P4;ball -2RZ/C3",
    dwg="TBL-0000",
    title="""
FIRST ARTICLE INSPECTION REPORT
Part name: | Rotor assembly {machine} | Drawing: | {drawing_number} | Rev.: | {drawing_revision}
Supplier: | | PO no.: | 45000{day} | Qty: | 1
""",
    foot="""
All linear dimensions in mm unless stated. Inspected by: ____________ Date: ____________
@1 Instruments calibrated per QP-7
""",
    more={
        "columns": """
Char. No. | no
Feature | part
Characteristic | name
Nominal | value | {n}
Upper Tol. | value | {u} | size
Lower Tol. | value | {l} | size
Unit | unit
Gauge | - | Micrometer;Form tester;Roughness tester
Actual | empty
OK / NOK | empty
""",
        "units": "column",
    },
    lines="""
Bearing > Designation | bearing_designation
Bearing > Bore d | bore_diameter | mm
Bearing > Outside diameter D | outside_diameter | mm
Shaft journal > Diameter | shaft_seat_diameter | mm:3
Shaft journal > Cylindricity | shaft_seat_cylindricity | mm:3
Shaft journal > Total run-out | shaft_seat_runout | mm:3
Shaft journal > Surface roughness Ra max. | shaft_seat_roughness | µm
Shaft journal > Shoulder diameter | shaft_shoulder_diameter | mm
Shaft journal > Shoulder axial run-out | shaft_shoulder_runout | mm:3
Shaft journal > Fillet radius max. | shaft_fillet_radius | mm
Housing bore > Diameter | housing_seat_diameter | mm:3
Housing bore > Cylindricity | housing_seat_cylindricity | mm:3
Housing bore > Total run-out | housing_seat_runout | mm:3
Housing bore > Surface roughness Ra max. | housing_seat_roughness | µm
Housing bore > Shoulder diameter | housing_shoulder_diameter | mm
@1 Housing bore > Shoulder axial run-out | housing_shoulder_runout | mm:3
""",
)
CAD = Office(
    language="en",
    layout="exported",
    kind="cad parameters",
    file="txt tab utf-8",
    machines="Grinding spindle GS 60,Dental spindle HP 8",
    positions="FRONT,REAR",
    bearing="angular C;ball -2Z/P5",
    dwg="000-0000-A",
    more={
        "columns": """
Name | name
Expression | expression | {v} {u}
Value | value
Unit | unit
Comment | comment
""",
        "units": "column",
    },
    lines="""
Maximum spindle speed > n_max | speed_max | rpm
Mass of rotating assembly > m_rotor | rotor_mass | kg
Distance between bearing centres > L_brg | bearing_span | mm
@1 Preload force of the springs > F_preload | preload_force | N
@1 Spring rate > c_spring | spring_rate | N/mm
@1 Installed length of spring > L_spring | spring_installed_length | mm
Bearing bore, {p} > {p}_brg_d | bore_diameter | mm
Bearing outside diameter, {p} > {p}_brg_D | outside_diameter | mm
Bearing width, {p} > {p}_brg_B | ring_width | mm
Shaft seat diameter, {p} > {p}_shaft_seat_dia | shaft_seat_diameter | mm | {n}
Shaft seat upper deviation, {p} > {p}_shaft_seat_up | shaft_seat_diameter | mm | {u}
Shaft seat lower deviation, {p} > {p}_shaft_seat_lo | shaft_seat_diameter | mm | {l}
Housing bore diameter, {p} > {p}_hsg_bore_dia | housing_seat_diameter | mm | {n}
Housing bore upper deviation, {p} > {p}_hsg_bore_up | housing_seat_diameter | mm | {u}
Housing bore lower deviation, {p} > {p}_hsg_bore_lo | housing_seat_diameter | mm | {l}
Shaft shoulder diameter, {p} > {p}_shaft_shoulder | shaft_shoulder_diameter | mm
Housing shoulder diameter, {p} > {p}_hsg_shoulder | housing_shoulder_diameter | mm
Fillet radius at shaft shoulder, {p} > {p}_shaft_fillet | shaft_fillet_radius | mm
@0 Bore of the hollow shaft, {p} > {p}_shaft_bore | shaft_bore | mm
Radial bearing load, {p} > {p}_Fr | radial_load | N
Axial bearing load, {p} > {p}_Fa | axial_load | N
@0 Cylindricity of shaft seat, {p} > {p}_shaft_cyl | shaft_seat_cylindricity | mm:3
@0 Cylindricity of housing bore, {p} > {p}_hsg_cyl | housing_seat_cylindricity | mm:3
""",
)
INCH = Office(
    language="en",
    layout="position_rows",
    kind="two-row headings",
    file="xlsx",
    machines="Tool-room grinding head TG-4,Winding roller head WR-12",
    positions="Pulley end,Work end",
    bearing="ball -2RS;ball -2Z/C3",
    dwg="D-00000",
    choices="locating=held;floating=free;grease=grease packed;spring-loaded=spring loaded",
    title="""
Bearing Fit Schedule
Assembly | {machine} | Dwg | {drawing_number} | Rev | {drawing_revision}
Max. speed, rpm | {speed_max:rpm} | Rotor weight, lb | {rotor_mass:lb}
""",
    foot="""
Diameters, form and run-out in inches. Surface finish in microinches Ra. Loads in lbf.
""",
    more={"units": "foot", "lone": "bottom", "sheet": "Fits"},
    lines="""
Location | station
Bearing no. | bearing_designation
Axial | axial_role
Journal > Max. dia. | shaft_seat_diameter | in | {max}
Journal > Min. dia. | shaft_seat_diameter | in | {min}
Journal > Finish | shaft_seat_roughness | µin
Journal > Total run-out | shaft_seat_runout | in
Journal > Cylindricity | shaft_seat_cylindricity | in
Journal > Shoulder dia. | shaft_shoulder_diameter | in
Housing bore > Max. dia. | housing_seat_diameter | in | {max}
Housing bore > Min. dia. | housing_seat_diameter | in | {min}
Housing bore > Finish | housing_seat_roughness | µin
Housing bore > Total run-out | housing_seat_runout | in
Housing bore > Shoulder dia. | housing_shoulder_diameter | in
Loads > Radial | radial_load | lbf
Loads > Thrust | axial_load | lbf
Lubricant | lubrication
Std. hours | - | 1.2;0.8
""",
)
FLEET = Office(
    language="en",
    layout="machine_rows",
    file="csv ; utf-8-sig",
    machines="SM-40,SM-63,SM-80,SM-100,SM-130,SM-160,SM-180,SM-200",
    positions="DE,NDE",
    bearing="ball -2Z/C3;ball -2RZ",
    dwg="00.0000",
    count=4,
    fits="j5 k5 js5/H6 J6 JS6",
    choices="aluminium=Aluminium;cast iron=Cast iron",
    title="""
Servo motor family - bearing arrangement
@1 Released for purchasing; all dimensions in mm
""",
    more={"units": "heading"},
    lines="""
Motor | machine
Drawing no. | drawing_number
Issue | drawing_revision
Max. speed [rpm] | speed_max | rpm
Rotor mass [kg] | rotor_mass | kg
End shield material | housing_material
{p} bearing | bearing_designation
{p} shaft fit | shaft_seat_diameter | mm | Ø{n} {c}
{p} housing fit | housing_seat_diameter | mm | Ø{n} {c}
{p} radial load [N] | radial_load | N
{p} axial load [N] | axial_load | N
{p} shaft shoulder [mm] | shaft_shoulder_diameter | mm
Motor cost [EUR] | - | 214;318;402;577
Planner | - | K2;K4
""",
)
FMEA = Office(
    language="en",
    layout="listing",
    kind="fmea list",
    file="xlsx",
    machines="Centrifugal pump CP 32-160,Inline mixer IM 9",
    positions="Pump end,Motor end",
    bearing="ball -2Z;roller /C3",
    dwg="CP0000.00",
    choices="grease=Grease;oil bath=Oil bath",
    title="""
Design FMEA - special characteristics of the bearing arrangement
Product: | {machine} | Drawing no.: | {drawing_number} | Revision: | {drawing_revision}
Team: | Design / Quality / Purchasing | FMEA no.: | DF-0{day}
""",
    more={
        "columns": """
Item | no
Bearing position | position
Component | part
Characteristic | name
Specification | value | {n} {c} ({u}/{l})
Unit | unit
Potential failure | - | Ring creep;Noise;Wear
S | - | 8;6;5
O | - | 3;2;2
D | - | 2;4;3
RPN | - | 48;48;30
Responsible | - | Design
""",
        "units": "column",
        "whole": "all",
        "sheet": "DFMEA",
    },
    lines="""
Rotor > Maximum speed | speed_max | r/min
@0 Rotor > Required rating life | required_life | h
Rotor > Residual unbalance | residual_unbalance | g·mm
Bearing > Bearing designation | bearing_designation
Bearing > Radial load | radial_load | N
Bearing > Lubrication | lubrication
Shaft > Seat diameter with tolerance | shaft_seat_diameter | mm
Shaft > Seat cylindricity | shaft_seat_cylindricity | mm:3
Shaft > Seat roughness Ra | shaft_seat_roughness | µm
Shaft > Shoulder run-out | shaft_shoulder_runout | mm:3
Shaft > Shoulder diameter | shaft_shoulder_diameter | mm
Housing > Seat diameter with tolerance | housing_seat_diameter | mm
Housing > Seat cylindricity | housing_seat_cylindricity | mm:3
Housing > Seat roughness Ra | housing_seat_roughness | µm
@1 Housing > Shoulder diameter | housing_shoulder_diameter | mm
Housing > Shoulder run-out | housing_shoulder_runout | mm:3
""",
)
PDM = Office(
    language="en",
    layout="nested",
    file="json",
    machines="Disc separator DS-25,Cooling fan CF-71",
    positions="upper,lower",
    bearing="angular B;ball -2RS/C3",
    dwg="DS-0000",
    choices="grease=grease;oil bath=oil bath;locating=locating;floating=floating;"
    "vertical=vertical;horizontal=horizontal",
    more={"at": "spindle > bearingPositions", "boxed": "value unit", "units": "key"},
    lines="""
documentClass | - | Bearing arrangement
lifecycleState | - | In review
productName | machine
drawingNumber | drawing_number
revision | drawing_revision
spindle > maxSpeed | speed_max | rpm
spindle > operatingSpeed | speed_operating | rpm
spindle > shaftOrientation | shaft_orientation
spindle > rotorMass | rotor_mass | kg
spindle > bearingSpan | bearing_span | mm
spindle > residualUnbalance | residual_unbalance | g·mm
position | station
bearing > designation | bearing_designation
@0 bearing > contactAngle | contact_angle | °
bearing > axialRole | axial_role
bearing > lubrication | lubrication
bearing > dynamicLoadRating | dynamic_rating | kN
bearing > radialLoad | radial_load | N
bearing > axialLoad | axial_load | N
shaftSeat > nominalDiameter | shaft_seat_diameter | mm | {n}
shaftSeat > toleranceClass | shaft_seat_diameter | | {c}
shaftSeat > cylindricity | shaft_seat_cylindricity | µm
shaftSeat > totalRunout | shaft_seat_runout | µm
shaftSeat > roughnessRa | shaft_seat_roughness | µm
shaftSeat > shoulderDiameter | shaft_shoulder_diameter | mm
housingSeat > nominalDiameter | housing_seat_diameter | mm | {n}
housingSeat > toleranceClass | housing_seat_diameter | | {c}
housingSeat > cylindricity | housing_seat_cylindricity | µm
housingSeat > totalRunout | housing_seat_runout | µm
housingSeat > roughnessRa | housing_seat_roughness | µm
housingSeat > shoulderDiameter | housing_shoulder_diameter | mm
""",
)
ODD = (FIRST_ARTICLE, CAD, INCH)
EVEN = (FLEET, FMEA, PDM)
