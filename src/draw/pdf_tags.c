/* pdf_tags.c - what is read of the pages as the structure tree of the document (room: draw).
 * Each stretch of a page's content is marked with the number of its part, or as an artifact; the
 * tree has the parts in the order in which they are read. */
#include "pdf_private.h"

#include "promise.h"

/* The types of elements, by the kind of part. An entry is an item of a list and its body. */
static const char *const types[READING_KIND_COUNT] = {
    [READING_GROUP] = "Sect",   [READING_TITLE] = "H1",     [READING_HEADING] = "H2",
    [READING_TEXT] = "P",       [READING_SPOKEN] = "P",     [READING_ENTRY] = "LBody",
    [READING_LINE] = "LBody",   [READING_LABEL] = "Lbl",    [READING_FIGURE] = "Figure",
    [READING_BLANK] = "Form",
};

/* The part of a stretch that has its text beside it: what follows is never of it. */
#define SPELLED SIZE_MAX

/* ---- content ---- */

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
        stretch_begin(canvas, part, types[tags->page->parts[part].kind], "");
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

/* ---- elements ---- */

/* The elements of a page while they are made. */
struct page_tree {
    struct tree *tree;
    HPDF_Page page;
    const struct page_tags *tags;
    const struct reading_part *parts;
    bool *filled;                   /* by part: it has content, or a part of it has */
    bool *made;                     /* by part: it has its element */
    HPDF_Dict *elements;            /* by number of the stretch */
};

/* An element within another; NULL: no memory, or no such other. */
static HPDF_Dict element_new(struct tree *tree, const char *type, HPDF_Dict parent)
{
    HPDF_Dict element = parent == NULL ? NULL : dictionary_new(tree->document);
    HPDF_Array kids = element == NULL ? NULL : HPDF_Array_New(tree->document->mmgr);
    HPDF_Array siblings = parent == NULL ? NULL
                                         : HPDF_Dict_GetItem(parent, "K", HPDF_OCLASS_ARRAY);

    if (kids == NULL || siblings == NULL)
        return NULL;
    HPDF_Dict_AddName(element, "S", type);
    HPDF_Dict_Add(element, "P", parent);
    HPDF_Dict_Add(element, "K", kids);
    HPDF_Array_Add(siblings, element);
    return element;
}

static HPDF_Dict attributes_add(struct tree *tree, HPDF_Dict element, const char *owner)
{
    HPDF_Dict attributes = element == NULL ? NULL : HPDF_Dict_New(tree->document->mmgr);

    if (attributes == NULL)
        return NULL;
    HPDF_Dict_AddName(attributes, "O", owner);
    HPDF_Dict_Add(element, "A", attributes);
    return attributes;
}

/* The least that holds both. */
static struct area area_round(struct area a, struct area b)
{
    mpt x = a.x < b.x ? a.x : b.x, y = a.y < b.y ? a.y : b.y;
    mpt right = a.x + a.width > b.x + b.width ? a.x + a.width : b.x + b.width;
    mpt foot = a.y + a.height > b.y + b.height ? a.y + a.height : b.y + b.height;

    return (struct area){x, y, right - x, foot - y};
}

/* What the part takes up on the page. */
static struct area part_area(const struct page *page, size_t part)
{
    struct area all = {0, 0, 0, 0};
    bool begun = false;

    for (size_t i = 0; i < page->count; i++) {
        if (page->items[i].reading != part)
            continue;
        all = begun ? area_round(all, page->items[i].area) : page->items[i].area;
        begun = true;
    }
    return all;
}

static void place_of_figure_add(struct page_tree *made, HPDF_Dict element, size_t part)
{
    const struct page *page = made->tags->page;
    struct area area = part_area(page, part);
    HPDF_Dict layout = attributes_add(made->tree, element, "Layout");
    HPDF_Array box = HPDF_Array_New(made->tree->document->mmgr);

    if (layout == NULL || box == NULL)
        return;
    HPDF_Array_AddReal(box, points(area.x));
    HPDF_Array_AddReal(box, points(page->height - area.y - area.height));
    HPDF_Array_AddReal(box, points(area.x + area.width));
    HPDF_Array_AddReal(box, points(page->height - area.y));
    HPDF_Dict_AddName(layout, "Placement", "Block");
    HPDF_Dict_Add(layout, "BBox", box);
}

