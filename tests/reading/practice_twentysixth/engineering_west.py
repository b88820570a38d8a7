"""Engineering offices with one sheet for each machine, that write French, Italian and Spanish."""

from practice_nineteenth.office import Office

CANNED = Office(
    language="fr",
    layout="row per seat",
    file="csv ; utf-8-sig",
    machines="Pompe à rotor noyé PN 50,Pompe à rotor noyé PN 80",
    positions="Palier avant,Palier arrière",
    bearing="ball;small /C3",
    fits="k5 k6 j5 h5/H6 H7 J6 JS6",
    dwg="PN-0000",
    comma=True,
    choices="horizontal=horizontal;vertical=vertical;steel=acier X30Cr13;cast iron=fonte GJL-250;aluminium=AlSi7Mg",
    lines="""
Tableau des ajustements de roulements
Machine :|{m}|||Plan n° :|{dn}|Indice :|{rev}
Vitesse de rotation maxi (tr/min) :|{nmax}|||Durée de vie exigée (h) :|{life}
Matière du carter :|{hm}

^Palier|Élément|Désignation|Ø nominal (mm)|Tolérance|ES / es (µm)|EI / ei (µm)|Cylindricité (mm)|\
Battement total radial (mm)|Ra (µm)|Ø épaulement (mm)|Observations
%s
{st}|Roulement|{bd}||||||||||
{st}|Portée d'arbre||{sd.n:mm}|{sd.c}|{sd.u:µm}|{sd.l:µm}|{sc}|{sr}|{sa}|{ss}|[rectifié;trempé HF puis rectifié]
{st}|Alésage du carter||{hd.n:mm}|{hd.c}|{hd.u:µm}|{hd.l:µm}|{hc}|{hr}|{ha}|{hs}|
%end

Tolérances générales ISO 2768-mK
""",
    more={"labels": "2", "blank": "1"},
)
CENTRIFUGE = Office(
    language="it",
    layout="transposed",
    file="xlsx",
    machines="Centrifuga da banco CB 6,Centrifuga refrigerata CR 12",
    positions="Supporto superiore,Supporto inferiore",
    bearing="small -2Z;ball -2RS1",
    fits="h5 j5 k5 js5/H6 H7 J6 JS6",
    dwg="CB.00.00",
    comma=True,
    choices="vertical=verticale;horizontal=orizzontale;locating=fisso;floating=libero;grease=grasso;"
    "oil bath=bagno d'olio;shield=schermo;contact seal=tenuta strisciante;open=aperto",
    lines="""
SCHEDA SEDI CUSCINETTI
Macchina|{m}
Disegno|{dn}|Rev.|{rev}|Data|{day}/03/2025|Redatto|U.T.
Velocità massima|{nmax}|giri/min
Disposizione albero|{ori}

^Rif.|Grandezza|Simb.|Unità|*{st}|Note
{#}|Sigla cuscinetto||–|*{bd}|
{#}|Diametro foro|d|mm|*{d}|
{#}|Diametro esterno|D|mm|*{D}|
{#}|Larghezza|B|mm|*{B}|
{#}|Vincolo assiale||–|*{role}|
{#}|Carico radiale|Fr|N|*{Fr}|
{#}|Carico assiale|Fa|N|*{Fa}|peso rotore incluso
{#}|Sede albero: diametro e tolleranza||mm|*{sd.n} {sd.c} ({sd.u:mm}/{sd.l:mm})|
{#}|Sede albero: cilindricità||mm|*{sc:mm,3}|
{#}|Sede albero: rugosità|Ra|µm|*{sa}|
{#}|Sede albero: raggio di raccordo max||mm|*{sf}|
{#}|Sede alloggiamento: diametro e tolleranza||mm|*{hd.n} {hd.c} ({hd.u:mm}/{hd.l:mm})|
{#}|Sede alloggiamento: cilindricità||mm|*{hc:mm,3}|
{#}|Sede alloggiamento: rugosità|Ra|µm|*{ha}|
{#}|Diametro spallamento albero||mm|*{ss}|
{#}|Diametro spallamento alloggiamento||mm|*{hs}|
@1 {#}|Temperatura di esercizio cuscinetto||°C|*{T}|
""",
    more={"labels": "2", "units": "column", "sheet": "Sedi"},
)
ALTERNATOR = Office(
    language="es",
    layout="long, parts on rows of their own",
    file="csv ; cp1252",
    machines="Alternador AL 45,Generador síncrono GS 110",
    positions="Lado acoplamiento,Lado opuesto",
    bearing="large /C3;ball -2Z/C3",
    fits="k5 k6 m5 m6/H6 H7 J6 G7",
    dwg="AL-000.00",
    comma=True,
    choices="locating=fijo;floating=libre;grease=grasa;oil bath=baño de aceite;steel=acero C45;"
    "cast iron=fundición gris;aluminium=aluminio;continuous=servicio continuo;intermittent=servicio intermitente",
    lines="""
Hoja de parámetros de rodamientos
Máquina|{m}
Plano|{dn}|Revisión|{rev}
Velocidad máxima|{nmax}|rpm
Masa del rotor|{mass}|kg
Distancia entre apoyos|{span}|mm
Material del eje|{sm}
%s

Apoyo: {st}
^Parámetro|Valor|Unidad|Comentario
Rodamiento|{bd}||
Tipo de apoyo|{role}||
Carga radial|{Fr}|N|incluye tracción magnética
Carga axial|{Fa}|N|
Lubricación|{lub}||
@0 Intervalo de relubricación|{re}|h|
Diámetro del asiento del eje|{sd.n} {sd.c}|mm|
Cilindricidad del asiento del eje|{sc}|mm|
Rugosidad Ra del asiento del eje|{sa}|µm|
Diámetro del resalte del eje|{ss}|mm|
Diámetro del alojamiento|{hd.n} {hd.c}|mm|mandrinado
Cilindricidad del alojamiento|{hc}|mm|
Rugosidad Ra del alojamiento|{ha}|µm|
Diámetro del resalte del alojamiento|{hs}|mm|
Temperatura del rodamiento|{T}|°C|
%end
""",
    more={"labels": "1", "units": "column"},
)
ODD = (CENTRIFUGE,)
EVEN = (CANNED, ALTERNATOR)
