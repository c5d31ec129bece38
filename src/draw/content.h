/* content.h - operators of a page or a sign as they stand in its content stream, written by
 * hand: lengths are thousandths, and printf and libharu's floats are far from here. Private to
 * src/draw. */
#ifndef MAYDECK_CONTENT_H
#define MAYDECK_CONTENT_H

#include "page.h"

/* What the operators before have set, so that nothing is set twice. Negative, and a face or
 * colour not known: whatever it is where the content is used. */
struct pen_state {
    bool fill_known, stroke_known;
    struct rgb fill, stroke;
    int64_t line_width;            /* thousandths */
    int join, cap;
    int face;
    mpt size;                      /* of type */
};

/* How lines meet and end, by the numbers of the format. */
enum { JOIN_MITRE = 0, JOIN_ROUND = 1, CAP_BUTT = 0, CAP_ROUND = 1 };

struct content {
    struct arena *arena;
    char *at;
    size_t length, room;
    struct pen_state state;
};

/* Room for a page at once, or for a few words. */
struct content content_in(struct arena *arena);
struct content content_small_in(struct arena *arena);

/* Empties it: for a page, which begins as the format says, or for a form, which begins as it is
 * found. Its room is kept. */
void content_page_begin(struct content *content);
void content_form_begin(struct content *content);

void content_add(struct content *content, const char *words);
void content_bytes_add(struct content *content, const char *at, size_t length);

/* A number of at most three places: 12600 is 12.6; and the space behind it. */
void content_milli_add(struct content *content, int64_t milli);

/* The same of millionths: a scale. */
#define MICRO 1000000
void content_micro_add(struct content *content, int64_t micro);

/* A whole number, with nothing behind it. */
void content_whole_add(struct content *content, int64_t number);

/* A glyph within a string: the two bytes of its number, high byte first. */
void content_glyph_add(struct content *content, uint16_t number);

/* A string for people, in brackets: as it is where all its letters are ASCII, else in UTF-16. */
void content_text_add(struct content *content, const char *text);

/* What is painted from here on. */
void content_fill_set(struct content *content, struct rgb colour);
void content_stroke_set(struct content *content, struct rgb colour);
void content_width_set(struct content *content, int64_t milli);
void content_ends_set(struct content *content, int join, int cap);

/* Parts of a path; thousandths, y up. */
void content_move(struct content *content, int64_t x, int64_t y);
void content_line(struct content *content, int64_t x, int64_t y);
void content_curve(struct content *content, const int64_t numbers[6]);
void content_rectangle(struct content *content, int64_t x, int64_t y, int64_t width,
                       int64_t height);

#endif
