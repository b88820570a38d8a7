"""Headings and words of English, German, French, Italian and Spanish offices.

Each block has one line a parameter in the order of :data:`vocabulary.PARAMETERS`; ``|`` divides ways to say the same.
The words are those of standards (ISO 286, ISO 1101, ISO 5593, DIN 5425, NF E 22-396, UNI 6392, UNE 18) and of makers'
printed tables, from memory, and of public tables of fits.
"""

BLOCKS = {
    "en": """
Machine|Equipment|Product
Drawing No.|Dwg. no.|Drawing number
Rev.|Revision|Drawing rev.
Max. speed|Maximum speed|n max
Operating speed|Running speed|Rated speed
Required life|Required rating life L10h|Design life L10h
Shaft temperature|Temperature of shaft|Temp. shaft
Housing temperature|Temperature of housing|Temp. housing
Shaft material|Material of shaft
Housing material|Material of housing
Bearing span|Distance between bearing centres|Bearing centre distance
Rotor mass|Mass of rotor
Balance grade G|Balancing quality G (ISO 21940-11)
Preload method|Preload by
Preload force|Axial preload
Spring rate|Spring constant
Shaft orientation|Shaft attitude
Ambient temperature|Ambient temp.
Position|Bearing position|Location
Axial function|Axial location|Bearing arrangement (axial)
Bearing|Bearing designation|Bearing No.
Bearing bore d|Bearing ID|Bore diameter d
Bearing outside diameter D|Bearing OD|Outside diameter D
Bearing width B|Ring width B|Brg width
Bearing chamfer r min|Min. chamfer dimension rs min
Bearing tolerance class|Bearing accuracy class (ISO 492)
Internal clearance|Radial clearance group
Cage|Cage design
Sealing|Closures|Bearing closure
Basic dynamic load rating C|Dynamic load rating|Dyn. capacity C
Basic static load rating C0|Static load rating|Stat. capacity C0
Fatigue load limit Pu|Fatigue load limit Cu
Limiting speed|Bearing limiting speed
Lubrication|Lubrication method
Base oil viscosity at 40 °C|Kin. viscosity of oil at 40 °C
Radial load Fr|Radial load|Radial force
Axial load Fa|Axial load|Thrust load
Shaft seat diameter|Journal diameter|Shaft seat Ø|Shaft dia. at bearing
Shaft seat cylindricity|Cylindricity of journal|Cylindricity, shaft seat
Shaft seat total run-out|Journal total runout|Total radial runout, shaft seat
Shaft seat roughness Ra|Journal surface finish Ra|Ra shaft seat
Shaft shoulder diameter|Shaft abutment diameter da|Shaft shoulder Ø
Shaft shoulder axial run-out|Shaft shoulder face runout|Axial runout of shaft shoulder
Shaft fillet radius max.|Fillet radius ra max (shaft)|Shaft fillet
Housing seat diameter|Housing bore|Housing bore diameter|Housing seat Ø
Housing bore cylindricity|Cylindricity of housing bore|Cylindricity, housing seat
Housing bore total run-out|Total radial runout, housing seat|Housing bore total runout
Housing bore roughness Ra|Housing bore surface finish Ra|Ra housing seat
Housing shoulder diameter|Housing abutment diameter Da|Housing shoulder Ø
Housing shoulder axial run-out|Housing shoulder face runout|Axial runout of housing shoulder
Housing fillet radius max.|Fillet radius rb max (housing)|Housing fillet
Housing outside diameter|Outside diameter of housing
""",
    "de": """
Maschine|Gerät|Baugruppe
Zeichnungsnummer|Zeichnungs-Nr.|Zchng.-Nr.
Revision|Änderungsstand|Index
Höchstdrehzahl|Max. Drehzahl|n max
Betriebsdrehzahl|Nenndrehzahl
Geforderte Lebensdauer|Soll-Lebensdauer L10h|Lebensdauerforderung
Wellentemperatur|Temperatur der Welle|Temp. Welle
Gehäusetemperatur|Temperatur des Gehäuses|Temp. Gehäuse
Wellenwerkstoff|Werkstoff Welle
Gehäusewerkstoff|Werkstoff Gehäuse
Lagerabstand|Lagermittenabstand
Rotormasse|Masse des Rotors
Wuchtgüte G|Auswuchtgütestufe G (ISO 21940-11)
Art der Vorspannung|Vorspannung durch
Vorspannkraft|Axiale Vorspannung
Federrate|Federkonstante
Lage der Welle|Wellenlage
Umgebungstemperatur|Umgebungstemp.
Lagerstelle|Position|Lagerposition
Axiale Funktion|Lagerungsart|Fest-/Loslager
Lager|Wälzlager|Lagerbezeichnung|Kurzzeichen
Lagerbohrung d|Lagerinnendurchmesser d|Bohrungsdurchmesser d
Lageraußendurchmesser D|Außendurchmesser D (Lager)
Lagerbreite B|Breite B (Lager)
Kantenabstand r min|Kantenabstand rs min (Lager)
Toleranzklasse des Lagers|Lagertoleranzklasse (ISO 492)
Lagerluft|Lagerluftklasse|Radialluft
Käfig|Käfigausführung
Abdichtung|Lagerabdichtung|Dichtung (Lager)
Dynamische Tragzahl C|Dyn. Tragzahl C
Statische Tragzahl C0|Stat. Tragzahl C0
Ermüdungsgrenzbelastung Cu|Ermüdungsgrenzbelastung
Grenzdrehzahl|Grenzdrehzahl des Lagers
Schmierung|Schmierungsart
Grundölviskosität bei 40 °C|Kin. Viskosität bei 40 °C
Radiallast Fr|Radialkraft|Radialbelastung
Axiallast Fa|Axialkraft|Axialbelastung
Wellensitz Ø|Lagersitz Welle|Durchmesser Wellensitz|Wellendurchmesser am Lagersitz
Zylinderform Wellensitz|Zylindrizität Wellensitz|Zylinderform Lagersitz Welle
Gesamtrundlauf Wellensitz|Gesamtlauf Wellensitz|Gesamtrundlauf Lagersitz Welle
Rauheit Ra Wellensitz|Ra Lagersitz Welle|Mittenrauwert Ra Wellensitz
Wellenschulter Ø|Durchmesser Wellenschulter|Anlageschulter Welle da
Planlauf Wellenschulter|Axiallauf Wellenschulter|Planlauf Anlagefläche Welle
Rundungsradius Welle max.|Hohlkehlradius Welle|Radius ra max (Welle)
Gehäusesitz Ø|Gehäusebohrung|Lagersitz Gehäuse|Durchmesser Gehäusebohrung
Zylinderform Gehäusesitz|Zylinderform Gehäusebohrung|Zylindrizität Gehäusebohrung
Gesamtrundlauf Gehäusesitz|Gesamtrundlauf Gehäusebohrung|Gesamtlauf Gehäusebohrung
Rauheit Ra Gehäusesitz|Ra Gehäusebohrung|Mittenrauwert Ra Gehäusebohrung
Gehäuseschulter Ø|Durchmesser Gehäuseschulter|Anlageschulter Gehäuse Da
Planlauf Gehäuseschulter|Axiallauf Gehäuseschulter|Planlauf Anlagefläche Gehäuse
Rundungsradius Gehäuse max.|Hohlkehlradius Gehäuse|Radius rb max (Gehäuse)
Gehäuseaußendurchmesser|Außendurchmesser Gehäuse
""",
    "fr": """
Machine|Appareil|Ensemble
N° de plan|Numéro de plan|Plan n°
Indice|Révision|Indice de plan
Vitesse maximale|Vitesse de rotation maxi|n max
Vitesse de service|Vitesse nominale
Durée de vie requise|Durée exigée L10h
Température de l'arbre|Temp. arbre
Température du logement|Temp. carter|Température du carter
Matière de l'arbre|Matériau arbre
Matière du carter|Matériau du logement
Entraxe des roulements|Distance entre roulements
Masse du rotor|Masse rotor
Qualité d'équilibrage G|Degré d'équilibrage G (ISO 21940-11)
Mode de précharge|Précharge par
Effort de précharge|Précharge axiale
Raideur du ressort|Constante du ressort
Orientation de l'arbre|Position de l'arbre
Température ambiante|Temp. ambiante
Palier|Repère palier|Position
Fonction axiale|Montage axial
Roulement|Désignation du roulement|Réf. roulement
Alésage du roulement d|Diamètre intérieur d
Diamètre extérieur D|Diamètre extérieur du roulement D
Largeur B|Largeur du roulement B
Arrondi du roulement r min|Chanfrein rs min
Classe de précision du roulement|Classe de tolérance (ISO 492)
Jeu interne|Classe de jeu radial
Cage|Type de cage
Étanchéité|Protection du roulement
Charge dynamique de base C|Capacité dynamique C
Charge statique de base C0|Capacité statique C0
Limite de fatigue Pu|Charge limite de fatigue Cu
Vitesse limite|Vitesse limite du roulement
Lubrification|Mode de lubrification
Viscosité de l'huile de base à 40 °C|Viscosité cinématique à 40 °C
Charge radiale Fr|Charge radiale|Effort radial
Charge axiale Fa|Charge axiale|Effort axial
Portée d'arbre Ø|Diamètre de portée (arbre)|Portée de roulement sur arbre|Ø portée arbre
Cylindricité portée arbre|Cylindricité de la portée d'arbre
Battement total portée arbre|Battement total radial, portée d'arbre
Rugosité Ra portée arbre|Ra portée d'arbre|État de surface Ra arbre
Épaulement arbre Ø|Diamètre d'épaulement arbre da
Battement axial épaulement arbre|Battement axial de l'épaulement d'arbre
Congé arbre max|Rayon de congé ra max (arbre)
Logement Ø|Alésage du logement|Diamètre du logement|Ø alésage carter
Cylindricité logement|Cylindricité de l'alésage du logement
Battement total logement|Battement total radial, alésage du logement
Rugosité Ra logement|Ra alésage logement|État de surface Ra logement
Épaulement logement Ø|Diamètre d'épaulement logement Da
Battement axial épaulement logement|Battement axial de l'épaulement du logement
Congé logement max|Rayon de congé rb max (logement)
Diamètre extérieur du carter|Ø extérieur du logement
""",
    "it": """
Macchina|Apparecchio|Gruppo
Disegno n.|N. disegno|Numero disegno
Revisione|Rev.|Indice di revisione
Velocità massima|Giri max|n max
Velocità di esercizio|Velocità nominale
Durata richiesta|Durata richiesta L10h
Temperatura albero|Temp. albero
Temperatura alloggiamento|Temp. alloggiamento|Temperatura cassa
Materiale albero|Materiale dell'albero
Materiale alloggiamento|Materiale della cassa
Interasse cuscinetti|Distanza tra i cuscinetti
Massa del rotore|Massa rotore
Grado di equilibratura G|Grado di bilanciatura G (ISO 21940-11)
Tipo di precarico|Precarico mediante
Forza di precarico|Precarico assiale
Rigidezza molla|Costante della molla
Disposizione albero|Posizione dell'albero
Temperatura ambiente|Temp. ambiente
Supporto|Posizione|Posizione cuscinetto
Funzione assiale|Vincolo assiale
Cuscinetto|Sigla cuscinetto|Designazione cuscinetto
Foro cuscinetto d|Diametro interno d
Diametro esterno D|Diametro esterno cuscinetto D
Larghezza B|Larghezza cuscinetto B
Smusso cuscinetto r min|Smusso rs min
Classe di tolleranza cuscinetto|Classe di precisione (ISO 492)
Gioco interno|Classe di gioco radiale
Gabbia|Tipo di gabbia
Tenuta|Protezione cuscinetto
Coefficiente di carico dinamico C|Carico dinamico di base C
Coefficiente di carico statico C0|Carico statico di base C0
Carico limite di fatica Pu|Carico limite di fatica Cu
Velocità limite|Velocità limite cuscinetto
Lubrificazione|Tipo di lubrificazione
Viscosità olio base a 40 °C|Viscosità cinematica a 40 °C
Carico radiale Fr|Carico radiale|Forza radiale
Carico assiale Fa|Carico assiale|Forza assiale
Sede albero Ø|Diametro sede albero|Sede cuscinetto su albero|Perno albero Ø
Cilindricità sede albero|Cilindricità della sede sull'albero
Oscillazione totale sede albero|Oscillazione radiale totale sede albero
Rugosità Ra sede albero|Ra sede albero
Spallamento albero Ø|Diametro spallamento albero da
Oscillazione assiale spallamento albero|Oscillazione assiale dello spallamento dell'albero
Raccordo albero max|Raggio di raccordo ra max (albero)
Sede alloggiamento Ø|Foro alloggiamento|Diametro sede alloggiamento|Alesaggio alloggiamento
Cilindricità sede alloggiamento|Cilindricità foro alloggiamento
Oscillazione totale sede alloggiamento|Oscillazione radiale totale foro alloggiamento
Rugosità Ra sede alloggiamento|Ra foro alloggiamento
Spallamento alloggiamento Ø|Diametro spallamento alloggiamento Da
Oscillazione assiale spallamento alloggiamento|Oscillazione assiale dello spallamento dell'alloggiamento
Raccordo alloggiamento max|Raggio di raccordo rb max (alloggiamento)
Diametro esterno alloggiamento|Ø esterno cassa
""",
    "es": """
Máquina|Equipo|Conjunto
N.º de plano|Plano n.º|Número de plano
Revisión|Rev.|Índice de revisión
Velocidad máxima|Velocidad de giro máxima|n máx
Velocidad de servicio|Velocidad nominal
Vida requerida|Vida nominal requerida L10h
Temperatura del eje|Temp. eje
Temperatura del alojamiento|Temp. alojamiento
Material del eje|Material eje
Material del alojamiento|Material alojamiento
Distancia entre rodamientos|Distancia entre apoyos
Masa del rotor|Masa rotor
Grado de equilibrado G|Calidad de equilibrado G (ISO 21940-11)
Tipo de precarga|Precarga mediante
Fuerza de precarga|Precarga axial
Rigidez del muelle|Constante del muelle
Orientación del eje|Posición del eje
Temperatura ambiente|Temp. ambiente
Apoyo|Posición|Posición del rodamiento
Función axial|Fijación axial
Rodamiento|Designación del rodamiento|Ref. rodamiento
Agujero del rodamiento d|Diámetro interior d
Diámetro exterior D|Diámetro exterior del rodamiento D
Anchura B|Ancho del rodamiento B
Chaflán del rodamiento r mín|Chaflán rs mín
Clase de tolerancia del rodamiento|Clase de precisión (ISO 492)
Juego interno|Clase de juego radial
Jaula|Tipo de jaula
Obturación|Protección del rodamiento
Capacidad de carga dinámica C|Carga dinámica de base C
Capacidad de carga estática C0|Carga estática de base C0
Carga límite de fatiga Pu|Carga límite de fatiga Cu
Velocidad límite|Velocidad límite del rodamiento
Lubricación|Tipo de lubricación
Viscosidad del aceite base a 40 °C|Viscosidad cinemática a 40 °C
Carga radial Fr|Carga radial|Fuerza radial
Carga axial Fa|Carga axial|Fuerza axial
Asiento del eje Ø|Diámetro del asiento en el eje|Asiento de rodamiento en eje|Ø eje en el rodamiento
Cilindricidad asiento eje|Cilindricidad del asiento del eje
Oscilación total asiento eje|Salto radial total asiento eje
Rugosidad Ra asiento eje|Ra asiento del eje
Resalte del eje Ø|Diámetro del resalte del eje da
Oscilación axial resalte eje|Salto axial del resalte del eje
Radio de acuerdo eje máx|Radio de acuerdo ra máx (eje)
Alojamiento Ø|Agujero del alojamiento|Diámetro del alojamiento|Asiento en alojamiento Ø
Cilindricidad alojamiento|Cilindricidad del agujero del alojamiento
Oscilación total alojamiento|Salto radial total alojamiento
Rugosidad Ra alojamiento|Ra agujero del alojamiento
Resalte del alojamiento Ø|Diámetro del resalte del alojamiento Da
Oscilación axial resalte alojamiento|Salto axial del resalte del alojamiento
Radio de acuerdo alojamiento máx|Radio de acuerdo rb máx (alojamiento)
Diámetro exterior del alojamiento|Ø exterior del alojamiento
""",
}
#: Under a heading of the part: seat diameter (shaft~housing), cylindricity, total run-out, Ra, shoulder diameter,
#: shoulder run-out, fillet.
FEATURES = {
    "en": "Seat diameter~Bore diameter;Cylindricity;Total run-out;Roughness Ra;Shoulder diameter;"
    "Shoulder axial run-out;Fillet radius",
    "de": "Sitzdurchmesser~Bohrungsdurchmesser;Zylinderform;Gesamtrundlauf;Rauheit Ra;Schulterdurchmesser;"
    "Planlauf Schulter;Rundungsradius",
    "fr": "Diamètre de portée~Diamètre d'alésage;Cylindricité;Battement total;Rugosité Ra;Diamètre d'épaulement;"
    "Battement axial épaulement;Rayon de congé",
    "it": "Diametro sede~Diametro foro;Cilindricità;Oscillazione totale;Rugosità Ra;Diametro spallamento;"
    "Oscillazione assiale spallamento;Raggio di raccordo",
    "es": "Diámetro del asiento~Diámetro del agujero;Cilindricidad;Oscilación total;Rugosidad Ra;Diámetro del resalte;"
    "Oscilación axial del resalte;Radio de acuerdo",
}
#: In the order of :data:`vocabulary.CHOICES`.
CHOICES = {
    "en": "locating;floating;spring-loaded;steel;stainless steel;aluminium;cast iron;spring;none;horizontal;vertical;"
    "pressed steel;polyamide;machined brass;open;shield;contact seal;grease;oil bath;oil mist",
    "de": "Festlager;Loslager;angestellt mit Feder;Stahl;nichtrostender Stahl;Aluminium;Grauguss;Feder;keine;"
    "waagerecht;senkrecht;Stahlblech;Polyamid;Messing massiv;offen;Deckscheibe;berührende Dichtung;Fett;Ölbad;Ölnebel",
    "fr": "fixe;libre;monté avec ressort;acier;acier inoxydable;aluminium;fonte;ressort;aucune;horizontal;vertical;"
    "tôle d'acier emboutie;polyamide;laiton massif;ouvert;flasque;joint frottant;graisse;bain d'huile;"
    "brouillard d'huile",
    "it": "fisso;libero;precaricato a molla;acciaio;acciaio inossidabile;alluminio;ghisa;molla;nessuno;orizzontale;"
    "verticale;lamiera d'acciaio stampata;poliammide;ottone massiccio;aperto;schermo;tenuta strisciante;grasso;"
    "bagno d'olio;nebbia d'olio",
    "es": "fijo;libre;precargado con muelle;acero;acero inoxidable;aluminio;fundición;muelle;ninguna;horizontal;"
    "vertical;chapa de acero estampada;poliamida;latón mecanizado;abierto;placa de protección;obturación rozante;"
    "grasa;baño de aceite;niebla de aceite",
}
#: In the order of :data:`vocabulary.FRAME`.
FRAME = {
    "en": "Parameter;Value;Unit;Shaft;Housing;Bearing;Operation;Nominal;Tolerance class;Upper deviation;"
    "Lower deviation;Max.;Min.;Tolerance ±;Item;Remarks;Bearing seat data;Dimensions in {l};"
    "form and position tolerances in {f};roughness in µm;Fit shaft / housing;Part;Characteristic;Requirement;"
    "deviations in µm;Seat diameter;of",
    "de": "Parameter;Wert;Einheit;Welle;Gehäuse;Lager;Betrieb;Nennmaß;Toleranzklasse;Oberes Abmaß;Unteres Abmaß;"
    "Höchstmaß;Mindestmaß;Toleranz ±;Pos.;Bemerkung;Daten der Lagersitze;Maße in {l};"
    "Form- und Lagetoleranzen in {f};Rauheit in µm;Passung Welle / Gehäuse;Teil;Merkmal;Forderung;"
    "Abmaße in µm;Sitzdurchmesser;",
    "fr": "Paramètre;Valeur;Unité;Arbre;Logement;Roulement;Fonctionnement;Cote nominale;Classe de tolérance;"
    "Écart supérieur;Écart inférieur;Maxi;Mini;Tolérance ±;Rep.;Observations;Portées de roulements;Cotes en {l};"
    "tolérances géométriques en {f};rugosité en µm;Ajustement arbre / logement;Pièce;Caractéristique;Exigence;"
    "écarts en µm;Diamètre de portée;",
    "it": "Parametro;Valore;Unità;Albero;Alloggiamento;Cuscinetto;Esercizio;Quota nominale;Classe di tolleranza;"
    "Scostamento superiore;Scostamento inferiore;Max;Min;Tolleranza ±;Pos.;Note;Sedi dei cuscinetti;Quote in {l};"
    "tolleranze geometriche in {f};rugosità in µm;Accoppiamento albero / alloggiamento;Particolare;Caratteristica;"
    "Prescrizione;scostamenti in µm;Diametro sede;",
    "es": "Parámetro;Valor;Unidad;Eje;Alojamiento;Rodamiento;Servicio;Cota nominal;Clase de tolerancia;"
    "Desviación superior;Desviación inferior;Máx.;Mín.;Tolerancia ±;Pos.;Observaciones;Asientos de rodamientos;"
    "Cotas en {l};tolerancias geométricas en {f};rugosidad en µm;Ajuste eje / alojamiento;Pieza;Característica;"
    "Requisito;desviaciones en µm;Diámetro del asiento;",
}
STATIONS = {
    "en": (("A", "B"), ("DE", "NDE"), ("drive end", "non-drive end"), ("front", "rear"), ("1", "2")),
    "de": (("A", "B"), ("AS", "BS"), ("Antriebsseite", "Lüfterseite"), ("vorn", "hinten"), ("links", "rechts")),
    "fr": (("A", "B"), ("côté moteur", "côté opposé"), ("avant", "arrière"), ("P1", "P2")),
    "it": (("A", "B"), ("lato comando", "lato opposto"), ("anteriore", "posteriore"), ("S1", "S2")),
    "es": (("A", "B"), ("lado accionamiento", "lado opuesto"), ("delantero", "trasero"), ("R1", "R2")),
}
MACHINES = {
    "en": ("Dental spindle DS-3", "Yarn winder W40", "Grain sampler GS7", "Lab centrifuge LC-12", "Optic chopper OC2"),
    "de": ("Zentrifuge Z12", "Saatgutgebläse SG4", "Spulspindel SP20", "Etikettierer EK-3", "Laborrührer LR5"),
    "fr": ("Broche BR-15", "Pompe doseuse PD4", "Bobineuse BN20", "Centrifugeuse CF-8", "Tamiseur TM3"),
    "it": ("Mandrino MD-15", "Pompa dosatrice PD6", "Roccatrice RC20", "Centrifuga CF-9", "Vaglio VG3"),
    "es": ("Husillo HS-15", "Bomba dosificadora BD6", "Bobinadora BB20", "Centrífuga CF-7", "Tamiz TM4"),
}
