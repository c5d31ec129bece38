/* distress_section.c - a titled section of the distress card while it is put together (room:
 * compose). Never decides which there are. */
#include "distress_room.h"

#include "promise.h"

const char *section_word(struct composing *composing, enum word word)
{
    return phrase_said(composing, word_alone(composing, word));
}

struct section_facts *section_add(struct composing *composing, struct sheet *sheet,
                                  enum block_key key, enum word title)
{
    struct section_facts *section = arena_alloc(composing->arena, sizeof *section);
    *section = (struct section_facts){.title = section_word(composing, title)};
    block_add(composing, sheet, key)->section = section;
    return section;
}

static const struct script *script_of(struct composing *composing, enum script_form form)
{
    const struct boat *boat = composing->in->boat;
    struct script_request request = call_request(boat, form, NULL);
    request.unrecorded = script_unrecorded(composing);
    const struct script *script = script_make(&request, boat, composing->in->base,
                                              composing->arena, composing->problems);
    if (script == NULL)
        composing->held = true;
    return script;
}

struct section_facts *script_section(struct composing *composing, struct sheet *sheet,
                                     const struct script_block *block)
{
    struct section_facts *section = section_add(composing, sheet, block->key, block->title);
    section->script = script_of(composing, block->form);
    return section;
}

const struct phrase *steps_phrase(struct composing *composing, enum word word,
                                  const struct list_value *steps)
{
    const struct phrase **phrases = arena_array(composing->arena, steps->count, sizeof *phrases);
    for (size_t i = 0; i < steps->count; i++)
        phrases[i] = phrase_text(composing->arena, &steps->items[i]);
    const struct phrase *told = phrase_list(composing->arena, WORD_JOIN_COMMA, phrases,
                                            steps->count);
    if (told == NULL && word == WORD_NATURE_STEPS)
        told = unrecorded(composing);
    return told == NULL ? NULL : phrase_word(composing->arena, word, "steps", told, NULL);
}

void hint_add(struct composing *composing, struct section_facts *section,
              const struct phrase *phrase, struct card_hint hint)
{
    enum { HINTS_MOST = 4 };
    struct card_hint *hints = arena_array(composing->arena, HINTS_MOST, sizeof *hints);
    if (phrase == NULL)
        return;
    promise(section->hint_count < HINTS_MOST);
    for (size_t i = 0; i < section->hint_count; i++)
        hints[i] = section->hints[i];
    hint.text = phrase_said(composing, phrase);
    hints[section->hint_count++] = hint;
    section->hints = hints;
}

void section_line_add(struct composing *composing, struct section_facts *section,
                      const char *lead, struct card_text line)
{
    size_t count = section->line_count + 1;
    struct card_text *lines = arena_array(composing->arena, count, sizeof *lines);
    const char **leads = arena_array(composing->arena, count, sizeof *leads);
    for (size_t i = 0; i < section->line_count; i++) {
        lines[i] = section->lines[i];
        leads[i] = section->lead == NULL ? NULL : section->lead[i];
    }
    lines[count - 1] = line;
    leads[count - 1] = lead;
    section->lines = lines;
    section->lead = lead == NULL ? section->lead : leads;
    section->line_count = count;
}
