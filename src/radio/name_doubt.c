/* name_doubt.c - a name that ears take for something else: its figures can be said in two
 * ways, its words are a signal of the radio or the code words of letters (room: radio).
 * Never says such a name as it stands, and never says another in its place: it asks. */
#include "radio.h"

#include <string.h>

#include "text.h"

/* ---- words that are heard as something else ---- */

/* Signals that change what every listener does: in no name can they be told from the call. */
static const char *const signals[] = {
    "MAYDAY", "MAY DAY", "PAN PAN", "PANPAN", "SECURITE", "SEELONCE", "SILENCE", "PRUDONCE",
    "DISTRESS",
};

/* Words of procedure: a name that has others besides is still heard as a name. */
static const char *const procedure_words[] = {
    "OVER", "OUT", "RELAY", "RECEIVED", "ROGER", "BREAK", "WAIT", "STATION", "STATIONS",
    "OVER AND OUT", "ALL STATIONS", "ALL SHIPS", "SAY AGAIN", "THIS IS", "CORRECTION", "CANCEL",
    "REPEAT", "NEGATIVE", "AFFIRMATIVE", "STOP", "FINI", "MEDICO", "URGENCY", "SAFETY",
    "COASTGUARD", "COAST GUARD", "RESCUE", "RADIO", "RADIO CHECK", "CALL SIGN", "POSITION", "HELP",
    "SINKING", "FIRE", "MAN OVERBOARD",
};

/* Words that change a call where they stand first behind its signal, MAYDAY RELAY, or last in
 * it. */
static const char *const edge_words[] = {"OVER", "OUT", "RELAY", "CANCEL"};

/* What each code word stands for, in the spellings that people give them. */
static const struct { const char *word; char letter; } code_words[] = {
    {"ALFA", 'A'}, {"ALPHA", 'A'}, {"BRAVO", 'B'}, {"CHARLIE", 'C'}, {"DELTA", 'D'},
    {"ECHO", 'E'}, {"FOXTROT", 'F'}, {"GOLF", 'G'}, {"HOTEL", 'H'}, {"INDIA", 'I'},
    {"JULIETT", 'J'}, {"JULIET", 'J'}, {"KILO", 'K'}, {"LIMA", 'L'}, {"MIKE", 'M'},
    {"NOVEMBER", 'N'}, {"OSCAR", 'O'}, {"PAPA", 'P'}, {"QUEBEC", 'Q'}, {"ROMEO", 'R'},
    {"SIERRA", 'S'}, {"TANGO", 'T'}, {"UNIFORM", 'U'}, {"VICTOR", 'V'}, {"WHISKEY", 'W'},
    {"WHISKY", 'W'}, {"XRAY", 'X'}, {"X RAY", 'X'}, {"YANKEE", 'Y'}, {"ZULU", 'Z'},
    {"ZERO", '0'}, {"ONE", '1'}, {"TWO", '2'}, {"THREE", '3'}, {"FOUR", '4'}, {"FIVE", '5'},
    {"SIX", '6'}, {"SEVEN", '7'}, {"EIGHT", '8'}, {"NINE", '9'}, {"NINER", '9'},
};

#define WORDS_IN(list) (sizeof (list) / sizeof (list)[0])

/* The name's words with one space between, of letters and figures alone, & as it is said. */
static const char *words_only(const char *upper, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    bool gap = false;
    for (; *upper != '\0'; upper++) {
        if ((*upper >= 'A' && *upper <= 'Z') || is_digit(*upper)) {
            text_add(&out, gap && out.length > 0 ? " " : "");
            text_add_bytes(&out, upper, 1);
            gap = false;
        } else if (*upper == '&') {
            text_add(&out, out.length > 0 ? " AND" : "AND");
            gap = true;
        } else if (*upper == ' ' || *upper == '-') {
            gap = true;
        }
    }
    return out.at;
}

/* How long the phrase is with the space behind it, if whole words of it stand there; or 0. */
static size_t phrase_at(const char *words, const char *phrase)
{
    size_t length = strlen(phrase);
    if (strncmp(words, phrase, length) != 0)
        return 0;
    return words[length] == '\0' ? length : words[length] == ' ' ? length + 1 : 0;
}

static const char *next_word(const char *words)
{
    words += strcspn(words, " ");
    return *words == ' ' ? words + 1 : words;
}

