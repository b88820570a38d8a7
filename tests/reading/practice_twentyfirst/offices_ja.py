# ruff: noqa: E501 - a line of a picture is a line of the table
"""Offices that write Japanese."""

from practice_twentyfirst.marks import Office

LIST_JA = Office(
    language="ja", layout="long", file="csv , cp932", machines="集塵ファン DF-20,供給ポンプ FP-5", positions="駆動側,反駆動側",
    bearing="ball ZZ;ball -2RS", number="K00-0000", left=True, fits="",
    choices="grease=グリース;steel=S45C;cast iron=FC250;aluminium=ADC12;horizontal=横型;vertical=縦型",
    picture="""
回転機械 設計パラメータ一覧
作成日 | 2025/05/{day}

^項番 | 区分 | 項目名 | 設計値 | 公差等級 | 単位 | 備考
{#} | 全体 | 機械名称 | {ma} | | |
{#} | 全体 | 図面番号 | {dn} | | |
{#} | 全体 | 最高回転速度 | {nx} | | min-1 |
{#} | 全体 | 要求寿命 | {li} | | h |
{#} | 全体 | 軸の姿勢 | {or} | | |
{#} | 全体 | 軸の材質 | {ms} | | |
{#} | 全体 | ハウジングの材質 | {mh} | | |
%each
{#} | {st} | 軸受の呼び番号 | {bd} | | |
{#} | {st} | ラジアル荷重 | {fr} | | N |
{#} | {st} | アキシアル荷重 | {fa} | | N |
{#} | {st} | 潤滑 | {lu} | | |
{#} | {st} | グリース補給間隔 | {gi} | | h |
{#} | {st} | 軸はめあい部の直径 | {sd=n} | {sd=c} | mm | 研削
{#} | {st} | 軸はめあい部の粗さ Ra | {sa} | | μm |
{#} | {st} | 軸はめあい部の円筒度 | {sc~um} | | μm |
{#} | {st} | 軸肩の直径 | {ss} | | mm |
{#} | {st} | ハウジング穴の直径 | {hd=n} | {hd=c} | mm |
{#} | {st} | ハウジング穴の粗さ Ra | {ha} | | μm |
{#} | {st} | ハウジング穴の円筒度 | {hc~um} | | μm |
{#} | {st} | ハウジング肩の直径 | {hs} | | mm |
%end
""",
)  # fmt: skip
TURNED_JA = Office(
    language="ja", layout="transposed", left=True, file="xlsx", sheet="軸受部", machines="高速撹拌機 HM-3,ロールスピンドル RS-8", positions="前部,後部",
    bearing="angular C P5;ball ZZ C3", number="HM-00-00", fits="h5 js5 k5/H6 JS6 K6", choices="grease=グリース潤滑;locating=固定;floating=自由",
    picture="""
主軸軸受部 仕様表
製品名 | {ma} | 図番 | {dn} | 版 | {rv}
最高回転数 | {nx} | min-1 | 設計寿命 | {li} | h

^仕様項目 | 単位 | <<{st}軸受>> | 摘要
軸受型番 | - | <<{bd}>> | 購入品
軸方向の役割 | - | <<{ax}>> |
内径 d | mm | <<{d}>> |
外径 D | mm | <<{D}>> |
幅 B | mm | <<{B}>> |
基本動定格荷重 Cr | kN | <<{C~kN}>> | カタログ値
ラジアル荷重 Fr | N | <<{fr}>> |
アキシアル荷重 Fa | N | <<{fa}>> |
潤滑方法 | - | <<{lu}>> |
ナット締付トルク | N·m | <<{nt}>> |
軸径 | mm | <<{sd=n c}>> |
軸の寸法許容差 上 | μm | <<{sd~mm/µm=u}>> |
軸の寸法許容差 下 | μm | <<{sd~mm/µm=l}>> |
軸の表面粗さ Ra | μm | <<{sa}>> |
軸の肩径 | mm | <<{ss}>> |
ハウジング内径 | mm | <<{hd=n c}>> |
ハウジングの寸法許容差 上 | μm | <<{hd~mm/µm=u}>> |
ハウジングの寸法許容差 下 | μm | <<{hd~mm/µm=l}>> |
ハウジングの表面粗さ Ra | μm | <<{ha}>> |
ハウジングの肩径 | mm | <<{hs}>> |
""",
)  # fmt: skip
SEATS_JA = Office(
    language="ja", layout="row per seat", file="csv , utf-8-sig", machines="チラーポンプ CP-12,繊維巻取機 TW-6", positions="A側,B側",
    bearing="ball;ball ZZ/C3", number="B000000", fits="",
    picture="""
軸受座 寸法管理表
機械 | {ma}
図面 | {dn} | 改訂記号 | {rv}
最高使用回転数 [rpm] | {nx}

^軸受位置 | 座の種類 | 軸受 | 基準寸法 [mm] | 公差記号 | 最大許容寸法 [mm] | 最小許容寸法 [mm] | Ra [μm] | 円筒度 [mm] | 全振れ [mm] | 肩部直径 [mm] | 測定器
%each
%sides s=軸 h=ハウジング
{st} | $$ | {bd} | {*d=n} | {*d=c} | {*d=M} | {*d=m} | {*a} | {*c} | {*r} | {*s} | {pick=マイクロメータ;シリンダゲージ;三次元}
%end
%end
""",
)  # fmt: skip
PAIRS_JA = Office(
    language="ja", layout="row per position, two-row headings", file="xlsx", sheet="はめあい", machines="小型遠心機 SC-1,換気扇モータ VM-25",
    positions="1,2", bearing="small ZZ;small -2RS", number="S0-00000", fits="", choices="grease=グリース;locating=固定側;floating=自由側",
    picture="""
軸受はめあい一覧 | | | | 機種: | {ma} | | 図番: | {dn}
最高回転数 (rpm): | {nx} | | ロータ質量 (kg): | {rm}

^軸受 | | | | 軸側 | | | | ハウジング側 | | | | .
^No. | 型番 | 役割 | 潤滑剤 | 直径 (mm) | 許容差 (μm) | Ra (μm) | 肩径 (mm) | 直径 (mm) | 許容差 (μm) | Ra (μm) | 肩径 (mm) | 承認
%each
軸受{st} | {bd} | {ax} | {lu} | {sd~mm/µm=n c} | {sd~mm/µm=u/l} | {sa} | {ss} | {hd~mm/µm=n c} | {hd~mm/µm=u/l} | {ha} | {hs} | 済
%end
""",
)  # fmt: skip
ODD = (LIST_JA, TURNED_JA)
EVEN = (SEATS_JA, PAIRS_JA)
