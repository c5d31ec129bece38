#!/bin/sh
# The package for Debian: what is in it, that it runs nothing when it is installed or removed, that it
# prints the same cards, and that it is made with the same bytes each time.
. tests/tap.sh

if ! command -v dpkg-shlibdeps >/dev/null; then
    skip deb 'dpkg-dev is not installed'
    exit 0
fi
if [ "$VARIANT" != release ]; then
    skip deb 'the release build is packed'
    exit 0
fi
unset MAYDECK_DATA DESTDIR
if make deb-pack >"$scratch/made" 2>&1; then ok deb-made; else not_ok deb-made "$(cat "$scratch/made")"; fi
version=$("$MAYDECK" --version | cut -d ' ' -f 2)
package=out/maydeck_$version-1_$(dpkg --print-architecture).deb
cp "$package" "$scratch/first.deb"
root="$scratch/a root"
dpkg-deb -x "$package" "$root"
dpkg-deb -e "$package" "$scratch/control"
expect_equal deb-no-scripts 'control md5sums' "$(ls "$scratch/control" | tr '\n' ' ' | sed 's/ $//')"
expect_equal deb-below-usr usr "$(ls -A "$root")"
expect_equal deb-owners root/root "$(dpkg-deb -c "$package" | awk '{ print $2 }' | sort -u)"
(cd "$root" && md5sum --quiet -c "$scratch/control/md5sums") >"$scratch/said" 2>&1
expect_empty deb-sums "$(cat "$scratch/said")"
expect_equal deb-version "$version-1" "$(dpkg-deb -f "$package" Version)"
# Each library that the program asks for is of a package that is named.
missing=
for library in libharfbuzz0b libharfbuzz-subset0 libhpdf libyaml libutf8proc zlib1g libc6; do
    dpkg-deb -f "$package" Depends | tr ',' '\n' | grep -q "^ *$library" ||
        missing="$missing $library"
done
expect_empty deb-depends "$missing"
said=$(sh .setup/installcheck "$MAYDECK" "$root/usr/bin/maydeck" 2>&1)
expect_equal deb-prints "installcheck: 8 files by $root/usr/bin/maydeck are the same to the byte" "$said"
make deb-pack >"$scratch/made" 2>&1
if cmp -s "$package" "$scratch/first.deb"; then ok deb-same-bytes; else not_ok deb-same-bytes; fi
if command -v lintian >/dev/null; then
    expect_empty deb-lintian "$(lintian --allow-root "$package" 2>&1 | grep '^[EW]:' |
        grep -v 'W: maydeck: no-manual-page')"
else
    skip deb-lintian 'lintian is not installed'
fi
exit $failures
