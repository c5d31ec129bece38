/* pdf_form.c - signs as forms: each one is drawn once a document and used wherever it stands
 * (room: draw). What a sign looks like, pdf_sign.c knows. */
#include "pdf_private.h"

/* Black contours and rings go beyond the module; nothing goes farther. */
#define BEYOND ((int)SIGN_MODULE / 2)

/* What the pages of a document call their forms; 0: not made yet. */
struct pdf_forms {
    struct pdf_file *file;
    HPDF_Dict dictionary;
    struct content content;
    uint16_t numbers[PALETTE_COUNT][SIGN_CLASS_COUNT][SYMBOL_COUNT];
    uint16_t count;
};

struct pdf_forms *forms_new(struct pdf_file *file)
{
    struct pdf_forms *forms = arena_alloc(file->arena, sizeof *forms);

    forms->file = file;
    forms->dictionary = dictionary_new(file->document);
    forms->content = content_in(file->arena);
    return forms;
}

HPDF_Dict forms_dictionary(const struct pdf_forms *forms)
{
    return forms->dictionary;
}

/* A form of the module, of which a page needs no resources. */
static void sign_form_add(struct pdf_forms *forms, uint16_t number)
{
    const struct content *content = &forms->content;
    HPDF_MMgr memory = forms->file->document->mmgr;
    HPDF_Dict form = stream_new(forms->file, (const unsigned char *)content->at, content->length);
    HPDF_Array box = HPDF_Array_New(memory);
    HPDF_Dict resources = HPDF_Dict_New(memory);

    if (form == NULL || box == NULL || resources == NULL || forms->dictionary == NULL)
        return;
    HPDF_Array_AddNumber(box, -BEYOND);
    HPDF_Array_AddNumber(box, -BEYOND);
    HPDF_Array_AddNumber(box, (HPDF_INT32)SIGN_MODULE + BEYOND);
    HPDF_Array_AddNumber(box, (HPDF_INT32)SIGN_MODULE + BEYOND);
    HPDF_Dict_AddName(form, "Type", "XObject");
    HPDF_Dict_AddName(form, "Subtype", "Form");
    HPDF_Dict_Add(form, "BBox", box);
    HPDF_Dict_Add(form, "Resources", resources);
    HPDF_Dict_Add(forms->dictionary,
                  text_format(forms->file->arena, "S%u", (unsigned)number), form);
}

static uint16_t form_number(struct pdf_forms *forms, enum palette palette,
                            const struct page_item *item)
{
    uint16_t *number = &forms->numbers[palette][item->sign][item->glyph];

    if (*number == 0) {
        *number = ++forms->count;
        content_form_begin(&forms->content);
        sign_write(&forms->content, palette, item->sign, item->glyph);
        sign_form_add(forms, *number);
    }
    return *number;
}

/* The form with its module, and the black line round it, in the middle of the item's square. */
void sign_draw(const struct canvas *canvas, const struct page_item *item)
{
    const struct area *area = &item->area;
    struct content *out = canvas->content;
    uint16_t number = form_number(canvas->forms, canvas->palette, item);
    int64_t side = area->width < area->height ? area->width : area->height;
    int64_t scale = (int64_t)((double)side * MICRO / MPT_PER_POINT /
                              (SIGN_MODULE + 2 * SIGN_KEYLINE) + 0.5);
    int64_t half = scale * (int64_t)(SIGN_MODULE / 2) / (MICRO / MPT_PER_POINT);

    content_add(out, "q ");
    content_micro_add(out, scale);
    content_add(out, "0 0 ");
    content_micro_add(out, scale);
    content_milli_add(out, area->x + area->width / 2 - half);
    content_milli_add(out, (int64_t)canvas->height - area->y - area->height / 2 - half);
    content_add(out, "cm /S");
    content_whole_add(out, number);
    content_add(out, " Do Q\n");
}
