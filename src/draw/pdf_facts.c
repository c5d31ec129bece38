/* pdf_facts.c - what a document says of itself (room: draw): title, subject and maker, its
 * language, how it is shown and printed, what its pages are called. No day and no machine is
 * in it, so that the same pages give the same bytes. */
#include "pdf_private.h"
#include "sheet.h"

#include <string.h>

#define MAKER "maydeck"

/* Printed at its size, on the paper that it is made for: type below its floor would be a fault of
 * the card. What has two sides is turned like a page of a book, so that both hang from the head. */
static void preferences_add(HPDF_Doc document, const struct document *about)
{
    HPDF_Dict preferences = HPDF_Dict_New(document->mmgr);

    if (preferences == NULL)
        return;
    HPDF_Dict_AddBoolean(preferences, "DisplayDocTitle", HPDF_TRUE);
    HPDF_Dict_AddName(preferences, "PrintScaling", "None");
    HPDF_Dict_AddBoolean(preferences, "PickTrayByPDFSize", HPDF_TRUE);
    HPDF_Dict_AddName(preferences, "Duplex",
                      about->two_sides ? "DuplexFlipLongEdge" : "Simplex");
    HPDF_Dict_Add(document->catalog, "ViewerPreferences", preferences);
}

static void info_add(HPDF_Doc document, const struct document *about, struct arena *arena)
{
    HPDF_SetInfoAttr(document, HPDF_INFO_PRODUCER, MAKER);
    if (document->info == NULL)
        return;
    HPDF_Dict_Add(document->info, "Title", text_string(document, about->title, arena));
    if (!text_empty(about->subject))
        HPDF_Dict_Add(document->info, "Subject", text_string(document, about->subject, arena));
}

/* ---- the same as XMP ---- */

/* A text within XML. */
static void xml_add(struct text_builder *out, const char *text)
{
    for (const char *at = text; *at != '\0'; at++) {
        if (*at == '&')
            text_add(out, "&amp;");
        else if (*at == '<')
            text_add(out, "&lt;");
        else if (*at == '>')
            text_add(out, "&gt;");
        else
            text_add_bytes(out, at, 1);
    }
}

/* A property that may be given in several languages, and is in one. */
static void property_add(struct text_builder *out, const char *name, const char *text)
{
    text_add_format(out, "<dc:%s><rdf:Alt><rdf:li xml:lang=\"x-default\">", name);
    xml_add(out, text);
    text_add_format(out, "</rdf:li></rdf:Alt></dc:%s>\n", name);
}

/* The check code and the id of each card, as "0TJ8-GE2D flooding": by these a program finds which
 * cards a file holds without looking at its pages. */
static void codes_add(struct text_builder *out, const struct document *about)
{
    const struct sheet *last = NULL;
    size_t count = 0;

    for (size_t i = 0; i < about->count; i++) {
        const struct sheet *sheet = about->pages[i]->sheet;
        const char *code = sheet == NULL ? NULL : sheet_footer(sheet)->code;
        if (text_empty(code) ||
            (last != NULL && text_equal(sheet->id, last->id)))
            continue;
        text_add_format(out, "%s<rdf:li>%s ", count++ == 0 ? "<xmp:Identifier><rdf:Bag>" : "",
                        code);
        xml_add(out, sheet->id);
        text_add(out, "</rdf:li>\n");
        last = sheet;
    }
    text_add(out, count == 0 ? "" : "</rdf:Bag></xmp:Identifier>\n");
}

static const char *packet_make(const struct document *about, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);

    text_add(&out, "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                   "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
                   "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
                   "<rdf:Description rdf:about=\"\""
                   " xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
                   " xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\""
                   " xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\">\n"
                   "<dc:format>application/pdf</dc:format>\n");
    property_add(&out, "title", about->title);
    if (!text_empty(about->subject))
        property_add(&out, "description", about->subject);
    text_add_format(&out, "<dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>\n"
                          "<pdf:Producer>" MAKER "</pdf:Producer>\n", about->language);
    codes_add(&out, about);
    text_add(&out, "</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>\n");
    return out.at;
}

/* Not compressed, so that a program that knows no PDF finds it. */
static void metadata_add(HPDF_Doc document, const struct document *about, struct arena *arena)
{
    const char *packet = packet_make(about, arena);
    HPDF_Dict metadata = stream_plain_new(document, (const unsigned char *)packet,
                                         strlen(packet));

    if (metadata == NULL)
        return;
    HPDF_Dict_AddName(metadata, "Type", "Metadata");
    HPDF_Dict_AddName(metadata, "Subtype", "XML");
    HPDF_Dict_Add(document->catalog, "Metadata", metadata);
}

/* ---- what pages are called ---- */

static HPDF_Dict label_make(HPDF_Doc document, const struct page *page, struct arena *arena)
{
    HPDF_Dict label = HPDF_Dict_New(document->mmgr);

    if (label != NULL && !text_empty(page->label))
        HPDF_Dict_Add(label, "P", text_string(document, page->label, arena));
    return label;
}

static void labels_add(HPDF_Doc document, const struct document *about, struct arena *arena)
{
    HPDF_Dict labels = HPDF_Dict_New(document->mmgr);
    HPDF_Array numbers = HPDF_Array_New(document->mmgr);

    if (labels == NULL || numbers == NULL)
        return;
    for (size_t i = 0; i < about->count; i++) {
        HPDF_Array_AddNumber(numbers, (HPDF_INT32)i);
        HPDF_Array_Add(numbers, label_make(document, about->pages[i], arena));
    }
    HPDF_Dict_Add(labels, "Nums", numbers);
    HPDF_Dict_Add(document->catalog, "PageLabels", labels);
}

void facts_add(HPDF_Doc document, const struct document *about, struct arena *arena)
{
    info_add(document, about, arena);
    metadata_add(document, about, arena);
    HPDF_Dict_Add(document->catalog, "Lang",
                  HPDF_String_New(document->mmgr, about->language, NULL));
    preferences_add(document, about);
    labels_add(document, about, arena);
}
