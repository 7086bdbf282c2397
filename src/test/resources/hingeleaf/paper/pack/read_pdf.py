# Reads a PDF file with pypdf and prints its processing steps as JSON: for a test.
import json
import sys

from pypdf import PdfReader
from pypdf.generic import DictionaryObject

reader = PdfReader(sys.argv[1])
root = reader.trailer["/Root"]
groups = []
if "/OCProperties" in root:
    for reference in root["/OCProperties"]["/OCGs"]:
        meta = reference.get_object()["/GTS_Metadata"]
        groups.append({
            "group": str(meta["/GTS_ProcStepsGroup"])[1:],
            "type": str(meta.get("/GTS_ProcStepsType", "/"))[1:],
        })
spots = set()
overprints = True
images = 0
NONE = DictionaryObject()
for page in reader.pages:
    resources = page["/Resources"].get_object()
    for space in resources.get("/ColorSpace", NONE).get_object().values():
        space = space.get_object()
        if isinstance(space, list) and space[0] == "/Separation":
            spots.add(str(space[1])[1:])
    states = [s.get_object() for s in resources.get("/ExtGState", NONE).get_object().values()]
    overprints = overprints and any(s.get("/OP") and s.get("/OPM") == 1 for s in states)
    for thing in resources.get("/XObject", NONE).get_object().values():
        images += thing.get_object().get("/Subtype") == "/Image"
print(json.dumps({
    "groups": groups,
    "spots": sorted(spots),
    "overprints": bool(overprints),
    "images": images,
}))
