/* evaluate.h - what the functions that compute a figure from a record share: the
 * inputs that were read and those that are missing. Private to src/figure. */
#ifndef MAYDECK_FIGURE_EVALUATE_H
#define MAYDECK_FIGURE_EVALUATE_H

#include "boat_facts.h"
#include "figure.h"
#include "item_fields.h"
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

/* Whose input it is, such as "boat" or "seacock C14", and which; what to record and the
 * place to tell it at, where it can be missing. */
struct input_source {
    const char *owner, *field, *about;
    struct place place;
};

/* The number, noted as input; 0 and noted as lacking where it is not given. */
double number_take(struct evaluation *evaluation, struct input_source source,
                   const struct number_value *number);

/* A word that is an input. */
void text_take(struct evaluation *evaluation, struct input_source source,
               const struct text_value *text);

/* "seacock C13". */
const char *gear_label(const struct evaluation *evaluation, const struct equipment *gear);

/* The same for facts of the record. */
double gear_number_take(struct evaluation *evaluation, const struct equipment *gear,
                        enum gear_field field);
void gear_word_take(struct evaluation *evaluation, const struct equipment *gear,
                    enum gear_field field);
double boat_number_take(struct evaluation *evaluation, enum boat_fact fact);
void boat_word_take(struct evaluation *evaluation, enum boat_fact fact);
double radio_number_take(struct evaluation *evaluation, enum radio_fact fact);

/* How many pieces the entry is: its count is noted as input where it is recorded. */
int64_t pieces_take(struct evaluation *evaluation, const struct equipment *gear);

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
