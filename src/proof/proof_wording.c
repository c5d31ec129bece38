/* proof_wording.c - the wording of headlines and sentences (room: proof). Rules G12,
 * G13 and the placeholders of G25. What hangs on a language is judged by the sets of words
 * that it has, and not judged where it lacks them. */
#include "proof_room.h"

#include <string.h>

#define SENTENCE_LONGEST 20
#define SENTENCE_AIM 12
#define COMMAND_WORDS 6
#define COMMAND_CHARACTERS 32
#define HEADLINE_WORDS 10
#define HEADLINE_CHARACTERS 50
#define CAPITALS_MOST 3

/* A finding about words of the card, with the line they came from. */
static void wording_found(struct proofing *p, enum proof_rule_key rule, struct place origin,
                          const char *text, const char *measured)
{
    struct page_item words = {.origin = origin, .kind = PAGE_BOX};
    proof_found(p, rule, &words, "\"%s\": %s", text, measured);
}

static const char *count_words(struct proofing *p, const char *what, size_t count)
{
    return text_format(p->arena, "%zu %s", count, what);
}

/* ---- headlines ---- */

static const char *first_word_end(const char *text)
{
    return text + strcspn(text, " .,:?!");
}

/* After its condition, if it has one: IT SPREADS? or AFTER THE CALL: */
static const char *past_condition(const char *command)
{
    const char *end = strpbrk(command, "?:");
    return end == NULL || end[1] == '\0' ? command : end + 1 + strspn(end + 1, " ");
}

/* THING ON, ALL ON DECK, NO FLAME; a condition alone, whose command follows. */
static bool says_what_must_be(const struct words *words, const char *command)
{
    return has_word(command, words, SET_COMMAND_STATES) || strchr(command, '?') != NULL;
}

/* DON'T TOUCH is a verb as TOUCH is. */
static const char *past_dont(const struct words *words, const char *command)
{
    const char *end = first_word_end(command);
    return words_in_set(words, SET_DONTS, command, (size_t)(end - command))
               ? end + strspn(end, " ")
               : command;
}

static bool begins_with_verb(const struct words *words, const char *command)
{
    const char *start = past_dont(words, past_condition(command));
    return words_in_set(words, SET_VERBS, start, (size_t)(first_word_end(start) - start)) ||
           says_what_must_be(words, start);
}

/* A verb behind "and" or "then", which is not the first word. */
static bool joins_actions(const struct words *words, const char *command)
{
    const char *at = command, *word;
    size_t length;
    bool joint = false;
    for (size_t i = 0; word_next(&at, &word, &length); i++) {
        if (joint && words_in_set(words, SET_VERBS, word, length))
            return true;
        joint = i > 0 && words_in_set(words, SET_JOINTS, word, length);
    }
    return false;
}

static size_t negatives_in(const struct words *words, const char *text)
{
    const char *word;
    size_t length, count = 0;
    while (word_next(&text, &word, &length))
        count += words_in_set(words, SET_NEGATIVES, word, length) ? 1 : 0;
    return count;
}

/* A limit for English, in a language of other length. */
static size_t limit_in(const struct proofing *p, size_t limit)
{
    return limit * (size_t)(100 + words_longer(p->sheet->words)) / 100;
}

static void headline_length_judge(struct proofing *p, const struct card_text *headline,
                                  const char *command, const char *plain)
{
    const struct { const char *text, *what; size_t found, most; } lengths[] = {
        {command, "words in the command", words_in(command), COMMAND_WORDS},
        {command, "characters in the command", (size_t)text_code_points(command),
         COMMAND_CHARACTERS},
        {plain, "words", words_in(plain), HEADLINE_WORDS},
        {plain, "characters", (size_t)text_code_points(plain), HEADLINE_CHARACTERS}};
    for (size_t i = 0; i < sizeof lengths / sizeof *lengths; i++)
        if (lengths[i].found > limit_in(p, lengths[i].most))
            wording_found(p, RULE_HEADLINE, headline->origin, lengths[i].text,
                          count_words(p, lengths[i].what, lengths[i].found));
}

/* By the words of the language, as far as it has them. */
static void command_judge(struct proofing *p, const struct card_text *headline,
                          const char *command, const char *plain)
{
    const struct words *words = p->sheet->words;
    bool verbs = proof_rule_judges(RULE_VERB_FIRST, words);
    proof_measured(p, verbs ? 3 : 1);
    if (verbs && !begins_with_verb(words, text_empty(command) ? plain : command))
        wording_found(p, RULE_VERB_FIRST, headline->origin, plain, "no verb that is known");
    if (verbs && joins_actions(words, command))
        wording_found(p, RULE_ONE_ACTION, headline->origin, command, "two verbs joined");
    if (negatives_in(words, plain) > 1)
        wording_found(p, RULE_NEGATIVE, headline->origin, plain,
                      count_words(p, "negatives", negatives_in(words, plain)));
}

static void headline_judge(struct proofing *p, const struct card_text *headline)
{
    const char *command = text_command(p->arena, headline->text);
    const char *plain = text_plain(p->arena, headline->text);
    proof_measured(p, 4);
    headline_length_judge(p, headline, command, plain);
    command_judge(p, headline, command, plain);
}

