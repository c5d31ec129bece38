/* symbol_table.c - all signs by key and by number (room: symbol). What they look like is
 * in the symbol_*.c beside it. */
#include "symbol_private.h"

#include "text.h"

#define SYMBOL_ROW(name, class, means) \
    {.key = #name, .sign = SIGN_##class, .meaning = means, .drawing = &drawing_##name},
static const struct symbol symbols[] = {SYMBOL_LIST(SYMBOL_ROW)};
#undef SYMBOL_ROW

#define SYMBOL_KEY(name, class, means) #name,
const char *const symbol_keys[] = {SYMBOL_LIST(SYMBOL_KEY) NULL};
#undef SYMBOL_KEY

const struct symbol *symbol_at(size_t index)
{
    return index < sizeof symbols / sizeof *symbols ? &symbols[index] : NULL;
}

const struct symbol *symbol_find(const char *key)
{
    const struct symbol *symbol;

    for (size_t i = 0; (symbol = symbol_at(i)) != NULL; i++)
        if (text_equal(symbol->key, key))
            return symbol;
    return NULL;
}

const char *sign_class_word(enum sign_class sign)
{
    static const char *const words[SIGN_CLASS_COUNT] = {
        [SIGN_FIRE] = "fire",       [SIGN_RESCUE] = "rescue",
        [SIGN_CONTROL] = "control", [SIGN_WARNING] = "warning",
        [SIGN_PROHIBITION] = "prohibition", [SIGN_MANDATORY] = "mandatory"};
    return words[sign];
}
