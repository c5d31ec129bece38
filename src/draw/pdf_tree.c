/* pdf_tree.c - the structure tree of a document (room: draw): the parts of its pages in the order
 * in which they are read. Elements are thousands and all alike, so each is spelled here at once
 * and handed to libharu as an object whose text is known. */
#include "pdf_private.h"

#include "promise.h"

/* An element while its kids are gathered: numbers of stretches of its page, and elements. */
struct element {
    HPDF_Dict object;               /* NULL: no memory */
    struct content body;            /* all it has but its kids */
    struct content kids;
    size_t kid_count;
    HPDF_UINT32 page;               /* the page of its stretches; 0: it has none */
    struct element *next;           /* that is to be closed too */
};

struct tree {
    HPDF_Doc document;
    const char *language;
    struct element *all;            /* of the whole document */
    struct element *open;           /* those of the page that is being written */
    HPDF_Dict numbers;
    struct content by_page;         /* of each page the elements of its stretches, in their order */
    size_t page_count;
    struct arena *arena;
};

/* The elements of a page while they are made. */
struct page_tree {
    struct tree *tree;
    HPDF_Page page;
    const struct page_tags *tags;
    const struct reading_part *parts;
    bool *filled;                   /* by part: it has content, or a part of it has */
    bool *made;                     /* by part: it has its element */
    HPDF_UINT32 *elements;          /* by number of the stretch; 0: none */
};

/* The types of elements, by the kind of part. An entry is an item of a list and its body. */
const char *element_type(enum reading_kind kind)
{
    static const char *const types[READING_KIND_COUNT] = {
        [READING_GROUP] = "Sect",   [READING_TITLE] = "H1",     [READING_HEADING] = "H2",
        [READING_TEXT] = "P",       [READING_SPOKEN] = "P",     [READING_ENTRY] = "LBody",
        [READING_LINE] = "LBody",   [READING_LABEL] = "Lbl",    [READING_FIGURE] = "Figure",
        [READING_BLANK] = "Form",
    };

    promise(kind < READING_KIND_COUNT);
    return types[kind];
}

/* ---- elements ---- */

static HPDF_UINT32 number_of_object(const void *object)
{
    return ((const HPDF_Obj_Header *)object)->obj_id & OBJECT_NUMBER;
}

static void reference_add(struct content *out, HPDF_UINT32 number)
{
    content_whole_add(out, number);
    content_add(out, " 0 R");
}

/* Among the kids of an element, with a space before all but the first. */
static struct content *kid_begin(struct element *element)
{
    if (element->kid_count++ > 0)
        content_add(&element->kids, " ");
    return &element->kids;
}

/* An element within another, or of none; it is written when the page is. */
static struct element *element_new(struct tree *tree, const char *type, struct element *parent)
{
    struct element *element = arena_alloc(tree->arena, sizeof *element);

    element->object = spelled_new(tree->document);
    element->body = content_small_in(tree->arena);
    element->kids = content_small_in(tree->arena);
    element->next = tree->open;
    tree->open = element;
    content_add(&element->body, "/S /");
    content_add(&element->body, type);
    if (parent != NULL && parent->object != NULL && element->object != NULL) {
        content_add(&element->body, "\n/P ");
        reference_add(&element->body, number_of_object(parent->object));
        reference_add(kid_begin(parent), number_of_object(element->object));
    }
    return element;
}

/* Its kids are known. */
static void element_close(struct element *element)
{
    struct content *body = &element->body;

    if (element->page != 0) {
        content_add(body, "\n/Pg ");
        reference_add(body, element->page);
    }
    content_add(body, element->kid_count == 1 ? "\n/K " : "\n/K [");
    content_bytes_add(body, element->kids.at, element->kids.length);
    content_add(body, element->kid_count == 1 ? "\n" : "]\n");
    if (element->object != NULL)
        spelled_set(element->object, body);
}

