/* spoken_position.c - a position in the words of a call: digit by digit, with DEGREES,
 * DECIMAL and MINUTES between (room: radio). Never rounds twice. */
#include "script.h"

#include "text.h"

static const struct { char letter; const char *word; } hemisphere_letters[] = {
    {'N', "NORTH"}, {'S', "SOUTH"}, {'E', "EAST"}, {'W', "WEST"},
};

const char *hemisphere_word(char letter)
{
    for (size_t i = 0; i < sizeof hemisphere_letters / sizeof hemisphere_letters[0]; i++)
        if (hemisphere_letters[i].letter == letter)
            return hemisphere_letters[i].word;
    return "";
}

static void digits_add(struct text_builder *out, unsigned number, int width)
{
    uint32_t bad = 0;
    text_add(out, spell(out->arena, text_format(out->arena, "%0*u", width, number), &bad));
}

static void angle_add(struct text_builder *out, const struct position *position,
                      enum position_axis axis, int decimals)
{
    struct angle angle = position_angle(position, axis, POSITION_MINUTES_OF, decimals);
    digits_add(out, angle.degrees, axis == POSITION_LATITUDE ? 2 : 3);
    text_add(out, " DEGREES ");
    digits_add(out, angle.minutes, 2);
    if (decimals > 0) {
        text_add(out, " DECIMAL ");
        digits_add(out, angle.fraction, decimals);
    }
    text_add_format(out, " MINUTES %s", hemisphere_word(angle.letter));
}

const char *position_spoken(struct arena *arena, const struct position *position, int decimals)
{
    struct text_builder out = text_builder_in(arena);
    angle_add(&out, position, POSITION_LATITUDE, decimals);
    text_add(&out, ", ");
    angle_add(&out, position, POSITION_LONGITUDE, decimals);
    return out.at;
}
