/* list_ids.c - ids by which messages, options and programs name what there is: checks, page rules,
 * figures, exit statuses (room: app). */
#include "lists.h"

#include "figure.h"
#include "proof.h"
#include "rules.h"

/* ---- checks ---- */

struct check_listed {
    const char *check, *severity, *sentence, *source;
    bool family;
};

#define AT(member) offsetof(struct check_listed, member)
static const struct json_member check_listed_members[] = {
    {"check", JSON_TEXT, AT(check), NULL, NULL, "as problems and silenced: name it"},
    {"severity", JSON_TEXT, AT(severity), NULL, NULL, "of a family: the worst"},
    {"family", JSON_FLAG, AT(family), NULL, NULL,
     "all that a stage of the work has to say, under one id"},
    {"sentence", JSON_TEXT, AT(sentence), NULL, NULL, "what is wrong when it speaks"},
    {"source", JSON_TEXT, AT(source), NULL, NULL, "whose rule it is"},
};
#undef AT
static const struct json_shape check_listed_shape = {"check", sizeof(struct check_listed),
                                                     MEMBERS_OF(check_listed_members)};

struct list_made list_checks(const struct listing *listing)
{
    size_t count = 0;
    while (check_at(count) != NULL)
        count++;
    struct check_listed *rows = arena_array(listing->arena, count, sizeof *rows);
    for (size_t i = 0; i < count; i++) {
        const struct check *check = check_at(i);
        rows[i] = (struct check_listed){check->id, severity_word(check->severity),
                                        check->sentence, check->source, check->family};
    }
    return (struct list_made){&check_listed_shape, {rows, count}};
}

/* ---- page rules ---- */

struct rule_listed {
    const char *rule, *breach, *judge, *sentence, *limit, *exempt, *source;
};

#define AT(member) offsetof(struct rule_listed, member)
static const struct json_member rule_members[] = {
    {"rule", JSON_TEXT, AT(rule), NULL, NULL, "of several sentences under one id, one each"},
    {"breach", JSON_TEXT, AT(breach), NULL, NULL, "what a breach of it does"},
    {"judge", JSON_TEXT, AT(judge), NULL, NULL, "who decides it"},
    {"sentence", JSON_TEXT, AT(sentence), NULL, NULL, "what a card must be"},
    {"limit", JSON_TEXT, AT(limit), NULL, NULL, NULL},
    {"exempt", JSON_TEXT, AT(exempt), NULL, NULL, "what is exempt and why, or who judges"},
    {"source", JSON_TEXT, AT(source), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape rule_shape = {"rule", sizeof(struct rule_listed),
                                             MEMBERS_OF(rule_members)};

struct list_made list_rules(const struct listing *listing)
{
    static const char *const breaches[] = {
        [PROOF_ERROR] = "error", [PROOF_NOTE] = "note", [PROOF_AIM] = "aim"};
    static const char *const judges[] = {
        [PROOF_PAGE] = "page", [PROOF_SET] = "set", [PROOF_ELSEWHERE] = "elsewhere",
        [PROOF_PERSON] = "person"};
    struct rule_listed *rows = arena_array(listing->arena, RULE_COUNT, sizeof *rows);
    for (enum proof_rule_key key = 0; key < RULE_COUNT; key++) {
        const struct proof_rule *rule = proof_rule(key);
        rows[key] = (struct rule_listed){rule->id, breaches[rule->severity],
                                         judges[rule->judge], rule->sentence, rule->limit,
                                         rule->exempt, rule->source};
    }
    return (struct list_made){&rule_shape, {rows, RULE_COUNT}};
}

/* ---- figures ---- */

struct figure_listed {
    const char *figure, *verdict, *title, *reads;
};

#define AT(member) offsetof(struct figure_listed, member)
static const struct json_member figure_members[] = {
    {"figure", JSON_TEXT, AT(figure), NULL, NULL, "as why --figure takes it"},
    {"verdict", JSON_TEXT, AT(verdict), NULL, NULL,
     "F: a fact; A: an estimate; B: on no card, for the base; N: not printed"},
    {"title", JSON_TEXT, AT(title), NULL, NULL, NULL},
    {"reads", JSON_TEXT, AT(reads), NULL, NULL, "from which fields"},
};
#undef AT
static const struct json_shape figure_listed_shape = {"figure", sizeof(struct figure_listed),
                                                      MEMBERS_OF(figure_members)};

struct list_made list_figures(const struct listing *listing)
{
    struct figure_listed *rows = arena_array(listing->arena, figure_count(), sizeof *rows);
    for (size_t i = 0; i < figure_count(); i++) {
        const struct figure *figure = figure_at(i);
        rows[i] = (struct figure_listed){
            figure->id, text_format(listing->arena, "%c", (char)figure->verdict), figure->title,
            figure->reads};
    }
    return (struct list_made){&figure_listed_shape, {rows, figure_count()}};
}

/* ---- exit statuses ---- */

struct status_listed {
    const char *status, *word, *meaning;
};

#define AT(member) offsetof(struct status_listed, member)
static const struct json_member status_members[] = {
    {"status", JSON_TEXT, AT(status), NULL, NULL, NULL},
    {"word", JSON_TEXT, AT(word), NULL, NULL, NULL},
    {"meaning", JSON_TEXT, AT(meaning), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape status_shape = {"status", sizeof(struct status_listed),
                                               MEMBERS_OF(status_members)};

struct list_made list_statuses(const struct listing *listing)
{
    static const struct { enum exit_status status; const char *word, *meaning; } all[] = {
        {EXIT_GOOD, "good", "all that was asked for was done"},
        {EXIT_FOUND, "found", "a card is held back, an input is wrong, or there is something to "
                              "do"},
        {EXIT_USE, "use", "the command line is wrong, or names what is not there"},
        {EXIT_SYSTEM, "system", "a file, the disk, memory or standard output failed"},
    };
    enum { STATUSES = sizeof all / sizeof *all };
    struct status_listed *rows = arena_array(listing->arena, STATUSES, sizeof *rows);
    for (size_t i = 0; i < STATUSES; i++)
        rows[i] = (struct status_listed){text_format(listing->arena, "%d", (int)all[i].status),
                                         all[i].word, all[i].meaning};
    return (struct list_made){&status_shape, {rows, STATUSES}};
}
