#!/usr/bin/python3
# SPDX-License-Identifier: Apache-2.0
"""Holds the job.json of every .bayjob in some folders against the schema, and the schema against faults.

usage: validate_schema.py SCHEMA SAMPLES [FOLDER...]

SAMPLES must hold jobs that have some of everything: each fault below is put into the first of them where it
can be put, and the schema must refuse what comes of it. A schema that accepts anything fails here.
"""

import copy
import json
import pathlib
import sys
import zipfile

import jsonschema


def set_at(path, value):
    """A fault: puts a value at a path of names and indices. LookupError where the job has no such place."""

    def fault(job):
        place = job
        for step in path[:-1]:
            place = place[step]
        if isinstance(place, list) and path[-1] >= len(place):
            raise LookupError(path)
        place[path[-1]] = value

    return fault


FAULTS = {
    "a later version": set_at(["format", "version"], 2),
    "another format": set_at(["format", "name"], "other"),
    "an unknown field of a golfer": set_at(["golfers", 0, "staure"], 1.8),
    "a text for a number": set_at(["golfers", 0, "stature", "value"], "1.8"),
    "a giant": set_at(["golfers", 0, "stature", "value"], 5),
    "a dwarf": set_at(["golfers", 0, "stature", "value"], 0.2),
    "a club of no length": set_at(["golfers", 0, "clubs", 0, "length"], 0),
    "a third hand": set_at(["golfers", 0, "hand"], "both"),
    "an id of zero": set_at(["golfers", 0, "id"], 0),
    "an id with a fraction": set_at(["golfers", 0, "id"], 1.5),
    "a corner in three dimensions": set_at(["room", "walls", 0, "start"], [0, 0, 0]),
    "a corner of one number": set_at(["room", "walls", 0, "start"], [0]),
    "a corner on the moon": set_at(["room", "walls", 0, "start"], [4e8, 0]),
    "an unknown kind of opening": set_at(["room", "openings", 0, "kind"], "hatch"),
    "a negative width of an opening": set_at(["room", "openings", 0, "width", "value"], -1),
    "a fixture of unknown shape": set_at(["room", "fixtures", 0, "shape"], {"type": "sphere"}),
    "a frame of no width": set_at(["options", 0, "kit", "frame", "width"], 0),
    "a projector behind the screen": set_at(["options", 0, "placement", "projector", "lens"], [0.5, 0, 2]),
    "a projector in the screen": set_at(["options", 0, "placement", "projector", "lens"], [0, 0, 2]),
    "a strike point in the screen": set_at(["options", 0, "placement", "strikeDistance"], 0),
    "no options": set_at(["options"], []),
    "more than all of the screen": set_at(["requirements", "coverage"], 1.5),
    "seven inch fractions": set_at(["units", "inchFraction"], 7),
    "opacity above one": set_at(["planScans", 0, "opacity"], 2),
    "half a homography": set_at(["planScans", 0, "worldFromPixel"], [1, 0, 0, 0]),
    "triangles and points in one": set_at(["roomScans", 0], {"mesh": True, "points": True}),
}


def job_json(archive):
    with zipfile.ZipFile(archive) as members:
        return json.loads(members.read("job.json"))


def refused(validator, fault, samples):
    """Whether the schema refuses the fault, or None where no sample has the place for it."""
    for sample in samples:
        job = copy.deepcopy(sample)
        try:
            fault(job)
        except LookupError:
            continue
        return not validator.is_valid(job)
    return None


def main(schema_file, samples_folder, *folders):
    schema = json.loads(pathlib.Path(schema_file).read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    failures = []

    archives = [a for f in (samples_folder, *folders) for a in sorted(pathlib.Path(f).glob("*.bayjob"))]
    for archive in archives:
        for error in validator.iter_errors(job_json(archive)):
            failures.append(f"{archive.name}: {error.json_path}: {error.message[:200]}")

    samples = [job_json(a) for a in sorted(pathlib.Path(samples_folder).glob("*.bayjob"))]
    if not samples:
        failures.append(f"No sample jobs in {samples_folder}: this test looked at nothing.")
    for name, fault in FAULTS.items():
        verdict = refused(validator, fault, samples)
        if verdict is None:
            failures.append(f"No sample job has the place for {name}.")
        elif not verdict:
            failures.append(f"The schema accepts {name}.")

    print(f"{len(archives)} jobs, {len(FAULTS)} faults, {len(failures)} failures")
    for failure in failures:
        print(failure)
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
