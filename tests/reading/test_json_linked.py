"""JSON of stores of data: machines, positions and parts beside each other in one list, linked by keys or paths."""

import json
from math import isnan

import pytest

from linter.reading import read_table


def read(tmp_path, document):
    path = tmp_path / "t.json"
    path.write_text(json.dumps(document), encoding="utf-8")
    return read_table(path)


def records(**values):
    return [{"name": name.replace("_", " "), "value": value, "unit": "mm"} for name, value in values.items()]


def of_machine(span=62):
    return [{"name": "Bearing span", "value": span, "unit": "mm"}]


def of_position(d=20):
    return records(Shaft_seat_diameter=f"{d} k5", Housing_bore="42 J6", Shaft_shoulder_diameter=d + 5)


@pytest.mark.parametrize("name", ["id", "name", "code", "Bezeichnung", "名称", "title"])
@pytest.mark.parametrize("around", ["parent", "belongsTo", "owner", "übergeordnet", "上级", "machine"])
@pytest.mark.parametrize("inside", ["attributes", "Merkmale", "values", "属性"])
def test_what_an_object_is_in_is_told_by_its_name(tmp_path, name, around, inside):
    document = {"objects": []}
    for machine, d in (("Pump P-3", 20), ("Fan L-7", 25)):
        document["objects"].append({name: machine, "status": "released", inside: of_machine(d + 40)})
        document["objects"] += [{name: end, around: machine, inside: of_position(d)} for end in ("LA", "LOA")]
    stations = read(tmp_path, document).stations
    assert [*zip(stations.text("machine"), stations.text("station"), strict=True)] == [
        ("Pump P-3", "LA"), ("Pump P-3", "LOA"), ("Fan L-7", "LA"), ("Fan L-7", "LOA"),
    ]  # fmt: skip
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 20, 25, 25]
    assert stations.size("bearing_span").nominal.tolist() == [60, 60, 65, 65]


@pytest.mark.parametrize(
    "number", [lambda k: k, lambda k: f"4f0c2a9e-7d1b-4c55-9a70-11d2aa03b1c{k}", "OBJ-00{}".format]
)
@pytest.mark.parametrize("link", ["parentId", "parent", "relationships", "children"])
def test_numbers_of_a_store_link_objects_and_name_none(tmp_path, number, link):
    tree = [("Pump P-3", 0, of_machine()), ("DE", 1, []), ("Shaft seat", 2, records(Diameter="20 k5")),
            ("Housing bore", 2, records(Diameter="42 J6")), ("NDE", 1, []),
            ("Shaft seat", 5, records(Diameter="25 k5")),
            ("Housing bore", 5, records(Diameter="47 J6"))]  # fmt: skip
    items = []
    for k, (name, outer, values) in enumerate(tree, 1):
        item = {"id": number(k), "label": name, "properties": values}
        inner = [number(n) for n, (_, around, _) in enumerate(tree, 1) if around == k]
        if link == "children":
            item |= {link: inner} if inner else {}
        elif link == "relationships":
            item |= {link: {"parent": {"data": {"type": "node", "id": number(outer)}}}} if outer else {}
        else:
            item[link] = number(outer) if outer else None
        items.append(item)
    stations = read(tmp_path, {"data": items}).stations
    assert (stations.machines, stations.text("station").tolist()) == (("Pump P-3",), ["DE", "NDE"])
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 25]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [42, 47]


@pytest.mark.parametrize("sign", ["/", " > ", "|", "\\"])
def test_names_that_are_paths(tmp_path, sign):
    items = [{"id": "PUMP-12", "attributes": of_machine()}]
    for end in ("DE", "NDE"):
        items.append({"id": sign.join(("PUMP-12", end, "shaft")), "attributes": records(Diameter="20 k5")})
        items.append({"id": sign.join(("PUMP-12", end, "housing")), "attributes": records(Diameter="42 J6")})
    stations = read(tmp_path, {"items": items}).stations
    assert (stations.machines, stations.text("station").tolist()) == (("PUMP-12",), ["DE", "NDE"])
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 20]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [42, 42]


