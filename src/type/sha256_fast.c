/* sha256_fast.c - blocks of SHA-256 by the instructions that x86 processors have for it (room:
 * type). Whether this one has them is asked when the program runs; nothing else hangs on it. */
#include "sha256_blocks.h"

#if defined(__x86_64__) && defined(__GNUC__)

#include <cpuid.h>
#include <immintrin.h>
#include <stdbool.h>

#define LEAF_FEATURES 1
#define LEAF_EXTENDED 7
#define BIT_SSSE3 (1u << 9)          /* of ecx of leaf 1 */
#define BIT_SSE41 (1u << 19)
#define BIT_SHA (1u << 29)           /* of ebx of leaf 7 */

#define BY_SHA __attribute__((target("sha,sse4.1,ssse3")))

/* The state as the instructions want it: a b e f and c d g h, each from the highest word on. */
struct halves { __m128i abef, cdgh; };

BY_SHA static struct halves halves_of(const uint32_t hash[SHA256_WORDS])
{
    __m128i dcba = _mm_loadu_si128((const __m128i *)(const void *)hash);
    __m128i hgfe = _mm_loadu_si128((const __m128i *)(const void *)(hash + 4));
    __m128i cdab = _mm_shuffle_epi32(dcba, 0xB1), efgh = _mm_shuffle_epi32(hgfe, 0x1B);

    return (struct halves){_mm_alignr_epi8(cdab, efgh, 8), _mm_blend_epi16(efgh, cdab, 0xF0)};
}

BY_SHA static void halves_store(struct halves state, uint32_t hash[SHA256_WORDS])
{
    __m128i feba = _mm_shuffle_epi32(state.abef, 0x1B);
    __m128i dchg = _mm_shuffle_epi32(state.cdgh, 0xB1);

    _mm_storeu_si128((__m128i *)(void *)hash, _mm_blend_epi16(feba, dchg, 0xF0));
    _mm_storeu_si128((__m128i *)(void *)(hash + 4), _mm_alignr_epi8(dchg, feba, 8));
}

/* The next four words of the schedule, of the sixteen before them. */
BY_SHA static inline __m128i words_next(const __m128i words[4])
{
    __m128i sum = _mm_add_epi32(_mm_sha256msg1_epu32(words[0], words[1]),
                                _mm_alignr_epi8(words[3], words[2], 4));

    return _mm_sha256msg2_epu32(sum, words[3]);
}

BY_SHA static inline void four_rounds(struct halves *state, __m128i words, size_t t)
{
    __m128i added = _mm_add_epi32(
        words, _mm_loadu_si128((const __m128i *)(const void *)(sha256_constants + t)));

    state->cdgh = _mm_sha256rnds2_epu32(state->cdgh, state->abef, added);
    state->abef = _mm_sha256rnds2_epu32(state->abef, state->cdgh, _mm_shuffle_epi32(added, 0x0E));
}

BY_SHA static void blocks_by_sha(uint32_t hash[SHA256_WORDS], const unsigned char *bytes,
                                 size_t count)
{
    const __m128i high_first = _mm_set_epi64x(0x0C0D0E0F08090A0B, 0x0405060700010203);
    struct halves state = halves_of(hash);

    for (; count > 0; count--, bytes += SHA256_BLOCK) {
        struct halves before = state;
        __m128i words[4];
        for (size_t i = 0; i < 4; i++)
            words[i] = _mm_shuffle_epi8(
                _mm_loadu_si128((const __m128i *)(const void *)(bytes + 16 * i)), high_first);
        for (size_t t = 0; t < SHA256_BLOCK; t += 4) {
            __m128i now = words[0], next = words_next(words);
            four_rounds(&state, now, t);
            words[0] = words[1], words[1] = words[2], words[2] = words[3], words[3] = next;
        }
        state.abef = _mm_add_epi32(state.abef, before.abef);
        state.cdgh = _mm_add_epi32(state.cdgh, before.cdgh);
    }
    halves_store(state, hash);
}

static bool processor_has_all(void)
{
    unsigned eax, ebx, ecx, edx, first, last;

    return __get_cpuid(LEAF_FEATURES, &eax, &ebx, &first, &edx) &&
           __get_cpuid_count(LEAF_EXTENDED, 0, &eax, &last, &ecx, &edx) &&
           (first & BIT_SSSE3) != 0 && (first & BIT_SSE41) != 0 && (last & BIT_SHA) != 0;
}

/* Asked once: a virtual machine is slow to answer. */
sha256_blocks *sha256_blocks_fast(void)
{
    static enum { NOT_ASKED, HAS_ALL, LACKS_SOME } answer;

    if (answer == NOT_ASKED)
        answer = processor_has_all() ? HAS_ALL : LACKS_SOME;
    return answer == HAS_ALL ? blocks_by_sha : NULL;
}

#else

sha256_blocks *sha256_blocks_fast(void)
{
    return NULL;
}

#endif
