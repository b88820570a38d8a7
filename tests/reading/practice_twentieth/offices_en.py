# ruff: noqa: E501  (a line of a form is a line of a table)
"""The offices that write English."""

from practice_twentieth.office import Export, Office, style

WORDS = """steel=Alloy steel;cast iron=Grey cast iron;aluminium=Aluminium alloy;horizontal=Horizontal;vertical=Vertical;
continuous=Continuous;intermittent=Intermittent;grease=Grease;locating=Locating;floating=Floating;inner=Inner ring;
deep groove ball=Deep groove ball bearing;angular contact ball=Angular contact ball bearing;open=Open;shield=Shielded;
cylindrical roller=Cylindrical roller bearing;contact seal=Contact seal;polyamide=Polyamide;pressed steel=Pressed steel;
machined brass=Machined brass;spring=Spring"""
#: Pumps: data sheets.
PUMPS = Office(
    "en", 0,
    "Side channel pump SCP 32|Process pump PP 65|Circulating pump CPX 40|Coolant pump KP 25",
    "6305-2Z|6306-2Z/C3|6205-2Z|6206-2Z", style(WORDS), (
        Export("row per position", "csv , utf-8", "Coupling side,Impeller side", """
Rotor bearing data sheet
Pump type|{name}||Drawing No.|{dwg}||Rev.|{rev}
Max. speed, rpm|{nmax}||Rating life L10h required, h|{life}||Ambient temperature, °C|{tamb}

# |Rolling bearing||||||Shaft seat|||||Housing bore|||||
# Bearing location|Designation|d [mm]|D [mm]|B [mm]|Radial load [N]|Axial load [N]|Diameter [mm]|Tol. class|Ra [µm]|Cylindricity [mm]|Shoulder dia [mm]|Diameter [mm]|Tol. class|Ra [µm]|Cylindricity [mm]|Shoulder dia [mm]|Checked by
%pos
{pos}|{des}|{d}|{D}|{B}|{Fr}|{Fa}|{s.N:.3}|{s.C}|{s.ra}|{s.cyl}|{s.sh}|{h.N:.3}|{h.C}|{h.ra}|{h.cyl}|{h.sh}|MH
%end

Surface finish not stated: Ra 3.2 µm
"""),
        Export("transposed", "xlsx", "Coupling side,Impeller side", """
Rotor bearing data sheet
Pump type|{name}
Drawing No.|{dwg}
Rev.|{rev}

# Characteristic|Unit|<p{pos}p>|Source
Bearing designation||<p{des}p>|parts list
Axial function||<p{role}p>|layout
Bore d|mm|<p{d}p>|catalogue
Outside diameter D|mm|<p{D}p>|catalogue
Width B|mm|<p{B}p>|catalogue
Radial load Fr|N|<p{Fr}p>|calc. sheet
Axial load Fa|N|<p{Fa}p>|calc. sheet
Shaft seat diameter|mm|<p{s.N} {s.C}p>|shaft drawing
Shaft seat roughness Ra|µm|<p{s.ra}p>|shaft drawing
Shaft seat total run-out|mm|<p{s.run}p>|shaft drawing
Shaft shoulder diameter|mm|<p{s.sh}p>|shaft drawing
Shaft fillet radius, max.|mm|<p{s.fil}p>|shaft drawing
Housing seat diameter|mm|<p{h.N} {h.C}p>|casing drawing
Housing seat roughness Ra|µm|<p{h.ra}p>|casing drawing
Housing seat total run-out|mm|<p{h.run}p>|casing drawing
Housing shoulder diameter|mm|<p{h.sh}p>|casing drawing
Housing fillet radius, max.|mm|<p{h.fil}p>|casing drawing
"""),
        Export("long", "csv tab utf-8", "DE,NDE", """
# Pos.|Component|Characteristic|Value|Unit|Note
-|Pump|Pump type|{name}|-|
-|Pump|Drawing No.|{dwg}|-|
-|Pump|Max. speed|{nmax}|rpm|trip at 110 %
-|Pump|Rating life L10h required|{life}|h|
-|Pump|Mass of rotor|{mass}|kg|incl. impeller
%pos
{pos}|Bearing|Designation|{des}|-|
{pos}|Bearing|Radial load Fr|{Fr}|N|
{pos}|Bearing|Axial load Fa|{Fa}|N|
{pos}|Bearing|Operating temperature|{temp}|°C|measured
{pos}|Bearing|Lubrication|{lub}|-|
{pos}|Bearing|Base oil viscosity at 40 °C|{nu}|mm²/s|grease data sheet
{pos}|Shaft|Seat diameter|{s.N} {s.C}|mm|
{pos}|Shaft|Seat cylindricity|{s.cyl}|mm|
{pos}|Shaft|Seat roughness Ra|{s.ra}|µm|
{pos}|Shaft|Shoulder diameter|{s.sh}|mm|
{pos}|Shaft|Shoulder axial run-out|{s.shr}|mm|
{pos}|Housing|Seat diameter|{h.N} {h.C}|mm|
{pos}|Housing|Seat cylindricity|{h.cyl}|mm|
{pos}|Housing|Seat roughness Ra|{h.ra}|µm|
{pos}|Housing|Shoulder diameter|{h.sh}|mm|
{pos}|Housing|Shoulder axial run-out|{h.shr}|mm|
%end
"""),
    ),
)  # fmt: skip
#: Motors of a US maker: inch, limits, pounds.
MOTORS = Office(
    "en", 1,
    "Servo motor SM-56|Gear motor GM-140|Fan motor FM-90|Pump motor PM-182|Brake motor BM-71",
    "6203 ZZ|6204 ZZ|6205 ZZ C3|6206 ZZ", style(WORDS, group=","), (
        Export("row per machine", "xlsx", "DE,ODE", """
MOTOR BEARING FIT TABLE
All dimensions in inches

# Motor model|Drawing no.|Max speed (rpm)|Rotor weight (lb)|<pBearing {pos}|Shaft {pos} max (in)|Shaft {pos} min (in)|Housing {pos} max (in)|Housing {pos} min (in)|Radial load {pos} (lbf)p>|Stock code
%machine
{name}|{dwg}|{nmax}|{mass:lb}|<p{des}|{s.X:in.4}|{s.M:in.4}|{h.X:in.4}|{h.M:in.4}|{Fr:lbf}p>|M-000-7
%end
""", 4),
        Export("row per position", "csv , utf-8-sig", "DE,ODE", """
MOTOR BEARING FIT TABLE
Motor model:|{name}
Drawing no.:|{dwg}
Max speed (rpm):|{nmax}
Min. temperature (°F):|{tmin:F}
Max. temperature (°F):|{tmax:F}

# Brg end|Brg no.|Shaft OD max (in)|Shaft OD min (in)|Shaft finish Ra (µin)|Shaft shoulder dia (in)|Shaft fillet R max (in)|Housing bore max (in)|Housing bore min (in)|Housing finish Ra (µin)|Housing shoulder dia (in)|Housing fillet R max (in)|Radial load (lbf)|Thrust load (lbf)|Grease stock no.
%pos
{pos}|{des}|{s.X:in.4}|{s.M:in.4}|{s.ra:uin}|{s.sh:in.3}|{s.fil:in}|{h.X:in.4}|{h.M:in.4}|{h.ra:uin}|{h.sh:in.3}|{h.fil:in}|{Fr:lbf}|{Fa:lbf}|GR-118
%end
"""),
        Export("row per seat", "csv , utf-8", "DE,ODE", """
# Motor model|Brg end|Brg no.|Part|Diameter, nominal (in)|Tol. upper (in)|Tol. lower (in)|Ra (µin)|Cylindricity (in)|Abutment dia (in)|Inspected
%machine
%pos
{name}|{pos}|{des}|Shaft|{s.N:in.4}|{s.U:in.4}|{s.L:in.4}|{s.ra:uin}|{s.cyl:in}|{s.sh:in.3}|100 %
{name}|{pos}|{des}|Housing|{h.N:in.4}|{h.U:in.4}|{h.L:in.4}|{h.ra:uin}|{h.cyl:in}|{h.sh:in.3}|100 %
%end
%end
""", 2),
    ),
)  # fmt: skip
#: A maker of machine tools: parts lists, and what its data system gives.
TOOLS = Office(
    "en", 0, "Boring head BH-50|Grinding quill GQ-24|Milling unit MU-40", "7005 C|7006 C|7204 AC|7205 AC",
    style(WORDS + ";steel=42CrMo4"), (
        Export("parts list", "xlsx", "Front,Rear", """
PARTS LIST - SPINDLE GROUP|||Unit: {name}|||Drg: {dwg}

# Item|Qty|Description|Location|Designation|Contact angle|Precision class|Nominal dia mm|Tolerance|Ra µm|Cylindricity µm|Shoulder face run-out µm|Material|Weight kg
10|1|Spindle shaft|||||||||||{smat}|2.4
%pos
11|1|Ball bearing|{pos}|{des}|{alpha}°|{prec}|||||||0.1
12|1|Shaft seat|{pos}||||{s.N:.3}|{s.U:.3} / {s.L:.3}|{s.ra}|{s.cyl:um}|{s.shr:um}||
13|1|Housing seat|{pos}||||{h.N:.3}|{h.U:.3} / {h.L:.3}|{h.ra}|{h.cyl:um}|{h.shr:um}||
%end
20|2|Spacer sleeve|||||||||||C45|0.05

Spring preload {pf} N
""", also="preload_method"),
        Export("nested", "json", "front,rear", {
            "document": {"type": "spindle_datasheet", "drawingNumber": "{dwg}", "revision": "{rev}"},
            "spindle": {
                "model": "{name}",
                "speedMax": {"value": "{nmax}", "unit": "1/min"},
                "bearingSpan": {"value": "{span}", "unit": "mm"},
                "balanceGrade": "G{bal}",
                "bearings": ["%pos", {
                    "position": "{pos}",
                    "designation": "{des}",
                    "contactAngle": {"value": "{alpha}", "unit": "deg"},
                    "bore": {"value": "{d}", "unit": "mm"},
                    "outsideDiameter": {"value": "{D}", "unit": "mm"},
                    "shaftSeat": {
                        "diameter": {"nominal": "{s.N}", "upper": "{s.U}", "lower": "{s.L}", "unit": "mm"},
                        "roughnessRa": {"value": "{s.ra}", "unit": "µm"},
                        "cylindricity": {"value": "{s.cyl:um}", "unit": "µm"},
                        "shoulderDiameter": {"value": "{s.sh}", "unit": "mm"},
                    },
                    "housingSeat": {
                        "diameter": {"nominal": "{h.N}", "upper": "{h.U}", "lower": "{h.L}", "unit": "mm"},
                        "roughnessRa": {"value": "{h.ra}", "unit": "µm"},
                        "cylindricity": {"value": "{h.cyl:um}", "unit": "µm"},
                        "shoulderDiameter": {"value": "{h.sh}", "unit": "mm"},
                    },
                }],
            },
        }),
    ),
)  # fmt: skip
#: A maker of fans: attributes of objects.
FANS = Office(
    "en", 1, "Axial fan AX-630|Radial fan RX-400|Booster fan BX-25", "6206-2RS1|6207-2RS1|6306-2RS1/C3|6208-2RS1",
    style(WORDS), (
        Export("attributes", "json", "Motor side,Fan side", {
            "objectType": "Rotor assembly",
            "lifecycleState": "Released",
            "attributes": [
                {"attributeName": "Product", "attributeValue": "{name}"},
                {"attributeName": "Drawing number", "attributeValue": "{dwg}"},
                {"attributeName": "Maximum speed", "attributeValue": "{nmax}", "uom": "rpm"},
                {"attributeName": "Required life L10h", "attributeValue": "{life}", "uom": "h"},
                {"attributeName": "Housing material", "attributeValue": "{hmat}"},
                {"attributeName": "Standard cost", "attributeValue": 412.5, "uom": "GBP"},
            ],
            "children": ["%pos", {
                "objectType": "Bearing arrangement",
                "name": "{pos}",
                "attributes": [
                    {"attributeName": "Bearing designation", "attributeValue": "{des}"},
                    {"attributeName": "Radial load", "attributeValue": "{Fr}", "uom": "N"},
                    {"attributeName": "Shaft seat diameter", "attributeValue": "{s.N} {s.C}", "uom": "mm"},
                    {"attributeName": "Shaft seat roughness Ra", "attributeValue": "{s.ra}", "uom": "µm"},
                    {"attributeName": "Shaft seat cylindricity", "attributeValue": "{s.cyl}", "uom": "mm"},
                    {"attributeName": "Shaft shoulder diameter", "attributeValue": "{s.sh}", "uom": "mm"},
                    {"attributeName": "Housing bore diameter", "attributeValue": "{h.N} {h.C}", "uom": "mm"},
                    {"attributeName": "Housing bore roughness Ra", "attributeValue": "{h.ra}", "uom": "µm"},
                    {"attributeName": "Housing bore cylindricity", "attributeValue": "{h.cyl}", "uom": "mm"},
                    {"attributeName": "Housing shoulder diameter", "attributeValue": "{h.sh}", "uom": "mm"},
                ],
            }],
        }),
        Export("row per position", "xlsx", "Motor side,Fan side", """
# Product|Drawing number|Location|Bearing designation|Internal clearance group|Sealing|Maximum speed, rpm|Radial load, N|Shaft seat, mm|Shaft seat Ra, µm|Shaft seat total run-out, mm|Shaft abutment dia, mm|Housing bore, mm|Housing bore Ra, µm|Housing bore total run-out, mm|Housing abutment dia, mm|Relubrication interval, h|Material no.|Status
%machine
%pos
{name}|{dwg}|{pos}|{des}|{clr}|{seal}|{nmax}|{Fr}|Ø{s.N} {s.C} ({s.M:.3}-{s.X:.3})|{s.ra}|{s.run}|{s.sh}|Ø{h.N} {h.C} ({h.M:.3}-{h.X:.3})|{h.ra}|{h.run}|{h.sh}|{regr}|100-4417|REL
%end
%end
""", 3),
    ),
)  # fmt: skip
