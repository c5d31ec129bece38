/* channel.h - channels of the marine VHF band (private to the room record). */
#ifndef MAYDECK_RECORD_CHANNEL_H
#define MAYDECK_RECORD_CHANNEL_H

/* On what a ship transmits, in kHz; 0: no such channel. `channel` is two digits, 01 to
 * 28 or 60 to 88 (ITU Radio Regulations, Appendix 18). */
int channel_ship_khz(const char *channel);

#endif
