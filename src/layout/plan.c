/* plan.c - the small plan beside the steps of a card: the boat's outline, tags at their
 * places, words round it (room: layout). Takes the plan's facts of the sheet and an area;
 * gives the items on the page. Tags never overlap and stay on the boat; a tag that had to
 * move is led to its place by a thin line where one can be drawn (plan_lead.c); names of
 * zones give way to both (zone_names.c). A tag without room is an error, never left out
 * in silence. */
#include "plan_lead.h"

#include "measures.h"
#include "zone_names.h"

#include <string.h>

#define WIDENINGS 5

static struct style plan_word_style(const struct pen *pen)
{
    return (struct style){ROLE_PLAN_LABEL, FACE_TEXT,
                          size_rule(pen->paper, ROLE_PLAN_LABEL).floor, INK_BLACK};
}

static void tag_draw(struct pen *pen, const struct marker *marker, struct area box, mpt size)
{
    struct style style = plan_tag_style(size);
    mpt width = pen_width(pen, &style, marker->tag);
    pen_box(pen, box, INK_BLACK, INK_WHITE, TAG_RIM,
            marker->level == LEVEL_BELOW ? box.height / 2 : 0);
    pen_text(pen, &style, box.x + (box.width - width) / 2,
             baseline_in(box.y, box.height, size), marker->tag, strlen(marker->tag),
             marker->origin);
}

static mpt tag_box_width(const struct pen *pen, const struct marker *marker, mpt size)
{
    struct style style = plan_tag_style(size);
    mpt pad = marker->level == LEVEL_BELOW ? PLAN_TAG_PADS_ROUND : PLAN_TAG_PADS;
    return pen_width(pen, &style, marker->tag) + pad;
}

/* One way to draw the plan, and what became of its tags. */
struct plan_trial {
    struct hull_view view;
    mpt size;             /* of the letters of a tag */
    struct area *boxes;   /* by marker: where its tag stands */
    bool *found;          /* by marker: there was room for its tag */
    size_t placed;        /* tags that found room */
    size_t lost;          /* tags away from their place that no line can be led to it */
    mpt drift;            /* how far the worst tag stands from its true place */
};

static struct placed_tags tags_of(const struct pen *pen, const struct plan_trial *trial)
{
    const struct plan_facts *plan = sheet_plan(pen->sheet);
    return (struct placed_tags){&trial->view, plan->markers, trial->boxes, trial->found,
                                plan->marker_count};
}

static void drift_note(struct plan_trial *trial, const struct marker *marker, struct area box)
{
    mpt drift = spot_drift(&trial->view, marker, box);
    trial->drift = drift > trial->drift ? drift : trial->drift;
}

/* Finds a spot for each tag. Tags of places that were measured come first, so that they
 * stand there and only the others, of zones, have to move. */
static void tags_find(struct pen *pen, struct plan_trial *trial)
{
    const struct sheet *sheet = pen->sheet;
    const struct plan_facts *plan = sheet_plan(sheet);
    struct taken taken = {arena_array(pen->arena, plan->marker_count, sizeof(struct area)), 0,
                          PLAN_TAG_GAP};
    for (int pass = 0; pass < 2; pass++)
        for (size_t i = 0; i < plan->marker_count; i++) {
            const struct marker *marker = &plan->markers[i];
            if (marker->exact != (pass == 0))
                continue;
            mpt width = tag_box_width(pen, marker, trial->size);
            mpt height = em_share(trial->size, EM_TAG_BOX);
            trial->found[i] = spot_find(&trial->view, marker, width, height, &taken,
                                        &trial->boxes[i]);
            if (!trial->found[i])
                continue;
            drift_note(trial, marker, trial->boxes[i]);
            taken.areas[taken.count++] = trial->boxes[i];
            trial->placed++;
        }
}

/* Tries one way: the hull `widening` hundredths as wide as she is, letters of that size. */
static struct plan_trial plan_try(struct pen *pen, struct area area, int widening, mpt size)
{
    size_t count = sheet_plan(pen->sheet)->marker_count;
    struct plan_trial trial = {.view = hull_view_in(pen->sheet->boat, area, widening),
                               .size = size,
                               .boxes = arena_array(pen->arena, count, sizeof *trial.boxes),
                               .found = arena_array(pen->arena, count, sizeof *trial.found)};
    tags_find(pen, &trial);
    struct placed_tags tags = tags_of(pen, &trial);
    for (size_t i = 0; i < count; i++)
        trial.lost += trial.found[i] && tag_lead(&tags, i) == LEAD_LOST ? 1 : 0;
    return trial;
}

/* More tags placed, then fewer lost, then the worst one nearer to its place. */
static bool trial_better(const struct plan_trial *a, const struct plan_trial *b)
{
    if (a->placed != b->placed)
        return a->placed > b->placed;
    return a->lost != b->lost ? a->lost < b->lost : a->drift < b->drift;
}

/* Chooses how the plan is drawn: as little wider than she is as will do, with letters of
 * the size aimed at, else of the floor; then wider and wider. The first way that places
 * every tag, loses none and lets none drift far is taken, else the best of all. */
static struct plan_trial plan_choose(struct pen *pen, struct area area)
{
    static const int widenings[2][WIDENINGS] = {{130, 150, 170, 190, 210},
                                                {125, 140, 155, 170, 180}};
    struct size_rule rule = size_rule(pen->paper, ROLE_PLAN_TAG);
    const int *wide = widenings[pen->sheet->boat->catamaran ? 1 : 0];
    struct plan_trial best = plan_try(pen, area, wide[0], rule.aim);
    for (size_t i = 0; i < 2 * WIDENINGS; i++) {
        mpt size = i % 2 == 0 ? rule.aim : rule.floor;
        struct plan_trial trial = plan_try(pen, area, wide[i / 2], size);
        if (trial_better(&trial, &best))
            best = trial;
        if (best.placed == sheet_plan(pen->sheet)->marker_count && best.lost == 0 &&
            best.drift <= TAG_DRIFT_AIM)
            break;
    }
    return best;
}

