/* assignment.c - sites to ports, each port to one site, at the least sum of costs (room:
 * layout). On a plan the sites are places, the ports are where labels stand and the costs
 * are lengths of leaders; this file knows only the numbers.
 *
 * The Hungarian method with potentials: every row (site) and column (port) has a number,
 * so that cost - row - column is never below 0 and is 0 for each pair that is chosen. A
 * chosen pair then cannot be bettered, and rows are let in one at a time, each along the
 * cheapest chain of pairs that lets go of a port and take another. */
#include "assignment.h"

#include <float.h>
#include <stdbool.h>
#include <stdint.h>

#include "promise.h"

/* Sums that differ by less than this are one sum: what rounding adds to lengths
 * of a page stays far below it. */
#define SAME_SUM 1e-6

#define NO_COLUMN SIZE_MAX

/* The state of the method. Rows and columns count from 1 here, sites and ports from 0:
 * row site + 1 and column port + 1. Column 0 is where a new row enters. */
struct solving {
    const struct costs *costs;
    double *row_potential, *column_potential;
    double *slack;                /* by column: the least reduced cost of a used row there */
    size_t *row_of;               /* by column: the row that has it; 0: it is free */
    size_t *came_from;            /* by column: the column before it on the chain */
    bool *used;                   /* by column: it is on the chain already */
    const bool *row_fixed;        /* by site: its port is settled, the row stays out */
    const bool *port_taken;       /* by port: a settled site has it, the column stays out */
};

/* What the pair costs beyond what its potentials pay; 0 for pairs that may be chosen. */
static double reduced(const struct solving *solving, size_t row, size_t column)
{
    return solving->costs->at[(row - 1) * solving->costs->ports + column - 1] -
           solving->row_potential[row] - solving->column_potential[column];
}

static bool open_column(const struct solving *solving, size_t column)
{
    return !solving->used[column] && !solving->port_taken[column - 1];
}

/* The open column of least slack, once the slacks have been lowered by what the row that
 * has column `from` would cost in each. NO_COLUMN: none is open. */
static size_t column_next(struct solving *solving, size_t from)
{
    size_t row = solving->row_of[from], best = NO_COLUMN;
    for (size_t column = 1; column <= solving->costs->ports; column++) {
        if (!open_column(solving, column))
            continue;
        double cost = reduced(solving, row, column);
        if (cost < solving->slack[column]) {
            solving->slack[column] = cost;
            solving->came_from[column] = from;
        }
        if (best == NO_COLUMN || solving->slack[column] < solving->slack[best])
            best = column;
    }
    return best;
}

/* Raises the potentials of the rows on the chain and lowers those of its columns by as
 * much: chosen pairs stay at 0, and the column of least slack comes to 0. */
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

/* Lets a row in: grows the chain from column 0 until it comes to a free column, then hands
 * each column of the chain on to the row of the one before. */
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
        promise(next != NO_COLUMN);   /* there are never fewer columns than rows */
        potentials_move(solving, solving->slack[next]);
        column = next;
    } while (solving->row_of[column] != 0);
    while (column != 0) {
        size_t before = solving->came_from[column];
        solving->row_of[column] = solving->row_of[before];
        column = before;
    }
}

/* Solves for the rows that are not fixed and writes their ports into `chosen`; the others
 * keep what `chosen` says. */
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
    bool *fixed;              /* by site: its port is settled; solving->row_fixed */
    bool *taken;              /* by port: a settled site has it; solving->port_taken */
    bool *tight;              /* by site and port: the pair may belong to a least sum */
    size_t *chosen, *trial;   /* by site: its port, and what is being tried */
    double least;             /* the least sum */
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

/* Settles site by site on the lowest port with which the least sum can still be had. The
 * method alone would take one of several assignments of equal sum by the order in which
 * it meets them, and rounding could change that from one machine to another. */
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
