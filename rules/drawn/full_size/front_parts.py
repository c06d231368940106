"""The parts in the front view: what is bought, the plate, the pivots, the tyres."""

from math import cos, pi, sin

from rules.drawn.full_size.front_canvas import BROKEN_OFF, Front
from rules.judging.reader import Size, name, reads
from rules.measure.marks import BoltCircle, Thread
from rules.measure.outline import Point
from rules.measure.units import Mm
from rules.tables.rim_flange import RIM_FLANGE

_ROTOR, _RIM, _BARREL = name("rotor.diameter"), name("wheel.diameter"), name("wheel.barrel_inside_diameter")
_PILOT, _THICKNESS = name("hub.pilot_diameter"), name("plate.thickness")

_FLANGE_STUB = 5.0
"""mm drawn of the rim flange where the tyre is left out."""


@reads
def rim(
    wheel_diameter: Size,
    wheel_overall_width: Size,
    barrel_inside_diameter: Size | None,
    wheel_width: Size | None,
    wheel_offset: Mm | None,
    wheel_centre_bore: Size | None,
    hat_thickness: Size | None,
    hub_bolt_circle: BoltCircle | None,
    stud_thread: Thread | None,
    *,
    view: Front,
) -> None:
    """Flanges, bead seats, barrel and mounting face of the wheel."""
    board, figures, barrel = view.board, view.figures, barrel_inside_diameter
    seat, half = wheel_diameter / 2, wheel_overall_width / 2
    bead = min(half, (wheel_width or wheel_overall_width) / 2)
    left, right = view.x(-half), view.x(half)
    flange = RIM_FLANGE if view.whole else _FLANGE_STUB
    for way in (1, -1):
        for lip, inner in ((left, view.x(-bead)), (right, view.x(bead))):
            board.line((lip, way * (seat + flange)), (lip, way * seat), (inner, way * seat))
        board.line((view.x(-bead), way * seat), (view.x(bead), way * seat))
        if barrel is not None:
            board.line((left, way * barrel / 2), (right, way * barrel / 2), pen="hidden")
    lips = figures.length(wheel_overall_width)
    board.label((view.x(-0.1 * bead), -seat), f"rim ø {figures.named(_RIM, wheel_diameter)}, {lips} lip to lip")
    if barrel is not None:
        board.label((view.x(0.4 * half), barrel / 2), f"barrel inside ø {figures.named(_BARREL, barrel)}")
    if wheel_offset is not None:
        bore, face = (wheel_centre_bore or 0.0) / 2, view.x(wheel_offset)
        reach = bore + BROKEN_OFF
        if hub_bolt_circle is not None:  # out to the far side of the studs
            reach = hub_bolt_circle.diameter / 2 + (stud_thread.diameter / 2 if stud_thread is not None else 0.0)
        for way in (1, -1):
            board.line((face, way * bore), (face, way * reach))
        hat = f", {figures.length(hat_thickness)} from datum" if hat_thickness is not None else ""
        board.label((face, 0.5 * (bore + reach)), f"wheel mounting face{hat}")


@reads
def rotor(
    rotor_diameter: Size,
    rotor_plane_offset: Mm,
    rotor_working_thickness: Size,
    band_inside_diameter: Size | None,
    *,
    view: Front,
) -> None:
    """The friction ring as two cut bands with its middle plane."""
    board, figures, plane, band = view.board, view.figures, rotor_plane_offset, band_inside_diameter
    half, outer = rotor_working_thickness / 2, rotor_diameter / 2
    left, right = view.x(plane - half), view.x(plane + half)
    inner = min(outer, band / 2) if band is not None else outer - BROKEN_OFF
    for way in (1, -1):
        ends = ((left, way * inner), (left, way * outer), (right, way * outer), (right, way * inner))
        board.line(*ends, closed=band is not None)
        board.hatch(left, min(way * inner, way * outer), right, max(way * inner, way * outer))
        board.line((view.x(plane), way * (inner - 6)), (view.x(plane), way * (outer + 6)), pen="centre")
    thick = figures.length(rotor_working_thickness)
    board.label((right, -0.5 * (inner + outer)), f"rotor ø {figures.named(_ROTOR, rotor_diameter)}, {thick} thick")


@reads
def caliper(
    rotor_diameter: Size, rotor_plane_offset: Mm, reach_above_rotor: Mm, outboard_reach: Size, *, view: Front
) -> None:
    """The caliper above the rotor; its inboard side is left open."""
    board, figures, plane = view.board, view.figures, rotor_plane_offset
    # Its inboard side is left open: how far it reaches there is not asked.
    top, low = rotor_diameter / 2 + reach_above_rotor, rotor_diameter / 2 - BROKEN_OFF
    face = view.x(plane + outboard_reach)
    board.line((view.x(plane - outboard_reach), top), (face, top), (face, low), pen="adjacent")
    board.label((face, top - 4), f"caliper, {figures.length(reach_above_rotor)} beyond rotor edge")
    board.label((face, low + 6), f"caliper, {figures.length(outboard_reach)} outboard of rotor middle")


