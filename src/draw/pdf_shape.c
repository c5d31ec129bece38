/* pdf_shape.c - boxes, ellipses, lines and paths of a page as libharu's paths
 * (room: draw). It draws what the item says and asks nothing else of the page. */
#include "pdf_private.h"

/* Length of a cubic curve's handles for a quarter of a circle of radius 1. */
#define QUARTER 0.5522847498

HPDF_REAL points(mpt length)
{
    return (HPDF_REAL)((double)length / MPT_PER_POINT);
}

HPDF_REAL sheet_y(const struct sheet *sheet, mpt y)
{
    return points(sheet->height - y);
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

void ink_fill(HPDF_Page page, enum ink ink)
{
    struct rgb colour = ink_rgb(ink);

    if (is_grey(colour))
        HPDF_Page_SetGrayFill(page, level(colour.red));
    else
        HPDF_Page_SetRGBFill(page, level(colour.red), level(colour.green), level(colour.blue));
}

void ink_stroke(HPDF_Page page, enum ink ink)
{
    struct rgb colour = ink_rgb(ink);

    if (is_grey(colour))
        HPDF_Page_SetGrayStroke(page, level(colour.red));
    else
        HPDF_Page_SetRGBStroke(page, level(colour.red), level(colour.green),
                               level(colour.blue));
}

static void inks_set(const struct sheet *sheet, const struct page_item *item)
{
    HPDF_Page_SetLineJoin(sheet->page, HPDF_MITER_JOIN);
    HPDF_Page_SetLineCap(sheet->page, HPDF_BUTT_END);
    if (item->fill != INK_NONE)
        ink_fill(sheet->page, item->fill);
    if (item->stroke != INK_NONE) {
        ink_stroke(sheet->page, item->stroke);
        HPDF_Page_SetLineWidth(sheet->page, points(item->line_width));
    }
}

/* Ends the path that was built. */
static void path_paint(const struct sheet *sheet, const struct page_item *item)
{
    if (item->fill != INK_NONE && item->stroke != INK_NONE)
        HPDF_Page_FillStroke(sheet->page);
    else if (item->fill != INK_NONE)
        HPDF_Page_Fill(sheet->page);
    else if (item->stroke != INK_NONE)
        HPDF_Page_Stroke(sheet->page);
    else
        HPDF_Page_EndPath(sheet->page);
}

/* A corner or quarter: from the current point by way of (cx, cy) to (x, y). */
static void quarter_to(const struct sheet *sheet, struct point from, struct point corner,
                       struct point to)
{
    HPDF_Page_CurveTo(sheet->page,
                      points(from.x + (mpt)((corner.x - from.x) * QUARTER)),
                      sheet_y(sheet, from.y + (mpt)((corner.y - from.y) * QUARTER)),
                      points(to.x + (mpt)((corner.x - to.x) * QUARTER)),
                      sheet_y(sheet, to.y + (mpt)((corner.y - to.y) * QUARTER)),
                      points(to.x), sheet_y(sheet, to.y));
}

/* One side of a rounded box and the corner at its end. */
static void side_to(const struct sheet *sheet, struct point end, struct point corner,
                    struct point next)
{
    HPDF_Page_LineTo(sheet->page, points(end.x), sheet_y(sheet, end.y));
    quarter_to(sheet, end, corner, next);
}

static void rounded_path(const struct sheet *sheet, const struct area *area, mpt radius)
{
    mpt left = area->x, right = area->x + area->width;
    mpt top = area->y, bottom = area->y + area->height;
    mpt shorter = area->width < area->height ? area->width : area->height;
    mpt r = radius < shorter / 2 ? radius : shorter / 2;

    HPDF_Page_MoveTo(sheet->page, points(left + r), sheet_y(sheet, top));
    side_to(sheet, (struct point){right - r, top}, (struct point){right, top},
            (struct point){right, top + r});
    side_to(sheet, (struct point){right, bottom - r}, (struct point){right, bottom},
            (struct point){right - r, bottom});
    side_to(sheet, (struct point){left + r, bottom}, (struct point){left, bottom},
            (struct point){left, bottom - r});
    side_to(sheet, (struct point){left, top + r}, (struct point){left, top},
            (struct point){left + r, top});
    HPDF_Page_ClosePath(sheet->page);
}

static void box_path(const struct sheet *sheet, const struct page_item *item)
{
    const struct area *area = &item->area;

    if (item->radius > 0)
        rounded_path(sheet, area, item->radius);
    else
        HPDF_Page_Rectangle(sheet->page, points(area->x), sheet_y(sheet, area->y + area->height),
                            points(area->width), points(area->height));
}

static void ellipse_path(const struct sheet *sheet, const struct area *area)
{
    mpt left = area->x, right = area->x + area->width, middle = area->x + area->width / 2;
    mpt top = area->y, bottom = area->y + area->height, level = area->y + area->height / 2;
    struct point north = {middle, top}, east = {right, level};
    struct point south = {middle, bottom}, west = {left, level};

    HPDF_Page_MoveTo(sheet->page, points(north.x), sheet_y(sheet, north.y));
    quarter_to(sheet, north, (struct point){right, top}, east);
    quarter_to(sheet, east, (struct point){right, bottom}, south);
    quarter_to(sheet, south, (struct point){left, bottom}, west);
    quarter_to(sheet, west, (struct point){left, top}, north);
    HPDF_Page_ClosePath(sheet->page);
}

static void step_draw(const struct sheet *sheet, const struct path_step *step)
{
    HPDF_REAL x = points(step->to.x), y = sheet_y(sheet, step->to.y);
    const struct point *control = step->control;

    switch (step->verb) {
    case PATH_MOVE:
        HPDF_Page_MoveTo(sheet->page, x, y);
        break;
    case PATH_LINE:
        HPDF_Page_LineTo(sheet->page, x, y);
        break;
    case PATH_CURVE:
        HPDF_Page_CurveTo(sheet->page, points(control[0].x), sheet_y(sheet, control[0].y),
                          points(control[1].x), sheet_y(sheet, control[1].y), x, y);
        break;
    case PATH_CLOSE:
        HPDF_Page_ClosePath(sheet->page);
        break;
    }
}

static void steps_draw(const struct sheet *sheet, const struct page_item *item)
{
    HPDF_Page_SetLineJoin(sheet->page, HPDF_ROUND_JOIN);
    for (size_t i = 0; i < item->step_count; i++)
        step_draw(sheet, &item->steps[i]);
}

static void line_path(const struct sheet *sheet, const struct page_item *item)
{
    HPDF_Page_MoveTo(sheet->page, points(item->from.x), sheet_y(sheet, item->from.y));
    HPDF_Page_LineTo(sheet->page, points(item->to.x), sheet_y(sheet, item->to.y));
}

void shape_draw(const struct sheet *sheet, const struct page_item *item)
{
    if (item->kind == PAGE_PATH && item->step_count == 0)
        return;
    inks_set(sheet, item);
    if (item->kind == PAGE_BOX)
        box_path(sheet, item);
    else if (item->kind == PAGE_ELLIPSE)
        ellipse_path(sheet, &item->area);
    else if (item->kind == PAGE_LINE)
        line_path(sheet, item);
    else
        steps_draw(sheet, item);
    path_paint(sheet, item);
}
