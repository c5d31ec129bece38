/* yaml_damage.h - three sound files and a way to damage them that is the same
 * in every run. */
#ifndef MAYDECK_YAML_DAMAGE_H
#define MAYDECK_YAML_DAMAGE_H

#include <stddef.h>
#include <stdint.h>
#include <string.h>

static const char *const sound[] = {
    "boat: {name: Tamarisk, hull: monohull, rig: sail, loa_m: 12.6}\n"
    "equipment:\n"
    "  - {item: seacock, tag: C11, how: across = shut, bung_mm: 38}\n"
    "  - item: torch\n"
    "    spot: \"by the door #2\"\n"
    "not_fitted: [emergency_tiller]\n",
    "---\n"
    "procedure: engine_fire  # one\n"
    "steps:\n"
    "- act: \"**SHUT** the fuel, from \\\"outside\\\" \\u0161.\"\n"
    "  because: 'it''s fed'\n"
    "  when: {fitted: x, inside: {x: [engine_space]}}\n"
    "...\n",
    "text: |\n"
    "  one \xC5\xBE\n"
    "   two\n"
    "fold: >-\n"
    "  three\n\n"
    "  four\n"
    "? key\n"
    ": - [a, {b: c}]\n"
    "  - plain\n"
    "    folded\n",
};

/* A row of numbers that is the same on every machine. */
static uint32_t number_next(uint32_t *seed)
{
    *seed = *seed * UINT32_C(1664525) + UINT32_C(1013904223);
    return *seed >> 8;
}

static void bytes_damage(char *bytes, size_t *length, uint32_t *seed)
{
    static const char signs[] = "\t\n\r :#-[]{}\"'&*!%@`|>?,\\\xFF\xC5\xE2\x80\0a";
    size_t at = number_next(seed) % *length;

    switch (number_next(seed) % 5) {
    case 0:
        *length = at;
        break;
    case 1:
        memmove(bytes + at, bytes + at + 1, *length - at - 1);
        --*length;
        break;
    case 2:
        bytes[at] = (char)(number_next(seed) & 0xFF);
        break;
    case 3:
        memmove(bytes + at + 1, bytes + at, *length - at);
        ++*length;
        bytes[at] = signs[number_next(seed) % (sizeof signs - 1)];
        break;
    default:
        bytes[at] = signs[number_next(seed) % (sizeof signs - 1)];
    }
}

#endif
