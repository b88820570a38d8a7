"""The layouts of JSON documents: arrays of attributes, objects in objects."""

import re
from typing import Any

from practice_fourteenth.layouts import full, number, shown, spelled
from practice_fourteenth.meaning import Entry, Machine, Piece, Style
from practice_fourteenth.sheet import Tree


def key_of(text: str) -> str:
    return text.replace("~", "~0").replace("/", "~1")


def attributes(style: Style, machines: list[Machine], how: str, names: str = "plain") -> Tree:
    """An array of attributes with value and unit for the machine and each position."""
    words = style.rng.choice(
        (("name", "value", "unit"), ("attribute", "val", "uom"), ("label", "displayValue", "unit"))
    )
    outer = style.rng.choice(("items", "components", "objects"))
    inner, label = style.rng.choice((("attributes", "id"), ("properties", "title"), ("characteristics", "name")))
    tree = Tree({"exported": "2026-03-11T08:14:00", outer: []})
    for k, m in enumerate(machines):
        for s, es in enumerate([m.general, *m.positions], start=-1):
            node: dict[str, Any] = {label: m.name if s < 0 else m.stations[s], "status": "released", inner: []}
            base = f"/{outer}/{len(tree.root[outer])}"
            if s >= 0:
                node["parent"] = m.name
            tree.root[outer].append(node)
            tree.words[f"{base}/{label}"] = node[label]
            for e in es:
                if e.code in ("machine", "st"):
                    tree.state(k, e, [f"{base}/{label}"], [])
                    continue
                own, heads = [], []
                for p in e.pieces:
                    at = f"{base}/{inner}/{len(node[inner])}"
                    name = spelled(full(style, e, p), names, "")
                    node[inner].append({words[0]: name, words[1]: leaf(style, p), words[2]: p.unit})
                    tree.words[f"{at}/{words[0]}"] = name
                    own.append(f"{at}/{words[1]}" if p.text else "")
                    heads.append(f"{at}/{words[0]}")
                tree.state(k, e, own, [*heads, f"{base}/{label}"])
    return tree


def leaf(style: Style, piece: Piece) -> str | float:
    text = shown(style, piece)
    return float(text.replace(",", ".")) if number(style, piece) and re.fullmatch(r"[+-]?\d+([.,]\d+)?", text) else text


def nested(style: Style, machines: list[Machine], how: str, names: str = "snake") -> Tree:
    """Objects in objects: machine, positions, bearing, shaft, housing; units in the keys."""
    spell = names if style.language not in ("ru", "zh", "ja") else "plain"
    root: dict[str, Any] = {}
    tree = Tree(root)

    def fill(node: dict[str, Any], base: str, k: int, e: Entry) -> None:
        own = []
        for p in e.pieces:
            name = spelled(full(style, e, p, short=bool(e.side)), spell, "")
            if p.unit and p.number:
                name += f"_{p.unit}" if spell == "snake" else f" [{p.unit}]"
            node[name] = leaf(style, p)
            own.append(f"{base}/{key_of(name)}" if p.text else "")
            tree.words[own[-1]] = str(node[name])
        tree.state(k, e, own, [])

    for k, m in enumerate(machines):
        top = root if len(machines) == 1 else root.setdefault("machines", [])
        base = "" if len(machines) == 1 else f"/machines/{len(top)}"
        if len(machines) > 1:
            top.append({})
            top = top[-1]
        for e in m.general:
            fill(top, base, k, e)
        plural = spelled(style.way("st"), spell, "") + ("s" if spell == "snake" and style.language == "en" else "")
        top[plural] = []
        for s, es in enumerate(m.positions):
            node: dict[str, Any] = {}
            top[plural].append(node)
            at = f"{base}/{key_of(plural)}/{s}"
            for e in es:
                if e.side:
                    side = spelled(style.sides[e.side], spell, "")
                    fill(node.setdefault(side, {}), f"{at}/{key_of(side)}", k, e)
                else:
                    fill(node, at, k, e)
    return tree
