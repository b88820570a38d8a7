# ruff: noqa: E501 - a line of a picture is a line of the table
"""Offices that write English."""

from practice_twentyfirst.marks import Office

WORKSHEET = Office(
    language="en", layout="row per position", file="xlsx", sheet="Brg seats", fits="k5 j5 js5 k6/H6 J6 JS6 K6",
    machines="Cooling tower fan CTF-9,Dough mixer DM-40", positions="DE,NDE", bearing="ball -2RS1;ball -2Z/C3",
    number="E-00000", choices="grease=Grease;locating=Locating;floating=Non-locating",
    picture="""
Bearing arrangement worksheet
Equipment: | {ma} | | Dwg: | {dn} | Rev: | {rv}
Prepared by: | R. Moss | | Date: | 2025-03-{day} | Status: | {pick=In work;Released}
Speed, max. (rpm): | {nx} | | Required L10h (h): | {li} |
@0 Ambient (°C): | {ta} | | Rotor mass (kg): | {rm} |
@1 Temperature (°C): | {?ts,th,ta} | | Balance grade G (mm/s): | {bg}
@1 Weight of rotor (kg): | {rm} | | Bearing spacing (mm): | {sp} |

^Bearing location | Bearing no. | Function | Fr [N] | Fa [N] | Shaft dia. [mm] | Shaft fit | Dev. upper [µm] | Dev. lower [µm] | Shaft Ra [µm] | Shaft shoulder dia. [mm] | Bore dia. [mm] | Bore fit | Dev. upper [µm] | Dev. lower [µm] | Bore Ra [µm] | Housing shoulder dia. [mm] | Lubrication | Supplier | Note
%each
{st} | {bd} | {ax} | {fr} | {fa} | {sd~mm/µm=n} | {sd~mm/µm=c} | {sd~mm/µm=u} | {sd~mm/µm=l} | {sa} | {ss} | {hd~mm/µm=n} | {hd~mm/µm=c} | {hd~mm/µm=u} | {hd~mm/µm=l} | {ha} | {hs} | {lu} | {pick=stock;to be quoted} |
%end

Tolerances to ISO 286. Unspecified radii per general note 4.
""",
)  # fmt: skip
ITEMS = Office(
    language="en", layout="JSON attribute list", file="json", machines="Strip winder SW-2,Hammer mill rotor HMR-7",
    positions="A,B", bearing="angular C;ball", number="7000-000", fits="h5 js5 k5 m5/H6 H7 JS6 K6",
    choices="steel=steel, 42CrMo4;cast iron=cast iron;aluminium=aluminium alloy;grease=grease;horizontal=horizontal;vertical=vertical",
    picture="""
{
"documentType": "parameter set",
"exported": "2025-04-{day}T07:30:00",
"parameters": [
 {"id": "P{#=000}", "object": "Machine", "attribute": "Name", "value": "{ma}", "uom": ""},
 {"id": "P{#=000}", "object": "Machine", "attribute": "Drawing number", "value": "{dn}", "uom": ""},
 {"id": "P{#=000}", "object": "Machine", "attribute": "Revision", "value": "{rv}", "uom": ""},
 {"id": "P{#=000}", "object": "Machine", "attribute": "Maximum speed", "value": "={nx}", "uom": "rpm"},
 {"id": "P{#=000}", "object": "Machine", "attribute": "Required rating life", "value": "={li}", "uom": "h"},
 {"id": "P{#=000}", "object": "Machine", "attribute": "Shaft orientation", "value": "{or}", "uom": ""},
 {"id": "P{#=000}", "object": "Machine", "attribute": "Shaft material", "value": "{ms}", "uom": ""},
 {"id": "P{#=000}", "object": "Machine", "attribute": "Housing material", "value": "{mh}", "uom": ""},
%each
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Designation", "value": "{bd}", "uom": ""},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Dynamic load rating C", "value": "={C~kN}", "uom": "kN"},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Radial load", "value": "={fr}", "uom": "N"},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Axial load", "value": "={fa}", "uom": "N"},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Lubrication", "value": "{lu}", "uom": ""},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Lock nut tightening torque", "value": "={nt}", "uom": "N·m"},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Shaft seat diameter", "value": "{sd=n c}", "uom": "mm"},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Shaft seat roughness Ra", "value": "={sa}", "uom": "µm"},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Shaft seat cylindricity", "value": "={sc}", "uom": "mm"},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Shaft abutment diameter", "value": "={ss}", "uom": "mm"},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Housing bore diameter", "value": "{hd=n c}", "uom": "mm"},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Housing bore roughness Ra", "value": "={ha}", "uom": "µm"},
 {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Housing bore cylindricity", "value": "={hc}", "uom": "mm"},
@1  {"id": "P{#=000}", "object": "Bearing {st}", "attribute": "Housing abutment diameter", "value": "={hs}", "uom": "mm"},
%end
]
}
""",
)  # fmt: skip
INCH = Office(
    language="en", layout="row per seat", file="csv , utf-8", machines="Condensate pump CP-6,Paper slitter PS-88",
    positions="Coupling end,Outboard end", bearing="ball;ball -2Z", number="D000000",
    picture="""
ROTATING ASSEMBLY - BEARING FITS, ALL DIMENSIONS INCH, FINISH MICROINCH
ASSY NAME | {ma}
ASSY DWG | {dn} | CHG | {rv}
RATED SPEED MAX RPM | {nx}

^ITEM | BEARING POSITION | BEARING P/N | SEAT | DIA MIN | DIA MAX | FINISH RA | CYLINDRICITY | TOTAL RUNOUT | FILLET RADIUS MAX | SHOULDER DIA | INSP CODE
%each
%sides s=SHAFT_JOURNAL h=HOUSING_BORE
{#} | {st} | {bd} | $$ | {*d~in=m} | {*d~in=M} | {*a~µin} | {*c~in} | {*r~in} | {*f~in} | {*s~in} | {pick=A1;B2;B4}
%end
%end
""",
)  # fmt: skip
EXTRACT = Office(
    language="en", layout="long", file="txt tab utf-16", machines="Roots blower RB-3,Textile spindle TS-60",
    positions="Front,Rear", bearing="small ZZ;small -2RS", number="VB-000-00", left=True,
    fits="js5 js6/JS6 JS7", choices="grease=grease;locating=fixed;floating=floating;inner=inner ring",
    picture="""
^Assembly | Component | Characteristic | Nominal | Tolerance | Unit | Source
{ma} | Rotor | Drawing no. | {dn} | | | PDM
{ma} | Rotor | Maximum speed | {nx} | | 1/min | spec
{ma} | Rotor | Operating speed | {no} | | 1/min | spec
{ma} | Rotor | Rotor mass | {rm} | | kg | CAD
@0 {ma} | Housing | Coaxiality of the bores | {cb} | | mm | CAD
{ma} | Rotor | Rotating ring | {rr} | | | spec
%each
{ma} | {st} bearing | Bearing designation | {bd} | | | BOM
{ma} | {st} bearing | Axial location | {ax} | | | spec
{ma} | {st} bearing | Lubricant | {lu} | | | spec
{ma} | {st} bearing | Radial load | {fr} | | N | calc
{ma} | {st} bearing | Axial load | {fa} | | N | calc
{ma} | {st} bearing | Shaft seat diameter | {sd=n} | {sd=±t} | mm | CAD
{ma} | {st} bearing | Shaft seat cylindricity | {sc} | | mm | CAD
{ma} | {st} bearing | Shaft seat total run-out | {sr} | | mm | CAD
{ma} | {st} bearing | Shaft seat roughness Ra | {sa} | | µm | CAD
{ma} | {st} bearing | Shaft shoulder diameter | {ss} | | mm | CAD
@1 {ma} | {st} bearing | Shaft fillet radius | {sf} | | mm | CAD
{ma} | {st} bearing | Housing bore diameter | {hd=n} | {hd=±t} | mm | CAD
{ma} | {st} bearing | Housing bore cylindricity | {hc} | | mm | CAD
{ma} | {st} bearing | Housing bore roughness Ra | {ha} | | µm | CAD
{ma} | {st} bearing | Housing shoulder diameter | {hs} | | mm | CAD
%end
""",
)  # fmt: skip
COMPARE = Office(
    language="en", layout="transposed", left=True, file="csv , utf-8-sig", machines="Ozone blower OB-5,Wire stranding head WSH-3",
    positions="1,2", bearing="ball -2Z;angular C/P5", number="MX00-0000", fits="k5 k6 m5 j6/H6 H7 J7 M6",
    choices="grease=Grease lubrication;steel=Steel;cast iron=Cast iron;aluminium=Aluminium;locating=Locating bearing;floating=Floating bearing",
    picture="""
Design parameters of rotor {ma}
Drawing {dn} issue {rv} | | | checked: HP

^Parameter | Symbol | Unit | <<Bearing {st}>> | Comment
Bearing | | | <<{bd}>> | see parts list
Arrangement | | | <<{ax}>> |
Bore | d | mm | <<{d}>> |
Outside diameter | D | mm | <<{D}>> |
Width | B | mm | <<{B}>> |
@0 Limiting speed | n lim | rpm | <<{nl}>> | catalogue
@1 Contact angle | α | ° | <<{ca}>> | catalogue
Radial load | Fr | N | <<{fr}>> | load case 2
Axial load | Fa | N | <<{fa}>> | load case 2
Lubrication | | | <<{lu}>> |
Shaft seat | | mm | <<{sd=n c}>> | ground
Shaft seat roughness | Ra | µm | <<{sa}>> |
Shaft seat cylindricity | t1 | µm | <<{sc~µm}>> |
Shaft shoulder diameter | da | mm | <<{ss}>> |
Shaft shoulder axial runout | t4 | µm | <<{sw~µm}>> |
Housing seat | | mm | <<{hd=n c}>> | fine bored
Housing seat roughness | Ra | µm | <<{ha}>> |
Housing seat cylindricity | t1 | µm | <<{hc~µm}>> |
Housing shoulder diameter | Da | mm | <<{hs}>> |
@1 Housing outside diameter | | mm | <<{ho}>> | turned
Weight of bearing | | kg | <<{pick=0.04;0.09;0.13}>> |

Maximum speed | n | rpm | {nx}
Required life | L10h | h | {li}
Shaft material | | | {ms}
Housing material | | | {mh}
""",
)  # fmt: skip
ODD = (WORKSHEET, ITEMS, INCH)
EVEN = (EXTRACT, COMPARE)
