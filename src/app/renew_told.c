/* renew_told.c - what was found of the cards on board, as text or as JSON (room: app). Judges
 * nothing. */
#include "renew.h"

#include "choice.h"
#include "told.h"

#include <string.h>

#define RENEW_FORMAT "maydeck-renew-1"

static const char *const renew_kind_words[] = {RENEW_KIND_LIST(CHOICE_WORD) NULL};

struct renew_finding *finding_add(struct renewing *renewing, enum renew_kind kind,
                                  const struct register_row *row)
{
    struct renew_boat *hers = &renewing->hers;
    bool other = !text_equal(row->language, words_language(renewing->fleet->first_language));
    hers->findings = arena_grow(renewing->arena, hers->findings, hers->count, &hers->room,
                                sizeof *hers->findings);
    struct renew_finding *finding = &hers->findings[hers->count++];
    *finding = (struct renew_finding){
        .kind = kind, .card = row->card, .name = row->name, .language = row->language,
        .other_language = other ? row->language : NULL,
        .code = kind == RENEW_HELD || kind == RENEW_NEVER ? NULL : row->code};
    return finding;
}

/* ---- as text ---- */

static const char *const finding_heads[] = {
    [RENEW_REPLACE] = "REPLACE", [RENEW_HELD] = "HELD BACK",
    [RENEW_HANGS_HELD] = "HANGS, BUT IS HELD BACK", [RENEW_NOT_HUNG] = "PRINTED, NOT HUNG",
    [RENEW_PRINT_AGAIN] = "PRINT AGAIN", [RENEW_TAKE_DOWN] = "TAKE DOWN",
    [RENEW_CHANGES] = "CHANGES BY ITSELF", [RENEW_NEVER] = "NEVER PRINTED"};

/* "7 FLOODING, de (3EHB-1W4H), companionway" */
static void finding_card_add(const struct renew_finding *finding, struct text_builder *out)
{
    bool language = finding->other_language != NULL && finding->kind != RENEW_HELD &&
                    finding->kind != RENEW_CHANGES;
    text_add_format(out, "  %s %s", finding_heads[finding->kind], finding->name);
    if (language)
        text_add_format(out, ", %s", finding->other_language);
    if (finding->code != NULL)
        text_add_format(out, " (%s)", finding->code);
    if (finding->place != NULL)
        text_add_format(out, ", %s", finding->place);
}

static void finding_text_add(const struct renew_finding *finding, struct text_builder *out)
{
    const char *const *reasons = finding->reasons.at;
    finding_card_add(finding, out);
    if (finding->kind == RENEW_REPLACE && finding->now != NULL)
        text_add_format(out, "; now %s", finding->now);
    if (finding->kind == RENEW_REPLACE && finding->printed != NULL)
        text_add_format(out, "; printed %s, not hung", finding->printed);
    if (finding->kind == RENEW_NOT_HUNG)
        text_add_format(out, ", printed %s", finding->printed);
    if (finding->kind == RENEW_PRINT_AGAIN)
        text_add_format(out, ", printed %s and never hung; now %s", finding->printed,
                        finding->now);
    if (finding->on != NULL)
        text_add_format(out, " on %s", finding->on);
    if (finding->why != NULL)
        text_add_format(out, ": %s", finding->why);
    text_add(out, "\n");
    for (size_t i = 0; i < finding->reasons.count; i++)
        text_add_format(out, "      %s\n", reasons[i]);
}

/* All that were never printed, in one line. */
static void never_add(const struct renew_boat *boat, struct text_builder *out)
{
    size_t never = 0;
    for (size_t i = 0; i < boat->count; i++)
        never += boat->findings[i].kind == RENEW_NEVER ? 1 : 0;
    if (never == 0)
        return;
    text_add_format(out, "  %s ", finding_heads[RENEW_NEVER]);
    if (never == boat->of)
        text_add_format(out, "all %zu cards", never);
    for (size_t i = 0, told = 0; never < boat->of && i < boat->count; i++)
        if (boat->findings[i].kind == RENEW_NEVER)
            text_add_format(out, "%s%s", told++ == 0 ? "" : "; ", boat->findings[i].name);
    text_add(out, "\n");
}

