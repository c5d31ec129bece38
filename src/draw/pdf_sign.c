/* pdf_sign.c - signs: the frame of a class and the glyph in it (room: draw). It
 * interprets the symbol tables and knows none of their keys.
 *
 * What is drawn here is a form, once a document (pdf_form.c), in the glyphs' module.
 * Sizes of frames are in the glyphs' module of 100 units. A black line of 3 units
 * runs round every frame. In red light red fades to near white, so red is always
 * bounded by black: the glyph on a fire square, the bar and ring of a prohibition. */
#include <math.h>

#include "pdf_private.h"

#include "promise.h"

#define KEYLINE SIGN_KEYLINE
#define MODULE SIGN_MODULE
#define CONTOUR 3.5          /* black round the white glyph of a fire sign */
#define RED_EDGE 2.0         /* black along the red of a prohibition */
#define DISC_SCALE 0.82      /* a square glyph within a disc */
#define BAR_END 31.8198      /* 45 units from the centre, at 45 degrees */
#define RIGHT_ANGLE 90.0
#define RADIAN 0.017453292519943295
/* The hatch of a warning, and the triangle that it stays in. */
#define HATCH_LEFT 10.0
#define HATCH_RIGHT 90.0
#define HATCH_FOOT 10.0
#define HATCH_TOP 80.0
#define HATCH_STEP 10.0
#define HATCH_WIDTH 4.0
#define HATCH_GREY 0xCC      /* 20 % of black */
#define CORNER 0.5522847498  /* handle of a curve for a quarter circle of radius 1 */

/* How a class looks. */
struct sign_look {
    enum ink field, glyph;
    double scale;
};

static const struct sign_look looks[SIGN_CLASS_COUNT] = {
    [SIGN_FIRE] = {INK_FIRE, INK_WHITE, 1.0},
    [SIGN_RESCUE] = {INK_RESCUE, INK_WHITE, 1.0},
    [SIGN_CONTROL] = {INK_CONTROL, INK_WHITE, DISC_SCALE},
    [SIGN_WARNING] = {INK_WARNING, INK_BLACK, 1.0},
    [SIGN_PROHIBITION] = {INK_WHITE, INK_BLACK, 1.0},
    [SIGN_MANDATORY] = {INK_CONTROL, INK_WHITE, DISC_SCALE},
};

/* The module, and the glyph's own scale about its centre. */
struct module {
    struct content *content;
    enum palette palette;
    double scale;
};

/* Thousandths of a unit are enough, and the same on every machine. */
static int64_t rounded(double value)
{
    double milli = value * 1000.0;

    return (int64_t)(milli < 0 ? milli - 0.5 : milli + 0.5);
}

/* Along either axis. */
static int64_t place_of(const struct module *module, double at)
{
    return rounded(MODULE / 2 + (at - MODULE / 2) * module->scale);
}

static int64_t length(const struct module *module, double units)
{
    return rounded(units * module->scale);
}

static void ink_fill(const struct module *m, enum ink ink)
{
    content_fill_set(m->content, ink_rgb(m->palette, ink));
}

static void ink_stroke(const struct module *m, enum ink ink)
{
    content_stroke_set(m->content, ink_rgb(m->palette, ink));
}

/* A quarter of a circle from (x, y) on; the signs say which way it goes. */
static void quarter(const struct module *m, double x, double y, double dx1, double dy1,
                   double dx2, double dy2)
{
    content_curve(m->content,
                  (const int64_t[]){place_of(m, x + dx1 * CORNER), place_of(m, y + dy1 * CORNER),
                                    place_of(m, x + dx1 + dx2 * (1 - CORNER)),
                                    place_of(m, y + dy1 + dy2 * (1 - CORNER)),
                                    place_of(m, x + dx1 + dx2), place_of(m, y + dy1 + dy2)});
}

/* A side that ends at (x, y), and the corner behind it. */
static void corner(const struct module *m, double x, double y, double dx1, double dy1,
                   double dx2, double dy2)
{
    content_line(m->content, place_of(m, x), place_of(m, y));
    quarter(m, x, y, dx1, dy1, dx2, dy2);
}

static void rectangle_path(const struct module *m, double x, double y, double w, double h,
                           double r)
{
    if (r <= 0) {
        content_rectangle(m->content, place_of(m, x), place_of(m, y), length(m, w), length(m, h));
        return;
    }
    content_move(m->content, place_of(m, x + r), place_of(m, y));
    corner(m, x + w - r, y, r, 0, 0, r);
    corner(m, x + w, y + h - r, 0, r, -r, 0);
    corner(m, x + r, y + h, -r, 0, 0, -r);
    corner(m, x, y + r, 0, -r, r, 0);
    content_add(m->content, "h\n");
}

static void points_path(const struct module *m, const double *numbers, size_t count)
{
    for (size_t i = 0; i + 1 < count; i += 2)
        if (i == 0)
            content_move(m->content, place_of(m, numbers[0]), place_of(m, numbers[1]));
        else
            content_line(m->content, place_of(m, numbers[i]), place_of(m, numbers[i + 1]));
}

