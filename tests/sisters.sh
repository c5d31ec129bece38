# Sourced by tests of sister ships, after tap.sh: a base of 40 boats in five models, made from
# the specimens. Each boat has reserved identities and dates of her own, and all else from her
# model.

# own_keys: of which a model may say nothing.
own_keys='service_due|expires|serviced|made|installed|tried|serial|hex_id|mmsi'

# model_lay NAME SPECIMEN [SED...]: the model that the specimen is taken for, so changed.
model_lay() {
    model=$1 specimen=$2
    shift 2
    mkdir -p "$sisters/models"
    {
        echo 'changed: 2026-11-01'
        sed -E -e '/^#/d' -e '/^  (name|specimen|call_sign|mmsi|mmsi_programmed):/d' \
            -e "s/, ($own_keys): (\"[^\"]*\"|[^,}]*)//g" \
            "tests/fleet/boats/$specimen.yaml" | awk '!/^ /{skip = /^silenced:/} !skip' | sed -E -e '' "$@"
    } >"$sisters/models/$model.yaml"
}

# model_survey NAME: what the specimens leave out that only helps, looked for and not there.
model_survey() {
    sed -i '/^not_fitted:/a\
  - blankets\
  - foghorn\
  - bilge_access\
  - emergency_aerial\
  - cooker\
  - watertight_door' "$sisters/models/$1.yaml"
}

# beacon_of NUMBER: the identity of a beacon that has the last six digits of an MMSI in it.
beacon_of() {
    printf '%015X' $(((0x1904 << 44) + ($1 << 25) + 0x0FFBFF))
}

# sister_lay BOAT MODEL SPECIMEN NUMBER NAME CALL_SIGN: a boat that is like the model.
sister_lay() {
    mkdir -p "$sisters/boats"
    {
        echo "like: $2"
        echo 'walked: {date: 2026-11-20, by: AB}'
        echo "boat: {name: $5, specimen: yes}"
        echo 'radio:'
        echo "  call_sign: $6"
        if grep -q '^  mmsi:' "tests/fleet/boats/$3.yaml"; then
            printf '  mmsi: "200%06d"\n  mmsi_programmed: yes\n' "$4"
        fi
        echo 'equipment:'
        sed -E -n "/^  - \{item:.*, ($own_keys): /p" "tests/fleet/boats/$3.yaml" | awk -v keys="$own_keys" '
            {
                match($0, /tag: [A-Z][0-9]+/)
                line = "  - {" substr($0, RSTART, RLENGTH)
                while (match($0, ", (" keys "): (\"[^\"]*\"|[^,}]*)")) {
                    line = line substr($0, RSTART, RLENGTH)
                    $0 = substr($0, RSTART + RLENGTH)
                }
                print line "}"
            }' | sed -E "s/hex_id: \"[^\"]*\"/hex_id: \"$(beacon_of "$4")\"/"
        awk '!/^ /{keep = /^silenced:/} keep' "tests/fleet/boats/$3.yaml"
    } >"$sisters/boats/$1.yaml"
}

# eight_lay MODEL SPECIMEN LETTER: eight boats of a model, named by the letter and one more.
eight_lay() {
    for second in a e i l o r t u; do
        sister_number=$((sister_number + 1))
        sister_lay "${1}_$second" "$1" "$2" "$sister_number" \
            "$(echo "$3" | tr 'a-z' 'A-Z')${second}lder" \
            "Q$(echo "${3}${second}" | tr 'a-z' 'A-Z')X3"
    done
}

# forty_lay: the whole base, in the folder $sisters.
forty_lay() {
    rm -rf "$sisters"
    mkdir -p "$sisters"
    cp tests/fleet/base.yaml "$sisters/"
    sister_number=15100
    model_lay sloop tamarisk
    model_lay ketch tamarisk -e 's/spot: aft face/spot: low down/' -e 's/loa_m: .*/loa_m: 13.1/'
    model_lay cat samphire
    model_lay yawl tamarisk -e 's/looks: .*/looks: Blue sailing yacht/'
    model_lay wide samphire -e 's/loa_m: .*/loa_m: 14.0/'
    for model in sloop ketch cat yawl wide; do
        model_survey $model
    done
    eight_lay sloop tamarisk s
    eight_lay ketch tamarisk k
    eight_lay cat samphire c
    eight_lay yawl tamarisk y
    eight_lay wide samphire d
}
