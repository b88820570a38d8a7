"""The offices that write English: a motor shop, a spindle repairer, a pump maker, a blower maker."""

from practice_twentyfourth.office import Office

MOTOR_SHOP = Office(
    language="en",
    layout="position rows",
    file="csv , utf-8",
    machines="Crusher motor CM-132,Chiller motor RM-90",
    positions="Drive end,Fan end",
    bearings="6308-2Z/C3+6208-2Z/C3;NU207+6207",
    dwg="M0-0000",
    thousands=",",
    choices="grease=Grease;oil bath=Oil bath;steel=Steel, EN8;stainless steel=Stainless 431;horizontal=Horizontal;"
    "vertical=Vertical;locating=Held;floating=Free to float;cast iron=Cast iron;aluminium=Aluminium",
    template="""
OVERHAUL SPECIFICATION - BEARING FITS
Motor type: | {machine} | Print no.: | {dwg} | Issue: | {rev}
Top speed (rpm): | {nmax} | Mounting (shaft): | {ori} | Shaft material: | {smat}
@0 Rotor weight (kg): | {mass} | Balance quality: | G {G}
@1 Rotor weight (kg): | {mass} | Design life L10h (h): | {life}

# Motor end | Brg. part number | Int. clearance class | Axial arrangement | Lubricated by | Bearing journal (mm) \
| Journal finish Ra (µm) | Journal total run-out, TIR (mm) | Journal cylindricity (mm) | Shoulder dia. on shaft (mm) \
| End shield bore (mm) | Bore finish Ra (µm) | Bore cylindricity (mm) | Housing shoulder dia. (mm) \
| Regrease every (h) | Bin
p> {p} | {bd} | {cc} | {role} | {lub} | {sd.n} {sd.c} ({sd.u}/{sd.l}) | {sra} | {sru.n:mm.3} | {scy.n:mm.3} | {ssh} \
| {hd.n} {hd.c} ({hd.u}/{hd.l}) | {hra} | {hcy.n:mm.3} | {hsh} | {regr} | {;K-04;K-11}

Compiled by winding shop, {day} May 2024. Measure journals at 20 °C.
""",
)
SPINDLE = Office(
    language="en",
    layout="blocks of positions",
    file="xlsx",
    machines="Jig bore spindle JB-4,Internal grinding spindle IG-30",
    positions="NOSE,TAIL",
    bearings="7010 C/P4+7008 C/P4;71908 C/P4+71906 C/P4",
    fits="js4 js5 h5 k4/JS5 H5 JS6",
    dwg="SR0000",
    sheet="Rebuild",
    choices="grease=Grease, packed;oil bath=Oil bath;spring=Spring;none=None",
    template="""
SPINDLE REBUILD SHEET | < | < | < | <
Spindle | {machine} | | Ref. drawing | {dwg}
Maximum speed, rpm | {nmax} | | Rotor balance grade | G{G}
@0 Rotor mass, g | {mass:g} | | Temperature of surroundings, °C | {amb}
@1 Rotor mass, kg | {mass} | | Basic rating life required, h | {life}
Preload force, N | {pf} | | Bearing centre distance, mm | {span}
for p:

{p}
Bearing | {bd}
Lubrication | {lub}
Radial load, N | {fr}
Thrust load, N | {fa}
# Check | Max. | Min. | As found | Pass
Shaft seat diameter, mm | {sd.max} | {sd.min}
Shaft seat cylindricity, mm | {scy.n:mm.3}
Shaft seat roughness Ra, µm | {sra}
Shaft shoulder face run-out, mm | {ssr.n:mm.3}
Shaft shoulder diameter, mm | {ssh.n:mm.1}
Housing bore diameter, mm | {hd.max} | {hd.min}
Housing bore cylindricity, mm | {hcy.n:mm.3}
Housing bore roughness Ra, µm | {hra}
Housing shoulder face run-out, mm | {hsr.n:mm.3}
--
end

Fitter | | | Date
""",
)
PUMPS = Office(
    language="en",
    layout="long list",
    file="csv , utf-8-sig",
    machines="Booster pump BP-310,Slurry pump SL-26",
    positions="Impeller side,Coupling side",
    bearings="6306+6305;6309+6208",
    fits="k5 k6 j5 m5/H7 H6 J7",
    dwg="P00-000",
    choices="grease=Grease;oil bath=Oil bath",
    template="""
Bearing Frame Data Sheet
Pump model | {machine}
Drawing No. | {dwg}
Max pump speed (RPM) | {nmax}
@1 Rotor weight (lb) | {mass:lb}
@0 Ambient temperature (°F) | {amb:°F}
Required bearing life (h) | {life}

# Bearing location | Characteristic | Nominal | Upper tol. | Lower tol. | U/M | Insp. method
for p:
{p} | Bearing designation | {bd}
{p} | Lubrication method | {lub}
{p} | Radial load | {fr:lbf} | | | lbf
{p} | Thrust load | {fa:lbf} | | | lbf
{p} | Shaft seat diameter | {sd.n:in.4} | {sd.u:in} | {sd.l:in} | in | {;Mic;Mic}
{p} | Shaft seat surface roughness (Ra) | {sra:µin} | | | µin | Comparator
{p} | Shaft seat cylindricity | {scy:in.4} | | | in
{p} | Shaft shoulder diameter | {ssh:in.3} | | | in
{p} | Housing bore diameter | {hd.n:in.4} | {hd.u:in} | {hd.l:in} | in | Bore gage
{p} | Housing bore surface roughness (Ra) | {hra:µin} | | | µin | Comparator
{p} | Housing bore cylindricity | {hcy:in.4} | | | in
{p} | Housing shoulder diameter | {hsh:in.3} | | | in
@1 {p} | Bearing temperature in operation | {top:°F} | | | °F
end
""",
)
BLOWERS = Office(
    language="en",
    layout="json list of characteristics",
    file="json",
    machines="Aeration blower AB-75,Side channel blower SCB-4",
    positions="DE,NDE",
    bearings="6205-2RZ/C3+6204-2RZ/C3;6206-2Z+6206-2Z",
    dwg="AB-0000-0",
    choices="grease=grease;oil bath=oil bath;locating=locating;floating=floating;steel=C45;stainless steel=X20Cr13;"
    "cast iron=grey cast iron;aluminium=aluminium alloy",
    template="""
{"assembly": "{machine}", "drawing": "{dwg}", "rev": "{rev}", "released_by": "engineering office",
 "characteristics": [
 {"id": 1, "char": "Maximum speed", "loc": "rotor", "val": "{nmax}", "uom": "rpm"},
 {"id": 2, "char": "Rotor mass", "loc": "rotor", "val": "{mass}", "uom": "kg"},
 {"id": 4, "char": "Coaxiality of housing bores", "loc": "rotor", "val": "{cob}", "uom": "mm"},
 {"id": 3, "char": "Housing material", "loc": "rotor", "val": "{hmat}"},
 {"@p": [
 {"id": 10, "char": "Rolling bearing", "loc": "{p}", "val": "{bd}"},
 {"id": 11, "char": "Lubrication", "loc": "{p}", "val": "{lub}"},
 {"id": 12, "char": "Axial function", "loc": "{p}", "val": "{role}"},
 {"id": 13, "char": "Radial load", "loc": "{p}", "val": "{fr}", "uom": "N"},
 {"id": 14, "char": "Axial load", "loc": "{p}", "val": "{fa}", "uom": "N"},
 {"id": 20, "char": "Shaft seat diameter", "loc": "{p}", "val": "{sd.n}", "uom": "mm", "iso_class": "{sd.c}",
  "upper_dev": "{sd.u:mm}", "lower_dev": "{sd.l:mm}"},
 {"id": 21, "char": "Shaft seat roughness Ra", "loc": "{p}", "val": "{sra}", "uom": "um"},
 {"id": 22, "char": "Shaft seat cylindricity", "loc": "{p}", "val": "{scy}", "uom": "mm"},
 {"id": 23, "char": "Shaft shoulder diameter", "loc": "{p}", "val": "{ssh}", "uom": "mm"},
 {"@1": {"id": 24, "char": "Shaft fillet radius, max.", "loc": "{p}", "val": "{sfi}", "uom": "mm"}},
 {"id": 30, "char": "Housing seat diameter", "loc": "{p}", "val": "{hd.n}", "uom": "mm", "iso_class": "{hd.c}",
  "upper_dev": "{hd.u:mm}", "lower_dev": "{hd.l:mm}"},
 {"id": 31, "char": "Housing seat roughness Ra", "loc": "{p}", "val": "{hra}", "uom": "um"},
 {"id": 32, "char": "Housing seat cylindricity", "loc": "{p}", "val": "{hcy}", "uom": "mm"},
 {"id": 33, "char": "Housing shoulder diameter", "loc": "{p}", "val": "{hsh}", "uom": "mm"}]}
 ]}
""",
)
ODD = (MOTOR_SHOP, SPINDLE)
EVEN = (PUMPS, BLOWERS)
