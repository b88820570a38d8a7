"""The offices that write French, Italian and Spanish."""

from practice_twentyseventh.paper import Office

#: A calculation note for the customer: both bearings beside each other, each with its own column of units.
NOTE = Office(
    language="fr",
    kind="transposed",
    file="xlsx",
    sheet="Note de calcul",
    comma=True,
    units="column",
    machines=(
        "Surpresseur à vis SV-22: 6306-2Z/C3 + NU206",
        "Moteur de vélo VM-3: 6902-2RS + 6000-2RS",
        "Turbine de détente TD-7: 7006C/P4 + 6005/C3",
    ),
    positions="côté accouplement,côté opposé",
    drawing="NC-00-000",
    words="grease=graisse;oil bath=bain d'huile;steel=35NCD16;aluminium=AlSi7Mg;cast iron=fonte GL;"
    "horizontal=horizontal;vertical=vertical;locating=fixe;floating=libre;spring-loaded=avec ressort",
    page="""
NOTE DE CALCUL - MONTAGE DES ROULEMENTS
Machine : | {m} | | N° de plan : | {dwg} | | Indice : | {rev}
Rédigé par : | {pick L. Morel/P. Garnier} | | Le : | {day}/09/2025 | | Page : | 1/1

Vitesse de rotation maximale | {nmax} | tr/min
Durée de vie exigée L10h | {life} | h
@01 Température ambiante | {tamb} | °C
@02 Masse du rotor | {mass} | kg
@1 Coaxialité des alésages | {coax:,3} | mm
@1 Matière de l'arbre | {smat}
@1 Matière du carter | {hmat}

# Grandeur | {1.st} | < | {2.st} | < | Observations
# ^ | Valeur | Unité | Valeur | Unité | ^
Référence du roulement | {1.brg} | | {2.brg}
Fonction axiale | {1.role} | | {2.role}
Charge dynamique de base C | {1.C} | N | {2.C} | N | catalogue
@01 Vitesse limite du roulement | {1.nlim} | tr/min | {2.nlim} | tr/min | catalogue
Charge radiale Fr | {1.Fr} | N | {2.Fr} | N | cas le plus défavorable
Charge axiale Fa | {1.Fa} | N | {2.Fa} | N
Lubrification | {1.lub} | | {2.lub}
Portée d'arbre, diamètre et tolérance | {1.ss.n} {1.ss.c} | mm | {2.ss.n} {2.ss.c} | mm | ISO 286
Portée d'arbre, rugosité Ra | {1.sra} | µm | {2.sra} | µm
Portée d'arbre, cylindricité | {1.scyl:u} | µm | {2.scyl:u} | µm
Épaulement d'arbre, diamètre | {1.sda} | mm | {2.sda} | mm
Épaulement d'arbre, battement axial | {1.sax:u} | µm | {2.sax:u} | µm
@02 Congé d'arbre, rayon maxi | {1.sfil} | mm | {2.sfil} | mm
Alésage du logement, diamètre et tolérance | {1.hs.n} {1.hs.c} | mm | {2.hs.n} {2.hs.c} | mm | ISO 286
Alésage du logement, rugosité Ra | {1.hra} | µm | {2.hra} | µm
Alésage du logement, cylindricité | {1.hcyl:u} | µm | {2.hcyl:u} | µm
Épaulement du logement, diamètre | {1.hda} | mm | {2.hda} | mm
""",
)


def _attribute(name: str, value: str, unit: str = "") -> dict[str, str]:
    """An attribute as the French configurator writes it."""
    return {"libelle": name, "valeur": value, **({"unite": unit} if unit else {})}


