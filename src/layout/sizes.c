/* sizes.c - the one table of type sizes: floors, aims and leading (room:
 * layout). A size below its floor is never set. */
#include "layout_room.h"

#define PT(points) ((mpt)((points) * 1000))

static const struct size_rule rules[ROLE_COUNT] = {
    /* capitals of Roboto Condensed are 0.711 em: 8 mm = 31.9 pt, 10 mm = 39.9 pt */
    [ROLE_TITLE] = {PT(32), PT(40), 100},
    [ROLE_BOAT] = {PT(12), PT(16), 120},
    [ROLE_SIGNS] = {PT(12), PT(14), 120},
    [ROLE_CALL_LINE] = {PT(12), PT(14), 120},
    [ROLE_HEADLINE] = {PT(16), PT(20), 106},
    [ROLE_ROW] = {PT(12), PT(14), 120},
    [ROLE_TABLE] = {PT(12), PT(13), 115},    /* each line by itself */
    [ROLE_BOX] = {PT(12), PT(14), 120},
    [ROLE_CONTACT] = {PT(12), PT(14), 120},
    [ROLE_SCRIPT] = {PT(12), PT(14), 120},
    [ROLE_CODE] = {PT(8), PT(8), 120},
    [ROLE_FOOTER] = {PT(8), PT(8), 120},
    [ROLE_SOURCE_TAG] = {PT(8), PT(8), 120},
    [ROLE_MARK] = {PT(9), PT(9), 120},
    [ROLE_PLAN_TAG] = {PT(9), PT(10), 120},
    [ROLE_PLAN_LABEL] = {PT(8), PT(8), 110},
    [ROLE_NUMBER] = {PT(14), PT(18), 120},
};

const struct size_rule *size_rule(enum page_role role)
{
    return &rules[role];
}
