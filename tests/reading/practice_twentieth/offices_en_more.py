# ruff: noqa: E501  (a line of a form is a line of a table)
"""More offices that write English: parameters of models, blocks, features."""

from practice_twentieth.office import Export, Office, style
from practice_twentieth.offices_en import WORDS

#: Design parameters of a model of a compressor.
MODELS = Office(
    "en", 0, "TC-80 turbo compressor|SC-12 scroll compressor|HX-5 helium circulator|TB-30 turbo blower",
    "6202-2Z|6203-2Z|6003-2Z|6004-2Z", style(WORDS), (
        Export("model", "csv , utf-8", "A,B", """
# Name|Unit|Expression|Value|Comment
machine_name||text|{name}|
drawing_no||text|{dwg}|
n_max|rpm|n_max|{nmax}|maximum speed
rotor_mass|kg|m_r|{mass}|rotor with impeller
bearing_span|mm|l_b|{span}|distance between bearing centres
%pos
brg{pos}_designation||text|{des}|rolling bearing, bearing designation
brg{pos}_bore|mm|d|{d}|bearing bore
brg{pos}_od|mm|D|{D}|bearing outside diameter
brg{pos}_width|mm|B|{B}|bearing width
brg{pos}_Fr|N|F_r|{Fr}|radial load
brg{pos}_shaft_dia|mm|d_s|{s.N}|shaft seat, nominal diameter
brg{pos}_shaft_tol||text|{s.C}|shaft seat, tolerance class
brg{pos}_shaft_Ra|um|Ra_s|{s.ra}|shaft seat, roughness Ra
brg{pos}_shaft_cyl|mm|t_s|{s.cyl}|shaft seat, cylindricity
brg{pos}_shaft_shoulder|mm|d_a|{s.sh}|shaft shoulder diameter
brg{pos}_shaft_fillet|mm|r_a|{s.fil}|shaft fillet radius max.
brg{pos}_hsg_dia|mm|D_h|{h.N}|housing seat, nominal diameter
brg{pos}_hsg_tol||text|{h.C}|housing seat, tolerance class
brg{pos}_hsg_Ra|um|Ra_h|{h.ra}|housing seat, roughness Ra
brg{pos}_hsg_cyl|mm|t_h|{h.cyl}|housing seat, cylindricity
brg{pos}_hsg_shoulder|mm|D_a|{h.sh}|housing shoulder diameter
%end
"""),
        Export("model", "csv ; utf-8", "DE,NDE", """
! exported 2025-05-14 07:40
# Parameter;Value
MACHINE;{name}
DRAWING_NUMBER;{dwg}
REVISION;{rev}
SPEED_MAX_RPM;{nmax}
SPEED_OPERATING_RPM;{nop}
%pos
{pos}_BEARING;{des}
{pos}_RADIAL_LOAD_N;{Fr}
{pos}_AXIAL_LOAD_N;{Fa}
{pos}_SHAFT_SEAT_DIA_MAX_MM;{s.X:.3}
{pos}_SHAFT_SEAT_DIA_MIN_MM;{s.M:.3}
{pos}_SHAFT_SEAT_RA_UM;{s.ra}
{pos}_SHAFT_SEAT_CYLINDRICITY_MM;{s.cyl}
{pos}_SHAFT_SHOULDER_DIA_MM;{s.sh}
{pos}_HOUSING_SEAT_DIA_MAX_MM;{h.X:.3}
{pos}_HOUSING_SEAT_DIA_MIN_MM;{h.M:.3}
{pos}_HOUSING_SEAT_RA_UM;{h.ra}
{pos}_HOUSING_SEAT_CYLINDRICITY_MM;{h.cyl}
{pos}_HOUSING_SHOULDER_DIA_MM;{h.sh}
%end
""".replace(";", "|")),
        Export("long", "xlsx", "A,B", """
Model parameters||||
Machine:|{name}|||
Drawing:|{dwg}|||

# Group|Parameter|Value|Unit|Changed
%pos
Bearing {pos}|Designation|{des}||2025-03-02
Bearing {pos}|Radial load|{Fr}|N|2025-03-02
Bearing {pos}|Limiting speed|{nlim}|rpm|2025-03-02
Bearing {pos}|Basic dynamic load rating C|{C:kN}|kN|2025-03-02
Bearing {pos}|Basic static load rating C0|{C0:kN}|kN|2025-03-02
Bearing {pos}|Shaft seat, nominal diameter|{s.N}|mm|2025-04-17
Bearing {pos}|Shaft seat, upper deviation|{s.U:um}|µm|2025-04-17
Bearing {pos}|Shaft seat, lower deviation|{s.L:um}|µm|2025-04-17
Bearing {pos}|Shaft seat, roughness Ra|{s.ra}|µm|2025-04-17
Bearing {pos}|Shaft seat, total run-out|{s.run:um}|µm|2025-04-17
Bearing {pos}|Shaft shoulder diameter|{s.sh}|mm|2025-04-17
Bearing {pos}|Housing seat, nominal diameter|{h.N}|mm|2025-04-17
Bearing {pos}|Housing seat, upper deviation|{h.U:um}|µm|2025-04-17
Bearing {pos}|Housing seat, lower deviation|{h.L:um}|µm|2025-04-17
Bearing {pos}|Housing seat, roughness Ra|{h.ra}|µm|2025-04-17
Bearing {pos}|Housing seat, total run-out|{h.run:um}|µm|2025-04-17
Bearing {pos}|Housing shoulder diameter|{h.sh}|mm|2025-04-17
%end
"""),
    ),
)  # fmt: skip
#: A workshop that writes cards: blocks side by side, seats, features.
CARDS = Office(
    "en", 1, "Bench centrifuge BC-4|Wood planer shaft WP-3|Winding head WH-8|Roots pump RP-15",
    "6204 2RS|6205 2RS C3|6304 2RS|6305 2RS", style(WORDS), (
        Export("blocks", "xlsx", "1,2", """
BEARING CARD||||Issued 11 Feb 2025 / rs
Machine|{name}
GA drawing|{dwg}
Top speed|{nmax} r/min
Orientation of shaft|{orient}

<pBEARING No. {pos}||p>
<pBearing|{des}|p>
<pDuty load, radial|{Fr} N|p>
<pShaft seat|{s.N} {s.C}|p>
<pShaft seat finish|Ra {s.ra} µm|p>
<pShaft seat cylindricity|{s.cyl:um} µm|p>
<pShaft shoulder|Ø{s.sh}|p>
<pShaft fillet radius max.|{s.fil}|p>
<pHousing seat|{h.N} {h.C}|p>
<pHousing seat finish|Ra {h.ra} µm|p>
<pHousing seat cylindricity|{h.cyl:um} µm|p>
<pHousing shoulder|Ø{h.sh}|p>
<pHousing fillet radius max.|{h.fil}|p>

Sizes in mm. Clean and oil before fitting.
"""),
        Export("row per seat", "csv , cp1252", "Upper,Middle,Lower", """
Machine|{name}||GA drawing|{dwg}||Top speed (r/min)|{nmax}

# Seat|Bearing|Nominal size (mm)|Limits of size (mm)|Surface roughness Ra (µm)|Cylindricity tolerance (µm)|Shoulder dia (mm)|Fillet radius max. (mm)|Gauge no.
%pos
{pos} bearing - shaft|{des}|{s.N}|{s.X:.3} / {s.M:.3}|{s.ra}|{s.cyl:um}|{s.sh}|{s.fil}|G-21
{pos} bearing - housing|{des}|{h.N}|{h.X:.3} / {h.M:.3}|{h.ra}|{h.cyl:um}|{h.sh}|{h.fil}|G-33
%end
"""),
        Export("row per feature", "xlsx", "DE,NDE", """
INSPECTION PLAN|||||||
Machine|{name}|||Drawing|{dwg}||

# Char. no.|Bearing position|Feature|Nominal|Unit|Upper dev.|Lower dev.|Gauge|Result
%pos
1|{pos}|Shaft seat diameter|{s.N:.3}|mm|{s.U:.3}|{s.L:.3}|micrometer|
2|{pos}|Shaft seat cylindricity|{s.cyl}|mm|||form tester|
3|{pos}|Shaft seat total run-out|{s.run}|mm|||dial|
4|{pos}|Shaft seat roughness Ra|{s.ra}|µm|||stylus|
5|{pos}|Shaft shoulder axial run-out|{s.shr}|mm|||dial|
6|{pos}|Shaft shoulder diameter|{s.sh}|mm|||caliper|
7|{pos}|Housing seat diameter|{h.N:.3}|mm|{h.U:.3}|{h.L:.3}|bore gauge|
8|{pos}|Housing seat cylindricity|{h.cyl}|mm|||form tester|
9|{pos}|Housing seat total run-out|{h.run}|mm|||dial|
10|{pos}|Housing seat roughness Ra|{h.ra}|µm|||stylus|
11|{pos}|Housing shoulder axial run-out|{h.shr}|mm|||dial|
12|{pos}|Housing shoulder diameter|{h.sh}|mm|||caliper|
%end
"""),
    ),
)  # fmt: skip