@pytest.mark.parametrize("name", ["{} shaft seat", "Shaft seat {}", "shaft seat, {}"])
def test_a_name_may_say_position_and_part(tmp_path, name):
    items = [{"name": "Fan L-7", "data": of_machine()}]
    for end, d in (("DE", 20), ("NDE", 25)):
        items.append({"name": name.format(end), "parent": "Fan L-7", "data": records(Diameter=f"{d} k5")})
        items.append({"name": f"{end} housing", "parent": "Fan L-7", "data": records(Diameter="42 J6")})
    stations = read(tmp_path, items).stations
    assert (stations.machines, stations.text("station").tolist()) == (("Fan L-7",), ["DE", "NDE"])
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 25]
    assert stations.size("housing_seat_diameter").nominal.tolist() == [42, 42]


def test_what_no_word_knows_is_a_position_where_its_siblings_state_the_same(tmp_path):
    items = [{"name": "Pump P-3", "params": of_machine()}]
    items += [{"name": end, "parent": "Pump P-3", "params": of_position()} for end in ("LA", "LB")]
    assert read(tmp_path, items).stations.text("station").tolist() == ["LA", "LB"]


def test_another_part_of_the_machine_is_told_and_not_read(tmp_path):
    items = [{"name": "Pump P-3", "params": of_machine()}]
    items += [{"name": end, "parent": "Pump P-3", "params": of_position()} for end in ("DE", "NDE")]
    items.append({"name": "Impeller", "parent": "Pump P-3", "params": records(Bore_diameter=12)})
    reading = read(tmp_path, items)
    assert "bore_diameter" not in reading.stations.numbers
    assert [unused.place.pointer for unused in reading.unused if unused.name == "Impeller"] == ["/3"]


def test_values_keep_their_places_in_the_file(tmp_path):
    items = [{"id": "Pump P-3", "values": of_machine()}]
    items += [
        {"id": end, "parent": "Pump P-3", "values": records(Shaft_seat_diameter="broken")} for end in ("DE", "NDE")
    ]
    places = [p.place.pointer for p in read(tmp_path, {"objects": items}).stations.problems]
    assert "/objects/1/values/0/value" in places


@pytest.mark.parametrize("name", ["title", "name", "label"])
def test_positions_behind_their_machine_in_a_list_are_its_own(tmp_path, name):
    items = []
    for machine, d in (("Pump P-3", 20), ("Fan L-7", 25)):
        items.append({name: machine, "values": of_machine(d + 40)})
        items += [{name: end, "values": of_position(d)} for end in ("upper bearing", "lower bearing")]
    items.append({name: "Sealing", "values": records(Diameter=30)})
    stations = read(tmp_path, {"sections": items}).stations
    assert (stations.machines, len(stations.machine_row)) == (("Pump P-3", "Fan L-7"), 4)
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 20, 25, 25]
    assert stations.size("bearing_span").nominal.tolist() == [60, 60, 65, 65]


@pytest.mark.parametrize("place", ["position", "station", "Lagerstelle"])
def test_a_standard_part_names_the_position_it_is_at(tmp_path, place):
    items = [{"id": 1, "name": "Pump P-3", "attributes": {"max_speed_rpm": 7200}}]
    items.append({"id": 2, "parent": 1, "name": "Shaft", "attributes": {"material": "42CrMo4"}})
    items += [
        {"id": k, "parent": 2, "name": f"Bearing seat {end}", "attributes": {"diameter": d, "tolerance_class": "k5"}}
        for k, end, d in ((3, "A", 20), (4, "B", 17))
    ]
    items += [
        {"id": k, "parent": 1, "name": "Ball bearing", "attributes": {"designation": number, place: end}}
        for k, end, number in ((5, "A", "6004-2RS"), (6, "B", "6003-2RS"))
    ]
    stations = read(tmp_path, items).stations
    assert stations.text("station").tolist() == ["A", "B"]
    assert stations.text("bearing_designation").tolist() == ["6004-2RS", "6003-2RS"]
    assert stations.size("shaft_seat_diameter").nominal.tolist() == [20, 17]


