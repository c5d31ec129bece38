/* options.c - the commands and their options, a row each (room: app). Knows what there is,
 * not how it is read. */
#include "choices.h"
#include "options.h"
#include "paper.h"

#include <stddef.h>

const char *const list_topic_words[] = {LIST_TOPIC_LIST(CHOICE_WORD) NULL};

const struct command commands[] = {
    {"print", OF_PRINT, "print the cards of a base's boats",
     "Prints one PDF a boat, one page a card. A card whose facts are not recorded is\n"
     "held back and named; the others are printed. With --card only BOAT-CARD.pdf is\n"
     "written, with --draft BOAT-draft.pdf: neither touches the set BOAT.pdf. Older\n"
     "files of these boats in DIR are named. --list tells the same files and cards with\n"
     "their check codes, and what is held back and why; nothing is written.",
     command_print, NULL},
    {"check", OF_CHECK, "tell what is wrong, missing or out of date, print nothing",
     "Reads the base and its boats, composes and lays out every card, and tells what is\n"
     "wrong, out of date or contradictory, which cards are held back and what to record:\n"
     "errors, then what holds cards back, deficiencies, and notes. What several boats\n"
     "share is told once with its remedy and each file and line; of one boat alone, as\n"
     "with --boat BOAT, every finding is told in full.\n"
     "Dates of gear are held against today, or against a charter with --from and --to.\n"
     "Then come the items that the cards ask for and that neither the record mentions\n"
     "nor a message has named, for one boat with the lines to paste; and last a table:\n"
     "\"recorded\" counts the items of the register that the boat's record mentions,\n"
     "fitted or not fitted, of all; pieces of one item count once.\n"
     "All of it goes to standard output; to standard error go only what was refused of\n"
     "the command line and what the system failed in.",
     command_check, NULL},
    {"why", OF_WHY, "tell what each part of a card stands on",
     "Tells, step by step, which case was taken, from which lines of the procedure and\n"
     "of the boat file, on which sources, and what still awaits sign-off. Without\n"
     "--card or --all it names the cards that exist. With --figure it tells how one\n"
     "figure computed from the record comes about, or with --figure all every one.\n"
     "With --sign-off it prints the whole of each procedure, every case with its sources,\n"
     "and where to sign: for who approves it, whatever boat.\n"
     "No page is laid out for it: what finds no room on its page, check tells.",
     command_why, NULL},
    {"call", OF_CALL, "show what to say on the radio",
     "Shows the radio script of one boat, a phrase a line, ____ where something is to\n"
     "be filled in: the general MAYDAY, or what one of the options asks for. A position\n"
     "is filled into it and shown in other forms. A time by the clock on board becomes\n"
     "UTC by the clocks that the base records; without them it is said as local time.\n"
     "The bearing of a mark is turned into the true direction from it; with M it is\n"
     "magnetic, and the base's variation is used, with T it is true. A position is\n"
     "written as \"43 28.35 N 016 26.10 E\" or \"43.4725, 16.435\".",
     command_call, NULL},
    {"brief", OF_BRIEF, "print the skipper's sheet for a charter",
     "Writes BOAT-brief.pdf of each boat: what the skipper must know before the boat is\n"
     "taken over. Page one alone is to be read in two minutes: what stops the boat, the\n"
     "MAYDAY word by word, who does what. Then come what differs on this boat, what\n"
     "authorities want people aboard to be told, with her own places in the order of a\n"
     "walk, a practice call, and lines to write upon. --people counts all, infants and\n"
     "the skipper too. Where page one has a showstopper, it is told and the status is 1:\n"
     "gear past its date or without one, too few lifejackets or raft places, no radio.",
     command_brief, NULL},
    {"start", OF_START, "write a new base folder or boat file to fill in",
     "Writes BASE/base.yaml if there is none, and BASE/boats/BOAT.yaml with --boat.\n"
     "Both ask for what the cards need, and hold nothing but the questions. With --like\n"
     "MODEL the boat's file asks for her own identities and dates alone, by the tags of\n"
     "the gear in BASE/models/MODEL.yaml. No file that is there is ever changed.",
     command_start, NULL},
    {"list", OF_LIST, "list what the files of a base may say",
     "items    kinds of gear: key, what cards call it, letter of its tags, what to record\n"
     "zones    parts of a boat: key, what cards call it, where it lies, which boats have it\n"
     "cards    number, key, title, and which boats have the card\n"
     "natures  natures of distress, as `call --nature` takes them\n"
     "fields   every key of base.yaml and of a boat's file, and what may stand there\n"
     "`must` and `asked` are the fields of an item besides item, tag, zone and side: `check`\n"
     "tells where one of `must` is missing; cards, figures or checks have a use for `asked`.",
     command_list, list_topic_words},
    {"table", OF_TABLE, "write the records of a base as a table for spreadsheets",
     "Writes a table (CSV, UTF-8), a row a piece: the boat, the tag, the item, then a column a\n"
     "field. Each fact of a boat is a row too, her radio's among them, with its key in `item`\n"
     "and what is recorded in `value`; so is gear that she has not, or that nobody has looked\n"
     "for. An apostrophe before a cell keeps spreadsheets from making a date or a number of\n"
     "it, and does not belong to it. `maydeck take` reads the table back. A boat whose file\n"
     "has errors is told of and left out.",
     command_table, NULL},
    {"take", OF_TAKE, "take what was changed in such a table into the boats' files",
     "Reads a table that `maydeck table` wrote and a spreadsheet saved as CSV, in UTF-8, with\n"
     "commas, semicolons, tabs or bars. Tells each value that it changes. With --write the\n"
     "boats' files are changed, all or none: only the values, no other line. Each file as it\n"
     "was stays beside it, as NAME.yaml.before-1 and so on. A row or column that is missing\n"
     "changes nothing. `new` as the tag adds a piece, which gets the next free tag; yes in the\n"
     "column `out` takes one out, and its tag is never used again. What can mean two things,\n"
     "such as 03/04/2027, is an error by row and column; then nothing is written.",
     command_take, NULL},
    {"hang", OF_HANG, "record which cards hang on board",
     "Records in BASE/register.csv that these cards of a boat hang at a place, or all of\n"
     "her set. A card must have been printed and still say what the record says today:\n"
     "one that is held back, was never printed or has changed since is named and not\n"
     "recorded. --checked takes cards of which the register has no print, once each code\n"
     "was compared with print --list. With --down cards were taken down.",
     command_hang, NULL},
    {"renew", OF_RENEW, "tell which cards on board are to be replaced, and why",
     "Holds what hangs by BASE/register.csv against the records of today: which cards to\n"
     "replace or take down, which were printed and never hung, never printed, or are held\n"
     "back, and which change by themselves: within 30 days, or up to --by. --code tells\n"
     "what card a check code is of, and whether it is still true. Exit 1 where there is\n"
     "something to do.",
     command_renew, NULL},
    {"due", OF_DUE, "list every date of a base and its boats",
     "Dates of gear and services, approvals, numbers to be looked up again, clocks and\n"
     "silenced checks, the first to come first; then each date that should be recorded\n"
     "and is not. The date is the last good day. Exit 1 where one is past, is not\n"
     "recorded, or, with --until, is to come by then.",
     command_due, NULL},
    {"survey", OF_SURVEY, "print a sheet to walk round a boat with",
     "Writes BOAT-survey.pdf: each piece of gear with what is recorded of it, in the order\n"
     "of a walk through the boat, with boxes to tick, states to try, dates to read, and\n"
     "room for what is not recorded; then what moved, the hand-back, and who decides\n"
     "whether the boat sails. With --hull a blank one for a new boat of that kind. Of a\n"
     "boat whose file has errors there is no sheet, and they are told.",
     command_survey, NULL},
    {"verify", OF_VERIFY, "tell whether printed files are whole, and of which print",
     "Looks at each PDF in DIR, or at one: is it whole, and just what was printed, by the\n"
     "list printed.csv beside it? Tells of which boat, record, version, print and date it\n"
     "is, and the check codes of its cards; and names what is missing, not listed, or left\n"
     "by a print that was stopped. With --base also whether the boat's file is still the\n"
     "one that it was printed of. Exit 1 unless all is whole, listed and as listed.",
     command_verify, NULL},
};
const size_t command_count = sizeof commands / sizeof *commands;

