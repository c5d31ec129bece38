/* packet.c - values as bytes for another process of the same program (room: base). It knows no
 * process and keeps nothing. */
#include "packet.h"

#include <string.h>

/* Stands for the length of a text that is NULL. */
#define LENGTH_OF_NONE UINT64_MAX

void packet_put_number(struct text_builder *packet, uint64_t number)
{
    text_add_bytes(packet, (const char *)&number, sizeof number);
}

void packet_put_bytes(struct text_builder *packet, const void *at, size_t length)
{
    packet_put_number(packet, length);
    text_add_bytes(packet, at, length);
}

void packet_put_text(struct text_builder *packet, const char *text)
{
    if (text == NULL)
        packet_put_number(packet, LENGTH_OF_NONE);
    else
        packet_put_bytes(packet, text, strlen(text));
}

struct packet packet_of(const void *at, size_t length)
{
    return (struct packet){at, length, true};
}

/* The next bytes; NULL where there are not so many left. */
static const unsigned char *packet_take(struct packet *packet, uint64_t length)
{
    const unsigned char *taken = packet->at;
    if (!packet->whole || length > packet->left) {
        packet->whole = false;
        return NULL;
    }
    packet->at += length;
    packet->left -= length;
    return taken;
}

uint64_t packet_number(struct packet *packet)
{
    uint64_t number = 0;
    const unsigned char *taken = packet_take(packet, sizeof number);
    if (taken != NULL)
        memcpy(&number, taken, sizeof number);
    return number;
}

const char *packet_text(struct packet *packet, struct arena *arena)
{
    uint64_t length = packet_number(packet);
    const unsigned char *taken = NULL;
    if (packet->whole && length != LENGTH_OF_NONE)
        taken = packet_take(packet, length);
    return taken == NULL ? NULL : arena_copy(arena, (const char *)taken, (size_t)length);
}

bool packet_bytes(struct packet *packet, void *out, size_t length)
{
    uint64_t there = packet_number(packet);
    const unsigned char *taken = there == length ? packet_take(packet, length) : NULL;
    packet->whole = packet->whole && taken != NULL;
    memset(out, 0, length);
    if (packet->whole)
        memcpy(out, taken, length);
    return packet->whole;
}
