/* test_sha256.c - SHA-256 against published sums, and both ways that blocks are added. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "sha256.h"
#include "type/sha256_blocks.h"

/* The examples of FIPS 180-4 and the lengths around the ends of a block. */
static void sha256_gives_published_sums(void **state)
{
    static const struct {
        const char *message, *sum;
    } rows[] = {
        {"", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"},
        {"abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"},
        {"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
         "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"},
        {"abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmnhijklmnoijklmnopjklmnopqklmnopqr"
         "lmnopqrsmnopqrstnopqrstu",
         "cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1"},
    };
    char sum[SHA256_TEXT];

    (void)state;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        sha256_text((const unsigned char *)rows[i].message, strlen(rows[i].message), sum);
        assert_string_equal(sum, rows[i].sum);
    }
}

static void sha256_of_a_million_letters(void **state)
{
    static unsigned char message[1000000];
    char sum[SHA256_TEXT];

    (void)state;
    memset(message, 'a', sizeof message);
    sha256_text(message, sizeof message, sum);
    assert_string_equal(sum, "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

/* The processor's own instructions, where it has them, give what the standard's rounds give. */
static void sha256_is_the_same_by_both_ways(void **state)
{
    unsigned char bytes[8 * SHA256_BLOCK];
    sha256_blocks *fast = sha256_blocks_fast();

    (void)state;
    if (fast == NULL)
        skip();
    for (size_t i = 0; i < sizeof bytes; i++)
        bytes[i] = (unsigned char)(i * i * 31 + i * 7 + 1);
    for (size_t count = 0; count <= 8; count++) {
        uint32_t one[SHA256_WORDS], two[SHA256_WORDS];
        for (uint32_t i = 0; i < SHA256_WORDS; i++)
            one[i] = two[i] = 0x9e3779b9u * (i + 1);
        fast(one, bytes, count);
        sha256_blocks_plain(two, bytes, count);
        assert_memory_equal(one, two, sizeof one);
    }
}

/* 55, 56, 63 and 64 bytes: where the length still fits the block and no more. */
static void sha256_pads_around_the_block(void **state)
{
    static const struct {
        size_t length;
        const char *sum;
    } rows[] = {
        {55, "9f4390f8d30c2dd92ec9f095b65e2b9ae9b0a925a5258e241c9f1e910f734318"},
        {56, "b35439a4ac6f0948b6d6f9e3c6af0f5f590ce20f1bde7090ef7970686ec6738a"},
        {63, "7d3e74a05d7db15bce4ad9ec0658ea98e3f06eeecf16b4c6fff2da457ddc2f34"},
        {64, "ffe054fe7ae0cb6dc65c3af9b61d5209f439851db43d0ba5997337df154668eb"},
    };
    unsigned char message[64];
    char sum[SHA256_TEXT];

    (void)state;
    memset(message, 'a', sizeof message);
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        sha256_text(message, rows[i].length, sum);
        assert_string_equal(sum, rows[i].sum);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(sha256_gives_published_sums),
        cmocka_unit_test(sha256_of_a_million_letters),
        cmocka_unit_test(sha256_is_the_same_by_both_ways),
        cmocka_unit_test(sha256_pads_around_the_block),
    };

    return cmocka_run_group_tests_name("sha256", tests, NULL, NULL) != 0;
}
