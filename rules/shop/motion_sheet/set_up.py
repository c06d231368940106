"""What to set on the car, from the ground up."""

from rules.judging.judge import Judged
from rules.judging.reader import Name, answer, is_known, name, reads
from rules.shop.checklist_line import BLANK
from rules.shop.layout import target
from rules.shop.motion_sheet.section import SheetTable

_SPINDLE_HEIGHT, _WHEELBASE = name("wheel_centre_height"), name("job.wheelbase")
_CASTOR, _INCLINATION = name("pivots.castor"), name("pivots.inclination")
_CAMBER, _TOE = name("arms.static_camber"), name("arms.static_toe")
_LINKAGE, _INNER_FROM_CENTRE = name("steering.linkage"), name("steering.inner_from_centre")

THREADS_IN = "1 diameter or more (trade custom)"
"""Common practice, no source."""


@reads
def set_up_section(*, judged: Judged) -> SheetTable:
    """What to set, from the ground up. The sheet holds no toe and no pressure: those blanks are the builder's."""
    known = judged.worked.known

    def figure(wanted: Name, *ways: str) -> str:
        return target(judged, wanted, (ways[0], ways[1]) if ways else ("", ""), by_tape=False)

    camber, toe = "0 deg; on this sheet the wheel stands upright at ride", f"0 on this sheet; builder's figure {BLANK}"
    if is_known(known, _CAMBER):
        camber = figure(_CAMBER, "top outboard", "top inboard")
    if is_known(known, _TOE):
        toe = figure(_TOE, "toe-in", "toe-out")
    rows = [
        ("Tyre pressure", f"builder's figure {BLANK}"),
        ("Wheel centre above ground, at ride", figure(_SPINDLE_HEIGHT)),
        ("Wheelbase", figure(_WHEELBASE)),
        ("Castor", figure(_CASTOR, "top rearward", "top forward")),
        ("Camber", camber),
        ("Steering-axis inclination", figure(_INCLINATION, "top inboard", "top outboard")),
    ]
    if answer(known, _LINKAGE) in ("rack", "relay rod") and is_known(known, _INNER_FROM_CENTRE):
        rows.append(("Steering centred: inner pivot from centre line", figure(_INNER_FROM_CENTRE)))
    rows += [
        ("Toe, both wheels across the treads", toe),
        ("Tie-rod threads in, inner end", THREADS_IN),
        ("Tie-rod threads in, outer end", THREADS_IN),
    ]
    notes = ("At ride height, driver's weight in, in this order. Each wheel on its own, from the centre line.",)
    columns = ("What", "Target", "Left, as set", "Right, as set")
    return SheetTable("", notes, columns, tuple((*row, "", "") for row in rows))
