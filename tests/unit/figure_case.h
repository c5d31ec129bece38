/* figure_case.h - comparing numbers with published vectors, for the tests of the
 * figure room. */
#ifndef MAYDECK_TEST_FIGURE_CASE_H
#define MAYDECK_TEST_FIGURE_CASE_H

#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <math.h>

#define ROWS(table) (sizeof(table) / sizeof *(table))

/* Equal to the four significant digits that vectors are given with. */
static inline void assert_four_digits(const char *what, size_t row, double expected, double found)
{
    double unit = pow(10.0, floor(log10(fabs(expected) + 1e-300)) - 3.0);
    double slack = fabs(expected) < 1e-12 ? 1e-12 : 0.5000001 * unit;
    if (!(fabs(found - expected) <= slack))
        fail_msg("%s, row %zu: expected %.6g, found %.6g", what, row, expected, found);
}

#endif
