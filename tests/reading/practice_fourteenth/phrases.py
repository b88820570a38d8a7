"""What engineers of eight countries write over the columns of such tables; several ways to say each thing.

A line is ``key: way | way``. ``{}`` stands for the word of the side (``shaft``, ``housing``), keys with a dot are the
features of a side, ``=`` the choices, ``#`` the pairs of positions, ``!`` columns that mean nothing to a seat.
"""

from practice_fourteenth.phrases_more import ES, JA, RU, ZH

EN = """
temp: Temperature
caption: Bearing seat data sheet | Bearing arrangement parameters
remark: see note 3 | CMM checked
date: Date
foot: Printed copies are not controlled. | General tolerances ISO 2768-mK
machine: Machine | Assembly | Unit designation | Model
dwg: Drawing no. | Dwg no. | Drawing number | DWG
rev: Rev. | Revision | Issue
n: Max. speed | Speed max | Maximum operating speed | n max
life: Required life L10h | Design life | Min. L10h
orient: Shaft orientation | Mounting attitude | Shaft axis
span: Bearing span | Bearing centre distance | Distance between bearings
mass: Rotor mass | Rotor weight | Mass of rotating assembly
bal: Balance grade | Balancing quality ISO 21940 | Balance quality
prel: Preload | Axial preload by | Preload arrangement
pf: Preload force | Spring preload | Axial preload
shm: Shaft material | Material shaft
hom: Housing material | Material housing | Housing matl.
tmax: Max. temperature | Temp. max | Highest temperature of assembly
tmin: Min. temperature | Cold start temperature | Temp. min
tamb: Ambient temperature | Ambient temp.
coax: Coaxiality of housing bores | Bore-to-bore coaxiality | Coaxiality bores
st: Position | Bearing position | Location | Pos.
des: Bearing | Bearing designation | Brg. no. | Bearing type/no.
d: Bearing bore d | Bore d | ID
D: Bearing OD D | Outside dia. D | OD
B: Width B | Bearing width | Ring width
role: Axial arrangement | Axial function | Locating / floating
lub: Lubrication | Lubricant | Lube
Fr: Radial load Fr | Radial load | Fr
Fa: Axial load Fa | Thrust load | Fa
top: Bearing temperature | Operating temp. bearing | Bearing operating temperature
shaft: Shaft seat | Journal | Shaft
housing: Housing bore | Housing seat | Housing
.seat: {} diameter | {} dia. | {} size
.fit: {} fit | Fit {} | {} tolerance
.ra: {} roughness Ra | Ra {} | {} finish Ra
.cyl: {} cylindricity | Cylindricity {}
.run: {} total runout | Total run-out {} | {} radial run-out
.sh: {} shoulder dia. | {} abutment diameter | Shoulder diameter {}
.shr: {} shoulder axial runout | {} face run-out | Shoulder perpendicularity {}
.fil: {} fillet radius max | Max. fillet {} | {} corner radius (max)
bearing: Bearing
general: General
class: tol. class | class | ISO tolerance
upper: upper dev. | upper tol. | ES/es
lower: lower dev. | lower tol. | EI/ei
min: min | min. | low limit
max: max | max. | high limit
name: Parameter | Attribute | Characteristic | Property
value: Value | Nominal | Setting
unit: Unit | UoM | Units
part: Part | Component | Item
feature: Feature | Characteristic | Dimension
note: Remark | Comment | Notes
units: All dimensions in mm, roughness in µm, speed in rpm, forces in N
=locating: locating | fixed | Locating (fixed)
=floating: floating | free | non-locating
=spring-loaded: spring-loaded | preloaded by spring
=grease: grease | Grease, sealed for life | lithium grease
=grease for high speed: high-speed grease | high speed grease
=oil-air: oil-air | oil + air
=oil mist: oil mist
=wave: wave spring | wave washer
=helical: coil springs | helical springs
=disc: disc springs | Belleville washers
=steel: 4140 steel | AISI 1045 | 42CrMo4
=aluminium: 6061-T6 aluminum | aluminium alloy | A356 cast aluminium
=cast iron: grey cast iron | Cast iron GJL-250 | gray iron class 30
=stainless steel: stainless 17-4PH | AISI 420 stainless
=horizontal: horizontal
=vertical: vertical
#: DE,NDE | A,B | Front,Rear | Drive end,Non-drive end | 1,2 | Brg 1,Brg 2 | Upper,Lower
!: Unit price=48.20 | Impeller dia.=142 | Winding=2Y 0.71 | Paint=RAL 7035
!: Qty per unit=1 | Supplier code=V-2207 | Lead time (wk)=6 | Key width=3 | Insulation class=F
"""
DE = """
temp: Temperatur
caption: Datenblatt Lagersitze | Parameterliste Lagerung
remark: siehe Protokoll | geprüft
date: Datum
foot: Allgemeintoleranzen ISO 2768-mK | Ausdruck unterliegt nicht dem Änderungsdienst.
machine: Maschine | Baugruppe | Gerät | Benennung
dwg: Zeichnungsnr. | Zeichnungs-Nr. | Zchng.-Nr. | Zeichnung
rev: Rev. | Index | Änderungsstand
n: Drehzahl max. | max. Drehzahl | Höchstdrehzahl nmax | Betriebsdrehzahl max.
life: geforderte Lebensdauer | Soll-Lebensdauer Lh | Lebensdauer L10h min.
orient: Wellenlage | Einbaulage Welle
span: Lagerabstand | Lagermittenabstand | Abstand der Lager
mass: Rotormasse | Läufermasse | Gewicht Rotor
bal: Wuchtgüte | Auswuchtgüte G | Wuchtgüte DIN ISO 21940
prel: Vorspannung | Anstellung durch | Axiale Vorspannung
pf: Vorspannkraft | Federkraft Anstellung | Vorspannkraft Fv
shm: Werkstoff Welle | Wellenwerkstoff | Material Welle
hom: Werkstoff Gehäuse | Gehäusewerkstoff | Mat. Gehäuse
tmax: Temperatur max. | max. Temperatur | Höchsttemperatur
tmin: Temperatur min. | min. Temperatur | Kaltstarttemperatur
tamb: Umgebungstemperatur | Umgebungstemp.
coax: Koaxialität der Gehäusebohrungen | Koaxialität Lagerbohrungen | Koaxialität Bohrungen A-B
st: Lagerstelle | Position | Lagerpos. | Stelle
des: Wälzlager | Lager | Lagerbezeichnung | Lagertyp
d: Lagerbohrung d | Innen-Ø d | Bohrung d
D: Lageraußendurchmesser D | Außen-Ø D | Außendurchm. D
B: Lagerbreite B | Breite B
role: Lagerfunktion | Fest/Los | axiale Führung
lub: Schmierung | Schmierart | Schmierstoff
Fr: Radiallast Fr | radiale Belastung | Radialkraft
Fa: Axiallast Fa | axiale Belastung | Axialkraft
top: Lagertemperatur | Betriebstemperatur Lager
shaft: Wellensitz | Welle | Lagersitz Welle
housing: Gehäusebohrung | Gehäuse | Lagersitz Gehäuse
.seat: {} Ø | {} Durchmesser | Ø {} | Durchm. {}
.fit: Passung {} | {} Passung | Toleranz {}
.ra: {} Rauheit Ra | Ra {} | Rauheit {}
.cyl: {} Zylindrizität | Zylinderform {} | Zyl.form {}
.run: {} Gesamtrundlauf | Gesamtlauf radial {} | Rundlauf {}
.sh: {} Schulter-Ø | Anlagedurchmesser {} | Schulterdurchmesser {}
.shr: {} Schulter Planlauf | Planlauf Anlagefläche {} | Planlauf Schulter {}
.fil: {} Hohlkehlradius max. | Übergangsradius {} max. | Kehlradius {}
bearing: Lager
general: Allgemein
class: Toleranzfeld | Tol.-Klasse | ISO-Toleranz
upper: ob. Abmaß | oberes Abmaß | o. Abm.
lower: unt. Abmaß | unteres Abmaß | u. Abm.
min: min | Kleinstmaß | Mindestmaß
max: max | Größtmaß | Höchstmaß
name: Merkmal | Parameter | Kenngröße
value: Wert | Sollwert | Nennwert
unit: Einheit | Einh.
part: Teil | Bauteil | Komponente
feature: Merkmal | Eigenschaft | Maß
note: Bemerkung | Hinweis
units: Alle Maße in mm, Rauheit Ra in µm, Drehzahl in 1/min, Kräfte in N
=locating: Festlager | fest | Fest
=floating: Loslager | lose | Los
=spring-loaded: federangestellt | federbelastet
=grease: Fett | Fettschmierung | Lebensdauerfett
=grease for high speed: Hochgeschwindigkeitsfett | Fett für hohe Drehzahlen
=oil-air: Öl-Luft | Öl-Luft-Schmierung
=oil mist: Ölnebel
=wave: Wellfeder | Wellenfeder
=helical: Schraubendruckfedern | Schraubenfedern
=disc: Tellerfedern | Tellerfederpaket
=steel: 42CrMo4 | C45 | 16MnCr5
=aluminium: AlSi10Mg | EN AW-6082 | Alu-Druckguss AlSi9Cu3
=cast iron: GJL-250 | GG-25 | EN-GJS-400
=stainless steel: 1.4305 | X17CrNi16-2
=horizontal: waagerecht | horizontal
=vertical: senkrecht | vertikal
#: A,B | AS,BS | Lager 1,Lager 2 | Festlager,Loslager
#: antriebsseitig,abtriebsseitig | vorn,hinten | LS1,LS2 | oben,unten
!: Preis EUR=12,40 | Laufrad-Ø=118 | Wicklung=0,63 / 84 Wdg | Lackierung=RAL 5010
!: Stückzahl=2 | Kostenstelle=4711 | Schutzart=IP54 | Dispo=MRP2
"""
FR = """
temp: Température
caption: Fiche paliers
remark: à vérifier
date: Date
foot: Tolérances générales ISO 2768-mK
machine: Machine | Désignation | Ensemble
dwg: N° de plan | Plan n° | Réf. plan
rev: Indice | Ind. | Révision
n: Vitesse max. | Vitesse de rotation maxi | Régime maxi
life: Durée de vie exigée L10h | Durée de vie L10h
orient: Position de l'arbre | Axe de l'arbre
span: Entraxe des paliers | Distance entre roulements
mass: Masse du rotor | Masse rotor
bal: Qualité d'équilibrage | Classe d'équilibrage G
prel: Précharge | Précontrainte axiale
pf: Effort de précharge | Force de précharge
shm: Matière arbre | Matériau de l'arbre
hom: Matière carter | Matériau du logement
tmax: Température max. | Temp. maxi
tmin: Température min. | Temp. mini
tamb: Température ambiante | Temp. ambiante
coax: Coaxialité des alésages | Coaxialité alésages de paliers
st: Palier | Position | Repère
des: Roulement | Désignation roulement | Réf. roulement
d: Alésage d | Ø intérieur d
D: Ø extérieur D | Diamètre ext. D
B: Largeur B | Largeur roulement
role: Fonction axiale | Fixe / libre
lub: Lubrification | Graissage
Fr: Charge radiale Fr | Effort radial
Fa: Charge axiale Fa | Effort axial
top: Température du roulement | Temp. de fonctionnement roulement
shaft: Arbre | Portée d'arbre | Portée arbre
housing: Logement | Alésage logement | Carter
.seat: {} Ø | Ø {} | Diamètre {}
.fit: Ajustement {} | Tolérance {}
.ra: Rugosité Ra {} | Ra {} | État de surface Ra {}
.cyl: Cylindricité {} | {} cylindricité
.run: Battement total {} | Battement radial total {}
.sh: Ø épaulement {} | Diamètre d'épaulement {}
.shr: Battement axial épaulement {} | Perpendicularité épaulement {}
.fil: Rayon de congé maxi {} | Congé max {}
bearing: Roulement
general: Général
class: classe | tolérance ISO
upper: écart sup. | éc. sup.
lower: écart inf. | éc. inf.
min: mini | min
max: maxi | max
name: Paramètre | Caractéristique
value: Valeur | Cote
unit: Unité
part: Pièce | Élément
feature: Caractéristique | Cote
note: Remarque | Observations
units: Cotes en mm, rugosité Ra en µm, vitesse en tr/min, efforts en N
=locating: fixe | palier fixe
=floating: libre | flottant
=spring-loaded: préchargé par ressort
=grease: graisse | graissé à vie
=grease for high speed: graisse haute vitesse
=oil-air: air-huile | huile-air
=oil mist: brouillard d'huile
=wave: rondelle ondulée | ressort ondulé
=helical: ressorts hélicoïdaux
=disc: rondelles Belleville
=steel: acier 42CrMo4 | acier C45
=aluminium: aluminium EN AC-46000 | alliage d'aluminium
=cast iron: fonte EN-GJL-250 | fonte grise
=stainless steel: inox 1.4057
=horizontal: horizontal
=vertical: vertical
#: Côté accouplement,Côté opposé | Palier 1,Palier 2 | CA,COA | avant,arrière
!: Prix unitaire=31,5 | Ø turbine=96 | Bobinage=Y 400 V
!: Peinture=RAL 9005 | Quantité=1 | Code article=88-214 | Fournisseur=F12
"""
IT = """
temp: Temperatura
caption: Scheda sedi cuscinetti
remark: da verificare
date: Data
foot: Tolleranze generali ISO 2768-mK
machine: Macchina | Gruppo | Denominazione
dwg: N. disegno | Disegno n° | Cod. disegno
rev: Rev. | Revisione | Indice di modifica
n: Velocità max | N. giri max | Velocità di rotazione massima
life: Durata richiesta L10h | Durata L10h
orient: Asse albero | Posizione albero
span: Interasse cuscinetti | Distanza tra i cuscinetti
mass: Massa rotore | Peso rotore
bal: Grado di equilibratura | Classe equilibratura G
prel: Precarico | Precarico assiale
pf: Forza di precarico | Carico molla
shm: Materiale albero | Mat. albero
hom: Materiale corpo | Materiale alloggiamento
tmax: Temperatura max | Temp. massima
tmin: Temperatura min | Temp. minima
tamb: Temperatura ambiente | Temp. ambiente
coax: Coassialità sedi | Coassialità fori alloggiamento
st: Posizione | Supporto | Pos.
des: Cuscinetto | Sigla cuscinetto | Designazione cuscinetto
d: Foro d | Ø interno d
D: Ø esterno D | Diam. est. D
B: Larghezza B | Largh. B
role: Funzione assiale | Bloccato / libero
lub: Lubrificazione | Lubrificante
Fr: Carico radiale Fr | Carico radiale
Fa: Carico assiale Fa | Spinta assiale
top: Temperatura cuscinetto | Temp. esercizio cuscinetto
shaft: Albero | Sede albero | Perno
housing: Alloggiamento | Sede alloggiamento | Foro alloggiamento
.seat: Ø {} | {} diametro | Diametro {}
.fit: Accoppiamento {} | Tolleranza {}
.ra: Rugosità Ra {} | Ra {} | {} rugosità
.cyl: Cilindricità {} | {} cilindricità
.run: Oscillazione totale {} | Oscillazione radiale {}
.sh: Ø spallamento {} | Diametro spallamento {}
.shr: Oscillazione assiale spallamento {} | Perpendicolarità spallamento {}
.fil: Raggio di raccordo max {} | Raccordo max {}
bearing: Cuscinetto
general: Generale
class: classe | toll. ISO
upper: scost. sup. | scostamento superiore
lower: scost. inf. | scostamento inferiore
min: min | minimo
max: max | massimo
name: Parametro | Caratteristica
value: Valore | Quota
unit: Unità | U.M.
part: Particolare | Componente
feature: Caratteristica | Quota
note: Note | Osservazioni
units: Quote in mm, rugosità Ra in µm, velocità in giri/min, forze in N
=locating: fisso | bloccato assialmente
=floating: libero | flottante
=spring-loaded: caricato a molla
=grease: grasso | grasso a vita
=grease for high speed: grasso per alte velocità
=oil-air: aria-olio | olio-aria
=oil mist: nebbia d'olio
=wave: molla ondulata | molla a onda
=helical: molle elicoidali
=disc: molle a tazza
=steel: acciaio C45 | 39NiCrMo3
=aluminium: alluminio EN AB-46100 | alluminio 6082
=cast iron: ghisa GJL-250 | ghisa G25
=stainless steel: acciaio inox AISI 420
=horizontal: orizzontale
=vertical: verticale
#: Lato comando,Lato opposto | A,B | LA,LOA | anteriore,posteriore
!: Prezzo=18,90 | Ø girante=128 | Avvolgimento=3x400
!: Verniciatura=RAL 6011 | Q.tà=4 | Codice fornitore=IT-309 | Magazzino=M2
"""
LANGUAGES = {"en": EN, "de": DE, "fr": FR, "it": IT, "es": ES, "ru": RU, "zh": ZH, "ja": JA}


def ways(language: str) -> dict[str, list[str]]:
    """Key and its ways of saying of one language."""
    said: dict[str, list[str]] = {}
    for line in LANGUAGES[language].strip().splitlines():
        key, _, told = line.partition(":")
        said.setdefault(key, []).extend(way.strip() for way in told.split(" | "))
    return said
