"""The offices that write Chinese: a fan works, a motor works, a spindle maker, a pump design office."""

from practice_twentyfourth.office import Office

SEATS = Office(
    language="zh",
    layout="seat rows",
    file="csv , gb18030",
    machines="罗茨鼓风机 LR-80,离心通风机 LT-450",
    positions="驱动端,非驱动端",
    bearings="NU208+6208/C3;6307-2Z/C3+6306-2Z/C3",
    fits="k5 m5 k6/H7 J7 K6",
    dwg="LR00-000",
    choices="grease=润滑脂;oil bath=油浴",
    template="""
轴承配合面检验卡
机型 | {machine} | 图号 | {dwg} | 版本 | {rev}
最高转速(r/min) | {nmax} | 转子质量(kg) | {mass}
要求寿命L10h(h) | {life} | 环境温度(℃) | {amb}

# 序号 | 零件 | 位置 | 轴承型号 | 公称尺寸(mm) | 公差带代号 | 上极限偏差(mm) | 下极限偏差(mm) | 表面粗糙度Ra(μm) \
| 圆柱度公差(mm) | 径向全跳动(mm) | 台肩直径(mm) | 检验结论
for p:
{#} | 轴 | {p} | {bd} | {sd.n} | {sd.c} | {sd.u} | {sd.l} | {sra} | {scy.n:mm.3} | {sru.n:mm.3} | {ssh} | 合格
{#} | 轴承座 | {p} | {bd} | {hd.n} | {hd.c} | {hd.u} | {hd.l} | {hra} | {hcy.n:mm.3} | {hru.n:mm.3} | {hsh} | 合格
end

检验员: | | 日期: | 2025-01-{day}
""",
)
ACROSS = Office(
    language="zh",
    layout="transposed",
    file="xlsx",
    machines="高速电机 GD-45,变频电机 BP-110",
    positions="前端,后端",
    bearings="6206-2Z/C3+6205-2Z/C3;6310-2Z/C3+6309-2Z/C3",
    fits="k5 j5 m5 k6/H6 H7 J6",
    dwg="GD.000.000",
    sheet="轴承参数",
    choices="grease=润滑脂;oil bath=油浴润滑;steel=45钢;stainless steel=2Cr13;cast iron=HT200;"
    "housing_material.steel=Q235;aluminium=ZL101;horizontal=卧式;vertical=立式;locating=固定;floating=游动",
    template="""
电机轴承室参数表 | < | < | < | <
型号 | {machine} | | 图样编号 | {dwg}
最高工作转速(r/min) | {nmax} | | 安装形式(轴) | {ori}
轴材料 | {smat} | | 端盖材料 | {hmat}

# 类别 | 项目 | p< {p} >p | 单位 | 说明
轴承 | 型号 | p< {bd} >p
^ | 轴向定位 | p< {role} >p
^ | 润滑 | p< {lub} >p
^ | 径向载荷 | p< {fr} >p | N
轴 | 轴承档直径 | p< φ{sd.n}{sd.c}({sd.u}/{sd.l}) >p | mm | 磨削
^ | 轴承档粗糙度Ra | p< {sra} >p | μm
^ | 轴承档圆柱度 | p< {scy:µm} >p | μm
^ | 轴肩直径 | p< {ssh} >p | mm
端盖 | 轴承室直径 | p< φ{hd.n}{hd.c}({hd.u}/{hd.l}) >p | mm | 镗削
^ | 轴承室粗糙度Ra | p< {hra} >p | μm
^ | 轴承室圆柱度 | p< {hcy:µm} >p | μm
@1 ^ | 轴承室挡肩直径 | p< {hsh} >p | mm
--

编制: | 电机室 | 审核: |
""",
)
TREE = Office(
    language="zh",
    layout="json nested, boxed values",
    file="json",
    machines="电主轴 DZ-24,内圆磨主轴 NM-60",
    positions="刀具端,电机端",
    bearings="7009 C/P4+7007 C/P4;71907 C/P4+71906 C/P4",
    fits="js5 k4 h5/JS6 H6 JS5",
    dwg="DZ00-00",
    texts=True,
    choices="grease=油脂润滑;oil bath=油浴润滑;spring=弹簧;none=无",
    template="""
{"数据来源": "零件库", "主轴": {"型号": "{machine}", "图号": "{dwg}", "最高转速": {"值": "{nmax}", "单位": "r/min"},
  "预紧力": {"值": "{pf}", "单位": "N"}, "轴承跨距": {"值": "{span}", "单位": "mm"}},
 "轴承位": [{"@p": {"位置": "{p}",
  "轴承": {"型号": "{bd}", "接触角": {"值": "{ca}", "单位": "°"}, "润滑": "{lub}",
   "径向载荷": {"值": "{fr}", "单位": "N"},
   "轴向载荷": {"值": "{fa}", "单位": "N"}, "@1 极限转速": {"值": "{nlim}", "单位": "r/min"}},
  "轴颈": {"直径": {"值": "{sd.n}", "公差": "{sd.c}", "单位": "mm"}, "粗糙度Ra": {"值": "{sra}", "单位": "μm"},
   "圆柱度": {"值": "{scy}", "单位": "mm"}, "轴肩端面跳动": {"值": "{ssr}", "单位": "mm"}},
  "座孔": {"直径": {"值": "{hd.n}", "公差": "{hd.c}", "单位": "mm"}, "粗糙度Ra": {"值": "{hra}", "单位": "μm"},
   "圆柱度": {"值": "{hcy}", "单位": "mm"}, "孔肩端面跳动": {"值": "{hsr}", "单位": "mm"}}}}]}
""",
)
LIST = Office(
    language="zh",
    layout="long list",
    file="txt tab utf-16",
    machines="屏蔽泵 PB-25,磁力泵 CB-32,屏蔽泵 PB-40,磁力泵 CB-50",
    positions="泵侧,电机侧",
    bearings="6305+6304;6206-2RS+6205-2RS",
    fits="k5 j6 m5/H7 H6 J7",
    dwg="PB-0-000",
    count=2,
    choices="grease=润滑脂;oil bath=浸油;cast iron=灰铸铁;housing_material.steel=碳钢;aluminium=铝合金",
    template="""
参数导出清单
# 产品 | 部位 | 参数名称 | 数值 | 单位 | 最后修改
for m:
{machine} | 整机 | 图号 | {dwg} | | 2025-03-{day}
{machine} | 整机 | 最高转速 | {nmax} | r/min | 2025-03-{day}
@0 {machine} | 整机 | 壳体材料 | {hmat} | | 2025-03-{day}
for p:
{machine} | {p} | 轴承型号 | {bd} | | 2025-03-{day}
{machine} | {p} | 润滑方式 | {lub} | | 2025-03-{day}
{machine} | {p} | 径向力 | {fr} | N | 2025-03-{day}
{machine} | {p} | 轴配合直径 | {sd.n}({sd.u}/{sd.l}) | mm | 2025-03-{day}
@1 {machine} | {p} | 表面粗糙度Ra | {?sra+hra} | μm | 2025-03-{day}
@0 {machine} | {p} | 轴配合面粗糙度Ra | {sra} | μm | 2025-03-{day}
{machine} | {p} | 轴向力 | {fa} | N | 2025-03-{day}
{machine} | {p} | 轴配合面圆柱度 | {scy} | mm | 2025-03-{day}
{machine} | {p} | 壳体孔配合直径 | {hd.n}({hd.u}/{hd.l}) | mm | 2025-03-{day}
@0 {machine} | {p} | 壳体孔粗糙度Ra | {hra} | μm | 2025-03-{day}
{machine} | {p} | 壳体孔圆柱度 | {hcy} | mm | 2025-03-{day}
end
end
""",
)
ODD = (SEATS, TREE)
EVEN = (ACROSS, LIST)