static const char *part_language(const struct page_tree *made, size_t part)
{
    const char *own = made->parts[part].language;

    return own == NULL ? made->tags->page->language : own;
}

/* What an element of the part has besides its kids. A part takes on the language of the one
 * around it, so that a blank of a sentence in another language has to say its own. */
static void part_facts_add(struct page_tree *made, HPDF_Dict element, size_t index)
{
    const struct reading_part *part = &made->parts[index];
    HPDF_Doc document = made->tree->document;

    if (element == NULL)
        return;
    if (!text_empty(part->alternative))
        HPDF_Dict_Add(element, "Alt", text_string(document, part->alternative, made->tree->arena));
    if (!text_equal(part_language(made, index), part_language(made, part->parent)))
        HPDF_Dict_Add(element, "Lang",
                      HPDF_String_New(document->mmgr, part_language(made, index), NULL));
    if (part->kind == READING_FIGURE)
        place_of_figure_add(made, element, index);
}

static void part_element_add(struct page_tree *made, size_t part, HPDF_Dict parent);

/* The stretches of the part, and parts among its words, in the order of painting. */
static void stretches_add(struct page_tree *made, size_t part, HPDF_Dict element)
{
    const struct page_tags *tags = made->tags;
    HPDF_Array kids = element == NULL ? NULL : HPDF_Dict_GetItem(element, "K", HPDF_OCLASS_ARRAY);

    if (kids == NULL)
        return;
    HPDF_Dict_Add(element, "Pg", made->page);
    for (size_t i = 0; i < tags->count; i++) {
        size_t owner = tags->owners[i];
        if (owner == part) {
            HPDF_Array_AddNumber(kids, (HPDF_INT32)i);
            made->elements[i] = element;
        } else if (made->parts[owner].parent == part)
            part_element_add(made, owner, element);
    }
}

static bool is_entry(const struct reading_part *part)
{
    return part->kind == READING_ENTRY || part->kind == READING_LINE;
}

/* The parts of a part, or only its labels, or all others. */
enum parts_of { PARTS_LABELS, PARTS_OTHERS };

static bool is_among(const struct reading_part *part, enum parts_of which)
{
    return (part->kind == READING_LABEL) == (which == PARTS_LABELS);
}

/* Has an entry from this one on, of the same list, a label? */
static bool is_labelled(const struct page_tree *made, size_t entry)
{
    for (size_t i = entry + 1; i < made->tags->page->part_count; i++)
        if (made->parts[i].parent == entry && made->parts[i].kind == READING_LABEL)
            return true;
    return false;
}

static HPDF_Dict list_new(struct page_tree *made, size_t entry, HPDF_Dict parent)
{
    HPDF_Dict list = element_new(made->tree, "L", parent);
    HPDF_Dict numbering = is_labelled(made, entry) ? attributes_add(made->tree, list, "List")
                                                   : NULL;

    if (numbering != NULL)
        HPDF_Dict_AddName(numbering, "ListNumbering", "Decimal");
    return list;
}

static void parts_add(struct page_tree *made, size_t part, enum parts_of which, HPDF_Dict element)
{
    HPDF_Dict list = NULL;

    for (size_t i = part + 1; i < made->tags->page->part_count; i++) {
        const struct reading_part *own = &made->parts[i];
        if (own->parent != part || !made->filled[i] || !is_among(own, which))
            continue;
        if (!is_entry(own))
            list = NULL;
        else if (list == NULL)
            list = list_new(made, i, element);
        part_element_add(made, i, is_entry(own) ? list : element);
    }
}

