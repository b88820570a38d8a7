# ruff: noqa: E501
"""Words of the trade in eight languages, as drawings, parts lists and forms have them; alternatives behind semicolons."""

LANGUAGES = ("en", "de", "fr", "it", "es", "ja", "zh", "ru")

_TERMS = """
station|Bearing position;Location;Support|Lagerstelle;Lagerposition|Palier;Position du palier|Supporto;Posizione|Apoyo;Posición|軸受位置;支持位置|支承位置;轴承位置|Опора;Место установки
machine|Machine;Product|Maschine;Gerät|Machine;Appareil|Macchina;Apparecchio|Máquina;Equipo|機械名;機種|机器名称;设备|Машина;Изделие
drawing_number|Drawing No.;Dwg no|Zeichnungs-Nr.;Zeichnung Nr.|N° de plan;Plan n°|N. disegno;Disegno n.|N.º de plano;Plano n.º|図面番号;図番|图号;图纸编号|Номер чертежа;Чертёж №
drawing_revision|Rev.;Issue|Rev.;Änderungsindex|Indice;Rév.|Rev.;Revisione|Rev.;Revisión|改訂;版数|版本;版次|Изм.;Ревизия
bearing_designation|Bearing no.;Rolling bearing;Bearing code|Wälzlager;Lagerbezeichnung;Kurzzeichen Lager|Réf. roulement;Désignation du roulement|Sigla cuscinetto;Codice cuscinetto|Ref. rodamiento;Denominación del rodamiento|軸受呼び番号;軸受型番|轴承代号;轴承型号|Обозначение подшипника;Типоразмер подшипника
bore_diameter|Bearing bore d;Bearing ID;Inner ring bore|Innendurchmesser Lager;Lager-Innen-Ø d|Ø intérieur roulement;Alésage roulement d|Foro cuscinetto d;Ø interno cuscinetto|Ø interior rodamiento;Diámetro interior d|軸受内径;内輪内径 d|轴承内径;内圈内径 d|Внутренний диаметр подшипника;Диаметр отверстия подшипника d
outside_diameter|Bearing OD;Bearing outside dia. D;Outer ring OD|Außendurchmesser Lager;Lager-Außen-Ø D|Ø extérieur roulement;Diamètre extérieur D|Ø esterno cuscinetto;Diametro esterno D|Ø exterior rodamiento;Diámetro exterior D|軸受外径;外輪外径 D|轴承外径;外圈外径 D|Наружный диаметр подшипника;Наружный диаметр D
ring_width|Bearing width B;Ring width|Lagerbreite;Breite Lager B|Largeur roulement;Largeur B|Larghezza cuscinetto;Larghezza B|Ancho rodamiento;Anchura B|軸受幅;幅 B|轴承宽度;宽度 B|Ширина подшипника;Ширина B
ring_chamfer|Ring chamfer r min;Bearing corner radius|Kantenabstand r min;Lagerkantenradius|Arrondi roulement r min;Chanfrein bague|Smusso anello r min;Raccordo anello|Chaflán del aro r mín;Radio del aro|軸受面取寸法 r;面取り r min|轴承倒角 r min;内外圈倒角|Фаска кольца r min;Монтажная фаска подшипника
tolerance_class|Bearing precision;Tolerance class of bearing|Toleranzklasse Lager;Lagergenauigkeit|Classe de précision;Précision roulement|Classe di precisione;Precisione cuscinetto|Clase de precisión;Precisión rodamiento|軸受精度;精度等級|轴承精度等级;精度等级|Класс точности подшипника;Класс точности
clearance_class|Radial clearance group;Internal clearance class|Lagerluftklasse;Luftgruppe|Classe de jeu;Jeu radial (groupe)|Gruppo gioco;Classe di gioco|Grupo de juego;Clase de juego|軸受すきま;内部すきま記号|游隙组别;径向游隙代号|Группа зазора;Радиальный зазор (группа)
dynamic_rating|Dyn. load rating C;Basic dynamic rating|Tragzahl dyn. C;Dynamische Tragzahl|Charge dynamique C;Capacité dynamique de base|Coeff. carico dinamico C;Carico dinamico C|Capacidad dinámica C;Carga dinámica C|基本動定格荷重 Cr;動定格荷重|额定动载荷 C;基本额定动载荷|Динамическая грузоподъёмность C;Грузоподъёмность дин. C
static_rating|Static load rating C0;Basic static rating|Tragzahl stat. C0;Statische Tragzahl|Charge statique C0;Capacité statique de base|Coeff. carico statico C0;Carico statico C0|Capacidad estática C0;Carga estática C0|基本静定格荷重 C0r;静定格荷重|额定静载荷 C0;基本额定静载荷|Статическая грузоподъёмность C0;Грузоподъёмность стат. C0
ball_count|No. of balls;Number of balls Z|Kugelanzahl;Anzahl Kugeln Z|Nombre de billes;Nb billes Z|Numero sfere;N. sfere Z|N.º de bolas;Número de bolas Z|玉数;転動体数 Z|钢球数;滚珠数量 Z|Число шариков;Количество шариков Z
ball_diameter|Ball dia. Dw;Ball size|Kugeldurchmesser;Kugel-Ø Dw|Diamètre des billes;Ø bille Dw|Diametro sfere;Ø sfera Dw|Diámetro de bola;Ø bola Dw|玉径;転動体直径 Dw|钢球直径;滚珠直径 Dw|Диаметр шарика;Диаметр шарика Dw
axial_role|Axial function;Locating/non-locating|Axiale Funktion;Fest/Los|Fonction axiale;Fixe/libre|Funzione assiale;Vincolo assiale|Función axial;Fijo/libre|固定・自由;軸方向の役割|轴向定位;固定端/游动端|Осевая функция;Фиксация
cage|Cage;Cage type|Käfig;Käfigausführung|Cage;Type de cage|Gabbia;Tipo gabbia|Jaula;Tipo de jaula|保持器;保持器形式|保持架;保持架类型|Сепаратор;Тип сепаратора
closure|Sealing of bearing;Shields/seals|Abdichtung Lager;Lagerabdichtung|Étanchéité roulement;Protection du roulement|Protezione cuscinetto;Tenuta cuscinetto|Obturación rodamiento;Protección rodamiento|シール・シールド;密封形式|密封形式;轴承密封|Уплотнение подшипника;Исполнение подшипника (уплотнение)
lubrication|Lubrication;Lubricant supply|Schmierung;Schmierart|Lubrification;Graissage|Lubrificazione;Tipo lubrificazione|Lubricación;Tipo de lubricación|潤滑方法;潤滑|润滑方式;润滑|Смазка;Способ смазки
base_oil_viscosity_40|Base oil viscosity at 40 °C;Viscosity 40 °C|Grundölviskosität bei 40 °C;Viskosität 40 °C|Viscosité huile de base à 40 °C;Viscosité 40 °C|Viscosità olio base a 40 °C;Viscosità 40 °C|Viscosidad aceite base a 40 °C;Viscosidad 40 °C|基油粘度 40℃;基油動粘度（40℃）|基础油粘度 40℃;基础油运动粘度（40℃）|Вязкость базового масла при 40 °C;Вязкость при 40 °C
radial_load|Radial load Fr;Radial bearing load|Radiallast Fr;Radiale Lagerkraft|Charge radiale Fr;Effort radial|Carico radiale Fr;Forza radiale|Carga radial Fr;Fuerza radial|ラジアル荷重 Fr;径方向荷重|径向载荷 Fr;径向负荷|Радиальная нагрузка Fr;Радиальная сила
axial_load|Axial load Fa;Thrust load|Axiallast Fa;Axiale Lagerkraft|Charge axiale Fa;Effort axial|Carico assiale Fa;Forza assiale|Carga axial Fa;Fuerza axial|アキシアル荷重 Fa;軸方向荷重|轴向载荷 Fa;轴向负荷|Осевая нагрузка Fa;Осевая сила
operating_temperature|Bearing temperature in operation;Operating temp. bearing|Betriebstemperatur Lager;Lagertemperatur im Betrieb|Température de service du roulement;Temp. roulement|Temperatura di esercizio cuscinetto;Temp. cuscinetto|Temperatura de servicio del rodamiento;Temp. rodamiento|軸受運転温度;軸受温度|轴承工作温度;轴承温度|Рабочая температура подшипника;Температура подшипника
shaft_seat_diameter|Shaft seat diameter;Journal diameter;Shaft dia. at bearing|Wellensitz Ø;Lagersitz Welle;Durchmesser Lagersitz Welle|Ø portée de roulement (arbre);Portée arbre Ø;Diamètre siège arbre|Ø sede cuscinetto albero;Diametro sede albero;Sede albero Ø|Ø asiento del eje;Diámetro asiento eje;Asiento rodamiento en eje Ø|軸受部軸径;軸はめあい径;軸径（軸受取付部）|轴承位轴径;轴颈直径;轴配合直径|Диаметр шейки вала;Посадочный диаметр вала;Шейка вала под подшипник
shaft_seat_roughness|Ra shaft seat;Roughness Ra, journal|Ra Wellensitz;Rauheit Ra Lagersitz Welle|Ra portée arbre;Rugosité Ra siège arbre|Ra sede albero;Rugosità Ra sede albero|Ra asiento eje;Rugosidad Ra asiento eje|軸受部軸 Ra;軸はめあい面粗さ Ra|轴承位粗糙度 Ra;轴颈 Ra|Ra шейки вала;Шероховатость Ra шейки вала
shaft_seat_cylindricity|Cylindricity shaft seat;Journal cylindricity|Zylindrizität Wellensitz;Zylinderform Lagersitz Welle|Cylindricité portée arbre;Cylindricité siège arbre|Cilindricità sede albero;Cilindricità albero|Cilindricidad asiento eje;Cilindricidad del eje|軸受部軸 円筒度;軸円筒度|轴承位圆柱度;轴颈圆柱度|Цилиндричность шейки вала;Нецилиндричность шейки вала
shaft_seat_runout|Total runout shaft seat;Journal total runout|Gesamtrundlauf Wellensitz;Gesamtlauf Lagersitz Welle|Battement total portée arbre;Battement radial total siège arbre|Oscillazione totale sede albero;Runout totale sede albero|Alabeo total asiento eje;Oscilación total asiento eje|軸受部軸 全振れ;軸全振れ|轴承位全跳动;轴颈径向全跳动|Полное радиальное биение шейки вала;Полное биение шейки вала
shaft_shoulder_diameter|Shaft shoulder dia.;Shoulder diameter on shaft|Wellenschulter Ø;Schulterdurchmesser Welle|Ø épaulement arbre;Diamètre épaulement arbre|Ø spallamento albero;Diametro spallamento albero|Ø resalte eje;Diámetro del resalte del eje|軸肩径;軸の肩直径|轴肩直径;轴肩 Ø|Диаметр заплечика вала;Заплечик вала Ø
shaft_shoulder_runout|Shaft shoulder axial runout;Face runout shaft shoulder|Planlauf Wellenschulter;Axialschlag Wellenschulter|Battement axial épaulement arbre;Voile épaulement arbre|Oscillazione assiale spallamento albero;Oscillazione circolare assiale spallamento albero|Alabeo axial resalte eje;Oscilación axial resalte eje|軸肩の振れ;軸肩端面振れ|轴肩端面跳动;轴肩跳动|Торцевое биение заплечика вала;Биение торца заплечика вала
shaft_fillet_radius|Shaft fillet max.;Max. fillet radius shaft|Wellenausrundung max.;Hohlkehlradius Welle max.|Congé arbre max;Rayon congé arbre|Raggio raccordo albero max;Raccordo albero|Radio de acuerdo eje máx.;Acuerdo eje|軸隅R（最大）;軸の隅の丸み|轴圆角半径(最大);轴肩圆角 R|Радиус галтели вала;Галтель вала, макс.
housing_seat_diameter|Housing bore diameter;Housing seat dia.;Bearing housing bore|Gehäusebohrung Ø;Lagersitz Gehäuse;Durchmesser Gehäusebohrung|Ø alésage logement;Alésage du carter Ø;Diamètre logement|Ø sede alloggiamento;Diametro alloggiamento;Foro alloggiamento Ø|Ø alojamiento;Diámetro alojamiento;Agujero de alojamiento Ø|ハウジング内径;ハウジング穴径;ハウジングはめあい径|轴承座孔径;壳体孔直径;座孔配合直径|Диаметр отверстия корпуса;Посадочный диаметр корпуса;Отверстие корпуса под подшипник
housing_seat_roughness|Ra housing bore;Roughness Ra, housing seat|Ra Gehäusebohrung;Rauheit Ra Lagersitz Gehäuse|Ra alésage logement;Rugosité Ra logement|Ra alloggiamento;Rugosità Ra alloggiamento|Ra alojamiento;Rugosidad Ra alojamiento|ハウジング穴 Ra;ハウジング内面粗さ Ra|座孔粗糙度 Ra;轴承座孔 Ra|Ra отверстия корпуса;Шероховатость Ra отверстия корпуса
housing_seat_cylindricity|Cylindricity housing bore;Housing cylindricity|Zylindrizität Gehäusebohrung;Zylinderform Lagersitz Gehäuse|Cylindricité alésage logement;Cylindricité logement|Cilindricità alloggiamento;Cilindricità foro alloggiamento|Cilindricidad alojamiento;Cilindricidad del alojamiento|ハウジング穴 円筒度;ハウジング円筒度|座孔圆柱度;轴承座孔圆柱度|Цилиндричность отверстия корпуса;Нецилиндричность отверстия корпуса
housing_seat_runout|Total runout housing bore;Housing bore total runout|Gesamtrundlauf Gehäusebohrung;Gesamtlauf Lagersitz Gehäuse|Battement total logement;Battement radial total alésage|Oscillazione totale alloggiamento;Runout totale alloggiamento|Alabeo total alojamiento;Oscilación total alojamiento|ハウジング穴 全振れ;ハウジング全振れ|座孔全跳动;轴承座孔径向全跳动|Полное радиальное биение отверстия корпуса;Полное биение отверстия корпуса
housing_shoulder_diameter|Housing shoulder dia.;Shoulder diameter in housing|Gehäuseschulter Ø;Schulterdurchmesser Gehäuse|Ø épaulement logement;Diamètre épaulement logement|Ø spallamento alloggiamento;Diametro spallamento alloggiamento|Ø resalte alojamiento;Diámetro del resalte del alojamiento|ハウジング肩径;ハウジングの肩直径|座孔挡肩直径;轴承座挡肩 Ø|Диаметр заплечика корпуса;Заплечик корпуса Ø
housing_fillet_radius|Housing fillet max.;Max. fillet radius housing|Gehäuseausrundung max.;Hohlkehlradius Gehäuse max.|Congé logement max;Rayon congé logement|Raggio raccordo alloggiamento max;Raccordo alloggiamento|Radio de acuerdo alojamiento máx.;Acuerdo alojamiento|ハウジング隅R（最大）;ハウジングの隅の丸み|座孔圆角半径(最大);座孔圆角 R|Радиус галтели корпуса;Галтель корпуса, макс.
speed_max|Max. speed;n max;Maximum operating speed|Drehzahl max.;n max;Höchstdrehzahl|Vitesse max.;Vitesse de rotation max|Velocità max.;Regime massimo|Velocidad máx.;Velocidad máxima|最高回転数;最高回転速度|最高转速;最大转速|Макс. частота вращения;Наибольшая частота вращения
required_life|Required life L10h;Design life|Geforderte Lebensdauer;Lebensdauer L10h gefordert|Durée de vie requise;Durée de vie demandée L10h|Durata richiesta;Durata richiesta L10h|Vida requerida;Vida exigida L10h|要求寿命;必要寿命時間|要求寿命;设计寿命|Требуемый ресурс;Требуемая долговечность
rotor_mass|Rotor mass;Mass of rotor|Rotormasse;Masse Rotor|Masse du rotor;Masse rotor|Massa rotore;Massa del rotore|Masa del rotor;Masa rotor|ロータ質量;回転体質量|转子质量;转子重量|Масса ротора;Масса вращающихся частей
bearing_span|Bearing span;Distance between bearings|Lagerabstand;Abstand der Lager|Entraxe des paliers;Distance entre roulements|Interasse cuscinetti;Distanza tra i cuscinetti|Distancia entre rodamientos;Distancia entre apoyos|軸受スパン;軸受間距離|轴承跨距;轴承间距|Расстояние между опорами;Расстояние между подшипниками
balance_grade|Balance grade G;Balancing quality G|Wuchtgüte G;Auswuchtgütestufe|Qualité d'équilibrage G;Degré d'équilibrage|Grado di equilibratura G;Grado equilibratura|Grado de equilibrado G;Calidad de equilibrado|つり合い良さ G;釣合い等級|平衡等级 G;动平衡等级|Класс балансировки G;Класс точности балансировки
shaft_material|Shaft material;Material of shaft|Werkstoff Welle;Wellenwerkstoff|Matière arbre;Matériau de l'arbre|Materiale albero;Materiale dell'albero|Material del eje;Material eje|軸材質;軸材料|轴材料;轴材质|Материал вала;Материал (вал)
housing_material|Housing material;Material of housing|Werkstoff Gehäuse;Gehäusewerkstoff|Matière carter;Matériau du logement|Materiale alloggiamento;Materiale carcassa|Material del alojamiento;Material carcasa|ハウジング材質;ハウジング材料|壳体材料;轴承座材料|Материал корпуса;Материал (корпус)
preload_force|Preload force;Spring preload|Vorspannkraft;Federvorspannung|Précharge;Force de précharge|Precarico;Forza di precarico|Fuerza de precarga;Precarga|予圧荷重;予圧力|预紧力;预载荷|Сила преднатяга;Преднатяг
shaft_temperature|Shaft temperature;Temp. shaft|Wellentemperatur;Temperatur Welle|Température arbre;Temp. de l'arbre|Temperatura albero;Temp. albero|Temperatura eje;Temp. eje|軸温度;軸の温度|轴温度;轴温|Температура вала;Темп. вала
housing_temperature|Housing temperature;Temp. housing|Gehäusetemperatur;Temperatur Gehäuse|Température carter;Temp. du carter|Temperatura alloggiamento;Temp. carcassa|Temperatura alojamiento;Temp. carcasa|ハウジング温度;ハウジングの温度|壳体温度;轴承座温度|Температура корпуса;Темп. корпуса
temperature_min|Lowest temperature;Min. ambient temperature at start|Tiefste Temperatur;Temperatur min.|Température min.;Température la plus basse|Temperatura min.;Temperatura minima|Temperatura mín.;Temperatura mínima|最低温度;使用最低温度|最低温度;最低使用温度|Мин. температура;Наименьшая температура
temperature_max|Highest temperature;Max. temperature|Höchste Temperatur;Temperatur max.|Température max.;Température la plus haute|Temperatura max.;Temperatura massima|Temperatura máx.;Temperatura máxima|最高温度;使用最高温度|最高温度;最高使用温度|Макс. температура;Наибольшая температура
"""
TERMS = {
    line.split("|")[0]: {k: w.split(";") for k, w in zip(LANGUAGES, line.split("|")[1:], strict=True)}
    for line in _TERMS.strip().splitlines()
}

