/* commands.c - the commands, a row each, with what their help tells (room: app). */
#include "choices.h"
#include "completion.h"
#include "manual.h"

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
     "the gear in BASE/models/MODEL.yaml. No file that is there is ever changed.\n"
     "BASE/schema holds JSON Schemas, which the first line of each file names: editors that\n"
     "know it offer keys and words and mark slips. Those of an older version are replaced.",
     command_start, NULL},
    {"list", OF_LIST, "list what the files of a base may say",
     "items     kinds of gear: key, what cards call it, letter of its tags, what to record\n"
     "zones     parts of a boat: key, what cards call it, where it lies, which boats have it\n"
     "cards     number, key, title, and which boats have the card\n"
     "natures   natures of distress, as `call --nature` takes them\n"
     "fields    every key of base.yaml and of a boat's file, and what may stand there\n"
     "checks    what problems name and silenced: takes: id, severity, what is wrong then\n"
     "rules     rules of a page: id, what a breach does, who judges it\n"
     "figures   figures from the record: id as `why --figure` takes it, where they may stand\n"
     "statuses  exit statuses of every command, and what they say\n"
     "No id is ever renamed or taken away, so that scripts can rely on them.\n"
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
    {"manual", OF_MANUAL, "print a page of the manual as source for man",
     "commands   maydeck(1): every command and option, as mdoc(7)\n"
     "files      maydeck-files(5): every key of every file, as mdoc(7)\n"
     "reference  a page for print, as troff with the macros ms\n"
     "`make manual` makes pages of them. `maydeck help` tells the same on the screen.",
     command_manual, manual_page_words},
    {"completion", OF_COMPLETION, "print what shells complete words of the command line by",
     "bash       a script for bash: source it, or put it where bash-completion looks\n"
     "zsh        one for zsh: _maydeck, in a folder of fpath\n"
     "fish       one for fish: maydeck.fish, in a folder completions\n"
     "boats      of BASE: names, a line each, as --boat takes them\n"
     "models     of BASE, as --like takes them\n"
     "cards      the program's, and those of BASE if it is named\n"
     "figures    as why --figure takes them\n"
     "natures    as call --nature takes them\n"
     "languages  as --lang takes them\n"
     "items      kinds of gear\n"
     "zones      parts of a boat\n"
     "checks     as check --list names them\n"
     "topics     what help has a page on\n"
     "words      all that help tells of\n"
     "The scripts ask for the names by these words. A BASE is named behind the topic.",
     command_completion, completion_topic_words},
    {"schema", OF_SCHEMA, "print the JSON Schema of a kind of file, for editors",
     "base       base.yaml\n"
     "boat       boats/BOAT.yaml\n"
     "model      models/MODEL.yaml\n"
     "procedure  procedures/NAME.yaml, the logic of a base's own card\n"
     "texts      procedures/words/LANGUAGE/NAME.yaml, its texts\n"
     "sources    procedures/sources.yaml, what cards stand on\n"
     "words      procedures/words/LANGUAGE/words.yaml, the words of a language\n"
     "check      what `check --json` says\n"
     "JSON Schema, draft 2020-12: an editor that knows it offers keys and words, and marks what\n"
     "`check` would refuse for its form. What files mean, only `check` knows.",
     command_schema, schema_topic_words},
};
const size_t command_count = sizeof commands / sizeof *commands;
