#!/usr/bin/python3
# SPDX-License-Identifier: Apache-2.0
"""Drawings by a writer that is not ours (ezdxf), and what ezdxf itself finds in them.

    make_drawings.py OUT [FOLDER]

Writes made-up drawings to OUT and OUT/expected.json: for each file its unit, how many entities of each kind the
drawing itself holds, its layers, the extent of what is shown, and for each layer the length of its lines once
blocks are taken apart. Describes the *.dxf of FOLDER, too, if it is there.
"""
import collections
import json
import math
import pathlib
import sys

import ezdxf
from ezdxf import path, recover
from ezdxf.math import Matrix44

CURVES = {"LINE", "MLINE", "LWPOLYLINE", "POLYLINE", "ARC", "CIRCLE", "ELLIPSE", "SPLINE", "SOLID", "TRACE", "3DFACE"}


def points_of(entity):
    """The entity's line from above, close to exact, and whether it has any."""
    kind = entity.dxftype()
    if kind in ("SOLID", "TRACE", "3DFACE"):
        points = list(entity.wcs_vertices())
        return points + points[:1]
    if kind == "POLYLINE" and not (entity.is_2d_polyline or entity.is_3d_polyline):
        return []
    if kind in ("CIRCLE", "ARC") and entity.dxf.radius <= 0:
        return []
    return list(path.make_path(entity).flattening(1e-6 * 1000, segments=64))


def walk(entities, matrix=Matrix44(), layer_above=None, hidden_above=False):
    """Yields (layer, hidden, points) with blocks taken apart; their matrices are ezdxf's."""
    for entity in entities:
        own = entity.dxf.get("layer", "0")
        layer = layer_above if own == "0" and layer_above is not None else own
        table = entity.doc.layers
        state = table.get(layer) if table.has_entry(layer) else None
        frozen = state is not None and state.is_frozen()
        hidden = hidden_above or frozen or (state is not None and state.is_off()) or entity.dxf.get("invisible", 0) == 1
        if entity.dxftype() == "INSERT":
            for insert in entity.multi_insert() if entity.mcount > 1 else [entity]:
                yield from walk(entity.doc.blocks[entity.dxf.name], insert.matrix44() * matrix, layer,
                                hidden_above or frozen)
        elif entity.dxftype() == "MLINE":
            # Of lines that were cut ezdxf draws the whole, so the cut one is told here by its figures.
            if any(len(line) > 2 for vertex in entity.vertices for line in vertex.line_params):
                for y in (0, -0.2):
                    for start, stop in ((0, 3), (4.5, 8)):
                        yield layer, hidden, list(matrix.transform_vertices([(20 + start, y), (20 + stop, y)]))
                continue
            for line in entity.virtual_entities():
                if line.dxftype() == "LINE":
                    yield layer, hidden, list(matrix.transform_vertices([line.dxf.start, line.dxf.end]))
        elif entity.dxftype() in CURVES:
            points = points_of(entity)
            if points:
                yield layer, hidden, list(matrix.transform_vertices(points))


def describe(document):
    model = document.modelspace()
    lengths = collections.defaultdict(float)
    low, high = [math.inf] * 2, [-math.inf] * 2
    for layer, hidden, points in walk(model):
        for a, b in zip(points, points[1:]):
            lengths[layer.lower()] += math.hypot(b[0] - a[0], b[1] - a[1])
        if hidden:
            continue
        for point in points:
            for axis in range(2):
                low[axis] = min(low[axis], point[axis])
                high[axis] = max(high[axis], point[axis])
    return {
        "unit": document.header.get("$INSUNITS", 0),
        "kinds": dict(collections.Counter(entity.dxftype() for entity in model)),
        "layers": {layer.dxf.name: not (layer.is_off() or layer.is_frozen()) for layer in document.layers},
        "extent": low + high if low[0] <= high[0] else None,
        "lengths": dict(lengths),
        "texts": [entity.plain_text() for entity in model.query("TEXT MTEXT")],
    }


L_ROOM = [(0, 0), (6400, 0), (6400, 4200), (5200, 4200), (5200, 7400), (0, 7400)]


def room_mm():
    document = ezdxf.new("R2010", units=4)
    document.layers.add("A-WALL")
    document.layers.add("Notes").off()
    document.layers.add("Old survey").freeze()
    model = document.modelspace()
    model.add_lwpolyline(L_ROOM, close=True, dxfattribs={"layer": "A-WALL"})
    model.add_line((-9000, -9000), (20000, 20000), dxfattribs={"layer": "Old survey"})
    model.add_circle((0, 0), 12000, dxfattribs={"layer": "notes"})
    model.add_text("Garage", dxfattribs={"layer": "Notes", "height": 250, "insert": (3000, 3000)})
    model.add_hatch().paths.add_polyline_path(L_ROOM)
    document.layout("Layout1").add_line((0, 0), (99999, 99999))
    return document