/* A part of a circle, of no more than a right angle, from the current point on; radians,
 * counter-clockwise from three o'clock. */
static void arc_piece(const struct module *m, const double *n, double start, double end)
{
    double handle = 4.0 / 3.0 * tan((end - start) / 4) * n[2];
    double x0 = n[0] + n[2] * cos(start), y0 = n[1] + n[2] * sin(start);
    double x1 = n[0] + n[2] * cos(end), y1 = n[1] + n[2] * sin(end);

    content_curve(m->content,
                  (const int64_t[]){place_of(m, x0 - handle * sin(start)),
                                    place_of(m, y0 + handle * cos(start)),
                                    place_of(m, x1 + handle * sin(end)),
                                    place_of(m, y1 - handle * cos(end)),
                                    place_of(m, x1), place_of(m, y1)});
}

/* Centre, radius, and from where to where, in degrees. */
static void arc_path(const struct module *m, const double *n)
{
    double degrees = n[4] < n[3] ? n[4] + 4 * RIGHT_ANGLE - n[3] : n[4] - n[3];
    double start = n[3] * RADIAN, turn = degrees * RADIAN;
    int pieces = (int)ceil(degrees / RIGHT_ANGLE);

    content_move(m->content, place_of(m, n[0] + n[2] * cos(start)),
                 place_of(m, n[1] + n[2] * sin(start)));
    for (int i = 0; i < pieces; i++)
        arc_piece(m, n, start + turn * i / pieces, start + turn * (i + 1) / pieces);
}

static void circle_path(const struct module *m, double x, double y, double r)
{
    content_move(m->content, place_of(m, x - r), place_of(m, y));
    quarter(m, x - r, y, 0, r, r, 0);
    quarter(m, x, y + r, r, 0, 0, -r);
    quarter(m, x + r, y, 0, -r, -r, 0);
    quarter(m, x, y - r, -r, 0, 0, r);
    content_add(m->content, "h\n");
}

/* The filled shapes, made wider by `more` units all round: R, C, P. */
static void part_fill(const struct module *m, const struct symbol_part *part, double more)
{
    const double *n = part->numbers;

    if (more > 0)
        content_width_set(m->content, length(m, 2 * more));
    if (part->primitive == 'R')
        rectangle_path(m, n[0], n[1], n[2], n[3], part->count > 4 ? n[4] : 0);
    else if (part->primitive == 'C')
        circle_path(m, n[0], n[1], n[2]);
    else {
        points_path(m, n, part->count);
        content_add(m->content, "h\n");
    }
    content_add(m->content, more > 0 ? "B\n" : "f\n");
}

/* The drawn lines: O, L, A. Their first number is the width. */
static void part_stroke(const struct module *m, const struct symbol_part *part, double more)
{
    const double *n = part->numbers + 1;

    content_width_set(m->content, length(m, part->numbers[0] + 2 * more));
    if (part->primitive == 'O')
        circle_path(m, n[0], n[1], n[2]);
    else if (part->primitive == 'L')
        points_path(m, n, part->count - 1);
    else
        arc_path(m, n);
    content_add(m->content, "S\n");
}

static void part_draw(const struct module *m, const struct symbol_part *part, enum ink ink,
                      double more)
{
    bool filled = part->primitive == 'R' || part->primitive == 'C' || part->primitive == 'P';

    if (filled)
        ink_fill(m, ink);
    if (!filled || more > 0)
        ink_stroke(m, ink);
    if (filled)
        part_fill(m, part, more);
    else
        part_stroke(m, part, more);
}

/* The black contour first, so that no shape's contour lies on its neighbour. What
 * is cut out of a fire glyph is narrower than its two contours: all black. */
static void glyph_draw(const struct module *module, const struct symbol *symbol)
{
    const struct sign_look *look = &looks[symbol->sign];
    const struct symbol_drawing *drawing = symbol->drawing;
    bool fire = symbol->sign == SIGN_FIRE;
    struct module scaled = *module;

    scaled.scale = look->scale;
    for (size_t i = 0; fire && i < drawing->count; i++)
        if (!drawing->parts[i].knock_out)
            part_draw(&scaled, &drawing->parts[i], INK_BLACK, CONTOUR);
    for (size_t i = 0; i < drawing->count; i++) {
        const struct symbol_part *part = &drawing->parts[i];
        enum ink cut = fire ? INK_BLACK : look->field;
        part_draw(&scaled, part, part->knock_out ? cut : look->glyph, 0);
    }
}

