"""The offices that write English."""

from practice_twentyseventh.paper import Office

#: A designer's own spreadsheet: merged headings, empty columns between the parts, thoughts beside them.
WORKING = Office(
    language="en",
    kind="two-row headings",
    file="xlsx",
    sheet="seats",
    machines=(
        "Screw blower SB-120: 6308/C3 + NU208",
        "Lathe spindle HS-30: 71906C/P4",
        "Gear pump GP-16: 6203-2Z + 6202-2Z",
    ),
    positions="gear side,free side",
    drawing="B-00000",
    words="locating=locates;floating=floats;spring-loaded=spring loaded",
    page="""
Bearing seats, working sheet | | | | | | | | | | | | | | | | | | | {pick JM/TR} {day} Sept
Machine | {m} | | | | Drawing no. | {dwg} | | Rev. | {rev}
Top speed | {nmax} | rpm | | | Rotor mass | {mass} | kg
@0 Temperature | {?thg,tsh,tamb} | °C
@01 Life wanted (L10h) | {life} | h | | | Balance grade G | {G} | mm/s

# Location | Bearing | < | < | < | | Shaft seat | < | < | < | < | < | < | | Housing bore | < | < | < | < | < | < |\
| Notes to self
# ^ | Type no. | C (kN) | Fr (N) | axially | | dia. | fit | upper (µm) | lower (µm) | Ra (µm) | cyl. (µm) |\
shoulder dia. | | dia. | fit | upper (µm) | lower (µm) | Ra (µm) | cyl. (µm) | shoulder dia.
[positions]
{st} | {brg} | {C:kN,1} | {Fr} | {role} | | {ss.n} | {ss.c} | {ss.u:u} | {ss.l:u} | {sra} | {scyl:u} | {sda:,1} | |\
{hs.n} | {hs.c} | {hs.u:u} | {hs.l:u} | {hra} | {hcyl:u} | {hda:,1} | |\
{pick ask the shop about lapping/check puller access/gauge is ordered}
[end]

all diameters in mm unless it says otherwise
""",
)

#: A drawing's table of toleranced features in inches, limits only.
FEATURES = Office(
    language="en",
    kind="feature rows",
    file="csv , utf-8-sig",
    machines=(
        "Hydrogen recirculation blower HRB-4: 6202-2Z/C3",
        "Turbine generator TG-30: 7005C/P4 + 6005-2Z/C3",
        "Tension roller TRL-50: 6004-2RS",
    ),
    positions="Brg A,Brg B",
    drawing="70-0000",
    words="steel=AISI 4140;aluminium=A356-T6;cast iron=Class 40 gray iron;horizontal=Horizontal;vertical=Vertical",
    page="""
FEATURE AND LIMIT TABLE - DIMENSIONS IN INCHES
Assembly | {m}
Dwg no. | {dwg} | Rev | {rev}
Drawn | {pick R. Voss/L. Ames} | Date | 2025-07-{day}
@02 Max speed | {nmax} | rpm
@1 Shaft material | {smat} | Housing material | {hmat}
@1 Shaft attitude | {axis}

# Item | Feature | Bearing position | Bearing no. | Max. dia. (in) | Min. dia. (in) | Surface Ra (µin) |\
Cylindricity (in) | Total runout (in) | Abutment dia. (in) | Max fillet (in) | Gauge
[positions]
{#} | Shaft journal | {st} | {brg} | {ss.max:in} | {ss.min:in} | {sra:uin} | {scyl:in,4} | {srun:in,4} |\
{sda:in,4} | {sfil:in} | ring gauge
{#} | Housing bore | {st} | {brg} | {hs.max:in} | {hs.min:in} | {hra:uin} | {hcyl:in,4} | {hrun:in,4} |\
{hda:in,4} | {hfil:in} | {pick plug gauge/air gauge}
[end]

BREAK SHARP EDGES .005 MAX
""",
)

