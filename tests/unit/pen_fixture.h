/* pen_fixture.h - a case with faces and an empty pen of a card without a boat, begun
 * and ended with the group of tests. */
#ifndef MAYDECK_PEN_FIXTURE_H
#define MAYDECK_PEN_FIXTURE_H

#include "card_case.h"
#include "layout/layout_room.h"

static struct card_case test;
static struct faces *faces;
static struct sheet card;
static struct pen pen;

static int set_up(void **state)
{
    (void)state;
    case_begin(&test);
    faces = case_faces(&test);
    card = (struct sheet){.name = "CARD", .language = "en", .words = test.words};
    pen = (struct pen){.faces = faces, .arena = test.arena, .problems = test.problems,
                       .sheet = &card, .paper = paper_of(PAPER_A4), .block = BLOCK_STEPS};
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
