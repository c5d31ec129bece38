/* assignment.c - which label each place on the plan is led to: least total
 * length, hence no crossing (room: layout). It knows sums of costs, not what they are costs of. */
#include "assignment.h"

#include <float.h>
#include <stdbool.h>
#include <stdint.h>

#include "promise.h"

/* Sums that differ by less than this are one sum: what rounding adds to lengths
 * of a page stays far below it. */
#define SAME_SUM 1e-6

#define NONE SIZE_MAX

/* The state of the method: rows and columns count from 1, column 0 is where a
 * new row enters. */
struct solving {
    const struct costs *costs;
    double *row_potential, *column_potential, *slack;
    size_t *row_of, *came_from;   /* by column */
    bool *used;
    const bool *row_fixed;        /* by site: rows left out of the question */
    const bool *port_taken;       /* by port: columns left out of it */
};

static double reduced(const struct solving *solving, size_t row, size_t column)
{
    return solving->costs->at[(row - 1) * solving->costs->ports + column - 1] -
           solving->row_potential[row] - solving->column_potential[column];
}

static bool open_column(const struct solving *solving, size_t column)
{
    return !solving->used[column] && !solving->port_taken[column - 1];
}

/* The free column of least slack after looking from the row that holds `from`. */
static size_t column_next(struct solving *solving, size_t from)
{
    size_t row = solving->row_of[from], best = NONE;
    for (size_t column = 1; column <= solving->costs->ports; column++) {
        if (!open_column(solving, column))
            continue;
        double cost = reduced(solving, row, column);
        if (cost < solving->slack[column]) {
            solving->slack[column] = cost;
            solving->came_from[column] = from;
        }
        if (best == NONE || solving->slack[column] < solving->slack[best])
            best = column;
    }
    return best;
}

static void potentials_move(struct solving *solving, double delta)
{
    for (size_t column = 0; column <= solving->costs->ports; column++) {
        if (solving->used[column]) {
            solving->row_potential[solving->row_of[column]] += delta;
            solving->column_potential[column] -= delta;
        } else {
            solving->slack[column] -= delta;
        }
    }
}

static void row_enter(struct solving *solving, size_t row)
{
    size_t column = 0;
    solving->row_of[0] = row;
    for (size_t i = 0; i <= solving->costs->ports; i++) {
        solving->slack[i] = DBL_MAX;
        solving->used[i] = false;
    }
    do {
        solving->used[column] = true;
        size_t next = column_next(solving, column);
        promise(next != NONE);   /* there are never fewer columns than rows */
        potentials_move(solving, solving->slack[next]);
        column = next;
    } while (solving->row_of[column] != 0);
    while (column != 0) {
        size_t before = solving->came_from[column];
        solving->row_of[column] = solving->row_of[before];
        column = before;
    }
}

/* Solves for the rows that are not fixed; the others keep what `chosen` says. */
static void rest_solve(struct solving *solving, size_t *chosen)
{
    const struct costs *costs = solving->costs;
    for (size_t i = 0; i <= costs->sites; i++)
        solving->row_potential[i] = 0;
    for (size_t i = 0; i <= costs->ports; i++) {
        solving->column_potential[i] = 0;
        solving->row_of[i] = 0;
    }
    for (size_t site = 0; site < costs->sites; site++)
        if (!solving->row_fixed[site])
            row_enter(solving, site + 1);
    for (size_t column = 1; column <= costs->ports; column++)
        if (solving->row_of[column] != 0)
            chosen[solving->row_of[column] - 1] = column - 1;
}

double assignment_sum(const struct costs *costs, const size_t *chosen)
{
    double sum = 0;
    for (size_t site = 0; site < costs->sites; site++) {
        promise(chosen[site] < costs->ports);
        sum += costs->at[site * costs->ports + chosen[site]];
    }
    return sum;
}

/* Only a pair without reduced cost can belong to another assignment of the least
 * sum: the others need not be tried. */
static bool *pairs_tight(const struct solving *solving, struct arena *arena)
{
    const struct costs *costs = solving->costs;
    bool *tight = arena_array(arena, costs->sites * costs->ports + 1, sizeof *tight);
    for (size_t site = 0; site < costs->sites; site++)
        for (size_t port = 0; port < costs->ports; port++)
            tight[site * costs->ports + port] = reduced(solving, site + 1, port + 1) <= SAME_SUM;
    return tight;
}

/* What first_of_equals works on. */
struct choosing {
    bool *fixed, *taken, *tight;
    size_t *chosen, *trial;
    double least;
};

/* Can the least sum still be had with this port for the site? Then it is chosen. */
static bool port_try(struct solving *solving, struct choosing *choosing, size_t site, size_t port)
{
    const struct costs *costs = solving->costs;
    if (choosing->taken[port] || !choosing->tight[site * costs->ports + port])
        return false;
    for (size_t i = 0; i < costs->sites; i++)
        choosing->trial[i] = choosing->chosen[i];
    choosing->trial[site] = port;
    choosing->taken[port] = true;
    rest_solve(solving, choosing->trial);
    choosing->taken[port] = false;
    if (assignment_sum(costs, choosing->trial) > choosing->least + SAME_SUM)
        return false;
    for (size_t i = 0; i < costs->sites; i++)
        choosing->chosen[i] = choosing->trial[i];
    return true;
}

/* Site by site, the lowest port with which the least sum can still be had. */
static void first_of_equals(struct solving *solving, struct choosing *choosing)
{
    for (size_t site = 0; site < solving->costs->sites; site++) {
        choosing->fixed[site] = true;
        for (size_t port = 0; port < choosing->chosen[site]; port++)
            if (port_try(solving, choosing, site, port))
                break;
        choosing->taken[choosing->chosen[site]] = true;
    }
}

void assignment_solve(const struct costs *costs, struct arena *arena, size_t *chosen)
{
    bool *fixed = arena_array(arena, costs->sites + 1, sizeof *fixed);
    bool *taken = arena_array(arena, costs->ports + 1, sizeof *taken);
    struct solving solving = {
        .costs = costs, .row_fixed = fixed, .port_taken = taken,
        .row_potential = arena_array(arena, costs->sites + 1, sizeof(double)),
        .column_potential = arena_array(arena, costs->ports + 1, sizeof(double)),
        .slack = arena_array(arena, costs->ports + 1, sizeof(double)),
        .row_of = arena_array(arena, costs->ports + 1, sizeof(size_t)),
        .came_from = arena_array(arena, costs->ports + 1, sizeof(size_t)),
        .used = arena_array(arena, costs->ports + 1, sizeof(bool))};
    rest_solve(&solving, chosen);
    struct choosing choosing = {
        .fixed = fixed, .taken = taken, .tight = pairs_tight(&solving, arena), .chosen = chosen,
        .trial = arena_array(arena, costs->sites + 1, sizeof(size_t)),
        .least = assignment_sum(costs, chosen)};
    first_of_equals(&solving, &choosing);
}