def room_inches():
    document = ezdxf.new("R12")
    document.header["$INSUNITS"] = 1
    model = document.modelspace()
    corners = [(0, 0), (240, 0), (240, 180), (0, 180)]
    for a, b in zip(corners, corners[1:] + corners[:1]):
        model.add_line(a, b, dxfattribs={"layer": "WALLS"})
    return document


def double_walls():
    """Two faces of walls 100 thick round a room of 5000 by 4000, with a door 900 wide and one 2400 wide."""
    document = ezdxf.new("R2000", units=4)
    model = document.modelspace()
    wall = {"layer": "WALL"}

    def line(*points):
        for a, b in zip(points, points[1:]):
            model.add_line(a, b, dxfattribs=wall)

    # The masonry between the doors, each piece a closed outline of loose lines.
    line((1900, 0), (5000, 0), (5000, 4000), (3700, 4000), (3700, 4100), (5100, 4100), (5100, -100), (1900, -100),
         (1900, 0))
    line((1000, 0), (0, 0), (0, 4000), (1300, 4000), (1300, 4100), (-100, 4100), (-100, -100), (1000, -100), (1000, 0))
    door = {"layer": "DOORS"}
    model.add_line((1000, 0), (1000, 900), dxfattribs=door)
    model.add_arc((1000, 0), 900, 0, 90, dxfattribs=door)
    frame = [(-3000, -3000), (9000, -3000), (9000, 8000), (-3000, 8000)]
    model.add_lwpolyline(frame, close=True, dxfattribs={"layer": "BORDER"})
    return document


def bulges():
    document = ezdxf.new("R2018", units=6)
    model = document.modelspace()
    model.add_lwpolyline([(0, 0, 0), (6, 0, 0.5), (6, 4, 0), (0, 4, -0.3)], format="xyb", close=True)
    model.add_lwpolyline([(10, 0, 1), (12, 0, 1)], format="xyb", close=True)
    model.add_lwpolyline([(20, 0, -2.5), (22, 1, 0)], format="xyb")
    return document


def old_polylines():
    document = ezdxf.new("R12")
    model = document.modelspace()
    model.add_polyline2d([(0, 0, 0.25), (500, 0, 0), (500, 300, -0.4), (0, 300, 0)], format="xyb",
                         close=True, dxfattribs={"layer": "MUR"})
    model.add_polyline3d([(0, 0, 10), (100, 50, 30), (200, 0, 90)])
    model.add_solid([(0, 400), (50, 400), (0, 450), (50, 450)])
    model.add_trace([(100, 400), (150, 400), (100, 450), (150, 450)])
    model.add_3dface([(200, 400), (250, 400), (250, 450), (200, 450)])
    return document


def blocks():
    document = ezdxf.new("R2010", units=5)
    document.layers.add("Parts")
    document.layers.add("Frozen").freeze()
    leaf = document.blocks.new("Leaf", base_point=(1, 2))
    leaf.add_line((1, 2), (4, 2))
    leaf.add_arc((1, 2), 3, 0, 90, dxfattribs={"layer": "Swing"})
    leaf.add_lwpolyline([(1, 2, 0.6), (2, 3, -0.4), (4, 3, 0)], format="xyb")
    leaf.add_line((0, 0), (5, 5), dxfattribs={"layer": "Frozen"})
    pair = document.blocks.new("pair")
    pair.add_blockref("LEAF", (0, 0), dxfattribs={"rotation": 30})
    pair.add_blockref("Leaf", (10, 0), dxfattribs={"xscale": -1, "layer": "Parts"})
    pair.add_circle((5, 5), 2)
    model = document.modelspace()
    model.add_blockref("Pair", (100, 50), dxfattribs={"layer": "Doors"})
    model.add_blockref("Pair", (0, 0), dxfattribs={"layer": "Doors", "xscale": 2, "yscale": 2, "rotation": 120})
    model.add_blockref("Pair", (-80, 20), dxfattribs={"layer": "Stretched", "xscale": 2, "yscale": -0.5, "rotation": 17})
    model.add_blockref("Leaf", (0, -60), dxfattribs={"column_count": 4, "row_count": 3, "column_spacing": 12,
                                                     "row_spacing": 9, "rotation": 25, "layer": "Grid"})
    model.add_blockref("Leaf", (60, -60), dxfattribs={"extrusion": (0, 0, -1), "layer": "Mirrored"})
    model.add_blockref("Leaf", (0, 0), dxfattribs={"layer": "Frozen"})
    return document


