"""Sections of bars, tubes, and of a plate with a beam on its back: area, second moments, torsion, shear.

A section lies across a part. Its width runs along u, its depth along v, with v counted from the outer face inward; it is
the same on both sides of the line u = 0, so there is no product of inertia. mm throughout.
"""

from math import hypot, log, pi

from rules.graph.results import OutsideRange
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.records import dataclass

LEAST_INSIDE_RADIUS = 0.25
"""Radius counted in the inside corner of a closed beam, in walls, where it is less or not known. Twist crowds into that
corner, and without any radius no stress could be given at all. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Section:
    """What a section carries with.

    area: mm2. inertia_u, inertia_v: second moments about the axes along the width and along the depth through the
    centroid, mm4. reach_v, reach_u: the farthest metal from the centroid along the depth and along the width, mm.
    centroid: from the outer face, mm. torsion_constant: mm4; torsion_modulus: twisting moment over greatest shear
    stress, mm3. shear_u, shear_v: shear force over greatest shear stress, along width and depth, mm2. turned: round, so
    that bending both ways at once adds as a resultant and not corner by corner. twist_bends: pull for each N mm of twist,
    MPa, in strips that hand a closed cell's shear past an opening.
    """

    area: float
    inertia_u: float
    inertia_v: float
    reach_u: float
    reach_v: float
    centroid: float
    torsion_constant: float
    torsion_modulus: float
    shear_u: float
    shear_v: float
    turned: bool = False
    twist_bends: float = 0.0

    @property
    def modulus_u(self) -> float:
        """Section modulus about the axis along the width, mm3: for bending that pulls one face of the depth."""
        return self.inertia_u / self.reach_v

    @property
    def modulus_v(self) -> float:
        """Section modulus about the axis along the depth, mm3."""
        return self.inertia_v / self.reach_u

    def words_in(self, units: Units) -> str:
        """The section in words in a sheet's units, for the written-out working."""
        bent_u, bent_v, twisted = (
            show(moment, "mm4", units) for moment in (self.inertia_u, self.inertia_v, self.torsion_constant)
        )
        return f"area {show(self.area, 'mm2', units)}, second moments {bent_u} and {bent_v}, torsion {twisted}"


@dataclass(frozen=True, slots=True)
class Holes:
    """Bolt holes through a section. size: diameter, mm. places: how far they stand from its middle, mm: a pair, one for nought.

    A bolt that has none across from it counts as a pair all the same: careful, and the section stays even.
    """

    size: float = 0.0
    places: tuple[float, ...] = ()

    @property
    def width(self) -> float:
        """What they take of the width, mm."""
        return self.size * sum(2 if place else 1 for place in self.places)

    @property
    def second(self) -> float:
        """Second moment of what they take, for 1 mm of depth, about the middle, mm3."""
        return self.size * sum((2 if place else 1) * (place**2 + self.size**2 / 12) for place in self.places)

    def within(self, width: float) -> "Holes":
        """Those in so much of the width, mm."""
        return Holes(self.size, tuple(place for place in self.places if 2 * place < width))


NO_HOLES = Holes()


def flat_plate(width: float, thickness: float, gap: float = 0.0, holes: Holes = NO_HOLES) -> Section:
    """A flat bar, or a plate with an opening `gap` wide in its middle and bolt holes. mm.

    Torsion: Roark's Formulas for Stress and Strain, 7th ed., Table 10.1 case 4 (from memory), within 0.5 %; what openings
    leave counts as strips of equal width. Raises OutsideRange where no metal is left.

    >>> bar = flat_plate(60.0, 10.0)
    >>> bar.area, bar.inertia_u, bar.inertia_v
    (600.0, 5000.0, 180000.0)
    """
    left = width - gap - holes.width
    _positive(width, thickness, left)
    strips = 1 + (1 if gap else 0) + sum(2 if place else 1 for place in holes.places)
    constant, modulus = _rectangle_torsion(left / strips, thickness)
    area = left * thickness
    return Section(
        area=area,
        inertia_u=left * thickness**3 / 12,
        inertia_v=thickness * ((width**3 - gap**3) / 12 - holes.second),
        reach_u=width / 2,
        reach_v=thickness / 2,
        centroid=thickness / 2,
        torsion_constant=strips * constant,
        torsion_modulus=strips * modulus,
        shear_u=area / 1.5,
        shear_v=area / 1.5,
    )


