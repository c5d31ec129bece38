/* yaml_reader.h - what the files of the tree reader share (private to the
 * room yaml). The reader turns libyaml's events into pieces, each with its
 * place, and tells every problem it meets on the way. */
#ifndef MAYDECK_YAML_READER_H
#define MAYDECK_YAML_READER_H

#include <stdbool.h>
#include <stddef.h>

#include <yaml.h>

#include "arena.h"
#include "problem.h"
#include "source.h"
#include "yaml_tree.h"

/* A point of the text: characters from its start; line and column from 1. */
struct mark {
    size_t index;
    int line;
    int column;
};

enum piece_kind {
    PIECE_STOP,          /* nothing more can be read; the problem was told */
    PIECE_DOCUMENT,      /* a document begins */
    PIECE_DOCUMENT_END,
    PIECE_FILE_END,
    PIECE_SCALAR,
    PIECE_ALIAS,
    PIECE_SEQUENCE,
    PIECE_MAPPING,
    PIECE_END            /* of the sequence or mapping that was begun last */
};

enum scalar_style { SCALAR_PLAIN, SCALAR_SINGLE, SCALAR_DOUBLE, SCALAR_BLOCK };

struct piece {
    enum piece_kind kind;
    enum scalar_style style;  /* scalar */
    bool flow;                /* sequence, mapping: in brackets */
    bool marked;              /* has an anchor or a tag */
    struct mark start, end;
    const char *text;         /* scalar: as libyaml gave it */
};

struct yaml_reader {
    yaml_parser_t parser;
    const struct source *source;  /* what places refer to */
    const struct source *clean;   /* what libyaml reads; same lines and columns */
    struct arena *arena;
    struct problems *problems;
    size_t event_count;
    size_t cursor_index, cursor_offset;  /* a mark met before, in characters and bytes */
    struct piece last;                   /* the last scalar; kind PIECE_STOP: none */
    const struct piece *open;            /* the innermost list or mapping, or NULL */
    size_t error_count;
    int cut_line;                        /* where a text was told to be cut last; 0: nowhere */
    bool wrong;                          /* an error was told */
    bool stopped;
};

/* The text without what libyaml must not see, or NULL where reading on has no
 * use. All problems of single characters are told; *wrong is set by them. */
const struct source *yaml_check_text(const struct source *source, struct arena *arena,
                                     struct problems *problems, bool *wrong);

/* The next piece. After a PIECE_STOP only such follow. */
struct piece piece_next(struct yaml_reader *reader);

struct place piece_place(const struct yaml_reader *reader, const struct piece *piece);

/* Tells what is wrong with a scalar's text or with a piece's anchor and tag. */
void scalar_check(struct yaml_reader *reader, const struct piece *piece);
void marks_check(struct yaml_reader *reader, const struct piece *piece);

/* Tells that the last scalar, if plain, goes over several lines. */
void fold_tell(struct yaml_reader *reader);

/* Words of a mapping that no colon makes a key of, one after the other. */
struct bare_words {
    size_t count;
    const char *text;         /* the words, with commas between them */
    struct mark start, end;
    struct piece key, value;  /* the pair before them; value.kind PIECE_STOP: none */
};

bool pair_is_bare(struct yaml_reader *reader, const struct piece *key,
                  const struct piece *value);
void bare_words_add(struct yaml_reader *reader, struct bare_words *words,
                    const struct piece *key);

/* A sound pair ends them: they are told, and the next may follow on it. */
void bare_words_end(struct yaml_reader *reader, struct bare_words *words,
                    const struct piece *key, const struct piece *value);
void bare_words_tell(struct yaml_reader *reader, struct bare_words *words);

/* Tells of a comma left out before the key at the mark or before its colon; false: it
 * is no key, or nothing stands before it. */
bool comma_missing_tell(struct yaml_reader *reader, struct mark mark);

/* The remedy for a colon in a text, at the mark: the key and the text in quotes, where both are
 * plain to see. The text ends before one of the signs. */
#define QUOTE_REMEDY "put the whole text in quotes: \"...\""
const char *colon_remedy(struct yaml_reader *reader, struct mark mark, const char *stops);

/* Does the line begin with a dash and a space? */
bool entry_begins(struct yaml_reader *reader, int line);

/* Tells of an entry of a list that lacks its dash, or the space behind it. */
void dash_missing_tell(struct yaml_reader *reader, struct place place);

/* Tells of a comment between the bracket and `at` that ends with a bracket; false:
 * there is none. */
bool comment_swallows_tell(struct yaml_reader *reader, struct mark bracket, struct mark at);

/* Tells what libyaml's parser stopped at, in plain words. */
void syntax_tell(struct yaml_reader *reader);

/* Byte offset in `clean` of a mark. */
size_t reader_offset(struct yaml_reader *reader, struct mark mark);

struct mark mark_from(yaml_mark_t mark);

/* From `start` to before `end`, or to the end of the first line. */
struct place reader_place(const struct yaml_reader *reader, struct mark start,
                          struct mark end);

/* A place `span` characters long. */
struct place reader_spot(const struct yaml_reader *reader, int line, int column, int span);

/* Adds an error; the reader then gives no tree. After the hundredth it stops,
 * and nothing more is added. */
void reader_error(struct yaml_reader *reader, struct place place, const char *remedy,
                  const char *format, ...) __attribute__((format(printf, 4, 5)));

#endif
