"""Units as tables spell them, as data: spellings, factors, and the canonical units of the vocabulary.

Factors: SI Brochure 9th ed. and ISO 80000; inch, pound-force and kilogram-force by their exact definitions
(0.0254 m; 0.45359237 kg; 9.80665 m/s2).
"""

import math

_G = 9.80665
_LB = 0.45359237
_DEGREE = math.pi / 180

# dimension -> (unit, factor to the first unit, spellings). Temperatures have offsets of their own below.
TABLE: dict[str, tuple[tuple[str, float, str], ...]] = {
    "length": (
        ("mm", 1.0, "mm MM mm. мм millimeter millimeters millimetre millimetres Millimeter millimètre millimètres "
         "milímetro milímetros millimetro millimetri миллиметр миллиметры "
         "миллиметрах ミリ ミリメートル 毫米"),
        ("um", 1e-3, "um µm UM µ mu µm. micron microns MICRON MICRONS Micron Microns micrometer micrometers micrometre "
         "micrometres Mikrometer micromètre micromètres micrómetros micras micrones micrometri micrometro мкм микрон "
         "микроны микронах микрометр микрометры микрометрах 微米 ミクロン マイクロメートル"),
        ("nm", 1e-6, "nm"),
        ("cm", 10.0, "cm CM см"),
        ("dm", 100.0, "dm"),
        ("m", 1000.0, "m м meter metre"),
        ("in", 25.4, 'in in. IN inch inches Inch INCH INCHES Zoll pouce pouces pulgada pulgadas pollice pollici дюйм '
         '" \'\' インチ 英寸'),
        ("thou", 0.0254, "thou mil mils"),
        ("uin", 25.4e-6, "uin UIN µin µin. µIN microinch microinches MICROINCH MICROINCHES Microinches"),
        ("ft", 304.8, "ft ft. foot feet '"),
    ),
    "force": (
        ("N", 1.0, "N Newton newton newtons Н 牛 ニュートン"),
        ("mN", 1e-3, "mN"),
        ("kN", 1e3, "kN KN кН"),
        ("kgf", _G, "kgf KGF kp кгс"),
        ("gf", _G / 1000, "gf"),
        ("daN", 10.0, "daN даН"),
        ("dN", 0.1, "dN"),
        ("cN", 1e-2, "cN"),
        ("MN", 1e6, "MN МН"),
        ("lbf", _LB * _G, "lbf LBF Lbf lbforce lbs.f"),
        ("ozf", _LB * _G / 16, "ozf"),
    ),
    "rotational speed": (
        ("r/min", 1.0, "r/min R/min R/MIN rpm RPM Rpm r.p.m. rpm. rev/min revs/min 1/min min-1 1.min-1 /min "
         "U/min U/Min Umdr/min Umdr./min tr/min tr/mn giri/min об/мин "
         "мин-1 1/мин 转/分 转/分钟 r/分 rev/分 回転/分 1/分 min^(-1) r.min-1 rad.r/min"),
        ("kr/min", 1e3, "krpm kr/min kmin-1"),
        ("r/s", 60.0, "r/s rev/s rps 1/s s-1 Hz об/с с-1"),
        ("kHz", 60e3, "kHz"),
        ("rad/s", 30 / math.pi, "rad/s rad.s-1 рад/с"),
        ("deg/s", 1 / 6, "deg/s °/s"),
    ),
    "pressure": (
        ("MPa", 1.0, "MPa MPA N/mm2 N.mm-2 МПа Н/мм2 MN/m2"),
        ("Pa", 1e-6, "Pa N/m2"),
        ("kPa", 1e-3, "kPa"),
        ("GPa", 1e3, "GPa kN/mm2 ГПа"),
        ("bar", 0.1, "bar"),
        ("kgf/mm2", _G, "kgf/mm2 kp/mm2"),
        ("kgf/cm2", _G / 100, "kgf/cm2 kp/cm2"),
        ("psi", _LB * _G / 25.4**2, "psi PSI lbf/in2"),
        ("ksi", _LB * _G / 25.4**2 * 1000, "ksi"),
    ),
    "kinematic viscosity": (
        ("mm2/s", 1.0, "mm2/s mm2.s-1 cSt cst CST мм2/с сСт"),
        ("m2/s", 1e6, "m2/s"),
        ("cm2/s", 100.0, "cm2/s St"),
    ),
    "angle": (
        ("deg", 1.0, "deg DEG deg. degree degrees ° Grad degré degrés grado grados gradi градус градусы град 度"),
        ("rad", 1 / _DEGREE, "rad radian radians рад"),
        ("mrad", 1e-3 / _DEGREE, "mrad"),
        ("arcmin", 1 / 60, "arcmin"),
        ("arcsec", 1 / 3600, "arcsec"),
        ("gon", 0.9, "gon grad"),
    ),
    "mass": (
        ("kg", 1.0, "kg KG Kg кг 千克 公斤 キログラム"),
        ("g", 1e-3, "g г 克"),
        ("mg", 1e-6, "mg"),
        ("t", 1e3, "t"),
        ("lb", _LB, "lb lbs lb. lbm LBS"),
        ("oz", _LB / 16, "oz"),
    ),
    "unbalance": (
        ("g.mm", 1.0, "g.mm gmm g-mm mm.g г.мм"),
        ("kg.mm", 1e3, "kg.mm kgmm kg-mm g.m"),
        ("mg.mm", 1e-3, "mg.mm mgmm"),
        ("g.cm", 10.0, "g.cm gcm g-cm"),
        ("oz.in", _LB / 16 * 1e3 * 25.4, "oz.in oz-in ozin"),
    ),
    "time": (
        ("h", 1.0, "h hr hrs hour hours Std Std. Stunden Stunde "
         "heure heures hora horas ora ore ч час часов 時間 小时"),
        ("min", 1 / 60, "min min. mins minute minutes Minute Minuten minuto minutos "
         "minuti мин мин. минут 分 分钟 分間 分鐘"),
        ("s", 1 / 3600, "s sec sec. seconds Sek Sek. Sekunden secondes segundos secondi сек сек. секунд 秒 秒間 秒钟"),
        ("d", 24.0, "d day days"),
    ),
    "velocity": (
        ("mm/s", 1.0, "mm/s mm.s-1 мм/с"),
        ("m/s", 1e3, "m/s"),
        ("in/s", 25.4, "in/s ips"),
    ),
    "stiffness": (
        ("N/mm", 1.0, "N/mm N.mm-1 Н/мм kN/m"),
        ("N/um", 1e3, "N/um N/µm kN/mm"),
        ("N/m", 1e-3, "N/m"),
        ("daN/mm", 10.0, "daN/mm"),
        ("kgf/mm", _G, "kgf/mm kp/mm"),
        ("lbf/in", _LB * _G / 25.4, "lbf/in lb/in lbs/in"),
    ),
    "torque": (
        ("N.m", 1.0, "N.m Nm N-m Н.м"),
        ("N.mm", 1e-3, "N.mm Nmm N-mm Н.мм"),
        ("N.cm", 1e-2, "N.cm Ncm N-cm"),
        ("daN.m", 10.0, "daN.m daNm daN-m"),
        ("kgf.m", _G, "kgf.m kgfm kgf-m kp.m kpm"),
        ("lbf.in", _LB * _G * 0.0254, "lbf.in lbf-in in.lbf in.lb in-lb lb.in lb-in"),
        ("lbf.ft", _LB * _G * 0.3048, "lbf.ft lbf-ft ft.lbf ft.lb ft-lb lb.ft lb-ft"),
    ),
    "area": (
        ("mm2", 1.0, "mm2 мм2 sq.mm"),
        ("cm2", 100.0, "cm2 см2 sq.cm"),
        ("dm2", 1e4, "dm2 дм2"),
        ("m2", 1e6, "m2 м2"),
        ("in2", 25.4**2, "in2 sq.in"),
    ),
    "power": (
        ("W", 1.0, "W Watt watt watts Вт"),
        ("mW", 1e-3, "mW мВт"),
        ("kW", 1e3, "kW кВт"),
    ),
    "thermal conductance": (
        ("W/K", 1.0, "W/K W.K-1 Вт/К W/°C W/degC"),
        ("mW/K", 1e-3, "mW/K"),
    ),
    "heat capacity": (
        ("J/K", 1.0, "J/K J.K-1 Дж/К J/°C J/degC"),
        ("kJ/K", 1e3, "kJ/K"),
    ),
    "ratio": (
        ("1", 1.0, "1 - -- --- ul unitless none dimensionless ohne sans"),
        ("%", 0.01, "% percent pct Prozent процент"),
    ),
}  # fmt: skip

