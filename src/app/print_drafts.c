/* print_drafts.c - files of a run that wait for their names (room: app). */
#include "print_drafts.h"

#include <unistd.h>

struct print_drafts *print_drafts_new(const char *folder, struct arena *arena)
{
    struct print_drafts *drafts = arena_alloc(arena, sizeof *drafts);
    *drafts = (struct print_drafts){.folder = folder, .arena = arena, .process = (long)getpid()};
    return drafts;
}

/* The list may have moved. */
static void drafts_guard(const struct print_drafts *drafts)
{
    file_drafts_guard(drafts->folder, drafts->at, &drafts->count);
}

void print_drafts_add(struct print_drafts *drafts, const struct file_draft *draft)
{
    drafts->at = arena_grow(drafts->arena, drafts->at, drafts->count, &drafts->room,
                            sizeof *drafts->at);
    drafts->at[drafts->count++] = *draft;
    drafts_guard(drafts);
}

void print_drafts_forget(struct print_drafts *drafts)
{
    drafts->count = 0;
}

void print_drafts_take_over(struct print_drafts *drafts)
{
    if (drafts->process == (long)getpid())
        return;
    drafts->process = (long)getpid();
    print_drafts_forget(drafts);
    drafts_guard(drafts);
}