#: The JSON of a configurator: lists of attributes with label, value and unit.
ATTRIBUTES = Office(
    language="fr",
    kind="attribute list",
    file="json",
    label="libelle",
    units="attribute",
    machines=(
        "Pompe à engrenages PE-25: 6205 + 6204",
        "Broche de tour BT-80: 71908C/P4 + 6008/C3",
        "Soufflante à hydrogène SH-2: 6201-2Z/C3",
    ),
    positions="avant,arrière",
    drawing="P000000",
    words="grease=graisse;oil bath=bain d'huile;steel=acier 42CrMo4;aluminium=alliage d'aluminium;cast iron=fonte",
    tree={
        "outil": "configurateur interne",
        "exporte_le": "2025-09-02",
        "machine": "{m}",
        "numero_plan": "{dwg}",
        "indice": "{rev}",
        "caracteristiques_generales": [
            _attribute("Vitesse maximale", "{nmax}", "tr/min"),
            _attribute("Durée de vie requise", "{life}", "h"),
            _attribute("Entraxe des roulements", "{span}", "mm"),
            {"@": "1", **_attribute("Matière du logement", "{hmat}")},
        ],
        "paliers": [
            "[positions]",
            {
                "palier": "{st}",
                "roulement": [
                    _attribute("Désignation", "{brg}"),
                    _attribute("Diamètre d'alésage d", "{d}", "mm"),
                    _attribute("Diamètre extérieur D", "{D}", "mm"),
                    _attribute("Largeur B", "{B}", "mm"),
                    _attribute("Charge radiale", "{Fr}", "N"),
                    _attribute("Lubrification", "{lub}"),
                ],
                "arbre": [
                    _attribute("Diamètre de la portée", "{ss.n}", "mm"),
                    _attribute("Classe de tolérance", "{ss.c}"),
                    _attribute("Écart supérieur", "{ss.u:u}", "µm"),
                    _attribute("Écart inférieur", "{ss.l:u}", "µm"),
                    _attribute("Rugosité Ra", "{sra}", "µm"),
                    _attribute("Cylindricité", "{scyl}", "mm"),
                    _attribute("Diamètre d'épaulement", "{sda}", "mm"),
                ],
                "logement": [
                    _attribute("Diamètre de l'alésage", "{hs.n}", "mm"),
                    _attribute("Classe de tolérance", "{hs.c}"),
                    _attribute("Écart supérieur", "{hs.u:u}", "µm"),
                    _attribute("Écart inférieur", "{hs.l:u}", "µm"),
                    _attribute("Rugosité Ra", "{hra}", "µm"),
                    _attribute("Cylindricité", "{hcyl}", "mm"),
                    _attribute("Diamètre d'épaulement", "{hda}", "mm"),
                ],
            },
        ],
    },
)

#: The table of tolerances from a drawing's corner: size, class, deviations.
TOLERANCES = Office(
    language="fr",
    kind="feature rows",
    file="csv ; utf-8-sig",
    comma=True,
    machines=(
        "Galet tendeur GT-35: 6203-2RS + 6202-2RS",
        "Générateur à aimants GA-12: 6206-2Z/C3 + 6205-2Z/C3",
        "Agitateur AG-5: 6208 + NU208",
    ),
    positions="palier A,palier B",
    drawing="D-0000-00",
    words="",
    page="""
Tableau des cotes tolérancées
Ensemble | {m}
Plan n° | {dwg} | Ind. | {rev}
Cotes en mm, écarts en µm

# Rep. | Palier | Surface | Roulement | Cote nominale | Classe | Écart sup. | Écart inf. | Ra (µm) |\
Cylindricité (µm) | Battement total (µm) | Contrôle
[positions]
{#} | {st} | Portée d'arbre | {brg} | Ø{ss.n} | {ss.c} | {ss.u:u} | {ss.l:u} | {sra} | {scyl:u} | {srun:u} | 100 %
{#} | {st} | Alésage du carter | {brg} | Ø{hs.n} | {hs.c} | {hs.u:u} | {hs.l:u} | {hra} | {hcyl:u} | {hrun:u} |\
{pick 100 %/1 sur 5}
[end]

Tolérances générales ISO 2768-mK
""",
)

