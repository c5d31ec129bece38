#!/bin/sh
# Completion: the scripts as shells run them, in a terminal with the key TAB where there is one; and
# the names that they ask for.
. tests/tap.sh

# ---- names ----

expect_names() {
    name=$1 names=$2
    shift 2
    maydeck completion "$@"
    expect_status "names-$name" 0
    expect_empty "names-$name-stderr" "$(cat "$scratch/stderr")"
    expect_equal "names-$name-all" "$names" "$(tr '\n' ' ' <"$scratch/stdout")"
}
expect_names boats 'bramble samphire tamarisk ' boats tests/fleet
expect_names models 'sloop ' models tests/islands
expect_names no-models '' models tests/fleet
expect_names cards "$("$MAYDECK" list cards | sed 1d | awk '{ printf "%s ", $2 }')" cards
expect_names natures "$("$MAYDECK" list natures | sed 1d | awk '{ printf "%s ", $1 }')" natures
expect_names items "$("$MAYDECK" list items | sed 1d | awk '{ printf "%s ", $1 }')" items
expect_names zones "$("$MAYDECK" list zones | sed 1d | awk '{ printf "%s ", $1 }')" zones
expect_names checks "$("$MAYDECK" check --list | awk '{ printf "%s ", $1 }')" checks
expect_names languages 'en ' languages
maydeck completion figures
for figure in $(head -n 3 "$scratch/stdout"); do
    maydeck why tests/fleet --boat bramble --figure "$figure"
    [ "$status" -ne 2 ] || not_ok "figure-$figure" "$(cat "$scratch/stderr")"
done
maydeck completion topics
[ "$(wc -l <"$scratch/stdout")" -gt 30 ] || not_ok topics-some
for topic in $(cat "$scratch/stdout"); do
    maydeck help "$topic"
    [ "$status" -eq 0 ] || not_ok "topic-$topic" "$(cat "$scratch/stderr")"
done

maydeck completion words
expect_empty words-once "$(sort "$scratch/stdout" | uniq -d)"
cp "$scratch/stdout" "$scratch/words"
for list in items zones cards checks topics; do
    maydeck completion "$list"
    expect_empty "words-have-$list" "$(grep -vxF -f "$scratch/words" "$scratch/stdout")"
done
for word in seacock navigation_station flooding openings_too_few raft_places spot rescue_centre equipment/how; do
    maydeck help "$word"
    expect_status "word-$word" 0
    grep -q "^  \([a-z_/]*/\)\{0,1\}$word\( \|\$\)" "$scratch/stdout" || not_ok "word-$word-told" "$(cat "$scratch/stdout")"
done

# What lies in boats/ and is not read is no boat; a boat with errors is one.
base="$scratch/two words"
mkdir -p "$base/boats" "$base/models"
cp tests/fleet/base.yaml "$base"
echo 'boat: {' >"$base/boats/broken.yaml"
cp tests/fleet/boats/bramble.yaml "$base/boats/tern two.yaml"
cp tests/fleet/boats/bramble.yaml "$base/boats/tern.yaml.before-1"
cp tests/fleet/boats/bramble.yaml "$base/boats/.hidden.yaml"
expect_names strays 'broken tern two ' boats "$base"

# refused NAME ARGUMENT...: status 2, told, nothing on standard output
refused() {
    name=$1
    shift
    maydeck completion "$@"
    expect_status "refused-$name" 2
    expect_empty "refused-$name-stdout" "$(cat "$scratch/stdout")"
    grep -q '  remedy: ' "$scratch/stderr" || not_ok "refused-$name-told"
}
refused nothing
refused none csh
refused no-base boats
refused not-a-base boats "$scratch"
refused two boats tests/fleet tests/islands

# ---- what is completed ----

# LINE -> WORDS, in the order of their bytes; the cursor stands behind the line.
cat >"$scratch/lines" <<END
maydeck pri -> print
maydeck print tests/fleet --boat -> bramble samphire tamarisk
maydeck print tests/fleet --boat ta -> tamarisk
maydeck print tests/fleet --boat tamarisk,br -> tamarisk,bramble
maydeck print -o cards --paper a4 tests/fleet --boat s -> samphire
maydeck check --boat nothing tests/islands --boat y -> yarrow
maydeck print tests/fleet --card floo -> flooding
maydeck why tests/fleet --card flooding,cabin -> flooding,cabin_fire
maydeck print tests/fleet --paper -> a4 a5 letter
maydeck call tests/fleet --nature li -> listing
maydeck why tests/fleet --figure beat -> beat_pumps
maydeck start tests/islands --like s -> sloop
maydeck survey tests/fleet --hull cat -> catamaran
maydeck start nowhere --hull tri -> trimaran
maydeck print tests/fleet --stick -> --stickers
maydeck print tests/fleet --lang e -> en
maydeck list zo -> zones
maydeck manual ref -> reference
maydeck completion boats tests/flee -> tests/fleet
maydeck print tests/flee -> tests/fleet
maydeck verify --base tests/flee -> tests/fleet
maydeck help glo -> glossary
maydeck help fuel_shutoff_d -> fuel_shutoff_diesel
maydeck help navigation_s -> navigation_station
maydeck help openings_too_f -> openings_too_few
maydeck help cabin_f -> cabin_fire
END

