"""Words of English and German offices; the form of a line is told in words.py."""

EN = """
=F: F | F | DIN 509-F
=E: E | E | DIN 509-E
seat_roughness: Surface roughness Ra | Seat roughness Ra | Finish Ra
col.index: No. | # | Item no.
machine: Machine | Machine type | Equipment
drawing_number: Drawing no. | Drawing number | Dwg No. | DWG
drawing_revision: Rev. | Revision | Rev | Issue
speed_max: Max. speed | Maximum speed | Max running speed | Speed, max | Max rotational speed
speed_operating: Operating speed | Running speed | Working speed | Service speed
required_life: Required life | Required bearing life L10h | Design life L10h | Target life
shaft_material: Shaft material | Material, shaft | Shaft mat'l
housing_material: Housing material | Material, housing | Hsg material
shaft_temperature: Shaft temperature | Shaft temp. | Temp. of shaft in operation
housing_temperature: Housing temperature | Housing temp. | Hsg temp.
ambient_temperature: Ambient temperature | Ambient temp. | Ambient
temperature_max: Max. temperature | Highest temperature | Temp. max
temperature_min: Min. temperature | Lowest temperature | Cold start temperature
bearing_span: Bearing span | Bearing centre distance | Distance between bearings | Span between brg centres
rotor_mass: Rotor mass | Rotor weight | Mass of rotor
balance_grade: Balance grade G | Balance quality grade | Balancing grade G
preload: Preload | Preloading | Axial preload by
preload_force: Preload force | Axial preload force | Spring preload | Spring force
spring_rate: Spring rate | Spring stiffness
spring_free_length: Spring free length | Free height of spring
spring_installed_length: Spring installed length | Spring working height
coaxiality_of_bores: Coaxiality of housing bores | Coaxiality, bores A-B | Concentricity of the two bores
coaxiality_of_shaft_seats: Coaxiality of shaft seats | Coaxiality of journals | Coaxiality, shaft seats A-B
shaft_orientation: Shaft orientation | Mounting attitude | Shaft attitude
bearing_designation: Bearing | Bearing designation | Bearing type | Brg. no. | Bearing P/N
bore_diameter: Bearing bore d | Bore d | Brg bore | Bearing ID
outside_diameter: Bearing OD D | Outside dia. D | Brg O.D. | Bearing OD
ring_width: Bearing width B | Width B | Brg width
ring_chamfer: Ring chamfer r min | Bearing chamfer rs min | Min. corner radius of bearing
dynamic_rating: Dynamic load rating C | Basic dynamic rating C | C dyn
static_rating: Static load rating C0 | Basic static rating C0 | C0 stat
lubrication: Lubrication | Lube | Lubrication method
base_oil_viscosity_40: Base oil viscosity at 40 °C | Oil viscosity 40 °C | Base oil visc. @40C
grease_fill: Grease fill | Grease filling | Fill of grease
radial_load: Radial load | Radial load Fr | Fr | Radial brg load
axial_load: Axial load | Axial load Fa | Fa | Thrust load
axial_role: Axial location | Locating/floating | Bearing function | Arrangement
limiting_speed: Limiting speed of bearing | Catalogue limiting speed | Brg speed limit
shaft_seat_diameter: Shaft seat | Shaft seat diameter | Journal dia. | Bearing journal | Shaft dia. at bearing
  | Shaft fit
housing_seat_diameter: Housing seat | Housing bore | Housing bore dia. | Bearing bore in housing | Hsg bore
  | Housing fit
shaft_seat_cylindricity: Cylindricity of shaft seat | Journal cylindricity | Shaft seat cylindricity
housing_seat_cylindricity: Cylindricity of housing bore | Bore cylindricity | Housing seat cylindricity
shaft_seat_runout: Shaft seat total runout | Journal runout | Total run-out, shaft seat
housing_seat_runout: Housing bore total runout | Bore runout | Total run-out, housing seat
shaft_seat_roughness: Shaft seat Ra | Surface finish Ra, journal | Journal roughness Ra
housing_seat_roughness: Housing bore Ra | Surface finish Ra, bore | Bore roughness Ra
shaft_shoulder_diameter: Shaft shoulder dia. | Shaft shoulder | Shaft abutment dia. da
  | Inner ring shoulder on shaft
housing_shoulder_diameter: Housing shoulder dia. | Housing shoulder | Housing abutment dia. Da
  | Shoulder bore in housing
shaft_shoulder_runout: Shaft shoulder axial runout | Face runout of shaft shoulder | Squareness of shaft shoulder
housing_shoulder_runout: Housing shoulder axial runout | Face runout of housing shoulder
  | Squareness of housing shoulder
shaft_fillet_radius: Shaft fillet | Shaft fillet radius max | Fillet R at shaft shoulder | Shaft corner radius
housing_fillet_radius: Housing fillet | Housing fillet radius max | Fillet R in housing | Housing corner radius
shaft_undercut_form: Shaft undercut form | Undercut on shaft (DIN 509) | Relief groove form, shaft
housing_undercut_form: Housing undercut form | Undercut in housing (DIN 509) | Relief groove form, housing
part.shaft: Shaft | Journal | Rotor shaft
part.housing: Housing | Casing | Hsg
part.bearing: Bearing | Brg | Rolling bearing
part.machine: General | Assembly | Rotor
feature.seat_diameter: bearing seat | seat diameter | seat dia.
feature.seat_cylindricity: cylindricity | seat cylindricity
feature.seat_runout: total run-out | seat runout
feature.seat_roughness: roughness Ra | surface Ra | Ra
feature.shoulder_diameter: shoulder dia. | shoulder diameter | abutment dia.
feature.shoulder_runout: shoulder face runout | shoulder squareness
feature.fillet_radius: fillet radius | fillet R max | corner radius
feature.undercut_form: undercut form | undercut (DIN 509)
aspect.class: tolerance | tol. class | fit | ISO fit
aspect.nominal: nominal | nom. | basic size
aspect.upper: upper dev. | upper deviation | ES/es | + tol.
aspect.lower: lower dev. | lower deviation | EI/ei | - tol.
aspect.max: max | max. | upper limit
aspect.min: min | min. | lower limit
aspect.dev: deviations | limit deviations | tolerance
col.name: Parameter | Characteristic | Description | Name | Attribute
col.value: Value | Nominal | Setting | Data
col.unit: Unit | UoM | Units
col.note: Remark | Comment | Source | Notes
col.part: Part | Component | Item
col.feature: Feature | Characteristic | Dimension
col.position: Position | Bearing position | Location | Brg pos. | Station
join: {p} {f} | {p}: {f} | {f}, {p} | {f} ({p})
positions: A/B | DE/NDE | Drive end/Non-drive end | Front/Rear | Bearing A/Bearing B | Upper/Lower
title: Bearing seat data sheet | Rotor bearing arrangement - design parameters | Parameter export
  | Fits & tolerances, bearing seats
mmnote: All dimensions in mm | Dimensions in millimetres unless stated otherwise | Linear dimensions: mm
inchnote: All dimensions in inches | Dimensions in inch unless noted
notes: Break sharp edges. | Overspeed test 120 %, 3 min. | Seats ground after hardening. | Checked by QA.
  | Do not scale. | General tolerances ISO 2768-m
machines: Side-channel blower | Lab centrifuge | Milling spindle | Canned pump | Test-rig motor | Vacuum pump
  | Dosing pump drive | Turbo expander
noise: Rated power kW = 2.2 / 2.2 | Stator outside dia. mm = 96 / 96
  | Unit price USD = 14.20 / 11.85 | Qty = 1 / 1 | Impeller diameter mm = 148 / 148
  | Winding resistance ohm = 0.84 / 0.84 | Paint = RAL 7016 / RAL 7016 | Flange screws = M6x20 / M6x25
  | Supplier lead time weeks = 6 / 8 | Key length mm = 22 / 18 | Cost centre = 4410 / 4410
=grease: grease | Grease, lubricated for life | greased
=oil bath: oil bath | Oil bath
=oil mist: oil mist | Oil mist
=oil-air: oil-air | oil + air
=oil jet: oil jet | Oil jet
=locating: locating | Locating | fixed
=floating: floating | Floating | non-locating
=spring-loaded: spring-loaded | spring loaded
=wave: wave spring | Wave spring
=helical: coil springs | helical spring
=disc: disc springs | Belleville washers
=rigid: rigid | fixed position (spacers) | rigid (lock nut)
=none: none | None
=horizontal: horizontal | Horizontal
=vertical: vertical | Vertical
=steel: steel | Steel 42CrMo4 | 16MnCr5
=stainless steel: stainless steel | X46Cr13
=aluminium: aluminium | AlSi10Mg | EN AW-6082
=cast iron: cast iron | EN-GJL-250 | grey cast iron
"""
DE = """
=F: F | F | DIN 509-F
=E: E | E | DIN 509-E
seat_roughness: Rauheit Ra | Oberflächenrauheit Ra | Rauheit Ra Lagersitz
col.index: Lfd. Nr. | Nr. | Pos.-Nr.
machine: Maschine | Maschinentyp | Gerät | Aggregat | Anlage
drawing_number: Zeichnungsnr. | Zeichnungsnummer | Zg.-Nr. | Zchng.-Nr.
drawing_revision: Rev. | Revision | Änderungsstand | Index
speed_max: Max. Drehzahl | Höchstdrehzahl | Drehzahl max. | n max | Maximaldrehzahl
speed_operating: Betriebsdrehzahl | Arbeitsdrehzahl | Drehzahl im Betrieb
required_life: Geforderte Lebensdauer | Soll-Lebensdauer L10h | Lebensdauerforderung
shaft_material: Werkstoff Welle | Wellenwerkstoff | Material Welle
housing_material: Werkstoff Gehäuse | Gehäusewerkstoff | Material Gehäuse
shaft_temperature: Wellentemperatur | Temperatur Welle | Temp. Welle
housing_temperature: Gehäusetemperatur | Temperatur Gehäuse | Temp. Gehäuse
ambient_temperature: Umgebungstemperatur | Umgebungstemp. | T Umgebung
temperature_max: Max. Temperatur | Höchste Temperatur | Temperatur max.
temperature_min: Min. Temperatur | Tiefste Temperatur | Kaltstarttemperatur
bearing_span: Lagerabstand | Lagermittenabstand | Abstand der Lager
rotor_mass: Rotormasse | Läufermasse | Rotorgewicht | Masse Rotor
balance_grade: Wuchtgüte G | Auswuchtgütestufe G | Wuchtgüte
preload: Vorspannung | Anstellung | Axiale Vorspannung durch
preload_force: Vorspannkraft | Federvorspannkraft | Axiale Vorspannkraft | Federkraft
spring_rate: Federrate | Federsteifigkeit
spring_free_length: Federlänge ungespannt L0 | Freie Federlänge
spring_installed_length: Federlänge eingebaut L1 | Einbaulänge Feder
coaxiality_of_bores: Koaxialität Gehäusebohrungen | Koaxialität der Lagerbohrungen
coaxiality_of_shaft_seats: Koaxialität Wellensitze | Koaxialität der Lagersitze Welle
shaft_orientation: Wellenlage | Einbaulage Welle | Lage der Welle
bearing_designation: Lager | Wälzlager | Lagerbezeichnung | Kugellager | Lagertyp
bore_diameter: Lagerbohrung d | Innendurchmesser d | Lager-Innen-Ø
outside_diameter: Außendurchmesser D | Lager-Außen-Ø | Lageraußendurchmesser D
ring_width: Lagerbreite B | Breite B
ring_chamfer: Kantenabstand rs min | Kantenkürzung r min | Ringfase rs min
dynamic_rating: Dyn. Tragzahl C | Dynamische Tragzahl | C dyn.
static_rating: Stat. Tragzahl C0 | Statische Tragzahl | C0 stat.
lubrication: Schmierung | Schmierungsart | Schmierart
base_oil_viscosity_40: Grundölviskosität 40 °C | Viskosität Grundöl bei 40 °C
grease_fill: Fettfüllung | Fettfüllgrad | Befettung
radial_load: Radiallast | Radialkraft | Radiallast Fr | Fr
axial_load: Axiallast | Axialkraft | Axiallast Fa | Fa
axial_role: Lagerfunktion | Fest-/Loslager | Lagerart axial | Anordnung
limiting_speed: Grenzdrehzahl Lager | Grenzdrehzahl (Katalog)
shaft_seat_diameter: Wellensitz | Lagersitz Welle | Wellendurchmesser Lagersitz | Ø Welle | Sitz Welle
  | Passung Welle
housing_seat_diameter: Gehäusesitz | Lagersitz Gehäuse | Gehäusebohrung | Ø Gehäusebohrung | Sitz Gehäuse
  | Passung Gehäuse
shaft_seat_cylindricity: Zylindrizität Welle | Zylinderform Wellensitz | Zylindrizität Lagersitz Welle
housing_seat_cylindricity: Zylindrizität Gehäuse | Zylinderform Gehäusebohrung | Zylindrizität Lagersitz Gehäuse
shaft_seat_runout: Gesamtrundlauf Wellensitz | Rundlauf Lagersitz Welle | Gesamtlauf Welle
housing_seat_runout: Gesamtrundlauf Gehäusebohrung | Rundlauf Lagersitz Gehäuse | Gesamtlauf Gehäusesitz
shaft_seat_roughness: Rauheit Ra Wellensitz | Ra Welle | Oberfläche Welle Ra
housing_seat_roughness: Rauheit Ra Gehäusebohrung | Ra Gehäuse | Oberfläche Gehäuse Ra
shaft_shoulder_diameter: Wellenschulter | Wellenschulter-Ø | Schulterdurchmesser Welle da | Anlagedurchmesser Welle
  | Wellenbund Ø
housing_shoulder_diameter: Gehäuseschulter | Gehäuseschulter-Ø | Schulterdurchmesser Gehäuse Da
  | Anlagedurchmesser Gehäuse
shaft_shoulder_runout: Planlauf Wellenschulter | Axialschlag Wellenschulter | Planlauf Schulter Welle
housing_shoulder_runout: Planlauf Gehäuseschulter | Axialschlag Gehäuseschulter | Planlauf Schulter Gehäuse
shaft_fillet_radius: Hohlkehle Welle | Ausrundung Welle max. | Radius Wellenschulter | Übergangsradius Welle
housing_fillet_radius: Hohlkehle Gehäuse | Ausrundung Gehäuse max. | Radius Gehäuseschulter
  | Übergangsradius Gehäuse
shaft_undercut_form: Freistich Welle | Freistichform Welle | Freistich DIN 509 Welle
housing_undercut_form: Freistich Gehäuse | Freistichform Gehäuse | Freistich DIN 509 Gehäuse
part.shaft: Welle | Rotorwelle | Läuferwelle
part.housing: Gehäuse | Lagerschild | Lagergehäuse
part.bearing: Lager | Wälzlager
part.machine: Allgemein | Baugruppe | Rotor
feature.seat_diameter: Lagersitz | Sitz-Ø | Sitzdurchmesser
feature.seat_cylindricity: Zylindrizität | Zylinderform
feature.seat_runout: Gesamtrundlauf | Rundlauf Sitz
feature.seat_roughness: Rauheit Ra | Ra | Oberfläche Ra
feature.shoulder_diameter: Schulter-Ø | Schulterdurchmesser | Anlageschulter Ø
feature.shoulder_runout: Planlauf Schulter | Axialschlag Schulter
feature.fillet_radius: Hohlkehle max. | Ausrundungsradius | Radius Hohlkehle
feature.undercut_form: Freistich | Freistich DIN 509
aspect.class: Toleranz | Tol.-Klasse | Passung | Tol.
aspect.nominal: Nennmaß | Nenn-Ø | Nennwert
aspect.upper: oberes Abmaß | ob. Abm. | Abmaß oben | o. Abmaß
aspect.lower: unteres Abmaß | unt. Abm. | Abmaß unten | u. Abmaß
aspect.max: Größtmaß | max. | Höchstmaß
aspect.min: Kleinstmaß | min. | Mindestmaß
aspect.dev: Abmaße | Grenzabmaße | Toleranz
col.name: Merkmal | Bezeichnung | Parameter | Kenngröße | Benennung
col.value: Wert | Istwert | Nennwert | Sollwert
col.unit: Einheit | Einh. | ME
col.note: Bemerkung | Anmerkung | Quelle | Hinweis
col.part: Bauteil | Teil | Komponente
col.feature: Merkmal | Maß | Eigenschaft
col.position: Lagerstelle | Position | Lagerpos. | Stelle | Seite
join: {p} {f} | {p}: {f} | {f} {p} | {f} ({p})
positions: A/B | AS/BS | Lager A/Lager B | vorne/hinten | Antriebsseite/Gegenseite | links/rechts
title: Lagersitze - Auslegungsdaten | Parameterexport Baugruppe | Merkmalliste Lagerung | Datenblatt Rotorlagerung
mmnote: Alle Maße in mm | Maße in mm, sofern nicht anders angegeben | Längenmaße: mm
inchnote: Alle Maße in Zoll
notes: Kanten gebrochen. | Schleuderprüfung 120 %, 3 min. | Lagersitze geschliffen. | Freigabe durch QS.
  | Allgemeintoleranzen ISO 2768-m | Stand der Konstruktion, nicht für Fertigung freigegeben.
machines: Seitenkanalverdichter | Laborzentrifuge | Frässpindel | Kreiselpumpe | Prüfstandsmotor | Radialgebläse
  | Schleifspindel | Zellenradantrieb
noise: Nennleistung kW = 2,2 / 2,2 | Statoraußendurchmesser mm = 96 / 96
  | Preis EUR/Stk = 14,20 / 11,85 | Stückzahl = 1 / 1 | Laufraddurchmesser mm = 148 / 148
  | Wicklungswiderstand Ohm = 0,84 / 0,84 | Lackierung = RAL 7016 / RAL 7016 | Schrauben Flansch = M6x20 / M6x25
  | Lieferzeit Wochen = 6 / 8 | Passfederlänge mm = 22 / 18 | Kostenstelle = 4410 / 4410
=grease: Fett | Fettschmierung | Lebensdauerfettfüllung
=oil bath: Ölbad | Ölbadschmierung
=oil mist: Ölnebel | Ölnebelschmierung
=oil-air: Öl-Luft | Öl-Luft-Schmierung
=oil jet: Öleinspritzung | Öleinspritzschmierung
=locating: Festlager | fest
=floating: Loslager | los
=spring-loaded: federbelastet | federvorgespannt
=wave: Wellfeder | Wellenfeder
=helical: Schraubenfeder | Schraubenfedern
=disc: Tellerfedern | Tellerfederpaket
=rigid: starr | starr (Distanzringe) | starr über Wellenmutter
=none: keine | ohne
=horizontal: horizontal | waagerecht
=vertical: vertikal | senkrecht
=steel: Stahl | 42CrMo4 | 16MnCr5
=stainless steel: nichtrostender Stahl | X46Cr13
=aluminium: Aluminium | AlSi10Mg | EN AW-6082
=cast iron: Grauguss | EN-GJL-250 | GG-25
"""