/* All but that of the document, which goes on. */
static void elements_close(struct tree *tree)
{
    for (struct element *element = tree->open; element != NULL; element = element->next)
        element_close(element);
    tree->open = NULL;
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

static void place_of_figure_add(const struct page_tree *made, struct content *out, size_t part)
{
    const struct page *page = made->tags->page;
    struct area area = part_area(page, part);

    content_add(out, "\n/A <</O /Layout /Placement /Block /BBox [");
    content_milli_add(out, area.x);
    content_milli_add(out, (int64_t)page->height - area.y - area.height);
    content_milli_add(out, (int64_t)area.x + area.width);
    content_milli_add(out, (int64_t)page->height - area.y);
    content_add(out, "]>>");
}

static const char *part_language(const struct page_tree *made, size_t part)
{
    const char *own = made->parts[part].language;

    return own == NULL ? made->tags->page->language : own;
}

static void element_language_add(struct content *out, const char *language)
{
    content_add(out, "\n/Lang ");
    content_text_add(out, language);
}

/* What an element of the part has besides its kids. A part takes on the language of the one
 * around it, so that a blank of a sentence in another language has to say its own. */
static void part_facts_add(const struct page_tree *made, struct element *element, size_t index)
{
    const struct reading_part *part = &made->parts[index];

    if (!text_empty(part->alternative)) {
        content_add(&element->body, "\n/Alt ");
        content_text_add(&element->body, part->alternative);
    }
    if (!text_equal(part_language(made, index), part_language(made, part->parent)))
        element_language_add(&element->body, part_language(made, index));
    if (part->kind == READING_FIGURE)
        place_of_figure_add(made, &element->body, index);
}

static void part_element_add(struct page_tree *made, size_t part, struct element *parent);

/* The stretches of the part, and parts among its words, in the order of painting. */
static void stretches_add(struct page_tree *made, size_t part, struct element *element)
{
    const struct page_tags *tags = made->tags;

    element->page = number_of_object(made->page);
    for (size_t i = 0; i < tags->count; i++) {
        size_t owner = tags->owners[i];
        if (owner == part) {
            content_whole_add(kid_begin(element), (int64_t)i);
            made->elements[i] = element->object == NULL ? 0 : number_of_object(element->object);
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

static struct element *list_new(struct page_tree *made, size_t entry, struct element *parent)
{
    struct element *list = element_new(made->tree, "L", parent);

    if (is_labelled(made, entry))
        content_add(&list->body, "\n/A <</O /List /ListNumbering /Decimal>>");
    return list;
}

static void parts_add(struct page_tree *made, size_t part, enum parts_of which,
                      struct element *element)
{
    struct element *list = NULL;

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
static void part_element_add(struct page_tree *made, size_t part, struct element *parent)
{
    const struct reading_part *own = &made->parts[part];

    if (made->made[part])
        return;
    made->made[part] = true;
    struct element *item = is_entry(own) ? element_new(made->tree, "LI", parent) : parent;
    if (own->kind == READING_ENTRY)
        parts_add(made, part, PARTS_LABELS, item);
    struct element *element = element_new(made->tree, element_type(own->kind), item);
    part_facts_add(made, element, part);
    if (own->kind == READING_GROUP || own->kind == READING_ENTRY)
        parts_add(made, part, PARTS_OTHERS, element);
    else
        stretches_add(made, part, element);
}

/* ---- the tree ---- */

/* The root, and in it one element for all pages. */
struct tree *tree_begin(HPDF_Doc document, const char *language, struct arena *arena)
{
    struct tree *tree = arena_alloc(arena, sizeof *tree);
    HPDF_Dict root = dictionary_new(document), marks = HPDF_Dict_New(document->mmgr);
    HPDF_Array kids = HPDF_Array_New(document->mmgr);

    *tree = (struct tree){.document = document, .language = language, .arena = arena,
                          .numbers = spelled_new(document), .by_page = content_in(arena)};
    tree->all = element_new(tree, "Document", NULL);
    tree->open = NULL;
    if (root == NULL || marks == NULL || kids == NULL || tree->numbers == NULL ||
        tree->all->object == NULL)
        return tree;
    content_add(&tree->by_page, "/Nums [");
    content_add(&tree->all->body, "\n/P ");
    reference_add(&tree->all->body, number_of_object(root));
    HPDF_Array_Add(kids, tree->all->object);
    HPDF_Dict_AddName(root, "Type", "StructTreeRoot");
    HPDF_Dict_Add(root, "K", kids);
    HPDF_Dict_Add(root, "ParentTree", tree->numbers);
    HPDF_Dict_AddBoolean(marks, "Marked", HPDF_TRUE);
    HPDF_Dict_Add(document->catalog, "MarkInfo", marks);
    HPDF_Dict_Add(document->catalog, "StructTreeRoot", root);
    return tree;
}

/* By the numbers of its stretches, a page's content is found in the tree. */
static void numbers_of_page_add(struct page_tree *made)
{
    struct content *out = &made->tree->by_page;
    size_t number = made->tree->page_count++;

    content_whole_add(out, (int64_t)number);
    content_add(out, " [");
    for (size_t i = 0; i < made->tags->count; i++) {
        content_add(out, i > 0 ? " " : "");
        if (made->elements[i] != 0)
            reference_add(out, made->elements[i]);
        else
            content_add(out, "null");
    }
    content_add(out, "]\n");
    HPDF_Dict_AddNumber(made->page, "StructParents", (HPDF_INT32)number);
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
    struct element *element = element_new(tree, "Art", tree->all);

    if (!text_equal(tags->page->language, tree->language))
        element_language_add(&element->body, tags->page->language);
    made.filled = arena_array(tree->arena, tags->page->part_count, sizeof *made.filled);
    made.made = arena_array(tree->arena, tags->page->part_count, sizeof *made.made);
    made.elements = arena_array(tree->arena, tags->count, sizeof *made.elements);
    filled_find(&made);
    parts_add(&made, 0, PARTS_OTHERS, element);
    numbers_of_page_add(&made);
    elements_close(tree);
}

void tree_end(struct tree *tree)
{
    content_add(&tree->by_page, "]\n");
    if (tree->numbers != NULL)
        spelled_set(tree->numbers, &tree->by_page);
    element_close(tree->all);
}
