# ruff: noqa: E501 - a line of a picture is a line of the table
"""Offices that write French."""

from practice_twentyfirst.marks import Office

SHEET = Office(
    language="fr", layout="transposed", left=True, file="csv ; cp1252", comma=True, machines="Soufflante d'essai SE-1,Broyeur à couteaux BC-20",
    positions="A,B", bearing="ball -2Z;roller", number="PL-0000-A", choices="grease=graisse;oil bath=bain d'huile;locating=fixe;floating=libre",
    fits="k5 k6 m5 m6/H7 J7 K7 M7",
    picture="""
FICHE DE PARAMÈTRES - MONTAGE DE ROULEMENTS
Machine : | {ma} | Plan n° : | {dn} | Ind. : | {rv}
Établi par : | L. Vidal | le | {day}/01/2025
Vitesse maximale (tr/min) : | {nx} | Durée L10h exigée (h) : | {li}

^Désignation du paramètre | <<Palier {st}>> | Unité
Roulement | <<{bd}>> | -
Fonction axiale | <<{ax}>> | -
Alésage d | <<{d}>> | mm
Diamètre extérieur D | <<{D}>> | mm
Largeur B | <<{B}>> | mm
Charge dynamique de base C | <<{C~kN}>> | kN
Charge radiale Fr | <<{fr}>> | N
Charge axiale Fa | <<{fa}>> | N
Lubrification | <<{lu}>> | -
Portée d'arbre | <<{sd=n c}>> | mm
Écart supérieur portée d'arbre | <<{sd~mm/µm=u}>> | µm
Écart inférieur portée d'arbre | <<{sd~mm/µm=l}>> | µm
Rugosité Ra portée d'arbre | <<{sa}>> | µm
Cylindricité portée d'arbre | <<{sc~µm}>> | µm
Diamètre épaulement arbre | <<{ss}>> | mm
Alésage du logement | <<{hd=n c}>> | mm
Écart supérieur logement | <<{hd~mm/µm=u}>> | µm
Écart inférieur logement | <<{hd~mm/µm=l}>> | µm
Rugosité Ra logement | <<{ha}>> | µm
Cylindricité logement | <<{hc~µm}>> | µm
Diamètre épaulement logement | <<{hs}>> | mm
""",
)  # fmt: skip
TRIPLES = Office(
    language="fr", layout="long", file="csv , utf-8", machines="Essoreuse ES-30,Tête d'alésage TA-63", number="00.000.00", left=True,
    positions="côté commande,côté opposé", bearing="ball -2RS;angular C", choices="grease=graisse;steel=acier;cast iron=fonte;aluminium=aluminium;horizontal=horizontal;vertical=vertical",
    fits="k5 js5 m5/H6 JS6 K6",
    picture="""
^Objet | Repère | Caractéristique | Valeur | Unité
Ensemble | | Nom de la machine | {ma} |
Ensemble | | Numéro de plan | {dn} |
Ensemble | | Indice de révision | {rv} |
Ensemble | | Vitesse de rotation maximale | {nx} | tr/min
Ensemble | | Masse du rotor | {rm} | kg
Ensemble | | Position de l'arbre | {or} |
Ensemble | | Matière de l'arbre | {ms} |
Ensemble | | Matière du carter | {mh} |
%each
Roulement | {st} | Référence du roulement | {bd} |
Roulement | {st} | Mode de lubrification | {lu} |
Roulement | {st} | Effort radial | {fr} | N
Roulement | {st} | Effort axial | {fa} | N
Roulement | {st} | Température de service | {ot} | °C
Portée arbre | {st} | Diamètre | {sd=n u/l} | mm
Portée arbre | {st} | Rugosité Ra | {sa} | µm
Portée arbre | {st} | Cylindricité | {sc} | mm
Portée arbre | {st} | Battement total | {sr} | mm
Portée logement | {st} | Diamètre | {hd=n u/l} | mm
Portée logement | {st} | Rugosité Ra | {ha} | µm
Portée logement | {st} | Cylindricité | {hc} | mm
Portée logement | {st} | Battement total | {hr} | mm
@1 Épaulement arbre | {st} | Diamètre | {ss} | mm
@1 Épaulement logement | {st} | Diamètre | {hs} | mm
%end
""",
)  # fmt: skip
LINES = Office(
    language="fr", layout="row per position", file="xlsx", sheet="Portées", comma=True, machines="Moto-réducteur MR-8,Agitateur AG-150",
    positions="avant,arrière", bearing="ball -2Z;thin -2RS1", number="MR0000", fits="j5 k5 js6/H6 H7 J7", choices="grease=graisse",
    picture="""
Tableau des portées de roulements | | | | | dimensions en mm, états de surface en µm
Produit | {ma} | | Réf. dessin | {dn}

^Rep. | Emplacement | Réf. roulement | Jeu interne | d x D x B | Ø arbre | Tol. arbre | Ra arbre | Épaul. arbre Ø | Congé arbre max | Ø logement | Tol. logement | Ra logement | Épaul. logement Ø | Lubrifiant | Code article | Prix (€) | Observations
%each
{#} | {st} | {bd} | {cc} | {d}x{D}x{B} | {sd=n} | {sd=c} | {sa} | {ss} | {sf} | {hd=n} | {hd=c} | {ha} | {hs} | {lu} | {num=R00000} | {pick=4,20;7,85;12,40} | {pick=;rectifié}
%end

Vitesse max. : | {nx} | tr/min
Durée de vie requise : | {li} | h
@0 Température ambiante : | {ta} | °C
@1 Température : | {?th,ts,ta} | °C
""",
)  # fmt: skip
RECORDS = Office(
    language="fr", layout="JSON attribute list", file="json", machines="Extracteur de fumées EF-4,Bobinoir BN-2",
    positions="CA,COA", bearing="ball -2Z;ball", number="EF-000-000", fits="k5 k6 m6/H7 J7 M7",
    choices="grease=graisse;locating=palier fixe;floating=palier libre",
    picture="""
{
"fichier": "export_caracteristiques",
"date": "2025-06-{day}",
"article": {"nom": "{ma}", "plan": "{dn}", "indice": "{rv}"},
"general": [
 {"libelle": "vitesse maximale", "valeur": "={nx}", "unite": "tr/min"},
 {"libelle": "durée de vie requise", "valeur": "={li}", "unite": "h"},
 {"libelle": "coaxialité des alésages", "valeur": "={cb}", "unite": "mm"},
 {"libelle": "masse du rotor", "valeur": "={rm}", "unite": "kg"},
],
"paliers": [
%each
 {"repere": "{st}", "caracteristiques": [
  {"libelle": "roulement", "valeur": "{bd}", "unite": null},
  {"libelle": "fonction", "valeur": "{ax}", "unite": null},
  {"libelle": "lubrification", "valeur": "{lu}", "unite": null},
  {"libelle": "charge radiale", "valeur": "={fr}", "unite": "N"},
  {"libelle": "charge axiale", "valeur": "={fa}", "unite": "N"},
  {"libelle": "portée arbre - diamètre", "valeur": "{sd=n c}", "unite": "mm"},
  {"libelle": "portée arbre - Ra", "valeur": "={sa}", "unite": "µm"},
  {"libelle": "portée arbre - cylindricité", "valeur": "={sc~µm}", "unite": "µm"},
  {"libelle": "épaulement arbre - diamètre", "valeur": "={ss}", "unite": "mm"},
  {"libelle": "logement - diamètre", "valeur": "{hd=n c}", "unite": "mm"},
  {"libelle": "logement - Ra", "valeur": "={ha}", "unite": "µm"},
  {"libelle": "logement - cylindricité", "valeur": "={hc~µm}", "unite": "µm"},
  {"libelle": "épaulement logement - diamètre", "valeur": "={hs}", "unite": "mm"},
 ]},
%end
]
}
""",
)  # fmt: skip
ODD = (SHEET, TRIPLES)
EVEN = (LINES, RECORDS)
