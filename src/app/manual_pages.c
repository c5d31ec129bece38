/* manual_pages.c - the pages of the manual as the source that man(1) shows (room: app): heads,
 * and the sections of the topics in their order. */
#include "manual.h"

/* The day on which the texts that are written by hand were last changed. */
#define MANUAL_DATE "November 29, 2026"

struct page_head {
    const char *title, *section, *name, *about;
};

static const struct page_head page_heads[PAGE_COUNT] = {
    [PAGE_COMMANDS] = {"MAYDECK", "1", "maydeck",
                       "print emergency action cards for the boats of a charter base"},
    [PAGE_FILES] = {"MAYDECK-FILES", "5", "maydeck-files",
                    "files of a charter base and of the cards printed for it"},
};

static void head_add(struct manual *manual, const struct page_head *head)
{
    text_add(&manual->out, ".\\\" made by `maydeck manual` from the program's own tables\n");
    source_macro(manual, ".Dd", MANUAL_DATE);
    source_macro(manual, ".Dt", text_format(manual->out.arena, "%s %s", head->title,
                                            head->section));
    source_macro(manual, ".Os", NULL);
    source_macro(manual, ".Sh", "NAME");
    source_macro(manual, ".Nm", head->name);
    source_macro(manual, ".Nd", head->about);
}

static void synopsis_add(struct manual *manual)
{
    source_macro(manual, ".Sh", "SYNOPSIS");
    for (size_t i = 0; i < command_count; i++) {
        source_macro(manual, ".Nm", NULL);
        source_macro(manual, ".Ic", commands[i].name);
        source_macro(manual, ".Op", "Ar OPTION ...");
        source_macro(manual, ".Ar", command_operands(&commands[i]));
    }
    source_macro(manual, ".Nm", NULL);
    source_macro(manual, ".Ic", "help");
    source_macro(manual, ".Op", "Ar COMMAND | Ar TOPIC");
    source_macro(manual, ".Nm", NULL);
    source_macro(manual, ".Fl", "h | Fl V");
}

static void contents_add(struct manual *manual)
{
    manual_section(manual, "description");
    manual_text(manual, "These are the files that `maydeck(1)` reads and writes. Of each file that "
                        "people write every key is told: what may stand there, which gear is "
                        "asked for it, and where it is read.");
}

void manual_page_add(struct manual *manual, enum manual_page page, const struct fleet *fleet)
{
    head_add(manual, &page_heads[page]);
    if (page == PAGE_COMMANDS)
        synopsis_add(manual);
    else
        contents_add(manual);
    for (size_t i = 0; i < manual_topic_count; i++)
        if ((manual_topics[i].pages >> page & 1u) != 0) {
            manual_section(manual, manual_topics[i].title);
            manual_topic_tell(manual, &manual_topics[i], fleet);
        }
}
