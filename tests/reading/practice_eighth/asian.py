# ruff: noqa: E501
"""Tables of six engineers who write Chinese and five who write Japanese."""

PAGES = (
    """8026 zh csv enc=gb18030 cols=C,D label=B -- 江苏，高速电机。设计参数表另存为逗号文本，驱动端与非驱动端并列，公差写在格内。
序号,项目,驱动端,非驱动端,单位,备注  ## station 驱动端 | 非驱动端
1,轴承型号,6205-2RZ P5,6204-2RZ P5,,  ## bearing_designation 6205-2RZ P5 | 6204-2RZ P5
2,轴承内径,25,20,mm,  ## bore_diameter 25 | 20
3,轴承外径,52,47,mm,  ## outside_diameter 52 | 47
4,轴承宽度,15,14,mm,  ## ring_width 15 | 14
5,轴承位直径,25 k5(+0.011/+0.002),20 k5(+0.011/+0.002),mm,磨削  ## shaft_seat_diameter 25 k5 0.002 0.011 | 20 k5 0.002 0.011
6,轴承室直径,52 H6(+0.019/0),47 H6(+0.016/0),mm,  ## housing_seat_diameter 52 H6 0 0.019 | 47 H6 0 0.016
7,轴承位圆柱度,0.003,0.003,mm,  ## shaft_seat_cylindricity 0.003 | 0.003
8,轴承室圆柱度,0.005,0.005,mm,  ## housing_seat_cylindricity 0.005 | 0.005
9,轴承位全跳动,0.005,0.005,mm,基准A-B  ## shaft_seat_runout 0.005 | 0.005
10,轴承位粗糙度Ra,0.4,0.4,μm,  ## shaft_seat_roughness 0.4 | 0.4
11,轴承室粗糙度Ra,0.8,0.8,μm,  ## housing_seat_roughness 0.8 | 0.8
12,轴肩直径,31,26,mm,  ## shaft_shoulder_diameter 31 | 26
13,轴肩圆角半径,0.6,0.6,mm,最大  ## shaft_fillet_radius 0.6 | 0.6
14,轴承座挡肩内径,46,41,mm,  ## housing_shoulder_diameter 46 | 41
15,最高转速,18000,,r/min,  ## speed_max 18000
16,转子质量,3.6,,kg,  ## rotor_mass 3.6
17,轴承跨距,142,,mm,  ## bearing_span 142
18,润滑方式,高速润滑脂,高速润滑脂,,  ## lubrication grease for high speed | grease for high speed
19,绝缘等级,F,,,
20,表面处理,喷漆,,,
""",
    """8027 zh xlsx cols=C,D label=A -- 山东，电主轴。电子表格计算书，标题合并，前后轴承两列，符号一列。
#! sheet 轴承计算
#! merge A1:F1
#! fmt C10:D11 0.000
电主轴轴承配置计算书 | | | | |
图号 | DZ150-02 | | 版本 | A2 |  ## drawing_number DZ150-02 @B // drawing_revision A2 @E
编制 | | | 审核 | |
项目 | 符号 | 前轴承 | 后轴承 | 单位 | 说明  ## station 前轴承 | 后轴承
轴承代号 | | 7012C/P4 | 7010C/P4 | | 背对背  ## bearing_designation 7012C/P4 | 7010C/P4
接触角 | α | 15 | 15 | ° | ## contact_angle 15 | 15
滚动体材料 | | 氮化硅陶瓷 | 氮化硅陶瓷 | | ## ball_material silicon nitride | silicon nitride
额定动载荷 | C | 30.5 | 21.8 | kN | 样本 ## dynamic_rating 30500 | 21800
额定静载荷 | C0 | 24.0 | 16.2 | kN | 样本 ## static_rating 24000 | 16200
轴径最大尺寸 | | 60.004 | 50.004 | mm |
轴径最小尺寸 | | 59.996 | 49.996 | mm | ## shaft_seat_diameter =59.996..60.004 | =49.996..50.004 @X-1+X
座孔公差 | | 95 JS5 | 80 H5 | mm | ## housing_seat_diameter 95 JS5 | 80 H5
径向力 | Fr | 820 | 310 | N | 切削力 ## radial_load 820 | 310
轴向力 | Fa | 450 | 0 | N | ## axial_load 450 | 0
最高转速 | n | 15000 | | r/min | ## speed_max 15000
预紧力 | Fp | 480 | | N | 定压预紧（弹簧） ## preload_force 480 // implied preload_method spring
轴承间距 | L | 215 | | mm | ## bearing_span 215
润滑 | | 油气润滑 | 油气润滑 | | ## lubrication oil-air | oil-air
前轴承温度 | | 48 | | ℃ | 实测 ## 1.operating_temperature 48
冷却水流量 | | 8 | | L/min |
""",
    """8028 zh csv enc=utf-8-sig cols=D+E+F label=C -- 河北，离心泵。图样检验特性清单：编号、特性、公称值与上下偏差，检具与频次。
编号,零件,检验特性,公称值,上偏差,下偏差,单位,检具,频次
1,泵轴,驱动侧轴承位直径,45,0.018,0.002,mm,气动量仪,100%  ## stations 驱动侧 | 叶轮侧 // 1.shaft_seat_diameter 45 0.002 0.018
2,泵轴,驱动侧轴承位圆柱度,0.004,,,mm,圆度仪,1/20  ## 1.shaft_seat_cylindricity 0.004 @D
3,泵轴,驱动侧轴承位表面粗糙度Ra,0.8,,,μm,粗糙度仪,1/10  ## 1.shaft_seat_roughness 0.8 @D
4,泵轴,驱动侧轴肩直径,54,0,-0.3,mm,卡尺,1/10  ## 1.shaft_shoulder_diameter 54 -0.3 0
5,泵轴,驱动侧轴肩端面跳动,0.008,,,mm,千分表,1/5  ## 1.shaft_shoulder_runout 0.008 @D
6,泵轴,叶轮侧轴承位直径,50,0.018,0.002,mm,气动量仪,100%  ## 2.shaft_seat_diameter 50 0.002 0.018
7,泵轴,叶轮侧轴承位圆柱度,0.004,,,mm,圆度仪,1/20  ## 2.shaft_seat_cylindricity 0.004 @D
8,泵轴,叶轮侧轴承位表面粗糙度Ra,0.8,,,μm,粗糙度仪,1/10  ## 2.shaft_seat_roughness 0.8 @D
9,泵轴,键槽宽度,14,0,-0.043,mm,塞规,100%
10,轴承体,驱动侧轴承孔直径,100,0.035,0,mm,内径表,100%  ## 1.housing_seat_diameter 100 0 0.035
11,轴承体,驱动侧轴承孔圆度,0.008,,,mm,圆度仪,1/20
12,轴承体,驱动侧轴承孔表面粗糙度Ra,1.6,,,μm,粗糙度仪,1/10  ## 1.housing_seat_roughness 1.6 @D
13,轴承体,叶轮侧轴承孔直径,110,0.035,0,mm,内径表,100%  ## 2.housing_seat_diameter 110 0 0.035
14,轴承体,叶轮侧轴承孔表面粗糙度Ra,1.6,,,μm,粗糙度仪,1/10  ## 2.housing_seat_roughness 1.6 @D
15,轴承体,两轴承孔同轴度,0.02,,,mm,三坐标,1/20  ## coaxiality_of_bores 0.02 @D
16,轴承体,铸件硬度,190,,,HB,硬度计,1/批
""",
    """8029 zh json -- 浙江，减速机。物料属性由系统导出，中文键，轴承位置为数组。
{
  "物料编码": "JS200.03.00",  ## drawing_number JS200.03.00
  "版本": "B",  ## drawing_revision B
  "名称": "高速轴轴承组件",
  "状态": "已发布",
  "采购类型": "自制",
  "技术参数": {
    "最高转速(r/min)": 3000,  ## speed_max 3000
    "设计寿命(h)": 25000,  ## required_life 25000
    "轴材料": "42CrMo",  ## shaft_material steel
    "箱体材料": "HT250"  ## housing_material cast iron
  },
  "轴承位置": [
    {
      "位置": "输入端",  ## [1] // station 输入端
      "轴承型号": "6207",  ## bearing_designation 6207
      "作用": "固定端",  ## axial_role locating
      "轴径(mm)": 35,
      "轴公差带": "k6",  ## shaft_seat_diameter 35 k6 @轴径(mm)-1+轴公差带
      "座孔直径(mm)": 72,
      "座孔公差带": "H7",  ## housing_seat_diameter 72 H7 @座孔直径(mm)-1+座孔公差带
      "径向载荷(N)": 1350,  ## radial_load 1350
      "轴向载荷(N)": 420,  ## axial_load 420
      "游隙组别": "C3"  ## clearance_class C3
    },
    {
      "位置": "输出端",  ## [2] // station 输出端
      "轴承型号": "NU206",  ## bearing_designation NU206
      "作用": "游动端",  ## axial_role floating
      "轴径(mm)": 30,
      "轴公差带": "k6",  ## shaft_seat_diameter 30 k6 @轴径(mm)-1+轴公差带
      "座孔直径(mm)": 62,
      "座孔公差带": "H7",  ## housing_seat_diameter 62 H7 @座孔直径(mm)-1+座孔公差带
      "径向载荷(N)": 1980,  ## radial_load 1980
      "轴向载荷(N)": 0,  ## axial_load 0
      "游隙组别": "C3"  ## clearance_class C3
    }
  ],
  "备注": "样机阶段"
}
""",
    """8030 zh tab -- 辽宁，离心风机。每个轴承一行，单位写在列名里，另有采购列。
机型 | 轴承位置 | 轴承型号 | 游隙 | 轴颈(mm) | 轴颈上偏差(μm) | 轴颈下偏差(μm) | 轴承座孔(mm) | 孔上偏差(μm) | 孔下偏差(μm) | 径向负荷(N) | 轴向负荷(N) | 转速(r/min) | 轴承温度(℃) | 润滑 | 单价(元)  ## > machine:A station:B bearing_designation:C clearance_class:D shaft_seat_diameter:E+F+G housing_seat_diameter:H+I+J radial_load:K axial_load:L speed_max:M operating_temperature:N lubrication:O
LF-10 | 叶轮端 | 6310 | C3 | 50 | +18 | +2 | 110 | +35 | 0 | 2600 | 380 | 1480 | 65 | 锂基脂 | 86  ## = LF-10 ; 叶轮端 ; 6310 ; C3 ; 50 0.002 0.018 ; 110 0 0.035 ; 2600 ; 380 ; 1480 ; 65 ; grease
LF-10 | 皮带轮端 | 6210 | C3 | 50 | +18 | +2 | 90 | +35 | 0 | 3100 | 0 | 1480 | 60 | 锂基脂 | 54  ## = LF-10 ; 皮带轮端 ; 6210 ; C3 ; 50 0.002 0.018 ; 90 0 0.035 ; 3100 ; 0 ; 1480 ; 60 ; grease
LF-12 | 叶轮端 | 6212 | C3 | 60 | +21 | +2 | 110 | +35 | 0 | 3350 | 450 | 980 | 60 | 锂基脂 | 71  ## = LF-12 ; 叶轮端 ; 6212 ; C3 ; 60 0.002 0.021 ; 110 0 0.035 ; 3350 ; 450 ; 980 ; 60 ; grease
LF-12 | 皮带轮端 | 6212 | C3 | 60 | +21 | +2 | 110 | +35 | 0 | 4020 | 0 | 980 | 60 | 锂基脂 | 71  ## = LF-12 ; 皮带轮端 ; 6212 ; C3 ; 60 0.002 0.021 ; 110 0 0.035 ; 4020 ; 0 ; 980 ; 60 ; grease
""",
    """8031 zh csv cols=B -- 广东，高速离心鼓风机。三维模型的参数导出，拼音缩写与英文混用，备注说明含义。
参数名,数值,单位,备注
zhou_n_max,24000,rpm,最高转速  ## speed_max 24000 // stations A | B
zhuanzi_m,11.5,kg,转子质量  ## rotor_mass 11.5
kuaju_L,268,mm,两轴承中心距  ## bearing_span 268
zc_A,7205AC/P5,,A端轴承型号（叶轮侧）  ## 1.bearing_designation 7205AC/P5
zc_B,7205AC/P5,,B端轴承型号  ## 2.bearing_designation 7205AC/P5
zhou_A_d,25,mm,A端轴颈直径
zhou_A_es,0.006,mm,A端轴颈上偏差
zhou_A_ei,-0.003,mm,A端轴颈下偏差  ## 1.shaft_seat_diameter 25 -0.003 0.006 @B-2+B-1+B
zhou_B_d,25,mm,B端轴颈直径
zhou_B_es,0.006,mm,B端轴颈上偏差
zhou_B_ei,-0.003,mm,B端轴颈下偏差  ## 2.shaft_seat_diameter 25 -0.003 0.006 @B-2+B-1+B
kong_A_D,52,mm,A端座孔直径
kong_A_ES,0.013,mm,A端座孔上偏差
kong_A_EI,0,mm,A端座孔下偏差  ## 1.housing_seat_diameter 52 0 0.013 @B-2+B-1+B
kong_B_D,52,mm,B端座孔直径
kong_B_ES,0.019,mm,B端座孔上偏差
kong_B_EI,0.006,mm,B端座孔下偏差  ## 2.housing_seat_diameter 52 0.006 0.019 @B-2+B-1+B
jian_A,31,mm,A端轴肩直径  ## 1.shaft_shoulder_diameter 31
jian_B,31,mm,B端轴肩直径  ## 2.shaft_shoulder_diameter 31
ra_zhou_A,0.4,μm,A端轴颈粗糙度Ra  ## 1.shaft_seat_roughness 0.4
ra_zhou_B,0.4,μm,B端轴颈粗糙度Ra  ## 2.shaft_seat_roughness 0.4
yuanjiao_R,0.5,mm,圆角  ## ?shaft_fillet_radius|housing_fillet_radius 0.5
yujin_F,220,N,弹簧预紧力，B端  ## preload_force 220 // implied preload_method spring
yelun_D,310,mm,叶轮外径
yelun_z,13,,叶片数  ## blade_count 13
""",
    """8032 ja csv enc=cp932 -- 大阪、ブロワ。仕様表をCSVで保存、負荷側と反負荷側を並べ、はめあい記号だけを書く。
ブロワ軸受仕様書,,,
改訂,3,作成,設計二課  ## ~drawing_revision 3 @B
項目,負荷側,反負荷側,単位  ## station 負荷側 | 反負荷側
軸受呼び番号,6306ZZC3,6305ZZC3,  ## bearing_designation 6306ZZC3 | 6305ZZC3
内径,30,25,mm  ## bore_diameter 30 | 25
外径,72,62,mm  ## outside_diameter 72 | 62
幅,19,17,mm  ## ring_width 19 | 17
軸はめあい,φ30 k5,φ25 k5,  ## shaft_seat_diameter 30 k5 | 25 k5
ハウジングはめあい,φ72 H7,φ62 H7,  ## housing_seat_diameter 72 H7 | 62 H7
軸肩径,37,32,mm  ## shaft_shoulder_diameter 37 | 32
ハウジング肩径,65,55,mm  ## housing_shoulder_diameter 65 | 55
軸受座の円筒度（軸）,0.004,0.004,mm  ## shaft_seat_cylindricity 0.004 | 0.004
軸受座の表面粗さRa（軸）,0.8,0.8,μm  ## shaft_seat_roughness 0.8 | 0.8
ラジアル荷重,640,280,N  ## radial_load 640 | 280
アキシアル荷重,150,0,N  ## axial_load 150 | 0
固定／自由,固定側,自由側,  ## axial_role locating | floating
潤滑,グリース,グリース,  ## lubrication grease | grease
最高回転数,4500,,min-1  ## speed_max 4500
軸受間距離,180,,mm  ## bearing_span 180
ロータ質量,12.5,,kg  ## rotor_mass 12.5
塗装色,メーカー標準,,
""",
    """8033 ja xlsx cols=C,D label=A -- 愛知、工作機械の主軸。計算書のシート、表題を結合、前側・後側の列、公差は上下の行。
#! sheet 主軸軸受
#! merge A1:F1
#! fmt C8:D9 0.000
主軸軸受 設計計算書 | | | | |
図番 | MS-40-1102 | | 改訂 | 2 |  ## drawing_number MS-40-1102 @B // drawing_revision 2 @E
担当 | | | 承認 | |
項目 | 記号 | 前側 | 後側 | 単位 | 備考  ## station 前側 | 後側
軸受 | | 7008C P4 | 7007C P4 | | 背面組合せ ## bearing_designation 7008C P4 | 7007C P4
接触角 | α | 15 | 15 | 度 | ## contact_angle 15 | 15
軸径（呼び） | d | 40 | 35 | mm |
上の寸法許容差 | | 0.002 | 0.002 | mm | 軸
下の寸法許容差 | | -0.003 | -0.003 | mm | 軸 ## shaft_seat_diameter 40 -0.003 0.002 | 35 -0.003 0.002 @X-2+X-1+X
ハウジング穴径 | D | 68 JS5 | 62 H5 | mm | ## housing_seat_diameter 68 JS5 | 62 H5
軸の振れ | | 2 | 2 | μm | 軸受座面 ## shaft_seat_runout 0.002 | 0.002
軸肩の直角度 | | 2 | 2 | μm | ## shaft_shoulder_runout 0.002 | 0.002
基本動定格荷重 | C | 20.3 | 18.9 | kN | ## dynamic_rating 20300 | 18900
基本静定格荷重 | C0 | 14.6 | 13.1 | kN | ## static_rating 14600 | 13100
ラジアル荷重 | Fr | 520 | 210 | N | ## radial_load 520 | 210
アキシアル荷重 | Fa | 300 | 0 | N | ## axial_load 300 | 0
最高回転速度 | n | 20000 | | min-1 | ## speed_max 20000
予圧荷重 | Fp | 290 | | N | 定位置予圧 ## preload_force 290 // implied preload_method rigid
軸受スパン | L | 168 | | mm | ## bearing_span 168
潤滑 | | オイルエア | オイルエア | | ## lubrication oil-air | oil-air
冷却油温度 | | 24 | | ℃ |
""",
    """8034 ja csv enc=cp932 cols=C+D+E label=B -- 広島、ポンプ。図面の検査項目一覧、寸法と上下の許容差、測定器の列。
No.,検査項目,基準寸法,上の許容差,下の許容差,単位,測定器,頻度
1,モータ側 軸受部軸径,35,+0.013,+0.002,mm,マイクロメータ,全数  ## stations モータ側 | 羽根車側 // 1.shaft_seat_diameter 35 0.002 0.013
2,モータ側 軸受部 表面粗さRa,0.8,,,μm,粗さ計,1/10  ## 1.shaft_seat_roughness 0.8 @C
3,モータ側 軸肩径,44,0,-0.2,mm,ノギス,1/10  ## 1.shaft_shoulder_diameter 44 -0.2 0
4,羽根車側 軸受部軸径,40,+0.013,+0.002,mm,マイクロメータ,全数  ## 2.shaft_seat_diameter 40 0.002 0.013
5,羽根車側 軸受部 表面粗さRa,0.8,,,μm,粗さ計,1/10  ## 2.shaft_seat_roughness 0.8 @C
6,羽根車側 軸肩径,49,0,-0.2,mm,ノギス,1/10  ## 2.shaft_shoulder_diameter 49 -0.2 0
7,モータ側 ハウジング内径,72,+0.030,0,mm,シリンダゲージ,全数  ## 1.housing_seat_diameter 72 0 0.030
8,モータ側 ハウジング内径 円筒度,0.008,,,mm,真円度測定機,1/20  ## 1.housing_seat_cylindricity 0.008 @C
9,羽根車側 ハウジング内径,80,+0.030,0,mm,シリンダゲージ,全数  ## 2.housing_seat_diameter 80 0 0.030
10,羽根車側 ハウジング内径 円筒度,0.008,,,mm,真円度測定機,1/20  ## 2.housing_seat_cylindricity 0.008 @C
11,ハウジング内径の同軸度,0.02,,,mm,三次元測定機,1/20  ## coaxiality_of_bores 0.02 @C
12,キー溝幅,10,0,-0.036,mm,栓ゲージ,全数
13,羽根車はめあい部 軸径,28,0,-0.013,mm,マイクロメータ,全数
""",
    """8035 ja csv enc=utf-8-sig cols=B -- 長野、小形モータ。品目属性の出力、属性名に側を付け、値と単位を分ける。
属性名,属性値,単位,必須
品目番号,MT-0825-11,,○  ## drawing_number MT-0825-11
図面改訂,D,,○  ## drawing_revision D
承認状態,承認済,,○
最高回転数,30000,rpm,○  ## speed_max 30000 // stations 出力側 | 反出力側
ロータ質量,85,g,○  ## rotor_mass 0.085
取付姿勢,水平,,○  ## shaft_orientation horizontal
出力側軸受型番,608ZZ,,○  ## 1.bearing_designation 608ZZ
反出力側軸受型番,607ZZ,,○  ## 2.bearing_designation 607ZZ
出力側軸受すきま,C3,,○  ## 1.clearance_class C3
反出力側軸受すきま,C3,,○  ## 2.clearance_class C3
出力側軸径,8 h5,mm,○  ## 1.shaft_seat_diameter 8 h5
反出力側軸径,7 h5,mm,○  ## 2.shaft_seat_diameter 7 h5
出力側ハウジング内径,22 H6,mm,○  ## 1.housing_seat_diameter 22 H6
反出力側ハウジング内径,19 H6,mm,○  ## 2.housing_seat_diameter 19 H6
予圧ばね種類,波ばね,,  ## spring_kind wave
予圧,9,N,○  ## preload_force 9
ハウジング材質,ADC12,,○  ## housing_material aluminium
シャフト材質,SUS420J2,,○  ## shaft_material stainless steel
グリース封入量,30,%,  ## grease_fill 30
包装仕様,トレー,,
主要取引先コード,K-210,,
""",
    """8036 ja csv enc=utf-8 -- 兵庫、増速機。軸受一個につき一行、列名の下に単位の行、倉庫の列も残す。
軸,位置,軸受型番,内径,外径,幅,軸公差,穴公差,動定格荷重,ラジアル荷重,回転速度,運転温度,保管棚  ## > machine:A station:B bearing_designation:C bore_diameter:D outside_diameter:E ring_width:F shaft_seat_diameter:G housing_seat_diameter:H dynamic_rating:I radial_load:J speed_max:K operating_temperature:L
,,,mm,mm,mm,,,kN,N,min-1,℃,
入力軸,左,6208,40,80,18,k5,H7,29.1,1650,1800,60,B-12  ## = 入力軸 ; 左 ; 6208 ; 40 ; 80 ; 18 ; 40 k5 ; 80 H7 ; 29100 ; 1650 ; 1800 ; 60
入力軸,右,NU208,40,80,18,k5,H7,43.5,2240,1800,60,B-14  ## = 入力軸 ; 右 ; NU208 ; 40 ; 80 ; 18 ; 40 k5 ; 80 H7 ; 43500 ; 2240 ; 1800 ; 60
出力軸,左,6306,30,72,19,k5,K6,26.7,980,10800,75,B-07  ## = 出力軸 ; 左 ; 6306 ; 30 ; 72 ; 19 ; 30 k5 ; 72 K6 ; 26700 ; 980 ; 10800 ; 75
出力軸,右,NU206,30,62,16,k5,K6,39.0,1120,10800,75,B-09  ## = 出力軸 ; 右 ; NU206 ; 30 ; 62 ; 16 ; 30 k5 ; 62 K6 ; 39000 ; 1120 ; 10800 ; 75
""",
)
