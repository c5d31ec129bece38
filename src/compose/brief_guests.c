/* brief_guests.c - the half page for guests: the few things that each of them must find alone, with
 * their signs (room: compose). What the boat does not have has no line. */
#include "brief_room.h"

#include "trait.h"

/* Shown by the first piece of the item. */
struct guest_row {
    enum item_key item;
    enum word word;
    enum trait trait;     /* only where the boat is so; none: on all */
};

static const struct guest_row guest_rows[] = {
    {ITEM_lifejacket, WORD_BRIEF_G_JACKET, TRAIT_NONE},
    {ITEM_heaving_line, WORD_BRIEF_G_WATER, TRAIT_NONE},
    {ITEM_vhf_dsc, WORD_BRIEF_G_KEY, TRAIT_RED_KEY},
    {ITEM_vhf_handheld, WORD_BRIEF_G_HANDHELD, TRAIT_NONE},
    {ITEM_engine_stop, WORD_BRIEF_G_STOP, TRAIT_NONE},
    {ITEM_outboard_kill, WORD_BRIEF_G_STOP, TRAIT_OUTBOARD},
    {ITEM_lpg_cabin_valve, WORD_BRIEF_G_GAS, TRAIT_GAS},
    {ITEM_lpg_bottle_valve, WORD_BRIEF_G_GAS, TRAIT_GAS},
    {ITEM_boarding_ladder, WORD_BRIEF_G_LADDER, TRAIT_NONE}};

static const struct form_column guest_columns[] = {
    {FORM_SIGN, "", 0}, {FORM_TEXT, "", 0}, {FORM_BLANK, "", 250}};

static const struct equipment *guest_piece(const struct boat *boat, enum item_key item)
{
    for (size_t i = 0; boat_fitted(boat, item) == ANSWER_YES && i < boat->equipment_count; i++)
        if (boat->equipment[i].kind->item == item)
            return &boat->equipment[i];
    return NULL;
}

static void guest_add(struct briefing *briefing, const struct guest_row *row)
{
    const struct boat *boat = briefing->writer.composing.in->boat;
    const struct equipment *gear = guest_piece(boat, row->item);
    bool hers = row->trait == TRAIT_NONE ||
                boat_trait(boat, row->trait, ZONE_NONE).recorded == ANSWER_YES;
    if (gear == NULL || !hers)
        return;
    const struct form_cell cells[3] = {
        brief_sign(gear),
        brief_cell(briefing, phrase_word(briefing->writer.composing.arena, row->word, "place",
                                         brief_place(briefing, gear), NULL)),
        NO_BLANK};
    form_line_add(&briefing->writer, cells, FORM_PLAIN, gear->place);
}

void brief_guests_add(struct briefing *briefing)
{
    static const enum word blanks[] = {WORD_BRIEF_G_DEPUTY, WORD_BRIEF_G_GATHER};
    brief_section_add(briefing, &(struct brief_section){.title = WORD_BRIEF_GUESTS,
                                                        .columns = guest_columns,
                                                        .column_count = 3,
                                                        .start = FORM_NEW_PAGE});
    for (size_t i = 0; i < sizeof guest_rows / sizeof *guest_rows; i++)
        guest_add(briefing, &guest_rows[i]);
    for (size_t i = 0; i < sizeof blanks / sizeof *blanks; i++) {
        const struct form_cell cells[3] = {brief_sign(NULL),
                                           brief_cell(briefing, brief_word(briefing, blanks[i])),
                                           brief_blank(briefing, NULL)};
        form_line_add(&briefing->writer, cells, FORM_PLAIN,
                      briefing->writer.composing.in->boat->place);
    }
}
