/* symbol_keys.c - the signs that a procedure may name (room: record). They are drawn in
 * the room draw, far above; test_symbol holds these lists against the drawings. Never says
 * what a sign looks like. */
#include "procedure.h"

const char *const title_symbols[] = {
    "alarm", "alarmgen", "anchor", "anchorpt", "battery", "beaconperson", "bilgeel", "bilgeman",
    "blanket", "blanketwarm", "blower", "boatplan", "bucket", "buoy", "buoylight", "buoyline",
    "coalarm", "cooker", "cutter", "dan", "dinghy", "door", "engstop", "epirb", "ext",
    "fireport", "firstaid", "fixed", "flame", "flares", "flood", "fuel", "gas", "gasalarm",
    "genstop", "grab", "hatch", "heater", "hose", "hru", "inverter", "jacket", "jacketchild",
    "killcord", "knife", "ladder", "leakkit", "line", "medbag", "mob", "muster", "panel",
    "petrol", "platform", "plug", "radarreflector", "raft", "remote", "rocket", "sart",
    "seacock", "shorepower", "sling", "smokealarm", "solar", "solenoid", "spill", "suit",
    "tackle", "tiller", "toolkit", "torch", "ventflap", "vhffix", "vhfhand", "w1", "wasph",
    "water", "wcyl", "welec", "wexpl", "wflam", NULL};

const char *const never_symbols[] = {
    "pcut", "penter", "pflame", "phatch", "pswitch", "pwater", NULL};
