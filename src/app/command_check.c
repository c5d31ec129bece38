/* command_check.c - everything but printing (room: app). */
#include "app.h"

#include <stdio.h>

static void ready_tell(const struct boat_work *work)
{
    size_t ready = 0;
    if (work->set == NULL) {
        printf("%s: no cards: the boat file has errors\n", work->key);
        return;
    }
    for (size_t i = 0; i < work->set->count; i++)
        ready += work->pages[i] != NULL && !work->set->cards[i]->held ? 1 : 0;
    printf("%s: cards ready %zu of %zu\n", work->key, ready, work->set->count);
}

enum exit_status command_check(const struct options *options)
{
    struct fleet fleet;
    bool open = fleet_open(options, &fleet);
    for (size_t i = 0; open && i < fleet.boat_count; i++) {
        struct boat_work work = boat_work(options, &fleet, i);
        ready_tell(&work);
    }
    enum exit_status status = report(&fleet, true);
    fleet_close(&fleet);
    return status;
}
