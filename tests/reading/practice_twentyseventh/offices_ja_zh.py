"""The offices that write Japanese and Chinese."""

from practice_twentyseventh.paper import Office

#: The table of toleranced sizes on a drawing.
DRAWING = Office(
    language="ja",
    kind="feature rows",
    file="csv , cp932",
    machines=(
        "ギヤポンプ GP-10: 6203 + 6202",
        "電動自転車モータ EB-3: 6902-2RS + 6001-2RS",
        "テンションローラ TR-6: 6204-2RS",
    ),
    positions="駆動側,反駆動側",
    drawing="KZ-0000",
    words="steel=SCM440;cast iron=FC250;aluminium=ADC12;horizontal=横;vertical=縦",
    page="""
はめあい寸法公差表
品名 | {m}
図番 | {dwg} | 版 | {rev}
単位 | 寸法 mm、許容差 μm、粗さ Ra μm
@02 許容最高回転数 (min-1) | {nmax}
@1 軸材質 | {smat} | ハウジング材質 | {hmat}

# 番号 | 箇所 | 位置 | 軸受 | 基準寸法 | 公差クラス | 上の許容差 | 下の許容差 | 表面粗さ Ra | 円筒度 (μm) |\
肩部直径 (mm) | 測定具
[positions]
{#} | 軸のはめあい部 | {st} | {brg} | {ss.n} | {ss.c} | {ss.u:u} | {ss.l:u} | {sra} | {scyl:u} | {sda} | マイクロメータ
{#} | ハウジングのはめあい部 | {st} | {brg} | {hs.n} | {hs.c} | {hs.u:u} | {hs.l:u} | {hra} | {hcyl:u} | {hda} |\
{pick 三次元測定機/シリンダゲージ}
[end]

指示なき角部は C0.3
""",
)


def _box(value: str, unit: str) -> dict[str, str]:
    """A value with its unit as the Japanese configurator writes it."""
    return {"値": value, "単位": unit}


#: The JSON of a configurator: values in boxes with their units.
BOXES = Office(
    language="ja",
    kind="nested",
    file="json",
    units="attribute",
    machines=(
        "水素循環ブロワ HB-2: 6202-2Z/C3",
        "旋盤主軸 SK-50: 71908C/P4 + 6008/C3",
        "スクリューブロワ SCB-30: 6307/C3 + NU207",
    ),
    positions="前側,後側",
    drawing="CF-00000",
    words="grease=グリース;oil bath=油浴;locating=固定側;floating=自由側;spring-loaded=ばね予圧側;"
    "horizontal=横軸;vertical=立軸",
    tree={
        "作成": {"ツール": "社内コンフィギュレータ", "日付": "2025-09-11"},
        "機種名": "{m}",
        "図面番号": "{dwg}",
        "改訂": "{rev}",
        "使用条件": {
            "最高回転速度": _box("{nmax}", "min-1"), "必要寿命": _box("{life}", "h"),
            "@01 周囲温度": _box("{tamb}", "℃"),
            "@2 軸の姿勢": "{axis}", "@1 予圧力": _box("{pre}", "N"),
        },
        "軸受部": [
            "[positions]",
            {
                "位置": "{st}",
                "軸方向の役割": "{role}",
                "潤滑": "{lub}",
                "軸受": {
                    "呼び番号": "{brg}", "内径": _box("{d}", "mm"), "外径": _box("{D}", "mm"), "幅": _box("{B}", "mm"),
                    "基本動定格荷重": _box("{C:kN}", "kN"),
                },
                "荷重": {"ラジアル荷重": _box("{Fr}", "N"), "アキシアル荷重": _box("{Fa}", "N")},
                "軸": {
                    "はめあい径": _box("{ss.n}", "mm"), "公差クラス": "{ss.c}", "表面粗さRa": _box("{sra}", "μm"),
                    "円筒度": _box("{scyl:u}", "μm"), "肩の径": _box("{sda}", "mm"), "隅R最大": _box("{sfil}", "mm"),
                },
                "ハウジング": {
                    "はめあい径": _box("{hs.n}", "mm"), "公差クラス": "{hs.c}", "表面粗さRa": _box("{hra}", "μm"),
                    "円筒度": _box("{hcyl:u}", "μm"), "肩の径": _box("{hda}", "mm"), "隅R最大": _box("{hfil}", "mm"),
                },
            },
        ],
    },
)  # fmt: skip

