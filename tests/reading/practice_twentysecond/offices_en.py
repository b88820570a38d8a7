"""The offices that write English."""

from practice_twentysecond.firm import Firm

PUMPS = Firm(
    language="en",
    layout="row per position",
    file="csv , utf-8",
    machines="Multistage pump MP 65-5,Process pump PP 100-250",
    positions="DE,NDE;Coupling end,Free end",
    bearing="ball /C3;angular B",
    fits="k5 m5 k6/H6 J6 H7",
    dwg="MP-00-0000",
    choices="grease=grease;oil bath=oil bath;horizontal=horizontal;vertical=vertical;locating=locating;"
    "floating=non-locating",
    lines="""
Bearing arrangement of pump shaft
Pump: {mach} | | | Drawing: {dwg} rev. {rev}
Rated speed {nop:rpm} rpm, trip speed {nmax:rpm} rpm, L10h required {life:h} h
Dimensions in mm, surface texture Ra in µm

^Side | Housing bore | Shaft journal | @0 Function | Brg no. | Lube | Fr, N | Fa, N | Ra bore | Ra journal | \
Bore shoulder dia. | Shaft shoulder dia. | Cyl. tol. bore | Cyl. tol. journal | Total runout journal | \
@1 Total runout bore | Pattern no. | Checked
p {P} | {Hd.n:mm} {Hd.c} | {Sd.n:mm} {Sd.c} | @0 {role} | {bd} | {lub} | {Fr:N} | {Fa:N} | {Hr:µm} | {Sr:µm} | \
{Ha:mm} | {Sa:mm} | {Hc:mm:3} | {Sc:mm:3} | {St:mm:3} | @1 {Ht:mm:3} | {=C-118;C-119} | RB

General tolerances ISO 2768-mK; sharp edges broken.
""",
)
BLOWERS = Firm(
    language="en",
    layout="json nested",
    file="json",
    machines="Roots blower RB 3/125,Side channel blower SC 42",
    positions="gear side,drive side",
    bearing="roller /C3;ball /C3",
    dwg="R00000",
    choices="grease=grease;oil bath=oil bath;horizontal=horizontal;vertical=vertical;steel=42CrMo4;"
    "cast iron=EN-GJL-250;aluminium=EN AC-42100;locating=fixed;floating=free",
    lines="",
    tree={
        "doc": {"type": "ROTOR_SHEET", "exported": "2025-03-{day}", "status": "released"},
        "unitSystem": {"length": "mm", "force": "N", "speed": "rpm", "roughness": "um"},
        "product": {"name": "{mach}", "drawing": "{dwg}", "rev": "{rev}", "weightClass": "B"},
        "rotor": {
            "maxSpeed": "{nmax:rpm}",
            "massKg": "{mass:kg}",
            "balanceQualityGrade": "G{G}",
            "shaftMaterial": "{mats}",
            "@0 bearingSpan": "{span:mm}",
            "@1 orientation": "{ori}",
        },
        "casing": {"material": "{math}", "boreCoaxiality": "{coax:mm}"},
        "supports": [
            "@p",
            {
                "location": "{P}",
                "bearing": {
                    "type_code": "{bd}",
                    "internalClearance": "{cl}",
                    "arrangement": "{role}",
                    "lubrication": "{lub}",
                },
                "loads": {"radial": "{Fr:N}", "axial": "{Fa:N}"},
                "journal": {
                    "diameter": {"nominal": "{Sd.n:mm}", "upper": "{Sd.u:mm}", "lower": "{Sd.l:mm}"},
                    "cylindricity": "{Sc:mm}",
                    "totalRunout": "{St:mm}",
                    "Ra": "{Sr:µm}",
                    "shoulderDiameter": "{Sa:mm}",
                    "@1 maxFilletRadius": "{Sf:mm}",
                },
                "bore": {
                    "diameter": {"nominal": "{Hd.n:mm}", "upper": "{Hd.u:mm}", "lower": "{Hd.l:mm}"},
                    "cylindricity": "{Hc:mm}",
                    "Ra": "{Hr:µm}",
                    "shoulderDiameter": "{Ha:mm}",
                },
            },
        ],
    },
)
SPINDLES = Firm(
    language="en",
    layout="parts list",
    file="xlsx",
    machines="Gear spindle GS 280,Feed spindle FS 140",
    positions="front,rear",
    bearing="spindle C/P5;ball -2Z",
    fits="js5 k5 h6/H6 JS7 J6",
    dwg="GS0-000.00",
    choices="steel=16MnCr5, case hardened;horizontal=horizontal;vertical=vertical",
    more={"sheet": "BOM", "merge": "1"},
    lines="""
PARTS LIST WITH FITS |  |  |  | Dwg no. | {dwg}
Spindle | {mach} |  |  | Revision | {rev}
max. rpm | {nmax:rpm} |  |  | Preload force [N] | {Fv:N}

^Item | Qty | Part | Mounted | Designation / material | Fit dia. [mm] | ISO tol. | Max. [mm] | Min. [mm] | Ra [µm] | \
Cylindricity [µm] | Axial runout of shoulder [µm] | Shoulder Ø [mm] | Mass [kg]
1 | 1 | Spindle shaft |  | {mats} | | | | | | | | | 6.8
[p
{=1;2}0 | 1 | Rolling bearing | {P} | {bd} | | | | | | | | | 0.4
{=1;2}1 | - | Shaft seat | {P} |  | {Sd.n:mm} | {Sd.c} | {Sd.max:mm} | {Sd.min:mm} | {Sr:µm} | {Sc:µm} | {Sb:µm} | \
{Sa:mm}
{=1;2}2 | - | Housing seat | {P} |  | {Hd.n:mm} | {Hd.c} | {Hd.max:mm} | {Hd.min:mm} | {Hr:µm} | {Hc:µm} | {Hb:µm} | \
{Ha:mm}
]
98 | 2 | Shaft seal | | NBR 72 | | | | | | | | | 0.02
99 | 8 | Socket head screw | | M8x25-8.8 | | | | | | | | | 0.01

@0 Shafts to be balanced to G {G}, operating speed {nop:rpm} rpm
@1 Shaft mounted {ori}, operating speed {nop:rpm} rpm
""",
)
MOTORS = Firm(
    language="en",
    layout="row per machine",
    file="xlsx",
    machines="Motor frame 213T,Motor frame 254T,Motor frame 284T,Motor frame 324T",
    positions="DE,ODE;Drive end,Opp. drive end",
    bearing="ball ZZ/C3;ball /C3",
    fits="k5 j5 k6/H6 H7 J7",
    dwg="M-00000",
    count=2,
    choices="grease=grease",
    more={"sheet": "Frames"},
    lines="""
END BELL AND SHAFT MACHINING TABLE - INCH
Sizes in inch, surface finish in µin, loads in lbf

^Frame | Dwg | Rev | Max rpm | Rotor wt (lb) | Brg {1.P} | Shaft {1.P} max | Shaft {1.P} min | Bore {1.P} max | \
Bore {1.P} min | Shaft finish {1.P} | Bore finish {1.P} | Radial load {1.P} | @1 Axial load {1.P} | \
Shaft shoulder {1.P} | Brg {2.P} | \
Shaft {2.P} max | Shaft {2.P} min | Bore {2.P} max | Bore {2.P} min | Shaft finish {2.P} | Bore finish {2.P} | \
Radial load {2.P} | @1 Axial load {2.P} | Shaft shoulder {2.P} | ECN | Buyer
m {mach} | {dwg} | {rev} | {nmax:rpm} | {mass:lb} | {1.bd} | {1.Sd.max:in} | {1.Sd.min:in} | {1.Hd.max:in} | \
{1.Hd.min:in} | {1.Sr:µin} | {1.Hr:µin} | {1.Fr:lbf} | @1 {1.Fa:lbf} | {1.Sa:in} | {2.bd} | {2.Sd.max:in} | \
{2.Sd.min:in} | {2.Hd.max:in} | {2.Hd.min:in} | {2.Sr:µin} | {2.Hr:µin} | {2.Fr:lbf} | @1 {2.Fa:lbf} | {2.Sa:in} | \
24-117 | in-house
""",
)
ATTRIBUTES = Firm(
    language="en",
    layout="long",
    file="txt tab utf-8",
    machines="Induction motor IM 180L-4,Induction motor IM 200M-2",
    positions="D-end,N-end",
    bearing="ball /C3;roller /C3",
    dwg="A000000",
    choices="grease=Grease;oil bath=Oil bath;steel=Carbon steel;cast iron=Grey cast iron;aluminium=Aluminium;"
    "horizontal=Horizontal;vertical=Vertical;locating=Locating;floating=Floating",
    more={"label": "1 2"},
    lines="""
^Object | Attribute | Unit | Value | Last change
Motor | Model | | {mach} | 2025-01-{day}
Motor | Drawing number | | {dwg} | 2025-01-{day}
Motor | Drawing revision | | {rev} |
Motor | Maximum speed | r/min | {nmax:rpm} |
Motor | Rotor mass | kg | {mass:kg} |
@0 Motor | Ambient temperature | °C | {tamb:°C} |
@1 Motor | Shaft orientation | | {ori} |
Motor | Paint | | RAL 5010 |
[p
Bearing {P} | Designation | | {bd} |
Bearing {P} | Locating / floating | | {role} |
Bearing {P} | Lubrication | | {lub} |
Bearing {P} | Relubrication interval | h | {regr:h} |
@0 Bearing {P} | Grease fill of free space | % | {fill:%} |
Bearing {P} | Radial load | kN | {Fr:kN} |
Bearing {P} | Axial load | kN | {Fa:kN} |
Shaft seat {P} | Nominal diameter | mm | {Sd.n:mm} | 2025-02-{day}
Shaft seat {P} | Upper deviation | µm | {Sd.u:µm} |
Shaft seat {P} | Lower deviation | µm | {Sd.l:µm} |
Shaft seat {P} | Roughness Ra | µm | {Sr:µm} |
Shaft seat {P} | Cylindricity | µm | {Sc:µm} |
Shaft seat {P} | Shoulder diameter | mm | {Sa:mm} |
Housing seat {P} | Nominal diameter | mm | {Hd.n:mm} |
Housing seat {P} | Upper deviation | µm | {Hd.u:µm} |
Housing seat {P} | Lower deviation | µm | {Hd.l:µm} |
Housing seat {P} | Roughness Ra | µm | {Hr:µm} |
Housing seat {P} | Cylindricity | µm | {Hc:µm} |
]
""",
)
FANS = Firm(
    language="en",
    layout="transposed",
    file="csv ; utf-8-sig",
    machines="Blower BL-20,Blower BL-25,Blower BL-32,Blower BL-40",
    positions="motor side,wheel side",
    bearing="ball -2Z/C3;ball -2RS1",
    dwg="BL-0000",
    count=2,
    choices="grease=grease;oil bath=oil;locating=fixed;floating=floating",
    lines="""
BLOWER RANGE - BEARING SEATS | | | | | Sheet 3 of 7
Issued | {day}-Feb-2025 | by | GK

^Line | Description | Unit | **{mach} | Source
^ | | | *{P} |
1 | Bearing | - | *{bd} | catalogue
2 | Bearing function | - | *{role} | layout
3 | Outside dia. D | mm | *{D:mm} | catalogue
4 | Bore d | mm | *{d:mm} | catalogue
5 | Width B | mm | *{B:mm} | catalogue
6 | Basic dynamic load rating | kN | *{C:kN} | catalogue
7 | Radial load on bearing | N | *{Fr:N} | calc. sheet 2
8 | Axial load on bearing | N | *{Fa:N} | calc. sheet 2
9 | Fit on shaft | - | *{Sd.c} | layout
10 | Journal Ra | µm | *{Sr:µm} | std
11 | Journal cylindricity | mm | *{Sc:mm} | std
12 | Fit in housing | - | *{Hd.c} | layout
13 | Bearing housing Ra | µm | *{Hr:µm} | std
14 | Bearing housing cylindricity | mm | *{Hc:mm} | std
@1 15 | Operating temp. of bearing | °C | *{top:°C} | test
""",
)
ODD = (PUMPS, BLOWERS, SPINDLES)
EVEN = (MOTORS, ATTRIBUTES, FANS)