# A machine with two positions, each with the same parts: number, what it is, number of what it is in, values.
_TREE = [
    (1, "Fan L-7", None, of_machine()), (2, "DE", 1, []), (3, "Shaft seat", 2, records(Diameter="20 k5")),
    (4, "Housing bore", 2, records(Diameter="42 J6")), (5, "NDE", 1, []),
    (6, "Shaft seat", 5, records(Diameter="25 k5")), (7, "Housing bore", 5, records(Diameter="47 J6")),
]  # fmt: skip


def tree(own="id", around="parent", order=range(7), number=lambda k: k):
    """Objects of the tree in an order, by keys for their numbers and for what they are in; no key where it is empty."""
    objects = []
    for k, label, outer, values in (_TREE[place] for place in order):
        link = {around: None if outer is None else number(outer)} if around else {}
        objects.append({own: number(k), "label": label, "attrs": values} | link)
    return {"objects": objects}


def seats(reading):
    """Positions of a reading, and the diameters of shaft seats and bores read for them; None where none is."""
    sizes = [reading.stations.size(f"{part}_seat_diameter").nominal.tolist() for part in ("shaft", "housing")]
    nominals = [[None if isnan(nominal) else nominal for nominal in size] for size in sizes]
    return [*zip(reading.stations.text("station").tolist(), *nominals, strict=True)]


_READ = [("DE", 20, 42), ("NDE", 25, 47)]


@pytest.mark.parametrize("order", [range(7), (0, 1, 4, 2, 3, 5, 6), (6, 5, 4, 3, 2, 1, 0)])
@pytest.mark.parametrize("number", [lambda k: k, "N{}".format])
@pytest.mark.parametrize(
    ("own", "around"),
    [("oid", "parentOid"), ("uid", "belongsToUid"), ("pk", "superPk"), ("编号", "上级编号"), ("uid", "vorgaengerUid"),
     ("nodeId", "rootNodeId"), ("nr", "stueck_nr")],
)  # fmt: skip
def test_any_key_by_which_objects_refer_to_others_as_a_tree_links_them(tmp_path, own, around, number, order):
    assert sorted(seats(read(tmp_path, tree(own, around, order, number)))) == _READ


def test_parts_behind_their_position_are_its_own_where_the_same_stand_behind_each(tmp_path):
    assert seats(read(tmp_path, tree(around=""))) == _READ


@pytest.mark.parametrize("order", [(0, 1, 4, 2, 3, 5, 6), (0, 1, 2, 4, 5, 3, 6), (0, 1, 2, 3, 4), (0, 1, 2, 4, 5, 6)])
def test_parts_that_do_not_say_their_position_are_told_and_no_position_has_them(tmp_path, order):
    reading = read(tmp_path, tree(around="", order=order))
    told = {unused.place.pointer for unused in reading.unused}
    parts = {f"/objects/{k}" for k, place in enumerate(order) if place in (2, 3, 5, 6)}
    assert (parts <= told) and {seat[1:] for seat in seats(reading)} <= {(None, None)}


@pytest.mark.parametrize("beside", ["levelNo", "mateId", "nextId"])
def test_numbers_that_are_no_tree_link_nothing(tmp_path, beside):
    document = tree(around="")
    document["objects"] = [document["objects"][place] for place in (0, 1, 4, 2, 3, 5, 6)]
    said = {"levelNo": [0, 1, 1, 2, 2, 2, 2], "mateId": [None, 5, 2, 4, 3, 7, 6], "nextId": [2, 5, 3, 4, 6, 7, None]}
    for item, number in zip(document["objects"], said[beside], strict=True):
        item[beside] = number
    assert {seat[1:] for seat in seats(read(tmp_path, document))} <= {(None, None)}


def test_a_part_of_an_object_that_is_not_there_is_told(tmp_path):
    document = tree()
    document["objects"][5]["parent"] = 77
    reading = read(tmp_path, document)
    assert "/objects/5" in {unused.place.pointer for unused in reading.unused}
    assert seats(reading) == [("DE", 20, 42), ("NDE", None, 47)]
