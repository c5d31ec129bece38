/* manual_reference.c - one page for print: commands with their options, the keys of a piece of
 * gear, and with which status commands leave (room: app). Source for troff with the macros ms,
 * which every typesetter of manuals has. */
#include "manual.h"

/* Paper and type: A4, two columns, 7.5 pt. */
static const char page_set_up[] =
    ".\\\" made by `maydeck manual reference`; A4: groff -ms -Tpdf -P-pa4\n"
    ".pl 29.7c\n"
    ".nr PO 1.4c\n.nr LL 18.2c\n.nr HM 1.2c\n.nr FM 0.9c\n"
    ".nr PS 7.5p\n.nr VS 9p\n.nr PD 0.25v\n.nr MINGW 0.7c\n"
    ".ds CH\n.ds CF\n.nr HY 0\n.nh\n.ad l\n.fam H\n"
    ".LP\n.ps 13\n.B \"maydeck " MAYDECK_VERSION "\"\n.ps 7.5\n"
    "\\0 emergency action cards for the boats of a charter base\n.br\n.sp 0.3v\n.2C\n";

/* ---- letters ---- */

static void roff_add(struct manual *manual, const char *text)
{
    if (text[0] == '.' || text[0] == '\'')
        text_add(&manual->out, "\\&");
    source_letters(manual, text, strlen(text), WORDS_READ);
}

static void heading_add(struct manual *manual, const char *title)
{
    text_add(&manual->out, ".LP\n.ne 4v\n.B \"");
    roff_add(manual, title);
    text_add(&manual->out, "\"\n");
}

/* A term in bold and behind it, hanging, what it means. */
static void row_on_page(struct manual *manual, const char *term, const char *more,
                      const char *meaning)
{
    text_add(&manual->out, ".XP\n\\fB");
    roff_add(manual, term);
    text_add(&manual->out, "\\fP ");
    roff_add(manual, more);
    text_add(&manual->out, "\\ \\ ");
    roff_add(manual, meaning);
    text_add(&manual->out, "\n");
}

/* ---- what is on it ---- */

/* One after the other, each kept on one line: -o DIR; --card CARD,... */
static void options_add(struct manual *manual, const struct command *command)
{
    struct text_builder *out = &manual->out;
    const struct option_row *row;
    for (size_t i = 0; (row = option_at(i)) != NULL; i++) {
        if ((row->commands & command->bit) == 0 || row->about == NULL ||
            row->kind == OPTION_HELP || row->kind == OPTION_VERSION)
            continue;
        if (row->letter != 0)
            text_add_format(out, "\\%%-%c", row->letter);
        else
            text_add_format(out, "\\%%--%s", row->name);
        text_add_format(out, "%s%s\n", row->argument == NULL ? "" : "\\ ",
                        row->argument == NULL ? "" : row->argument);
    }
}

static void commands_list(struct manual *manual)
{
    heading_add(manual, "Commands");
    for (size_t i = 0; i < command_count; i++) {
        row_on_page(manual, commands[i].name, command_operands(&commands[i]),
                    text_format(manual->out.arena, "%s.", commands[i].about));
        options_add(manual, &commands[i]);
    }
    row_on_page(manual, "help", "COMMAND or TOPIC", "tells all of it.");
}

/* What is typed most often. */
static void lines_list(struct manual *manual)
{
    static const char *const lines[] = {
        "maydeck start mybase --boat tern --hull monohull",
        "maydeck check mybase --boat tern",
        "maydeck print mybase -o cards",
        "maydeck print mybase --boat tern --card flooding -o cards",
        "maydeck why mybase --boat tern --card engine_fire",
        "maydeck hang mybase --boat tern --place \"chart table\" --by AB",
        "maydeck renew mybase --print -o cards"};
    heading_add(manual, "Often typed");
    text_add(&manual->out, ".LP\n.nf\n");
    for (size_t i = 0; i < sizeof lines / sizeof *lines; i++) {
        roff_add(manual, lines[i]);
        text_add(&manual->out, "\n");
    }
    text_add(&manual->out, ".fi\n");
}

/* Those that any piece may have. */
static void gear_keys_list(struct manual *manual)
{
    heading_add(manual, "A piece of gear, under equipment: in a boat's file");
    text_add(&manual->out, ".LP\n\\f(CR- {item: seacock, tag: C7, zone: forward_heads, side: port, "
                           "how: {shut: across}}\\fP\n");
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (field_is_general(field))
            row_on_page(manual, gear_field_word(field), "", gear_field_row(field)->about);
    row_on_page(manual, "not_fitted", "",
                "gear that she does not have; what is nowhere in the file is not recorded, and "
                "cards that need it wait");
}

static void top_keys_list(struct manual *manual, const char *title,
                          const struct field_table *table)
{
    heading_add(manual, title);
    for (size_t i = 0; i < table->count; i++)
        row_on_page(manual, table->fields[i].key, table->fields[i].required ? "(needed)" : "",
                    table->fields[i].about == NULL ? "" : table->fields[i].about);
}

void reference_page_add(struct manual *manual)
{
    static const char *const statuses[][2] = {
        {"0", "good"}, {"1", "a card is held back, or something was found"},
        {"2", "wrong use"}, {"3", "the system failed, or the program's texts are not whole"}};
    text_add(&manual->out, page_set_up);
    lines_list(manual);
    commands_list(manual);
    heading_add(manual, "Exit status");
    for (size_t i = 0; i < sizeof statuses / sizeof *statuses; i++)
        row_on_page(manual, statuses[i][0], "", statuses[i][1]);
    gear_keys_list(manual);
    top_keys_list(manual, "Sections of a boat's file", boat_file_fields());
    top_keys_list(manual, "Sections of base.yaml", base_file_fields());
}