/* An element of the part, of an entry within an item of a list. */
static void part_element_add(struct page_tree *made, size_t part, HPDF_Dict parent)
{
    const struct reading_part *own = &made->parts[part];

    if (made->made[part])
        return;
    made->made[part] = true;
    HPDF_Dict item = is_entry(own) ? element_new(made->tree, "LI", parent) : parent;
    if (own->kind == READING_ENTRY)
        parts_add(made, part, PARTS_LABELS, item);
    HPDF_Dict element = element_new(made->tree, types[own->kind], item);
    part_facts_add(made, element, part);
    if (own->kind == READING_GROUP || own->kind == READING_ENTRY)
        parts_add(made, part, PARTS_OTHERS, element);
    else
        stretches_add(made, part, element);
}

/* ---- the tree ---- */

/* The root, and in it one element for all pages. */
struct tree tree_begin(HPDF_Doc document, const char *language, struct arena *arena)
{
    struct tree tree = {.document = document, .language = language, .arena = arena};
    HPDF_Dict root = dictionary_new(document), marks = HPDF_Dict_New(document->mmgr);
    HPDF_Dict numbers = HPDF_Dict_New(document->mmgr);
    HPDF_Array kids = HPDF_Array_New(document->mmgr);

    tree.numbers = HPDF_Array_New(document->mmgr);
    if (root == NULL || marks == NULL || numbers == NULL || kids == NULL || tree.numbers == NULL)
        return tree;
    HPDF_Dict_AddName(root, "Type", "StructTreeRoot");
    HPDF_Dict_Add(root, "K", kids);
    HPDF_Dict_Add(root, "ParentTree", numbers);
    HPDF_Dict_Add(numbers, "Nums", tree.numbers);
    HPDF_Dict_AddBoolean(marks, "Marked", HPDF_TRUE);
    HPDF_Dict_Add(document->catalog, "MarkInfo", marks);
    HPDF_Dict_Add(document->catalog, "StructTreeRoot", root);
    tree.all = element_new(&tree, "Document", root);
    return tree;
}

/* By the numbers of its stretches, a page's content is found in the tree. */
static void numbers_of_page_add(struct page_tree *made)
{
    HPDF_Array elements = HPDF_Array_New(made->tree->document->mmgr);
    HPDF_INT32 number = (HPDF_INT32)(HPDF_Array_Items(made->tree->numbers) / 2);

    if (elements == NULL)
        return;
    for (size_t i = 0; i < made->tags->count; i++)
        if (made->elements[i] != NULL)
            HPDF_Array_Add(elements, made->elements[i]);
    HPDF_Array_AddNumber(made->tree->numbers, number);
    HPDF_Array_Add(made->tree->numbers, elements);
    HPDF_Dict_AddNumber(made->page, "StructParents", number);
}

/* Which parts have content, or hold such a part. */
static void filled_find(struct page_tree *made)
{
    for (size_t i = 0; i < made->tags->count; i++)
        for (size_t part = made->tags->owners[i]; part != 0; part = made->parts[part].parent)
            made->filled[part] = true;
}

void tree_page_add(struct tree *tree, const struct canvas *canvas)
{
    const struct page_tags *tags = canvas->tags;
    struct page_tree made = {.tree = tree, .page = canvas->page, .tags = tags,
                             .parts = tags->page->parts};
    HPDF_Dict element = element_new(tree, "Art", tree->all);

    if (element == NULL)
        return;
    if (!text_equal(tags->page->language, tree->language))
        HPDF_Dict_Add(element, "Lang",
                      HPDF_String_New(tree->document->mmgr, tags->page->language, NULL));
    made.filled = arena_array(tree->arena, tags->page->part_count, sizeof *made.filled);
    made.made = arena_array(tree->arena, tags->page->part_count, sizeof *made.made);
    made.elements = arena_array(tree->arena, tags->count, sizeof(HPDF_Dict));
    filled_find(&made);
    parts_add(&made, 0, PARTS_OTHERS, element);
    numbers_of_page_add(&made);
}
