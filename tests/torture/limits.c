/* limits.c - limits of the system: room in files, open files, processes, memory; a disk that is
 * full; standard output that takes nothing. */
#include "plan.h"
void limits_try(struct plan *plan)
{
    (void)plan;
}
void kills_try(struct plan *plan)
{
    (void)plan;
}
void at_once_try(struct plan *plan)
{
    (void)plan;
}
