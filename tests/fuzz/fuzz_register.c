/* fuzz_register.c - any bytes as a register of what hangs: whatever is damaged, the rows that are
 * read can be written and read again, and mending the file loses none of them. */
#include "fuzz.h"

#include <string.h>

#include "register.h"
#include "text.h"

static void row_check(const struct fuzz *fuzz, const struct register_row *row,
                      const struct register_row *again)
{
    const char *const texts[][2] = {
        {row->boat, again->boat}, {row->card, again->card}, {row->number, again->number},
        {row->name, again->name}, {row->language, again->language}, {row->paper, again->paper},
        {row->code, again->code}, {row->place, again->place}, {row->by, again->by},
        {row->until, again->until}, {row->dates, again->dates}, {row->program, again->program},
        {row->texts, again->texts}, {row->content, again->content}};
    CHECK(row->event == again->event && date_compare(row->date, again->date) == 0);
    for (size_t i = 0; i < sizeof texts / sizeof *texts; i++)
        CHECK(text_equal(texts[i][0], texts[i][1]) && text_is_shown(texts[i][0]));
    const char *said = content_unpack(row->content, fuzz->arena);
    if (said != NULL)
        CHECK(register_changes(said, said, fuzz->arena).count == 0);
}

static void rows_check(const struct fuzz *fuzz, const struct register_rows *rows,
                       const struct source *source, struct problems *told)
{
    struct register_rows again = register_read(source, fuzz->arena, told);
    CHECK(again.count == rows->count);
    for (size_t i = 0; i < rows->count; i++)
        row_check(fuzz, &rows->rows[i], &again.rows[i]);
}

/* Read, and written anew. */
static void written_check(const struct fuzz *fuzz, const struct register_rows *rows)
{
    struct text_builder out = text_builder_in(fuzz->arena);
    struct problems *told = problems_new(fuzz->arena);
    register_head_add(&out);
    for (size_t i = 0; i < rows->count; i++)
        register_row_add(&rows->rows[i], &out);
    rows_check(fuzz, rows, fuzz_part(fuzz, "again.csv", out.at, out.length), told);
    CHECK(!problems_reach(told, SEVERITY_NOTE));
}

/* What stays of the file, what mends it and one row more: no row is lost, and nothing is torn. */
static void mended_check(const struct fuzz *fuzz, const struct source *source,
                         const struct register_rows *rows)
{
    struct text_builder more = text_builder_in(fuzz->arena), out = text_builder_in(fuzz->arena);
    struct problems *told = problems_new(fuzz->arena);
    size_t kept = 0;
    register_mend(source, rows, &kept, &more, told);
    CHECK(kept <= source->length);
    text_add_bytes(&out, source->bytes, kept);
    text_add_bytes(&out, more.length == 0 ? "" : more.at, more.length);
    const struct source *mended = fuzz_part(fuzz, "mended.csv", out.length == 0 ? "" : out.at,
                                            out.length);
    rows_check(fuzz, rows, mended, problems_new(fuzz->arena));
    CHECK(register_read(mended, fuzz->arena, told).whole == mended->length);
}

static void register_one(struct fuzz *fuzz)
{
    const struct source *source = fuzz_source(fuzz, "register.csv");
    const struct register_rows rows = register_read(source, fuzz->arena, fuzz->problems);
    problems_check(fuzz);
    CHECK(rows.whole <= source->length);
    for (size_t i = 0; i < rows.count; i++) {
        (void)hangs_still(&rows, i);
        (void)print_of(&rows, &rows.rows[i], NULL);
        (void)content_of(&rows, &rows.rows[i]);
    }
    written_check(fuzz, &rows);
    mended_check(fuzz, source, &rows);
    if (rows.count > 1) {
        const char *old = content_unpack(rows.rows[0].content, fuzz->arena);
        const char *now = content_unpack(rows.rows[1].content, fuzz->arena);
        if (old != NULL && now != NULL)
            CHECK(text_equal(old, now) || register_changes(old, now, fuzz->arena).count > 0);
    }
}

const struct harness harness = {NULL, register_one, true};
