"""The words of drawings and catalogues in English, German, French and Italian.

Where the words were looked up (public pages, read for their terms only):

- reinel.net/TW/waelzlager-Dateien/sheet005.htm (Gehäusetoleranzen, Punktlast, Umfangslast)
- mesys.ag/manual-DE/surface_roughness_shaft_and_housing.html (Rauheit von Welle und Gehäuse)
- skf.com/at/... shaft-and-housing-tolerances (Lagersitz auf der Welle, Lagersitz im Gehäuse)
- skf.com/ca/fr/... dimensional-form-and-running-accuracy (portées, appuis, épaulements, cylindricité, faux-rond total)
- yumpu.com/fr/document/view/55668672 (tolérances d'arbre et de logement, écarts)
- b2b.centrocuscinettifoggia.it/articoli/.../32213.html (diametro spallamento albero / alloggiamento, raggio raccordo)
- skf.com/it/... shaft-and-housing-tolerances (sede dell'albero, foro di alloggiamento)
- simpli.com/lifestyle/reading-bearing-dimension-charts... (bore, O.D., width, chamfer)
- help.solidworks.com/2022/... t_Entering_Parameters_in_a_Design_Table.htm (names of columns in design tables)
- support.ptc.com/help/wnc/r12.0.0.0/de/... ImExExportConsiderations.html (display names and internal names)

One line a parameter: ``name | full heading ; another | word under a group heading ; another``. In the full headings
``{s}`` stands for the seat, ``{b}`` for the shoulder, ``{p}`` for the part.
"""

