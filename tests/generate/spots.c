/* spots.c - words for exact places, short and long, by the kind of place; among them those by
 * which the program tells where in its zone a thing lies. */
#include "places.h"
#include "spots.h"

#include <stddef.h>

const char *const spots_cockpit[] = {
    "by the wheel", "under the seat", "ahead of the wheel", "aft of the wheel", "fore end",
    "in the side pocket", "by the gate", NULL,
    "behind the folding cockpit table", "under the aft end of the long seat",
    "in the pocket at the foot of the wheel", NULL};
const char *const spots_open[] = {
    "on the console", "under the aft seat", "bow bag", "side pocket", "ahead of the console", NULL,
    "in the tub under the seat behind the console", "on the frame, aft of the seats", NULL};
const char *const spots_locker[] = {
    "aft face", "top bag", "fore end", "on a hook", "yellow tub", NULL,
    "under the bag at the fore end", "at the back of the locker, on a hook", NULL};
const char *const spots_door[] = {
    "bracket", "top step", "2nd step", "by the door", "hook", NULL,
    "beside the steps, below the hatch", "under the lowest step, behind the lid", NULL};
const char *const spots_room[] = {
    "under seat", "deckhead", "by the door", "on the shelf", "first drawer", "fore end", NULL,
    "in the drawer below the chart table", "under the loose floorboard by the mast",
    "under the seat cushion next to the table", NULL};
const char *const spots_galley[] = {
    "under the sink", "by the cooker", "low", "opposite the cooker", NULL,
    "inside the cupboard to the left of the cooker", "on top of the fridge behind the rail", NULL};
const char *const spots_berth[] = {
    "berth foot", "by the door", "under the berth", "foot of the berth", "over the berth", NULL,
    "under the mattress at the foot end", "on the bulkhead behind the cabin door", NULL};
const char *const spots_engine[] = {
    "fore bulkhead", "aft end", "by the tank", NULL,
    "ahead of the engine, low", "aft of the engine, behind the belt guard", NULL};
const char *const spots_rail[] = {
    "on the rail", "beside the gate", "bag", NULL,
    "on the rail, aft of the gate", "in the holder at the top of the rail", NULL};
const char *const spots_roof[] = {
    "ahead of mast", "aft of the mast", "before the hatch", NULL,
    "in the cradle ahead of the mast", "lashed behind the mast, under the boom", NULL};
const char *const spots_roof_motor[] = {
    "in the cradle", "ahead of the hatch", "aft end", NULL,
    "in the cradle behind the second window", NULL};
const char *const spots_few[] = {"amidships", "low", NULL, "low, behind the panel", NULL};
const char *const spots_none[] = {NULL, NULL};
