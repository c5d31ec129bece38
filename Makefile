# Builds maydeck, prints the specimen cards and runs the tests.
# `make help` lists the targets. On a bare Debian 12 `make cards` and `make test`
# install what they need, as root or by calling sudo for apt-get alone; so do the targets
# whose help says so, and no others.

VARIANT ?= release
STRICT  ?= 0
STATIC  ?= 0
V       ?= 0

# A folder that holds the faces; else they are looked for where the system has fonts.
FONTS_FROM ?=
export FONTS_FROM

# CC as given on the command line or in the environment; else gcc, which the
# warnings below are written for.
ifeq ($(origin CC),default)
CC := gcc
endif

# The one place of the version: all else that tells it reads it here.
version := 0.1.0

# Where `make install` puts things, by the names that GNU's packages have for it.
prefix      ?= /usr/local
exec_prefix ?= $(prefix)
bindir      ?= $(exec_prefix)/bin
datarootdir ?= $(prefix)/share
datadir     ?= $(datarootdir)
mandir      ?= $(datarootdir)/man
docdir      ?= $(datarootdir)/doc/maydeck
bashcompletiondir ?= $(datarootdir)/bash-completion/completions
zshcompletiondir  ?= $(datarootdir)/zsh/site-functions
fishcompletiondir ?= $(datarootdir)/fish/vendor_completions.d
data_folder = $(datadir)/maydeck
INSTALL         ?= install
INSTALL_PROGRAM ?= $(INSTALL) -m 755
INSTALL_DATA    ?= $(INSTALL) -m 644

.DELETE_ON_ERROR:
.SUFFIXES:
MAKEFLAGS += --no-builtin-rules --no-print-directory
.DEFAULT_GOAL := all

Q := @
ifeq ($(V),1)
Q :=
endif

# Under sudo all is made by the user who called it and owns the folder, so that nothing in out/
# is root's; root does only what installs.
for_root := cards test bench fuzz fuzz-smoke check-valgrind install install-program install-data \
            install-manual uninstall portable check-portable
as_user :=
ifneq ($(SUDO_UID),)
ifeq ($(shell [ "$$(id -u)" = 0 ] && command -v setpriv >/dev/null && stat -c %u .),$(SUDO_UID))
as_user := setpriv --reuid=$(SUDO_UID) --regid=$(SUDO_GID) --clear-groups --
SHELL := setpriv
.SHELLFLAGS := $(wordlist 2,5,$(as_user)) /bin/sh -c
export HOME := $(shell getent passwd $(SUDO_UID) | cut -d : -f 6)
$(for_root): private SHELL := /bin/sh
$(for_root): private .SHELLFLAGS := -c
endif
endif

# ---- files ----

build := out/build/$(VARIANT)
ifeq ($(STATIC),1)
build := out/build/static
program := $(build)/maydeck
else ifeq ($(VARIANT),release)
program := out/maydeck
else
program := $(build)/maydeck
endif
shim := $(build)/fault.so
contrast := $(build)/contrast
boats := $(build)/boats
prover := $(build)/prove
yardstick := $(build)/yardstick
measure := $(build)/measure
rooms := $(build)/rooms.a
torturer := $(build)/torture
torture_shim := $(build)/calls.so
unit_program := $(build)/unit
unit_list := $(build)/tests/unit/unit_list.h

