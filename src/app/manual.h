/* manual.h - the manual: one text, told on a screen or as the source of a page for man(1) (room:
 * app). Private to src/app.
 *
 * Texts are written in plain lines. A blank line parts paragraphs. `Backticks` stand round what
 * is typed or written in a file. A line that holds two spaces or more in a row tells a term in
 * front of them and what it means behind; lines that begin with two spaces go on with it. Lines
 * that begin with four are shown as they stand. */
#ifndef MAYDECK_MANUAL_H
#define MAYDECK_MANUAL_H

#include "fleet.h"
#include "options.h"

enum manual_form {
    MANUAL_SCREEN,           /* lines of a width */
    MANUAL_SOURCE,           /* mdoc(7) */
};

struct manual {
    enum manual_form form;
    struct text_builder out;
    size_t width;            /* of the screen */
    size_t column;           /* where the line at work stands */
    size_t hanging;          /* screen: where meanings begin beside their terms; 0: beneath them */
    bool within;             /* a list of terms is open */
    bool headed;             /* nothing came after the last title yet */
    bool owed;               /* an empty line is due before what comes next */
};

/* What `manual` prints, and the words by which it is asked. */
#define MANUAL_PAGE_LIST(X) \
    X(PAGE_COMMANDS, "commands") X(PAGE_FILES, "files") X(PAGE_REFERENCE, "reference")
enum manual_page { PAGE_NONE, MANUAL_PAGE_LIST(CHOICE_NAME) PAGE_COUNT };
extern const char *const manual_page_words[];

/* ---- manual.c: what both forms have in common ---- */

struct manual manual_on_screen(struct arena *arena);
struct manual manual_as_source(struct arena *arena);

void manual_section(struct manual *manual, const char *title);
void manual_part(struct manual *manual, const char *title);

/* A text as told above. */
void manual_text(struct manual *manual, const char *text);

/* A list of terms, the widest of so many letters; its terms; its end, which also comes by itself
 * with the next section, part or text. */
void manual_terms(struct manual *manual, size_t widest);
void manual_term(struct manual *manual, const char *term, const char *meaning);
void manual_option(struct manual *manual, const struct option_row *row);
void manual_terms_end(struct manual *manual);

/* ---- manual_screen.c ---- */

/* How wide the terminal is under standard output, or COLUMNS says; else 80. */
size_t screen_width(void);

void screen_words(struct manual *manual, const char *words, size_t length, size_t indent);
void screen_term(struct manual *manual, const char *term);

/* ---- manual_source.c ---- */

/* Words of running text, `marked` ones by their macros. */
void source_words(struct manual *manual, const char *words, size_t length);

/* Adds words as arguments of a macro. */
void source_arguments(struct manual *manual, const char *words, size_t length);

/* Is a hyphen in a word one that is typed, or one that is read? */
enum hyphens { WORDS_READ, WORDS_TYPED };

/* Adds letters, each beyond ASCII by its number; returns how many bytes the source has more. */
size_t source_letters(struct manual *manual, const char *word, size_t length,
                      enum hyphens hyphens);

/* A macro alone on its line, or with these arguments: ".Sh", "EXIT STATUS". */
void source_macro(struct manual *manual, const char *macro, const char *arguments);

/* A line that is shown as it stands. */
void source_shown(struct manual *manual, const char *line, size_t length);

/* ---- manual_topics.c ---- */

/* A thing that `help` tells of and the pages have a section on. */
struct manual_topic {
    const char *name, *title, *about;
    const char *text;        /* what is written by hand; NULL: nothing */
    void (*tell)(struct manual *manual, const struct fleet *fleet);  /* what is made from tables;
                                                                         NULL: nothing */
    unsigned pages;          /* where it has a section: a bit each of enum manual_page */
    bool reads;              /* `tell` looks at the procedures and words of the fleet */
};
extern const struct manual_topic manual_topics[];
extern const size_t manual_topic_count;

void manual_topic_tell(struct manual *manual, const struct manual_topic *topic,
                       const struct fleet *fleet);

/* ---- manual_keys.c: every key of the files ---- */
void base_keys_tell(struct manual *manual, const struct fleet *fleet);
void boat_keys_tell(struct manual *manual, const struct fleet *fleet);
void model_keys_tell(struct manual *manual, const struct fleet *fleet);
void reader_words_tell(struct manual *manual, const struct fleet *fleet);
const char *key_meaning(const struct field_path *path, struct arena *arena);

/* ---- manual_own.c: the program's own files, gear, zones, checks ---- */
void procedure_keys_tell(struct manual *manual, const struct fleet *fleet);
void source_keys_tell(struct manual *manual, const struct fleet *fleet);
void word_keys_tell(struct manual *manual, const struct fleet *fleet);
void gear_tell(struct manual *manual, const struct fleet *fleet);
void zones_tell(struct manual *manual, const struct fleet *fleet);

/* Of each procedure, by item, whether it asks for it; and one kind of gear, with the cards that
 * do. */
const bool *const *gear_asked(const struct fleet *fleet, struct arena *arena);
void gear_kind_tell(struct manual *manual, const struct fleet *fleet,
                    const bool *const *asked, enum item_key item);
void zone_row_tell(struct manual *manual, const struct fleet *fleet, enum zone_key key);

/* ---- manual_pages.c ---- */
void manual_page_add(struct manual *manual, enum manual_page page, const struct fleet *fleet);

/* ---- manual_reference.c ---- */
void reference_page_add(struct manual *manual);

/* ---- help.c ---- */

/* What stands for what a command is given besides options; and all commands with all options. */
const char *command_operands(const struct command *command);
void commands_tell(struct manual *manual, const struct fleet *fleet);

/* Letters of the widest command or topic, and of what stands before what an option does. */
enum { COMMAND_LETTERS = 11, OPTION_LETTERS = 23 };

/* ---- help_words.c ---- */

/* Tells of a key, a kind of gear, a zone, a card, a check or a figure; false: it is none. */
bool word_tell(struct manual *manual, const struct fleet *fleet, const char *name);

/* All words that `help` tells of, each once. */
void words_told_gather(struct names *names, const struct fleet *fleet, struct arena *arena);

/* ---- manual_texts.c, manual_file_texts.c: what is written by hand ---- */
extern const char manual_description[], manual_environment[], manual_exit[], manual_examples[],
    manual_messages[], manual_cautions[], manual_glossary[];
extern const char manual_files[], manual_writing[], manual_base[], manual_boat[], manual_model[],
    manual_procedure[], manual_sources[], manual_words[], manual_register[], manual_printed[],
    manual_table[], manual_readers[], manual_gear[], manual_zones[];

#endif
