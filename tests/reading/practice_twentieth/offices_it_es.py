# ruff: noqa: E501  (a line of a form is a line of a table)
"""The offices that write Italian and Spanish."""

from practice_twentieth.office import Export, Office, style

ITALIAN = """steel=Acciaio bonificato;cast iron=Ghisa grigia;aluminium=Alluminio;horizontal=Orizzontale;
vertical=Verticale;continuous=Continuo;intermittent=Intermittente;grease=Grasso;locating=Bloccato;floating=Libero;
inner=Anello interno;deep groove ball=Radiale rigido a sfere;contact seal=Tenute striscianti;shield=Schermi;open=Aperto"""
SPANISH = """steel=Acero;cast iron=Fundición gris;aluminium=Aluminio;horizontal=Horizontal;vertical=Vertical;
continuous=Continuo;intermittent=Intermitente;grease=Grasa;locating=Fijo;floating=Libre;inner=Aro interior;
deep groove ball=Rodamiento rígido de bolas;contact seal=Obturaciones;shield=Placas de protección;open=Abierto"""
#: Compressors.
COMPRESSORI = Office(
    "it", 0, "Compressore a vite CV 22|Soffiante SF 60|Pompa a ingranaggi PI 12|Aspiratore AS 315",
    "6205-2RS1|6206-2RS1|6305-2RS1|6306-2RS1/C3", style(ITALIAN, comma=True), (
        Export("row per position", "csv ; cp1252", "lato comando,lato opposto", """
SCHEDA SUPPORTI ROTORE;;;;Data: 07/02/2025
Macchina;{name};;Disegno n.;{dwg};;Rev.;{rev}
Velocità massima [giri/min];{nmax};;Durata L10h richiesta [h];{life};;Temperatura ambiente [°C];{tamb}

# ;Cuscinetto;;;;Sede albero;;;;;Sede alloggiamento;;;;;
# Supporto;Sigla;d [mm];D [mm];Carico radiale [N];Diametro [mm];Tolleranza;Ra [µm];Cilindricità [mm];Spallamento Ø [mm];Diametro [mm];Tolleranza;Ra [µm];Cilindricità [mm];Spallamento Ø [mm];Note
%pos
{pos};{des};{d};{D};{Fr};{s.N};{s.C};{s.ra};{s.cyl};{s.sh};{h.N};{h.C};{h.ra};{h.cyl};{h.sh};rettificato
%end
""".replace(";", "|")),
        Export("row per feature", "xlsx", "A,B", """
Piano di controllo|||Macchina|{name}||Disegno n.|{dwg}

# Supporto|Elemento|Caratteristica|Valore nominale|Scost. superiore|Scost. inferiore|Unità|Strumento
%pos
{pos}|Albero|Diametro sede|{s.N}|{s.U}|{s.L}|mm|micrometro
{pos}|Albero|Cilindricità|{s.cyl}|||mm|rotondimetro
{pos}|Albero|Rugosità Ra|{s.ra}|||µm|rugosimetro
{pos}|Albero|Oscillazione totale radiale|{s.run}|||mm|comparatore
{pos}|Albero|Diametro spallamento|{s.sh}|||mm|calibro
{pos}|Albero|Oscillazione assiale spallamento|{s.shr}|||mm|comparatore
{pos}|Alloggiamento|Diametro sede|{h.N}|{h.U}|{h.L}|mm|alesametro
{pos}|Alloggiamento|Cilindricità|{h.cyl}|||mm|rotondimetro
{pos}|Alloggiamento|Rugosità Ra|{h.ra}|||µm|rugosimetro
{pos}|Alloggiamento|Oscillazione totale radiale|{h.run}|||mm|comparatore
{pos}|Alloggiamento|Diametro spallamento|{h.sh}|||mm|calibro
{pos}|Alloggiamento|Oscillazione assiale spallamento|{h.shr}|||mm|comparatore
%end
"""),
        Export("transposed", "csv ; utf-8", "lato comando,lato opposto", """
Macchina;{name}
Disegno n.;{dwg}
Velocità massima;{nmax} giri/min
Quote in mm, rugosità Ra in µm, forze in N

# Parametro;<p{pos}p>
Sigla cuscinetto;<p{des}p>
Carico radiale;<p{Fr}p>
Carico assiale;<p{Fa}p>
Diametro albero;<p{s.N} {s.C}p>
Rugosità Ra albero;<p{s.ra}p>
Cilindricità albero;<p{s.cyl}p>
Diametro spallamento albero;<p{s.sh}p>
Raggio di raccordo max albero;<p{s.fil}p>
Diametro sede alloggiamento;<p{h.N} {h.C}p>
Rugosità Ra alloggiamento;<p{h.ra}p>
Cilindricità alloggiamento;<p{h.cyl}p>
Diametro spallamento alloggiamento;<p{h.sh}p>
Raggio di raccordo max alloggiamento;<p{h.fil}p>
""".replace(";", "|")),
    ),
)  # fmt: skip
#: Motors: parts lists.
MOTORI = Office(
    "it", 1, "Motore asincrono MT 80|Riduttore RD 63|Elettroventola EV 30", "6203-2Z|6204-2Z|6205-2Z|6304-2Z",
    style(ITALIAN + ";steel=C40;cast iron=EN-GJL-250;aluminium=EN AC-46000", comma=True), (
        Export("parts list", "csv ; utf-8", "LA,LOA", """
DISTINTA COMPONENTI ROTORE;;;;Modello;{name};Disegno;{dwg}

# Pos.;Q.tà;Descrizione;Lato;Codice cuscinetto;Carico radiale [N];Diametro nominale [mm];Limite max [mm];Limite min [mm];Ra [µm];Cilindricità [mm];Oscillazione totale [mm];Ø spallamento [mm];Raggio raccordo max [mm];Materiale;Codice articolo
%pos
1;1;Cuscinetto;{pos};{des};{Fr};;;;;;;;;;300-120
2;1;Sede cuscinetto su albero;{pos};;;{s.N};{s.X};{s.M};{s.ra};{s.cyl};{s.run};{s.sh};{s.fil};{smat};
3;1;Sede cuscinetto nello scudo;{pos};;;{h.N};{h.X};{h.M};{h.ra};{h.cyl};{h.run};{h.sh};{h.fil};{hmat};
%end
""".replace(";", "|")),
        Export("row per machine", "xlsx", "LA,LOA", """
Tabella accoppiamenti cuscinetti

# Modello|Disegno|Velocità max|Peso rotore|<pLato {pos}|<<|<<|<<|<<|<<p>|Stato
# |||<pCuscinetto|Albero|Sede scudo|Ra albero|Ra sede scudo|Carico radialep>|
# |||kg|<p|mm|mm|µm|µm|Np>|
%machine
{name}|{dwg}|{nmax}|{mass}|<p{des}|{s.N} {s.C}|{h.N} {h.C}|{s.ra}|{h.ra}|{Fr}p>|approvato
%end
""".replace("# |||<pCusc", "# ||||<pCusc").replace("# |||kg", "# ||giri/min|kg"), 3),
    ),
)  # fmt: skip
#: Pumps and mixers.
BOMBAS = Office(
    "es", 1, "Bomba horizontal BH 50|Agitador AG 7|Bomba de vacío BV 25|Soplante SP 40",
    "6206-2Z|6207-2Z|6306-2Z|6307-2Z/C3", style(SPANISH, comma=True, group="."), (
        Export("row per position", "xlsx", "Lado acople,Lado libre", """
HOJA DE DATOS DE APOYOS
Máquina|{name}
Plano n.º|{dwg}
Revisión|{rev}
Velocidad máxima (rpm)|{nmax}
Vida L10h requerida (h)|{life}

# Apoyo|Rodamiento|Carga radial (N)|Carga axial (N)|Asiento del eje (mm)|Ra asiento del eje (µm)|Cilindricidad asiento del eje (mm)|Resalte del eje Ø (mm)|Radio de acuerdo máx. eje (mm)|Asiento del alojamiento (mm)|Ra asiento del alojamiento (µm)|Cilindricidad asiento del alojamiento (mm)|Resalte del alojamiento Ø (mm)|Radio de acuerdo máx. alojamiento (mm)|Revisado
%pos
{pos}|{des}|{Fr}|{Fa}|{s.N} {s.C} ({s.U}/{s.L})|{s.ra}|{s.cyl}|{s.sh}|{s.fil}|{h.N} {h.C} ({h.U}/{h.L})|{h.ra}|{h.cyl}|{h.sh}|{h.fil}|JLP
%end
"""),
        Export("row per seat", "csv ; utf-8-sig", "Lado acople,Lado libre", """
Máquina;{name};;Plano n.º;{dwg};;Velocidad máxima (rpm);{nmax}

# Apoyo;Rodamiento;Asiento;Diámetro nominal (mm);Tolerancia ISO;Desv. sup. (mm);Desv. inf. (mm);Rugosidad Ra (µm);Cilindricidad (mm);Salto radial total (mm);Diámetro del resalte (mm);Radio de acuerdo máx. (mm);Observaciones
%pos
{pos};{des};Eje;{s.N};{s.C};{s.U};{s.L};{s.ra};{s.cyl};{s.run};{s.sh};{s.fil};templado
{pos};;Alojamiento;{h.N};{h.C};{h.U};{h.L};{h.ra};{h.cyl};{h.run};{h.sh};{h.fil};
%end
""".replace(";", "|")),
        Export("long", "csv ; cp1252", "1,2", """
# Máquina;Conjunto;Característica;Valor;Unidad;Origen
%machine
{name};General;Plano n.º;{dwg};;PDM
{name};General;Velocidad máxima;{nmax};rpm;cálculo
{name};General;Temperatura ambiente;{tamb};°C;cálculo
%pos
{name};Rodamiento {pos};Designación del rodamiento;{des};;PDM
{name};Rodamiento {pos};Carga radial;{Fr};N;cálculo
{name};Rodamiento {pos};Diámetro del asiento del eje;{s.N} {s.C};mm;plano
{name};Rodamiento {pos};Rugosidad Ra del asiento del eje;{s.ra};µm;plano
{name};Rodamiento {pos};Diámetro del resalte del eje;{s.sh};mm;plano
{name};Rodamiento {pos};Diámetro del asiento del alojamiento;{h.N} {h.C};mm;plano
{name};Rodamiento {pos};Rugosidad Ra del asiento del alojamiento;{h.ra};µm;plano
{name};Rodamiento {pos};Diámetro del resalte del alojamiento;{h.sh};mm;plano
%end
%end
""".replace(";", "|"), 2),
    ),
)  # fmt: skip
#: Spindles: parameters, blocks.
HUSILLOS = Office(
    "es", 0, "Husillo de fresado HF 40|Husillo rectificador HR 20|Cabezal de torno CT 55",
    "7005 C|7006 C|7206 AC|7207 AC", style(SPANISH), (
        Export("blocks", "xlsx", "A,B", """
Ficha de husillo|||||
Husillo|{name}||Plano|{dwg}|
Velocidad máx.|{nmax} r/min||Distancia entre apoyos|{span} mm|

<pApoyo {pos}|||p>
<pRodamiento|{des}||p>
<pÁngulo de contacto|{alpha}|°|p>
<pCarga radial|{Fr}|N|p>
<pAsiento del eje, diámetro|{s.N} ±{s.P}|mm|p>
<pAsiento del eje, Ra|{s.ra}|µm|p>
<pAsiento del eje, cilindricidad|{s.cyl:um}|µm|p>
<pResalte del eje, diámetro|{s.sh}|mm|p>
<pAsiento del alojamiento, diámetro|{h.N} ±{h.P}|mm|p>
<pAsiento del alojamiento, Ra|{h.ra}|µm|p>
<pAsiento del alojamiento, cilindricidad|{h.cyl:um}|µm|p>
<pResalte del alojamiento, diámetro|{h.sh}|mm|p>
"""),
        Export("model", "csv , utf-8", "delantero,trasero", """
# Parámetro|Ecuación|Valor|Unidades|Comentario
maquina|=|{name}||nombre de la máquina
plano|=|{dwg}||número de plano
n_max|=|{nmax}|rpm|velocidad máxima
dist_apoyos|=|{span}|mm|distancia entre rodamientos
%pos
rod_{pos}|=|{des}||designación del rodamiento {pos}
Fr_{pos}|=|{Fr}|N|carga radial del rodamiento {pos}
Fa_{pos}|=|{Fa}|N|carga axial del rodamiento {pos}
d_eje_{pos}|=|{s.N}|mm|diámetro nominal del asiento del eje, rodamiento {pos}
d_eje_sup_{pos}|=|{s.U}|mm|desviación superior del asiento del eje, rodamiento {pos}
d_eje_inf_{pos}|=|{s.L}|mm|desviación inferior del asiento del eje, rodamiento {pos}
Ra_eje_{pos}|=|{s.ra}|µm|rugosidad Ra del asiento del eje, rodamiento {pos}
cil_eje_{pos}|=|{s.cyl}|mm|cilindricidad del asiento del eje, rodamiento {pos}
resalte_eje_{pos}|=|{s.sh}|mm|diámetro del resalte del eje, rodamiento {pos}
D_aloj_{pos}|=|{h.N}|mm|diámetro nominal del asiento del alojamiento, rodamiento {pos}
D_aloj_sup_{pos}|=|{h.U}|mm|desviación superior del asiento del alojamiento, rodamiento {pos}
D_aloj_inf_{pos}|=|{h.L}|mm|desviación inferior del asiento del alojamiento, rodamiento {pos}
Ra_aloj_{pos}|=|{h.ra}|µm|rugosidad Ra del asiento del alojamiento, rodamiento {pos}
cil_aloj_{pos}|=|{h.cyl}|mm|cilindricidad del asiento del alojamiento, rodamiento {pos}
resalte_aloj_{pos}|=|{h.sh}|mm|diámetro del resalte del alojamiento, rodamiento {pos}
%end
"""),
    ),
)  # fmt: skip
