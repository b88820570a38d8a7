# ruff: noqa: E501
"""Tables of ten engineers who write German."""

PAGES = (
    """8016 de csv sep=; enc=cp1252 cols=B -- Westfalen, Seitenkanalverdichter. Variablenexport des Modells: sprechende Namen mit Unterstrich, eine Spalte Kommentar.
Variable;Wert;Einheit;Kommentar
Zeichnungsnummer;SKV-30-114;;  ## drawing_number SKV-30-114
Aenderungsindex;b;;  ## drawing_revision b
Bearbeiter;Kürzel fehlt;;
Drehzahl_max;5400;1/min;Umrichterbetrieb 90 Hz  ## speed_max 5400 // stations AS | BS
Lagerabstand;164;mm;Mitte-Mitte  ## bearing_span 164
Rotormasse;4,75;kg;mit Laufrad  ## rotor_mass 4.75
Lager_AS;6205-2Z/C3;;AS = Laufradseite  ## 1.bearing_designation 6205-2Z/C3
Lager_BS;6204-2Z/C3;;BS = Lüfterseite  ## 2.bearing_designation 6204-2Z/C3
Wellensitz_AS_Nennmass;25;mm;
Wellensitz_AS_oberes_Abmass;0,011;mm;
Wellensitz_AS_unteres_Abmass;0,002;mm;  ## 1.shaft_seat_diameter 25 0.002 0.011 @B-2+B-1+B
Wellensitz_BS_Nennmass;20;mm;
Wellensitz_BS_oberes_Abmass;0,011;mm;
Wellensitz_BS_unteres_Abmass;0,002;mm;  ## 2.shaft_seat_diameter 20 0.002 0.011 @B-2+B-1+B
Gehaeusebohrung_AS;52 H6;mm;  ## 1.housing_seat_diameter 52 H6
Gehaeusebohrung_BS;47 H6;mm;  ## 2.housing_seat_diameter 47 H6
Wellenschulter_AS;31;mm;Durchmesser  ## 1.shaft_shoulder_diameter 31
Wellenschulter_BS;26;mm;Durchmesser  ## 2.shaft_shoulder_diameter 26
Gehaeuseschulter_AS;46;mm;Durchmesser  ## 1.housing_shoulder_diameter 46
Gehaeusewerkstoff;EN AC-46000;;Druckguss  ## housing_material aluminium
Wellenwerkstoff;C45;;  ## shaft_material steel
Wellfeder_Federrate;42;N/mm;  ## spring_rate 42
Wellfeder_Einbaulaenge;4,2;mm;auf BS  ## spring_installed_length 4.2 // implied spring_kind wave
Oberflaeche_Deckel;pulverbeschichtet;;
""",
    """8017 de csv sep=; cols=C,D label=A -- Schwaben, Frässpindeln. Datenblatt der Konstruktion, vorn und hinten nebeneinander, Abmaße in µm in der Zelle.
Motorspindel MS 120;;;;
Stand 4, gültig ab Serie 12;;;;
Merkmal;Zeichen;vorderes Lager;hinteres Lager;Einheit  ## station vorderes Lager | hinteres Lager
Lagerbezeichnung;;7010C P4;N1008 P5;  ## bearing_designation 7010C P4 | N1008 P5
Bohrung;d;50;40;mm  ## bore_diameter 50 | 40
Außendurchmesser;D;80;68;mm  ## outside_diameter 80 | 68
Breite;B;16;15;mm  ## ring_width 16 | 15
Lagerfunktion;;Festlager;Loslager;  ## axial_role locating | floating
Wellenpassung;;50 (+4/-4 µm);40 (+4/-4 µm);mm  ## shaft_seat_diameter 50 -0.004 0.004 | 40 -0.004 0.004
Gehäusepassung;;80 (+8/-2 µm);68 (+6/-3 µm);mm  ## housing_seat_diameter 80 -0.002 0.008 | 68 -0.003 0.006
Zylinderform Welle;t1;0,0015;0,0015;mm  ## shaft_seat_cylindricity 0.0015 | 0.0015
Zylinderform Gehäuse;t1;0,003;0,003;mm  ## housing_seat_cylindricity 0.003 | 0.003
Planlauf Wellenschulter;t4;0,0015;0,002;mm  ## shaft_shoulder_runout 0.0015 | 0.002
Planlauf Gehäuseschulter;t4;0,003;0,003;mm  ## housing_shoulder_runout 0.003 | 0.003
Rauheit Wellensitz;Ra;0,2;0,2;µm  ## shaft_seat_roughness 0.2 | 0.2
Rauheit Gehäusesitz;Ra;0,4;0,4;µm  ## housing_seat_roughness 0.4 | 0.4
Schulterdurchmesser Welle;da;57;46;mm  ## shaft_shoulder_diameter 57 | 46
Schulterdurchmesser Gehäuse;Da;74;62,5;mm  ## housing_shoulder_diameter 74 | 62.5
Schmierung;;Öl-Luft;Öl-Luft;  ## lubrication oil-air | oil-air
Höchstdrehzahl;nmax;18000;;1/min  ## speed_max 18000
Vorspannung;Fv;420;;N  ## preload_force 420
Werkzeugaufnahme;;Hohlschaft 63;;
""",
    """8018 de json -- Franken, Elektromotoren. Attribute aus dem PLM als JSON, verschachtelt nach Baugruppe, Zahl und Einheit getrennt.
{
  "Sachnummer": "4711.220.05",  ## drawing_number 4711.220.05
  "Revision": "AB",  ## drawing_revision AB
  "Benennung": "Lagerung Läufer BG 112",
  "Status": "freigegeben",
  "Ersteller": "Konstruktion 3",
  "Läufer": {
    "Masse": {"Wert": 9.6, "Einheit": "kg"},  ## rotor_mass 9.6 @Wert
    "Drehzahl maximal": {"Wert": 6000, "Einheit": "min-1"},  ## speed_max 6000 @Wert
    "Auswuchtgüte": "G 2,5",  ## balance_grade 2.5
    "Einbaulage": "waagerecht",  ## shaft_orientation horizontal
    "Wellenwerkstoff": "42CrMo4"  ## shaft_material steel
  },
  "Lagerstellen": {
    "A-Seite": {  ## [1] // stations A-Seite | B-Seite
      "Lager": "6306-2Z/C3",  ## bearing_designation 6306-2Z/C3
      "Lagerart": "Festlager",  ## axial_role locating
      "Wellensitz": {"Nennmaß": 30, "Toleranz": "k5", "Einheit": "mm"},  ## shaft_seat_diameter 30 k5 @Nennmaß+Toleranz
      "Gehäusesitz": {"Nennmaß": 72, "Toleranz": "H6", "Einheit": "mm"},  ## housing_seat_diameter 72 H6 @Nennmaß+Toleranz
      "Radiallast": {"Wert": 0.9, "Einheit": "kN"},  ## radial_load 900 @Wert
      "Rauheit Wellensitz": {"Wert": 0.8, "Einheit": "µm"},  ## shaft_seat_roughness 0.8 @Wert
      "Nachsetzzeichen Kunde": "ohne"
    },
    "B-Seite": {  ## [2]
      "Lager": "6305-2Z/C3",  ## bearing_designation 6305-2Z/C3
      "Lagerart": "Loslager",  ## axial_role floating
      "Wellensitz": {"Nennmaß": 25, "Toleranz": "k5", "Einheit": "mm"},  ## shaft_seat_diameter 25 k5 @Nennmaß+Toleranz
      "Gehäusesitz": {"Nennmaß": 62, "Toleranz": "H6", "Einheit": "mm"},  ## housing_seat_diameter 62 H6 @Nennmaß+Toleranz
      "Radiallast": {"Wert": 0.4, "Einheit": "kN"},  ## radial_load 400 @Wert
      "Rauheit Wellensitz": {"Wert": 0.8, "Einheit": "µm"},  ## shaft_seat_roughness 0.8 @Wert
      "Nachsetzzeichen Kunde": "ohne"
    }
  },
  "Lack": "Grundierung"
}
""",
    """8019 de csv sep=; cols=D+E+F label=C -- Pfalz, Kreiselpumpen. Prüfmerkmalliste der Zeichnung, je Merkmal eine Zeile, Prüfmittel und Häufigkeit daneben.
Nr.;Feld;Merkmal;Sollwert;OT;UT;Einheit;Prüfmittel;Prüfumfang
10;B3;Lagersitz Welle Antriebsseite Ø;40;0,013;0,002;mm;Feinzeiger;100 %  ## stations Antriebsseite | Pumpenseite // 1.shaft_seat_diameter 40 0.002 0.013
11;B3;Lagersitz Welle Antriebsseite Ra;0,8;;;µm;Tastschnitt;1/10  ## 1.shaft_seat_roughness 0.8 @D
12;B3;Lagersitz Welle Antriebsseite Rundlauf zu A-B;0,008;;;mm;Messuhr;1/5  ## 1.shaft_seat_runout 0.008 @D
13;B4;Wellenschulter Antriebsseite Ø;49;0;-0,2;mm;Messschieber;1/10  ## 1.shaft_shoulder_diameter 49 -0.2 0
14;B4;Wellenschulter Antriebsseite Planlauf zu A-B;0,01;;;mm;Messuhr;1/5  ## 1.shaft_shoulder_runout 0.01 @D
15;B4;Übergangsradius Wellenschulter Antriebsseite;1;0;-0,3;mm;Konturmessgerät;1/20  ## ~1.shaft_fillet_radius 1 @D
20;D6;Lagersitz Welle Pumpenseite Ø;40;0,013;0,002;mm;Feinzeiger;100 %  ## 2.shaft_seat_diameter 40 0.002 0.013
21;D6;Lagersitz Welle Pumpenseite Ra;0,8;;;µm;Tastschnitt;1/10  ## 2.shaft_seat_roughness 0.8 @D
22;D6;Lagersitz Welle Pumpenseite Rundlauf zu A-B;0,008;;;mm;Messuhr;1/5  ## 2.shaft_seat_runout 0.008 @D
30;E2;Lagersitz Gehäuse Antriebsseite Ø;80;0,03;0;mm;Innenmessgerät;100 %  ## 1.housing_seat_diameter 80 0 0.03
31;E2;Lagersitz Gehäuse Antriebsseite Ra;1,6;;;µm;Tastschnitt;1/10  ## 1.housing_seat_roughness 1.6 @D
32;E2;Lagersitz Gehäuse Antriebsseite Zylindrizität;0,007;;;mm;Formmessgerät;1/20  ## 1.housing_seat_cylindricity 0.007 @D
40;E7;Lagersitz Gehäuse Pumpenseite Ø;90;0,035;0;mm;Innenmessgerät;100 %  ## 2.housing_seat_diameter 90 0 0.035
41;E7;Lagersitz Gehäuse Pumpenseite Ra;1,6;;;µm;Tastschnitt;1/10  ## 2.housing_seat_roughness 1.6 @D
42;E7;Lagersitz Gehäuse Pumpenseite Zylindrizität;0,007;;;mm;Formmessgerät;1/20  ## 2.housing_seat_cylindricity 0.007 @D
50;F1;Passfedernut Breite;10;0;-0,036;mm;Lehre;100 %
51;F5;Wellendichtring Lauffläche Ø;38;0;-0,039;mm;Bügelmessschraube;1/5
""",
    """8020 de csv sep=; enc=cp1252 -- Sachsen, Stirnradgetriebe. Eine Zeile je Lager, Sitze von Innen- und Außenring mit Klasse, Lasten aus der Rechnung.
Welle;Lagerstelle;Lager;Maße d x D x B;Sitz Innenring;Sitz Außenring;Fr [N];Fa [N];n [1/min];Betriebstemperatur [°C];Art.-Nr.;Bemerkung  ## > machine:A station:B bearing_designation:C bore_diameter:D outside_diameter:D ring_width:D shaft_seat_diameter:E housing_seat_diameter:F radial_load:G axial_load:H speed_max:I operating_temperature:J
Eintriebswelle;links;6207;35 x 72 x 17;Ø35 k6;Ø72 H7;1480;260;1500;70;300412;  ## = Eintriebswelle ; links ; 6207 ; 35 ; 72 ; 17 ; 35 k6 ; 72 H7 ; 1480 ; 260 ; 1500 ; 70
Eintriebswelle;rechts;NU206;30 x 62 x 16;Ø30 k6;Ø62 H7;1930;0;1500;70;300587;  ## = Eintriebswelle ; rechts ; NU206 ; 30 ; 62 ; 16 ; 30 k6 ; 62 H7 ; 1930 ; 0 ; 1500 ; 70
Zwischenwelle;links;NU208;40 x 80 x 18;Ø40 m6;Ø80 H7;4100;0;520;75;300588;Ersatztyp prüfen  ## = Zwischenwelle ; links ; NU208 ; 40 ; 80 ; 18 ; 40 m6 ; 80 H7 ; 4100 ; 0 ; 520 ; 75
Zwischenwelle;rechts;6308;40 x 90 x 23;Ø40 m6;Ø90 H7;3650;940;520;75;300419;  ## = Zwischenwelle ; rechts ; 6308 ; 40 ; 90 ; 23 ; 40 m6 ; 90 H7 ; 3650 ; 940 ; 520 ; 75
""",
    """8021 de tab cols=B label=A enc=utf-8-sig -- Niedersachsen, Radialventilatoren. Parameterliste, kurze Kürzel und eine Spalte Bedeutung, die sie erklärt.
Parameter | Wert | Einheit | Bedeutung
n_max | 3000 | 1/min | größte Betriebsdrehzahl  ## speed_max 3000 // stations 1 | 2
m_rot | 68 | kg | Masse Welle mit Laufrad  ## rotor_mass 68
L_lag | 420 | mm | Abstand der Lagermitten  ## bearing_span 420
G_wucht | 6.3 | mm/s | Wuchtgüte  ## balance_grade 6.3
d_w1 | 50 | mm | Lagersitz Welle, Lager 1 (laufradseitig)
d_w1_o | 18 | µm | oberes Abmaß zu d_w1
d_w1_u | 2 | µm | unteres Abmaß zu d_w1  ## 1.shaft_seat_diameter 50 0.002 0.018 @B-2+B-1+B
d_w2 | 50 | mm | Lagersitz Welle, Lager 2 (riemenseitig)
d_w2_o | 18 | µm | oberes Abmaß zu d_w2
d_w2_u | 2 | µm | unteres Abmaß zu d_w2  ## 2.shaft_seat_diameter 50 0.002 0.018 @B-2+B-1+B
D_g1 | 110 | mm | Lagersitz Gehäuse, Lager 1
D_g1_o | 35 | µm | oberes Abmaß zu D_g1
D_g1_u | 0 | µm | unteres Abmaß zu D_g1  ## 1.housing_seat_diameter 110 0 0.035 @B-2+B-1+B
D_g2 | 90 | mm | Lagersitz Gehäuse, Lager 2
D_g2_o | 35 | µm | oberes Abmaß zu D_g2
D_g2_u | 0 | µm | unteres Abmaß zu D_g2  ## 2.housing_seat_diameter 90 0 0.035 @B-2+B-1+B
F_r1 | 1150 | N | Radialkraft Lager 1  ## 1.radial_load 1150
F_r2 | 1840 | N | Radialkraft Lager 2 mit Riemenzug  ## 2.radial_load 1840
F_a1 | 290 | N | Axialkraft Lager 1  ## 1.axial_load 290
s_blech | 4 | mm | Blechdicke Spirale
z_schaufel | 11 | - | Schaufelzahl  ## blade_count 11
RAL | 7035 | | Farbton
""",
    """8022 de xlsx cols=C,D label=A -- Berlin, Turboverdichter. Berechnungsblatt in der Tabellenkalkulation, Kopf mit Projekt, Eingaben und Ergebnisse getrennt.
#! sheet Lagerung
#! merge A1:F1
#! merge A6:F6
#! merge A25:F25
#! fmt C14:D17 0.000
Lagerberechnung Hochdrehzahlläufer | | | | |
Projekt | TV-88 | | | |
Zeichnung | TV88-03-001 | | Index | C |  ## drawing_number TV88-03-001 @B // drawing_revision C @E
Bearbeitet | | | Geprüft | |
 | | | | |
EINGABEN | | | | |
Größe | Formelzeichen | Verdichterseite | Turbinenseite | Einheit | Bemerkung  ## station Verdichterseite | Turbinenseite
Lager | | 71906C P4 | 71905C P4 | | Hybrid  ## bearing_designation 71906C P4 | 71905C P4
Kugeldurchmesser | Dw | 5.556 | 4.762 | mm | ## ball_diameter 5.556 | 4.762
Kugelzahl | Z | 19 | 18 | | ## ball_count 19 | 18
Kugelwerkstoff | | Siliziumnitrid | Siliziumnitrid | | ## ball_material silicon nitride | silicon nitride
Dynamische Tragzahl | C | 9.1 | 7.3 | kN | ## dynamic_rating 9100 | 7300
Statische Tragzahl | C0 | 6.2 | 4.6 | kN | ## static_rating 6200 | 4600
Wellensitz, Größtmaß | | 30.003 | 25.003 | mm |
Wellensitz, Kleinstmaß | | 29.997 | 24.997 | mm | ## shaft_seat_diameter =29.997..30.003 | =24.997..25.003 @X-1+X
Gehäusesitz, Größtmaß | | 47.009 | 42.012 | mm |
Gehäusesitz, Kleinstmaß | | 47.002 | 42.005 | mm | ## housing_seat_diameter =47.002..47.009 | =42.005..42.012 @X-1+X
Temperatur Welle | | 90 | | °C | ## shaft_temperature 90
Temperatur Gehäuse | | 70 | | °C | ## housing_temperature 70
Drehzahl max. | n | 45000 | | 1/min | ## speed_max 45000
Läufermasse | m | 2.4 | | kg | ## rotor_mass 2.4
Federvorspannung | Fv | 140 | | N | ## preload_force 140 // implied preload_method spring
Stützweite | l | 118 | | mm | ## bearing_span 118
Schmierung | | Öl-Einspritzung | Öl-Einspritzung | | ## lubrication oil jet | oil jet
ERGEBNISSE | | | | |
Drehzahlkennwert | n·dm | 1732500 | 1507500 | mm/min |
Vorschlag Ausfallgrenze | | 0.5 | 0.5 | |
""",
    """8023 de csv sep=; cols=B,C -- Schweiz, Textilspindeln. Datenblatt ohne scharfes s, Abmasse mit Schrägstrich in mm, Punkt als Dezimalzeichen.
Spindellagerung TX-6;;;
Massblatt 6.110;;;Ausgabe 2  ## ~drawing_revision 2 @D
;Halslager;Fusslager;Bemerkung  ## station Halslager | Fusslager
Kugellager;6002-2Z;6000-2Z;  ## bearing_designation 6002-2Z | 6000-2Z
Innendurchmesser mm;15;10;  ## bore_diameter 15 | 10
Aussendurchmesser mm;32;26;  ## outside_diameter 32 | 26
Breite mm;9;8;  ## ring_width 9 | 8
Lagerluft;C3;CN;  ## clearance_class C3 | CN
Sitz auf Schaft mm;15 +0.004/-0.001;10 +0.004/-0.001;geschliffen  ## shaft_seat_diameter 15 -0.001 0.004 | 10 -0.001 0.004
Sitz in Büchse mm;32 +0.011/0;26 +0.009/0;gehont  ## housing_seat_diameter 32 0 0.011 | 26 0 0.009
Rundlauf Sitz auf Schaft mm;0.003;0.003;  ## shaft_seat_runout 0.003 | 0.003
Ra Sitz auf Schaft;0.3;0.3;µm  ## shaft_seat_roughness 0.3 | 0.3
Ra Sitz in Büchse;0.6;0.6;µm  ## housing_seat_roughness 0.6 | 0.6
Bundmass Schaft mm;18;13;Durchmesser  ## shaft_shoulder_diameter 18 | 13
Riemenzug N;28;;am Wirtel
Radialkraft N;22;9;  ## radial_load 22 | 9
Fettfüllung %;25;25;der freien Räume  ## grease_fill 25 | 25
Drehzahl max. U/min;22000;;  ## speed_max 22000
Lagerabstand mm;74;;  ## bearing_span 74
Oberfläche;brüniert;;
Visum;;;
""",
    """8024 de csv sep=; enc=cp1252 cols=B label=A -- Steiermark, Zentrifugen. Merkmale aus dem Artikelstamm, lange Merkmalsnamen mit Lagerstelle am Ende, Wert mit Einheit.
Merkmalbezeichnung;Merkmalwert;Merkmalklasse;gepflegt
Artikelnummer;ZF 210 880;STAMM;ja
Zeichnung Nr.;210-4410;STAMM;ja  ## drawing_number 210-4410
Max. Trommeldrehzahl;4800 U/min;TECH;ja  ## speed_max 4800 // stations oben | unten
Masse Trommel komplett;52 kg;TECH;ja  ## ~rotor_mass 52
Wellenlage;stehend;TECH;ja  ## shaft_orientation vertical
Wälzlager oben;6208/C3;LAGER;ja  ## 1.bearing_designation 6208/C3
Wälzlager unten;7208B;LAGER;ja  ## 2.bearing_designation 7208B
Passung Welle oben;40 h6;LAGER;ja  ## 1.shaft_seat_diameter 40 h6
Passung Welle unten;40 k5;LAGER;ja  ## 2.shaft_seat_diameter 40 k5
Passung Gehäuse oben;80 J7;LAGER;ja  ## 1.housing_seat_diameter 80 J7
Passung Gehäuse unten;80 H7;LAGER;ja  ## 2.housing_seat_diameter 80 H7
Bundhöhe Welle oben;4,5 mm;LAGER;nein
Radialkraft oben;780 N;LAGER;ja  ## 1.radial_load 780
Radialkraft unten;540 N;LAGER;ja  ## 2.radial_load 540
Axialkraft unten;910 N;LAGER;ja  ## 2.axial_load 910
Schmierung oben;Fett;LAGER;ja  ## 1.lubrication grease
Schmierung unten;Ölumlauf;LAGER;ja  ## ?2.lubrication oil bath
Erforderliche Lebensdauer;30000 h;LAGER;ja  ## required_life 30000
Werkstoff Lagergehäuse;EN-GJS-400-15;TECH;ja  ## housing_material cast iron
Zolltarif;84219100;HANDEL;ja
Gewicht Verpackung;18 kg;HANDEL;nein
""",
    """8025 de csv sep=; cols=C,D label=B -- Hessen, Prüfstände. Stückliste der Anforderungen mit laufender Nummer; Passung und Abmaße in eigenen Zeilen, Lagerstelle F und L.
Lfd.;Kenngröße;Lagerstelle F;Lagerstelle L;Einh.;Herkunft  ## station Lagerstelle F | Lagerstelle L
1;Lagertyp;6006;6005;-;Katalog  ## bearing_designation 6006 | 6005
2;Toleranzklasse Lager;P5;P5;-;Bestelltext  ## tolerance_class P5 | P5
3;Aufgabe;fest;los;-;Konzept  ## axial_role locating | floating
4;Welle Ø;30;25;mm;Modell
5;Welle Toleranzfeld;js5;js5;-;Zeichnung  ## shaft_seat_diameter 30 js5 | 25 js5 @X-1+X
6;Bohrung Ø;55;47;mm;Modell
7;Bohrung Toleranzfeld;JS6;H6;-;Zeichnung  ## housing_seat_diameter 55 JS6 | 47 H6 @X-1+X
8;Koaxialität der Bohrungen;0,006;;mm;Zeichnung  ## coaxiality_of_bores 0.006
9;Gesamtrundlauf Wellensitz;0,004;0,004;mm;Zeichnung  ## shaft_seat_runout 0.004 | 0.004
10;Gesamtrundlauf Gehäusesitz;0,006;0,006;mm;Zeichnung  ## housing_seat_runout 0.006 | 0.006
11;Freistich Welle;F;F;-;DIN 509  ## shaft_undercut_form F | F
12;größter Hohlkehlradius Gehäuse;0,6;0,6;mm;Zeichnung  ## housing_fillet_radius 0.6 | 0.6
13;Rauheit;Rz 3,2;Rz 3,2;µm;Zeichnung  ## ?shaft_seat_roughness|housing_seat_roughness 0.8 | 0.8
14;Prüfdrehzahl max.;9000;;1/min;Lastenheft  ## speed_max 9000
15;Belastung radial;310;180;N;Lastenheft  ## radial_load 310 | 180
16;Belastung axial;120;0;N;Lastenheft  ## axial_load 120 | 0
17;Fett;KP2;KP2;-;Wartungsplan  ## lubrication grease | grease
18;Sensorbohrung;M8x1;M8x1;-;Messtechnik
19;Freigabe;offen;;-;
""",
)