#: Feature under a heading that already says the part: shaft or housing.
_FEATURES = """
seat_diameter|Seat Ø;Diameter|Sitz Ø;Durchmesser|Ø portée;Diamètre|Ø sede;Diametro|Ø asiento;Diámetro|はめあい径;直径|配合直径;直径|Посадочный диаметр;Диаметр
seat_roughness|Ra;Roughness Ra|Ra;Rauheit Ra|Ra;Rugosité Ra|Ra;Rugosità Ra|Ra;Rugosidad Ra|Ra;粗さ Ra|Ra;粗糙度 Ra|Ra;Шероховатость Ra
seat_cylindricity|Cylindricity|Zylindrizität;Zylinderform|Cylindricité|Cilindricità|Cilindricidad|円筒度|圆柱度|Цилиндричность
seat_runout|Total runout|Gesamtrundlauf;Gesamtlauf|Battement total|Oscillazione totale|Alabeo total;Oscilación total|全振れ|全跳动;径向全跳动|Полное радиальное биение
shoulder_diameter|Shoulder Ø;Shoulder dia.|Schulter Ø;Schulterdurchmesser|Ø épaulement|Ø spallamento|Ø resalte|肩径;肩の直径|挡肩直径;肩部直径|Диаметр заплечика
shoulder_runout|Shoulder runout;Face runout of shoulder|Planlauf Schulter|Battement axial épaulement|Oscillazione assiale spallamento|Alabeo axial resalte|肩の振れ|挡肩端面跳动|Торцевое биение заплечика
fillet_radius|Fillet radius;Fillet R max|Hohlkehlradius;Ausrundung max.|Rayon de congé;Congé max|Raggio di raccordo;Raccordo max|Radio de acuerdo;Acuerdo máx.|隅の丸み;隅R|圆角半径;圆角 R|Радиус галтели;Галтель
"""
FEATURES = {
    line.split("|")[0]: {k: w.split(";") for k, w in zip(LANGUAGES, line.split("|")[1:], strict=True)}
    for line in _FEATURES.strip().splitlines()
}


