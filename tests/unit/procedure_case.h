/* procedure_case.h - a procedure with the section that a test is about. */
#ifndef MAYDECK_PROCEDURE_CASE_H
#define MAYDECK_PROCEDURE_CASE_H

#include "record_test.h"

#include "procedure.h"
#include "radio.h"

#define SOURCES \
    "sources:\n" \
    "  - {key: S1, issuer: O, id: N1, title: T, tag: N1, read: 2026, status: current," \
    " grade: VA}\n" \
    "  - {key: S2, issuer: O, id: N2, title: T, tag: N2, read: 2026, status: superseded," \
    " grade: VB}\n" \
    "  - {key: S3, issuer: O, id: N3, title: T, tag: N3, read: 2026, status: current," \
    " grade: VC}\n"

/* What a test adds begins in line 8. */
static inline const struct procedure *procedure_of(const char *text)
{
    static const char head[] = "procedure: trial\nnumber: 10\ntitle: Trial\nsubject: TRIAL\n"
                               "symbol: flame\nstripe: fire\nsigns: [Smoke]\n";
    const struct authorities *authorities =
        authorities_read(file_of("sources.yaml", SOURCES), test.arena, test.problems);
    const char *whole = text_format(test.arena, "%s%s", head, text);
    return procedure_read(file_of("trial.yaml", whole), authorities, test.arena, test.problems);
}

/* What every card needs, so that only the fault of the test is told. */
#define STEPS "steps: [{id: stop, act: \"**STOP**\", sources: [S1]}]\n"
#define CAUTIONS "cautions: [{say: Hot., sources: [S1]}]\n"

static inline void refused(const char *section, int line, const char *what, const char *remedy)
{
    test.problems = problems_new(test.arena);
    assert_null(procedure_of(section));
    expect_errors(1);
    expect_error(line, what, remedy);
}

static inline void refused_step(const char *steps, const char *what, const char *remedy)
{
    refused(text_format(test.arena, "steps:\n%s" CAUTIONS, steps), 9, what, remedy);
}

#endif
