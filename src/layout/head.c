/* head.c - strips, title band, signs and the line that says when to call (room: layout). */
#include "layout_room.h"

#include "measures.h"

#include "promise.h"

#include <string.h>

/* The colour of the stripe, by the class that a card is of. */
static const enum ink stripe_inks[] = {
    [SIGN_FIRE] = INK_FIRE, [SIGN_RESCUE] = INK_RESCUE, [SIGN_CONTROL] = INK_CONTROL,
    [SIGN_WARNING] = INK_WARNING};

/* Without colour a hatch over the stripe tells the class: lines of that ink, so far apart and so
 * strong, which lean by so many of the stripe's height; of no pitch: there are none. */
static const struct stripe_hatch { enum ink ink; mpt pitch, width; int lean; } hatches[] = {
    [SIGN_FIRE] = {INK_WHITE, STRIPE_PITCH_FIRE, STRIPE_LINE_FIRE, 1},
    [SIGN_RESCUE] = {INK_WHITE, STRIPE_PITCH_RESCUE, STRIPE_LINE_RESCUE, 0},
    [SIGN_CONTROL] = {INK_WHITE, 0, 0, 0},
    [SIGN_WARNING] = {INK_BLACK, STRIPE_PITCH_WARNING, STRIPE_LINE_WARNING, -1}};

/* The baseline that sets the capitals in the middle of a strip; where signs or accents of a
 * language would come near its frame, the one that sets all ink there. */
static mpt strip_baseline(const struct pen *pen, const struct style *style, struct area strip,
                          const char *mark)
{
    mpt middle = baseline_in(strip.y, strip.height, style->size);
    mpt inner = strip.height - THIN_FRAME - 2 * STRIP_CLEAR;
    mpt top = strip.y + (strip.height - inner) / 2;
    struct run_ink ink = pen_ink(pen, style, mark, strlen(mark));
    if (middle + ink.top >= top && middle + ink.bottom <= top + inner)
        return middle;
    return strip.y + (strip.height - ink.top - ink.bottom) / 2;
}

/* Framed words in a strip of their own: never over other text. */
static void strip_place(struct pen *pen, struct area strip, enum block_key block)
{
    struct style style = {ROLE_MARK, FACE_BOLD, 0, INK_BLACK};
    const char *mark = sheet_text(pen->sheet, block)->text;
    mpt width = style_fit(pen, &style, mark, strip.width - 2 * STRIP_PAD_LEAST);
    pen->block = block;
    pen_box(pen, strip, INK_NONE, INK_BLACK, THIN_FRAME, FRAME_CORNER);
    pen_text(pen, &style, strip.x + (strip.width - width) / 2,
             strip_baseline(pen, &style, strip, mark), mark, strlen(mark), pen->sheet->origin);
    if (width > strip.width - 2 * STRIP_PAD_LEAST)
        pen_too_long(pen, pen->sheet->origin, width - (strip.width - 2 * STRIP_PAD_LEAST),
                     "shorten the words mark_... of the language", "the strip");
}

/* The sign stands on white, so that its frame shape shows on the black band. */
static void band_sign_place(struct pen *pen, struct area band, enum sign_class sign)
{
    mpt side = band.height - 2 * BAND_PAD;
    struct area plate = {band.x + BAND_PAD, band.y + BAND_PAD, side, side};
    struct area area = {plate.x + PLATE_PAD, plate.y + PLATE_PAD, side - PLATE_PADS,
                        side - PLATE_PADS};
    pen_box(pen, plate, INK_WHITE, INK_NONE, 0, BAND_CORNER);
    pen_sign(pen, area, sign, sheet_title(pen->sheet)->symbol, pen->sheet->origin);
}

/* The space nearest to the middle; NULL: there is none. */
static const char *middle_space(const char *words)
{
    const char *best = NULL;
    size_t half = strlen(words) / 2, nearest = strlen(words);
    for (const char *at = strchr(words, ' '); at != NULL; at = strchr(at + 1, ' ')) {
        size_t left = (size_t)(at - words), off = left > half ? left - half : half - left;
        if (off < nearest) {
            nearest = off;
            best = at;
        }
    }
    return best;
}

