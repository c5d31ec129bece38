/* overboard.c - a person in the water: distances, sight, drift (room: figure).
 * Holds no survival times: they vary too much, and a short one may end a search. */
#include "overboard.h"

#include <math.h>

#include "units.h"

double distance_run_m(double speed_kn, double seconds)
{
    return speed_kn * MPS_PER_KN * seconds;
}

bool head_hidden_beyond_m(double eye_m, double wave_m, double wave_length_m, double head_m,
                          double *metres)
{
    if (wave_m <= head_m)
        return false;
    *metres = (eye_m + wave_m / 2.0 - head_m) * wave_length_m / (2.0 * (wave_m - head_m));
    return true;
}

double sweep_corrected_nm(double sweep_nm, double weather_factor, double fatigue_factor)
{
    return sweep_nm * weather_factor * fatigue_factor;
}

/* ---- drift ---- */

/* Coefficients of the drift tables made for search planning. */
static const struct { double slope_percent, offset_cmps; } leeways[] = {
    [DRIFTER_PERSON] = {0.96, 0.0},
    [DRIFTER_PERSON_VEST] = {0.48, 0.0},
    [DRIFTER_PERSON_SITTING] = {1.60, -3.98},
    [DRIFTER_RAFT_DROGUE] = {1.91, 0.90},
    [DRIFTER_RAFT] = {3.75, -2.30},
    [DRIFTER_YACHT] = {5.23, 0.0},
};

double leeway_mps(enum drifter drifter, double wind_kn)
{
    double leeway = leeways[drifter].slope_percent / 100.0 * wind_kn * MPS_PER_KN +
                    leeways[drifter].offset_cmps / 100.0;
    return leeway < 0.0 ? 0.0 : leeway;
}

double separation_m_per_min(double wind_kn)
{
    return (leeway_mps(DRIFTER_YACHT, wind_kn) - leeway_mps(DRIFTER_PERSON, wind_kn)) *
           SECONDS_PER_MINUTE;
}

/* ---- manoeuvres ---- */

double half_turn_s(double radius_m, double speed_kn)
{
    return PI * radius_m / (speed_kn * MPS_PER_KN);
}

double full_circle_s(double radius_m, double speed_kn)
{
    return 2.0 * half_turn_s(radius_m, speed_kn);
}

double half_turn_offset_m(double radius_m)
{
    return 2.0 * radius_m;
}

double reach_and_return_farthest_m(const struct reach_and_return *run)
{
    return distance_run_m(run->out_kn, run->reaction_s + run->run_off_s);
}

double reach_and_return_s(const struct reach_and_return *run)
{
    return run->reaction_s + run->run_off_s + run->turn_s +
           reach_and_return_farthest_m(run) / (run->back_kn * MPS_PER_KN);
}
