/* manual_texts.c - what the manual of the command says that no table holds, written as told in
 * manual.h (room: app). */
#include "manual.h"

const char manual_description[] =
    "A charter base keeps one text file a boat: which gear she carries, where it is and how\n"
    "it works. From that record, the base's own file and general procedures `maydeck` makes\n"
    "one page a card for that very boat: engine fire, flooding, gas leak, the distress call\n"
    "and others, each with its steps in order, the gear of each step with its place and\n"
    "handling, a plan of the boat, what never to do, and the words to say on the radio. Bases\n"
    "print and laminate the cards; crews read them in an emergency.\n\n"
    "It runs offline, sends nothing anywhere, and keeps nothing but the files that it names.\n"
    "What is not recorded is never supposed: a card that needs such a fact is held back and\n"
    "named, and the others are printed.\n\n"
    "A `BASE` is a folder with `base.yaml` and `boats/BOAT.yaml`, a file a boat. What may\n"
    "stand in them is told in `maydeck-files(5)`. Options may be shortened as long as one of\n"
    "their command's own is meant, and stand before or behind `BASE`. Names with \"...\" may\n"
    "be several, with commas between, or the option given again. A date is written as\n"
    "2026-11-25.\n";

const char manual_environment[] =
    "`COLUMNS`  How wide the lines of the help and of what commands tell are. Without it they\n"
    "  are as wide as the terminal; where standard output is none, the help is 80 letters wide\n"
    "  and nothing else is folded.\n"
    "`MAYDECK_DATA`  The folder that holds the program's own `procedures` and `fonts`. Without\n"
    "  it they are looked for beside the program, in `../share/maydeck`, then where it was\n"
    "  built.\n"
    "`SOURCE_DATE_EPOCH`  Seconds since 1970, UTC: their day stands in for today where\n"
    "  `--date` does not. The same input and date give the same bytes.\n"
    "`TZ`  The time zone by which today is known where neither of them tells it.\n";

const char manual_exit[] =
    "`0`  Good: all was done, and nothing was found that stops a card.\n"
    "`1`  Something was found: a card is held back, an input is wrong, a date is past. What\n"
    "  does not hang on it was done all the same; the other boats are printed.\n"
    "`2`  Wrong use: no such base, boat, card or option, or a file is there already.\n"
    "`3`  The system failed: a file, the disk, the memory; or the program's own texts are\n"
    "  not whole, and then nothing is printed.\n\n"
    "`check` leaves with 1 from a deficiency on, with `--fail error` from an error on.\n"
    "`renew` and `due` leave with 1 while there is something to do, `hang` when a card was\n"
    "not written down, `verify` unless all is whole and as listed, `brief` where page one has\n"
    "a showstopper. A PDF appears whole or not at all.\n";

const char manual_examples[] =
    "Files to fill in for a new base and its first boat:\n\n"
    "    maydeck start mybase --boat tern --hull monohull\n\n"
    "What is wrong, what is missing, and which cards are held back:\n\n"
    "    maydeck check mybase --boat tern\n\n"
    "The cards of every boat, and one card alone:\n\n"
    "    maydeck print mybase -o cards\n"
    "    maydeck print mybase --boat tern --card flooding -o cards\n\n"
    "Why a card says what it says:\n\n"
    "    maydeck why mybase --boat tern --card engine_fire\n\n"
    "The words of a call, with a position filled in, for practice:\n\n"
    "    maydeck call mybase --boat tern --position \"43 28.35 N 16 26.1 E\"\n\n"
    "For a charter: what runs out before she is handed back, and the skipper's sheet:\n\n"
    "    maydeck check mybase --from 2027-05-01 --to 2027-05-08\n"
    "    maydeck brief mybase --boat tern --from 2027-05-01 \\\n"
    "        --to 2027-05-08 --people 6\n\n"
    "What hangs on board, and what of it is to be replaced:\n\n"
    "    maydeck hang mybase --boat tern --place \"chart table\" --by AB\n"
    "    maydeck renew mybase\n\n"
    "A long report a screen at a time:\n\n"
    "    maydeck check mybase | less\n";

const char manual_messages[] =
    "A message has the form\n\n"
    "    file:line:column: error: what is wrong\n\n"
    "then the line with a mark under the place, and a remedy: what to do or write. Every\n"
    "fault of a run is told. The words before the colon say how much hangs on it:\n\n"
    "note  worth knowing; no card hangs on it\n"
    "deficiency  the boat or her record lacks something; the cards are printed\n"
    "held  a card is not printed until a fact is recorded\n"
    "error  a file says what cannot be; most of these hold the boat's cards back\n"
    "failure  the system or the program's own files failed\n\n"
    "A deficiency or a note that is known can be silenced for one boat until a day, with a\n"
    "reason: see `silenced` in `maydeck-files(5)`. `maydeck check --list` tells every check\n"
    "by its id.\n";

const char manual_cautions[] =
    "The cards do not replace training, the boat's manuals, the skipper's judgement, the\n"
    "coastguard's instructions or local rules.\n\n"
    "A card is as true as the record. Walk round the boat with the card in hand before you\n"
    "hang it, and replace it when anything moves.\n\n"
    "Until a qualified person has approved a procedure's text each of its cards says NOT\n"
    "APPROVED BY A QUALIFIED PERSON.\n\n"
    "A check code says that a card equals the record, not that the record is right. The list\n"
    "of sums by which the program's texts are held tells accidents; it is no protection\n"
    "against somebody who alters both on purpose.\n\n"
    "Print at 100 %, not \"fit to page\", and laminate with matt film.\n";

const char manual_glossary[] =
    "approval  that a qualified person read and signed a procedure's text in one language\n"
    "base  a charter base; its folder of records\n"
    "card  one page, or several of one number, on what to do in one kind of emergency\n"
    "case  one of several ways a step is worded and equipped; her record chooses it\n"
    "check code  eight letters and digits at the foot of a card; equal codes, equal cards\n"
    "core set  cards that no base leaves out where a boat can need them\n"
    "draft  a card printed though facts are not recorded; it says DRAFT\n"
    "fingerprint  what an approval names: it changes with the text that was approved\n"
    "held back  not printed, and told why\n"
    "item  a kind of gear, by its key in the register\n"
    "model  what sister ships share, written once\n"
    "not fitted  recorded as not on board\n"
    "not recorded  nobody has written whether, or what; never taken as no\n"
    "nature  what kind of distress a call tells of, as radios name it\n"
    "record  all that the files say of a boat\n"
    "register  the list of what was printed and hangs on board; also that of the kinds of\n"
    "  gear\n"
    "spot  where in its zone a piece of gear is, in a few words\n"
    "tag  letter and number of a piece, its own for the boat's life: F fire, E rescue, C\n"
    "  control\n"
    "zone  a part of a boat, by its key\n"
    "AIS, EPIRB, PLB, SART  means by which others find a boat, raft or person\n"
    "DSC, MMSI  the digital call of a radio, and the nine digits that are its identity\n"
    "MAYDAY, PAN PAN, SECURITE  the radio's words for distress, urgency and safety\n";
