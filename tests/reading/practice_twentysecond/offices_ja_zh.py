"""The offices that write Japanese and Chinese."""

from practice_twentysecond.firm import Firm

POMPU = Firm(
    language="ja",
    layout="transposed",
    file="csv , cp932",
    machines="渦巻ポンプ UP-80,多段ポンプ TP-65",
    positions="カップリング側,羽根車側;上部,下部",
    bearing="ball C3;angular B",
    fits="k5 m5 j6/H7 J7 H6",
    dwg="PU-00-0000",
    choices="grease=グリース;oil bath=オイルバス;locating=固定;floating=自由;steel=S45C;cast iron=FC200;"
    "aluminium=AC4C;horizontal=横型;vertical=立型",
    more={"label": "1"},
    lines="""
軸受仕様書,,,承認,検図,作図
機種名,{mach},,図面番号,{dwg},改訂 {rev}
最高回転速度,{nmax:min-1} min-1,,軸材料,{mats}
軸受寿命(要求) L10h,{life:h} h,,ハウジング材料,{math}

^項目,*{P},単位,備考
軸受形式番号,*{bd},,
軸方向機能,*{role},,
潤滑方法,*{lub},,
ラジアル荷重,*{Fr:kN},kN,計算書による
アキシアル荷重,*{Fa:kN},kN,計算書による
軸の直径,*{Sd.n:mm} {Sd.c},mm,
軸の表面粗さ Ra,*{Sr:µm},µm,研削
軸の円筒度,*{Sc:mm:3},mm,
軸の肩の直径,*{Sa:mm},mm,
@1 軸の肩の振れ,*{Sb:mm:3},mm,
ハウジング穴の直径,*{Hd.n:mm} {Hd.c},mm,
ハウジング穴の表面粗さ Ra,*{Hr:µm},µm,
ハウジング穴の円筒度,*{Hc:mm:3},mm,
ハウジング穴の肩の直径,*{Ha:mm},mm,
""".replace(",", " | "),
)
BUHIN = Firm(
    language="ja",
    layout="parts list",
    file="xlsx",
    machines="ルーツブロワ RB-50,ルーツブロワ RB-80",
    positions="駆動側,ギヤ側",
    bearing="ball C3;roller C3",
    dwg="RB0-0000",
    choices="grease=グリース;oil bath=油浴",
    more={"sheet": "部品表"},
    lines="""
部品表 (はめあい寸法記入) | | | | | 作成日 | 2025/03/{day}
品名 | {mach} | | 図番 | {dwg} | 訂番 | {rev}
最高回転数 | {nmax:min-1} | min-1 | ロータ質量 | {mass:kg} | kg

^品番 | 名称 | 取付位置 | 型番・材質 | 数量 | はめあい寸法 (mm) | 公差記号 | 上の許容差 (mm) | 下の許容差 (mm) | \
Ra (µm) | \
円筒度 (µm) | @0 肩直径 (mm) | ラジアル荷重 (N) | アキシアル荷重 (N) | 手配先
1 | ロータ | | FCD450 | 2 | | | | | | | @0 | | | 鋳造
[p
{=2;5} | 転がり軸受 | {P} | {bd} | 2 | | | | | | | @0 | {Fr:N} | {Fa:N} | 購入
{=3;6} | 軸 (軸受はめあい部) | {P} | | 1 | {Sd.n:mm} | {Sd.c} | {Sd.u:mm} | {Sd.l:mm} | {Sr:µm} | {Sc:µm} | \
@0 {Sa:mm} | | | 社内
{=4;7} | 軸受ハウジング (軸受はめあい部) | {P} | | 1 | {Hd.n:mm} | {Hd.c} | {Hd.u:mm} | {Hd.l:mm} | {Hr:µm} | \
{Hc:µm} | \
@0 {Ha:mm} | | | 社内
]
8 | タイミングギヤ | | SCM415 | 2 | | | | | | | @0 | | | 社内
""",
)
ICHIRAN = Firm(
    language="ja",
    layout="two-row headings",
    file="csv , utf-8-sig",
    machines="誘導電動機 IM-132,誘導電動機 IM-160,誘導電動機 IM-180,誘導電動機 IM-200",
    positions="負荷側,反負荷側",
    bearing="ball ZZC3;ball C3",
    fits="k5 j5 k6/H6 H7 J6",
    dwg="IM-00000",
    count=2,
    choices="grease=グリース;oil bath=油浴",
    lines="""
電動機軸受部一覧表 (寸法 mm、許容差・粗さ µm),,,,,,,,発行 2025年4月{day}日
^機種,図番,軸受位置,軸受,,,ブラケット穴,,,,軸,,,,,潤滑剤,最高回転数 rpm,摘要
^,,,呼び番号,ラジアル荷重 N,アキシアル荷重 N,基準寸法,上の許容差,下の許容差,Ra,基準寸法,上の許容差,下の許容差,Ra,肩径,,,
[m
p {mach},{dwg},{P},{bd},{Fr:N},{Fa:N},{Hd.n:mm},{Hd.u:µm},{Hd.l:µm},{Hr:µm},{Sd.n:mm},{Sd.u:µm},{Sd.l:µm},{Sr:µm},\
{Sa:mm},\
{lub},{nmax:rpm},{=要脱脂;}
]
""".replace(",", " | "),
)
ZOKUSEI = Firm(
    language="ja",
    layout="json attributes",
    file="json",
    machines="歯車スピンドル HS-40,歯車スピンドル HS-63",
    positions="前部,後部",
    bearing="spindle C P5;ball ZZ",
    fits="js5 k5 h6/H6 JS7 K6",
    dwg="HS-0000",
    choices="grease=グリース;oil bath=油浴;horizontal=水平;vertical=垂直",
    more={"name": "属性名", "units": "attribute"},
    lines="",
    tree={
        "出力": {"システム": "図面管理", "日付": "2025-02-{day}"},
        "品目": [
            {
                "分類": "主軸",
                "属性": [
                    {"属性名": "機種", "値": "{mach}", "単位": None},
                    {"属性名": "図面番号", "値": "{dwg}", "単位": None},
                    {"属性名": "改訂記号", "値": "{rev}", "単位": None},
                    {"属性名": "最高回転速度", "値": "{nmax:min-1}", "単位": "min-1"},
                    {"属性名": "予圧荷重", "値": "{Fv:N}", "単位": "N"},
                    {"@": "1", "属性名": "軸の姿勢", "値": "{ori}", "単位": None},
                ],
            },
        ],
        "軸受部": [
            "@p",
            {
                "位置": "{P}",
                "分類": "軸受部",
                "属性": [
                    {"属性名": "軸受型番", "値": "{bd}", "単位": None},
                    {"属性名": "軸受内径", "値": "{d:mm}", "単位": "mm"},
                    {"属性名": "軸受外径", "値": "{D:mm}", "単位": "mm"},
                    {"属性名": "軸受幅", "値": "{B:mm}", "単位": "mm"},
                    {"属性名": "潤滑", "値": "{lub}", "単位": None},
                    {"属性名": "軸径 最大", "値": "{Sd.max:mm}", "単位": "mm"},
                    {"属性名": "軸径 最小", "値": "{Sd.min:mm}", "単位": "mm"},
                    {"属性名": "軸 表面粗さ Ra", "値": "{Sr:µm}", "単位": "µm"},
                    {"属性名": "軸 円筒度", "値": "{Sc:µm}", "単位": "µm"},
                    {"属性名": "軸 肩径", "値": "{Sa:mm}", "単位": "mm"},
                    {"属性名": "ハウジング内径 最大", "値": "{Hd.max:mm}", "単位": "mm"},
                    {"属性名": "ハウジング内径 最小", "値": "{Hd.min:mm}", "単位": "mm"},
                    {"属性名": "ハウジング 表面粗さ Ra", "値": "{Hr:µm}", "単位": "µm"},
                    {"属性名": "ハウジング 円筒度", "値": "{Hc:µm}", "単位": "µm"},
                    {"@": "1", "属性名": "ラジアル荷重", "値": "{Fr:N}", "単位": "N"},
                ],
            },
        ],
    },
)
JIQI = Firm(
    language="zh",
    layout="row per machine",
    file="xlsx",
    machines="YE-132 电动机,YE-160 电动机,YE-180 电动机,YE-200 电动机,YE-225 电动机,YE-250 电动机",
    positions="轴伸端,非轴伸端",
    bearing="ball /C3;ball -2Z",
    fits="k5 k6 j6/H6 H7 J7",
    dwg="YE00-000",
    count=3,
    choices="grease=润滑脂",
    more={"sheet": "轴承配合", "merge": "1"},
    lines="""
电动机轴承档及轴承室尺寸表 | | | | | | | 单位:mm(粗糙度 Ra:μm)

^机座号 | 图号 | 版本 | 最高转速 r/min | {1.P} | | | | | | {2.P} | | | | | | ~ | ~
^ | | | | 轴承型号 | 轴承档直径 | 轴承档 Ra | 轴承室直径 | 轴承室 Ra | 径向载荷 N | 轴承型号 | 轴承档直径 | \
轴承档 Ra | \
轴承室直径 | 轴承室 Ra | 径向载荷 N | 转子质量 kg | 备注
m {mach} | {dwg} | {rev} | {nmax:r/min} | {1.bd} | φ{1.Sd.n:mm}{1.Sd.c} | {1.Sr:µm} | φ{1.Hd.n:mm}{1.Hd.c} | \
{1.Hr:µm} | \
{1.Fr:N} | {2.bd} | φ{2.Sd.n:mm}{2.Sd.c} | {2.Sr:µm} | φ{2.Hd.n:mm}{2.Hd.c} | {2.Hr:µm} | {2.Fr:N} | {mass:kg} | 带吊环

审核:技术部 | | 日期: | 2025-03-{day}
""",
)
QINGDAN = Firm(
    language="zh",
    layout="long",
    file="csv , gb18030",
    machines="离心泵 LB65-200,离心泵 LB80-250",
    positions="驱动端,非驱动端",
    bearing="ball /C3;angular B",
    fits="k5 k6 m5/H7 H6 J7",
    dwg="LB00-00-00",
    choices="grease=脂润滑;oil bath=油浴;steel=45钢;cast iron=HT200;aluminium=ZL104;locating=固定端;floating=游动端",
    more={"label": "1 2"},
    lines="""
泵转子部件参数表,,,,
编制:,陈工,日期:,2025-05-{day},
^部位,参数,数值,单位,偏差
泵,型号,{mach},,
泵,图号,{dwg},,
泵,版次,{rev},,
泵,最高转速,{nmax:r/min},r/min,
泵,轴材料,{mats},,
泵,轴承体材料,{math},,
泵,温度,{?top+tamb+thou:°C},°C,
@1 泵,转子质量,{mass:kg},kg,
[p
{P}轴承,轴承代号,{bd},,
@0 {P}轴承,支承形式,{role},,
{P}轴承,润滑方式,{lub},,
{P}轴承,径向载荷,{Fr:N},N,
{P}轴承,轴向载荷,{Fa:N},N,
{P}轴承,轴颈直径,{Sd.n:mm},mm,{Sd.u:mm}/{Sd.l:mm}
{P}轴承,轴颈粗糙度Ra,{Sr:µm},μm,
{P}轴承,轴颈圆柱度,{Sc:mm},mm,
{P}轴承,轴肩直径,{Sa:mm},mm,
{P}轴承,轴承孔直径,{Hd.n:mm},mm,{Hd.u:mm}/{Hd.l:mm}
{P}轴承,轴承孔粗糙度Ra,{Hr:µm},μm,
{P}轴承,轴承孔圆柱度,{Hc:mm},mm,
{P}轴承,轴承孔挡肩直径,{Ha:mm},mm,
]
""".replace(",", " | "),
)
ZUOJIAN = Firm(
    language="zh",
    layout="row per seat",
    file="csv , utf-8",
    machines="罗茨鼓风机 LG-40,罗茨鼓风机 LG-60",
    positions="前端,后端",
    bearing="ball;roller /C3",
    dwg="LG-0000",
    choices="grease=润滑脂;oil bath=油浴;horizontal=卧式;vertical=立式",
    lines="""
鼓风机轴承座合明细
产品 | {mach} | 图样代号 | {dwg} | 版本 | {rev}
最大转速(r/min) | {nmax:r/min} | 安装形式 | {ori}
轴承跨距(mm) | {span:mm} | 润滑 | {lub}

^序号 | 零件 | 轴承位置 | 配合轴承 | 基本尺寸(mm) | 公差带 | 上偏差(μm) | 下偏差(μm) | Ra(μm) | 圆柱度(μm) | \
径向全跳动(μm) | \
挡肩直径(mm) | 加工方法
[p
{#} | 轴 | {P} | {bd} | {Sd.n:mm} | {Sd.c} | {Sd.u:µm} | {Sd.l:µm} | {Sr:µm} | {Sc:µm} | {St:µm} | {Sa:mm} | 磨
{#} | 墙板 | {P} | {bd} | {Hd.n:mm} | {Hd.c} | {Hd.u:µm} | {Hd.l:µm} | {Hr:µm} | {Hc:µm} | {Ht:µm} | {Ha:mm} | 镗
]

^轴承位置 | 径向力(N) | 轴向力(N)
p {P} | {Fr:N} | {Fa:N}
""",
)
ODD = (POMPU, BUHIN, JIQI)
EVEN = (ICHIRAN, ZOKUSEI, QINGDAN, ZUOJIAN)
