/* stamp_limits.c - how far ahead the date stamped on a kind of gear can lie at most, and by
 * whose word (room: figure). It tells a slip of the pen from a stamp and says of no piece how long
 * it is good: each limit is longer than any that was heard of, so that no true stamp is doubted. */
#include "gear_date.h"

#define HEARD "trade practice: "
#define YEARS(years) (12 * (years))

static const struct stamp_limit stamp_limits[] = {
    /* its next service */
    {ITEM_liferaft, GEAR_service_due, YEARS(5),
     HEARD "a service card gives one to three years"},
    {ITEM_lifejacket, GEAR_service_due, YEARS(5), HEARD "serviced every year or two"},
    {ITEM_engine_extinguisher, GEAR_service_due, YEARS(12),
     "United States Coast Guard on disposable extinguishers (ACN 002/22): twelve years from "
     "making, the longest of all"},
    {ITEM_fire_extinguisher, GEAR_service_due, YEARS(12),
     "United States Coast Guard on disposable extinguishers (ACN 002/22): twelve years from "
     "making, the longest of all"},
    {ITEM_fixed_extinguisher, GEAR_service_due, YEARS(12),
     HEARD "weighed every year, its bottle tried every ten"},
    {ITEM_hydrostatic_release, GEAR_service_due, YEARS(4),
     "makers: four years from making at most"},
    {ITEM_first_aid_kit, GEAR_service_due, YEARS(10), HEARD "gone through every year"},
    {ITEM_grab_bag, GEAR_service_due, YEARS(10), HEARD "gone through every year"},

    /* its end */
    {ITEM_hydrostatic_release, GEAR_expires, YEARS(4), "makers: four years from making at most"},
    {ITEM_flares, GEAR_expires, YEARS(6),
     "United States Coast Guard: 42 months from making; elsewhere about as long"},
    {ITEM_epirb, GEAR_expires, YEARS(12),
     "Australian guidance for beacons: a battery is good for five to ten years"},
    {ITEM_personal_beacon, GEAR_expires, YEARS(12),
     "Australian guidance for beacons: a battery is good for five to ten years"},
    {ITEM_sart, GEAR_expires, YEARS(12),
     "Australian guidance for beacons: a battery is good for five to ten years"},
    {ITEM_epirb, GEAR_service_due, YEARS(12),
     "Australian guidance for beacons: a battery is good for five to ten years"},
    {ITEM_personal_beacon, GEAR_service_due, YEARS(12),
     "Australian guidance for beacons: a battery is good for five to ten years"},
    {ITEM_sart, GEAR_service_due, YEARS(12),
     "Australian guidance for beacons: a battery is good for five to ten years"},
    {ITEM_smoke_alarm, GEAR_expires, YEARS(12), HEARD "replaced after ten years"},
    {ITEM_co_alarm, GEAR_expires, YEARS(12), HEARD "good for five to ten years"},
    {ITEM_gas_alarm, GEAR_expires, YEARS(12), HEARD "good for five to ten years"},
    {ITEM_first_aid_kit, GEAR_expires, YEARS(12), HEARD "medicines are good for a few years"},
    {ITEM_mob_light, GEAR_expires, YEARS(12), HEARD "its battery is good for a few years"},
};

static const struct stamp_limit other_stamps = {
    ITEM_NONE, GEAR_FIELD_NONE, YEARS(25), HEARD "no gear of a boat has a stamp that far ahead"};

enum { STAMP_LIMITS = sizeof stamp_limits / sizeof *stamp_limits };

const struct stamp_limit *stamp_limit_of(enum item_key item, enum gear_field field)
{
    for (size_t i = 0; i < STAMP_LIMITS; i++)
        if (stamp_limits[i].item == item && stamp_limits[i].field == field)
            return &stamp_limits[i];
    return &other_stamps;
}

const struct stamp_limit *stamp_limit_at(size_t index)
{
    if (index < STAMP_LIMITS)
        return &stamp_limits[index];
    return index == STAMP_LIMITS ? &other_stamps : NULL;
}
