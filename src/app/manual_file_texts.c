/* manual_file_texts.c - what the manual of the files says that no table holds, written as told
 * in manual.h (room: app). */
#include "manual.h"

const char manual_files[] =
    "`BASE/base.yaml`  The base: numbers to ring, rescue centre, cruising area, approvals.\n"
    "`BASE/boats/BOAT.yaml`  One boat. The file's name is what `--boat` takes.\n"
    "`BASE/models/MODEL.yaml`  What sister ships share.\n"
    "`BASE/procedures/`  Cards that the base writes itself, as the program's are written.\n"
    "`BASE/register.csv`  What was printed and what hangs on board.\n"
    "`DIR/BOAT.pdf`  The set of a boat; no other file is ever called so. A card alone is\n"
    "  `BOAT-CARD.pdf`, a draft `BOAT-draft.pdf`, another language `BOAT.LANG.pdf`, another\n"
    "  paper `BOAT.PAPER.pdf`, without colour `BOAT.mono.pdf`.\n"
    "`DIR/printed.csv`  What was printed into that folder, with the sum of each file.\n"
    "`procedures/`  The program's own: procedures, their texts by language, sources, and\n"
    "  `manifest.txt` with the sum of each, without which nothing is printed.\n\n"
    "Files are UTF-8. A boat's file lies in `boats/` itself and ends in `.yaml`; what else\n"
    "lies there is not read, and every command names it.\n";

const char manual_writing[] =
    "Files are YAML without anchors, tags and several documents in one. An unknown key is an\n"
    "error, and so is one that stands twice.\n\n"
    "text  On one line; with a comma, a colon or a # in it, in quotes. Words that stand for\n"
    "  what nobody knows, such as tbd or n/a, are errors: leave the key out.\n"
    "text in any language  One text, or one by language: {en: red lid, de: roter Deckel}.\n"
    "choice  One of the words that are told.\n"
    "yes or no  Either word. Not recorded is neither.\n"
    "number  A decimal with a point, in the unit that is told, without it.\n"
    "date  2027, 2027-04 or 2027-04-30. A month holds to its end, unless\n"
    "  `dates/month_means` says start. A stamp on the gear goes before what is computed\n"
    "  from a service.\n"
    "list  [a, b], or a line each; [] is an empty one, and says that there is none.\n"
    "section  Keys under a key. A list of entries has one section an entry.\n\n"
    "A path such as `equipment/spot` names a key by those above it.\n\n"
    "Needed keys are errors where they are missing. `start` asks for all that cards, checks,\n"
    "dates and figures have a use for. A card that needs a fact which is not recorded is held\n"
    "back.\n";

const char manual_readers[] =
    "What is recorded comes to stand somewhere, or is judged there; the keys above say it\n"
    "behind Used in. `maydeck list fields` says it in these words:\n";

const char manual_base[] =
    "`BASE/base.yaml` tells what all boats of the base have in common.\n";

const char manual_boat[] =
    "`BASE/boats/BOAT.yaml` tells of one boat. Each piece of gear is an entry under\n"
    "`equipment`:\n\n"
    "    - {item: seacock, tag: C7, zone: forward_heads, name: sink drain}\n\n"
    "What she does not have stands under `not_fitted`, what nobody has looked for under\n"
    "`not_surveyed`. A fact of gear that it cannot have is an error: behind such a key stands\n"
    "of which gear `check` misses it, of which `start` asks for it, and at which it may\n"
    "stand.\n";

const char manual_model[] =
    "`BASE/models/MODEL.yaml` tells what boats of one kind share. Such a boat says `like:\n"
    "MODEL` and `walked`, and has all else from the model. Of these facts only what is\n"
    "written below differs from a boat's file. What is inherited counts only when somebody\n"
    "walked round her on the day of its last change or later.\n";

const char manual_procedure[] =
    "Every key of a card's own files, for who writes cards. A base's own lie in\n"
    "`BASE/procedures`, in the same form, with numbers from 60 to 99, or with the key and\n"
    "number of a card that they take the place of.\n";

const char manual_sources[] =
    "`procedures/sources.yaml` names who stands behind a step, a caution or a never. A base's\n"
    "own sources stand in `BASE/procedures/sources.yaml`, with keys that the program's do not\n"
    "have.\n";

const char manual_words[] =
    "`procedures/words/LANGUAGE/words.yaml` holds all words of the cards besides the texts of\n"
    "the procedures. A language is complete or refused. What is said on the radio stays\n"
    "English.\n";

const char manual_register[] =
    "`BASE/register.csv` is a table that only grows, a row an event: `printed`, `hung` or\n"
    "`taken_down`, with boat, card, language, paper, check code, date, place, who, until when\n"
    "its gear is good, the version of the program, the fingerprint of its procedure, and\n"
    "packed what the card said. A spreadsheet opens it; change nothing in it but a row that\n"
    "`renew` tells as damaged. `start` begins it. Several people may print and hang at once.\n"
    "What a run that was stopped left half-written is set aside as a line that begins with #.\n";

const char manual_printed[] =
    "`DIR/printed.csv` has a row a PDF: its SHA-256 and length, boat, language, paper, how\n"
    "many of how many cards, the SHA-256 of the boat's file, version, date, the run that\n"
    "wrote it, whether nothing of the boat was held back, and how many deficiencies were told\n"
    "of her. `verify` holds the files against it. A row is written before its file appears. A\n"
    "damaged list is begun anew, and stays as `printed.csv.damaged-1`.\n";

const char manual_table[] =
    "`maydeck table` writes the records as a table for spreadsheets, and `maydeck take` reads\n"
    "it back. A row is a fact of a boat (its key in `item`, what is recorded in `value`), a\n"
    "piece of gear (its tag, its item, a column a field), or gear that she has not or nobody\n"
    "looked for (`not_fitted` or `not_surveyed` in `value`). Fields in fields have columns of\n"
    "their own: `how.shut`, `from.zone`. `new` as a tag adds a piece, yes in the column `out`\n"
    "takes one out. An apostrophe before a cell keeps the spreadsheet from changing it, and\n"
    "is no part of it. The last column, `mark`, tells what the row said when it was written:\n"
    "leave it.\n";

const char manual_gear[] =
    "Kinds of gear, each with what cards call it, the letter of its tags, what to record of\n"
    "it, and which cards show it in a step or ask whether she has it.\n";

const char manual_zones[] =
    "Parts of a boat, with what cards call them, where they lie, and which hulls have them.\n";
