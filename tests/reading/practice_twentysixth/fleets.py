"""Keepers of fleets: one row for each machine, with the columns of both its bearings."""

from practice_nineteenth.office import Office

FLEET_EN = Office(
    language="en",
    layout="row per machine, two headings",
    file="xlsx",
    machines="CP-101 canned pump,CP-102 canned pump,CP-103 canned pump,"
    "DY-01 dynamometer,DY-02 dynamometer,AL-11 alternator,AL-12 alternator,CN-4 centrifuge",
    positions="Drive end,Non-drive end",
    bearing="ball /C3;large;small -2Z",
    fits="k5 k6 j5/H6 H7 J6",
    dwg="F-0000",
    count=4,
    lines="""
Rotating equipment register - bearing fits
Compiled by reliability group, 2025-06-{day}

^Tag / machine|Drawing|Max. speed (rpm)|((|{st}|||||||))|Last overhaul|Criticality
^|||((|Bearing|Shaft seat Ø (mm)|Shaft Ra (µm)|Housing seat Ø (mm)|Housing Ra (µm)|Radial load (N)|\
Bearing temp. (°C)|))||
%m
{m}|{dn}|{nmax}|((|{bd}|{sd.n} {sd.c}|{sa}|{hd.n} {hd.c}|{ha}|{Fr}|{T}|))|[2023-04;2024-10;]|[A;B]
%end
""",
    more={"sheet": "Register", "merged": "1"},
)
FLEET_DE = Office(
    language="de",
    layout="row per machine",
    file="csv ; cp1252",
    machines="Schleuder S 10,Schleuder S 20,Dekanter D 2,Prüfbremse P 4,"
    "Prüfbremse P 5,Turboverdichter T 1,Spaltrohrpumpe SP 7,Spaltrohrpumpe SP 9",
    positions="AS,BS",
    bearing="ball;large /C3;small",
    fits="k5 k6 m5/H7 H6 J6",
    dwg="M00.000",
    comma=True,
    count=4,
    lines="""
Maschinenliste Wälzlagersitze
Werk 2, Stand {day}.06.2025

@0 ^Nr.|Maschine|Zeichnung|n max. [1/min]|*Lager {st}|*Welle {st} [mm]|*Gehäuse {st} [mm]|*Ra Welle {st} [µm]|\
*Ra Gehäuse {st} [µm]|*Radiallast {st} [N]|*Axiallast {st} [N]|Temp. [°C]|Standort|Bemerkung
@1 ^Maschine|Standort|Zeichnung|n max. [1/min]|((|Lager {st}|Welle {st} [mm]|Gehäuse {st} [mm]|Ra Welle {st} [µm]|\
Ra Gehäuse {st} [µm]|Radiallast {st} [N]|Axiallast {st} [N]|))|Temp. [°C]|Bemerkung
%m
@0 {#}|{m}|{dn}|{nmax}|*{bd}|*{sd.n} {sd.c}|*{hd.n} {hd.c}|*{sa}|*{ha}|*{Fr}|*{Fa}|{?amb,Th,tmax,T:°C}|\
[Halle 1;Halle 3]|[;Ersatzwelle vorhanden]
@1 {m}|[Halle 1;Halle 3]|{dn}|{nmax}|((|{bd}|{sd.n} {sd.c}|{hd.n} {hd.c}|{sa}|{ha}|{Fr}|{Fa}|))|{?amb,Th,tmax,T:°C}|\
[;Ersatzwelle vorhanden]
%end
""",
)
FLEET_RU = Office(
    language="ru",
    layout="row per machine, two headings",
    file="xlsx",
    machines="Насос НГ-1,Насос НГ-2,Генератор Г-5,Генератор Г-6,Барабан КБ-1,Барабан КБ-2,Компрессор К-3,Стенд НС-4",
    positions="Передняя опора,Задняя опора",
    bearing="ball;large;small",
    fits="k5 k6 m5/H7 H6 JS6",
    dwg="00.00.000",
    comma=True,
    count=4,
    more={"merged": "1"},
    lines="""
Перечень агрегатов с подшипниками качения
Составил: механик цеха № 3

^№|Агрегат|Чертёж|Частота вращения макс., об/мин|((|{st}||||||))|Примечание
^||||((|Подшипник|Диаметр вала, мм|Ra вала, мкм|Диаметр отверстия корпуса, мм|Ra отверстия, мкм|\
Радиальная нагрузка, Н|))|
%m
{#}|{m}|{dn}|{nmax}|((|{bd}|{sd.n}{sd.c}|{sa}|{hd.n}{hd.c}|{ha}|{Fr}|))|[;капремонт 2024]
%end
""",
)
FLEET_ES = Office(
    language="es",
    layout="row per position, machines down",
    file="csv ; utf-8-sig",
    machines="Bomba encapsulada BE-1,Bomba encapsulada BE-2,"
    "Freno dinamométrico FD-1,Centrífuga CF-3,Tambor TB-7,Tambor TB-8",
    positions="LA,LOA",
    bearing="ball;large /C3;small -2Z",
    fits="k5 k6 m5/H7 H6 J6",
    dwg="EQ-000",
    comma=True,
    count=3,
    choices="grease=grasa;oil bath=baño de aceite",
    lines="""
Inventario de equipos rotativos
Sección de mantenimiento|Fecha|{day}/05/2025

@0 ^Equipo|Plano|Velocidad máx. (rpm)|Lado|Rodamiento|Lubricación|Asiento eje Ø (mm)|Ra eje (µm)|\
Cilindricidad eje (µm)|Alojamiento Ø (mm)|Ra alojamiento (µm)|Cilindricidad alojamiento (µm)|Carga radial (N)|Almacén
@1 ^Cód.|Equipo|Lado|Plano|Velocidad máx. (rpm)|Rodamiento|Eje: asiento (mm)|Eje: Ra (µm)|Eje: resalte Ø (mm)|\
Alojamiento: asiento (mm)|Alojamiento: Ra (µm)|Alojamiento: resalte Ø (mm)|Carga radial (N)|Carga axial (N)|Proveedor
%m
%s
@0 {m}!|{dn}!|{nmax}!|{st}|{bd}|{lub}|{sd.n} {sd.c}|{sa}|{sc:µm}|{hd.n} {hd.c}|{ha}|{hc:µm}|{Fr}|[E-12;E-14;]
@1 [R-01;R-02;R-07]|{m}|{st}|{dn}|{nmax}|{bd}|{sd.n} {sd.c}|{sa}|{ss}|{hd.n} {hd.c}|{ha}|{hs}|{Fr}|{Fa}|[homologado;]
%end
%end
""",
)
FLEET_FR = Office(
    language="fr",
    layout="transposed, machines across",
    file="xlsx",
    machines="Compresseur turbo CT 1,Compresseur turbo CT 2,Alternateur A 3,Centrifugeuse CE 5",
    positions="Côté accouplement,Côté libre",
    bearing="ball /C3;large",
    fits="k5 k6 m5/H6 H7 J6",
    dwg="PL-0000",
    comma=True,
    count=2,
    choices="grease=graisse;oil bath=bain d'huile",
    lines="""
Parc machines : sièges de roulements
Établi le {day}/03/2025 par le service méthodes

Machine||+{m}
Plan||+{dn}
Vitesse maximale|tr/min|+{nmax}
^Palier||*{st}
Roulement||*{bd}
Lubrification||*{lub}
Charge radiale|N|*{Fr}
Charge axiale|N|*{Fa}
Portée d'arbre|mm|*{sd.n} {sd.c}
Cylindricité de la portée|µm|*{sc:µm}
Rugosité Ra de la portée|µm|*{sa}
Diamètre d'épaulement de l'arbre|mm|*{ss}
Alésage du logement|mm|*{hd.n} {hd.c}
Cylindricité de l'alésage|µm|*{hc:µm}
Rugosité Ra de l'alésage|µm|*{ha}
Diamètre d'épaulement du logement|mm|*{hs}
""",
    more={"across": "1", "labels": "1", "units": "column", "sheet": "Parc"},
)
ODD = (FLEET_DE, FLEET_FR)
EVEN = (FLEET_EN, FLEET_RU, FLEET_ES)