/* The longest of the list that stands there; NULL: none does. */
static const char *longest_at(const char *words, const char *const *list, size_t count)
{
    const char *found = NULL;
    for (size_t i = 0; i < count; i++)
        if (phrase_at(words, list[i]) > 0 && (found == NULL || strlen(list[i]) > strlen(found)))
            found = list[i];
    return found;
}

static const char *signal_in(const char *words)
{
    for (; *words != '\0'; words = next_word(words)) {
        const char *found = longest_at(words, signals, WORDS_IN(signals));
        if (found != NULL)
            return found;
    }
    return NULL;
}

/* Is there nothing in the name but signals and words of procedure? */
static bool all_procedure(const char *words)
{
    while (*words != '\0') {
        const char *found = longest_at(words, procedure_words, WORDS_IN(procedure_words));
        if (found == NULL)
            found = longest_at(words, signals, WORDS_IN(signals));
        if (found == NULL)
            return false;
        words += phrase_at(words, found);
    }
    return true;
}

static const char *edge_word_at(const char *words)
{
    return longest_at(words, edge_words, WORDS_IN(edge_words));
}

static const char *edge_word_of(const char *words)
{
    const char *last = words, *first = edge_word_at(words);
    for (; *words != '\0'; words = next_word(words))
        last = words;
    return first != NULL ? first : edge_word_at(last);
}

/* What would be heard behind THIS IS as the beginning of another call. */
static const char *first_signal_of(const char *words)
{
    const char *signal = longest_at(words, signals, WORDS_IN(signals));
    return signal != NULL ? signal : edge_word_at(words);
}

/* "M2" of MIKE TWO; NULL where any word is no code word. */
static const char *letters_heard(const char *words, struct arena *arena)
{
    struct text_builder heard = text_builder_in(arena);
    while (*words != '\0') {
        size_t length = 0;
        for (size_t i = 0; length == 0 && i < WORDS_IN(code_words); i++) {
            length = phrase_at(words, code_words[i].word);
            text_add_bytes(&heard, &code_words[i].letter, length > 0 ? 1 : 0);
        }
        if (length == 0)
            return NULL;
        words += length;
    }
    return heard.at;
}

/* ---- figures in words ---- */

static const char *const tens_words[] = {
    "", "", "TWENTY", "THIRTY", "FORTY", "FIFTY", "SIXTY", "SEVENTY", "EIGHTY", "NINETY",
};
static const char *const teens_words[] = {
    "TEN", "ELEVEN", "TWELVE", "THIRTEEN", "FOURTEEN", "FIFTEEN", "SIXTEEN", "SEVENTEEN",
    "EIGHTEEN", "NINETEEN",
};

static const char *figures_one_by_one(const char *digits, size_t count, struct arena *arena)
{
    uint32_t bad = 0;
    return spell(arena, arena_copy(arena, digits, count), &bad);
}

/* 45 as FORTY-FIVE; figure by figure where it has not two figures, or begins with 0. */
static const char *figures_as_number(const char *digits, size_t count, struct arena *arena)
{
    if (count != 2 || digits[0] == '0')
        return figures_one_by_one(digits, count, arena);
    unsigned tens = (unsigned)(digits[0] - '0'), ones = (unsigned)(digits[1] - '0');
    if (tens == 1)
        return teens_words[ones];
    if (ones == 0)
        return tens_words[tens];
    return text_format(arena, "%s-%s", tens_words[tens],
                       figures_one_by_one(digits + 1, 1, arena));
}

static bool parts_words(char sign) { return sign == ' ' || sign == '-'; }

typedef const char *figures_say(const char *digits, size_t count, struct arena *arena);

/* The name with its figures in words; what is nothing but figures needs a word that says
 * what bears the name. */
static const char *figures_said(const char *upper, figures_say *say, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, upper[strspn(upper, "0123456789 -.")] == '\0' ? "YACHT " : "");
    while (*upper != '\0') {
        size_t count = strspn(upper, "0123456789"), rest = strcspn(upper, "0123456789");
        if (count > 0) {
            text_add(&out, out.length == 0 || parts_words(out.at[out.length - 1]) ? "" : " ");
            text_add(&out, say(upper, count, arena));
            upper += count;
            text_add(&out, *upper == '\0' || *upper == '.' || parts_words(*upper) ? "" : " ");
        } else {
            text_add_bytes(&out, upper, rest);
            upper += rest;
        }
    }
    return out.at;
}