@reads
def hub(
    hub_face_offset: Mm,
    hub_bolt_circle: BoltCircle | None,
    stud_thread: Thread | None,
    pilot_diameter: Size | None,
    stud_length: Size | None,
    bearing_offset: Mm | None,
    *,
    view: Front,
) -> None:
    """Pilot, studs and the middle of the bearing."""
    board, figures, circle, thread, length = view.board, view.figures, hub_bolt_circle, stud_thread, stud_length
    board.line((-40.0, 0.0), (40.0, 0.0), pen="centre")
    if pilot_diameter is not None:
        for way in (1, -1):
            board.line((0.0, way * pilot_diameter / 2), (BROKEN_OFF / 2, way * pilot_diameter / 2))
        board.label((BROKEN_OFF / 3, -pilot_diameter / 2), f"hub pilot ø {figures.named(_PILOT, pilot_diameter)}")
    if circle is not None and thread is not None and length is not None:
        for way in (1, -1):
            middle, half = way * circle.diameter / 2, thread.diameter / 2
            board.line((0.0, middle - half), (length, middle - half), (length, middle + half), (0.0, middle + half))
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
    plate_height: Size | None,
    spindle_from_top: Size | None,
    plate_bore: Size | None,
    lower_below_spindle: Mm | None,
    upper_above_spindle: Mm | None,
    *,
    view: Front,
) -> None:
    """The hub plate cut through, or its face alone where the plate is not known."""
    board, top, height = view.board, spindle_from_top, plate_height
    face, half = view.x(mount_face_offset), (mount_height or 0.0) / 2
    if plate_thickness is not None and height is not None and top is not None:
        back, bottom = face - plate_thickness, top - height
        bore = min(plate_bore or 0.0, 2 * top, 2 * (height - top))
        board.section(back, bore / 2, face, top)
        board.section(back, bottom, face, -bore / 2)
        board.label((back, 0.62 * top), f"plate {view.figures.named(_THICKNESS, plate_thickness)} thick")
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
    """Both pivots with their housings, where they are known."""
    for centre, radius, words in (
        (view.upper, upper_radius, "upper pivot"),
        (view.lower, lower_radius, "lower pivot"),
    ):
        if centre is None:
            continue
        if radius is not None:
            view.board.circle(centre, radius)
            words += f", housing R {view.figures.length(radius)}"
        view.board.cross(centre, (radius or 10.0) + 5)
        view.board.label(centre, words)


@reads
def tyres(
    tyre_section_width: Size,
    wheel_centre_height: Size,
    design_tyre_diameter: Size,
    smallest_tyre_diameter: Size | None,
    largest_tyre_diameter: Size | None,
    wheel_diameter: Size | None,
    wheel_overall_width: Size | None,
    *,
    view: Front,
) -> None:
    """The outlines of all tyre sizes."""
    width, design = tyre_section_width, design_tyre_diameter
    for number, (diameter, words) in enumerate(kinds_of_tyre(design, smallest_tyre_diameter, largest_tyre_diameter), 1):
        inner = (wheel_diameter or 0.6 * diameter) / 2 + RIM_FLANGE
        half = min(width, wheel_overall_width or 0.8 * width) / 2
        sag = wheel_centre_height * diameter / design
        for reach, way in ((diameter / 2, 1), (sag, -1)):
            outline = _section(half, inner, width / 2, reach)
            if number > 1:
                outline = [(x, y) for x, y in outline if y > reach - 0.2 * diameter / 2]
            view.board.line(*((view.x(x), way * y) for x, y in outline), pen="adjacent")
        at = view.x(0.2 * width * (1 - 0.4 * number))
        view.board.label((at, diameter / 2), f"{words} ø {view.figures.length(diameter)}")


def kinds_of_tyre(design: float, smallest: float | None, largest: float | None) -> list[tuple[float, str]]:
    """The tyres to draw, diameter and words, design tyre first; one that is like another only once."""
    drawn = [(design, "design tyre")]
    for diameter, words in ((smallest, "smallest tyre"), (largest, "largest tyre")):
        if diameter is not None and all(abs(diameter - other) >= 0.5 for other, _ in drawn):
            drawn.append((diameter, words))
    return drawn


def _section(half: float, inner: float, widest: float, reach: float) -> list[Point]:
    """Half a tyre section from the outboard bead round the tread to the inboard one: a shape, not a measurement."""
    if reach <= inner:
        return [(-widest, reach), (widest, reach)]
    shoulder = min(0.35 * (reach - inner), 45.0)
    middle = inner + 0.45 * (reach - inner)
    side: list[Point] = []
    for step in range(9):
        angle = step / 8 * pi / 2
        side.append((half + (widest - half) * sin(angle), middle - (middle - inner) * cos(angle)))
    for step in range(1, 9):
        angle = step / 8 * pi / 2
        side.append((widest - shoulder * (1 - cos(angle)), reach - shoulder * (1 - sin(angle))))
    return [*side, *((-x, y) for x, y in reversed(side))]
