/* symbol.h - the register of signs: key, class and meaning of each, and its drawing as
 * data (room: symbol). It draws nothing: what reads a record checks keys against it, and
 * what makes pages strokes the drawings. All of it is constant; nothing here can fail. */
#ifndef MAYDECK_SYMBOL_H
#define MAYDECK_SYMBOL_H

#include <stdbool.h>
#include <stddef.h>

/* Frame shape of a sign: the class is told by shape, never by colour alone. */
enum sign_class {
    SIGN_NONE,         /* no sign */
    SIGN_FIRE,         /* square */
    SIGN_RESCUE,       /* square with round corners */
    SIGN_CONTROL,      /* disc */
    SIGN_WARNING,      /* triangle */
    SIGN_PROHIBITION,  /* ring and bar */
    SIGN_MANDATORY,    /* disc */
    SIGN_CLASS_COUNT
};

/* fire, rescue, control, warning, prohibition, mandatory: as files and dumps name it; "none"
 * of SIGN_NONE. */
const char *sign_class_word(enum sign_class sign);

/* Every sign: its key in files, its class, what it means. Its drawing stands under the
 * same key in src/symbol. */
#define SYMBOL_LIST(X) \
    X(ext, FIRE, "Fire extinguisher") \
    X(blanket, FIRE, "Fire blanket") \
    X(alarm, FIRE, "Fire alarm call point") \
    X(fixed, FIRE, "Fixed extinguishing bottle / engine-space system") \
    X(fireport, FIRE, "Fire port in engine cover") \
    X(remote, FIRE, "Remote release station (pull)") \
    X(hose, FIRE, "Fire hose / deck-wash hose") \
    X(flame, FIRE, "Fire") \
    X(smokealarm, FIRE, "Smoke alarm") \
    X(firstaid, RESCUE, "First aid") \
    X(medbag, RESCUE, "Medical grab bag") \
    X(hatch, RESCUE, "Escape hatch with ladder") \
    X(muster, RESCUE, "Muster (assembly) station") \
    X(raft, RESCUE, "Liferaft") \
    X(knife, RESCUE, "Liferaft (safety) knife") \
    X(jacket, RESCUE, "Lifejacket") \
    X(jacketchild, RESCUE, "Child's lifejacket") \
    X(ladder, RESCUE, "Boarding / embarkation ladder") \
    X(suit, RESCUE, "Survival clothing / TPA") \
    X(water, RESCUE, "Drinking water / emergency rations") \
    X(anchorpt, RESCUE, "Clip-on point for tether") \
    X(sling, RESCUE, "Recovery sling") \
    X(tackle, RESCUE, "Lifting tackle") \
    X(blanketwarm, RESCUE, "Warm blanket") \
    X(dinghy, RESCUE, "Dinghy") \
    X(grab, RESCUE, "Grab bag") \
    X(tether, RESCUE, "Harness line") \
    X(jackstay, RESCUE, "Jackstay") \
    X(boatplan, RESCUE, "Plan of the boat with places") \
    X(buoy, RESCUE, "Lifebuoy") \
    X(buoyline, RESCUE, "Lifebuoy with line") \
    X(buoylight, RESCUE, "Lifebuoy with light") \
    X(sart, RESCUE, "Search-and-rescue transponder (SART / AIS-SART)") \
    X(epirb, RESCUE, "EPIRB") \
    X(flares, RESCUE, "Distress signals (hand flare)") \
    X(rocket, RESCUE, "Rocket parachute flare") \
    X(vhfhand, RESCUE, "Two-way (hand-held) VHF") \
    X(vhffix, RESCUE, "Fixed VHF / DSC red button") \
    X(mob, RESCUE, "Person overboard (call point / MOB key)") \
    X(alarmgen, RESCUE, "General alarm / horn") \
    X(dan, RESCUE, "Danbuoy") \
    X(line, RESCUE, "Throwing line") \
    X(radarreflector, RESCUE, "Radar reflector") \
    X(beaconperson, RESCUE, "Personal beacon") \
    X(hru, RESCUE, "Hydrostatic release") \
    X(aerial, RESCUE, "Emergency aerial") \
    X(foghorn, RESCUE, "Foghorn") \
    X(contacts, RESCUE, "Card of telephone numbers") \
    X(fuel, CONTROL, "Fuel shut-off valve") \
    X(gas, CONTROL, "Gas (LPG) shut-off valve") \
    X(seacock, CONTROL, "Seacock / through-hull valve") \
    X(engstop, CONTROL, "Engine stop (pull or button)") \
    X(battery, CONTROL, "Battery isolator switch") \
    X(gasalarm, CONTROL, "Gas alarm") \
    X(coalarm, CONTROL, "Carbon monoxide alarm") \
    X(ventflap, CONTROL, "Engine vent flap") \
    X(blower, CONTROL, "Engine blower") \
    X(genstop, CONTROL, "Generator stop") \
    X(inverter, CONTROL, "Inverter or charger switch") \
    X(shorepower, CONTROL, "Shore power plug") \
    X(cooker, CONTROL, "Cooker taps") \
    X(solenoid, CONTROL, "Gas remote switch") \
    X(heater, CONTROL, "Heater") \
    X(solar, CONTROL, "Solar isolator") \
    X(gaslocker, CONTROL, "Gas locker") \
    X(gashose, CONTROL, "Gas hose and regulator") \
    X(bilgealarm, CONTROL, "Bilge alarm") \
    X(lithium, CONTROL, "Lithium battery") \
    X(shaftseal, CONTROL, "Shaft seal") \
    X(bowthruster, CONTROL, "Bow thruster") \
    X(generator, CONTROL, "Generator") \
    X(plotter, CONTROL, "Chart plotter") \
    X(autopilot, CONTROL, "Autopilot") \
    X(windlass, CONTROL, "Anchor windlass") \
    X(searchlight, CONTROL, "Searchlight") \
    X(bilgeman, CONTROL, "Manual bilge pump") \
    X(bilgeel, CONTROL, "Electric bilge pump") \
    X(plug, CONTROL, "Softwood plug / leak stopper") \
    X(tiller, CONTROL, "Emergency tiller") \
    X(cutter, CONTROL, "Bolt / rig cutter") \
    X(torch, CONTROL, "Torch") \
    X(panel, CONTROL, "Bilge access") \
    X(leakkit, CONTROL, "Leak kit") \
    X(door, CONTROL, "Watertight door") \
    X(bucket, CONTROL, "Bucket on a lanyard") \
    X(anchor, CONTROL, "Anchor") \
    X(toolkit, CONTROL, "Tool kit") \
    X(platform, CONTROL, "Bathing platform") \
    X(killcord, CONTROL, "Kill cord") \
    X(spill, CONTROL, "Spill cloths") \
    X(petrol, CONTROL, "Petrol can") \
    X(w1, WARNING, "General warning") \
    X(wflam, WARNING, "Flammable material") \
    X(wexpl, WARNING, "Explosive (gas build-up)") \
    X(welec, WARNING, "Electricity") \
    X(wcyl, WARNING, "Pressurised cylinder") \
    X(wasph, WARNING, "Asphyxiating atmosphere") \
    X(pflame, PROHIBITION, "No flame, spark or smoking") \
    X(pwater, PROHIBITION, "Do not put water on it") \
    X(phatch, PROHIBITION, "Do not open (engine cover / hatch)") \
    X(mjacket, MANDATORY, "Wear lifejacket") \
    X(mharness, MANDATORY, "Clip on / wear harness") \
    X(mvent, MANDATORY, "Ventilate") \
    X(flood, WARNING, "Water in the boat") \
    X(pswitch, PROHIBITION, "Do not touch switches") \
    X(penter, PROHIBITION, "Do not go in") \
    X(pcut, PROHIBITION, "Do not cut the line") \
    X(throttle, CONTROL, "Engine lever") \
    X(enginekey, CONTROL, "Engine start") \
    X(sailrope, CONTROL, "Rope of a sail") \
    X(sailroller, CONTROL, "Roller of the front sail") \
    X(saildown, CONTROL, "Mainsail down") \
    X(position, CONTROL, "Screen that shows the position") \
    X(lamp, CONTROL, "Light switch") \
    X(rudderlid, CONTROL, "Access to the rudder") \
    X(drogue, CONTROL, "Drogue") \
    X(boathook, CONTROL, "Boathook") \
    X(hacksaw, CONTROL, "Hacksaw") \
    X(fender, CONTROL, "Fender") \
    X(boards, CONTROL, "Washboards") \
    X(aed, RESCUE, "Automatic defibrillator") \
    X(heart, RESCUE, "Person not breathing") \
    X(skipperdown, RESCUE, "Skipper out of action") \
    X(plaster, RESCUE, "Person hurt") \
    X(thermometer, RESCUE, "Person ill") \
    X(swimmer, RESCUE, "Swimmer near the propeller") \
    X(capsized, RESCUE, "Hull upside down") \
    X(hullline, RESCUE, "Line under an upturned hull") \
    X(index, RESCUE, "List of cards") \
    X(noengine, WARNING, "Engine failed") \
    X(aground, WARNING, "Aground") \
    X(anchordrag, WARNING, "Anchor drags") \
    X(nosteer, WARNING, "Steering failed") \
    X(mastdown, WARNING, "Mast down") \
    X(cocloud, WARNING, "Carbon monoxide in the air") \
    X(collision, WARNING, "Collision") \
    X(lightning, WARNING, "Lightning") \
    X(heavyweather, WARNING, "Heavy weather")

enum symbol_key {
    SYMBOL_NONE,
#define SYMBOL_ENUM(key, sign, meaning) SYMBOL_##key,
    SYMBOL_LIST(SYMBOL_ENUM)
#undef SYMBOL_ENUM
    SYMBOL_COUNT
};

/* All keys in the order of the list, NULL-ended: the choices of a field that names one.
 * That of a sign stands at its SYMBOL_key - 1. */
extern const char *const symbol_keys[];

/* One stroke or shape of a drawing in a module of 100 x 100 units, y up; the letters
 * and their numbers are described in src/symbol/symbol_private.h. `knock_out` paints in
 * the colour of the sign's field. */
struct symbol_part {
    char primitive;                /* R C O P L A */
    bool knock_out;
    const double *numbers;
    size_t count;
};

struct symbol_drawing {
    const struct symbol_part *parts;   /* in the order of painting */
    size_t count;
};

struct symbol {
    const char *key;               /* ext, raft, seacock, ... */
    enum sign_class sign;
    const char *meaning;           /* Fire extinguisher */
    const struct symbol_drawing *drawing;
};

/* What the register says of it; NULL for SYMBOL_NONE. */
const struct symbol *symbol_of(enum symbol_key key);

#endif
