# ruff: noqa: E501
"""Tables of engineers who write French (four), Italian (four), Spanish (three) and Russian (three)."""

PAGES = (
    """8037 fr csv sep=; enc=cp1252 -- Lyonnais, surpresseurs. Tableau propre enregistré en texte, côté entraînement et côté opposé, écarts en µm dans la cellule.
Surpresseur SU-40 - montage des roulements;;;
Rédigé par : bureau d'études;;;indice C  ## implied drawing_revision C
Désignation;Côté entraînement;Côté opposé;Unité  ## station Côté entraînement | Côté opposé
Roulement;6306-2Z/C3;6305-2Z/C3;  ## bearing_designation 6306-2Z/C3 | 6305-2Z/C3
Alésage du roulement;30;25;mm  ## bore_diameter 30 | 25
Diamètre extérieur du roulement;72;62;mm  ## outside_diameter 72 | 62
Largeur;19;17;mm  ## ring_width 19 | 17
Portée d'arbre;30 k5 (+11/+2 µm);25 k5 (+11/+2 µm);mm  ## shaft_seat_diameter 30 k5 0.002 0.011 | 25 k5 0.002 0.011
Alésage du logement;72 H7 (+30/0 µm);62 H7 (+30/0 µm);mm  ## housing_seat_diameter 72 H7 0 0.030 | 62 H7 0 0.030
Cylindricité de la portée d'arbre;0,004;0,004;mm  ## shaft_seat_cylindricity 0.004 | 0.004
Rugosité Ra de la portée d'arbre;0,8;0,8;µm  ## shaft_seat_roughness 0.8 | 0.8
Rugosité Ra du logement;1,6;1,6;µm  ## housing_seat_roughness 1.6 | 1.6
Diamètre d'épaulement d'arbre;37;32;mm  ## shaft_shoulder_diameter 37 | 32
Congé maxi d'arbre;1;1;mm  ## shaft_fillet_radius 1 | 1
Fonction;fixe;libre;  ## axial_role locating | floating
Charge radiale;720;310;N  ## radial_load 720 | 310
Charge axiale;180;0;N  ## axial_load 180 | 0
Vitesse maximale;5600;;tr/min  ## speed_max 5600
Entraxe des roulements;205;;mm  ## bearing_span 205
Lubrification;graisse;graisse;  ## lubrication grease | grease
Matière du carter;EN-GJL-250;;  ## housing_material cast iron
Peinture;RAL 7016;;
""",
    """8038 fr json -- Savoie, électrobroches. Attributs de l'article en JSON, palier avant et arrière comme objets, unités dans les clés.
{
  "numero_plan": "EB-90-310",  ## drawing_number EB-90-310
  "indice": "F",  ## drawing_revision F
  "etat": "validé",
  "dessinateur": "atelier 2",
  "broche": {
    "vitesse_max_tr_min": 36000,  ## speed_max 36000
    "masse_rotor_kg": 2.1,  ## rotor_mass 2.1
    "entraxe_paliers_mm": 131.5,  ## bearing_span 131.5
    "precharge_N": 160,  ## preload_force 160
    "raideur_ressort_N_mm": 75,  ## spring_rate 75
    "matiere_arbre": "16MnCr5"  ## shaft_material steel
  },
  "paliers": {
    "avant": {  ## [1] // stations avant | arrière
      "roulement": "7006C P4",  ## bearing_designation 7006C P4
      "angle_de_contact_deg": 15,  ## contact_angle 15
      "billes": "céramique Si3N4",  ## ball_material silicon nitride
      "portee_arbre_mm": "30 +0,002/-0,003",  ## shaft_seat_diameter 30 -0.003 0.002
      "logement_mm": "55 +0,006/-0,003",  ## housing_seat_diameter 55 -0.003 0.006
      "epaulement_arbre_mm": 36,  ## shaft_shoulder_diameter 36
      "lubrification": "air-huile",  ## lubrication oil-air
      "fournisseur": "F-02"
    },
    "arrière": {  ## [2]
      "roulement": "7005C P4",  ## bearing_designation 7005C P4
      "angle_de_contact_deg": 15,  ## contact_angle 15
      "billes": "céramique Si3N4",  ## ball_material silicon nitride
      "portee_arbre_mm": "25 +0,002/-0,003",  ## shaft_seat_diameter 25 -0.003 0.002
      "logement_mm": "47 +0,012/+0,004",  ## housing_seat_diameter 47 0.004 0.012
      "epaulement_arbre_mm": 30,  ## shaft_shoulder_diameter 30
      "lubrification": "air-huile",  ## lubrication oil-air
      "fournisseur": "F-02"
    }
  }
}
""",
    """8039 fr csv sep=; cols=D+E+F label=C -- Bourgogne, pompes. Relevé des cotes à contrôler du plan, repère de bulle, écarts supérieur et inférieur en µm.
Repère;Pièce;Caractéristique;Cote nominale mm;Écart sup. µm;Écart inf. µm;Moyen de contrôle;Fréquence
1;Arbre;Portée de roulement côté moteur;35;13;2;micromètre;100 %  ## stations côté moteur | côté roue // 1.shaft_seat_diameter 35 0.002 0.013
2;Arbre;Portée de roulement côté roue;40;13;2;micromètre;100 %  ## 2.shaft_seat_diameter 40 0.002 0.013
3;Arbre;Épaulement côté moteur, diamètre;44;0;-200;pied à coulisse;1/10  ## 1.shaft_shoulder_diameter 44 -0.2 0
4;Arbre;Épaulement côté roue, diamètre;49;0;-200;pied à coulisse;1/10  ## 2.shaft_shoulder_diameter 49 -0.2 0
5;Arbre;Battement total portée côté moteur;0,006;;;comparateur;1/5  ## 1.shaft_seat_runout 0.006 @D
6;Arbre;Battement total portée côté roue;0,006;;;comparateur;1/5  ## 2.shaft_seat_runout 0.006 @D
7;Arbre;Rainure de clavette, largeur;10;0;-36;calibre;100 %
8;Corps;Logement de roulement côté moteur;72;30;0;alésomètre;100 %  ## 1.housing_seat_diameter 72 0 0.030
9;Corps;Logement de roulement côté roue;90;35;0;alésomètre;100 %  ## 2.housing_seat_diameter 90 0 0.035
10;Corps;Cylindricité logement côté moteur;0,008;;;machine à mesurer;1/20  ## 1.housing_seat_cylindricity 0.008 @D
11;Corps;Cylindricité logement côté roue;0,01;;;machine à mesurer;1/20  ## 2.housing_seat_cylindricity 0.01 @D
12;Corps;Coaxialité des logements;0,02;;;machine à mesurer;1/20  ## coaxiality_of_bores 0.02 @D
13;Corps;Perçage de vidange;8;200;0;visuel;1/20
""",
    """8040 fr tab cols=B -- Picardie, ventilateurs. Liste d'expressions du modèle, noms français abrégés, palier 1 et palier 2.
Nom | Valeur | Unité | Commentaire
vitesse_max | 2970 | tr/min |   ## speed_max 2970 // stations P1 | P2
masse_rotor | 54 | kg | turbine + arbre  ## rotor_mass 54
entraxe | 380 | mm | entre milieux de roulements  ## bearing_span 380
P1_roulement | 6308/C3 | | palier 1, côté turbine  ## 1.bearing_designation 6308/C3
P1_d_arbre | 40 | mm | portée du palier 1
P1_d_arbre_tol | k6 | |   ## 1.shaft_seat_diameter 40 k6 @B-1+B
P1_D_logement | 90 | mm | logement du palier 1
P1_D_logement_tol | H7 | |   ## 1.housing_seat_diameter 90 H7 @B-1+B
P1_charge_radiale | 0,95 | kN |   ## 1.radial_load 950
P1_charge_axiale | 0,24 | kN | poussée  ## 1.axial_load 240
P2_roulement | 6308/C3 | | palier 2, côté accouplement  ## 2.bearing_designation 6308/C3
P2_d_arbre | 40 | mm | portée du palier 2
P2_d_arbre_tol | k6 | |   ## 2.shaft_seat_diameter 40 k6 @B-1+B
P2_D_logement | 90 | mm | logement du palier 2
P2_D_logement_tol | H7 | |   ## 2.housing_seat_diameter 90 H7 @B-1+B
P2_charge_radiale | 0,41 | kN |   ## 2.radial_load 410
jeu_axial | 0,3 | mm | palier libre, avant contact  ## axial_float 0.3
nb_pales | 12 | |   ## blade_count 12
ep_tole | 3 | mm | volute
teinte | bleu | |
""",
    """8041 it xlsx cols=B,C -- Veneto, motori elettrici. Scheda ordinata in foglio di calcolo, intestazione unita, unità nel formato del numero.
#! sheet Scheda
#! merge A1:D1
#! fmt B6:C8 0.0" mm"
#! fmt B15:C16 0" N"
Scheda cuscinetti motore MA 160 | | |
Disegno n. | MA160-07 | Rev. 2 |  ## drawing_number MA160-07 @B // ~drawing_revision 2 @C
Redatto da | ufficio tecnico | |
 | Lato comando | Lato opposto | Note  ## station Lato comando | Lato opposto
Cuscinetto | 6310-2Z/C3 | 6308-2Z/C3 |  ## bearing_designation 6310-2Z/C3 | 6308-2Z/C3
Foro | 50 | 40 |  ## bore_diameter 50 | 40
Diametro esterno | 110 | 90 |  ## outside_diameter 110 | 90
Larghezza | 27 | 23 |  ## ring_width 27 | 23
Sede albero | 50 k6 | 40 k6 | mm  ## shaft_seat_diameter 50 k6 | 40 k6
Sede alloggiamento | 110 H7 | 90 H7 | mm  ## housing_seat_diameter 110 H7 | 90 H7
Rugosità sede albero Ra µm | 0.8 | 0.8 |  ## shaft_seat_roughness 0.8 | 0.8
Rugosità sede alloggiamento Ra µm | 1.6 | 1.6 |  ## housing_seat_roughness 1.6 | 1.6
Funzione | bloccato | libero |  ## axial_role locating | floating
Lubrificazione | grasso | grasso |  ## lubrication grease | grease
Carico radiale | 1900 | 850 |  ## radial_load 1900 | 850
Carico assiale | 400 | 0 |  ## axial_load 400 | 0
Velocità massima giri/min | 3600 | |  ## speed_max 3600
Massa rotore kg | 41 | |  ## rotor_mass 41
Vernice | RAL 5010 | |
""",
    """8042 it csv sep=; -- Emilia, riduttori. Una riga per cuscinetto, tolleranze di albero e sede in colonne proprie, codice di magazzino.
Albero;Posizione;Sigla cuscinetto;Codice mag.;d [mm];D [mm];Albero Ø e toll.;Sede Ø e toll.;Spallamento albero [mm];Spallamento sede [mm];Fr [N];Fa [N];n max [giri/min];Gioco;Note  ## > machine:A station:B bearing_designation:C bore_diameter:E outside_diameter:F shaft_seat_diameter:G housing_seat_diameter:H shaft_shoulder_diameter:I housing_shoulder_diameter:J radial_load:K axial_load:L speed_max:M clearance_class:N
Veloce;sinistra;6305;C00417;25;62;25 k5;62 H6;32;55;560;210;4500;C3;  ## = Veloce ; sinistra ; 6305 ; 25 ; 62 ; 25 k5 ; 62 H6 ; 32 ; 55 ; 560 ; 210 ; 4500 ; C3
Veloce;destra;NU305;C00422;25;62;25 k5;62 H6;32;54,5;740;0;4500;C3;motore  ## = Veloce ; destra ; NU305 ; 25 ; 62 ; 25 k5 ; 62 H6 ; 32 ; 54.5 ; 740 ; 0 ; 4500 ; C3
Lento;sinistra;6208;C00388;40;80;40 k6;80 H7;47;73;2150;620;900;CN;  ## = Lento ; sinistra ; 6208 ; 40 ; 80 ; 40 k6 ; 80 H7 ; 47 ; 73 ; 2150 ; 620 ; 900 ; CN
Lento;destra;NU208;C00391;40;80;40 k6;80 H7;47;72;2890;0;900;CN;verificare  ## = Lento ; destra ; NU208 ; 40 ; 80 ; 40 k6 ; 80 H7 ; 47 ; 72 ; 2890 ; 0 ; 900 ; CN
""",
    """8043 it csv sep=; enc=cp1252 cols=B -- Lombardia, pompe centrifughe. Attributi dell'articolo dal gestionale, lato nel nome, un attributo per riga.
Attributo;Valore;U.M.;Gruppo
Codice articolo;PC-80-2210;;Anagrafica  ## drawing_number PC-80-2210
Revisione;1;;Anagrafica  ## drawing_revision 1
Stato;rilasciato;;Anagrafica
Velocità di rotazione massima;3550;giri/min;Tecnico  ## speed_max 3550 // stations lato giunto | lato girante
Peso girante + albero;9,2;kg;Tecnico  ## ~rotor_mass 9.2
Interasse cuscinetti;190;mm;Tecnico  ## bearing_span 190
Cuscinetto lato giunto;7206B;;Cuscinetti  ## 1.bearing_designation 7206B
Cuscinetto lato girante;6206/C3;;Cuscinetti  ## 2.bearing_designation 6206/C3
Tolleranza albero lato giunto;30 k5;mm;Cuscinetti  ## 1.shaft_seat_diameter 30 k5
Tolleranza albero lato girante;30 k5;mm;Cuscinetti  ## 2.shaft_seat_diameter 30 k5
Tolleranza alloggiamento lato giunto;62 H6;mm;Cuscinetti  ## 1.housing_seat_diameter 62 H6
Tolleranza alloggiamento lato girante;62 H7;mm;Cuscinetti  ## 2.housing_seat_diameter 62 H7
Spallamento albero lato giunto;36,5;mm;Cuscinetti  ## 1.shaft_shoulder_diameter 36.5
Spallamento albero lato girante;36,5;mm;Cuscinetti  ## 2.shaft_shoulder_diameter 36.5
Carico radiale lato giunto;240;N;Cuscinetti  ## 1.radial_load 240
Carico radiale lato girante;410;N;Cuscinetti  ## 2.radial_load 410
Carico assiale lato giunto;680;N;Cuscinetti  ## 1.axial_load 680
Lubrificazione;bagno d'olio;;Cuscinetti  ## lubrication oil bath
Materiale albero;AISI 420;;Materiali  ## shaft_material stainless steel
Materiale supporto;ghisa GJL-200;;Materiali  ## housing_material cast iron
Trattamento superficiale;verniciatura;;Materiali
Fornitore preferenziale;0192;;Acquisti
""",
    """8044 it csv sep=; cols=B,C -- Piemonte, elettromandrini. Foglio di calcolo salvato in testo, anteriore e posteriore, dimensioni limite in mm con virgola.
Elettromandrino EM-24;;;
Data;12 maggio;;
Grandezza;Anteriore;Posteriore;Unità  ## station Anteriore | Posteriore
Cuscinetti;71908C P4;71906C P4;  ## bearing_designation 71908C P4 | 71906C P4
Angolo di contatto;15;15;gradi  ## contact_angle 15 | 15
Sfere;ceramica;ceramica;  ## ~ball_material silicon nitride | silicon nitride
Gabbia;resina fenolica;resina fenolica;  ## cage phenolic | phenolic
Sede albero min;39,997;29,997;mm
Sede albero max;40,003;30,003;mm  ## shaft_seat_diameter =39.997..40.003 | =29.997..30.003 @X-1+X
Sede cassa min;62,000;47,004;mm
Sede cassa max;62,008;47,012;mm  ## housing_seat_diameter =62.000..62.008 | =47.004..47.012 @X-1+X
Concentricità della sede albero;0,002;0,002;mm  ## ?coaxiality_of_shaft_seats|shaft_seat_runout 0.002 @B+C
Cilindricità sede albero;0,0015;0,0015;mm  ## shaft_seat_cylindricity 0.0015 | 0.0015
Oscillazione assiale spallamento albero;0,0015;0,0015;mm  ## shaft_shoulder_runout 0.0015 | 0.0015
Diametro spallamento albero;46;35;mm  ## shaft_shoulder_diameter 46 | 35
Diametro spallamento cassa;56;42;mm  ## housing_shoulder_diameter 56 | 42
Raggio di raccordo albero max;0,6;0,3;mm  ## shaft_fillet_radius 0.6 | 0.3
Precarico a molle;210;;N  ## preload_force 210 // implied preload_method spring
Regime massimo;24000;;giri/min  ## speed_max 24000
Lubrificazione;aria-olio;aria-olio;  ## lubrication oil-air | oil-air
Sblocco utensile;pneumatico;;
""",
    """8045 es csv sep=; cols=C,D label=B -- Aragón, ventiladores industriales. Hoja de datos numerada, lado ventilador y lado polea, ajuste y desviaciones.
N.º;Dato;Lado ventilador;Lado polea;Unidad;Origen  ## station Lado ventilador | Lado polea
1;Rodamiento;6310/C3;6310/C3;;catálogo  ## bearing_designation 6310/C3 | 6310/C3
2;Diámetro interior;50;50;mm;catálogo  ## bore_diameter 50 | 50
3;Diámetro exterior;110;110;mm;catálogo  ## outside_diameter 110 | 110
4;Ancho;27;27;mm;catálogo  ## ring_width 27 | 27
5;Asiento del eje;50 k6 (+0,018/+0,002);50 k6 (+0,018/+0,002);mm;plano  ## shaft_seat_diameter 50 k6 0.002 0.018 | 50 k6 0.002 0.018
6;Asiento del alojamiento;110 H7 (+0,035/0);110 H7 (+0,035/0);mm;plano  ## housing_seat_diameter 110 H7 0 0.035 | 110 H7 0 0.035
7;Diámetro del resalte del eje;61;61;mm;plano  ## shaft_shoulder_diameter 61 | 61
8;Radio de acuerdo del eje, máx.;2;2;mm;plano  ## shaft_fillet_radius 2 | 2
9;Rugosidad Ra del asiento del eje;0,8;0,8;µm;plano  ## shaft_seat_roughness 0.8 | 0.8
10;Carga radial;1,9;2,75;kN;cálculo  ## radial_load 1900 | 2750
11;Carga axial;0,35;0;kN;cálculo  ## axial_load 350 | 0
12;Función;fijo;libre;;plano  ## axial_role locating | floating
13;Velocidad máxima;1800;;r/min;oferta  ## speed_max 1800
14;Distancia entre rodamientos;520;;mm;plano  ## bearing_span 520
15;Lubricación;grasa;grasa;;manual  ## lubrication grease | grease
16;Reengrase cada;4000;4000;h;manual  ## regreasing_interval 4000 | 4000
17;Acabado;galvanizado;;;oferta
""",
    """8046 es xlsx cols=C,D label=A -- Jalisco, sopladores. Hoja de cálculo con punto decimal, título combinado, entradas arriba y resultados abajo.
#! sheet Cálculo
#! merge A1:F1
#! fmt C9:D12 0.000
Cálculo de rodamientos, soplador de lóbulos SL-6 | | | | |
Plano | SL6-120 | | Revisión | 1 |  ## drawing_number SL6-120 @B // drawing_revision 1 @E
Elaboró | | | Aprobó | |
Concepto | Símbolo | Lado engranes | Lado libre | Unidad | Nota  ## station Lado engranes | Lado libre
Rodamiento | | 6307 C3 | NU308 C3 | | ## bearing_designation 6307 C3 | NU308 C3
Capacidad dinámica | C | 33.5 | 81.5 | kN | ## dynamic_rating 33500 | 81500
Capacidad estática | C0 | 19.2 | 78.0 | kN | ## static_rating 19200 | 78000
Diámetro del eje, nominal | | 35 | 40 | mm |
Diámetro del eje, desviación superior | | 0.013 | 0.013 | mm |
Diámetro del eje, desviación inferior | | 0.002 | 0.002 | mm | ## shaft_seat_diameter 35 0.002 0.013 | 40 0.002 0.013 @X-2+X-1+X
Cilindricidad del asiento del eje | | 0.004 | 0.004 | mm | ## shaft_seat_cylindricity 0.004 | 0.004
Salto axial del resalte del eje | | 0.006 | 0.006 | mm | ## shaft_shoulder_runout 0.006 | 0.006
Ajuste del alojamiento | | 80 K6 | 90 K6 | mm | ## housing_seat_diameter 80 K6 | 90 K6
Carga radial | Fr | 2.4 | 2.9 | kN | ## radial_load 2400 | 2900
Carga axial | Fa | 0.3 | 0 | kN | ## axial_load 300 | 0
Velocidad máxima | n | 3600 | | rpm | ## speed_max 3600
Vida requerida | L10h | 40000 | | h | ## required_life 40000
Resultado: vida | L10h | 42300 | 87000 | h |
Resultado: factor de seguridad | S0 | 7.8 | 26 | |
""",
    """8047 es csv cols=B -- Antioquia, bombas. Propiedades del artículo exportadas con comas, lado motor y lado impulsor, punto decimal.
Propiedad,Valor,Unidad,Categoría
Código,BC-50-117,,General  ## drawing_number BC-50-117
Versión,04,,General  ## drawing_revision 04
Velocidad máxima de giro,3500,rpm,Operación  ## speed_max 3500 // stations lado motor | lado impulsor
Posición del eje,horizontal,,Operación  ## shaft_orientation horizontal
Rodamiento lado motor,6306-2RS,,Rodamientos  ## 1.bearing_designation 6306-2RS
Rodamiento lado impulsor,6306-2RS,,Rodamientos  ## 2.bearing_designation 6306-2RS
Juego interno lado motor,C3,,Rodamientos  ## 1.clearance_class C3
Juego interno lado impulsor,C3,,Rodamientos  ## 2.clearance_class C3
Eje lado motor,30 k6,mm,Ajustes  ## 1.shaft_seat_diameter 30 k6
Eje lado impulsor,30 k6,mm,Ajustes  ## 2.shaft_seat_diameter 30 k6
Alojamiento lado motor,72 H7,mm,Ajustes  ## 1.housing_seat_diameter 72 H7
Alojamiento lado impulsor,72 J7,mm,Ajustes  ## 2.housing_seat_diameter 72 J7
Rugosidad eje lado motor,Ra 0.8,µm,Ajustes  ## 1.shaft_seat_roughness 0.8
Rugosidad eje lado impulsor,Ra 0.8,µm,Ajustes  ## 2.shaft_seat_roughness 0.8
Tolerancia de forma,0.005,mm,Ajustes  ## ?shaft_seat_cylindricity|housing_seat_cylindricity 0.005
Fuerza radial lado motor,350,N,Cargas  ## 1.radial_load 350
Fuerza radial lado impulsor,690,N,Cargas  ## 2.radial_load 690
Empuje axial lado impulsor,410,N,Cargas  ## 2.axial_load 410
Material del eje,acero inoxidable 420,,Materiales  ## shaft_material stainless steel
Material del soporte,fundición gris,,Materiales  ## housing_material cast iron
Pintura,epoxi azul,,Acabado
Proveedor,P-338,,Compras
""",
    """8048 ru csv sep=; enc=cp1251 -- Урал, электродвигатели. Таблица параметров, сторона привода и противоположная, поля допусков буквами.
Электродвигатель АТ-132, подшипниковые узлы;;;
Разработал;;Проверил;
Параметр;Сторона привода;Противоположная сторона;Ед. изм.  ## station Сторона привода | Противоположная сторона
Обозначение подшипника;6308-2Z/C3;6208-2Z/C3;  ## bearing_designation 6308-2Z/C3 | 6208-2Z/C3
Внутренний диаметр;40;40;мм  ## bore_diameter 40 | 40
Наружный диаметр;90;80;мм  ## outside_diameter 90 | 80
Ширина;23;18;мм  ## ring_width 23 | 18
Посадка на вал;40 k6;40 k6;мм  ## shaft_seat_diameter 40 k6 | 40 k6
Посадка в корпус;90 H7;80 H7;мм  ## housing_seat_diameter 90 H7 | 80 H7
Шероховатость посадочной поверхности вала Ra;0,8;0,8;мкм  ## shaft_seat_roughness 0.8 | 0.8
Шероховатость отверстия корпуса Ra;1,6;1,6;мкм  ## housing_seat_roughness 1.6 | 1.6
Диаметр заплечика вала;49;47;мм  ## shaft_shoulder_diameter 49 | 47
Диаметр заплечика корпуса;81;73;мм  ## housing_shoulder_diameter 81 | 73
Радиальная нагрузка;1450;620;Н  ## radial_load 1450 | 620
Осевая нагрузка;250;0;Н  ## axial_load 250 | 0
Исполнение опоры;фиксирующая;плавающая;  ## axial_role locating | floating
Максимальная частота вращения;3000;;об/мин  ## speed_max 3000
Расстояние между подшипниками;295;;мм  ## bearing_span 295
Масса ротора;18,5;;кг  ## rotor_mass 18.5
Смазка;пластичная;пластичная;  ## lubrication grease | grease
Окраска;эмаль серая;;
""",
    """8049 ru json -- Поволжье, насосы. Выгрузка свойств изделия: русские ключи, опоры списком, значение и единица раздельно.
{
  "Обозначение": "НЦ-65.02.100",  ## drawing_number НЦ-65.02.100
  "Наименование": "Узел подшипниковый насоса",
  "Литера": "О1",
  "Изменение": "2",  ## drawing_revision 2
  "Частота вращения максимальная": {"значение": 3000, "ед": "об/мин"},  ## speed_max 3000 @значение
  "Расстояние между опорами": {"значение": 210, "ед": "мм"},  ## bearing_span 210 @значение
  "Материал вала": "сталь 40Х",  ## shaft_material steel
  "Материал корпуса": "СЧ20",  ## housing_material cast iron
  "Опоры": [
    {
      "Опора": "со стороны муфты",  ## [1] // station со стороны муфты
      "Подшипник": "7308B",  ## bearing_designation 7308B
      "Диаметр вала": {"значение": "40 k5", "ед": "мм"},  ## shaft_seat_diameter 40 k5 @значение
      "Диаметр отверстия корпуса": {"значение": "90 H7", "ед": "мм"},  ## housing_seat_diameter 90 H7 @значение
      "Радиальная нагрузка": {"значение": 0.62, "ед": "кН"},  ## radial_load 620 @значение
      "Осевая нагрузка": {"значение": 1.9, "ед": "кН"},  ## axial_load 1900 @значение
      "Смазка": "масляная ванна"  ## lubrication oil bath
    },
    {
      "Опора": "со стороны рабочего колеса",  ## [2] // station со стороны рабочего колеса
      "Подшипник": "NU308",  ## bearing_designation NU308
      "Диаметр вала": {"значение": "40 k5", "ед": "мм"},  ## shaft_seat_diameter 40 k5 @значение
      "Диаметр отверстия корпуса": {"значение": "90 H7", "ед": "мм"},  ## housing_seat_diameter 90 H7 @значение
      "Радиальная нагрузка": {"значение": 1.35, "ед": "кН"},  ## radial_load 1350 @значение
      "Осевая нагрузка": {"значение": 0, "ед": "кН"},  ## axial_load 0 @значение
      "Смазка": "масляная ванна"  ## lubrication oil bath
    }
  ],
  "Покрытие": "грунт ГФ"
}
""",
    """8050 ru tab cols=C+D+E label=B -- Северо-Запад, шпиндели. Ведомость контролируемых размеров, отклонения в мкм, средство контроля.
№ | Контролируемый параметр | Номинал, мм | Верхнее откл., мкм | Нижнее откл., мкм | Средство контроля | Объём
1 | Шейка вала под передний подшипник, диаметр | 40 | +2 | -5 | рычажная скоба | 100 %  ## stations передний | задний // 1.shaft_seat_diameter 40 -0.005 0.002
2 | Шейка вала под задний подшипник, диаметр | 35 | +2 | -5 | рычажная скоба | 100 %  ## 2.shaft_seat_diameter 35 -0.005 0.002
3 | Шейка вала под передний подшипник, цилиндричность | 0,002 | | | кругломер | 1/5  ## 1.shaft_seat_cylindricity 0.002 @C
4 | Шейка вала под задний подшипник, цилиндричность | 0,002 | | | кругломер | 1/5  ## 2.shaft_seat_cylindricity 0.002 @C
5 | Буртик вала у переднего подшипника, торцевое биение | 0,002 | | | индикатор | 1/5  ## 1.shaft_shoulder_runout 0.002 @C
6 | Буртик вала у заднего подшипника, торцевое биение | 0,003 | | | индикатор | 1/5  ## 2.shaft_shoulder_runout 0.003 @C
7 | Отверстие корпуса под передний подшипник, диаметр | 68 | +8 | -5 | нутромер | 100 %  ## 1.housing_seat_diameter 68 -0.005 0.008
8 | Отверстие корпуса под задний подшипник, диаметр | 62 | +13 | 0 | нутромер | 100 %  ## 2.housing_seat_diameter 62 0 0.013
9 | Отверстие корпуса под передний подшипник, цилиндричность | 0,003 | | | кругломер | 1/5  ## 1.housing_seat_cylindricity 0.003 @C
10 | Отверстие корпуса под задний подшипник, цилиндричность | 0,003 | | | кругломер | 1/5  ## 2.housing_seat_cylindricity 0.003 @C
11 | Соосность отверстий корпуса | 0,005 | | | приспособление | 1/5  ## coaxiality_of_bores 0.005 @C
12 | Конус под инструмент, прилегание | 80 % | | | краска | 100 %
13 | Отверстие под штифт, диаметр | 6 | +12 | 0 | калибр-пробка | 100 %
""",
)