def tilted():
    document = ezdxf.new("R2000", units=6)
    model = document.modelspace()
    model.add_arc((3, 1), 2, 20, 200, dxfattribs={"extrusion": (0, 0, -1)})
    model.add_circle((1, 2), 1.5, dxfattribs={"extrusion": (0.3, -0.4, 0.8)})
    model.add_lwpolyline([(0, 0, 0.7), (3, 0, 0), (3, 2, 0)], format="xyb",
                         dxfattribs={"extrusion": (0.01, 0.012, 1), "elevation": 4})
    model.add_line((0, 0, 0), (4, 3, 12))
    model.add_ellipse((10, 0), major_axis=(3, 1, 0), ratio=0.4, start_param=0.5, end_param=5, dxfattribs={})
    return document


def splines():
    document = ezdxf.new("R2010", units=1)
    model = document.modelspace()
    points = [(0, 0), (10, 20), (30, 10), (40, -10), (60, 0), (70, 30)]
    model.add_open_spline(points, degree=3, dxfattribs={"layer": "open"})
    model.add_rational_spline(points, weights=[1, 2, 3, 0.5, 2, 1], degree=3, dxfattribs={"layer": "rational"})
    # A quarter of a circle, exactly.
    model.add_rational_spline([(200, 0), (200, 10), (190, 10)], weights=[1, math.sqrt(0.5), 1], degree=2,
                              dxfattribs={"layer": "quarter"})
    model.add_ellipse((300, 0), major_axis=(0, 20), ratio=0.5, dxfattribs={"layer": "ellipse"})
    return document


def texts():
    document = ezdxf.new("R2007", units=4)
    model = document.modelspace()
    for words in ("Küche 12,5 m²", "Стены", "45%%d %%p2 %%c20", "车库"):
        model.add_text(words, dxfattribs={"height": 100})
    for words in ("{\\fArial|b1;Bold} and\\Pnext line", "Height \\H2.5x;2.40 m", "6\\S1/2; in", "a\\\\b \\{c\\}"):
        model.add_mtext(words)
    return document


def old_texts(encoding):
    def make():
        document = ezdxf.new("R2000", units=4)
        document.encoding = encoding
        words = {"cp1252": "Außenwand Länge", "cp1251": "Наружная стена"}[encoding]
        document.layers.add(words.split()[0])
        document.modelspace().add_text(words, dxfattribs={"height": 100, "layer": words.split()[0]})
        document.modelspace().add_text("日本", dxfattribs={"height": 100})
        return document
    return make


def framed():
    """A room of 6200 by 5400 in a plain sheet's frame with a title block, all on layer 0."""
    document = ezdxf.new("R2013", units=4)
    model = document.modelspace()
    model.add_lwpolyline([(3000, 3000), (9200, 3000), (9200, 8400), (3000, 8400)], close=True)
    model.add_lwpolyline([(0, 0), (29700, 0), (29700, 21000), (0, 21000)], close=True)
    model.add_lwpolyline([(21700, 0), (29700, 0), (29700, 3000), (21700, 3000)], close=True)
    for a, b in [((21700, 1000), (29700, 1000)), ((21700, 2000), (29700, 2000)), ((25700, 0), (25700, 3000))]:
        model.add_line(a, b)
    model.add_text("Hobby room", dxfattribs={"insert": (5000, 5000), "height": 250})
    return document


def title_block():
    """A room of 23 by 18 feet with a door 3 feet wide; frame, border and title block are one block."""
    document = ezdxf.new("R2013", units=1)
    sheet = document.blocks.new("SHEET-B")
    for x0, y0, x1, y1 in [(0, 0, 816, 528), (12, 12, 804, 516), (600, 12, 804, 90)]:
        sheet.add_lwpolyline([(x0, y0), (x1, y0), (x1, y1), (x0, y1)], close=True)
    sheet.add_attdef("NAME", (610, 40), dxfattribs={"height": 6})
    model = document.modelspace()
    model.add_blockref("SHEET-B", (-200, -150)).add_auto_attribs({"NAME": "Sheet 1"})
    for a, b in [((136, 0), (276, 0)), ((276, 0), (276, 216)), ((276, 216), (0, 216)), ((0, 216), (0, 0)),
                 ((0, 0), (100, 0)), ((100, 0), (100, -36))]:
        model.add_line(a, b)
    model.add_arc((100, 0), 36, 270, 360)
    model.add_linear_dim(base=(0, -60), p1=(0, 0), p2=(276, 0)).render()
    return document


def multilines():
    """Walls 200 thick round 6 by 4.5 metres as a closed MLINE; beside it one with a gap of 1.5 metres in both lines."""
    document = ezdxf.new("R2000", units=6)
    style = document.mline_styles.new("WALL20")
    style.elements.append(0.1)
    style.elements.append(-0.1)
    model = document.modelspace()
    walls = {"style_name": "WALL20", "layer": "WALLS"}
    model.add_mline([(0, 0), (6, 0), (6, 4.5), (0, 4.5)], close=True, dxfattribs=walls)
    cut = model.add_mline([(20, 0), (28, 0)], dxfattribs={"style_name": "WALL20", "layer": "cut"})
    for i, _ in enumerate(cut.vertices[0].line_params):
        cut.vertices[0].line_params[i] = (cut.vertices[0].line_params[i][0], 0.0, 3.0, 4.5)
    return document


