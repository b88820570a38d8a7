# ruff: noqa: E501
"""Tables of five engineers who think in inches."""

PAGES = (
    """8001 en csv cols=B -- Ohio, regenerative blowers. Exports all model variables at each release; the firm's own abbreviations; limits, never classes.
Variable,Value,Unit,Notes
MODEL_NAME,Regenerative blower RB-7,,  ## machine Regenerative blower RB-7
DWG_NO,40-2207-1,,  ## drawing_number 40-2207-1
DWG_REV,C,,  ## drawing_revision C
CHECKED,jt,,initials
MOTOR_FRAME,56C,,for reference
N_MAX,3600,rpm,60 Hz synchronous  ## speed_max 3600 // stations DE | ODE
BRG_CTR_TO_CTR,5.250,in,centerline to centerline  ## bearing_span 5.250in
ROTOR_WT,11.4,lb,impeller plus motor rotor  ## rotor_mass 11.4lb
HSG_MATL,cast aluminum A356,,  ## housing_material aluminium
SHAFT_MATL,1045 CF,,cold finished bar  ## shaft_material steel
PRELOAD_SPRING,wave washer,,sits behind the ODE outer ring  ## spring_kind wave
DE_BRG,6205-2Z/C3,,DE = impeller side  ## 1.bearing_designation 6205-2Z/C3
DE_JNL_MIN,.9844,in,
DE_JNL_MAX,.9847,in,  ## 1.shaft_seat_diameter =0.9844..0.9847in @B-1+B
DE_HSG_BORE_MIN,2.0472,in,
DE_HSG_BORE_MAX,2.0484,in,  ## 1.housing_seat_diameter =2.0472..2.0484in @B-1+B
DE_SHLDR_OD,1.250,in,shaft shoulder  ## 1.shaft_shoulder_diameter 1.250in
DE_FILLET,.030,in,"shaft fillet, max"  ## 1.shaft_fillet_radius 0.030in
DE_JNL_FINISH,32,microinch Ra,  ## 1.shaft_seat_roughness 32uin
ODE_BRG,6203-2Z/C3,,ODE = opposite drive end  ## 2.bearing_designation 6203-2Z/C3
ODE_JNL_MIN,.6693,in,
ODE_JNL_MAX,.6696,in,  ## 2.shaft_seat_diameter =0.6693..0.6696in @B-1+B
ODE_HSG_BORE_MIN,1.5748,in,
ODE_HSG_BORE_MAX,1.5758,in,  ## 2.housing_seat_diameter =1.5748..1.5758in @B-1+B
ODE_SHLDR_OD,.875,in,shaft shoulder  ## 2.shaft_shoulder_diameter 0.875in
ODE_JNL_FINISH,32,microinch Ra,  ## 2.shaft_seat_roughness 32uin
PAINT,gray enamel,,
LIST_PRICE,1180,USD,
""",
    """8002 en csv cols=D+E+F label=C -- Texas, canned motor pumps. Sends the ballooned characteristic list of the shaft and of the end housing; signed tolerances.
Drawing,PD-51180,Canned pump rotor assy,,,,,,,  ## drawing_number PD-51180 @B
Char No,Sheet/Zone,Feature,Nominal,Upper Tol,Lower Tol,Units,Gage,Freq,Remarks
1,1/C4,Front bearing journal diameter,0.9843,+0.0004,+0.0001,in,air gage,100%,safety char.  ## stations Front | Rear // 1.shaft_seat_diameter 0.9843in 0.0001 0.0004
2,1/C4,"Front bearing journal, surface finish Ra",16,,,uin,profilometer,1/5,  ## 1.shaft_seat_roughness 16uin @D
3,1/C5,"Front bearing journal, cylindricity",0.0002,,,in,roundness tester,1/10,  ## 1.shaft_seat_cylindricity 0.0002in @D
4,1/C5,Front shaft shoulder diameter,1.220,+0.000,-0.005,in,caliper,1/10,  ## 1.shaft_shoulder_diameter 1.220in -0.005 0
5,1/C5,"Front shaft shoulder, axial runout to A-B",0.0003,,,in,indicator,1/5,  ## 1.shaft_shoulder_runout 0.0003in @D
6,1/D6,Impeller bore taper,1:10,,,,taper gage,1/5,not a bearing feature
7,1/C8,Rear bearing journal diameter,0.7874,+0.0004,+0.0001,in,air gage,100%,  ## 2.shaft_seat_diameter 0.7874in 0.0001 0.0004
8,1/C8,"Rear bearing journal, surface finish Ra",16,,,uin,profilometer,1/5,  ## 2.shaft_seat_roughness 16uin @D
9,1/C8,"Rear bearing journal, cylindricity",0.0002,,,in,roundness tester,1/10,  ## 2.shaft_seat_cylindricity 0.0002in @D
10,2/B3,Front housing bore diameter,2.0472,+0.0007,0,in,bore gage,100%,  ## 1.housing_seat_diameter 2.0472in 0 0.0007
11,2/B3,"Front housing bore, surface finish Ra",63,,,uin,profilometer,1/5,  ## 1.housing_seat_roughness 63uin @D
12,2/B4,Front housing shoulder diameter,1.810,+0.005,0,in,caliper,1/10,  ## 1.housing_shoulder_diameter 1.810in 0 0.005
13,2/B7,Rear housing bore diameter,1.8504,+0.0007,0,in,bore gage,100%,  ## 2.housing_seat_diameter 1.8504in 0 0.0007
14,2/B7,"Rear housing bore, surface finish Ra",63,,,uin,profilometer,1/5,  ## 2.housing_seat_roughness 63uin @D
15,2/B7,Rear housing bore to front housing bore coaxiality,0.0005,,,in,CMM,1/20,  ## coaxiality_of_bores 0.0005in @D
16,2/E2,Flange thickness,0.500,+0.010,-0.010,in,caliper,1/20,
17,2/A1,Heat number marking,,,,,visual,100%,supplier code stamped
""",
    """8003 en json -- Tennessee, process compressors. PLM item attributes dumped by a script: units in the keys, one object per position.
{
  "item_id": "CMP-118-40",  ## drawing_number CMP-118-40
  "item_revision": "D",  ## drawing_revision D
  "object_type": "Assembly",
  "lifecycle": "Released",
  "owning_group": "Rotating Equipment",
  "description": "High speed shaft, turbo compressor, bearing arrangement",
  "attributes": {
    "max_speed_rpm": 38500,  ## speed_max 38500
    "rotor_weight_lb": 7.25,  ## rotor_mass 7.25lb
    "bearing_spacing_in": 4.125,  ## bearing_span 4.125in
    "balance_grade": "G1.0",  ## balance_grade 1.0
    "shaft_material": "AISI 4340",  ## shaft_material steel
    "housing_material": "ductile iron",  ## housing_material cast iron
    "preload_type": "spring",  ## preload_method spring
    "preload_force_lbf": 45,  ## preload_force 45lbf
    "required_life_hours": 25000  ## required_life 25000
  },
  "bearings": [
    {
      "position": "compressor end",  ## [1] // station compressor end
      "designation": "7204AC P5",  ## bearing_designation 7204AC P5
      "arrangement": "locating",  ## axial_role locating
      "shaft_dia_in": [0.7876, 0.7878],  ## shaft_seat_diameter =0.7876..0.7878in
      "housing_bore_in": [1.8504, 1.8508],  ## housing_seat_diameter =1.8504..1.8508in
      "radial_load_lbf": 22,  ## radial_load 22lbf
      "thrust_load_lbf": 61,  ## axial_load 61lbf
      "lubrication": "oil jet",  ## lubrication oil jet
      "unit_cost_usd": 212.5
    },
    {
      "position": "turbine end",  ## [2] // station turbine end
      "designation": "7204AC P5",  ## bearing_designation 7204AC P5
      "arrangement": "spring loaded",  ## axial_role spring-loaded
      "shaft_dia_in": [0.7875, 0.7877],  ## shaft_seat_diameter =0.7875..0.7877in
      "housing_bore_in": [1.8507, 1.8511],  ## housing_seat_diameter =1.8507..1.8511in
      "radial_load_lbf": 18,  ## radial_load 18lbf
      "thrust_load_lbf": 0,  ## axial_load 0
      "lubrication": "oil jet",  ## lubrication oil jet
      "unit_cost_usd": 212.5
    }
  ]
}
""",
    """8004 en xlsx -- Vermont, tool-room spindles. A design table of the model with one line per bearing seat; magnitudes in a plus and a minus column.
#! sheet Design Table
#! merge A1:P1
#! merge C2:F2
#! merge G2:I2
#! merge J2:L2
#! merge M2:O2
#! fmt D4:P7 0.0000
Design table for: tool-room spindle family, inch |  |  |  |  |  |  |  |  |  |  |  |  |  |  |
 |  | Bearing |  |  |  | Spindle journal |  |  | Housing bore |  |  | Abutments |  |  | Purchasing
Spindle | Location | P/N | ID in | OD in | Width in | Dia in | Tol + | Tol - | Dia in | Tol + | Tol - | Shaft shldr in | Hsg shldr in | Max fillet shaft in | Vendor code  ## > machine:A station:B bearing_designation:C bore_diameter:D outside_diameter:E ring_width:F shaft_seat_diameter:G+H+I housing_seat_diameter:J+K+L shaft_shoulder_diameter:M housing_shoulder_diameter:N shaft_fillet_radius:O
TS-20 | nose | 7004C P4 | 0.7874 | 1.6535 | 0.4724 | 0.7874 | 0.0001 | 0.0001 | 1.6535 | 0.0003 | 0 | 0.98 | 1.46 | 0.02 | V-0173  ## = TS-20 ; nose ; 7004C P4 ; 0.7874in ; 1.6535in ; 0.4724in ; 0.7874in -0.0001 0.0001 ; 1.6535in 0 0.0003 ; 0.98in ; 1.46in ; 0.02in
TS-20 | tail | 7003C P4 | 0.6693 | 1.378 | 0.3937 | 0.6693 | 0.0001 | 0.0001 | 1.378 | 0.0004 | 0 | 0.85 | 1.2 | 0.01 | V-0173  ## = TS-20 ; tail ; 7003C P4 ; 0.6693in ; 1.378in ; 0.3937in ; 0.6693in -0.0001 0.0001 ; 1.378in 0 0.0004 ; 0.85in ; 1.2in ; 0.01in
TS-30 | nose | 7006C P4 | 1.1811 | 2.1654 | 0.5118 | 1.1811 | 0.0001 | 0.0001 | 2.1654 | 0.0003 | 0 | 1.42 | 1.93 | 0.03 | V-0173  ## = TS-30 ; nose ; 7006C P4 ; 1.1811in ; 2.1654in ; 0.5118in ; 1.1811in -0.0001 0.0001 ; 2.1654in 0 0.0003 ; 1.42in ; 1.93in ; 0.03in
TS-30 | tail | 7005C P4 | 0.9843 | 1.8504 | 0.4724 | 0.9843 | 0.0001 | 0.0001 | 1.8504 | 0.0004 | 0 | 1.18 | 1.65 | 0.02 | V-0173  ## = TS-30 ; tail ; 7005C P4 ; 0.9843in ; 1.8504in ; 0.4724in ; 0.9843in -0.0001 0.0001 ; 1.8504in 0 0.0004 ; 1.18in ; 1.65in ; 0.02in
""",
    """8005 en tab cols=B,C -- Colorado, cryogenic pumps. A typed data sheet, two columns, words like a catalog, limits with a slash.
CRYOGENIC TRANSFER PUMP CP-3 - BEARING DATA SHEET
All dimensions in inches unless noted | | | Sheet 2 of 4
Prepared by: test group | | |
 | Pump end | Coupling end | Notes  ## station Pump end | Coupling end
Bearing | R8 | R10 | stainless, special cage  ## bearing_designation R8 | R10
Bore | .5000 | .6250 |  ## bore_diameter 0.5in | 0.625in
Outside dia. | 1.1250 | 1.3750 |  ## outside_diameter 1.125in | 1.375in
Ring material | 440C | 440C | passivated  ## ring_material stainless bearing steel | stainless bearing steel
Separator | phenolic | phenolic | vacuum dried  ## cage phenolic | phenolic
Precision | ABEC 5 | ABEC 5 |  ## tolerance_class P5 | P5
Shaft seat | .5001/.5003 | .6251/.6253 | min/max  ## shaft_seat_diameter =0.5001..0.5003in | =0.6251..0.6253in
Housing seat | 1.1250/1.1255 | 1.3750/1.3755 | min/max  ## housing_seat_diameter =1.1250..1.1255in | =1.3750..1.3755in
Shaft shoulder dia. | .625 | .770 |  ## shaft_shoulder_diameter 0.625in | 0.770in
Housing shoulder dia. | 1.000 | 1.230 |  ## housing_shoulder_diameter 1.000in | 1.230in
Shaft corner radius, max | .010 | .025 |  ## shaft_fillet_radius 0.010in | 0.025in
Radial load, lbf | 12 | 9 | at rated flow  ## radial_load 12lbf | 9lbf
Operating temp., deg F | -290 | 40 |  ## operating_temperature -290F | 40F
 | | |
Max. speed, rpm | 7200 | |  ## speed_max 7200
Rotor weight, lb | 5.6 | |  ## rotor_mass 5.6lb
Bearing spread | 6.00 | | between bearing centers  ## bearing_span 6.00in
Shaft attitude | vertical | | motor on top  ## shaft_orientation vertical
Finish | bare metal, degreased | |
""",
)
