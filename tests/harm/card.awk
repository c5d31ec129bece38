# card.awk - a page dump as what a reader takes in: a line each of
#     boat <tab> card <tab> kind <tab> step <tab> text <tab> tags
# kind: title number bar head bold lethal row cell heads ask yes no never caution signs
# panel (who calls, with what) set (how) script nature contact, another section's words under
# the section's own name, and glyph (of a block) and mark (a tag on the plan).
# The bold beginning of a headline is told apart as `bold`. A line of NEVER that begins a
# sentence without the bold word has kind `never-bare`.

function value(name) {
    return match($0, " " name "=[^ ]+") ? substr($0, RSTART + length(name) + 2, \
        RLENGTH - length(name) - 2) : ""
}

# Sets kind, block, x, y, height, role, ink, face, baseline, size and text.
function item_read(    part) {
    kind = $1
    if (!match($0, / -?[0-9]+,-?[0-9]+ -?[0-9]+x-?[0-9]+/)) { kind = ""; return }
    block = substr($0, length(kind) + 2, RSTART - length(kind) - 2)
    split(substr($0, RSTART + 1, RLENGTH - 1), part, /[ ,x]/)
    x = part[1] + 0; y = part[2] + 0; height = part[4] + 0
    role = value("role"); ink = value("ink"); face = value("face")
    baseline = value("baseline") + 0; size = value("size") + 0
    text = match($0, / ".*"$/) ? substr($0, RSTART + 2, RLENGTH - 3) : ""
}

function tell(what, step, words, tags) {
    printf "%s\t%s\t%s\t%s\t%s\t%s\n", boat, card, what, step, words, tags
}

function line_end() {
    if (open == "head") tell("bold", step, bold, "")
    if (open != "") tell(open, step, line, tags)
    open = line = tags = bold = ""
}

function line_begin(what) { line_end(); open = what }

function line_add(words) { line = line (line == "" ? "" : " ") words }

# Steps: a headline, lines of what kills, rows with tags, a table of openings.
function step_read() {
    if (role == "plan_tag") return              # stands for a sign that nobody drew
    if (role == "number") { line_end(); step = text + 0; table = 0; return }
    if (role == "headline") {
        if (open != "head") { line_begin("head"); left = x; leading = 1 }
        leading = leading && face == "bold"
        if (leading) bold = bold (bold == "" ? "" : " ") text
        line_add(text)
        return
    }
    if (ink == "white") {                       # a tag: of a new row, or one more of the same
        what = table ? "cell" : "row"
        if (!(open == what && line == "" && baseline == last_tag)) line_begin(what)
        last_tag = baseline
        tags = tags (tags == "" ? "" : " ") text
        return
    }
    if (x == left && face == "bold") {
        if (text ~ /^(PORT|STARB.*D|CENTRE|BOTH SIDES|SIDE NOT RECORDED)$/) {
            table = 1
            line_begin("heads")
        } else if (!(open == "lethal")) line_begin("lethal")
    } else if (table && face == "bold" && open == "cell") line_begin("heads")
    line_add(text)
}

# NEVER: each sentence begins with the bold word, on a line of its own.
function never_read() {
    if (role == "source_tag") return
    begins = face == "bold" && text == "Never"
    if (baseline != never_line) { never_line = baseline; first = 1 } else first = 0
    if (begins) line_begin(first ? "never" : "never-bare")
    else if (first && (line == "" || line ~ /[.!?]$/)) line_begin("never-bare")
    line_add(text)
}

function decision_read() {
    if (ink == "black" && face == "bold" && text == "YES") line_begin("yes")
    else if (ink == "black" && face == "bold" && text == "NO") line_begin("no")
    else if (open == "") line_begin("ask")
    line_add(text)
}

# The panel's left side is how to call, its right side what to say.
function call_read() {
    if (role == "contact") { tell("panel", "", text, ""); return }
    side = divide && x > divide ? "script" : "set"
    apart = divide ? baseline - set_line > 1.5 * size : baseline != set_line
    if (side == "set" && (open != "set" || apart)) line_begin("set")
    if (side == "script" && open != "script") line_begin("script")
    if (side == "set") set_line = baseline
    line_add(text)
}

function file_begin() {
    line_end()
    name = FILENAME
    sub(/.*\//, "", name); sub(/\.dump$/, "", name)
    boat = name; sub(/-.*/, "", boat)
    card = name; sub(/^[^-]*-/, "", card)
    step = ""; table = divide = 0; last_block = ""
}

# The line between the panel's sides stands among its texts: it must be known before.
function divide_find(    file, found) {
    file = FILENAME
    while ((getline found < file) > 0)
        if (found ~ /^line call [0-9]+,[0-9]+ 0x/) {
            sub(/^line call /, "", found)
            divide = found + 0
        }
    close(file)
}

FNR == 1 { file_begin(); divide_find() }
{ item_read() }
kind == "sign" { tell("glyph", "", value("glyph"), block); next }
kind != "text" || block == "footer" || block == "mark" { next }
block != last_block { line_end(); last_block = block; if (block != "steps") step = "" }
block == "title" && text ~ /^Card [0-9]/ { tell("number", "", text, ""); next }
block == "title" && role != "title" { next }
block == "plan" { if (role == "plan_tag") tell("mark", "", text, text); next }
block == "steps" { step_read(); next }
block == "never" { never_read(); next }
block == "decision" { decision_read(); next }
block == "call" { call_read(); next }
block == "cautions" && role == "source_tag" { next }
block == "cautions" && text == "CAUTION" { line_begin("caution"); next }
{
    what = block == "call line" ? "bar" : block == "cautions" ? "caution" : block
    if (open != what) line_begin(what)
    line_add(text)
}
END { line_end() }