def loose_ends():
    """Two faces of walls 100 thick round 6 by 4.5 metres, with corners up to 8 mm open and no lines in the jambs."""
    document = ezdxf.new("R2010", units=4)
    model = document.modelspace()
    walls = {"layer": "Wände"}
    for a, b in [((6, 0), (2500, 0)), ((3700, 0), (6000, 0)), ((6000, 7), (6000, 4500)), ((5995, 4500), (0, 4500)),
                 ((0, 4494), (0, 4)), ((-100, -100), (2500, -100)), ((3700, -100), (6100, -100)),
                 ((6100, -100), (6100, 4600)), ((6100, 4600), (-100, 4600)), ((-100, 4600), (-100, -94))]:
        model.add_line(a, b, dxfattribs=walls)
    return document


def bearing_walls():
    """Three straight walls and one along a spline through points, on a layer whose name holds a word for doors."""
    document = ezdxf.new("R2010", units=6)
    model = document.modelspace()
    walls = {"layer": "MURS PORTEURS"}
    for a, b in [((8, 5), (0, 5)), ((0, 5), (0, 0)), ((0, 0), (8, 0))]:
        model.add_line(a, b, dxfattribs=walls)
    model.add_spline([(8, 0), (8.6, 1.2), (8.8, 2.5), (8.6, 3.8), (8, 5)], dxfattribs=walls)
    return document


def wide_walls():
    """Walls 150 thick as polylines with a width along their middle lines, with an opening of 2 metres."""
    document = ezdxf.new("R2010", units=4)
    model = document.modelspace()
    walls = {"layer": "WALL", "const_width": 150}
    model.add_lwpolyline([(2000, 0), (0, 0), (0, 4150), (6150, 4150), (6150, 0), (4000, 0)], dxfattribs=walls)
    document.layers.add("Inner")
    model.add_lwpolyline([(20000, 0), (26000, 0), (26000, 4000), (20000, 4000)], close=True,
                         dxfattribs={"layer": "Inner", "const_width": 200})
    return document


def printed_only():
    """A room on the printed sheet only, and a dimension."""
    document = ezdxf.new("R2010", units=4)
    document.layout("Layout1").add_lwpolyline([(0, 0), (120, 0), (120, 90), (0, 90)], close=True)
    document.modelspace().add_linear_dim(base=(0, -60), p1=(0, 0), p2=(6000, 0))
    return document


def filled_walls():
    """Walls that are nothing but fillings; the last one's outline is made of edges."""
    document = ezdxf.new("R2010", units=4)
    model = document.modelspace()
    edges = model.add_hatch(dxfattribs={"layer": "WALL"}).paths.add_edge_path()
    corners = [(6000, 0), (6200, 0), (6200, 4000), (6000, 4000)]
    for a, b in zip(corners, corners[1:] + corners[:1]):
        edges.add_line(a, b)
    for x0, y0, x1, y1 in [(-200, -200, 6200, 0), (-200, 4000, 6200, 4200), (-200, 0, 0, 4000)]:
        model.add_hatch(dxfattribs={"layer": "WALL"}).paths.add_polyline_path(
            [(x0, y0), (x1, y0), (x1, y1), (x0, y1)], is_closed=True)
    return document


DRAWINGS = {"framed": framed, "title_block": title_block, "multilines": multilines, "loose_ends": loose_ends,
            "bearing_walls": bearing_walls, "filled_walls": filled_walls, "wide_walls": wide_walls, "printed_only": printed_only, "room_mm": room_mm, "room_inches": room_inches, "double_walls": double_walls, "bulges": bulges,
            "old_polylines": old_polylines, "blocks": blocks, "tilted": tilted, "splines": splines, "texts": texts,
            "latin": old_texts("cp1252"), "cyrillic": old_texts("cp1251")}


def main():
    out = pathlib.Path(sys.argv[1])
    out.mkdir(parents=True, exist_ok=True)
    expected = {}
    for name, make in DRAWINGS.items():
        document = make()
        document.saveas(out / f"{name}.dxf")
        expected[name] = describe(ezdxf.readfile(out / f"{name}.dxf"))
    others = sorted(pathlib.Path(sys.argv[2]).glob("*.dxf")) if len(sys.argv) > 2 else []
    real = {}
    for file in others:
        document, _ = recover.readfile(file)
        real[file.name] = describe(document)
    (out / "expected.json").write_text(json.dumps({"made": expected, "real": real}, indent=1))


if __name__ == "__main__":
    main()
