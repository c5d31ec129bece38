/* berth_block.c - the line under the signs: what to do in a berth, what to do at anchor, and what
 * those ashore say (room: layout). A line takes as many of them as it has room for; on narrow
 * paper one may break. All cards of a set that have the line have the same room for it. */
#include "pages.h"

#include "marked.h"
#include "measures.h"

#define BERTH_TEXTS 3

/* The texts that a sheet has, in order. */
struct berth_texts {
    const struct pen *pen;
    struct marked_styles styles;
    mpt width;                                 /* of a line */
    const struct card_text *at[BERTH_TEXTS];
    enum block_key blocks[BERTH_TEXTS];
    size_t count;
};

static struct berth_texts berth_texts_of(const struct pen *pen, mpt size)
{
    static const enum block_key blocks[] = {BLOCK_BERTH, BLOCK_ANCHOR, BLOCK_BERTH_SAY};
    struct berth_texts texts = {
        .pen = pen, .width = safe_width(pen->paper),
        .styles = {{ROLE_BERTH, FACE_TEXT, size, INK_BLACK},
                   {ROLE_BERTH, FACE_BOLD, size, INK_BLACK}}};
    for (size_t i = 0; i < BERTH_TEXTS; i++) {
        if (sheet_block(pen->sheet, blocks[i]) == NULL)
            continue;
        texts.blocks[texts.count] = blocks[i];
        texts.at[texts.count++] = sheet_text(pen->sheet, blocks[i]);
    }
    return texts;
}

/* Some of the texts, from `first` to before `end`. */
struct berth_part { size_t first, end; };

static mpt part_width(const struct berth_texts *texts, struct berth_part part)
{
    mpt width = 0;
    for (size_t i = part.first; i < part.end; i++)
        width += (i > part.first ? BERTH_GAP : 0) +
                 marked_width(texts->pen, &texts->styles, texts->at[i]->text);
    return width;
}

static bool part_fits(const struct berth_texts *texts, struct berth_part part)
{
    return part_width(texts, part) <= texts->width;
}

static struct paragraph text_broken(const struct berth_texts *texts, size_t index)
{
    return paragraph_make(texts->pen, &texts->styles.plain, texts->at[index]->text, texts->width,
                          texts->at[index]->origin);
}

/* One line, or as many as its one text takes. */
static size_t part_lines(const struct berth_texts *texts, struct berth_part part)
{
    return part_fits(texts, part) ? 1 : text_broken(texts, part.first).line_count;
}

/* Each line takes as many texts as it has room for; one that has no room on a line breaks. */
static size_t berth_parts_of(const struct berth_texts *texts, struct berth_part *parts)
{
    size_t count = 0;
    for (size_t i = 0; i < texts->count; i++) {
        struct berth_part longer = {count > 0 ? parts[count - 1].first : i, i + 1};
        if (count > 0 && part_fits(texts, longer))
            parts[count - 1] = longer;
        else
            parts[count++] = (struct berth_part){i, i + 1};
    }
    return count;
}

size_t berth_lines(const struct pen *pen, mpt size)
{
    struct berth_texts texts = berth_texts_of(pen, size);
    struct berth_part parts[BERTH_TEXTS];
    size_t count = berth_parts_of(&texts, parts), lines = 0;
    for (size_t i = 0; i < count; i++)
        lines += part_lines(&texts, parts[i]);
    return lines;
}

/* ---- on the page ---- */

static void line_of_part_place(struct pen *pen, const struct berth_texts *texts,
                               struct berth_part part, struct point at)
{
    mpt size = texts->styles.plain.size;
    mpt baseline = baseline_in(at.y, line_pitch(ROLE_BERTH, size), size);
    for (size_t i = part.first; i < part.end; i++) {
        pen->block = texts->blocks[i];
        at.x += i > part.first ? BERTH_GAP : 0;
        at.x += marked_place(pen, &texts->styles, texts->at[i]->text,
                             (struct point){at.x, baseline}, texts->at[i]->origin);
    }
}

static void broken_part_place(struct pen *pen, const struct berth_texts *texts, size_t index,
                              struct point at)
{
    struct paragraph paragraph = text_broken(texts, index);
    pen->block = texts->blocks[index];
    paragraph_place(pen, &paragraph, at.x, at.y);
}

void berth_place(struct pen *pen, struct area area, mpt size)
{
    struct berth_texts texts = berth_texts_of(pen, size);
    struct berth_part parts[BERTH_TEXTS];
    size_t count = berth_parts_of(&texts, parts);
    struct point at = {area.x, area.y};
    for (size_t i = 0; i < count; i++) {
        if (part_fits(&texts, parts[i]))
            line_of_part_place(pen, &texts, parts[i], at);
        else
            broken_part_place(pen, &texts, parts[i].first, at);
        at.y += (mpt)part_lines(&texts, parts[i]) * line_pitch(ROLE_BERTH, size);
    }
}