static const char *const punch_words[] = {PUNCH_LIST(CHOICE_WORD) NULL};
static const char *const pouch_words[] = {POUCH_LIST(CHOICE_WORD) NULL};
static const char *const severities[] = {"deficiency", "error", NULL};

#define AT(member) offsetof(struct options, member)
static const struct option_row option_rows[] = {
    /* which boats and cards */
    {OF_PRINT | OF_CHECK | OF_WHY | OF_TABLE | OF_BRIEF, "boat", 0, OPTION_LIST, AT(boats),
     "BOAT,...", "only these boats (file names without .yaml)", NULL},
    {OF_RENEW | OF_DUE, "boat", 0, OPTION_LIST, AT(boats), "BOAT,...",
     "only these boats (file names without .yaml)", NULL},
    {OF_HANG, "boat", 0, OPTION_LIST, AT(boats), "BOAT,...",
     "whose cards (her file name without .yaml)", NULL},
    {OF_CALL, "boat", 0, OPTION_LIST, AT(boats), "BOAT",
     "which boat calls (its file name without .yaml)", NULL},
    {OF_START, "boat", 0, OPTION_LIST, AT(boats), "BOAT,...",
     "boats to write a file for (such as tern)", NULL},
    {OF_SURVEY, "boat", 0, OPTION_LIST, AT(boats), "BOAT,...",
     "only these boats (file names without .yaml)", NULL},
    {OF_SURVEY, "hull", 0, OPTION_CHOICE, AT(new_hull), "HULL",
     "a blank sheet for a new boat (new-HULL-survey.pdf)", hull_words},
    {OF_SURVEY, "rig", 0, OPTION_CHOICE, AT(rig), "RIG",
     "with --hull: what moves the new boat besides engines", rig_words},
    {OF_START, "hull", 0, OPTION_TEXT, AT(hull), "HULL", "monohull, catamaran or trimaran", NULL},
    {OF_START, "like", 0, OPTION_TEXT, AT(like), "MODEL",
     "sister ships: only what models/MODEL.yaml cannot hold", NULL},
    {OF_PRINT, "card", 0, OPTION_LIST, AT(cards), "CARD,...",
     "only these cards (such as flooding), each a file", NULL},
    {OF_CHECK, "card", 0, OPTION_LIST, AT(cards), "CARD,...",
     "audit, and what else to record, for these cards", NULL},
    {OF_WHY, "card", 0, OPTION_LIST, AT(cards), "CARD,...",
     "explain these cards (such as flooding)", NULL},
    {OF_CALL, "card", 0, OPTION_LIST, AT(cards), "CARD,...",
     "what these cards say (such as flooding)", NULL},
    {OF_HANG, "card", 0, OPTION_LIST, AT(cards), "CARD,...",
     "only these cards (such as flooding), not all of her set", NULL},
    {OF_WHY, "all", 0, OPTION_FLAG, AT(all), NULL, "explain every card", NULL},
    {OF_WHY, "sign-off", 0, OPTION_FLAG, AT(sign_off), NULL,
     "sheets by which a qualified person approves the procedures", NULL},
    {OF_WHY, "figure", 0, OPTION_TEXT, AT(figure), "FIGURE",
     "one figure (such as beat_pumps), or all", NULL},

    /* how */
    {OF_PRINT, "lang", 0, OPTION_LIST, AT(languages), "LANG,...",
     "in these languages, not the base's first (BOAT.LANG.pdf)", NULL},
    {OF_BRIEF, "lang", 0, OPTION_LIST, AT(languages), "LANG,...",
     "in these languages, not the base's first (BOAT-brief.LANG.pdf)", NULL},
    {OF_CHECK | OF_WHY, "lang", 0, OPTION_LIST, AT(languages), "LANG,...",
     "in these languages, not the base's first (such as en)", NULL},
    {OF_SURVEY, "lang", 0, OPTION_LIST, AT(languages), "LANG,...",
     "in these languages, not the base's first (BOAT-survey.LANG.pdf)", NULL},
    {OF_LIST, "lang", 0, OPTION_TEXT, AT(language), "LANG",
     "with the words that cards print in this language (default: en)", NULL},
    {OF_HANG, "lang", 0, OPTION_LIST, AT(languages), "LANG,...",
     "cards in these languages, not the base's first", NULL},
    {OF_HANG, "paper", 0, OPTION_CHOICE, AT(paper), "PAPER",
     "those printed on this paper (default: the last print)", paper_words},
    {OF_PRINT, "paper", 0, OPTION_CHOICE, AT(paper), "PAPER",
     "on this paper, not the base's (BOAT.PAPER.pdf)", paper_words},
    {OF_BRIEF, "paper", 0, OPTION_CHOICE, AT(paper), "PAPER",
     "on this paper, not the base's (BOAT-brief.PAPER.pdf)", paper_words},
    {OF_SURVEY, "paper", 0, OPTION_CHOICE, AT(paper), "PAPER",
     "on a4 or letter, not the base's (BOAT-survey.PAPER.pdf)", paper_words},
    {OF_PRINT, "punch", 0, OPTION_CHOICE, AT(punch), "EDGE",
     "edge that is punched half-way (default top)", punch_words},
    {OF_PRINT, "pouch", 0, OPTION_CHOICE, AT(pouch), "PLACE",
     "where cards hang; wet: cut 5 mm off along marks", pouch_words},
    {OF_CHECK, "punch", 0, OPTION_CHOICE, AT(punch), "EDGE",
     "laid out for cards punched so", punch_words},
    {OF_CHECK, "pouch", 0, OPTION_CHOICE, AT(pouch), "PLACE",
     "laid out for cards laminated so", pouch_words},
    {OF_CHECK, "paper", 0, OPTION_CHOICE, AT(paper), "PAPER",
     "laid out on this paper, not the base's", paper_words},
    {OF_PRINT, "mono", 0, OPTION_FLAG, AT(mono), NULL,
     "in black and greys: hatches in place of colours (BOAT.mono.pdf)", NULL},
    {OF_CHECK, "mono", 0, OPTION_FLAG, AT(mono), NULL,
     "laid out in black and greys, as print --mono does", NULL},
    {OF_PRINT | OF_BRIEF | OF_SURVEY, "output", 'o', OPTION_TEXT, AT(output), "DIR",
     "where the files go (default: cards)", NULL},
    {OF_TABLE, "output", 'o', OPTION_TEXT, AT(table), "FILE",
     "write into this file (default: standard output)", NULL},
    {OF_TAKE, "write", 0, OPTION_FLAG, AT(write), NULL,
     "change the boats' files; without it only tell", NULL},
    {OF_RENEW, "output", 'o', OPTION_TEXT, AT(output), "DIR",
     "with --print: where the files go (default: cards)", NULL},
    {OF_HANG, "date", 0, OPTION_DATE, AT(today), "DATE",
     "day on which they were hung or taken down (default today)", NULL},
    {OF_RENEW | OF_DUE, "date", 0, OPTION_DATE, AT(today), "DATE",
     "stands in for today (2026-11-25)", NULL},
    {OF_CALL, "date", 0, OPTION_DATE, AT(today), "DATE",
     "day of the time that is filled in (default today)", NULL},
    {OF_PRINT | OF_CHECK | OF_WHY | OF_TAKE | OF_BRIEF | OF_SURVEY, "date", 0, OPTION_DATE,
     AT(today), "DATE",
     "stands in for today (2026-11-25)", NULL},
    {OF_PRINT, "draft", 0, OPTION_FLAG, AT(draft), NULL,
     "also print cards that lack facts, marked DRAFT (BOAT-draft.pdf)", NULL},
    {OF_CHECK, "draft", 0, OPTION_FLAG, AT(draft), NULL,
     "also lay out cards that lack facts, as print --draft does", NULL},
    {OF_WHY, "draft", 0, OPTION_FLAG, AT(draft), NULL,
     "explain the cards as print --draft prints them", NULL},
    {OF_PRINT, "quiet", 0, OPTION_FLAG, AT(quiet), NULL, "print nothing but problems", NULL},
    {OF_PRINT, "each", 0, OPTION_FLAG, AT(each), NULL,
     "also write one file a card (BOAT-CARD.pdf)", NULL},
    {OF_PRINT, "proof", 0, OPTION_FLAG, AT(proof), NULL,
     "also all cards small on one page, with codes (BOAT-proof.pdf)", NULL},
    {OF_PRINT, "stickers", 0, OPTION_FLAG, AT(stickers), NULL,
     "stickers for the gear in the place of cards (BOAT-stickers.pdf)", NULL},
    {OF_PRINT, "label", 0, OPTION_TEXT, AT(label), "WxH",
     "labels of this width and height in mm (default 63x40)", NULL},
    {OF_PRINT, "label-gap", 0, OPTION_TEXT, AT(label_gap), "WxH",
     "with such gaps between them (default 0x0)", NULL},
    {OF_PRINT, "label-at", 0, OPTION_TEXT, AT(label_at), "WxH",
     "the first so far from the left and upper edge (default: centred)", NULL},
    {OF_PRINT, "jobs", 'j', OPTION_TEXT, AT(processes), "N",
     "print N boats at once (default: one a processor)", NULL},
    {OF_PRINT, "again", 0, OPTION_FLAG, AT(again), NULL,
     "also boats whose files stand as they would be printed", NULL},
    {OF_PRINT, "list", 0, OPTION_FLAG, AT(list), NULL,
     "tell what would be printed, with check codes; write nothing", NULL},
    /* pages as text instead of PDF: for the tests, and told nowhere */
    {OF_ALL & ~(OF_LIST | OF_HANG | OF_RENEW | OF_DUE | OF_TABLE | OF_TAKE | OF_VERIFY), "dump", 0,
     OPTION_FLAG, AT(dump), NULL, NULL, NULL},

    /* the call */
    {OF_CALL, "nature", 0, OPTION_TEXT, AT(nature), "NATURE",
     "a MAYDAY of this nature (such as fire)", NULL},
    {OF_CALL, "pan-pan", 0, OPTION_FLAG, AT(pan_pan), NULL,
     "PAN PAN: urgent, no grave danger", NULL},
    {OF_CALL, "securite", 0, OPTION_FLAG, AT(securite), NULL,
     "SECURITE: a warning to all", NULL},
    {OF_CALL, "receipt", 0, OPTION_FLAG, AT(receipt), NULL,
     "that another boat's MAYDAY was heard", NULL},
    {OF_CALL, "relay", 0, OPTION_FLAG, AT(relay), NULL, "MAYDAY RELAY for another boat", NULL},
    {OF_CALL, "downgrade", 0, OPTION_FLAG, AT(downgrade), NULL,
     "help is no longer needed at once", NULL},
    {OF_CALL, "cancel", 0, OPTION_FLAG, AT(cancel), NULL,
     "cancel a false alert of the radio", NULL},
    {OF_CALL, "cancel-beacon", 0, OPTION_FLAG, AT(cancel_beacon), NULL,
     "tell of a beacon that went off by mistake", NULL},
    {OF_CALL, "spell", 0, OPTION_FLAG, AT(spell), NULL,
     "name and call sign spelled, MMSI, beacons", NULL},
    {OF_CALL, "itu-figures", 0, OPTION_FLAG, AT(itu_figures), NULL,
     "with --spell: the ITU's words for the figures, for training", NULL},
    {OF_CALL, "position", 0, OPTION_TEXT, AT(position), "POSITION",
     "fill this position in (such as \"43 28.35 N 16 26.1 E\")", NULL},
    {OF_CALL, "time", 0, OPTION_TEXT, AT(time), "TIME",
     "fill this time in, by the clock on board; \"10:30 UTC\" is UTC", NULL},
    {OF_CALL, "bearing", 0, OPTION_TEXT, AT(bearing), "BEARING",
     "of a mark, as taken (such as \"100 M\" or \"086 T\")", NULL},

    /* the charter */
    {OF_CHECK | OF_BRIEF, "from", 0, OPTION_DATE, AT(from), "DATE", "first day of a charter",
     NULL},
    {OF_CHECK | OF_BRIEF, "to", 0, OPTION_DATE, AT(to), "DATE",
     "its last day, when the boat is handed back", NULL},
    {OF_CHECK, "crew", 0, OPTION_TEXT, AT(crew), "LIST",
     "body masses in kg, such as 80,75,18", NULL},

    {OF_BRIEF, "people", 0, OPTION_TEXT, AT(people), "N",
     "how many are aboard, skipper and children too", NULL},
    {OF_BRIEF, "children", 0, OPTION_TEXT, AT(children), "N", "how many of them are children",
     NULL},
    {OF_BRIEF, "masses", 0, OPTION_TEXT, AT(masses), "LIST",
     "body mass of each in kg, such as 80,75,18", NULL},
    {OF_BRIEF, "since", 0, OPTION_DATE, AT(since), "DATE",
     "tell what was done on board from this day on", NULL},

    /* what check tells */
    {OF_CHECK, "fail", 0, OPTION_CHOICE, AT(fail_from), "SEVERITY",
     "exit 1 from this on (default deficiency)", severities},
    {OF_CHECK, "page", 0, OPTION_FLAG, AT(page), NULL,
     "also the audit of each page: what was measured, by which rule", NULL},
    {OF_CHECK, "figures", 0, OPTION_FLAG, AT(figures), NULL,
     "also the figures for the base and the skipper", NULL},
    {OF_CHECK, "differs", 0, OPTION_FLAG, AT(differs), NULL,
     "only how the boats of each model differ from it", NULL},
    {OF_CHECK, "json", 0, OPTION_FLAG, AT(json), NULL,
     "all that was found as JSON, on standard output", NULL},
    {OF_LIST | OF_VERIFY, "json", 0, OPTION_FLAG, AT(json), NULL,
     "the same as JSON, on standard output", NULL},
    {OF_VERIFY, "base", 0, OPTION_TEXT, AT(base), "BASE",
     "also hold each boat's file against the one of the print", NULL},
    {OF_CHECK, "list", 0, OPTION_ALONE, AT(list), NULL, "list every check; needs no BASE", NULL},
    {OF_CHECK, "schema", 0, OPTION_ALONE, AT(schema), NULL,
     "print the JSON Schema of --json; needs no BASE", NULL},

    /* what hangs, and dates */
    {OF_HANG, "place", 0, OPTION_TEXT, AT(place), "PLACE",
     "where they hang, in a few words (such as \"chart table\")", NULL},
    {OF_HANG, "by", 0, OPTION_TEXT, AT(by), "WHO", "who hung them (such as initials)", NULL},
    {OF_HANG, "checked", 0, OPTION_FLAG, AT(checked), NULL,
     "each code was compared with print --list", NULL},
    {OF_HANG, "down", 0, OPTION_FLAG, AT(down), NULL,
     "they were taken down: from everywhere, or from --place", NULL},
    {OF_RENEW, "by", 0, OPTION_DATE, AT(horizon), "DATE",
     "also what changes by itself up to this day", NULL},
    {OF_RENEW, "code", 0, OPTION_LIST, AT(codes), "CODE,...",
     "what card has this check code (such as 3EHB-1W4H)", NULL},
    {OF_RENEW, "print", 0, OPTION_FLAG, AT(print), NULL,
     "print those to replace, one file a card", NULL},
    {OF_START, "register", 0, OPTION_FLAG, AT(begin_register), NULL,
     "only a register, for a base that has none", NULL},
    {OF_DUE, "until", 0, OPTION_DATE, AT(horizon), "DATE",
     "only what is to come up to this day, and what is past", NULL},
    {OF_DUE, "csv", 0, OPTION_FLAG, AT(csv), NULL, "as a table for a spreadsheet", NULL},
    {OF_DUE, "ics", 0, OPTION_FLAG, AT(ics), NULL,
     "as a calendar (RFC 5545), a day a date", NULL},
    {OF_DUE, "output", 'o', OPTION_TEXT, AT(file), "FILE",
     "where it goes (default: standard output)", NULL},

    {OF_ALL, "help", 'h', OPTION_HELP, 0, NULL, "tell how it is used", NULL},
    {OF_ALL, "version", 'V', OPTION_VERSION, 0, NULL, "tell the version", NULL},
};
#undef AT

