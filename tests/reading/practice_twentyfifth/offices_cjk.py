"""The offices that write Japanese, Chinese and Russian."""

from practice_nineteenth.office import Office

JA_ROWS = Office(
    language="ja",
    layout="position_rows",
    kind="two-row headings",
    file="csv , cp932",
    machines="ターボブロワ TB-15,遠心ポンプ CP-40",
    positions="羽根車側,反羽根車側",
    bearing="angular C;ball ZZ/C3",
    dwg="TB-00000",
    choices="grease=グリース;oil bath=油浴;locating=固定側;floating=自由側",
    title="""
軸受はめあい一覧表
機種名|{machine}|図番|{drawing_number}|改訂|{drawing_revision}
最高回転速度(min-1)|{speed_max:min-1}|温度(℃)|{?housing_temperature,operating_temperature:℃}
""",
    foot="""
単位:寸法 mm、公差・幾何公差 µm、粗さ Ra µm、荷重 N
""",
    more={"units": "foot", "lone": "bottom"},
    lines="""
軸受位置 | station
呼び番号 | bearing_designation
固定/自由 | axial_role
潤滑 | lubrication
軸 > 直径 | shaft_seat_diameter | mm/µm | {n}
軸 > 公差域クラス | shaft_seat_diameter | mm/µm | {c}
軸 > 上の許容差 | shaft_seat_diameter | mm/µm | {u}
軸 > 下の許容差 | shaft_seat_diameter | mm/µm | {l}
軸 > 円筒度 | shaft_seat_cylindricity | µm
軸 > 全振れ | shaft_seat_runout | µm
軸 > 粗さ | shaft_seat_roughness | µm
軸 > 肩径 | shaft_shoulder_diameter | mm
ハウジング > 内径 | housing_seat_diameter | mm/µm | {n}
ハウジング > 公差域クラス | housing_seat_diameter | mm/µm | {c}
ハウジング > 上の許容差 | housing_seat_diameter | mm/µm | {u}
ハウジング > 下の許容差 | housing_seat_diameter | mm/µm | {l}
ハウジング > 円筒度 | housing_seat_cylindricity | µm
ハウジング > 粗さ | housing_seat_roughness | µm
ハウジング > 肩径 | housing_shoulder_diameter | mm
荷重 > ラジアル | radial_load | N
荷重 > アキシアル | axial_load | N
備考 | - | ;要確認
""",
)
JA_TREE = Office(
    language="ja",
    layout="nested",
    file="json",
    machines="研削主軸 GS-30,サーボモータ SM-86",
    positions="前側,後側",
    bearing="angular C/P5;ball ZZ",
    dwg="GS30-0000",
    choices="grease=グリース;oil bath=油浴;horizontal=横;vertical=縦",
    more={"at": "軸受", "keyed": "1", "units": "key"},
    lines="""
文書種別 | - | 軸受配置仕様
機種 | machine
図面番号 | drawing_number
改訂記号 | drawing_revision
最高回転速度_rpm | speed_max | rpm
軸姿勢 | shaft_orientation
ロータ質量_kg | rotor_mass | kg
軸受間距離_mm | bearing_span | mm
呼び番号 | bearing_designation
基本動定格荷重_N | dynamic_rating | N
基本静定格荷重_N | static_rating | N
潤滑 | lubrication
ラジアル荷重_N | radial_load | N
アキシアル荷重_N | axial_load | N
軸 > はめあい径_mm | shaft_seat_diameter | mm | {n} {c}
軸 > 円筒度_µm | shaft_seat_cylindricity | µm
軸 > 全振れ_µm | shaft_seat_runout | µm
軸 > 表面粗さRa_µm | shaft_seat_roughness | µm
軸 > 肩径_mm | shaft_shoulder_diameter | mm
軸 > 隅R_mm | shaft_fillet_radius | mm
ハウジング > はめあい径_mm | housing_seat_diameter | mm | {n} {c}
ハウジング > 円筒度_µm | housing_seat_cylindricity | µm
ハウジング > 全振れ_µm | housing_seat_runout | µm
ハウジング > 表面粗さRa_µm | housing_seat_roughness | µm
ハウジング > 肩径_mm | housing_shoulder_diameter | mm
""",
)
ZH_SHEET = Office(
    language="zh",
    layout="sections",
    kind="inspection sheet",
    file="csv , gb18030",
    machines="涡轮鼓风机 WG-120,牙科主轴 YZ-6",
    positions="叶轮端轴承,电机端轴承",
    bearing="ball -2RS/C3;angular C/P4",
    dwg="WG.000-00",
    title="""
首件检验记录表
产品名称|{machine}|图号|{drawing_number}|版本|{drawing_revision}
供应商||送检日期|
""",
    foot="""
检验员:|||审核:
""",
    more={
        "columns": """
序号 | no
检验项目 | name
标准值 | value | {n}
上偏差 | value | {u} | size
下偏差 | value | {l} | size
单位 | unit
量具 | - | 千分尺;圆度仪;粗糙度仪
实测值 | empty
判定 | empty
""",
        "at": "2",
        "units": "column",
        "whole": "整机",
    },
    lines="""
最高转速 | speed_max | r/min
转子质量 | rotor_mass | kg
轴承型号 | bearing_designation
轴颈直径 | shaft_seat_diameter | mm
轴颈圆柱度 | shaft_seat_cylindricity | mm:3
轴颈径向全跳动 | shaft_seat_runout | mm:3
轴颈粗糙度Ra | shaft_seat_roughness | µm
轴肩直径 | shaft_shoulder_diameter | mm
轴肩端面跳动 | shaft_shoulder_runout | mm:3
轴肩圆角半径 | shaft_fillet_radius | mm
轴承座孔直径 | housing_seat_diameter | mm
轴承座孔圆柱度 | housing_seat_cylindricity | mm:3
轴承座孔径向全跳动 | housing_seat_runout | mm:3
轴承座孔粗糙度Ra | housing_seat_roughness | µm
座孔挡肩直径 | housing_shoulder_diameter | mm
@1 座孔挡肩端面跳动 | housing_shoulder_runout | mm:3
""",
)
ZH_FLEET = Office(
    language="zh",
    layout="machine_rows",
    file="xlsx",
    machines="SF-40,SF-60,SF-80,SF-110,SF-130,SF-150",
    positions="轴伸端,非轴伸端",
    bearing="ball ZZ/C3;ball -2RS",
    dwg="SF.000.00",
    count=3,
    fits="k5 j5 js5/H6 H7 J7",
    choices="aluminium=铝合金;cast iron=铸铁",
    title="""
伺服电机系列轴承配置表
单位:mm,N
""",
    more={"units": "title", "sheet": "配置表"},
    lines="""
型号 | machine
图号 | drawing_number
版次 | drawing_revision
最高转速(r/min) | speed_max | r/min
{p}轴承型号 | bearing_designation
{p}轴颈配合 | shaft_seat_diameter | mm | φ{n}{c}
{p}座孔配合 | housing_seat_diameter | mm | φ{n}{c}
{p}轴肩直径 | shaft_shoulder_diameter | mm
{p}径向载荷 | radial_load | N
{p}轴向载荷 | axial_load | N
端盖材料 | housing_material
采购单价(元) | - | 520;760;980
""",
)
RU_SEATS = Office(
    language="ru",
    layout="seat_rows",
    kind="features",
    file="csv ; cp1251",
    machines="Насос центробежный НЦ 50,Турбовоздуходувка ТВ 30",
    positions="со стороны колеса,со стороны привода",
    bearing="ball -2Z;angular B",
    dwg="НЦ50.00.000",
    comma=True,
    title="""
Ведомость посадочных поверхностей под подшипники
Изделие | {machine}
Чертёж | {drawing_number} | Изм. | {drawing_revision}
Макс. частота вращения, об/мин | {speed_max:об/мин}
""",
    foot="""
Проверил ОТК ____________
""",
    more={"parts": "shaft=Вал;housing=Корпус", "order": "shaft housing", "units": "heading"},
    lines="""
№ п/п | #
Опора | station
Деталь | part
Подшипник | bearing_designation
Диаметр посадки, мм | *_seat_diameter | мм/мкм | {n}
Поле допуска | *_seat_diameter | мм/мкм | {c}
Верхнее откл., мкм | *_seat_diameter | мм/мкм | {u}
Нижнее откл., мкм | *_seat_diameter | мм/мкм | {l}
Допуск цилиндричности, мкм | *_seat_cylindricity | мкм
Полное радиальное биение, мкм | *_seat_runout | мкм
Шероховатость Ra, мкм | *_seat_roughness | мкм
Диаметр заплечика, мм | *_shoulder_diameter | мм
Торцовое биение заплечика, мкм | *_shoulder_runout | мкм
Материал заготовки | - | Ст. поковка;Отливка
Примечание | - | ;см. ТТ п. 4
""",
)
JA_CROSSED = Office(
    language="ja",
    layout="crossed",
    file="xlsx",
    machines="巻取ローラ MR-200,遠心分離機 ES-12",
    positions="駆動側,操作側",
    bearing="ball ZZ/C3;angular B",
    dwg="MR-000-000",
    choices="grease=グリース;oil bath=油浴",
    title="""
軸受取付部 設計表
機械名称 | {machine} | 図番 | {drawing_number} | 版 | {drawing_revision}
最高回転数 | {speed_max:rpm} rpm | 作成 | 2025/{day}
""",
    more={"head": "項目|単位", "sides": "軸|ハウジング", "units": "column", "sheet": "設計表"},
    lines="""
軸受呼び番号 | bearing_designation
潤滑方法 | lubrication
ラジアル荷重 | radial_load | N
アキシアル荷重 | axial_load | N
はめあい部直径 | *_seat_diameter | mm | {n} {c}
寸法許容差 上 | *_seat_diameter | mm/µm | {u}
寸法許容差 下 | *_seat_diameter | mm/µm | {l}
円筒度 | *_seat_cylindricity | µm
全振れ | *_seat_runout | µm
表面粗さ Ra | *_seat_roughness | µm
肩の直径 | *_shoulder_diameter | mm
肩の端面振れ | *_shoulder_runout | µm
隅の丸み半径 | *_fillet_radius | mm
""",
)
JA_LIST = Office(
    language="ja",
    layout="listing",
    kind="characteristics",
    file="csv tab utf-16",
    machines="ミキサ MX-5,冷却ファン RF-92",
    positions="上部軸受,下部軸受",
    bearing="ball -2RS;ball ZZ",
    dwg="MX-00-000",
    choices="grease=グリース;oil bath=油浴;vertical=縦軸;horizontal=横軸",
    title="""
調達仕様書 別表 軸受部管理特性
機種|{machine}|図面番号|{drawing_number}|改訂|{drawing_revision}
""",
    more={
        "columns": """
No. | no
部位 | position
部品 | part
管理項目 | name
規格値 | value | {n} {c}
上限 | value | {max} | size
下限 | value | {min} | size
単位 | unit
測定値 | empty
検査方法 | - | マイクロメータ;真円度測定機;粗さ計
""",
        "units": "column",
        "first": "1",
        "whole": "全体",
    },
    lines="""
ロータ > 最高回転速度 | speed_max | min-1
ロータ > 軸の姿勢 | shaft_orientation
ロータ > 一次危険速度 | first_critical_speed | min-1
ロータ > 要求寿命 | required_life | h
軸受 > 呼び番号 | bearing_designation
軸受 > 潤滑 | lubrication
軸受 > ラジアル荷重 | radial_load | N
軸 > はめあい部直径 | shaft_seat_diameter | mm
軸 > はめあい部円筒度 | shaft_seat_cylindricity | mm:3
軸 > はめあい部粗さ Ra | shaft_seat_roughness | µm
軸 > 肩径 | shaft_shoulder_diameter | mm
軸 > 肩の振れ | shaft_shoulder_runout | mm:3
ハウジング > はめあい部直径 | housing_seat_diameter | mm
ハウジング > はめあい部円筒度 | housing_seat_cylindricity | mm:3
ハウジング > はめあい部粗さ Ra | housing_seat_roughness | µm
ハウジング > 肩径 | housing_shoulder_diameter | mm
ハウジング > 肩の振れ | housing_shoulder_runout | mm:3
""",
)
ZH_CHAPTERS = Office(
    language="zh",
    layout="chapters",
    file="csv , utf-8",
    machines="离心泵 LB-65,搅拌机 JB-20",
    positions="驱动端,非驱动端",
    bearing="roller;ball -2Z/C3",
    dwg="LB65-00-00",
    choices="grease=脂润滑;oil bath=油浴润滑;horizontal=卧式;vertical=立式;locating=固定;floating=游动",
    title="""
轴承部件设计参数表
设备名称|{machine}
图纸编号|{drawing_number}|修订|{drawing_revision}|设计|张工
""",
    more={"station": "轴承位置", "units": "heading"},
    lines="""
一、工况 > 最高转速 | speed_max | r/min
一、工况 > 工作转速 | speed_operating | r/min
一、工况 > 安装方式 | shaft_orientation
一、工况 > 环境温度 | ambient_temperature | ℃
一、工况 > 轴温度 | shaft_temperature | ℃
一、工况 > 轴承座温度 | housing_temperature | ℃
一、工况 > 要求寿命 | required_life | h
二、轴承 > 轴承型号 | bearing_designation
二、轴承 > 轴向定位 | axial_role
二、轴承 > 润滑方式 | lubrication
二、轴承 > 径向力(N) | radial_load | N
二、轴承 > 轴向力(N) | axial_load | N
二、轴承 > 额定动载荷(kN) | dynamic_rating | kN
三、轴 > 轴颈直径(mm) | shaft_seat_diameter | mm | {n}
三、轴 > 公差带 | shaft_seat_diameter | mm | {c}
三、轴 > 圆柱度(µm) | shaft_seat_cylindricity | µm
三、轴 > 粗糙度Ra(µm) | shaft_seat_roughness | µm
三、轴 > 轴肩直径(mm) | shaft_shoulder_diameter | mm
三、轴 > 轴肩跳动(µm) | shaft_shoulder_runout | µm
四、轴承座 > 孔径(mm) | housing_seat_diameter | mm | {n}
四、轴承座 > 公差带 | housing_seat_diameter | mm | {c}
四、轴承座 > 圆柱度(µm) | housing_seat_cylindricity | µm
四、轴承座 > 粗糙度Ra(µm) | housing_seat_roughness | µm
四、轴承座 > 挡肩直径(mm) | housing_shoulder_diameter | mm
四、轴承座 > 挡肩跳动(µm) | housing_shoulder_runout | µm
""",
)
RU_DOWN = Office(
    language="ru",
    layout="transposed",
    file="xlsx",
    machines="Вентилятор радиальный ВР 63,Шпиндель шлифовальный ШШ 40",
    positions="Передняя опора,Задняя опора",
    bearing="ball /C3;angular C/P5",
    dwg="ВР63.00.00",
    comma=True,
    choices="grease=пластичная смазка;oil bath=масляная ванна;locating=фиксирующая;floating=плавающая;"
    "steel=сталь;cast iron=чугун;aluminium=алюминиевый сплав",
    title="""
Параметры подшипникового узла
Машина | {machine}
Обозначение чертежа | {drawing_number}
Ревизия | {drawing_revision}
Разработал | Отдел главного конструктора
""",
    more={
        "columns": """
Параметр | name
{n} | values
Ед. изм. | unit
Комментарий | - | ГОСТ 25347;;
""",
        "units": "column",
        "none": "—",
        "sheet": "Узел",
    },
    lines="""
Максимальная частота вращения | speed_max | об/мин
Масса ротора | rotor_mass | кг
Материал корпуса | housing_material
Обозначение подшипника | bearing_designation
Тип опоры | axial_role
Смазка | lubrication
Радиальная нагрузка | radial_load | Н
Осевая нагрузка | axial_load | Н
Диаметр посадочной шейки вала | shaft_seat_diameter | мм | {n} {c} ({u}; {l})
Цилиндричность шейки вала | shaft_seat_cylindricity | мм:3
Полное биение шейки вала | shaft_seat_runout | мм:3
Шероховатость Ra шейки вала | shaft_seat_roughness | мкм
Диаметр заплечика вала | shaft_shoulder_diameter | мм
Диаметр отверстия корпуса | housing_seat_diameter | мм | {n} {c} ({u}; {l})
Цилиндричность отверстия корпуса | housing_seat_cylindricity | мм:3
Полное биение отверстия корпуса | housing_seat_runout | мм:3
Шероховатость Ra отверстия корпуса | housing_seat_roughness | мкм
Диаметр заплечика корпуса | housing_shoulder_diameter | мм
""",
)
ODD = (JA_ROWS, JA_TREE, ZH_SHEET, ZH_FLEET, RU_SEATS)
EVEN = (JA_CROSSED, JA_LIST, ZH_CHAPTERS, RU_DOWN)
