/* zone_list.h - the zones of a boat, one row each (room: record).
 * Columns: key, family, side, from and to in hundredths of the hull from the
 * bow, level, hulls that have it, in a hull on catamarans?, a landmark of the plan?, a locker
 * where vapour lies?, a room, which a boat may have or not? A zone without a side of its own
 * takes the item's. */
#ifndef MAYDECK_ZONE_LIST_H
#define MAYDECK_ZONE_LIST_H

#define ZONE_LIST(X) \
    X(pulpit, pulpit, NONE, 0, 3, DECK, ANY, false, false, false, false) \
    X(anchor_locker, anchor_locker, NONE, 2, 10, DECK, ANY, false, false, true, false) \
    X(forepeak, forepeak, NONE, 5, 15, BELOW, ANY, true, false, false, true) \
    X(forward_cabin, forward_cabin, NONE, 12, 35, BELOW, ANY, true, true, false, true) \
    X(forward_heads, forward_heads, NONE, 25, 40, BELOW, ANY, true, false, false, true) \
    X(mast, mast, NONE, 38, 45, DECK, ANY, false, false, false, false) \
    X(saloon, saloon, NONE, 35, 55, BELOW, ANY, false, true, false, true) \
    X(galley, galley, NONE, 45, 62, BELOW, ANY, false, true, false, true) \
    X(navigation_station, navigation_station, NONE, 45, 62, BELOW, ANY, false, false, false, \
      true) \
    X(aft_heads, aft_heads, NONE, 55, 68, BELOW, ANY, true, false, false, true) \
    X(companionway, companionway, NONE, 58, 66, BELOW, ANY, false, false, false, false) \
    X(engine_space, engine_space, NONE, 55, 72, BELOW, ANY, false, true, false, false) \
    X(engine_space_port, engine_space, PORT, 80, 98, BELOW, CATAMARAN, true, true, false, false) \
    X(engine_space_starboard, engine_space, STARBOARD, 80, 98, BELOW, CATAMARAN, true, true, \
      false, false) \
    X(aft_cabin, aft_cabin, NONE, 62, 90, BELOW, ANY, true, true, false, true) \
    X(aft_cabin_port, aft_cabin, PORT, 62, 90, BELOW, ANY, true, true, false, true) \
    X(aft_cabin_starboard, aft_cabin, STARBOARD, 62, 90, BELOW, ANY, true, true, false, true) \
    X(cockpit, cockpit, NONE, 66, 92, DECK, ANY, false, true, false, false) \
    X(cockpit_locker, cockpit_locker, NONE, 68, 95, DECK, ANY, false, false, true, false) \
    X(cockpit_locker_port, cockpit_locker, PORT, 68, 95, DECK, ANY, false, false, true, false) \
    X(cockpit_locker_starboard, cockpit_locker, STARBOARD, 68, 95, DECK, ANY, false, false, \
      true, false) \
    X(lazarette, lazarette, NONE, 90, 98, DECK, ANY, false, false, true, false) \
    X(gas_locker, gas_locker, NONE, 85, 97, DECK, ANY, false, false, true, false) \
    X(steering_gear, steering_gear, NONE, 92, 98, BELOW, ANY, true, false, false, false) \
    X(pushpit, pushpit, NONE, 95, 100, DECK, ANY, true, false, false, false) \
    X(transom, transom, NONE, 98, 100, DECK, ANY, false, false, false, false) \
    X(bathing_platform, bathing_platform, NONE, 98, 105, DECK, ANY, false, false, false, false) \
    X(foredeck, foredeck, NONE, 5, 35, DECK, ANY, false, false, false, false) \
    X(side_deck, side_deck, NONE, 30, 80, DECK, ANY, true, false, false, false) \
    X(side_deck_port, side_deck, PORT, 30, 80, DECK, ANY, true, false, false, false) \
    X(side_deck_starboard, side_deck, STARBOARD, 30, 80, DECK, ANY, true, false, false, false) \
    X(coachroof, coachroof, NONE, 30, 60, DECK, ANY, false, false, false, false) \
    X(bilge, bilge, NONE, 40, 60, BELOW, ANY, true, false, false, false) \
    X(tank_space, tank_space, NONE, 30, 75, BELOW, ANY, true, false, false, false) \
    X(port_hull, port_hull, PORT, 0, 100, BELOW, MULTIHULL, true, false, false, true) \
    X(starboard_hull, starboard_hull, STARBOARD, 0, 100, BELOW, MULTIHULL, true, false, false, \
      true) \
    X(bridgedeck, bridgedeck, NONE, 35, 70, BELOW, CATAMARAN, false, true, false, true) \
    X(trampoline, trampoline, NONE, 5, 25, DECK, MULTIHULL, false, true, false, false) \
    X(hull_step, hull_step, NONE, 92, 100, DECK, CATAMARAN, true, false, false, false) \
    X(hull_step_port, hull_step, PORT, 92, 100, DECK, CATAMARAN, true, false, false, false) \
    X(hull_step_starboard, hull_step, STARBOARD, 92, 100, DECK, CATAMARAN, true, false, false, \
      false) \
    X(flybridge, flybridge, NONE, 55, 70, TOP, ANY, false, false, false, false) \
    X(escape_hatch_hull, escape_hatch_hull, NONE, 45, 65, BELOW, CATAMARAN, true, false, \
      false, false) \
    X(escape_hatch_hull_port, escape_hatch_hull, PORT, 45, 65, BELOW, CATAMARAN, true, false, \
      false, false) \
    X(escape_hatch_hull_starboard, escape_hatch_hull, STARBOARD, 45, 65, BELOW, CATAMARAN, \
      true, false, false, false) \
    X(crossbeam_aft, crossbeam_aft, NONE, 90, 100, DECK, MULTIHULL, false, false, false, false)

#endif