FEATURES = {
    "en": """
seat_diameter | {s} diameter ; {s} dia. ; Ø {s} | Seat diameter ; Seat Ø ; Seat dia.
seat_cylindricity | {s} cylindricity ; Cylindricity of {s} | Cylindricity ; Cyl.
seat_runout | {s} total run-out ; Total runout {s} | Total run-out ; Seat run-out
seat_roughness | {s} Ra ; {s} roughness Ra | Roughness Ra ; Ra ; Surface finish Ra
shoulder_diameter | {b} diameter ; {b} dia. | Shoulder diameter ; Abutment dia.
shoulder_runout | {b} axial run-out ; {b} face run-out | Shoulder run-out ; Axial run-out of shoulder
fillet_radius | {p} fillet radius ; {b} fillet radius max | Fillet radius ; Fillet r max
""",
    "de": """
seat_diameter | Durchmesser {s} ; {s} Ø ; {s}durchmesser | Sitz-Ø ; Sitzdurchmesser ; Lagersitz Ø
seat_cylindricity | Zylinderform {s} ; Zylindrizität {s} | Zylinderform ; Zylindrizität
seat_runout | Gesamtrundlauf {s} ; Gesamtlauf {s} | Gesamtrundlauf ; Gesamtlauf Sitz
seat_roughness | Rauheit Ra {s} ; Ra {s} | Ra ; Rauheit Ra ; Mittenrauwert Ra
shoulder_diameter | Durchmesser {b} ; {b} Ø | Schulter-Ø ; Schulterdurchmesser ; Anlage-Ø
shoulder_runout | Planlauf {b} ; Axiallauf {b} | Planlauf Schulter ; Planlauf
fillet_radius | Hohlkehlradius {b} ; Übergangsradius {b} | Hohlkehle r ; Übergangsradius ; Radius max.
""",
    "fr": """
seat_diameter | Diamètre {s} ; Ø {s} | Diamètre portée ; Ø portée ; Diamètre de la portée
seat_cylindricity | Cylindricité {s} ; Tolérance de cylindricité {s} | Cylindricité ; Tol. cylindricité
seat_runout | Battement total {s} ; Battement radial total {s} | Battement total ; Battement radial total
seat_roughness | Rugosité Ra {s} ; Ra {s} | Rugosité Ra ; Ra ; État de surface Ra
shoulder_diameter | Diamètre {b} ; Ø {b} | Diamètre épaulement ; Ø épaulement
shoulder_runout | Battement axial {b} ; Perpendicularité {b} | Battement axial épaulement ; Battement axial
fillet_radius | Rayon de congé {p} ; Congé {b} | Rayon de congé ; Congé max
""",
    "it": """
seat_diameter | Diametro {s} ; Ø {s} | Diametro sede ; Ø sede
seat_cylindricity | Cilindricità {s} ; Tolleranza di cilindricità {s} | Cilindricità ; Toll. cilindricità
seat_runout | Oscillazione totale {s} ; Oscillazione radiale totale {s} | Oscillazione totale ; Oscill. radiale totale
seat_roughness | Rugosità Ra {s} ; Ra {s} | Rugosità Ra ; Ra
shoulder_diameter | Diametro {b} ; Ø {b} | Diametro spallamento ; Ø spallamento
shoulder_runout | Oscillazione assiale {b} ; Perpendicolarità {b} | Oscillazione assiale spallamento ; Oscill. assiale
fillet_radius | Raggio di raccordo {p} ; Raccordo {b} | Raggio di raccordo ; Raggio raccordo max
""",
}
SIDES = {
    "en": {
        "shaft": ("Shaft seat", "Shaft shoulder", "Shaft"),
        "housing": ("Housing seat", "Housing shoulder", "Housing"),
    },
    "de": {
        "shaft": ("Wellensitz", "Wellenschulter", "Welle"),
        "housing": ("Gehäusesitz", "Gehäuseschulter", "Gehäuse"),
    },
    "fr": {
        "shaft": ("portée arbre", "épaulement arbre", "arbre"),
        "housing": ("portée logement", "épaulement logement", "logement"),
    },
    "it": {
        "shaft": ("sede albero", "spallamento albero", "albero"),
        "housing": ("sede alloggiamento", "spallamento alloggiamento", "alloggiamento"),
    },
}
OTHERS = {
    "en": """
bearing_designation | Bearing designation ; Bearing no. ; Bearing | Designation ; Basic no.
size_text | Bearing size d x D x B ; Bearing dimensions (d x D x B) | d x D x B ; Dimensions d×D×B
bore_diameter | Bearing bore d ; Bearing bore diameter | d ; Bore d ; Bore
outside_diameter | Bearing outside diameter D ; Bearing O.D. | D ; Outside diameter D ; O.D.
ring_width | Bearing width B ; Bearing width | B ; Width B ; Width
ring_chamfer | Bearing chamfer r min ; Ring chamfer rs min | r min ; Chamfer rs min
bearing_type | Bearing type ; Type of bearing | Type
contact_angle | Contact angle ; Bearing contact angle | Contact angle ; Contact angle α
closure | Bearing sealing ; Seals / shields | Sealing ; Closure
clearance_class | Internal clearance class ; Bearing clearance | Clearance class ; Clearance
tolerance_class | Bearing tolerance class ; Bearing precision class | Tolerance class ; Precision
cage | Bearing cage ; Cage | Cage ; Cage material
ball_material | Ball material ; Rolling element material | Balls ; Ball material
ball_count | Number of balls ; Number of balls Z | Number of balls ; Z
dynamic_rating | Basic dynamic load rating C ; Dynamic load rating | C ; Dynamic rating C
static_rating | Basic static load rating C0 ; Static load rating | C0 ; Static rating C0
fatigue_load_limit | Fatigue load limit Pu ; Fatigue load limit | Pu ; Fatigue limit
limiting_speed | Bearing limiting speed ; Limiting speed (grease) | Limiting speed ; n lim
reference_speed | Bearing reference speed ; Thermal reference speed | Reference speed ; n ref
lubrication | Lubrication ; Lubrication method | Lubrication
base_oil_viscosity_40 | Base oil viscosity at 40 °C ; Kinematic viscosity 40 °C | Viscosity @ 40 °C
base_oil_viscosity_100 | Base oil viscosity at 100 °C ; Kinematic viscosity 100 °C | Viscosity @ 100 °C
grease_fill | Grease fill ; Grease fill of free volume | Grease fill
radial_load | Radial load ; Radial load Fr | Fr ; Radial load
axial_load | Axial load ; Thrust load Fa | Fa ; Axial load
operating_temperature | Bearing operating temperature ; Operating temperature of bearing | Operating temp.
axial_role | Axial location ; Bearing arrangement function | Axial function
speed_max | Maximum speed ; Max. shaft speed | Max. speed
speed_operating | Operating speed ; Rated speed | Operating speed
required_life | Required life L10h ; Required rating life | Required life
temperature_min | Lowest temperature ; Min. temperature | Min. temp.
temperature_max | Highest temperature ; Max. temperature | Max. temp.
shaft_temperature | Shaft temperature ; Temperature of shaft | Shaft temp.
housing_temperature | Housing temperature ; Temperature of housing | Housing temp.
ambient_temperature | Ambient temperature ; Ambient temp. | Ambient temp.
shaft_material | Shaft material ; Material of shaft | Shaft material
housing_material | Housing material ; Material of housing | Housing material
bearing_span | Bearing span ; Bearing centre distance | Bearing span
rotor_mass | Rotor mass ; Mass of rotor | Rotor mass
balance_grade | Balance quality grade G ; Balancing grade (ISO 21940-11) | Balance grade
preload_method | Preload method ; Type of preload | Preload type
preload_force | Preload ; Axial preload force | Preload force
spring_rate | Spring rate ; Preload spring rate | Spring rate
spring_free_length | Spring free length ; Free length of spring | Free length
spring_installed_length | Spring installed length ; Installed length of spring | Installed length
shaft_orientation | Shaft orientation ; Shaft position | Orientation
rotating_ring | Rotating ring ; Ring rotating | Rotating ring
drawing_number | Drawing no. ; Drawing number | Drawing no.
drawing_revision | Revision ; Rev. | Rev.
machine | Machine ; Assembly ; Equipment | Machine
station | Position ; Bearing position ; Location | Position
part | Part ; Component | Part
tol_class | Tolerance ; Tol. class ; Fit | Tolerance ; Fit
upper | Upper deviation ; Upper dev. | upper dev. ; es/ES
lower | Lower deviation ; Lower dev. | lower dev. ; ei/EI
max | max. ; Max. limit | max
min | min. ; Min. limit | min
fit_pair | Fits shaft / housing ; Fit (shaft/housing) | Fit shaft/housing
""",
    "de": """
bearing_designation | Lagerbezeichnung ; Lager ; Wälzlager Typ | Bezeichnung ; Kurzzeichen
size_text | Lagerabmessung d x D x B ; Hauptabmessungen Lager d×D×B | Abmessung d x D x B ; d×D×B
bore_diameter | Lagerbohrung d ; Bohrungsdurchmesser Lager | d ; Bohrung d ; Innen-Ø d
outside_diameter | Lageraußendurchmesser D ; Außendurchmesser Lager | D ; Außen-Ø D ; Außendurchmesser D
ring_width | Lagerbreite B ; Breite Lager | B ; Breite B
ring_chamfer | Kantenabstand r min ; Kantenabstand Lager rs min | r min ; Kantenabstand r
bearing_type | Lagerbauart ; Bauart Lager | Bauart
contact_angle | Druckwinkel ; Berührungswinkel Lager | Druckwinkel ; Druckwinkel α
closure | Lagerabdichtung ; Abdichtung Lager | Abdichtung ; Dichtung
clearance_class | Lagerluft ; Lagerluftklasse | Lagerluft ; Luftklasse
tolerance_class | Lagertoleranzklasse ; Genauigkeitsklasse Lager | Genauigkeit ; Toleranzklasse
cage | Käfig ; Käfigausführung | Käfig ; Käfigwerkstoff
ball_material | Kugelwerkstoff ; Werkstoff Wälzkörper | Kugelwerkstoff ; Kugeln
ball_count | Anzahl Kugeln ; Kugelanzahl Z | Kugelzahl ; Z
dynamic_rating | Dynamische Tragzahl C ; Tragzahl dyn. | C ; Tragzahl dyn. C
static_rating | Statische Tragzahl C0 ; Tragzahl stat. | C0 ; Tragzahl stat. C0
fatigue_load_limit | Ermüdungsgrenzbelastung Cu ; Ermüdungsgrenzbelastung | Cu ; Ermüdungsgrenze
limiting_speed | Grenzdrehzahl Lager ; Grenzdrehzahl | Grenzdrehzahl ; nG
reference_speed | Referenzdrehzahl ; Bezugsdrehzahl Lager | Bezugsdrehzahl ; Referenzdrehzahl
lubrication | Schmierung ; Schmierungsart | Schmierung
base_oil_viscosity_40 | Grundölviskosität bei 40 °C ; Viskosität 40 °C | Viskosität 40 °C
base_oil_viscosity_100 | Grundölviskosität bei 100 °C ; Viskosität 100 °C | Viskosität 100 °C
grease_fill | Fettfüllgrad ; Fettfüllung | Fettfüllgrad
radial_load | Radiallast ; Radialkraft Fr | Fr ; Radialkraft
axial_load | Axiallast ; Axialkraft Fa | Fa ; Axialkraft
operating_temperature | Betriebstemperatur Lager ; Lagertemperatur im Betrieb | Lagertemperatur
axial_role | Lageraufgabe ; Fest-/Loslager | Axiale Aufgabe ; Fest/Los
speed_max | Höchstdrehzahl ; Max. Drehzahl | n max
speed_operating | Betriebsdrehzahl ; Nenndrehzahl | Betriebsdrehzahl
required_life | Geforderte Lebensdauer L10h ; Soll-Lebensdauer | Lebensdauer soll
temperature_min | Minimale Temperatur ; Tiefsttemperatur | T min
temperature_max | Maximale Temperatur ; Höchsttemperatur | T max
shaft_temperature | Wellentemperatur ; Temperatur Welle | T Welle
housing_temperature | Gehäusetemperatur ; Temperatur Gehäuse | T Gehäuse
ambient_temperature | Umgebungstemperatur ; Temperatur Umgebung | T Umgebung
shaft_material | Wellenwerkstoff ; Werkstoff Welle | Werkstoff Welle
housing_material | Gehäusewerkstoff ; Werkstoff Gehäuse | Werkstoff Gehäuse
bearing_span | Lagerabstand ; Lagermittenabstand | Lagerabstand
rotor_mass | Rotormasse ; Masse Rotor | Rotormasse
balance_grade | Wuchtgüte G ; Auswuchtgütestufe G | Wuchtgüte
preload_method | Vorspannungsart ; Art der Vorspannung | Art der Vorspannung
preload_force | Vorspannkraft ; Axiale Vorspannkraft | Vorspannkraft
spring_rate | Federrate ; Federsteifigkeit | Federrate
spring_free_length | Ungespannte Federlänge L0 ; Freie Länge Feder | L0 Feder
spring_installed_length | Einbaulänge Feder ; Federlänge eingebaut L1 | Einbaulänge
shaft_orientation | Wellenlage ; Einbaulage Welle | Wellenlage
rotating_ring | Umlaufender Ring ; Drehender Ring | Umlaufender Ring
drawing_number | Zeichnungsnummer ; Zeichnungs-Nr. | Zeichn.-Nr.
drawing_revision | Revision ; Änderungsindex | Rev.
machine | Maschine ; Baugruppe ; Aggregat | Maschine
station | Lagerstelle ; Lagerposition ; Stelle | Lagerstelle
part | Bauteil ; Teil | Bauteil
tol_class | Toleranz ; Passung ; Toleranzfeld | Tol. ; Passung
upper | Oberes Abmaß ; ob. Abmaß | ob. Abm. ; es/ES
lower | Unteres Abmaß ; unt. Abmaß | unt. Abm. ; ei/EI
max | Größtmaß ; max. | max.
min | Kleinstmaß ; min. | min.
fit_pair | Passung Welle/Gehäuse ; Toleranz Welle / Gehäuse | Passung Welle/Gehäuse
""",
    "fr": """
bearing_designation | Désignation du roulement ; Roulement ; Référence roulement | Désignation ; Référence
size_text | Dimensions roulement d x D x B ; Encombrement d x D x B | d x D x B ; Dimensions d×D×B
bore_diameter | Alésage du roulement d ; Alésage roulement | d ; Alésage d
outside_diameter | Diamètre extérieur du roulement D ; Ø extérieur roulement | D ; Diamètre extérieur D
ring_width | Largeur du roulement B ; Largeur roulement | B ; Largeur B
ring_chamfer | Arrondi roulement r min ; Chanfrein bague rs min | r min ; Arrondi r min
bearing_type | Type de roulement ; Genre de roulement | Type
contact_angle | Angle de contact ; Angle de contact roulement | Angle de contact
closure | Étanchéité du roulement ; Protection du roulement | Étanchéité ; Protection
clearance_class | Jeu interne ; Classe de jeu radial | Jeu interne ; Classe de jeu
tolerance_class | Classe de précision roulement ; Classe de tolérance roulement | Précision ; Classe de précision
cage | Cage ; Cage du roulement | Cage
ball_material | Matière des billes ; Matériau des billes | Billes
ball_count | Nombre de billes ; Nombre de billes Z | Nb billes
dynamic_rating | Charge dynamique de base C ; Capacité de charge dynamique | C ; Charge dynamique C
static_rating | Charge statique de base C0 ; Capacité de charge statique | C0 ; Charge statique C0
fatigue_load_limit | Limite de fatigue Pu ; Limite de fatigue du roulement | Limite de fatigue
limiting_speed | Vitesse limite du roulement ; Vitesse limite | Vitesse limite
reference_speed | Vitesse de référence ; Vitesse thermique de référence | Vitesse de référence
lubrication | Lubrification ; Mode de lubrification | Lubrification
base_oil_viscosity_40 | Viscosité huile de base à 40 °C ; Viscosité à 40 °C | Viscosité 40 °C
base_oil_viscosity_100 | Viscosité huile de base à 100 °C ; Viscosité à 100 °C | Viscosité 100 °C
grease_fill | Taux de remplissage graisse ; Remplissage de graisse | Remplissage graisse
radial_load | Charge radiale ; Charge radiale Fr | Fr ; Charge radiale
axial_load | Charge axiale ; Charge axiale Fa | Fa ; Charge axiale
operating_temperature | Température de fonctionnement du roulement ; Température roulement | T° roulement
axial_role | Fonction axiale ; Palier fixe/libre | Fonction axiale
speed_max | Vitesse maximale ; Vitesse de rotation max | Vitesse max
speed_operating | Vitesse de fonctionnement ; Vitesse de service | Vitesse de service
required_life | Durée de vie requise L10h ; Durée de vie demandée | Durée requise
temperature_min | Température minimale ; Température mini | T° mini
temperature_max | Température maximale ; Température maxi | T° maxi
shaft_temperature | Température arbre ; Température de l'arbre | T° arbre
housing_temperature | Température logement ; Température du carter | T° logement
ambient_temperature | Température ambiante ; T° ambiante | T° ambiante
shaft_material | Matière arbre ; Matériau de l'arbre | Matière arbre
housing_material | Matière logement ; Matériau du logement | Matière logement
bearing_span | Entraxe des roulements ; Distance entre roulements | Entraxe roulements
rotor_mass | Masse du rotor ; Masse rotor | Masse rotor
balance_grade | Qualité d'équilibrage G ; Degré d'équilibrage G | Équilibrage
preload_method | Type de précharge ; Mode de précharge | Type de précharge
preload_force | Précharge ; Effort de précharge | Précharge
spring_rate | Raideur du ressort ; Raideur ressort | Raideur
spring_free_length | Longueur libre du ressort ; Longueur libre ressort L0 | Longueur libre
spring_installed_length | Longueur montée du ressort ; Longueur ressort monté L1 | Longueur montée
shaft_orientation | Position de l'arbre ; Orientation de l'arbre | Orientation
rotating_ring | Bague tournante ; Bague en rotation | Bague tournante
drawing_number | N° de plan ; Numéro de plan | N° plan
drawing_revision | Indice ; Révision | Ind.
machine | Machine ; Ensemble | Machine
station | Palier ; Position ; Repère palier | Palier
part | Pièce ; Élément | Pièce
tol_class | Tolérance ; Ajustement ; Classe de tolérance | Tol. ; Ajustement
upper | Écart supérieur ; Écart sup. | écart sup. ; es/ES
lower | Écart inférieur ; Écart inf. | écart inf. ; ei/EI
max | maxi ; max. | maxi
min | mini ; min. | mini
fit_pair | Ajustement arbre/logement ; Tolérances arbre / logement | Ajust. arbre/logement
""",
    "it": """
bearing_designation | Sigla cuscinetto ; Cuscinetto ; Designazione cuscinetto | Sigla ; Designazione
size_text | Dimensioni cuscinetto d x D x B ; Ingombro cuscinetto d x D x B | d x D x B ; Dimensioni d×D×B
bore_diameter | Foro cuscinetto d ; Diametro interno cuscinetto | d ; Foro d
outside_diameter | Diametro esterno cuscinetto D ; Ø esterno cuscinetto | D ; Diametro esterno D
ring_width | Larghezza cuscinetto B ; Larghezza cuscinetto | B ; Larghezza B
ring_chamfer | Smusso cuscinetto r min ; Smusso anello rs min | r min ; Smusso r min
bearing_type | Tipo di cuscinetto ; Tipo cuscinetto | Tipo
contact_angle | Angolo di contatto ; Angolo di contatto cuscinetto | Angolo di contatto
closure | Tenuta cuscinetto ; Schermi / tenute cuscinetto | Tenute ; Schermatura
clearance_class | Gioco interno ; Classe di gioco | Gioco ; Gioco interno
tolerance_class | Classe di precisione cuscinetto ; Classe di tolleranza cuscinetto | Precisione ; Classe di precisione
cage | Gabbia ; Gabbia cuscinetto | Gabbia
ball_material | Materiale sfere ; Materiale delle sfere | Sfere
ball_count | Numero di sfere ; Numero sfere Z | N. sfere
dynamic_rating | Coefficiente di carico dinamico C ; Carico dinamico di base | C ; Carico dinamico C
static_rating | Coefficiente di carico statico C0 ; Carico statico di base | C0 ; Carico statico C0
fatigue_load_limit | Carico limite di fatica Pu ; Carico limite di fatica | Pu ; Limite di fatica
limiting_speed | Velocità limite cuscinetto ; Velocità limite | Velocità limite
reference_speed | Velocità di riferimento ; Velocità di riferimento cuscinetto | Velocità di riferimento
lubrication | Lubrificazione ; Tipo di lubrificazione | Lubrificazione
base_oil_viscosity_40 | Viscosità olio base a 40 °C ; Viscosità a 40 °C | Viscosità 40 °C
base_oil_viscosity_100 | Viscosità olio base a 100 °C ; Viscosità a 100 °C | Viscosità 100 °C
grease_fill | Riempimento di grasso ; Grado di riempimento grasso | Riempimento grasso
radial_load | Carico radiale ; Carico radiale Fr | Fr ; Carico radiale
axial_load | Carico assiale ; Carico assiale Fa | Fa ; Carico assiale
operating_temperature | Temperatura di esercizio cuscinetto ; Temperatura cuscinetto in esercizio | Temp. cuscinetto
axial_role | Vincolo assiale ; Funzione assiale | Vincolo assiale
speed_max | Velocità massima ; Numero di giri max | Velocità max
speed_operating | Velocità di esercizio ; Velocità di lavoro | Velocità di esercizio
required_life | Durata richiesta L10h ; Durata richiesta | Durata richiesta
temperature_min | Temperatura minima ; Temperatura min. | T min
temperature_max | Temperatura massima ; Temperatura max. | T max
shaft_temperature | Temperatura albero ; Temperatura dell'albero | T albero
housing_temperature | Temperatura alloggiamento ; Temperatura cassa | T alloggiamento
ambient_temperature | Temperatura ambiente ; T ambiente | T ambiente
shaft_material | Materiale albero ; Materiale dell'albero | Materiale albero
housing_material | Materiale alloggiamento ; Materiale cassa | Materiale alloggiamento
bearing_span | Interasse cuscinetti ; Distanza tra i cuscinetti | Interasse cuscinetti
rotor_mass | Massa rotore ; Massa del rotore | Massa rotore
balance_grade | Grado di equilibratura G ; Grado di bilanciatura G | Equilibratura
preload_method | Tipo di precarico ; Metodo di precarico | Tipo precarico
preload_force | Precarico ; Forza di precarico | Precarico
spring_rate | Rigidezza molla ; Costante elastica molla | Rigidezza
spring_free_length | Lunghezza libera molla ; Lunghezza libera molla L0 | Lunghezza libera
spring_installed_length | Lunghezza molla montata ; Lunghezza di montaggio molla | Lunghezza montata
shaft_orientation | Posizione albero ; Orientamento albero | Orientamento
rotating_ring | Anello rotante ; Anello in rotazione | Anello rotante
drawing_number | Numero disegno ; N. disegno | N. dis.
drawing_revision | Revisione ; Rev. | Rev.
machine | Macchina ; Gruppo | Macchina
station | Supporto ; Posizione | Supporto
part | Particolare ; Componente | Particolare
tol_class | Tolleranza ; Campo di tolleranza | Toll. ; Accoppiamento
upper | Scostamento superiore ; Scost. sup. | scost. sup. ; es/ES
lower | Scostamento inferiore ; Scost. inf. | scost. inf. ; ei/EI
max | massimo ; max. | max
min | minimo ; min. | min
fit_pair | Tolleranze albero/alloggiamento ; Accoppiamento albero / alloggiamento | Toll. albero/alloggiamento
""",
}