#: An extraction from the goods system: short field names as headings, the readable ones on the line below.
ERP = Office(
    language="it",
    kind="position rows",
    file="csv ; cp1252",
    comma=True,
    count=2,
    machines=(
        "Soffiante a vite SV-30: 6307/C3 + NU207",
        "Soffiante a vite SV-45: 6309/C3 + NU209",
        "Pompa a ingranaggi PI-6: 6201 + 6200",
        "Pompa a ingranaggi PI-9: 6203 + 6202",
        "Rullo tenditore RT-2: 6202-2RS",
        "Rullo tenditore RT-3: 6203-2RS",
    ),
    positions="lato comando,lato opposto",
    drawing="IT000000",
    fits=("h5 k5 k6 m5", "H6 H7 J6 K6"),
    page="""
# COD_DIS | REV | DES_MACC | POS_CUSC | SIGLA_CUSC | ALB_DN | ALB_TOLL | ALB_RA | ALB_CIL | ALB_SPALL | ALL_DN |\
ALL_TOLL | ALL_RA | ALL_CIL | ALL_SPALL | VEL_MAX | FORNITORE
# Disegno | Revisione | Macchina | Supporto | Cuscinetto | Sede albero diametro (mm) | Sede albero tolleranza |\
Sede albero Ra (µm) | Sede albero cilindricità (mm) | Spallamento albero diametro (mm) |\
Alloggiamento diametro (mm) | Alloggiamento tolleranza | Alloggiamento Ra (µm) | Alloggiamento cilindricità (mm) |\
Spallamento alloggiamento diametro (mm) | Velocità massima (giri/min) | Fornitore
[machines]
[positions]
{dwg} | {rev} | {m} | {st} | {brg} | {ss.n:mm,1} | {ss.c} | {sra} | {scyl:,4} | {sda:,1} | {hs.n:mm,1} | {hs.c} |\
{hra} | {hcyl:,4} | {hda:,1} | {nmax} | F{pick 102/117}
[end]
[end]
""",
)

#: A designer's sheet: parts as lines of their own, positions across, an empty column, notes at the side.
BY_HAND = Office(
    language="it",
    kind="transposed",
    file="xlsx",
    sheet="Foglio1",
    comma=True,
    machines=(
        "Mandrino da tornio MT-52: 71907C/P4 + 6006/C3",
        "Motore per drone MD-7: 698ZZ + 696ZZ",
        "Generatore GE-15: 6308-2Z/C3 + 6306-2Z/C3",
    ),
    positions="Anteriore,Posteriore",
    drawing="SK-0000",
    words="locating=vincolato;floating=libero;spring-loaded=caricato con molla;grease=grasso;oil bath=bagno d'olio",
    page="""
Sedi cuscinetti | {m} | | | | da discutere lunedì
Disegno | {dwg} | | Rev. | {rev}
n max [giri/min] | {nmax}
@01 Massa rotore [kg] | {mass}
@0 Precarico assiale [N] | {pre}
@1 Interasse cuscinetti [mm] | {span}

# | {1.st} | | {2.st} | | Note
Cuscinetto | {1.brg} | | {2.brg}
d [mm] | {1.d} | | {2.d}
D [mm] | {1.D} | | {2.D}
Carico radiale Fr [N] | {1.Fr} | | {2.Fr} | | verificare con cinghia nuova
Vincolo assiale | {1.role} | | {2.role}
Lubrificazione | {1.lub} | | {2.lub}
ALBERO
Diametro sede [mm] | {1.ss.n} {1.ss.c} | | {2.ss.n} {2.ss.c} | | rettificato
Scostamento superiore [µm] | {1.ss.u:u} | | {2.ss.u:u}
Scostamento inferiore [µm] | {1.ss.l:u} | | {2.ss.l:u}
Rugosità Ra [µm] | {1.sra} | | {2.sra}
Cilindricità [µm] | {1.scyl:u} | | {2.scyl:u}
Diametro spallamento [mm] | {1.sda} | | {2.sda}
Raggio di raccordo max [mm] | {1.sfil} | | {2.sfil}
CORPO
Diametro sede [mm] | {1.hs.n} {1.hs.c} | | {2.hs.n} {2.hs.c} | | alesato
Scostamento superiore [µm] | {1.hs.u:u} | | {2.hs.u:u}
Scostamento inferiore [µm] | {1.hs.l:u} | | {2.hs.l:u}
Rugosità Ra [µm] | {1.hra} | | {2.hra}
Cilindricità [µm] | {1.hcyl:u} | | {2.hcyl:u}
Diametro spallamento [mm] | {1.hda} | | {2.hda}
Raggio di raccordo max [mm] | {1.hfil} | | {2.hfil}
""",
)

