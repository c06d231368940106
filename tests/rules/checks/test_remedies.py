"""No text written beforehand says which way to move an entry: that is found by trying it on the sheet.

A text may name the entry ("castor decides it"). Which way helps depends on the sheet, and what it spoils elsewhere too: more
backspacing brings the tyre over a bearing that lies outboard of it, and takes it away from one that lies inboard.
"""

import re

import pytest

from tests.support.remedies import remedies

DIRECTION = re.compile(
    r"\b(more|less|fewer|higher|lower|longer|shorter|wider|narrower|deeper|further|farther|larger|smaller|bigger|thicker|"
    r"thinner|slimmer|nearer|closer|taller|stiffer|softer|heavier|lighter|stronger|faster|slower|sooner|later|earlier|"
    r"inboard|outboard|inward|outward|back|forward|rearward|raise|lengthen|shorten|increase|reduce|widen|apart|alike)\b",
    re.IGNORECASE,
)
NAMES = re.compile(
    r"\b(lower (pivot|arm|joint)|upper (and|or) lower|(inboard|outboard) reach|tie-rod end inboard of hub face|"
    r"from the hub face inboard|above (it )?and inboard of (it|the wheel)|on the back|how far apart)\b",
    re.IGNORECASE,
)
"""Names of entries and places, and what leaves the way open, though such a word is in them."""
LAID_OUT = re.compile(
    r"\b(castor|camber|inclination|ground offset|offset|backspacing|spacing between|pivot spacing|steering arm|arms?|pivots?|"
    r"tie rod|rod's|joint moved|axis|squeeze|inner end|track|toe)\b",
    re.IGNORECASE,
)
"""How the front end is laid out: of that no way at all may be written beforehand."""

ITS_OWN_SIZE = (
    "its check compares the very size it names with a limit, or takes away metal or way from what is in the way"
)
MORE_METAL = "more of the metal that carries; less of it is never tried"
BOUGHT = "the figure by which a part is bought, or by which its maker rates it"
WORKED_OUT = "the way, or the figure, is worked out on the sheet"
DONE = "how to measure, build or read; no entry is moved"

