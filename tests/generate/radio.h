/* radio.h - the radio of a generated boat, and identities that nobody can have. */
#ifndef MAYDECK_GENERATE_RADIO_H
#define MAYDECK_GENERATE_RADIO_H

#include "boat_draw.h"

/* The section `radio`; sets FACT(RADIO), FACT(DSC) and the number that is the boat's own. */
void radio_write(struct boat_draw *boat, int index);

/* 15 hexadecimal figures of an EPIRB that codes the boat's MMSI, the `number`th of the boat. */
void beacon_write(const struct boat_draw *boat, int number);

#endif
