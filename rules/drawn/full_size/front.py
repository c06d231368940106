"""The upright seen from the front: the vertical plane through the spindle, from the hub flange face as datum.

x is the distance outboard of the hub flange face and y the height above the spindle, so that the left upright is drawn
as it is seen from in front of the car. Nothing is worked out here, and what the sheet does not know is not drawn.
"""

from math import cos, pi, sin, tan
from typing import Literal

from rules.drawn.full_size.board import Board
from rules.drawn.full_size.facts import Facts
from rules.drawn.full_size.shapes import WORDS, Point, View, bounds
from rules.tables.rim_flange import RIM_FLANGE

Extent = Literal["upright", "whole"]
"""upright: rim, rotor, hub and pivots. whole: the tyres and the ground as well."""

TYRES = (("design", "design tyre"), ("smallest", "smallest tyre"), ("largest", "largest tyre"))
LANE = 7.0
"""mm from one dimension line to the next."""
BROKEN_OFF = 25.0
"""mm drawn of a part whose far end the sheet does not know; the end is left open."""
_PAST_PIVOT = 40.0
_FLANGE_STUB = 5.0


def front_view(facts: Facts, extent: Extent) -> View:
    """Everything known, with its dimensions."""
    return _Front(facts, extent).drawn()


class _Front:
    def __init__(self, facts: Facts, extent: Extent) -> None:
        self.facts, self.whole, self.board = facts, extent == "whole", Board()
        face = facts.number("hub_face_offset")
        self.has_datum = face is not None
        self.tyre_plane = -(face or 0.0)

    def drawn(self) -> View:
        board = self.board
        self._rim()
        self._rotor()
        self._caliper()
        self._hub()
        self._plate()
        self._pivots()
        body = bounds(board.shapes)
        if board.shapes:
            self._from_datum(body.bottom, body.top)
            self._heights(body.left)
        if self.whole:
            self._tyres()
            self._ground(bounds(board.shapes).right)
        self._tyre_plane()
        self._axis()
        board.settle()
        frame = bounds(board.items)
        return View(board.items, frame)

    def x(self, offset: float) -> float:
        """Where an offset from the tyre centre plane is drawn."""
        return self.tyre_plane + offset

    # Bought parts

    def _rim(self) -> None:
        facts, board = self.facts, self.board
        diameter, overall = facts.size("wheel.diameter"), facts.size("wheel_overall_width")
        if diameter is None or overall is None:
            return
        seat, half, barrel = diameter / 2, overall / 2, facts.size("barrel_inside_diameter")
        bead = min(half, (facts.size("wheel.width") or overall) / 2)
        left, right = self.x(-half), self.x(half)
        flange = RIM_FLANGE if self.whole else _FLANGE_STUB
        for way in (1, -1):
            for lip, inner in ((left, self.x(-bead)), (right, self.x(bead))):
                board.line((lip, way * (seat + flange)), (lip, way * seat), (inner, way * seat))
            board.line((self.x(-bead), way * seat), (self.x(bead), way * seat))
            if barrel is not None:
                board.line((left, way * barrel / 2), (right, way * barrel / 2), pen="hidden")
        lips = facts.figure("wheel_overall_width")
        board.label((self.x(-0.1 * bead), -seat), f"rim ø {facts.figure('wheel.diameter')}, {lips} lip to lip")
        if barrel is not None:
            board.label((self.x(0.4 * half), barrel / 2), f"barrel inside ø {facts.figure('barrel_inside_diameter')}")
        offset = facts.number("wheel_offset")
        if offset is not None:
            bore = (facts.size("wheel.centre_bore") or 0.0) / 2
            reach = self._stud_circle() or bore + BROKEN_OFF
            for way in (1, -1):
                board.line((self.x(offset), way * bore), (self.x(offset), way * reach))
            hat = f", {facts.figure('rotor.hat_thickness')} from datum" if facts.size("rotor.hat_thickness") else ""
            board.label((self.x(offset), 0.5 * (bore + reach)), f"wheel mounting face{hat}")

    def _stud_circle(self) -> float | None:
        """Radius out to the far side of the studs."""
        known = self.facts.judged.worked.known
        circle, thread = known.get("hub.bolt_circle"), known.get("hub.stud_thread")
        if circle is None:
            return None
        return float(circle.diameter) / 2 + (float(thread.diameter) / 2 if thread is not None else 0.0)

    def _rotor(self) -> None:
        facts, board = self.facts, self.board
        diameter, plane = facts.size("rotor.diameter"), facts.number("rotor_plane_offset")
        thickness = facts.size("rotor_working_thickness")
        if diameter is None or plane is None or thickness is None:
            return
        left, right, outer = self.x(plane - thickness / 2), self.x(plane + thickness / 2), diameter / 2
        band = facts.size("rotor.band_inside_diameter")
        inner = min(outer, band / 2) if band is not None else outer - BROKEN_OFF
        for way in (1, -1):
            ends = ((left, way * inner), (left, way * outer), (right, way * outer), (right, way * inner))
            board.line(*ends, closed=band is not None)
            board.hatch(left, min(way * inner, way * outer), right, max(way * inner, way * outer))
            board.line((self.x(plane), way * (inner - 6)), (self.x(plane), way * (outer + 6)), pen="centre")
        thick = facts.figure("rotor_working_thickness")
        board.label((right, -0.5 * (inner + outer)), f"rotor ø {facts.figure('rotor.diameter')}, {thick} thick")

    def _caliper(self) -> None:
        facts, board = self.facts, self.board
        diameter, plane = facts.size("rotor.diameter"), facts.number("rotor_plane_offset")
        reach, outboard = facts.number("caliper.reach_above_rotor"), facts.size("caliper.outboard_reach")
        if diameter is None or plane is None or reach is None or outboard is None:
            return
        # Its inboard side is left open: how far it reaches there is not asked.
        top, low = diameter / 2 + reach, diameter / 2 - BROKEN_OFF
        face = self.x(plane + outboard)
        board.line((self.x(plane - outboard), top), (face, top), (face, low), pen="adjacent")
        board.label((face, top - 4), f"caliper, {facts.figure('caliper.reach_above_rotor')} beyond rotor edge")
        board.label((face, low + 6), f"caliper, {facts.figure('caliper.outboard_reach')} outboard of rotor middle")

    def _hub(self) -> None:
        facts, board, known = self.facts, self.board, self.facts.judged.worked.known
        if not self.has_datum:
            return
        circle, thread = known.get("hub.bolt_circle"), known.get("hub.stud_thread")
        pilot, length = facts.size("hub.pilot_diameter"), facts.size("hub.stud_length")
        board.line((-40.0, 0.0), (40.0, 0.0), pen="centre")
        if pilot is not None:
            for way in (1, -1):
                board.line((0.0, way * pilot / 2), (BROKEN_OFF / 2, way * pilot / 2))
            board.label((BROKEN_OFF / 3, -pilot / 2), f"hub pilot ø {facts.figure('hub.pilot_diameter')}")
        if circle is not None and thread is not None and length is not None:
            for way in (1, -1):
                middle, half = way * circle.diameter / 2, thread.diameter / 2
                board.line((0.0, middle - half), (length, middle - half), (length, middle + half), (0.0, middle + half))
                board.line((-6.0, middle), (length + 6, middle), pen="centre")
            board.label((length, -circle.diameter / 2), f"studs {thread.text}, {facts.figure('hub.stud_length')} long")
        bearing = facts.number("bearing_offset")
        if bearing is not None:
            board.cross((self.x(bearing), 0.0), 14.0)

    def _plate(self) -> None:
        facts, board = self.facts, self.board
        mount = facts.number("mount_face_offset")
        if mount is None or not self.has_datum:
            return
        face, half = self.x(mount), (facts.size("hub.mount_height") or 0.0) / 2
        thickness, height = facts.size("plate.thickness"), facts.size("plate.height")
        top = facts.size("plate.spindle_from_top")
        if thickness is not None and height is not None and top is not None:
            back, bottom = face - thickness, top - height
            bore = min(facts.size("plate.bore") or 0.0, 2 * top, 2 * (height - top))
            board.section(back, bore / 2, face, top)
            board.section(back, bottom, face, -bore / 2)
            board.label((back, 0.62 * top), f"plate {facts.figure('plate.thickness')} thick")
        else:
            lower, upper = facts.number("pivots.lower_below_spindle"), facts.number("upper_above_spindle")
            bottom = -BROKEN_OFF - half if lower is None else -lower
            top = BROKEN_OFF + half if upper is None else upper
            board.line((face, bottom), (face, top))
            board.label((face, 0.62 * top), "hub plate's face")
        if half:
            for way in (1, -1):
                board.line((face - 12, way * half), (face + 12, way * half), pen="centre")

    def _pivots(self) -> None:
        for which in ("upper", "lower"):
            centre = self._pivot(which)
            if centre is None:
                continue
            radius = self.facts.size(f"pivots.{which}_radius")
            words = f"{which} pivot"
            if radius is not None:
                self.board.circle(centre, radius)
                words += f", housing R {self.facts.figure(f'pivots.{which}_radius')}"
            self.board.cross(centre, (radius or 10.0) + 5)
            self.board.label(centre, words)

    def _pivot(self, which: str) -> Point | None:
        offset = self.facts.number(f"{which}_pivot_offset")
        height = self.facts.number("upper_above_spindle" if which == "upper" else "pivots.lower_below_spindle")
        if offset is None or height is None:
            return None
        return self.x(offset), height if which == "upper" else -height

    # Dimensions

    def _from_datum(self, bottom: float, top: float) -> None:
        """Level dimensions from the datum: above for what lies high, below for what lies low, nearest innermost."""
        if not self.has_datum:
            return
        board = self.board
        high, low = self._high(), self._low()
        for wanted, way in ((high, 1), (low, -1)):
            level = way * self._body(way)
            for x, y, text in sorted(wanted, key=lambda each: abs(each[0])):
                level = self._next_level(level, way)
                board.across((0.0, level), (x, y), level, text)
            bottom, top = min(bottom, level), max(top, level)
        board.line((0.0, bottom - LANE), (0.0, top + LANE + 3), an_edge=False)
        clear = -1.0 if self.tyre_plane > 0 else 1.0
        board.words((2 * clear, top + LANE), "DATUM: hub flange face", "left" if clear > 0 else "right", size=WORDS)

    def _high(self) -> list[tuple[float, float, str]]:
        facts, upper = self.facts, self._pivot("upper")
        mount, bearing = facts.number("mount_face_offset"), facts.number("bearing_offset")
        found = []
        if bearing is not None:
            found.append((self.x(bearing), 14.0, f"bearing centre {facts.figure('hub.flange_to_bearing_centre')}"))
        if mount is not None:
            top = facts.size("plate.spindle_from_top") or (upper[1] if upper else 0.0)
            found.append((self.x(mount), top, f"plate face {facts.figure('hub.flange_to_mount_face')}"))
        if upper is not None:
            found.append((*upper, f"upper pivot {facts.figure('upper_pivot_from_hub_face')}"))
        return found

    def _low(self) -> list[tuple[float, float, str]]:
        facts, lower, plane = self.facts, self._pivot("lower"), self.facts.number("rotor_plane_offset")
        found = [(self.tyre_plane, -30.0, f"tyre centre plane {facts.figure('hub_face_offset')}")]
        if plane is not None:
            size = facts.length(self.x(plane), "rotor_plane_offset", "hub_face_offset")
            found.append((self.x(plane), -(facts.size("rotor.diameter") or 0.0) / 2 - 6, f"rotor middle {size}"))
        if lower is not None:
            found.append((*lower, f"lower pivot {facts.figure('lower_pivot_from_hub_face')}"))
        return found

    def _body(self, way: int) -> float:
        """How far up (1) or down (-1) rotor, caliper, plate and housings reach from the spindle."""
        facts, reach = self.facts, [0.0]
        rotor, plate = facts.size("rotor.diameter"), facts.size("plate.height")
        if rotor is not None:
            reach.append(rotor / 2 + max(6.0, facts.number("caliper.reach_above_rotor") or 0.0 if way > 0 else 0.0))
        pivot = self._pivot("upper" if way > 0 else "lower")
        if pivot is not None:
            reach.append(way * pivot[1] + (facts.size(f"pivots.{'upper' if way > 0 else 'lower'}_radius") or 10.0) + 5)
        from_top = facts.size("plate.spindle_from_top")
        if plate is not None and from_top is not None:
            reach.append(from_top if way > 0 else plate - from_top)
        return max(reach)

    def _next_level(self, level: float, way: int) -> float:
        """The next dimension line further out whose figure keeps clear of the rim's level lines."""
        level += way * LANE
        rim, barrel = self.facts.size("wheel.diameter"), self.facts.size("barrel_inside_diameter")
        for diameter in sorted(diameter for diameter in (rim, barrel) if diameter is not None):
            if level - 2 < way * diameter / 2 < level + 6:
                level = way * diameter / 2 + (2.5 if way > 0 else -6.5)
        return level

    def _heights(self, left: float) -> None:
        """Upright dimensions from the spindle line, on the inboard side, and the spacing along the axis."""
        facts, board = self.facts, self.board
        upper, lower, spacing = self._pivot("upper"), self._pivot("lower"), facts.size("pivots.spacing")
        pivots = [pivot for pivot in (upper, lower) if pivot is not None]
        if not pivots:
            return
        aside = 16.0 + max(facts.size(f"pivots.{which}_radius") or 0.0 for which in ("upper", "lower"))
        lane = min(left, *(x for x, _ in pivots)) - LANE - 4
        if upper is not None and lower is not None and spacing is not None:
            lane = min(lane, upper[0] - aside - 2 * LANE, lower[0] - aside - 2 * LANE)
            board.along(lower, upper, aside, f"pivots {facts.figure('pivots.spacing')} along axis")
        spindle = (-42.0, 0.0)
        board.line(spindle, (lane - 6, 0.0), pen="centre")
        for pivot, name in ((upper, "upper_above_spindle"), (lower, "pivots.lower_below_spindle")):
            if pivot is not None:
                board.up((lane, 0.0), pivot, lane, facts.figure(name))
        board.label((lane + 10, 0.0), "spindle line")

    def _tyre_plane(self) -> None:
        facts = self.facts
        centre, diameter = facts.size("wheel_centre_height"), facts.size("largest_tyre_diameter")
        top = ((diameter or 0.0) / 2 if self.whole else (facts.size("wheel.diameter") or 0.0) / 2) + 4
        bottom = -(centre or 0.0) - 20 if self.whole else -top
        if top > 4:
            self.board.line((self.tyre_plane, bottom), (self.tyre_plane, top), pen="centre")
            self.board.label((self.tyre_plane, top - 3), "tyre centre plane")

    def _axis(self) -> None:
        facts, board = self.facts, self.board
        tilt, aside = facts.number("pivots.inclination"), facts.number("hub_height_offset")
        centre = facts.size("wheel_centre_height")
        if tilt is None or aside is None or centre is None:
            return
        upper, lower = self._pivot("upper"), self._pivot("lower")
        top = (upper[1] if upper else 0.0) + _PAST_PIVOT
        bottom = -centre if self.whole else (lower[1] if lower else 0.0) - _PAST_PIVOT

        def on_axis(y: float) -> Point:
            return self.x(-aside - y * tan(tilt)), y

        board.line(on_axis(bottom), on_axis(top), pen="centre")
        board.label(on_axis(top), "steering axis")
        board.lean(
            on_axis(lower[1] if lower else bottom), tilt, 62.0, f"inclination {facts.figure('pivots.inclination')}"
        )

    # Tyres and ground

    def _tyres(self) -> None:
        facts = self.facts
        width, seat, rim = (
            facts.size(name) for name in ("tyre_section_width", "wheel.diameter", "wheel_overall_width")
        )
        centre, design = facts.size("wheel_centre_height"), facts.size("design_tyre_diameter")
        if width is None or centre is None or design is None:
            return
        drawn: list[float] = []
        for name, words in TYRES:
            diameter = facts.size(f"{name}_tyre_diameter")
            if diameter is None or any(abs(diameter - other) < 0.5 for other in drawn):
                continue
            drawn.append(diameter)
            inner = (seat or 0.6 * diameter) / 2 + RIM_FLANGE
            half = min(width, rim or 0.8 * width) / 2
            sag = centre * diameter / design
            for reach, way in ((diameter / 2, 1), (sag, -1)):
                outline = _section(half, inner, width / 2, reach)
                if name != "design":
                    outline = [(x, y) for x, y in outline if y > reach - 0.2 * diameter / 2]
                self.board.line(*((self.x(x), way * y) for x, y in outline), pen="adjacent")
            at = self.x(0.2 * width * (1 - 0.4 * len(drawn)))
            self.board.label((at, diameter / 2), f"{words} ø {facts.figure(f'{name}_tyre_diameter')}")

    def _ground(self, right: float) -> None:
        facts, board = self.facts, self.board
        centre, aside = facts.size("wheel_centre_height"), facts.number("pivots.ground_offset")
        if centre is None:
            return
        reach = max((facts.size("tyre_section_width") or 200.0) / 2 + 30, abs(aside or 0.0) + 40)
        board.line((self.x(-reach), -centre), (self.x(reach) + 20, -centre))
        board.label((self.x(-reach) + 8, -centre), "ground, design tyre")
        beside = max(right, self.x(reach)) + LANE
        height = f"wheel centre {facts.figure('wheel_centre_height')}"
        board.up((self.x(reach), 0.0), (self.x(reach), -centre), beside, height)
        board.line((42.0, 0.0), (beside + 4, 0.0), pen="centre")
        if aside is not None:
            size = f"ground offset {facts.figure('pivots.ground_offset')}"
            board.across((self.tyre_plane, -centre), (self.x(-aside), -centre), below_ground(facts), size)


def below_ground(facts: Facts) -> float:
    """Height for the dimensions at the ground: under the largest tyre, whose ground is lower."""
    centre, design = facts.size("wheel_centre_height") or 0.0, facts.size("design_tyre_diameter")
    largest = facts.size("largest_tyre_diameter")
    return -centre * max(1.0, largest / design if largest and design else 1.0) - 2 * LANE


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
