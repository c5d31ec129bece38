/* sizes.c - the one table of type sizes: floors, aims and leading (room: layout). A size
 * below its floor is never set. */
#include "paper.h"

#include "promise.h"

#define HALF_A_METRE 500        /* mm */
#define TITLES_TOLD_FROM 1600   /* mm */
#define PT(points) ((mpt)((points) * MPT_PER_POINT))

/* Sizes that grow with the distance a paper is read at, in thousandths of a point for each
 * millimetre of it (24: 12 points at 500 mm), and the least that they are on any paper. Of a
 * title it is the distance of titles. */
static const struct role_sizes {
    int floor_a_mm, aim_a_mm;
    mpt floor_least, aim_least;
    int leading;              /* hundredths of the size */
} sizes[ROLE_COUNT] = {
    /* capitals of Roboto Condensed are 0.711 em: at 1.6 m 8 mm = 31.9 pt, 10 mm = 39.9 pt */
    [ROLE_TITLE] = {20, 25, PT(8), PT(8), 100},
    [ROLE_BOAT] = {24, 32, PT(8), PT(8), 120},
    [ROLE_SIGNS] = {24, 28, PT(8), PT(8), 120},
    [ROLE_BERTH] = {24, 28, PT(8), PT(8), 115},
    [ROLE_CALL_LINE] = {24, 28, PT(8), PT(8), 120},
    [ROLE_HEADLINE] = {32, 48, PT(8), PT(8), 116},
    [ROLE_ROW] = {24, 33, PT(8), PT(8), 115},
    [ROLE_TABLE] = {24, 26, PT(8), PT(8), 115},    /* each line by itself */
    [ROLE_BOX] = {24, 28, PT(8), PT(8), 120},
    [ROLE_CONTACT] = {24, 28, PT(8), PT(8), 120},
    [ROLE_SCRIPT] = {24, 27, PT(8), PT(8), 115},
    [ROLE_CODE] = {0, 0, PT(8), PT(8), 120},
    [ROLE_FOOTER] = {0, 0, PT(8), PT(8), 120},
    [ROLE_SOURCE_TAG] = {0, 0, PT(8), PT(8), 120},
    [ROLE_MARK] = {0, 0, PT(9), PT(9), 120},
    [ROLE_PLAN_TAG] = {0, 0, PT(9), PT(10), 120},
    [ROLE_PLAN_LABEL] = {0, 0, PT(9), PT(12), 110},
    [ROLE_NUMBER] = {28, 36, PT(8), PT(8), 120},
};

/* What is said on the radio, where it has a page: in thousandths of a point a mm. */
#define SPOKEN_AIM_A_MM 36

static mpt larger(mpt a, mpt b)
{
    return a > b ? a : b;
}

struct size_rule size_rule(const struct paper *paper, enum page_role role)
{
    promise(role < ROLE_COUNT && sizes[role].leading > 0);
    int distance = role == ROLE_TITLE ? paper->title_mm : paper->reading_mm;
    const struct role_sizes *own = &sizes[role];
    promise(distance > 0);
    return (struct size_rule){larger(own->floor_a_mm * distance, own->floor_least),
                              larger(own->aim_a_mm * distance, own->aim_least), own->leading};
}

struct size_rule spoken_size_rule(const struct paper *paper)
{
    struct size_rule rule = size_rule(paper, ROLE_SCRIPT);
    rule.aim = larger(SPOKEN_AIM_A_MM * paper->reading_mm, rule.floor);
    return rule;
}

mpt grown(const struct paper *paper, mpt at_half_a_metre)
{
    int64_t length = (int64_t)at_half_a_metre * paper->reading_mm / HALF_A_METRE;
    return larger((mpt)length, at_half_a_metre);
}

mpt title_share(const struct paper *paper, mpt at_most)
{
    return (mpt)((int64_t)at_most * paper->title_mm / TITLES_TOLD_FROM);
}

mpt line_pitch(enum page_role role, mpt size)
{
    promise(role < ROLE_COUNT);
    int leading = sizes[role].leading;
    int64_t least = ((int64_t)size * (2 * leading - 1) + 199) / 200;
    return larger(size / 100 * leading, (mpt)least);
}