#: A calculation sheet that goes to the customer: a block for each bearing, symbol, value and unit beside each other.
CUSTOMER = Office(
    language="en",
    kind="blocks",
    file="xlsx",
    sheet="Calculation",
    machines=(
        "Agitator drive AD-75: 6210-2Z + 6308-2Z",
        "E-bike motor EM-250: 6902-2RS + 6001-2RS",
        "Drone motor DM-8: 696ZZ",
    ),
    positions="Upper bearing,Lower bearing",
    drawing="CS-000",
    words="grease=grease;oil bath=oil sump;continuous=continuous;intermittent=intermittent;steel=34CrNiMo6;"
    "aluminium=AlSi10Mg;cast iron=EN-GJL-250;horizontal=horizontal;vertical=vertical",
    page="""
Bearing calculation for customer release
Product | {m} | | | Sheet | 1 of 1
Drawing number | {dwg} | | | Revision | {rev}
Prepared by | {pick H. Lowe/S. Patel} | | | Checked | {pick yes/open}

# 1 General data | Symbol | Value | Unit | Comment
Maximum speed | n max | {nmax} | min⁻¹ | from drive data
Operating speed | n op | {nop} | min⁻¹
Required rating life | L10h | {life} | h | customer spec.
@1 Required reliability | | {required_reliability} | %
Distance between bearings | l | {span} | mm
Rotor mass | m | {mass} | kg
Duty | | {duty} | -
@0 Shaft attitude | | {axis} | -
Ambient temperature | | {tamb} | °C
@02 Housing material | | {hmat} | -

[positions]
{st}
Bearing designation | | {brg} | -
Bore | d | {d} | mm
Outside diameter | D | {D} | mm
Width | B | {B} | mm
Basic dynamic load rating | C | {C:kN} | kN
Basic static load rating | C0 | {C0:kN} | kN
Radial load | Fr | {Fr} | N | worst case
Axial load | Fa | {Fa} | N
@1 Lubrication | | {lub} | -
Shaft tolerance | | {ss.n} {ss.c} ({ss.u}/{ss.l}) | mm
Shaft seat roughness | Ra | {sra} | µm
Housing bore tolerance | | {hs.n} {hs.c} ({hs.u}/{hs.l}) | mm
Housing bore roughness | Ra | {hra} | µm
Shaft abutment diameter | da | {sda} | mm
Housing abutment diameter | Da | {hda} | mm

[end]
This calculation is only valid with the loads stated above.
""",
)

#: The JSON of an in-house configurator: parts below positions, units in the keys.
CONFIGURATOR = Office(
    language="en",
    kind="nested",
    file="json",
    machines=(
        "Microturbine MT-3: 7004C/P4 + 6004/C3",
        "Side channel blower SC-2: 6205-2Z/C3 + 6204-2Z/C3",
        "Starter generator SG-11: 6303-2RS + 6202-2RS",
    ),
    positions="compressor side,turbine side",
    drawing="CFG-0000",
    words="locating=fixed;floating=free;spring-loaded=spring loaded;grease=grease;oil bath=oil bath;none=none;"
    "spring=spring",
    tree={
        "configurator": {"build": "5.2.1", "savedBy": "workstation-12", "savedAt": "2025-08-19T10:22:00"},
        "product": {"name": "{m}", "drawingNumber": "{dwg}", "revision": "{rev}", "status": "in work"},
        "operation": {
            "maxSpeedRpm": "{nmax}", "operatingSpeedRpm": "{nop}", "requiredLifeH": "{life}",
            "@01 ambientTemperatureDegC": "{tamb}", "@1 temperature": "{?tsh,thg,temp,temperature_max}",
        },
        "rotor": {"massKg": "{mass}", "balanceGrade": "{G}", "bearingSpanMm": "{span}"},
        "preload": {"method": "{preload_method}", "@0 forceN": "{pre}"},
        "bearingPositions": [
            "[positions]",
            {
                "position": "{st}",
                "axialFunction": "{role}",
                "loads": {"radialN": "{Fr}", "axialN": "{Fa}"},
                "bearing": {
                    "designation": "{brg}", "boreMm": "{d}", "outsideDiameterMm": "{D}", "widthMm": "{B}",
                    "dynamicRatingN": "{C}", "@1 limitingSpeedRpm": "{nlim}", "supplierArticle": "A-77{pick 10/12/18}",
                },
                "lubrication": "{lub}",
                "shaftSeat": {
                    "diameterMm": "{ss.n}", "toleranceClass": "{ss.c}", "upperDeviationUm": "{ss.u:u}",
                    "lowerDeviationUm": "{ss.l:u}", "roughnessRaUm": "{sra}", "cylindricityUm": "{scyl:u}",
                    "shoulderDiameterMm": "{sda}", "filletRadiusMm": "{sfil}",
                },
                "housingSeat": {
                    "diameterMm": "{hs.n}", "toleranceClass": "{hs.c}", "upperDeviationUm": "{hs.u:u}",
                    "lowerDeviationUm": "{hs.l:u}", "roughnessRaUm": "{hra}", "cylindricityUm": "{hcyl:u}",
                    "shoulderDiameterMm": "{hda}", "filletRadiusMm": "{hfil}",
                },
            },
        ],
    },
)  # fmt: skip

