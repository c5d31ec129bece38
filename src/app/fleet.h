/* fleet.h - what a run reads before it works on any boat (room: app). Private to src/app. */
#ifndef MAYDECK_FLEET_H
#define MAYDECK_FLEET_H

#include <stdint.h>

#include "app.h"
#include "boat.h"
#include "face.h"
#include "problem.h"
#include "procedure.h"
#include "rules.h"
#include "words.h"

/* What of the program's own files a command reads, as bits. That they are whole is looked
 * at in any case. */
enum need {
    NEED_TEXTS = 1 << 0,      /* procedures, sources and words */
    NEED_FACES = 1 << 1,
    NEED_NO_BOATS = 1 << 2,   /* no boat of the base is looked at, and there may be none */
    NEED_BOATS_LATER = 1 << 5,    /* a boat's file is kept no longer than her turn takes */
    NEED_ANY_DAY = 1 << 3,    /* a clock that is wrong is told, and stops nothing: calls */
    NEED_NO_DAY = 1 << 4,     /* nothing hangs on today */
};

/* One boat that was asked for. */
struct boat_asked {
    const char *key;               /* the name of her file without .yaml */
    const struct source *source;   /* her file; NULL: it could not be read, or is read later */
    const char *path;              /* of her file, where it could be read and is read again in her
                                      turn; else NULL */
    uint64_t hash;                 /* of the file at `path` as it was read for her identities */
    const struct register_rows *prints;    /* her rows of the register; NULL: not looked at */
    const char *model;             /* the model that she is like, once she was read, or NULL */
    struct problems *problems;     /* all that the run has to say of her */
};

struct fleet {
    struct arena *arena;           /* of the run */
    struct problems *problems;     /* of the run and the program's own files */
    struct problems *base_problems;    /* of what the base's record says */
    struct faces *faces;           /* NULL: not needed, or not sound */
    struct languages languages;    /* each that the program has words of */
    struct languages printed;      /* those among them that sheets are made in */
    struct known_names known;      /* names of keys, for messages on the base's files */
    const struct words *first_language;    /* the base's first, else DEFAULT_LANGUAGE */
    const struct authorities *authorities;
    struct procedure_set procedures;
    bool procedures_sound;         /* all of them are there and could be used */
    const struct base_record *base;    /* NULL: base.yaml could not be used */
    struct models models;          /* of the base, in the order of their names */
    struct names base_keys;        /* of every boat of the base */
    struct boat_asked *boats;      /* those that were asked for, in the order of the base */
    size_t boat_count;
    struct crew crew;              /* of --crew */
    const struct hire *hire;       /* the charter that sheets are made for; NULL: for none */
    struct identities *identities;     /* of every boat of the base */
    struct text_builder *inputs;   /* names and sums, a line each, of the files that cards of every
                                      boat may follow from: the program's own and the base's */
    bool today_behind;             /* today lies before what was done already: it was told */
    bool ready;                    /* what was needed and the base are sound: sheets can be made */
};

/* ---- fleet.c ---- */

/* Reads of the program's own files what is needed (bits of enum need), the base, and all
 * boat files of the base. False when no boat can be looked at: the command was used
 * wrongly, or what is the program's own is not whole. What is wrong is in the lists of
 * problems either way. Where only the base's own record or a text is wrong, `ready` is
 * false and the boats are read all the same, so that one run tells every error. */
bool fleet_open(const struct options *options, unsigned needs, struct fleet *fleet);

void fleet_close(struct fleet *fleet);

/* What the checks of that boat start from; of the base where `boat` is NULL. */
struct rules_input rules_input_of(const struct options *options, const struct fleet *fleet,
                                  const struct boat *boat);

/* ---- today.c ---- */

/* False, with an error, where today lies before a day on which the texts were read or the rescue
 * centre was checked; where any day will do it is told all the same. */
bool today_sound(const struct options *options, unsigned needs, struct fleet *fleet);

/* ---- base_procedures.c ---- */

