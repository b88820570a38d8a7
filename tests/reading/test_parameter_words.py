"""Usual words of the parameters that most tables state, in eight languages (trade usage)."""

import pytest

from linter.reading.words.names import Names

WORDS = {
    "bore_diameter": "Bohrung|Bohrung d|Lagerbohrung|Innendurchmesser|Innendurchmesser Lager|alésage"
    "|diamètre d'alésage|diamètre intérieur|diamètre intérieur du roulement|diámetro interior|agujero"
    "|diámetro del agujero|diametro interno|foro|diametro foro|内径|軸受内径|轴承内径|внутренний диаметр"
    "|внутренний диаметр подшипника|диаметр отверстия|bore|inner diameter|bearing bore|ID",
    "outside_diameter": "Außendurchmesser|Aussendurchmesser|Lageraußendurchmesser|Außendurchmesser D"
    "|diamètre extérieur"
    "|diamètre extérieur du roulement|diámetro exterior|diámetro exterior del rodamiento"
    "|diametro esterno|diametro esterno del cuscinetto|外径|軸受外径|轴承外径|наружный диаметр"
    "|наружный диаметр подшипника|внешний диаметр|outside diameter|outer diameter|bearing OD|OD",
    "ring_width": "Breite|Lagerbreite|Ringbreite|largeur|largeur du roulement|ancho|anchura|ancho del rodamiento"
    "|larghezza|larghezza del cuscinetto|幅|軸受幅|宽度|轴承宽度|ширина|ширина подшипника|width|bearing width",
    "shaft_seat_diameter": "Wellensitz|Wellendurchmesser|Wellensitzdurchmesser|Lagersitz Welle|Sitz Welle"
    "|portée d'arbre"
    "|portée de roulement arbre|diamètre de portée|diamètre d'arbre|diámetro del eje|asiento del eje"
    "|asiento del rodamiento en el eje|diametro albero|sede albero|sede sull'albero"
    "|diametro sede albero|軸径|軸はめあい径|軸受座径|轴径|轴颈直径|轴颈|轴配合直径|диаметр вала"
    "|диаметр шейки вала|шейка вала"
    "|посадочное место вала|shaft seat|journal diameter|shaft diameter|shaft journal",
    "housing_seat_diameter": "Gehäusebohrung|Gehäusesitz|Lagersitz Gehäuse|Sitz Gehäuse|Bohrung Gehäuse"
    "|alésage du logement"
    "|alésage du boîtier|logement|diámetro del alojamiento|alojamiento|asiento del alojamiento"
    "|sede alloggiamento|foro alloggiamento|diametro alloggiamento|ハウジング内径|ハウジング穴径|座孔直径"
    "|轴承座孔|壳体孔直径"
    "|外壳孔径|диаметр отверстия корпуса|отверстие корпуса|посадочное отверстие корпуса|housing bore"
    "|housing seat",
    "shaft_seat_runout": "Rundlauf Wellensitz|Rundlauf Welle|Gesamtrundlauf Wellensitz|battement de la portée"
    "|battement de la portée d'arbre|battement radial de l'arbre|salto del eje"
    "|salto radial del asiento del eje|oscillazione sede albero|oscillazione radiale albero|軸の振れ"
    "|軸の全振れ|轴颈跳动|轴跳动|轴颈径向跳动|биение вала|радиальное биение вала|биение шейки вала|shaft runout"
    "|shaft seat runout|shaft run-out",
    "housing_seat_runout": "Rundlauf Gehäusebohrung|battement du logement|salto del alojamiento"
    "|oscillazione sede alloggiamento|ハウジングの振れ|座孔跳动|биение отверстия корпуса|housing runout",
    "speed_max": "Höchstdrehzahl|max. Drehzahl|maximale Drehzahl|Drehzahl max|vitesse max|vitesse maximale"
    "|vitesse de rotation maximale|velocidad máxima|velocidad máx.|velocidad de giro máxima"
    "|velocità massima|velocità max|numero di giri massimo|最高回転数|最高回転速度|最大回転数|最高转速|最大转速"
    "|максимальная частота вращения|макс. частота вращения|максимальные обороты|max speed"
    "|maximum speed|top speed",
    "speed_operating": "Betriebsdrehzahl|vitesse de service|vitesse de fonctionnement|velocidad de servicio"
    "|velocidad de funcionamiento|velocità di esercizio|velocità operativa|使用回転数|運転回転数|工作转速|运行转速"
    "|рабочая частота вращения|рабочая скорость|operating speed",
    "radial_load": "Radiallast|Radialkraft|Radialbelastung|charge radiale|effort radial|carga radial|carico radiale"
    "|forza radiale|ラジアル荷重|径方向荷重|径向载荷|径向负荷|径向力|радиальная нагрузка|радиальная сила|radial load"
    "|radial force",
    "axial_load": "Axiallast|Axialkraft|Axialbelastung|charge axiale|effort axial|carga axial|carico assiale"
    "|forza assiale|アキシアル荷重|軸方向荷重|轴向载荷|轴向负荷|轴向力|осевая нагрузка|осевая сила"
    "|axial load|thrust load"
    "|axial force",
    "operating_temperature": "Betriebstemperatur|Lagertemperatur|température de service"
    "|température de fonctionnement"
    "|température du roulement|temperatura de servicio|temperatura de funcionamiento"
    "|temperatura del rodamiento|temperatura di esercizio|temperatura del cuscinetto|使用温度|運転温度|軸受温度"
    "|工作温度|轴承温度|运行温度|рабочая температура|температура подшипника|operating temperature"
    "|bearing temperature",
    "shaft_temperature": "Wellentemperatur|température de l'arbre|temperatura del eje|temperatura dell'albero"
    "|temperatura albero|軸温度|軸の温度|轴温度|轴温|температура вала|shaft temperature|shaft temp",
    "housing_temperature": "Gehäusetemperatur|température du logement|température du carter"
    "|temperatura del alojamiento"
    "|temperatura dell'alloggiamento|temperatura alloggiamento|ハウジング温度|轴承座温度|壳体温度"
    "|температура корпуса"
    "|housing temperature",
    "preload_force": "Vorspannung|Vorspannkraft|Vorlast|précharge|force de précharge|effort de précharge|precarga"
    "|fuerza de precarga|precarico|forza di precarico|予圧|予圧荷重|予圧力|预紧力|预载荷|预载|преднатяг"
    "|сила преднатяга|предварительный натяг|preload|preload force",
    "preload_method": "Vorspannungsart|Art der Vorspannung|mode de précharge|type de précharge|tipo de precarga"
    "|método de precarga|tipo di precarico|metodo di precarico|予圧方式|予圧方法|预紧方式|预紧方法|способ преднатяга"
    "|вид преднатяга|preload method|preload type",
    "lubrication": "Schmierung|Schmierart|Schmierverfahren|lubrification|graissage|mode de lubrification|lubricación"
    "|engrase|tipo de lubricación|lubrificazione|tipo di lubrificazione|潤滑|潤滑方式|潤滑方法|润滑|润滑方式|смазка"
    "|вид смазки|способ смазки|смазывание|lubrication|lubrication method",
    "ball_material": "Kugelwerkstoff|Kugelmaterial|Wälzkörperwerkstoff|matériau des billes|matière des billes"
    "|material de las bolas|material de bolas|materiale sfere|materiale delle sfere|玉の材質|玉材質|ボール材質"
    "|転動体材質|钢球材料|球材料|滚动体材料|материал шариков|материал тел качения|ball material|material of balls",
    "shaft_seat_roughness": "Rauheit Wellensitz|Rauheit Welle|Ra Wellensitz|Rauheit Ra Welle|rugosité de la portée"
    "|rugosité de l'arbre|rugosité arbre|rugosidad del eje|rugosidad del asiento del eje"
    "|rugosità albero|rugosità sede albero|軸の表面粗さ|軸表面粗さ|轴颈粗糙度|轴粗糙度|轴表面粗糙度"
    "|шероховатость вала"
    "|шероховатость шейки вала|shaft roughness|shaft seat roughness|shaft surface finish",
    "housing_seat_roughness": "Rauheit Gehäuse|Rauheit Gehäusebohrung|rugosité du logement|rugosidad del alojamiento"
    "|rugosità alloggiamento|ハウジングの表面粗さ|ハウジング表面粗さ|座孔粗糙度|壳体孔粗糙度"
    "|шероховатость отверстия корпуса"
    "|шероховатость корпуса|housing roughness|housing surface finish",
    "shaft_fillet_radius": "Ausrundungsradius Welle|Hohlkehlradius Welle|Kehlradius Welle|rayon de congé de l'arbre"
    "|congé de l'arbre|radio de acuerdo del eje|radio de redondeo del eje|raggio di raccordo albero"
    "|軸の隅R|軸隅R|軸すみ肉半径|轴圆角半径|轴圆角|轴过渡圆角|радиус галтели вала|галтель вала|shaft fillet radius"
    "|shaft fillet",
    "housing_fillet_radius": "Ausrundungsradius Gehäuse|Hohlkehlradius Gehäuse|rayon de congé du logement"
    "|radio de acuerdo del alojamiento|raggio di raccordo alloggiamento|ハウジングの隅R|ハウジング隅R"
    "|座孔圆角半径|座孔圆角"
    "|радиус галтели корпуса|галтель корпуса|housing fillet radius",
    "shaft_shoulder_diameter": "Wellenschulter|Wellenschulterdurchmesser|Schulterdurchmesser Welle|Wellenbund"
    "|Anlagedurchmesser Welle|diamètre d'épaulement de l'arbre|épaulement de l'arbre"
    "|épaulement d'arbre|diámetro del resalte del eje|resalte del eje|hombro del eje"
    "|diámetro del hombro del eje|spallamento albero|diametro spallamento albero"
    "|diametro dello spallamento albero|軸の肩径|軸肩径|轴肩直径|轴肩|диаметр заплечика вала|заплечик вала"
    "|буртик вала|диаметр буртика вала|shaft shoulder|shaft shoulder diameter|shaft abutment",
    "housing_shoulder_diameter": "Gehäuseschulter|Gehäuseschulterdurchmesser|Schulterdurchmesser Gehäuse"
    "|épaulement du logement"
    "|diamètre d'épaulement du logement|resalte del alojamiento|diámetro del resalte del alojamiento"
    "|hombro del alojamiento|spallamento alloggiamento|diametro spallamento alloggiamento|ハウジング肩径"
    "|ハウジングの肩径|座孔挡肩直径|壳体挡肩直径|座孔挡肩|заплечик корпуса|диаметр заплечика корпуса|буртик корпуса"
    "|housing shoulder|housing shoulder diameter",
}


@pytest.mark.parametrize(("name", "word"), [(name, word) for name, words in WORDS.items() for word in words.split("|")])
def test_a_usual_word_names_its_parameter(name: str, word: str) -> None:
    names = Names.built_in()
    match = names.find(word)
    assert match is not None, names.why(word)
    assert (match.parameter, match.station, match.aspect) == (name, None, "value")


@pytest.mark.parametrize(
    "word", ["Drehzahl", "vitesse", "speed", "转速", "回転数", "частота вращения", "temperature", "Ra", "d1"]
)
def test_a_word_that_names_no_single_parameter_is_not_guessed(word: str) -> None:
    assert Names.built_in().find(word) is None
