"""The words of drawings and catalogues in Spanish, Japanese, Chinese and Russian, in the form of the western words.

Where the words were looked up (public pages, read for their terms only):

- es.slideshare.net/richardhuaylla/skf-catalogo-de-rodamientospdf, es.scribd.com/doc/132699570 (ajustes, soportes, aro)
- studenta.com/content/142627351 (rodamientos rígidos de bolas, capacidad de carga, juego radial)
- koyo.jtekt.co.jp/support/bearing-knowledge/14-1000.html (真円度, 円筒度, 肩の振れ, はめあい面の粗さ, 軸・ハウジング)
- expydoc.com/doc/449317 (軸受の精度, 内径, 外径, 面取寸法), vdocuments.pub/cat-no-1103c-2019-f-9 (寸法表)
- llxiang.cn/changyongzirunhua..._1852_28.html (圆柱度, 轴肩, 外壳孔肩, 端面圆跳动)
- 360docs.net/doc/1213336265.html (轴颈, 外壳孔, 公差带, 表面粗糙度)
- dokipedia.ru/print/5348777 (посадочные места валов и отверстий корпусов), mash-xxl.info/page/2541732...
  (торцовое биение заплечиков), cb-online.ru/.../podshipniki-kacheniya (d, D, B, r, C, C0, n пред),
  student2.ru (верхнее, нижнее отклонение)
"""

