"""The offices that write Japanese and Russian: a spindle maker, a motor works, pump and fan design offices."""

from practice_twentyfourth.office import Office

LINES_JA = Office(
    language="ja",
    layout="position rows, two-row headings",
    file="csv , cp932",
    machines="ターボブロワ TB-30,集塵ファン SF-5",
    positions="モータ側,羽根車側",
    bearings="6206ZZ/C3+6205ZZ/C3;6304LLU+6304LLU",
    fits="k5 j5 js5 k6/H6 H7 J6",
    dwg="TB-00000",
    choices="grease=グリース;oil bath=油浴;steel=S45C;stainless steel=SUS420J2;cast iron=FC200;aluminium=AC4C;"
    "housing_material.steel=SS400;horizontal=横;vertical=縦;locating=固定;floating=自由",
    template="""
軸受取付部一覧
形式 | {machine} | 図面No. | {dwg} | 版 | {rev}
最高回転速度[min-1] | {nmax} | 回転体質量[kg] | {mass} | ハウジング材質 | {hmat}

# 取付位置 | 転がり軸受 | < | < | < | 軸はめあい部 | < | < | < | < | ハウジングはめあい部 | < | < | < | < | 備考
# | 呼び番号 | 固定/自由 | 潤滑 | ラジアル荷重[N] | 直径[mm] | 公差クラス | Ra[µm] | 円筒度[µm] | 肩径[mm] \
| 直径[mm] | 公差クラス | Ra[µm] | 円筒度[µm] | 肩径[mm] |
p> {p} | {bd} | {role} | {lub} | {fr} | {sd.n} | {sd.c} | {sra} | {scy:µm} | {ssh} | {hd.n} | {hd.c} | {hra} \
| {hcy:µm} | {hsh} | {;研削仕上;}
--

承認 | 設計部長 | 2025/06/{day}
""",
)
BLOCKS_JA = Office(
    language="ja",
    layout="blocks of positions",
    file="xlsx",
    machines="研削スピンドル GS-15,ビルトインモータ主軸 BM-24",
    positions="前側,後側",
    bearings="7008 C/P4+7006 C/P4;7010 C/P4+7009 C/P4",
    fits="js4 js5 h5/JS5 JS6 H6",
    dwg="GS00-000",
    sheet="主軸",
    choices="grease=グリース潤滑;oil bath=油浴潤滑;spring=ばね;none=なし",
    template="""
主軸軸受部 寸法指示書
主軸形式 | {machine}
図番 | {dwg}
最高回転速度 | {nmax} | min-1
予圧荷重 | {pf} | N
ロータ質量 | {mass} | kg
軸受スパン | {span} | mm
for p:

{p}軸受
# 項目 | 指示値 | 単位
軸受型式 | {bd}
接触角 | {ca} | °
潤滑方法 | {lub}
ラジアル荷重 | {fr} | N
アキシアル荷重 | {fa} | N
軸外径 | {sd.n} {sd.c} ({sd.u}/{sd.l}) | mm
軸外径の円筒度 | {scy} | mm
軸外径の表面粗さ Ra | {sra} | µm
軸肩端面の振れ | {ssr} | mm
@1 軸肩部の外径 | {ssh} | mm
ハウジング内径 | {hd.n} {hd.c} ({hd.u}/{hd.l}) | mm
ハウジング内径の円筒度 | {hcy} | mm
ハウジング内径の表面粗さ Ra | {hra} | µm
ハウジング肩端面の振れ | {hsr} | mm
--
end

検印 | | 作成 | 技術課
""",
)
COLUMNS_JA = Office(
    language="ja",
    layout="json columns and rows",
    file="json",
    machines="立軸ポンプ TP-65,立軸ポンプ TP-50",
    positions="上部,中間,下部",
    bearings="6306ZZ+6305ZZ;6307/C3+6306/C3",
    fits="k5 m5 j6/H7 J7 H6",
    dwg="UP-0000",
    choices="grease=グリース;oil bath=油浴",
    template="""
{"帳票": "軸受はめあい一覧", "製品名": "{machine}", "図番": "{dwg}", "最高回転速度_rpm": "{nmax}",
 "列": ["位置", "軸受呼び番号", "潤滑", "ラジアル荷重_N", "軸径_mm", "軸公差クラス", "軸_Ra_µm", "軸円筒度_mm",
  "軸肩径_mm",
  "ハウジング穴径_mm", "ハウジング公差クラス", "ハウジング_Ra_µm", "ハウジング円筒度_mm", {"@1": "ハウジング肩径_mm"}],
 "行": [{"@p": ["{p}", "{bd}", "{lub}", "{fr}", "{sd.n}", "{sd.c}", "{sra}", "{scy}", "{ssh}", "{hd.n}", "{hd.c}",
  "{hra}", "{hcy}", {"@1": "{hsh}"}]}]}
""",
)
MACHINES_RU = Office(
    language="ru",
    layout="machine rows, two-row headings",
    file="csv ; cp1251",
    machines="Дымосос Д-8,Дымосос Д-10,Дымосос Д-12,Насос К-50,Насос К-65,Насос К-80",
    positions="со стороны привода,со стороны колеса",
    bearings="6308-2Z/C3+6308-2Z/C3;6310/C3+6309/C3;6206-2RS+6205-2RS",
    fits="k6 m6 k5 j6/H7 J7 K7",
    dwg="ДМ.000.00",
    comma=True,
    thousands=" ",
    count=3,
    template="""
Ведомость подшипниковых посадок
# Обозначение машины | Чертёж | Частота вращения макс., об/мин | Масса ротора, кг \
| p< Подшипник {p} | < | < | < | < | < >p
# | | | | p< Обозначение | Диаметр вала, мм | Ra вала, мкм | Диаметр корпуса, мм | Ra корпуса, мкм \
| @0 Радиальная нагрузка, кН | @1 Заплечик вала, мм >p
m> {machine} | {dwg} | {nmax} | {mass} | p< {bd} | {sd.n} {sd.c} | {sra} | {hd.n} {hd.c} | {hra} \
| @0 {fr:кН} | @1 {ssh} >p
--

Составил: | бюро вентиляторов | {day}.10.2024
""",
)
UNITS_RU = Office(
    language="ru",
    layout="position rows, row of units",
    file="xlsx",
    machines="Электродвигатель ДА-90,Генератор ГС-12",
    positions="передняя,задняя",
    bearings="6305-2Z/C3+6205-2Z/C3;NU208+6208",
    fits="k5 k6 m5/H7 H6 J7",
    dwg="ДА.00.000",
    comma=True,
    sheet="Посадки",
    choices="grease=смазка пластичная;oil bath=масляная ванна;locating=фиксирующая;floating=плавающая;"
    "steel=сталь 45;stainless steel=сталь 20Х13;cast iron=чугун СЧ20;housing_material.steel=сталь 20;"
    "aluminium=сплав АК12;horizontal=горизонтальный;vertical=вертикальный",
    template="""
Параметры подшипниковых опор | | | Изделие: | {machine}
№ чертежа | {dwg} | | Материал вала | {smat} | | Расположение вала | {ori}
Наибольшая частота вращения, об/мин | {nmax} | | Температура окружающей среды, °C | {amb}

# Опора | Подшипник | Вид опоры | Смазочный материал | Нагрузка радиальная Fr | Нагрузка осевая Fa \
| Шейка вала: диаметр | Шейка вала: поле допуска | Шейка вала: верхнее отклонение | Шейка вала: нижнее отклонение \
| Шейка вала: шероховатость Ra | Шейка вала: цилиндричность | Отверстие корпуса: диаметр \
| Отверстие корпуса: поле допуска \
| Отверстие корпуса: верхнее отклонение | Отверстие корпуса: нижнее отклонение | Отверстие корпуса: шероховатость Ra \
| Отверстие корпуса: цилиндричность | Инв. №
# | | | | Н | Н | мм | | мкм | мкм | мкм | мкм | мм | | мкм | мкм | мкм | мкм |
p> {p} | {bd} | {role} | {lub} | {fr} | {fa} | {sd.n} | {sd.c} | {sd.u:мкм} | {sd.l:мкм} | {sra} | {scy:мкм} \
| {hd.n} | {hd.c} | {hd.u:мкм} | {hd.l:мкм} | {hra} | {hcy:мкм} | {;0417;0418}
""",
)
LIST_RU = Office(
    language="ru",
    layout="long list",
    file="csv ; utf-8",
    machines="Шлифовальная головка ГШ-3,Электрошпиндель ЭШ-18",
    positions="А,Б",
    bearings="7006 C/P4+7005 C/P4;71908 AC/P4+71906 AC/P4",
    fits="js5 js4 h5/JS6 H5 JS5",
    dwg="ГШ3.00.00",
    comma=True,
    ragged=True,
    choices="grease=консистентная смазка;oil bath=масляная ванна;spring=пружина;none=нет",
    template="""
Перечень параметров шпиндельного узла
Узел | {machine}
Чертёж | {dwg}

# Опора | Параметр | Значение | Ед. изм. | Контроль
общие | Макс. частота вращения | {nmax} | об/мин | -
общие | Масса ротора | {mass} | кг | весы
общие | Сила предварительного натяга | {pf} | Н | динамометр
for p:
{p} | Тип подшипника | {bd} | | -
{p} | Класс точности подшипника | {pc} | | -
{p} | Способ смазывания | {lub} | | -
{p} | Радиальная нагрузка | {fr} | Н | -
{p} | Посадочный диаметр вала | {sd.min} … {sd.max} | мм | скоба
{p} | Шероховатость посадочной поверхности вала Ra | {sra} | мкм | профилометр
{p} | Допуск цилиндричности посадочной поверхности вала | {scy:мкм} | мкм | кругломер
{p} | Торцовое биение заплечика вала | {ssr:мкм} | мкм | индикатор
{p} | Диаметр расточки корпуса | {hd.min} … {hd.max} | мм | нутромер
{p} | Шероховатость расточки корпуса Ra | {hra} | мкм | профилометр
{p} | Допуск цилиндричности расточки корпуса | {hcy:мкм} | мкм | кругломер
@1 {p} | Торцовое биение заплечика корпуса | {hsr:мкм} | мкм | индикатор
{p} | Температура, °C | {~top} | | термопара
end
""",
)
ODD = (LINES_JA, BLOCKS_JA, MACHINES_RU)
EVEN = (COLUMNS_JA, UNITS_RU, LIST_RU)
