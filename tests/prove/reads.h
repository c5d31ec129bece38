/* reads.h - which facts of a boat a part of a card hangs on. */
#ifndef MAYDECK_PROVE_READS_H
#define MAYDECK_PROVE_READS_H

#include "boat.h"
#include "judging.h"
#include "procedure.h"

enum { READS_MOST = 80, VALUES_MOST = 16, FIELDS_MOST = 5 };

/* A field whose value is asked for, and the values that are. */
struct field_read {
    enum gear_field field;
    const char *values[VALUES_MOST];
    size_t value_count;
    bool asked;                        /* by a condition, not by the table of hazards alone */
};

/* An item, and how finely what is recorded of it must be told apart. */
struct item_read {
    enum item_key item;
    bool limits[REACH_BELOW + 1];     /* how far one goes for it at most, as conditions ask */
    bool offered;                      /* the step works it: all places make a difference */
    bool asked;                        /* by a condition */
    bool whole;                        /* to what else is said too */
    bool beside_vapour;                /* whether it lies in a locker with vapour */
    bool apart;                        /* one piece within reach, another beyond */
    bool inside;                       /* whether it is in the space that burns */
    struct field_read fields[FIELDS_MOST];
    size_t field_count;
    bool cuts;                         /* what it takes the current of */
    /* Items that are asked for in the same lists and no other way: what is so of one and not of
     * the rest is all that a list can tell. 0: of no group. */
    unsigned long group;
    bool fitted_asked;                 /* whether she has it, wherever it is */
    bool cuts_radio, cuts_pump;        /* whether it cuts these is asked so */
};

/* What is read on a boat of that kind: what her engines, gas and rooms decide is not. */
struct reads {
    const struct boat *boat;           /* NULL: of all kinds of boats together */
    const struct procedure *procedure;
    struct item_read items[READS_MOST];
    size_t count;
    bool breaths, sting, tide;         /* asked for of her base */
    unsigned long traits;              /* a bit each of what she is that decides something */
    unsigned long of_card;             /* the same of whether the card is hers */
};

/* All that a step hangs on; words of which one is taken; who calls, and the call. */
void reads_step(struct reads *reads, const struct procedure_step *step);
void reads_said(struct reads *reads, const struct said_list *list);
void reads_panel(struct reads *reads);

/* All of them, and when the card is hers. */
void reads_procedure(struct reads *reads, const struct procedure *procedure);
void reads_condition(struct reads *reads, const struct condition *condition);

/* What she is, as far as one of the traits that are read asks, of the boat and of that space. */
struct trait_answers { unsigned long yes, no, of_space; };
struct trait_answers traits_read(const struct reads *reads, unsigned long traits,
                                 enum zone_key space);

/* NULL: nothing asks for the field. */
const struct field_read *field_of(const struct item_read *read, enum gear_field field);

struct item_read *reads_item(struct reads *reads, enum item_key item);

#endif
