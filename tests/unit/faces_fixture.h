/* faces_fixture.h - one case and the cards' faces for tests of pages. */
#ifndef MAYDECK_FACES_FIXTURE_H
#define MAYDECK_FACES_FIXTURE_H

#include "card_case.h"
#include "face.h"

static struct card_case test;
static struct faces *faces;

static int set_up(void **state)
{
    (void)state;
    case_begin(&test);
    faces = case_faces(&test);
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    faces_close(faces);
    case_end(&test);
    return 0;
}

#endif
