"""Reads cut files with ezdxf and says what stands in them, one JSON object a file."""
import json
import math
import sys

import ezdxf
from ezdxf import path
from shapely.geometry import Polygon


def segment_area(a, b, bulge):
    """Area between chord and arc, to the right of the chord counted positive for a left turn."""
    angle = 4 * math.atan(bulge)
    chord = math.hypot(b[0] - a[0], b[1] - a[1])
    radius = chord / (2 * math.sin(abs(angle) / 2))
    return math.copysign(radius * radius / 2 * (abs(angle) - math.sin(abs(angle))), bulge)


def loop(entity):
    """Signed area and whether it is closed."""
    if entity.dxftype() == "CIRCLE":
        return math.pi * entity.dxf.radius ** 2, True
    points = [(v.dxf.location.x, v.dxf.location.y, v.dxf.get("bulge", 0)) for v in entity.vertices]
    area = 0.0
    for a, b in zip(points, points[1:] + points[:1]):
        area += (a[0] * b[1] - b[0] * a[1]) / 2
        if a[2]:
            area += segment_area(a, b, a[2])
    return area, entity.is_closed


def polygon(entity):
    points = [(v.x, v.y) for v in path.make_path(entity).flattening(0.001)]
    return Polygon(points)


def read(file):
    doc = ezdxf.readfile(file)
    audit = doc.audit()
    out = {"version": doc.dxfversion, "errors": len(audit.errors), "fixes": len(audit.fixes), "layers": sorted(l.dxf.name for l in doc.layers),
           "extmin": list(doc.header["$EXTMIN"])[:2], "extmax": list(doc.header["$EXTMAX"])[:2], "order": [], "open": 0, "area": 0.0, "inside": 0, "outside": 0, "arcs": 0}
    outside, holes, stock = [], [], None
    for entity in doc.modelspace():
        layer = entity.dxf.layer
        out["order"].append(layer)
        if layer in ("CUT-INSIDE", "CUT-OUTSIDE"):
            area, closed = loop(entity)
            out["open"] += 0 if closed else 1
            out["inside" if layer == "CUT-INSIDE" else "outside"] += 1
            out["area"] += -abs(area) if layer == "CUT-INSIDE" else abs(area)
            if entity.dxftype() == "POLYLINE":
                out["arcs"] += sum(1 for v in entity.vertices if v.dxf.get("bulge", 0))
            (holes if layer == "CUT-INSIDE" else outside).append(polygon(entity))
        elif layer == "STOCK":
            stock = polygon(entity)
    out["valid"] = all(p.is_valid for p in outside + holes)
    out["overlap"] = max((a.intersection(b).area for i, a in enumerate(outside) for b in outside[:i]), default=0.0)
    out["apart"] = min((a.distance(b) for i, a in enumerate(outside) for b in outside[:i]), default=-1.0)
    out["beyond"] = max((p.difference(stock).area for p in outside), default=0.0) if stock is not None else 0.0
    out["edge"] = min((p.distance(stock.exterior) for p in outside), default=-1.0) if stock is not None else -1.0
    return out


print(json.dumps([read(f) for f in sys.argv[1:]]))
