/* yaml_bare.c - words in a mapping that no colon makes a key of (room: yaml). In
 * {spot: in the cupboard, below} the comma ends the text, and "below" would be a
 * key with nothing under it: its words would vanish. Never judges which keys are
 * known. */
#include "yaml_reader.h"

#include <string.h>

#include "text.h"
#include "yaml_slip.h"
#include "yaml_value.h"

/* Between the two only white space, comments and the colon can stand. */
static bool colon_between(struct yaml_reader *reader, struct mark start, struct mark end)
{
    const char *bytes = reader->clean->bytes;
    size_t stop = reader_offset(reader, end);

    for (size_t at = reader_offset(reader, start); at < stop; at++) {
        if (bytes[at] == ':')
            return true;
        if (bytes[at] == '#')
            at += strcspn(bytes + at, "\r\n") - 1;
    }
    return false;
}

bool pair_is_bare(struct yaml_reader *reader, const struct piece *key,
                  const struct piece *value)
{
    return key->kind == PIECE_SCALAR && value->kind == PIECE_SCALAR &&
           value->style == SCALAR_PLAIN && value->text[0] == '\0' && !value->marked &&
           !colon_between(reader, key->end, value->start);
}

/* {loa_m: 10,2}: a number that was written with a comma. */
static const char *number_proposal(struct yaml_reader *reader, const struct bare_words *words)
{
    const char *digits = "0123456789";
    const char *start = words->value.text;

    if (words->count > 1 || start[0] == '\0' || start[strspn(start, digits)] != '\0' ||
        words->text[strspn(words->text, digits)] != '\0')
        return NULL;
    const char *remedy =
        comma_remedy(reader->arena, text_format(reader->arena, "%s,%s", start, words->text));
    return text_format(reader->arena,
                       "%s; if it belongs to a text, put the whole text in quotes", remedy);
}

static const char *text_proposal(struct yaml_reader *reader, const struct bare_words *words)
{
    const char *text = text_format(reader->arena, "%s, %s", words->value.text, words->text);
    const char *bare = quotes_off(reader->arena, text);

    if (strlen(text) > PROPOSAL_LIMIT)
        return "if it belongs to the text before it, put that whole text in quotes; if it is a "
               "key, write a colon and its value behind it";
    return text_format(reader->arena,
                       "if it belongs to the text before it, put the whole text in quotes:\n"
                       "%s: %s\nif it is a key, write a colon and its value behind it",
                       words->key.text, quotes_on(reader->arena, bare));
}

static bool follows_text(const struct bare_words *words)
{
    return words->key.kind == PIECE_SCALAR && words->value.kind == PIECE_SCALAR &&
           words->value.text[0] != '\0';
}

/* `tag:E8` and `tag=E8` as tag: E8; NULL: it is neither. */
static const char *key_spaced(struct yaml_reader *reader, const char *text)
{
    const char *spaced = colon_spaced(reader->arena, text);

    return spaced != NULL ? spaced
                          : equals_spaced(reader->arena, problems_known(reader->problems), text);
}

static const char *bare_remedy(struct yaml_reader *reader, const struct bare_words *words)
{
    const char *spaced = key_spaced(reader, words->text);
    bool text_before = follows_text(words);
    const char *number = text_before ? number_proposal(reader, words) : NULL;

    if (spaced != NULL)
        return text_format(reader->arena,
                           "write %s\nif it belongs to a text, put the whole text in quotes",
                           spaced);
    if (number != NULL)
        return number;
    return text_before ? text_proposal(reader, words)
                       : "write a colon and a value behind it, or delete it";
}

static void words_tell(struct yaml_reader *reader, const struct bare_words *words)
{
    struct place place = reader_place(reader, words->start, words->end);
    const char *shown = text_shown(reader->arena, words->text);
    const char *remedy = bare_remedy(reader, words);

    if (colon_spaced(reader->arena, words->text) != NULL)
        reader_error(reader, place, remedy,
                     "%s would be lost: a colon needs a space behind it", shown);
    else if (follows_text(words))
        reader_error(reader, place, remedy,
                     "%s would be lost: a comma ends the text before it, and no colon follows it",
                     shown);
    else
        reader_error(reader, place, remedy, "%s would be lost: no colon follows it", shown);
}

void bare_words_tell(struct yaml_reader *reader, struct bare_words *words)
{
    if (words->count > 0)
        words_tell(reader, words);
    words->count = 0;
}

/* `key:value` has a remedy of its own, and so is told by itself. */
static bool words_go_on(struct yaml_reader *reader, const struct bare_words *words,
                        const char *text)
{
    return words->count > 0 && key_spaced(reader, words->text) == NULL &&
           key_spaced(reader, text) == NULL;
}

void bare_words_add(struct yaml_reader *reader, struct bare_words *words,
                    const struct piece *key)
{
    if (words_go_on(reader, words, key->text)) {
        if (strlen(words->text) <= PROPOSAL_LIMIT)   /* what is longer is not shown whole */
            words->text = text_format(reader->arena, "%s, %s", words->text, key->text);
    } else {
        bare_words_tell(reader, words);
        words->text = key->text;
        words->start = key->start;
    }
    words->end = key->end;
    words->count++;
}

void bare_words_end(struct yaml_reader *reader, struct bare_words *words,
                    const struct piece *key, const struct piece *value)
{
    bare_words_tell(reader, words);
    words->key = *key;
    words->value = *value;
}