FEATURES = {
    "es": """
seat_diameter | Diámetro {s} ; Ø {s} | Diámetro asiento ; Ø asiento
seat_cylindricity | Cilindricidad {s} ; Tolerancia de cilindricidad {s} | Cilindricidad ; Tol. cilindricidad
seat_runout | Oscilación total {s} ; Salto radial total {s} | Oscilación total ; Salto radial total
seat_roughness | Rugosidad Ra {s} ; Ra {s} | Rugosidad Ra ; Ra
shoulder_diameter | Diámetro {b} ; Ø {b} | Diámetro resalte ; Ø resalte
shoulder_runout | Oscilación axial {b} ; Perpendicularidad {b} | Oscilación axial resalte ; Salto axial resalte
fillet_radius | Radio de acuerdo {p} ; Radio de acuerdo {b} | Radio de acuerdo ; Radio máx.
""",
    "ja": """
seat_diameter | {s}径 ; {s}直径 | はめあい部径 ; 軸受座径
seat_cylindricity | {s}円筒度 ; {s}の円筒度 | 円筒度 ; 円筒度公差
seat_runout | {s}全振れ ; {s}の半径方向全振れ | 全振れ ; 半径方向全振れ
seat_roughness | {s}表面粗さRa ; {s}面粗さ Ra | 表面粗さRa ; 面粗度Ra ; Ra
shoulder_diameter | {b}径 ; {b}直径 | 肩径 ; 肩部直径
shoulder_runout | {b}の振れ ; {b}直角度 | 肩の振れ ; 肩面の軸方向振れ
fillet_radius | {p}隅の丸み半径 ; {b}隅R | 隅の丸み半径 ; 隅R(最大)
""",
    "zh": """
seat_diameter | {s}直径 ; {s}尺寸 | 配合直径 ; 配合面直径
seat_cylindricity | {s}圆柱度 ; {s}圆柱度公差 | 圆柱度 ; 圆柱度公差
seat_runout | {s}径向全跳动 ; {s}全跳动 | 径向全跳动 ; 全跳动
seat_roughness | {s}粗糙度Ra ; {s}表面粗糙度Ra | 表面粗糙度Ra ; 粗糙度Ra ; Ra
shoulder_diameter | {b}直径 | 挡肩直径 ; 肩部直径
shoulder_runout | {b}端面跳动 ; {b}端面圆跳动 | 挡肩端面跳动 ; 端面圆跳动
fillet_radius | {b}圆角半径 ; {b}过渡圆角 | 圆角半径 ; 过渡圆角R
""",
    "ru": """
seat_diameter | Диаметр {s} ; Посадочный диаметр {p} | Посадочный диаметр ; Диаметр посадочной поверхности
seat_cylindricity | Цилиндричность {s} ; Допуск цилиндричности {s} | Допуск цилиндричности ; Цилиндричность
seat_runout | Полное радиальное биение {s} ; Допуск полного биения {s} | Полное радиальное биение ; Полное биение
seat_roughness | Шероховатость Ra {s} ; Ra {s} | Шероховатость Ra ; Ra
shoulder_diameter | Диаметр {b} ; Диаметр упорного {b} | Диаметр заплечика ; Диаметр буртика
shoulder_runout | Торцовое биение {b} ; Биение торца {b} | Торцовое биение заплечика ; Торцовое биение
fillet_radius | Радиус галтели {p} ; Радиус галтели {b} | Радиус галтели ; Галтель R
""",
}
SIDES = {
    "es": {
        "shaft": ("asiento eje", "resalte eje", "eje"),
        "housing": ("asiento alojamiento", "resalte alojamiento", "alojamiento"),
    },
    "ja": {"shaft": ("軸はめあい部", "軸肩", "軸"), "housing": ("ハウジング穴", "ハウジング肩", "ハウジング")},
    "zh": {"shaft": ("轴颈", "轴肩", "轴"), "housing": ("轴承座孔", "座孔挡肩", "轴承座")},
    "ru": {
        "shaft": ("шейки вала", "заплечика вала", "вала"),
        "housing": ("отверстия корпуса", "заплечика корпуса", "корпуса"),
    },
}
OTHERS = {
    "es": """
bearing_designation | Designación del rodamiento ; Rodamiento ; Referencia rodamiento | Designación ; Referencia
size_text | Dimensiones rodamiento d x D x B ; Medidas rodamiento d x D x B | d x D x B ; Medidas d×D×B
bore_diameter | Diámetro interior rodamiento d ; Agujero del rodamiento | d ; Diámetro interior d
outside_diameter | Diámetro exterior rodamiento D ; Ø exterior rodamiento | D ; Diámetro exterior D
ring_width | Anchura del rodamiento B ; Ancho rodamiento | B ; Anchura B
ring_chamfer | Chaflán rodamiento r mín ; Chaflán del aro rs mín | r mín ; Chaflán r mín
bearing_type | Tipo de rodamiento ; Clase de rodamiento | Tipo
contact_angle | Ángulo de contacto ; Ángulo de contacto rodamiento | Ángulo de contacto
closure | Obturación del rodamiento ; Protección rodamiento | Obturación ; Protección
clearance_class | Juego interno ; Clase de juego radial | Juego interno ; Juego
tolerance_class | Clase de precisión rodamiento ; Clase de tolerancia rodamiento | Precisión ; Clase de precisión
cage | Jaula ; Jaula del rodamiento | Jaula
ball_material | Material de las bolas ; Material bolas | Bolas
ball_count | Número de bolas ; Número de bolas Z | N.º bolas
dynamic_rating | Capacidad de carga dinámica C ; Carga dinámica básica | C ; Carga dinámica C
static_rating | Capacidad de carga estática C0 ; Carga estática básica | C0 ; Carga estática C0
fatigue_load_limit | Carga límite de fatiga Pu ; Carga límite de fatiga | Pu ; Límite de fatiga
limiting_speed | Velocidad límite rodamiento ; Velocidad límite | Velocidad límite
reference_speed | Velocidad de referencia ; Velocidad térmica de referencia | Velocidad de referencia
lubrication | Lubricación ; Tipo de lubricación | Lubricación
base_oil_viscosity_40 | Viscosidad aceite base a 40 °C ; Viscosidad a 40 °C | Viscosidad 40 °C
base_oil_viscosity_100 | Viscosidad aceite base a 100 °C ; Viscosidad a 100 °C | Viscosidad 100 °C
grease_fill | Llenado de grasa ; Grado de llenado de grasa | Llenado de grasa
radial_load | Carga radial ; Carga radial Fr | Fr ; Carga radial
axial_load | Carga axial ; Carga axial Fa | Fa ; Carga axial
operating_temperature | Temperatura de servicio del rodamiento ; Temperatura de trabajo rodamiento | Temp. rodamiento
axial_role | Función axial ; Apoyo fijo/libre | Función axial
speed_max | Velocidad máxima ; Velocidad de giro máx. | Velocidad máx.
speed_operating | Velocidad de funcionamiento ; Velocidad de servicio | Velocidad de servicio
required_life | Vida requerida L10h ; Duración requerida | Vida requerida
temperature_min | Temperatura mínima ; Temperatura mín. | T mín
temperature_max | Temperatura máxima ; Temperatura máx. | T máx
shaft_temperature | Temperatura del eje ; Temperatura eje | T eje
housing_temperature | Temperatura del alojamiento ; Temperatura alojamiento | T alojamiento
ambient_temperature | Temperatura ambiente ; T ambiente | T ambiente
shaft_material | Material del eje ; Material eje | Material eje
housing_material | Material del alojamiento ; Material alojamiento | Material alojamiento
bearing_span | Distancia entre rodamientos ; Distancia entre apoyos | Distancia entre rodamientos
rotor_mass | Masa del rotor ; Masa rotor | Masa rotor
balance_grade | Grado de equilibrado G ; Calidad de equilibrado G | Equilibrado
preload_method | Tipo de precarga ; Método de precarga | Tipo de precarga
preload_force | Precarga ; Fuerza de precarga | Precarga
spring_rate | Constante del muelle ; Rigidez del muelle | Rigidez muelle
spring_free_length | Longitud libre del muelle ; Longitud libre muelle L0 | Longitud libre
spring_installed_length | Longitud montada del muelle ; Longitud de montaje muelle | Longitud montada
shaft_orientation | Posición del eje ; Orientación del eje | Orientación
rotating_ring | Aro giratorio ; Aro en rotación | Aro giratorio
drawing_number | N.º de plano ; Número de plano | N.º plano
drawing_revision | Revisión ; Rev. | Rev.
machine | Máquina ; Conjunto | Máquina
station | Apoyo ; Posición | Apoyo
part | Pieza ; Componente | Pieza
tol_class | Tolerancia ; Ajuste | Tol. ; Ajuste
upper | Desviación superior ; Desv. sup. | desv. sup. ; es/ES
lower | Desviación inferior ; Desv. inf. | desv. inf. ; ei/EI
max | máximo ; máx. | máx
min | mínimo ; mín. | mín
fit_pair | Ajuste eje/alojamiento ; Tolerancias eje / alojamiento | Ajuste eje/alojamiento
""",
    "ja": """
bearing_designation | 軸受呼び番号 ; 呼び番号 ; 軸受型番 | 呼び番号 ; 型番
size_text | 軸受主要寸法 d×D×B ; 軸受寸法(内径×外径×幅) | 寸法 d×D×B ; 内径×外径×幅
bore_diameter | 軸受内径d ; 軸受内径 | 内径d ; 内径 ; d
outside_diameter | 軸受外径D ; 軸受外径 | 外径D ; 外径 ; D
ring_width | 軸受幅B ; 軸受幅 | 幅B ; 幅 ; B
ring_chamfer | 軸受面取寸法 r(最小) ; 面取寸法rs min | 面取r(最小) ; r min
bearing_type | 軸受形式 ; 軸受の形式 | 形式
contact_angle | 接触角 ; 軸受接触角 | 接触角
closure | 密封形式 ; シール・シールド | 密封 ; シール形式
clearance_class | 軸受すきま ; ラジアル内部すきま記号 | すきま ; 内部すきま
tolerance_class | 軸受精度等級 ; 精度等級 | 精度等級 ; 等級
cage | 保持器 ; 保持器の種類 | 保持器
ball_material | 玉の材質 ; 転動体材質 | 玉材質
ball_count | 玉数 ; 玉数 Z | 玉数
dynamic_rating | 基本動定格荷重 Cr ; 動定格荷重 | 基本動定格荷重 ; Cr
static_rating | 基本静定格荷重 C0r ; 静定格荷重 | 基本静定格荷重 ; C0r
fatigue_load_limit | 疲労限荷重 Cu ; 疲労限荷重 | 疲労限荷重
limiting_speed | 許容回転数 ; 軸受許容回転速度(グリース) | 許容回転数 ; 許容回転速度
reference_speed | 基準回転速度 ; 熱的基準回転速度 | 基準回転速度
lubrication | 潤滑方式 ; 潤滑方法 | 潤滑
base_oil_viscosity_40 | 基油動粘度(40℃) ; 40℃動粘度 | 動粘度 40℃
base_oil_viscosity_100 | 基油動粘度(100℃) ; 100℃動粘度 | 動粘度 100℃
grease_fill | グリース封入量 ; グリース充填率 | グリース封入量
radial_load | ラジアル荷重 ; ラジアル荷重 Fr | ラジアル荷重 ; Fr
axial_load | アキシアル荷重 ; アキシアル荷重 Fa | アキシアル荷重 ; Fa
operating_temperature | 軸受運転温度 ; 運転中の軸受温度 | 軸受温度
axial_role | 固定側/自由側 ; 軸方向の役割 | 固定/自由
speed_max | 最高回転数 ; 最高回転速度 | 最高回転数
speed_operating | 常用回転数 ; 使用回転速度 | 常用回転数
required_life | 要求寿命 L10h ; 必要寿命時間 | 要求寿命
temperature_min | 最低温度 ; 最低使用温度 | 最低温度
temperature_max | 最高温度 ; 最高使用温度 | 最高温度
shaft_temperature | 軸温度 ; 軸の温度 | 軸温度
housing_temperature | ハウジング温度 ; ハウジングの温度 | ハウジング温度
ambient_temperature | 周囲温度 ; 雰囲気温度 | 周囲温度
shaft_material | 軸材質 ; 軸の材料 | 軸材質
housing_material | ハウジング材質 ; ハウジングの材料 | ハウジング材質
bearing_span | 軸受間距離 ; 軸受スパン | 軸受スパン
rotor_mass | ロータ質量 ; 回転体質量 | ロータ質量
balance_grade | 釣合い良さ G ; バランス等級 G | バランス等級
preload_method | 予圧方式 ; 予圧方法 | 予圧方式
preload_force | 予圧荷重 ; 予圧 | 予圧荷重
spring_rate | 予圧ばね定数 ; ばね定数 | ばね定数
spring_free_length | 予圧ばね自由長 ; ばね自由高さ | 自由長
spring_installed_length | 予圧ばね組付長さ ; ばね取付長さ | 取付長さ
shaft_orientation | 軸の姿勢 ; 軸の向き | 軸姿勢
rotating_ring | 回転輪 ; 回転する軌道輪 | 回転輪
drawing_number | 図面番号 ; 図番 | 図番
drawing_revision | 改訂 ; 改訂記号 | 改訂
machine | 機械名 ; 機種 ; 装置名 | 機種
station | 軸受位置 ; 位置 | 位置
part | 部品 ; 部品名 | 部品
tol_class | 公差域クラス ; はめあい ; 公差 | はめあい ; 公差
upper | 上の寸法許容差 ; 上許容差 | 上許容差 ; 上
lower | 下の寸法許容差 ; 下許容差 | 下許容差 ; 下
max | 最大 ; 最大許容寸法 | 最大
min | 最小 ; 最小許容寸法 | 最小
fit_pair | はめあい(軸/ハウジング) ; 公差 軸/ハウジング | はめあい 軸/ハウジング
""",
    "zh": """
bearing_designation | 轴承型号 ; 轴承代号 ; 轴承 | 型号 ; 代号
size_text | 轴承外形尺寸 d×D×B ; 轴承尺寸(内径×外径×宽度) | 尺寸 d×D×B ; 内径×外径×宽度
bore_diameter | 轴承内径d ; 轴承内径 | 内径d ; 内径 ; d
outside_diameter | 轴承外径D ; 轴承外径 | 外径D ; 外径 ; D
ring_width | 轴承宽度B ; 轴承宽度 | 宽度B ; 宽度 ; B
ring_chamfer | 轴承倒角 r min ; 套圈倒角尺寸rs min | 倒角 r min ; r min
bearing_type | 轴承类型 ; 轴承种类 | 类型
contact_angle | 接触角 ; 轴承接触角 | 接触角
closure | 密封形式 ; 轴承密封 | 密封 ; 密封形式
clearance_class | 轴承游隙 ; 径向游隙组别 | 游隙 ; 游隙组
tolerance_class | 轴承公差等级 ; 轴承精度等级 | 精度等级 ; 公差等级
cage | 保持架 ; 保持架类型 | 保持架
ball_material | 球材料 ; 钢球材料 | 球材料
ball_count | 球数 ; 球数 Z | 球数
dynamic_rating | 额定动载荷Cr ; 基本额定动载荷 | 额定动载荷 ; Cr
static_rating | 额定静载荷C0r ; 基本额定静载荷 | 额定静载荷 ; C0r
fatigue_load_limit | 疲劳极限载荷Cu ; 疲劳载荷极限 | 疲劳极限载荷
limiting_speed | 轴承极限转速 ; 极限转速(脂) | 极限转速
reference_speed | 轴承参考转速 ; 热参考转速 | 参考转速
lubrication | 润滑方式 ; 润滑 | 润滑方式
base_oil_viscosity_40 | 基础油粘度(40℃) ; 40℃运动粘度 | 40℃粘度
base_oil_viscosity_100 | 基础油粘度(100℃) ; 100℃运动粘度 | 100℃粘度
grease_fill | 填脂量 ; 润滑脂填充率 | 填脂量
radial_load | 径向载荷 ; 径向载荷Fr | 径向载荷 ; Fr
axial_load | 轴向载荷 ; 轴向载荷Fa | 轴向载荷 ; Fa
operating_temperature | 轴承工作温度 ; 轴承运行温度 | 轴承温度
axial_role | 轴向定位方式 ; 固定端/游动端 | 固定/游动
speed_max | 最高转速 ; 最大转速 | 最高转速
speed_operating | 工作转速 ; 额定转速 | 工作转速
required_life | 要求寿命L10h ; 预期寿命 | 要求寿命
temperature_min | 最低温度 ; 最低使用温度 | 最低温度
temperature_max | 最高温度 ; 最高使用温度 | 最高温度
shaft_temperature | 轴温度 ; 轴的温度 | 轴温度
housing_temperature | 轴承座温度 ; 壳体温度 | 座温度
ambient_temperature | 环境温度 ; 周围温度 | 环境温度
shaft_material | 轴材料 ; 轴的材质 | 轴材料
housing_material | 轴承座材料 ; 壳体材料 | 座材料
bearing_span | 轴承跨距 ; 两轴承间距 | 轴承跨距
rotor_mass | 转子质量 ; 转子重量 | 转子质量
balance_grade | 平衡等级G ; 动平衡等级G | 平衡等级
preload_method | 预紧方式 ; 预紧方法 | 预紧方式
preload_force | 预紧力 ; 轴向预紧力 | 预紧力
spring_rate | 预紧弹簧刚度 ; 弹簧刚度 | 弹簧刚度
spring_free_length | 预紧弹簧自由长度 ; 弹簧自由高度 | 自由长度
spring_installed_length | 预紧弹簧安装长度 ; 弹簧工作长度 | 安装长度
shaft_orientation | 轴的布置 ; 轴方向 | 轴布置
rotating_ring | 旋转套圈 ; 旋转圈 | 旋转套圈
drawing_number | 图号 ; 图纸编号 | 图号
drawing_revision | 版本 ; 版次 | 版本
machine | 机器名称 ; 设备 ; 机型 | 机型
station | 轴承位置 ; 位置 ; 支承点 | 位置
part | 零件 ; 零件名称 | 零件
tol_class | 公差带 ; 公差带代号 ; 配合 | 公差带 ; 配合
upper | 上偏差 ; 上极限偏差 | 上偏差
lower | 下偏差 ; 下极限偏差 | 下偏差
max | 最大 ; 最大极限尺寸 | 最大
min | 最小 ; 最小极限尺寸 | 最小
fit_pair | 配合公差(轴/座孔) ; 公差带 轴/座孔 | 公差带 轴/座孔
""",
    "ru": """
bearing_designation | Обозначение подшипника ; Подшипник ; Типоразмер подшипника | Обозначение ; Типоразмер
size_text | Габариты подшипника d×D×B ; Размеры подшипника d x D x B | d×D×B ; Размеры d x D x B
bore_diameter | Внутренний диаметр подшипника d ; Диаметр отверстия подшипника | d ; Внутр. диаметр d
outside_diameter | Наружный диаметр подшипника D ; Наружный диаметр подшипника | D ; Наруж. диаметр D
ring_width | Ширина подшипника B ; Ширина кольца подшипника | B ; Ширина B
ring_chamfer | Фаска подшипника r min ; Монтажная фаска кольца rs min | r min ; Фаска r min
bearing_type | Тип подшипника ; Вид подшипника | Тип
contact_angle | Угол контакта ; Угол контакта подшипника | Угол контакта
closure | Уплотнение подшипника ; Исполнение подшипника (шайбы/уплотнения) | Уплотнение
clearance_class | Группа зазора ; Радиальный зазор (группа) | Группа зазора ; Зазор
tolerance_class | Класс точности подшипника ; Класс точности | Класс точности
cage | Сепаратор ; Материал сепаратора | Сепаратор
ball_material | Материал шариков ; Материал тел качения | Шарики
ball_count | Число шариков ; Количество шариков Z | Число шариков
dynamic_rating | Динамическая грузоподъемность C ; Базовая динамическая грузоподъёмность | C ; Дин. грузоподъемность C
static_rating | Статическая грузоподъемность C0 ; Базовая статическая грузоподъёмность | C0 ; Стат. грузоподъемность C0
fatigue_load_limit | Предел усталостной нагрузки Pu ; Предельная усталостная нагрузка | Pu
limiting_speed | Предельная частота вращения подшипника ; Предельная частота вращения | n пред.
reference_speed | Номинальная (тепловая) частота вращения ; Опорная тепловая частота | Тепловая частота вращения
lubrication | Смазка ; Вид смазки ; Способ смазывания | Смазка
base_oil_viscosity_40 | Вязкость базового масла при 40 °C ; Кинематическая вязкость 40 °C | Вязкость 40 °C
base_oil_viscosity_100 | Вязкость базового масла при 100 °C ; Кинематическая вязкость 100 °C | Вязкость 100 °C
grease_fill | Заполнение смазкой ; Степень заполнения смазкой | Заполнение смазкой
radial_load | Радиальная нагрузка ; Радиальная нагрузка Fr | Fr ; Радиальная нагрузка
axial_load | Осевая нагрузка ; Осевая нагрузка Fa | Fa ; Осевая нагрузка
operating_temperature | Рабочая температура подшипника ; Температура подшипника в работе | Температура подшипника
axial_role | Тип опоры ; Осевая фиксация | Тип опоры
speed_max | Максимальная частота вращения ; Наибольшая частота вращения | n max
speed_operating | Рабочая частота вращения ; Номинальная частота вращения вала | n раб.
required_life | Требуемый ресурс L10h ; Требуемая долговечность | Требуемый ресурс
temperature_min | Минимальная температура ; Наименьшая температура | T min
temperature_max | Максимальная температура ; Наибольшая температура | T max
shaft_temperature | Температура вала ; Темп. вала | Температура вала
housing_temperature | Температура корпуса ; Темп. корпуса | Температура корпуса
ambient_temperature | Температура окружающей среды ; Температура среды | Температура среды
shaft_material | Материал вала ; Вал: материал | Материал вала
housing_material | Материал корпуса ; Корпус: материал | Материал корпуса
bearing_span | Расстояние между подшипниками ; Расстояние между опорами | Расстояние между опорами
rotor_mass | Масса ротора ; Ротор: масса | Масса ротора
balance_grade | Класс точности балансировки G ; Класс балансировки G | Балансировка
preload_method | Способ предварительного натяга ; Вид предварительного натяга | Вид преднатяга
preload_force | Сила предварительного натяга ; Предварительный натяг | Преднатяг
spring_rate | Жёсткость пружины ; Жесткость пружины натяга | Жёсткость пружины
spring_free_length | Свободная длина пружины ; Длина пружины в свободном состоянии | Свободная длина
spring_installed_length | Длина установленной пружины ; Монтажная длина пружины | Монтажная длина
shaft_orientation | Положение вала ; Расположение вала | Положение вала
rotating_ring | Вращающееся кольцо ; Вращается кольцо | Вращающееся кольцо
drawing_number | Номер чертежа ; № чертежа | № черт.
drawing_revision | Изменение ; Ревизия | Изм.
machine | Машина ; Изделие ; Агрегат | Изделие
station | Опора ; Позиция | Опора
part | Деталь ; Наименование детали | Деталь
tol_class | Поле допуска ; Посадка | Поле допуска ; Посадка
upper | Верхнее отклонение ; Верхн. откл. | верхн. откл. ; es/ES
lower | Нижнее отклонение ; Нижн. откл. | нижн. откл. ; ei/EI
max | наиб. ; max | наиб.
min | наим. ; min | наим.
fit_pair | Поля допусков вал/корпус ; Посадки вал / корпус | Поля допусков вал/корпус
""",
}
