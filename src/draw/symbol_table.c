/* symbol_table.c - all symbols by key and by number (room: draw). The drawings
 * themselves are in the symbol_*.c tables; nothing is drawn here. */
#include "symbol_private.h"

struct symbol_list {
    const struct symbol *symbols;
    const size_t *count;
};

static const struct symbol_list lists[] = {
    {symbols_fire, &symbols_fire_count},
    {symbols_rescue, &symbols_rescue_count},
    {symbols_signal, &symbols_signal_count},
    {symbols_control, &symbols_control_count},
    {symbols_gear, &symbols_gear_count},
    {symbols_warning, &symbols_warning_count},
};

const struct symbol *symbol_at(size_t index)
{
    for (size_t i = 0; i < sizeof lists / sizeof lists[0]; i++) {
        if (index < *lists[i].count)
            return &lists[i].symbols[index];
        index -= *lists[i].count;
    }
    return NULL;
}

const struct symbol *symbol_find(const char *key)
{
    const struct symbol *symbol;

    for (size_t i = 0; (symbol = symbol_at(i)) != NULL; i++)
        if (text_equal(symbol->key, key))
            return symbol;
    return NULL;
}