/* Where a name that is wider than `most` at its least size is parted; NULL: nowhere. */
static const char *name_break(const struct pen *pen, const struct style *style,
                              const char *name, mpt most)
{
    return pen_width(pen, style, name) <= most ? NULL : middle_space(name);
}

static mpt name_line(struct pen *pen, const struct style *style, mpt right, mpt baseline,
                     const char *text)
{
    mpt width = pen_width(pen, style, text);
    pen_text(pen, style, right - width, baseline, text, strlen(text),
             pen->sheet->boat->facts.name.place);
    return width;
}

/* The name on one line, or its halves on two; gives their width. */
static mpt boat_name_set(struct pen *pen, const struct style *style, mpt right, mpt baseline,
                         mpt most)
{
    const char *name = sheet_title(pen->sheet)->boat, *part = name_break(pen, style, name, most);
    if (part == NULL)
        return name_line(pen, style, right, baseline, name);
    const char *first = text_format(pen->arena, "%.*s", (int)(part - name), name);
    mpt pitch = line_pitch(ROLE_BOAT, style->size);
    paragraph_begin(pen);
    mpt one = name_line(pen, style, right, baseline - pitch, first);
    mpt two = name_line(pen, style, right, baseline, part + 1);
    paragraph_end(pen);
    return one > two ? one : two;
}

/* Where titles are smaller, the boat's name leaves them room. */
static mpt boat_name_size(const struct paper *paper, mpt fitting)
{
    struct size_rule rule = size_rule(paper, ROLE_BOAT);
    mpt share = title_share(paper, rule.aim), most = share > rule.floor ? share : rule.floor;
    return fitting < most ? fitting : most;
}

static mpt boat_block_place(struct pen *pen, struct area band)
{
    struct style name = {ROLE_BOAT, FACE_BOLD, 0, INK_WHITE};
    struct style number = {ROLE_BOAT, FACE_TEXT, size_rule(pen->paper, ROLE_BOAT).floor,
                           INK_WHITE};
    const struct sheet *sheet = pen->sheet;
    const struct title_facts *title = sheet_title(sheet);
    mpt right = band.x + band.width - BAND_PAD_RIGHT;
    mpt most = part_of(PART_OF_BAND_BOAT, band.width);
    style_fit(pen, &name, title->boat, most);
    name.size = boat_name_size(pen->paper, name.size);
    mpt number_width = pen_width(pen, &number, title->number);
    mpt name_width = boat_name_set(pen, &name, right,
                                   band.y + part_of(PART_OF_BAND_NAME, band.height), most);
    pen_text(pen, &number, right - number_width, band.y + part_of(PART_OF_BAND_NUMBER, band.height),
             title->number, strlen(title->number), sheet->origin);
    return name_width > number_width ? name_width : number_width;
}

static void title_line(struct pen *pen, const struct style *style, struct area area,
                       mpt baseline, const char *text, size_t length)
{
    mpt width = pen_text(pen, style, area.x, baseline, text, length, pen->sheet->origin);
    if (width > area.width)
        pen_too_long(pen, pen->sheet->boat->facts.name.place, width - area.width,
                     "shorten the boat's name, or part it by a space: it may take two lines",
                     "the title beside the boat's name");
}

/* Where a title is parted: behind its comma, else in its middle. */
static const char *title_break(const char *title)
{
    const char *comma = strchr(title, ',');
    return comma != NULL ? comma + 1 : middle_space(title);
}

/* The head of a plan has letters of 60 % of 7 % of the shorter side (ISO 23601), or two
 * lines. */
