/* pdf_shape.c - boxes, ellipses, lines and paths of a page as operators of its content
 * (room: draw). It draws what the item says and asks nothing else of the page. */
#include "pdf_private.h"

/* Length of a cubic curve's handles for a quarter of a circle of radius 1. */
#define QUARTER 0.5522847498

HPDF_REAL points(mpt length)
{
    return (HPDF_REAL)((double)length / MPT_PER_POINT);
}

static int64_t up(const struct canvas *canvas, mpt y)
{
    return (int64_t)canvas->height - y;
}

static void inks_set(const struct canvas *canvas, const struct page_item *item)
{
    content_ends_set(canvas->content, item->kind == PAGE_PATH ? JOIN_ROUND : JOIN_MITRE, CAP_BUTT);
    if (item->fill != INK_NONE)
        content_fill_set(canvas->content, ink_rgb(canvas->palette, item->fill));
    if (item->stroke != INK_NONE) {
        content_stroke_set(canvas->content, ink_rgb(canvas->palette, item->stroke));
        content_width_set(canvas->content, item->line_width);
    }
}

/* Ends the path that was built. */
static void path_paint(const struct canvas *canvas, const struct page_item *item)
{
    if (item->fill != INK_NONE)
        content_add(canvas->content, item->stroke != INK_NONE ? "B\n" : "f\n");
    else
        content_add(canvas->content, item->stroke != INK_NONE ? "S\n" : "n\n");
}

/* A corner or quarter: from the current point by way of (cx, cy) to (x, y). */
static void quarter_to(const struct canvas *canvas, struct point from, struct point corner,
                       struct point to)
{
    content_curve(canvas->content,
                  (const int64_t[]){from.x + (mpt)((corner.x - from.x) * QUARTER),
                                    up(canvas, from.y + (mpt)((corner.y - from.y) * QUARTER)),
                                    to.x + (mpt)((corner.x - to.x) * QUARTER),
                                    up(canvas, to.y + (mpt)((corner.y - to.y) * QUARTER)),
                                    to.x, up(canvas, to.y)});
}

/* One side of a rounded box and the corner at its end. */
static void side_to(const struct canvas *canvas, struct point end, struct point corner,
                    struct point next)
{
    content_line(canvas->content, end.x, up(canvas, end.y));
    quarter_to(canvas, end, corner, next);
}

static void rounded_path(const struct canvas *canvas, const struct area *area, mpt radius)
{
    mpt left = area->x, right = area->x + area->width;
    mpt top = area->y, bottom = area->y + area->height;
    mpt shorter = area->width < area->height ? area->width : area->height;
    mpt r = radius < shorter / 2 ? radius : shorter / 2;

    content_move(canvas->content, left + r, up(canvas, top));
    side_to(canvas, (struct point){right - r, top}, (struct point){right, top},
            (struct point){right, top + r});
    side_to(canvas, (struct point){right, bottom - r}, (struct point){right, bottom},
            (struct point){right - r, bottom});
    side_to(canvas, (struct point){left + r, bottom}, (struct point){left, bottom},
            (struct point){left, bottom - r});
    side_to(canvas, (struct point){left, top + r}, (struct point){left, top},
            (struct point){left + r, top});
    content_add(canvas->content, "h\n");
}

static void box_path(const struct canvas *canvas, const struct page_item *item)
{
    const struct area *area = &item->area;

    if (item->radius > 0)
        rounded_path(canvas, area, item->radius);
    else
        content_rectangle(canvas->content, area->x, up(canvas, area->y + area->height),
                          area->width, area->height);
}

static void ellipse_path(const struct canvas *canvas, const struct area *area)
{
    mpt left = area->x, right = area->x + area->width, middle = area->x + area->width / 2;
    mpt top = area->y, bottom = area->y + area->height, level = area->y + area->height / 2;
    struct point north = {middle, top}, east = {right, level};
    struct point south = {middle, bottom}, west = {left, level};

    content_move(canvas->content, north.x, up(canvas, north.y));
    quarter_to(canvas, north, (struct point){right, top}, east);
    quarter_to(canvas, east, (struct point){right, bottom}, south);
    quarter_to(canvas, south, (struct point){left, bottom}, west);
    quarter_to(canvas, west, (struct point){left, top}, north);
    content_add(canvas->content, "h\n");
}

static void step_draw(const struct canvas *canvas, const struct path_step *step)
{
    int64_t x = step->to.x, y = up(canvas, step->to.y);
    const struct point *control = step->control;

    switch (step->verb) {
    case PATH_MOVE:
        content_move(canvas->content, x, y);
        break;
    case PATH_LINE:
        content_line(canvas->content, x, y);
        break;
    case PATH_CURVE:
        content_curve(canvas->content,
                      (const int64_t[]){control[0].x, up(canvas, control[0].y), control[1].x,
                                        up(canvas, control[1].y), x, y});
        break;
    case PATH_CLOSE:
        content_add(canvas->content, "h\n");
        break;
    }
}

static void steps_draw(const struct canvas *canvas, const struct page_item *item)
{
    for (size_t i = 0; i < item->step_count; i++)
        step_draw(canvas, &item->steps[i]);
}

static void line_path(const struct canvas *canvas, const struct page_item *item)
{
    content_move(canvas->content, item->from.x, up(canvas, item->from.y));
    content_line(canvas->content, item->to.x, up(canvas, item->to.y));
}

void shape_draw(const struct canvas *canvas, const struct page_item *item)
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
