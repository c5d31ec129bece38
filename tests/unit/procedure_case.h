/* procedure_case.h - a procedure with the section that a test is about. */
#ifndef MAYDECK_PROCEDURE_CASE_H
#define MAYDECK_PROCEDURE_CASE_H

#include "record_test.h"

#include "procedure.h"
#include "radio.h"
#include "text.h"

#include <string.h>

#define SOURCES \
    "sources:\n" \
    "  - {key: S1, issuer: O, id: N1, title: T, tag: N1, read: 2026, status: current," \
    " grade: VA}\n" \
    "  - {key: S2, issuer: O, id: N2, title: T, tag: N2, read: 2026, status: superseded," \
    " grade: VB}\n" \
    "  - {key: S3, issuer: O, id: N3, title: T, tag: N3, read: 2026, status: current," \
    " grade: VC}\n"

/* What a test adds begins in line 5 of the logic, and in line 5 of the texts. */
#define LOGIC_HEAD "procedure: trial\nnumber: 10\nsymbol: flame\nstripe: fire\n"
#define TEXTS_HEAD "procedure: trial\ntitle: Trial\nsubject: TRIAL\nsigns: [Smoke]\n"

/* What each card needs for the index of cards, behind all else where the test says none of it. */
static inline const char *seen_added(const char *text, const char *logic, const char *line)
{
    bool needed = strstr(text, "\nseen") == NULL && strstr(logic, "kind: safety_plan") == NULL;
    return needed ? text_format(test.arena, "%s%s", text, line) : text;
}

/* The whole files, in as many languages as there are texts (NULL-ended). */
static inline const struct procedure *procedure_in(const char *logic, const char *const *texts)
{
    static const char *const languages[] = {"en", "xx", "yy"};
    struct procedure_text_file files[3];
    struct procedure_files all = {
        .logic = file_of("trial.yaml", seen_added(logic, logic, "seen_as: fire\n")),
        .texts = files};
    for (; texts[all.text_count] != NULL; all.text_count++) {
        const char *language = languages[all.text_count];
        files[all.text_count] = (struct procedure_text_file){
            language, file_of(text_format(test.arena, "words/%s/trial.yaml", language),
                              seen_added(texts[all.text_count], logic, "seen: [Bang]\n"))};
    }
    const struct authorities *authorities =
        authorities_read(file_of("sources.yaml", SOURCES), test.arena, test.problems);
    return procedure_read(&all, authorities, test.arena, test.problems);
}

static inline const struct procedure *procedure_of(const char *logic, const char *texts)
{
    const char *const all[] = {text_format(test.arena, TEXTS_HEAD "%s", texts), NULL};
    return procedure_in(text_format(test.arena, LOGIC_HEAD "%s", logic), all);
}

/* What every card needs, so that only the fault of the test is told. */
#define STEPS "steps: [{id: stop, sources: [S1]}]\n"
#define STEPS_TEXTS "steps: {stop: {act: \"**STOP**\"}}\n"
#define CAUTIONS "cautions: [{id: hot, sources: [S1]}]\n"
#define CAUTIONS_TEXTS "cautions: {hot: Hot.}\n"
#define ALL_TEXTS STEPS_TEXTS CAUTIONS_TEXTS

/* The one fault: where it is, what is told, and how it is mended (NULL: somehow). */
struct fault {
    int line;
    const char *what, *remedy;
};
#define FAULT(...) (&(const struct fault){__VA_ARGS__})

static inline void refused(const char *logic, const char *texts, const struct fault *fault)
{
    test.problems = problems_new(test.arena);
    assert_null(procedure_of(logic, texts));
    expect_errors(1);
    expect_error(fault->line, fault->what, fault->remedy);
}

static inline void taken(const char *logic, const char *texts)
{
    test.problems = problems_new(test.arena);
    assert_non_null(procedure_of(logic, texts));
    expect_errors(0);
}

#endif
