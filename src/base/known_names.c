/* known_names.c - which key a word was meant for that is none: by another name, by a slip of the
 * finger, or as a part of it (room: base). Never takes the word for the key. */
#include "known_names.h"

#include <string.h>

#include "choice.h"
#include "text.h"

enum { MEANT_MOST = 6, PART_LETTERS = 3 };

/* How a word was understood. */
enum meaning { MEANT_NOTHING, MEANT_BY_NAME, MEANT_BY_SLIP, MEANT_BY_PART };

/* The keys that a word may stand for. */
struct meant {
    enum meaning meaning;
    struct known_name rows[MEANT_MOST];
    size_t count;
    bool too_many;
};

struct asked_name {
    struct arena *arena;
    const struct known_names *known;
    const char *word;                 /* plain */
    const char *const *keys;
};

const char *name_plain(struct arena *arena, const char *name)
{
    struct text_builder out = text_builder_in(arena);
    const char *folded = text_folded(arena, name);
    text_add(&out, "");
    for (; *folded != '\0'; folded++) {
        unsigned char sign = (unsigned char)*folded;
        bool letter = sign >= 0x80 || (sign >= 'a' && sign <= 'z') || is_digit(*folded);
        if (letter)
            text_add_bytes(&out, folded, 1);
        else if (out.length > 0 && out.at[out.length - 1] != ' ')
            text_add(&out, " ");
    }
    if (out.length > 0 && out.at[out.length - 1] == ' ')
        out.at[out.length - 1] = '\0';
    return out.at;
}

/* ---- what is found ---- */

const char *known_printed(const struct known_names *known, const char *key)
{
    for (size_t i = 0; known != NULL && i < known->count; i++)
        if (text_equal(known->rows[i].key, key))
            return known->rows[i].printed;
    return NULL;
}

static void meant_add(struct meant *meant, struct known_name found)
{
    for (size_t i = 0; i < meant->count; i++)
        if (text_equal(meant->rows[i].key, found.key))
            return;
    if (meant->count == MEANT_MOST)
        meant->too_many = true;
    else
        meant->rows[meant->count++] = found;
}

typedef bool name_fits(const char *word, const char *name);

/* All keys that fit by themselves or by a name. */
static struct meant meant_by(const struct asked_name *asked, enum meaning meaning,
                             name_fits *fits)
{
    struct meant meant = {.meaning = meaning};
    for (size_t i = 0; asked->keys[i] != NULL; i++)
        if (fits(asked->word, name_plain(asked->arena, asked->keys[i])))
            meant_add(&meant,
                      (struct known_name){.key = asked->keys[i],
                                          .printed = known_printed(asked->known, asked->keys[i])});
    for (size_t i = 0; asked->known != NULL && i < asked->known->count; i++)
        if (fits(asked->word, asked->known->rows[i].name) &&
            choice_find(asked->keys, asked->known->rows[i].key) > 0)
            meant_add(&meant, asked->known->rows[i]);
    return meant;
}

/* ---- a part of it ---- */

/* Is the word, of so many bytes, one of the text's? */
static bool text_has_word(const char *text, const char *word, size_t length)
{
    for (const char *at = text; at != NULL; at = strchr(at, ' ')) {
        at += *at == ' ' ? 1 : 0;
        if (strncmp(at, word, length) == 0 && (at[length] == ' ' || at[length] == '\0'))
            return true;
    }
    return false;
}

/* Has the name all words of the word? Too short ones tell nothing. */
static bool is_part(const char *word, const char *name)
{
    if (strlen(word) < PART_LETTERS)
        return false;
    for (const char *at = word; *at != '\0';) {
        size_t length = strcspn(at, " ");
        if (!text_has_word(name, at, length))
            return false;
        at += length + (at[length] == ' ' ? 1 : 0);
    }
    return true;
}

/* ---- a slip of it ---- */

static const char **plain_keys(const struct asked_name *asked, size_t count)
{
    const char **plain = arena_array(asked->arena, count, sizeof *plain);
    for (size_t i = 0; i < count; i++)
        plain[i] = name_plain(asked->arena, asked->keys[i]);
    return plain;
}

