/* sheet_dump.c - a composed sheet as stable text, for tests and for looking
 * (room: compose). */
#include "compose_room.h"
#include "fact.h"

/* A line a fact; empty ones are left out. */
static void fact_dump(void *of, const struct fact *fact)
{
    static const char marks[] = {
        [FACT_PRINTED] = ' ', [FACT_SHOWN] = '~', [FACT_CITED] = ' ', [FACT_KNOWN] = '='};
    struct text_builder *out = of;
    if (text_empty(fact->text))
        return;
    text_add_format(out, " %c%s: %s", marks[fact->kind], fact->name, fact->text);
    if (fact->origin.line > 0)
        text_add_format(out, "  <%s:%d>", fact->origin.source == NULL ? "-"
                                                                      : fact->origin.source->name,
                        fact->origin.line);
    text_add(out, "\n");
}

void sheet_dump(const struct sheet *sheet, struct text_builder *out)
{
    text_add_format(out, "sheet %s (%s)%s\n", sheet->id, sheet->name,
                    sheet->held ? " HELD" : "");
    for (size_t i = 0; i < sheet->block_count; i++) {
        text_add_format(out, "%s\n", block_word(sheet->blocks[i].key));
        block_visit(&sheet->blocks[i], out->arena, fact_dump, out);
    }
}
