/* check_table.c - the checks as a table (room: rules). Says nothing of how they are
 * made. */
#include "rules_room.h"

#include "identity.h"
#include "text.h"

static const struct check checks[] = {
#define FAMILY_ROW(name, severity_, sentence_, source_) \
    [CHECK_##name] = {.id = #name, .severity = SEVERITY_##severity_, .family = true, \
                      .sentence = sentence_, .source = source_},
    FAMILY_LIST(FAMILY_ROW)
#undef FAMILY_ROW
#define CHECK_ROW(name, severity_, sentence_, source_) \
    [CHECK_##name] = {.id = #name, .severity = SEVERITY_##severity_, \
                      .sentence = sentence_, .source = source_},
#define LACK_ROW(name, severity_, sentence_, source_) \
    [CHECK_##name] = {.id = #name, .severity = SEVERITY_##severity_, .lack = true, \
                      .sentence = sentence_, .source = source_},
    CHECK_LIST(CHECK_ROW, LACK_ROW)
#undef LACK_ROW
#undef CHECK_ROW
#define DANGER_ROW(name, severity_, sentence_, source_) \
    [CHECK_##name] = {.id = #name, .severity = SEVERITY_##severity_, .danger = true, \
                      .sentence = sentence_, .source = source_},
    DANGER_LIST(DANGER_ROW)
#undef DANGER_ROW
};

_Static_assert(sizeof checks / sizeof *checks == CHECK_COUNT, "a row for each check");

const struct check *check_at(size_t index)
{
    return index < CHECK_COUNT ? &checks[index] : NULL;
}

const struct check *check_find(const char *id)
{
    for (size_t i = 0; i < CHECK_COUNT; i++)
        if (text_equal(checks[i].id, id))
            return &checks[i];
    return NULL;
}
