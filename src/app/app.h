/* app.h - commands and options (room: app). Private to src/app. */
#ifndef MAYDECK_APP_H
#define MAYDECK_APP_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "choice.h"
#include "date.h"
#include "names.h"

enum exit_status { EXIT_GOOD = 0, EXIT_FOUND = 1, EXIT_USE = 2, EXIT_SYSTEM = 3 };

/* What stands for standard input, and for standard output. */
#define STREAM_NAME "-"

/* What `list` tells of, and the words by which it is asked. */
#define LIST_TOPIC_LIST(X) \
    X(LIST_ITEMS, "items") X(LIST_ZONES, "zones") X(LIST_CARDS, "cards") \
    X(LIST_NATURES, "natures") X(LIST_FIELDS, "fields") X(LIST_CHECKS, "checks") \
    X(LIST_RULES, "rules") X(LIST_FIGURES, "figures") X(LIST_STATUSES, "statuses")
enum list_topic { LIST_NONE, LIST_TOPIC_LIST(CHOICE_NAME) LIST_TOPIC_COUNT };
extern const char *const list_topic_words[];   /* NULL-ended, each at its value less one */

/* What `schema` tells of: kinds of files, and what `check --json` says. */
#define SCHEMA_TOPIC_LIST(X) \
    X(SCHEMA_BASE, "base") X(SCHEMA_BOAT, "boat") X(SCHEMA_MODEL, "model") \
    X(SCHEMA_PROCEDURE, "procedure") X(SCHEMA_TEXTS, "texts") X(SCHEMA_SOURCES, "sources") \
    X(SCHEMA_WORDS, "words") X(SCHEMA_CHECK, "check")
enum schema_topic { SCHEMA_NONE, SCHEMA_TOPIC_LIST(CHOICE_NAME) SCHEMA_TOPIC_COUNT };
extern const char *const schema_topic_words[];   /* the same */

struct options {
    const char *base;         /* the base folder */
    struct names boats;       /* those named; none: all; STREAM_NAME: from standard input */
    const char *as;           /* which boat that is; NULL: by her name */
    struct names cards;       /* those named, by card or procedure; none: all */
    struct names languages;   /* of the cards; none: the base's first */
    const char *output;       /* folder for what is made */
    struct date today;
    bool draft;
    bool dump;                /* pages as text instead of PDF: for the tests */
    bool quiet, each, proof;  /* print */
    bool again;               /* print: also boats whose files stand as they would be printed */
    const char *processes;    /* print: how many at once, as given; NULL: not told */
    struct text_builder pages_by; /* options as given, but those that pages never follow from */
    bool all;                 /* why: every card, none named */
    bool sign_off;            /* why: sheets to read and sign */
    const char *figure;       /* why: a key of figure_find, or all; NULL: cards */
    const char *nature;       /* call: one of nature_words */
    bool relay, downgrade, cancel, spell;
    bool pan_pan, securite, receipt, cancel_beacon;
    bool itu_figures;         /* call: with spell */
    const char *position, *bearing, *time;  /* call: as given */
    const char *hull;         /* start: a word of hull_words; NULL: not told */
    const char *like;         /* start: a model of the base; NULL: none */
    unsigned new_hull;        /* survey: enum hull of a new boat; HULL_NONE: of those there are */
    unsigned rig;             /* survey: enum rig of a new boat; RIG_NONE: not told */
    /* check */
    struct date from, to;     /* the charter; year 0: not told */
    const char *crew;         /* body masses, such as 80,75,18; NULL: not told */
    /* brief: as given, NULL: not told */
    const char *people, *children, *masses;
    struct date since;        /* when the boat was last handed over; year 0: not told */
    bool json, list, schema;  /* print has list too, of what it would print; list has json */
    bool page;                /* the audit of each page */
    unsigned topic;           /* what of: an enum of the command, such as list_topic; 0: none */
    const char *language;     /* list: whose words; NULL: DEFAULT_LANGUAGE */
    bool figures;             /* those for the base */
    bool differs;             /* how boats differ from their models, and nothing else */
    unsigned fail_from;       /* enum fail_from */
    /* pages: print, and check of what it would print */
    bool stickers;            /* print: in the place of cards, on labels of these sizes in mm */
    const char *label, *label_gap, *label_at;
    unsigned paper;           /* enum paper_key; PAPER_NONE: the base's */
    bool mono;                /* without colour */
    unsigned punch;           /* enum punch */
    unsigned pouch;           /* enum pouch */
    const char *table;        /* table: the file to write; NULL: standard output */
    bool write;               /* take: change the boats' files */
    /* what hangs on board */
    const char *place, *by;   /* hang: where the cards hang, and who hung them */
    bool down, checked;       /* hang: they were taken down; codes were compared by eye */
    struct names codes;       /* renew: check codes as they were typed; none: what hangs */
    bool print;               /* renew: print what is to be replaced */
    struct date horizon;      /* renew, due: up to which day; year 0: not told */
    bool begin_register;      /* start: a register for a base that has none */
    bool schemas;             /* start: only the schemas of a base's files */
    /* due */
    bool csv, ics;
    const char *file;         /* due: where it goes, NULL: standard output; take: the table;
                                 verify: the folder, or a file in it */
};

/* What --fail takes, in the order of its choices: from which severity on a check fails. */
enum fail_from { FAIL_FROM_UNSAID, FAIL_FROM_DEFICIENCY, FAIL_FROM_ERROR };

/* ---- options.c ---- */

struct command {
    const char *name;
    unsigned bit;             /* by which the rows of options name it */
    const char *about;
    const char *help;         /* what it does, in a few lines */
    enum exit_status (*run)(const struct options *options);
    const char *const *topics; /* what it may be asked of in the place of a base; NULL: of a
                                  base alone */
};
extern const struct command commands[];
extern const size_t command_count;

/* ---- command_line.c ---- */

/* Reads the command line into *options, which lives as long as the arena. NULL: help or a
 * message was printed, *status says how to leave. */
const struct command *options_read(int argc, char **argv, struct arena *arena,
                                   struct options *options, enum exit_status *status);

/* ---- command_NAME.c ---- */

enum exit_status command_print(const struct options *options);
enum exit_status command_check(const struct options *options);
enum exit_status command_why(const struct options *options);
enum exit_status command_call(const struct options *options);
enum exit_status command_start(const struct options *options);
enum exit_status command_list(const struct options *options);
enum exit_status command_table(const struct options *options);
enum exit_status command_take(const struct options *options);
enum exit_status command_hang(const struct options *options);
enum exit_status command_renew(const struct options *options);
enum exit_status command_due(const struct options *options);
enum exit_status command_brief(const struct options *options);
enum exit_status command_survey(const struct options *options);
enum exit_status command_verify(const struct options *options);
enum exit_status command_manual(const struct options *options);
enum exit_status command_completion(const struct options *options);
enum exit_status command_schema(const struct options *options);

#endif