static void square_draw(const struct module *m, enum ink field, double corner_radius)
{
    double outer = corner_radius > 0 ? corner_radius + KEYLINE : 0;

    ink_fill(m, INK_BLACK);
    rectangle_path(m, -KEYLINE, -KEYLINE, MODULE + 2 * KEYLINE, MODULE + 2 * KEYLINE, outer);
    content_add(m->content, "f\n");
    ink_fill(m, field);
    rectangle_path(m, 0, 0, MODULE, MODULE, corner_radius);
    content_add(m->content, "f\n");
}

static void disc_draw(const struct module *m, enum ink ink, double radius)
{
    ink_fill(m, ink);
    circle_path(m, MODULE / 2, MODULE / 2, radius);
    content_add(m->content, "f\n");
}

/* How far a line at 45 degrees goes that rises from the foot of the triangle at x: to its right
 * edge. */
static double hatch_reach(double x)
{
    double slope = (HATCH_TOP - HATCH_FOOT) / (HATCH_RIGHT - MODULE / 2);

    return (HATCH_RIGHT - x) * slope / (1 + slope);
}

/* In place of yellow, which is white without colour: light lines at 45 degrees. */
static void triangle_hatch(const struct module *m)
{
    content_stroke_set(m->content, (struct rgb){HATCH_GREY, HATCH_GREY, HATCH_GREY});
    content_width_set(m->content, length(m, HATCH_WIDTH));
    for (double x = HATCH_LEFT + HATCH_STEP; x < HATCH_RIGHT; x += HATCH_STEP) {
        double reach = hatch_reach(x);
        content_move(m->content, place_of(m, x), place_of(m, HATCH_FOOT));
        content_line(m->content, place_of(m, x + reach), place_of(m, HATCH_FOOT + reach));
        content_add(m->content, "S\n");
    }
}

static void triangle_draw(const struct module *m)
{
    static const double outer[] = {-3, 2, 103, 2, 50, 96}, inner[] = {7, 8, 93, 8, 50, 84};

    ink_fill(m, INK_BLACK);
    points_path(m, outer, sizeof outer / sizeof outer[0]);
    content_add(m->content, "f\n");
    ink_fill(m, INK_WARNING);
    points_path(m, inner, sizeof inner / sizeof inner[0]);
    content_add(m->content, "f\n");
    if (m->palette == PALETTE_MONO)
        triangle_hatch(m);
}

static void bar_draw(const struct module *m, enum ink ink, double width)
{
    ink_stroke(m, ink);
    content_ends_set(m->content, JOIN_ROUND, CAP_BUTT);
    content_width_set(m->content, length(m, width));
    content_move(m->content, place_of(m, MODULE / 2 - BAR_END), place_of(m, MODULE / 2 + BAR_END));
    content_line(m->content, place_of(m, MODULE / 2 + BAR_END), place_of(m, MODULE / 2 - BAR_END));
    content_add(m->content, "S\n");
}

/* Ring and bar of a prohibition, and what runs along the bar over the glyph. */
static const struct ring_look { enum ink ring, edge; } rings[PALETTE_COUNT] = {
    [PALETTE_COLOUR] = {INK_FIRE, INK_BLACK}, [PALETTE_MONO] = {INK_BLACK, INK_WHITE}};

static void ring_draw(const struct module *m)
{
    const struct ring_look *look = &rings[m->palette];

    bar_draw(m, look->edge, 8 + 2 * RED_EDGE);
    ink_stroke(m, look->ring);
    content_width_set(m->content, length(m, 10));
    circle_path(m, MODULE / 2, MODULE / 2, 45);
    content_add(m->content, "S\n");
    bar_draw(m, look->ring, 8);
}

static void field_draw(const struct module *m, enum sign_class sign)
{
    switch (sign) {
    case SIGN_FIRE:
        square_draw(m, INK_FIRE, 0);
        break;
    case SIGN_RESCUE:
        square_draw(m, INK_RESCUE, 10);
        break;
    case SIGN_CONTROL:
    case SIGN_MANDATORY:
        disc_draw(m, INK_BLACK, MODULE / 2 + KEYLINE);
        disc_draw(m, INK_CONTROL, MODULE / 2);
        break;
    case SIGN_WARNING:
        triangle_draw(m);
        break;
    case SIGN_PROHIBITION:
        disc_draw(m, INK_BLACK, MODULE / 2 + KEYLINE);
        disc_draw(m, rings[m->palette].ring, MODULE / 2);
        disc_draw(m, INK_BLACK, 40);
        disc_draw(m, INK_WHITE, 40 - RED_EDGE);
        break;
    case SIGN_NONE:
    case SIGN_CLASS_COUNT:
        promise_unreached();
    }
}

void sign_write(struct content *content, enum palette palette, enum sign_class sign,
                enum symbol_key glyph)
{
    struct module module = {.content = content, .palette = palette, .scale = 1};

    content_ends_set(content, JOIN_ROUND, CAP_ROUND);
    field_draw(&module, sign);
    if (glyph != SYMBOL_NONE)
        glyph_draw(&module, symbol_of(glyph));
    if (sign == SIGN_PROHIBITION)
        ring_draw(&module);
}