static bool line_is_tall(const struct pen *pen, mpt size)
{
    const struct paper *paper = pen->paper;
    mpt shorter = paper->width < paper->height ? paper->width : paper->height;
    return page_rules_of(pen->sheet->kind) != RULES_ESCAPE_PLAN ||
           em_share(size, EM_CAPITALS) >= shorter * 7 / 100 * 60 / 100;
}

static void too_tall_tell(struct pen *pen, mpt excess)
{
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR,
                text_place_for(&pen->sheet->procedure->title, pen->sheet->language),
                "give the card a shorter title, which needs one line",
                "%s (%s): the title on two lines is %s mm too tall at the smallest size allowed",
                pen->sheet->name, pen->sheet->language, mm_text(pen->arena, excess));
}

/* Where the capitals of two lines of a title begin, and the gap between them: in the middle of
 * the area. Where accents of the first would stand over it, or what hangs from the second below
 * it, the lines stand closer and are moved. */
struct two_lines { mpt top, gap; };

static struct two_lines title_lines(struct pen *pen, const struct style *style,
                                    struct area area, const char *title, const char *part)
{
    struct run_ink first = pen_ink(pen, style, title, (size_t)(part - title));
    struct run_ink second = pen_ink(pen, style, part + 1, strlen(part + 1));
    mpt capital = em_share(style->size, EM_CAPITALS);
    mpt room = (area.height - 2 * capital - TITLE_LINE_GAP) / 2;
    mpt above = -first.top - capital + TITLE_CLEAR, below = second.bottom + TITLE_CLEAR;
    if (above <= room && below <= room)
        return (struct two_lines){area.y + room, TITLE_LINE_GAP};
    mpt excess = above + below - (area.height - 2 * capital - TITLE_LINE_GAP_LEAST);
    if (excess > 0)
        too_tall_tell(pen, excess);
    return (struct two_lines){above > below ? area.y + above
                                            : area.y + area.height - below - 2 * capital -
                                                  TITLE_LINE_GAP_LEAST,
                              TITLE_LINE_GAP_LEAST};
}

/* On one line if its capitals can be 8 mm or more there; else on two. The style takes the size
 * that it has on one. */
static bool title_takes_one_line(const struct pen *pen, struct style *style, mpt width)
{
    const char *title = sheet_title(pen->sheet)->title;
    mpt own = style_fit(pen, style, title, width);
    return (own <= width && line_is_tall(pen, style->size)) || title_break(title) == NULL;
}

static void title_place(struct pen *pen, struct area area)
{
    struct style style = {ROLE_TITLE, FACE_BOLD, 0, INK_WHITE};
    const char *title = sheet_title(pen->sheet)->title, *part = title_break(title);
    if (title_takes_one_line(pen, &style, area.width)) {
        title_line(pen, &style, area, baseline_in(area.y, area.height, style.size), title,
                   strlen(title));
        return;
    }
    style.size = size_rule(pen->paper, ROLE_TITLE).floor;
    mpt capital = em_share(style.size, EM_CAPITALS);
    struct two_lines lines = title_lines(pen, &style, area, title, part);
    paragraph_begin(pen);
    title_line(pen, &style, area, lines.top + capital, title, (size_t)(part - title));
    title_line(pen, &style, area, lines.top + 2 * capital + lines.gap, part + 1, strlen(part + 1));
    paragraph_end(pen);
}

/* From the band's edge to the title: its sign, where it has one, is as wide as the band is tall. */
static mpt title_left(const struct pen *pen, struct area band)
{
    if (sheet_title(pen->sheet)->stripe == SIGN_NONE)
        return BAND_PAD_RIGHT;
    return band.height + title_share(pen->paper, BAND_SIGN_GAP);
}

/* What the title has beside its sign and the boat's name. */
static mpt title_width(const struct pen *pen, struct area band, mpt boat_width)
{
    return band.width - title_left(pen, band) - title_share(pen->paper, BAND_TITLE_GAP) -
           boat_width;
}

