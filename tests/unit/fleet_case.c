/* fleet_case.c - a base of three boats for the tests of the room app. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "app_case.h"
#include "fleet_case.h"

#define BASE "tests/errors/base/"

/* The text with the first `from` replaced. */
static const char *with_changed(struct arena *arena, const char *text, const char *from,
                                const char *to)
{
    const char *at = strstr(text, from);
    if (at == NULL)
        fail_msg("\"%s\" does not stand in the file", from);
    return text_format(arena, "%.*s%s%s", (int)(at - text), text, to, at + strlen(from));
}

/* The boat of the error goldens under another name, with identities of her own. */
static const char *boat_text(struct arena *arena, const char *name, char digit)
{
    const char *text = case_file_content(arena, BASE "boats/alder.yaml");
    text = with_changed(arena, text, "name: Alder", text_format(arena, "name: %s", name));
    text = with_changed(arena, text, "QALD3", text_format(arena, "QALD%c", digit));
    text = with_changed(arena, text, "200014810", text_format(arena, "2000148%c0", digit));
    return with_changed(arena, text, "990D0 00134", text_format(arena, "990D0 0013%c", digit));
}

void fleet_case_begin(struct fleet_case *made)
{
    struct arena *arena = arena_new((size_t)64 * 1024 * 1024);
    *made = (struct fleet_case){.arena = arena, .folder = case_folder(arena)};
    made->options = (struct options){.base = made->folder, .output = "cards",
                                     .today = {2026, 11, 25}};
    case_file_make(made->folder, "base.yaml", case_file_content(arena, BASE "base.yaml"));
    case_file_make(made->folder, "boats/alder.yaml", boat_text(arena, "Alder", '4'));
    case_file_make(made->folder, "boats/birch.yaml", boat_text(arena, "Birch", '5'));
    case_file_make(made->folder, "boats/cedar.yaml", boat_text(arena, "Cedar", '6'));
}

void fleet_case_end(struct fleet_case *made)
{
    if (made->open)
        fleet_close(&made->fleet);
    case_folder_sweep(made->folder);
    arena_free(made->arena);
}

void fleet_case_change(struct fleet_case *made, const char *boat, const char *from,
                       const char *to)
{
    const char *name = text_format(made->arena, "boats/%s.yaml", boat);
    const char *text = case_file_content(made->arena,
                                         text_format(made->arena, "%s/%s", made->folder, name));
    case_file_make(made->folder, name, with_changed(made->arena, text, from, to));
}

bool fleet_case_open(struct fleet_case *made)
{
    made->open = true;
    return fleet_open(&made->options, NEED_TEXTS, &made->fleet);
}