static void boat_text_add(const struct renew_boat *boat, struct text_builder *out)
{
    if (boat->right == boat->of && boat->of > 0)
        text_add_format(out, "%s: all %zu cards hang as recorded\n", boat->boat, boat->right);
    else
        text_add_format(out, "%s: %zu of %zu cards hang as recorded\n", boat->boat, boat->right,
                        boat->of);
    for (size_t i = 0; i < boat->count; i++)
        if (boat->findings[i].kind != RENEW_NEVER)
            finding_text_add(&boat->findings[i], out);
    never_add(boat, out);
}

static void boat_print_renew(const struct renew_boat *boat, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    if (boat->state == RENEW_NOT_JUDGED)
        text_add_format(&out, "%s: NOT JUDGED: errors in her file or in the base's; %zu cards "
                        "hang, and nothing tells whether they are true\n", boat->boat,
                        boat->hanging);
    else if (boat->state == RENEW_GONE)
        text_add_format(&out, "%s: TAKE DOWN %zu card%s: the base has no such boat any more\n",
                        boat->boat, boat->hanging, boat->hanging == 1 ? "" : "s");
    else
        boat_text_add(boat, &out);
    told_print(&out);
}

/* ---- kept for JSON ---- */

static const char *renew_kept(struct arena *arena, const char *text)
{
    return text == NULL ? NULL : arena_copy(arena, text, strlen(text));
}

static struct renew_finding finding_kept(const struct renew_finding *finding,
                                         struct arena *arena)
{
    const char *const *reasons = finding->reasons.at;
    const char **copies = arena_array(arena, finding->reasons.count + 1, sizeof *copies);
    for (size_t i = 0; i < finding->reasons.count; i++)
        copies[i] = renew_kept(arena, reasons[i]);
    return (struct renew_finding){
        finding->kind, renew_kept(arena, finding->card), renew_kept(arena, finding->name),
        renew_kept(arena, finding->language), NULL, renew_kept(arena, finding->code),
        renew_kept(arena, finding->now), renew_kept(arena, finding->place),
        renew_kept(arena, finding->printed), renew_kept(arena, finding->on),
        renew_kept(arena, finding->why), {copies, finding->reasons.count}};
}

static void boat_keep(struct renewing *renewing, const struct renew_boat *boat)
{
    struct arena *arena = renewing->fleet->arena;
    struct renew_boat kept = *boat;
    kept.boat = renew_kept(arena, boat->boat);
    kept.findings = arena_array(arena, boat->count + 1, sizeof *kept.findings);
    for (size_t i = 0; i < boat->count; i++)
        kept.findings[i] = finding_kept(&boat->findings[i], arena);
    renewing->told = arena_grow(arena, renewing->told, renewing->told_count,
                                &renewing->told_room, sizeof *renewing->told);
    renewing->told[renewing->told_count++] = kept;
}

void renew_boat_tell(struct renewing *renewing, const struct renew_boat *boat)
{
    if (renewing->options->json)
        boat_keep(renewing, boat);
    else
        boat_print_renew(boat, renewing->fleet->arena);
}

/* ---- as JSON ---- */

struct finding_object { const char *kind; struct renew_finding of; };

