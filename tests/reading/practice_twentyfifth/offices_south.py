"""The offices that write French, Italian and Spanish."""

from practice_nineteenth.office import Office

FR_MOTORS = Office(
    language="fr",
    layout="machine_rows",
    kind="one row per machine, two-row headings",
    file="csv ; cp1252",
    machines="MB 56,MB 71,MB 90,MB 112,MB 132,MB 160",
    positions="côté accouplement,côté opposé",
    bearing="ball -2Z/C3;ball -2RS",
    dwg="MB-000-00",
    comma=True,
    count=3,
    fits="k5 j5 h5/H6 H7 J6",
    title="""
Gamme moteurs brushless - montage des roulements
Cotes en mm, efforts en N
""",
    foot="""
Document interne service achats
""",
    more={"units": "title", "lone": "bottom"},
    lines="""
Moteur | machine
N° de plan | drawing_number
Ind. | drawing_revision
Vitesse max. (tr/min) | speed_max | tr/min
Palier {p} > Roulement | bearing_designation
Palier {p} > Ø portée arbre | shaft_seat_diameter | mm | {n} {c}
Palier {p} > Ø alésage | housing_seat_diameter | mm | {n} {c}
Palier {p} > Ø épaulement arbre | shaft_shoulder_diameter | mm
Palier {p} > Charge radiale | radial_load | N
Palier {p} > Charge axiale | axial_load | N
Prix (EUR) | - | 188;240;312
""",
)
FR_CONTROL = Office(
    language="fr",
    layout="sections",
    kind="inspection sheet",
    file="xlsx",
    machines="Turbosoufflante TS 9,Broche dentaire BD 4",
    positions="PALIER AVANT,PALIER ARRIÈRE",
    bearing="angular C;ball -2Z",
    dwg="TS9.00.000",
    comma=True,
    title="""
Fiche de contrôle dimensionnel
Désignation : | {machine} | | Plan n° : | {drawing_number}
Indice : | {drawing_revision} | | Contrôleur : |
""",
    more={
        "columns": """
Rep. | no | C{n:02d}
Caractéristique | name
Unité | unit
Cote nominale | value | {n}
Tolérance sup. | value | {u} | size
Tolérance inf. | value | {l} | size
Valeur mesurée | empty
Conforme (O/N) | empty
Moyen de contrôle | - | micromètre;banc de forme;rugosimètre
""",
        "units": "column",
        "at": "2",
        "whole": "ENSEMBLE",
        "sheet": "Contrôle",
    },
    lines="""
Vitesse de rotation maximale | speed_max | tr/min
@0 Balourd résiduel admissible | residual_unbalance | g·mm
Coaxialité des portées d'arbre | coaxiality_of_shaft_seats | mm:3
Coaxialité des alésages | coaxiality_of_bores | mm:3
Diamètre de la portée d'arbre | shaft_seat_diameter | mm
Cylindricité de la portée d'arbre | shaft_seat_cylindricity | mm:3
Battement total de la portée d'arbre | shaft_seat_runout | mm:3
Rugosité Ra de la portée d'arbre | shaft_seat_roughness | µm
Diamètre de l'épaulement d'arbre | shaft_shoulder_diameter | mm
Battement axial de l'épaulement d'arbre | shaft_shoulder_runout | mm:3
Diamètre de l'alésage du logement | housing_seat_diameter | mm
Cylindricité de l'alésage du logement | housing_seat_cylindricity | mm:3
Battement total de l'alésage du logement | housing_seat_runout | mm:3
Rugosité Ra de l'alésage du logement | housing_seat_roughness | µm
Diamètre de l'épaulement du logement | housing_shoulder_diameter | mm
@1 Battement axial de l'épaulement du logement | housing_shoulder_runout | mm:3
""",
)
FR_PLM = Office(
    language="fr",
    layout="records",
    kind="json attributes",
    file="json",
    machines="Mélangeur ML 12,Séparateur centrifuge SC 3",
    positions="Palier haut,Palier bas",
    bearing="ball -2RS;angular B",
    dwg="ML-00000",
    choices="grease=graisse;oil bath=bain d'huile;locating=fixe;floating=libre;vertical=vertical;horizontal=horizontal;"
    "open=ouvert;contact seal=joint frottant",
    more={
        "items": "attributs",
        "head": """
typeObjet = Montage de roulements
nom = {machine}
numeroPlan = {drawing_number}
indice = {drawing_revision}
etat = En vérification
""",
        "columns": """
palier | position
libelle | name
valeur | value
unite | unit
source | - | CAO
""",
        "sparse": "1",
        "units": "key",
    },
    lines="""
Vitesse maximale | speed_max | tr/min
Masse du rotor | rotor_mass | kg
Position de l'arbre | shaft_orientation
Durée de vie demandée | required_life | h
Référence du roulement | bearing_designation
Fonction axiale | axial_role
Lubrification | lubrication
Étanchéité du roulement | closure
Charge radiale | radial_load | N
Charge axiale | axial_load | N
Diamètre portée arbre | shaft_seat_diameter | mm | {n} {c}
Cylindricité portée arbre | shaft_seat_cylindricity | µm
Rugosité Ra portée arbre | shaft_seat_roughness | µm
Diamètre épaulement arbre | shaft_shoulder_diameter | mm
Congé de raccordement arbre | shaft_fillet_radius | mm
Diamètre alésage logement | housing_seat_diameter | mm | {n} {c}
Cylindricité alésage logement | housing_seat_cylindricity | µm
Rugosité Ra alésage logement | housing_seat_roughness | µm
Diamètre épaulement logement | housing_shoulder_diameter | mm
""",
)
IT_CROSSED = Office(
    language="it",
    layout="crossed",
    file="csv ; utf-8",
    machines="Pompa centrifuga PC 40,Ventilatore centrifugo VC 31",
    positions="Lato girante,Lato motore",
    bearing="roller;ball -2Z/C3",
    dwg="PC.00.0000",
    comma=True,
    choices="grease=grasso;oil bath=bagno d'olio",
    title="""
TABELLA SEDI CUSCINETTI
Macchina | {machine}
Disegno | {drawing_number} | Rev. | {drawing_revision}
Velocità massima | {speed_max:giri/min} | giri/min
Temperatura | {?housing_temperature,operating_temperature:°C} | °C
""",
    foot="""
Quote in mm dove non indicato. Disegnato: R.P. Approvato: L.B.
""",
    more={"head": "Caratteristica|U.M.", "sides": "Albero|Alloggiamento", "low": "1", "units": "column"},
    lines="""
Cuscinetto | bearing_designation
Lubrificazione | lubrication
Carico radiale | radial_load | N
Carico assiale | axial_load | N
Diametro nominale sede | *_seat_diameter | mm | {n}
Classe di tolleranza | *_seat_diameter | mm | {c}
Scostamento superiore | *_seat_diameter | mm/µm | {u}
Scostamento inferiore | *_seat_diameter | mm/µm | {l}
Cilindricità sede | *_seat_cylindricity | µm
Oscillazione totale sede | *_seat_runout | µm
Rugosità Ra | *_seat_roughness | µm
Diametro spallamento | *_shoulder_diameter | mm
Oscillazione assiale spallamento | *_shoulder_runout | µm
@1 Raggio di raccordo max. | *_fillet_radius | mm
""",
)
IT_TEST = Office(
    language="it",
    layout="sections",
    kind="acceptance sheet",
    file="csv ; cp1252",
    machines="Elettromandrino EM 80,Motore servo MS 55",
    positions="Supporto anteriore,Supporto posteriore",
    bearing="angular C/P4;ball -2RS/C3",
    dwg="EM80-0000",
    comma=True,
    title="""
Scheda di collaudo primo pezzo
Prodotto: {machine} | Disegno n. {drawing_number} rev. {drawing_revision} | Fornitore: ............
""",
    more={
        "columns": """
Pos. | no
Particolare | part
Quota | name
Max | value | {max} | size
Min | value | {min} | size
Valore prescritto | value | | other
Unità | unit
Rilevato | empty
Esito | empty
""",
        "again": "1",
        "blank": "1",
        "units": "column",
    },
    lines="""
Albero > Diametro sede cuscinetto | shaft_seat_diameter | mm
Albero > Cilindricità sede cuscinetto | shaft_seat_cylindricity | mm:3
Albero > Rugosità Ra sede cuscinetto | shaft_seat_roughness | µm
Albero > Diametro spallamento | shaft_shoulder_diameter | mm
Albero > Oscillazione assiale spallamento | shaft_shoulder_runout | mm:3
Albero > Raggio di raccordo | shaft_fillet_radius | mm
Alloggiamento > Diametro sede cuscinetto | housing_seat_diameter | mm
Alloggiamento > Cilindricità sede cuscinetto | housing_seat_cylindricity | mm:3
Alloggiamento > Rugosità Ra sede cuscinetto | housing_seat_roughness | µm
Alloggiamento > Diametro spallamento | housing_shoulder_diameter | mm
Alloggiamento > Oscillazione assiale spallamento | housing_shoulder_runout | mm:3
""",
)
IT_ROWS = Office(
    language="it",
    layout="position_rows",
    kind="units in a row",
    file="xlsx",
    machines="Agitatore AG 25,Rullo avvolgitore RA 110",
    positions="A,B",
    bearing="ball -2Z;ball -2RS1",
    dwg="AG-000/00",
    fits="js5 js6/JS6 JS7",
    comma=True,
    choices="grease=Grasso;oil bath=Olio;locating=Bloccato;floating=Libero",
    title="""
Disposizione cuscinetti {machine}
Dis. | {drawing_number} | Rev. | {drawing_revision} | Data | {day}/09/2025
""",
    more={"units": "row", "sheet": "Cuscinetti"},
    lines="""
Supporto | station
Sigla cuscinetto | bearing_designation
Vincolo assiale | axial_role
Carico radiale | radial_load | N
Carico assiale | axial_load | N
Ø sede albero | shaft_seat_diameter | mm | {n} {c} (±{t})
Rugosità Ra sede albero | shaft_seat_roughness | µm
Cilindricità sede albero | shaft_seat_cylindricity | µm
Ø spallamento albero | shaft_shoulder_diameter | mm
Ø sede alloggiamento | housing_seat_diameter | mm | {n} {c} (±{t})
Rugosità Ra sede alloggiamento | housing_seat_roughness | µm
Cilindricità sede alloggiamento | housing_seat_cylindricity | µm
Ø spallamento alloggiamento | housing_shoulder_diameter | mm
Velocità max | speed_max | giri/min
Massa rotore | rotor_mass | kg
Coppia di serraggio ghiera | nut_torque | N·m
Note | - | vedi nota 1;
""",
)
ES_SEATS = Office(
    language="es",
    layout="seat_rows",
    kind="features",
    file="xlsx",
    machines="Bomba centrífuga BC 65,Soplante turbo ST 210",
    positions="lado impulsor,lado motor",
    bearing="ball /C3;angular B",
    dwg="BC-0000",
    comma=True,
    title="""
Ficha de asientos de rodamientos
Máquina: | {machine} | Plano: | {drawing_number} | Rev.: | {drawing_revision}
Velocidad máx. (rpm): | {speed_max:rpm} | Masa del rotor (kg): | {rotor_mass:kg}
Temperatura (°C): | {?housing_temperature,operating_temperature:°C}
""",
    foot="""
Revisado por compras: | | Revisado por calidad: |
""",
    more={
        "parts": "bearing=Rodamiento {p};shaft=Asiento de eje {p};housing=Alojamiento {p}",
        "order": "bearing shaft housing",
        "units": "heading",
        "sheet": "Asientos",
    },
    lines="""
Ítem | #
Elemento | part
Referencia | bearing_designation
Ø nominal (mm) | *_seat_diameter | mm/µm | {n}
Tolerancia ISO | *_seat_diameter | mm/µm | {c}
Desv. sup. (µm) | *_seat_diameter | mm/µm | {u}
Desv. inf. (µm) | *_seat_diameter | mm/µm | {l}
Cilindricidad (µm) | *_seat_cylindricity | µm
Salto total (µm) | *_seat_runout | µm
Ra (µm) | *_seat_roughness | µm
Ø resalte (mm) | *_shoulder_diameter | mm
Carga radial (N) | radial_load | N
Carga axial (N) | axial_load | N
Proveedor | - | comprado;taller;fundición
Peso (kg) | - | ;1,4;3,2
""",
)
ES_CAD = Office(
    language="es",
    layout="exported",
    kind="cad parameters",
    file="txt tab utf-8",
    machines="Husillo rectificador HR 45,Motor servo MS 100",
    positions="Delantero,Trasero",
    bearing="angular C/P5;ball -2Z",
    dwg="HR45.000",
    title="""
Parámetros del modelo | {machine}
Plano | {drawing_number}
""",
    more={
        "columns": """
N.º | no
Descripción | comment
Variable | name
Ecuación | expression | ={v}
Valor | value
Unidad | unit
""",
        "units": "column",
    },
    lines="""
Velocidad máxima de giro > nmax | speed_max | rpm
Distancia entre rodamientos > Lr | bearing_span | mm
Rodamiento {p}: diámetro interior > {p}_d | bore_diameter | mm
Rodamiento {p}: diámetro exterior > {p}_D | outside_diameter | mm
Rodamiento {p}: anchura > {p}_B | ring_width | mm
Asiento de eje {p}: diámetro nominal > {p}_eje_nom | shaft_seat_diameter | mm | {n}
Asiento de eje {p}: desviación superior > {p}_eje_es | shaft_seat_diameter | mm | {u}
Asiento de eje {p}: desviación inferior > {p}_eje_ei | shaft_seat_diameter | mm | {l}
Asiento de eje {p}: rugosidad Ra > {p}_eje_Ra | shaft_seat_roughness | µm
Asiento de eje {p}: cilindricidad > {p}_eje_cil | shaft_seat_cylindricity | mm
Resalte de eje {p}: diámetro > {p}_eje_res | shaft_shoulder_diameter | mm
Alojamiento {p}: diámetro nominal > {p}_aloj_nom | housing_seat_diameter | mm | {n}
Alojamiento {p}: desviación superior > {p}_aloj_ES | housing_seat_diameter | mm | {u}
Alojamiento {p}: desviación inferior > {p}_aloj_EI | housing_seat_diameter | mm | {l}
Alojamiento {p}: rugosidad Ra > {p}_aloj_Ra | housing_seat_roughness | µm
Alojamiento {p}: cilindricidad > {p}_aloj_cil | housing_seat_cylindricity | mm
Resalte de alojamiento {p}: diámetro > {p}_aloj_res | housing_shoulder_diameter | mm
""",
)
ES_TREE = Office(
    language="es",
    layout="attributes",
    kind="json attributes",
    file="json",
    machines="Ventilador axial VA 56,Separador SP 14",
    positions="Apoyo 1,Apoyo 2",
    bearing="ball -2Z/C3;angular B",
    dwg="VA56-00-00",
    choices="grease=grasa;oil bath=baño de aceite;locating=fijo;floating=libre",
    more={
        "head": "documento=Datos de apoyos;estado=Liberación pendiente",
        "items": "componentes",
        "item": "tipo apoyo caracteristicas",
        "whole": "Máquina",
        "keys": "denominacion valor unidad",
        "units": "key",
    },
    lines="""
Nombre de la máquina | machine
Número de plano | drawing_number
Revisión del plano | drawing_revision
Velocidad máxima | speed_max | rpm
Vida útil requerida | required_life | h
Fiabilidad requerida | required_reliability | %
Rodamiento > Designación | bearing_designation
Rodamiento > Función axial | axial_role
Rodamiento > Lubricación | lubrication
Rodamiento > Carga radial | radial_load | N
Rodamiento > Carga axial | axial_load | N
@0 Asiento del eje > Diámetro | shaft_seat_diameter | mm | {n} {c}
@1 Asiento del eje > Diámetro máx. | shaft_seat_diameter | mm | {max}
@1 Asiento del eje > Diámetro mín. | shaft_seat_diameter | mm | {min}
Asiento del eje > Cilindricidad | shaft_seat_cylindricity | mm
Asiento del eje > Rugosidad Ra | shaft_seat_roughness | µm
Asiento del eje > Diámetro del resalte | shaft_shoulder_diameter | mm
@0 Asiento del alojamiento > Diámetro | housing_seat_diameter | mm | {n} {c}
@1 Asiento del alojamiento > Diámetro máx. | housing_seat_diameter | mm | {max}
@1 Asiento del alojamiento > Diámetro mín. | housing_seat_diameter | mm | {min}
Asiento del alojamiento > Cilindricidad | housing_seat_cylindricity | mm
Asiento del alojamiento > Rugosidad Ra | housing_seat_roughness | µm
Asiento del alojamiento > Diámetro del resalte | housing_shoulder_diameter | mm
""",
)
ODD = (FR_MOTORS, FR_CONTROL, IT_CROSSED, ES_SEATS)
EVEN = (FR_PLM, IT_TEST, IT_ROWS, ES_CAD, ES_TREE)
