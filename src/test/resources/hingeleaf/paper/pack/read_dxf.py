# Reads a DXF file with ezdxf and prints what it finds as JSON: for a test.
import json
import math
import sys

import ezdxf

doc = ezdxf.readfile(sys.argv[1])
auditor = doc.audit()
entities = []
for e in doc.modelspace():
    if e.dxftype() == "LINE":
        points, closed = [e.dxf.start, e.dxf.end], False
    elif e.dxftype() == "POLYLINE":
        points, closed = [v.dxf.location for v in e.vertices], e.is_closed
    else:
        raise SystemExit("unexpected " + e.dxftype())
    points = [(p.x, p.y) for p in points]
    ring = points + ([points[0]] if closed else [])
    length = sum(math.dist(a, b) for a, b in zip(ring, ring[1:]))
    area = abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(ring, ring[1:]))) / 2 if closed else 0
    entities.append({"layer": e.dxf.layer, "length": length, "area": area})
print(json.dumps({
    "version": doc.dxfversion,
    "errors": len(auditor.errors),
    "entities": entities,
}))
