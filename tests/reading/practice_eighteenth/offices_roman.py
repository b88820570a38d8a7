"""The offices that write French, Italian and Spanish."""

from practice_eighteenth.office import export, office

OFFICES = (
    office(
        "fr",
        "class with deviations",
        """names=Surpresseur SP 40|Broche d'affûtage BA 12|Agitateur AG 6|Extracteur EX 250;
        bearings=6205-2Z|6206-2Z|6305-2Z|6306-2Z/C3; station=Repère palier; bearing=Roulement;
        shaft=Portée arbre; housing=Alésage logement; s.p=portée arbre; h.p=alésage logement; full={f} {p};
        part=Élément; param=Caractéristique; value=Valeur; unit=Unité; name=Désignation machine; dwg=N° de plan;
        rev=Ind.; nmax=Vitesse maxi; life=Durée de vie L10h demandée; tamb=Température ambiante;
        mass=Masse du rotor; des=Réf. roulement; Fr=Charge radiale Fr; Fa=Charge axiale Fa; role=Fixe / libre;
        seat=Diamètre; ra=Rugosité Ra; cyl=Cylindricité; run=Battement total radial; sh=Diamètre d'épaulement;
        fil=Rayon de congé maxi; x1=Observations:/à valider; x2=Fournisseur:F012/F047;
        title=Nomenclature des portées de roulements~~Établi par : G. M.; foot=Tolérances générales ISO 2768-mK""",
        export("positions", "csv ; cp1252", "Côté commande,Côté opposé", units="head", skip="fil"),
        export("crossed", "xlsx merge", "Palier avant,Palier arrière", units="column", skip="role"),
        comma=True,
        brackets=" ({})",
        devs="{up} ; {lo}",
        block="across",
    ),
    office(
        "fr",
        "limits",
        """names=Pompe à palettes PP 18|Ventilateur de four VF 60|Tambour moteur TM 90|Centrifugeuse CF 2;
        bearings=6004-2RS1|6005-2RS1|6006-2RS1|6204-2RS1; station=Palier; bearing=Roulement; shaft=Arbre;
        housing=Logement; machine=Données générales; s.p=arbre; h.p=logement; full={f} ({p}); part=Pièce;
        param=Paramètre; value=Valeur; unit=Unité; no=N°; name=Machine; dwg=Plan n°;
        nmax=Vitesse de rotation maximale; nop=Vitesse de service; tmin=Température mini de l'ensemble;
        tmax=Température maxi de l'ensemble; smat=Matière arbre; hmat=Matière logement;
        bal=Qualité d'équilibrage; type=Type de roulement; des=Désignation du roulement; Fr=Charge radiale;
        nut=Couple de serrage de l'écrou; seat=Cotes limites du siège; ra=État de surface Ra; cyl=Cylindricité;
        sh=Diamètre de l'épaulement; shr=Battement axial de l'épaulement;
        sentence=Cotes en mm, rugosités Ra en µm; title=Fiche de montage des roulements|Rév. du document 3""",
        export("down", "csv ; utf-8-sig", "A,B,C", part="line", skip="tmin tmax type"),
        export("blocks", "xlsx", "Palier A,Palier B", parted=True, skip="type bal"),
        export(
            "machines", "csv ; utf-8", "A,B", rotors=2, levels=1, name="{n} - {p}", skip="type nut shr", units="head"
        ),
        comma=True,
        units="foot",
        limits="{max} / {min}",
        spelt={"N·m": "N.m"},
    ),
    office(
        "it",
        "class",
        """names=Soffiante SF 25|Elettromandrino EM 8|Pompa a lobi PL 40|Miscelatore MS 3;
        bearings=6204-2RS1|6205-2RS1|6206-2RS1|6304-2RS1; station=Supporto; bearing=Cuscinetto;
        shaft=Sede albero; housing=Sede alloggiamento; s.p=sede albero; h.p=sede alloggiamento; full={f} {p};
        part=Sede; param=Parametro; value=Valore; unit=U.M.; no=Rif.; qty=Q.tà; text=Descrizione; name=Macchina;
        dwg=Disegno n.; rev=Rev.; nmax=Velocità max; life=Durata richiesta L10h; tsh=Temperatura albero;
        tho=Temperatura alloggiamento; des=Sigla cuscinetto; Fr=Carico radiale Fr; Fa=Carico assiale Fa;
        lub=Lubrificazione; seat=Diametro e tolleranza; ra=Rugosità Ra; cyl=Cilindricità;
        run=Oscillazione totale radiale; sh=Diametro spallamento; fil=Raggio di raccordo max;
        x1=Note:/verificare; x2=Codice materiale:MP#12/MP#40;
        title=Distinta sedi cuscinetti~~Redatto: L.P.~Approvato: V.R.; foot=Quote senza tolleranza: ISO 2768-mK""",
        export("seats", "csv ; cp1252", "Lato comando,Lato opposto", skip="tsh tho lub"),
        export("parts", "xlsx", "anteriore,posteriore", located=False, skip="lub", words={"s.p": "sede"}),
        export(
            "attributes",
            "json",
            "Supporto A,Supporto B",
            keys="nome,valore,unita",
            holds="attributi",
            children="componenti",
            parted=True,
        ),
        comma=True,
        dia="Ø",
        block="pairs",
        brackets=" {}",
    ),
    office(
        "es",
        "deviation columns",
        """names=Soplante SO 30|Bomba de engranajes BE 10|Husillo de rectificado HR 15|Criba CR 4;
        bearings=6205-2Z|6206-2Z|6207-2Z|6306-2Z; station=Apoyo; bearing=Rodamiento; shaft=Asiento del eje;
        housing=Asiento del alojamiento; s.p=eje; h.p=alojamiento; full={f} {p}; s.seat=Diámetro asiento eje;
        h.seat=Diámetro asiento alojamiento; s.up=Desv. sup. eje; s.lo=Desv. inf. eje;
        h.up=Desv. sup. alojamiento; h.lo=Desv. inf. alojamiento; part=Pieza; param=Característica;
        value=Nominal; unit=Ud.; up=Desv. superior; lo=Desv. inferior; name=Máquina; dwg=Plano; rev=Edición;
        nmax=Velocidad máxima; life=Vida L10h exigida; mass=Masa del rotor; tamb=Temperatura ambiente;
        des=Referencia rodamiento; Fr=Carga radial; Fa=Carga axial; seat=Diámetro; ra=Rugosidad Ra;
        cyl=Cilindricidad; run=Alabeo total radial; sh=Diámetro del resalte; fil=Radio de acuerdo máx.;
        x1=Coste (€):12,#0/9,#5; title=Tabla de asientos de rodamientos|Revisado por J. C.""",
        export("positions", "csv ; utf-8", "Lado motor,Lado ventilador", skip="fil"),
        export("features", "xlsx", "Apoyo A,Apoyo B", units="column", skip="tamb", once=True),
        comma=True,
        dev="µm",
        brackets=" ({})",
    ),
    office(
        "fr",
        "class column",
        """names=Enrouleur EN 20|Pompe de process PR 45|Turbine d'air TA 3|Polisseuse PO 9;
        bearings=6203 ZZ|6204 ZZ|6205 ZZ C3|6303 ZZ; station=Position; bearing=Roulement; shaft=Arbre;
        housing=Boîtier; machine=Machine; s.p=Arbre; h.p=Boîtier; full={p} : {f}; part=Composant;
        param=Attribut; value=Valeur; unit=Unité; name=Produit; dwg=Numéro de plan; rev=Indice de plan;
        nmax=Vitesse max; life=Durée L10h requise; mass=Masse rotor; tamb=Temp. ambiante; des=Roulement;
        d=Alésage d; D=Diamètre extérieur D; B=Largeur B; Fr=Charge radiale; clr=Classe de jeu;
        seat=diamètre nominal; cls=classe de tolérance; ra=rugosité Ra; cyl=cylindricité; run=battement total;
        sh=diamètre d'épaulement""",
        export("records", "json", "avant,arrière", skip="B"),
        export(
            "long",
            "csv tab utf-16",
            "avant,arrière",
            columns="name station part param value unit",
            units="column",
            skip="clr",
            rotors=2,
        ),
        units="head",
        brackets=" [{}]",
    ),
    office(
        "es",
        "class column",
        """names=Extractor EX 315|Bomba multietapa BM 7|Pulidora PU 5|Molino MO 22;
        bearings=6204-2RS1|6205-2RS1|6304-2RS1|6305-2RS1; station=Rodamiento en; bearing=Rodamiento; shaft=Eje;
        housing=Alojamiento; machine=Datos de servicio; s.p=Eje; h.p=Alojamiento; full={p} - {f}; part=Parte;
        param=Concepto; value=Valor; unit=Unidad; no=N.º; name=Modelo; dwg=N.º de plano; nmax=Velocidad máx.;
        nop=Velocidad de servicio; tsh=Temperatura del eje; tho=Temperatura del alojamiento;
        orient=Posición del eje; des=Designación; d=Diámetro interior d; D=Diámetro exterior D;
        Fr=Carga radial Fr; temp=Temperatura del rodamiento; lub=Lubricación; seat=Ø nominal; cls=Ajuste ISO;
        ra=Rugosidad Ra; cyl=Cilindricidad; shr=Salto axial del resalte; sh=Ø resalte; x1=Proveedor:PR-#0/PR-#2;
        x2=Obs.:; title=Datos de rodamientos y ajustes~Fecha: 12/03/2025; foot=Cotas según ISO 286-1""",
        export(
            "down",
            "xlsx merge",
            "Acoplamiento,Libre",
            part="column",
            within=True,
            units="column",
            group="",
            skip="orient temp",
        ),
        export("positions", "csv ; cp1252", "LA,LOA", rotors=2, columns=True, two=True, skip="tsh tho lub d D"),
        export("machines", "csv ; utf-8", "lado A,lado B", rotors=2, levels=2, skip="tsh tho lub temp shr d D"),
        comma=True,
        brackets=" ({})",
        group=".",
    ),
    office(
        "it",
        "lower first",
        """names=Ventilatore VN 400|Pompa a vite PV 12|Rullo tenditore RT 70|Levigatrice LV 2;
        bearings=6004-2Z|6005-2Z|6204-2Z|6205-2Z; station=Posizione cuscinetto; bearing=Cuscinetto;
        shaft=Albero; housing=Alloggiamento; machine=Dati macchina; s.p=albero; h.p=alloggiamento; full={f} {p};
        s.seat=Diametro sede albero; h.seat=Diametro sede alloggiamento; part=Particolare; param=Caratteristica;
        value=Valore; unit=Unità; no=N.; text=Commento; name=Modello; dwg=Numero disegno;
        rev=Indice di revisione; nmax=Velocità massima; mass=Massa del rotore; span=Interasse cuscinetti;
        bal=Grado di equilibratura; des=Cuscinetto tipo; Fr=Carico radiale; nut=Coppia di serraggio ghiera;
        seat=Diametro nominale; lo=Scost. inf.; up=Scost. sup.; ra=Rugosità Ra; cyl=Cilindricità;
        run=Oscillazione totale; sh=Ø spallamento; gd=Ø gola anello elastico; gw=Larghezza gola anello elastico;
        x1=Verificato da:M.C./S.T.; title=Scheda parametri cuscinetti""",
        export(
            "model",
            "csv , utf-8",
            "A,B",
            pattern="{n}_{p}",
            text=True,
            units="column",
            comma=False,
            skip="nut gd gw",
            words={"s.p": "albero", "param": "Nome parametro"},
        ),
        export(
            "blocks",
            "csv ; cp1252",
            "Cuscinetto lato motore,Cuscinetto lato ventola",
            parted=True,
            units="column",
            skip="bal gw gd",
        ),
        export("positions", "xlsx merge", "lato motore,lato ventola", two=True, units="row", skip="gd gw"),
        comma=True,
        block="across",
    ),
)
