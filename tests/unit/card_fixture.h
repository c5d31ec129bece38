/* card_fixture.h - one case for all tests of a program, begun and ended with the group. */
#ifndef MAYDECK_CARD_FIXTURE_H
#define MAYDECK_CARD_FIXTURE_H

#include "card_case.h"

static struct card_case test;

static int set_up(void **state)
{
    (void)state;
    case_begin(&test);
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    case_end(&test);
    return 0;
}

#endif
