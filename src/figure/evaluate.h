/* evaluate.h - what the functions that compute a figure from a record share: the
 * inputs that were read and those that are missing. Private to src/figure. */
#ifndef MAYDECK_FIGURE_EVALUATE_H
#define MAYDECK_FIGURE_EVALUATE_H

#include "figure.h"
#include "text.h"

struct evaluation {
    const struct figure_record *record;
    const struct figure *figure;
    struct arena *arena;
    struct figure_input *inputs;
    struct figure_lack *lacks;
    size_t input_count, input_room, lack_count, lack_room;
    const char *reason, *before, *after;
    const struct phrase *sentence;
    struct place origin;
};

/* Whose field is read. */
struct fact_owner {
    const char *name;                    /* for people: boat, radio, seacock C13 */
    struct place place;                  /* where a field is missing that is not recorded */
    const struct field_table *fields;    /* tells how to record one; NULL: `about` does */
    const char *about;                   /* NULL: nothing tells it */
};

/* The number, noted as input; 0 and noted as lacking where it is not given. */
double number_take(struct evaluation *evaluation, const struct fact_owner *owner,
                   const char *field, const struct number_value *number);

/* "seacock C13". */
const char *gear_label(const struct evaluation *evaluation, const struct equipment *gear);

/* The same for a field of a piece of gear. */
double gear_number_take(struct evaluation *evaluation, const struct equipment *gear,
                        const char *field, const struct number_value *number);

/* How many pieces the entry is: its count is noted as input where it is recorded. */
int64_t pieces_take(struct evaluation *evaluation, const struct equipment *gear);

double boat_number_take(struct evaluation *evaluation, const char *field,
                        const struct number_value *number);

/* A word of the record that is an input. */
void text_take(struct evaluation *evaluation, const struct fact_owner *owner,
               const char *field, const struct text_value *text);

/* The boat, and the base, as owners. */
struct fact_owner boat_owner(const struct evaluation *evaluation);
struct fact_owner base_owner(const struct evaluation *evaluation);

/* The same for what a choice of a piece of gear stands for; `word` NULL: it is not given. */
void gear_word_take(struct evaluation *evaluation, const struct equipment *gear,
                    const char *field, const char *word, struct place place);

/* What is missing though no field of its own tells it; `about` says how to record it. */
void lack_take(struct evaluation *evaluation, const struct equipment *gear, const char *what,
               const char *about);

/* The gear of one kind: the first at or after *index; NULL when there is no more. */
const struct equipment *gear_of(const struct boat *boat, enum item_key item, size_t *index);

/* The figure says nothing of this boat. */
void not_applicable(struct evaluation *evaluation, const char *reason);

/* A number in words, to a thousandth; below 1 to four significant digits. */
const char *number_words(const struct evaluation *evaluation, double value);
const char *up_words(const struct evaluation *evaluation, double value);
const char *down_words(const struct evaluation *evaluation, double value);

/* ---- evaluate_pumps.c ---- */

/* Does the record say of each kind of pump whether it is fitted? Else nothing applies. */
bool pumps_recorded(struct evaluation *evaluation);

/* All pumps together, 0 for none. In a catamaran water stands in one hull, and a pump
 * serves only its own: of the hull with less, as far as the record tells. A pump whose
 * zone lies in a hull is that hull's; of others that are counted in pairs each hull has
 * half; a single one is nobody's. A hand pump may not reach the water. */
double pumps_lpm(struct evaluation *evaluation);

/* The same, to compare with: 0, and nothing applies, where there are none; 0 too where
 * an input is missing, such as the hull of a catamaran's pump. */
double pumps_take(struct evaluation *evaluation);

/* ---- the functions of the table ---- */

void evaluate_inflow(struct evaluation *evaluation);
void evaluate_worst_openings(struct evaluation *evaluation);
void evaluate_pump_rate(struct evaluation *evaluation);
void evaluate_hand_pump(struct evaluation *evaluation);
void evaluate_beat_pumps(struct evaluation *evaluation);
void evaluate_largest_hole(struct evaluation *evaluation);
void evaluate_floor_wet(struct evaluation *evaluation);
void evaluate_sinkage(struct evaluation *evaluation);

void evaluate_shelters(struct evaluation *evaluation);

void evaluate_distance_run(struct evaluation *evaluation);
void evaluate_separation(struct evaluation *evaluation);
void evaluate_discharge(struct evaluation *evaluation);
void evaluate_agent(struct evaluation *evaluation);
void evaluate_us_outfit(struct evaluation *evaluation);
void evaluate_gas_volume(struct evaluation *evaluation);
void evaluate_boat_fulls(struct evaluation *evaluation);
void evaluate_gas_limit(struct evaluation *evaluation);
void evaluate_raft_places(struct evaluation *evaluation);
void evaluate_radio_range(struct evaluation *evaluation);
void evaluate_handheld_range(struct evaluation *evaluation);

#endif
