"""The offices that write French and Italian."""

from practice_twentysecond.firm import Firm

FICHE = Firm(
    language="fr",
    layout="blocks per position",
    file="xlsx",
    machines="Pompe centrifuge PC 65-160,Pompe à huile PH 40",
    positions="côté roue,côté moteur",
    bearing="ball /C3;angular B",
    fits="k5 k6 m6/H7 H6 J7",
    dwg="PC 00 0000",
    comma=True,
    choices="grease=graisse;oil bath=bain d'huile;locating=fixe;floating=libre;horizontal=horizontal;vertical=vertical;"
    "steel=acier;cast iron=fonte GL;aluminium=aluminium",
    more={"sheet": "Fiche"},
    lines="""
FICHE PALIERS | | | N° plan : | {dwg} | Indice : | {rev}
Machine : | {mach} | | Établi par : | M. L. | le : | {day}/03/2025
Vitesse maxi (tr/min) : | {nmax:tr/min} | | Durée de vie L10h (h) : | {life:h}
Matière arbre : | {mats} | | Matière corps : | {math}
Température (°C) : | {?top+tamb+thou:°C} | | Liquide pompé : | eau
@0 Masse du rotor (kg) : | {mass:kg} | | Position de l'arbre : | {ori}

[p
Palier : | {P} | | Roulement : | {bd}
@1 Fonction : | {role} | | Lubrification : | {lub}
@0 Lubrification : | {lub}
Charge radiale (N) : | {Fr:N} | | Charge axiale (N) : | {Fa:N}
Ø portée arbre (mm) : | {Sd.n:mm} {Sd.c} ({Sd.u:mm} / {Sd.l:mm}) | | Ø alésage logement (mm) : | \
{Hd.n:mm} {Hd.c} ({Hd.u:mm} / {Hd.l:mm})
Ra portée arbre (µm) : | {Sr:µm} | | Ra alésage logement (µm) : | {Hr:µm}
Cylindricité portée arbre (mm) : | {Sc:mm} | | Cylindricité alésage logement (mm) : | {Hc:mm}
Ø épaulement arbre (mm) : | {Sa:mm} | | Ø épaulement logement (mm) : | {Ha:mm}
Battement axial épaulement arbre (mm) : | {Sb:mm} | | Battement axial épaulement logement (mm) : | {Hb:mm}

]
Visa BE : | | | Visa méthodes :
""",
)
GAMME = Firm(
    language="fr",
    layout="row per machine",
    file="csv ; cp1252",
    machines="MA 132,MA 160,MA 180,MA 200,MA 225,MA 250",
    positions="AV,AR",
    bearing="ball -2Z/C3;ball /C3",
    fits="k5 k6 j6/H7 H6 J7",
    dwg="MA00-000",
    comma=True,
    count=3,
    choices="grease=graisse;oil bath=bain d'huile",
    lines="""
Gamme moteurs MA - portées de roulements et logements
^Type moteur | Plan | Ind. | N max (tr/min) | Palier {1.P} | | | | | | | Palier {2.P} | | | | | | | \
Masse moteur (kg) | Obs.
^ | | | | Roulement | Portée arbre (mm) | Ra portée (µm) | Logement (mm) | Ra logement (µm) | Charge radiale (N) | \
Charge axiale (N) | Roulement | Portée arbre (mm) | Ra portée (µm) | Logement (mm) | Ra logement (µm) | \
Charge radiale (N) | Charge axiale (N) | |
m {mach} | {dwg} | {rev} | {nmax:tr/min} | {1.bd} | {1.Sd.n:mm} {1.Sd.c} | {1.Sr:µm} | {1.Hd.n:mm} {1.Hd.c} | \
{1.Hr:µm} | {1.Fr:N} | {1.Fa:N} | {2.bd} | {2.Sd.n:mm} {2.Sd.c} | {2.Sr:µm} | {2.Hd.n:mm} {2.Hd.c} | {2.Hr:µm} | \
{2.Fr:N} | {2.Fa:N} | | à pattes
""",
)
LISTE = Firm(
    language="fr",
    layout="long",
    file="txt tab utf-16",
    machines="Surpresseur SR 15,Surpresseur SR 22",
    positions="P1,P2",
    bearing="ball;roller",
    dwg="SR-000-00",
    comma=True,
    choices="grease=graisse;oil bath=bain d'huile;horizontal=horizontal;vertical=vertical",
    more={"label": "3"},
    lines="""
Export nomenclature technique | | | | | {day}/05/2025
^Repère | Ensemble | Caractéristique | Valeur | Unité | Tolérance | Commentaire
 | Machine | Désignation | {mach} | | |
 | Machine | Numéro de plan | {dwg} | | |
 | Machine | Indice de révision | {rev} | | |
 | Machine | Vitesse de rotation maximale | {nmax:tr/min} | tr/min | |
 | Machine | Vitesse de service | {nop:tr/min} | tr/min | |
@0 | Machine | Entraxe des paliers | {span:mm} | mm | |
[p
{P} | Roulement | Référence | {bd} | | | catalogue
{P} | Roulement | Effort radial | {Fr:N} | N | |
{P} | Roulement | Effort axial | {Fa:N} | N | |
{P} | Roulement | Lubrification | {lub} | | |
@1 {P} | Roulement | Température de fonctionnement | {top:°C} | °C | | mesure banc
{P} | Arbre | Diamètre de portée | {Sd.n:mm} | mm | {Sd.c} | rectifié
{P} | Arbre | Rugosité Ra | {Sr:µm} | µm | |
{P} | Arbre | Cylindricité | {Sc:mm} | mm | |
{P} | Arbre | Battement total radial | {St:mm} | mm | |
{P} | Arbre | Diamètre d'épaulement | {Sa:mm} | mm | |
{P} | Arbre | Rayon de congé maxi | {Sf:mm} | mm | |
{P} | Carter | Diamètre d'alésage | {Hd.n:mm} | mm | {Hd.c} |
{P} | Carter | Rugosité Ra | {Hr:µm} | µm | |
{P} | Carter | Cylindricité | {Hc:mm} | mm | |
{P} | Carter | Diamètre d'épaulement | {Ha:mm} | mm | |
]
""",
)
DISTINTA = Firm(
    language="it",
    layout="parts list",
    file="csv ; utf-8",
    machines="Elettropompa EP 50-200,Elettropompa EP 65-250",
    positions="lato girante,lato comando",
    bearing="ball C3;ball -2Z",
    fits="k5 k6 j6/H7 H6 J7",
    dwg="EP000-00",
    comma=True,
    choices="grease=grasso;oil bath=bagno d'olio",
    lines="""
DISTINTA COMPONENTI ROTANTI
Macchina;{mach};;Disegno n.;{dwg};Rev.;{rev}
Velocità massima (giri/min);{nmax:giri/min};;Durata richiesta L10h (h);{life:h}

^Rif.;Posizione;Descrizione;Codice / Ø nominale (mm);Classe di tolleranza;Scost. sup. (µm);Scost. inf. (µm);\
Rugosità Ra (µm);Cilindricità (mm);@1 Oscillazione totale (mm);Ø spallamento (mm);Carico radiale (N);\
Carico assiale (N);Q.tà;Fornitore
[p
{#};{P};Cuscinetto a sfere;{bd};;;;;;@1 ;;{Fr:N};{Fa:N};1;a magazzino
{#};{P};Albero - sede cuscinetto;{Sd.n:mm};{Sd.c};{Sd.u:µm};{Sd.l:µm};{Sr:µm};{Sc:mm};@1 {St:mm};{Sa:mm};;;1;interno
{#};{P};Supporto - sede cuscinetto;{Hd.n:mm};{Hd.c};{Hd.u:µm};{Hd.l:µm};{Hr:µm};{Hc:mm};@1 {Ht:mm};{Ha:mm};;;1;fonderia
]
90;;Tenuta meccanica;Ø 33;;;;;;@1 ;;;;1;
91;;Linguetta;8x7x40;;;;;;@1 ;;;;1;
""".replace(";", " | "),
)
RIGHE = Firm(
    language="it",
    layout="row per position",
    file="xlsx",
    machines="Soffiante SF 30,Soffiante SF 45,Soffiante SF 60,Soffiante SF 75",
    positions="1,2",
    bearing="ball /C3;roller /C3",
    dwg="SF.00.000",
    comma=True,
    count=2,
    choices="grease=grasso;oil bath=bagno d'olio;locating=bloccato;floating=libero",
    more={"sheet": "Supporti", "units": "row"},
    lines="""
Riepilogo supporti soffianti serie SF | | | | | | aggiornato al {day}/02/2025
^Cod. mat. | Modello | Supporto | Tipo cuscinetto | Vincolo assiale | Fr | Fa | Albero d | Tol. albero | \
Alloggiamento D | \
Tol. alloggiamento | Ra albero | Ra alloggiamento | Cil. albero | Cil. alloggiamento | Ø battuta albero | \
Ø battuta alloggiamento | Lubrificazione | n max | Peso rotore | Note
^ | | | | | N | N | mm | | mm | | µm | µm | µm | µm | mm | mm | | giri/min | kg |
[m
p {=7310-4;7310-5} | {mach} | {P} | {bd} | {role} | {Fr:N} | {Fa:N} | {Sd.n:mm} | {Sd.c} | {Hd.n:mm} | {Hd.c} | \
{Sr:µm} | {Hr:µm} | \
{Sc:µm} | {Hc:µm} | {Sa:mm} | {Ha:mm} | {lub} | {nmax:giri/min} | {mass:kg} | {=vedi calcolo;}
]
""",
)
BLOCCHI = Firm(
    language="it",
    layout="blocks per position",
    file="csv ; cp1252",
    machines="Mandrino ingranaggi MI 90,Mandrino ingranaggi MI 120",
    positions="anteriore,posteriore",
    bearing="spindle C/P5;ball",
    fits="js5 js6/JS6 JS7",
    dwg="MI-0000",
    comma=True,
    choices="grease=grasso;oil bath=bagno d'olio;horizontal=orizzontale;vertical=verticale",
    lines="""
Scheda montaggio cuscinetti
Denominazione | {mach}
Disegno | {dwg} rev. {rev}
Velocità max | {nmax:giri/min} | giri/min
Asse | {ori}
Precarico | {Fv:N} | N

[p
CUSCINETTO {P}
Sigla | {bd}
d x D x B | {d:mm} x {D:mm} x {B:mm} | mm
Coeff. di carico dinamico C | {C:N} | N
Lubrificazione | {lub}
Carico radiale | {Fr:N} | N
Carico assiale | {Fa:N} | N
ALBERO
Diametro | {Sd.n:mm} ±{Sd.t:mm} | mm
Rugosità Ra | {Sr:µm} | µm
Cilindricità | {Sc:µm} | µm
Diametro spallamento | {Sa:mm} | mm
@1 Coppia di serraggio ghiera | {torq:Nm} | Nm
ALLOGGIAMENTO
Diametro | {Hd.n:mm} ±{Hd.t:mm} | mm
Rugosità Ra | {Hr:µm} | µm
Cilindricità | {Hc:µm} | µm
Diametro spallamento | {Ha:mm} | mm

]
Compilato: ufficio tecnico
""",
)
ODD = (FICHE, GAMME, DISTINTA)
EVEN = (LISTE, RIGHE, BLOCCHI)
