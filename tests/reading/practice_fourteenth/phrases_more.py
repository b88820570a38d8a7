"""The phrases of the other four languages, written as those of the first four are."""

ES = """
temp: Temperatura
caption: Ficha de asientos de rodamientos
remark: a verificar
date: Fecha
foot: Tolerancias generales ISO 2768-mK | Copia no controlada
machine: Máquina | Conjunto | Equipo
dwg: N.º de plano | Plano | Núm. plano
rev: Rev. | Revisión | Edición
n: Velocidad máx. | Velocidad de giro máxima | rpm máx.
life: Vida requerida L10h | Vida útil L10h
orient: Eje del rotor | Posición del eje
span: Distancia entre rodamientos | Distancia entre apoyos
mass: Masa del rotor | Peso del rotor
bal: Grado de equilibrado | Calidad de equilibrado G
prel: Precarga | Precarga axial
pf: Fuerza de precarga | Fuerza del muelle
shm: Material del eje | Material eje
hom: Material de la carcasa | Material alojamiento
tmax: Temperatura máx. | Temp. máxima
tmin: Temperatura mín. | Temp. mínima
tamb: Temperatura ambiente | Temp. ambiente
coax: Coaxialidad de los alojamientos | Coaxialidad alojamientos
st: Posición | Apoyo | Lado
des: Rodamiento | Designación del rodamiento | Ref. rodamiento
d: Diámetro interior d | Ø int. d
D: Diámetro exterior D | Ø ext. D
B: Ancho B | Anchura B
role: Función axial | Fijo / libre
lub: Lubricación | Lubricante
Fr: Carga radial Fr | Carga radial
Fa: Carga axial Fa | Empuje axial
top: Temperatura del rodamiento | Temp. de trabajo rodamiento
shaft: Eje | Asiento del eje | Asiento eje
housing: Alojamiento | Asiento del alojamiento | Caja
.seat: Ø {} | Diámetro {} | {} diámetro
.fit: Ajuste {} | Tolerancia {}
.ra: Rugosidad Ra {} | Ra {} | Acabado Ra {}
.cyl: Cilindricidad {} | {} cilindricidad
.run: Oscilación total {} | Salto radial total {}
.sh: Ø resalte {} | Diámetro del resalte {}
.shr: Oscilación axial resalte {} | Perpendicularidad resalte {}
.fil: Radio de acuerdo máx. {} | Radio máx. {}
bearing: Rodamiento
general: General
class: clase | tolerancia ISO
upper: desv. sup. | desviación superior
lower: desv. inf. | desviación inferior
min: mín. | min
max: máx. | max
name: Parámetro | Característica
value: Valor | Cota
unit: Unidad | Ud.
part: Pieza | Componente
feature: Característica | Cota
note: Observaciones | Notas
units: Cotas en mm, rugosidad Ra en µm, velocidad en rpm, fuerzas en N
=locating: fijo | lado fijo
=floating: libre | lado libre
=spring-loaded: cargado por muelle
=grease: grasa | grasa de por vida
=grease for high speed: grasa de alta velocidad
=oil-air: aire-aceite | aceite-aire
=oil mist: niebla de aceite
=wave: arandela ondulada | muelle ondulado
=helical: muelles helicoidales
=disc: muelles de disco | arandelas Belleville
=steel: acero F-1140 | acero 42CrMo4
=aluminium: aluminio 6082 | aleación de aluminio
=cast iron: fundición GG25 | fundición gris
=stainless steel: inox AISI 431
=horizontal: horizontal
=vertical: vertical
#: Lado acople,Lado opuesto | A,B | LA,LOA | delantero,trasero
!: Precio=22,10 | Ø rodete=156 | Bobinado=Y 230 | Pintura=RAL 5015 | Cantidad=1 | Almacén=B3 | Proveedor=P-77
"""
RU = """
temp: Температура
caption: Таблица посадок подшипников
remark: проверено
date: Дата
foot: Общие допуски по ГОСТ 30893.1
machine: Машина | Изделие | Узел
dwg: № чертежа | Обозначение чертежа | Чертёж
rev: Изм. | Ревизия
n: Макс. частота вращения | Частота вращения nmax | Обороты макс.
life: Требуемый ресурс L10h | Ресурс
orient: Положение вала | Ось вала
span: Расстояние между опорами | Расстояние между подшипниками
mass: Масса ротора
bal: Класс балансировки | Класс точности балансировки G
prel: Предварительный натяг | Преднатяг
pf: Усилие преднатяга | Сила предварительного натяга
shm: Материал вала
hom: Материал корпуса
tmax: Температура макс. | Макс. температура
tmin: Температура мин. | Мин. температура
tamb: Температура окружающей среды | Темп. окр. среды
coax: Соосность отверстий корпуса | Соосность посадочных отверстий
st: Опора | Позиция
des: Подшипник | Обозначение подшипника | Тип подшипника
d: Внутренний диаметр d | Отверстие d
D: Наружный диаметр D | Наруж. диам. D
B: Ширина B
role: Тип опоры | Осевая фиксация
lub: Смазка | Смазывание
Fr: Радиальная нагрузка Fr | Радиальная нагрузка
Fa: Осевая нагрузка Fa | Осевая нагрузка
top: Температура подшипника | Рабочая темп. подшипника
shaft: Вал | Шейка вала | Посадочная шейка
housing: Корпус | Отверстие корпуса | Расточка корпуса
.seat: {}, диаметр | {}, посадочный диаметр | {}: диаметр
.fit: {}, посадка | {}: поле допуска
.ra: {}, шероховатость Ra | {}: Ra | {} Ra
.cyl: {}, цилиндричность | {}: отклонение от цилиндричности
.run: {}, полное радиальное биение | {}: радиальное биение
.sh: {}, диаметр заплечика | {}: диаметр буртика
.shr: {}, торцевое биение заплечика | {}: торцовое биение буртика
.fil: {}, радиус галтели макс. | {}: радиус галтели
bearing: Подшипник
general: Общие данные
class: поле допуска | допуск
upper: верх. откл. | верхнее отклонение
lower: нижн. откл. | нижнее отклонение
min: мин. | наименьший
max: макс. | наибольший
name: Параметр | Характеристика | Наименование параметра
value: Значение | Величина
unit: Ед. изм. | Единица
part: Деталь | Элемент
feature: Параметр | Размер
note: Примечание
units: Размеры в мм, шероховатость Ra в мкм, частота вращения в об/мин, силы в Н
=locating: фиксирующая | фиксированная
=floating: плавающая
=spring-loaded: подпружиненная
=grease: пластичная смазка | консистентная смазка
=grease for high speed: высокоскоростная пластичная смазка
=oil-air: масловоздушная
=oil mist: масляный туман
=wave: волнистая пружина | волновая пружина
=helical: витые пружины | цилиндрические пружины
=disc: тарельчатые пружины
=steel: сталь 40Х | Сталь 45
=aluminium: алюминиевый сплав АК9ч | алюминий Д16Т
=cast iron: чугун СЧ20 | СЧ25
=stainless steel: нержавеющая сталь 20Х13
=horizontal: горизонтальное
=vertical: вертикальное
#: А,Б | Опора 1,Опора 2 | сторона привода,сторона вентилятора
!: Цена=1450 | Диаметр рабочего колеса=132 | Обмотка=Y 380 | Окраска=RAL 7040 | Кол-во=1 | Поставщик=П-14
"""
ZH = """
temp: 温度
caption: 轴承配合参数表
remark: 已确认
date: 日期
foot: 未注公差按GB/T 1804-m
machine: 机型 | 产品名称 | 设备
dwg: 图号 | 图纸编号
rev: 版本 | 版次
n: 最高转速 | 最大转速 | 额定最高转速
life: 要求寿命L10h | 设计寿命
orient: 轴的方位 | 主轴姿态
span: 轴承跨距 | 两轴承中心距
mass: 转子质量 | 转子重量
bal: 平衡等级 | 动平衡等级
prel: 预紧方式 | 预紧
pf: 预紧力 | 弹簧预紧力
shm: 轴材料 | 主轴材质
hom: 壳体材料 | 轴承座材质
tmax: 最高温度
tmin: 最低温度
tamb: 环境温度
coax: 轴承孔同轴度 | 两轴承座孔同轴度
st: 轴承位置 | 位置 | 部位
des: 轴承型号 | 轴承 | 轴承代号
d: 内径d | 轴承内径
D: 外径D | 轴承外径
B: 宽度B | 轴承宽度
role: 轴向定位 | 固定/游动
lub: 润滑方式 | 润滑
Fr: 径向载荷Fr | 径向力
Fa: 轴向载荷Fa | 轴向力
top: 轴承工作温度 | 轴承温度
shaft: 轴颈 | 轴 | 轴承位轴径
housing: 座孔 | 轴承座孔 | 轴承室
.seat: {}直径 | {}尺寸
.fit: {}公差带 | {}配合
.ra: {}粗糙度Ra | {}表面粗糙度
.cyl: {}圆柱度
.run: {}全跳动 | {}径向全跳动
.sh: {}挡肩直径 | {}台肩直径
.shr: {}挡肩端面跳动 | {}轴肩端面跳动
.fil: {}最大圆角半径 | {}过渡圆角R
bearing: 轴承
general: 总体参数
class: 公差带 | 公差等级
upper: 上偏差
lower: 下偏差
min: 最小值 | 最小
max: 最大值 | 最大
name: 参数名称 | 项目 | 参数
value: 数值 | 设计值 | 值
unit: 单位
part: 零件 | 部件
feature: 特征 | 项目
note: 备注
units: 尺寸单位mm，粗糙度µm，转速r/min，力N
=locating: 固定端 | 固定
=floating: 游动端 | 游动
=spring-loaded: 弹簧预紧端
=grease: 润滑脂 | 脂润滑
=grease for high speed: 高速润滑脂
=oil-air: 油气润滑 | 油气
=oil mist: 油雾润滑 | 油雾
=wave: 波形弹簧 | 波形垫圈
=helical: 螺旋弹簧 | 圆柱弹簧
=disc: 碟形弹簧 | 碟簧
=steel: 45钢 | 40Cr | 42CrMo
=aluminium: 铝合金ZL104 | 铝合金6061
=cast iron: HT250 | 灰铸铁HT200
=stainless steel: 不锈钢2Cr13
=horizontal: 卧式 | 水平
=vertical: 立式 | 垂直
#: 前端,后端 | 驱动端,非驱动端 | 前轴承,后轴承 | A端,B端
!: 单价=36.5 | 叶轮直径=125 | 绕组=星形 | 喷漆颜色=RAL 7035 | 数量=2 | 供应商代码=G019 | 采购周期=30天
"""
JA = """
temp: 温度
caption: 軸受はめあい諸元表
remark: 確認済
date: 作成日
foot: 普通公差 JIS B 0405-m
machine: 機種 | 装置名 | 品名
dwg: 図番 | 図面番号
rev: 改訂 | 版数
n: 最高回転数 | 最高回転速度 | 最大回転数
life: 要求寿命L10h | 設計寿命
orient: 軸姿勢 | 軸の向き
span: 軸受間距離 | 軸受スパン
mass: ロータ質量 | 回転体質量
bal: 釣合い良さの等級 | バランス等級
prel: 予圧方式 | 予圧
pf: 予圧荷重 | 予圧力
shm: 軸材質 | 軸の材料
hom: ハウジング材質 | ハウジング材料
tmax: 最高温度
tmin: 最低温度
tamb: 周囲温度 | 雰囲気温度
coax: ハウジング穴の同軸度 | 軸受穴同軸度
st: 軸受位置 | 位置
des: 軸受型番 | 軸受 | 軸受呼び番号
d: 内径d | 軸受内径
D: 外径D | 軸受外径
B: 幅B | 軸受幅
role: 固定側/自由側 | 軸方向拘束
lub: 潤滑方法 | 潤滑
Fr: ラジアル荷重Fr | ラジアル荷重
Fa: アキシアル荷重Fa | スラスト荷重
top: 軸受温度 | 軸受使用温度
shaft: 軸 | 軸受座（軸） | シャフト
housing: ハウジング | ハウジング穴 | ハウジング内径
.seat: {}径 | {}寸法 | {}直径
.fit: {}はめあい | {}公差
.ra: {}面粗さRa | {}表面粗さRa
.cyl: {}円筒度
.run: {}全振れ | {}円周全振れ
.sh: {}肩径 | {}肩部直径
.shr: {}肩の振れ | {}肩面直角度
.fil: {}隅R最大 | {}隅の丸み半径（最大）
bearing: 軸受
general: 全般
class: 公差域クラス | 公差記号
upper: 上の許容差 | 上許容差
lower: 下の許容差 | 下許容差
min: 最小 | 最小許容寸法
max: 最大 | 最大許容寸法
name: 項目 | パラメータ
value: 値 | 設計値
unit: 単位
part: 部品 | 部位
feature: 項目 | 特性
note: 備考
units: 寸法mm、粗さµm、回転数min-1、荷重N
=locating: 固定側 | 固定
=floating: 自由側 | 自由
=spring-loaded: ばね予圧側
=grease: グリース | グリース潤滑
=grease for high speed: 高速用グリース
=oil-air: オイルエア | オイルエア潤滑
=oil mist: オイルミスト | オイルミスト潤滑
=wave: 波形ばね | ウェーブワッシャ
=helical: コイルばね | 圧縮コイルばね
=disc: 皿ばね
=steel: S45C | SCM435
=aluminium: ADC12 | アルミ合金A6061
=cast iron: FC250 | 鋳鉄FC200
=stainless steel: SUS420J2
=horizontal: 横 | 水平
=vertical: 縦 | 垂直
#: 負荷側,反負荷側 | 前側,後側 | 軸受A,軸受B
!: 単価=980 | 羽根車径=110 | 巻線=Y結線 | 塗装色=マンセルN7 | 数量=2 | 仕入先=K社
"""
