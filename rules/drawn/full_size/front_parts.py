"""The front view: the corner's parts cut through the wheel centre or seen from the front, and the words beside them."""

from rules.corner.part import Part
from rules.corner.words import clock
from rules.drawn.corner_parts import looks, parts_of, turned_up
from rules.drawn.full_size.corner import FINE, OnBoard, draw_parts
from rules.drawn.full_size.front_canvas import BROKEN_OFF, Front
from rules.drawn.views import FROM_FRONT
from rules.judging.reader import Known, Size, name, reads
from rules.measure.marks import BoltCircle, Thread
from rules.measure.units import Mm, Rad

_ROTOR, _RIM, _BARREL = name("rotor.diameter"), name("wheel.diameter"), name("wheel.barrel_inside_diameter")
_THICKNESS = name("plate.thickness")
_FLANGE_STUB = 5.0
"""mm drawn of the rim flange where the tyre is left out."""


SHOWN = (
    OnBoard("tyre", "cut", "adjacent", covers=False),
    OnBoard("rim", "cut"),
    OnBoard("spokes", "cut"),
    OnBoard("wheel nuts", "cut"),
    OnBoard("hub flange", "cut"),
    OnBoard("stud heads", "cut"),
    OnBoard("stub shaft", "cut"),
    OnBoard("hub body", "cut"),
    OnBoard("hub mounting flange", "cut"),
    OnBoard("rotor ring", "cut", hatched=True),
    OnBoard("rotor hat", "cut", hatched=True),
    OnBoard("beam", "cut"),
    OnBoard("plate", "cut", hatched=True),
    OnBoard("upper lugs"),
    OnBoard("lower lugs"),
    OnBoard("hub bolts"),
    OnBoard("steering arm"),
    OnBoard("tie-rod end", pen="adjacent", covers=False),
    OnBoard("upper joint housing"),
    OnBoard("lower joint housing"),
    OnBoard("upper pivot bolt"),
    OnBoard("lower pivot bolt"),
)
"""Parts of the upright and what it is bolted to, what is covered first first. Those cut are cut through the wheel centre."""
TURNED_UP = (OnBoard("caliper bracket", "cut", "adjacent"), OnBoard("caliper", "cut", "adjacent"))
"""Parts cut through their own middle and turned up into the paper: they stand elsewhere round the clock."""
FAR_OUT = ("tyre", "rim", "spokes")
"""Parts that dimensions are not kept outside of."""


def corner(known: Known, *, view: Front) -> None:
    """All that is drawn of the corner's parts."""
    centre = _wheel_centre(known)
    if centre is None:
        return
    parts = parts_of(known)
    seen_from = FROM_FRONT.through((0.0, view.face or 0.0, centre))
    shown = SHOWN if view.whole else [_broken_off(one, known) for one in SHOWN if one.name != "tyre"]
    draw_parts(view.board, parts, shown, seen_from)
    for one in TURNED_UP:
        if (part := parts.get(one.name)) and (turned := turned_up(part, seen_from)):
            draw_parts(view.board, parts, [one], turned)
    for one in SHOWN:
        if (part := parts.get(one.name)) and one.name not in FAR_OUT:
            heights = [y for edge in looks(part, seen_from, one.how, FINE)[1] for _, y in edge]
            view.above, view.below = max([view.above, *heights]), max([view.below, *(-y for y in heights)])


def _broken_off(one: OnBoard, known: Known) -> OnBoard:
    """Without its tyre the rim is broken off a little beyond its bead seats: the paper is shorter by a page for it."""
    return one._replace(broken_off=_just_past_the_seats(known)) if one.name == "rim" else one


@reads
def _just_past_the_seats(wheel_diameter: Size) -> float | None:
    return wheel_diameter / 2 + _FLANGE_STUB


@reads
def _wheel_centre(wheel_centre_height: Size) -> float | None:
    return wheel_centre_height


@reads
def rim(
    wheel_diameter: Size,
    wheel_overall_width: Size,
    barrel_inside_diameter: Size,
    *,
    view: Front,
) -> None:
    """Words beside the rim: its bead seats, its lips, its barrel."""
    board, figures, half = view.board, view.figures, wheel_overall_width / 2
    lips = figures.length(wheel_overall_width)
    # The inboard flange, where its line shows on paper with and without the tyre.
    board.label((view.x(-half), -wheel_diameter / 2), f"rim ø {figures.named(_RIM, wheel_diameter)}, {lips} lip to lip")
    words = f"barrel inside ø {figures.named(_BARREL, barrel_inside_diameter)}"
    board.label((view.x(0.4 * half), barrel_inside_diameter / 2), words)


@reads
def wheel_face(
    wheel_offset: Mm,
    wheel_centre_bore: Size | None,
    hat_thickness: Size | None,
    hub_bolt_circle: BoltCircle | None,
    *,
    view: Front,
) -> None:
    """The wheel's mounting face as a line, out to the studs."""
    face, bore = view.x(wheel_offset), (wheel_centre_bore or 0.0) / 2
    reach = hub_bolt_circle.diameter / 2 if hub_bolt_circle is not None else bore + BROKEN_OFF
    for way in (1, -1):
        view.board.line((face, way * bore), (face, way * reach))
    hat = f", {view.figures.length(hat_thickness)} from datum" if hat_thickness is not None else ""
    view.board.label((face, 0.5 * (bore + reach)), f"wheel mounting face{hat}")