/* ---- words round the plan ---- */

static mpt plan_word_place(struct pen *pen, enum face_role face, mpt x, mpt baseline,
                           enum plan_word word)
{
    struct style style = plan_word_style(pen);
    const char *text = sheet_plan(pen->sheet)->words[word];
    style.face = face;
    return x + pen_text(pen, &style, x, baseline, text, strlen(text), pen->sheet->origin);
}

static mpt plan_word_width(const struct pen *pen, enum face_role face, enum plan_word word)
{
    struct style style = plan_word_style(pen);
    style.face = face;
    return pen_width(pen, &style, sheet_plan(pen->sheet)->words[word]);
}

/* Sets the line above the plan: PORT (left) at its left end, BOW in the middle, (right)
 * STARB'D at its right end. */
static void head_words_place(struct pen *pen, struct area area)
{
    mpt size = size_rule(pen->paper, ROLE_PLAN_LABEL).floor, gap = PLAN_WORD_GAP;
    mpt baseline = baseline_in(area.y, PLAN_HEAD_HEIGHT - PLAN_HEAD_GAP, size);
    mpt bow = area.x + (area.width - plan_word_width(pen, FACE_BOLD, PLAN_BOW)) / 2;
    mpt right = area.x + area.width - plan_word_width(pen, FACE_BOLD, PLAN_STARBOARD) - gap -
                plan_word_width(pen, FACE_TEXT, PLAN_STARBOARD_HINT);
    mpt x = plan_word_place(pen, FACE_BOLD, area.x, baseline, PLAN_PORT);
    plan_word_place(pen, FACE_TEXT, x + gap, baseline, PLAN_PORT_HINT);
    plan_word_place(pen, FACE_BOLD, bow, baseline, PLAN_BOW);
    x = plan_word_place(pen, FACE_TEXT, right, baseline, PLAN_STARBOARD_HINT);
    plan_word_place(pen, FACE_BOLD, x + gap, baseline, PLAN_STARBOARD);
}

/* Sets the line below the plan: a square mark for tags on deck, a round one for those below,
 * and at the right end which way left and right are meant. */
static void legend_place(struct pen *pen, struct area area)
{
    mpt height = PLAN_LEGEND_HEIGHT - PLAN_LEGEND_GAP, y = area.y + area.height - height;
    mpt mark = PLAN_MARK, gap = PLAN_MARK_GAP, x = area.x;
    mpt mark_top = y + (height - mark) / 2;
    mpt baseline = baseline_in(y, height, size_rule(pen->paper, ROLE_PLAN_LABEL).floor);
    pen_box(pen, (struct area){x, mark_top, mark, mark}, INK_BLACK, INK_NONE, 0, 0);
    x = plan_word_place(pen, FACE_TEXT, x + mark + gap, baseline,
                        PLAN_DECK) + PLAN_LEGEND_WORDS_GAP;
    pen_box(pen, (struct area){x, mark_top, mark + PLAN_MARK_ROUND, mark}, INK_BLACK, INK_NONE, 0,
            mark / 2);
    plan_word_place(pen, FACE_TEXT, x + mark + PLAN_MARK_ROUND + gap, baseline, PLAN_BELOW);
    x = area.x + area.width - plan_word_width(pen, FACE_TEXT, PLAN_FACING);
    plan_word_place(pen, FACE_TEXT, x, baseline, PLAN_FACING);
}

/* ---- all ---- */

static void not_placed_tell(struct pen *pen, const struct marker *marker)
{
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, marker->origin,
                "record `at: [metres aft of the bow, metres to starboard]` for tags of that "
                "zone, or give them a nearer zone",
                "%s: no room on the plan for the tag %s in %s", pen->sheet->name, marker->tag,
                marker->zone->key);
}

/* Places the tags over their lines and over the names of zones. `drawn_from`: the first of
 * the page's items that belong to the boat, which the names must keep clear of. */
static void tags_place(struct pen *pen, const struct plan_trial *trial, size_t drawn_from)
{
    const struct sheet *sheet = pen->sheet;
    const struct plan_facts *plan = sheet_plan(sheet);
    struct taken taken = {trial->boxes, plan->marker_count, 0};
    struct placed_tags tags = tags_of(pen, trial);
    for (size_t i = 0; i < plan->marker_count; i++)
        if (trial->found[i] && tag_lead(&tags, i) == LEAD_DRAWN)
            tag_lead_draw(pen, &tags, i);
    zone_names_place(pen, &trial->view, &taken, drawn_from);
    for (size_t i = 0; i < plan->marker_count; i++) {
        if (trial->found[i])
            tag_draw(pen, &plan->markers[i], trial->boxes[i], trial->size);
        else
            not_placed_tell(pen, &plan->markers[i]);
    }
}

void plan_place(struct pen *pen, struct area area)
{
    struct area middle = {area.x + PLAN_SIDE_MARGIN, area.y + PLAN_HEAD_HEIGHT,
                          area.width - 2 * PLAN_SIDE_MARGIN,
                          area.height - PLAN_HEAD_HEIGHT - PLAN_LEGEND_HEIGHT - PLAN_LEGEND_GAP};
    pen->block = BLOCK_PLAN;
    struct plan_trial trial = plan_choose(pen, middle);
    head_words_place(pen, area);
    size_t drawn_from = pen->count;
    hull_draw(pen, &trial.view);
    tags_place(pen, &trial, drawn_from);
    legend_place(pen, area);
}
