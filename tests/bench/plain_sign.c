/* plain_sign.c - signs, each drawn where it stands: the frame of a class and the glyph in it.
 *
 * Sizes of frames are in the glyphs' module of 100 units. */
#include "plain.h"

#include "promise.h"

#define KEYLINE 3.0
#define MODULE 100.0
#define CONTOUR 3.5          /* black round the white glyph of a fire sign */
#define RED_EDGE 2.0         /* black along the red of a prohibition */
#define DISC_SCALE 0.82      /* a square glyph within a disc */
#define BAR_END 31.8198      /* 45 units from the centre, at 45 degrees */
#define RIGHT_ANGLE 90.0
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

/* Module to page: centre of the sign in points from the page's lower left, points
 * a unit, and the glyph's own scale about the centre. */
struct module {
    HPDF_Page page;
    enum palette palette;
    double x, y, unit, scale;
};

/* Thousandths of a point are enough, and the same on every machine. */
static HPDF_REAL rounded(double value)
{
    double milli = value * MPT_PER_POINT;

    return points((mpt)(milli < 0 ? milli - 0.5 : milli + 0.5));
}

static HPDF_REAL module_x(const struct module *module, double x)
{
    return rounded(module->x + (x - MODULE / 2) * module->scale * module->unit);
}

static HPDF_REAL module_y(const struct module *module, double y)
{
    return rounded(module->y + (y - MODULE / 2) * module->scale * module->unit);
}

static HPDF_REAL length(const struct module *module, double units)
{
    return rounded(units * module->scale * module->unit);
}

static void ink_fill(const struct module *m, enum ink ink)
{
    colour_fill(m->page, ink_rgb(m->palette, ink));
}

static void ink_stroke(const struct module *m, enum ink ink)
{
    colour_stroke(m->page, ink_rgb(m->palette, ink));
}

/* From (x, y) round a corner of radius r; the signs say which way it goes. */
static void corner(const struct module *m, double x, double y, double dx1, double dy1,
                   double dx2, double dy2)
{
    HPDF_Page_LineTo(m->page, module_x(m, x), module_y(m, y));
    HPDF_Page_CurveTo(m->page, module_x(m, x + dx1 * CORNER), module_y(m, y + dy1 * CORNER),
                      module_x(m, x + dx1 + dx2 * (1 - CORNER)),
                      module_y(m, y + dy1 + dy2 * (1 - CORNER)),
                      module_x(m, x + dx1 + dx2), module_y(m, y + dy1 + dy2));
}

static void rectangle_path(const struct module *m, double x, double y, double w, double h,
                           double r)
{
    if (r <= 0) {
        HPDF_Page_Rectangle(m->page, module_x(m, x), module_y(m, y), length(m, w), length(m, h));
        return;
    }
    HPDF_Page_MoveTo(m->page, module_x(m, x + r), module_y(m, y));
    corner(m, x + w - r, y, r, 0, 0, r);
    corner(m, x + w, y + h - r, 0, r, -r, 0);
    corner(m, x + r, y + h, -r, 0, 0, -r);
    corner(m, x, y + r, 0, -r, r, 0);
    HPDF_Page_ClosePath(m->page);
}

static void points_path(const struct module *m, const double *numbers, size_t count)
{
    for (size_t i = 0; i + 1 < count; i += 2)
        if (i == 0)
            HPDF_Page_MoveTo(m->page, module_x(m, numbers[0]), module_y(m, numbers[1]));
        else
            HPDF_Page_LineTo(m->page, module_x(m, numbers[i]), module_y(m, numbers[i + 1]));
}

/* Libharu counts degrees clockwise from twelve o'clock, and wants them rising. */
static void arc_path(const struct module *m, const double *n)
{
    double start = n[3], end = n[4] < n[3] ? n[4] + 4 * RIGHT_ANGLE : n[4];

    HPDF_Page_Arc(m->page, module_x(m, n[0]), module_y(m, n[1]), length(m, n[2]),
                  (HPDF_REAL)(RIGHT_ANGLE - end), (HPDF_REAL)(RIGHT_ANGLE - start));
}

static void circle_path(const struct module *m, double x, double y, double r)
{
    HPDF_Page_Circle(m->page, module_x(m, x), module_y(m, y), length(m, r));
}

/* The filled shapes, made wider by `more` units all round: R, C, P. */
static void part_fill(const struct module *m, const struct symbol_part *part, double more)
{
    const double *n = part->numbers;

    HPDF_Page_SetLineWidth(m->page, length(m, 2 * more));
    if (part->primitive == 'R')
        rectangle_path(m, n[0], n[1], n[2], n[3], part->count > 4 ? n[4] : 0);
    else if (part->primitive == 'C')
        circle_path(m, n[0], n[1], n[2]);
    else {
        points_path(m, n, part->count);
        HPDF_Page_ClosePath(m->page);
    }
    if (more > 0)
        HPDF_Page_FillStroke(m->page);
    else
        HPDF_Page_Fill(m->page);
}

