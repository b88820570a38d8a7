"""Words of Russian, Chinese and Japanese offices; the form of a line is told in words.py."""

RU = """
=F: F | F | DIN 509-F
=E: E | E | DIN 509-E
seat_roughness: Шероховатость Ra | Шероховатость посадочных мест Ra
col.index: № п/п | №
machine: Машина | Изделие | Агрегат
drawing_number: № чертежа | Номер чертежа | Чертёж №
drawing_revision: Ревизия | Изм. | Редакция
speed_max: Макс. частота вращения | Максимальная частота вращения | Наибольшая частота вращения
speed_operating: Рабочая частота вращения | Частота вращения рабочая
required_life: Требуемый ресурс | Требуемая долговечность L10h
shaft_material: Материал вала | Вал, материал
housing_material: Материал корпуса | Корпус, материал
shaft_temperature: Температура вала | Темп. вала
housing_temperature: Температура корпуса | Темп. корпуса
ambient_temperature: Температура окружающей среды | Темп. окружающей среды
temperature_max: Максимальная температура | Наибольшая температура
temperature_min: Минимальная температура | Наименьшая температура
bearing_span: Расстояние между подшипниками | Межопорное расстояние | Расстояние между опорами
rotor_mass: Масса ротора
balance_grade: Класс точности балансировки G | Класс балансировки G
preload: Предварительный натяг | Преднатяг
preload_force: Усилие преднатяга | Сила предварительного натяга | Усилие пружины
spring_rate: Жёсткость пружины
spring_free_length: Свободная длина пружины | Длина пружины в свободном состоянии
spring_installed_length: Установочная длина пружины | Длина пружины в сборе
coaxiality_of_bores: Соосность отверстий корпуса | Допуск соосности отверстий
coaxiality_of_shaft_seats: Соосность шеек вала | Допуск соосности посадочных шеек
shaft_orientation: Положение вала | Расположение вала
bearing_designation: Подшипник | Обозначение подшипника | Тип подшипника
bore_diameter: Внутренний диаметр подшипника d | Диаметр отверстия d
outside_diameter: Наружный диаметр подшипника D | Наружный диаметр D
ring_width: Ширина подшипника B | Ширина B
ring_chamfer: Фаска подшипника r мин | Монтажная фаска r min
dynamic_rating: Динамическая грузоподъёмность C | Базовая динамическая грузоподъёмность
static_rating: Статическая грузоподъёмность C0 | Базовая статическая грузоподъёмность
lubrication: Смазка | Способ смазки | Вид смазывания
base_oil_viscosity_40: Вязкость базового масла при 40 °C | Вязкость масла при 40 °C
grease_fill: Заполнение смазкой | Степень заполнения смазкой
radial_load: Радиальная нагрузка | Радиальная нагрузка Fr | Радиальная сила
axial_load: Осевая нагрузка | Осевая нагрузка Fa | Осевая сила
axial_role: Функция опоры | Тип опоры | Осевая фиксация
limiting_speed: Предельная частота вращения подшипника | Предельная частота по каталогу
shaft_seat_diameter: Посадочный диаметр вала | Шейка вала | Диаметр шейки вала | Посадочная шейка вала
  | Диаметр вала под подшипник
housing_seat_diameter: Посадочный диаметр корпуса | Отверстие корпуса | Диаметр отверстия корпуса
  | Отверстие корпуса под подшипник
shaft_seat_cylindricity: Цилиндричность шейки вала | Допуск цилиндричности вала
housing_seat_cylindricity: Цилиндричность отверстия корпуса | Допуск цилиндричности корпуса
shaft_seat_runout: Полное радиальное биение шейки вала | Радиальное биение вала
housing_seat_runout: Полное радиальное биение отверстия корпуса | Радиальное биение отверстия корпуса
shaft_seat_roughness: Шероховатость Ra шейки вала | Ra вала
housing_seat_roughness: Шероховатость Ra отверстия корпуса | Ra корпуса
shaft_shoulder_diameter: Диаметр заплечика вала | Заплечик вала | Диаметр буртика вала
housing_shoulder_diameter: Диаметр заплечика корпуса | Заплечик корпуса | Диаметр буртика корпуса
shaft_shoulder_runout: Торцовое биение заплечика вала | Торцевое биение буртика вала
housing_shoulder_runout: Торцовое биение заплечика корпуса | Торцевое биение буртика корпуса
shaft_fillet_radius: Радиус галтели вала | Галтель вала | Радиус галтели вала макс.
housing_fillet_radius: Радиус галтели корпуса | Галтель корпуса | Радиус галтели корпуса макс.
shaft_undercut_form: Канавка вала, форма (DIN 509) | Форма проточки вала
housing_undercut_form: Канавка корпуса, форма (DIN 509) | Форма проточки корпуса
part.shaft: Вал | Вал ротора
part.housing: Корпус | Корпус подшипника
part.bearing: Подшипник
part.machine: Общие | Сборка
feature.seat_diameter: посадочный диаметр | диаметр посадочного места
feature.seat_cylindricity: цилиндричность | допуск цилиндричности
feature.seat_runout: полное радиальное биение | радиальное биение
feature.seat_roughness: шероховатость Ra | Ra
feature.shoulder_diameter: диаметр заплечика | диаметр буртика
feature.shoulder_runout: торцовое биение заплечика
feature.fillet_radius: радиус галтели | галтель, радиус
feature.undercut_form: форма проточки
aspect.class: поле допуска | посадка | допуск
aspect.nominal: номинал | номинальный размер
aspect.upper: верхнее отклонение | верхн. откл. | ES/es
aspect.lower: нижнее отклонение | нижн. откл. | EI/ei
aspect.max: макс. | наибольший
aspect.min: мин. | наименьший
aspect.dev: отклонения | предельные отклонения
col.name: Параметр | Наименование | Характеристика
col.value: Значение | Величина
col.unit: Ед. изм. | Единица | Размерность
col.note: Примечание | Комментарий
col.part: Деталь | Узел
col.feature: Параметр | Размер | Элемент
col.position: Опора | Позиция | Сторона
join: {p}: {f} | {f} ({p}) | {p}, {f}
positions: А/Б | передняя/задняя | сторона привода/противоположная сторона | Опора 1/Опора 2
title: Посадочные места подшипников | Параметры подшипникового узла | Выгрузка параметров
mmnote: Размеры в мм | Все размеры в мм, если не указано иное
notes: Острые кромки притупить. | Посадочные поверхности шлифовать. | Проверено ОТК.
machines: Вихревая воздуходувка | Лабораторная центрифуга | Фрезерный шпиндель | Вакуумный насос
  | Испытательный двигатель
noise: Номинальная мощность, кВт = 2,2 / 2,2 | Наружный диаметр статора, мм = 96 / 96
  | Цена, руб. = 1420 / 1185 | Количество = 1 / 1 | Диаметр рабочего колеса, мм = 148 / 148
  | Сопротивление обмотки, Ом = 0,84 / 0,84 | Окраска = RAL 7016 / RAL 7016 | Винты фланца = М6х20 / М6х25
=grease: пластичная смазка | консистентная смазка
=oil bath: масляная ванна
=oil mist: масляный туман
=oil-air: масло-воздух | масловоздушная
=oil jet: впрыск масла | струйная подача масла
=locating: фиксирующая | фиксирующий
=floating: плавающая | плавающий
=spring-loaded: подпружиненная
=wave: волновая пружина | волнистая пружина
=helical: винтовая пружина | винтовые пружины
=disc: тарельчатые пружины
=rigid: жёсткий | жёсткий (распорные втулки)
=none: нет | отсутствует
=horizontal: горизонтальное | горизонтально
=vertical: вертикальное | вертикально
=steel: сталь | Сталь 40Х
=stainless steel: нержавеющая сталь | 12Х18Н10Т
=aluminium: алюминий | алюминиевый сплав
=cast iron: чугун | СЧ25
"""
ZH = """
=F: F | F | DIN 509-F
=E: E | E | DIN 509-E
seat_roughness: 表面粗糙度Ra | 配合面粗糙度Ra
col.index: 序号
machine: 机器名称 | 设备名称 | 机型
drawing_number: 图号 | 图纸编号
drawing_revision: 版本 | 版次
speed_max: 最高转速 | 最大转速
speed_operating: 工作转速 | 运行转速 | 额定工作转速
required_life: 要求寿命 | 轴承寿命要求
shaft_material: 轴材料 | 轴的材质
housing_material: 轴承座材料 | 壳体材料 | 壳体材质
shaft_temperature: 轴温度 | 轴温
housing_temperature: 壳体温度 | 轴承座温度
ambient_temperature: 环境温度
temperature_max: 最高温度
temperature_min: 最低温度
bearing_span: 轴承跨距 | 两轴承间距 | 支承跨距
rotor_mass: 转子质量 | 转子重量
balance_grade: 平衡等级G | 动平衡精度等级G
preload: 预紧方式 | 预紧
preload_force: 预紧力 | 轴向预紧力 | 弹簧预紧力
spring_rate: 弹簧刚度
spring_free_length: 弹簧自由长度 | 弹簧自由高度
spring_installed_length: 弹簧安装长度 | 弹簧工作高度
coaxiality_of_bores: 两轴承座孔同轴度 | 座孔同轴度
coaxiality_of_shaft_seats: 轴颈同轴度 | 两轴承位同轴度
shaft_orientation: 轴的安装方向 | 轴布置方式
bearing_designation: 轴承型号 | 轴承代号 | 轴承
bore_diameter: 轴承内径d | 内径d
outside_diameter: 轴承外径D | 外径D
ring_width: 轴承宽度B | 宽度B
ring_chamfer: 轴承倒角rmin | 套圈倒角r
dynamic_rating: 额定动载荷C | 基本额定动载荷
static_rating: 额定静载荷C0 | 基本额定静载荷
lubrication: 润滑方式 | 润滑
base_oil_viscosity_40: 基础油粘度(40℃) | 40℃运动粘度
grease_fill: 填脂量 | 润滑脂填充率
radial_load: 径向载荷 | 径向负荷Fr | 径向力
axial_load: 轴向载荷 | 轴向负荷Fa | 轴向力
axial_role: 轴向定位 | 轴承功能 | 固定端/游动端
limiting_speed: 轴承极限转速 | 样本极限转速
shaft_seat_diameter: 轴颈直径 | 轴承位直径 | 轴径 | 轴颈尺寸 | 轴配合
housing_seat_diameter: 轴承座孔直径 | 座孔直径 | 座孔 | 轴承座孔尺寸 | 孔配合
shaft_seat_cylindricity: 轴颈圆柱度 | 轴圆柱度
housing_seat_cylindricity: 座孔圆柱度 | 轴承座孔圆柱度
shaft_seat_runout: 轴颈全跳动 | 轴颈径向全跳动
housing_seat_runout: 座孔全跳动 | 座孔径向全跳动
shaft_seat_roughness: 轴颈粗糙度Ra | 轴颈表面粗糙度Ra
housing_seat_roughness: 座孔粗糙度Ra | 座孔表面粗糙度Ra
shaft_shoulder_diameter: 轴肩直径 | 轴肩直径da | 轴肩
housing_shoulder_diameter: 座孔挡肩直径 | 壳体挡肩直径Da | 孔肩直径
shaft_shoulder_runout: 轴肩端面跳动 | 轴肩端面圆跳动
housing_shoulder_runout: 座孔挡肩端面跳动 | 孔肩端面圆跳动
shaft_fillet_radius: 轴肩圆角半径 | 轴过渡圆角 | 轴肩圆角
housing_fillet_radius: 孔肩圆角半径 | 座孔过渡圆角 | 孔肩圆角
shaft_undercut_form: 轴退刀槽形式 | 轴越程槽型式
housing_undercut_form: 座孔退刀槽形式 | 孔越程槽型式
part.shaft: 轴 | 转轴
part.housing: 轴承座 | 壳体
part.bearing: 轴承
part.machine: 总体 | 整机
feature.seat_diameter: 轴承配合直径 | 配合直径
feature.seat_cylindricity: 圆柱度
feature.seat_runout: 径向全跳动
feature.seat_roughness: 粗糙度Ra | 表面粗糙度Ra
feature.shoulder_diameter: 挡肩直径
feature.shoulder_runout: 挡肩端面跳动
feature.fillet_radius: 圆角半径 | 过渡圆角
feature.undercut_form: 退刀槽形式
aspect.class: 公差带 | 公差等级 | 配合代号
aspect.nominal: 公称尺寸 | 基本尺寸
aspect.upper: 上偏差 | 上极限偏差
aspect.lower: 下偏差 | 下极限偏差
aspect.max: 最大 | 上限
aspect.min: 最小 | 下限
aspect.dev: 极限偏差 | 偏差
col.name: 参数 | 参数名称 | 项目
col.value: 数值 | 值
col.unit: 单位
col.note: 备注 | 说明
col.part: 零件 | 部件
col.feature: 特性 | 尺寸项目
col.position: 轴承位置 | 位置 | 支承
join: {p}{f} | {p}-{f} | {p} {f} | {f}({p})
positions: A/B | 前端/后端 | 驱动端/非驱动端 | 上/下
title: 轴承配合参数表 | 转子支承设计参数 | 参数导出
mmnote: 尺寸单位：mm | 未注尺寸单位为毫米
notes: 锐边倒钝。 | 超速试验120%，2分钟。 | 轴承位磨削。 | 已审核。
machines: 旋涡风机 | 实验离心机 | 铣削主轴 | 真空泵 | 试验电机 | 高速鼓风机
noise: 额定功率kW = 2.2 / 2.2 | 定子外径mm = 96 / 96
  | 单价(元) = 86.5 / 72 | 数量 = 1 / 1 | 叶轮直径mm = 148 / 148 | 绕组电阻Ω = 0.84 / 0.84
  | 油漆颜色 = RAL 7016 / RAL 7016 | 法兰螺钉 = M6x20 / M6x25
=grease: 脂润滑 | 润滑脂
=oil bath: 油浴 | 油浴润滑
=oil mist: 油雾 | 油雾润滑
=oil-air: 油气 | 油气润滑
=oil jet: 喷油 | 喷油润滑
=locating: 固定端 | 固定
=floating: 游动端 | 浮动
=spring-loaded: 弹簧预紧端
=wave: 波形弹簧 | 波形垫圈
=helical: 螺旋弹簧 | 圆柱螺旋弹簧
=disc: 碟形弹簧 | 碟簧
=rigid: 刚性 | 定位预紧
=none: 无
=horizontal: 水平 | 卧式
=vertical: 垂直 | 立式
=steel: 钢 | 42CrMo | 40Cr
=stainless steel: 不锈钢
=aluminium: 铝合金 | 铝
=cast iron: 铸铁 | HT250 | 灰铸铁
"""
JA = """
=F: F | F | DIN 509-F
=E: E | E | DIN 509-E
seat_roughness: 表面粗さRa | はめあい面粗さRa
col.index: No. | 番号
machine: 機械名 | 機種 | 装置名
drawing_number: 図番 | 図面番号
drawing_revision: 改訂 | 版数
speed_max: 最高回転数 | 最高回転速度 | 最大回転数
speed_operating: 使用回転数 | 常用回転速度 | 運転回転数
required_life: 要求寿命 | 必要寿命
shaft_material: 軸材質 | 軸の材料
housing_material: ハウジング材質 | ハウジング材料
shaft_temperature: 軸温度 | 軸の温度
housing_temperature: ハウジング温度
ambient_temperature: 周囲温度 | 雰囲気温度
temperature_max: 最高温度
temperature_min: 最低温度
bearing_span: 軸受間距離 | 軸受スパン | 軸受中心間距離
rotor_mass: ロータ質量 | 回転体質量
balance_grade: 釣合い良さの等級G | バランス等級G
preload: 予圧方式 | 予圧
preload_force: 予圧力 | 予圧荷重 | ばね予圧力
spring_rate: ばね定数 | ばねこわさ
spring_free_length: ばね自由長 | ばね自由高さ
spring_installed_length: ばね取付長さ | ばね取付高さ
coaxiality_of_bores: ハウジング穴の同軸度 | 軸受穴同軸度
coaxiality_of_shaft_seats: 軸受座の同軸度(軸) | 軸ジャーナル同軸度
shaft_orientation: 軸の姿勢 | 軸の設置姿勢
bearing_designation: 軸受 | 軸受型番 | 軸受呼び番号 | 呼び番号
bore_diameter: 軸受内径d | 内径d
outside_diameter: 軸受外径D | 外径D
ring_width: 軸受幅B | 幅B
ring_chamfer: 面取寸法r(最小) | 軸受面取り rs min
dynamic_rating: 基本動定格荷重C | 動定格荷重
static_rating: 基本静定格荷重C0 | 静定格荷重
lubrication: 潤滑方法 | 潤滑 | 潤滑方式
base_oil_viscosity_40: 基油動粘度(40℃) | 40℃動粘度
grease_fill: グリース封入量 | グリース充填率
radial_load: ラジアル荷重 | ラジアル荷重Fr | 径方向荷重
axial_load: アキシアル荷重 | アキシアル荷重Fa | スラスト荷重
axial_role: 固定側/自由側 | 軸受の役割 | 軸方向固定
limiting_speed: 軸受許容回転数 | カタログ許容回転速度
shaft_seat_diameter: 軸径 | 軸受座径(軸) | 軸はめあい | 軸はめあい部径 | シャフト径
housing_seat_diameter: ハウジング内径 | ハウジング穴径 | ハウジングはめあい | 軸受穴径 | ハウジング穴
shaft_seat_cylindricity: 軸円筒度 | 軸はめあい部円筒度
housing_seat_cylindricity: ハウジング円筒度 | ハウジング穴円筒度
shaft_seat_runout: 軸全振れ | 軸はめあい部全振れ
housing_seat_runout: ハウジング穴全振れ | ハウジング全振れ
shaft_seat_roughness: 軸表面粗さRa | 軸粗さRa
housing_seat_roughness: ハウジング表面粗さRa | ハウジング穴粗さRa
shaft_shoulder_diameter: 軸肩径 | 軸肩径da | 軸の肩の直径
housing_shoulder_diameter: ハウジング肩径 | ハウジング肩径Da | ハウジング肩の直径
shaft_shoulder_runout: 軸肩端面振れ | 軸肩の振れ
housing_shoulder_runout: ハウジング肩端面振れ | ハウジング肩の振れ
shaft_fillet_radius: 軸隅R | 軸隅の丸み半径 | 軸肩隅R(最大)
housing_fillet_radius: ハウジング隅R | ハウジング隅の丸み半径 | ハウジング肩隅R(最大)
shaft_undercut_form: 軸逃げ溝形状 | 軸ぬすみ形状
housing_undercut_form: ハウジング逃げ溝形状 | ハウジングぬすみ形状
part.shaft: 軸 | シャフト
part.housing: ハウジング
part.bearing: 軸受
part.machine: 全体 | 組立
feature.seat_diameter: 軸受はめあい径 | はめあい部径
feature.seat_cylindricity: 円筒度
feature.seat_runout: 全振れ
feature.seat_roughness: 表面粗さRa | 粗さRa
feature.shoulder_diameter: 肩径 | 肩の直径
feature.shoulder_runout: 肩端面振れ
feature.fillet_radius: 隅R | 隅の丸み
feature.undercut_form: 逃げ溝形状
aspect.class: 公差域クラス | はめあい公差 | 公差
aspect.nominal: 呼び寸法 | 基準寸法
aspect.upper: 上の寸法許容差 | 上許容差
aspect.lower: 下の寸法許容差 | 下許容差
aspect.max: 最大 | 上限
aspect.min: 最小 | 下限
aspect.dev: 寸法許容差 | 許容差
col.name: 項目 | パラメータ | 名称
col.value: 値 | 数値
col.unit: 単位
col.note: 備考 | 注記
col.part: 部品 | 部位
col.feature: 特性 | 項目
col.position: 軸受位置 | 位置 | 側
join: {p}{f} | {p} {f} | {p}・{f} | {f}({p})
positions: A/B | 前側/後側 | 駆動側/反駆動側 | 負荷側/反負荷側
title: 軸受はめあい諸元表 | ロータ支持部設計値 | パラメータ出力
mmnote: 寸法単位：mm | 特記なき寸法はmm
notes: 角部面取りのこと。 | 軸受座は研削仕上げ。 | 検図済。
machines: リングブロワ | 卓上遠心機 | フライス主軸 | 真空ポンプ | 試験用モータ
noise: 定格出力kW = 2.2 / 2.2 | ステータ外径mm = 96 / 96
  | 単価(円) = 1250 / 980 | 数量 = 1 / 1 | 羽根車直径mm = 148 / 148 | 巻線抵抗Ω = 0.84 / 0.84
  | 塗装色 = RAL 7016 / RAL 7016 | フランジボルト = M6x20 / M6x25
=grease: グリース | グリース潤滑
=oil bath: 油浴 | オイルバス
=oil mist: オイルミスト | 噴霧潤滑
=oil-air: オイルエア | エアオイル
=oil jet: ジェット潤滑 | オイルジェット
=locating: 固定側 | 固定
=floating: 自由側 | 自由
=spring-loaded: ばね予圧側
=wave: 波ばね | 波形ばね | ウェーブワッシャ
=helical: コイルばね | 圧縮コイルばね
=disc: 皿ばね
=rigid: 定位置予圧 | 定位置
=none: なし
=horizontal: 水平 | 横軸
=vertical: 垂直 | 立軸
=steel: 鋼 | SCM435 | S45C
=stainless steel: ステンレス鋼 | SUS440C
=aluminium: アルミニウム | アルミ合金 | ADC12
=cast iron: 鋳鉄 | FC250
"""
