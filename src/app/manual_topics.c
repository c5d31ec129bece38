/* manual_topics.c - what the manual has sections on, in the order of its pages, and `help` tells
 * of by name (room: app). */
#include "manual.h"

#define ON(page) (1u << (page))

const struct manual_topic manual_topics[] = {
    {"maydeck", "description", "what the program does, and how commands are written",
     manual_description, NULL, ON(PAGE_COMMANDS), false},
    {"commands", "commands", "every command with its options", NULL, commands_tell,
     ON(PAGE_COMMANDS), false},
    {"environment", "environment", "variables that the program looks at", manual_environment,
     NULL, ON(PAGE_COMMANDS), false},
    {"files", "files", "which files there are, and how they are named", manual_files, NULL,
     ON(PAGE_COMMANDS) | ON(PAGE_FILES), false},
    {"exit", "exit status", "with which status commands leave", manual_exit, NULL,
     ON(PAGE_COMMANDS), false},
    {"examples", "examples", "lines to type for what is done often", manual_examples, NULL,
     ON(PAGE_COMMANDS), false},
    {"messages", "diagnostics", "what a message says, and how much hangs on it",
     manual_messages, NULL, ON(PAGE_COMMANDS), false},
    {"glossary", "glossary", "what words mean here", manual_glossary, NULL, ON(PAGE_COMMANDS),
     false},
    {"writing", "how values are written", "texts, dates, numbers and lists in files",
     manual_writing, NULL, ON(PAGE_FILES), false},
    {"base", "base.yaml", "every key of a base's file", manual_base, base_keys_tell,
     ON(PAGE_FILES), false},
    {"boat", "a boat's file", "every key of a boat's file", manual_boat, boat_keys_tell,
     ON(PAGE_FILES), false},
    {"model", "a model's file", "what a file that sister ships share may hold", manual_model,
     model_keys_tell, ON(PAGE_FILES), false},
    {"readers", "where values are read", "on which parts of cards and reports values come to "
     "stand", manual_readers, reader_words_tell, ON(PAGE_FILES), false},
    {"gear", "kinds of gear", "each with what to record and the cards that ask for it",
     manual_gear, gear_tell, ON(PAGE_FILES), true},
    {"zones", "zones", "parts of a boat", manual_zones, zones_tell, ON(PAGE_FILES), true},
    {"procedure", "a card's files", "every key of a card's own files, for who writes cards",
     manual_procedure, procedure_keys_tell, ON(PAGE_FILES), false},
    {"sources", "sources.yaml", "whose word a step or caution rests on", manual_sources,
     source_keys_tell, ON(PAGE_FILES), false},
    {"words", "words.yaml", "every key of a language's words", manual_words, word_keys_tell,
     ON(PAGE_FILES), false},
    {"register", "register.csv", "what was printed and what hangs on board", manual_register,
     NULL, ON(PAGE_FILES), false},
    {"printed", "printed.csv", "the list of what was printed into a folder", manual_printed,
     NULL, ON(PAGE_FILES), false},
    {"cells", "the table for spreadsheets", "rows and columns that `table` writes and `take` "
     "reads", manual_table, NULL, ON(PAGE_FILES), false},
    {NULL, "see also", NULL, "`maydeck-files(5)`\n", NULL, ON(PAGE_COMMANDS), false},
    {NULL, "see also", NULL, "`maydeck(1)`\n", NULL, ON(PAGE_FILES), false},
    {"cautions", "caveats", "what the cards do not do", manual_cautions, NULL, ON(PAGE_COMMANDS),
     false},
};
const size_t manual_topic_count = sizeof manual_topics / sizeof *manual_topics;

void manual_topic_tell(struct manual *manual, const struct manual_topic *topic,
                       const struct fleet *fleet)
{
    if (topic->text != NULL)
        manual_text(manual, topic->text);
    if (topic->tell != NULL)
        topic->tell(manual, fleet);
    manual_terms_end(manual);
}
