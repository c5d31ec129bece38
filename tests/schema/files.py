# files.py - files of a base as editors read them, and what a schema says of them. Another parser
# of YAML and another validator than the program's.
import collections
import json
import os
import re
import subprocess

import yaml
from jsonschema import Draft202012Validator

KINDS = ("base", "boat", "model", "procedure", "texts", "sources", "words", "check")


class Refused(Exception):
    """What no parser of YAML takes."""


def schemas(program):
    """The validator of each kind; the schemas themselves are held to their own schema."""
    made = {}
    for kind in KINDS:
        said = subprocess.run([program, "schema", kind], stdout=subprocess.PIPE, check=True)
        schema = json.loads(said.stdout.decode("utf-8"))
        Draft202012Validator.check_schema(schema)
        made[kind] = Draft202012Validator(schema)
    return made


def kind_of(path):
    """Of a path within a base or the program's data, by where the file lies; None: no record."""
    folder, name = os.path.split(path)
    parts = folder.split("/") if folder else []
    if not re.match(r"^[A-Za-z0-9_-]+\.yaml$", name):
        return None
    if not parts:
        return "base" if name == "base.yaml" else None
    if parts == ["boats"]:
        return "boat"
    if parts == ["models"]:
        return "model"
    if parts == ["procedures"]:
        return "sources" if name == "sources.yaml" else "procedure"
    if parts[:2] == ["procedures", "words"] and len(parts) == 3:
        return "words" if name == "words.yaml" else "texts"
    return None


# ---- what a parser makes of a plain scalar ----

def as_text(text):
    return None if text == "" else text


CORE = (
    (re.compile(r"^(|~|null|Null|NULL)$"), lambda text: None),
    (re.compile(r"^(true|True|TRUE)$"), lambda text: True),
    (re.compile(r"^(false|False|FALSE)$"), lambda text: False),
    (re.compile(r"^[-+]?[0-9]+$"), int),
    (re.compile(r"^0o[0-7]+$"), lambda text: int(text[2:], 8)),
    (re.compile(r"^0x[0-9a-fA-F]+$"), lambda text: int(text[2:], 16)),
    (re.compile(r"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$"), float),
)


def as_core(text):
    """YAML 1.2, the core schema."""
    for pattern, make in CORE:
        if pattern.match(text):
            return make(text)
    return text


OLD = yaml.SafeLoader("")


def as_old(text):
    """YAML 1.1: yes is true, 0123 is octal, 12:30 counts by sixties, a day is a date."""
    tag = OLD.resolve(yaml.ScalarNode, text, (True, False))
    if tag.endswith(":timestamp"):
        return text
    try:
        return OLD.construct_object(yaml.ScalarNode(tag, text), deep=True)
    except (ValueError, yaml.YAMLError):
        return text


def as_given(data):
    """What a program gets that reads YAML 1.1 and hands it on as it is: keys too are no texts."""
    return yaml.safe_load(data)


READINGS = {"text": as_text, "1.2": as_core, "1.1": as_old}


def value_of(node, plain):
    if isinstance(node, yaml.ScalarNode):
        return plain(node.value) if node.style is None else node.value
    if isinstance(node, yaml.SequenceNode):
        return [value_of(item, plain) for item in node.value]
    made = collections.OrderedDict()
    for key, value in node.value:
        if not isinstance(key, yaml.ScalarNode):
            raise Refused("a key is no scalar")
        if key.value in made:
            raise Refused("a key stands twice")
        made[key.value] = value_of(value, plain)
    return dict(made)


def tree_of(data):
    try:
        node = yaml.compose(data, Loader=yaml.SafeLoader)
    except (yaml.YAMLError, ValueError) as error:
        raise Refused(str(error))
    if node is None:
        raise Refused("nothing is in it")
    return node


def complaint(validator, data, reading):
    """Why the file is refused, in a line; None: it is not."""
    try:
        value = as_given(data) if reading == "given" else value_of(tree_of(data), READINGS[reading])
    except Refused as error:
        return "YAML: " + " ".join(str(error).split())
    error = next(validator.iter_errors(value), None)
    if error is None:
        return None
    return "%s: %s" % ("/".join(map(str, error.absolute_path)), error.message[:100])
