/* packet.h - values as bytes that one process hands to another of the same program (room: base).
 * They are read in the order in which they were written, by the same build on the same machine;
 * nothing of it is ever kept. */
#ifndef MAYDECK_PACKET_H
#define MAYDECK_PACKET_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "arena.h"
#include "text.h"

void packet_put_number(struct text_builder *packet, uint64_t number);
void packet_put_bytes(struct text_builder *packet, const void *at, size_t length);
void packet_put_text(struct text_builder *packet, const char *text);   /* NULL stays NULL */

/* What is left of a packet that is being read. */
struct packet {
    const unsigned char *at;
    size_t left;
    bool whole;        /* false: more was asked for than is there */
};

struct packet packet_of(const void *at, size_t length);

/* 0 or NULL where the packet is at its end. */
uint64_t packet_number(struct packet *packet);
const char *packet_text(struct packet *packet, struct arena *arena);   /* a copy */

/* False, with zeros in `out`, where the next bytes are not of that length. */
bool packet_bytes(struct packet *packet, void *out, size_t length);

#endif
