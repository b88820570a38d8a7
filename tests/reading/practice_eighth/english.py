# ruff: noqa: E501
"""Tables of ten engineers who write English and measure in millimetres."""

PAGES = (
    """8006 en xlsx cols=C,D -- Midlands, grinding spindles. Own calculation sheet: symbol beside each quantity, front and rear column, results below the inputs.
#! sheet Spindle
#! merge A1:F1
#! merge C4:D4
#! fmt C10:D11 0.000
High-frequency grinding spindle GS 170 - bearing calculation | | | | |
Project | 5512 | | | Date | 14 Mar
Calculated | | | | Approved |
 | | Position | | |
Quantity | Symbol | front | rear | Unit | Remark  ## station front | rear
Bearing | | 7005C P4 | 7004C P4 | | O-arrangement  ## bearing_designation 7005C P4 | 7004C P4
Contact angle | α0 | 15 | 15 | deg |  ## contact_angle 15 | 15
Ball diameter | Dw | 6.35 | 6.35 | mm | supplier's drawing  ## ball_diameter 6.35 | 6.35
Number of balls | z | 15 | 12 | - |  ## ball_count 15 | 12
Shaft seat, lower limit size | | 24.997 | 19.997 | mm |
Shaft seat, upper limit size | | 25.001 | 20.001 | mm |  ## shaft_seat_diameter =24.997..25.001 | =19.997..20.001 @X-1+X
Housing seat | | 47 JS5 | 42 H5 | mm |  ## housing_seat_diameter 47 JS5 | 42 H5
Basic dynamic load rating | C | 14.6 | 11.1 | kN |  ## dynamic_rating 14600 | 11100
Basic static load rating | C0 | 9.1 | 6.55 | kN |  ## static_rating 9100 | 6550
Radial force | Fr | 85 | 40 | N |  ## radial_load 85 | 40
Axial force | Fa | 60 | 0 | N | grinding force  ## axial_load 60 | 0
Balls | | Si3N4 | Si3N4 | |  ## ball_material silicon nitride | silicon nitride
Speed | n | 42000 | | rpm | maximum  ## speed_max 42000
Spring preload | FV | 180 | | N | 6 coil springs  ## preload_force 180 // implied preload_method spring // implied spring_kind helical
Distance between bearings | l | 96 | | mm |  ## bearing_span 96
Lubrication | | oil-air | oil-air | |  ## lubrication oil-air | oil-air
Results | | | | |
Speed parameter | n·dm | 1512000 | 1302000 | mm/min |
Safety | S0 | 6.1 | 8.8 | - |
""",
    """8007 en csv cols=B -- Pune, induction motors. PLM attribute export in long form; prefixes DE and NDE, groups, plenty of commercial attributes.
Attribute Name,Attribute Value,UoM,Attribute Group,Mandatory
Item Number,MTR-132M-4P-0098,,General,Y  ## drawing_number MTR-132M-4P-0098
Item Revision,03,,General,Y  ## drawing_revision 03
Item Status,Frozen,,General,Y
Frame Size,132M,,General,Y
Max Operating Speed,3000,rpm,Mechanical,Y  ## speed_max 3000 // stations DE | NDE
Rotor Weight,14.8,kg,Mechanical,N  ## rotor_mass 14.8
Duty,S1,,Electrical,Y  ## duty continuous
Mounting,Horizontal foot mounted,,Mechanical,Y  ## shaft_orientation horizontal
DE Bearing,6308-2Z/C3,,Bearing,Y  ## 1.bearing_designation 6308-2Z/C3
NDE Bearing,6208-2Z/C3,,Bearing,Y  ## 2.bearing_designation 6208-2Z/C3
DE Bearing Type,Locating,,Bearing,Y  ## 1.axial_role locating
NDE Bearing Type,Floating,,Bearing,Y  ## 2.axial_role floating
Preload Spring,Wave washer,,Bearing,N  ## spring_kind wave
DE Shaft Fit,k6,,Fits,Y
DE Shaft Dia,40,mm,Fits,Y  ## 1.shaft_seat_diameter 40 k6 @B-1+B
NDE Shaft Fit,k6,,Fits,Y
NDE Shaft Dia,40,mm,Fits,Y  ## 2.shaft_seat_diameter 40 k6 @B-1+B
DE Housing Fit,H7,,Fits,Y
DE Housing Dia,90,mm,Fits,Y  ## 1.housing_seat_diameter 90 H7 @B-1+B
NDE Housing Fit,H7,,Fits,Y
NDE Housing Dia,80,mm,Fits,Y  ## 2.housing_seat_diameter 80 H7 @B-1+B
DE Shaft Seat Roughness Ra,0.8,micron,Fits,N  ## 1.shaft_seat_roughness 0.8
NDE Shaft Seat Roughness Ra,0.8,micron,Fits,N  ## 2.shaft_seat_roughness 0.8
Housing Material,FG 260,,Material,Y  ## housing_material cast iron
Shaft Material,EN8,,Material,Y  ## ~shaft_material steel
Paint Shade,RAL 5012,,Finish,N
Preferred Supplier,S-4471,,Sourcing,N
""",
    """8008 en csv -- Cork, laboratory centrifuges. A neat two-column data sheet saved as CSV; vertical shaft, so upper and lower bearing.
Centrifuge drive - bearing arrangement,,,
Document,DS-0331,,confidential  ## implied drawing_number DS-0331
Parameter,Upper bearing,Lower bearing,Unit  ## station Upper bearing | Lower bearing
Designation,6202-2RS,6203-2RS,  ## bearing_designation 6202-2RS | 6203-2RS
Inner diameter,15,17,mm  ## bore_diameter 15 | 17
Outer diameter,35,40,mm  ## outside_diameter 35 | 40
Width,11,12,mm  ## ring_width 11 | 12
Internal clearance,C3,C3,  ## clearance_class C3 | C3
Shaft diameter and tolerance,15 j5 (+5/-3 µm),17 j5 (+5/-3 µm),mm  ## shaft_seat_diameter 15 j5 -0.003 0.005 | 17 j5 -0.003 0.005
Housing diameter and tolerance,35 H6 (+16/0 µm),40 H6 (+16/0 µm),mm  ## housing_seat_diameter 35 H6 0 0.016 | 40 H6 0 0.016
Cylindricity of shaft seat,2,2,µm  ## shaft_seat_cylindricity 0.002 | 0.002
Cylindricity of housing seat,4,4,µm  ## housing_seat_cylindricity 0.004 | 0.004
Total runout of shaft seat,4,4,µm  ## shaft_seat_runout 0.004 | 0.004
Axial play of floating bearing,0.3,,mm  ## axial_float 0.3
Radial load,35,60,N  ## radial_load 35 | 60
Grease,polyurea NLGI 2,polyurea NLGI 2,  ## lubrication grease | grease
Max. speed,15000,,1/min  ## speed_max 15000
Shaft position,vertical,,  ## shaft_orientation vertical
Ambient,+2 to +40,,°C
Required life L10h,20000,,h  ## required_life 20000
Surface treatment of housing,anodised,,
Approved,QA,,
""",
    """8009 en csv -- Queensland, speed-increasing gear units. One line per bearing with the shaft in front; classes only, catalogue numbers from stores.
Shaft,Side,Stores No,Bearing,d mm,D mm,B mm,Shaft tol,Housing tol,Shoulder dia shaft mm,Shoulder dia housing mm,Fr kN,Fa kN,n rpm,Clearance,Comment  ## > machine:A station:B bearing_designation:D bore_diameter:E outside_diameter:F ring_width:G shaft_seat_diameter:H housing_seat_diameter:I shaft_shoulder_diameter:J housing_shoulder_diameter:K radial_load:L axial_load:M speed_max:N clearance_class:O
HSS,coupling side,114-2081,NU206,30,62,16,k5,H6,37.5,55.2,1.2,0,9000,C3,  ## = HSS ; coupling side ; NU206 ; 30 ; 62 ; 16 ; 30 k5 ; 62 H6 ; 37.5 ; 55.2 ; 1200 ; 0 ; 9000 ; C3
HSS,far side,114-2090,6206,30,62,16,k5,H6,36,56,0.8,0.35,9000,C3,takes the thrust  ## = HSS ; far side ; 6206 ; 30 ; 62 ; 16 ; 30 k5 ; 62 H6 ; 36 ; 56 ; 800 ; 350 ; 9000 ; C3
LSS,coupling side,114-3317,NU210,50,90,20,m6,H7,57,81.5,2.9,0,2250,CN,  ## = LSS ; coupling side ; NU210 ; 50 ; 90 ; 20 ; 50 m6 ; 90 H7 ; 57 ; 81.5 ; 2900 ; 0 ; 2250 ; CN
LSS,far side,114-3320,6210,50,90,20,m6,H7,57,83,2.1,0.9,2250,CN,check stock  ## = LSS ; far side ; 6210 ; 50 ; 90 ; 20 ; 50 m6 ; 90 H7 ; 57 ; 83 ; 2100 ; 900 ; 2250 ; CN
""",
    """8010 en tab cols=C label=A -- Ontario, axial fans. Expressions list of the model as it is exported: name, formula, value, unit, measured by whom; derived lines stay in.
Name | Formula | Value | Units | Type | Comment
bearing_A_bore | 17 | 17 | mm | Number | A = fan side  ## stations A | B // 1.bore_diameter 17
bearing_A_OD | 40 | 40 | mm | Number |  ## 1.outside_diameter 40
bearing_A_width | 12 | 12 | mm | Number |  ## 1.ring_width 12
shaft_A_dia | bearing_A_bore | 17 | mm | Number | seat of bearing A
shaft_A_tol_upper | 0.009 | 0.009 | mm | Number |
shaft_A_tol_lower | 0.001 | 0.001 | mm | Number |  ## 1.shaft_seat_diameter 17 0.001 0.009 @C-2+C-1+C
housing_A_dia | bearing_A_OD | 40 | mm | Number |
housing_A_tol_upper | 0.025 | 0.025 | mm | Number |
housing_A_tol_lower | 0 | 0 | mm | Number |  ## 1.housing_seat_diameter 40 0 0.025 @C-2+C-1+C
shaft_A_shoulder_dia | bearing_A_bore+5 | 22 | mm | Number |  ## 1.shaft_shoulder_diameter 22
shaft_A_fillet_r | 0.4 | 0.4 | mm | Number |  ## 1.shaft_fillet_radius 0.4
bearing_B_bore | 15 | 15 | mm | Number | B = far side  ## 2.bore_diameter 15
bearing_B_OD | 35 | 35 | mm | Number |  ## 2.outside_diameter 35
bearing_B_width | 11 | 11 | mm | Number |  ## 2.ring_width 11
shaft_B_dia | bearing_B_bore | 15 | mm | Number | seat of bearing B
shaft_B_tol_upper | 0.009 | 0.009 | mm | Number |
shaft_B_tol_lower | 0.001 | 0.001 | mm | Number |  ## 2.shaft_seat_diameter 15 0.001 0.009 @C-2+C-1+C
housing_B_dia | bearing_B_OD | 35 | mm | Number |
housing_B_tol_upper | 0.025 | 0.025 | mm | Number |
housing_B_tol_lower | 0 | 0 | mm | Number |  ## 2.housing_seat_diameter 35 0 0.025 @C-2+C-1+C
shaft_B_shoulder_dia | bearing_B_bore+4 | 19 | mm | Number |  ## 2.shaft_shoulder_diameter 19
seat_finish_Ra | 0.8 | 0.8 | um | Number |  ## ?shaft_seat_roughness|housing_seat_roughness 0.8
bearing_span | 88 | 88 | mm | Number |  ## bearing_span 88
hub_dia | 120 | 120 | mm | Number | blade carrier
n_blades | 7 | 7 | | Number |  ## blade_count 7
fan_speed_max | 4200 | 4200 | rpm | Number |  ## speed_max 4200
sheet_gauge | 1.5 | 1.5 | mm | Number | inlet ring
""",
    """8011 en xlsx cols=B,D -- Yorkshire, rotary lobe blowers. A tidy form of the design office, position headings merged over value and unit.
#! sheet Data sheet
#! merge A1:F1
#! merge B5:C5
#! merge D5:E5
#! fmt B11:D12 0.000
Bearing data sheet: rotary lobe blower, size 80, drive rotor | | | | |
Drawing no. | LB80-210 | Rev. | E | |  ## drawing_number LB80-210 @B // drawing_revision E @D
Prepared | workshop | Checked | | |
 | | | | |
Position | Gear end | | Free end | | Remarks  ## station Gear end | Free end
Bearing | 6306/C3 | | NU305/C3 | | ## bearing_designation 6306/C3 | NU305/C3
Function | fixed | | floating | | ## axial_role locating | floating
Cage | pressed steel | | machined brass | | ## cage pressed steel | machined brass
Shaft seat | 30 k5 | mm | 25 k5 | mm | ground  ## shaft_seat_diameter 30 k5 | 25 k5
Housing seat | 72 K6 | mm | 62 K6 | mm | ## housing_seat_diameter 72 K6 | 62 K6
Shaft seat run-out | 0.005 | mm | 0.005 | mm | to centres  ## shaft_seat_runout 0.005 | 0.005
Housing seat cylindricity | 0.006 | mm | 0.006 | mm | ## housing_seat_cylindricity 0.006 | 0.006
Shaft shoulder | 37 | mm | 32 | mm | ## shaft_shoulder_diameter 37 | 32
Housing shoulder | 65 | mm | 55 | mm | ## housing_shoulder_diameter 65 | 55
Shaft fillet, max. | 1 | mm | 1 | mm | ## shaft_fillet_radius 1 | 1
Radial load | 1.85 | kN | 2.1 | kN | tooth force included  ## radial_load 1850 | 2100
Temperature of bearing | 85 | °C | 80 | °C | ## operating_temperature 85 | 80
Lubrication | oil splash | | grease | | ## ~1.lubrication oil bath @B // 2.lubrication grease @D
Max. speed | 4800 | rpm | | | ## speed_max 4800
Bearing distance | 245 | mm | | | ## bearing_span 245
Casing | EN-GJL-250 | | | | ## housing_material cast iron
Painting | two coats | | | |
""",
    """8012 en json -- Singapore, spindles for testing motors. Flat list of name, value, unit, written by a converter; positions in the names.
{
  "document": "TS-440 spindle parameters",
  "exported_by": "macro 2.1",
  "parameters": [
    {"name": "Drawing number", "value": "TS-440-02", "unit": ""},  ## drawing_number TS-440-02 @value
    {"name": "Max speed", "value": 24000, "unit": "rpm"},  ## speed_max 24000 @value // stations Front | Rear
    {"name": "Rotor mass", "value": 640, "unit": "g"},  ## rotor_mass 0.64 @value
    {"name": "Bearing span", "value": 62.5, "unit": "mm"},  ## bearing_span 62.5 @value
    {"name": "Preload", "value": 35, "unit": "N"},  ## preload_force 35 @value
    {"name": "Spring rate", "value": 12.5, "unit": "N/mm"},  ## spring_rate 12.5 @value
    {"name": "Front bearing", "value": "6002-2Z P5", "unit": ""},  ## 1.bearing_designation 6002-2Z P5 @value
    {"name": "Front bearing shaft diameter", "value": "15 h5", "unit": "mm"},  ## 1.shaft_seat_diameter 15 h5 @value
    {"name": "Front bearing housing bore", "value": "32 JS6", "unit": "mm"},  ## 1.housing_seat_diameter 32 JS6 @value
    {"name": "Front shaft seat Ra", "value": 0.4, "unit": "um"},  ## 1.shaft_seat_roughness 0.4 @value
    {"name": "Front shaft fillet radius", "value": 0.2, "unit": "mm"},  ## 1.shaft_fillet_radius 0.2 @value
    {"name": "Rear bearing", "value": "6001-2Z P5", "unit": ""},  ## 2.bearing_designation 6001-2Z P5 @value
    {"name": "Rear bearing shaft diameter", "value": "12 h5", "unit": "mm"},  ## 2.shaft_seat_diameter 12 h5 @value
    {"name": "Rear bearing housing bore", "value": "28 H6", "unit": "mm"},  ## 2.housing_seat_diameter 28 H6 @value
    {"name": "Rear shaft seat Ra", "value": 0.4, "unit": "um"},  ## 2.shaft_seat_roughness 0.4 @value
    {"name": "Rear shaft fillet radius", "value": 0.2, "unit": "mm"},  ## 2.shaft_fillet_radius 0.2 @value
    {"name": "Encoder lines", "value": 1024, "unit": "ppr"},
    {"name": "Cover screws", "value": "M4x12", "unit": ""},
    {"name": "Coating", "value": "black oxide", "unit": ""}
  ]
}
""",
    """8013 en csv sep=; -- Johannesburg, belt driven fans. One line per pedestal, units in the second line, commas for decimals, foreign attributes of stores.
Tag;Pos;Brg no;d;D;Shaft seat;Shaft seat;Shaft seat;Hsg bore;Hsg bore;Hsg bore;Rad load;Ax load;Speed;Regrease every;Price  ## > machine:A station:B bearing_designation:C bore_diameter:D outside_diameter:E shaft_seat_diameter:F+G+H housing_seat_diameter:I+J+K radial_load:L axial_load:M speed_max:N regreasing_interval:O
;;;mm;mm;nom mm;upper µm;lower µm;nom mm;upper µm;lower µm;N;N;r/min;h;ZAR
F-101;impeller side;6310;50;110;50;+18;+2;110;+22;0;2450;310;1470;9000;1 940,00  ## = F-101 ; impeller side ; 6310 ; 50 ; 110 ; 50 0.002 0.018 ; 110 0 0.022 ; 2450 ; 310 ; 1470 ; 9000
F-101;pulley side;6310;50;110;50;+18;+2;110;+22;0;3120;0;1470;9000;1 940,00  ## = F-101 ; pulley side ; 6310 ; 50 ; 110 ; 50 0.002 0.018 ; 110 0 0.022 ; 3120 ; 0 ; 1470 ; 9000
""",
    """8014 en tab cols=B label=A enc=utf-16 -- Skane, centrifugal separators, English as company language. Sections per bearing, one value and its unit in one cell.
Separator spindle S-61
Drawing | 3170-22  ## drawing_number 3170-22
Status | preliminary
GENERAL
Max speed | 9600 rpm  ## stations Top bearing | Bottom bearing // speed_max 9600
Spindle mass | 23 kg  ## rotor_mass 23
Distance between bearings | 310 ±0.1 mm  ## bearing_span 310 -0.1 0.1
Spindle axis | vertical  ## shaft_orientation vertical
TOP BEARING  ## [1]
Type | 6208  ## bearing_designation 6208
Spindle diameter | 40 g6  ## shaft_seat_diameter 40 g6
Housing diameter | 80 J6  ## housing_seat_diameter 80 J6
Surface roughness spindle | Ra 0.8 µm  ## shaft_seat_roughness 0.8
Surface roughness housing | Ra 1.6 µm  ## housing_seat_roughness 1.6
Radial force | 620 N  ## radial_load 620
Shoulder on spindle | 49 mm  ## shaft_shoulder_diameter 49
BOTTOM BEARING  ## [2]
Type | 7308 B  ## bearing_designation 7308 B
Spindle diameter | 40 k5  ## shaft_seat_diameter 40 k5
Housing diameter | 90 H7  ## housing_seat_diameter 90 H7
Surface roughness spindle | Ra 0.8 µm  ## shaft_seat_roughness 0.8
Surface roughness housing | Ra 1.6 µm  ## housing_seat_roughness 1.6
Radial force | 480 N  ## radial_load 480
Axial force | 1150 N  ## axial_load 1150
Shoulder on spindle | 50 mm  ## shaft_shoulder_diameter 50
OTHER  ## [0]
Bowl lacquer | none
Spare part kit | 3170-90
""",
    """8015 en csv sep=; cols=C,D label=B -- Brabant, small gas turbine generators. Semicolons and decimal commas, English words, numbered lines, a column of evidence.
Nr;Parameter;Bearing 1 (compressor);Bearing 2 (turbine);Unit;Source  ## station Bearing 1 (compressor) | Bearing 2 (turbine)
1;Bearing code;HC71904E P4;HC71904E P4;-;supplier offer  ## bearing_designation HC71904E P4 | HC71904E P4
2;Contact angle;25;25;°;supplier offer  ## contact_angle 25 | 25
3;Rolling element material;ceramic (Si3N4);ceramic (Si3N4);-;supplier offer  ## ball_material silicon nitride | silicon nitride
4;Shaft seat nominal;20;20;mm;drawing
5;Shaft seat upper deviation;0;0;µm;drawing
6;Shaft seat lower deviation;-5;-5;µm;drawing  ## shaft_seat_diameter 20 -0.005 0 | 20 -0.005 0 @X-2+X-1+X
7;Housing seat nominal;37;37;mm;drawing
8;Housing seat upper deviation;+8;+12;µm;drawing
9;Housing seat lower deviation;+2;+6;µm;drawing  ## housing_seat_diameter 37 0.002 0.008 | 37 0.006 0.012 @X-2+X-1+X
10;Seat run-out shaft (total);2,5;2,5;µm;drawing  ## shaft_seat_runout 0.0025 | 0.0025
11;Seat cylindricity shaft;1,5;1,5;µm;drawing  ## shaft_seat_cylindricity 0.0015 | 0.0015
12;Shaft abutment diameter;24,2;24,2;mm;drawing  ## shaft_shoulder_diameter 24.2 | 24.2
13;Bearing temperature;95;140;°C;test bench  ## operating_temperature 95 | 140
14;Lubrication method;oil jet;oil jet;-;spec  ## lubrication oil jet | oil jet
15;Maximum speed;68000;;rpm;spec  ## speed_max 68000
16;Idle speed;30000;;rpm;spec
17;Rotor mass;2,85;;kg;CAD  ## rotor_mass 2.85
18;Balance quality;G 1;;-;drawing  ## balance_grade 1
19;First bending critical;91500;;rpm;rotor analysis  ## first_critical_speed 91500
20;Wheel material;nickel alloy;;-;drawing
""",
)
