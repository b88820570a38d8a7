"""The offices that write Japanese, Chinese and Russian."""

from practice_twentythird.office import Office

ROWS_JA = Office(
    language="ja",
    layout="position rows",
    file="csv , cp932",
    machines="軸流ファン JF-120,軸流ファン JF-200",
    positions="A,B",
    bearing="mini ZZ;ball ZZ C3",
    dwg="JF0-0000",
    choices="grease=グリース",
    page="""
軸受部寸法一覧
品名 | {m} | 図番 | {dwg} | 版 | {rev}
最高回転数(min-1) | {n} | 周囲温度(℃) | {amb}
担当 | 設計一課 | 日付 | 2026/1/{day}

> 軸受位置 | 軸受型番 | 潤滑 | ラジアル荷重 | アキシアル荷重 | 軸径 | 軸公差 | 軸上偏差 | 軸下偏差 | 軸粗さRa \
| 軸円筒度 \
| 軸肩径 | ハウジング内径 | ハウジング公差 | ハウジング上偏差 | ハウジング下偏差 | ハウジング粗さRa \
| ハウジング円筒度 \
| ハウジング肩径 | 備考
> | | | N | N | mm | | µm | µm | µm | µm | mm | mm | | µm | µm | µm | µm | mm
*{p} | {brg} | {lub} | {fr} | {fa} | {ss.n} | {ss.c} | {ss.u:um} | {ss.l:um} | {sra} | {scy:um} | {ssh} | {hs.n} \
| {hs.c} | {hs.u:um} | {hs.l:um} | {hra} | {hcy:um} | {hsh} | {~研削;}
""",
)
BLOCKS_JA = Office(
    language="ja",
    layout="blocks",
    file="xlsx",
    machines="研削スピンドル KSP-40,研削スピンドル KSP-63",
    positions="前側,後側",
    bearing="angular C P4;angular C P5",
    dwg="KSP-000",
    choices="grease=グリース;spring=ばね予圧;steel=SCM440;stainless steel=SUS420J2;cast iron=FC250;aluminium=A5056",
    sheet="仕様",
    page="""
スピンドル仕様書
製品名 | {m}
図面番号 | {dwg}
改訂 | {rev}
最高回転速度 | {n} | min-1
予圧方式 | {preload_method}
予圧荷重 | {prel} | N
軸材質 | {smat}

%p
{p}軸受
項目 | 値 | 単位
軸受呼び番号 | {brg} | -
ラジアル荷重 | {fr} | N
アキシアル荷重 | {fa} | N
軸受内径 d | {d} | mm
軸受外径 D | {D} | mm
軸受幅 B | {B} | mm
@0 基本動定格荷重 C | {C} | N
@1 接触角 | {contact_angle} | °
軸はめあい部直径 | φ{ss.n} {ss.c} | mm
軸はめあい部の表面粗さ Ra | {sra} | µm
軸はめあい部の円筒度 | {scy} | mm
軸の肩の直径 | {ssh} | mm
ハウジングはめあい部内径 | φ{hs.n} {hs.c} | mm
ハウジングはめあい部の表面粗さ Ra | {hra} | µm
ハウジングはめあい部の円筒度 | {hcy} | mm
ハウジングの肩の直径 | {hsh} | mm

%end
承認 | 検図 | 作成
""",
)
LONG_JA = Office(
    language="ja",
    layout="long",
    file="xlsx",
    machines="サーボモータ SV-200,サーボモータ SV-400",
    positions="負荷側,反負荷側",
    bearing="ball ZZ;ball VV C3",
    dwg="SV00-00",
    choices="grease=ウレアグリース;locating=固定;floating=自由;aluminium=ADC12;cast iron=FC200;steel=SS400",
    sheet="属性",
    page="""
PDM属性一覧
> 品番 | 品名 | 部位 | 属性名 | 属性値 | 公差 | 単位 | 状態
{dwg} | {m} | 全体 | 最高回転速度 | {n} | | min-1 | 承認済
{dwg} | {m} | 全体 | ロータ質量 | {mass:kg} | | kg | 承認済
{dwg} | {m} | 全体 | ハウジング材質 | {hmat} | | | 承認済
%p
{dwg} | {m} | {p} | 軸受型番 | {brg} | | | 承認済
{dwg} | {m} | {p} | 軸方向の拘束 | {role} | | | 承認済
{dwg} | {m} | {p} | 潤滑方法 | {lub} | | | 承認済
{dwg} | {m} | {p} | ラジアル荷重 | {fr} | | N | 承認済
{dwg} | {m} | {p} | 軸の直径 | {ss.n} | {ss.c} | mm | 承認済
{dwg} | {m} | {p} | 軸の表面粗さRa | {sra} | | µm | 承認済
{dwg} | {m} | {p} | 軸の円筒度 | {scy} | | mm | 承認済
{dwg} | {m} | {p} | 軸の肩径 | {ssh} | | mm | 承認済
{dwg} | {m} | {p} | ハウジングの内径 | {hs.n} | {hs.c} | mm | 承認済
{dwg} | {m} | {p} | ハウジングの表面粗さRa | {hra} | | µm | 承認済
{dwg} | {m} | {p} | ハウジングの円筒度 | {hcy} | | mm | 承認済
{dwg} | {m} | {p} | ハウジングの肩径 | {hsh} | | mm | 承認済
%end
""",
)
PARTS_JA = Office(
    language="ja",
    layout="parts list",
    file="csv tab cp932",
    machines="定量ポンプ TP-3,定量ポンプ TP-8",
    positions="モータ側,ポンプ側",
    bearing="ball LLU;ball DDU",
    dwg="TP-0000",
    choices="grease=グリース封入;horizontal=横置き;vertical=縦置き",
    page="""
部品表(軸受まわり)
製品 | {m} | 図番 | {dwg}
最高使用回転数 | {n} | min-1 | 取付姿勢 | {ori}
> 番号 | 部品名 | 取付位置 | 型番 | 個数 | 寸法 mm | 公差域 | 最大寸法 mm | 最小寸法 mm | 粗さ Ra µm | 円筒度 mm \
| 肩径 mm | 材質・備考
%p
{#} | 深溝玉軸受 | {p} | {brg} | 1
{#} | 軸(軸受はめあい部) | {p} | | 1 | {ss.n} | {ss.c} | {ss.max:mm} | {ss.min:mm} | {sra} | {scy} | {ssh} | 焼入れ
{#} | ハウジング(軸受はめあい部) | {p} | | 1 | {hs.n} | {hs.c} | {hs.max:mm} | {hs.min:mm} | {hra} | {hcy} | {hsh}
%end
""",
)
TWO_ROWS_ZH = Office(
    language="zh",
    layout="two-row headings",
    file="csv , gb18030",
    machines="小型发电机 FD-3,小型发电机 FD-6",
    positions="驱动端,非驱动端",
    bearing="ball -2RZ;ball -2Z/C3",
    dwg="FD-00-00",
    choices="grease=锂基润滑脂;locating=固定;floating=浮动;horizontal=卧式;vertical=立式",
    page="""
轴承配合尺寸表
产品型号 | {m} | 图号 | {dwg} | 版次 | {rev}
最高转速(r/min) | {n} | 安装方式 | {ori}
@1 额定寿命要求(h) | {life}
> 位置 | 轴承 | | | | | 轴 | | | | | 端盖轴承室
> | 型号 | 轴向固定 | 润滑 | 径向载荷(N) | 轴向载荷(N) | 直径(mm) | 上偏差(mm) | 下偏差(mm) | 粗糙度Ra(μm) \
| 圆柱度(mm) | 直径(mm) | 上偏差(mm) | 下偏差(mm) | 粗糙度Ra(μm) | 圆柱度(mm) | 备注
*{p} | {brg} | {role} | {lub} | {fr} | {fa} | {ss.n}{ss.c} | {ss.u:mm} | {ss.l:mm} | {sra} | {scy:mm:3} \
| {hs.n}{hs.c} | {hs.u:mm} | {hs.l:mm} | {hra} | {hcy:mm:3} | {~磨削;}
编制: | 审核: | 日期: | 2026-01-{day}
""",
)
ATTRS_ZH = Office(
    language="zh",
    layout="JSON attributes",
    file="json",
    machines="伺服电机 SM-80,伺服电机 SM-130",
    positions="前端,后端",
    bearing="ball -2RS;ball -2Z/C3",
    dwg="SM00.00",
    choices="grease=润滑脂;steel=45钢;stainless steel=20Cr13不锈钢;cast iron=HT200;aluminium=ZL102",
    named="属性名",
    page="""
{"导出": {"系统": "PDM", "日期": "2026-02-{day}"}, "对象": "{m}", "图号": "{dwg}", "版本": "{rev}",
 "属性": [
  {"属性名": "最高转速", "值": "{n}", "单位": "r/min"},
  {"属性名": "转子质量", "值": "{mass:kg}", "单位": "kg"},
  {"属性名": "轴材料", "值": "{smat}"},
  {"属性名": "质检员", "值": "三组"}],
 "轴承部位": ["*p", {"部位": "{p}", "属性": [
  {"属性名": "轴承型号", "值": "{brg}"},
  {"属性名": "润滑方式", "值": "{lub}"},
  {"属性名": "游隙组别", "值": "{clr}"},
  {"属性名": "工作温度", "值": "{operating_temperature}", "单位": "℃"},
  {"属性名": "径向载荷", "值": "{fr}", "单位": "N"},
  {"属性名": "轴向载荷", "值": "{fa}", "单位": "N"},
  {"属性名": "轴承位轴径", "值": "φ{ss.n}{ss.c}", "单位": "mm"},
  {"属性名": "轴承位轴径上偏差", "值": "{ss.u:um}", "单位": "μm"},
  {"属性名": "轴承位轴径下偏差", "值": "{ss.l:um}", "单位": "μm"},
  {"属性名": "轴承位表面粗糙度Ra", "值": "{sra}", "单位": "μm"},
  {"属性名": "轴承位圆柱度", "值": "{scy:um}", "单位": "μm"},
  {"属性名": "轴肩直径", "值": "{ssh}", "单位": "mm"},
  {"属性名": "轴承室孔径", "值": "φ{hs.n}{hs.c}", "单位": "mm"},
  {"属性名": "轴承室孔径上偏差", "值": "{hs.u:um}", "单位": "μm"},
  {"属性名": "轴承室孔径下偏差", "值": "{hs.l:um}", "单位": "μm"},
  {"属性名": "轴承室表面粗糙度Ra", "值": "{hra}", "单位": "μm"},
  {"属性名": "轴承室圆柱度", "值": "{hcy:um}", "单位": "μm"}]}]}
""",
)
SEATS_ZH = Office(
    language="zh",
    layout="seat rows",
    file="xlsx",
    machines="磨削主轴 MZ-60,磨削主轴 MZ-90,计量泵 JL-5,计量泵 JL-8",
    positions="前支承,后支承",
    bearing="angular C/P4;ball -2RS",
    dwg="MZ-0000",
    count=2,
    sheet="配合面",
    page="""
> 序号 | 产品 | 图号 | 最高转速 r/min | 支承 | 配合面 | 轴承型号 | 公称直径 mm | 公差带 | 粗糙度 Ra μm | 圆柱度 μm \
| 径向全跳动 μm | 肩部直径 mm | 肩部端面跳动 μm | 检具
%m
%p
{#} | {m} | {dwg} | {n} | {p} | 轴颈 | {brg} | {ss.n} | {ss.c} | {sra} | {scy:um} | {sro:um} | {ssh} | {ssr:um} \
| 千分尺
{#} | {m} | {dwg} | {n} | {p} | 轴承座孔 | {brg} | {hs.n} | {hs.c} | {hra} | {hcy:um} | {hro:um} | {hsh} \
| {hsr:um} | 气动量仪
%end
%end
""",
)
ACROSS_RU = Office(
    language="ru",
    layout="transposed",
    file="csv ; cp1251",
    machines="Вентилятор осевой ВО-25,Вентилятор осевой ВО-40",
    positions="А,Б",
    bearing="ball -2RS;ball -2Z/C3",
    dwg="ВО.000.00",
    comma=True,
    choices="grease=пластичная смазка;locating=фиксирующая;floating=плавающая;cast iron=чугун;"
    "aluminium=алюминиевый сплав;steel=сталь",
    page="""
Таблица параметров подшипниковых опор
Изделие | {m}
Обозначение чертежа | {dwg} | Изм. | {rev}
Макс. частота вращения | {n} | об/мин
Материал корпуса | {hmat}
@0 Масса ротора | {mass:kg} | кг
@1 Температура | {?ambient_temperature+housing_temperature+operating_temperature+temperature_max} | °C

> Параметр | Ед. изм. | [p | Опора {p} | p] | Примечание
Подшипник | | [p | {brg} | p] | покупной
Назначение опоры | | [p | {role} | p]
Смазка | | [p | {lub} | p]
@0 Рабочая температура подшипника | °C | [p | {operating_temperature} | p]
Радиальная нагрузка | Н | [p | {fr} | p]
Осевая нагрузка | Н | [p | {fa} | p]
Диаметр шейки вала | мм | [p | {ss.n} {ss.c} | p] | шлифовать
Шероховатость Ra шейки вала | мкм | [p | {sra} | p]
Цилиндричность шейки вала | мм | [p | {scy:mm:3} | p]
Диаметр заплечика вала | мм | [p | {ssh} | p]
Диаметр отверстия корпуса | мм | [p | {hs.n} {hs.c} | p] | расточить
Шероховатость Ra отверстия корпуса | мкм | [p | {hra} | p]
Цилиндричность отверстия корпуса | мм | [p | {hcy:mm:3} | p]
Диаметр заплечика корпуса | мм | [p | {hsh} | p]
Разраб. | Отдел 12 | {day}.01.2026
""",
)
ROWS_RU = Office(
    language="ru",
    layout="position rows",
    file="xlsx",
    machines="Шпиндель шлифовальный ШШ-50,Шпиндель шлифовальный ШШ-80",
    positions="передняя,задняя",
    bearing="angular C/P4;angular AC/P4",
    dwg="ШШ00.00.000",
    comma=True,
    choices="grease=консистентная смазка;horizontal=горизонтальное;vertical=вертикальное",
    sheet="Посадки",
    page="""
ПОСАДКИ ПОДШИПНИКОВ | < | < | < | Чертёж № | {dwg}
Шпиндель: | {m}
Частота вращения наибольшая, об/мин: | {n}
Положение вала: | {ori}
> Опора | Подшипник | Нагрузка | < | Посадочная шейка вала | < | < | < | < | Отверстие корпуса | < | < | < | < \
| Контролёр
> ^ | ^ | радиальная, Н | осевая, Н | диаметр, мм | верхнее отклонение, мкм | нижнее отклонение, мкм | Ra, мкм \
| цилиндричность, мкм | диаметр, мм | верхнее отклонение, мкм | нижнее отклонение, мкм | Ra, мкм \
| цилиндричность, мкм | ^
*{p} | {brg} | {fr} | {fa} | {ss.n} {ss.c} | {ss.u:um} | {ss.l:um} | {sra} | {scy:um} | {hs.n} {hs.c} | {hs.u:um} \
| {hs.l:um} | {hra} | {hcy:um} | {~ОТК-2;}
""",
)
LONG_RU = Office(
    language="ru",
    layout="long",
    file="csv ; utf-8-sig",
    machines="Насос-дозатор НД-10,Насос-дозатор НД-25",
    positions="сторона привода,сторона насоса",
    bearing="ball -2RS;ball -2Z",
    dwg="НД-000-000",
    comma=True,
    choices="grease=смазка Литол;steel=сталь 45;stainless steel=сталь 20Х13;cast iron=СЧ20;aluminium=АК7",
    page="""
Выгрузка атрибутов
Наименование | {m}
Номер чертежа | {dwg}
Ревизия | {rev}

> № | Сторона | Наименование параметра | Значение | Единица
{#} | общие | Максимальная частота вращения | {n} | об/мин
{#} | общие | Материал вала | {smat}
{#} | общие | Материал корпуса | {hmat}
%p
{#} | {p} | Обозначение подшипника | {brg}
{#} | {p} | Смазка подшипника | {lub}
{#} | {p} | Заполнение смазкой | {grease_fill} | %
{#} | {p} | Радиальная нагрузка | {fr} | Н
{#} | {p} | Осевая нагрузка | {fa} | Н
{#} | {p} | Посадочный диаметр вала | {ss.n} {ss.c} ({ss.u:mm}/{ss.l:mm}) | мм
{#} | {p} | Шероховатость посадочной поверхности вала Ra | {sra} | мкм
{#} | {p} | Допуск цилиндричности вала | {scy:mm:3} | мм
{#} | {p} | Диаметр буртика вала | {ssh} | мм
{#} | {p} | Посадочный диаметр корпуса | {hs.n} {hs.c} ({hs.u:mm}/{hs.l:mm}) | мм
{#} | {p} | Шероховатость посадочной поверхности корпуса Ra | {hra} | мкм
{#} | {p} | Допуск цилиндричности корпуса | {hcy:mm:3} | мм
{#} | {p} | Диаметр буртика корпуса | {hsh} | мм
%end
""",
)
ODD = (ROWS_JA, BLOCKS_JA, TWO_ROWS_ZH, ATTRS_ZH, ACROSS_RU)
EVEN = (LONG_JA, PARTS_JA, SEATS_ZH, ROWS_RU, LONG_RU)
