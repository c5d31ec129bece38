#!/bin/sh
# Installing: what is put where, that it prints the same from there, that nothing of it stays, that
# a folder with spaces builds, that no more than one object knows the prefix, and the archive of sources.
. tests/tap.sh

unset MAYDECK_DATA DESTDIR
stage="$scratch/a stage"

# made NAME ARGUMENT...: make with these, in the working folder.
made() {
    name=$1
    shift
    if make "$@" >"$scratch/made" 2>&1; then ok "install-$name"; else not_ok "install-$name" "$(cat "$scratch/made")"; fi
}

# installed_list FOLDER: what stands there, but for the texts, faces and examples.
installed_list() {
    (cd "$1" && find . -type f ! -path '*/procedures/*' ! -path '*/fonts/*' ! -path '*/examples/*' \
        ! -path '*/man/*' ! -name '*maydeck.fish' ! -path '*completion*' ! -name _maydeck |
        sed 's,^\./,,' | sort)
}

made staged install-program install-data install-manual DESTDIR="$stage" prefix=/usr
expect_equal install-staged-list 'usr/bin/maydeck
usr/share/doc/maydeck/.pictures/card.png
usr/share/doc/maydeck/README.md' "$(installed_list "$stage")"
# What README shows lies where its link leads.
picture=$(sed -n 's/.*<img src="\([^"]*\)".*/\1/p' README.md)
cmp "$picture" "$stage/usr/share/doc/maydeck/$picture" >"$scratch/differs" 2>&1 &&
    ok install-staged-picture || not_ok install-staged-picture "$(cat "$scratch/differs")"
expect_equal install-staged-rights '644 755' \
    "$(cd "$stage/usr" && find . -type f -exec stat -c %a {} + | sort -u | tr '\n' ' ' | sed 's/ $//')"
expect_empty install-staged-texts "$(diff -r procedures "$stage/usr/share/maydeck/procedures" 2>&1)"
expect_empty install-staged-faces \
    "$(diff -r -x '.*' out/fonts "$stage/usr/share/maydeck/fonts" 2>&1)"
said=$(DESTDIR=$stage DATA=/usr/share/maydeck sh .setup/installcheck "$MAYDECK" \
    "$stage/usr/bin/maydeck" 2>&1)
expect_equal install-staged-prints "installcheck: 8 files by $stage/usr/bin/maydeck are the same to the byte" "$said"

# The check itself can fail.
echo '# a remark' >>"$stage/usr/share/maydeck/procedures/flooding.yaml"
if DESTDIR=$stage DATA=/usr/share/maydeck sh .setup/installcheck "$MAYDECK" \
    "$stage/usr/bin/maydeck" >"$scratch/said" 2>&1; then
    not_ok install-check-bites
else
    ok install-check-bites
fi

made uninstall uninstall DESTDIR="$stage" prefix=/usr
expect_empty install-uninstalled "$(find "$stage" -type f)"
expect_empty install-uninstalled-folders "$(find "$stage" -name maydeck)"

# Each of GNU's names is followed; data that are not beside the program are named to it.
made named install-program install-data install-manual DESTDIR="$stage" prefix=/p exec_prefix=/e \
    datadir=/d docdir=/doc
expect_equal install-named-list 'doc/.pictures/card.png
doc/README.md
e/bin/maydeck' "$(installed_list "$stage")"
expect_empty install-named-texts "$(diff -r procedures "$stage/d/maydeck/procedures" 2>&1)"
said=$(DESTDIR=$stage DATA=/d/maydeck sh .setup/installcheck "$MAYDECK" "$stage/e/bin/maydeck" 2>&1)
expect_equal install-named-prints "installcheck: 8 files by $stage/e/bin/maydeck are the same to the byte" "$said"
# What is another's stays, even in a folder that is named for this program.
echo another >"$stage/doc/another"
made named-uninstall uninstall DESTDIR="$stage" prefix=/p exec_prefix=/e datadir=/d docdir=/doc
expect_equal install-named-uninstalled "$stage/doc/another" "$(find "$stage" -type f)"

# A folder with a space, moved there with all that was built: another prefix takes one object.
case $VARIANT in
release)
    clone="$scratch/a clone"
    mkdir -p "$clone/out/build"
    cp -a Makefile include src tests fonts procedures .setup .pictures README.md "$clone/"
    cp -a out/build/release "$clone/out/build/"
    cp -a out/maydeck out/fonts "$clone/out/"
    (cd "$clone" && make all prefix=/opt/elsewhere) >"$scratch/made" 2>&1
    expect_equal install-one-object '  CC   src/app/places.c
  LINK out/maydeck' "$(cat "$scratch/made")"
    (cd "$clone" && made in-spaces install DESTDIR="$stage" prefix=/opt/elsewhere &&
        sh .setup/installcheck out/maydeck "$stage/opt/elsewhere/bin/maydeck") >"$scratch/said" 2>&1
    cat "$scratch/said"
    grep -q 'the same to the byte$' "$scratch/said" || not_ok install-in-spaces-prints
    # Data that are not beside the program are found where it was built to be installed.
    far="$scratch/far away"
    (cd "$clone" && made far install prefix="$far" bindir="$scratch/near/bin" datadir="$far/data" &&
        sh .setup/installcheck out/maydeck "$scratch/near/bin/maydeck") >"$scratch/said" 2>&1
    cat "$scratch/said"
    grep -q 'the same to the byte$' "$scratch/said" || not_ok install-far-prints
    ;;
*) skip install-in-spaces 'the release build is moved' ;;
esac

# The archive holds what the tree holds, the same bytes each time, and can be made of itself.
made dist dist
archive=$(sed -n '$p' "$scratch/made")
cp "$archive" "$scratch/first.tar.gz"
version=$("$MAYDECK" --version | tr ' ' -)
expect_equal install-dist-name "out/$version.tar.gz" "$archive"
mkdir "$scratch/unpacked"
tar -xzf "$archive" -C "$scratch/unpacked"
if [ -e .git ]; then
    expect_equal install-dist-whole "$(git ls-files | LC_ALL=C sort)" \
        "$(cd "$scratch/unpacked/$version" && find . -type f | sed 's,^\./,,' | LC_ALL=C sort)"
fi
(cd "$scratch/unpacked/$version" && made dist-of-itself dist)
if cmp -s "$scratch/first.tar.gz" "$scratch/unpacked/$version/$archive"; then
    ok install-dist-same
else
    not_ok install-dist-same "$(tar -tvzf "$scratch/unpacked/$version/$archive" | head -n 3)"
fi
# The sums of a release: written of an archive that can be made again, and of no other.
tree=$scratch/unpacked/$version
(cd "$tree" && sh .setup/sums "${version#maydeck-}") >"$scratch/sums" 2>&1
expect_equal install-sums "$(cd "$tree/out" && sha256sum "$version.tar.gz")" \
    "$(cat "$tree/out/SHA256SUMS" 2>/dev/null)"
rm -f "$tree/out/SHA256SUMS"
(cd "$tree/out" && gunzip "$version.tar.gz" && gzip -1 "$version.tar")
(cd "$tree" && sh .setup/sums "${version#maydeck-}") >"$scratch/sums" 2>&1 && not_ok install-sums-refused
[ ! -e "$tree/out/SHA256SUMS" ] || not_ok install-sums-none "$(cat "$scratch/sums")"
if (cd "$scratch/unpacked/$version" && make VARIANT=release out/build/release/src/app/places.o) >"$scratch/made" 2>&1; then
    ok install-dist-compiles
else
    not_ok install-dist-compiles "$(cat "$scratch/made")"
fi
exit $failures
