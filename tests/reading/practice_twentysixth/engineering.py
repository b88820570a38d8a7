"""Engineering offices with one sheet for each machine, that write English, German and the languages of the East."""

from practice_nineteenth.office import Office

TURBO = Office(
    language="en",
    layout="row per position, two headings",
    file="xlsx",
    machines="Turbo compressor TC-40,Turbo compressor TC-65",
    positions="Impeller end,Free end;Compressor side,Motor side",
    bearing="angular C/P4;ball /C3",
    fits="k5 js5 h5/H6 JS6 J6",
    dwg="TC-0000-00",
    choices="locating=locating;floating=floating;grease=grease;steel=42CrMo4;cast iron=EN-GJS-400;"
    "aluminium=EN AC-42000;horizontal=horizontal;vertical=vertical",
    lines="""
BEARING SEAT SCHEDULE||||Dwg no.|{dn}
Project|[Air separation;Tank degassing;Flue gas boosting]|||Issue|{rev}
Machine|{m}|||Drawn|LH {day}/02/2025
Maximum speed|{nmax}|rpm||Checked|-
Rotor weight|{mass}|kg||Bearing span|{span} mm

@0 ^Location|Bearing|||Shaft||||||Housing||||||Loads||Remarks
@0 ^|Type no.|Arrangement|Bearing temp. (°C)|Journal dia. (mm)|Fit|Upper dev. (µm)|Lower dev. (µm)|\
Cylindricity (µm)|Ra (µm)|Bore dia. (mm)|Fit|Upper dev. (µm)|Lower dev. (µm)|Cylindricity (µm)|Ra (µm)|Radial (N)|\
Axial (N)|
@1 ^Pos.|Bearing||Housing||||Shaft||||||Loads||Remarks
@1 ^|Type no.|Arrangement|Bore dia. (mm)|Fit|Cylindricity (µm)|Ra (µm)|Journal dia. (mm)|Fit|Cylindricity (µm)|\
Ra (µm)|Shoulder dia. (mm)|Max. fillet (mm)|Radial (N)|Axial (N)|
%s
@0 {st}|{bd}|{role}|{T}|{sd.n:mm}|{sd.c}|{sd.u:µm}|{sd.l:µm}|{sc:µm}|{sa}|{hd.n:mm}|{hd.c}|{hd.u:µm}|{hd.l:µm}|\
{hc:µm}|{ha}|{Fr:N}|{Fa:N}|[see note 2;;O-ring groove in bore]
@1 {st}|{bd}|{role}|{hd.n:mm}|{hd.c}|{hc:µm}|{ha}|{sd.n:mm}|{sd.c}|{sc:µm}|{sa}|{ss}|{sf}|{Fr:N}|{Fa:N}|[;see note 2]
%end

Notes:
1. All diameters at 20 °C, unmounted.
2. Seats ground after hardening, free of chatter marks.
""",
    more={"sheet": "Bearings", "merged": "1"},
)
SPINDLE = Office(
    language="en",
    layout="transposed",
    file="csv , utf-8",
    machines="Milling spindle MS-12,Milling spindle MS-24",
    positions="Front bearing,Rear bearing",
    bearing="angular C/P4;angular AC/P4",
    fits="h5 js5 k5/H6 JS6 J6",
    dwg="00000-0",
    choices="grease=grease packed;oil bath=oil bath;steel=4140;cast iron=class 40 iron;aluminium=6061-T6",
    lines="""
Spindle data sheet
{m}|Drawing {dn}|Rev {rev}
Dimensions in inches unless stated otherwise; roughness in microinches.
Top speed, rpm|{nmax}
Balance quality|G{bal}
Weight of rotating assembly, lb|{mass:lb}

^Item|*{st}|Inspection
Bearing part number|*{bd}|
Bore of bearing|*{d:in}|
Outside diameter of bearing|*{D:in}|
Width of bearing|*{B:in}|
Radial load, lbf|*{Fr:lbf}|
Thrust load, lbf|*{Fa:lbf}|
@0 Shaft bearing journal max.|*{sd.max:in}|air gauge
@0 Shaft bearing journal min.|*{sd.min:in}|air gauge
@1 Shaft bearing journal|*{sd.max:in} / {sd.min:in}|air gauge
Shaft journal finish, µin Ra|*{sa:µin}|
Shaft shoulder diameter|*{ss:in}|
Shaft corner radius, max.|*{sf:in}|
@0 Housing bore max.|*{hd.max:in}|bore gauge
@0 Housing bore min.|*{hd.min:in}|bore gauge
@1 Housing bore|*{hd.max:in} / {hd.min:in}|bore gauge
Housing bore finish, µin Ra|*{ha:µin}|
Housing shoulder diameter|*{hs:in}|
Housing wall outside diameter|*{ho:in}|
""",
    more={"labels": "1"},
)
DYNO = Office(
    language="de",
    layout="blocks per position",
    file="csv ; cp1252",
    machines="Leistungsbremse LB 90,Pendelmaschine PM 160",
    positions="Lager kupplungsseitig,Lager geberseitig",
    bearing="ball -2Z/C3;large /C3",
    fits="k5 k6 j5 m5/H6 H7 J6 G6",
    dwg="LB.000.00",
    comma=True,
    choices="locating=Festlager;floating=Loslager;grease=Fett;oil bath=Öltauchschmierung;"
    "clamped=Wellenmutter;none=keine;continuous=Dauerbetrieb;intermittent=Aussetzbetrieb",
    lines="""
Berechnungsblatt Läuferlagerung
Prüfling|{m}
Zeichnung|{dn}|Index|{rev}
Bearbeiter|Wdm|Datum|{day}.04.2025
Höchstdrehzahl|{nmax}|1/min
Betriebsdrehzahl|{nop}|1/min
Läufermasse|{mass}|kg
Lagermittenabstand|{span}|mm
Betriebsart|{duty}
%s

{st}
Wälzlager|{bd}
Funktion|{role}
Lagerluft|{cl}
Statische Tragzahl C0|{C0:kN}|kN
Dynamische Tragzahl C|{C:kN}|kN
Radialkraft Fr|{Fr}|N
Axialkraft Fa|{Fa}|N
Wellensitz|{sd.n} {sd.c}|mm
Abmaße Wellensitz|{sd.u:µm} / {sd.l:µm}|µm
Zylindrizität Wellensitz|{sc:µm}|µm
Rauheit Ra Wellensitz|{sa}|µm
Wellenschulter Ø|{ss}|mm
Gehäusebohrung|{hd.n} {hd.c}|mm
Abmaße Gehäusebohrung|{hd.u:µm} / {hd.l:µm}|µm
Zylindrizität Gehäusebohrung|{hc:µm}|µm
Rauheit Ra Gehäusebohrung|{ha}|µm
Gehäuseschulter Ø|{hs}|mm
@1 Anziehdrehmoment Wellenmutter|{nt}|Nm
%end

Allgemeintoleranzen nach ISO 2768-mK; Oberflächen entgratet.
""",
)
GEAR = Office(
    language="de",
    layout="long",
    file="xlsx",
    machines="Kegelradgetriebe KG 14,Stirnradgetriebe SG 33",
    positions="Eingangswelle A,Eingangswelle B",
    bearing="roller;large",
    fits="k5 m5 m6 k6/H7 J6 K6 H6",
    dwg="00-0000.0",
    comma=True,
    choices="locating=Festlager;floating=Loslager;grease=Fett;oil bath=Ölbad;steel=18CrNiMo7-6;cast iron=EN-GJL-250;"
    "aluminium=AlSi9Cu3;cylindrical roller=Zylinderrollenlager;deep groove ball=Rillenkugellager;"
    "horizontal=waagerecht;vertical=senkrecht",
    lines="""
Parameterblatt Ritzelwelle|||||Stand {day}.01.2025
^lfd. Nr.|Lagerstelle|Bauteil|Kenngröße|Zahlenwert|Einheit|Quelle
{#}||Getriebe|Benennung|{m}||Stückliste
{#}||Getriebe|Zeichnungsnummer|{dn}||
{#}||Getriebe|Eingangsdrehzahl max.|{nmax}|min-1|Lastenheft
{#}||Getriebe|geforderte Lebensdauer|{life}|h|Lastenheft
{#}||Getriebe|Gehäusewerkstoff|{hm}||Zeichnung
%s
{#}|{st}|Wälzlager|Kurzzeichen|{bd}||Stückliste
{#}|{st}|Wälzlager|Bauart|{bt}||Stückliste
{#}|{st}|Wälzlager|Bohrung d|{d}|mm|Katalog
{#}|{st}|Wälzlager|Außendurchmesser D|{D}|mm|Katalog
{#}|{st}|Wälzlager|Lagerfunktion|{role}||
{#}|{st}|Wälzlager|radiale Belastung|{Fr:kN}|kN|Lastfall 3
{#}|{st}|Wälzlager|Lagertemperatur|{T}|°C|Messung
{#}|{st}|Welle|Sitzdurchmesser|{sd.n} {sd.c}|mm|Zeichnung
{#}|{st}|Welle|Zylindrizitätstoleranz des Sitzes|{sc}|mm|Zeichnung
{#}|{st}|Welle|Gesamtrundlauf des Sitzes|{sr}|mm|Zeichnung
{#}|{st}|Welle|Ra des Sitzes|{sa}|µm|Zeichnung
{#}|{st}|Welle|Bunddurchmesser|{ss}|mm|Zeichnung
{#}|{st}|Gehäuse|Sitzdurchmesser|{hd.n} {hd.c}|mm|Zeichnung
{#}|{st}|Gehäuse|Zylindrizitätstoleranz des Sitzes|{hc}|mm|Zeichnung
{#}|{st}|Gehäuse|Gesamtrundlauf des Sitzes|{hr}|mm|Zeichnung
{#}|{st}|Gehäuse|Ra des Sitzes|{ha}|µm|Zeichnung
@1 {#}|{st}|Gehäuse|Schulterdurchmesser|{hs}|mm|Zeichnung
%end
""",
    more={"labels": "3 4", "units": "column", "sheet": "Parameter"},
)
MOTORSPINDLE = Office(
    language="ja",
    layout="row per position, two headings",
    file="csv , cp932",
    machines="高速主軸 HS-30,研削主軸 GS-18",
    positions="前側軸受,後側軸受",
    bearing="angular C/P4;angular AC/P5",
    fits="h5 js5 k5/H6 JS6 J6",
    dwg="HS-0000",
    choices="locating=固定側;floating=自由側;grease=グリース;oil bath=油浴",
    lines="""
主軸軸受部 寸法公差表
機種|{m}||図番|{dn}|改訂|{rev}
最高回転速度|{nmax}|min-1||作成|設計2課 {day}日

@0 ^軸受位置|軸受||||軸||||||ハウジング||||||備考
@0 ^|呼び番号|精度等級|固定/自由|潤滑|軸径 [mm]|公差域クラス|上の許容差 [µm]|下の許容差 [µm]|円筒度 [µm]|\
表面粗さ Ra [µm]|穴径 [mm]|公差域クラス|上の許容差 [µm]|下の許容差 [µm]|円筒度 [µm]|表面粗さ Ra [µm]|
@1 ^軸受位置|軸受||||軸|||||ハウジング||||備考
@1 ^|呼び番号|精度等級|固定/自由|運転温度 [℃]|軸径 最大 [mm]|軸径 最小 [mm]|円筒度 [µm]|表面粗さ Ra [µm]|肩径 [mm]|\
穴径 最大 [mm]|穴径 最小 [mm]|円筒度 [µm]|表面粗さ Ra [µm]|
%s
@0 {st}|{bd}|{tc}|{role}|{lub}|{sd.n:mm}|{sd.c}|{sd.u:µm}|{sd.l:µm}|{sc:µm}|{sa}|{hd.n:mm}|{hd.c}|{hd.u:µm}|\
{hd.l:µm}|{hc:µm}|{ha}|[;研削仕上げ;]
@1 {st}|{bd}|{tc}|{role}|{T}|{sd.max:mm}|{sd.min:mm}|{sc:µm}|{sa}|{ss}|{hd.max:mm}|{hd.min:mm}|{hc:µm}|{ha}|\
[;研削仕上げ]
%end

注) 寸法は20℃における値。指示なき角はC0.2
""",
)
COMPRESSOR = Office(
    language="zh",
    layout="transposed",
    file="csv , gb18030",
    machines="透平压缩机 TY-55,离心增压机 LZ-20",
    positions="叶轮侧轴承,电机侧轴承",
    bearing="ball /C3;angular C/P5",
    fits="k5 k6 j5 m5/H6 H7 J6 JS6",
    dwg="TY00-000",
    choices="locating=固定端;floating=游动端;"
    "grease=脂润滑;oil bath=油浴润滑;steel=40Cr;cast iron=HT250;aluminium=ZL104;horizontal=卧式;vertical=立式",
    lines="""
轴承配合参数表
产品型号：|{m}||图号：|{dn}|版本：|{rev}
编制：王工|日期：2025-05-{day}

^序号|参数名称|单位|*{st}|备注
{#}|轴承型号|-|*{bd}|
{#}|轴承内径 d|mm|*{d}|
{#}|轴承外径 D|mm|*{D}|
{#}|轴承宽度 B|mm|*{B}|
{#}|支承形式|-|*{role}|
{#}|径向载荷|N|*{Fr}|计算值
{#}|轴向载荷|N|*{Fa}|计算值
{#}|基本额定动载荷|kN|*{C:kN}|样本
{#}|轴颈尺寸及公差|mm|*φ{sd.n} {sd.c}|磨削
{#}|轴颈圆柱度|mm|*{sc}|
{#}|轴颈表面粗糙度 Ra|μm|*{sa}|
{#}|轴肩直径|mm|*{ss}|
{#}|轴肩端面跳动|mm|*{sp}|
{#}|轴承座孔尺寸及公差|mm|*φ{hd.n} {hd.c}|
{#}|轴承座孔圆柱度|mm|*{hc}|
{#}|轴承座孔表面粗糙度 Ra|μm|*{ha}|
@1 {#}|轴承座孔挡肩直径|mm|*{hs}|
{#}|工作温度|℃|*{T}|实测
""",
    more={"labels": "2", "units": "column"},
)
SEPARATOR = Office(
    language="ru",
    layout="row per seat",
    file="csv ; cp1251",
    machines="Центрифуга ЦФ-300,Сепаратор СЦ-80",
    positions="Верхняя опора,Нижняя опора",
    bearing="ball;large /C3",
    fits="k5 k6 m5 js6/H7 H6 JS6 K7",
    dwg="ЦФ.00.000",
    comma=True,
    choices="vertical=вертикальное;horizontal=горизонтальное;grease=пластичная смазка;"
    "oil bath=масляная ванна;stainless steel=40Х13;cast iron=СЧ20",
    lines="""
Ведомость посадочных мест под подшипники
Изделие|{m}|Обозначение чертежа|{dn}
Наибольшая частота вращения, об/мин|{nmax}
Положение вала|{ori}
Масса ротора, кг|{mass}

@0 ^Опора|Подшипник|Посадочная поверхность|Номинальный диаметр, мм|Поле допуска|Верхнее отклонение, мкм|\
Нижнее отклонение, мкм|Допуск цилиндричности, мкм|Шероховатость Ra, мкм|Полное радиальное биение, мкм|Контроль
@1 ^№ п/п|Опора|Деталь|Подшипник|Размер и посадка, мм|Отклонения, мкм|Цилиндричность, мкм|Ra, мкм|\
Диаметр заплечика, мм|Материал|Примечание
%s
@0 {st}|{bd}|вал|{sd.n:mm}|{sd.c}|{sd.u:µm}|{sd.l:µm}|{sc:мкм}|{sa}|{sr:мкм}|ОТК
@0 ||корпус|{hd.n:mm}|{hd.c}|{hd.u:µm}|{hd.l:µm}|{hc:мкм}|{ha}|{hr:мкм}|ОТК
@1 {#}|{st}|вал|{bd}|{sd.n} {sd.c}|{sd.u:µm}; {sd.l:µm}|{sc:мкм}|{sa}|{ss}|{sm}|[;шлифовать]
@1 {#}|{st}|корпус||{hd.n} {hd.c}|{hd.u:µm}; {hd.l:µm}|{hc:мкм}|{ha}|{hs}|{hm}|
%end

Неуказанные предельные отклонения размеров по ГОСТ 30893.1-m
""",
    more={"labels": "3", "fixed": "shaft_material=stainless steel;housing_material=cast iron"},
)
ODD = (TURBO, DYNO, MOTORSPINDLE, SEPARATOR)
EVEN = (SPINDLE, GEAR, COMPRESSOR)