WRITTEN = {
    ITS_OWN_SIZE: (
        "A smaller radius.",
        "A smaller hole.",
        "A smaller hole, or one farther from the piece.",
        "A smaller hole: a loose one lets the hub shift under braking.",
        "A smaller hole, or a larger bolt.",
        "A smaller hole, or a larger bolt: a loose one lets the caliper shift.",
        "A smaller centre bore if the hub allows it, or another hub.",
        "A shorter full width.",
        "A shorter gusset along the lug.",
        "A shorter gusset: a socket has to go on.",
        "Shorter tabs.",
        "Shorter tabs, or a larger plate.",
        "Shorter ends, or measure each again from its ball to the end of its thread.",
        "A narrower end, or a wider plate.",
        "A larger plate, or a narrower piece: weld needs plate on both sides of it.",
        "A taller plate, or a drawing of the piece that bridges it, sized by somebody qualified.",
        "A larger bore in the plate: the hub's body has to go through it.",
        "The hub sets this spacing: smaller holes leave more metal, or use another hub.",
        "Screw them in further: a shorter gap, a longer tube.",
        "A longer run, or a smaller leg.",
        "A longer run or a smaller leg: enter length of one run and leg of the fillet as welded.",
        "A longer run, or weld all round.",
        "Less leg, or see that no run lies along an edge.",
        "Count less of it, or use a larger leg.",
        "Another place of the pivot, or a smaller housing.",
        "Another place of the pivot, in the wheel or above and inboard of it, or a smaller housing.",
        "Another place of the rod's outer end, or a smaller housing.",
        "Another pivot spacing, smaller housings, or a beam that runs past both pivots: enter which.",
        "a smaller housing, another backspacing, or another place of the joint",
        "Move the pivot, use a smaller housing, or let the plate end short of it.",
        "Notch the plate for it, which leaves less metal there and is not in any strength here; or move the pivot, use a "
        "smaller housing, or let the plate end short of it.",
        "a bump stop that touches sooner",
        "a strap for less droop",
        "a shorter lock",
        "Less lock or less travel, or another steering arm or inner pivot of the tie rod.",
        "Less {}, held by {}, or other lengths of the arms. Check the pivots' places for a slip.",
        "A higher rubber, or say a bump travel that the rubber ends.",
        "A lower rubber, or a shock that is shorter closed.",
        "Enter a level nearer the wheel centre, or build the joint so that the beam can run on: strength counts the beam there.",
        "Change pads sooner: there is next to nothing to spare.",
        "Change pads sooner, or use a rotor of the thickness the caliper was made for: a piston that leaves its seal loses all "
        "brakes on that circuit. Never stack worn pads or spacers behind new ones.",
        "Raise it, or know why not.",
        "A thinner tube, longer spacers, or an arm end that reaches out from between the lugs, entered as housing reach.",
        "Longer misalignment spacers beside the ball, and lugs as far apart; or less travel or lock.",
    ),
    MORE_METAL: (
        "A beam on the back, a deeper beam, or thicker plate.",
        "A beam as wide as the bolt pattern behind the bolts, thicker plate, or a smaller centre bore.",
        "A longer beam, one that runs past the pivot, or thicker plate.",
        "Run the beam past the pivot, or thicker plate, or another place of the pivot.",
        "A wider or deeper beam, or one cut through behind the hub, which no strength here counts.",
        "A wider or higher root, or a gusset.",
        "A wider root, thicker bracket, or another place of the weld.",
        "A larger snout, turned from bar, with a generous radius.",
        "A thicker wall or a pad, a wider or higher arm, or the arm carried to the wall's edges.",
        "A thicker wall or a pad, lugs carried to the wall's edges, or a longer weld along it.",
        "A thicker wall of arm with the spring, or a narrower box.",
        "A larger leg, longer runs, runs further apart, or welds all round.",
        "A larger leg, less gap between the runs, or a longer beam.",
        "A longer beam, a wider one, or a smaller centre bore.",
        "A larger tube or a thicker wall, or another place of the shock on it.",
        "A larger tube or a thicker wall, or another steering arm.",
        "A larger tube or a thicker wall.",
        "A larger bolt, double shear, or a shorter spacer: the gap bends the bolt.",
        "A longer lug, 1.5 hole diameters or more from centre to edge, or a smaller bolt.",
        "A wider lug, or a smaller bolt.",
        "Shorter, wider or thicker lugs, both clamped through spacers, a gusset, or the bolt square to the force.",
        "Thicker lugs, or more metal beyond the hole.",
        "More metal around the hole. To go lower than the least is an engineer's decision.",
        "More metal beside the bore: have somebody qualified size it.",
        "More metal beyond the hole.",
        "More metal round the hole, or no hole.",
        "Larger bolts, a higher grade, or bolts further apart.",
        "Longer bolts or a deeper hole; a through bolt with its own nut is best.",
    ),
    BOUGHT: (
        "A braking band of {needed} would meet the goal: a thicker or larger rotor. Or start stops slower.",
        "A heavier braking band, slower stops, fewer of them or more time between them; or put right the figure that is a slip.",
        "A higher grade or larger bolts with the torque that goes with them, or a wider pattern; no paint between.",
        "A higher grade, a larger bolt, or a hub with a wider pattern.",
        "A higher grade, larger studs, or more of them.",
        "A hub with a static rating of {needed}, rows further apart, or a wheel of another offset.",
        "A joint rated higher, or its bolt turned square to the worst force.",
        "A thicker stud, one that stands out less, or the joint in double shear.",
        "A tyre with a faster symbol, or a lower top speed.",
        "A tyre with a higher load index, or a lighter corner. Low pressure lowers the capacity.",
        "A wheel with a higher rating, made for a braked, steered car.",
        "A wheel with more room behind its spokes, a deeper rotor hat, or a slimmer caliper.",
        "Ask the hub's maker for its ratings and pressure centres, or take a hub from a heavier car.",
        "Bolts marked 8.8 or better, or with three lines (grade 5) or more.",
        "Bolts with a longer plain shank, and washers under the nut.",
        "Check the thread, or use a hub with larger ones.",
        "Ends with a thicker thread or of stronger steel, or another steering arm.",
        "Fit longer studs. Never make up for short studs with open nuts or spacers.",
        "More torque only if the maker allows it; larger or more studs, a wider circle; clean flat faces.",
        "Nuts with smaller heads, or another wheel: none can be tightened.",
        "Use a bracket on both sides, or a washer or head larger than the housing bore.",
        "Use a bracket on both sides, or a washer or head larger than the housing bore, and say so.",
        "Use a thicker rotor. Never machine to or below the stamped minimum.",
        "misalignment spacers or a joint that allows more",
    ),
    WORKED_OUT: (
        "Hold each inner pivot in tabs of its own, with no tube between them here: up to {front} to the rear of the front pivot, "
        "and up to {rear} forward of the rear one, the shock passes between them.",
        "more",
        "less",
        "At least {short} more room is wanted.",
        "{short} more room is wanted: {} {}.",
        "A higher rubber takes the blow over a longer way.",
        "A lower rubber leaves more free travel.",
        "A shock that closes to {closed} or less and opens to {open} or more; or move its mount; or less travel.",
        "The squeeze with the shock open and the droop travel decide it. Else a helper spring that is {loose} or more longer "
        "free than squeezed flat, or seats that hold the spring.",
    ),
    DONE: (
        ", {} more not, for want of an entry or a figure: any of them may be weaker",
        "Check the thread. No car hangs a wheel on less than 3/8 in or M10.",
        "Cut access holes in the beam, weld nuts to the plate's back or use studs before it is closed, and enter which; or a "
        "beam that stands clear of them.",
        "Draw the notch: it leaves less metal there, which is not in any strength here.",
        "ER80S-D2 comes near 4130's strength as welded; ER70S-2 is a little softer and more forgiving.",
        "Measure the ends again; the toe is set with less of them screwed in.",
        "Measure toe at [1 in | 25 mm] steps to both ends. Where it goes the same way at both, move the tie rod's inner pivot in "
        "or out; where opposite ways, up or down. Or less travel.",
        "Put right the shock's two ends: no shock is as short as they stand apart.",
        "Shake a bare one: if it comes apart it is the shaft that holds it. Else take the shaft's entries out.",
        "The rotor's diameter, how high the caliper stands over it and the wheel's size decide it; stick-on weights go outboard.",
    ),
}
"""Every text with such a word in it, by the reason why it may stand."""