#: A calculation sheet for the customer: the blocks of both bearings stand beside each other.
SIDE_BY_SIDE = Office(
    language="ja",
    kind="blocks",
    file="xlsx",
    sheet="計算書",
    units="column",
    machines=(
        "タービン発電機 TG-5: 7005C/P4 + 6005/C3",
        "ドローン用モータ DM-10: 698ZZ + 696ZZ",
        "撹拌機駆動部 KD-40: 6210 + NU210",
    ),
    positions="入力側軸受,出力側軸受",
    drawing="CAL-000",
    words="grease=グリース潤滑;oil bath=油浴潤滑;horizontal=横軸;vertical=立軸",
    page="""
軸受計算書（お客様提出用）
機械名 | {m} | | | 図面番号 | {dwg}
最高回転数 | {nmax} | min⁻¹ | | 回転体質量 | {mass} | kg
要求寿命 | {life} | h | | 軸受間距離 | {span} | mm
@1 周囲温度 | {tamb} | ℃ | | 取付姿勢 | {axis}

# {1.st} | < | < | | {2.st} | < | <
# 項目 | 数値 | 単位 | | 項目 | 数値 | 単位
軸受型番 | {1.brg} | | | 軸受型番 | {2.brg}
軸受内径 d | {1.d} | mm | | 軸受内径 d | {2.d} | mm
軸受外径 D | {1.D} | mm | | 軸受外径 D | {2.D} | mm
ラジアル荷重 Fr | {1.Fr} | N | | ラジアル荷重 Fr | {2.Fr} | N
アキシアル荷重 Fa | {1.Fa} | N | | アキシアル荷重 Fa | {2.Fa} | N
潤滑方法 | {1.lub} | | | 潤滑方法 | {2.lub}
軸径 | {1.ss.n} {1.ss.c} | mm | | 軸径 | {2.ss.n} {2.ss.c} | mm
軸の円筒度 | {1.scyl:,4} | mm | | 軸の円筒度 | {2.scyl:,4} | mm
軸の表面粗さ Ra | {1.sra} | μm | | 軸の表面粗さ Ra | {2.sra} | μm
軸の肩径 | {1.sda} | mm | | 軸の肩径 | {2.sda} | mm
ハウジング内径 | {1.hs.n} {1.hs.c} | mm | | ハウジング内径 | {2.hs.n} {2.hs.c} | mm
ハウジングの円筒度 | {1.hcyl:,4} | mm | | ハウジングの円筒度 | {2.hcyl:,4} | mm
ハウジングの表面粗さ Ra | {1.hra} | μm | | ハウジングの表面粗さ Ra | {2.hra} | μm
ハウジングの肩径 | {1.hda} | mm | | ハウジングの肩径 | {2.hda} | mm

作成 {pick 技術部 佐田/技術部 森下}
""",
)

#: An extraction with field names and readable ones: a row for each seat.
SEATS = Office(
    language="zh",
    kind="seat rows",
    file="csv , gb18030",
    machines=(
        "螺杆风机 LG-37: 6307/C3 + NU207",
        "齿轮泵 CB-16: 6203-2Z + 6202-2Z",
        "搅拌驱动 JB-22: 6212/C3 + 6210/C3",
    ),
    positions="驱动端,非驱动端",
    drawing="ZP000000",
    page="""
# MATNR | VER | MODEL | BRG_POS | BRG_NO | FEATURE | DIM_NOM | TOL_CLS | DEV_UP | DEV_LOW | RA | CYL | TRUNOUT |\
SHOULDER | WERKS
# 图号 | 版本 | 机型 | 轴承位置 | 轴承型号 | 配合部位 | 公称直径(mm) | 公差带 | 上偏差(mm) | 下偏差(mm) |\
粗糙度Ra(μm) | 圆柱度(mm) | 全跳动(mm) | 挡肩直径(mm) | 工厂
[positions]
{dwg} | {rev} | {m} | {st} | {brg} | 轴颈 | {ss.n} | {ss.c} | {ss.u} | {ss.l} | {sra} | {scyl:,4} | {srun:,4} |\
{sda} | 1100
{dwg} | {rev} | {m} | {st} | {brg} | 轴承座孔 | {hs.n} | {hs.c} | {hs.u} | {hs.l} | {hra} | {hcyl:,4} | {hrun:,4} |\
{hda} | 1100
[end]
""",
)

#: A designer's own sheet: merged headings in two rows, an empty column between the parts.
MERGED = Office(
    language="zh",
    kind="two-row headings",
    file="xlsx",
    sheet="轴承配合",
    machines=(
        "高速车床主轴 GS-40: 71908C/P4 + 6008/C3",
        "氢气循环风机 QX-3: 6202-2Z/C3 + 6201-2Z/C3",
        "永磁发电机 YF-55: 6309/C3 + NU209",
    ),
    positions="前轴承,后轴承",
    drawing="SJ-0000",
    words="grease=脂润滑;oil bath=油浴润滑;locating=固定;floating=游动;spring-loaded=弹簧预紧",
    page="""
轴承配合设计表 | | | | 设计：{pick 陈工/李工}
产品名称 | {m} | | 图号 | {dwg} | | 版本 | {rev}
最高转速 | {nmax} | r/min | 要求寿命 | {life} | h
@01 转子质量 | {mass} | kg | 轴承跨距 | {span} | mm

# 位置 | 轴承 | < | < | < | | 轴 | < | < | < | < | < | | 轴承座孔 | < | < | < | < | < | | 备注
# ^ | 型号 | 轴向定位 | 径向载荷 (N) | 润滑方式 | | 直径 (mm) | 公差 | Ra (μm) | 圆柱度 (μm) | 轴肩直径 (mm) |\
最大圆角 (mm) | | 直径 (mm) | 公差 |\
Ra (μm) | 圆柱度 (μm) | 孔肩直径 (mm) | 最大圆角 (mm) | | ^
[positions]
{st} | {brg} | {role} | {Fr} | {lub} | | {ss.n} | {ss.c} | {sra} | {scyl:u} | {sda} | {sfil} | | {hs.n} | {hs.c} |\
{hra} | {hcyl:u} | {hda} | {hfil} | | {pick 与工艺确认/样机已试}
[end]
""",
)
ODD = (DRAWING, BOXES, SEATS)
EVEN = (SIDE_BY_SIDE, MERGED)