/* Reads BASE/procedures, if there is such a folder, and puts what it holds among the procedures
 * and sources of the fleet, which must be sound. A procedure that cannot be used is told and its
 * card refused; false: nothing there could be looked at, and no card can be made. */
bool base_procedures_read(const struct options *options, struct fleet *fleet);

/* ---- approvables.c ---- */

/* Hands to the checks of the base what approvals can be of; nothing while the procedures are not
 * sound. */
void approvables_take(const struct fleet *fleet, struct rules_input *input);

/* ---- languages.c ---- */

/* Where neither the command nor the base names a language. */
#define DEFAULT_LANGUAGE "en"

/* The words of a language that was asked for; NULL, with a problem, where there are none. */
const struct words *language_find(struct fleet *fleet, const char *language);

/* The base's own choice; false, with a problem each, for languages that do not exist. */
bool base_languages_take(struct fleet *fleet);

/* The languages of --lang, else the base's first. False, with a problem, for one that does
 * not exist. */
bool languages_choose(const struct options *options, struct fleet *fleet);

/* ---- own_files.c ---- */

/* Sound; read, but with errors in some text; not whole, or not to be read. */
enum own_files { OWN_FILES_SOUND, OWN_FILES_WRONG, OWN_FILES_BROKEN };

/* Begins the fleet with the program's own files: all are held against
 * procedures/manifest.txt, and what is needed is read. */
enum own_files fleet_begin(unsigned needs, struct fleet *fleet);

/* ---- stray_files.c ---- */

/* Is it a boat's file, by its name in boats/? What else lies there is told by the second. */
#define KEPT_FILE_END ".yaml.before-"     /* and a number: what `take` keeps, and no stray */
bool is_boat_file(struct arena *arena, const char *name);
void boat_stray_tell(const struct fleet *fleet, const char *folder, const char *name);

/* Tells what lies in the base's own folder and may be thought to be read. */
void base_strays_tell(const struct fleet *fleet, const char *base);

/* ---- boat_files.c ---- */

/* Which boats the base has and which are asked for. False when there is none, one that is
 * asked for is unknown, or the folder cannot be read. What lies in boats/ and is not read
 * is told. */
bool boats_list(const struct options *options, struct fleet *fleet);

/* alder.yaml, boats/alder.yaml: where the file is named in the place of the boat, the boat. */
const char *boat_of_file(const struct fleet *fleet, const char *file);

/* Reads the files of those asked for, and of all others their identities; with NEED_BOATS_LATER of
 * all their identities. What cannot be read is told, and stops no other boat. */
void boats_read(const struct options *options, unsigned needs, struct fleet *fleet);

/* The boat among those that were asked for; NULL: she is not. */
struct boat_asked *boat_asked_find(const struct fleet *fleet, const char *key);

/* Of all bytes of the file: for one that is read twice in a run. */
uint64_t source_hash(const struct source *source);

/* ---- boat_given.c ---- */

/* Is a boat asked for whose file comes from standard input? */
bool boat_is_given(const struct options *options);

/* Reads that file and makes her the only boat that is asked for: in the place of the one that --as
 * names, else of the base's boat of her name, else as a new boat of that name. False, with a
 * problem, where it cannot be. */
bool boat_given_take(const struct options *options, struct fleet *fleet);

/* ---- print_lost.c ---- */

/* Gives each boat that was asked for her rows of the register, if the base has one. */
void prints_take(const struct options *options, struct fleet *fleet);

/* ---- model_files.c ---- */

/* Reads every file of models/, if there is such a folder. What is wrong with one is told with
 * the boats that are like it. */
void models_read(const struct options *options, struct fleet *fleet);

/* ---- table_boats.c ---- */

struct table_boats;

/* The boats that were asked for and can stand in a table. Of the others it is told why. */
struct table_boats table_boats_open(const struct fleet *fleet);

/* ---- take_judge.c ---- */

struct take;

/* Reads each changed file again, as `check` does. False, with each error that the old file did
 * not have, by row and column where a cell is the cause. */