#: A list of requirements: identifier, sentence-like name, value, unit, source.
REQUIREMENTS = Office(
    language="en",
    kind="long",
    file="csv ; utf-8",
    units="column",
    machines=(
        "Gear pump GP-40: 6304 + NU204",
        "Vacuum roots blower RB-9: 6206/C3 + NU206",
        "High-speed generator HG-60: 7006C/P4",
    ),
    positions="bearing DE,bearing NDE",
    drawing="SPEC-0000",
    words="locating=locating;floating=floating;spring-loaded=spring preloaded;oil bath=oil bath;grease=grease",
    page="""
Requirement list rotor bearings | {m}
Drawing no. | {dwg} | Issue | {rev}

# ID | Requirement | Value | Unit | Source | Status
BR-{#} | Maximum rotational speed | {nmax} | rpm | customer | agreed
BR-{#} | Required life L10h | {life} | h | customer | agreed
BR-{#} | Required reliability | {required_reliability} | % | internal | agreed
@01 BR-{#} | First critical speed of the rotor | {first_critical_speed} | rpm | rotor analysis | open
BR-{#} | Coaxiality of the housing bores | {coax:,3} | mm | drawing office | agreed
[positions]
BR-{#} | {st}: designation | {brg} | | purchasing | agreed
BR-{#} | {st}: axial function | {role} | | layout | agreed
BR-{#} | {st}: lubrication | {lub} | | layout | {pick agreed/open}
BR-{#} | {st}: radial load | {Fr} | N | calculation | agreed
BR-{#} | {st}: axial load | {Fa} | N | calculation | agreed
BR-{#} | {st}: shaft seat diameter | {ss.n} {ss.c} | mm | ISO 286-2 | agreed
BR-{#} | {st}: shaft seat cylindricity | {scyl:,4} | mm | drawing office | agreed
BR-{#} | {st}: shaft seat roughness Ra | {sra} | µm | drawing office | {pick agreed/open}
BR-{#} | {st}: shaft shoulder diameter | {sda} | mm | maker's catalogue | agreed
BR-{#} | {st}: shaft shoulder axial run-out | {sax:,4} | mm | drawing office | agreed
BR-{#} | {st}: housing seat diameter | {hs.n} {hs.c} | mm | ISO 286-2 | agreed
BR-{#} | {st}: housing seat cylindricity | {hcyl:,4} | mm | drawing office | agreed
BR-{#} | {st}: housing seat roughness Ra | {hra} | µm | drawing office | agreed
BR-{#} | {st}: housing shoulder diameter | {hda} | mm | maker's catalogue | agreed
[end]
""",
)
ODD = (WORKING, FEATURES)
EVEN = (CUSTOMER, CONFIGURATOR, REQUIREMENTS)
