"""What is known of the trade: rings, deviations, machines, names of positions.

Sizes from memory of ISO 15 and ISO 582, load ratings about as makers print them, deviations from memory of ISO 286-1.
"""

#: Designation, d, D, B, r_s min in mm; C and C0 in kN (about).
BALL = (
    ("6000", 10, 26, 8, 0.3, 4.75, 1.96), ("6001", 12, 28, 8, 0.3, 5.4, 2.36), ("6002", 15, 32, 9, 0.3, 5.85, 2.85),
    ("6003", 17, 35, 10, 0.3, 6.37, 3.25), ("6004", 20, 42, 12, 0.6, 9.95, 5.0), ("6005", 25, 47, 12, 0.6, 11.9, 6.55),
    ("6006", 30, 55, 13, 1, 13.8, 8.3), ("6007", 35, 62, 14, 1, 16.8, 10.2), ("6008", 40, 68, 15, 1, 17.8, 11),
    ("6200", 10, 30, 9, 0.6, 5.4, 2.36), ("6201", 12, 32, 10, 0.6, 7.28, 3.1), ("6202", 15, 35, 11, 0.6, 8.06, 3.75),
    ("6203", 17, 40, 12, 0.6, 9.95, 4.75), ("6204", 20, 47, 14, 1, 13.5, 6.55), ("6205", 25, 52, 15, 1, 14.8, 7.8),
    ("6206", 30, 62, 16, 1, 20.3, 11.2), ("6207", 35, 72, 17, 1.1, 27, 15.3), ("6208", 40, 80, 18, 1.1, 32.5, 19),
    ("6209", 45, 85, 19, 1.1, 35.1, 21.6), ("6210", 50, 90, 20, 1.1, 37.1, 23.2), ("6303", 17, 47, 14, 1, 14.3, 6.55),
    ("6304", 20, 52, 15, 1.1, 16.8, 7.8), ("6305", 25, 62, 17, 1.1, 23.4, 11.6), ("6306", 30, 72, 19, 1.1, 29.6, 16),
)  # fmt: skip
ANGULAR = (
    ("7204", 20, 47, 14, 1, 14.3, 8.15), ("7205", 25, 52, 15, 1, 15.6, 10), ("7206", 30, 62, 16, 1, 24, 15.6),
    ("7207", 35, 72, 17, 1.1, 30.7, 20.8), ("7004", 20, 42, 12, 0.6, 13.3, 7.65), ("7005", 25, 47, 12, 0.6, 14.6, 9.15),
    ("7006", 30, 55, 13, 1, 19, 12.9), ("7008", 40, 68, 15, 1, 25.1, 18.3),
)  # fmt: skip
ROLLER = (
    ("NU204", 20, 47, 14, 1, 25.1, 22), ("NU205", 25, 52, 15, 1, 28.6, 27), ("NU206", 30, 62, 16, 1, 44, 36.5),
    ("NU208", 40, 80, 18, 1.1, 62, 53),
)  # fmt: skip
#: The R series in inches.
INCH = (
    ("R6", 0.375, 0.875, 0.2812, 0.016, 3.3, 1.4), ("R8", 0.5, 1.125, 0.3125, 0.016, 5.1, 2.4),
    ("R10", 0.625, 1.375, 0.3438, 0.031, 6.0, 3.25), ("R12", 0.75, 1.625, 0.4375, 0.031, 10.1, 5.9),
    ("R16", 1.0, 2.0, 0.5, 0.031, 10.1, 5.85),
)  # fmt: skip
#: Ends of the size ranges, and lower and upper deviation in µm.
SHAFT_STEPS = (10, 18, 30, 50)
SHAFT = {
    "g6": ((-14, -5), (-17, -6), (-20, -7), (-25, -9)),
    "h5": ((-6, 0), (-8, 0), (-9, 0), (-11, 0)),
    "h6": ((-9, 0), (-11, 0), (-13, 0), (-16, 0)),
    "js5": ((-3, 3), (-4, 4), (-4.5, 4.5), (-5.5, 5.5)),
    "js6": ((-4.5, 4.5), (-5.5, 5.5), (-6.5, 6.5), (-8, 8)),
    "j5": ((-2, 4), (-3, 5), (-4, 5), (-5, 6)),
    "j6": ((-2, 7), (-3, 8), (-4, 9), (-5, 11)),
    "k5": ((1, 7), (1, 9), (2, 11), (2, 13)),
    "k6": ((1, 10), (1, 12), (2, 15), (2, 18)),
    "m5": ((6, 12), (7, 15), (8, 17), (9, 20)),
    "m6": ((6, 15), (7, 18), (8, 21), (9, 25)),
}
HOUSING_STEPS = (30, 50, 80, 120)
HOUSING = {
    "G6": ((7, 20), (9, 25), (10, 29), (12, 34)),
    "G7": ((7, 28), (9, 34), (10, 40), (12, 47)),
    "H5": ((0, 9), (0, 11), (0, 13), (0, 15)),
    "H6": ((0, 13), (0, 16), (0, 19), (0, 22)),
    "H7": ((0, 21), (0, 25), (0, 30), (0, 35)),
    "J6": ((-5, 8), (-6, 10), (-6, 13), (-6, 16)),
    "J7": ((-9, 12), (-11, 14), (-12, 18), (-13, 22)),
    "JS6": ((-6.5, 6.5), (-8, 8), (-9.5, 9.5), (-11, 11)),
    "K6": ((-11, 2), (-13, 3), (-15, 4), (-18, 4)),
    "K7": ((-15, 6), (-18, 7), (-21, 9), (-25, 10)),
}


