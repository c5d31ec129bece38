# STATIC=1: one program that needs no library of the system it runs on. Of HarfBuzz and libharu
# Debian has no archives to link, so both are compiled here, of the sources that `.setup/sources`
# fetches into out/sources; all others come from the system's archives. HarfBuzz is one file and
# needs no C++ library. The linker puts what src/base/heap.c has before malloc, in all of them.

sources_of := out/sources
made_archives := $(build)/libharfbuzz.a $(build)/libhpdf.a
wrapped := -Wl,--wrap=malloc,--wrap=calloc,--wrap=realloc
CXX_STATIC ?= g++
static_options := -O2 -g -fPIE -fno-common -fstack-protector-strong -U_FORTIFY_SOURCE -D_FORTIFY_SOURCE=2 -w

# One call fetches both: a rule of patterns, here of the dot, is run once for all that it names.
$(sources_of)/harfbuzz%version $(sources_of)/libharu%version:
	@sh .setup/sources

$(build)/libharfbuzz.a: $(sources_of)/harfbuzz.version $(build)/flags
	@mkdir -p $(@D)
	@[ $(V) = 1 ] || echo "  CXX  $(sources_of)/harfbuzz/src/harfbuzz-subset.cc"
	$(Q)$(CXX_STATIC) -std=c++11 $(static_options) -DHB_NO_MT -fno-exceptions -fno-rtti \
	    -fno-threadsafe-statics -ffile-prefix-map="$$PWD"=. -I$(sources_of)/harfbuzz/src \
	    -c -o $(build)/harfbuzz.o $(sources_of)/harfbuzz/src/harfbuzz-subset.cc
	@rm -f $@
	$(Q)ar rcs $@ $(build)/harfbuzz.o

# Pictures are not used, so libpng is not needed.
$(build)/libhpdf.a: $(sources_of)/libharu.version $(build)/flags
	@mkdir -p $(build)/libharu
	@[ $(V) = 1 ] || echo "  CC   $(sources_of)/libharu/src"
	@printf '%s\n' '#define LIBHPDF_STDC_HEADERS 1' '#define LIBHPDF_HAVE_LIBZ 1' \
	    '#define LIBHPDF_HAVE_NOPNGLIB 1' '#define LIBHPDF_HAVE_UNISTD_H 1' \
	    >$(build)/libharu/hpdf_config.h
	$(Q)for file in $(sources_of)/libharu/src/*.c; do \
	    name=$${file##*/}; \
	    $(CC) -std=gnu11 $(static_options) -ffile-prefix-map="$$PWD"=. -I$(build)/libharu \
	        -I$(sources_of)/libharu/include -c -o "$(build)/libharu/$${name%.c}.o" "$$file" || exit 1; \
	done
	@rm -f $@
	$(Q)ar rcs $@ $(build)/libharu/*.o

HARDEN_LINK := -static-pie $(wrapped) -Wl,-z,relro,-z,now,-z,noexecstack,-z,separate-code
HARDEN += -DHEAP_IS_WRAPPED
library_flags := -isystem $(sources_of)/harfbuzz/src -isystem $(build)/libharu -isystem $(sources_of)/libharu/include
library_links := $(made_archives) -lyaml -lutf8proc -lz -lm
$(objects): | $(made_archives)
$(program): $(made_archives)

# The same program for a test, with allocations that fail on order behind the watch over the heap.
starved := $(build)/starved
heap := $(build)/src/base/heap.o
$(build)/heap.starved.o: $(heap)
	$(Q)objcopy --redefine-sym __real_malloc=starved_malloc --redefine-sym __real_calloc=starved_calloc \
	    --redefine-sym __real_realloc=starved_realloc $< $@
$(starved): $(build)/heap.starved.o $(build)/tests/shim/starved.o $(filter-out $(heap),$(objects)) $(made_archives)
	@[ $(V) = 1 ] || echo "  LINK $@"
	$(Q)$(LINK) -o $@ $(filter %.o,$^) $(library_links)