def hollow_rectangle(width: float, depth: float, wall: float, corner_radius: float = 0.0) -> Section:
    """A box tube. corner_radius: of the outside, mm; nought for sharp corners, which reads high for a rolled tube.

    Torsion: closed cell in the form of EN 10219-2 (from memory); a finite element figure stands up to 4 % above it. Its
    stress counts the inside corner, of the outside radius less the wall and no sharper than LEAST_INSIDE_RADIUS. Shear is
    the mean through the wall, corners counted sharp. Raises OutsideRange where wall or radius has no room.

    >>> round(hollow_rectangle(60.0, 40.0, 4.0, 8.0).modulus_v)
    10329
    """
    _positive(width, depth, wall, width - 2 * wall, depth - 2 * wall, min(width, depth) - 2 * corner_radius + 1e-9)
    inside_radius = max(corner_radius - wall, 0.0)
    outer = _rounded(width, depth, corner_radius)
    inner = _rounded(width - 2 * wall, depth - 2 * wall, inside_radius)
    area, inertia_u, inertia_v = (whole - hole for whole, hole in zip(outer, inner, strict=True))
    middle_radius = max(corner_radius - wall / 2, 0.0)
    cell = (width - wall) * (depth - wall) - (4 - pi) * middle_radius**2
    round_it = 2 * (width + depth - 2 * wall) - (8 - 2 * pi) * middle_radius
    constant = 4 * cell**2 * wall / round_it + round_it * wall**3 / 3
    return Section(
        area=area,
        inertia_u=inertia_u,
        inertia_v=inertia_v,
        reach_u=width / 2,
        reach_v=depth / 2,
        centroid=depth / 2,
        torsion_constant=constant,
        torsion_modulus=constant / _cell_shear(2 * cell * wall / round_it, wall, inside_radius),
        shear_u=_box_shear(depth, width, wall),
        shear_v=_box_shear(width, depth, wall),
    )


def round_tube(diameter: float, wall: float) -> Section:
    """A round tube; a wall of half the diameter makes it a solid bar. mm.

    >>> tube = round_tube(42.0, 5.0)
    >>> round(tube.area, 1), round(tube.inertia_u), round(tube.torsion_constant)
    (581.2, 101273, 202546)
    """
    _positive(diameter, wall, diameter - 2 * wall + 1e-9)
    outer, inner = diameter / 2, max(diameter / 2 - wall, 0.0)
    area = pi * (outer**2 - inner**2)
    inertia = pi * (outer**4 - inner**4) / 4
    shear = area * 3 * (outer**2 + inner**2) / (4 * (outer**2 + outer * inner + inner**2))
    return Section(
        area, inertia, inertia, outer, outer, outer, 2 * inertia, 2 * inertia / outer, shear, shear, turned=True
    )


def round_bar(diameter: float) -> Section:
    """A solid round bar, mm.

    >>> round(round_bar(20.0).modulus_u, 2)
    785.4
    """
    return round_tube(diameter, diameter / 2)


def box_on_plate(
    plate: Section,
    width: float,
    depth: float,
    wall: float,
    corner_radius: float,
    holes: Holes = NO_HOLES,
    front_gap: float = 0.0,
    back_gap: float = 0.0,
) -> Section:
    """A plate with a box tube welded along its back, as one section about its own centroid. mm.

    plate: made by flat_plate. holes: through both faces of the box. front_gap, back_gap: opening in the face on the plate and in
    the far one, which goes through the walls too where it reaches them. Shear: the box alone along the depth, the stronger of
    the two alone along the width, so never more than the whole has; along the width a box with an opening counts for nothing.

    >>> joined = box_on_plate(flat_plate(120.0, 10.0), 60.0, 40.0, 4.0, 0.0)
    >>> round(joined.centroid, 3), round(joined.inertia_u)
    (14.504, 473129)
    """
    box = hollow_rectangle(width, depth, wall, corner_radius)
    thickness = 2 * plate.centroid
    pieces = [_piece(plate, thickness / 2), _piece(box, thickness + depth / 2)]
    for place, gap in ((thickness + wall / 2, front_gap), (thickness + depth - wall / 2, back_gap)):
        pieces += _taken(place, wall, holes, min(gap, width))
    walls, left = _eaten(thickness + depth / 2, depth - 2 * wall, width, wall, back_gap)
    pieces += walls
    shear_u = 0.0 if front_gap or back_gap else box.shear_u
    alone = _Beam(box.torsion_constant, box.torsion_modulus, shear_u, left * box.shear_v)
    return _joined(pieces, plate, alone, thickness, width, depth)