/* ---- the doubt ---- */

static bool has_figure(const char *upper) { return upper[strcspn(upper, "0123456789")] != '\0'; }

static void figures_doubt(const char *upper, struct arena *arena, struct name_doubt *doubt)
{
    const char *number = figures_said(upper, figures_as_number, arena);
    const char *single = figures_said(upper, figures_one_by_one, arena);
    doubt->kind = NAME_DOUBT_FIGURES;
    doubt->words = "how its figures are called out is not recorded";
    doubt->remedy = text_format(arena, "write how the name is called out, its figures in words, "
        "such as\n`name_spoken: %s`%s", number, text_equal(number, single) ? ""
            : text_format(arena, ", or `name_spoken: %s`", single));
}

static const char *yacht_remedy(const char *upper, struct arena *arena)
{
    return text_format(arena, "write how the boat is called so that a name is heard, such as\n"
                       "`name_spoken: YACHT %s`", figures_said(upper, figures_as_number, arena));
}

static void signal_doubt(const char *upper, const char *signal, struct arena *arena,
                         struct name_doubt *doubt)
{
    doubt->kind = NAME_DOUBT_SIGNAL;
    doubt->words = text_format(arena, "on the radio %s is heard as what it says, not as a name",
                               signal);
    doubt->remedy = yacht_remedy(upper, arena);
}

static void letters_doubt(const char *upper, const char *letters, struct arena *arena,
                          struct name_doubt *doubt)
{
    doubt->kind = NAME_DOUBT_LETTERS;
    doubt->words = text_format(arena, "on the radio it is heard as %s, not as a name", letters);
    doubt->remedy = yacht_remedy(upper, arena);
}

/* What is heard of a name that is nothing but code words and figures; or NULL. */
static const char *heard_of(const char *upper, struct arena *arena)
{
    return letters_heard(words_only(figures_said(upper, figures_one_by_one, arena), arena), arena);
}

/* A name as it is painted or licensed, which nobody has written down to be said. */
static void painted_doubt(const char *upper, struct arena *arena, struct name_doubt *doubt)
{
    const char *words = words_only(upper, arena);
    const char *signal = signal_in(words), *letters = heard_of(upper, arena);
    if (signal == NULL)
        signal = all_procedure(words) ? words : edge_word_of(words);
    if (signal != NULL)
        signal_doubt(upper, signal, arena, doubt);
    else if (letters != NULL)
        letters_doubt(upper, letters, arena, doubt);
    else if (has_figure(upper))
        figures_doubt(upper, arena, doubt);
}

/* What somebody wrote down to be said: code words may be meant, as FIVE ECHO of "5E", but
 * not where they are the name that raised the doubt. */
static void written_doubt(const char *upper, const char *licence, struct arena *arena,
                          struct name_doubt *doubt)
{
    const char *words = words_only(upper, arena), *letters = letters_heard(words, arena);
    struct name licensed;
    bool sound = !text_empty(licence) && name_decode(licence, arena, &licensed);
    const char *signal = all_procedure(words) ? words : first_signal_of(words);
    if (signal != NULL)
        signal_doubt(upper, signal, arena, doubt);
    else if (has_figure(upper))
        figures_doubt(upper, arena, doubt);
    else if (letters != NULL && sound && text_equal(letters, heard_of(licensed.spoken, arena)))
        letters_doubt(upper, letters, arena, doubt);
}

bool name_doubted(const struct boat_facts *facts, struct arena *arena, struct name_doubt *doubt)
{
    const struct text_value *licence = text_empty(facts->name_latin.text) ? &facts->name
                                                                         : &facts->name_latin;
    bool written = !text_empty(facts->name_spoken.text);
    struct name name;
    *doubt = (struct name_doubt){.kind = NAME_DOUBT_NONE,
                                 .value = written ? &facts->name_spoken : licence};
    if (text_empty(doubt->value->text) || !name_decode(doubt->value->text, arena, &name))
        return false;
    if (written)
        written_doubt(name.spoken, licence->text, arena, doubt);
    else
        painted_doubt(name.spoken, arena, doubt);
    return doubt->kind != NAME_DOUBT_NONE;
}
