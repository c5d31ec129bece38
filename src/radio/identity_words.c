/* identity_words.c - what is wrong with an identity, in words (room: radio). Tells
 * nobody: the words are put behind the text they speak of by whoever does. */
#include "identity.h"

#include "promise.h"
#include "text.h"

/* ---- MMSI ---- */

static const char *const mmsi_forms[] = {
    [MMSI_SHIP] = "a ship's",
    [MMSI_GROUP] = "a group of ships'",
    [MMSI_COAST] = "a coast station's",
    [MMSI_AIRCRAFT] = "a rescue aircraft's",
    [MMSI_HANDHELD] = "a handheld radio's",
    [MMSI_TENDER] = "a tender's, carried by a ship",
    [MMSI_AID] = "an aid to navigation's",
    [MMSI_AIS_SART] = "a radar transponder's (AIS-SART)",
    [MMSI_MAN_OVERBOARD] = "a man-overboard device's",
    [MMSI_EPIRB_AIS] = "a distress beacon's (EPIRB-AIS)",
    [MMSI_AUTONOMOUS] = "an autonomous radio device's",
    [MMSI_UNASSIGNED] = "nobody's: numbers beginning so are not assigned",
};

const char *mmsi_form_words(enum mmsi_form form)
{
    promise(form < sizeof mmsi_forms / sizeof mmsi_forms[0]);
    return mmsi_forms[form];
}

/* An identity that is sound but not a ship's: whose it is, and of which country. */
static const char *form_fault_words(const struct mmsi *mmsi, struct arena *arena)
{
    const char *whose = mmsi_form_words(mmsi->form);
    return mmsi->mid[0] == '\0' ? text_format(arena, "is %s", whose)
                                : text_format(arena, "is %s (MID %s)", whose, mmsi->mid);
}

/* What a spreadsheet or a typist did to the identity. Places count from 1, as a reader
 * counts them. */
const char *mmsi_fault_words(const struct mmsi *mmsi, struct arena *arena)
{
    switch (mmsi->fault) {
    case MMSI_SOUND:
        return NULL;
    case MMSI_WORDS:
        return "is no number";
    case MMSI_EXPONENT:
        return "is what a spreadsheet made of it, a number with an exponent: its last digits "
               "are lost";
    case MMSI_DECIMAL:
        return "is what a spreadsheet made of it, a decimal number";
    case MMSI_APOSTROPHE:
        return "has the apostrophe in front by which a spreadsheet marks a text";
    case MMSI_UNDERSCORE:
        return "is a number as programmers group it, with underscores";
    case MMSI_SEPARATED:
        return "is what a spreadsheet made of it, a number with commas, full stops or the like";
    case MMSI_LETTER_O:
        return text_format(arena, "has the letter %c in place %zu; was the digit 0 meant?",
                           (int)mmsi->code_point, mmsi->at);
    case MMSI_LETTER_L:
        return text_format(arena, "has the letter %c in place %zu; was the digit 1 meant?",
                           (int)mmsi->code_point, mmsi->at);
    case MMSI_WIDE_DIGIT:
        return text_format(arena, "has a full-width digit in place %zu (U+%04X)", mmsi->at,
                           (unsigned)mmsi->code_point);
    case MMSI_NO_DIGIT:
        return text_format(arena, "has no digit in place %zu (U+%04X)", mmsi->at,
                           (unsigned)mmsi->code_point);
    case MMSI_SPACES:
        return "has spaces where none belong";
    case MMSI_LENGTH:
        return text_format(arena, "has %zu digits, not nine%s", mmsi->digit_count,
                           mmsi->digit_count < MMSI_DIGITS
                               ? ": were zeros in front lost, or a digit missed?" : "");
    case MMSI_OTHER_FORM:
        return form_fault_words(mmsi, arena);
    }
    promise_unreached();
}

/* ---- call signs ---- */

/* A letter that is not of A to Z: Cyrillic and Greek ones that look Latin are named by
 * what they look like. */