def ways(text: str) -> list[str]:
    """The words of direction in a text.

    >>> ways("More castor, or the lower pivot further inboard."), ways("Castor and the lower pivot decide it.")
    (['More', 'further', 'inboard'], [])
    """
    return [found.group() for found in DIRECTION.finditer(NAMES.sub("", text))]


@pytest.mark.parametrize("text", sorted(text for text in remedies() if ways(text)))
def test_a_way_written_beforehand_has_its_reason(text: str) -> None:
    reasons = [reason for reason, texts in WRITTEN.items() if text in texts]
    assert len(reasons) == 1, f"name the entry only, or say why {ways(text)} holds on every sheet"


def test_no_reason_is_kept_for_a_text_that_is_gone() -> None:
    assert not {text for texts in WRITTEN.values() for text in texts} - remedies()


def moves_what_is_laid_out(text: str) -> bool:
    """Whether one clause of it names an entry of the front end's layout and a way to move it.

    >>> [moves_what_is_laid_out(text) for text in ("A longer steering arm.", "A smaller housing, or another steering arm.")]
    [True, False]
    """
    return any(ways(clause) and LAID_OUT.search(clause) for clause in re.split(r"[,.;:]|\bor\b", NAMES.sub("", text)))


@pytest.mark.parametrize("reason", [ITS_OWN_SIZE, BOUGHT, WORKED_OUT])
def test_no_reason_lets_how_the_front_end_is_laid_out_be_moved(reason: str) -> None:
    assert not [text for text in WRITTEN[reason] if moves_what_is_laid_out(text)]


@pytest.mark.parametrize(
    "text",
    [
        "Joint and rod rated for {needed}, or a longer steering arm, which lowers the load.",
        "A wheel with more backspacing brings the tyre over the bearing.",
        "Less castor, or power steering.",
        "Less steering-axis inclination, or tyres closer in size.",
        "Move the upper pivot back.",
        "Set the two arms' hinges more alike seen from the side.",
        "less backspacing, or the tie rod's ends moved inboard",
    ],
)
def test_ways_that_stood_there_once_are_seen(text: str) -> None:
    assert moves_what_is_laid_out(text)


def test_the_texts_are_found_however_they_are_given() -> None:
    assert {
        "Choose another castor.",  # by its place
        "A larger tube or a thicker wall.",  # in a table of parts
        "another backspacing, or another place of the arm's inner pivots",  # under a name of its own
        "a shorter lock",  # returned by a function of another module
        "A wider lug, or a smaller bolt.",  # with what a value raises
    } <= remedies()
