"""The offices that write French: fan and pump makers, a workshop for electric spindles, a design office."""

from practice_twentyfourth.office import Office

ACROSS = Office(
    language="fr",
    layout="transposed",
    file="csv ; cp1252",
    machines="Ventilateur d'extraction VX 500,Surpresseur SP 220",
    positions="A,B",
    bearings="6307-2Z/C3+6206-2Z/C3;6008-2Z+6006-2Z",
    fits="k5 m5 j6 k6/H7 J7 H6",
    dwg="VX-000-00",
    comma=True,
    choices="grease=graisse;oil bath=bain d'huile;steel=acier 42CrMo4;stainless steel=inox X30Cr13;"
    "cast iron=fonte EN-GJL-250;housing_material.steel=acier S355;aluminium=aluminium AS7G;locating=fixe;"
    "floating=libre;horizontal=horizontal;vertical=vertical",
    template="""
FICHE DE PALIERS | {machine}
Plan n° | {dwg} | Ind. | {rev}
Établi par : BE | Le {day}/04/2025

# Rep. | Paramètre | Unité | p< Palier {p} >p | Observations
1 | Roulement |  | p< {bd} >p
1a | Dimensions du roulement d x D x B | mm | p< {d} x {D} x {B} >p
2 | Rôle axial du palier |  | p< {role} >p
3 | Lubrification |  | p< {lub} >p
4 | Charge radiale | N | p< {fr} >p
5 | Charge axiale | N | p< {fa} >p
6 | Portée d'arbre : diamètre | mm | p< {sd.n} {sd.c} ({sd.u} / {sd.l}) >p | à rectifier
7 | Portée d'arbre : rugosité Ra | µm | p< {sra} >p
8 | Portée d'arbre : cylindricité | µm | p< {scy:µm} >p
9 | Portée d'arbre : battement total | µm | p< {sru:µm} >p
10 | Diamètre de l'épaulement d'arbre | mm | p< {ssh} >p
11 | Alésage du logement : diamètre | mm | p< {hd.n} {hd.c} ({hd.u} / {hd.l}) >p | à aléser
12 | Alésage du logement : rugosité Ra | µm | p< {hra} >p
13 | Alésage du logement : cylindricité | µm | p< {hcy:µm} >p
14 | Diamètre de l'épaulement du logement | mm | p< {hsh} >p
@1 15 | Température | °C | p< {~top} >p
--

Vitesse maxi de rotation (tr/min) | {nmax}
Masse du rotor (kg) | {mass}
@0 Matière de l'arbre | {smat}
@1 Position de l'axe | {ori}
""",
)
PARTS = Office(
    language="fr",
    layout="parts list with seats",
    file="xlsx",
    machines="Pompe verticale à ligne d'arbre PL 40,Pompe de relevage PR 80",
    positions="inférieur,intermédiaire,supérieur",
    bearings="6305-2RS1+6305-2RS1+6306-2RS1;6204-2Z+6204-2Z+6205-2Z",
    dwg="PR0000",
    comma=True,
    sheet="Nomenclature",
    choices="grease=Graisse;oil bath=Huile",
    template="""
Nomenclature et ajustements | < | < | <
Machine | {machine} | Plan | {dwg} | Indice | {rev}
Vitesse max (tr/min) | {nmax} | Masse du rotor (kg) | {mass}

# Rep. | Désignation | Palier | Référence | Cote nominale (mm) | Classe ISO | Écart sup. (µm) | Écart inf. (µm) \
| Ra (µm) | Cylindricité (µm) | Ø épaulement (mm) | Charge radiale (N) | Qté | Masse (kg) | Fournisseur
for p:
{#} | Roulement à billes | {p} | {bd} | | | | | | | | {fr} | 1 | 0,2 | Négoce
{#} | Arbre - portée de roulement | {p} | | {sd.n} | {sd.c} | {sd.u:µm} | {sd.l:µm} | {sra} | {scy:µm} | {ssh} \
| | 1 | 1,8 | Interne
{#} | Corps - alésage de roulement | {p} | | {hd.n} | {hd.c} | {hd.u:µm} | {hd.l:µm} | {hra} | {hcy:µm} \
| {hsh} | | 1 | 4,6 | Fonderie
end
""",
)
MACHINES = Office(
    language="fr",
    layout="machine rows, two-row headings",
    file="csv ; utf-8-sig",
    machines="Moteur MT-71,Moteur MT-80,Moteur MT-90,Moteur MT-100,Moteur MT-112,Moteur MT-132",
    positions="côté commande,côté ventilateur",
    bearings="6202-2Z+6202-2Z;6204-2Z+6203-2Z;6205-2Z/C3+6204-2Z/C3",
    dwg="MT0-000",
    comma=True,
    count=3,
    choices="grease=graisse;oil bath=huile",
    template="""
Gamme moteurs - ajustements de roulements (cotes en mm, Ra en µm)
# Moteur | Plan | Vitesse max (tr/min) | p< {p} | < | < | < | < | < >p | Prix
# ^ | ^ | ^ | p< Roulement | Portée arbre | Ra arbre | Logement | Ra logement | @0 Charge radiale (N) \
| @1 Ø épaulement arbre >p | ^
m> {machine} | {dwg} | {nmax} | p< {bd} | {sd.n} {sd.c} | {sra} | {hd.n} {hd.c} | {hra} | @0 {fr} | @1 {ssh} >p \
| sur demande
--
Tarif indicatif
""",
)
ITEMS = Office(
    language="fr",
    layout="json items with attributes",
    file="json",
    machines="Électrobroche EB-24,Électrobroche EB-12",
    positions="avant,arrière",
    bearings="7007 C/P4+7006 C/P4;71906 C/P4+71904 C/P4",
    fits="js4 h4 js5/JS5 H5 JS6",
    dwg="EB-0000",
    comma=True,
    choices="grease=graisse;oil bath=bain d'huile;spring=ressort;none=aucune;horizontal=horizontal;vertical=vertical",
    template="""
{"application": "gestion des articles", "articles": [
 {"type": "rotor", "attributs": [
  {"libelle": "désignation", "valeur": "{machine}"},
  {"libelle": "numéro de plan", "valeur": "{dwg}"},
  {"libelle": "vitesse maximale", "valeur": "{nmax}", "unite": "tr/min"},
  {"libelle": "force de précharge", "valeur": "{pf}", "unite": "N"},
  {"libelle": "masse du rotor", "valeur": "{mass}", "unite": "kg"},
  {"libelle": "entraxe des roulements", "valeur": "{span}", "unite": "mm"}]},
 {"@p": [
 {"type": "roulement", "palier": "{p}", "attributs": [
  {"libelle": "référence du roulement", "valeur": "{bd}"},
  {"libelle": "classe de tolérance du roulement", "valeur": "{pc}"},
  {"libelle": "angle de contact", "valeur": "{ca}", "unite": "°"},
  {"libelle": "lubrification", "valeur": "{lub}"},
  {"libelle": "charge radiale", "valeur": "{fr}", "unite": "N"},
  {"libelle": "charge axiale", "valeur": "{fa}", "unite": "N"}]},
 {"type": "portée d'arbre", "palier": "{p}", "attributs": [
  {"libelle": "diamètre", "valeur": "{sd.n} {sd.c}", "unite": "mm"},
  {"libelle": "rugosité Ra", "valeur": "{sra}", "unite": "µm"},
  {"libelle": "cylindricité", "valeur": "{scy:µm}", "unite": "µm"},
  {"@1": {"libelle": "battement radial total", "valeur": "{sru:µm}", "unite": "µm"}},
  {"libelle": "diamètre d'épaulement", "valeur": "{ssh}", "unite": "mm"}]},
 {"type": "alésage de logement", "palier": "{p}", "attributs": [
  {"libelle": "diamètre", "valeur": "{hd.n} {hd.c}", "unite": "mm"},
  {"libelle": "rugosité Ra", "valeur": "{hra}", "unite": "µm"},
  {"libelle": "cylindricité", "valeur": "{hcy:µm}", "unite": "µm"},
  {"libelle": "diamètre d'épaulement", "valeur": "{hsh}", "unite": "mm"}]}]}]}
""",
)
ODD = (ACROSS, MACHINES)
EVEN = (PARTS, ITEMS)
