/* options.c - the options of all commands, a row each (room: app). Knows what there is, not how it
 * is read. */
#include "choices.h"
#include "options.h"
#include "paper.h"

#include <stddef.h>

static const char *const punch_words[] = {PUNCH_LIST(CHOICE_WORD) NULL};
static const char *const pouch_words[] = {POUCH_LIST(CHOICE_WORD) NULL};
static const char *const severities[] = {"deficiency", "error", NULL};

#define AT(member) offsetof(struct options, member)
static const struct option_row option_rows[] = {
    /* which boats and cards */
    {OF_PRINT | OF_CHECK | OF_WHY, "boat", 0, OPTION_LIST, AT(boats), "BOAT,...",
     "only these boats (file names without .yaml); -: standard input", NULL},
    {OF_GIVEN, "as", 0, OPTION_TEXT, AT(as), "BOAT",
     "which boat the one from standard input is, or a new one's name", NULL},
    {OF_RENEW | OF_DUE | OF_TABLE | OF_BRIEF, "boat", 0, OPTION_LIST, AT(boats), "BOAT,...",
     "only these boats (file names without .yaml)", NULL},
    {OF_HANG, "boat", 0, OPTION_LIST, AT(boats), "BOAT,...",
     "whose cards (her file name without .yaml)", NULL},
    {OF_CALL, "boat", 0, OPTION_LIST, AT(boats), "BOAT",
     "which boat calls (its file name without .yaml); -: standard input", NULL},
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
    {OF_PRINT, "output", 'o', OPTION_TEXT, AT(output), "DIR",
     "where the files go (default: cards); -: one PDF on standard output", NULL},
    {OF_BRIEF | OF_SURVEY, "output", 'o', OPTION_TEXT, AT(output), "DIR",
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
    {OF_ALL & ~(OF_LIST | OF_HANG | OF_RENEW | OF_DUE | OF_TABLE | OF_TAKE | OF_VERIFY |
                OF_SCHEMA | OF_MANUAL | OF_COMPLETION),
     "dump", 0, OPTION_FLAG, AT(dump), NULL, NULL, NULL},

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
    {OF_LIST | OF_VERIFY | OF_WHY | OF_CALL | OF_RENEW | OF_DUE, "json", 0, OPTION_FLAG, AT(json),
     NULL, "the same as JSON, on standard output", NULL},
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
    {OF_START, "schemas", 0, OPTION_FLAG, AT(schemas), NULL,
     "only the schemas for editors, of a base without or older", NULL},
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
    {"sign-off", "json", NULL},
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
    {"csv", "ics", "json", NULL},
    {"json", "print", NULL},
    {"register", "boat", "schemas", NULL},
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
    static const char *const others[] = {"boat", "as", "output", "quiet", "jobs", "again", "date"};
    for (size_t i = 0; i < sizeof others / sizeof *others; i++)
        if (text_equal(row->name, others[i]))
            return false;
    return true;
}

struct option_need option_need_at(size_t index)
{
    return index < sizeof needs / sizeof *needs ? needs[index] : (struct option_need){0};
}