def tube_on_plate(plate: Section, diameter: float, wall: float) -> Section:
    """A plate with a round tube welded along its back, as one section about its own centroid. mm.

    >>> round(tube_on_plate(flat_plate(120.0, 10.0), 40.0, 4.0).centroid, 3)
    11.844
    """
    tube = round_tube(diameter, wall)
    thickness = 2 * plate.centroid
    pieces = [_piece(plate, thickness / 2), _piece(tube, thickness + diameter / 2)]
    alone = _Beam(tube.torsion_constant, tube.torsion_modulus, tube.shear_u, tube.shear_v)
    return _joined(pieces, plate, alone, thickness, diameter, diameter)


def channel_on_plate(
    plate: Section,
    width: float,
    depth: float,
    wall: float,
    holes: Holes = NO_HOLES,
    back_gap: float = 0.0,
) -> Section:
    """A plate with a channel welded to it by its toes, so that the two close a cell. mm; arguments as box_on_plate.

    Torsion: the closed cell by Bredt's formula, the plate being its fourth side; its stress counts inside corners of
    LEAST_INSIDE_RADIUS in the thinner of channel and plate.

    >>> joined = channel_on_plate(flat_plate(120.0, 10.0), 60.0, 40.0, 4.0)
    >>> round(joined.area), round(joined.centroid, 3)
    (1728, 14.806)
    """
    _positive(width, depth, wall, width - 2 * wall, depth - wall)
    thickness = 2 * plate.centroid
    leg = depth - wall
    legs = (
        2 * wall * leg,
        thickness + leg / 2,
        2 * wall * leg**3 / 12,
        leg * (width**3 - (width - 2 * wall) ** 3) / 12,
    )
    back = (width * wall, thickness + depth - wall / 2, width * wall**3 / 12, wall * width**3 / 12)
    pieces = [_piece(plate, thickness / 2), legs, back]
    pieces += _taken(thickness + depth - wall / 2, wall, holes, min(back_gap, width))
    walls, left = _eaten(thickness + leg / 2, leg, width, wall, back_gap)
    pieces += walls
    across, along = width - wall, depth - wall / 2 + thickness / 2
    cell = across * along
    constant = 4 * cell**2 / (across / wall + 2 * along / wall + across / thickness)
    thinnest = min(wall, thickness)
    modulus = constant / _cell_shear(constant / (2 * cell), thinnest, 0.0)
    alone = _Beam(constant, modulus, 0.0 if back_gap else width * wall / 1.5, left * 2 * wall * leg / 1.5)
    return _joined(pieces, plate, alone, thickness, width, depth)


@dataclass(frozen=True, slots=True)
class _Beam:
    """What the beam on the back of a plate carries by itself."""

    torsion_constant: float
    torsion_modulus: float
    shear_u: float
    shear_v: float


Rectangle = tuple[float, float, float, float]
"""Area, v of its own centroid, own second moment about the width's axis, second moment about u = 0."""


def _piece(section: Section, place: float) -> Rectangle:
    return section.area, place, section.inertia_u, section.inertia_v


def _taken(place: float, thick: float, holes: Holes, gap: float) -> list[Rectangle]:
    """Bolt holes and an opening in the middle of a wall, as metal taken away."""
    area = (holes.width + gap) * thick
    return [(-area, place, -area * thick**2 / 12, -thick * (holes.second + gap**3 / 12))] if area else []


def _eaten(place: float, deep: float, width: float, wall: float, gap: float) -> tuple[list[Rectangle], float]:
    """What an opening through the whole beam takes of its two walls, so deep, mm, and the share of them that is left."""
    inside = width - 2 * wall
    wide = min(max(gap, inside), width)
    lost = wide - inside
    taken = (-lost * deep, place, -lost * deep**3 / 12, -deep * (wide**3 - inside**3) / 12)
    return [taken] if lost else [], 1 - lost / (2 * wall)


