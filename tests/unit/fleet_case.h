/* fleet_case.h - a base of three boats in a folder of its own, for the tests of the room app:
 * alder, birch and cedar, all sound until a test spoils one. */
#ifndef MAYDECK_FLEET_CASE_H
#define MAYDECK_FLEET_CASE_H

#include "app/fleet.h"

struct fleet_case {
    struct arena *arena;
    const char *folder;
    struct options options;      /* of the base in that folder */
    struct fleet fleet;          /* once fleet_case_open was called */
    bool open;
};

void fleet_case_begin(struct fleet_case *made);
void fleet_case_end(struct fleet_case *made);

/* Takes the first `from` out of that boat's file and puts `to` in its place; the test fails
 * where it does not stand there. */
void fleet_case_change(struct fleet_case *made, const char *boat, const char *from,
                       const char *to);

/* Opens the base with the program's own texts; gives what fleet_open gave. */
bool fleet_case_open(struct fleet_case *made);

#endif
