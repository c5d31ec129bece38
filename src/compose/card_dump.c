/* card_dump.c - a composed card as stable text, for tests and for looking
 * (room: compose). */
#include "compose.h"

static void dump_place(struct text_builder *out, struct place place)
{
    text_add_format(out, "  <%s:%d>\n", place.source == NULL ? "-" : place.source->name,
                    place.line);
}

static void dump_step(struct text_builder *out, const struct card_step *step)
{
    text_add_format(out, "step %d %s: %s", step->number, step->id, step->headline.text);
    dump_place(out, step->headline.origin);
    for (size_t i = 0; i < step->lethal_count; i++)
        text_add_format(out, "  lethal: %s\n", step->lethal[i].text);
    for (size_t i = 0; i < step->row_count; i++) {
        const struct card_row *row = &step->rows[i];
        text_add(out, "  row");
        for (size_t t = 0; t < row->tag_count; t++)
            text_add_format(out, " [%s]", row->tags[t]);
        text_add_format(out, " %s | %s", row->name, row->where);
        dump_place(out, row->origin);
    }
    for (size_t i = 0; i < step->table_count; i++) {
        text_add(out, "  table");
        if (step->table[i].head != NULL)
            text_add_format(out, " %s", step->table[i].head);
        for (size_t c = 0; c < TABLE_CELLS; c++)
            if (step->table[i].cells[c].name != NULL)
                text_add_format(out, " [%s] %s", step->table[i].cells[c].tag,
                                step->table[i].cells[c].name);
        text_add(out, "\n");
    }
    for (size_t i = 0; i < step->figure_count; i++) {
        text_add_format(out, "  figure %s: %s", step->figures[i].id, step->figures[i].text);
        dump_place(out, step->figures[i].origin);
    }
}

static void dump_warnings(struct text_builder *out, const char *word,
                          const struct card_warning *warnings, size_t count)
{
    for (size_t i = 0; i < count; i++)
        text_add_format(out, "%s: %s [%s]\n", word, warnings[i].text, warnings[i].tag);
}

static void dump_call(struct text_builder *out, const struct card *card, struct arena *arena)
{
    if (!card->call.given)
        return;
    text_add_format(out, "call: %s | %s\n", card->call.title, card->call.station);
    for (size_t i = 0; i < card->call.operate_count; i++)
        text_add_format(out, "  set: %s\n", card->call.operate[i].text);
    if (card->call.script != NULL)
        text_add(out, script_text(card->call.script, arena));
}

static void dump_sections(struct text_builder *out, const struct card *card, struct arena *arena)
{
    for (size_t i = 0; i < card->section_count; i++) {
        const struct card_section *section = &card->sections[i];
        text_add_format(out, "section %s: %s\n", block_word(section->key), section->title);
        for (size_t l = 0; l < section->line_count; l++)
            text_add_format(out, "  %s\n", section->lines[l].text);
        if (section->script != NULL)
            text_add(out, script_text(section->script, arena));
    }
}

void card_dump(const struct card *card, struct text_builder *out)
{
    text_add_format(out, "card %s (%s)%s\nsigns: %s\ncall line: %s\n", card->title,
                    card->number_text, card->held ? " HELD" : "", card->signs, card->call_line);
    for (size_t i = 0; i < card->step_count; i++)
        dump_step(out, &card->steps[i]);
    if (card->decision.given)
        text_add_format(out, "ask: %s\n  yes: %s\n  no: %s\n", card->decision.ask,
                        card->decision.yes, card->decision.no);
    dump_warnings(out, "never", card->nevers, card->never_count);
    dump_warnings(out, "caution", card->cautions, card->caution_count);
    dump_warnings(out, "local rule", card->local_rules, card->local_rule_count);
    dump_sections(out, card, out->arena);
    dump_call(out, card, out->arena);
    for (size_t i = 0; i < card->marker_count; i++)
        text_add_format(out, "marker %s %s %d %d\n", card->markers[i].tag,
                        card->markers[i].zone->key, (int)card->markers[i].x_mm,
                        (int)card->markers[i].y_mm);
    text_add_format(out, "marks: %s\ncode: %s\n", card->mark, card->code);
}
