"""The offices that write French, Italian and Spanish."""

from practice_nineteenth.office import Office

LIST = Office(
    language="fr",
    layout="listing",
    kind="long",
    file="csv ; cp1252",
    machines="Turbine d'aspiration TA 4,Arbre de touret AT 25",
    positions="P1,P2",
    bearing="ball -2Z;ball -2RS1/C3;angular C",
    dwg="PL-0000-0",
    comma=True,
    choices="grease=graisse;oil bath=bain d'huile;horizontal=horizontal;vertical=vertical",
    title="""
Fiche des portées de roulements
Ensemble : | {machine}
Plan n° : | {drawing_number} | Ind. | {drawing_revision}
Établi par : | BE mécanique | le {day}/02/2025
Vitesse de rotation max. (tr/min) : | {speed_max:tr/min}
@0 Durée de vie L10h exigée (h) : | {required_life:h}
@1 Masse du rotor (kg) : | {rotor_mass:kg}
@1 Coaxialité des alésages (mm) : | {coaxiality_of_bores:mm}
""",
    more={
        "columns": """
N° | no
Palier | position
Élément | part
Caractéristique | name
Valeur | value | {n}
Tolérance | value | {c} | size
Écart sup. (µm) | value | {u} | size
Écart inf. (µm) | value | {l} | size
Unité | unit
Moyen de contrôle | - | micromètre;colonne air;rugosimètre
""",
        "units": "column",
        "first": "",
    },
    lines="""
Roulement > Désignation | bearing_designation
Roulement > Lubrification | lubrication
Roulement > Charge radiale | radial_load | N
Roulement > Charge axiale | axial_load | N
Arbre > Diamètre de portée | shaft_seat_diameter | mm/µm
Arbre > Rugosité Ra | shaft_seat_roughness | µm
Arbre > Cylindricité | shaft_seat_cylindricity | mm
Arbre > Battement total radial | shaft_seat_runout | mm
Arbre > Diamètre d'épaulement | shaft_shoulder_diameter | mm
@0 Arbre > Congé de raccordement max. | shaft_fillet_radius | mm
Logement > Diamètre de portée | housing_seat_diameter | mm/µm
Logement > Rugosité Ra | housing_seat_roughness | µm
Logement > Cylindricité | housing_seat_cylindricity | mm
Logement > Battement total radial | housing_seat_runout | mm
Logement > Diamètre d'épaulement | housing_shoulder_diameter | mm
""",
)
SEATS = Office(
    language="fr",
    layout="seat_rows",
    file="csv ; utf-8-sig",
    machines="Extracteur de fumées EF 8,Pompe à vide PV 3",
    positions="côté poulie,côté ventilateur",
    bearing="ball -2RZ;ball;ball ZZ",
    dwg="00 000 000",
    comma=True,
    title="""
TOLÉRANCES DES PORTÉES - {machine}
plan {drawing_number} indice {drawing_revision}
n maxi : | {speed_max:tr/min} | tr/min
@0 Température ambiante : | {ambient_temperature:°C} | °C
@1 Température : | {?housing_temperature,operating_temperature,ambient_temperature,temperature_max:°C} | °C
""",
    foot="""
Cotes en mm, défauts de forme et écarts en µm.
Vérifié : LM
""",
    more={"parts": "shaft=arbre;housing=alésage", "order": "shaft housing", "units": "foot", "by": "position"},
    lines="""
Palier | station
Roulement monté | bearing_designation
Portée | part
Ø nominal | *_seat_diameter | mm/µm | {n}
Classe de tolérance | *_seat_diameter | mm/µm | {c}
Écart supérieur | *_seat_diameter | mm/µm | {u}
Écart inférieur | *_seat_diameter | mm/µm | {l}
Ra (µm) | *_seat_roughness | µm
Cylindricité | *_seat_cylindricity | µm
Battement total radial | *_seat_runout | µm
Ø épaulement | *_shoulder_diameter | mm
@1 Battement de face d'épaulement | *_shoulder_runout | µm
Rayon de congé maxi | *_fillet_radius | mm
Observations | - | rectifié;alésé
""",
)
BLOCKS = Office(
    language="it",
    layout="blocks",
    file="xlsx",
    machines="Soffiante a canale SC 6,Albero lama AL 14",
    positions="Supporto A,Supporto B",
    bearing="ball -2Z;angular B;ball -2RS C3",
    dwg="D.00.0000",
    comma=True,
    choices="grease=a grasso;oil bath=a bagno d'olio;locating=vincolato;floating=flottante;steel=C40;cast iron=ghisa;"
    "aluminium=lega di alluminio",
    title="""
Scheda sedi cuscinetti
Complessivo | {machine} | | Disegno | {drawing_number}
Indice di revisione | {drawing_revision} | | Redatto | UT {day}/10/2024
Velocità massima (giri/min) | {speed_max:giri/min}
Durata richiesta L10h (h) | {required_life:h}
@0 Precarico assiale (N) | {preload_force:N}
@1 Materiale alloggiamento | {housing_material}
""",
    more={"across": "", "unit": "last", "units": "column", "sheet": "Sedi"},
    lines="""
Cuscinetto | bearing_designation
Funzione assiale | axial_role
Lubrificazione | lubrication
Carico radiale | radial_load | N
Carico assiale | axial_load | N
Sede albero > Diametro | shaft_seat_diameter | mm | {n} {c}
Sede albero > Scostamento superiore | shaft_seat_diameter | mm | {u}
Sede albero > Scostamento inferiore | shaft_seat_diameter | mm | {l}
Sede albero > Rugosità Ra | shaft_seat_roughness | µm
Sede albero > Cilindricità | shaft_seat_cylindricity | mm:3
Sede albero > Oscillazione radiale totale | shaft_seat_runout | mm:3
@0 Sede albero > Diametro spallamento | shaft_shoulder_diameter | mm
Sede alloggiamento > Diametro | housing_seat_diameter | mm | {n} {c}
Sede alloggiamento > Scostamento superiore | housing_seat_diameter | mm | {u}
Sede alloggiamento > Scostamento inferiore | housing_seat_diameter | mm | {l}
Sede alloggiamento > Rugosità Ra | housing_seat_roughness | µm
Sede alloggiamento > Cilindricità | housing_seat_cylindricity | mm:3
Sede alloggiamento > Oscillazione radiale totale | housing_seat_runout | mm:3
@0 Sede alloggiamento > Diametro spallamento | housing_shoulder_diameter | mm
""",
)
MACHINES = Office(
    language="it",
    layout="position_rows",
    file="csv ; utf-8",
    machines="Ventola VT 3,Ventola VT 5,Girante GR 2,Girante GR 7",
    positions="ant.,post.",
    bearing="ball -2Z;ball;ball -2RZ",
    fits="js5 js6/JS6 JS7",
    dwg="MV0000",
    comma=True,
    count=2,
    choices="horizontal=orizzontale;vertical=verticale;locating=fisso;floating=libero",
    title="""
Elenco accoppiamenti cuscinetti - aggiornato {day}/01/2025
""",
    more={"gap": "0", "once": ""},
    lines="""
Macchina | machine
Disegno n. | drawing_number
n max [giri/min] | speed_max | giri/min
Massa rotore [kg] | rotor_mass | kg
@0 Asse | shaft_orientation
Posiz. | station
Sigla cuscinetto | bearing_designation
Vincolo | axial_role
Fr [N] | radial_load | N
Fa [N] | axial_load | N
Perno [mm] | shaft_seat_diameter | mm | {n} ±{t}
Ra perno [µm] | shaft_seat_roughness | µm
Cilindricità perno [mm] | shaft_seat_cylindricity | mm:3
Spallamento albero Ø [mm] | shaft_shoulder_diameter | mm
Foro alloggiamento [mm] | housing_seat_diameter | mm | {n} ±{t}
Ra foro [µm] | housing_seat_roughness | µm
Cilindricità foro [mm] | housing_seat_cylindricity | mm:3
@1 Spallamento alloggiamento Ø [mm] | housing_shoulder_diameter | mm
Note | - | ;;verificare;
""",
)
DISTINTA = Office(
    language="it",
    layout="seat_rows",
    kind="parts list",
    file="xlsx",
    machines="Aspiratrucioli AT 9,Pompa centrifuga PC 21",
    positions="lato motore,lato girante",
    bearing="ball -2Z/C3;ball -2RS1",
    dwg="00.0000.00",
    comma=True,
    choices="grease=grasso;oil bath=olio;steel=C40;cast iron=EN-GJL-200;aluminium=EN AC-46000",
    title="""
DISTINTA E SEDI | {machine}
N. disegno | {drawing_number} | Rev. | {drawing_revision}
Velocità di rotazione max | {speed_max:giri/min} | giri/min
Temperatura ambiente | {ambient_temperature:°C} | °C
""",
    more={
        "parts": "bearing=Cuscinetto a sfere;shaft=Albero - sede cuscinetto;housing=Carcassa - sede cuscinetto",
        "order": "shaft bearing housing",
    },
    lines="""
Pos. | #
Denominazione | part
Lato | station
Q.tà | - | 1
Sigla | bearing_designation
Lubrificante | lubrication
Carico radiale [N] | radial_load | N
Diametro sede [mm] | *_seat_diameter | mm | {n} {c}
Rugosità Ra [µm] | *_seat_roughness | µm
Cilindricità [mm] | *_seat_cylindricity | mm:3
Oscillazione totale radiale [mm] | *_seat_runout | mm:3
Diametro spallamento [mm] | *_shoulder_diameter | mm
Raggio raccordo max [mm] | *_fillet_radius | mm
Materiale | *_material
Peso [kg] | - | 0,1;1,2;3,8
""",
)
WIDE = Office(
    language="es",
    layout="machine_rows",
    file="csv ; utf-8",
    machines="Soplador SP-2,Soplador SP-4,Soplador SP-7,Molino M-1,Molino M-3,Molino M-9",
    positions="LA,LO",
    bearing="ball -2Z;ball -2RS",
    dwg="E-00000",
    comma=True,
    count=3,
    choices="grease=grasa;oil bath=aceite",
    title="""
Tabla de asientos de rodamientos por máquina (LA: lado acoplamiento; LO: lado opuesto)
""",
    lines="""
Máquina | machine
Plano | drawing_number
Velocidad máx. (rpm) | speed_max | rpm
Vida L10h requerida (h) | required_life | h
Masa del rotor (kg) | rotor_mass | kg
Rodamiento {p} | bearing_designation
Ø eje {p} (mm) | shaft_seat_diameter | mm | {n} {c}
Ra eje {p} (µm) | shaft_seat_roughness | µm
@0 Cilindricidad eje {p} (mm) | shaft_seat_cylindricity | mm:3
Ø alojamiento {p} (mm) | housing_seat_diameter | mm | {n} {c}
Ra alojamiento {p} (µm) | housing_seat_roughness | µm
@0 Cilindricidad alojamiento {p} (mm) | housing_seat_cylindricity | mm:3
Carga radial {p} (N) | radial_load | N
@1 Carga axial {p} (N) | axial_load | N
Responsable | - | OT-1;OT-2
""",
)
ACROSS = Office(
    language="es",
    layout="transposed",
    file="csv ; cp1252",
    machines="Agitador AG-5,Cabezal de lijado CL-2",
    positions="Apoyo 1,Apoyo 2",
    bearing="ball -2RS/C3;angular C P5",
    dwg="PL0000/0",
    comma=True,
    choices="grease=grasa;oil bath=baño de aceite;locating=fijo;floating=libre;cast iron=fundición gris;"
    "aluminium=aleación de aluminio",
    title="""
Hoja de datos: asientos de rodamientos
Conjunto | {machine}
Plano n.º | {drawing_number} | Edición | {drawing_revision}
Velocidad máxima | {speed_max:r/min} | r/min
Material de la carcasa | {housing_material}
@1 Temperatura | {?housing_temperature,operating_temperature,ambient_temperature,temperature_max:°C} | °C
""",
    foot="""
Aprobado: JR / {day}-06-2024
""",
    more={
        "columns": """
Elemento | part
Parámetro | name
{n} | values
Ud. | unit
""",
        "units": "column",
        "none": "-",
    },
    lines="""
Rodamiento > Designación | bearing_designation
Rodamiento > Función axial | axial_role
Rodamiento > Lubricación | lubrication
Rodamiento > Carga radial Fr | radial_load | N
Rodamiento > Carga axial Fa | axial_load | N
Eje > Diámetro máx. | shaft_seat_diameter | mm | {max}
Eje > Diámetro mín. | shaft_seat_diameter | mm | {min}
Eje > Rugosidad Ra | shaft_seat_roughness | µm
Eje > Cilindricidad | shaft_seat_cylindricity | µm
Eje > Diámetro de resalte | shaft_shoulder_diameter | mm
@0 Eje > Radio de acuerdo máx. | shaft_fillet_radius | mm
Alojamiento > Diámetro máx. | housing_seat_diameter | mm | {max}
Alojamiento > Diámetro mín. | housing_seat_diameter | mm | {min}
Alojamiento > Rugosidad Ra | housing_seat_roughness | µm
Alojamiento > Cilindricidad | housing_seat_cylindricity | µm
Alojamiento > Diámetro de resalte | housing_shoulder_diameter | mm
""",
)
PAIRS = Office(
    language="fr",
    layout="machine_rows",
    kind="machine_rows, two-row headings",
    file="xlsx",
    machines="Ventilateur V2,Ventilateur V4,Ventilateur V6,Broche B10,Broche B16,Broche B20",
    positions="Palier avant,Palier arrière",
    bearing="ball -2Z;ball -2RZ",
    dwg="C0000",
    comma=True,
    count=3,
    choices="horizontal=horizontal;vertical=vertical",
    title="""
Récapitulatif des ajustements de roulements | | mise à jour : {day}/06/2025
""",
    more={"pairs": "", "short": "Palier avant|Palier arrière", "sheet": "Récap"},
    lines="""
Machine | machine
N° de plan | drawing_number
Vitesse maxi (tr/min) | speed_max | tr/min
Masse rotor (kg) | rotor_mass | kg
Référence roulement > {p} | bearing_designation
Charge radiale (N) > {p} | radial_load | N
Diamètre arbre (mm) > {p} | shaft_seat_diameter | mm | {n} {c}
Ra arbre (µm) > {p} | shaft_seat_roughness | µm
Diamètre logement (mm) > {p} | housing_seat_diameter | mm | {n} {c}
Ra logement (µm) > {p} | housing_seat_roughness | µm
Commentaire | - | ;à contrôler
""",
)
OBJETOS = Office(
    language="es",
    layout="attributes",
    file="json",
    machines="Impulsor IM-3,Husillo de rectificado HR-8",
    positions="lado polea,lado libre",
    bearing="ball -2RS;angular C",
    dwg="N-000000",
    choices="grease=grasa;oil bath=baño de aceite;horizontal=horizontal;vertical=vertical;steel=acero;"
    "cast iron=fundición gris;aluminium=aluminio",
    more={
        "keys": "nombre valor unidad",
        "item": "tipo posicion atributos",
        "items": "componentes",
        "whole": "conjunto rotor",
        "head": "origen=PDM;fecha=2025-03-04;estado=liberado",
        "units": "attribute",
    },
    lines="""
denominación | machine
número de plano | drawing_number
revisión | drawing_revision
velocidad máxima | speed_max | rpm
vida nominal requerida | required_life | h
orientación del eje | shaft_orientation
material de la carcasa | housing_material
rodamiento > designación | bearing_designation
rodamiento > lubricación | lubrication
rodamiento > carga radial | radial_load | N
rodamiento > carga axial | axial_load | N
asiento del eje > diámetro nominal | shaft_seat_diameter | mm | {n}
asiento del eje > clase de tolerancia | shaft_seat_diameter |  | {c}
asiento del eje > rugosidad Ra | shaft_seat_roughness | µm
asiento del eje > cilindricidad | shaft_seat_cylindricity | mm
asiento del eje > diámetro del resalte | shaft_shoulder_diameter | mm
@1 asiento del eje > radio de acuerdo máximo | shaft_fillet_radius | mm
asiento del alojamiento > diámetro nominal | housing_seat_diameter | mm | {n}
asiento del alojamiento > clase de tolerancia | housing_seat_diameter |  | {c}
asiento del alojamiento > rugosidad Ra | housing_seat_roughness | µm
asiento del alojamiento > cilindricidad | housing_seat_cylindricity | mm
asiento del alojamiento > diámetro del resalte | housing_shoulder_diameter | mm
""",
)
ODD = (LIST, BLOCKS, WIDE, PAIRS)
EVEN = (SEATS, MACHINES, DISTINTA, ACROSS, OBJETOS)
