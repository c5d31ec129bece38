/* beacon_parts.h - what the decoders of beacon identities share (private to the
 * radio room). */
#ifndef MAYDECK_RADIO_BEACON_PARTS_H
#define MAYDECK_RADIO_BEACON_PARTS_H

#include <stddef.h>
#include <stdint.h>

#include "beacon.h"

/* Bits `first` to `last` (from 1, 64 at most) of a text of upper-case hexadecimal
 * digits, the first being the most significant bit of the first digit. */
uint64_t beacon_bits(const char *digits, size_t first, size_t last);
void beacon_bits_set(char *digits, size_t first, size_t last, uint64_t value);

/* The same of a 15-digit identity, with bits counted as the standard does: 26 to 85. */
uint64_t beacon_message_bits(const struct beacon *beacon, size_t first, size_t last);

/* The character of a 6-bit code of modified Baudot; '\0' where the code is none. */
char baudot_character(uint64_t code);

/* Reads `count` characters beginning at bit `first` of the text (from 1) into `out`,
 * '?' where the code is none. The first such character, from 1, or 0. */
size_t baudot_read(const char *digits, size_t first, size_t count, char *out);

void beacon_fault_add(struct beacon *beacon, enum beacon_fault fault);
void beacon_fault_add_at(struct beacon *beacon, enum beacon_fault fault, size_t at);

/* Takes a call sign out of a field of characters padded with spaces on one side;
 * tells a blank field and spaces elsewhere. */
enum beacon_padding { PADDED_LEFT, PADDED_RIGHT };
void beacon_call_sign_take(struct beacon *beacon, const char *field, enum beacon_padding padding);

/* The country code, who has it, and what is wrong with it. */
void beacon_country_take(struct beacon *beacon, uint64_t code);

/* An MMSI from country code and last six digits. */
void beacon_mmsi_tail_take(struct beacon *beacon, uint64_t tail);

/* Fill in what follows from the protocol. digits, generation and country are set. */
void beacon_user_read(struct beacon *beacon);
void beacon_location_read(struct beacon *beacon);
void beacon_second_read(struct beacon *beacon);

#endif
