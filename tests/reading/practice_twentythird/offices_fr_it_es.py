"""The offices that write French, Italian and Spanish."""

from practice_twentythird.office import Office

FICHE = Office(
    language="fr",
    layout="transposed",
    file="csv ; cp1252",
    machines="Génératrice GA 3,Génératrice GA 5,Génératrice GB 7,Génératrice GB 9",
    positions="A,B",
    count=2,
    bearing="ball -2RS1;ball -2Z/C3",
    dwg="GA 000-00",
    comma=True,
    choices="grease=graisse;locating=fixe;floating=libre;horizontal=horizontal;vertical=vertical;cast iron=fonte grise;"
    "aluminium=alliage d'aluminium;steel=acier;continuous=service continu;intermittent=service intermittent",
    page="""
FICHE TECHNIQUE - MONTAGE DES ROULEMENTS
Établi par : | BE | Date : | {day}/01/2026

> Machine | [m | {m} | < | m]
> Caractéristique | [m | [p | Palier {p} | p] | m] | Unité
N° de plan | [m | {dwg} | < | m]
Vitesse de rotation maxi | [m | {n} | < | m] | tr/min
Matériau du carter | [m | {hmat} | < | m]
@1 Service | [m | {duty} | < | m]
Roulement | [m | [p | {brg} | p] | m]
Fonction axiale | [m | [p | {role} | p] | m]
Lubrification | [m | [p | {lub} | p] | m]
@0 Jeu interne | [m | [p | {clr} | p] | m]
@1 Température de service du roulement | [m | [p | {operating_temperature} | p] | m] | °C
Charge radiale | [m | [p | {fr} | p] | m] | N
Charge axiale | [m | [p | {fa} | p] | m] | N
Portée d'arbre, diamètre nominal | [m | [p | {ss.n} | p] | m] | mm
Portée d'arbre, écart supérieur | [m | [p | {ss.u:um} | p] | m] | µm
Portée d'arbre, écart inférieur | [m | [p | {ss.l:um} | p] | m] | µm
Portée d'arbre, rugosité Ra | [m | [p | {sra} | p] | m] | µm
Portée d'arbre, cylindricité | [m | [p | {scy:um} | p] | m] | µm
Épaulement d'arbre, diamètre | [m | [p | {ssh} | p] | m] | mm
Alésage du logement, diamètre nominal | [m | [p | {hs.n} | p] | m] | mm
Alésage du logement, écart supérieur | [m | [p | {hs.u:um} | p] | m] | µm
Alésage du logement, écart inférieur | [m | [p | {hs.l:um} | p] | m] | µm
Alésage du logement, rugosité Ra | [m | [p | {hra} | p] | m] | µm
Alésage du logement, cylindricité | [m | [p | {hcy:um} | p] | m] | µm
Rayon de congé maxi de l'arbre | [m | [p | {sfi} | p] | m] | mm
@0 Épaulement du logement, diamètre | [m | [p | {hsh} | p] | m] | mm
""",
)
LIMITS = Office(
    language="fr",
    layout="position rows",
    file="xlsx",
    machines="Pompe doseuse PDX 6,Pompe doseuse PDX 15",
    positions="avant,arrière",
    bearing="ball -2RSR;ball -2RZ",
    dwg="PDX-0000",
    comma=True,
    choices="grease=graisse à vie;spring=ressort",
    sheet="Portées",
    page="""
Tableau des portées de roulements | | | Machine : | {m}
Plan : | {dwg} | | Rév. : | {rev}
N maxi (tr/min) : | {n} | | Température ambiante (°C) : | {amb}
@1 Masse du rotor (kg) : | {mass:kg}
> Position | Référence roulement | Lubrifiant | Fr (N) | Fa (N) | Arbre Ø mini (mm) | Arbre Ø maxi (mm) \
| Arbre Ra (µm) \
| Arbre cylindricité (mm) | Arbre battement total (mm) | Épaulement arbre Ø (mm) | Logement Ø mini (mm) \
| Logement Ø maxi (mm) | Logement Ra (µm) | Logement cylindricité (mm) | Logement battement total (mm) \
| Épaulement logement Ø (mm) | Observations
*{p} | {brg} | {lub} | {fr} | {fa} | {ss.min:mm} | {ss.max:mm} | {sra} | {scy:mm:3} | {sro:mm:3} | {ssh} \
| {hs.min:mm} \
| {hs.max:mm} | {hra} | {hcy:mm:3} | {hro:mm:3} | {hsh} | {~rectifié;}
""",
)
NOMENCLATURE = Office(
    language="fr",
    layout="parts list",
    file="xlsx",
    machines="Ventilateur hélicoïde VH 250,Ventilateur hélicoïde VH 400",
    positions="côté moteur,côté hélice",
    bearing="ball -2Z;ball -2RS/C3",
    dwg="VH-00-000",
    comma=True,
    choices="grease=graisse;horizontal=axe horizontal;vertical=axe vertical",
    sheet="Nomenclature",
    page="""
NOMENCLATURE ET AJUSTEMENTS
Ensemble | {m} | Plan | {dwg} | Indice | {rev}
Vitesse maxi (tr/min) | {n} | Disposition | {ori}
@1 Température (°C) | {?ambient_temperature+housing_temperature+operating_temperature+temperature_max}

> Rep. | Qté | Désignation | Emplacement | Référence | Ø nominal (mm) | Tolérance | Ra (µm) | Cylindricité (µm) \
| Ø épaulement (mm) | Rayon de congé maxi (mm) | Fr (N) | Masse (g) | Fournisseur
%p
{#} | 1 | Roulement à billes | {p} | {brg} | | | | | | | {fr} | {~32;45} | achat
{#} | 1 | Portée d'arbre | {p} | | {ss.n} | {ss.c} | {sra} | {scy:um} | {ssh} | {sfi}
{#} | 1 | Logement de roulement | {p} | | {hs.n} | {hs.c} | {hra} | {hcy:um} | {hsh} | {hfi}
%end
Tolérances générales ISO 2768-mK
""",
)
RANGE = Office(
    language="fr",
    layout="machine rows",
    file="csv ; utf-8-sig",
    machines="Broche BR 40,Broche BR 60,Broche BR 80,Moteur MB 56,Moteur MB 71,Moteur MB 90",
    positions="AV,AR",
    bearing="angular C/P5;ball -2Z",
    dwg="R0000",
    comma=True,
    count=3,
    page="""
Gamme - portées et logements (AV : avant, AR : arrière)
> Type | N° de plan | Vitesse maxi [tr/min] | Roulement AV | Portée arbre AV [mm] | Ra portée AV [µm] \
| Logement AV [mm] | Ra logement AV [µm] | Charge radiale AV [N] | Roulement AR | Portée arbre AR [mm] \
| Ra portée AR [µm] | Logement AR [mm] | Ra logement AR [µm] | Charge radiale AR [N] | Visa
%m
{m} | {dwg} | {n} | {1/brg} | {1/ss.n} {1/ss.c} | {1/sra} | {1/hs.n} {1/hs.c} | {1/hra} | {1/fr} | {2/brg} \
| {2/ss.n} {2/ss.c} | {2/sra} | {2/hs.n} {2/hs.c} | {2/hra} | {2/fr} | {~CD;}
%end
""",
)
TREE_IT = Office(
    language="it",
    layout="JSON nested",
    file="json",
    machines="Elettromandrino EM 24,Elettromandrino EM 32",
    positions="anteriore,posteriore",
    bearing="angular C/P4;angular AC/P4",
    dwg="EM.00.000",
    choices="grease=grasso;steel=acciaio 39NiCrMo3;stainless steel=acciaio inox AISI 420;cast iron=ghisa;"
    "aluminium=lega di alluminio;spring=molle",
    page="""
{"documento": {"numero_disegno": "{dwg}", "revisione": "{rev}", "redatto": "UT", "data": "2026-01-{day}"},
 "macchina": {"denominazione": "{m}", "velocita_massima_giri_min": "{n}", "massa_rotore_kg": "{mass:kg}",
  "precarico_N": "{prel}", "tipo_precarico": "{preload_method}", "materiale_albero": "{smat}",
  "materiale_alloggiamento": "{hmat}"},
 "supporti": {"*p {p}": {
  "cuscinetto": {"sigla": "{brg}", "diametro_foro_mm": "{d}", "diametro_esterno_mm": "{D}", "larghezza_mm": "{B}",
   "lubrificazione": "{lub}", "coefficiente_carico_dinamico_N": "{C}"},
  "carichi": {"carico_radiale_N": "{fr}", "carico_assiale_N": "{fa}"},
  "sede_albero": {"diametro_mm": "{ss.n}", "tolleranza": "{ss.c}", "rugosita_Ra_um": "{sra}",
   "cilindricita_um": "{scy:um}", "diametro_spallamento_mm": "{ssh}", "raggio_raccordo_max_mm": "{sfi}"},
  "sede_alloggiamento": {"diametro_mm": "{hs.n}", "tolleranza": "{hs.c}", "rugosita_Ra_um": "{hra}",
   "cilindricita_um": "{hcy:um}", "diametro_spallamento_mm": "{hsh}", "raggio_raccordo_max_mm": "{hfi}"}}}}
""",
)
LONG_IT = Office(
    language="it",
    layout="long",
    file="csv ; utf-8",
    machines="Ventilatore assiale VA 31,Ventilatore assiale VA 45",
    positions="lato comando,lato opposto",
    bearing="ball -2RS;ball -2Z/C3",
    dwg="VA0000/0",
    comma=True,
    choices="grease=grasso al litio;horizontal=orizzontale;vertical=verticale;locating=bloccato;floating=libero",
    page="""
Scheda parametri
Codice disegno | {dwg}
Modello | {m}

> Supporto | Componente | Grandezza | Valore | Tolleranza | U.M.
 | Rotore | Velocità massima | {n} | | giri/min
 | Rotore | Massa | {mass:kg} | | kg
@0 | Rotore | Orientamento asse | {ori}
@1 | Ambiente | Temperatura ambiente | {amb} | | °C
%p
{p} | Cuscinetto | Sigla | {brg}
{p} | Cuscinetto | Vincolo assiale | {role}
{p} | Cuscinetto | Lubrificazione | {lub}
{p} | Cuscinetto | Carico radiale | {fr} | | N
{p} | Cuscinetto | Carico assiale | {fa} | | N
{p} | Cuscinetto | Intervallo di rilubrificazione | {regreasing_interval} | | h
{p} | Albero | Diametro sede | {ss.n} | {ss.c} | mm
{p} | Albero | Rugosità Ra sede | {sra} | | µm
{p} | Albero | Cilindricità sede | {scy:mm:3} | | mm
{p} | Albero | Diametro spallamento | {ssh} | | mm
{p} | Alloggiamento | Diametro sede | {hs.n} | {hs.c} | mm
{p} | Alloggiamento | Rugosità Ra sede | {hra} | | µm
{p} | Alloggiamento | Cilindricità sede | {hcy:mm:3} | | mm
{p} | Alloggiamento | Diametro spallamento | {hsh} | | mm
%end
""",
)
ROWS_IT = Office(
    language="it",
    layout="two-row headings",
    file="xlsx",
    machines="Motore brushless MB 63,Motore brushless MB 100",
    positions="LA,LO",
    bearing="ball -2RZ/C3;ball -2Z",
    dwg="MB-0000",
    comma=True,
    fits="js5 js6/JS6 JS7",
    choices="grease=grasso",
    sheet="Sedi cuscinetti",
    page="""
SEDI CUSCINETTI | < | <
Motore | {m} | | Disegno | {dwg} | | Rev. | {rev}
Velocità max (giri/min) | {n} | | Vita richiesta L10h (h) | {life}
@1 Interasse cuscinetti (mm) | {span} | | Sbilanciamento residuo (g·mm) | {residual_unbalance}
> Lato | Cuscinetto | < | < | Albero | < | < | < | Scudo (alloggiamento) | < | < | < | Note
> ^ | Sigla | Fr [N] | Fa [N] | Ø sede [mm] | Ra [µm] | Cilindricità [µm] | Ø spallamento [mm] | Ø sede [mm] \
| Ra [µm] \
| Cilindricità [µm] | Ø spallamento [mm] | ^
*{p} | {brg} | {fr} | {fa} | {ss.n} ±{ss.t:mm} | {sra} | {scy:um} | {ssh} | {hs.n} ±{hs.t:mm} | {hra} | {hcy:um} \
| {hsh} \
| {~rettificare;}
LA = lato accoppiamento; LO = lato opposto
""",
)
SEATS_ES = Office(
    language="es",
    layout="seat rows",
    file="csv ; utf-8-sig",
    machines="Husillo HR-50,Husillo HR-70",
    positions="delantero,trasero",
    bearing="angular C/P4;angular AC/P5",
    dwg="HR-000-0",
    comma=True,
    page="""
Asientos de rodamientos | {m}
N.º de plano | {dwg} | Revisión | {rev} | Fecha | {day}/02/2026
Velocidad máxima (rpm) | {n}
@0 Precarga (N) | {prel}
@1 Temperatura (°C) | {?ambient_temperature+housing_temperature+operating_temperature+temperature_max}

> Rodamiento | Asiento | Designación | Diámetro nominal (mm) | Tolerancia | Desv. superior (mm) \
| Desv. inferior (mm) \
| Rugosidad Ra (µm) | Cilindricidad (mm) | Salto radial total (mm) | Diámetro del resalte (mm) | Costo
%p
{p} | Eje | {brg} | {ss.n} | {ss.c} | {ss.u:mm} | {ss.l:mm} | {sra} | {scy:mm:3} | {sro:mm:3} | {ssh}
{p} | Alojamiento | {brg} | {hs.n} | {hs.c} | {hs.u:mm} | {hs.l:mm} | {hra} | {hcy:mm:3} | {hro:mm:3} | {hsh}
%end
""",
)
RANGE_ES = Office(
    language="es",
    layout="machine rows",
    file="xlsx",
    machines="Bomba BD-2,Bomba BD-5,Bomba BD-9,Generador GP-1,Generador GP-2,Generador GP-4",
    positions="LA,LV",
    bearing="ball -2RS;ball -2Z/C3",
    dwg="P-00000",
    comma=True,
    count=3,
    sheet="Serie",
    page="""
Serie completa: ajustes de rodamientos
> Modelo | Plano | Vel. máx. (rpm) | LA | < | < | < | < | < | LV | < | < | < | < | <
> ^ | ^ | ^ | Rodamiento | Eje (mm) | Ra eje (µm) | Alojamiento (mm) | Ra alojamiento (µm) | Carga radial (N) \
| Rodamiento | Eje (mm) | Ra eje (µm) | Alojamiento (mm) | Ra alojamiento (µm) | Carga radial (N)
%m
{m} | {dwg} | {n} | [p | {brg} | Ø{ss.n} {ss.c} | {sra} | Ø{hs.n} {hs.c} | {hra} | {fr} | p]
%end
LA: lado de accionamiento. LV: lado ventilador.
""",
)
SHEET_ES = Office(
    language="es",
    layout="transposed",
    file="xlsx",
    machines="Servomotor SVM-6,Servomotor SVM-11",
    positions="delantero,trasero",
    bearing="ball -2RZ;ball -2Z/C3",
    dwg="00-00-000",
    comma=True,
    texts=True,
    choices="grease=grasa de poliurea;locating=fijo;floating=libre;cast iron=fundición;aluminium=aluminio;steel=acero",
    sheet="Hoja técnica",
    page="""
HOJA TÉCNICA
Producto | {m} | Plano | {dwg} | Ed. | {rev}
Velocidad máxima de giro | {n} rpm
Material del alojamiento | {hmat}
Masa del rotor | {mass:kg} kg
> N.º | Concepto | [p | Rodamiento {p} | p]
{#} | Referencia del rodamiento | [p | {brg} | p]
{#} | Disposición axial | [p | {role} | p]
{#} | Lubricación | [p | {lub} | p]
@0 {#} | Viscosidad del aceite base a 40 °C | [p | {visc} mm²/s | p]
@1 {#} | Velocidad límite | [p | {limiting_speed} rpm | p]
{#} | Carga radial | [p | {fr} N | p]
{#} | Carga axial | [p | {fa} N | p]
{#} | Diámetro del asiento del eje | [p | {ss.n} {ss.c} mm | p]
{#} | Rugosidad Ra del asiento del eje | [p | {sra} µm | p]
{#} | Cilindricidad del asiento del eje | [p | {scy:mm:3} mm | p]
{#} | Diámetro del resalte del eje | [p | {ssh} mm | p]
@0 {#} | Radio de acuerdo máximo del eje | [p | {sfi} mm | p]
{#} | Diámetro del asiento del alojamiento | [p | {hs.n} {hs.c} mm | p]
{#} | Rugosidad Ra del asiento del alojamiento | [p | {hra} µm | p]
{#} | Cilindricidad del asiento del alojamiento | [p | {hcy:mm:3} mm | p]
{#} | Diámetro del resalte del alojamiento | [p | {hsh} mm | p]
@1 {#} | Salto axial del resalte del eje | [p | {ssr:mm:3} mm | p]
Revisado: oficina técnica, {day}-01-2026
""",
)
ODD = (FICHE, LIMITS, TREE_IT, LONG_IT, SEATS_ES)
EVEN = (NOMENCLATURE, RANGE, ROWS_IT, RANGE_ES, SHEET_ES)