const struct option_row *option_at(size_t index)
{
    _Static_assert(sizeof option_rows / sizeof *option_rows <= OPTIONS_MOST, "too many rows");
    return index < sizeof option_rows / sizeof *option_rows ? &option_rows[index] : NULL;
}

/* ---- which go together ---- */

#define APART_MOST 11
static const char *const apart[][APART_MOST] = {
    {"card", "all", "figure", NULL},
    {"sign-off", "all", NULL},
    {"sign-off", "figure", NULL},
    {"sign-off", "boat", NULL},
    {"sign-off", "draft", NULL},
    {"hull", "like", NULL},
    {"card", "nature", "relay", "downgrade", "cancel", "spell", "pan-pan", "securite", "receipt",
     "cancel-beacon", NULL},
    {"json", "page", "list", "schema", NULL},
    {"quiet", "list", "dump", NULL},
    {"stickers", "list", "proof", NULL},
    {"stickers", "each", NULL},
    {"stickers", "card", NULL},
    {"stickers", "draft", NULL},
    {"stickers", "punch", NULL},
    {"stickers", "pouch", NULL},
    {"proof", "list", NULL},
    {"figures", "json", "list", "schema", NULL},
    {"differs", "json", "page", "list", "schema", "figures", NULL},
    {"down", "checked", NULL},
    {"code", "print", NULL},
    {"csv", "ics", NULL},
    {"register", "boat", NULL},
};

