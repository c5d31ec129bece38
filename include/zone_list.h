/* zone_list.h - the zones of a boat, one row each (room: record).
 * Columns: key, family, side, from and to in hundredths of the hull from the bow, level, traits
 * (enum zone_trait in zone.h). A zone without a side of its own takes the item's. */
#ifndef MAYDECK_ZONE_LIST_H
#define MAYDECK_ZONE_LIST_H

#define ZONE_LIST(X) \
    X(pulpit, pulpit, NONE, 0, 3, DECK, NARROW) \
    X(anchor_locker, anchor_locker, NONE, 2, 10, DECK, LOCKER | NARROW) \
    X(forepeak, forepeak, NONE, 5, 15, BELOW, IN_HULLS | NARROW | ROOM) \
    X(forward_cabin, forward_cabin, NONE, 12, 35, BELOW, IN_HULLS | DRAWN | LIVED_IN | ROOM) \
    X(forward_heads, forward_heads, NONE, 25, 40, BELOW, IN_HULLS | LIVED_IN | ROOM) \
    X(mast, mast, NONE, 38, 45, DECK, NARROW) \
    X(saloon, saloon, NONE, 35, 55, BELOW, DRAWN | LIVED_IN | ROOM | AT_DOOR) \
    X(galley, galley, NONE, 45, 62, BELOW, DRAWN | LIVED_IN | ROOM | AT_DOOR) \
    X(navigation_station, navigation_station, NONE, 45, 62, BELOW, LIVED_IN | ROOM | AT_DOOR) \
    X(aft_heads, aft_heads, NONE, 55, 68, BELOW, IN_HULLS | LIVED_IN | ROOM) \
    X(companionway, companionway, NONE, 58, 66, BELOW, LIVED_IN) \
    X(engine_space, engine_space, NONE, 55, 72, BELOW, DRAWN | NARROW) \
    X(engine_space_port, engine_space, PORT, 80, 98, BELOW, CATAMARAN_ONLY | IN_HULLS | DRAWN) \
    X(engine_space_starboard, engine_space, STARBOARD, 80, 98, BELOW, \
      CATAMARAN_ONLY | IN_HULLS | DRAWN) \
    X(generator_space, engine_space, NONE, 84, 96, BELOW, DRAWN | NARROW) \
    X(aft_cabin, aft_cabin, NONE, 62, 90, BELOW, IN_HULLS | DRAWN | LIVED_IN | ROOM) \
    X(aft_cabin_port, aft_cabin, PORT, 62, 90, BELOW, IN_HULLS | DRAWN | LIVED_IN | ROOM) \
    X(aft_cabin_starboard, aft_cabin, STARBOARD, 62, 90, BELOW, \
      IN_HULLS | DRAWN | LIVED_IN | ROOM) \
    X(cockpit, cockpit, NONE, 66, 92, DECK, DRAWN) \
    X(cockpit_locker, cockpit_locker, NONE, 68, 95, DECK, LOCKER) \
    X(cockpit_locker_port, cockpit_locker, PORT, 68, 95, DECK, LOCKER) \
    X(cockpit_locker_starboard, cockpit_locker, STARBOARD, 68, 95, DECK, LOCKER) \
    X(lazarette, lazarette, NONE, 90, 98, DECK, LOCKER) \
    X(gas_locker, gas_locker, NONE, 85, 97, DECK, LOCKER) \
    X(steering_gear, steering_gear, NONE, 92, 98, BELOW, IN_HULLS | NARROW) \
    X(pushpit, pushpit, NONE, 95, 100, DECK, IN_HULLS) \
    X(transom, transom, NONE, 98, 100, DECK, NARROW) \
    X(bathing_platform, bathing_platform, NONE, 98, 105, DECK, NARROW) \
    X(foredeck, foredeck, NONE, 5, 35, DECK, NO_TRAIT) \
    X(side_deck, side_deck, NONE, 30, 80, DECK, IN_HULLS) \
    X(side_deck_port, side_deck, PORT, 30, 80, DECK, IN_HULLS) \
    X(side_deck_starboard, side_deck, STARBOARD, 30, 80, DECK, IN_HULLS) \
    X(coachroof, coachroof, NONE, 30, 60, DECK, NO_TRAIT) \
    X(bilge, bilge, NONE, 40, 60, BELOW, IN_HULLS | NARROW) \
    X(tank_space, tank_space, NONE, 30, 75, BELOW, IN_HULLS) \
    X(port_hull, port_hull, PORT, 0, 100, BELOW, MULTIHULL_ONLY | IN_HULLS | LIVED_IN | ROOM) \
    X(starboard_hull, starboard_hull, STARBOARD, 0, 100, BELOW, \
      MULTIHULL_ONLY | IN_HULLS | LIVED_IN | ROOM) \
    X(bridgedeck, bridgedeck, NONE, 35, 70, BELOW, \
      CATAMARAN_ONLY | DRAWN | LIVED_IN | ROOM | AT_DOOR) \
    X(trampoline, trampoline, NONE, 5, 25, DECK, MULTIHULL_ONLY | DRAWN) \
    X(hull_step, hull_step, NONE, 92, 100, DECK, CATAMARAN_ONLY | IN_HULLS) \
    X(hull_step_port, hull_step, PORT, 92, 100, DECK, CATAMARAN_ONLY | IN_HULLS) \
    X(hull_step_starboard, hull_step, STARBOARD, 92, 100, DECK, CATAMARAN_ONLY | IN_HULLS) \
    X(flybridge, flybridge, NONE, 55, 70, TOP, NO_TRAIT) \
    X(escape_hatch_hull, escape_hatch_hull, NONE, 45, 65, BELOW, CATAMARAN_ONLY | IN_HULLS) \
    X(escape_hatch_hull_port, escape_hatch_hull, PORT, 45, 65, BELOW, CATAMARAN_ONLY | IN_HULLS) \
    X(escape_hatch_hull_starboard, escape_hatch_hull, STARBOARD, 45, 65, BELOW, \
      CATAMARAN_ONLY | IN_HULLS) \
    X(crossbeam_aft, crossbeam_aft, NONE, 90, 100, DECK, MULTIHULL_ONLY | NARROW)

#endif
