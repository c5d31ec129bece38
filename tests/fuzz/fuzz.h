/* fuzz.h - what a harness is, and what all of them share: a harness takes any bytes as one input
 * of the program, and CHECKs what must hold of them beyond that nothing breaks.
 *
 * Two programs are made of each: fuzz_main.c with libFuzzer, which looks for inputs, and
 * replay.c, which takes those that are kept. */
#ifndef MAYDECK_FUZZ_H
#define MAYDECK_FUZZ_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "base.h"
#include "compose.h"
#include "face.h"
#include "problem.h"
#include "words.h"
#include "yaml_tree.h"

/* One input: its arena and problems die with it. The bytes end with a NUL that `length` does not
 * count. */
struct fuzz {
    struct arena *arena;
    struct problems *problems;
    const char *bytes;
    size_t length;
};

/* Each fuzz_NAME.c defines the one of its program. */
struct harness {
    void (*open)(void);                  /* once, before the first input; NULL: nothing */
    void (*one)(struct fuzz *fuzz);
    bool lines;                          /* inputs are lines of words: see fuzz_mutate.c */
};
extern const struct harness harness;

/* ---- fuzz.c ---- */

/* Takes one input through the harness. */
void fuzz_one(const char *bytes, size_t length);

/* Ends the program where it does not hold, and tells where. */
#define CHECK(holds) ((holds) ? (void)0 : check_failed(__FILE__, __LINE__, #holds))
_Noreturn void check_failed(const char *file, int line, const char *what);

/* The input as a file of that name; and a part of it. */
const struct source *fuzz_source(const struct fuzz *fuzz, const char *name);
const struct source *fuzz_part(const struct fuzz *fuzz, const char *name, const char *at,
                               size_t length);

/* Two files in one input, with a line SECOND_FILE between; without it the second is empty. */
#define SECOND_FILE "=== second file\n"
void fuzz_two(const struct fuzz *fuzz, const char *const names[2], const struct source *out[2]);

/* A number that hangs on all bytes of the input, below `count`: which of many things to do. */
size_t fuzz_choice(const struct fuzz *fuzz, size_t count);

/* All problems told so far are such as can be told: words, a place that there is, printable. */
void problems_check(const struct fuzz *fuzz);

/* The same; each error has a place and a remedy; what is sound has none, and of what is not it was
 * told why. */
void sound_check(const struct fuzz *fuzz, bool sound);

/* A text that a person may see: UTF-8 without control characters, but for line ends and
 * tabs. */
bool text_is_shown(const char *text);

/* ---- own.c: the program's own files and sound records, read once ---- */

struct own {
    struct arena *arena;
    struct problems *problems;
    const struct words *words;
    const struct authorities *authorities;
    struct procedure_set procedures;
    const struct base_record *base;
    const struct boat *boats[3];         /* two yachts and an open boat */
    const struct source *boat_sources[3];
    struct faces *faces;
};
extern struct own own;

enum { OWN_TEXTS = 1, OWN_BOATS = 2, OWN_FACES = 4 };
void own_open(unsigned what);
const struct source *own_source(const char *path);
extern const struct date fuzz_today;

/* What a set of that boat is composed from, of the program's own files. */
struct compose_input own_input(const struct boat *boat);

/* Judges, composes and explains all that a sound record is used for; and of what was composed
 * all that must hold. NULL: the checks hold the boat back. */
const struct sheet_set *boat_use(const struct fuzz *fuzz, const struct compose_input *input);

/* The same of a set that is composed already. */
void set_check(const struct fuzz *fuzz, const struct compose_input *input,
               const struct sheet_set *set);

/* ---- pdf_whole.c ---- */

/* Why the bytes are no whole PDF; NULL: they are one. */
const char *pdf_fault(const unsigned char *bytes, size_t length);

#endif
