/* item_fields.c - the table item x field, and what to say of a field on the wrong entry
 * (room: record). Never looks at a boat. */
#include "item_fields.h"

#include "boat.h"
#include "item_families.h"
#include "text.h"

#include <string.h>

enum { ITEMS_MOST = 40, LINE_MOST = 80 };

/* The items that have the field, by how; each list ends with ITEM_NONE. */
struct carriers {
    enum belonging everywhere;
    enum item_key must[ITEMS_MOST], asked[ITEMS_MOST], may[ITEMS_MOST];
};

#define EVERYWHERE(how) .everywhere = BELONGS_##how,
#define MUST(...) .must = {__VA_ARGS__},
#define ASKED(...) .asked = {__VA_ARGS__},
#define MAY(...) .may = {__VA_ARGS__},
#define CARRIERS_ROW(key, member, kind, who, ...) [GEAR_##key] = {who},
static const struct carriers carriers_rows[GEAR_FIELD_COUNT] = {GEAR_FIELD_LIST(CARRIERS_ROW)};
#undef CARRIERS_ROW

enum belonging item_field(enum item_key item, enum gear_field field)
{
    const struct carriers *carriers = &carriers_rows[field];
    if (item_among(carriers->must, item))
        return BELONGS_MUST;
    if (item_among(carriers->asked, item))
        return BELONGS_ASKED;
    return item_among(carriers->may, item) ? BELONGS_MAY : carriers->everywhere;
}

bool field_is_general(enum gear_field field)
{
    return carriers_rows[field].everywhere != BELONGS_NOT;
}

const struct field *gear_field_row(enum gear_field field)
{
    return field == GEAR_FIELD_NONE ? NULL : &equipment_fields()->fields[field - 1];
}

const char *gear_field_word(enum gear_field field)
{
    return field == GEAR_FIELD_NONE ? "" : gear_field_row(field)->key;
}

enum gear_field gear_field_find(const char *key)
{
    const struct field_table *table = equipment_fields();
    const struct field *field = field_find(table, key);
    return field == NULL ? GEAR_FIELD_NONE : (enum gear_field)(field - table->fields + 1);
}

/* ---- remedies ---- */

static size_t first_word(const char *key)
{
    return strcspn(key, "_");
}

/* The item's own field that begins with the same word: kg_low where kg was written. */
static const char *own_field_near(enum item_key item, enum gear_field wrong)
{
    const char *key = gear_field_word(wrong);
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++) {
        const char *own = gear_field_word(field);
        if (!field_is_general(field) && item_field(item, field) != BELONGS_NOT &&
            first_word(own) == first_word(key) && strncmp(own, key, first_word(key)) == 0)
            return own;
    }
    return NULL;
}

/* The items that the field belongs to, on lines that are not too long. */
static void carriers_add(struct text_builder *out, enum gear_field field)
{
    size_t line = out->length;
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++) {
        if (item_field(item, field) == BELONGS_NOT)
            continue;
        bool full = out->length - line + strlen(item_word(item)) > LINE_MOST;
        text_add(out, out->length == line ? "" : full ? ",\n" : ", ");
        line = full ? out->length : line;
        text_add(out, item_word(item));
    }
}

const char *item_field_remedy(enum item_key item, enum gear_field field, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    const char *near = own_field_near(item, field);
    if (near != NULL)
        return text_format(arena, "did you mean \"%s\"?", near);
    text_add_format(&out, "take it out, or move it to the gear it is a fact of; %s belongs to\n",
                    gear_field_word(field));
    carriers_add(&out, field);
    return out.at;
}
