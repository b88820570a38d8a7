"""The offices that write Japanese, Chinese and Russian."""

from practice_nineteenth.office import Office

SEATS_JA = Office(
    language="ja",
    layout="seat_rows",
    file="xlsx",
    machines="送風ユニット SU-4,研磨主軸 KS-12",
    positions="負荷側,反負荷側",
    bearing="ball ZZ;ball -2RS/C3",
    dwg="DW-0000",
    choices="grease=グリース;oil bath=油浴",
    title="""
軸受はめあい部寸法表
機種 | {machine} | 図番 | {drawing_number} | 改訂 | {drawing_revision}
最高回転速度 (min-1) | {speed_max:min-1} | 要求寿命 L10h (h) | {required_life:h}
作成 | 設計課 | 2025/02/{day}
""",
    more={"parts": "shaft=軸;housing=ハウジング", "order": "shaft housing", "by": "side", "sheet": "はめあい"},
    lines="""
部位 | part
軸受位置 | station
軸受呼び番号 | bearing_designation
呼び寸法 (mm) | *_seat_diameter | mm/µm | {n}
公差域クラス | *_seat_diameter | mm/µm | {c}
上の許容差 (µm) | *_seat_diameter | mm/µm | {u}
下の許容差 (µm) | *_seat_diameter | mm/µm | {l}
表面粗さ Ra (µm) | *_seat_roughness | µm
円筒度 (µm) | *_seat_cylindricity | µm
全振れ (µm) | *_seat_runout | µm
肩の直径 (mm) | *_shoulder_diameter | mm
@1 隅の丸み 最大 (mm) | *_fillet_radius | mm
備考 | - | ;研削
""",
)
LONG_JA = Office(
    language="ja",
    layout="listing",
    kind="long",
    file="csv , cp932",
    machines="遠心分離機 EB-3,攪拌機 KA-6",
    positions="上部,下部",
    bearing="ball;angular C",
    dwg="00A-0000",
    choices="grease=グリース;oil bath=油浴;locating=固定側;floating=自由側;steel=S45C;cast iron=FC250;aluminium=ADC12",
    title="""
回転体仕様データ
製品名 | {machine}
図面番号 | {drawing_number}
""",
    more={
        "columns": """
No. | no
軸受部 | position
項目 | name
値 | value | {n} {c} ({u}/{l})
単位 | unit
""",
        "units": "column",
        "whole": "共通",
    },
    lines="""
最高使用回転数 | speed_max | r/min
ロータ質量 | rotor_mass | kg
軸材質 | shaft_material
ハウジング材質 | housing_material
軸受型番 | bearing_designation
固定/自由 | axial_role
潤滑方式 | lubrication
ラジアル荷重 | radial_load | N
アキシアル荷重 | axial_load | N
軸径 | shaft_seat_diameter | mm
軸 表面粗さRa | shaft_seat_roughness | µm
軸 円筒度 | shaft_seat_cylindricity | mm
軸 肩径 | shaft_shoulder_diameter | mm
ハウジング内径 | housing_seat_diameter | mm
ハウジング 表面粗さRa | housing_seat_roughness | µm
ハウジング 円筒度 | housing_seat_cylindricity | mm
@1 ハウジング 肩径 | housing_shoulder_diameter | mm
""",
)
GROUPS_JA = Office(
    language="ja",
    layout="position_rows",
    kind="two-row headings",
    file="xlsx",
    machines="巻線機スピンドル MS-2,循環ファン JF-8",
    positions="前側,後側",
    bearing="angular C P4;ball ZZ C3",
    dwg="F0-00000",
    choices="grease=グリース潤滑;oil bath=油浴潤滑;horizontal=横軸;vertical=縦軸",
    title="""
装置名: | {machine}
図番: | {drawing_number} | Rev. | {drawing_revision} | 検図 | 済
最高回転数: | {speed_max:rpm} | rpm
姿勢: | {shaft_orientation}
予圧荷重: | {preload_force:N} | N
""",
    more={"lone": "bottom", "sheet": "軸受"},
    lines="""
位置 | station
軸受 > 型番 | bearing_designation
軸受 > 潤滑 | lubrication
軸受 > ラジアル荷重 N | radial_load | N
軸受 > アキシアル荷重 N | axial_load | N
軸 > 最大許容寸法 mm | shaft_seat_diameter | mm | {max}
軸 > 最小許容寸法 mm | shaft_seat_diameter | mm | {min}
軸 > Ra µm | shaft_seat_roughness | µm
軸 > 円筒度 µm | shaft_seat_cylindricity | µm
軸 > 肩径 mm | shaft_shoulder_diameter | mm
軸 > 隅R最大 mm | shaft_fillet_radius | mm
ハウジング > 最大許容寸法 mm | housing_seat_diameter | mm | {max}
ハウジング > 最小許容寸法 mm | housing_seat_diameter | mm | {min}
ハウジング > Ra µm | housing_seat_roughness | µm
ハウジング > 円筒度 µm | housing_seat_cylindricity | µm
ハウジング > 肩径 mm | housing_shoulder_diameter | mm
ハウジング > 隅R最大 mm | housing_fillet_radius | mm
""",
)
TREE_ZH = Office(
    language="zh",
    layout="nested",
    file="json",
    machines="增压风机 ZF-6,磨头电主轴 MT-20",
    positions="前支承,后支承",
    bearing="ball -2Z;angular C/P5",
    dwg="TH000-00",
    choices="grease=脂润滑;oil bath=油浴润滑;steel=40Cr;cast iron=HT250;aluminium=ZL104",
    more={"at": "支承", "boxed": "数值 单位", "units": "attribute"},
    lines="""
文件 > 来源 | - | 产品数据管理
文件 > 编制 | - | 结构室
产品 > 名称 | machine
产品 > 图号 | drawing_number
产品 > 版本 | drawing_revision
工况 > 最高转速 | speed_max | r/min
工况 > 要求寿命L10h | required_life | h
工况 > 环境温度 | ambient_temperature | °C
材料 > 轴材料 | shaft_material
材料 > 轴承座材料 | housing_material
位置 | station
轴承 > 型号 | bearing_designation
轴承 > 润滑方式 | lubrication
轴承 > 径向载荷 | radial_load | N
轴承 > 轴向载荷 | axial_load | N
@1 轴承 > 参考转速 | reference_speed | r/min
轴承 > 额定动载荷 | dynamic_rating | kN
轴颈 > 直径 | shaft_seat_diameter | mm | {n} {c}({u}/{l})
轴颈 > 表面粗糙度Ra | shaft_seat_roughness | µm
轴颈 > 圆柱度 | shaft_seat_cylindricity | mm
轴颈 > 轴肩直径 | shaft_shoulder_diameter | mm
轴颈 > 最大圆角半径 | shaft_fillet_radius | mm
座孔 > 直径 | housing_seat_diameter | mm | {n} {c}({u}/{l})
座孔 > 表面粗糙度Ra | housing_seat_roughness | µm
座孔 > 圆柱度 | housing_seat_cylindricity | mm
座孔 > 挡肩直径 | housing_shoulder_diameter | mm
""",
)
ACROSS_ZH = Office(
    language="zh",
    layout="transposed",
    file="txt tab gb18030",
    machines="排烟机 PY-2,排烟机 PY-5,分离机 FL-1,分离机 FL-3",
    positions="电机端,叶轮端",
    bearing="ball -2RZ;roller",
    dwg="JX-0000",
    count=2,
    choices="grease=润滑脂;oil bath=油浴;locating=固定端;floating=游动端;horizontal=卧式;vertical=立式",
    title="""
轴承配合参数表 | 编制:技术部 | 日期:2025.04.{day}
""",
    more={
        "columns": """
序号 | no
参数 | name
单位 | unit
{n} | values
""",
        "units": "column",
        "none": "/",
    },
    lines="""
图样代号 | drawing_number
最高工作转速 | speed_max | r/min
转子质量 | rotor_mass | kg
@0 安装方式 | shaft_orientation
轴承代号 | bearing_designation
轴向定位 | axial_role
润滑 | lubrication
径向力Fr | radial_load | N
轴向力Fa | axial_load | N
轴径 | shaft_seat_diameter | mm | {n}{c}
轴表面粗糙度Ra | shaft_seat_roughness | µm
轴圆柱度 | shaft_seat_cylindricity | µm
轴径向全跳动 | shaft_seat_runout | µm
轴承座孔径 | housing_seat_diameter | mm | {n}{c}
轴承座孔表面粗糙度Ra | housing_seat_roughness | µm
轴承座孔圆柱度 | housing_seat_cylindricity | µm
@1 轴承座孔径向全跳动 | housing_seat_runout | µm
""",
)
PARTS_ZH = Office(
    language="zh",
    layout="seat_rows",
    kind="parts list",
    file="csv , gb18030",
    machines="离心泵 LB-12,纺锭驱动 FD-3",
    positions="左,右",
    bearing="ball -2RS/C3;ball -2Z",
    dwg="00000-000",
    choices="grease=脂;oil bath=油",
    title="""
零部件明细及配合要求
产品: {machine} | 图号: {drawing_number} | 版次: {drawing_revision}
最高转速(r/min) | {speed_max:r/min}
转子重量(kg) | {rotor_mass:kg}
""",
    foot="""
注:偏差单位为μm,其余尺寸单位为mm。
审核: | 陈工
""",
    more={
        "parts": "bearing=深沟球轴承;shaft=轴-轴承位;housing=轴承座-轴承孔",
        "order": "shaft housing bearing",
    },
    lines="""
序号 | #
名称 | part
支点 | station
型号 | bearing_designation
基本尺寸 | *_seat_diameter | mm/µm | {n}
公差带 | *_seat_diameter | mm/µm | {c}
上偏差 | *_seat_diameter | mm/µm | {u}
下偏差 | *_seat_diameter | mm/µm | {l}
粗糙度Ra(μm) | *_seat_roughness | µm
圆柱度(mm) | *_seat_cylindricity | mm:3
全跳动(mm) | *_seat_runout | mm:3
挡肩直径 | *_shoulder_diameter | mm
径向载荷(N) | radial_load | N
轴向载荷(N) | axial_load | N
数量 | - | 1
单重(kg) | - | 0.1;2.1;3.5
供应商 | - | 外购;自制;外协
""",
)
ROWS_RU = Office(
    language="ru",
    layout="position_rows",
    file="csv ; cp1251",
    machines="Вентилятор тяговый ВТ-5,Шпиндель сверлильный ШС-12",
    positions="Опора 1,Опора 2",
    bearing="ball -2Z;ball -2RS/C3",
    dwg="АБВГ.000000.000",
    comma=True,
    choices="grease=пластичная смазка;oil bath=масляная ванна;locating=фиксированная;floating=плавающая;"
    "horizontal=горизонтальное;vertical=вертикальное",
    title="""
Таблица посадок подшипников
Изделие | {machine}
Чертёж | {drawing_number} | Изм. | {drawing_revision}
Частота вращения макс., об/мин | {speed_max:об/мин}
@0 Требуемый ресурс L10h, ч | {required_life:ч}
@1 Положение вала | {shaft_orientation}
Разработал | КБ-2 | {day}.02.2025
""",
    more={"units": "row"},
    lines="""
Опора | station
Тип опоры | axial_role
Обозначение подшипника | bearing_designation
Смазка | lubrication
Радиальная нагрузка | radial_load | Н
Осевая нагрузка | axial_load | Н
Вал: наиб. предельный размер | shaft_seat_diameter | мм | {max}
Вал: наим. предельный размер | shaft_seat_diameter | мм | {min}
@0 Вал: шероховатость Ra | shaft_seat_roughness | мкм
Вал: отклонение от цилиндричности | shaft_seat_cylindricity | мкм
Вал: диаметр заплечика | shaft_shoulder_diameter | мм
Вал: радиус галтели | shaft_fillet_radius | мм
Корпус: наиб. предельный размер | housing_seat_diameter | мм | {max}
Корпус: наим. предельный размер | housing_seat_diameter | мм | {min}
@0 Корпус: шероховатость Ra | housing_seat_roughness | мкм
Корпус: отклонение от цилиндричности | housing_seat_cylindricity | мкм
Корпус: диаметр заплечика | housing_shoulder_diameter | мм
@1 Шероховатость Ra | ?shaft_seat_roughness+housing_seat_roughness | мкм
Примечание | - | ;шлифовать
""",
)
BLOCKS_RU = Office(
    language="ru",
    layout="blocks",
    file="xlsx",
    machines="Турбодетандер ТД-3,Насос циркуляционный НЦ-8",
    positions="Опора со стороны привода,Опора со стороны крыльчатки",
    bearing="angular C;ball -2Z",
    dwg="00.000.000",
    comma=True,
    choices="grease=консистентная смазка;oil bath=масляная ванна;steel=сталь 40Х;cast iron=чугун СЧ20;"
    "aluminium=сплав АК7",
    title="""
Карта параметров опор ротора
Машина: | {machine} | № чертежа: | {drawing_number}
Макс. частота вращения, об/мин: | {speed_max:об/мин} | Масса ротора, кг: | {rotor_mass:кг}
Материал корпуса: | {housing_material} | Температура окружающей среды, °C: | {ambient_temperature:°C}
""",
    foot="""
Проверил: отдел ГК, {day}.09.2024
""",
    more={"unit": "middle", "units": "column", "none": "—", "sheet": "Опоры"},
    lines="""
Подшипник | bearing_designation
Внутренний диаметр d | bore_diameter | мм
Наружный диаметр D | outside_diameter | мм
Ширина B | ring_width | мм
Смазка | lubrication
Радиальная нагрузка | radial_load | Н
Осевая нагрузка | axial_load | Н
Посадочный диаметр вала | shaft_seat_diameter | мм | {n}{c} ({u}; {l})
Шероховатость вала Ra | shaft_seat_roughness | мкм
Цилиндричность вала | shaft_seat_cylindricity | мкм
Полное радиальное биение вала | shaft_seat_runout | мкм
Диаметр заплечика вала | shaft_shoulder_diameter | мм
Посадочный диаметр корпуса | housing_seat_diameter | мм | {n}{c} ({u}; {l})
Шероховатость отверстия корпуса Ra | housing_seat_roughness | мкм
Цилиндричность отверстия корпуса | housing_seat_cylindricity | мкм
Диаметр заплечика корпуса | housing_shoulder_diameter | мм
""",
)
MACHINES_RU = Office(
    language="ru",
    layout="machine_rows",
    kind="machine_rows, two-row headings",
    file="csv ; utf-8-sig",
    machines="Эксгаустер Э-2,Эксгаустер Э-4,Эксгаустер Э-6,Мельница МЛ-1,Мельница МЛ-2,Мельница МЛ-5",
    positions="Передняя опора,Задняя опора",
    bearing="ball -2Z;ball -2RS",
    dwg="ЭК.0000",
    comma=True,
    count=3,
    title="""
Посадки подшипников качения роторных машин
""",
    foot="""
Утвердил: гл. конструктор
""",
    lines="""
Машина | machine
Чертёж № | drawing_number
n макс., об/мин | speed_max | об/мин
Требуемая долговечность, ч | required_life | ч
{p} > Подшипник | bearing_designation
{p} > Вал, мм | shaft_seat_diameter | мм | {n}{c}
{p} > Ra вала, мкм | shaft_seat_roughness | мкм
{p} > Корпус, мм | housing_seat_diameter | мм | {n}{c}
{p} > Ra корпуса, мкм | housing_seat_roughness | мкм
@1 {p} > Радиальная нагрузка, Н | radial_load | Н
@0 {p} > Заплечик вала, мм | shaft_shoulder_diameter | мм
Цех | - | 4;7
""",
)
TREE_JA = Office(
    language="ja",
    layout="nested",
    file="json",
    machines="真空ブロワ SB-5,砥石軸 TJ-20",
    positions="駆動側,従動側",
    bearing="ball ZZ;angular C",
    dwg="M00-0000",
    choices="grease=グリース;oil bath=油浴;locating=固定側軸受;floating=自由側軸受",
    more={"at": "軸受部", "keyed": "", "units": "heading"},
    lines="""
出力情報 > 部署 | - | 開発二課
出力情報 > 出力日 | - | 2025-04-11
製品名 | machine
図面番号 | drawing_number
最高回転数_rpm | speed_max | rpm
ロータ質量_kg | rotor_mass | kg
軸受間距離_mm | bearing_span | mm
軸受 > 呼び番号 | bearing_designation
軸受 > 内径_mm | bore_diameter | mm
軸受 > 外径_mm | outside_diameter | mm
軸受 > 幅_mm | ring_width | mm
軸受 > 潤滑 | lubrication
軸受 > 軸方向の役割 | axial_role
軸受 > ラジアル荷重_N | radial_load | N
@1 軸受 > アキシアル荷重_N | axial_load | N
軸はめあい部 > 直径_mm | shaft_seat_diameter | mm | {n} {c}
軸はめあい部 > 粗さRa_um | shaft_seat_roughness | um
軸はめあい部 > 円筒度_um | shaft_seat_cylindricity | um
軸はめあい部 > 肩径_mm | shaft_shoulder_diameter | mm
ハウジングはめあい部 > 直径_mm | housing_seat_diameter | mm | {n} {c}
ハウジングはめあい部 > 粗さRa_um | housing_seat_roughness | um
ハウジングはめあい部 > 円筒度_um | housing_seat_cylindricity | um
ハウジングはめあい部 > 肩径_mm | housing_shoulder_diameter | mm
""",
)
ODD = (SEATS_JA, LONG_JA, TREE_ZH, ACROSS_ZH, ROWS_RU)
EVEN = (GROUPS_JA, TREE_JA, PARTS_ZH, BLOCKS_RU, MACHINES_RU)
