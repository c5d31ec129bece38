/* app.h - commands and options (room: app). Private to src/app. */
#ifndef MAYDECK_APP_H
#define MAYDECK_APP_H

#include "boat.h"
#include "card.h"
#include "draw.h"
#include "layout.h"
#include "problem.h"
#include "proof.h"
#include "rules.h"

enum exit_status { EXIT_GOOD = 0, EXIT_FOUND = 1, EXIT_USE = 2, EXIT_SYSTEM = 3 };

struct names {
    const char **at;
    size_t count, room;
};

struct options {
    const char *base;         /* the base folder */
    struct names boats;       /* those named; none: all */
    struct names cards;       /* those named, by card or procedure; none: all */
    const char *output;       /* folder for what is made */
    struct date today;
    bool draft;
    bool dump;                /* pages as text instead of PDF: for the tests */
    bool quiet, each;         /* print */
    bool all;                 /* why: every card, none named */
    const char *figure;       /* why: a key of figure_find, or all; NULL: cards */
    const char *nature;       /* call: a key of nature_find */
    bool relay, downgrade, cancel, spell;
    bool itu_figures;         /* call: with spell */
    const char *position, *bearing;  /* call: as given */
    const char *type;         /* start: monohull or catamaran; NULL: not told */
    /* check */
    struct date from, to;     /* the charter; year 0: not told */
    const char *crew;         /* body masses, such as 80,75,18; NULL: not told */
    bool json, list, schema;
    bool page;                /* the audit of each page */
    unsigned fail_from;       /* enum fail_from */
};

/* What --fail takes, in the order of its choices: from which severity on a check fails. */
enum fail_from { FAIL_FROM_DEFICIENCY, FAIL_FROM_ERROR };

/* ---- options.c ---- */

struct command {
    const char *name;
    unsigned bit;             /* by which the rows of options name it */
    const char *about;
    const char *help;         /* what it does, in a few lines */
    enum exit_status (*run)(const struct options *options);
};
extern const struct command commands[];
extern const size_t command_count;

/* ---- command_line.c ---- */

/* Reads the command line into *options, which lives as long as the arena. NULL: help or a
 * message was printed, *status says how to leave. */
const struct command *options_read(int argc, char **argv, struct arena *arena,
                                   struct options *options, enum exit_status *status);

/* ---- fleet.c ---- */

/* The words of each language that has a folder. */
struct languages {
    const struct words *const *rows;
    size_t count;
};

/* All that a run reads before it looks at boats. */
struct fleet {
    struct arena *arena;          /* of the run, or of the boat being worked on */
    struct problems *problems;
    struct faces *faces;
    struct languages languages;   /* each that cards can be printed in */
    const struct words *words;    /* of the language that they are printed in */
    const struct authorities *authorities;
    struct procedure_set procedures;
    const struct base_record *base;
    struct names base_keys;       /* of every boat of the base */
    const char *const *boat_keys; /* of those that were asked for */
    const struct source *const *boat_sources; /* their files; NULL: it could not be read */
    size_t boat_count;
    struct crew crew;             /* of --crew */
    struct identities *identities;    /* of every boat of the base */
    bool ready;           /* own files and base are sound: cards can be made */
};

/* Reads procedures, words, faces and base. False when no boat can be looked at;
 * what is wrong is in fleet->problems either way. Where only the base is wrong the
 * boats are read all the same, so that one run tells every error. */
bool fleet_open(const struct options *options, struct fleet *fleet);

/* The same without a base: procedures, words and faces. */
bool fleet_begin(struct fleet *fleet);

/* --crew as body masses in kg; a wrong one is a wrong use. (crew.c) */
void crew_read(const struct options *options, struct fleet *fleet);

void fleet_close(struct fleet *fleet);

/* The same fleet with an arena for one boat, to be freed when she is done: what is
 * made for a boat dies with it. */
struct fleet fleet_for_boat(const struct fleet *fleet);

/* One boat from file to pages. */
struct boat_work {
    const char *key;
    const struct boat *boat;  /* NULL: the file could not be used */
    const struct card_set *set;
    bool cards_exist;         /* all that --card asks for are cards of hers */
    const struct page *const *pages;       /* NULL: not laid out, or not to be read */
    const struct proof_report *reports;    /* one a card, as pages */
};
struct compose_input compose_input_of(const struct options *options, const struct fleet *fleet,
                                      const struct boat *boat);
struct boat_work boat_work(const struct options *options, const struct fleet *fleet,
                           size_t index);

/* ---- files.c ---- */

bool is_folder(const char *path);
bool is_plain_file(const char *path);   /* and no link to one */

void names_add(struct names *names, const char *name, struct arena *arena);
bool names_hold(const struct names *names, const char *name);

/* What lies in the folder, hidden or not, in byte order. Gives errno where the system
 * refuses, also in the middle: then not all names are there. */
int folder_names(struct arena *arena, const char *folder, struct names *names);
void folder_refused(const struct fleet *fleet, const char *folder, int error);

