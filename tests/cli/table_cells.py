"""Changes cells of a table as a spreadsheet's user would, with a reader and writer of CSV that are
not the program's own.

table_cells.py IN OUT FORM <CHANGES: FORM is a delimiter and any of quoted, bom, crlf, bare (no
apostrophes). A change a line: BOAT|TAG|COLUMN|CELL, the tag of a fact being = and its key, of a
missing one ! and its item; BOAT|+|COLUMN=CELL|... adds a row."""
import csv
import sys


def hits(row, boat, tag):
    if row[0] != boat:
        return False
    if tag[:1] in "=!":
        return row[1] == "" and row[2] == tag[1:]
    return row[1] == tag


def main():
    source, target, form = sys.argv[1:4]
    with open(source, encoding="utf-8-sig", newline="") as file:
        rows = list(csv.reader(file))
    head = rows[0]
    for line in sys.stdin.read().splitlines():
        parts = line.split("|")
        if parts[1] == "+":
            row = [""] * len(head)
            row[0] = parts[0]
            for part in parts[2:]:
                name, cell = part.split("=", 1)
                row[head.index(name)] = cell
            rows.append(row)
            continue
        found = [row for row in rows[1:] if hits(row, parts[0], parts[1])]
        if len(found) != 1:
            sys.exit("%d rows for %s" % (len(found), line))
        found[0][head.index(parts[2])] = parts[3]
    if "bare" in form:
        rows = [[cell.removeprefix("'") for cell in row] for row in rows]
    with open(target, "w", encoding="utf-8-sig" if "bom" in form else "utf-8", newline="") as file:
        csv.writer(
            file,
            delimiter={"t": "\t"}.get(form[0], form[0]),
            quoting=csv.QUOTE_ALL if "quoted" in form else csv.QUOTE_MINIMAL,
            lineterminator="\r\n" if "crlf" in form else "\n",
        ).writerows(rows)


main()
