# ruff: noqa: E501  (a line of a form is a line of a table)
"""The offices that write French."""

from practice_twentieth.office import Export, Office, style

WORDS = """steel=Acier;cast iron=Fonte grise;aluminium=Aluminium;horizontal=Horizontal;vertical=Vertical;
continuous=Continu;intermittent=Intermittent;grease=Graisse;locating=Fixe;floating=Libre;inner=Bague intérieure;
deep groove ball=Roulement à billes à gorge profonde;cylindrical roller=Roulement à rouleaux cylindriques;
angular contact ball=Roulement à billes à contact oblique;open=Ouvert;shield=Flasques;contact seal=Joints à contact"""
#: Pumps and turbines.
TURBINES = Office(
    "fr", 1, "Pompe centrifuge PC 50|Turbine d'essai TE 8|Ventilateur hélicoïde VH 560|Surpresseur SR 30",
    "6305-2Z|6306-2Z|6307-2Z|6206-2Z/C3", style(WORDS, comma=True), (
        Export("row per position", "csv ; utf-8-sig", "CA,COA", """
Tableau des paliers;;;;Indice {rev}
Machine;{name};;Plan n°;{dwg}
Vitesse maxi (tr/min);{nmax};;Durée de vie L10h demandée (h);{life}

# Palier;Roulement;Fonction axiale;Charge radiale (N);Charge axiale (N);Portée d'arbre Ø (mm);Tolérance arbre;Rugosité Ra arbre (µm);Cylindricité arbre (mm);Épaulement arbre Ø (mm);Logement Ø (mm);Tolérance logement;Rugosité Ra logement (µm);Cylindricité logement (mm);Épaulement logement Ø (mm);Fournisseur
%pos
{pos};{des};{role};{Fr};{Fa};{s.N};{s.C};{s.ra};{s.cyl};{s.sh};{h.N};{h.C};{h.ra};{h.cyl};{h.sh};au choix
%end

CA : côté accouplement, COA : côté opposé à l'accouplement
""".replace(";", "|")),
        Export("transposed", "xlsx", "A,B", """
Machine|{name}
Plan n°|{dwg}
Vitesse maxi|{nmax} tr/min

# Caractéristique|<pPalier {pos}p>|Unité|Observations
Désignation du roulement|<p{des}p>||
Diamètre d'alésage d|<p{d}p>|mm|
Diamètre extérieur D|<p{D}p>|mm|
Largeur B|<p{B}p>|mm|
Charge radiale|<p{Fr}p>|N|note de calcul
ARBRE
Diamètre de la portée|<p{s.N} {s.C}p>|mm|rectifié
Rugosité Ra|<p{s.ra}p>|µm|
Cylindricité|<p{s.cyl}p>|mm|
Battement total radial|<p{s.run}p>|mm|
Diamètre de l'épaulement|<p{s.sh}p>|mm|
Congé maxi|<p{s.fil}p>|mm|
LOGEMENT
Diamètre de l'alésage du logement|<p{h.N} {h.C}p>|mm|
Rugosité Ra|<p{h.ra}p>|µm|
Cylindricité|<p{h.cyl}p>|mm|
Battement total radial|<p{h.run}p>|mm|
Diamètre de l'épaulement|<p{h.sh}p>|mm|
Congé maxi|<p{h.fil}p>|mm|
"""),
        Export("long", "csv tab cp1252", "avant,arrière", """
# Repère|Élément|Grandeur|Valeur|Unité
|Machine|Désignation de la machine|{name}|
|Machine|Numéro de plan|{dwg}|
|Machine|Vitesse de rotation maximale|{nmax}|tr/min
|Machine|Température ambiante|{tamb}|°C
|Machine|Masse du rotor|{mass}|kg
%pos
Palier {pos}|Roulement|Désignation|{des}|
Palier {pos}|Roulement|Charge radiale|{Fr}|N
Palier {pos}|Roulement|Charge axiale|{Fa}|N
Palier {pos}|Arbre|Diamètre de portée|{s.N} {s.C}|mm
Palier {pos}|Arbre|Rugosité Ra|{s.ra}|µm
Palier {pos}|Arbre|Cylindricité|{s.cyl}|mm
Palier {pos}|Arbre|Diamètre d'épaulement|{s.sh}|mm
Palier {pos}|Logement|Diamètre de portée|{h.N} {h.C}|mm
Palier {pos}|Logement|Rugosité Ra|{h.ra}|µm
Palier {pos}|Logement|Cylindricité|{h.cyl}|mm
Palier {pos}|Logement|Diamètre d'épaulement|{h.sh}|mm
%end
"""),
    ),
)  # fmt: skip
#: Spindles: deviations.
BROCHES = Office(
    "fr", 0, "Broche de perçage BP 25|Broche d'usinage BU 60|Électrobroche EB 18", "7005 C|7006 C|7204 AC|7206 AC",
    style(WORDS, comma=True, group=" "), (
        Export("row per seat", "xlsx", "Avant,Arrière", """
CONTRÔLE DES PORTÉES DE ROULEMENTS
Broche|{name}||Plan|{dwg}||Vérifié par|Cl. M.
Vitesse maximale (tr/min)|{nmax}||Entraxe des paliers (mm)|{span}

# Position|Roulement|Portée|Cote nominale (mm)|Écart sup. (µm)|Écart inf. (µm)|Ra (µm)|Cylindricité (µm)|Battement axial épaulement (µm)|Ø épaulement (mm)|Machine de mesure
%pos
{pos}|{des}|Arbre|{s.N}|{s.U:um}|{s.L:um}|{s.ra}|{s.cyl:um}|{s.shr:um}|{s.sh}|MMT 2
{pos}|{des}|Logement|{h.N}|{h.U:um}|{h.L:um}|{h.ra}|{h.cyl:um}|{h.shr:um}|{h.sh}|MMT 2
%end
"""),
        Export("blocks", "csv ; cp1252", "1,2", """
FICHE DE MONTAGE
Broche :;{name}
Plan :;{dwg}
Vitesse maximale :;{nmax};tr/min
Effort de précharge du ressort :;{pf};N
_
%pos
ROULEMENT {pos};;
Désignation :;{des};
Angle de contact :;{alpha};°
Effort radial :;{Fr};N
Effort axial :;{Fa};N
Portée arbre :;{s.N} {s.U}/{s.L};mm
État de surface Ra portée arbre :;{s.ra};µm
Diamètre épaulement arbre :;{s.sh};mm
Congé maximal arbre :;{s.fil};mm
Portée logement :;{h.N} {h.U}/{h.L};mm
État de surface Ra portée logement :;{h.ra};µm
Diamètre épaulement logement :;{h.sh};mm
Congé maximal logement :;{h.fil};mm
_
%end
Monter les roulements en disposition en O.
""".replace(";", "|"), also="preload_method"),
    ),
)  # fmt: skip
#: Motors: a row for each, and what the data system gives.
MOTEURS = Office(
    "fr", 1, "Moteur asynchrone MA 90|Motoréducteur MR 12|Alternateur AL 40|Moteur frein MF 71",
    "6204-2RS1|6205-2RS1|6206-2RS1|6305-2RS1", style(WORDS, comma=True), (
        Export("row per machine", "csv ; utf-8", "CA,COA", """
# Désignation machine;N° de plan;Vitesse max. [tr/min];Masse rotor [kg];<pRoulement {pos};Ø arbre {pos} [mm];Ø logement {pos} [mm];Charge radiale {pos} [N]p>;Code article
%machine
{name};{dwg};{nmax};{mass};<p{des};{s.N} {s.C};{h.N} {h.C};{Fr}p>;A-5520
%end
""".replace(";", "|"), 4),
        Export("nested", "json", "CA,COA", {
            "machine": "{name}",
            "numeroPlan": "{dwg}",
            "indice": "{rev}",
            "vitesseMax": {"valeur": "{nmax}", "unite": "tr/min"},
            "temperatureAmbiante": {"valeur": "{tamb}", "unite": "°C"},
            "paliers": {"{pos}": {
                "roulement": {
                    "designation": "{des}",
                    "chargeRadiale": {"valeur": "{Fr}", "unite": "N"},
                    "chargeAxiale": {"valeur": "{Fa}", "unite": "N"},
                },
                "arbre": {
                    "diametrePortee": {"valeur": "{s.N} {s.C}", "unite": "mm"},
                    "rugositeRa": {"valeur": "{s.ra}", "unite": "µm"},
                    "cylindricite": {"valeur": "{s.cyl}", "unite": "mm"},
                    "diametreEpaulement": {"valeur": "{s.sh}", "unite": "mm"},
                },
                "logement": {
                    "diametrePortee": {"valeur": "{h.N} {h.C}", "unite": "mm"},
                    "rugositeRa": {"valeur": "{h.ra}", "unite": "µm"},
                    "cylindricite": {"valeur": "{h.cyl}", "unite": "mm"},
                    "diametreEpaulement": {"valeur": "{h.sh}", "unite": "mm"},
                },
            }},
            "auteur": "B. Roy",
        }),
    ),
)  # fmt: skip
