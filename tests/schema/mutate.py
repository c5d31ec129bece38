# mutate.py PROGRAM FOLDER COUNT SEED - changes one thing at a time in the records of the specimens,
# has the program read them all in one run, and holds the schemas against what it says: where it
# refuses a file for its form, the schema refuses it; where the schema refuses it, it does too. Says
# "ok NAME" or "not ok NAME" a line.
import json
import os
import random
import re
import shutil
import subprocess
import sys

import yaml

import files

# What the reader says of the form of a file; all else that it says is of what the file means.
OF_FORM = re.compile(
    r"has no key|needs the key|must be |cannot hold|has no value|does not belong to|is not a tag|"
    r"has the wrong letter|has no tag|how of|has no handling|stands twice in|no code of a language|"
    r"with a space|two spaces|holds \*\*|is empty|has no \"|recorded under radio|"
    r"\" cannot be (?!given)|is not a language code|not an international number|is not two digits|"
    r"there is no channel|neither sources nor|has no sources|is not a condition|is not a known|"
    r"expected |list is empty|is not a field of gear|is expected here|not a plain name|"
    r"asks nothing|letters that English")
# Not true and false: parsers of YAML 1.1 make these of yes and no, so schemas take them.
VALUES = ("", "yes", "no", "5", "0", "-3", "4", "31", "1000000", "2.5", "0.2", "2027",
          "2027-02-29", "2028-02-29", "2027-04", "31.12.2027", "'8'", "'08'", "'7.25'", "[]", "[x]",
          "[cockpit]", "[cockpit, cockpit]", "[engine_space]", "[3, -1.5]", "[1, 2, 3]", "{}",
          "{en: by the door}", "{English: by the door}", "{shut: across}", "{open: along, shut: across}",
          "{zone: cockpit}", "{zone: cockpit, spot: low}", "port", "cockpit", "knife", "'a  b'", "' a'",
          "'a **b**'", "'a {b}'", "E08", "E77", "F77", "C77", "[F77]", "diesel", "en", "[en]", "'67'",
          "'+385 21 000 000'", "{fitted: knife}", "{fitted: []}", "[{fitted: knife}, {boat: gas}]",
          "{is: {knife: {stop: mechanical}}}", "{reach: {knife: deck}}", "[torch, {seacock: shut}]")
TOPS = ("tests/fleet", "tests/islands", "tests/unusual", "tests/hazard")


def pairs_in(node, found):
    if isinstance(node, yaml.MappingNode):
        for key, value in node.value:
            found.append((key, value))
            pairs_in(value, found)
    elif isinstance(node, yaml.SequenceNode):
        for item in node.value:
            pairs_in(item, found)


def in_block(text, value):
    return value.start_mark.line != value.end_mark.line or text[value.start_mark.index:][:1] in "|>"


def changed(text, keys, rng):
    """The text with one key or value changed; None: it would not be one that is told apart."""
    found = []
    pairs_in(yaml.compose(text, Loader=yaml.SafeLoader), found)
    key, value = rng.choice(found)
    way = rng.choice(("key", "value", "value", "value", "other", "out"))
    start, end = key.start_mark.index, key.end_mark.index
    if way == "key":
        return text[:end - 1] + "q" + text[end:]
    if in_block(text, value):
        return None
    if way == "other":
        return text[:start] + rng.choice(keys) + text[end:]
    if way == "value":
        return text[:end] + ": " + rng.choice(VALUES) + text[value.end_mark.index:]
    line = text[text.rfind("\n", 0, start) + 1:start]
    if line.strip():
        return re.sub(r"\{\s*,\s*", "{", text[:start] + text[value.end_mark.index:])
    return text[:start] + text[value.end_mark.index:].lstrip(" ")


def is_told_apart(text):
    """Is it YAML, with nothing written as null and no key twice?"""
    try:
        node = files.tree_of(text)
        files.value_of(node, files.as_core)
    except files.Refused:
        return False
    return not re.search(r"[:,\[]\s*(~|null)\b", text)


def records(kind):
    for top in TOPS:
        folder = os.path.join(top, kind)
        for name in sorted(os.listdir(folder)) if os.path.isdir(folder) else ():
            with open(os.path.join(folder, name), encoding="utf-8") as file:
                yield file.read()


def keys_of(texts):
    found = []
    for text in texts:
        pairs_in(yaml.compose(text, Loader=yaml.SafeLoader), found)
    return sorted({key.value for key, _ in found})


