/* proof.c - judging a page, and the pages of a boat (room: proof). What is judged
 * stands in the files by subject; here it is gathered. Nothing is changed. */
#include "proof_near.h"

#define NOTES_MOST 3
#define PROOF_SCRATCH_LIMIT ((size_t)512 * 1024 * 1024)

/* ---- what is measured once ---- */

static struct area text_ink(const struct proofing *p, const struct page_item *item)
{
    struct run_ink ink = run_ink(p->faces, item->run);
    return (struct area){item->area.x + ink.left, item->baseline + ink.top,
                         ink.right - ink.left, ink.bottom - ink.top};
}

static struct area item_ink(const struct proofing *p, const struct page_item *item)
{
    if (is_text(item))
        return text_ink(p, item);
    return item->stroke == INK_NONE ? item->area : area_grown(item->area, item->line_width / 2);
}

static void inks_measure(struct proofing *p)
{
    struct area *ink = arena_array(p->arena, p->page->count + 1, sizeof *ink);
    for (size_t i = 0; i < p->page->count; i++)
        ink[i] = item_ink(p, &p->page->items[i]);
    p->ink = ink;
}

static void blocks_find(struct proofing *p)
{
    struct proof_block *blocks = arena_array(p->arena, p->page->count + 1, sizeof *blocks);
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        struct proof_block *last = p->block_count > 0 ? &blocks[p->block_count - 1] : NULL;
        if (last == NULL || last->key != item->block) {
            last = &blocks[p->block_count++];
            *last = (struct proof_block){item->block, i, i, item->area, NULL};
        }
        last->end = i + 1;
        last->area = area_union(last->area, is_text(item) ? p->ink[i] : item->area);
    }
    p->blocks = blocks;
}

/* Before `frames` is set each tag's is looked for. */
static void frames_find(struct proofing *p)
{
    const struct page_item **frames = arena_array(p->arena, p->page->count + 1, sizeof *frames);
    for (size_t i = 0; i < p->page->count; i++)
        if (is_plan_tag(&p->page->items[i]))
            frames[i] = plan_tag_frame(p, i);
    p->frames = frames;
}

struct proofing proofing_begin(const struct page *page, const struct faces *faces,
                               struct arena *arena)
{
    struct proofing p = {.page = page, .sheet = page->sheet, .whole = page->sheet,
                         .faces = faces, .arena = arena};
    inks_measure(&p);
    frames_find(&p);
    p.nearness = nearness_new(page, p.ink, p.frames, arena);
    p.contrasts = contrasts_new(page->palette, arena);
    blocks_find(&p);
    return p;
}

/* ---- findings ---- */

void proof_measured(struct proofing *p, size_t things)
{
    p->measured += things;
}

static const char *said(const struct proofing *p, const struct page_item *item)
{
    if (item == NULL)
        return "";
    if (is_text(item))
        return text_format(p->arena, "\"%s\": ", item->run->text);
    return item->block == BLOCK_NONE ? "" : text_format(p->arena, "%s: ", block_word(item->block));
}

void proof_found(struct proofing *p, enum proof_rule_key rule, const struct page_item *item,
                 const char *format, ...)
{
    va_list list;
    va_start(list, format);
    const char *measured = text_format_list(p->arena, format, list);
    va_end(list);
    p->findings = arena_grow(p->arena, p->findings, p->count, &p->room, sizeof *p->findings);
    struct proof_finding *finding = &p->findings[p->count++];
    *finding =
        (struct proof_finding){.rule = rule,
                               .page = p->page->id,
                               .measured = text_format(p->arena, "%s%s", said(p, item), measured)};
    if (item != NULL) {
        finding->where = item->area;
        finding->origin = item->origin;
    }
}

static size_t found_of(const struct proofing *p, enum proof_severity severity)
{
    size_t count = 0;
    for (size_t i = 0; i < p->count; i++)
        count += proof_rule(p->findings[i].rule)->severity == severity ? 1 : 0;
    return count;
}

/* Small faults add up: the sum is a fault of its own. What is reported outlives the
 * arena that the judging was done in. */
static struct proof_report report_close(struct proofing *p, struct arena *arena)
{
    size_t notes = found_of(p, PROOF_NOTE);
    proof_measured(p, 1);
    if (notes > NOTES_MOST)
        proof_found(p, RULE_NOTES, NULL, "%zu notes", notes);
    struct proof_finding *kept = arena_array(arena, p->count, sizeof *kept);
    for (size_t i = 0; i < p->count; i++) {
        kept[i] = p->findings[i];
        kept[i].measured = text_format(arena, "%s", p->findings[i].measured);
    }
    return (struct proof_report){
        .findings = kept, .count = p->count, .errors = found_of(p, PROOF_ERROR),
        .notes = notes, .aims = found_of(p, PROOF_AIM), .measured = p->measured,
        .words = p->sheet->words};
}

/* ---- all rules ---- */

static void page_judge(struct proofing *p)
{
    static void (*const judges[])(struct proofing *) = {
        proof_places, proof_said,    proof_sizes, proof_glyphs, proof_lights,
        proof_signs,  proof_wording, proof_steps, proof_rows,   proof_plan,
        proof_views,  proof_bands};
    for (size_t i = 0; i < sizeof judges / sizeof *judges; i++)
        judges[i](p);
}

void proof_page(const struct page *page, const struct faces *faces, struct arena *arena,
                struct proof_report *out)
{
    struct arena *scratch = arena_new(PROOF_SCRATCH_LIMIT);
    struct proofing p = proofing_begin(page, faces, scratch);
    page_judge(&p);
    *out = report_close(&p, arena);
    arena_free(scratch);
}

static size_t pages_of(const struct laid_set *laid)
{
    size_t count = 0;
    for (size_t i = 0; i < laid->count; i++)
        count += laid->sheets[i].page_count;
    return count;
}

/* Those of one sheet; gives how many there are, and sets of which of its pages each is. */
static size_t sheet_judge(const struct laid_sheet *laid, const struct faces *faces,
                          struct arena *arena, struct proofing **all, size_t *places)
{
    size_t count = 0;
    for (size_t i = 0; i < laid->page_count; i++) {
        if (laid->pages[i] == NULL)
            continue;
        all[count] = arena_alloc(arena, sizeof **all);
        *all[count] = proofing_begin(laid->pages[i], faces, arena);
        all[count]->whole = laid->sheet;
        all[count]->page_index = i;
        places[count++] = i;
    }
    for (size_t i = 0; i < count; i++) {
        all[i]->pages = all;
        all[i]->page_count = count;
        page_judge(all[i]);
    }
    if (count == laid->page_count)
        proof_whole(laid, all, count);
    return count;
}

const struct proof_report *proof_set(const struct laid_set *laid, const struct faces *faces,
                                     struct arena *arena)
{
    struct arena *scratch = arena_new(PROOF_SCRATCH_LIMIT);
    size_t most = pages_of(laid), count = 0, before = 0;
    struct proof_report *reports = arena_array(arena, most, sizeof *reports);
    struct proofing **all = arena_array(scratch, most, sizeof *all);
    size_t *places = arena_array(scratch, most, sizeof *places);
    for (size_t i = 0; i < laid->count; i++) {
        size_t own = sheet_judge(&laid->sheets[i], faces, scratch, &all[count], &places[count]);
        for (size_t k = 0; k < own; k++)
            places[count++] += before;
        before += laid->sheets[i].page_count;
    }
    proof_together(laid, all, count);
    for (size_t i = 0; i < count; i++)
        reports[places[i]] = report_close(all[i], arena);
    arena_free(scratch);
    return reports;
}
