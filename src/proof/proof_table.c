/* proof_table.c - the page rules, one row each (room: proof). Everything else about
 * proofreading follows from this table; it judges nothing. A limit that gives way to
 * another need of the page says so in its row. */
#include "proof.h"

#include "promise.h"

#define HOUSE "a house rule"
#define EVERY ""
#define BY_WORDS "languages whose words file has no list for it"

static const struct proof_rule rules[RULE_COUNT] = {
    [RULE_SAFE_AREA] = {"G1", "everything stands inside the safe area",
        "sides 10, head 16, foot 8 mm; on A5 8, 15, 7", "move it inside, or shorten it",
        PROOF_ERROR, PROOF_PAGE,
        "the outer half of a frame's own line (0.35 mm): still 7.6 mm from the paper's edge; the "
        "two marks of what kind of copy it is stand beside the hole, 5 mm from the edge",
        "edges that printers cannot print, 4.0 to 4.3 mm"},
    [RULE_HOLE] = {"G1", "the punched hole takes nothing away",
        "7.5 mm round a point 8 mm below the paper's edge", "move it down", PROOF_ERROR,
        PROOF_PAGE, EVERY, HOUSE},
    [RULE_CORNERS] = {"G1", "the rounded corners take nothing away",
        "3 mm inside corners of 5 mm", "move it inwards", PROOF_ERROR, PROOF_PAGE, EVERY, HOUSE},
    [RULE_TEXT_OVER_TEXT] = {"G2", "no words touch other words",
        "1 mm of paper between them", "move one of them, or shorten it", PROOF_ERROR,
        PROOF_PAGE, "words of one line are a word space apart, a bold word and a mark at it that "
        "is not bold as close as in any word, and lines of one paragraph their leading (G6); "
        "tags on the plan: see the next but one. 0.5 mm between lines of text "
        "that are stacked (rows, table, footer): spacing yields first", HOUSE},
    [RULE_TEXT_OVER_SIGN] = {"G2", "no words touch a sign", "0.5 mm of paper between them",
        "move one of them", PROOF_ERROR, PROOF_PAGE, EVERY, HOUSE},
    [RULE_SIGN_OVER_SIGN] = {"G2", "no sign touches another sign", "0 mm between their frames",
        "give the rows more height", PROOF_ERROR, PROOF_PAGE,
        "1 mm gives way to 14 rows on a card: each frame has its own black line, "
        "inside the square that is measured", HOUSE},
    [RULE_MARKERS_APART] = {"G2", "tags on a plan stand apart", "0.3 mm of paper between them",
        "record at: for one of them, or a nearer zone", PROOF_ERROR, PROOF_PAGE,
        "1 mm gives way on the small plan, where 14 tags stand in 25 mm; each has its own frame",
        HOUSE},
    [RULE_EDGE_CROSSED] = {"G3", "no words run over a line or over the edge of a box",
        "0.1 mm from any line", "shorten the words, or give the box more room", PROOF_ERROR,
        PROOF_PAGE, "names and tags on the plan may touch the boat's own lines, and white "
        "halos that were painted before them; what they stand on is judged by G7", HOUSE},
    [RULE_BLOCKS_APART] = {"G3", "no block runs into another", "0 mm of overlap",
        "shorten what is in the block", PROOF_ERROR, PROOF_PAGE,
        "names round a plan and the lines to them: their words are judged one by one (G2, "
        "G20); the two goes in which a plan is painted, under those lines and over them", HOUSE},
    [RULE_WORDS_LOST] = {"G3", "every word of the card stands on the page", "no word less",
        "shorten the words, or give them room", PROOF_ERROR, PROOF_PAGE,
        "the line of rescue centre and base, which the safety plan has no call to need; one "
        "page a card holds by itself: a page is made or the card is held", HOUSE},
    [RULE_SIZE_FLOOR] = {"G4", "no type is smaller than its floor",
        "title capitals 8 mm, headline 16 pt, rows, script, boxes 12 pt, footer 8 pt; what is "
        "read at 0.5 m by its small letters, headline at 0.8 m by its capitals",
        "shorten the words: type is never made smaller", PROOF_ERROR, PROOF_PAGE,
        "names of zones and tags on the small plan: 2 mm capitals (ISO 23601), since the same "
        "words stand in the rows at 12 pt. 20 pt, 14 pt and 10 mm are aims",
        "CAP 676; CR-177605; ISO 23601 for plans; sight angle of 15 minutes"},
    [RULE_SIZE_AIM] = {"G4", "type is as large as is aimed at",
        "title capitals 10 mm, headline 20 pt, rows, script, boxes 14 pt",
        "fewer or shorter words let it grow", PROOF_AIM, PROOF_PAGE, EVERY,
        "sight angle of 20 minutes"},
    [RULE_FACE_PROPORTIONS] = {"G4", "the face has tall small letters",
        "x-height 0.50 of the size, and 2.2 mm at 12 pt", "take another face", PROOF_ERROR,
        PROOF_PAGE, EVERY, "CR-177605"},
    [RULE_TIERS] = {"G5", "title, headlines, words and small print are told apart by size",
        "four tiers, each at least a seventh taller than the next", "shorten the words",
        PROOF_NOTE, PROOF_PAGE, "within a tier sizes may differ by what a card's words leave "
        "room for: there are four tiers (16 over 14 pt is a seventh), not four sizes. Of a "
        "headline its bold command is measured; its other words have their floor (G4)",
        "CR-177605"},
    [RULE_FACES] = {"G5", "one family in two weights", "regular and bold", "use them",
        PROOF_ERROR, PROOF_PAGE, "codes have a face of their own, where 0 and O, 1, I and l "
        "differ", "CR-177605"},
    [RULE_LEADING] = {"G6", "lines of a paragraph stand apart", "1.15 to 1.5 of the size",
        "give the block more room", PROOF_ERROR, PROOF_PAGE,
        "a title on two lines (capitals only: measured between them, 2.5 mm); a line to write "
        "upon has its own height", "CR-177605"},
    [RULE_MEASURE] = {"G6", "a line is not longer than the eye can follow back",
        "55 characters", "break the line", PROOF_NOTE, PROOF_PAGE,
        "what is one line by itself needs no way back: WHEN, berth, the call line, rescue centre, "
        "footer, strips, rows of gear, phrases of the call", HOUSE},
    [RULE_TEXT_CONTRAST] = {"G7", "words stand out from what lies under them, in white light, "
        "as a grey print and in red light", "7:1; 4.5:1 from 18 pt, or 14 pt bold",
        "use black on white, or white on black", PROOF_ERROR, PROOF_PAGE, EVERY,
        "WCAG 2, 1.4.6, held in three lights"},
    [RULE_LINE_CONTRAST] = {"G8", "lines, frames and signs stand out from what lies under them, "
        "in all three lights", "3:1", "use black on white", PROOF_ERROR, PROOF_PAGE,
        "a frame or area needs it on one side; a coloured area may have a black line instead; "
        "white areas without a line, and white halos, are ground for others and mean nothing; "
        "a line may cross the boat's own grey lines and the grey dot of her mast, 1.6 mm",
        "WCAG 2, 1.4.11, held in three lights"},
    [RULE_COLOURED_TEXT] = {"G9", "no words are printed in a colour", "black, white or grey",
        "print the words in black", PROOF_ERROR, PROOF_PAGE, EVERY,
        "CR-177605; contrast reckoned in red light"},
    [RULE_RED_SHARE] = {"G9", "red is kept for what is red", "12 % of the page outside signs",
        "use less red", PROOF_NOTE, PROOF_PAGE, EVERY, "usability studies of cognitive aids"},
    [RULE_SIGN_SHAPE] = {"G10", "with all colour gone the class of a sign is told by its frame",
        "no two classes of one shape on a card", "use another sign", PROOF_ERROR, PROOF_PAGE,
        EVERY, "colour vision of readers; ISO 3864"},
    [RULE_SIGN_WORD] = {"G10", "no sign stands without its word", "words within 15 mm",
        "set the word beside the sign", PROOF_ERROR, PROOF_PAGE, EVERY, "ISO 9186-1"},
    [RULE_STRIPE] = {"G10", "a coloured stripe has a sign of its class beside it",
        "in the same block", "give the procedure a symbol of the stripe's class", PROOF_ERROR,
        PROOF_PAGE, EVERY, "colour vision of readers"},
    [RULE_COLOUR_BLIND] = {"G11", "classes differ for colour-blind eyes", "told, not judged", "",
        PROOF_AIM, PROOF_ELSEWHERE, "the shape carries the class (G10), so that colours need "
        "not differ; there are no fields but the signs and the stripe",
        "colour vision of readers"},
    [RULE_CAPITALS] = {"G12", "capitals are kept for what must be found at once",
        "3 words in a row; a headline's command 6", "use sentence case", PROOF_NOTE, PROOF_PAGE,
        "title, boat, strips, heads of blocks, berth line, call line; the radio script is in "
        "capitals, as it is spoken word by word", "CAP 676; CR-177605"},
    [RULE_ITALIC] = {"G12", "no letters lean", "0 degrees", "take an upright face", PROOF_ERROR,
        PROOF_PAGE, "underlines cannot be set at all", "CR-177605"},
    [RULE_TABS] = {"G12", "no tabs or control characters are printed", "none",
        "write a space", PROOF_ERROR, PROOF_PAGE, EVERY, HOUSE},
    [RULE_HYPHEN] = {"G12", "no word is broken at the end of a line", "none",
        "use a shorter word", PROOF_NOTE, PROOF_PAGE, EVERY, HOUSE},
    [RULE_ONE_ACTION] = {"G12", "the command of a headline is one action",
        "no 'and' or 'then' between two verbs of it", "make two steps of it", PROOF_NOTE,
        PROOF_PAGE, "what follows the bold command qualifies it in sentences of its own "
        "(STOP the engine): those are not counted", "usability studies of cognitive aids"},
    [RULE_VERB_FIRST] = {"G12", "a headline begins with a verb, or with its condition",
        "verb first", "begin with what to do", PROOF_NOTE, PROOF_PAGE,
        "conditions (IT SPREADS?, AFTER THE CALL:) come before the command; 'THING ON', "
        "'ALL ON DECK' and 'NO FLAME' are commands by what must be the case. " BY_WORDS,
        "usability studies of cognitive aids"},
    [RULE_PASSIVE] = {"G12", "sentences say who acts", "no 'should be' and the like",
        "say it as a command", PROOF_NOTE, PROOF_PAGE, BY_WORDS, HOUSE},
    [RULE_NEGATIVE] = {"G12", "a step says what to do, not what not to do",
        "one negative a headline", "move it to NEVER", PROOF_NOTE, PROOF_PAGE,
        "the one prohibition that must stand with its step may. " BY_WORDS,
        HOUSE},
    [RULE_SENTENCE_LONGEST] = {"G13", "no sentence is long", "20 words", "make two of it",
        PROOF_ERROR, PROOF_PAGE, EVERY, "controlled English"},
    [RULE_SENTENCE] = {"G13", "sentences are short", "12 words", "shorten it", PROOF_NOTE,
        PROOF_PAGE, "lines of the base are its own words: G13's 20 holds",
        "controlled English"},
    [RULE_HEADLINE] = {"G13", "a headline is taken in at a glance",
        "command 6 words and 32 characters; with what follows 10 words and 50 characters",
        "shorten it", PROOF_ERROR, PROOF_PAGE, "6 and 32 hold for the bold command; "
        "what qualifies it stands on the same line, which must hold 50",
        "controlled English"},
    [RULE_STEPS] = {"G14", "a card holds no more than can be done",
        "8 steps, 14 rows, numbered 1, 2, 3 ... downwards", "merge rows, or cut a step",
        PROOF_ERROR, PROOF_PAGE, "two lines of the table of openings, "
        "which are set closer and shut one like the other, are one row", "CR-177549"},
    [RULE_NEVERS] = {"G14", "few prohibitions, cautions and lines of the base",
        "nevers 3, cautions 3, lines of the base 2", "rank them and cut", PROOF_ERROR, PROOF_PAGE,
        EVERY, HOUSE},
    [RULE_EXITS] = {"G14", "a decision has both its exits, after a step of the card",
        "one decision, YES and NO", "write both exits", PROOF_ERROR, PROOF_PAGE,
        "no exit is a step back: the graph has no circle", "usability studies of cognitive aids"},
    [RULE_EXIT_CARD] = {"G14", "an exit that names a card names one of the boat's set",
        "a card of the set", "name a card that the boat has", PROOF_ERROR, PROOF_SET, EVERY,
        HOUSE},
    [RULE_TAG_RECORDED] = {"G15", "every tag and place on a card is of the boat's record",
        "all", "record the gear", PROOF_ERROR, PROOF_PAGE,
        "a draft, which says in its strips that facts are missing", HOUSE},
    [RULE_ONE_TERM] = {"G16", "one piece of gear has one name and one sign in the whole set",
        "no difference", "name it alike in every procedure", PROOF_ERROR, PROOF_SET,
        "rows that gather several pieces count them in their name; of an extinguisher, "
        "cards add how long it lasts and the safety plan what it holds", "controlled English"},
    [RULE_GLOSSARY] = {"G17", "one word an object over all cards", "no synonym", "", PROOF_ERROR,
        PROOF_ELSEWHERE, "words and items come from one file a language, whose reader refuses a "
        "missing one; tests/cli/terms.sh looks for synonyms on the specimen cards",
        "controlled English"},
    [RULE_GLYPHS] = {"G18", "every letter has its shape", "none missing",
        "write it with letters of the card's face", PROOF_ERROR, PROOF_PAGE, EVERY, HOUSE},
    [RULE_WARNING_SOURCE] = {"G19", "cautions and nevers have signal word and source",
        "each", "name the source", PROOF_ERROR, PROOF_SET,
        "where a page has no room its sources stand on the safety plan; lines of the base stand on "
        "the base's source, printed with them", "ANSI Z535"},
    [RULE_LETHAL] = {"G19", "the prohibition that guards a step stands inside it",
        "between its headline and its first row", "set it there", PROOF_ERROR, PROOF_PAGE,
        "NEVER and CAUTION have their own place beside the steps : that block is "
        "exempt where the lethal one is inline. Which one is lethal a qualified "
        "person decides", "NUREG-0899"},
    [RULE_MARKERS_INSIDE] = {"G20", "tags on a plan stand on the boat", "inside her outline",
        "record at: for it, or a nearer zone", PROOF_ERROR, PROOF_PAGE,
        "what is outside her (a bathing platform, from 100 to 105 of her length); a tag may "
        "reach over the outline by a quarter of itself", HOUSE},
    [RULE_MARKERS_ROWS] = {"G20", "the plan shows the tags of the card, and no others",
        "each row's tag once, on both sides if it is there, no tag without words",
        "record the zone of the gear", PROOF_ERROR, PROOF_PAGE, "gear of no zone has no place on "
        "the plan; a safety plan has a rule of its own", HOUSE},
    [RULE_MARKER_SIDE] = {"G20", "a tag stands on the side its record tells",
        "port left, starboard right", "record at: for it", PROOF_ERROR, PROOF_PAGE,
        "as the plan is turned; what is on both sides has a tag on each", "ISO 23601"},
    [RULE_MARKER_LEVEL] = {"G20", "shape and view of a tag tell its level",
        "square on deck, round below", "mend below: of the gear, or its zone", PROOF_ERROR,
        PROOF_PAGE, "a catamaran's saloon is drawn beside her deck; one view alone shows all",
        "colour and place alone tell nobody"},
    [RULE_MARK_NAMED] = {"G20", "no mark on a plan is without words", "words in each black mark",
        "name it", PROOF_ERROR, PROOF_PAGE,
        "the mast, a grey dot; where the cards hang, on a safety plan, has its words beside it",
        HOUSE},
    [RULE_LEADERS] = {"G20", "leaders do not cross and keep clear of foreign tags",
        "0.5 mm from the middle of the line", "record at: for one of them, or a nearer zone",
        PROOF_ERROR, PROOF_PAGE, "names are kept clear of lines by G3", HOUSE},
    [RULE_LIST_SIDE] = {"G20", "each tag of a safety plan stands on the boat and in a list of its "
        "side", "once each; on both sides where it is on both", "mend side: of the gear",
        PROOF_ERROR, PROOF_PAGE, "gear amidships may stand in either list", HOUSE},
    [RULE_LEADER_LEVEL] = {"G20", "a level line leads from each row of a safety plan to its tag",
        "one, level, from the row to the edge of its tag", "shorten the names at that place",
        PROOF_ERROR, PROOF_PAGE, EVERY, HOUSE},
    [RULE_BANDS_ORDER] = {"G20", "what lies farther forward stands nearer to the bow",
        "in each list, and in no later band", "record at: for both, or other zones",
        PROOF_ERROR, PROOF_PAGE, "zones that reach past each other stand as their middles do; two "
        "that are abreast on two sides may share a band", HOUSE},
    [RULE_TURNED] = {"G20", "a safety plan is turned as its reader looks",
        "stern up where the record says that he faces aft", "mend mounted: of the boat",
        PROOF_ERROR, PROOF_PAGE, "who faces port or starboard has the bow up", "ISO 23601"},
    [RULE_INDEX] = {"G20", "the index tells where each piece is that saves lives",
        "each tag once, with the name of its place", "mend the zone of the gear", PROOF_ERROR,
        PROOF_PAGE, "what stands on another page of the plan is judged there", HOUSE},
    [RULE_PLAN_LINES] = {"G21", "the lines of a plan are strong enough",
        "outline 1.6 mm, bulkheads 0.6 mm", "draw them wider", PROOF_ERROR, PROOF_PAGE,
        "the small plan beside the steps, a third as large: outline 0.9, others 0.35 mm; white "
        "halos, and the lines of a net, none of which means anything alone", "ISO 23601"},
    [RULE_PLAN_HEADER] = {"G21", "the head of a plan is found across a cabin",
        "7 % of the shorter side high, its letters 60 % of that", "shorten the title",
        PROOF_ERROR, PROOF_PAGE, "the small plan beside the steps has no head of its own; the "
        "letters of a title on two lines, 8 mm each (G4)", "ISO 23601"},
    [RULE_SIGN_SIZE] = {"G21", "no sign is too small to be known", "7 mm",
        "give it more room", PROOF_ERROR, PROOF_PAGE,
        "10 mm is a house aim for plans; ISO 23601 has 7", "ISO 23601"},
    [RULE_BLOCKS_SET] = {"G22", "the same blocks stand at the same place on every card",
        "0.5 mm", "give all cards of the set the same frame", PROOF_ERROR, PROOF_SET,
        "decision, NEVER and CAUTIONS hang below a plan that takes what room they leave: same "
        "column, same order. The call grows from the foot with its words, and the line of rescue "
        "centre and base stands on it. The distress card and the safety plan have their own lists",
        "usability studies of cognitive aids"},
    [RULE_PLAN_SAME] = {"G22", "a tag stands at one place of the boat on every card",
        "5 thousandths of her length, and of half the view", "find the places for the whole set",
        PROOF_ERROR, PROOF_SET, "a safety plan is drawn to hold lists: other places, same order",
        "a learnt picture must be true on the next card"},
    [RULE_CHANNEL] = {"G23", "a card that calls names channel 16", "in the call panel",
        "name the channel", PROOF_ERROR, PROOF_PAGE,
        "a boat without a radio. Whether identities are sound the radio room decides", HOUSE},
    [RULE_DIGITS] = {"G23", "long numbers are read in threes", "no more than 6 digits in a row",
        "write it in threes", PROOF_ERROR, PROOF_PAGE, "the check code is no number", HOUSE},
    [RULE_POUCH] = {"G24", "sheet, pouch and cut leave a sealed border", "3 mm, wet 5 mm", "",
        PROOF_ERROR, PROOF_PERSON, "the program does not see the pouch: the safe area (G1) "
        "leaves 8 mm and more all round", "makers of laminating film"},
    [RULE_DATES] = {"G25", "dates are in order: approved, printed, runs out",
        "approved <= printed <= first gear date", "renew the gear, or mend the date",
        PROOF_NOTE, PROOF_PAGE, "gear that ran out is told by the checks of the record, and its "
        "date stays on the card: a note here", HOUSE},
    [RULE_PLACEHOLDERS] = {"G25", "nothing is left to be filled in by the maker",
        "no { }, **, ???, ____, no word TODO, FIXME, lorem or xx", "fill it in", PROOF_ERROR,
        PROOF_PAGE, "blanks for wax pencil are drawn lines, not letters", HOUSE},
    [RULE_BYTES] = {"G26", "the same input gives the same bytes", "equal", "", PROOF_ERROR,
        PROOF_ELSEWHERE, "tests/cli/determinism.sh prints twice, in other orders and locales",
        HOUSE},
    [RULE_ORDER] = {"G27", "read aloud, the card goes from head to foot",
        "title, WHEN, berth, anchor, call line, steps, plan, boxes, rescue centre, call, footer; "
        "of a distress call the call before all else",
        "lay the blocks out in that order", PROOF_ERROR, PROOF_PAGE,
        "the words of the PDF itself are read back by tests/cli/proof.sh in the same order",
        "usability studies of cognitive aids"},
    [RULE_PDF] = {"G28", "the PDF is whole", "faces, Unicode, boxes, language, title", "",
        PROOF_ERROR, PROOF_ELSEWHERE, "the draw room checks what it makes; "
        "tests/cli/readback.sh reads it with other programs", HOUSE},
    [RULE_RASTER] = {"G29", "the printed words are as legible as the page claims",
        "4.5:1 in three lights", "", PROOF_NOTE, PROOF_ELSEWHERE,
        "tests/unit/test_proof_raster.c measures rendered pixels", HOUSE},
    [RULE_LINE_WIDTH] = {"G30", "no line is a hair", "0.35 mm", "draw it wider", PROOF_ERROR,
        PROOF_PAGE, "strokes of letters follow from the face and the size of the type (G4)",
        HOUSE},
    [RULE_BLANKS] = {"A59", "a blank has room for a wax pencil",
        "7.6 mm high, 6.8 of them free of ink",
        "give the line more height", PROOF_ERROR, PROOF_PAGE,
        "7.6 mm, not 12: so that the call fits", HOUSE},
    [RULE_PLACE_FIRST] = {"G32", "in a row the place is read first, in bold, and then its gear",
        "above its tags, or left of them", "set the place before its gear", PROOF_ERROR,
        PROOF_PAGE, EVERY, "the place is the news: what to do the headline has said"},
    [RULE_TAG_BESIDE] = {"G33", "each tag of a row stands beside its name", "on its line, 3 mm",
        "set the name behind its tag", PROOF_ERROR, PROOF_PAGE, EVERY, HOUSE},
    [RULE_END_STATE] = {"G34", "no row leads to the contrary of its step", "none",
        "tell in `how` how it comes to the state that the step wants", PROOF_ERROR, PROOF_PAGE,
        BY_WORDS, "a frightened reader takes the last word"},
    [RULE_COLOUR_HANDLING] = {"G35", "what the hand does is never told by a colour alone",
        "one word that is no colour", "tell where the handle then points, or how it is moved",
        PROOF_ERROR, PROOF_PAGE, BY_WORDS, "red light; colour vision of readers"},
    [RULE_CONTRARY_SIGN] = {"P4", "no sign shows the contrary of what is said beside it",
        "none", "use another sign", PROOF_ERROR, PROOF_PAGE, BY_WORDS, HOUSE},
    [RULE_NOTES] = {"G31", "small faults do not add up", "3 notes a card", "mend one of them",
        PROOF_ERROR, PROOF_PAGE, "sizes below their aim: a full card may be set at its floors",
        "CR-177605"},
    [RULE_FILM] = {"A41", "the face of the film is matt", "no glare of a torch", "",
        PROOF_ERROR, PROOF_PERSON, "the program does not see the film", "CR-177605"},
    [RULE_TRIAL] = {"T", "people who have never seen the cards find the right one and do what it "
        "says", "crew of other languages, red torch, wet hands", "", PROOF_ERROR, PROOF_PERSON,
        "only people can be tried", "crisis checklists tried before release"},
};

/* By which set of words of a language a rule judges. */
static const struct { enum proof_rule_key rule; enum word_set set; } judged_by[] = {
    {RULE_ONE_ACTION, SET_VERBS}, {RULE_VERB_FIRST, SET_VERBS}, {RULE_PASSIVE, SET_PASSIVE},
    {RULE_NEGATIVE, SET_NEGATIVES}, {RULE_CONTRARY_SIGN, SET_ACT_OPEN},
    {RULE_END_STATE, SET_ENDS_OFF}, {RULE_COLOUR_HANDLING, SET_COLOURS}};

bool proof_rule_judges(enum proof_rule_key key, const struct words *words)
{
    for (size_t i = 0; i < sizeof judged_by / sizeof *judged_by; i++)
        if (judged_by[i].rule == key)
            return words_set(words, judged_by[i].set)->count > 0;
    return true;
}

const struct proof_rule *proof_rule(enum proof_rule_key key)
{
    promise(key < RULE_COUNT && rules[key].id != NULL);
    return &rules[key];
}
