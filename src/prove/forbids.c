/* forbids.c - the table of what hazards forbid, as rows (room: prove). The rows themselves are
 * in forbid_list.h. */
#include "prove.h"

#include "forbid_list.h"

#define FORBID_ROW(id_, hazard_, act_, rule_, guard_, since_, first_, later_, why_) \
    {.id = #id_, .hazard = HAZARD_##hazard_, .act = ACT_##act_, .rule = (rule_), \
     .guard = GUARD_##guard_, .since = ACT_##since_, .first = ACT_##first_, \
     .later = ACT_##later_, .why = (why_)},
static const struct forbid forbid_rows[] = {FORBID_LIST(FORBID_ROW)};
#undef FORBID_ROW

struct forbids forbids_all(void)
{
    return (struct forbids){forbid_rows, sizeof forbid_rows / sizeof *forbid_rows};
}
