#!/usr/bin/python3
# SPDX-License-Identifier: Apache-2.0
"""Reads a DXF file with ezdxf, strictly, and prints what is in it as JSON; fails if its audit finds a fault.

    check_drawing.py FILE
"""
import json
import sys

import ezdxf
from ezdxf.lldxf.encoding import decode_dxf_unicode

document = ezdxf.readfile(sys.argv[1])
audit = document.audit()
faults = [str(entry.message) for entry in audit.errors + audit.fixes]
model = document.modelspace()
print(json.dumps({
    "faults": faults,
    "unit": document.header["$INSUNITS"],
    "layers": {layer.dxf.name: layer.dxf.linetype for layer in document.layers},
    "polylines": [{"layer": line.dxf.layer, "closed": line.closed, "points": [list(p[:2]) for p in line.get_points()]}
                  for line in model.query("LWPOLYLINE")],
    "texts": [{"layer": text.dxf.layer, "words": decode_dxf_unicode(text.plain_text()), "height": text.dxf.height,
               "at": list(text.get_pos()[1])[:2]} for text in model.query("TEXT")],
}))
sys.exit(1 if faults else 0)