#: The JSON of a configurator: positions by their names, keys with unit, tolerances as one text.
TREE = Office(
    language="it",
    kind="nested",
    file="json",
    machines=(
        "Turbina TU-10: 7204C/P5 + 6204/C3",
        "Agitatore AL-22: 6211 + 6209",
        "Motore bici elettrica MB-4: 6903-2RS + 6901-2RS",
    ),
    positions="lato girante,lato motore",
    drawing="CFG.0000",
    words="steel=acciaio C45;aluminium=alluminio pressofuso;cast iron=ghisa GJL-250;grease=grasso;"
    "oil bath=bagno d'olio;"
    "horizontal=orizzontale;vertical=verticale",
    tree={
        "intestazione": {"macchina": "{m}", "disegno": "{dwg}", "revisione": "{rev}", "compilatore": "ufficio tecnico"},
        "esercizio": {
            "velocita_max_giri_min": "{nmax}", "durata_richiesta_h": "{life}", "@1 posizione_albero": "{axis}",
            "@0 temperatura_ambiente_C": "{tamb}",
        },
        "materiali": {"albero": "{smat}", "alloggiamento": "{hmat}"},
        "supporti": {
            "[positions]": {
                "cuscinetto": {"sigla": "{brg}", "coeff_carico_dinamico_N": "{C}", "lubrificazione": "{lub}"},
                "carichi_N": {"radiale": "{Fr}", "assiale": "{Fa}"},
                "sede_albero": {
                    "diametro_mm": "{ss.n} {ss.c} ({ss.u}/{ss.l})", "rugosita_Ra_um": "{sra}",
                    "cilindricita_mm": "{scyl}", "oscillazione_totale_mm": "{srun}", "diametro_spallamento_mm": "{sda}",
                    "raggio_raccordo_max_mm": "{sfil}",
                },
                "sede_alloggiamento": {
                    "diametro_mm": "{hs.n} {hs.c} ({hs.u}/{hs.l})", "rugosita_Ra_um": "{hra}",
                    "diametro_esterno_corpo_mm": "{housing_outer_diameter}",
                    "cilindricita_mm": "{hcyl}", "oscillazione_totale_mm": "{hrun}", "diametro_spallamento_mm": "{hda}",
                    "raggio_raccordo_max_mm": "{hfil}",
                },
            }
        },
    },
)  # fmt: skip

