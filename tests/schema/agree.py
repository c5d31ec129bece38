# agree.py PROGRAM - holds the schemas against the reader, over all error goldens and all specimens:
# what the one refuses for its form the other refuses, and what the one takes the other takes.
# of_meaning.txt lists the files that the reader refuses for what they mean, with a reason each; one
# that is not needed there fails. Says "ok NAME" or "not ok NAME" a line.
import json
import os
import re
import subprocess
import sys

import files

ERRORS = "tests/errors"
SPECIMENS = ("tests/fleet", "tests/islands", "tests/unusual", "tests/hazard", "tests/errors/base")
TOLD = re.compile(r"^(base|tool)/(.*?\.yaml):(?:\d+:\d+:)? error: ")
EDITORS = ("1.2", "1.1")


def listed():
    rows = {}
    with open("tests/schema/of_meaning.txt", encoding="utf-8") as file:
        for line in file:
            if line.startswith("#") or not line.strip():
                continue
            case, path, reason = line.split(None, 2)
            if (case, path) in rows:
                raise SystemExit("of_meaning.txt: %s %s stands twice" % (case, path))
            rows[case, path] = reason
    return rows


def files_of(case):
    """Path within a base or the program's data, and where it lies, of the files that a case lays."""
    for folder in ("input", "base", "data"):
        top = os.path.join(ERRORS, case, folder)
        for at, _, names in os.walk(top):
            for name in names:
                path = os.path.join(at, name)
                yield ("tool" if folder == "data" else "base"), os.path.relpath(path, top), path


def refused_in(case):
    with open(os.path.join(ERRORS, case, "expected"), encoding="utf-8", errors="replace") as file:
        return {match.groups() for match in map(TOLD.match, file) if match}


def complaints_of(made, kind, path):
    with open(path, "rb") as file:
        data = file.read()
    return {reading: files.complaint(made[kind], data, reading) for reading in files.READINGS}


def judge_case(made, case, rows, needed, faults):
    refused = refused_in(case)
    for place, path, lies_at in files_of(case):
        kind = files.kind_of(path)
        if kind is None:
            continue
        said = complaints_of(made, kind, lies_at)
        by_reader = (place, path) in refused
        for reading in EDITORS:
            if said[reading] and not by_reader:
                faults.append("%s %s: the reader takes it, the schema (%s) does not: %s"
                              % (case, path, reading, said[reading]))
        if by_reader and not all(said[reading] for reading in EDITORS):
            needed.add((case, path))
            if (case, path) not in rows:
                faults.append("%s %s: the reader refuses it, the schema does not" % (case, path))
    return len(refused)


def judge_specimens(made, faults):
    count = 0
    for top in SPECIMENS + ("procedures",):
        for at, _, names in os.walk(top):
            for name in names:
                path = os.path.join(at, name)
                inside = path if top == "procedures" else os.path.relpath(path, top)
                kind = files.kind_of(inside)
                if kind is None:
                    continue
                count += 1
                said_of = complaints_of(made, kind, path)
                if kind != "words":     # whose own keys are on and off, yes and no
                    with open(path, "rb") as file:
                        said_of["given"] = files.complaint(made[kind], file.read(), "given")
                for reading, said in said_of.items():
                    if said:
                        faults.append("%s (%s): %s" % (path, reading, said))
    return count


def within(value):
    if isinstance(value, dict):
        yield value
        for part in value.values():
            yield from within(part)
    elif isinstance(value, list):
        for part in value:
            yield from within(part)


def judge_examples(made, faults):
    """An example is what may stand there."""
    count = 0
    for kind, validator in made.items():
        for part in within(validator.schema):
            for example in part.get("examples", ()) if isinstance(part.get("examples"), list) else ():
                count += 1
                if not validator.evolve(schema=part).is_valid(example):
                    faults.append("%s: %s is no %s" % (kind, example, part.get("description")))
    return count


def judge_keys(program, made, faults):
    """Every key that `list fields` knows is in the schema of its file, with the same words."""
    said = subprocess.run([program, "list", "--json", "fields"], stdout=subprocess.PIPE, check=True)
    rows = json.loads(said.stdout.decode("utf-8"))["fields"]
    for row in rows:
        kind = "base" if row["file"] == "base.yaml" else "boat"
        if not any(row["key"] in part and isinstance(part[row["key"]], dict) and
                   part[row["key"]].get("description") == row["about"]
                   for part in within(made[kind].schema)):
            faults.append("%s has no %s: %s" % (kind, row["key"], row["about"]))
    return len(rows)


def tell(name, faults):
    print(("not ok " if faults else "ok ") + name)
    for fault in faults:
        print("# " + fault)


def main():
    made = files.schemas(sys.argv[1])
    tell("schema-meta", [])
    rows, needed, faults, told = listed(), set(), [], 0
    for case in sorted(os.listdir(ERRORS)):
        if os.path.exists(os.path.join(ERRORS, case, "expected")):
            told += judge_case(made, case, rows, needed, faults)
    tell("schema-agrees-on-%d-refused" % told, faults)
    tell("schema-list-of-meaning", ["%s %s: is not needed" % row for row in rows if row not in needed])
    faults = []
    count = judge_specimens(made, faults)
    tell("schema-takes-%d-files" % count, faults if count > 50 else faults + ["too few files"])
    faults = []
    count = judge_examples(made, faults)
    tell("schema-examples", faults if count > 50 else faults + ["only %d" % count])
    faults = []
    count = judge_keys(sys.argv[1], made, faults)
    tell("schema-keys", faults if count > 50 else faults + ["only %d" % count])


main()