@reads
def rotor(rotor_diameter: Size, rotor_plane_offset: Mm, rotor_working_thickness: Size, *, view: Front) -> None:
    """The rotor's middle plane, and its size."""
    board, figures, x, outer = view.board, view.figures, view.x(rotor_plane_offset), rotor_diameter / 2
    for way in (1, -1):
        board.line((x, way * (outer - 2 * BROKEN_OFF)), (x, way * (outer + 6)), pen="centre")
    thick = figures.length(rotor_working_thickness)
    words = f"rotor ø {figures.named(_ROTOR, rotor_diameter)}, {thick} thick"
    board.label((x + rotor_working_thickness / 2, 10 - outer), words)


@reads
def caliper(
    caliper_part: Part,
    rotor_diameter: Size,
    rotor_plane_offset: Mm,
    reach_above_rotor: Mm,
    outboard_reach: Size,
    caliper_at: Rad,
    *,
    view: Front,
) -> None:
    """Words beside the caliper. It is drawn turned up to where the rotor is cut."""
    board, figures, top = view.board, view.figures, rotor_diameter / 2 + reach_above_rotor
    face = view.x(rotor_plane_offset + outboard_reach)
    board.label(
        (face, top - 4), f"caliper at {clock(caliper_at)}, {figures.length(reach_above_rotor)} beyond rotor edge"
    )
    middle = view.x(rotor_plane_offset), rotor_diameter / 2 + 6
    board.across(middle, (face, top - 4), top - 9, figures.length(outboard_reach))


@reads
def hub(
    hub_face_offset: Mm,
    hub_bolt_circle: BoltCircle | None,
    stud_thread: Thread | None,
    stud_length: Size | None,
    bearing_offset: Mm | None,
    *,
    view: Front,
) -> None:
    """Lines through hub and studs, and the middle of the bearing."""
    board, figures, circle, thread, length = view.board, view.figures, hub_bolt_circle, stud_thread, stud_length
    board.line((-40.0, 0.0), (40.0, 0.0), pen="centre")
    if circle is not None and thread is not None and length is not None:
        for way in (1, -1):
            middle = way * circle.diameter / 2
            board.line((-6.0, middle), (length + 6, middle), pen="centre")
        board.label((length, -circle.diameter / 2), f"studs {thread.text}, {figures.length(length)} long")
    if bearing_offset is not None:
        board.cross((view.x(bearing_offset), 0.0), 14.0)


@reads
def plate(
    hub_face_offset: Mm,
    mount_face_offset: Mm,
    mount_height: Size | None,
    plate_thickness: Size | None,
    spindle_from_top: Size | None,
    lower_below_spindle: Mm | None,
    upper_above_spindle: Mm | None,
    plate_part: Part | None,
    *,
    view: Front,
) -> None:
    """The hub's mounting face as a line while the plate cannot be placed, and words."""
    board, face, half = view.board, view.x(mount_face_offset), (mount_height or 0.0) / 2
    if plate_part is not None and plate_thickness is not None and spindle_from_top is not None:
        words = f"plate {view.figures.named(_THICKNESS, plate_thickness)} thick"
        board.label((face - plate_thickness / 2, 0.62 * spindle_from_top), words)  # its back may be behind a lug
    else:
        bottom = -BROKEN_OFF - half if lower_below_spindle is None else -lower_below_spindle
        top = BROKEN_OFF + half if upper_above_spindle is None else upper_above_spindle
        board.line((face, bottom), (face, top))
        board.label((face, 0.62 * top), "hub plate's face")
    if half:
        for way in (1, -1):
            board.line((face - 12, way * half), (face + 12, way * half), pen="centre")


@reads
def pivots(upper_radius: Size | None, lower_radius: Size | None, *, view: Front) -> None:
    """The middles of both pivots, and words."""
    for centre, radius, words in (
        (view.upper, upper_radius, "upper pivot"),
        (view.lower, lower_radius, "lower pivot"),
    ):
        if centre is None:
            continue
        if radius is not None:
            words += f", housing R {view.figures.length(radius)}"
        view.board.cross(centre, (radius or 10.0) + 5)
        view.board.label(centre, words)


@reads
def tyres(
    tyre_section_width: Size,
    design_tyre_diameter: Size,
    smallest_tyre_diameter: Size | None,
    largest_tyre_diameter: Size | None,
    *,
    view: Front,
) -> None:
    """How high each tyre reaches; the largest is drawn."""
    width, tyres_drawn = (
        tyre_section_width,
        kinds_of_tyre(design_tyre_diameter, smallest_tyre_diameter, largest_tyre_diameter),
    )
    for number, (diameter, words) in enumerate(tyres_drawn, 1):
        for y in (diameter / 2, -diameter / 2):
            view.board.line((view.x(-0.3 * width), y), (view.x(0.3 * width), y), pen="adjacent")
        at = view.x(0.2 * width * (1 - 0.4 * number))
        view.board.label((at, diameter / 2), f"{words} ø {view.figures.length(diameter)}")


def kinds_of_tyre(design: float, smallest: float | None, largest: float | None) -> list[tuple[float, str]]:
    """The tyres to draw, diameter and words, design tyre first; one that is like another only once."""
    drawn = [(design, "design tyre")]
    for diameter, words in ((smallest, "smallest tyre"), (largest, "largest tyre")):
        if diameter is not None and all(abs(diameter - other) >= 0.5 for other, _ in drawn):
            drawn.append((diameter, words))
    return drawn
