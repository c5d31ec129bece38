/* columns.c - objects as aligned columns by the table of their members (room: app). Never
 * shortens a value: where the columns are wider than the terminal, each object is told by itself,
 * a line a member. */
#include "lists.h"
#include "told.h"

enum { BETWEEN_COLUMNS = 2 };

static const char *texts_joined(const struct json_list *list, struct arena *arena)
{
    const char *const *texts = list->at;
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "");
    for (size_t i = 0; i < list->count; i++)
        text_add_format(&out, "%s%s", i == 0 ? "" : ", ", texts[i]);
    return out.at;
}

static const char *number_cell(int number, struct arena *arena)
{
    return number == 0 ? "" : text_format(arena, "%d", number);
}

/* What stands for the member in its column; NULL: it has none. */
static const char *column_cell(const struct json_member *member, const void *object,
                           struct arena *arena)
{
    const void *at = (const char *)object + member->at;
    switch (member->kind) {
    case JSON_TEXT:
    case JSON_TEXT_OR_NULL:
        return *(const char *const *)at == NULL ? "" : *(const char *const *)at;
    case JSON_FLAG:
        return *(const bool *)at ? "yes" : "no";
    case JSON_COUNT:
        return text_format(arena, "%zu", *(const size_t *)at);
    case JSON_NUMBER_OR_NULL:
        return number_cell(*(const int *)at, arena);
    case JSON_TEXTS:
        return texts_joined(at, arena);
    case JSON_OBJECT:
    case JSON_OBJECT_OR_NULL:
    case JSON_LIST:
        break;
    }
    return NULL;
}

static const void *row_at(const struct json_shape *shape, const struct json_list *rows,
                          size_t index)
{
    return (const char *)rows->at + index * shape->size;
}

static size_t wider(size_t width, const char *cell)
{
    size_t length = cell == NULL ? 0 : (size_t)text_code_points(cell);
    return length > width ? length : width;
}

static size_t *column_widths(const struct json_shape *shape, const struct json_list *rows,
                             struct arena *arena)
{
    size_t *widths = arena_array(arena, shape->count, sizeof *widths);
    for (size_t i = 0; i < shape->count; i++) {
        widths[i] = wider(0, shape->members[i].name);
        for (size_t row = 0; row < rows->count; row++)
            widths[i] = wider(widths[i], column_cell(&shape->members[i], row_at(shape, rows, row),
                                                 arena));
    }
    return widths;
}

/* Spaces are owed until something follows them, so that no line ends with any. */
static void cell_add(const char *cell, size_t width, size_t *owed, struct text_builder *out)
{
    if (cell == NULL)
        return;
    if (*cell != '\0') {
        text_add_format(out, "%*s%s", (int)*owed, "", cell);
        *owed = 0;
    }
    *owed += width - (size_t)text_code_points(cell) + BETWEEN_COLUMNS;
}

void columns_add(const struct json_shape *shape, const struct json_list *rows,
                 struct arena *arena, struct text_builder *out)
{
    const size_t *widths = column_widths(shape, rows, arena);
    size_t owed = 0;
    for (size_t i = 0; i < shape->count; i++)
        cell_add(text_upper(arena, shape->members[i].name), widths[i], &owed, out);
    text_add(out, "\n");
    for (size_t row = 0; row < rows->count; row++) {
        owed = 0;
        for (size_t i = 0; i < shape->count; i++)
            cell_add(column_cell(&shape->members[i], row_at(shape, rows, row), arena), widths[i],
                     &owed, out);
        text_add(out, "\n");
    }
}

/* An object by itself: the first member as a head, and what the others say below it. */
static void object_tell(const struct json_shape *shape, const void *object,
                        struct text_builder *out)
{
    bool headed = false;
    for (size_t i = 0; i < shape->count; i++) {
        const char *cell = column_cell(&shape->members[i], object, out->arena);
        if (text_empty(cell))
            continue;
        text_add_format(out, "%s%s: %s\n", headed ? "  " : "", shape->members[i].name, cell);
        headed = true;
    }
}

void columns_print(const struct json_shape *shape, const struct json_list *rows,
                   struct arena *arena)
{
    struct text_builder out = text_builder_in(arena), apart = text_builder_in(arena);
    size_t columns = told_columns();
    columns_add(shape, rows, arena, &out);
    if (columns > 0 && lines_width(&out) > columns) {
        for (size_t row = 0; row < rows->count; row++)
            object_tell(shape, row_at(shape, rows, row), &apart);
        told_print(&apart);
    } else {
        told_print(&out);
    }
}
