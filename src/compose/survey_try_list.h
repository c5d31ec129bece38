/* survey_try_list.h - gear that nobody brings into its states for a trial, since that spends it,
 * sends something, or lets water in (room: compose). Columns: item, what is said instead:
 * LOOK, it is looked at alone; TEST, it has a test of its own, and BEACON, one that sends nothing;
 * RADIO, it is listened to. Private to src/compose. */
#ifndef MAYDECK_SURVEY_TRY_LIST_H
#define MAYDECK_SURVEY_TRY_LIST_H

#define SURVEY_TRY_LIST(X) \
    X(fire_extinguisher, LOOK) \
    X(engine_extinguisher, LOOK) \
    X(fixed_extinguisher, LOOK) \
    X(liferaft, LOOK) \
    X(hydrostatic_release, LOOK) \
    X(danbuoy, LOOK) \
    X(flares, LOOK) \
    X(mob_button, LOOK) \
    X(escape_hatch, LOOK) \
    X(epirb, BEACON) \
    X(personal_beacon, BEACON) \
    X(sart, BEACON) \
    X(aed, TEST) \
    X(smoke_alarm, TEST) \
    X(co_alarm, TEST) \
    X(gas_alarm, TEST) \
    X(vhf_dsc, RADIO) \
    X(vhf_handheld, RADIO)

#endif