#define AT(member) offsetof(struct finding_object, member)
static const struct json_member finding_members[] = {
    {"finding", JSON_TEXT, AT(kind), NULL, NULL, NULL},
    {"card", JSON_TEXT, AT(of.card), NULL, NULL, "its id"},
    {"name", JSON_TEXT, AT(of.name), NULL, NULL, NULL},
    {"language", JSON_TEXT, AT(of.language), NULL, NULL, NULL},
    {"code", JSON_TEXT_OR_NULL, AT(of.code), NULL, NULL, "of what hangs or was printed"},
    {"now", JSON_TEXT_OR_NULL, AT(of.now), NULL, NULL, "the code of today, where it is another"},
    {"place", JSON_TEXT_OR_NULL, AT(of.place), NULL, NULL, "where it hangs"},
    {"printed", JSON_TEXT_OR_NULL, AT(of.printed), NULL, NULL, "the day"},
    {"on", JSON_TEXT_OR_NULL, AT(of.on), NULL, NULL, "the day on which it changes by itself"},
    {"why", JSON_TEXT_OR_NULL, AT(of.why), NULL, NULL, NULL},
    {"reasons", JSON_TEXTS, AT(of.reasons), NULL, NULL, "what is another now"},
};
#undef AT
static const struct json_shape finding_shape = {"finding", sizeof(struct finding_object),
                                                MEMBERS_OF(finding_members)};

struct renew_boat_object {
    const char *boat, *state;
    size_t right, of, hanging;
    struct json_list findings;
};

#define AT(member) offsetof(struct renew_boat_object, member)
static const struct json_member renew_boat_members[] = {
    {"boat", JSON_TEXT, AT(boat), NULL, NULL, NULL},
    {"state", JSON_TEXT, AT(state), NULL, NULL, "judged, not_judged, or gone from the base"},
    {"right", JSON_COUNT, AT(right), NULL, NULL, "cards that hang as recorded"},
    {"of", JSON_COUNT, AT(of), NULL, NULL, NULL},
    {"hanging", JSON_COUNT, AT(hanging), NULL, NULL, "cards that hang by the register"},
    {"findings", JSON_LIST, AT(findings), &finding_shape, NULL, NULL},
};
#undef AT
static const struct json_shape renew_boat_shape = {"boat", sizeof(struct renew_boat_object),
                                                   MEMBERS_OF(renew_boat_members)};

struct renew_object {
    const char *format, *base, *date;
    struct json_list boats;
};

#define AT(member) offsetof(struct renew_object, member)
static const struct json_member renew_members[] = {
    {"format", JSON_TEXT, AT(format), NULL, NULL, NULL},
    {"base", JSON_TEXT, AT(base), NULL, NULL, "the folder as it was named"},
    {"date", JSON_TEXT, AT(date), NULL, NULL, "today"},
    {"boats", JSON_LIST, AT(boats), &renew_boat_shape, NULL, NULL},
};
#undef AT
static const struct json_shape renew_shape = {"renew", sizeof(struct renew_object),
                                              MEMBERS_OF(renew_members)};

static struct json_list finding_objects_of(const struct renew_boat *boat, struct arena *arena)
{
    struct finding_object *rows = arena_array(arena, boat->count + 1, sizeof *rows);
    for (size_t i = 0; i < boat->count; i++)
        rows[i] = (struct finding_object){
            choice_word(renew_kind_words, boat->findings[i].kind), boat->findings[i]};
    return (struct json_list){rows, boat->count};
}

void renew_json_print(const struct renewing *renewing)
{
    static const char *const states[] = {[RENEW_STATE_NONE] = "", [RENEW_JUDGED] = "judged",
                                         [RENEW_NOT_JUDGED] = "not_judged",
                                         [RENEW_GONE] = "gone"};
    struct arena *arena = renewing->fleet->arena;
    struct renew_boat_object *boats = arena_array(arena, renewing->told_count + 1, sizeof *boats);
    for (size_t i = 0; i < renewing->told_count; i++) {
        const struct renew_boat *boat = &renewing->told[i];
        boats[i] = (struct renew_boat_object){boat->boat, states[boat->state], boat->right,
                                              boat->of, boat->hanging,
                                              finding_objects_of(boat, arena)};
    }
    const struct renew_object whole = {RENEW_FORMAT, renewing->options->base,
                                       date_text(arena, renewing->options->today),
                                       {boats, renewing->told_count}};
    json_print(&renew_shape, &whole, arena);
}
