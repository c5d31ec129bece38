/* problem.h - everything a run has to say about its inputs (room: base).
 *
 * Nothing is printed where it is found: problems are collected, sorted by file,
 * line and column, told once, and the worst decides the exit status. Each part of a
 * run that can fail alone, such as a boat, has a list of its own; what goes on or stops
 * follows from what a function returns, never from the worst of a list. */
#ifndef MAYDECK_PROBLEM_H
#define MAYDECK_PROBLEM_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"
#include "known_names.h"
#include "source.h"
#include "text.h"

enum severity {
    SEVERITY_SILENCED,    /* the base has silenced it for this boat, with a reason */
    SEVERITY_NOTE,        /* worth knowing; no effect on the exit status */
    SEVERITY_DEFICIENCY,  /* the boat or its record lacks something */
    SEVERITY_HELD,        /* a card was held back */
    SEVERITY_ERROR,       /* an input is wrong */
    SEVERITY_USE,         /* the command was used wrongly: exit status 2 */
    SEVERITY_FAILURE,     /* the system failed: exit status 3 */
    SEVERITY_COUNT
};

struct problem {
    enum severity severity;
    const char *check;    /* the check that found it: an id of `check --list` */
    const char *boat;     /* key of the boat it is about; NULL: of none */
    struct place place;
    const char *what;
    const char *remedy;   /* how to put it right; may hold several lines; NULL: none */
    const char *subject;  /* what `what` speaks of, where a report may tell it in one line with
                             others that this check found: "kg of C4"; NULL: alone */
};

struct problems;

struct problems *problems_new(struct arena *arena);

/* Of what, and by which check, the problems added from now on are told, until it is
 * said again. The strings must live as long as the problems. */
void problems_about(struct problems *problems, const char *boat, const char *check);

/* By which other names the keys of files are known to people, for the remedies of problems that
 * are added from now on; lists made by problems_part know the same. Must live as long as the
 * problems. NULL: by none, as it is at first. */
void problems_know(struct problems *problems, const struct known_names *known);
const struct known_names *problems_known(const struct problems *problems);

/* Adds one; message and remedy are copied, so that they outlive the arena of the
 * boat they speak of. The message names what is wrong without file and line. The
 * place's source must live as long as the problems. */
void problem_add(struct problems *problems, enum severity severity, struct place place,
                 const char *remedy, const char *format, ...)
    __attribute__((format(printf, 5, 6)));

/* The same, found by the check of that id. */
void problem_add_check(struct problems *problems, const char *check, enum severity severity,
                       struct place place, const char *remedy, const char *format, ...)
    __attribute__((format(printf, 6, 7)));

/* What one finding of many of a kind is told of: the check that found it, and the words that
 * stand for it in a line with the others. */
struct problem_subject {
    const char *check, *words;
};

/* The same as problem_add_check, of a finding that has a subject, which is copied. */
void problem_add_of(struct problems *problems, struct problem_subject of, enum severity severity,
                    struct place place, const char *remedy, const char *format, ...)
    __attribute__((format(printf, 6, 7)));

/* A new list in the same arena, of the same boat and check: for a part of the work, such as
 * one file, whose soundness follows from what is found in it alone. */
struct problems *problems_part(const struct problems *whole);

/* Joins the part to the whole. True when no error was found in it. */
bool problems_settle(struct problems *whole, const struct problems *part);

/* Adds all of `part`, each with the boat and the check it has there, in the order in which
 * they were added there. Messages are copied: `part` may die after. */
void problems_join(struct problems *problems, const struct problems *part);

/* The same of the errors alone that are placed in that file. */
void problems_join_errors_in(struct problems *problems, const struct problems *part,
                             const struct source *source);

/* A new list of those that are of this severity or worse. */
struct problems *problems_from(const struct problems *whole, enum severity least,
                               struct arena *arena);

/* Was an error told at just this place, of the boat being worked on, and by the check
 * of that id? NULL: by any. */
bool problems_error_at(const struct problems *problems, struct place place,
                       const char *check);

size_t problems_count(const struct problems *problems, enum severity severity);

/* True once anything of this severity or worse was added. */
bool problems_reach(const struct problems *problems, enum severity severity);

/* Do both say the same of the same place, perhaps of two boats? */
bool problem_says_same(const struct problem *a, const struct problem *b);

/* All problems in the order of printing; identical ones (same place, severity and words; at
 * a place in a file, of the same boat) once. The array belongs to the arena of
 * problems_new. */
const struct problem *problems_sorted(const struct problems *problems, size_t *count);

/* Appends one problem as
 *     file:line:column: error: what
 *         the source line
 *            ^~~~
 *       remedy: ...
 * Control characters in the source line are shown as \xNN; a line over 160
 * characters is shown around the caret with "..." at the cuts. */
void problem_print(const struct problem *problem, struct text_builder *out);

/* A name as it may be shown on a terminal: control characters and the like as \xNN or <U+NNNN>. */
char *text_visible(struct arena *arena, const char *string);

/* The word printed for a severity: note, deficiency, held, error, ... */
const char *severity_word(enum severity severity);

#endif