bool take_judge(const struct options *options, const struct fleet *fleet,
                const struct table_boats *boats, const struct take *take);

/* ---- crew.c ---- */

/* --crew as body masses in kg. False, with a problem, for a wrong one. */
bool crew_read(const struct options *options, struct fleet *fleet);

/* ---- hire.c ---- */

/* The charter of --from, --to, --people, --children, --masses and --since. False, with a problem
 * each, for what is missing or wrong. */
bool hire_read(const struct options *options, struct fleet *fleet);

/* ---- files.c ---- */

bool is_folder(const char *path);
bool is_plain_file(const char *path);   /* and no link to one */
bool is_there(const char *path);        /* of any kind, also a link that leads nowhere */

/* Where the system cannot say, these three answer yes: who asks then finds out by reading, and
 * writes over nothing. That it was so is told at the end of the run. */
bool is_unlooked(void);                 /* was it so? */
bool unlooked_tell(void);               /* tells it; false: it was not so */

size_t file_length(const char *path);   /* in bytes; 0 where there is none */

/* What lies in the folder, hidden or not, in byte order. Gives errno where the system
 * refuses, also in the middle: then not all names are there. */
int folder_names(struct arena *arena, const char *folder, struct names *names);
void folder_refused(struct problems *problems, const char *folder, int error);

/* What to say where a file is missing: how grave it is, and how it is mended. */
struct file_absent {
    enum severity severity;
    const char *remedy;
};

/* The file in `arena`. NULL, with a problem: of that severity when there is no such file;
 * where that is a failure, one that is too large is one too. */
const struct source *file_read(const char *path, struct file_absent absent, struct arena *arena,
                               struct problems *problems);

/* Takes note that cards of every boat may follow from what was read there; NULL: nothing was. */
void fleet_input_add(const struct fleet *fleet, const struct source *source);

/* ---- report.c ---- */

/* The exit status that these problems ask for: 1 from `least` on. */
enum exit_status status_of(const struct problems *problems, enum severity least);

/* All that the run and its boats have to say, what is the same once. */
struct problems *fleet_problems(const struct fleet *fleet);

/* Prints it to standard error; exit status 1 from `least` on. */
enum exit_status report(const struct fleet *fleet, enum severity least);

/* Prints to standard error only what was refused and what failed: why the command could not
 * do all that it was asked for. */
void report_refusals(const struct fleet *fleet);

/* As `report`, without what the checks found short of an error: whoever prints has cards
 * to look at, and `check` tells the rest. What is held back counts. */
enum exit_status report_of_cards(const struct fleet *fleet);

/* What the run has to say of no boat: of itself and of the base. */
struct problems *fleet_problems_of_no_boat(const struct fleet *fleet);

/* Prints only what the run as a whole found, such as files that were not read, and gives the
 * exit status for that: whoever shows one boat's call has printed it already. */
enum exit_status report_of_run(const struct fleet *fleet);

/* Prints what was found after that, and the status for it. */
enum exit_status report_late(const struct fleet *fleet, struct problems *late);

/* The graver of two. */
enum exit_status status_worst(enum exit_status a, enum exit_status b);

/* The same, and what the base's own files say that holds cards back. */
enum exit_status report_of_run_and_base(const struct fleet *fleet);

/* Is that told where cards are the point, or left to `check`? */
bool is_told_with_cards(const struct problem *problem);

/* How many deficiencies of a list are left to `check`; and a line on standard output that tells
 * it of a boat, or of base.yaml, unless there is none. */
size_t deficiencies_for_check(const struct problems *problems);
void deficiencies_tell(const char *label, size_t count);

/* That line of the base and of each boat. */
void report_left_for_check(const struct fleet *fleet);

/* ---- places.c: where the program's own files are ---- */
const char *program_folder(struct arena *arena, const char *what);

/* For a user whose program finds no procedures: where it looked, and what helps. */
const char *program_folder_remedy(struct arena *arena);

#endif