def _eight(text: str) -> dict[str, str]:
    return dict(zip(LANGUAGES, text.split("|"), strict=True))


PARTS = {
    "bearing": _eight("Bearing|Lager|Roulement|Cuscinetto|Rodamiento|軸受|轴承|Подшипник"),
    "shaft": _eight("Shaft|Welle|Arbre|Albero|Eje|軸|轴|Вал"),
    "housing": _eight("Housing|Gehäuse|Logement|Alloggiamento|Alojamiento|ハウジング|轴承座|Корпус"),
    "general": _eight("General data|Allgemeine Daten|Données générales|Dati generali|Datos generales|共通仕様|总体参数|Общие данные"),
}  # fmt: skip
#: Headings of tolerances: in a column of its own, or behind the name of a size.
TOLERANCE = {
    "class": _eight("Tol. class|Toleranzklasse|Classe de tolérance|Classe di tolleranza|Clase de tolerancia|公差クラス|公差带代号|Поле допуска"),
    "upper": _eight("Upper dev.|oberes Abmaß|Écart sup.|Scost. sup.|Desv. sup.|上の許容差|上偏差|Верхнее отклонение"),
    "lower": _eight("Lower dev.|unteres Abmaß|Écart inf.|Scost. inf.|Desv. inf.|下の許容差|下偏差|Нижнее отклонение"),
    "max": _eight("max.|Größtmaß|maxi|max.|máx.|最大|最大尺寸|Наибольший"),
    "min": _eight("min.|Kleinstmaß|mini|min.|mín.|最小|最小尺寸|Наименьший"),
    "tolerance": _eight("Tolerance|Toleranz|Tolérance|Tolleranza|Tolerancia|公差|公差|Допуск"),
    "nominal": _eight("Nominal|Nennmaß|Cote nominale|Quota nominale|Cota nominal|基準寸法|公称尺寸|Номинал"),
    "measured": _eight("Measured|Istmaß|Mesuré|Misurato|Medido|測定値|实测值|Измерено"),
}  # fmt: skip
COLUMNS = {
    "parameter": _eight("Parameter|Merkmal|Paramètre|Parametro|Parámetro|項目|参数|Параметр"),
    "value": _eight("Value|Wert|Valeur|Valore|Valor|値|数值|Значение"),
    "unit": _eight("Unit|Einheit|Unité|Unità|Unidad|単位|单位|Ед. изм."),
    "remark": _eight("Remark|Bemerkung|Remarque|Nota|Observaciones|備考|备注|Примечание"),
    "item": _eight("Item|Pos.|Rep.|Pos.|Pos.|番号|序号|Поз."),
    "part": _eight("Part|Bauteil|Pièce|Pezzo|Pieza|部品|零件|Деталь"),
    "feature": _eight("Feature|Merkmal|Élément|Caratteristica|Característica|特性|特征|Элемент"),
    "quantity": _eight("Qty|Menge|Qté|Q.tà|Cant.|個数|数量|Кол."),
    "name": _eight("Description|Benennung|Désignation|Denominazione|Descripción|名称|名称|Наименование"),
    "standard": _eight("Standard / type|Norm / Typ|Norme / type|Norma / tipo|Norma / tipo|規格・型番|标准/型号|Стандарт / тип"),
    "weight": _eight("Weight kg|Gewicht kg|Poids kg|Peso kg|Peso kg|質量 kg|重量 kg|Масса, кг"),
}  # fmt: skip
#: Tables' titles, footers and notes that say nothing of a value.
TITLES = {
    "en": ("Bearing seat data", "Seat table - rotor assembly", "Bearing arrangement: seats and fits"),
    "de": ("Tabelle der Lagersitze", "Lagerung: Sitze und Passungen", "Maßtabelle Rotorlagerung"),
    "fr": ("Tableau des portées de roulement", "Montage des roulements - cotes", "Fiche de cotes du rotor"),
    "it": ("Tabella sedi cuscinetti", "Montaggio cuscinetti - quote", "Scheda quote rotore"),
    "es": ("Tabla de asientos de rodamientos", "Montaje de rodamientos - cotas", "Hoja de cotas del rotor"),
    "ja": ("軸受取付部寸法表", "回転軸組立 寸法一覧", "軸受はめあい一覧表"),
    "zh": ("轴承配合尺寸表", "转子组件尺寸清单", "轴承位尺寸一览"),
    "ru": ("Таблица посадочных мест подшипников", "Подшипниковый узел: размеры и посадки", "Ведомость размеров ротора"),
}  # fmt: skip
FOOTERS = {
    "en": ("Printed 2025-03-12 07:41, sheet 1 of 2", "1) after grinding", "End of table"),
    "de": ("Ausdruck vom 12.03.2025, Blatt 1 von 2", "1) nach dem Schleifen", "Ende der Tabelle"),
    "fr": ("Édité le 12/03/2025, feuille 1/2", "1) après rectification", "Fin du tableau"),
    "it": ("Stampato il 12/03/2025, foglio 1 di 2", "1) dopo rettifica", "Fine tabella"),
    "es": ("Impreso el 12/03/2025, hoja 1 de 2", "1) después de rectificar", "Fin de la tabla"),
    "ja": ("2025年3月12日 出力 1/2", "※ 研削後の寸法とする", "以上"),
    "zh": ("打印日期 2025-03-12 第1页 共2页", "注：磨削后尺寸", "表格结束"),
    "ru": ("Распечатано 12.03.2025, лист 1 из 2", "1) после шлифования", "Конец таблицы"),
}
LENGTHS_IN = {
    "mm": _eight("All dimensions in mm|Alle Maße in mm|Toutes les cotes en mm|Tutte le quote in mm|Todas las cotas en mm|寸法単位：mm|尺寸单位：mm|Размеры в мм"),
    "in": _eight("All dimensions in inches|Alle Maße in Zoll|Toutes les cotes en pouces|Tutte le quote in pollici|Todas las cotas en pulgadas|寸法単位：インチ|尺寸单位：英寸|Размеры в дюймах"),
}  # fmt: skip
STATIONS = {
    "en": (("DE", "NDE"), ("Front", "Rear"), ("A", "B"), ("Upper", "Lower")),
    "de": (("A-Seite", "B-Seite"), ("vorn", "hinten"), ("oben", "unten")),
    "fr": (("Avant", "Arrière"), ("Côté moteur", "Côté opposé")),
    "it": (("Anteriore", "Posteriore"), ("Lato comando", "Lato opposto")),
    "es": (("Delantero", "Trasero"), ("Lado acople", "Lado libre")),
    "ja": (("負荷側", "反負荷側"), ("前側", "後側")),
    "zh": (("前端", "后端"), ("驱动端", "非驱动端")),
    "ru": (("Передняя", "Задняя"), ("А", "Б")),
}
FOUR = {
    "en": ("Brg 1", "Brg 2", "Brg 3", "Brg 4"), "de": ("A1", "A2", "B1", "B2"), "fr": ("P1", "P2", "P3", "P4"),
    "it": ("S1", "S2", "S3", "S4"), "es": ("R1", "R2", "R3", "R4"), "ja": ("A1", "A2", "B1", "B2"),
    "zh": ("A1", "A2", "B1", "B2"), "ru": ("П1", "П2", "П3", "П4"),
}  # fmt: skip
MACHINES = {
    "en": ("Optical chopper OC-3", "Seed coater drum drive", "Ice-core saw spindle"),
    "de": ("Fasernwickler FW 12", "Probenzentrifuge PZ-40", "Rührwerk RW 7"),
    "fr": ("Broche de polissage BP2", "Doseur à vis DV-5", "Enrouleur de câble EC 8"),
    "it": ("Bobinatrice B-21", "Micropompa MP4", "Mandrino di lucidatura ML-6"),
    "es": ("Molinillo de grano MG-2", "Bobinadora de hilo BH-9", "Bomba dosificadora BD 3"),
    "ja": ("試料遠心機 SC-4", "巻線機スピンドル WS-2", "小型送風機 KF-7"),
    "zh": ("样品离心机 LX-40", "纤维卷绕机 JR-5", "研磨主轴 YM-2"),
    "ru": ("Центрифуга ЦЛ-40", "Намоточный станок НС-6", "Дозирующий насос ДН-3"),
}
#: What stands in such tables beside the seats and is none: words, the unit, a value. Nothing of it may be read.
OTHER = {
    "coupling": (_eight("Coupling seat dia.|Kupplungssitz Ø|Ø portée accouplement|Ø sede giunto|Ø asiento acoplamiento|カップリング取付軸径|联轴器处轴径|Диаметр под муфту"), "length", 11.0),
    "seal": (_eight("Lip seal running dia.|Dichtringlauffläche Ø|Ø portée joint à lèvre|Ø sede paraolio|Ø asiento retén|オイルシール接触径|油封接触直径|Диаметр под манжету"), "length", 24.0),
    "key": (_eight("Key width|Passfederbreite|Largeur clavette|Larghezza linguetta|Ancho de chaveta|キー幅|键宽|Ширина шпонки"), "length", 4.0),
    "length": (_eight("Overall shaft length|Gesamtlänge Welle|Longueur totale arbre|Lunghezza totale albero|Longitud total eje|軸全長|轴总长|Полная длина вала"), "length", 184.0),
    "flange": (_eight("Flange OD|Flansch-Außendurchmesser|Ø extérieur bride|Ø esterno flangia|Ø exterior brida|フランジ外径|法兰外径|Наружный диаметр фланца"), "length", 78.0),
    "seat length": (_eight("Length of seat|Sitzlänge|Longueur de portée|Lunghezza sede|Longitud del asiento|はめあい長さ|配合长度|Длина посадочного места"), "length", 13.0),
    "hardness": (_eight("Hardness|Härte|Dureté|Durezza|Dureza|硬さ|硬度|Твёрдость"), "HRC", 58.0),
    "mass of the bearing": (_eight("Bearing mass|Lagergewicht|Masse roulement|Massa cuscinetto|Masa rodamiento|軸受質量|轴承重量|Масса подшипника"), "kg", 0.032),
    "price": (_eight("Unit price|Stückpreis|Prix unitaire|Prezzo unitario|Precio unitario|単価|单价|Цена"), "EUR", 4.8),
    "thread": (_eight("Shaft end thread|Gewinde Wellenende|Filetage bout d'arbre|Filetto estremità|Rosca extremo eje|軸端ねじ|轴端螺纹|Резьба на конце вала"), "", "M8x1"),
    "Rz": (_eight("Rz of sealing face|Rz Dichtfläche|Rz face d'étanchéité|Rz superficie di tenuta|Rz superficie de sellado|シール面 Rz|密封面 Rz|Rz под манжету"), "µm", 2.5),
    "balancing speed": (_eight("Balancing machine speed|Drehzahl der Wuchtmaschine|Vitesse sur équilibreuse|Velocità equilibratrice|Velocidad de la equilibradora|釣合い試験機回転数|平衡机转速|Частота вращения балансировочного станка"), "speed", 900.0),
    "checked": (_eight("Checked on|geprüft am|Vérifié le|Verificato il|Revisado el|検図日|审核日期|Проверено"), "", "2025-02-28"),
    "coating": (_eight("Coating|Beschichtung|Revêtement|Rivestimento|Recubrimiento|表面処理|表面处理|Покрытие"), "", "-"),
    "stock": (_eight("Stock code|Lagerort|Code magasin|Codice magazzino|Código almacén|在庫記号|库存代码|Код склада"), "", "K-207"),
}  # fmt: skip
#: One heading for both seats of a row: which is meant has to be asked.
BOTH_SEATS = {
    "seat_roughness": _eight("Seat Ra|Ra Sitz|Ra portée|Ra sede|Ra asiento|はめあい面 Ra|配合面 Ra|Ra посадки"),
    "seat_cylindricity": _eight("Cylindricity|Zylindrizität|Cylindricité|Cilindricità|Cilindricidad|円筒度|圆柱度|Цилиндричность"),
    "fillet_radius": _eight("Fillet R|Hohlkehle R|Congé R|Raccordo R|Acuerdo R|隅R|圆角R|Галтель R"),
}  # fmt: skip
CHOICES = {
    "axial_role": {
        "locating": _eight("Locating|Festlager|Palier fixe|Fisso|Fijo|固定側|固定端|Фиксирующая"),
        "floating": _eight("Non-locating|Loslager|Palier libre|Libero|Libre|自由側|游动端|Плавающая"),
    },
    "lubrication": {
        "grease": _eight("Grease|Fett|Graisse|Grasso|Grasa|グリース潤滑|脂润滑|Пластичная смазка"),
        "oil mist": _eight("Oil mist|Ölnebel|Brouillard d'huile|Nebbia d'olio|Niebla de aceite|オイルミスト|油雾润滑|Масляный туман"),
        "oil bath": _eight("Oil bath|Ölbad|Bain d'huile|Bagno d'olio|Baño de aceite|油浴潤滑|油浴润滑|Масляная ванна"),
    },
    "cage": {
        "pressed steel": _eight("Pressed steel|Stahlblechkäfig|Tôle d'acier emboutie|Lamiera stampata|Chapa estampada|鋼板打抜き|冲压钢|Штампованный стальной"),
        "polyamide": _eight("Polyamide PA66|Polyamid PA66|Polyamide PA66|Poliammide PA66|Poliamida PA66|ポリアミド|尼龙 PA66|Полиамид"),
        "machined brass": _eight("Machined brass|Messing massiv|Laiton massif|Ottone massiccio|Latón mecanizado|もみ抜き黄銅|黄铜实体|Массивный латунный"),
    },
    "closure": {
        "open": _eight("Open|offen|Ouvert|Aperto|Abierto|開放形|开式|Открытый"),
        "shield": _eight("Shields both sides|beidseitig Deckscheiben|2 flasques métalliques|2 schermi metallici|2 placas de protección|両シールド|双面防尘盖|Две защитные шайбы"),
        "contact seal": _eight("Contact seals both sides|beidseitig schleifende Dichtscheiben|2 joints frottants|2 tenute striscianti|2 obturaciones rozantes|両接触シール|双面接触密封|Два контактных уплотнения"),
    },
    "shaft_material": {
        "steel": _eight("42CrMo4|C45+QT|Acier 42CrMo4|Acciaio C45|Acero 42CrMo4|SCM440|45钢|Сталь 45"),
        "stainless steel": _eight("Stainless steel|X20Cr13|Acier inoxydable|Acciaio inox|Acero inoxidable|SUS420J2|不锈钢|Нержавеющая сталь"),
    },
    "housing_material": {
        "aluminium": _eight("Aluminium AlSi10Mg|AlSi10Mg|Aluminium|Alluminio|Aluminio|アルミニウム合金|铝合金|Алюминиевый сплав"),
        "cast iron": _eight("EN-GJL-250|EN-GJL-250|Fonte|Ghisa|Fundición gris|FC250|HT250|Чугун"),
    },
}  # fmt: skip
UNITS = {
    "speed": {"en": ("rpm", "r/min"), "de": ("1/min", "min-1"), "fr": ("tr/min",), "it": ("giri/min", "rpm"), "es": ("rpm", "r/min"),
              "ja": ("min-1", "rpm"), "zh": ("r/min", "rpm"), "ru": ("об/мин",)},
    "mm": {"ru": ("мм",), "*": ("mm",)}, "in": {"de": ("Zoll",), "*": ("in", "inch")}, "um": {"ru": ("мкм",), "*": ("µm", "um")},
    "N": {"ru": ("Н",), "*": ("N",)}, "kN": {"ru": ("кН",), "*": ("kN",)}, "kg": {"ru": ("кг",), "*": ("kg",)},
    "g": {"ru": ("г",), "*": ("g",)}, "h": {"ru": ("ч",), "*": ("h",)}, "degC": {"zh": ("℃",), "ja": ("℃",), "*": ("°C",)},
    "degF": {"*": ("°F",)}, "lb": {"*": ("lb",)}, "lbf": {"*": ("lbf",)}, "mm2/s": {"ru": ("мм2/с",), "*": ("mm2/s", "cSt")},
    "uin": {"*": ("µin",)}, "mm/s": {"ru": ("мм/с",), "*": ("mm/s",)},
}  # fmt: skip
