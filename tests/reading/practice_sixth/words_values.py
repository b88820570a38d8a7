"""What stands in cells: choices, groups, units, places, machines, titles and notes in eight languages."""

LANGUAGES = ("en", "de", "fr", "it", "es", "ja", "zh", "ru")

#: Group headings: machine, bearing, shaft, housing, operation.
GROUPS = {
    "en": {"machine": "General", "bearing": "Bearing", "shaft": "Shaft", "housing": "Housing", "service": "Operation"},
    "de": {"machine": "Allgemein", "bearing": "Lager", "shaft": "Welle", "housing": "Gehäuse", "service": "Betrieb"},
    "fr": {"machine": "Général", "bearing": "Roulement", "shaft": "Arbre", "housing": "Logement", "service": "Service"},
    "it": {
        "machine": "Generale",
        "bearing": "Cuscinetto",
        "shaft": "Albero",
        "housing": "Alloggiamento",
        "service": "Esercizio",
    },
    "es": {
        "machine": "General",
        "bearing": "Rodamiento",
        "shaft": "Eje",
        "housing": "Alojamiento",
        "service": "Servicio",
    },
    "ja": {"machine": "全般", "bearing": "軸受", "shaft": "軸", "housing": "ハウジング", "service": "使用条件"},
    "zh": {"machine": "总体", "bearing": "轴承", "shaft": "轴", "housing": "轴承座", "service": "工况"},
    "ru": {"machine": "Общие данные", "bearing": "Подшипник", "shaft": "Вал", "housing": "Корпус", "service": "Работа"},
}
#: Word for each choice of the vocabulary, by language in the order of LANGUAGES; several by a stroke.
CHOICES: dict[str, dict[str, tuple[str, ...]]] = {
    "axial_role": {
        "locating": (
            "locating/fixed", "Festlager", "fixe/palier fixe", "fisso/bloccato", "fijo/lado fijo", "固定側", "固定端",
            "фиксирующая",
        ),
        "floating": (
            "floating/non-locating", "Loslager", "libre/palier libre", "libero/mobile", "libre/lado libre", "自由側",
            "游动端", "плавающая",
        ),
        "spring-loaded": (
            "spring-loaded/spring preloaded", "federbelastet/federvorgespannt", "préchargé par ressort",
            "precaricato con molla", "precargado por muelle", "ばね予圧側", "弹簧预紧端", "поджатая пружиной",
        ),
    },
    "cage": {
        "pressed steel": (
            "pressed steel/steel, stamped", "Stahlblech", "tôle emboutie/acier embouti", "lamiera stampata",
            "chapa de acero estampada", "鋼板打抜き保持器/鉄板プレス", "钢板冲压", "штампованный стальной",
        ),
        "polyamide": (
            "polyamide PA66/PA66-GF25", "Polyamid PA66-GF25/Polyamid", "polyamide PA66", "poliammide PA66",
            "poliamida PA66", "ポリアミド樹脂/ポリアミド", "尼龙/尼龙PA66", "полиамид",
        ),
        "machined brass": (
            "machined brass", "Messing massiv/Messing-Massivkäfig", "laiton massif usiné", "ottone massiccio lavorato",
            "latón mecanizado", "もみ抜き黄銅", "黄铜实体/车制黄铜", "латунный массивный",
        ),
        "phenolic": (
            "phenolic/phenolic resin", "Hartgewebe", "résine phénolique", "resina fenolica", "resina fenólica",
            "フェノール樹脂", "酚醛胶布", "текстолит",
        ),
    },
    "lubrication": {
        "grease": (
            "grease/grease, for life", "Fett/Fettschmierung", "graisse", "grasso", "grasa", "グリース/グリース潤滑",
            "脂润滑/润滑脂", "пластичная смазка",
        ),
        "oil bath": (
            "oil bath", "Ölbad/Öltauchschmierung", "bain d'huile", "bagno d'olio", "baño de aceite", "油浴/油浴潤滑",
            "油浴润滑", "масляная ванна",
        ),
        "oil mist": (
            "oil mist", "Ölnebel", "brouillard d'huile", "nebbia d'olio", "niebla de aceite", "オイルミスト潤滑",
            "油雾润滑", "масляный туман",
        ),
        "oil-air": (
            "oil-air/oil + air", "Öl-Luft", "air-huile", "aria-olio", "aire-aceite", "オイルエア潤滑", "油气润滑",
            "масло-воздух",
        ),
    },
    "bearing_type": {
        "deep groove ball": (
            "deep groove ball bearing/deep groove ball", "Rillenkugellager", "roulement rigide à billes",
            "radiale rigido a sfere", "rígido de bolas", "深溝玉軸受/単列深溝玉軸受", "深沟球轴承",
            "шариковый радиальный",
        ),
        "angular contact ball": (
            "angular contact ball bearing/angular contact ball", "Schrägkugellager", "à billes à contact oblique",
            "obliquo a sfere", "de bolas de contacto angular", "アンギュラ玉軸受", "角接触球轴承",
            "шариковый радиально-упорный",
        ),
    },
    "closure": {
        "open": ("open", "offen", "ouvert", "aperto", "abierto", "開放形", "开式", "открытый"),
        "shield": (
            "shields both sides/2 metal shields", "beidseitig Deckscheiben/Deckscheiben", "2 flasques/déflecteurs",
            "2 schermi metallici", "2 tapas metálicas/dos placas de protección", "両シールド", "双面防尘盖",
            "две защитные шайбы",
        ),
        "contact seal": (
            "contact seals both sides/2 contact seals", "schleifende Dichtscheiben", "2 joints frottants",
            "2 tenute striscianti", "2 obturaciones rozantes", "両側接触シール", "双面接触式密封圈",
            "контактные уплотнения с двух сторон",
        ),
    },
    "ball_material": {
        "steel": ("steel", "Stahl", "acier", "acciaio", "acero", "軸受鋼", "轴承钢", "сталь"),
        "silicon nitride": (
            "silicon nitride/Si3N4", "Siliziumnitrid/Si3N4", "nitrure de silicium/Si3N4", "nitruro di silicio/Si3N4",
            "nitruro de silicio/Si3N4", "窒化けい素/Si3N4", "氮化硅/Si3N4", "нитрид кремния/Si3N4",
        ),
    },
    "shaft_material": {
        "steel": (
            "steel/4140 steel", "Stahl/42CrMo4", "acier/acier 42CrMo4", "acciaio/C45", "acero/acero C45", "S45C/鋼",
            "45钢/40Cr", "сталь 45/сталь 40Х",
        ),
        "stainless steel": (
            "stainless steel", "nichtrostender Stahl/Edelstahl", "acier inoxydable/inox", "acciaio inossidabile/inox",
            "acero inoxidable", "ステンレス鋼/SUS420J2", "不锈钢/2Cr13", "нержавеющая сталь",
        ),
    },
    "housing_material": {
        "aluminium": (
            "aluminum/aluminium alloy", "Aluminium/AlSi10Mg", "aluminium", "alluminio/lega di alluminio",
            "aluminio/aleación de aluminio", "アルミニウム合金/ADC12", "铝合金/ZL104", "алюминиевый сплав/АК9ч",
        ),
        "cast iron": (
            "cast iron/gray cast iron", "Grauguss/EN-GJL-250", "fonte/fonte grise", "ghisa/ghisa grigia",
            "fundición gris", "鋳鉄/FC250", "铸铁/HT200", "чугун/СЧ20",
        ),
        "steel": ("steel", "Stahl", "acier", "acciaio", "acero", "鋼", "钢", "сталь"),
    },
    "preload_method": {
        "spring": (
            "spring/wave spring", "Feder/Wellfeder", "ressort/rondelle ondulée", "molla/molla ondulata",
            "muelle/por muelle", "定圧予圧/定圧予圧(ばね)", "弹簧预紧/定压预紧", "пружинный/пружиной",
        ),
        "rigid": (
            "rigid/fixed position", "starr", "rigide", "rigido", "rígida", "定位置予圧", "定位预紧/刚性预紧", "жёсткий",
        ),
        "none": ("none", "ohne/keine", "sans/aucune", "senza/nessuno", "sin precarga", "なし", "无", "нет/без натяга"),
    },
    "shaft_orientation": {
        "horizontal": (
            "horizontal", "waagerecht/horizontal", "horizontal", "orizzontale", "horizontal", "水平/横軸", "水平",
            "горизонтальное",
        ),
        "vertical": (
            "vertical", "senkrecht", "vertical", "verticale", "vertical", "垂直/立軸", "垂直/立式", "вертикальное",
        ),
    },
    "rotating_ring": {
        "inner": (
            "inner ring/inner", "Innenring", "bague intérieure", "anello interno", "aro interior", "内輪/内輪回転",
            "内圈", "внутреннее",
        ),
    },
}  # fmt: skip
PLACES = {
    "en": (
        ("A", "B"), ("DE", "NDE"), ("Drive end", "Non-drive end"), ("Front", "Rear"), ("Brg 1", "Brg 2"),
        ("Left", "Right"),
    ),
    "de": (
        ("A", "B"), ("AS", "BS"), ("vorn", "hinten"), ("Antriebsseite", "Lüfterseite"), ("links", "rechts"),
        ("L1", "L2"),
    ),
    "fr": (("A", "B"), ("avant", "arrière"), ("côté accouplement", "côté opposé"), ("gauche", "droite"), ("P1", "P2")),
    "it": (("A", "B"), ("anteriore", "posteriore"), ("lato comando", "lato opposto"), ("sinistro", "destro")),
    "es": (("A", "B"), ("delantero", "trasero"), ("lado acople", "lado opuesto"), ("izquierdo", "derecho")),
    "ja": (("A", "B"), ("負荷側", "反負荷側"), ("前側", "後側"), ("左", "右"), ("上", "下")),
    "zh": (("A", "B"), ("驱动端", "非驱动端"), ("前端", "后端"), ("左", "右"), ("上", "下")),
    "ru": (("А", "Б"), ("передняя", "задняя"), ("левая", "правая"),
           ("со стороны привода", "с противоположной стороны")),
}  # fmt: skip
MACHINES = {
    "en": ("Labyrinth pump LP-40", "Grinding head GH-12", "Scroll fan SF-7", "Centrifuge rotor CR-3", "Winder WD-220"),
    "de": ("Rührwerk RW 15", "Schleifspindel S-80", "Förderpumpe FP 32", "Sichterrad SR-4", "Spulkopf SK 9"),
    "fr": ("Pompe doseuse PD-18", "Broche BR-60", "Ventilateur VT-25", "Essoreuse ES-4", "Bobinoir BB-11"),
    "it": ("Pompa dosatrice PD 20", "Elettromandrino EM 55", "Ventola VN 31", "Centrifuga CF-2", "Aspo AS 14"),
    "es": ("Bomba dosificadora BD-16", "Cabezal CZ-45", "Turbosoplante TS-6", "Centrífuga CT-3", "Bobinadora BN-8"),
    "ja": ("定量ポンプ TP-20", "研削主軸 KS-45", "送風機 SF-9", "遠心分離機 ES-3", "巻取機 MK-12"),
    "zh": ("计量泵 JB-20", "磨头 MT-45", "离心风机 LF-9", "离心机 LX-3", "卷绕机 JR-12"),
    "ru": ("Насос НД-20", "Шпиндель ШГ-45", "Вентилятор ВЦ-9", "Центрифуга ЦР-3", "Мотальная головка МГ-12"),
}
TITLES = {
    "en": ("Bearing seats", "Bearing arrangement data sheet", "Seat dimensions for release"),
    "de": ("Lagersitze", "Datenblatt Lagerung", "Maßtabelle Lagersitze"),
    "fr": ("Portées de roulements", "Fiche montage des roulements", "Tableau des cotes de portées"),
    "it": ("Sedi cuscinetti", "Scheda supporti", "Tabella quote sedi cuscinetti"),
    "es": ("Asientos de rodamientos", "Ficha de apoyos", "Tabla de asientos de rodamientos"),
    "ja": ("軸受取付部寸法表", "軸受はめあい部一覧", "軸受部仕様書"),
    "zh": ("轴承配合部位尺寸表", "轴承安装参数表", "轴承部位明细"),
    "ru": ("Посадочные места подшипников", "Таблица опор", "Ведомость посадок подшипников"),
}
#: Labels and texts of a title block and a foot: prepared, date, status; remark; item; note on units (mm and µm).
LABELS = {
    "en": ("Prepared by", "Date", "Status", "for review", "Remarks", "Item", "see detail X", "checked"),
    "de": ("Erstellt", "Datum", "Status", "zur Prüfung", "Bemerkung", "Pos.", "siehe Detail X", "geprüft"),
    "fr": ("Établi par", "Date", "Statut", "pour revue", "Remarque", "Rep.", "voir détail X", "vérifié"),
    "it": ("Compilato", "Data", "Stato", "in revisione", "Note", "Pos.", "vedi dettaglio X", "verificato"),
    "es": ("Elaborado", "Fecha", "Estado", "para revisión", "Observaciones", "Pos.", "véase detalle X", "revisado"),
    "ja": ("作成", "日付", "状態", "審査中", "備考", "No.", "詳細図X参照", "確認済"),
    "zh": ("编制", "日期", "状态", "待审", "备注", "序号", "见局部放大图X", "已校对"),
    "ru": ("Разработал", "Дата", "Статус", "на проверке", "Примечание", "№ п/п", "см. вид X", "проверено"),
}
UNIT_NOTES = {
    "en": "All dimensions in {mm}, tolerances of form and position in {um}",
    "de": "Alle Maße in {mm}, Form- und Lagetoleranzen in {um}",
    "fr": "Cotes en {mm}, tolérances géométriques en {um}",
    "it": "Quote in {mm}, tolleranze geometriche in {um}",
    "es": "Cotas en {mm}, tolerancias geométricas en {um}",
    "ja": "寸法の単位:{mm}、幾何公差の単位:{um}",
    "zh": "尺寸单位:{mm},形位公差单位:{um}",
    "ru": "Размеры в {mm}, допуски формы и расположения в {um}",
}
SAME_UNIT_NOTES = {
    "en": "Dimensions and geometrical tolerances in {mm}",
    "de": "Maße sowie Form- und Lagetoleranzen in {mm}",
    "fr": "Cotes et tolérances géométriques en {mm}",
    "it": "Quote e tolleranze geometriche in {mm}",
    "es": "Cotas y tolerancias geométricas en {mm}",
    "ja": "寸法及び幾何公差の単位:{mm}",
    "zh": "尺寸及形位公差单位:{mm}",
    "ru": "Размеры и допуски формы и расположения в {mm}",
}
#: Name, value, unit, attribute, symbol in lists; feature, kind, nominal, measured, result in inspection lists.
LIST_HEADS = {
    "en": ("Characteristic", "Value", "Unit", "Attribute", "Symbol", "Requirement", "Measured", "Result"),
    "de": ("Merkmal", "Wert", "Einheit", "Attribut", "Zeichen", "Sollwert", "Istwert", "Ergebnis"),
    "fr": ("Caractéristique", "Valeur", "Unité", "Attribut", "Symbole", "Exigence", "Mesuré", "Résultat"),
    "it": ("Caratteristica", "Valore", "Unità", "Attributo", "Simbolo", "Requisito", "Misurato", "Esito"),
    "es": ("Característica", "Valor", "Unidad", "Atributo", "Símbolo", "Requisito", "Medido", "Resultado"),
    "ja": ("項目", "値", "単位", "属性", "記号", "規格値", "測定値", "判定"),
    "zh": ("项目", "数值", "单位", "属性", "符号", "要求", "实测值", "判定"),
    "ru": ("Параметр", "Значение", "Ед. изм.", "Атрибут", "Обозн.", "Требование", "Измерено", "Результат"),
}
#: Headings that nobody can settle: load, run-out, roughness, temperature, radius.
VAGUE = {
    "load": ("Load", "Belastung", "Charge", "Carico", "Carga", "荷重", "载荷", "Нагрузка"),
    "runout": ("Run-out", "Lauftoleranz", "Battement", "Oscillazione", "Salto", "振れ", "跳动", "Биение"),
    "roughness": (
        "Roughness Ra", "Rauheit Ra", "Rugosité Ra", "Rugosità Ra", "Rugosidad Ra", "表面粗さ Ra", "粗糙度Ra",
        "Шероховатость Ra",
    ),
    "temperature": (
        "Temperature", "Temperatur", "Température", "Temperatura", "Temperatura", "温度", "温度", "Температура",
    ),
    "radius": ("Radius", "Radius", "Rayon", "Raggio", "Radio", "半径R", "圆角R", "Радиус"),
}  # fmt: skip
#: Unit texts by language where they are not those of everybody.
UNITS: dict[str, dict[str, tuple[str, ...]]] = {
    "r/min": {
        "en": ("rpm", "r/min"), "de": ("1/min", "min-1", "min⁻¹", "U/min"), "fr": ("tr/min", "min-1"),
        "it": ("giri/min", "min-1"), "es": ("rpm", "min-1", "r/min"), "ja": ("min⁻¹", "rpm", "min-1"),
        "zh": ("r/min", "rpm"), "ru": ("об/мин", "мин-1"),
    },
    "mm": {"ru": ("мм",)}, "µm": {"ru": ("мкм",)}, "N": {"ru": ("Н",)}, "kN": {"ru": ("кН",)}, "h": {"ru": ("ч",)},
    "kg": {"ru": ("кг",)}, "g": {"ru": ("г",)}, "N/mm": {"ru": ("Н/мм",)}, "mm/s": {"ru": ("мм/с",)},
    "mm²/s": {"ru": ("мм²/с", "сСт"), "en": ("mm²/s", "cSt"), "fr": ("mm²/s", "cSt"), "it": ("cSt", "mm²/s")},
    "°C": {"ja": ("℃", "°C"), "zh": ("℃", "°C")},
}  # fmt: skip
