/* test_yaml_content.c - what a tree says, however it is written: two files that say the same are
 * alike, two that differ in anything else are not. */
#include "record_test.h"

#include "yaml_tree.h"

static const char *content_of(const char *text)
{
    struct text_builder out = text_builder_in(test.arena);
    const struct yaml_node *root =
        yaml_tree_read(file_of("trial.yaml", text), test.arena, test.problems);
    if (root == NULL)
        problems_show();
    assert_non_null(root);
    yaml_content_add(root, &out);
    return out.at;
}

static const char written[] =
    "card: flooding\nsteps: [one, two]\nwhen: {boat: cabin, tide: large}\n";

static void how_it_is_written_is_left_out(void **state)
{
    (void)state;
    static const char *const same[] = {
        "# Of the program.\ncard: flooding    # here\n\nsteps: [one, two]\n"
        "when: {boat: cabin, tide: large}\n",
        "card: \"flooding\"\nsteps:\n  - one\n  - 'two'\nwhen:\n  tide: large\n  boat: cabin\n",
        "when: {tide: large, boat: cabin}\nsteps: [one,\n  two]\ncard: flooding\n"};
    for (size_t i = 0; i < sizeof same / sizeof *same; i++)
        assert_string_equal(content_of(same[i]), content_of(written));
}

static void all_else_counts(void **state)
{
    (void)state;
    static const char *const others[] = {
        "card: Flooding\nsteps: [one, two]\nwhen: {boat: cabin, tide: large}\n",
        "card: flooding\nsteps: [two, one]\nwhen: {boat: cabin, tide: large}\n",
        "card: flooding\nsteps: [one, two, two]\nwhen: {boat: cabin, tide: large}\n",
        "card: flooding\nsteps: [\"one, two\"]\nwhen: {boat: cabin, tide: large}\n",
        "card: flooding\nsteps: [one, two]\nwhen: {boat: large, tide: cabin}\n",
        "card: flooding\nsteps: [one, two]\nwhen: {boat: cabin}\ntide: large\n",
        "card: flooding\nsteps: [one, two]\nwhen: [{boat: cabin}, {tide: large}]\n",
        "card: flooding\nsteps: one\nwhen: {boat: cabin, tide: large}\n",
        "cards: flooding\nsteps: [one, two]\nwhen: {boat: cabin, tide: large}\n"};
    for (size_t i = 0; i < sizeof others / sizeof *others; i++) {
        assert_string_not_equal(content_of(others[i]), content_of(written));
        for (size_t k = 0; k < i; k++)
            assert_string_not_equal(content_of(others[i]), content_of(others[k]));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {TEST(how_it_is_written_is_left_out),
                                       TEST(all_else_counts)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
