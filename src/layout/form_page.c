/* form_page.c - pages of a form: sections from the head down, on as many pages as they take (room:
 * layout). A line is never parted; the title and the heads of a section stand on each page that
 * has lines of it. */
#include "form_block.h"

#include "measures.h"
#include "views.h"

/* Tells of a section that has a word wider than its column. */
static void too_wide_tell(struct pen *pen, const struct laid_form_section *laid)
{
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, laid->wide_at, "write a shorter word there",
                "%s (%s): a word of \"%s\" is wider than its column", pen->sheet->name,
                pen->sheet->language, laid->section->title);
}

/* Below the sections, in what room they leave. */
static bool views_stand(struct pen *pen, struct area left)
{
    struct laid_views laid;
    if (sheet_views(pen->sheet)->count == 0)
        return true;
    if (!views_lay(pen, left, &laid)) {
        pen_too_long(pen, pen->sheet->origin, 0, "ask for fewer of them: with --card",
                     "what is shown small");
        return false;
    }
    views_place(pen, &laid, (struct point){left.x, left.y});
    return true;
}

bool form_sheet_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    const struct form_facts *form = sheet_form(pen->sheet);
    struct area body = frame_make(pen->paper, TEMPLATE_FORM, &shared->needs).at[AREA_BODY];
    mpt y = body.y;
    (void)trial;
    for (size_t i = 0; i < form->count; i++) {
        struct laid_form_section laid = form_section_lay(pen, &form->sections[i], body.width);
        y += i == 0 ? 0 : FORM_SECTION_GAP;
        form_section_place(pen, &laid, (struct point){body.x, y}, body.width);
        y += laid.height;
        if (laid.wide)
            too_wide_tell(pen, &laid);
    }
    if (y > body.y + body.height) {
        pen_too_long(pen, pen->sheet->origin, y - body.y - body.height,
                     "write less there, or take larger paper", "what must stand on one page");
        return false;
    }
    return views_stand(pen, (struct area){body.x, y, body.width, body.y + body.height - y});
}

/* ---- its pages ---- */

/* Pages while they are filled. */
struct form_pages {
    const struct pen *pen;
    mpt room, width;              /* height of the body of a page, and its width */
    mpt used;                     /* of the page being filled */
    size_t page;                  /* its index */
    struct form_section *parts[SHEET_PAGES_MOST];
    size_t counts[SHEET_PAGES_MOST];
};

/* The lines from `first` to before `end`; the note stands above the first of all. */
static void section_part_add(struct form_pages *pages, const struct form_section *section,
                             size_t first, size_t end)
{
    struct form_section *part = &pages->parts[pages->page][pages->counts[pages->page]++];
    *part = *section;
    part->lines = section->lines + first;
    part->line_count = end - first;
    part->note = first == 0 ? section->note : "";
}

static void page_turn(struct form_pages *pages)
{
    pages->page++;
    pages->used = 0;
}

static bool may_turn(const struct form_pages *pages)
{
    return pages->page + 1 < SHEET_PAGES_MOST && pages->used > 0;
}

/* From which line on `laid` has no room below what stands on the page; `first` where not even the
 * head and one line have. */
static size_t lines_end(const struct form_pages *pages, const struct laid_form_section *laid,
                        size_t first, mpt *height)
{
    mpt gap = pages->used > 0 ? FORM_SECTION_GAP : 0;
    size_t end = first;
    *height = gap + laid->bar + laid->head.height + (first == 0 ? laid->note_height : 0);
    while (end < laid->section->line_count &&
           pages->used + *height + laid->lines[end].height <= pages->room)
        *height += laid->lines[end++].height;
    return end;
}

/* Would a section be parted here that a page can hold? */
static bool is_whole_on_next(const struct form_pages *pages, const struct laid_form_section *laid)
{
    return laid->section->start == FORM_WHOLE && laid->height <= pages->room &&
           pages->used + FORM_SECTION_GAP + laid->height > pages->room;
}

/* May a section go on on another page? */
enum together { PARTED, ON_ONE_PAGE };

/* A section on this page and those after it, one part of it a page. One that must stand with those
 * before it does, and on the last page all that is left, in whatever room there is: the page then
 * is too full, which is told when it is placed. */
static void section_flow(struct form_pages *pages, const struct form_section *section,
                         enum together together)
{
    struct laid_form_section laid = form_section_lay(pages->pen, section, pages->width);
    bool turns = section->start == FORM_NEW_PAGE ||
                 (together == PARTED && is_whole_on_next(pages, &laid));
    if (turns && may_turn(pages))
        page_turn(pages);
    for (size_t first = 0, end;; first = end) {
        mpt height;
        end = lines_end(pages, &laid, first, &height);
        bool nothing = end == first && section->line_count > 0;
        if ((nothing || pages->used + height > pages->room) && together == PARTED &&
            may_turn(pages)) {
            page_turn(pages);
            end = first;
            continue;
        }
        bool rest = nothing || together == ON_ONE_PAGE || pages->page + 1 == SHEET_PAGES_MOST;
        end = rest ? section->line_count : end;
        section_part_add(pages, section, first, end);
        pages->used += height;
        if (end == section->line_count)
            return;
    }
}

size_t form_split(struct laying *laying, struct pen *pen)
{
    struct form_pages *pages = arena_alloc(pen->arena, sizeof *pages);
    struct shared shared = shared_find(&(struct page_list){.sheets = &laying->whole, .count = 1},
                                       pen);
    struct page_needs needs = page_needs_of(pen, &shared.needs);
    struct area body = frame_make(pen->paper, TEMPLATE_FORM, &needs).at[AREA_BODY];
    const struct form_facts *form = form_alone_fit(pen, sheet_form(laying->whole), &body);
    *pages = (struct form_pages){.pen = pen, .room = body.height, .width = body.width};
    for (size_t i = 0; i < SHEET_PAGES_MOST; i++)
        pages->parts[i] = arena_array(pen->arena, form->count, sizeof *pages->parts[i]);
    for (size_t i = 0; i < form->count; i++)
        section_flow(pages, &form->sections[i], i < form->alone ? ON_ONE_PAGE : PARTED);
    for (size_t i = 0; i <= pages->page; i++) {
        struct page_place place = {.index = i, .count = pages->page + 1};
        struct form_facts *part = arena_alloc(pen->arena, sizeof *part);
        struct sheet *sheet = page_sheet(laying->whole, &place, pen->arena);
        *part = (struct form_facts){pages->parts[i], pages->counts[i], 0};
        page_facts_set(sheet, BLOCK_FORM, (union block_facts){.form = part});
        laying->sheets[i] = sheet;
    }
    return pages->page + 1;
}

bool form_lessen(struct laying *laying)
{
    (void)laying;
    return false;                 /* pages were found as lines fill them: nothing yields */
}
