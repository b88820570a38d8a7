"""Words of French, Italian and Spanish offices; the form of a line is told in words.py."""

FR = """
=F: F | F | DIN 509-F
=E: E | E | DIN 509-E
seat_roughness: Rugosité Ra | État de surface Ra
col.index: N° | Rep.
machine: Machine | Type de machine | Équipement
drawing_number: N° de plan | Plan n° | Numéro de plan
drawing_revision: Indice | Rév. | Révision
speed_max: Vitesse maxi | Vitesse de rotation max. | Régime maximal
speed_operating: Vitesse de service | Vitesse de fonctionnement | Régime nominal de service
required_life: Durée de vie requise | Durée de vie exigée L10h
shaft_material: Matière arbre | Matériau de l'arbre
housing_material: Matière carter | Matériau du logement | Matière du corps de palier
shaft_temperature: Température arbre | Température de l'arbre
housing_temperature: Température carter | Température du logement
ambient_temperature: Température ambiante | T ambiante
temperature_max: Température maxi | Température max.
temperature_min: Température mini | Température de démarrage à froid
bearing_span: Entraxe des roulements | Entraxe paliers | Distance entre roulements
rotor_mass: Masse du rotor | Masse rotor
balance_grade: Qualité d'équilibrage G | Classe d'équilibrage G
preload: Précharge | Précontrainte | Précharge axiale par
preload_force: Effort de précharge | Force de précharge | Précharge axiale
spring_rate: Raideur du ressort | Raideur ressort
spring_free_length: Longueur libre du ressort | Hauteur libre ressort
spring_installed_length: Longueur montée du ressort | Hauteur ressort monté
coaxiality_of_bores: Coaxialité des alésages | Coaxialité logements A-B
coaxiality_of_shaft_seats: Coaxialité des portées d'arbre | Coaxialité portées A-B
shaft_orientation: Position de l'arbre | Orientation de l'arbre
bearing_designation: Roulement | Désignation roulement | Réf. roulement
bore_diameter: Alésage roulement d | Diamètre intérieur d
outside_diameter: Diamètre extérieur D | Ø ext. roulement D
ring_width: Largeur roulement B | Largeur B
ring_chamfer: Arrondi bague rs mini | Chanfrein roulement r min
dynamic_rating: Charge dynamique C | Capacité dynamique C
static_rating: Charge statique C0 | Capacité statique C0
lubrication: Lubrification | Mode de lubrification | Graissage
base_oil_viscosity_40: Viscosité huile de base à 40 °C | Viscosité à 40 °C
grease_fill: Remplissage graisse | Taux de remplissage de graisse
radial_load: Charge radiale | Effort radial Fr | Charge radiale Fr
axial_load: Charge axiale | Effort axial Fa | Charge axiale Fa
axial_role: Fonction du palier | Palier fixe/libre | Fixation axiale
limiting_speed: Vitesse limite roulement | Vitesse limite catalogue
shaft_seat_diameter: Portée d'arbre | Portée roulement arbre | Diamètre portée arbre | Ø arbre | Ajustement arbre
housing_seat_diameter: Alésage logement | Logement roulement | Diamètre alésage carter | Ø logement
  | Ajustement logement
shaft_seat_cylindricity: Cylindricité portée arbre | Cylindricité de la portée
housing_seat_cylindricity: Cylindricité alésage | Cylindricité du logement
shaft_seat_runout: Battement total portée arbre | Battement radial portée
housing_seat_runout: Battement total alésage | Battement radial logement
shaft_seat_roughness: Rugosité Ra portée | Ra arbre | État de surface Ra portée arbre
housing_seat_roughness: Rugosité Ra alésage | Ra logement | État de surface Ra alésage
shaft_shoulder_diameter: Épaulement arbre | Diamètre épaulement arbre da | Ø épaulement d'arbre
housing_shoulder_diameter: Épaulement logement | Diamètre épaulement logement Da | Ø épaulement carter
shaft_shoulder_runout: Battement axial épaulement arbre | Voile épaulement arbre | Perpendicularité épaulement arbre
housing_shoulder_runout: Battement axial épaulement logement | Voile épaulement logement
  | Perpendicularité épaulement logement
shaft_fillet_radius: Congé arbre | Rayon de congé arbre maxi | Rayon de raccordement arbre
housing_fillet_radius: Congé logement | Rayon de congé logement maxi | Rayon de raccordement logement
shaft_undercut_form: Gorge de dégagement arbre | Dégagement arbre (DIN 509)
housing_undercut_form: Gorge de dégagement logement | Dégagement logement (DIN 509)
part.shaft: Arbre | Arbre rotor
part.housing: Logement | Carter | Corps de palier
part.bearing: Roulement
part.machine: Général | Ensemble
feature.seat_diameter: portée roulement | diamètre de portée
feature.seat_cylindricity: cylindricité
feature.seat_runout: battement total | battement radial
feature.seat_roughness: rugosité Ra | Ra
feature.shoulder_diameter: diamètre épaulement | Ø épaulement
feature.shoulder_runout: voile épaulement | battement axial épaulement
feature.fillet_radius: rayon de congé | congé maxi
feature.undercut_form: gorge de dégagement
aspect.class: tolérance | ajustement | classe de tolérance
aspect.nominal: nominal | cote nominale
aspect.upper: écart supérieur | écart sup. | ES/es
aspect.lower: écart inférieur | écart inf. | EI/ei
aspect.max: maxi | cote maxi
aspect.min: mini | cote mini
aspect.dev: écarts | écarts limites
col.name: Paramètre | Désignation | Caractéristique
col.value: Valeur | Cote
col.unit: Unité | U.
col.note: Remarque | Observations
col.part: Pièce | Organe
col.feature: Caractéristique | Cote
col.position: Palier | Position | Repère palier
join: {p} - {f} | {f} ({p}) | {f}, {p}
positions: A/B | avant/arrière | côté entraînement/côté opposé | Palier 1/Palier 2
title: Portées de roulements - données de conception | Fiche technique rotor | Export des paramètres
mmnote: Cotes en mm | Toutes les cotes en mm sauf indication contraire
notes: Casser les angles. | Essai de survitesse 120 %, 2 min. | Portées rectifiées. | Vérifié par le BE.
machines: Soufflante latérale | Centrifugeuse de laboratoire | Broche de fraisage | Pompe à vide
  | Moteur de banc d'essai
noise: Puissance nominale kW = 2,2 / 2,2 | Diamètre extérieur du stator mm = 96 / 96
  | Prix EUR = 14,20 / 11,85 | Quantité = 1 / 1 | Diamètre de roue mm = 148 / 148
  | Résistance bobinage ohm = 0,84 / 0,84 | Peinture = RAL 7016 / RAL 7016 | Vis de bride = M6x20 / M6x25
=grease: graisse | Graisse à vie
=oil bath: bain d'huile
=oil mist: brouillard d'huile
=oil-air: air-huile | huile-air
=oil jet: jet d'huile
=locating: fixe | palier fixe
=floating: libre | palier libre
=spring-loaded: chargé par ressort
=wave: rondelle ondulée | ressort ondulé
=helical: ressort hélicoïdal | ressorts hélicoïdaux
=disc: rondelles Belleville
=rigid: rigide | rigide (entretoises)
=none: aucune | sans
=horizontal: horizontale | horizontal
=vertical: verticale | vertical
=steel: acier | 42CrMo4
=stainless steel: acier inoxydable | X46Cr13
=aluminium: aluminium | AlSi10Mg
=cast iron: fonte | EN-GJL-250
"""
IT = """
=F: F | F | DIN 509-F
=E: E | E | DIN 509-E
seat_roughness: Rugosità Ra | Rugosità sedi Ra
col.index: N. | Pos. n.
machine: Macchina | Tipo macchina | Apparecchiatura
drawing_number: N. disegno | Disegno n. | Numero disegno
drawing_revision: Rev. | Revisione | Indice di revisione
speed_max: Velocità massima | Velocità di rotazione max | Giri max
speed_operating: Velocità di esercizio | Velocità di lavoro
required_life: Durata richiesta | Durata richiesta L10h
shaft_material: Materiale albero | Mat. albero
housing_material: Materiale alloggiamento | Materiale carcassa | Materiale del supporto
shaft_temperature: Temperatura albero | Temp. albero
housing_temperature: Temperatura alloggiamento | Temp. carcassa
ambient_temperature: Temperatura ambiente | Temp. ambiente
temperature_max: Temperatura massima | Temp. max
temperature_min: Temperatura minima | Temp. min
bearing_span: Interasse cuscinetti | Distanza tra i cuscinetti
rotor_mass: Massa rotore | Peso rotore
balance_grade: Grado di equilibratura G | Classe di equilibratura G
preload: Precarico | Tipo di precarico
preload_force: Forza di precarico | Carico molla | Precarico assiale
spring_rate: Rigidezza molla | Costante elastica molla
spring_free_length: Lunghezza libera molla | Altezza libera della molla
spring_installed_length: Lunghezza molla montata | Altezza molla installata
coaxiality_of_bores: Coassialità delle sedi alloggiamento | Coassialità fori A-B
coaxiality_of_shaft_seats: Coassialità sedi albero | Coassialità delle sedi sull'albero
shaft_orientation: Posizione albero | Disposizione albero
bearing_designation: Cuscinetto | Sigla cuscinetto | Designazione cuscinetto
bore_diameter: Foro cuscinetto d | Diametro interno d
outside_diameter: Diametro esterno D | Ø est. cuscinetto
ring_width: Larghezza cuscinetto B | Larghezza B
ring_chamfer: Smusso anello rs min | Raccordo cuscinetto r min
dynamic_rating: Coefficiente di carico dinamico C | Carico dinamico C
static_rating: Coefficiente di carico statico C0 | Carico statico C0
lubrication: Lubrificazione | Tipo lubrificazione
base_oil_viscosity_40: Viscosità olio base a 40 °C | Viscosità a 40 °C
grease_fill: Riempimento grasso | Grado di riempimento grasso
radial_load: Carico radiale | Carico radiale Fr | Forza radiale
axial_load: Carico assiale | Carico assiale Fa | Forza assiale
axial_role: Funzione cuscinetto | Vincolo assiale
limiting_speed: Velocità limite cuscinetto | Velocità limite a catalogo
shaft_seat_diameter: Sede albero | Sede cuscinetto albero | Diametro sede albero | Ø albero | Accoppiamento albero
housing_seat_diameter: Sede alloggiamento | Foro alloggiamento | Diametro sede alloggiamento | Ø sede carcassa
  | Accoppiamento alloggiamento
shaft_seat_cylindricity: Cilindricità sede albero | Cilindricità albero
housing_seat_cylindricity: Cilindricità sede alloggiamento | Cilindricità foro
shaft_seat_runout: Oscillazione totale sede albero | Oscillazione radiale albero
housing_seat_runout: Oscillazione totale sede alloggiamento | Oscillazione radiale foro
shaft_seat_roughness: Rugosità Ra sede albero | Ra albero
housing_seat_roughness: Rugosità Ra sede alloggiamento | Ra foro alloggiamento
shaft_shoulder_diameter: Spallamento albero | Diametro spallamento albero da | Ø spalla albero
housing_shoulder_diameter: Spallamento alloggiamento | Diametro spallamento alloggiamento Da
  | Ø spalla alloggiamento
shaft_shoulder_runout: Oscillazione assiale spallamento albero | Perpendicolarità spalla albero
housing_shoulder_runout: Oscillazione assiale spallamento alloggiamento | Perpendicolarità spalla alloggiamento
shaft_fillet_radius: Raccordo albero | Raggio di raccordo albero max
housing_fillet_radius: Raccordo alloggiamento | Raggio di raccordo alloggiamento max
shaft_undercut_form: Scarico albero (DIN 509) | Gola di scarico albero
housing_undercut_form: Scarico alloggiamento (DIN 509) | Gola di scarico alloggiamento
part.shaft: Albero | Albero rotore
part.housing: Alloggiamento | Carcassa | Supporto
part.bearing: Cuscinetto
part.machine: Generale | Complessivo
feature.seat_diameter: sede cuscinetto | diametro sede
feature.seat_cylindricity: cilindricità
feature.seat_runout: oscillazione totale
feature.seat_roughness: rugosità Ra | Ra
feature.shoulder_diameter: diametro spallamento | Ø spalla
feature.shoulder_runout: perpendicolarità spalla | oscillazione assiale spalla
feature.fillet_radius: raggio di raccordo | raccordo max
feature.undercut_form: gola di scarico
aspect.class: tolleranza | accoppiamento | classe di tolleranza
aspect.nominal: nominale | quota nominale
aspect.upper: scostamento superiore | scost. sup.
aspect.lower: scostamento inferiore | scost. inf.
aspect.max: max | massimo
aspect.min: min | minimo
aspect.dev: scostamenti | scostamenti limite
col.name: Parametro | Descrizione | Caratteristica
col.value: Valore | Quota
col.unit: Unità | U.M. | Unità di misura
col.note: Note | Osservazioni
col.part: Particolare | Componente
col.feature: Caratteristica | Quota
col.position: Posizione | Supporto | Lato
join: {p} - {f} | {f} ({p}) | {f} {p}
positions: A/B | anteriore/posteriore | lato comando/lato opposto | 1/2
title: Sedi cuscinetti - dati di progetto | Scheda rotore | Esportazione parametri
mmnote: Quote in mm | Tutte le quote in mm salvo diversa indicazione
notes: Smussare gli spigoli. | Sedi rettificate. | Verificato UT.
machines: Soffiante a canale laterale | Centrifuga da laboratorio | Elettromandrino | Pompa per vuoto
  | Motore banco prova
noise: Potenza nominale kW = 2,2 / 2,2 | Diametro esterno statore mm = 96 / 96
  | Prezzo EUR = 14,20 / 11,85 | Quantità = 1 / 1 | Diametro girante mm = 148 / 148
  | Resistenza avvolgimento ohm = 0,84 / 0,84 | Verniciatura = RAL 7016 / RAL 7016 | Viti flangia = M6x20 / M6x25
=grease: grasso | Grasso a vita
=oil bath: bagno d'olio
=oil mist: nebbia d'olio
=oil-air: aria-olio | olio-aria
=oil jet: getto d'olio
=locating: fisso | di vincolo
=floating: libero | flottante
=spring-loaded: caricato a molla
=wave: molla ondulata
=helical: molla elicoidale | molle elicoidali
=disc: molle a tazza
=rigid: rigido | rigido (distanziali)
=none: nessuno | senza
=horizontal: orizzontale
=vertical: verticale
=steel: acciaio | 42CrMo4
=stainless steel: acciaio inox | X46Cr13
=aluminium: alluminio | AlSi10Mg
=cast iron: ghisa | EN-GJL-250
"""
ES = """
=F: F | F | DIN 509-F
=E: E | E | DIN 509-E
seat_roughness: Rugosidad Ra | Acabado superficial Ra
col.index: N.º | Ítem
machine: Máquina | Tipo de máquina | Equipo
drawing_number: N.º de plano | Plano n.º | Número de plano
drawing_revision: Rev. | Revisión | Edición
speed_max: Velocidad máxima | Velocidad de giro máx. | Régimen máximo
speed_operating: Velocidad de servicio | Velocidad de trabajo | Velocidad de funcionamiento
required_life: Vida requerida | Vida exigida L10h
shaft_material: Material del eje | Material eje
housing_material: Material del alojamiento | Material carcasa
shaft_temperature: Temperatura del eje | Temp. eje
housing_temperature: Temperatura del alojamiento | Temp. carcasa
ambient_temperature: Temperatura ambiente | Temp. ambiente
temperature_max: Temperatura máxima | Temp. máx.
temperature_min: Temperatura mínima | Temp. mín.
bearing_span: Distancia entre rodamientos | Distancia entre apoyos
rotor_mass: Masa del rotor | Peso del rotor
balance_grade: Grado de equilibrado G | Calidad de equilibrado G
preload: Precarga | Tipo de precarga
preload_force: Fuerza de precarga | Precarga axial | Fuerza del muelle
spring_rate: Constante del muelle | Rigidez del muelle
spring_free_length: Longitud libre del muelle | Altura libre muelle
spring_installed_length: Longitud instalada del muelle | Altura montada muelle
coaxiality_of_bores: Coaxialidad de alojamientos | Coaxialidad entre alojamientos A-B
coaxiality_of_shaft_seats: Coaxialidad de asientos del eje | Coaxialidad asientos eje A-B
shaft_orientation: Posición del eje | Orientación del eje
bearing_designation: Rodamiento | Designación rodamiento | Ref. rodamiento
bore_diameter: Agujero del rodamiento d | Diámetro interior d
outside_diameter: Diámetro exterior D | Ø ext. rodamiento
ring_width: Ancho rodamiento B | Anchura B
ring_chamfer: Chaflán del aro rs mín. | Redondeo rodamiento r mín.
dynamic_rating: Capacidad de carga dinámica C | Carga dinámica C
static_rating: Capacidad de carga estática C0 | Carga estática C0
lubrication: Lubricación | Tipo de lubricación
base_oil_viscosity_40: Viscosidad aceite base a 40 °C | Viscosidad a 40 °C
grease_fill: Llenado de grasa | Relleno de grasa
radial_load: Carga radial | Carga radial Fr | Fuerza radial
axial_load: Carga axial | Carga axial Fa | Fuerza axial
axial_role: Función del rodamiento | Apoyo fijo/libre
limiting_speed: Velocidad límite rodamiento | Velocidad límite catálogo
shaft_seat_diameter: Asiento del eje | Asiento rodamiento eje | Diámetro asiento eje | Ø eje | Ajuste eje
housing_seat_diameter: Alojamiento | Diámetro de alojamiento | Asiento en alojamiento | Ø alojamiento
  | Ajuste alojamiento
shaft_seat_cylindricity: Cilindricidad asiento eje | Cilindricidad eje
housing_seat_cylindricity: Cilindricidad alojamiento | Cilindricidad asiento alojamiento
shaft_seat_runout: Oscilación total asiento eje | Salto radial eje
housing_seat_runout: Oscilación total alojamiento | Salto radial alojamiento
shaft_seat_roughness: Rugosidad Ra eje | Ra asiento eje
housing_seat_roughness: Rugosidad Ra alojamiento | Ra alojamiento
shaft_shoulder_diameter: Resalte del eje | Diámetro resalte eje da | Ø hombro eje
housing_shoulder_diameter: Resalte del alojamiento | Diámetro resalte alojamiento Da | Ø hombro alojamiento
shaft_shoulder_runout: Salto axial resalte eje | Perpendicularidad resalte eje
housing_shoulder_runout: Salto axial resalte alojamiento | Perpendicularidad resalte alojamiento
shaft_fillet_radius: Radio de acuerdo eje | Radio máx. acuerdo eje | Radio de enlace eje
housing_fillet_radius: Radio de acuerdo alojamiento | Radio máx. acuerdo alojamiento | Radio de enlace alojamiento
shaft_undercut_form: Ranura de alivio eje | Entalladura eje (DIN 509)
housing_undercut_form: Ranura de alivio alojamiento | Entalladura alojamiento (DIN 509)
part.shaft: Eje | Árbol
part.housing: Alojamiento | Carcasa | Soporte
part.bearing: Rodamiento
part.machine: General | Conjunto
feature.seat_diameter: asiento rodamiento | diámetro de asiento
feature.seat_cylindricity: cilindricidad
feature.seat_runout: oscilación total | salto radial
feature.seat_roughness: rugosidad Ra | Ra
feature.shoulder_diameter: diámetro resalte | Ø hombro
feature.shoulder_runout: salto axial resalte | perpendicularidad resalte
feature.fillet_radius: radio de acuerdo | radio máx.
feature.undercut_form: ranura de alivio
aspect.class: tolerancia | ajuste | clase de tolerancia
aspect.nominal: nominal | cota nominal
aspect.upper: desviación superior | desv. sup.
aspect.lower: desviación inferior | desv. inf.
aspect.max: máx. | máximo
aspect.min: mín. | mínimo
aspect.dev: desviaciones | desviaciones límite
col.name: Parámetro | Descripción | Característica
col.value: Valor | Cota
col.unit: Unidad | Ud.
col.note: Observaciones | Nota
col.part: Pieza | Componente
col.feature: Característica | Cota
col.position: Posición | Apoyo | Lado
join: {p} - {f} | {f} ({p}) | {f} {p}
positions: A/B | delantero/trasero | lado acople/lado opuesto | Apoyo 1/Apoyo 2
title: Asientos de rodamientos - datos de diseño | Ficha técnica del rotor | Exportación de parámetros
mmnote: Cotas en mm | Todas las cotas en mm salvo indicación contraria
notes: Matar cantos vivos. | Asientos rectificados. | Verificado OT.
machines: Soplante de canal lateral | Centrífuga de laboratorio | Husillo de fresado | Bomba de vacío
  | Motor de banco
noise: Potencia nominal kW = 2,2 / 2,2 | Diámetro exterior del estator mm = 96 / 96
  | Precio EUR = 14,20 / 11,85 | Cantidad = 1 / 1 | Diámetro del impulsor mm = 148 / 148
  | Resistencia del bobinado ohm = 0,84 / 0,84 | Pintura = RAL 7016 / RAL 7016 | Tornillos brida = M6x20 / M6x25
=grease: grasa | Grasa de por vida
=oil bath: baño de aceite
=oil mist: niebla de aceite
=oil-air: aire-aceite | aceite-aire
=oil jet: chorro de aceite
=locating: fijo | rodamiento fijo
=floating: libre | rodamiento libre
=spring-loaded: cargado por muelle
=wave: muelle ondulado | arandela ondulada
=helical: muelle helicoidal | muelles helicoidales
=disc: muelles de disco | arandelas Belleville
=rigid: rígida | rígida (separadores)
=none: ninguna | sin precarga
=horizontal: horizontal
=vertical: vertical
=steel: acero | 42CrMo4
=stainless steel: acero inoxidable | X46Cr13
=aluminium: aluminio | AlSi10Mg
=cast iron: fundición gris | EN-GJL-250
"""
