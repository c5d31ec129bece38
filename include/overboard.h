/* overboard.h - a person in the water: distances, sight, drift (room: figure).
 * Pure functions. */
#ifndef MAYDECK_OVERBOARD_H
#define MAYDECK_OVERBOARD_H

#include <stdbool.h>

/* Metres run at a steady speed: also what the casualty must swim to a lifebuoy
 * thrown so many seconds late. */
double distance_run_m(double speed_kn, double seconds);

/* Metres beyond which a head in a trough is hidden behind the crests of a regular
 * wave: (e + H/2 - c) L / (2 (H - c)). Eye and head above the water each. False:
 * the wave is no higher than the head, nothing hides it. */
bool head_hidden_beyond_m(double eye_m, double wave_m, double wave_length_m, double head_m,
                          double *metres);

#define HIDDEN_PRINTED_SHARE 0.9   /* the formula is 5 to 10 % long: print this of it */

/* Width swept by a lookout, as reduced by weather and tired eyes: the product of the
 * three. The widths to begin with are recalled: never printed. */
double sweep_corrected_nm(double sweep_nm, double weather_factor, double fatigue_factor);

/* ---- drift ---- */

enum drifter {
    DRIFTER_PERSON,            /* state unknown */
    DRIFTER_PERSON_VEST,       /* upright, foam vest, conscious */
    DRIFTER_PERSON_SITTING,    /* in a buoyant jacket */
    DRIFTER_RAFT_DROGUE,       /* for 4 to 14, deep ballast */
    DRIFTER_RAFT,              /* the same without drogue */
    DRIFTER_YACHT              /* sailing yacht, bare poles, average */
};

/* Downwind leeway: slope * wind + offset, never against the wind. The slopes are those of
 * the drift tables made for search planning. Holds from 5 to 40 knots in open water
 * without a tide rip; a yacht's scatter is 0.185 m/s, a third of it at 20 knots. */
double leeway_mps(enum drifter drifter, double wind_kn);

/* How fast a stopped yacht and a casualty part, in metres a minute. A current moves
 * both and drops out. */
double separation_m_per_min(double wind_kn);

/* ---- manoeuvres ---- */

/* pi R / v, 2 pi R / v and 2 R: a steady turn without drift. */
double half_turn_s(double radius_m, double speed_kn);
double full_circle_s(double radius_m, double speed_kn);
double half_turn_offset_m(double radius_m);

struct reach_and_return {
    double out_kn, reaction_s, run_off_s, turn_s, back_kn;
};

/* v (reaction + run-off), and the sum of all parts with the way back. For the report of a
 * drill alone: no single manoeuvre was found best in trials. */
double reach_and_return_farthest_m(const struct reach_and_return *run);
double reach_and_return_s(const struct reach_and_return *run);

#endif
