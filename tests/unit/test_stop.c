/* test_stop.c - a signal ends no run at once, and what remains is told. */
#include "record_test.h"

#include <signal.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include "app/stop.h"
#include "app_case.h"

/* What the child found, as its exit status. */
static int child_status(void (*child)(void))
{
    int status = 0;
    pid_t process = fork();
    assert_true(process >= 0);
    if (process == 0) {
        child();
        _exit(99);
    }
    assert_int_equal(waitpid(process, &status, 0), process);
    return WIFSIGNALED(status) ? 1000 + WTERMSIG(status) : WEXITSTATUS(status);
}

static void nothing_came(void **state)
{
    (void)state;
    struct names remaining = {0};
    names_add(&remaining, "tern", test.arena);
    assert_null(run_stopped());
    stop_tell(3, &remaining, test.arena, test.problems);
    expect_errors(0);
}

static void one_signal_child(void)
{
    stop_await();
    if (run_stopped() != NULL)
        _exit(1);
    raise(SIGHUP);
    raise(SIGTERM);
    _exit(text_equal(run_stopped(), "SIGHUP") ? 0 : 2);
}

static void second_signal_child(void)
{
    stop_await();
    raise(SIGINT);
    raise(SIGINT);
}

static void ignored_signal_child(void)
{
    signal(SIGHUP, SIG_IGN);
    stop_await();
    raise(SIGHUP);
    _exit(run_stopped() == NULL ? 0 : 1);
}

static void the_first_signal_is_noted_and_the_next_of_its_kind_ends(void **state)
{
    (void)state;
    assert_int_equal(child_status(one_signal_child), 0);
    assert_int_equal(child_status(second_signal_child), 1000 + SIGINT);
    assert_int_equal(child_status(ignored_signal_child), 0);
}

static void telling_child(void)
{
    struct names remaining = {0};
    size_t count;
    stop_await();
    raise(SIGTERM);
    stop_tell(2, &remaining, test.arena, test.problems);
    (void)problems_sorted(test.problems, &count);
    if (count != 0)
        _exit(1);
    names_add(&remaining, "gull", test.arena);
    names_add(&remaining, "tern", test.arena);
    stop_tell(1, &remaining, test.arena, test.problems);
    const struct problem *told = problem_saying(
        "stopped by SIGTERM: 1 boat printed, 2 remain: gull,tern");
    _exit(told != NULL && told->severity == SEVERITY_FAILURE &&
                  text_equal(told->remedy, "print them: --boat gull,tern") ? 0 : 2);
}

static void what_remains_is_told(void **state)
{
    (void)state;
    assert_int_equal(child_status(telling_child), 0);
}

/* Without it both would end the child by a signal. */
static void refused_write_child(void)
{
    int ends[2];
    struct rlimit limit = {10, 10};
    refusals_await();
    if (pipe(ends) != 0 || close(ends[0]) != 0 || write(ends[1], "x", 1) != -1)
        _exit(1);
    FILE *file = tmpfile();
    if (file == NULL || setrlimit(RLIMIT_FSIZE, &limit) != 0)
        _exit(2);
    char bytes[20] = {0};
    if (write(fileno(file), bytes, sizeof bytes) != 10)
        _exit(3);
    _exit(write(fileno(file), bytes, sizeof bytes) == -1 ? 0 : 4);
}

static void a_write_that_is_refused_is_told_as_one(void **state)
{
    (void)state;
    assert_int_equal(child_status(refused_write_child), 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(nothing_came),
        TEST(the_first_signal_is_noted_and_the_next_of_its_kind_ends),
        TEST(what_remains_is_told),
        TEST(a_write_that_is_refused_is_told_as_one),
    };
    return cmocka_run_group_tests_name("stop", tests, NULL, NULL) != 0;
}
