"""Suppliers of shafts and housings: tables with title block, units row, remarks and foot notes."""

from practice_nineteenth.office import Office

GRINDER = Office(
    language="de",
    layout="row per seat",
    file="xlsx",
    machines="Getriebewelle GW 12,Bremsenwelle BW 5",
    positions="Lagersitz 1,Lagersitz 2",
    bearing="ball;large",
    fits="k5 k6 m5 m6/H7 H6 J6",
    dwg="W-000000",
    comma=True,
    lines="""
Lieferspezifikation Welle / Gehäuse
Teilebenennung|{m}||Zeichnung|{dn}||Änderungsstand|{rev}
Lieferant|Schleiferei 0417||Datum|{day}.05.2025||Bearbeiter|Hs

@0 ^Stelle|Teil|Nennmaß|Passung|Größtmaß|Kleinstmaß|Zylindrizität|Gesamtrundlauf|Ra|Schulterdurchmesser|Bemerkung
@0 ^||mm||mm|mm|µm|µm|µm|mm|
@1 ^Teil|Stelle|Zeichnungsmaß [mm]|ob. Abmaß [mm]|unt. Abmaß [mm]|Zylindrizität [µm]|Gesamtrundlauf [µm]|Ra [µm]|\
Schulterdurchmesser [mm]|Prüfmittel|Bemerkung
%s
@0 {st}|Welle|{sd.n:mm}|{sd.c}|{sd.max:mm}|{sd.min:mm}|{sc:µm}|{sr:µm}|{sa}|{ss}|[geschliffen;drallfrei geschliffen]
@0 {st}|Gehäuse|{hd.n:mm}|{hd.c}|{hd.max:mm}|{hd.min:mm}|{hc:µm}|{hr:µm}|{ha}|{hs}|[feingebohrt;gehont]
@1 Welle|{st}|{sd.n} {sd.c}|{sd.u:mm}|{sd.l:mm}|{sc:µm}|{sr:µm}|{sa}|{ss}|Feinzeiger|[geschliffen;]
@1 Gehäuse|{st}|{hd.n} {hd.c}|{hd.u:mm}|{hd.l:mm}|{hc:µm}|{hr:µm}|{ha}|{hs}|Innenmessgerät|[feingebohrt;gehont]
%end

- Messtemperatur 20 °C
- Kanten ISO 13715
""",
    more={"labels": "2", "units": "row", "sheet": "Spezifikation"},
)
INSPECTION = Office(
    language="en",
    layout="row per feature",
    file="csv , utf-8-sig",
    machines="Alternator ALT-7,Brush generator BG-3",
    positions="DE,NDE",
    bearing="ball /C3;small",
    fits="k5 j5 k6 h5/H6 H7 J6",
    dwg="A0000",
    lines="""
Purchased machined parts - bearing fits
Unit:|{m}||Print:|{dn}|Rev.|{rev}
Units: inch; surface finish in microinch Ra

^Feature|Location|Brg No.|Max. dia.|Min. dia.|Finish|Shoulder dia.|Cylindricity|Gage|Lot
%s
Shaft journal|{st}|{bd}|{sd.max:in}|{sd.min:in}|{sa:µin}|{ss:in}|{sc:in}|air ring|[A;B]
Housing bore|{st}||{hd.max:in}|{hd.min:in}|{ha:µin}|{hs:in}|{hc:in}|air plug|[A;B]
%end

First article report required with each lot.
""",
    more={"labels": "1", "units": "title"},
)
PARTS_JA = Office(
    language="ja",
    layout="parts list with seats",
    file="csv , utf-8",
    machines="オルタネータ AL-60,発電機 GN-25",
    positions="駆動側,反駆動側",
    bearing="ball -2RS1/C3;small",
    fits="k5 k6 j6 m5/H6 H7 J6",
    dwg="AL00000",
    choices="steel=S45C;aluminium=ADC12",
    lines="""
加工部品 はめあい一覧
品名|{m}|図番|{dn}|版|{rev}
単位：mm（粗さはμm）

^番号|部品名|取付位置|軸受型番|基準寸法|公差クラス|上の寸法許容差|下の寸法許容差|円筒度|粗さRa|肩径|材質|備考
%s
{#}|玉軸受|{st}|{bd}|||||||||購入品
{#}|シャフト|{st}||{sd.n:mm}|{sd.c}|{sd.u:mm}|{sd.l:mm}|{sc}|{sa}|{ss}|{sm}|[研磨;高周波焼入れ後研磨]
{#}|ブラケット|{st}||{hd.n:mm}|{hd.c}|{hd.u:mm}|{hd.l:mm}|{hc}|{ha}|{hs}|{hm}|中ぐり
%end

承認 検図 設計
""",
    more={"labels": "2", "units": "title", "fixed": "shaft_material=steel;housing_material=aluminium"},
)
ROW_ZH = Office(
    language="zh",
    layout="row per position, units row",
    file="xlsx",
    machines="输送滚筒 GT-219,驱动滚筒 QD-325",
    positions="左端,右端",
    bearing="large /C3;ball -2RS1",
    fits="k6 m6 k5/H7 J7 K7",
    dwg="GT000-00",
    lines="""
供应商加工件配合尺寸表
部件|{m}||图号|{dn}|版次|{rev}||供方|〇二厂

@0 ^序号|位置|轴承型号|轴径|公差带|上偏差|下偏差|轴颈圆柱度|轴颈Ra|轴承座孔径|公差带|上偏差|下偏差|座孔圆柱度|\
座孔Ra|检验|备注
@0 ^|||mm||μm|μm|mm|μm|mm||μm|μm|mm|μm||
@1 ^序号|轴承型号|位置|轴承座孔径|公差|座孔圆柱度|座孔Ra|轴颈直径|公差|轴颈圆柱度|轴颈Ra|轴肩直径|径向载荷|材料|备注
@1 ^|||mm||mm|μm|mm||mm|μm|mm|N||
%s
@0 {#}|{st}|{bd}|{sd.n:mm}|{sd.c}|{sd.u:µm}|{sd.l:µm}|{sc}|{sa}|{hd.n:mm}|{hd.c}|{hd.u:µm}|{hd.l:µm}|{hc}|{ha}|全检|\
[磨削;]
@1 {#}|{bd}|{st}|{hd.n:mm}|{hd.c}|{hc}|{ha}|{sd.n:mm}|{sd.c}|{sc}|{sa}|{ss}|{Fr}|45钢|[磨削;]
%end

备注：未注公差按GB/T 1804-m；未注倒角C1。
""",
    more={"units": "row", "sheet": "配合表"},
)
BORES_ES = Office(
    language="es",
    layout="row per seat",
    file="csv ; cp1252",
    machines="Caja reductora CR 28,Reductor coaxial RC 17",
    positions="Entrada A,Entrada B",
    bearing="roller;ball /C3",
    fits="k5 m5 m6 k6/H7 J6 K6 H6",
    dwg="CR/0000",
    comma=True,
    lines="""
Ficha de suministro - asientos de rodamiento
Conjunto:|{m}
Plano:|{dn}|Rev.:|{rev}|Fecha:|{day}-04-2025

^Apoyo|Pieza|Ref. rodamiento|Cota y tolerancia (mm)|Desviación superior (mm)|Desviación inferior (mm)|\
Cilindricidad (mm)|Oscilación total radial (mm)|Rugosidad Ra (µm)|Proceso|Observaciones
%s
{st}|Eje|{bd}|{sd.n} {sd.c}|{sd.u:mm}|{sd.l:mm}|{sc:mm,3}|{sr:mm,3}|{sa}|rectificado|[;medir a 20 °C]
{st}|Alojamiento||{hd.n} {hd.c}|{hd.u:mm}|{hd.l:mm}|{hc:mm,3}|{hr:mm,3}|{ha}|mandrinado|
%end

Tolerancias generales ISO 2768-fH
""",
    more={"labels": "2"},
)
PARTS_FR = Office(
    language="fr",
    layout="parts list with seats",
    file="xlsx",
    machines="Tambour de convoyeur TC 400,Tambour moteur TM 250",
    positions="gauche,droite",
    bearing="large -2RS1/C3;ball",
    fits="k6 m6 k5/H7 J7 K7",
    dwg="TC 00 000",
    comma=True,
    choices="steel=C45;cast iron=EN-GJL-250",
    lines="""
NOMENCLATURE ET AJUSTEMENTS
Ensemble|{m}|Plan|{dn}|Ind.|{rev}
Établi par|BE mécanique|le {day}/06/2025

^Rep.|Qté|Désignation|Palier|Réf. / Ø nominal|Ajustement|Écarts (µm)|Cylindricité (µm)|Ra (µm)|Matière|Masse (kg)
%s
{#}|1|Roulement à billes|{st}|{bd}|||||acier à roulement|[0,4;0,6]
{#}|1|Arbre (portée de roulement)|{st}|{sd.n:mm}|{sd.c}|{sd.u:µm} / {sd.l:µm}|{sc:µm}|{sa}|{sm}|
{#}|1|Boîtier (alésage de roulement)|{st}|{hd.n:mm}|{hd.c}|{hd.u:µm} / {hd.l:µm}|{hc:µm}|{ha}|{hm}|
%end

Cotes en mm. Casser les angles vifs.
""",
    more={"labels": "3", "sheet": "Nomenclature", "fixed": "shaft_material=steel;housing_material=cast iron"},
)
SEATS_IT = Office(
    language="it",
    layout="row per position, two headings",
    file="csv ; cp1252",
    machines="Albero freno AF 8,Albero dinamometro AD 30",
    positions="Cuscinetto A,Cuscinetto B",
    bearing="ball;small /C3",
    fits="js5 js6/JS6 JS7",
    dwg="AF.0000",
    comma=True,
    lines="""
Tabella accoppiamenti per fornitore
Particolare: {m}|||Disegno: {dn}||Rev. {rev}

^Posizione|Cuscinetto|Albero|||||Alloggiamento|||||Note
^|Sigla|Diametro sede [mm]|± [mm]|Cilindricità [mm]|Oscillazione totale radiale [mm]|Ra [µm]|Diametro sede [mm]|\
± [mm]|Cilindricità [mm]|Oscillazione totale radiale [mm]|Ra [µm]|
%s
{st}|{bd}|{sd.n:mm}|{sd.t:mm}|{sc}|{sr}|{sa}|{hd.n:mm}|{hd.t:mm}|{hc}|{hr}|{ha}|[rettificato;]
%end

Quote a 20 °C.
""",
)
ODD = (GRINDER, PARTS_JA, BORES_ES, SEATS_IT)
EVEN = (INSPECTION, ROW_ZH, PARTS_FR)
