/* position_fault.c - what is wrong with a position, in words (room: base). Never
 * proposes a value: only how one is written. */
#include "position.h"

#include "promise.h"

#define AS_WRITTEN "write it as 43 28.35 N 016 26.10 E"

static const struct { const char *what, *remedy; } position_faults[] = {
    [POSITION_SOUND] = {.what = "nothing is wrong", .remedy = "leave it as it is"},
    [POSITION_EMPTY] = {.what = "nothing is written", .remedy = AS_WRITTEN},
    [POSITION_SIGN] = {.what = "holds a sign that no position has", .remedy = AS_WRITTEN},
    [POSITION_NUMBER] = {.what = "lacks a number", .remedy = AS_WRITTEN},
    [POSITION_DECIMAL_COMMA] = {
        .what = "has a comma between two figures: one number, or two?",
        .remedy = "write decimals with a full stop, and a space behind the comma between\n"
                  "latitude and longitude: 43.4725, 16.435"},
    [POSITION_MINUTES] = {
        .what = "has 60 minutes or more",
        .remedy = "read it anew: are they minutes, or decimals of a degree (43.4725)?"},
    [POSITION_SECONDS] = {
        .what = "has 60 seconds or more",
        .remedy = "read it anew: are they seconds, or decimals of a minute (43 28.35)?"},
    [POSITION_LATITUDE_RANGE] = {
        .what = "has a latitude over 90 degrees",
        .remedy = "write the latitude first, degrees and minutes apart: 43 28.35 N 016 26.10 E"},
    [POSITION_LONGITUDE_RANGE] = {
        .what = "has a longitude over 180 degrees",
        .remedy = "write degrees and minutes apart: 43 28.35 N 016 26.10 E"},
    [POSITION_SIGN_AND_LETTER] = {
        .what = "has both a plus or minus and a letter for the hemisphere",
        .remedy = "write one of them: 43.5 S, or -43.5"},
    [POSITION_NO_LETTER] = {
        .what = "lacks N, S, E or W",
        .remedy = "write the letter with both: 43 28.35 N 016 26.10 E"},
    [POSITION_TWO_LATITUDES] = {
        .what = "has two latitudes", .remedy = "write E or W with the longitude"},
    [POSITION_TWO_LONGITUDES] = {
        .what = "has two longitudes", .remedy = "write N or S with the latitude"},
    [POSITION_MARK] = {
        .what = "has a degree, minute or second sign in the wrong place",
        .remedy = AS_WRITTEN ", or with signs: 43°28.35'N 016°26.10'E"},
    [POSITION_SEXAGESIMAL] = {
        .what = "is one large number: a program took 43:30:00 for a time and made seconds of it",
        .remedy = AS_WRITTEN " from the chart or plotter, in quotes"},
    [POSITION_ONE_VALUE] = {
        .what = "is one value: latitude and longitude are needed", .remedy = AS_WRITTEN},
    [POSITION_MORE] = {
        .what = "has more behind latitude and longitude", .remedy = AS_WRITTEN},
    [POSITION_RUN_TOGETHER] = {
        .what = "has degrees and minutes run together",
        .remedy = "write them apart: 43 28.35 N 016 26.10 E; or as a plotter does,\n"
                  "latitude with four figures, longitude with five: 4328.35N 01626.10E"},
};

const char *position_fault_text(enum position_fault fault)
{
    promise(fault < sizeof position_faults / sizeof position_faults[0]);
    return position_faults[fault].what;
}

const char *position_fault_remedy(enum position_fault fault)
{
    promise(fault < sizeof position_faults / sizeof position_faults[0]);
    return position_faults[fault].remedy;
}