static const char *key_by_slip(const struct asked_name *asked)
{
    size_t count = text_list_length(asked->keys);
    const char **plain = plain_keys(asked, count);
    const char *nearest = text_nearest(asked->word, plain, count);
    for (size_t i = 0; nearest != NULL && i < count; i++)
        if (plain[i] == nearest)
            return asked->keys[i];
    return NULL;
}

/* NULL: no name of one of the keys is near. */
static const struct known_name *name_by_slip(const struct asked_name *asked)
{
    const struct known_names *known = asked->known;
    size_t all = known == NULL ? 0 : known->count, count = 0;
    const char **names = arena_array(asked->arena, all, sizeof *names);
    for (size_t i = 0; i < all; i++)
        if (choice_find(asked->keys, known->rows[i].key) > 0)
            names[count++] = known->rows[i].name;
    const char *nearest = text_nearest(asked->word, names, count);
    for (size_t i = 0; nearest != NULL && i < all; i++)
        if (known->rows[i].name == nearest)
            return &known->rows[i];
    return NULL;
}

static struct meant meant_by_slip(const struct asked_name *asked)
{
    struct meant meant = {.meaning = MEANT_BY_SLIP};
    const char *key = key_by_slip(asked);
    const struct known_name *name = key == NULL ? name_by_slip(asked) : NULL;
    if (key != NULL)
        meant_add(&meant, (struct known_name){.key = key});
    if (name != NULL)
        meant_add(&meant, *name);
    return meant;
}

/* ---- the whole ---- */

static bool is_equal(const char *word, const char *name)
{
    return strcmp(word, name) == 0;
}

static struct meant meant_of(const struct asked_name *asked)
{
    struct meant meant = {0};
    if (*asked->word == '\0')
        return meant;
    meant = meant_by(asked, MEANT_BY_NAME, is_equal);
    if (meant.count == 0)
        meant = meant_by_slip(asked);
    if (meant.count == 0)
        meant = meant_by(asked, MEANT_BY_PART, is_part);
    return meant;
}

static const char *key_told(struct arena *arena, const struct known_name *row)
{
    return row->printed == NULL
               ? row->key
               : text_format(arena, "%s (\"%s\" on the cards)", row->key, row->printed);
}

static const char *one_told(struct arena *arena, const struct meant *meant)
{
    const struct known_name *row = &meant->rows[0];
    if (meant->meaning == MEANT_BY_NAME)
        return text_format(arena, "write %s", key_told(arena, row));
    return row->printed == NULL ? text_meant(arena, row->key)
                                : text_format(arena, "did you mean %s?", key_told(arena, row));
}

static const char *several_told(struct arena *arena, const struct meant *meant)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "write one of:");
    for (size_t i = 0; i < meant->count; i++)
        text_add_format(&out, "\n  %s", key_told(arena, &meant->rows[i]));
    return out.at;
}

const char *known_remedy(struct arena *arena, const struct known_names *known, const char *word,
                         const char *const *keys, const char *otherwise)
{
    struct asked_name asked = {arena, known, name_plain(arena, word), keys};
    struct meant meant = meant_of(&asked);
    if (meant.count == 0 || meant.too_many)
        return otherwise;
    return meant.count == 1 ? one_told(arena, &meant) : several_told(arena, &meant);
}

const char *known_key(struct arena *arena, const struct known_names *known, const char *word,
                      const char *const *keys)
{
    struct asked_name asked = {arena, known, name_plain(arena, word), keys};
    struct meant meant = meant_of(&asked);
    return meant.count == 1 ? meant.rows[0].key : NULL;
}

enum key_sense known_key_sense(const struct known_names *known, const char *word,
                               size_t length)
{
    if (known == NULL || known->file_keys == NULL)
        return KEY_UNTOLD;
    for (const char *const *key = known->file_keys; *key != NULL; key++)
        if (strlen(*key) == length && memcmp(*key, word, length) == 0)
            return KEY_IS_ONE;
    return KEY_IS_NONE;
}
