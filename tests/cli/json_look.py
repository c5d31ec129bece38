"""json_look.py FILE FORMAT MEMBERS: tells what is wrong with a document of --json, by another
parser than the program's. A member that stands twice, a byte that is no UTF-8 and a number that is
none are wrong; so is a path of this run that is not told as it was named."""
import json
import sys


def no_twice(pairs):
    names = [name for name, _ in pairs]
    for name in set(names):
        if names.count(name) > 1:
            print("twice:", name)
    return dict(pairs)


def no_constant(word):
    print("no number:", word)


def main():
    path, form, members = sys.argv[1:]
    with open(path, "rb") as file:
        text = file.read().decode("utf-8", "strict")
    whole = json.loads(text, object_pairs_hook=no_twice, parse_constant=no_constant)
    if not isinstance(whole, dict):
        print("no object")
        return
    if list(whole)[0] != "format" or whole["format"] != form:
        print("format:", whole.get("format"))
    for name in members.split():
        if name not in whole:
            print("missing:", name)
    if not text.endswith("}\n"):
        print("no end of line")


main()
