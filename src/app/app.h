/* app.h - commands and options (room: app). Private to src/app. */
#ifndef MAYDECK_APP_H
#define MAYDECK_APP_H

#include "boat.h"
#include "card.h"
#include "draw.h"
#include "layout.h"
#include "problem.h"
#include "proof.h"

enum exit_status { EXIT_GOOD = 0, EXIT_FOUND = 1, EXIT_USE = 2, EXIT_SYSTEM = 3 };

struct options {
    const char *base;         /* the base folder */
    const char *boat;         /* NULL: all */
    const char *card;         /* NULL: all */
    const char *output;       /* folder for what is made */
    struct date today;
    bool draft;
    bool dump;                /* pages as text instead of PDF: for the tests */
    bool quiet, each;         /* print */
    bool all;                 /* why: every card, none named */
    bool page;                /* check: tell what the proofreader measured */
    const char *nature;       /* call: a key of nature_find */
    bool relay, downgrade, cancel, spell;
    const char *type;         /* start: monohull or catamaran; NULL: not told */
};

/* ---- options.c ---- */

struct command {
    const char *name;
    const char *about;
    const char *options;      /* the short letters of the options it takes */
    const char *help;         /* what it does, in a few lines */
    enum exit_status (*run)(const struct options *options);
};
extern const struct command commands[];
extern const size_t command_count;

/* Reads the command line. NULL: help or a message was printed, *status says
 * how to leave. */
const struct command *options_read(int argc, char **argv, struct options *options,
                                   enum exit_status *status);

/* ---- fleet.c ---- */

/* All that a run reads before it looks at boats. */
struct fleet {
    struct arena *arena;          /* of the run, or of the boat being worked on */
    struct arena *sources;        /* of the run: boat files stay for the messages */
    struct problems *problems;
    struct faces *faces;
    const struct words *words;
    const struct authorities *authorities;
    struct procedure_set procedures;
    const struct base_record *base;
    const char *const *boat_paths;
    const char *const *boat_keys;
    size_t boat_count;
    bool ready;           /* own files and base are sound: cards can be made */
};

/* Reads procedures, words, faces and base. False when no boat can be looked at;
 * what is wrong is in fleet->problems either way. Where only the base is wrong the
 * boats are read all the same, so that one run tells every error. */
bool fleet_open(const struct options *options, struct fleet *fleet);

/* The same without a base: procedures, words and faces. */
bool fleet_begin(struct fleet *fleet);
void fleet_close(struct fleet *fleet);

/* The same fleet with an arena for one boat, to be freed when she is done: what is
 * made for a boat dies with it. */
struct fleet fleet_for_boat(const struct fleet *fleet);

/* One boat from file to pages. */
struct boat_work {
    const char *key;
    const struct boat *boat;  /* NULL: the file could not be used */
    const struct card_set *set;
    const struct page *const *pages;       /* NULL: not laid out, or not to be read */
    const struct proof_report *reports;    /* one a card, as pages */
};
struct boat_work boat_work(const struct options *options, const struct fleet *fleet,
                           size_t index);

/* Is this the card that --card asks for? */
bool card_wanted(const struct options *options, const struct card *card);

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

/* ---- report.c ---- */

/* Prints all problems to standard error and gives the exit status for them. */
enum exit_status report(struct fleet *fleet, bool deficiencies_count);

/* ---- places.c: where the program's own files are ---- */
const char *program_folder(struct arena *arena, const char *what);

enum exit_status command_print(const struct options *options);
enum exit_status command_check(const struct options *options);
enum exit_status command_why(const struct options *options);
enum exit_status command_call(const struct options *options);
enum exit_status command_start(const struct options *options);

#endif