def deviations(tolerance_class: str, nominal: float) -> tuple[float, float]:
    """Lower and upper deviation in mm of a class at a size."""
    steps, table = (SHAFT_STEPS, SHAFT) if tolerance_class in SHAFT else (HOUSING_STEPS, HOUSING)
    lower, upper = table[tolerance_class][next(k for k, step in enumerate(steps) if nominal <= step)]
    return lower / 1000, upper / 1000


MACHINES = {
    "en": "Side channel blower SK-12|Coolant pump CP-80|Servo motor SM-63|Grinding spindle GS-20|Angle gearbox AG-3|"
    "Roof fan RF-400|Turbo blower TB-9|Screw feeder SF-2|Vacuum booster VB-150|Traction motor TM-7",
    "de": "Seitenkanalverdichter SV 40|Kreiselpumpe KP 65|Servomotor SM 71|Frässpindel FS 24|Stirnradgetriebe SG 2|"
    "Radialventilator RV 315|Turbogebläse TG 8|Rührwerk RW 5|Schleifspindel SL 30|Kühlmittelpumpe KM 12",
    "fr": "Ventilateur VC 250|Pompe centrifuge PC 40|Moteur asynchrone MA 90|Broche de rectification BR 15|"
    "Réducteur R 3",
    "it": "Soffiante SC 22|Pompa centrifuga PC 50|Motore elettrico ME 80|Elettromandrino EM 24|Riduttore RC 4",
    "es": "Soplante SL 18|Bomba centrífuga BC 32|Motor eléctrico ME 71|Husillo HR 20|Ventilador VT 400",
    "ru": "Вентилятор ВР-280|Насос К-65|Электродвигатель АД-90|Шпиндель ШС-24|Редуктор РЦ-3",
    "zh": "离心风机 LF-40|水泵 SB-65|伺服电机 DJ-80|电主轴 DZ-24|减速机 JS-3|鼓风机 GF-9",
    "ja": "送風機 BL-20|渦巻ポンプ CP-50|サーボモータ SM-80|研削スピンドル GS-24|減速機 GR-3|ターボブロワ TB-7",
}
#: Names of two positions; those that say what the position does axially come last in a language.
POSITIONS = {
    "en": "DE,NDE|Drive end,Non-drive end|A,B|Front,Rear|Brg 1,Brg 2|Impeller end,Coupling end|Wheel side,Free side",
    "de": "AS,BS|A-Seite,B-Seite|Lager A,Lager B|vorn,hinten|Lagerstelle 1,Lagerstelle 2|Laufradseite,Motorseite|"
    "Festlager,Loslager",
    "fr": "Côté commande,Côté opposé|CA,COA|Palier avant,Palier arrière|Palier 1,Palier 2",
    "it": "Lato comando,Lato opposto|LA,LOA|anteriore,posteriore|Supporto A,Supporto B",
    "es": "Lado acople,Lado libre|LA,LOA|delantero,trasero|Apoyo 1,Apoyo 2",
    "ru": "Опора А,Опора Б|Приводная сторона,Противоположная сторона|передняя,задняя|Опора 1,Опора 2",
    "zh": "驱动端,非驱动端|前端,后端|A端,B端|1号轴承,2号轴承",
    "ja": "負荷側,反負荷側|駆動側,反駆動側|前側,後側|A側,B側",
}
ROLES = {"Festlager": "locating", "Loslager": "floating"}
