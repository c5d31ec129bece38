/* limits.c - floors, aims and margins that every page must keep (room: proof). They
 * stand here a second time on purpose: a slip in the sizes a page is laid out by must
 * not be judged by the same slip. */
#include "limits.h"

#define PT(points) ((mpt)((points) * MPT_PER_POINT))

#define SAFE_SIDE MM(10)
#define SAFE_HEAD MM(16)         /* the punched hole is there */
#define SAFE_FOOT MM(8)

/* Floors and aims in points: CAP 676 for what is read at arm's length, ISO 23601 for
 * the plan. What no size in points tells is asked for in millimetres beside it. */
static const struct role_limit role_limits[ROLE_COUNT] = {
    [ROLE_TITLE] = {"title", TIER_TITLE, PT(32), PT(40), 8.0, 1600, 0, true},
    [ROLE_BOAT] = {"boat and number", TIER_TEXT, PT(12), PT(16), 0, 0, 500, true},
    [ROLE_SIGNS] = {"signs", TIER_TEXT, PT(12), PT(14), 0, 0, 500, true},
    [ROLE_CALL_LINE] = {"call line", TIER_TEXT, PT(12), PT(14), 0, 0, 500, true},
    [ROLE_HEADLINE] = {"headline", TIER_HEADLINE, PT(16), PT(20), 0, 800, 0, false},
    [ROLE_ROW] = {"row", TIER_TEXT, PT(12), PT(14), 0, 0, 500, true},
    [ROLE_TABLE] = {"table", TIER_TEXT, PT(12), PT(13), 0, 0, 500, true},
    [ROLE_BOX] = {"box", TIER_TEXT, PT(12), PT(14), 0, 0, 500, false},
    [ROLE_CONTACT] = {"contact line", TIER_TEXT, PT(12), PT(14), 0, 0, 500, true},
    [ROLE_SCRIPT] = {"call", TIER_TEXT, PT(12), PT(14), 0, 0, 500, true},
    [ROLE_CODE] = {"code", TIER_SMALL, PT(8), PT(8), 2.0, 0, 0, true},
    [ROLE_FOOTER] = {"footer", TIER_SMALL, PT(8), PT(8), 2.0, 0, 0, true},
    [ROLE_SOURCE_TAG] = {"source", TIER_SMALL, PT(8), PT(8), 2.0, 0, 0, true},
    [ROLE_MARK] = {"strip", TIER_SMALL, PT(9), PT(9), 2.0, 0, 0, true},
    [ROLE_PLAN_TAG] = {"tag on the plan", TIER_SMALL, PT(9), PT(10), 2.0, 0, 0, true},
    [ROLE_PLAN_LABEL] = {"name on the plan", TIER_SMALL, PT(8), PT(8), 2.0, 0, 0, true},
    [ROLE_NUMBER] = {"number", TIER_TEXT, PT(14), PT(18), 0, 500, 0, true},
};

const struct role_limit *role_limit(enum page_role role)
{
    return &role_limits[role];
}

struct area safe_area(const struct page *page)
{
    return (struct area){SAFE_SIDE, SAFE_HEAD, page->width - 2 * SAFE_SIDE,
                         page->height - SAFE_HEAD - SAFE_FOOT};
}
