/* job.h - what a run makes, and the steps that each boat is taken through (room: app). Each
 * step can be called alone; one boat that fails stops no other, because each has her own
 * arena and her own list of problems. Private to src/app. */
#ifndef MAYDECK_JOB_H
#define MAYDECK_JOB_H

#include "compose.h"
#include "fleet.h"
#include "page.h"
#include "paper.h"
#include "proof.h"

/* Sheets that are made together, such as the emergency cards of a boat, or a form about her. */
struct set_kind {
    enum word title;               /* of a file that holds them, after the boat's name */
    enum { SET_OF_CARDS, SET_OF_FORMS } made_of;   /* forms lead nobody into a hazard, and --card
                                      asks for none of them */
    const struct sheet_set *(*compose)(const struct compose_input *input, struct arena *arena,
                                       struct problems *problems);
};

/* Every kind of sheets, in every language, on every paper, for every boat of the fleet that
 * was asked for. */
struct job {
    const struct options *options;
    const struct fleet *fleet;
    const struct set_kind *kinds;
    size_t kind_count;
    struct languages languages;
    struct paper papers[PAPER_COUNT];
    size_t paper_count;
    enum walk_rule walk;           /* of boats that are like a model */
    bool asked_only;               /* plans that --card does not ask for are not laid out */
};

/* One part of what is made for a boat: indices into the lists of the job. */
struct job_part {
    size_t kind, language, paper;
};

/* The paper of the base's cards where no option names another. */
enum paper_key base_paper(const struct fleet *fleet);

/* The job that options and fleet ask for. */
struct job job_of(const struct options *options, const struct fleet *fleet);

/* The same of sheets of that kind alone, which lives as long as the job. */
struct job job_of_kind(const struct options *options, const struct fleet *fleet,
                       const struct set_kind *kind);

/* The parts of one boat, the papers of one language together, and the languages of one kind;
 * `index` is below the count. */
size_t job_part_count(const struct job *job);
struct job_part job_part_at(const struct job *job, size_t index);

/* ---- boat_job.c: one boat ---- */

struct boat_job {
    const struct job *job;
    size_t index;                  /* of the fleet's boats */
    const char *key;
    struct arena *arena;           /* hers: what is made for her dies with it */
    struct problems *problems;     /* hers; boat_close hands them over to the fleet */
    const struct source *source;   /* her file; NULL: it could not be read */
    const struct boat *boat;       /* NULL: her file could not be used */
    bool sound;                    /* nothing found so far keeps her sheets from being made */
    size_t parts_made;             /* parts of the job that were composed */
};

/* The boat of that index with her own arena and list of problems; nothing is read yet. */
struct boat_job boat_begin(const struct job *job, size_t index);

/* Her file, perhaps read just now; NULL: it cannot be read, or was changed since the run began,
 * which is told. */
const struct source *boat_source(const struct boat_job *boat);

/* Her file into a record. */
void boat_open(struct boat_job *boat);

/* The checks of her record and identities, and whether the base lets sheets be made. */
void boat_judge(struct boat_job *boat);

/* Tells the gear that she had at her last prints, and of which her record says nothing any more.
 * (print_lost.c) */
void lost_gear_tell(struct boat_job *boat);

/* Hands her problems over to the fleet and frees what was made for her. */
void boat_close(struct boat_job *boat);

/* ---- sheets.c: one part of the job for one boat ---- */

/* One page, or what stands for it in the count where it could not be made. */
struct sheet_page {
    const struct sheet *sheet;     /* the whole that it belongs to */
    const char *id;                /* of the page, such as safety_plan_2 */
    const struct page *page;       /* NULL: not laid out, or not to be read */
    struct proof_report report;
};

struct sheets {
    struct boat_job *boat;
    struct job_part part;
    struct compose_input input;
    struct problems *problems;     /* of composing and laying out; sheets_tell passes them on */
    const struct sheet_set *set;
    struct laid_set laid;
    struct sheet_page *pages;      /* of all sheets, in their order; NULL: not laid out */
    size_t page_count;
    bool asked_exist;              /* all that --card asks for are cards of hers */
};

/* Composes that part for a boat that is sound. */
struct sheets sheets_compose(struct boat_job *boat, struct job_part part);

/* Lays the sheets out: see layout_set. */
void sheets_lay(struct sheets *sheets);

/* Passes the problems of both on to the boat, and tells of cards that were asked
 * for and are none of hers. */
void sheets_tell(struct sheets *sheets);

/* Holds each laid-out page against the page rules. A page with an error is no page any
 * more: it is told as held back by a problem of the family "page". (proofread.c) */
void sheets_prove(struct sheets *sheets);

/* What sheets and calls of the boat are composed from; words NULL where nothing is said in a
 * language. */
struct compose_input compose_input_of(const struct boat_job *boat, const struct words *words);

/* What the name of their file ends in before .pdf: ".de" of sheets in a language that is not the
 * base's first, ".letter" on a paper that is not the usual one of such sheets, ".mono" without
 * colour; in that order. */
#define MONO_ENDING ".mono"
const char *sheets_ending(const struct sheets *sheets, enum paper_key usual);

/* Is this a card that --card asks for? */
bool card_wanted(const struct options *options, const struct sheet *sheet);

/* The same by its names. */
bool card_named(const struct options *options, const char *key, const char *procedure_key);

/* Tells that none of her cards, which have these keys, is called so. */
void no_such_card(struct boat_job *boat, const struct names *keys, const char *name);

/* Of a kind that is made in several languages or on several papers, what is said of the
 * boat is said once: with these. */
bool sheets_are_first_of_kind(const struct sheets *sheets);

/* Tells what the last prints of these cards said and is recorded no longer. (print_lost.c) */
void lost_facts_tell(const struct sheets *sheets);

/* What was measured on the pages of the cards that are wanted: see proof_print.
 * (proofread.c) */
void audit_add(const struct sheets *sheets, struct text_builder *out);

/* ---- job.c: all boats ---- */

enum job_step { STEP_OPEN, STEP_JUDGE, STEP_COMPOSE, STEP_LAY, STEP_PROVE };

/* What a command does with the boats of a job. Any of the three functions may be NULL; `run`
 * is what job_run was given. */
struct job_use {
    enum job_step last;            /* how far each boat is taken */
    void (*begin)(void *run, struct boat_job *boat);
    void (*sheets)(void *run, struct sheets *sheets);  /* after the last step of each part */
    void (*end)(void *run, struct boat_job *boat);     /* before she is closed */
};

/* Takes that boat, which was begun, to the last step; closing her is left to the caller. */
void job_boat_run(const struct job_use *use, void *run, struct boat_job *boat);

/* Takes each boat in turn to the last step. One that is not sound has no sheets; she is
 * begun and ended all the same. How many were taken: fewer than there are where a signal that the
 * run awaits came (stop.h). */
size_t job_run(const struct job *job, const struct job_use *use, void *run);

#endif
