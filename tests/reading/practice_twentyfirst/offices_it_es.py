# ruff: noqa: E501 - a line of a picture is a line of the table
"""Offices that write Italian and Spanish."""

from practice_twentyfirst.marks import Office

LIMITS_IT = Office(
    language="it", layout="row per position", file="csv ; utf-8-sig", comma=True, machines="Elettromandrino EM-4,Centrifuga a cesto CC-35",
    positions="anteriore,posteriore", bearing="angular C/P4;ball", number="EM.000.00", choices="grease=grasso",
    picture="""
Tabella sedi cuscinetti
Macchina | {ma}
Disegno n. | {dn} | Rev. | {rv} | Data | {day}/03/2025 | Firma | G.B.
Velocità max | {nx} | giri/min
Durata richiesta L10h | {li} | h
Precarico | {pf} | N

^Posizione | Cuscinetto | Carico radiale [N] | Carico assiale [N] | Lubrificazione | Sede albero max [mm] | Sede albero min [mm] | Rugosità Ra albero [µm] | Cilindricità albero [µm] | Ø spallamento albero [mm] | Sede alloggiamento max [mm] | Sede alloggiamento min [mm] | Rugosità Ra alloggiamento [µm] | Cilindricità alloggiamento [µm] | Ø spallamento alloggiamento [mm] | Note
%each
{st} | {bd} | {fr} | {fa} | {lu} | {sd=M} | {sd=m} | {sa} | {sc~µm} | {ss} | {hd=M} | {hd=m} | {ha} | {hc~µm} | {hs} | {pick=;rettificato;vedi nota 2}
%end
""",
)  # fmt: skip
DISTINTA = Office(
    language="it", layout="parts list with seats", file="csv ; cp1252", comma=True, machines="Ventilatore centrifugo VC-40,Riduttore coassiale RC-2",
    positions="lato comando,lato opposto", bearing="ball -2Z;ball -2RS1", number="VC-00000", fits="k5 k6 m5/H7 J7 K7",
    picture="""
DISTINTA BASE CON ACCOPPIAMENTI | {ma} | | dis. | {dn} | rev. | {rv}

^Pos. | Q.tà | Codice | Descrizione | Posizione | Diametro [mm] | Tolleranza | Scost. sup. [mm] | Scost. inf. [mm] | Ra [µm] | Cilindricità [mm] | Fornitore
{#=00} | 1 | {num=10-0000} | Albero rotore | | | | | | | | interno
%each
{#=00} | 1 | {bd} | Cuscinetto a sfere | {st} | | | | | | | commercio
{#=00} | | | Sede albero | {st} | {sd=n} | {sd=c} | {sd=u} | {sd=l} | {sa} | {sc} |
{#=00} | | | Sede alloggiamento | {st} | {hd=n} | {hd=c} | {hd=u} | {hd=l} | {ha} | {hc} |
@1 {#=00} | | | Spallamento albero | {st} | {ss} | | | | | |
%end
{#=00} | 1 | {num=10-0000} | Supporto | | | | | | | | fonderia
{#=00} | 4 | {num=99-0000} | Vite M8x25 | | | | | | | | commercio

Velocità massima: | {nx} | giri/min
Massa rotore: | {rm} | kg
""",
)  # fmt: skip
BLOCCHI = Office(
    language="it", layout="blocks per position", file="xlsx", sheet="Scheda", comma=True, machines="Pompa a lobi PL-3,Levigatrice LV-8",
    positions="A,B", bearing="ball;ball -2Z/C3", number="PL/0000", fits="k5 k6 j6/H6 H7 K6",
    choices="grease=grasso;locating=bloccato;floating=libero;steel=C45;cast iron=ghisa G25;aluminium=lega di alluminio",
    picture="""
SCHEDA TECNICA CUSCINETTI | | |
Denominazione | {ma} | |
Numero disegno | {dn} | Revisione | {rv}
Velocità massima | {nx} | giri/min
Velocità di esercizio | {no} | giri/min
Materiale albero | {ms} | |
Materiale alloggiamento | {mh} | |
%each

Supporto {st} | valore | u.m.
Sigla cuscinetto | {bd} |
Vincolo assiale | {ax} |
Lubrificazione | {lu} |
Carico radiale | {fr} | N
Carico assiale | {fa} | N
Coppia di serraggio ghiera | {nt} | Nm
Diametro sede albero | {sd=n c} | mm
Rugosità sede albero Ra | {sa} | µm
Cilindricità sede albero | {sc~µm} | µm
Oscillazione radiale totale sede albero | {sr~µm} | µm
Diametro spallamento albero | {ss} | mm
Raggio di raccordo albero max | {sf} | mm
Diametro sede alloggiamento | {hd=n c} | mm
Rugosità sede alloggiamento Ra | {ha} | µm
Cilindricità sede alloggiamento | {hc~µm} | µm
Diametro spallamento alloggiamento | {hs} | mm
%end
""",
)  # fmt: skip
GROUPS_ES = Office(
    language="es", layout="row per position, two-row headings", file="xlsx", sheet="Ajustes", comma=True,
    machines="Bomba de achique BA-4,Molino de bolas de laboratorio MB-1", positions="lado acople,lado libre", bearing="ball -2Z;ball",
    number="BA-000-0", choices="grease=grasa;locating=fijo;floating=libre", fits="k5 k6 m5/H7 J7 K7",
    picture="""
Ajustes de rodamientos
Máquina: | {ma} | | Plano: | {dn} | Rev.: | {rv} | Fecha: | {day}/04/2025
Velocidad máxima (rpm): | {nx} | | Vida nominal requerida (h): | {li}

^. | Rodamiento | | | | Asiento del eje | | | | | Alojamiento | | | | | .
^Apoyo | Referencia | Función | Fr (N) | Fa (N) | Ø nominal (mm) | Tolerancia | Desv. sup. (µm) | Desv. inf. (µm) | Ra (µm) | Ø nominal (mm) | Tolerancia | Desv. sup. (µm) | Desv. inf. (µm) | Ra (µm) | Observaciones
%each
{st} | {bd} | {ax} | {fr} | {fa} | {sd~mm/µm=n} | {sd~mm/µm=c} | {sd~mm/µm=u} | {sd~mm/µm=l} | {sa} | {hd~mm/µm=n} | {hd~mm/µm=c} | {hd~mm/µm=u} | {hd~mm/µm=l} | {ha} | {pick=;medir a 20 °C}
%end
""",
)  # fmt: skip
SERIES_ES = Office(
    language="es", layout="row per machine", file="csv ; cp1252", comma=True, count=4, positions="1,2",
    machines="Ventilador VA-250,Ventilador VA-315,Ventilador VA-400,Ventilador VA-500,Husillo HS-10,Husillo HS-16,Husillo HS-20,Husillo HS-25",
    bearing="ball -2Z;angular C", number="V0000", fits="k5 k6 m5/H6 H7 K6",
    picture="""
^Máquina | Nº de plano | Velocidad máx. (rpm) | Vida requerida (h) | <<Rodamiento {st} | Diámetro asiento eje {st} (mm) | Rugosidad Ra asiento eje {st} (µm) | Diámetro alojamiento {st} (mm) | Rugosidad Ra alojamiento {st} (µm)>> | Estado | Coste (€)
%machines
{ma} | {dn} | {nx} | {li} | <<{bd} | {sd=n c} | {sa} | {hd=n c} | {ha}>> | {pick=en serie;prototipo} | {pick=120;85;240}
%end
""",
)  # fmt: skip
LONG_ES = Office(
    language="es", layout="long", file="txt tab utf-8", machines="Separador ciclónico SC-7,Cabezal fresador CF-9", positions="delantero,trasero",
    bearing="ball -2RS1;angular AC", number="SC.00.000", left=True, comma=True, fits="",
    choices="grease=grasa;steel=acero;cast iron=fundición gris;aluminium=aluminio",
    picture="""
Listado de parámetros | {ma}
Plano | {dn}

^Nº | Rodamiento | Parámetro | Valor | Unidad | Tolerancia | Verificado
{#} | - | Velocidad máxima de giro | {nx} | rpm | | sí
{#} | - | Vida exigida L10h | {li} | h | | sí
{#} | - | Temperatura ambiente | {ta} | °C | | sí
{#} | - | Material del eje | {ms} | | | sí
{#} | - | Material del alojamiento | {mh} | | | sí
%each
{#} | {st} | Designación del rodamiento | {bd} | | | sí
{#} | {st} | Carga radial | {fr} | N | | sí
{#} | {st} | Carga axial | {fa} | N | | sí
{#} | {st} | Tipo de lubricación | {lu} | | | no
{#} | {st} | Viscosidad del aceite base a 40 °C | {v4} | mm²/s | | no
{#} | {st} | Diámetro del asiento del eje | {sd=n} | mm | {sd=c} | sí
{#} | {st} | Cilindricidad del asiento del eje | {sc~µm} | µm | | sí
{#} | {st} | Rugosidad Ra del asiento del eje | {sa} | µm | | sí
{#} | {st} | Diámetro del resalte del eje | {ss} | mm | | sí
{#} | {st} | Diámetro del alojamiento | {hd=n} | mm | {hd=c} | sí
{#} | {st} | Cilindricidad del alojamiento | {hc~µm} | µm | | sí
{#} | {st} | Rugosidad Ra del alojamiento | {ha} | µm | | no
{#} | {st} | Diámetro del resalte del alojamiento | {hs} | mm | | sí
%end
""",
)  # fmt: skip
ODD = (LIMITS_IT, DISTINTA, GROUPS_ES)
EVEN = (BLOCCHI, SERIES_ES, LONG_ES)