/* NULL with a problem, of `absent` severity when there is no such file; where that is a
 * failure, one that is too large is one too. */
const struct source *file_read(const struct fleet *fleet, const char *path, enum severity absent,
                               const char *remedy);

/* ---- own_files.c ---- */

/* Procedures, words and faces: the program's own, held against procedures/manifest.txt. */
bool own_files_read(struct fleet *fleet);

/* ---- boat_files.c ---- */

/* Which boats the base has and which are asked for. False when there is none, or the
 * folder cannot be read. What lies in boats/ and is not read is told. */
bool boats_list(const struct options *options, struct fleet *fleet);

/* Reads the files of those asked for, and of all others their identities. What cannot be
 * read is told, and stops no other boat. */
void boats_read(const struct options *options, struct fleet *fleet);

/* ---- cards.c ---- */

/* Composes and lays out the boat's set into `work`. Figures that make a card too long
 * for its page are left out of it, one after the other. */
void cards_make(const struct fleet *fleet, const struct compose_input *input,
                struct boat_work *work);

/* Is this a card that --card asks for? */
bool card_wanted(const struct options *options, const struct card *card);

/* ---- proofread.c ---- */

/* Holds each laid-out page against the page rules. A page with an error is no page any
 * more: it is told as held back by a problem of the family "page". */
void pages_proofread(const struct fleet *fleet, struct boat_work *work);

/* What was measured on the pages of the cards that are wanted: see proof_print. */
void audit_add(const struct options *options, const struct boat_work *work,
               struct text_builder *out);

/* ---- progress.c ---- */

/* A line on the terminal once a run has taken a second. */
struct progress {
    bool wanted, shown;
    size_t total;
    int64_t begun_ms;
};
struct progress progress_begin(bool quiet, size_t total);
void progress_tell(struct progress *progress, size_t done, const char *boat);
/* Takes the line away: before anything else is printed, and at the end. */
void progress_clear(struct progress *progress);

/* ---- call_place.c ---- */

/* Where a call says that the boat is. */
struct call_place {
    bool position_given, bearing_given;
    struct position position;
    struct bearing bearing;
};

/* Reads --position and --bearing. False, with a problem, when one is wrong, has no
 * place in what is asked for, or is magnetic and the base's variation is not recorded. */
bool call_place_read(const struct options *options, const struct fleet *fleet,
                     struct call_place *place);

/* Prints the position in its three forms and as it is spoken; the true bearing and the
 * direction from the mark. */
void call_place_print(const struct call_place *place, const struct fleet *fleet);

/* ---- report.c ---- */

/* The exit status for all problems: 1 for an error and what is held back, and for
 * a deficiency if those count. */
enum exit_status status_of(const struct problems *problems, bool deficiencies_count);

/* Prints all problems to standard error and gives the exit status for them. */
enum exit_status report(struct fleet *fleet, bool deficiencies_count);

/* The same without what the checks found short of an error: whoever prints has cards
 * to look at, and `check` tells the rest. What is held back counts. */
enum exit_status report_of_cards(struct fleet *fleet);

/* Prints only what the run as a whole found, such as files that were not read, and gives the
 * exit status for that: whoever shows one boat's call has printed it already. */
enum exit_status report_of_run(struct fleet *fleet);

/* How much that is, a line a boat, on standard output. */
void report_left_for_check(struct fleet *fleet);

/* ---- check_rows.c: what `check` says of each boat ---- */

struct check_row {
    const char *key;
    bool read;                /* her file could be used */
    bool composed;
    size_t recorded, items;   /* kinds of gear mentioned, of all */
    size_t ready, of;         /* cards */
    const struct card_not_hers *not_hers;
    size_t not_hers_count;
    size_t counts[SEVERITY_COUNT];
    const char *first_date;   /* the first date of her gear; NULL: none recorded */
    const char *first_item, *first_tag;
};

/* All texts are copied into the arena. The counts are filled in by check_rows_count. */
struct check_row check_row_make(const struct fleet *fleet, const struct boat_work *work,
                                struct arena *arena);
void check_rows_count(struct check_row *rows, size_t count, struct problems *problems);

/* The table of the fleet, and the cards that are not a boat's. */
void check_rows_print(const struct check_row *rows, size_t count);

/* ---- check_json.c ---- */

/* The result of a check as JSON (see check_schema_print), on standard output. */
void check_json_print(const struct options *options, struct fleet *fleet,
                      const struct check_row *rows, size_t count);
/* Its JSON Schema (draft 2020-12). */
void check_schema_print(void);

/* ---- check_list.c ---- */
void check_list_print(void);

/* ---- places.c: where the program's own files are ---- */
const char *program_folder(struct arena *arena, const char *what);

enum exit_status command_print(const struct options *options);
enum exit_status command_check(const struct options *options);
enum exit_status command_why(const struct options *options);
enum exit_status command_call(const struct options *options);
enum exit_status command_start(const struct options *options);

#endif
