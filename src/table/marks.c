/* marks.c - the mark of a row: what it said when it was written (room: table). */
#include "table_room.h"

#include "sha256.h"
#include "text.h"

/* Eight letters, which no spreadsheet makes a number or a date of. */
static const char *mark_of(const struct text_builder *said, struct arena *arena)
{
    char sum[SHA256_TEXT], letters[9] = {0};
    sha256_text((const unsigned char *)said->at, said->length, sum);
    for (size_t i = 0; i < sizeof letters - 1; i++)
        letters[i] = is_digit(sum[i]) ? (char)('k' + sum[i] - '0') : sum[i];
    return text_format(arena, "%s", letters);
}

/* A cell as it comes back through a spreadsheet. */
static void cell_mark_add(struct text_builder *said, const char *head, const char *cell,
                          struct arena *arena)
{
    const char *plain = cell_plain(cell_guarded(cell, arena), arena);
    if (plain[0] != '\0')
        text_add_format(said, "%s=%s\n", head, plain);
}

const char *gear_mark(const struct leaves *leaves, const char *const *cells,
                      struct arena *arena)
{
    struct text_builder said = text_builder_in(arena);
    text_add(&said, "gear\n");
    for (size_t i = 0; i < leaves->count; i++)
        if (!leaf_has_own_column(&leaves->rows[i]))
            cell_mark_add(&said, leaves->rows[i].head, cells[i], arena);
    return mark_of(&said, arena);
}

const char *value_mark(const char *value, const char *serves, struct arena *arena)
{
    struct text_builder said = text_builder_in(arena);
    text_add(&said, "value\n");
    cell_mark_add(&said, "value", value, arena);
    cell_mark_add(&said, "serves", serves, arena);
    return mark_of(&said, arena);
}
