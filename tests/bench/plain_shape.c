/* plain_shape.c - boxes, ellipses, lines and paths as libharu's paths. */
#include "plain.h"

/* Length of a cubic curve's handles for a quarter of a circle of radius 1. */
#define QUARTER 0.5522847498

HPDF_REAL points(mpt length)
{
    return (HPDF_REAL)((double)length / MPT_PER_POINT);
}

HPDF_REAL canvas_y(const struct canvas *canvas, mpt y)
{
    return points(canvas->height - y);
}

/* Greys are told as grey, so that black text is printed in black alone. */
static bool is_grey(struct rgb colour)
{
    return colour.red == colour.green && colour.green == colour.blue;
}

static HPDF_REAL level(unsigned char value)
{
    return (HPDF_REAL)(value / 255.0);
}

void colour_fill(HPDF_Page page, struct rgb colour)
{
    if (is_grey(colour))
        HPDF_Page_SetGrayFill(page, level(colour.red));
    else
        HPDF_Page_SetRGBFill(page, level(colour.red), level(colour.green), level(colour.blue));
}

void colour_stroke(HPDF_Page page, struct rgb colour)
{
    if (is_grey(colour))
        HPDF_Page_SetGrayStroke(page, level(colour.red));
    else
        HPDF_Page_SetRGBStroke(page, level(colour.red), level(colour.green),
                               level(colour.blue));
}

static void inks_set(const struct canvas *canvas, const struct page_item *item)
{
    HPDF_Page_SetLineJoin(canvas->page, HPDF_MITER_JOIN);
    HPDF_Page_SetLineCap(canvas->page, HPDF_BUTT_END);
    if (item->fill != INK_NONE)
        colour_fill(canvas->page, ink_rgb(canvas->palette, item->fill));
    if (item->stroke != INK_NONE) {
        colour_stroke(canvas->page, ink_rgb(canvas->palette, item->stroke));
        HPDF_Page_SetLineWidth(canvas->page, points(item->line_width));
    }
}

/* Ends the path that was built. */
static void path_paint(const struct canvas *canvas, const struct page_item *item)
{
    if (item->fill != INK_NONE && item->stroke != INK_NONE)
        HPDF_Page_FillStroke(canvas->page);
    else if (item->fill != INK_NONE)
        HPDF_Page_Fill(canvas->page);
    else if (item->stroke != INK_NONE)
        HPDF_Page_Stroke(canvas->page);
    else
        HPDF_Page_EndPath(canvas->page);
}

/* A corner or quarter: from the current point by way of (cx, cy) to (x, y). */
static void quarter_to(const struct canvas *canvas, struct point from, struct point corner,
                       struct point to)
{
    HPDF_Page_CurveTo(canvas->page,
                      points(from.x + (mpt)((corner.x - from.x) * QUARTER)),
                      canvas_y(canvas, from.y + (mpt)((corner.y - from.y) * QUARTER)),
                      points(to.x + (mpt)((corner.x - to.x) * QUARTER)),
                      canvas_y(canvas, to.y + (mpt)((corner.y - to.y) * QUARTER)),
                      points(to.x), canvas_y(canvas, to.y));
}

/* One side of a rounded box and the corner at its end. */
static void side_to(const struct canvas *canvas, struct point end, struct point corner,
                    struct point next)
{
    HPDF_Page_LineTo(canvas->page, points(end.x), canvas_y(canvas, end.y));
    quarter_to(canvas, end, corner, next);
}

static void rounded_path(const struct canvas *canvas, const struct area *area, mpt radius)
{
    mpt left = area->x, right = area->x + area->width;
    mpt top = area->y, bottom = area->y + area->height;
    mpt shorter = area->width < area->height ? area->width : area->height;
    mpt r = radius < shorter / 2 ? radius : shorter / 2;

    HPDF_Page_MoveTo(canvas->page, points(left + r), canvas_y(canvas, top));
    side_to(canvas, (struct point){right - r, top}, (struct point){right, top},
            (struct point){right, top + r});
    side_to(canvas, (struct point){right, bottom - r}, (struct point){right, bottom},
            (struct point){right - r, bottom});
    side_to(canvas, (struct point){left + r, bottom}, (struct point){left, bottom},
            (struct point){left, bottom - r});
    side_to(canvas, (struct point){left, top + r}, (struct point){left, top},
            (struct point){left + r, top});
    HPDF_Page_ClosePath(canvas->page);
}

static void box_path(const struct canvas *canvas, const struct page_item *item)
{
    const struct area *area = &item->area;

    if (item->radius > 0)
        rounded_path(canvas, area, item->radius);
    else
        HPDF_Page_Rectangle(canvas->page, points(area->x), canvas_y(canvas, area->y + area->height),
                            points(area->width), points(area->height));
}

static void ellipse_path(const struct canvas *canvas, const struct area *area)
{
    mpt left = area->x, right = area->x + area->width, middle = area->x + area->width / 2;
    mpt top = area->y, bottom = area->y + area->height, level = area->y + area->height / 2;
    struct point north = {middle, top}, east = {right, level};
    struct point south = {middle, bottom}, west = {left, level};

    HPDF_Page_MoveTo(canvas->page, points(north.x), canvas_y(canvas, north.y));
    quarter_to(canvas, north, (struct point){right, top}, east);
    quarter_to(canvas, east, (struct point){right, bottom}, south);
    quarter_to(canvas, south, (struct point){left, bottom}, west);
    quarter_to(canvas, west, (struct point){left, top}, north);
    HPDF_Page_ClosePath(canvas->page);
}

static void step_draw(const struct canvas *canvas, const struct path_step *step)
{
    HPDF_REAL x = points(step->to.x), y = canvas_y(canvas, step->to.y);
    const struct point *control = step->control;

    switch (step->verb) {
    case PATH_MOVE:
        HPDF_Page_MoveTo(canvas->page, x, y);
        break;
    case PATH_LINE:
        HPDF_Page_LineTo(canvas->page, x, y);
        break;
    case PATH_CURVE:
        HPDF_Page_CurveTo(canvas->page, points(control[0].x), canvas_y(canvas, control[0].y),
                          points(control[1].x), canvas_y(canvas, control[1].y), x, y);
        break;
    case PATH_CLOSE:
        HPDF_Page_ClosePath(canvas->page);
        break;
    }
}

static void steps_draw(const struct canvas *canvas, const struct page_item *item)
{
    HPDF_Page_SetLineJoin(canvas->page, HPDF_ROUND_JOIN);
    for (size_t i = 0; i < item->step_count; i++)
        step_draw(canvas, &item->steps[i]);
}

static void line_path(const struct canvas *canvas, const struct page_item *item)
{
    HPDF_Page_MoveTo(canvas->page, points(item->from.x), canvas_y(canvas, item->from.y));
    HPDF_Page_LineTo(canvas->page, points(item->to.x), canvas_y(canvas, item->to.y));
}

void plain_shape_draw(const struct canvas *canvas, const struct page_item *item)
{
    if (item->kind == PAGE_PATH && item->step_count == 0)
        return;
    inks_set(canvas, item);
    if (item->kind == PAGE_BOX)
        box_path(canvas, item);
    else if (item->kind == PAGE_ELLIPSE)
        ellipse_path(canvas, &item->area);
    else if (item->kind == PAGE_LINE)
        line_path(canvas, item);
    else
        steps_draw(canvas, item);
    path_paint(canvas, item);
}
