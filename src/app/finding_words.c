/* finding_words.c - what of a message many findings share, and what is one's own (room: app).
 * Works on the words alone and knows no check. */
#include "findings.h"

#include <string.h>

/* Stands in common words for a piece that is a finding's own: no message holds it. */
#define OWN_SIGN "\x01"

static bool is_token_letter(char letter)
{
    return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') ||
           is_digit(letter) || letter == '_' || (unsigned char)letter >= 0x80;
}

static size_t word_length(const char *text)
{
    size_t length = 0;
    while (is_token_letter(text[length]))
        length++;
    return length;
}

/* How far a number, date or tag reaches: 12, 2027-04, 1.5, F2, B10; 0: there is none. */
static size_t number_length(const char *text)
{
    size_t length = *text >= 'A' && *text <= 'Z' ? 1 : 0;
    if (!is_digit(text[length]))
        return 0;
    while (is_digit(text[length]) ||
           (strchr(".-:", text[length]) != NULL && text[length] != '\0' &&
            is_digit(text[length + 1])))
        length++;
    return is_token_letter(text[length]) ? 0 : length;
}

/* From a quote or bracket to its end; 0: there is none. */
static size_t enclosed_length(const char *text)
{
    const char *end = *text == '"' ? strchr(text + 1, '"')
                      : *text == '(' ? strchr(text + 1, ')') : NULL;
    return end == NULL ? 0 : (size_t)(end + 1 - text);
}

static size_t own_length(const char *text)
{
    size_t length = enclosed_length(text);
    return length > 0 ? length : number_length(text);
}

struct parting {
    struct text_builder common;
    struct text_builder own;       /* the piece that may go on yet */
    struct names list;
};

/* Between two pieces of one's own only this: then they are one. */
static bool goes_on(const struct parting *parting, const char **joint)
{
    static const char *const joints[] = {OWN_SIGN ", ", OWN_SIGN " and ", NULL};
    for (size_t i = 0; joints[i] != NULL; i++) {
        *joint = joints[i] + strlen(OWN_SIGN);
        if (parting->common.length > 0 && text_ends(parting->common.at, joints[i]))
            return true;
    }
    return false;
}

static void own_close(struct parting *parting)
{
    if (parting->own.length > 0)
        names_add(&parting->list, parting->own.at, parting->own.arena);
    parting->own = text_builder_in(parting->own.arena);
}

static void own_take(struct parting *parting, const char *text, size_t length)
{
    const char *joint;
    if (goes_on(parting, &joint)) {
        parting->common.length -= strlen(joint);
        parting->common.at[parting->common.length] = '\0';
        text_add(&parting->own, joint);
    } else {
        own_close(parting);
        text_add(&parting->common, OWN_SIGN);
    }
    text_add_bytes(&parting->own, text, length);
}

struct finding_words finding_words_of(const char *text, struct arena *arena)
{
    struct parting parting = {text_builder_in(arena), text_builder_in(arena), {0}};
    text_add(&parting.common, "");
    while (*text != '\0') {
        size_t length = own_length(text);
        if (length > 0) {
            own_take(&parting, text, length);
        } else {
            length = word_length(text);
            length = length == 0 ? 1 : length;
            text_add_bytes(&parting.common, text, length);
        }
        text += length;
    }
    own_close(&parting);
    return (struct finding_words){parting.common.at, parting.list};
}

/* "(sink drain)" without its brackets, which the reader of a list of places puts round it. */
static const char *unbracketed(const char *piece, struct arena *arena)
{
    size_t length = strlen(piece);
    bool one = *piece == '(' && strchr(piece, ')') == piece + length - 1;
    return one ? arena_copy(arena, piece + 1, length - 2) : piece;
}

const char *finding_own_words(const struct finding_words *first,
                              const struct finding_words *words, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "");
    for (size_t i = 0; i < words->own.count; i++)
        if (i >= first->own.count || !text_equal(first->own.at[i], words->own.at[i]))
            text_add_format(&out, "%s%s", out.length == 0 ? "" : "; ",
                            unbracketed(words->own.at[i], arena));
    return out.at;
}
