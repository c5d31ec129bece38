/* steps_fit.c - the sizes and the form that the steps of a card take: rows as large as they can
 * be, then headlines (room: layout). Rows of lines are the calmest: others stand only where they
 * make type larger that is read, or where nothing else has room. */
#include "measures.h"
#include "rows.h"

struct fitting {
    const struct pen *pen;
    struct area area;
    struct step_sizes sizes;      /* of the last try */
    struct laid_steps steps;      /* what came of it */
};

/* Title, headlines and words are told apart by size: a headline's command is an eighth taller
 * than the largest words below it, and more. */
#define HEADLINE_OVER_PLACE(size) ((size) * 8 / 7 + 1)

static mpt headline_least(const struct pen *pen, mpt row)
{
    mpt floor = size_rule(pen->paper, ROLE_HEADLINE).floor;
    mpt over = HEADLINE_OVER_PLACE(row_setting_make(pen, row, 0).place_size);
    return over > floor ? over : floor;
}

static mpt headline_most(const struct pen *pen, mpt row)
{
    mpt aim = size_rule(pen->paper, ROLE_HEADLINE).aim;
    mpt share = row / 1000 * HEADLINE_MOST, least = headline_least(pen, row);
    mpt most = share < aim ? share : aim;
    return most > least ? most : least;
}

static bool sizes_fit(struct fitting *fitting)
{
    fitting->steps = steps_lay(fitting->pen, fitting->sizes, fitting->area.width);
    return fitting->steps.height <= fitting->area.height && fitting->steps.excess <= 0;
}

static bool row_fits_at(void *of, mpt row)
{
    struct fitting *fitting = of;
    fitting->sizes.row = row;
    fitting->sizes.headline = headline_least(fitting->pen, row);
    return sizes_fit(fitting);
}

static bool headline_fits_at(void *of, mpt headline)
{
    struct fitting *fitting = of;
    fitting->sizes.headline = headline;
    return sizes_fit(fitting);
}

/* The largest rows of that form; 0: it has no room at its floor. */
static mpt row_of_forms(struct fitting *fitting, enum row_forms forms)
{
    struct size_rule rule = size_rule(fitting->pen->paper, ROLE_ROW);
    fitting->sizes.forms = forms;
    mpt row = size_largest(rule, SIZE_STEP, row_fits_at, fitting);
    return row > rule.floor || row_fits_at(fitting, row) ? row : 0;
}

/* Larger by so much, a form is worth it that is less calm. */
#define WORTH_BY_STEP (MPT_PER_POINT * 9 / 10)
#define WORTH_BY_ROW (MPT_PER_POINT * 45 / 100)

static bool is_worth(mpt row, mpt calmer, mpt by)
{
    return row > 0 && (calmer == 0 || row >= calmer + by);
}

/* Which form, and its rows; 0: none has room. */
static mpt form_choose(struct fitting *fitting, enum row_forms *forms)
{
    mpt lines = row_of_forms(fitting, FORMS_OF_LINES);
    mpt by_step = row_of_forms(fitting, FORMS_BY_STEP);
    mpt by_row = row_of_forms(fitting, FORMS_BY_ROW);
    bool rowwise = is_worth(by_row, by_step, WORTH_BY_ROW);
    mpt best = rowwise ? by_row : by_step;
    *forms = rowwise ? FORMS_BY_ROW : FORMS_BY_STEP;
    if (!is_worth(best, lines, WORTH_BY_STEP)) {
        best = lines;
        *forms = FORMS_OF_LINES;
    }
    if (best > 0)
        return best;
    *forms = FORMS_BARE;
    return row_of_forms(fitting, FORMS_BARE);
}

struct laid_steps steps_fit(const struct pen *pen, struct area area)
{
    struct fitting fitting = {.pen = pen, .area = area};
    enum row_forms forms;
    mpt row = form_choose(&fitting, &forms);
    mpt floor = size_rule(pen->paper, ROLE_ROW).floor;
    fitting.sizes.forms = forms;
    fitting.sizes.row = row > 0 ? row : floor;
    struct size_rule rule = {headline_least(pen, fitting.sizes.row),
                             headline_most(pen, fitting.sizes.row), 0};
    headline_fits_at(&fitting, row > 0 ? size_largest(rule, SIZE_STEP, headline_fits_at, &fitting)
                                       : rule.floor);
    return fitting.steps;
}
