/* voice_words.c - words that are called out on the radio and must be known to whoever
 * listens (room: record): signal words as the Radio Regulations spell them, and no
 * voice on channel 70. Never mends one. */
#include "record.h"

#include "text.h"

#include <string.h>

/* How signal words have been written by ear, or in another alphabet. In capitals. */
static const struct { const char *word, *signal; } by_ear[] = {
    {"MAYDEJ", "MAYDAY"}, {"MAYDEI", "MAYDAY"}, {"MAYDAI", "MAYDAY"}, {"MAYDAJ", "MAYDAY"},
    {"MEYDEY", "MAYDAY"}, {"MEYDAY", "MAYDAY"}, {"MEJDEJ", "MAYDAY"}, {"MEJDAJ", "MAYDAY"},
    {"MAJDEJ", "MAYDAY"}, {"MAIDAY", "MAYDAY"}, {"MAIDEI", "MAYDAY"}, {"MAIDER", "MAYDAY"},
    {"MAIDEZ", "MAYDAY"}, {"МЭЙДЭЙ", "MAYDAY"}, {"МЕЙДЕЙ", "MAYDAY"}, {"МЕЈДЕЈ", "MAYDAY"},
    {"ΜΕΪΝΤΕΪ", "MAYDAY"}, {"ΜΕΙΝΤΕΙ", "MAYDAY"},
    {"PANPAN", "PAN PAN"}, {"ΠΑΝ", "PAN"}, {"ПАН", "PAN"}, {"PANNE", "PAN PAN"},
    {"SÉCURITÉ", "SECURITE"}, {"SECURITÉ", "SECURITE"}, {"SÉCURITE", "SECURITE"},
    {"SEKURITE", "SECURITE"}, {"SEKJURITE", "SECURITE"}, {"СЕКЬЮРИТЕ", "SECURITE"},
};

/* A letter of any alphabet: bytes above ASCII are parts of letters here. */
static bool is_word_byte(char c)
{
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (unsigned char)c >= 0x80;
}

static const char *signal_meant(const char *word, size_t length)
{
    for (size_t i = 0; i < sizeof by_ear / sizeof by_ear[0]; i++)
        if (by_ear[i].word[0] == word[0] && strlen(by_ear[i].word) == length &&
            memcmp(by_ear[i].word, word, length) == 0)
            return by_ear[i].signal;
    return NULL;
}

static void word_check(const struct text_value *text, const char *word, size_t length,
                       struct problems *problems)
{
    const char *signal = signal_meant(word, length);
    if (signal != NULL)
        problem_add(problems, SEVERITY_ERROR, text->place,
                    "signal words are the same in all languages: write MAYDAY, PAN PAN or "
                    "SECURITE", "`%.*s` stands for the signal %s", (int)length, word, signal);
    if (length == strlen("PENTAFIVE") && memcmp(word, "PENTAFIVE", length) == 0)
        problem_add(problems, SEVERITY_DEFICIENCY, text->place, "write PANTAFIVE",
                    "the Radio Regulations spell the figure 5 PANTAFIVE, not PENTAFIVE");
}

/* Is the number that begins at `at` named as a channel by the word before it? */
static bool is_named_channel(const char *upper, size_t at)
{
    static const char *const names[] = {"CHANNEL", "CH", "VHF"};
    while (at > 0 && (upper[at - 1] == ' ' || upper[at - 1] == '.'))
        at--;
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        size_t length = strlen(names[i]);
        if (at >= length && memcmp(upper + at - length, names[i], length) == 0 &&
            (at == length || !is_word_byte(upper[at - length - 1])))
            return true;
    }
    return false;
}

static bool names_channel_70(const char *upper)
{
    for (const char *at = upper; (at = strstr(at, "70")) != NULL; at += 2) {
        bool whole = (at == upper || at[-1] < '0' || at[-1] > '9') &&
                     (at[2] < '0' || at[2] > '9');
        if (whole && is_named_channel(upper, (size_t)(at - upper)))
            return true;
    }
    return false;
}

static void one_text_check(const struct text_value *text, struct arena *arena,
                           struct problems *problems)
{
    const char *upper = text_upper(arena, text->text);
    for (const char *at = upper; *at != '\0';) {
        size_t length = 0;
        while (is_word_byte(at[length]))
            length++;
        if (length > 0)
            word_check(text, at, length, problems);
        at += length > 0 ? length : 1;
    }
    if (names_channel_70(upper))
        problem_add(problems, SEVERITY_ERROR, text->place, "name the channel to talk on",
                    "channel 70 carries data only: nobody can be heard there");
}

void voice_text_check(const struct text_value *value, struct arena *arena,
                      struct problems *problems)
{
    struct text_value one;
    for (size_t i = 0; text_next(value, &i, &one);)
        one_text_check(&one, arena, problems);
}

void voice_words_check(const struct yaml_node *node, bool (*is_spared)(const char *key),
                       struct arena *arena, struct problems *problems)
{
    if (node == NULL)
        return;
    if (node->kind == YAML_SCALAR)
        one_text_check(&(struct text_value){.text = node->text, .place = node->place}, arena,
                       problems);
    for (size_t i = 0; node->kind == YAML_SEQUENCE && i < node->count; i++)
        voice_words_check(node->items[i], is_spared, arena, problems);
    for (size_t i = 0; node->kind == YAML_MAPPING && i < node->count; i++)
        if (is_spared == NULL || !is_spared(node->pairs[i].key))
            voice_words_check(node->pairs[i].value, is_spared, arena, problems);
}

void english_check(const char *key, const struct text_value *value, struct problems *problems)
{
    for (const char *at = value->text; at != NULL && *at != '\0'; at++)
        if ((unsigned char)*at >= 0x80) {
            problem_add(problems, SEVERITY_ERROR, value->place,
                        "the call is in English whatever the card's language: write the words "
                        "in the letters A to Z", "%s holds letters that English has not", key);
            return;
        }
}