#: A list of requirements for a bought unit; the position stands as a line of its own between them.
REQUISITOS = Office(
    language="es",
    kind="long",
    file="xlsx",
    sheet="Requisitos",
    units="column",
    comma=True,
    machines=(
        "Soplante de tornillo ST-15: 6305-2Z/C3 + NU205",
        "Husillo de torno HT-40: 7008C/P4 + 6007/C3",
        "Bomba de engranajes BE-3: 6004-2Z + 6003-2Z",
    ),
    positions="Apoyo delantero,Apoyo trasero",
    drawing="RQ-0000",
    words="grease=grasa;oil bath=baño de aceite;locating=fijo;floating=libre;spring-loaded=cargado por muelle;"
    "continuous=continuo;intermittent=intermitente",
    page="""
LISTA DE REQUISITOS
Equipo | {m} | | Plano | {dwg} | | Edición | {rev}

# ID | Requisito | Valor | Unidad | Fuente | Verificado
R{#} | Velocidad máxima de giro | {nmax} | rpm | cliente
R{#} | Vida nominal requerida L10h | {life} | h | cliente | sí
R{#} | Régimen de trabajo | {duty} | | cliente
R{#} | Temperatura ambiente | {tamb} | °C | cliente | {pick sí/no}
R{#} | Masa del rotor | {mass} | kg | diseño
[positions]
{st}
R{#} | Designación del rodamiento | {brg} | | catálogo | sí
R{#} | Función axial | {role} | | diseño
R{#} | Lubricación | {lub} | | diseño
@1 R{#} | Intervalo de reengrase | {regreasing_interval} | h | mantenimiento
R{#} | Carga radial | {Fr} | N | cálculo | sí
R{#} | Carga axial | {Fa} | N | cálculo | sí
R{#} | Diámetro del asiento del eje | {ss.n} {ss.c} | mm | ISO 286
R{#} | Rugosidad Ra del asiento del eje | {sra} | µm | diseño
R{#} | Cilindricidad del asiento del eje | {scyl:,4} | mm | diseño
R{#} | Diámetro del resalte del eje | {sda} | mm | catálogo
R{#} | Diámetro del alojamiento | {hs.n} {hs.c} | mm | ISO 286
R{#} | Rugosidad Ra del alojamiento | {hra} | µm | diseño
R{#} | Cilindricidad del alojamiento | {hcyl:,4} | mm | diseño
R{#} | Diámetro del resalte del alojamiento | {hda} | mm | catálogo
[end]
""",
)

#: A design table: a row for each variant, two rows of headings, the positions as groups.
VARIANTS = Office(
    language="es",
    kind="machine rows",
    file="csv tab utf-16",
    count=3,
    machines=(
        "Motor de dron MD-20: 608-2Z + 607-2Z",
        "Motor de dron MD-28: 6000-2Z + 609-2Z",
        "Motor de dron MD-36: 6001-2Z + 6000-2Z",
        "Turbina TR-4: 6204/C3 + 6203/C3",
        "Turbina TR-6: 6205/C3 + 6204/C3",
        "Turbina TR-8: 6206/C3 + 6205/C3",
        "Generador GN-5: 6304-2Z + 6303-2Z",
        "Generador GN-7: 6305-2Z + 6304-2Z",
        "Generador GN-9: 6306-2Z + 6305-2Z",
    ),
    positions="Lado accionamiento,Lado opuesto",
    drawing="V-000",
    fits=("h5 k5 k6 m5", "H6 H7 J6 K6"),
    page="""
Tabla de variantes (dimensiones en mm, rugosidad Ra en µm)

# Variante | Plano | Velocidad máx. (rpm) | {1.st} | < | < | < | < | < | < | {2.st} | < | < | < | < | < | < | Peso (kg)
# ^ | ^ | ^ | Rodamiento | Eje Ø máx. | Eje Ø mín. | Eje Ra | Alojamiento Ø máx. | Alojamiento Ø mín. |\
Alojamiento Ra | Rodamiento | Eje Ø máx. | Eje Ø mín. | Eje Ra | Alojamiento Ø máx. | Alojamiento Ø mín. |\
Alojamiento Ra | ^
[machines]
{m} | {dwg} | {nmax} | {1.brg} | {1.ss.max} | {1.ss.min} | {1.sra} | {1.hs.max} | {1.hs.min} | {1.hra} | {2.brg} |\
{2.ss.max} | {2.ss.min} | {2.sra} | {2.hs.max} | {2.hs.min} | {2.hra} | {pick 3.2/4.1/5.6}
[end]
""",
)
ODD = (NOTE, ATTRIBUTES, ERP, REQUISITOS)
EVEN = (TOLERANCES, BY_HAND, TREE, VARIANTS)