/* The drawn lines: O, L, A. Their first number is the width. */
static void part_stroke(const struct module *m, const struct symbol_part *part, double more)
{
    const double *n = part->numbers + 1;

    HPDF_Page_SetLineWidth(m->page, length(m, part->numbers[0] + 2 * more));
    if (part->primitive == 'O')
        circle_path(m, n[0], n[1], n[2]);
    else if (part->primitive == 'L')
        points_path(m, n, part->count - 1);
    else
        arc_path(m, n);
    HPDF_Page_Stroke(m->page);
}

static void part_draw(const struct module *m, const struct symbol_part *part, enum ink ink,
                      double more)
{
    bool filled = part->primitive == 'R' || part->primitive == 'C' || part->primitive == 'P';

    ink_fill(m, ink);
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
    HPDF_Page_Fill(m->page);
    ink_fill(m, field);
    rectangle_path(m, 0, 0, MODULE, MODULE, corner_radius);
    HPDF_Page_Fill(m->page);
}

static void disc_draw(const struct module *m, enum ink ink, double radius)
{
    ink_fill(m, ink);
    circle_path(m, MODULE / 2, MODULE / 2, radius);
    HPDF_Page_Fill(m->page);
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
    colour_stroke(m->page, (struct rgb){HATCH_GREY, HATCH_GREY, HATCH_GREY});
    HPDF_Page_SetLineWidth(m->page, length(m, HATCH_WIDTH));
    for (double x = HATCH_LEFT + HATCH_STEP; x < HATCH_RIGHT; x += HATCH_STEP) {
        double reach = hatch_reach(x);
        HPDF_Page_MoveTo(m->page, module_x(m, x), module_y(m, HATCH_FOOT));
        HPDF_Page_LineTo(m->page, module_x(m, x + reach), module_y(m, HATCH_FOOT + reach));
        HPDF_Page_Stroke(m->page);
    }
}

static void triangle_draw(const struct module *m)
{
    static const double outer[] = {-3, 2, 103, 2, 50, 96}, inner[] = {7, 8, 93, 8, 50, 84};

    ink_fill(m, INK_BLACK);
    points_path(m, outer, sizeof outer / sizeof outer[0]);
    HPDF_Page_Fill(m->page);
    ink_fill(m, INK_WARNING);
    points_path(m, inner, sizeof inner / sizeof inner[0]);
    HPDF_Page_Fill(m->page);
    if (m->palette == PALETTE_MONO)
        triangle_hatch(m);
}

static void bar_draw(const struct module *m, enum ink ink, double width)
{
    ink_stroke(m, ink);
    HPDF_Page_SetLineCap(m->page, HPDF_BUTT_END);
    HPDF_Page_SetLineWidth(m->page, length(m, width));
    HPDF_Page_MoveTo(m->page, module_x(m, MODULE / 2 - BAR_END), module_y(m, MODULE / 2 + BAR_END));
    HPDF_Page_LineTo(m->page, module_x(m, MODULE / 2 + BAR_END), module_y(m, MODULE / 2 - BAR_END));
    HPDF_Page_Stroke(m->page);
}

/* Ring and bar of a prohibition, and what runs along the bar over the glyph. */
static const struct ring_look { enum ink ring, edge; } rings[PALETTE_COUNT] = {
    [PALETTE_COLOUR] = {INK_FIRE, INK_BLACK}, [PALETTE_MONO] = {INK_BLACK, INK_WHITE}};

static void ring_draw(const struct module *m)
{
    const struct ring_look *look = &rings[m->palette];

    bar_draw(m, look->edge, 8 + 2 * RED_EDGE);
    ink_stroke(m, look->ring);
    HPDF_Page_SetLineWidth(m->page, length(m, 10));
    circle_path(m, MODULE / 2, MODULE / 2, 45);
    HPDF_Page_Stroke(m->page);
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

void plain_sign_draw(const struct canvas *canvas, const struct page_item *item)
{
    const struct area *area = &item->area;
    mpt side = area->width < area->height ? area->width : area->height;
    struct module module = {
        .page = canvas->page,
        .palette = canvas->palette,
        .x = (area->x + area->width / 2.0) / MPT_PER_POINT,
        .y = (canvas->height - area->y - area->height / 2.0) / MPT_PER_POINT,
        .unit = side / (MODULE + 2 * KEYLINE) / MPT_PER_POINT,
        .scale = 1,
    };

    HPDF_Page_SetLineJoin(canvas->page, HPDF_ROUND_JOIN);
    HPDF_Page_SetLineCap(canvas->page, HPDF_ROUND_END);
    field_draw(&module, item->sign);
    if (item->glyph != SYMBOL_NONE)
        glyph_draw(&module, symbol_of(item->glyph));
    if (item->sign == SIGN_PROHIBITION)
        ring_draw(&module);
}
