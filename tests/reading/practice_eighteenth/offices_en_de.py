"""The offices that write English and German."""

from practice_eighteenth.office import export, office

OFFICES = (
    office(
        "en",
        "class column",
        """names=Roots blower RB-40|Seal gas booster SB-15|Decanter drive DD-3|Textile godet TG-180;
        bearings=6204-2RS1|6205-2RS1/C3|6206-2RS1|6305-2RS1; station=Brg. location; machine=Duty;
        bearing=Rolling bearing; shaft=Shaft journal; housing=Housing bore; s.p=Journal; h.p=Hsg bore;
        full={p} {f}; part=Seat on; param=Item; value=Figure; unit=Unit of measure; name=Machine type;
        dwg=Drg no; rev=Rev; nmax=Max. speed; life=Design life L10h; tamb=Ambient temperature; des=Bearing no.;
        Fr=Radial load; Fa=Axial load; lub=Lubrication; role=Locating / non-locating; seat=nominal dia;
        cls=ISO fit; ra=Ra; cyl=cylindricity; run=total run-out; sh=abutment dia; fil=fillet radius max;
        x1=Chkd by:JT/PW; x2=Remarks:/see note 2/as RB-25;
        title=Bearing arrangement data~~Status: issued for review;
        foot=Note 2: abutments to suit bearing maker's catalogue|Sheet 1 of 1""",
        export("positions", "csv , utf-8", "DE,NDE", two=True),
        export("seats", "xlsx merge", "Drive end,Non-drive end", once=True, skip="tamb lub"),
        export(
            "long", "csv tab utf-8", "DE,NDE", skip="Fa fil", columns="station part param value unit", units="column"
        ),
        units="head",
        brackets=" ({})",
        group=",",
        fixed=True,
    ),
    office(
        "en",
        "limit columns",
        """names=Vane pump VP-220|Router spindle RS-1|Turbo fan TF-90|Dyno rotor DR-7|Cutter head CH-5;
        bearings=6203-2Z|6204-2Z|6205-2Z|6304-2Z; station=Bearing; shaft=Shaft; housing=Housing;
        bearing=Bearing; machine=General; s.min=Shaft OD min; s.max=Shaft OD max; h.min=Housing ID min;
        h.max=Housing ID max; s.ra=Shaft finish; h.ra=Housing finish; s.sh=Shaft shoulder dia;
        h.sh=Housing shoulder dia; s.fil=Shaft fillet R max; h.fil=Housing fillet R max; name=Model;
        dwg=Part drawing; nmax=Max speed; mass=Rotor weight; tmax=Max. assembly temperature; des=Brg P/N;
        d=Brg bore; D=Brg OD; B=Brg width; Fr=Radial load; seat=dia; min=dia min; max=dia max; ra=finish Ra;
        sh=shoulder dia; fil=fillet R max; x1=Buyer:KLM/RST; x2=Unit cost (USD):14.20/18.75/22.#0;
        title=BEARING FITS - ENGINEERING DATA""",
        export("machines", "xlsx merge", "Front bearing,Rear bearing", rotors=3, levels=2, skip="D B d sh fil"),
        export(
            "positions",
            "csv , utf-8-sig",
            "Front,Rear",
            rotors=2,
            columns=True,
            skip="B ra fil",
            words={"ask.ra": "Seat finish"},
        ),
        export("records", "json", "Front,Rear", skip="mass"),
        inch=True,
        ring_mm=True,
        brackets=", {}",
        choice=1,
        spelt={"rpm": "RPM"},
    ),
    office(
        "de",
        "class with deviations",
        """names=Seitenkanalverdichter SV 30|Kreiselpumpe KP 65|Schleifspindel SL 18|Rührwerk RW 5;
        bearings=6205-2Z|6206-2Z/C3|6207-2Z|6306-2Z; station=Lagerort; bearing=Lager; shaft=Welle;
        housing=Gehäuse; s.p=Welle; h.p=Gehäuse; machine=Antrieb; part=Bereich; param=Angabe; unit=Einh.;
        no=Nr.; full={f} {p}; name=Typ; dwg=Zeichnung; rev=Änd.-Stand; nmax=max. Drehzahl; nop=Betriebsdrehzahl;
        mass=Gewicht Rotor; tamb=Temperatur Umgebung; des=Lagertyp; d=Innendurchmesser; D=Außendurchmesser;
        B=Breite; C=dyn. Tragzahl C; C0=stat. Tragzahl C0; Fr=Radialbelastung; role=Fest-/Loslager;
        seat=Sitzdurchmesser; ra=Rauheit Ra; cyl=Zylindrizität; run=Gesamtrundlauf; shr=Planlauf der Schulter;
        sh=Schulter-Ø; fil=Ausrundung max.; x1=Quelle:Kat./Zchn./Vers.;
        title=Datenblatt Lagerung~~Bearb.: Lo~Datum: 11.03.2025; foot=Für nicht tolerierte Maße gilt ISO 2768-m""",
        export("down", "xlsx merge", "Lager A,Lager B", part="column", numbered=True, units="column", skip="role"),
        export("down", "csv ; cp1252", "A-Seite,B-Seite", part="line", order="shb", skip="nop C C0 shr"),
        comma=True,
        dia="Ø ",
        brackets=" in {}",
        devs="{up} / {lo}",
    ),
    office(
        "de",
        "deviation columns",
        """names=Radialgebläse RG 200|Zahnradpumpe ZP 8|Trommelmotor TM 113|Prüfrad PR 2;
        bearings=6004-2RSR|6005-2RSR|6204-2RSR|6304-2RSR; station=Lagerstelle; bearing=Wälzlager;
        shaft=Lagersitz Welle; housing=Lagersitz Gehäuse; s.p=Wellensitz; h.p=Gehäusesitz; part=Element;
        param=Prüfmerkmal; value=Nennwert; unit=ME; no=lfd.; up=ob. Grenzabmaß; lo=unt. Grenzabmaß;
        name=Baureihe; dwg=Zeichnungs-Nr.; rev=Ausgabe; nmax=n max; life=Lebensdauer L10h gefordert;
        span=Lagermittenabstand; tsh=Temperatur Welle; tho=Temperatur Gehäuse; des=Bezeichnung; Fr=Radiallast;
        Fa=Axiallast; nut=Anziehdrehmoment Nutmutter; temp=Betriebstemperatur Lager; seat=Durchmesser; ra=Ra;
        cyl=Zylinderform; run=Gesamtlauf; sh=Anlagedurchmesser; gd=Nut-Ø Sicherungsring;
        gw=Nutbreite Sicherungsring; x1=Prüfmittel:MS 25/KMG/Rauheitsmessger.;
        title=Prüfplan Lagersitze|Revision siehe Kopf~~Ersteller: A. Be.""",
        export("features", "xlsx", "links,rechts", numbered=True, skip="nut"),
        export("features", "csv ; utf-8-sig", "LS 1,LS 2", part_first=True, skip="Fa tsh tho gd gw", once=True),
        comma=True,
        fine="µm",
        dev="µm",
        units="column",
        block="across",
        spelt={"rpm": "1/min"},
    ),
    office(
        "en",
        "deviations",
        """names=Glass edging spindle GS-4|Cryo expander CE-2|Sampling fan SF-11|Yarn twister YT-60;
        bearings=7004 CD|7005 CD|7204 CD|7205 CD; station=Support; bearing=Angular contact bearing;
        shaft=Spindle shaft; housing=Sleeve bore; part=Part; param=Property; value=Value; machine=Spindle;
        s.p=Shaft; h.p=Housing; full={f} of {p}; name=Spindle; dwg=Drawing; rev=Issue; nmax=Maximum speed;
        nc=First critical speed; pf=Preload force; orient=Orientation; bal=Balance quality; des=Bearing;
        alpha=Contact angle; C=Dynamic load rating C; nlim=Limiting speed; temp=Bearing temperature;
        nu40=Base oil viscosity at 40 °C; seat=Seat diameter; ra=Roughness Ra; cyl=Cylindricity;
        run=Total radial run-out; shr=Axial run-out of shoulder; sh=Shoulder diameter;
        title=Spindle bearing data sheet|Author: T. Hale~Date: 2025-02-18;
        foot=Printed copies are not controlled""",
        export("blocks", "csv , cp1252", "Front support,Rear support", title="{p}", parted=True, skip="nlim"),
        export(
            "blocks",
            "xlsx",
            "Front,Rear",
            across=True,
            parted=False,
            title="{w}: {p}",
            skip="bal orient",
            words={"s.p": "shaft", "h.p": "housing"},
        ),
        export("crossed", "csv , utf-8", "Nose end,Tail end", skip="nc nu40"),
        units="cell",
        block="colon",
        devs="{up} {lo}",
        choice=1,
    ),
    office(
        "en",
        "class column",
        """names=Air bearing test fan AF-3|Belt conveyor head CH-9|Slurry agitator SA-22|Screw blower SB-55;
        bearings=6206-2Z|6207-2Z|6306-2Z/C3|6307-2Z; station=location; bearing=Bearing; shaft=Shaft seat;
        housing=Housing seat; part=component; full={p} {f}; s.p=Shaft seat; h.p=Housing seat; name=Product name;
        dwg=Drawing No.; rev=Drawing issue; nmax=Speed, max.; life=Rating life required; mass=Mass of rotor;
        smat=Shaft material; hmat=Housing material; duty=Duty type; des=Bearing designation; seal=Sealing;
        clr=Clearance; Fr=Radial load Fr; Fa=Axial load Fa; regr=Relubrication interval; seat=diameter;
        cls=tolerance class; ra=roughness Ra; cyl=cylindricity tolerance; run=total run-out tolerance;
        sh=shoulder diameter; fil=fillet radius, max.""",
        export(
            "nested",
            "json",
            "DE,NDE",
            case="camel",
            top="machine",
            holds="bearing_arrangement",
            label="location",
            skip="duty regr",
        ),
        export(
            "attributes",
            "json",
            "DE,NDE",
            keys="attribute,val,uom",
            holds="attrs",
            children="children",
            skip="smat hmat",
        ),
        export(
            "nested",
            "json",
            "DE,NDE",
            case="snake",
            keyed=True,
            holds="bearings",
            apart=True,
            units="head",
            skip="seal clr",
        ),
        units="column",
    ),
    office(
        "de",
        "max min columns",
        """names=Vakuumpumpe VK 16|Ventilator VE 355|Sägewelle SW 40|Walzenantrieb WA 12|Mischer MI 20;
        bearings=6304-2RSR|6305-2RSR|6306-2RSR|6307-2RSR; station=Seite; bearing=Lager; shaft=Welle;
        housing=Gehäuse; machine=Maschine; s.p=Welle; h.p=Gehäuse; full={f} {p}; name=Bezeichnung Maschine;
        dwg=Zng.-Nr.; nmax=Drehzahl max.; life=L10h soll; bal=Wuchtgüte; des=Wälzlager Kurzzeichen; Fr=Fr;
        Fa=Fa; lub=Schmierung; seat=Sitz; max=Größtmaß; min=Kleinstmaß; ra=Ra; run=Gesamtrundlauftoleranz;
        cyl=Zylindrizitätstoleranz; sh=Anlageschulter-Ø; fil=Kehlradius max.; x1=Kostenstelle:4711/4720;
        x2=Bemerkung:; title=Lagersitzliste||""",
        export("positions", "csv ; utf-16", "AS,BS", spacer=True, skip="bal"),
        export("machines", "xlsx merge", "AS,BS", rotors=2, levels=3, skip="lub fil cyl"),
        comma=True,
        brackets=" /{}",
        block="across",
        force="kN",
    ),
    office(
        "de",
        "plus minus",
        """names=Schnellfrequenzspindel SF 25|Läuferprüfstand LP 3|Drallgeber DG 10|Abgasgebläse AG 7;
        bearings=6002-2Z|6003-2Z|6004-2Z|6202-2Z; station=Lagerung; bearing=Kugellager; shaft=Wellensitz;
        housing=Gehäusesitz; part=Sitz; no=Pos.; text=Benennung; qty=Menge; name=Gerät; dwg=Zeichn.-Nr.;
        rev=Index; nmax=Höchstdrehzahl; tmin=tiefste Temperatur der Baugruppe;
        tmax=höchste Temperatur der Baugruppe; hmat=Werkstoff Gehäuse; mass=Rotorgewicht; des=Typ; d=d; D=D;
        B=B; seat=Sitz-Ø; ra=Rauheit Ra; cyl=Zylinderformtol.; run=Gesamtrundlauftol.; sh=Schulter-Ø;
        fil=Ausrundungsradius max.; x1=Lieferant:SP 1/SP 3; x2=Masse kg:0,0#/0,1#;
        title=Stückliste Rotorlagerung; foot=Erstellt 04/2025 Kn.""",
        export("parts", "csv ; cp1252", "motorseitig,pumpenseitig", units="head", skip="fil B"),
        export("seats", "csv ; utf-8", "vorn,hinten", units="row", skip="hmat tmin tmax"),
        comma=True,
    ),
    office(
        "en",
        "fit",
        """names=Pin mill PM-160|Vacuum lifter VL-6|Rotary lobe feeder RF-8|Ozone fan OF-31;
        bearings=6205 ZZ|6206 ZZ C3|6306 ZZ|6207 ZZ; station=Position; bearing=Bearing; shaft=Shaft;
        housing=Housing; machine=Machine data; s.p=Shaft; h.p=Housing; full={p} {f}; part=Part;
        param=Description; unit=Unit; no=Line; name=Machine; dwg=GA drawing; rev=GA rev.; nop=Running speed;
        nmax=Speed limit (max.); life=Required L10h; tamb=Ambient temp.; rel=Reliability; ring=Rotating ring;
        type=Bearing type; des=Bearing size; d=Bearing bore d; D=Bearing OD D; B=Bearing width B;
        Fr=Radial load Fr; clr=Internal clearance; cls=fit; s.cls=Shaft fit; h.cls=Housing fit; seat=fit;
        ra=seat finish Ra; cyl=seat cylindricity; run=seat total runout; shr=shoulder axial runout;
        x1=Comment:/new/unchanged; title=Fits table;
        sentence=Linear dimensions in mm, geometrical tolerances in mm, Ra in µm""",
        export("positions", "csv , utf-8", "Inboard,Outboard", units="title", skip="nop ring"),
        export(
            "down", "xlsx", "Inboard bearing,Outboard bearing", part="name", units="column", skip="rel", numbered=True
        ),
        export("positions", "xlsx merge", "IB,OB", rotors=2, columns=True, once=True, skip="rel ring tamb", bare=True),
        brackets=" - {}",
        group=" ",
        block="frame",
    ),
    office(
        "en",
        "class and deviation columns",
        """names=Micro turbine MT-1|Hub drive HD-12|Ring blower RB-300|Polisher PO-5;
        bearings=6202-2RS1|6203-2RS1|6302-2RS1|6303-2RS1; station=Bearing seat group; bearing=bearing;
        shaft=shaft; housing=housing; s.p=Shaft seat; h.p=Housing seat; full={p} {f}; param=Parameter name;
        value=Expression; unit=Type/Unit; text=Designer note; part=Feature group; where=Path;
        name=Machine designation; dwg=Drawing number; nmax=Maximum rotational speed; mass=Rotor mass;
        span=Bearing spacing; tsh=Shaft temperature; tho=Housing temperature; des=Bearing designation;
        d=Bearing bore; D=Bearing outside diameter; Fr=Radial load on bearing; Fa=Axial load on bearing;
        seat=nominal diameter; cls=tolerance class; up=upper deviation; lo=lower deviation;
        ra=surface roughness Ra; cyl=cylindricity; run=total run-out; sh=shoulder diameter;
        fil=fillet radius max.; di=Shaft bore (hollow); ho=Housing outside diameter;
        title=# parameter export~~2025-04-02 08:14""",
        export("model", "csv , utf-8", "brg1,brg2", pattern="{p}_{n}", skip="Fa mass"),
        export("model", "csv tab utf-8", "DE,NDE", pattern="{n}_{p}", upper=True, text=True, skip="di ho Fr Fa"),
        export(
            "long",
            "xlsx",
            "Bearing 1,Bearing 2",
            joined="{p} / {n} / {f}",
            columns="no param value unit",
            skip="tsh tho",
            words={"no": "ID", "param": "Path"},
        ),
        units="column",
    ),
    office(
        "de",
        "class",
        """names=Stellantrieb ST 4|Heißgasventilator HV 71|Schneckenpumpe SP 33|Spulkopf SK 6;
        bearings=6203-2RSR|6204-2RSR|6205-2RSR/C3|6304-2RSR; station=Lagerstelle; bearing=Wälzlager;
        shaft=Wellensitz; housing=Gehäusebohrung; s.p=Wellensitz; h.p=Gehäusebohrung; full={p} – {f};
        part=Bauteil; param=Attribut; value=Attributwert; unit=Maßeinheit; no=Zeile; machine=Allgemein;
        name=Produkt; dwg=Dokumentnummer Zeichnung; nmax=Drehzahl max; tamb=Umgebungstemperatur;
        orient=Einbaulage der Welle; pf=Federvorspannkraft; also=preload_method:spring;
        ask.temp=Temperatur; des=Lager-Kurzbezeichnung;
        clr=Lagerluftklasse; Fr=radiale Lagerkraft; regr=Nachschmierintervall; seat=Durchmesser mit Passung;
        ra=Oberfläche Ra; cyl=Zylindrizität; run=Gesamtrundlauf; sh=Schulterdurchmesser; shr=Schulter-Planlauf;
        x1=geändert am:02.04.25/17.01.25; title=PLM-Attributauszug|Objektstatus: freigegeben""",
        export("long", "csv ; utf-8", "A,B", columns="station part param value unit", skip="orient"),
        export("blocks", "xlsx", "A,B", title="Lagerstelle {p}", parted=True, headed=True, skip="regr clr"),
        comma=True,
        units="column",
        dia="Ø",
        join="",
    ),
)