# degrees Celsius = value * factor + offset
TEMPERATURES: tuple[tuple[str, float, float, str], ...] = (
    ("degC", 1.0, 0.0, "°C degC deg.C ° degreeC degreesC celsius Celsius C Cel градC"),
    ("K", 1.0, -273.15, "K kelvin Kelvin degK"),
    ("degF", 5 / 9, -160 / 9, "°F degF deg.F fahrenheit Fahrenheit F"),
)
ANGLE_SIGNS = {"'": ("arcmin", 1 / 60), "''": ("arcsec", 1 / 3600), '"': ("arcsec", 1 / 3600)}

CANONICAL: dict[str, tuple[str, float, str]] = {
    # canonical unit: dimension, factor of that unit to the dimension's first unit, the same for pint
    "mm": ("length", 1.0, "millimeter"),
    "um": ("length", 1e-3, "micrometer"),
    "N": ("force", 1.0, "newton"),
    "r/min": ("rotational speed", 1.0, "revolution / minute"),
    "MPa": ("pressure", 1.0, "megapascal"),
    "degC": ("temperature", 1.0, "degree_Celsius"),
    "mm2/s": ("kinematic viscosity", 1.0, "millimeter ** 2 / second"),
    "deg": ("angle", 1.0, "degree"),
    "kg": ("mass", 1.0, "kilogram"),
    "g.mm": ("unbalance", 1.0, "gram * millimeter"),
    "h": ("time", 1.0, "hour"),
    "s": ("time", 1 / 3600, "second"),
    "mm/s": ("velocity", 1.0, "millimeter / second"),
    "m/s": ("velocity", 1e3, "meter / second"),
    "mm2": ("area", 1.0, "millimeter ** 2"),
    "N.m": ("torque", 1.0, "newton * meter"),
    "W": ("power", 1.0, "watt"),
    "W/K": ("thermal conductance", 1.0, "watt / kelvin"),
    "J/K": ("heat capacity", 1.0, "joule / kelvin"),
    "N/mm": ("stiffness", 1.0, "newton / millimeter"),
    "1": ("ratio", 1.0, "dimensionless"),
    "%": ("ratio", 0.01, "dimensionless"),
}
