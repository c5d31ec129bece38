/* pdf_tags.c - marks in the content of a page for what is read (room: draw): each stretch of it
 * is marked with the number of its part, or as an artifact. The tree of parts: pdf_tree.c. */
#include "pdf_private.h"

#include "promise.h"

/* The part of a stretch that has its text beside it: what follows is never of it. */
#define SPELLED SIZE_MAX

void tags_end(const struct canvas *canvas)
{
    if (canvas->tags->begun)
        content_add(canvas->content, "EMC\n");
    canvas->tags->begun = false;
}

/* A stretch of the part, with its operators' tag and what else its list of properties has. */
static void stretch_begin(const struct canvas *canvas, size_t part, const char *type,
                          const char *properties)
{
    struct page_tags *tags = canvas->tags;

    promise(part < tags->page->part_count);
    content_add(canvas->content, "/");
    content_add(canvas->content, type);
    content_add(canvas->content, " <</MCID ");
    content_whole_add(canvas->content, (int64_t)tags->count);
    content_add(canvas->content, properties);
    content_add(canvas->content, ">> BDC\n");
    tags->owners = arena_grow(canvas->arena, tags->owners, tags->count, &tags->room,
                              sizeof *tags->owners);
    tags->owners[tags->count++] = part;
}

void tags_go_to(const struct canvas *canvas, size_t part)
{
    struct page_tags *tags = canvas->tags;

    if (tags->begun && tags->part == part)
        return;
    tags_end(canvas);
    tags->begun = true;
    tags->part = part;
    if (part == 0)
        content_add(canvas->content, "/Artifact BMC\n");
    else
        stretch_begin(canvas, part, element_type(tags->page->parts[part].kind), "");
}

/* Some readers look for the text by the type Span alone, and lose count of stretches that
 * stand within others. */
void tags_spell(const struct canvas *canvas, size_t part, const char *utf16)
{
    const char *property = text_format(canvas->arena, " /ActualText <%s>", utf16);

    tags_end(canvas);
    if (part == 0)
        content_add(canvas->content, text_format(canvas->arena, "/Span <<%s>> BDC\n", property));
    else
        stretch_begin(canvas, part, "Span", property);
    canvas->tags->begun = true;
    canvas->tags->part = SPELLED;
}
