/* print_stickers.c - stickers of the gear of each boat: which labels they are printed on, as the
 * options tell it in millimetres (room: app). */
#include "print_stickers.h"

#include "form_print.h"
#include "number.h"

#include <string.h>

/* Side by side in the middle of the sheet where no option tells otherwise. */
#define LABEL_ACROSS MM(63)
#define LABEL_DOWN MM(40)
#define MILLI_A_MM 1000
#define LENGTH_MOST_MM 1000

static bool length_read(struct arena *arena, const char *text, size_t length, mpt *out)
{
    int64_t milli;
    if (!number_parse_milli(arena_copy(arena, text, length), &milli) || milli < 0 ||
        milli > (int64_t)LENGTH_MOST_MM * MILLI_A_MM)
        return false;
    *out = (mpt)(milli * MM(MILLI_A_MM) / ((int64_t)MILLI_A_MM * MILLI_A_MM));
    return true;
}

/* Two lengths such as 63x40. Both stay as they are where the option was not given; false, with a
 * problem, where it cannot be read. */
static bool lengths_read(struct fleet *fleet, const char *option, const char *text, mpt *across,
                         mpt *down)
{
    const char *by = text == NULL ? NULL : strchr(text, 'x');
    if (text == NULL)
        return true;
    if (by != NULL && length_read(fleet->arena, text, (size_t)(by - text), across) &&
        length_read(fleet->arena, by + 1, strlen(by + 1), down))
        return true;
    problem_add(fleet->problems, SEVERITY_USE, (struct place){0},
                text_format(fleet->arena, "write two lengths in millimetres with an x between "
                            "them, such as --%s 63x40", option),
                "--%s \"%s\" is no size", option, text);
    return false;
}

static bool labels_read(const struct options *options, struct fleet *fleet,
                        struct labels *labels)
{
    *labels = (struct labels){.width = LABEL_ACROSS, .height = LABEL_DOWN, .left = -1, .top = -1};
    return lengths_read(fleet, "label", options->label, &labels->width, &labels->height) &
           lengths_read(fleet, "label-gap", options->label_gap, &labels->gap_across,
                        &labels->gap_down) &
           lengths_read(fleet, "label-at", options->label_at, &labels->left, &labels->top);
}

/* False, with a problem, where not one label has room on the paper. */
static bool labels_stand(struct fleet *fleet, const struct paper *paper)
{
    if (paper->labels.across > 0 && paper->labels.down > 0)
        return true;
    problem_add(fleet->problems, SEVERITY_USE, (struct place){0},
                "write a smaller --label, or name larger paper with --paper",
                "no label of that size has room on a sheet of %s", paper->key);
    return false;
}

void stickers_print(const struct options *options, struct fleet *fleet)
{
    struct labels labels;
    enum paper_key key = options->paper == PAPER_NONE ? base_paper(fleet)
                                                      : (enum paper_key)options->paper;
    if (!labels_read(options, fleet, &labels))
        return;
    struct paper paper = paper_of_labels(key, &labels,
                                         options->mono ? PALETTE_MONO : PALETTE_COLOUR);
    const struct form_kind stickers = {
        {WORD_DOCUMENT_STICKERS, SET_OF_FORMS, stickers_compose}, "stickers", WALK_ASKED, &paper};
    if (labels_stand(fleet, &paper))
        forms_print(options, fleet, &stickers);
}