def _joined(
    pieces: list[Rectangle], plate: Section, beam: _Beam, thickness: float, beam_width: float, beam_depth: float
) -> Section:
    area = sum(piece[0] for piece in pieces)
    _positive(area)
    centroid = sum(piece[0] * piece[1] for piece in pieces) / area
    inertia_u = sum(own + part * (place - centroid) ** 2 for part, place, own, _ in pieces)
    inertia_v = sum(piece[3] for piece in pieces)
    constant = plate.torsion_constant + beam.torsion_constant
    for_plate, for_beam = (part.torsion_modulus / part.torsion_constant for part in (plate, beam))
    return Section(
        area=area,
        inertia_u=inertia_u,
        inertia_v=inertia_v,
        reach_u=max(plate.reach_u, beam_width / 2),
        reach_v=max(centroid, thickness + beam_depth - centroid),
        centroid=centroid,
        torsion_constant=constant,
        torsion_modulus=constant * min(for_plate, for_beam),
        shear_u=max(plate.shear_u, beam.shear_u),
        shear_v=beam.shear_v,
    )


def _rounded(width: float, depth: float, radius: float) -> tuple[float, float, float]:
    """Area and second moments of a rectangle with rounded corners: the four corner pieces are taken away.

    A corner piece is a square less a quarter circle, worked out from the two.
    """
    square, quarter = radius**2, pi * radius**2 / 4
    area = square - quarter
    if not area:
        return width * depth, width * depth**3 / 12, depth * width**3 / 12
    from_middle = 4 * radius / (3 * pi)  # of the quarter circle, from the centre of its curve
    own = radius**4 / 3 - pi * radius**4 / 16  # about the curve's centre
    off = (square * radius / 2 - quarter * from_middle) / area  # centroid of the piece, from the curve's centre
    about_own = own - area * off**2

    def corners(half: float) -> float:
        return 4 * (about_own + area * (half - radius + off) ** 2)

    return (
        width * depth - 4 * area,
        width * depth**3 / 12 - corners(depth / 2),
        depth * width**3 / 12 - corners(width / 2),
    )


def _rectangle_torsion(width: float, thickness: float) -> tuple[float, float]:
    """Torsion constant and modulus of a rectangle, Roark 7th ed. Table 10.1 case 4, from memory."""
    long, short = max(width, thickness), min(width, thickness)
    slim = short / long
    constant = long * short**3 * (1 / 3 - 0.21 * slim * (1 - slim**4 / 12))
    peak = 1 + 0.6095 * slim + 0.8865 * slim**2 - 1.8023 * slim**3 + 0.91 * slim**4
    return constant, long * short**2 / (3 * peak)


def _cell_shear(flow: float, wall: float, inside_radius: float) -> float:
    """Greatest shear stress in the wall of a twisted closed cell, both it and the shear flow over G x twist: mm, mm2.

    It stands outside on the straight wall, mean stress and the wall's own twist, or in the inside corner. There Prandtl's
    equation in polar coordinates leaves r + c / r, and what flows through the wall settles c. Source: worked out here;
    `1 + t / 4 r` of the mean (Timoshenko and Goodier, from memory) reads up to 12 % low in a thin closed wall.
    """
    radius = max(inside_radius, LEAST_INSIDE_RADIUS * wall)
    crowding = (flow - wall * (radius + wall / 2)) / log(1 + wall / radius)
    return max(flow / wall + wall, radius + crowding / radius)


def _box_shear(width: float, depth: float, wall: float) -> float:
    """Shear force along the depth over the greatest shear stress, sharp corners: V Q / (I b) at the middle."""
    inside_width, inside_depth = width - 2 * wall, depth - 2 * wall
    inertia = (width * depth**3 - inside_width * inside_depth**3) / 12
    first_moment = (width * depth**2 - inside_width * inside_depth**2) / 8
    return inertia * 2 * wall / first_moment


def _positive(*sizes: float) -> None:
    if min(sizes) <= 0:
        raise OutsideRange("these sizes leave no metal: check width, depth, wall, radius and holes")


def bending_stress(section: Section, moment_u: float, moment_v: float) -> float:
    """Greatest bending stress, MPa, for moments about both axes in N mm; always plus.

    >>> round(bending_stress(round_bar(20.0), 300_000.0, 400_000.0), 2)
    636.62
    """
    across, along = abs(moment_u) / section.modulus_u, abs(moment_v) / section.modulus_v
    return hypot(across, along) if section.turned else across + along
