"""The offices that write Italian: a motor works, a pump works, a spindle repairer, a fan maker."""

from practice_twentyfourth.office import Office

PLUS_MINUS = Office(
    language="it",
    layout="position rows",
    file="txt tab utf-16",
    machines="Elettroventola EV-35,Motore per carroponte MC-11",
    positions="Lato comando,Lato ventola",
    bearings="6206-2Z+6205-2Z;6305-2RS1/C3+6304-2RS1/C3",
    fits="js5 js6/JS6 JS7",
    dwg="EV.0000",
    comma=True,
    choices="grease=Grasso;oil bath=Bagno d'olio;locating=Bloccato;floating=Libero;cast iron=Ghisa G25;"
    "steel=Acciaio C45;stainless steel=Inox AISI 420;aluminium=Alluminio",
    template="""
Scheda supporti - {machine} - dis. {dwg} rev. {rev}
Velocità massima (giri/min) | {nmax} | Massa rotante (kg) | {mass}
# Supporto | Cuscinetto | Funzione assiale | Lubrificazione | Carico radiale (N) | Carico assiale (N) \
| Ø sede albero (mm) | Ra sede albero (µm) | Cilindricità sede albero (µm) | Ø spallamento albero (mm) \
| Ø sede alloggiamento (mm) | Ra sede alloggiamento (µm) | Cilindricità sede alloggiamento (µm) \
| Ø spallamento alloggiamento (mm) | @1 Raggio di raccordo max albero (mm) | Note
p> {p} | {bd} | {role} | {lub} | {fr} | {fa} | {sd.n} ±{sd.t} | {sra} | {scy:µm} | {ssh} | {hd.n} ±{hd.t} | {hra} \
| {hcy:µm} | {hsh} | @1 {sfi} | {;rettificare dopo tempra;}
""",
)
SIDE_BY_SIDE = Office(
    language="it",
    layout="blocks beside each other",
    file="xlsx",
    machines="Pompa multistadio PM-6,Pompa autoadescante PA-3",
    positions="A,B",
    bearings="6306/C3+6306/C3;6208+6207",
    fits="k5 j5 k6 m5/H7 J7 H6",
    dwg="PM-000-A",
    comma=True,
    sheet="Sedi",
    choices="grease=grasso;oil bath=olio;cast iron=ghisa;steel=acciaio;aluminium=lega di alluminio;"
    "stainless steel=acciaio inox",
    template="""
Dati sedi cuscinetti | | | | Disegno n. | {dwg}
Macchina: | {machine} | | | Giri max (1/min) | {nmax}
@0 Materiale corpo | {hmat} | | | Peso rotore (kg) | {mass}

# p< Supporto {p} | valore | unità | >p
p< Sigla cuscinetto | {bd} | | >p
p< Diametro interno cuscinetto | {d} | mm | >p
p< Diametro esterno cuscinetto | {D} | mm | >p
p< Larghezza cuscinetto | {B} | mm | >p
p< Forza radiale | {fr.n:kN} | kN | >p
p< Forza assiale | {fa.n:kN} | kN | >p
p< Diametro perno | {sd.n} {sd.c} | mm | >p
p< Scostamento superiore perno | {sd.u:µm} | µm | >p
p< Scostamento inferiore perno | {sd.l:µm} | µm | >p
p< Rugosità perno Ra | {sra} | µm | >p
p< Cilindricità perno | {scy} | mm | >p
p< Diametro spallamento perno | {ssh} | mm | >p
p< Diametro foro alloggiamento | {hd.n} {hd.c} | mm | >p
p< Scostamento superiore foro | {hd.u:µm} | µm | >p
p< Scostamento inferiore foro | {hd.l:µm} | µm | >p
p< Rugosità foro Ra | {hra} | µm | >p
p< Cilindricità foro | {hcy} | mm | >p
@1 p< Intervallo di rilubrificazione | {regr} | h | >p
""",
)
IN_NAMES = Office(
    language="it",
    layout="names with position",
    file="csv ; utf-8",
    machines="Mandrino ME-40,Mandrino MR-15",
    positions="anteriore,posteriore",
    bearings="7009 C/P4+7007 C/P4;71910 C/P4+71908 C/P4",
    fits="js5 h5 k5/JS6 H6 H5",
    dwg="0000.00",
    comma=True,
    ragged=True,
    choices="grease=grasso;oil bath=bagno d'olio",
    template="""
# Caratteristica | Valore | U.M. | Tolleranza
Descrizione | {machine}
Disegno | {dwg}
Velocità massima | {nmax} | giri/min
Precarico | {pf} | N
Massa del rotore | {mass} | kg
Distanza tra i cuscinetti | {span} | mm
for p:
Cuscinetto {p} - sigla | {bd}
Cuscinetto {p} - lubrificazione | {lub}
Cuscinetto {p} - carico radiale | {fr} | N
Cuscinetto {p} - carico assiale | {fa} | N
Sede albero {p} - diametro | {sd.n} | mm | {sd.c}
Sede albero {p} - rugosità Ra | {sra} | µm
Sede albero {p} - cilindricità | {scy} | mm
Sede albero {p} - oscillazione totale | {sru} | mm
Sede alloggiamento {p} - diametro | {hd.n} | mm | {hd.c}
Sede alloggiamento {p} - rugosità Ra | {hra} | µm
Sede alloggiamento {p} - cilindricità | {hcy} | mm
@1 Sede alloggiamento {p} - diametro spallamento | {hsh} | mm
end
""",
)
NESTED = Office(
    language="it",
    layout="json nested",
    file="json utf-8-sig",
    machines="Soffiante a lobi SL-50,Aspiratore industriale AI-9",
    positions="lato puleggia,lato ingranaggi",
    bearings="NU207+6207;6206-2Z/C3+6205-2Z/C3",
    fits="k5 m5 k6/H7 J7 K6",
    dwg="SL-0000/00",
    choices="grease=grasso;oil bath=bagno d'olio;steel=acciaio 39NiCrMo3;"
    "stainless steel=acciaio inox;cast iron=ghisa;housing_material.steel=acciaio;aluminium=alluminio;"
    "locating=vincolato;floating=libero",
    template="""
{"intestazione": {"macchina": "{machine}", "disegno": "{dwg}", "revisione": "{rev}", "redatto": "uff. tecnico"},
 "dati_generali": {
  "velocita_massima": {"valore": "{nmax}", "unita": "giri/min"},
  "massa_rotore": {"valore": "{mass}", "unita": "kg"},
  "durata_richiesta_L10h": {"valore": "{life}", "unita": "h"},
  "materiale_albero": "{smat}", "materiale_cassa": "{hmat}"},
 "supporti": [{"@p": {
  "posizione": "{p}",
  "cuscinetto": {"sigla": "{bd}", "lubrificazione": "{lub}", "vincolo_assiale": "{role}",
   "viscosita_olio_base_a_40C": {"valore": "{v40}", "unita": "mm²/s"},
   "carico_radiale": {"valore": "{fr}", "unita": "N"}, "carico_assiale": {"valore": "{fa}", "unita": "N"}},
  "sede_albero": {"diametro": {"valore": "{sd.n}", "unita": "mm", "classe": "{sd.c}", "es_um": "{sd.u:µm}",
    "ei_um": "{sd.l:µm}"}, "rugosita_Ra": {"valore": "{sra}", "unita": "µm"},
   "cilindricita": {"valore": "{scy:µm}", "unita": "µm"}, "diametro_spallamento": {"valore": "{ssh}", "unita": "mm"}},
  "sede_cassa": {"diametro": {"valore": "{hd.n}", "unita": "mm", "classe": "{hd.c}", "ES_um": "{hd.u:µm}",
    "EI_um": "{hd.l:µm}"}, "rugosita_Ra": {"valore": "{hra}", "unita": "µm"},
   "cilindricita": {"valore": "{hcy:µm}", "unita": "µm"}, "diametro_spallamento": {"valore": "{hsh}", "unita": "mm"}}
 }}]}
""",
)
ODD = (PLUS_MINUS, IN_NAMES)
EVEN = (SIDE_BY_SIDE, NESTED)