static const char *other_letter_words(const struct call_sign *call_sign, struct arena *arena)
{
    if (call_sign->looks_like == 0)
        return text_format(arena, "character %zu (U+%04X) is not one of the letters A to Z",
                           call_sign->at, (unsigned)call_sign->code_point);
    return text_format(arena, "character %zu (U+%04X) is not %c, though it looks like it",
                       call_sign->at, (unsigned)call_sign->code_point,
                       call_sign->looks_like);
}

/* What the call sign has that none can have; NULL where there is nothing. */
const char *call_sign_fault_words(const struct call_sign *call_sign, struct arena *arena)
{
    const char *what = NULL;
    switch (call_sign->fault) {
    case CALL_SIGN_SOUND:
        return NULL;
    case CALL_SIGN_SMALL_LETTER:
        what = "a small letter";
        break;
    case CALL_SIGN_SPACE:
        what = "a space";
        break;
    case CALL_SIGN_OTHER_LETTER:
        return other_letter_words(call_sign, arena);
    case CALL_SIGN_SIGN:
        what = "neither a letter nor a digit";
        break;
    case CALL_SIGN_BYTES:
        what = "not valid UTF-8";
        break;
    case CALL_SIGN_LENGTH:
        return text_format(arena, "it has %zu character%s; call signs have %d to %d",
                           call_sign->length, call_sign->length == 1 ? "" : "s",
                           CALL_SIGN_SHORTEST, CALL_SIGN_LONGEST);
    case CALL_SIGN_NONE:
        return "in capitals this is called out as a call sign";
    }
    promise(what != NULL);
    return text_format(arena, "character %zu (U+%04X) is %s", call_sign->at,
                       (unsigned)call_sign->code_point, what);
}

/* Whose call sign has that pattern; NULL for a ship's, of which there is nothing to
 * tell. */
const char *call_sign_pattern_words(enum call_sign_pattern pattern)
{
    switch (pattern) {
    case PATTERN_SHIP:
        return NULL;
    case PATTERN_SHIP_0_OR_1:
        return "has 0 or 1 straight after a letter, which only some countries issue";
    case PATTERN_SURVIVAL_CRAFT:
        return "has the pattern of a liferaft or tender: a ship's call sign and two digits";
    case PATTERN_AIRCRAFT:
        return "has the pattern of an aircraft's";
    case PATTERN_LAND:
        return "has the pattern of a land station's";
    case PATTERN_AMATEUR:
        return "has the pattern of a radio amateur's: the skipper's own instead of the ship's?";
    case PATTERN_UNKNOWN:
        return "has no pattern that ships' call signs have";
    }
    promise_unreached();
}

/* ---- names ---- */

const char *name_fault_words(const struct name *name, struct arena *arena)
{
    switch (name->fault) {
    case NAME_SOUND:
        return NULL;
    case NAME_EMPTY:
        return "has no letter that could be called out";
    case NAME_OTHER_LETTERS:
        return text_format(arena, "cannot be called out: U+%04X is not one of the letters A to Z",
                           (unsigned)name->code_point);
    case NAME_UNSPEAKABLE:
        return text_format(arena, "cannot be called out: U+%04X has no code word and no Latin "
                           "spelling", (unsigned)name->code_point);
    }
    promise_unreached();
}

#define ASK_LATIN "write `name_latin:` as the ship's radio licence spells the name"

/* Which of several spellings is the licence's, only the licence tells. */
static const char *caution_of(enum name_alphabet alphabet)
{
    switch (alphabet) {
    case ALPHABET_LATIN:
        return "";
    case ALPHABET_GREEK:
    case ALPHABET_CYRILLIC:
        return ", which may spell it in another way";
    case ALPHABET_MIXED:
        return ", since letters of several alphabets stand in it";
    }
    promise_unreached();
}

/* A Latin spelling is proposed, never taken: the licence decides how the boat is called. */
const char *name_remedy(const struct name *name, struct arena *arena)
{
    if (name->fault == NAME_EMPTY)
        return "write `name_spoken:`";
    if (name->proposal == NULL)
        return ASK_LATIN;
    const char *other = name->other_proposal == NULL
                            ? "" : text_format(arena, " (or %s)", name->other_proposal);
    return text_format(arena, ASK_LATIN ";\nproposed, to be compared with the licence%s:\n"
                       "name_latin: %s%s", caution_of(name->alphabet), name->proposal, other);
}
