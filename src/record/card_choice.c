/* card_choice.c - the keys of the section that says which cards a base hangs (room: record).
 * Whether a card of that name exists is asked when the procedures are known. */
#include "card_choice.h"
#include "reader.h"
#include "reading.h"

static const struct field card_choice_rows[] = {
    ROW(struct card_choice, leave_out, FIELD_WORDS, .any_word = true, .readers = READ_CASE,
        .about = "cards that are not hung, but none of the core set: see `maydeck list cards`"),
    ROW(struct card_choice, add, FIELD_WORDS, .any_word = true, .readers = READ_CASE,
        .about = "cards that are made only where they are asked for, such as index"),
};
const struct field_table card_choice_table = TABLE("the section cards", card_choice_rows);
