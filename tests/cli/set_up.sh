#!/bin/sh
# Setting up: under sudo nothing in the folder comes to be root's; apt-get, and nothing else, is called
# through sudo by who is not root; and what is installed is told.
. tests/tap.sh

unset MAYDECK_DATA DESTDIR SUDO_UID SUDO_GID
owner=65534

# ---- make under sudo ----

if [ "$(id -u)" -ne 0 ] || ! command -v setpriv >/dev/null; then
    skip set-up-owner 'only root can try what becomes of its files'
else
    chmod 711 "$scratch"
    tree="$scratch/a folder"
    mkdir -p "$tree/out"
    cp -R Makefile .setup .pictures fonts procedures README.md "$tree/"
    mkdir -p "$tree/src/app" "$tree/tests" "$tree/out/fonts" "$scratch/prefix"
    cp src/app/main.c "$tree/src/app/"
    cp -R tests/fleet tests/islands "$tree/tests/"
    cp "$MAYDECK" "$tree/out/maydeck"
    chown -R $owner:$owner "$tree"
    (cd "$tree" && SUDO_UID=$owner SUDO_GID=$owner make cli_first= cli_not_san= fleet_tests= \
        fleets_not_san= out/build/release/flags out/fonts/.copied manifest) >"$scratch/made" 2>&1 ||
        not_ok set-up-make "$(cat "$scratch/made")"
    expect_empty set-up-owner "$(find "$tree" ! -user $owner)"
    if [ -s "$tree/out/build/release/flags" ] && [ -f "$tree/out/fonts/.copied" ]; then
        ok set-up-made
    else
        not_ok set-up-made "$(cat "$scratch/made")"
    fi
    (cd "$tree" && SUDO_UID=$owner SUDO_GID=$owner make cli_first= cli_not_san= fleet_tests= \
        fleets_not_san= install-program install-data prefix="$scratch/prefix") >"$scratch/made" 2>&1 ||
        not_ok set-up-install "$(cat "$scratch/made")"
    expect_equal set-up-installed-owner root "$(stat -c %U "$scratch/prefix/bin/maydeck")"
    expect_empty set-up-install-owner "$(find "$tree" ! -user $owner)"
    # Two jobs at once fetch the sources of a static program once.
    (cd "$tree" && make -n STATIC=1 cli_first= cli_not_san= fleet_tests= fleets_not_san= \
        out/sources/harfbuzz.version out/sources/libharu.version) >"$scratch/made" 2>&1
    expect_equal set-up-sources-once 1 "$(grep -c '^sh .setup/sources$' "$scratch/made")"
    # A folder of another is nobody's concern: root's own clone stays root's.
    chown -R 0:0 "$tree"
    rm -r "$tree/out/build"
    (cd "$tree" && SUDO_UID=$owner SUDO_GID=$owner make cli_first= cli_not_san= fleet_tests= \
        fleets_not_san= out/build/release/flags) >"$scratch/made" 2>&1
    expect_equal set-up-of-root root "$(stat -c %U "$tree/out/build/release/flags")"
fi

# ---- what calls apt-get ----

# A system in which one package is missing, and apt-get, sudo and id only tell what they are asked.
tools=$scratch/tools
mkdir "$tools"
cat >"$tools/dpkg-query" <<'END'
#!/bin/sh
shift 2
for name in "$@"; do [ "$name" = gcc ] || echo "$name installed"; done
END
printf '#!/bin/sh\necho "$USER_IS apt-get $*" >>"%s"\n' "$scratch/asked" >"$tools/apt-get"
printf '#!/bin/sh\nUSER_IS=root; export USER_IS; exec "$@"\n' >"$tools/sudo"
printf '#!/bin/sh\necho "$ID_IS"\n' >"$tools/id"
chmod +x "$tools"/*

# set_up NAME ID: what was asked of apt-get, as whom
set_up() {
    : >"$scratch/asked"
    PATH="$tools:$PATH" ID_IS=$2 USER_IS=caller sh .setup/packages build >"$scratch/stdout" 2>"$scratch/stderr"
    status=$?
    expect_status "set-up-$1" 0
    expect_equal "set-up-$1-told" 'packages: installing gcc' "$(sed 's/ (.*//' "$scratch/stdout")"
}
set_up as-user 1000
expect_equal set-up-as-user-asks 'root apt-get update -q
root apt-get install -q -y --no-install-recommends gcc' "$(cat "$scratch/asked")"
set_up as-root 0
expect_equal set-up-as-root-asks 'caller apt-get update -q
caller apt-get install -q -y --no-install-recommends gcc' "$(cat "$scratch/asked")"

# With nothing missing nobody is asked.
printf '#!/bin/sh\nshift 2\nfor name in "$@"; do echo "$name installed"; done\n' >"$tools/dpkg-query"
: >"$scratch/asked"
PATH="$tools:$PATH" ID_IS=1000 USER_IS=caller sh .setup/packages build >"$scratch/stdout" 2>&1
expect_empty set-up-complete "$(cat "$scratch/asked" "$scratch/stdout")"
exit $failures