sources      := $(sort $(wildcard src/*/*.c))
headers      := $(sort $(wildcard include/*.h src/*/*.h))
test_sources := $(sort $(wildcard tests/unit/test_*.c))
test_helpers := $(filter-out $(test_sources),$(sort $(wildcard tests/unit/*.c)))
generator_sources := $(sort $(wildcard tests/generate/*.c))
prover_sources := $(sort $(wildcard tests/prove/*.c))
yardstick_sources := tests/bench/yardstick.c $(sort $(wildcard tests/bench/plain_*.c))
fuzz_sources := $(sort $(wildcard tests/fuzz/*.c))
torture_sources := $(filter-out %/calls.c,$(sort $(wildcard tests/torture/*.c)))

objects        := $(sources:src/%.c=$(build)/src/%.o)
main_object    := $(build)/src/app/main.o
helper_objects := $(test_helpers:%.c=$(build)/%.o)
test_objects   := $(test_sources:%.c=$(build)/%.o)
generator_objects := $(generator_sources:%.c=$(build)/%.o)
prover_objects := $(prover_sources:%.c=$(build)/%.o)
# Of the program it has what is below drawing, which it does in its own way.
yardstick_objects := $(yardstick_sources:%.c=$(build)/%.o) \
                     $(filter $(build)/src/base/% $(build)/src/type/% $(build)/src/symbol/% %/layout/ink.o,$(objects))
fuzz_objects := $(fuzz_sources:%.c=$(build)/%.o)
fuzz_shared := $(filter-out %/fuzz_main.o %/replay.o %/fuzz_mutate.o $(build)/tests/fuzz/fuzz_%.o, \
                 $(fuzz_objects))
fuzz_names := $(filter-out main mutate,$(fuzz_sources:tests/fuzz/fuzz_%.c=%))
fuzz_names := $(filter-out tests/%,$(fuzz_names))
fuzzers := $(fuzz_names:%=$(build)/fuzz/%)
replays := $(fuzz_names:%=$(build)/replay/%)
torture_objects := $(torture_sources:%.c=$(build)/%.o)

# Tests that lay out, draw or read back whole sets of cards, or change each value of whole
# records or of every file of the house: too slow to wait for after each changed line. What takes
# longest begins first, so that no processor waits for the others at the end.
test_names  := $(test_sources:tests/unit/%.c=%)
fleet_tests := test_readers test_each_fact test_reading_pages test_each_field test_each_item test_paper \
               test_plan_generated test_yaml_edit_files test_layout test_proof_pages test_budget test_proof_raster \
               test_each_sister test_yaml_edit_any test_page_facts test_layout_full test_plan test_plan_names \
               test_proof_table test_safety_kinds test_safety_page test_table test_laid_once
unit_tests  := $(filter-out $(fleet_tests),$(test_names))

# ---- flags ----

WARN := -Wall -Wextra -Wpedantic -Wconversion -Wsign-conversion \
    -Wshadow -Wstrict-prototypes -Wmissing-prototypes -Wold-style-definition \
    -Wredundant-decls -Wundef -Wvla -Walloca -Wcast-qual \
    -Wwrite-strings -Wpointer-arith -Wformat=2 -Wswitch-enum \
    -Wnull-dereference -Wdouble-promotion -Wfloat-equal -Wunused-macros \
    -Wenum-conversion -Wdate-time -Wframe-larger-than=8192

# What only one of the two compilers knows.
compiler_is_clang := $(findstring clang,$(shell $(CC) --version 2>/dev/null))
ifeq ($(compiler_is_clang),)
WARN += -Warith-conversion -Wcast-align=strict -Wformat-signedness \
    -Wformat-overflow=2 -Wformat-truncation=2 -Wimplicit-fallthrough=5 \
    -Wduplicated-cond -Wduplicated-branches -Wlogical-op \
    -Wjump-misses-init -Wunused-const-variable=2 -Wstringop-overflow=4 \
    -Warray-bounds=2 -Wuse-after-free=3 -Wdangling-pointer=2 -Wbidi-chars=any \
    -Wtrampolines
zero_locals := -ftrivial-auto-var-init=zero
else
WARN += -Wcast-align -Wimplicit-fallthrough -Wno-missing-field-initializers \
    -Wno-sign-conversion -Wno-shorten-64-to-32 -Wno-format-nonliteral -Wno-string-plus-int \
    -Wno-bitwise-instead-of-logical
zero_locals :=
endif

# A newer compiler must never break a user's build: warnings stop developers only.
ifeq ($(STRICT),1)
WARN += -Werror
endif

HARDEN := -O2 -g -U_FORTIFY_SOURCE -D_FORTIFY_SOURCE=3 -fstack-protector-strong \
    -fstack-clash-protection $(zero_locals) -fPIE
ifneq ($(filter x86_64 i686,$(shell uname -m)),)
HARDEN += -fcf-protection=full
endif
HARDEN_LINK := -pie -Wl,-z,relro,-z,now,-z,noexecstack,-z,nodlopen,-z,separate-code,--as-needed

ifeq ($(STATIC),1)
ifneq ($(VARIANT),release)
$(error STATIC=1 goes with VARIANT=release)
endif
include .setup/static.mk
endif

OPTIONS_release  := $(HARDEN)
OPTIONS_san      := -O1 -g -fno-omit-frame-pointer -fsanitize=address,undefined \
                    -fno-sanitize-recover=all
OPTIONS_debug    := -O0 -g3
OPTIONS_coverage := -O0 -g --coverage
OPTIONS_fuzz     := -O2 -g -fno-omit-frame-pointer -fno-sanitize-recover=all \
                    -fsanitize=address,undefined,fuzzer-no-link \
                    -fno-sanitize-coverage=trace-cmp,stack-depth
LINK_release     := $(HARDEN_LINK)
LINK_san         := -fsanitize=address,undefined
LINK_debug       :=
LINK_coverage    := --coverage
LINK_fuzz        := -fsanitize=address,undefined,fuzzer-no-link
ifeq ($(OPTIONS_$(VARIANT)),)
$(error VARIANT=$(VARIANT) is unknown: say release, san, debug, coverage or fuzz)
endif
# The variant of another compiler, which the warnings are not written for: all others see to them.
ifeq ($(VARIANT),fuzz)
CC := clang
WARN := -Wall -Wextra
endif

ifneq ($(STATIC),1)
# Asked once, and only when something is compiled: on a bare machine pkg-config
# comes with the packages. The headers of libraries are the system's to warn about.
library_flags = $(eval library_flags := $$(subst -I,-isystem ,$$(shell \
    pkg-config --cflags yaml-0.1 zlib harfbuzz harfbuzz-subset libutf8proc)))$(library_flags)
# libharu has no pkg-config file.
library_links = $(eval library_links := -lhpdf $$(shell \
    pkg-config --libs yaml-0.1 zlib harfbuzz harfbuzz-subset libutf8proc) -lm)$(library_links)
endif

COMPILE = $(CC) -std=c11 -D_POSIX_C_SOURCE=200809L -Iinclude $(library_flags) $(WARN) \
    $(OPTIONS_$(VARIANT)) -fno-common -ffile-prefix-map="$$PWD"=. $(CPPFLAGS) $(CFLAGS)
LINK = $(CC) $(OPTIONS_$(VARIANT)) $(CFLAGS) $(LINK_$(VARIANT)) $(LDFLAGS)
app_flags = -DMAYDECK_VERSION='"$(version)"'

# ---- building ----

.PHONY: all
all: $(program) out/fonts/.copied ## Build the program (VARIANT=release, san, debug or coverage)

# One sum of all sources: what was printed by another program is another print.
$(build)/sources_sum.h: $(sources) $(headers)
	@mkdir -p $(@D)
	@printf '/* made by the Makefile */\n#define MAYDECK_SOURCES "%s"\n' \
	    "$$(cat $(sort $(sources) $(headers)) | sha256sum | cut -d ' ' -f 1)" >$@
$(build)/src/app/print_inputs.o: $(build)/sources_sum.h
$(build)/src/app/print_inputs.o: room_flags = $(app_flags) -include $(build)/sources_sum.h

# For another prefix this one object is compiled anew, and no other.
$(build)/data_folder: FORCE
	@mkdir -p $(@D)
	@printf '%s\n' "$$FOLDER" | cmp -s - $@ || printf '%s\n' "$$FOLDER" >$@
$(build)/data_folder: export FOLDER = $(data_folder)
$(build)/src/app/places.o: $(build)/data_folder
$(build)/src/app/places.o: room_flags = -DMAYDECK_DATA_FOLDER='"$(data_folder)"'

# Changed flags rebuild everything: objects depend on a file that holds them.
$(build)/flags: FORCE
	@mkdir -p $(@D)
	@printf '%s\n' "$$FLAGS" | cmp -s - $@ || printf '%s\n' "$$FLAGS" >$@
$(build)/flags: export FLAGS = $(COMPILE) / $(app_flags) / $(LINK) $(library_links)

$(build)/src/app/%.o: room_flags = $(app_flags)
# The compiler cannot know that a failed assertion of cmocka does not return.
$(build)/tests/%.o: room_flags = -Isrc -Wno-null-dereference

$(build)/%.o: %.c $(build)/flags
	@mkdir -p $(@D)
	@[ $(V) = 1 ] || echo "  CC   $<"
	$(Q)$(COMPILE) $(room_flags) -MMD -MP -c -o $@ $<

$(program): $(objects)
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(LINK) -o $@ $(objects) $(library_links)

# All unit tests are one program, linked once however many of them a changed line
# reaches. Each test file has a main of its own, which goes by the file's name here.
$(unit_list): FORCE
	@mkdir -p $(@D)
	@{ printf '/* made by the Makefile */\n#define UNIT_LIST(X)'; printf ' X(%s)' $(test_names); \
	    echo; } >$@.new
	@cmp -s $@.new $@ || cp $@.new $@
$(build)/tests/unit/unit_main.o: $(unit_list)
$(build)/tests/unit/unit_main.o: room_flags = -I$(dir $(unit_list))

.SECONDARY: $(test_objects) $(fuzz_objects)
$(build)/tests/unit/%.unit.o: $(build)/tests/unit/%.o
	$(Q)objcopy --redefine-sym main=$*_main $< $@

# The generator's own main goes by another way: it is a program besides.
$(unit_program): $(test_objects:.o=.unit.o) $(helper_objects) \
        $(filter-out %/main.o,$(generator_objects)) $(filter-out $(main_object),$(objects))
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(LINK) -o $@ $^ $(library_links) -lcmocka

$(shim): tests/shim/fault.c $(build)/flags
	@mkdir -p $(@D)
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(CC) -std=c11 $(WARN) -O1 -g -fPIC -shared -o $@ $< -ldl

$(contrast): tests/readback/contrast.c $(build)/flags
	@mkdir -p $(@D)
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(CC) -std=c11 $(WARN) -O2 -g -o $@ $< -lm

# Boats that nobody wrote by hand, as many as are asked for.
$(boats): $(generator_objects)
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(CC) $(OPTIONS_$(VARIANT)) $(CFLAGS) $(LINK_$(VARIANT)) $(LDFLAGS) -o $@ $^

# Proves the procedures for all boats that a record can express.
$(prover): $(prover_objects) $(filter-out $(main_object),$(objects))
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(LINK) -o $@ $^ $(library_links)

# What a plain writer takes for the same pages, and what a command takes with all that it starts.
$(yardstick): $(yardstick_objects)
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(LINK) -o $@ $^ $(library_links)

$(measure): tests/bench/measure.c $(build)/flags
	@mkdir -p $(@D)
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(CC) -std=c11 $(WARN) -O2 -g -o $@ $<

# Each harness with libFuzzer, and alone: it takes of the rooms what it needs and no more.
$(rooms): $(filter-out $(main_object),$(objects))
	@rm -f $@
	$(Q)ar rcs $@ $^
$(build)/shared.a: $(fuzz_shared)
	@rm -f $@
	$(Q)ar rcs $@ $^
$(build)/fuzz/%: $(build)/tests/fuzz/fuzz_%.o $(build)/tests/fuzz/fuzz_main.o \
        $(build)/tests/fuzz/fuzz_mutate.o $(build)/shared.a $(rooms)
	@mkdir -p $(@D)
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(LINK) -fsanitize=fuzzer -o $@ $^ $(library_links)
$(build)/replay/%: $(build)/tests/fuzz/fuzz_%.o $(build)/tests/fuzz/replay.o $(build)/shared.a $(rooms)
	@mkdir -p $(@D)
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(LINK) -o $@ $^ $(library_links)
# Fails each call of each command in turn; the shim is what it loads into the program.
$(torturer): $(torture_objects) $(filter $(build)/src/base/%,$(objects))
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(LINK) -o $@ $^ $(library_links)

$(torture_shim): tests/torture/calls.c tests/torture/calls.h $(build)/flags
	@mkdir -p $(@D)
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(CC) -std=c11 $(WARN) -O1 -g -fPIC -shared -o $@ $< -ldl

out/fonts/.copied: fonts/faces.txt fonts/copy
	@mkdir -p $(@D)
	$(Q)sh fonts/copy out/fonts
	@touch $@

.PHONY: FORCE
FORCE:

-include $(yardstick_objects:.o=.d)
-include $(objects:.o=.d) $(test_objects:.o=.d) $(test_helpers:%.c=$(build)/%.d) $(generator_objects:.o=.d) $(prover_objects:.o=.d) \
    $(fuzz_objects:.o=.d)
-include $(objects:.o=.d) $(test_objects:.o=.d) $(test_helpers:%.c=$(build)/%.d) $(generator_objects:.o=.d) $(prover_objects:.o=.d) $(torture_objects:.o=.d)

# ---- printing ----

.PHONY: cards
cards: ## Install what is missing, build, and print the specimen boats into out/cards
	@sh .setup/packages build
	@$(MAKE) print-cards

.PHONY: print-cards
print-cards: all
	@mkdir -p out/cards
	@rm -f out/cards/*.pdf
	$(program) print tests/fleet -o out/cards
	$(program) print tests/islands -o out/cards

# The card that README shows, of one day, and the code of what stands on it.
.PHONY: picture
picture: all ## Draw the card that README shows into .pictures (pdftoppm, python3)
	@rm -rf $(build)/picture
	@$(program) print tests/fleet --boat tamarisk --card engine_fire --date 2026-11-20 --quiet -o $(build)/picture 2>/dev/null
	@pdftoppm -r 108 -f 1 -l 1 $(build)/picture/tamarisk-engine_fire.pdf >$(build)/picture/card.ppm
	@python3 .pictures/shrink.py <$(build)/picture/card.ppm >$(build)/picture/card.png
	@$(program) print tests/fleet --boat tamarisk --list --date 2026-11-20 2>/dev/null | \
	    sed -n 's/^  \([0-9A-Z-]*\)  3 ENGINE FIRE$$/\1/p' >$(build)/picture/card.code
	@test -s $(build)/picture/card.png && test -s $(build)/picture/card.code
	@cp $(build)/picture/card.png $(build)/picture/card.code .pictures/
	@ls -l .pictures/card.png

# ---- texts ----

.PHONY: manifest
manifest: ## Seal procedures, sources and words after a change: list them with their sums
	$(Q)sh .setup/manifest procedures >out/manifest.new
	@diff procedures/manifest.txt out/manifest.new || true
	@mv out/manifest.new procedures/manifest.txt

# ---- testing ----

# Under the sanitizers these say nothing that they do not say without, and the same code runs there
# in others: DEVELOPERS.md tells in which. With ONLY they run there too.
fleets_not_san := test_each_fact test_readers test_reading_pages
cli_not_san := instructions cards cases determinism each_check figures groups harm held identity schema \
               missing_line models pseudo reach readback slips tasks terms words

# The scripts that take longest, first; then all others.
cli_first := instructions table missing_line each_check groups unusual readback generated slips tasks one_of_many outcomes \
             models harm check pseudo
cli_names := $(patsubst tests/cli/%.sh,%,$(sort $(wildcard tests/cli/*.sh)))
cli_tests := $(cli_first) $(filter-out $(cli_first),$(cli_names))
# Nor do those that try what make itself installs and packs.
cli_not_san += deb faces install portable readme set_up
no_test := $(filter-out $(cli_names),$(cli_first) $(cli_not_san)) $(filter-out $(test_names),$(fleet_tests) $(fleets_not_san))
ifneq ($(strip $(no_test)),)
$(error There is no test $(no_test))
endif

ifeq ($(VARIANT)$(ONLY),san)
fleet_tests := $(filter-out $(fleets_not_san),$(fleet_tests))
cli_tests   := $(filter-out $(cli_not_san),$(cli_tests))
endif

run_tests = VARIANT='$(VARIANT)' BUILD='$(build)' MAYDECK='$(program)' SHIM='$(shim)' \
    PROVER='$(prover)' REPLAYS='$(filter-out trial,$(fuzz_names))' UNIT='$(unit_program)' UNIT_TESTS='$(unit_tests)' FLEET_TESTS='$(fleet_tests)' \
    CLI_TESTS='$(cli_tests)' ONLY='$(ONLY)' sh tests/run
tested := $(program) out/fonts/.copied

.PHONY: test
test: ## Install what is missing, build and run all tests (ONLY=word: those named so)
	@sh .setup/packages test
	@$(MAKE) check

# What reads no program, and the proof of all boats, say the same whatever the compiler adds.
check_kinds := unit fleets layers style errors pages prove mutations replay cli
check_kinds_san := unit fleets errors pages replay cli
checked_once := $(if $(filter san,$(VARIANT)),,headers $(prover))

.PHONY: check unit prove check-prove check-unit check-fleets check-errors check-pages check-cli check-layers check-style check-replay
check: $(checked_once) $(tested) $(unit_program) $(shim) $(contrast) $(boats) $(yardstick) $(replays) ## All tests, without looking for packages
	@$(run_tests) $(or $(check_kinds_$(VARIANT)),$(check_kinds))
unit: check-unit ## The same as check-unit: what to run after each changed line
check-unit: $(unit_program) out/fonts/.copied ## Unit tests, all but those of whole fleets
	@$(run_tests) unit
check-fleets: $(unit_program) out/fonts/.copied ## Unit tests of whole fleets
	@$(run_tests) fleets
check-errors: $(tested) ## Error goldens: the exact message for each wrong input
	@$(run_tests) errors
check-pages: $(tested) ## Page goldens: every page of the specimen boats
	@$(run_tests) pages
check-cli: $(tested) $(shim) $(contrast) $(boats) $(yardstick) ## Command line: output, read back, determinism, faults
	@$(run_tests) cli
prove: $(prover) ## The procedures, proved for every boat that a record can express
	@$(run_tests) prove
check-prove: $(prover) ## The same, and what the proof must stop
	@$(run_tests) prove mutations
check-replay: $(replays) out/fonts/.copied ## Inputs that fuzzing found or reached, each through its harness
	@$(run_tests) replay
.PHONY: check-editors
check-editors: $(tested) $(shim) ## What a language server of YAML shows by the schemas (npm lays it into out/editors)
	@MAYDECK='$(program)' SHIM='$(shim)' sh tests/editors/run
check-layers: ## Who includes whom
	@$(run_tests) layers
check-style: ## Lengths, banned functions, names defined twice, boolean parameters, compared words
	@$(run_tests) style

# FUZZ_SECONDS a harness, or FUZZ_RUNS; ONLY=word: of those harnesses.
.PHONY: fuzz fuzz-smoke fuzz-run fuzz-keep
fuzz: all ## Look for inputs that break what must hold (FUZZ_SECONDS=, FUZZ_RUNS=, ONLY=)
	@sh .setup/packages fuzz
	@$(MAKE) VARIANT=fuzz fuzz-run
fuzz-smoke: all ## The same, a fixed number of inputs each
	@sh .setup/packages fuzz
	@$(MAKE) VARIANT=fuzz FUZZ_RUNS=smoke fuzz-run
fuzz-run: $(fuzzers) out/fonts/.copied
	@BUILD='$(build)' MAYDECK=out/maydeck ONLY='$(ONLY)' FUZZ_SECONDS='$(FUZZ_SECONDS)' \
	    FUZZ_RUNS='$(FUZZ_RUNS)' sh tests/fuzz/run
fuzz-keep: ## Keep of what fuzzing reached a few small inputs in tests/fuzz/corpus
	@$(MAKE) VARIANT=fuzz fuzz-keep-run
.PHONY: fuzz-keep-run
fuzz-keep-run: $(fuzzers)
	@BUILD='$(build)' ONLY='$(ONLY)' sh tests/fuzz/keep

.PHONY: check-san check-valgrind
check-san: ## All tests of the program under the address and undefined-behaviour sanitizers
	@$(MAKE) VARIANT=san check
check-valgrind: ## Unit tests and error goldens under valgrind
	@sh .setup/packages test
	@$(MAKE) VARIANT=debug valgrind-run
.PHONY: valgrind-run
valgrind-run: $(tested) $(unit_program)
	@WRAP='valgrind -q --error-exitcode=99 --leak-check=full --errors-for-leak-kinds=definite' \
	$(run_tests) unit fleets errors

# TORTURE is how many trials of each kind of call of each command, or `all`.
TORTURE ?= 2
TORTURE_SEED ?= 1
torture_run = BUILD='$(build)' MAYDECK='$(program)' TORTURER='$(torturer)' TORTURE_SHIM='$(torture_shim)' \
    TORTURE_SEED='$(TORTURE_SEED)' TORTURE_ONLY='$(TORTURE_ONLY)' TORTURE_PART='$(TORTURE_PART)'
.PHONY: torture torture-smoke
torture: $(tested) $(torturer) $(torture_shim) ## Faults, kills, runs at once, limits on every command (TORTURE=all: each one)
	@$(torture_run) TORTURE_EACH='$(TORTURE)' sh tests/torture/run
torture-smoke: $(tested) $(torturer) $(torture_shim) ## A sample of these, as .ci/run takes it
	@$(torture_run) SMOKE=1 TORTURE_EACH=2 sh tests/torture/run

.PHONY: golden-accept
golden-accept: $(tested) ## Show how error and page goldens differ, and take the new ones
	@ACCEPT=1 $(run_tests) errors pages

.PHONY: headers
headers: $(headers:%=$(build)/headers/%.ok) ## Compile each header alone
$(build)/headers/%.ok: % $(headers) $(build)/flags
	@mkdir -p $(@D)
	$(Q)echo 'extern int nothing;' | $(COMPILE) -Wno-unused-macros -fsyntax-only -include $< -x c - || \
	    { echo "$<: does not compile alone"; exit 1; }
	@touch $@

.PHONY: coverage
coverage: ## Run all tests and show the lines and branches reached, room by room
	@$(MAKE) VARIANT=coverage coverage-run
.PHONY: coverage-run
coverage-run: $(tested) $(unit_program) $(shim) $(contrast) $(boats) $(yardstick) $(replays)
	@find $(build) -name '*.gcda' -delete
	-@$(run_tests) unit fleets errors pages replay cli
	@sh tests/style/coverage $(build)

# MUTANTS is how many, SEED which.
.PHONY: mutants
mutants: all ## Turn conditions into others and see which of them the tests let pass (MUTANTS=60, SEED=1)
	@sh .setup/packages test
	@MUTANTS='$(or $(MUTANTS),60)' SEED='$(or $(SEED),1)' sh tests/mutants/run

.PHONY: bench bench-run bench-accept
bench: ## How fast printing is: instructions, seconds, memory, peers (BENCH=all: larger fleets; SEED=7)
	@sh .setup/packages bench
	@$(MAKE) bench-run
bench-run: all $(boats) $(yardstick) $(measure)
	@MAYDECK='$(program)' BUILD='$(build)' sh tests/bench/run
bench-accept: all ## Count the specimen fleet anew and record what printing it takes
	@MAYDECK='$(program)' sh tests/bench/gate accept

# ---- installing ----

# The manual and the completion of shells, where there are targets that make them.
documents := $(sort $(patsubst %:,%,$(shell grep -hEo '^(manual|completion):' $(MAKEFILE_LIST))))
manuals = $(wildcard out/man/*.[1-9])
put_tree = INSTALL_DATA='$(INSTALL_DATA)' sh .setup/tree
# $(call put,FOLDER,FILE,AS)
put = mkdir -p "$(DESTDIR)$(1)" && $(INSTALL_DATA) $(2) "$(DESTDIR)$(1)/$(3)"

.PHONY: install install-program install-data install-manual uninstall installcheck
install: ## Install under prefix (/usr/local); DESTDIR and GNU's names of folders are honoured
	@$(as_user) $(MAKE) all $(documents)
	@$(MAKE) install-program install-data install-manual
install-program:
	mkdir -p "$(DESTDIR)$(bindir)"
	$(INSTALL_PROGRAM) $(program) "$(DESTDIR)$(bindir)/maydeck"
# The texts are replaced as a whole: a file of an older version must not stay among them.
install-data: out/fonts/.copied
	rm -rf "$(DESTDIR)$(data_folder)"
	$(put_tree) procedures "$(DESTDIR)$(data_folder)/procedures"
	$(put_tree) out/fonts "$(DESTDIR)$(data_folder)/fonts"
	$(call put,$(docdir),README.md,README.md)
	$(call put,$(docdir)/.pictures,.pictures/card.png,card.png)
	rm -rf "$(DESTDIR)$(docdir)/examples/fleet" "$(DESTDIR)$(docdir)/examples/islands"
	$(put_tree) tests/fleet "$(DESTDIR)$(docdir)/examples/fleet"
	$(put_tree) tests/islands "$(DESTDIR)$(docdir)/examples/islands"
install-manual:
	$(foreach page,$(manuals),$(call put,$(mandir)/man$(subst .,,$(suffix $(page))),$(page),$(notdir $(page))) &&) :
	[ ! -f out/completion/maydeck.bash ] || { $(call put,$(bashcompletiondir),out/completion/maydeck.bash,maydeck); }
	[ ! -f out/completion/_maydeck ] || { $(call put,$(zshcompletiondir),out/completion/_maydeck,_maydeck); }
	[ ! -f out/completion/maydeck.fish ] || { $(call put,$(fishcompletiondir),out/completion/maydeck.fish,maydeck.fish); }
uninstall: ## Remove what install put there
	rm -f "$(DESTDIR)$(bindir)/maydeck" "$(DESTDIR)$(mandir)"/man[1-9]/maydeck*.[1-9]
	rm -f "$(DESTDIR)$(bashcompletiondir)/maydeck" "$(DESTDIR)$(zshcompletiondir)/_maydeck" \
	    "$(DESTDIR)$(fishcompletiondir)/maydeck.fish"
	rm -rf "$(DESTDIR)$(data_folder)" "$(DESTDIR)$(docdir)/examples/fleet" "$(DESTDIR)$(docdir)/examples/islands"
	rm -f "$(DESTDIR)$(docdir)/README.md" "$(DESTDIR)$(docdir)/.pictures/card.png"
	@rmdir "$(DESTDIR)$(docdir)/examples" "$(DESTDIR)$(docdir)/.pictures" "$(DESTDIR)$(docdir)" 2>/dev/null || true
installcheck: all ## Print the specimens with what is installed, and compare them with this folder's
	@DESTDIR='$(DESTDIR)' DATA='$(data_folder)' sh .setup/installcheck $(program) "$(DESTDIR)$(bindir)/maydeck"

.PHONY: dist
dist: ## Pack all sources as out/maydeck-VERSION.tar.gz, always with the same bytes
	@mkdir -p out
	@sh .setup/dist $(version)

.PHONY: portable portable-pack deb
portable: ## Install what is missing, fetch two libraries' sources, pack a program for any Linux
	@sh .setup/packages static
	@$(as_user) $(MAKE) STATIC=1 portable-pack
portable-pack: $(program) $(documents) out/fonts/.copied
	@rm -rf $(build)/stage
	@$(MAKE) install-program install-data install-manual DESTDIR=$(build)/stage prefix= >$(build)/staged
	@sh .setup/portable $(version) $(build)/stage
.PHONY: deb-pack check-portable check-portable-run
deb: all $(documents) ## Pack what is built as out/maydeck_VERSION_ARCH.deb; needs dpkg-dev
	@$(MAKE) deb-pack
deb-pack:
	@rm -rf out/deb
	@$(MAKE) install-program install-data install-manual DESTDIR=out/deb/root prefix=/usr >$(build)/staged
	@sh .setup/deb $(version) out/deb
check-portable: ## Pack it and try it: the same cards, nothing but a bare folder, too little memory
	@sh .setup/packages test
	@$(MAKE) portable
	@$(as_user) $(MAKE) STATIC=1 out/build/static/starved
	@$(as_user) $(MAKE) check-portable-run
check-portable-run: export PORTABLE = out/maydeck-$(version)-linux-$(shell uname -m).tar.gz
check-portable-run: export STARVED = out/build/static/starved
check-portable-run: $(tested) $(shim)
	@MAYDECK='$(program)' BUILD='$(build)' SHIM='$(shim)' CLI_TESTS=portable sh tests/run cli
	@MAYDECK=$(STARVED) BUILD=out/build/static SHIM='$(shim)' CLI_TESTS=memory sh tests/run cli


# ---- the manual and completion ----

# Each as the program prints it, whole or not at all; the page for print where groff makes PDF.
.PHONY: manual completion
manual: out/man/maydeck.1 out/man/maydeck-files.5 ## Pages of the manual into out/man, and a reference page for print
	@$(program) manual reference >out/man/reference.ms
	@if groff -ms -T pdf -P-pa4 out/man/reference.ms >out/man/reference.new 2>/dev/null; then \
	    mv out/man/reference.new out/man/maydeck-reference.pdf; \
	else \
	    rm -f out/man/reference.new; echo 'no groff that makes PDF: no out/man/maydeck-reference.pdf'; \
	fi
	@rm -f out/man/reference.ms
completion: out/completion/maydeck.bash out/completion/_maydeck out/completion/maydeck.fish ## Scripts for bash, zsh and fish into out/completion

printed = @mkdir -p $(@D) && $(program) $(1) >$@.new && mv $@.new $@
out/man/maydeck.1: $(program) $(wildcard procedures/*.yaml procedures/words/*/*.yaml)
	$(call printed,manual commands)
out/man/maydeck-files.5: $(program) $(wildcard procedures/*.yaml procedures/words/*/*.yaml)
	$(call printed,manual files)
out/completion/maydeck.bash: $(program)
	$(call printed,completion bash)
out/completion/_maydeck: $(program)
	$(call printed,completion zsh)
out/completion/maydeck.fish: $(program)
	$(call printed,completion fish)

# ---- cleaning ----

.PHONY: clean distclean
clean: ## Remove objects and programs
	rm -rf out/build out/maydeck
distclean: ## Remove all that was made
	find out -mindepth 1 -maxdepth 1 ! -name .gitkeep -exec rm -rf {} +

.PHONY: help
help: ## Show this help
	@echo 'Targets:'
	@awk -F ':.*## ' '/^[a-z-]+:.*## / { printf "  %-15s %s\n", $$1, $$2 }' $(firstword $(MAKEFILE_LIST))
	@echo 'Settings: VARIANT=release|san|debug|coverage  STRICT=1 (warnings are errors)  STATIC=1'
	@echo '          V=1 (show commands)  ONLY=word  prefix=/usr/local  DESTDIR=  FONTS_FROM='