# told NAME EXPECTED: the words in $scratch/found
told() {
    expect_equal "$1" "$2" "$(sort -u "$scratch/found" | sed 's,/$,,' | tr '\n' ' ' | sed 's/ $//')"
}
# lines_try SHELL: `completed LINE` tells the words
lines_try() {
    while IFS= read -r row; do
        line=${row% -> *} words=${row##* -> }
        case $line in
        *--boat | *--paper) line="$line " ;;
        esac
        completed "$line" >"$scratch/found" 2>"$scratch/stderr"
        told "$1-$(echo "$line" | tr ' /' '-')" "$words"
        expect_empty "$1-quiet" "$(cat "$scratch/stderr")"
    done <"$scratch/lines"
}
mkdir -p "$scratch/bin" "$scratch/home"
ln -s "$MAYDECK" "$scratch/bin/maydeck"
PATH=$scratch/bin:$PATH
HOME=$scratch/home
export PATH HOME

if command -v bash >/dev/null; then
    maydeck completion bash
    cp "$scratch/stdout" "$scratch/maydeck.bash"
    cat >"$scratch/try.bash" <<'END'
source "$1"
COMP_LINE=$2
read -ra COMP_WORDS <<<"$2"
[[ $2 != *' ' ]] || COMP_WORDS+=('')
COMP_CWORD=$((${#COMP_WORDS[@]} - 1))
complete -p maydeck >/dev/null && _maydeck
printf '%s\n' "${COMPREPLY[@]}"
END
    completed() {
        bash --norc "$scratch/try.bash" "$scratch/maydeck.bash" "$1"
    }
    lines_try bash
else
    skip bash 'no bash'
fi
if command -v fish >/dev/null; then
    maydeck completion fish
    cp "$scratch/stdout" "$scratch/maydeck.fish"
    completed() {
        fish --no-config -c "source $scratch/maydeck.fish; complete -C '$1'" | cut -f 1
    }
    lines_try fish
    completed 'maydeck check tests/fleet --boat=b' >"$scratch/found"
    told fish-joined '--boat=bramble'
    fish --no-config -c "source $scratch/maydeck.fish; complete -C \"maydeck check '$base' --boat te\"" |
        cut -f 1 >"$scratch/found"
    told fish-spaced 'tern two'
else
    skip fish 'no fish'
fi
if command -v zsh >/dev/null; then
    mkdir -p "$scratch/functions"
    maydeck completion zsh
    cp "$scratch/stdout" "$scratch/functions/_maydeck"
    expect_empty zsh-syntax "$(zsh -n "$scratch/functions/_maydeck" 2>&1)"
else
    skip zsh 'no zsh'
fi

# ---- in a terminal ----

# typed SHELL LINE EXPECTED: what the line is behind a TAB
typed() {
    $terminal send-keys C-u
    $terminal send-keys -l "$2"
    $terminal send-keys Tab
    for _ in 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15; do
        $terminal capture-pane -p -J >"$scratch/pane"
        grep -qF -e "$3" "$scratch/pane" && break
        sleep 1
    done
    grep -qF -e "$3" "$scratch/pane" || not_ok "terminal-$1" "$2" "$(grep . "$scratch/pane" | tail -n 5)"
}
# terminal_try SHELL COMMAND SET_UP
terminal_try() {
    if ! command -v tmux >/dev/null || ! command -v "$1" >/dev/null; then
        skip "terminal-$1" "no tmux or no $1"
        return
    fi
    if ! has_terminals; then
        skip "terminal-$1" 'no terminal to be had here'
        return
    fi
    terminal="tmux -S $scratch/$1.socket -f /dev/null"
    if ! $terminal new-session -d -x 110 -y 24 "$2" 2>"$scratch/stderr"; then
        not_ok "terminal-$1" "$(cat "$scratch/stderr")"
        return
    fi
    sleep 1
    $terminal send-keys -l "$3; echo rea''dy"
    $terminal send-keys Enter
    typed "$1" '' ready
    typed "$1" 'maydeck pri' 'maydeck print'
    typed "$1" 'maydeck print tests/fleet --boat tam' '--boat tamarisk'
    typed "$1" 'maydeck check tests/islands --boat campion,ye' '--boat campion,ye'
    typed "$1" 'maydeck check tests/islands --boat campion,ya' '--boat campion,yarrow'
    typed "$1" 'maydeck why tests/fleet --card gas_l' '--card gas_leak'
    typed "$1" 'maydeck print --pap' '--paper'
    typed "$1" "maydeck check \"$base\" --boat bro" '--boat broken'
    typed "$1" 'maydeck call tests/fleet --boat=sam' '--boat=samphire'
    ok "terminal-$1"
    $terminal kill-server
}
terminal_try bash 'bash --norc --noprofile -i' ". $scratch/maydeck.bash"
terminal_try zsh 'zsh -f -i' \
    "fpath=($scratch/functions \$fpath); autoload -Uz compinit; compinit -u -d $scratch/dump"
terminal_try fish 'fish --no-config -i' "source $scratch/maydeck.fish"
exit $failures
