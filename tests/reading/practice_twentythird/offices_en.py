"""The offices that write English."""

from practice_twentythird.office import Office

DATA_SHEET = Office(
    language="en",
    layout="transposed",
    file="xlsx",
    machines="Grinding spindle GSP-80,Internal grinding spindle IGS-45",
    positions="Front,Rear",
    bearing="angular C/P4;angular AC/P4",
    dwg="GSP-0000",
    choices="horizontal=Horizontal;vertical=Vertical;spring=Spring",
    sheet="Data sheet",
    page="""
SPINDLE DATA SHEET | | | Page 1 of 1
Spindle | {m} | Drawing No. | {dwg}
Revision | {rev} | Issued | {day} Jan 2026
Max. speed [rpm] | {n} | Shaft position | {ori}
@1 {preload_method} preload [N] | {prel} | Rotor mass [kg] | {mass}

> Item | Unit | [p | {p} bearing | p] | Remark
Bearing designation | – | [p | {brg} | p]
Boundary dimensions d x D x B | mm | [p | {d} x {D} x {B} | p]
@0 Basic dynamic load rating C | N | [p | {C} | p] | ISO 281
@0 Limiting speed, grease | rpm | [p | {limiting_speed} | p]
@1 Contact angle | ° | [p | {contact_angle} | p]
Radial load Fr | N | [p | {fr} | p] | cutting force included
Axial load Fa | N | [p | {fa} | p]
SHAFT
Shaft seat diameter | mm | [p | {ss.n} {ss.c} | p] | ground
Upper deviation | µm | [p | {ss.u:um} | p]
Lower deviation | µm | [p | {ss.l:um} | p]
Cylindricity of shaft seat | µm | [p | {scy:um} | p]
Roughness Ra of shaft seat | µm | [p | {sra} | p]
Shaft shoulder diameter | mm | [p | {ssh} | p]
Axial runout of shaft shoulder | µm | [p | {ssr:um} | p]
HOUSING
Housing seat diameter | mm | [p | {hs.n} {hs.c} | p] | honed
Upper deviation | µm | [p | {hs.u:um} | p]
Lower deviation | µm | [p | {hs.l:um} | p]
Cylindricity of housing seat | µm | [p | {hcy:um} | p]
Roughness Ra of housing seat | µm | [p | {hra} | p]
Housing shoulder diameter | mm | [p | {hsh} | p]
@1 Axial runout of housing shoulder | µm | [p | {hsr:um} | p]
""",
)
PUMP = Office(
    language="en",
    layout="JSON nested",
    file="json",
    machines="Dosing pump DP-12,Dosing pump DP-30",
    positions="drive side,eccentric side",
    bearing="ball -2RS1;ball -2RSH/C3",
    dwg="DP00-000",
    choices="grease=grease;steel=C45;stainless steel=1.4305;aluminium=EN AC-44300;cast iron=EN-GJL-200",
    page="""
{"exportedFrom": "item master", "status": "Released", "checkedBy": "PW",
 "item": {"number": "{dwg}", "revision": "{rev}", "description": "{m}", "mass_kg": 4.2},
 "operatingData": {"maximumSpeed_rpm": "{n}", "requiredLifeL10h_h": "{life}", "ambientTemperature_C": "{amb}"},
 "shaftMaterial": "{smat}", "housingMaterial": "{hmat}",
 "bearingLocations": ["*p", {
   "location": "{p}",
   "bearing": {"partNumber": "{brg}", "lubrication": "{lub}", "internalClearance": "{clr}", "supplier": "open"},
   "loads_N": {"radial": "{fr}", "axial": "{fa}"},
   "shaftSeat": {"diameter_mm": "{ss.n}", "tolerance": "{ss.c}", "upperDeviation_mm": "{ss.u:mm}",
     "lowerDeviation_mm": "{ss.l:mm}", "roughnessRa_um": "{sra}", "cylindricity_mm": "{scy}",
     "shoulderDiameter_mm": "{ssh}", "maxFilletRadius_mm": "{sfi}"},
   "housingSeat": {"diameter_mm": "{hs.n}", "tolerance": "{hs.c}", "upperDeviation_mm": "{hs.u:mm}",
     "lowerDeviation_mm": "{hs.l:mm}", "roughnessRa_um": "{hra}", "cylindricity_mm": "{hcy}",
     "shoulderDiameter_mm": "{hsh}", "maxFilletRadius_mm": "{hfi}"}}]}
""",
)
PLAN = Office(
    language="en",
    layout="long",
    file="csv , utf-8",
    machines="Axial fan AX-250,Axial fan AX-315",
    positions="A,B",
    bearing="ball -2Z/C3;ball ZZ",
    dwg="QP-00000",
    page="""
Inspection plan
Product: {m} | | Drawing: {dwg} | | Rev.: {rev} | | {day}/02/2026

> Op. | Bearing position | Characteristic | Nominal | Tol. class | Upper tol. | Lower tol. | Unit | Method
*{#} | {p} | Shaft seat diameter | {ss.n:mm:3} | {ss.c} | {ss.u:mm} | {ss.l:mm} | mm | Air ring
*{#} | {p} | Housing bore diameter | {hs.n:mm:3} | {hs.c} | {hs.u:mm} | {hs.l:mm} | mm | Air plug
*{#} | {p} | Shaft seat cylindricity | | | {scy:mm:4} | 0 | mm | Form tester
*{#} | {p} | Housing bore cylindricity | | | {hcy:mm:4} | 0 | mm | Form tester
*{#} | {p} | Shaft seat total runout | | | {sro:mm:4} | 0 | mm | Bench centres
*{#} | {p} | Shaft shoulder axial runout | | | {ssr:mm:4} | 0 | mm | Bench centres
@1 *{#} | {p} | Housing shoulder axial runout | | | {hsr:mm:4} | 0 | mm | CMM
*{#} | {p} | Shaft seat roughness Ra | | | {sra} | 0 | µm | Stylus
*{#} | {p} | Housing bore roughness Ra | | | {hra} | 0 | µm | Stylus
""",
)
INCH = Office(
    language="en",
    layout="position rows",
    file="csv , cp1252",
    machines="VANE BLOWER 6VB,GENERATOR HEAD 2KW",
    positions="DE,ODE",
    bearing="ball ZZ;ball -2RS",
    dwg="D-00000",
    bare_point=True,
    choices="grease=GREASE, POLYUREA;horizontal=HORIZONTAL;vertical=VERTICAL",
    page="""
BEARING FITS | {m}
DWG NO | {dwg} | REV | {rev} | DRAWN | HL
MAX RPM | {n}
SHAFT ATTITUDE | {ori}
ALL DIMENSIONS IN INCHES, SURFACE FINISH IN MICROINCHES RA

> BRG LOCATION | BEARING NO. | LUBRICANT | RADIAL LOAD (LBF) | SHAFT DIA MAX | SHAFT DIA MIN | SHAFT FINISH \
| SHAFT CYLINDRICITY | SHAFT SHOULDER DIA | SHAFT FILLET RAD MAX | HOUSING BORE MAX | HOUSING BORE MIN \
| HOUSING FINISH | HOUSING CYLINDRICITY | HOUSING SHOULDER DIA | NOTES
*{p} | {brg} | {lub} | {fr:lbf} | {ss.max:in} | {ss.min:in} | {sra:uin} | {scy:in:4} | {ssh:in:3} | {sfi:in:3} \
| {hs.max:in} | {hs.min:in} | {hra:uin} | {hcy:in:4} | {hsh:in:3} | {~BREAK EDGES;}
""",
)
FAMILY = Office(
    language="en",
    layout="machine rows",
    file="xlsx",
    machines="SM-40,SM-60,SM-80,PMG-1,PMG-3,PMG-5",
    positions="DE,NDE",
    bearing="ball -2Z;ball -2RZ/C3",
    dwg="K00.000",
    count=3,
    choices="grease=grease;continuous=S1 continuous;intermittent=S3 intermittent",
    sheet="Range",
    page="""
Bearing seats of the range | | | | updated {day}-Feb-26
> Model | Dwg. | Rated max. speed rpm | Rotor mass kg | DE bearing | NDE bearing | DE shaft seat mm \
| NDE shaft seat mm \
| DE shaft seat Ra µm | NDE shaft seat Ra µm | DE housing bore mm | NDE housing bore mm | DE housing bore Ra µm \
| NDE housing bore Ra µm | DE radial load N | NDE radial load N | Weight class | Comment
%m
@0 {m} | {dwg} | {n} | {mass} | {1/brg} | {2/brg} | {1/ss.n} {1/ss.c} | {2/ss.n} {2/ss.c} | {1/sra} | {2/sra} \
| {1/hs.n} {1/hs.c} | {2/hs.n} {2/hs.c} | {1/hra} | {2/hra} | {1/fr} | {2/fr} | {~I;II} | {~;see ECN}
@1 {m} | {dwg} | {n} | {mass} | {1/brg} | {2/brg} | {1/ss.min:mm} - {1/ss.max:mm} | {2/ss.min:mm} - {2/ss.max:mm} \
| {1/sra} | {2/sra} \
| {1/hs.min:mm} - {1/hs.max:mm} | {2/hs.min:mm} - {2/hs.max:mm} | {1/hra} | {2/hra} | {1/fr} | {2/fr} | {~I;II} \
| {~;see ECN}
%end
DE = drive end, NDE = non-drive end
""",
)
ODD = (DATA_SHEET, PUMP, PLAN)
EVEN = (INCH, FAMILY)
