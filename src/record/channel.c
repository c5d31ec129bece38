/* channel.c - which channels the marine VHF band has (room: record). No card prints a
 * frequency: a channel that has none does not exist. Never says what one is used for. */
#include "channel.h"

#include <string.h>

/* 50 kHz apart; the second row lies between the channels of the first. */
static const struct { int first, last, khz; } channel_rows[] = {
    {1, 28, 156050},
    {60, 88, 156025},
};
enum { STEP_KHZ = 50 };

static int channel_number(const char *channel)
{
    if (strlen(channel) != 2 || strspn(channel, "0123456789") != 2)
        return 0;
    return (channel[0] - '0') * 10 + (channel[1] - '0');
}

int channel_ship_khz(const char *channel)
{
    int number = channel_number(channel);
    for (size_t i = 0; i < sizeof channel_rows / sizeof channel_rows[0]; i++)
        if (number >= channel_rows[i].first && number <= channel_rows[i].last)
            return channel_rows[i].khz + STEP_KHZ * (number - channel_rows[i].first);
    return 0;
}