/* ---- sentences ---- */

static bool is_own_line(const struct sheet *sheet, struct place origin)
{
    const struct warnings_facts *rules = sheet_warnings(sheet, BLOCK_OWN_LINES);
    for (size_t i = 0; i < rules->count; i++)
        if (rules->items[i].origin.source == origin.source &&
            rules->items[i].origin.line == origin.line)
            return true;
    return false;
}

static void sentence_judge(struct proofing *p, const struct sentence *sentence)
{
    const struct list_value *passive = words_set(p->sheet->words, SET_PASSIVE);
    size_t words = words_in(sentence->text);
    proof_measured(p, 2);
    if (words > SENTENCE_LONGEST)
        wording_found(p, RULE_SENTENCE_LONGEST, sentence->origin, sentence->text,
                      count_words(p, "words", words));
    else if (words > SENTENCE_AIM && !is_own_line(p->sheet, sentence->origin))
        wording_found(p, RULE_SENTENCE, sentence->origin, sentence->text,
                      count_words(p, "words", words));
    for (size_t i = 0; i < passive->count; i++)
        if (strstr(sentence->text, passive->items[i].text) != NULL)
            wording_found(p, RULE_PASSIVE, sentence->origin, sentence->text,
                          passive->items[i].text);
}

/* ---- letters on the page ---- */

static bool is_capitals(const char *word, size_t length)
{
    size_t letters = 0;
    for (size_t i = 0; i < length; i++) {
        if (word[i] >= 'a' && word[i] <= 'z')
            return false;
        letters += word[i] >= 'A' && word[i] <= 'Z' ? 1 : 0;
    }
    return letters > 1;
}

/* The longest row of words in capitals; numbers and tags do not count. */
static size_t capitals_run(const char *text)
{
    size_t run = 0, longest = 0;
    for (const char *at = text; *at != '\0';) {
        size_t length = strcspn(at, " ");
        run = is_capitals(at, length) ? run + 1 : 0;
        longest = run > longest ? run : longest;
        at += length + strspn(at + length, " ");
    }
    return longest;
}

static bool capitals_free(enum page_role role)
{
    return role == ROLE_ROW || role == ROLE_TABLE || role == ROLE_BOX || role == ROLE_SIGNS ||
           role == ROLE_HEADLINE || role == ROLE_FOOTER;
}

static void capitals_judge(struct proofing *p, const struct page_item *item)
{
    size_t most = item->role == ROLE_HEADLINE ? COMMAND_WORDS : CAPITALS_MOST;
    if (!capitals_free(item->role))
        return;
    proof_measured(p, 1);
    size_t run = capitals_run(item->run->text);
    if (run > most)
        proof_found(p, RULE_CAPITALS, item, "%zu words in capitals", run);
}

static void letters_judge(struct proofing *p, const struct page_item *item)
{
    const char *text = item->run->text;
    size_t length = strlen(text);
    proof_measured(p, 2);
    for (size_t i = 0; i < length; i++)
        if ((unsigned char)text[i] < 0x20) {
            proof_found(p, RULE_TABS, item, "control character %d", text[i]);
            break;
        }
    if (length > 1 && text[length - 1] == '-' && text[length - 2] != ' ')
        proof_found(p, RULE_HYPHEN, item, "ends in a hyphen");
}

/* Written so: "todo" is a word of other languages, and XX a number on an old clock. */
static const char *stand_in(const char *text)
{
    static const char *const words[] = {"TODO", "FIXME", "lorem", "Lorem", "xx", "xxx", "xxxx"};
    for (const char *at = text; *at != '\0';) {
        size_t length = strcspn(at, " .,:;?!()");
        for (size_t i = 0; i < COUNT_OF(words); i++)
            if (words[i][0] == *at && strlen(words[i]) == length &&
                strncmp(at, words[i], length) == 0)
                return words[i];
        at += length + strspn(at + length, " .,:;?!()");
    }
    return NULL;
}

static void placeholder_judge(struct proofing *p, const struct page_item *item)
{
    static const char *const signs[] = {"{", "}", "???", "____", "**"};
    const char *word = stand_in(item->run->text);
    proof_measured(p, 1);
    bool any = strpbrk(item->run->text, "{}?_*") != NULL;
    for (size_t i = 0; any && i < COUNT_OF(signs); i++)
        if (strstr(item->run->text, signs[i]) != NULL) {
            proof_found(p, RULE_PLACEHOLDERS, item, "%s is left", signs[i]);
            return;
        }
    if (word != NULL)
        proof_found(p, RULE_PLACEHOLDERS, item, "%s is left", word);
}

void proof_wording(struct proofing *p)
{
    struct sentence_list sentences = card_sentences(p->sheet, p->arena);
    for (size_t i = 0; i < sheet_steps(p->sheet)->count; i++)
        headline_judge(p, &sheet_steps(p->sheet)->items[i].headline);
    for (size_t i = 0; i < sentences.count; i++)
        sentence_judge(p, &sentences.at[i]);
    for (size_t i = 0; i < p->page->count; i++) {
        const struct page_item *item = &p->page->items[i];
        if (!is_text(item))
            continue;
        capitals_judge(p, item);
        letters_judge(p, item);
        placeholder_judge(p, item);
    }
}