mpt band_height_least(struct pen *trial)
{
    struct style style = {ROLE_TITLE, FACE_BOLD, 0, INK_WHITE};
    struct area band = {0, 0, safe_width(trial->paper),
                        title_share(trial->paper, BAND_OF_TWO_LINES)};
    mpt width = title_width(trial, band, boat_block_place(trial, band));
    return title_takes_one_line(trial, &style, width) ? 0 : band.height;
}

static void stripe_place(struct pen *pen, struct area area, enum sign_class class)
{
    promise(class >= SIGN_FIRE && class <= SIGN_WARNING);
    const struct stripe_hatch *hatch = &hatches[class];
    mpt lean = hatch->lean * area.height, half = area.height / 2;
    pen_box(pen, area, stripe_inks[class], INK_BLACK, HAIR, 0);
    if (pen->paper->palette != PALETTE_MONO || hatch->pitch == 0)
        return;
    for (mpt x = area.x + hatch->pitch; x < area.x + area.width - hatch->pitch / 2;
         x += hatch->pitch) {
        pen_line(pen, (struct point){x - lean / 2, area.y + half + half},
                 (struct point){x + lean / 2, area.y}, hatch->ink, hatch->width);
        pen_part(pen, PART_HATCH);
    }
}

static void band_place(struct pen *pen, const struct frame *frame)
{
    const struct title_facts *title = sheet_title(pen->sheet);
    struct area band = frame->at[AREA_BAND];
    pen->block = BLOCK_TITLE;
    pen_box(pen, band, INK_BLACK, INK_NONE, 0, BAND_CORNER);
    if (title->stripe != SIGN_NONE)
        band_sign_place(pen, band, title->stripe);
    mpt boat_width = boat_block_place(pen, band);
    mpt left = title_left(pen, band);
    title_place(pen, (struct area){band.x + left, band.y,
                                   title_width(pen, band, boat_width), band.height});
    if (title->stripe != SIGN_NONE)
        stripe_place(pen, frame->at[AREA_STRIPE], title->stripe);
}

struct paragraph when_lay(const struct pen *pen, mpt size, mpt width)
{
    struct style style = {ROLE_SIGNS, FACE_TEXT, size, INK_BLACK};
    const struct signs_facts *signs = sheet_signs(pen->sheet);
    const char *text = text_empty(signs->word)
                           ? signs->signs
                           : text_format(pen->arena, "**%s** %s", signs->word, signs->signs);
    return paragraph_make(pen, &style, text, width, pen->sheet->origin);
}

static void when_place(struct pen *pen, const struct frame *frame, mpt size)
{
    struct paragraph paragraph = when_lay(pen, size, frame->at[AREA_WHEN].width);
    pen->block = BLOCK_SIGNS;
    paragraph_place(pen, &paragraph, frame->at[AREA_WHEN].x, frame->at[AREA_WHEN].y);
}

/* Beside the hole: what the card is on the left, that nobody approved it on the right; one of
 * them alone on both sides. */
static void strips_place(struct pen *pen, const struct frame *frame)
{
    bool marked = sheet_block(pen->sheet, BLOCK_MARK) != NULL;
    bool unapproved = sheet_block(pen->sheet, BLOCK_UNAPPROVED) != NULL;
    if (!marked && !unapproved)
        return;
    strip_place(pen, frame->at[AREA_STRIP_LEFT], marked ? BLOCK_MARK : BLOCK_UNAPPROVED);
    size_t outer = marked && unapproved ? 0 : reading_skip(pen);    /* it is read once */
    strip_place(pen, frame->at[AREA_STRIP_RIGHT], unapproved ? BLOCK_UNAPPROVED : BLOCK_MARK);
    if (!marked || !unapproved)
        reading_end(pen, outer);
}

void head_place(struct pen *pen, const struct frame *frame, struct head_sizes sizes)
{
    strips_place(pen, frame);
    band_place(pen, frame);
    when_place(pen, frame, sizes.when);
    berth_place(pen, frame->at[AREA_BERTH], sizes.berth);
    call_cells_place(pen, frame->at[AREA_CALL_LINE]);
}
