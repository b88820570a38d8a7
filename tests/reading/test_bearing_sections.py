"""Lines of a list that head the data of one bearing beside lines for its shaft and housing: ``Bearing data DE``."""

import pytest

from linter.reading import read_table

#: Heading of the list, words for the data of the bearing, shaft and housing, two positions, names of the values.
WORDS = [
    ("Description;Nominal;Unit", "Bearing data;Bearing", "Rotor shaft", "Housing", "DE;NDE",
     "Bearing type;Regreasing interval;Diameter;Roughness (Ra)"),
    ("Description;Nominal;Unit", "Bearing details", "Shaft", "Housing", "Bearing 1;Bearing 2",
     "Bearing type;Regreasing interval;Diameter;Roughness (Ra)"),
    ("Benennung;Nennwert;Einheit", "Daten Wälzlager;Wälzlager", "Welle", "Gehäuse", "Lagerstelle A;Lagerstelle B",
     "Lagertyp;Nachschmierfrist;Durchmesser;Rauheit Ra"),
    ("Désignation;Nominal;Unité", "Données du roulement;Roulement", "Arbre", "Logement", "palier avant;palier arrière",
     "Type de roulement;Intervalle de regraissage;Diamètre;Rugosité Ra"),
    ("Descripción;Nominal;Ud.", "Datos del rodamiento;Rodamiento", "Eje del rotor", "Carcasa", "Apoyo 1;Apoyo 2",
     "Tipo de rodamiento;Intervalo de relubricación;Diámetro;Rugosidad (Ra)"),
    ("Descrizione;Nominale;Unità", "Dati cuscinetto;Cuscinetto", "Albero", "Alloggiamento", "lato A;lato B",
     "Tipo di cuscinetto;Intervallo di rilubrificazione;Diametro;Rugosità Ra"),
    ("名称;数值;单位", "轴承数据;轴承", "轴", "轴承座", "驱动端;非驱动端", "轴承型号;再润滑间隔;直径;粗糙度 Ra"),
]  # fmt: skip
CASES = [(h, b, s, g, p, n) for h, bearings, s, g, p, n in WORDS for b in bearings.split(";")]


@pytest.mark.parametrize("case", CASES)
@pytest.mark.parametrize("form", ["{part} {place}", "{part} - {place}", "{part} ({place})", "{place} {part}"])
@pytest.mark.parametrize("headed", [True, False])
def test_values_of_each_bearing_are_its_own(tmp_path, case, form, headed):
    heading, bearing, shaft, housing, places, names = case
    kind, interval, diameter, roughness = names.split(";")
    lines = [heading] if headed else []
    for place, sort, hours, inner, outer in zip(
        places.split(";"), ("6305", "6304"), ("6000", "2000"), ("25", "20"), ("62", "52"), strict=True
    ):
        lines += [form.format(part=bearing, place=place) + ";;", f"{kind};{sort};", f"{interval};{hours};h"]
        lines += [form.format(part=shaft, place=place) + ";;", f"{diameter};{inner};mm", f"{roughness};0.4;µm"]
        lines += [form.format(part=housing, place=place) + ";;", f"{diameter};{outer};mm", f"{roughness};0.8;µm"]
    path = tmp_path / "t.csv"
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    stations = read_table(path).stations
    read = [
        stations.text("bearing_designation").tolist(),
        stations.number("regreasing_interval").tolist(),
        stations.size("shaft_seat_diameter").nominal.tolist(),
        stations.size("housing_seat_diameter").nominal.tolist(),
    ]
    assert read == [["6305", "6304"], [6000, 2000], [25, 20], [62, 52]]