def run(program, base):
    """What `check` refuses, by file."""
    said = subprocess.run([program, "check", base, "--json", "--date", "2026-11-20"],
                          stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
    whole = json.loads(said.stdout.decode("utf-8"))
    refused = {}
    for problems in [whole["problems"]] + [boat["problems"] for boat in whole["boats"]]:
        for problem in problems:
            if problem["severity"] == "error" and problem["file"] is not None:
                refused.setdefault(problem["file"], []).append(problem["what"])
    return refused


def judge(validator, path, text, told, faults):
    by_form = [what for what in told if OF_FORM.search(what)]
    for reading in ("1.2", "1.1"):
        said = files.complaint(validator, text, reading)
        if said and not told:
            faults.append("%s: the reader takes it, the schema (%s) does not: %s"
                          % (path, reading, said))
        if by_form and not said and reading == "1.2":   # to 1.1 no and off are one
            faults.append("%s: the reader refuses it, the schema (%s) does not: %s"
                          % (path, reading, by_form[0]))
    return bool(by_form)


def many(rng, texts, keys, count):
    made = []
    while len(made) < count:
        text = changed(rng.choice(texts), keys, rng)
        if text is not None and is_told_apart(text):
            made.append(text)
    return made


def boats(program, folder, made, rng, count):
    texts = list(records("boats"))
    shutil.rmtree(folder, ignore_errors=True)
    os.makedirs(os.path.join(folder, "boats"))
    shutil.copytree("tests/islands/models", os.path.join(folder, "models"))
    shutil.copy("tests/fleet/base.yaml", folder)
    laid = {}
    for i, text in enumerate(many(rng, texts, keys_of(texts), count)):
        path = os.path.join(folder, "boats", "b%04d.yaml" % i)
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)
        laid[path] = text
    refused = run(program, folder)
    faults = []
    formal = sum(judge(made["boat"], path, text, refused.get(path, ()), faults)
                 for path, text in laid.items())
    return formal, faults


def models(program, folder, made, rng, count):
    """Each with a boat that is like it, since errors of a model are told with such a boat."""
    texts = list(records("models"))
    shutil.rmtree(folder, ignore_errors=True)
    for name in ("boats", "models"):
        os.makedirs(os.path.join(folder, name))
    shutil.copy("tests/fleet/base.yaml", folder)
    laid = {}
    for i, text in enumerate(many(rng, texts, keys_of(texts), count)):
        path = os.path.join(folder, "models", "m%04d.yaml" % i)
        laid[path] = text
        for at, what in ((path, text), (os.path.join(folder, "boats", "b%04d.yaml" % i),
                                        "like: m%04d\nboat: {name: Tern}\n" % i)):
            with open(at, "w", encoding="utf-8") as file:
                file.write(what)
    refused, faults = run(program, folder), []
    formal = sum(judge(made["model"], path, text, refused.get(path, ()), faults)
                 for path, text in laid.items())
    return formal, faults


def bases(program, folder, made, rng, count):
    """A run each: a folder has one base."""
    text = [open(os.path.join(top, "base.yaml"), encoding="utf-8").read() for top in TOPS]
    path, faults, formal = os.path.join(folder, "base.yaml"), [], 0
    shutil.rmtree(folder, ignore_errors=True)
    os.makedirs(os.path.join(folder, "boats"))
    shutil.copy("tests/errors/base/boats/alder.yaml", os.path.join(folder, "boats"))
    for text in many(rng, text, keys_of(text), count):
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)
        before = len(faults)
        formal += judge(made["base"], path, text, run(program, folder).get(path, ()), faults)
        if len(faults) > before:
            shutil.copy(path, "%s.%d" % (path, before))
    return formal, faults


def cards(program, folder, made, rng):
    """The logic of every card of the program, each with one change, as a base's own cards."""
    own = os.path.join(folder, "procedures")
    shutil.rmtree(folder, ignore_errors=True)
    os.makedirs(os.path.join(folder, "boats"))
    shutil.copytree("procedures", own)
    os.remove(os.path.join(own, "manifest.txt"))
    os.remove(os.path.join(own, "sources.yaml"))
    os.remove(os.path.join(own, "words/en/words.yaml"))
    shutil.copy("tests/fleet/base.yaml", folder)
    shutil.copy("tests/fleet/boats/bramble.yaml", os.path.join(folder, "boats"))
    laid = {}
    names = sorted(name for name in os.listdir(own) if name.endswith(".yaml"))
    texts = [open(os.path.join(own, name), encoding="utf-8").read() for name in names]
    keys = keys_of(texts)
    for name, text in zip(names, texts):
        path = os.path.join(own, name)
        laid[path] = many(rng, [text], keys, 1)[0]
        with open(path, "w", encoding="utf-8") as file:
            file.write(laid[path])
    refused, faults = run(program, folder), []
    formal = sum(judge(made["procedure"], path, text, refused.get(path, ()), faults)
                 for path, text in laid.items())
    return formal, faults, len(laid)


def tell(name, formal, count, faults):
    if formal * 5 < count:
        faults.append("only %d of %d were wrong in form" % (formal, count))
    print("%s %s" % ("not ok" if faults else "ok", name))
    for fault in faults[:40]:
        print("# " + fault)


def main():
    program, folder, count, seed = sys.argv[1], sys.argv[2], int(sys.argv[3]), sys.argv[4]
    made, rng = files.schemas(program), random.Random(seed)
    formal, faults = boats(program, os.path.join(folder, "changed"), made, rng, count)
    tell("schema-boats-changed", formal, count, faults)
    formal, faults = models(program, os.path.join(folder, "modelled"), made, rng, count // 2)
    tell("schema-models-changed", formal, count // 2, faults)
    formal, faults = bases(program, os.path.join(folder, "based"), made, rng, count // 10)
    tell("schema-bases-changed", formal, count // 10, faults)
    formal, faults, number = cards(program, os.path.join(folder, "carded"), made, rng)
    tell("schema-cards-changed", formal, number, faults)


main()
