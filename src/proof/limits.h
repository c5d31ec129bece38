/* limits.h - the numbers pages are judged by: the proofreader's own, written anew from
 * what cards must be, never taken from the room that lays pages out. Private to
 * src/proof. */
#ifndef MAYDECK_LIMITS_H
#define MAYDECK_LIMITS_H

#include <stdbool.h>

#include "paper.h"

/* Sizes of type that must be told apart at a glance (G5). */
enum tier { TIER_TITLE, TIER_HEADLINE, TIER_TEXT, TIER_SMALL, TIER_COUNT };

/* What words of one role must be read at on a paper. */
struct role_limit {
    const char *word;                       /* what the role is called in a finding */
    enum tier tier;
    mpt floor, aim;                         /* size of type: never below, aimed at */
    double capital_mm;                      /* least height of capitals; 0: none asked */
    double capitals_read_mm, small_read_mm; /* distance they are read at; 0: none asked */
    bool one_line;                          /* needs no way back to a next line (G6) */
};

/* The limits on that paper: of words that are read in an emergency sizes and distances grow
 * with the distance the paper is read at. */
struct role_limit role_limit(const struct paper *paper, enum page_role role);

/* Where things may stand on a page: inside what printers cannot print, a punched hole
 * takes and a laminated edge needs (G1), whatever margins the paper has. */
struct area safe_area(const struct page *page);

/* The same for the marks that tell what kind of copy a page is: they may stand beside the hole. */
struct area marks_area(const struct page *page);

/* The hole with the lamination round it that must stay free; of no size where the paper is
 * not punched. */
struct area punched_area(const struct page *page);

#endif
