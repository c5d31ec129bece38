# card.awk - a page dump as what a reader takes in (read after tests/item.awk): a line each of
#     boat <tab> card <tab> kind <tab> step <tab> text <tab> tags
# kind: title number bar head bold lethal row cell heads ask yes no never caution signs
# panel (who calls, with what) set (how) script nature contact, another section's words under
# the section's own name, and glyph (of a block) and mark (a tag on the plan).
# The bold beginning of a headline is told apart as `bold`. A line of NEVER that begins a
# sentence without the bold word has kind `never-bare`.

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

# Steps: a headline, lines of what kills, rows with tags by place, a table of openings. A row is
# told a piece of gear: "Cockpit, PORT, by the wheel Engine stop: hold STOP".

# Bold words that no end state and no headline are: a line of its own, a head of the table, or
# the place of what follows. Which of the two last the next tag tells.
function bold_read() {
    held_end()
    if (text ~ /^(PORT|STARB.*D|CENTRE|BOTH SIDES|SIDE NOT RECORDED):?$/) {
        table = 1
        line_begin("heads")
        line_add(text)
    } else if (x == left && !table) {
        if (open != "lethal") line_begin("lethal")
        line_add(text)
    } else { line_end(); held = text }
}
function held_end(    words) {
    if (held == "") return
    words = held
    held = ""
    if (open != "lethal") line_begin("lethal")
    line_add(words)
}
function tag_read() {
    if (held != "") { place = held; held = "" }
    if (!(open ~ /^(row|cell)$/ && line == place)) {
        line_begin(table ? "cell" : "row")
        line = place
    }
    tags = tags (tags == "" ? "" : " ") text
}
function step_read(    ended) {
    if (role == "plan_tag") return              # stands for a sign that nobody drew
    if (role == "number") { held_end(); line_end(); step = text + 0; table = 0; place = ""; return }
    if (role == "headline") {
        if (open != "head") { line_begin("head"); left = x; leading = 1 }
        leading = leading && face == "bold"
        if (leading) bold = bold (bold == "" ? "" : " ") text
        line_add(text)
        return
    }
    ended = equals
    equals = text ~ /=$/
    if (ink == "white") { tag_read(); return }
    if (face == "bold" && !ended && !(open == "row" && text == "NOT RECORDED")) { bold_read(); return }
    if (held != "") { held = held " " text; return }
    if (text == "=") { line = line ":"; return }
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
    apart = apart || baseline != set_line && face == "bold" && line ~ /[.:]$/  # on a full panel
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
    sub(/_[0-9]+$/, "", card)                   # its sides are one card
    step = never_line = ""; table = divide = 0; last_block = ""
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
