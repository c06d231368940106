"""The upright seen from the side, from outside the car: where the pivots lie ahead of and behind the spindle.

x is the distance behind the spindle and y the height above it: the left wheel seen from outside, front of the car to
the left. Nothing is worked out here, and what the sheet does not know is not drawn.
"""

from math import asin, cos, degrees, pi, radians, sin, tan

from rules.drawn.full_size.board import Board
from rules.drawn.full_size.facts import Facts
from rules.drawn.full_size.front import LANE, TYRES, Extent, below_ground
from rules.drawn.full_size.shapes import Point, View, bounds

_PAST_PIVOT = 40.0


def side_view(facts: Facts, extent: Extent) -> View:
    """Everything known, with its dimensions."""
    return _Side(facts, extent).drawn()


class _Side:
    def __init__(self, facts: Facts, extent: Extent) -> None:
        self.facts, self.whole, self.board = facts, extent == "whole", Board()

    def drawn(self) -> View:
        facts, board = self.facts, self.board
        self._wheel_and_rotor()
        self._hub()
        self._plate()
        self._pivots()
        body = bounds(board.shapes)
        if board.shapes:
            self._fore_and_aft(body.bottom, body.top)
        if self.whole:
            self._tyres_and_ground()
        if board.shapes and facts.size("rotor.diameter") is None:
            board.cross((0.0, 0.0), 30.0)
        self._axis()
        board.settle()
        return View(board.items, bounds(board.items))

    def _wheel_and_rotor(self) -> None:
        facts, board = self.facts, self.board
        rotor = facts.size("rotor.diameter")
        if rotor is not None:
            board.circle((0.0, 0.0), rotor / 2)
            board.cross((0.0, 0.0), rotor / 2 + 8)
            board.label(_at(rotor / 2, 35), f"rotor ø {facts.figure('rotor.diameter')}")
        if not self.whole:
            return
        rim, barrel = facts.size("wheel.diameter"), facts.size("barrel_inside_diameter")
        if rim is not None:
            board.circle((0.0, 0.0), rim / 2, pen="hidden")
            board.label(_at(rim / 2, 140), f"rim ø {facts.figure('wheel.diameter')}")
        if barrel is not None:
            board.circle((0.0, 0.0), barrel / 2, pen="hidden")
            board.label(_at(barrel / 2, 40), f"barrel inside ø {facts.figure('barrel_inside_diameter')}")

    def _hub(self) -> None:
        facts, board, known = self.facts, self.board, self.facts.judged.worked.known
        pilot, circle = facts.size("hub.pilot_diameter"), known.get("hub.bolt_circle")
        if pilot is not None:
            board.circle((0.0, 0.0), pilot / 2)
            board.label(_at(pilot / 2, -150), f"hub pilot ø {facts.figure('hub.pilot_diameter')}")
        if circle is not None:
            board.circle((0.0, 0.0), circle.diameter / 2, pen="centre")
            size = facts.length(circle.diameter)
            board.label(_at(circle.diameter / 2, -40), f"studs, {circle.count} on ø {size}")
        width, height, count = (
            facts.size("hub.mount_width"), facts.size("hub.mount_height"), known.get("hub.mount_bolts"),
        )  # fmt: skip
        thread = known.get("hub.mount_bolt_thread")
        if width is None or height is None or count != 4:
            return
        hole = facts.size("plate.hole_diameter") or (float(thread.diameter) if thread is not None else None)
        for x in (-width / 2, width / 2):
            for y in (-height / 2, height / 2):
                if hole is not None:
                    board.circle((x, y), hole / 2)
                board.cross((x, y), (hole or 10.0) / 2 + 3)
        half = (hole or 10.0) / 2
        board.across(
            (-width / 2, height / 2), (width / 2, height / 2), height / 2 + half + 14, facts.figure("hub.mount_width")
        )
        board.up(
            (width / 2, -height / 2), (width / 2, height / 2), width / 2 + half + 14, facts.figure("hub.mount_height")
        )
        board.label(
            (-width / 2, -height / 2), f"hub bolts, {count} of {thread.text}" if thread is not None else "hub bolts"
        )

    def _plate(self) -> None:
        facts, board = self.facts, self.board
        width, height = facts.size("plate.width"), facts.size("plate.height")
        top, front = facts.size("plate.spindle_from_top"), facts.size("plate.spindle_from_front")
        if width is None or height is None or top is None or front is None:
            return
        radius = facts.size("plate.corner_radius") or 0.0
        board.line(*_rounded(-front, width - front, top - height, top, radius), closed=True)
        size = f"{facts.figure('plate.width')} wide, {facts.figure('plate.height')} high"
        board.label((width - front, top - 0.3 * height), f"plate {size}")
        bore = facts.size("plate.bore")
        if bore is not None:
            board.circle((0.0, 0.0), bore / 2, pen="hidden")
            board.label(_at(bore / 2, 200), f"plate bore ø {facts.figure('plate.bore')}")

    def _pivots(self) -> None:
        for which in ("upper", "lower"):
            centre = self._pivot(which)
            if centre is None:
                continue
            radius = self.facts.size(f"pivots.{which}_radius")
            if radius is not None:
                self.board.circle(centre, radius)
            self.board.cross(centre, (radius or 10.0) + 5)
            self.board.label(centre, f"{which} pivot")

    def _pivot(self, which: str) -> Point | None:
        ahead = self.facts.number(f"{which}_pivot_ahead")
        height = self.facts.number("upper_above_spindle" if which == "upper" else "pivots.lower_below_spindle")
        if ahead is None or height is None:
            return None
        return -ahead, height if which == "upper" else -height

    def _fore_and_aft(self, bottom: float, top: float) -> None:
        facts, board = self.facts, self.board
        for which, level in (("upper", top + LANE), ("lower", bottom - LANE)):
            pivot = self._pivot(which)
            if pivot is None:
                continue
            way = "behind" if pivot[0] > 0 else "ahead"
            text = f"{which} pivot {facts.figure(f'{which}_pivot_ahead')} {way}"
            board.across((0.0, 0.0), pivot, level, text)

    def _axis(self) -> None:
        facts, board = self.facts, self.board
        castor, lower, upper = facts.number("pivots.castor"), self._pivot("lower"), self._pivot("upper")
        trail, centre = facts.number("mechanical_trail"), facts.size("wheel_centre_height")
        if castor is None or lower is None:
            return
        x0, y0 = lower
        top = (upper[1] if upper else 0.0) + _PAST_PIVOT
        to_ground = self.whole and trail is not None and centre is not None
        bottom = -centre if to_ground and centre is not None else y0 - _PAST_PIVOT

        def on_axis(y: float) -> Point:
            return x0 + (y - y0) * tan(castor), y

        # The top leans to the rear, which is to the right here.
        board.line(on_axis(bottom), on_axis(top), pen="centre")
        board.label(on_axis(top), "steering axis")
        board.lean(lower, -castor, 95.0, f"castor {facts.figure('pivots.castor')}")
        if to_ground and trail is not None and centre is not None:
            size = f"mechanical trail {facts.figure('mechanical_trail')}"
            board.across((0.0, -centre), (-trail, -centre), below_ground(facts), size)

    def _tyres_and_ground(self) -> None:
        facts, board = self.facts, self.board
        centre, design = facts.size("wheel_centre_height"), facts.size("design_tyre_diameter")
        if centre is None or design is None:
            return
        drawn: list[float] = []
        for name, words in TYRES:
            diameter = facts.size(f"{name}_tyre_diameter")
            if diameter is None or any(abs(diameter - other) < 0.5 for other in drawn):
                continue
            drawn.append(diameter)
            radius, sag = diameter / 2, centre * diameter / design
            board.line(*_standing(radius, min(sag, radius)), pen="adjacent")
            board.label(_at(radius, 62 + 16 * len(drawn)), f"{words} ø {facts.figure(f'{name}_tyre_diameter')}")
        board.line((-0.55 * design, -centre), (0.55 * design, -centre))
        board.label((0.5 * design, -centre), "ground, design tyre")


def _at(radius: float, angle: float) -> Point:
    return radius * cos(radians(angle)), radius * sin(radians(angle))


def _standing(radius: float, height: float) -> list[Point]:
    """A tyre's circle down to where it stands on the ground, from the front contact over the top to the rear one."""
    half = pi / 2 - asin(height / radius)
    start, sweep = -pi / 2 + half, 2 * pi - 2 * half
    steps = max(8, round(degrees(sweep)))
    return [
        (radius * cos(start + sweep * step / steps), radius * sin(start + sweep * step / steps))
        for step in range(steps + 1)
    ]


def _rounded(left: float, right: float, bottom: float, top: float, radius: float) -> list[Point]:
    """A rectangle with rounded corners."""
    radius = min(radius, (right - left) / 2, (top - bottom) / 2)
    corners = (
        (right - radius, top - radius, 0), (left + radius, top - radius, 90),
        (left + radius, bottom + radius, 180), (right - radius, bottom + radius, 270),
    )  # fmt: skip
    return [
        (x + radius * cos(radians(start + turn)), y + radius * sin(radians(start + turn)))
        for x, y, start in corners
        for turn in ((0, 15, 30, 45, 60, 75, 90) if radius else (0,))
    ]
