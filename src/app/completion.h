/* completion.h - what shells complete words of the command line by (room: app): scripts made from
 * the rows of commands and options, and the names that they ask for. Private to src/app. */
#ifndef MAYDECK_COMPLETION_H
#define MAYDECK_COMPLETION_H

#include "fleet.h"
#include "options.h"

/* What `completion` prints, and the words by which it is asked. */
#define COMPLETION_TOPIC_LIST(X) \
    X(COMPLETE_BASH, "bash") X(COMPLETE_ZSH, "zsh") X(COMPLETE_FISH, "fish") \
    X(COMPLETE_BOATS, "boats") X(COMPLETE_MODELS, "models") X(COMPLETE_CARDS, "cards") \
    X(COMPLETE_FIGURES, "figures") X(COMPLETE_NATURES, "natures") \
    X(COMPLETE_LANGUAGES, "languages") X(COMPLETE_ITEMS, "items") X(COMPLETE_ZONES, "zones") \
    X(COMPLETE_CHECKS, "checks") X(COMPLETE_TOPICS, "topics") X(COMPLETE_WORDS, "words")
enum completion_topic { COMPLETE_NONE, COMPLETION_TOPIC_LIST(CHOICE_NAME) COMPLETE_COUNT };
extern const char *const completion_topic_words[];

/* What may stand behind an option, or in the place of a command's operand. */
enum value_kind {
    VALUE_NONE,              /* the option takes none */
    VALUE_ANY,               /* nothing that can be known */
    VALUE_WORDS,             /* one of `words` */
    VALUE_NAME,              /* one of the names of `topic` */
    VALUE_NAMES,             /* several of them, with commas between */
    VALUE_FOLDER,
    VALUE_FILE,
};

struct completed_value {
    enum value_kind kind;
    enum completion_topic topic;
    const char *const *words;
};

struct completed_value option_completed(const struct option_row *row, const struct command *of);

/* How scripts name it: "names boats", "words a4 letter", "folder"; "" where there is none. */
const char *completed_told(struct completed_value value, struct arena *arena);

/* The text within single quotes of a shell; `quote` is how a quote within them is written. */
const char *shell_quoted(const char *text, const char *quote, struct arena *arena);

/* ---- completion_bash.c, completion_zsh.c, completion_fish.c ---- */
void completion_bash(struct text_builder *out);
void completion_zsh(struct text_builder *out);
void completion_fish(struct text_builder *out);

/* What bash and zsh share: functions that tell of a command its options and operand, and of an
 * option what stands behind it. */
void completion_tables_add(struct text_builder *out);

/* ---- completion_names.c ---- */

/* The names, a line each. False, with a problem: the base that they are of is not named, or is
 * none. */
bool completion_names(const struct options *options, enum completion_topic topic,
                      struct fleet *fleet, struct text_builder *out);

#endif