const char *const *options_apart(size_t index)
{
    return index < sizeof apart / sizeof *apart ? apart[index] : NULL;
}

static const struct option_need needs[] = {
    {"from", "to", "write the last day of the charter too, such as --to 2027-05-08"},
    {"to", "from", "write the first day of the charter too, such as --from 2027-05-01"},
    {"label", "stickers", "add --stickers, or leave it out: cards have no labels"},
    {"label-gap", "stickers", "add --stickers, or leave it out: cards have no labels"},
    {"label-at", "stickers", "add --stickers, or leave it out: cards have no labels"},
    {"people", "from", "write the first day of the charter, such as --from 2027-05-01"},
    {"rig", "hull", "say of which hull the new boat is: --hull monohull"},
    {"like", "boat", "name the boat that is like it: --boat tern"},
    {"itu-figures", "spell", "add --spell, or leave it out: no call is made with these words"},
};

bool option_is_of_pages(const struct option_row *row)
{
    static const char *const others[] = {"boat", "output", "quiet", "jobs", "again", "date"};
    for (size_t i = 0; i < sizeof others / sizeof *others; i++)
        if (text_equal(row->name, others[i]))
            return false;
    return true;
}

struct option_need option_need_at(size_t index)
{
    return index < sizeof needs / sizeof *needs ? needs[index] : (struct option_need){0};
}
