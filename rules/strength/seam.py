"""The two runs that join a beam to the plate it stands on: what flows along them, and what comes in at the beam's end.

A section as in `section`: u along the width, v along the depth from the outer face inward. Forces in N, moments in N mm, about x
ahead, y outboard, z up. Where the beam runs on, bending hands V Q / I across the joint and twist flows round the closed cell.
At its end the beam carries nothing yet; over an end length all its share of what the section carries must come in through the
runs: its pull, its own bending and shear, and its twist.
"""

from math import hypot, sqrt

from rules.measure.records import NamedTuple, dataclass
from rules.measure.vectors import cross, plus
from rules.strength.section import Section
from rules.strength.stress import SectionLoads
from rules.strength.weld import YIELD, two_lines


def seams_apart(width: float, corner_radius: float, leg: float) -> float:
    """From one run to the other, mm: between the places where they end up on the beam.

    corner_radius: of the beam's outside corner, mm, half the width for a round tube; a fillet of that leg, mm, reaches so far
    round it. Source: geometry.

    >>> seams_apart(60.0, 0.0, 5.0), seams_apart(60.0, 8.0, 8.0), round(seams_apart(40.0, 20.0, 4.0), 6)
    (60.0, 60.0, 24.0)
    """
    up = min(leg, corner_radius)
    return width - 2 * corner_radius + 2 * sqrt(up * (2 * corner_radius - up))


def flow_of_one_cell(area: float) -> float:
    """N on each mm of seam for each N mm of twist, 1 / mm2, where the runs close the cell: Bredt, 1 / (2 A). area in mm2."""
    return 1 / (2 * area)


def flow_of_two_cells(area: float, slimness: float, apart: float, wall: float, plate: float) -> float:
    """The same where the beam is a closed cell itself: what flows round the narrow cell that it and the plate close between them.

    area: of the beam's own cell, mm2; slimness: length over thickness summed round it; apart: the two runs, mm; wall and plate:
    thickness, mm. Both cells turn alike (Bredt and Batho, from memory): 2 A1 = q1 S - q2 a / wall, 2 A2 =
    q2 (a / wall + a / plate) - q1 a / wall, A2 = a (wall + plate) / 2. The plate's own twist is left out, which reads high.

    >>> round(1 / flow_of_two_cells(2016.0, 46.0, 56.0, 4.0, 10.0))
    4707
    """
    between, through = apart / wall, apart / wall + apart / plate
    narrow = apart * (wall + plate) / 2
    round_beam = (2 * area * through + 2 * narrow * between) / (slimness * through - between**2)
    round_narrow = (2 * narrow + round_beam * between) / through
    return round_narrow / (2 * area * round_beam + 2 * narrow * round_narrow)


class SeamForce(NamedTuple):
    """On one mm of a run, N: in the plate's face, and square to it."""

    along: float
    square: float

    @property
    def in_the_weld(self) -> float:
        """What counts against the weld metal, N: the two as vectors, whichever way it is pulled."""
        return hypot(self.along, self.square)

    @property
    def in_the_part(self) -> float:
        """What counts against shear in the part beside it, N: pulled square to its face a part holds so much more.

        Source: AISC 360-16 clauses J4.1 and J4.2: 0.60 of yield or tensile strength in shear, all of it in pull.
        """
        return hypot(self.along, YIELD * self.square)


@dataclass(frozen=True, slots=True)
class Seam:
    """The joint of a beam to its plate at one level.

    area: of the beam, mm2; inertia_u, inertia_v: the beam's about its own centroid, mm4; whole: the two together; plate: it
    alone; apart: the runs, mm; cell: flow for each N mm of twist, 1 / mm2.
    """

    whole: Section
    plate: Section
    area: float
    inertia_u: float
    inertia_v: float
    centroid: float
    apart: float
    cell: float

    @property
    def first_moment(self) -> float:
        """Q of the beam about the centroid of the two together, mm3."""
        return self.area * (self.centroid - self.whole.centroid)

    def flow(self, cut: SectionLoads) -> SeamForce:
        """What the worse run carries where beam and plate are one: V Q / (2 I) and the cell's twist."""
        bending = abs(cut.shear_v) * self.first_moment / (2 * self.whole.inertia_u)
        return SeamForce(bending + abs(cut.twist) * self.cell, 0.0)

    def brought_in(self, cut: SectionLoads, length: float, above: float) -> SeamForce:
        """What the worst mm of the runs carries over `length`, mm, at the beam's end, for what the section there carries.

        above: from the middle of that length up to the section, mm, minus when below. The beam's share goes by its area and
        second moments and acts at its own centroid, beside the runs. They carry it evenly, bending square to the plate as pull
        over one half of the length and push over the other; twist as pull of one run and push of the other, and it flows along
        them too. Every part counts as its worst, all at one place. length: above 0.
        """
        off = self.centroid - self.whole.centroid
        beside = self.centroid - 2 * self.plate.centroid
        bent, across = self.inertia_u / self.whole.inertia_u, self.inertia_v / self.whole.inertia_v
        pull = cut.axial * self.area / self.whole.area - cut.moment_u * self.area * off / self.whole.inertia_u
        handed = (self.inertia_u + self.area * off * beside) / self.whole.inertia_u
        force = (cut.shear_u * across, cut.shear_v * handed, pull)
        own = (cut.moment_u * bent, cut.moment_v * across, cut.twist)
        about_x, about_y, about_z = (abs(part) for part in plus(own, cross((0.0, -beside, above), force)))
        ahead, square, along = (abs(part) / (2 * length) for part in force)
        turned = about_y / two_lines(length, self.apart).about_normal
        return SeamForce(
            hypot(along + turned * self.apart / 2 + abs(cut.twist) * self.cell, ahead + turned * length / 2),
            square + 2 * about_x / length**2 + about_z / (length * self.apart),
        )


def joint(whole: Section, plate: Section, apart: float, cell: float) -> Seam:
    """The joint at a level, from the two together and the plate alone: the beam is what is between them.

    Box 60 x 40 x 4 on 120 x 10, by hand: 736 mm2, (60 x 40^3 - 52 x 32^3) / 12 = 178 005 mm4 about its middle, 30 from the face.

    >>> from rules.strength.section import box_on_plate, flat_plate
    >>> plate = flat_plate(120.0, 10.0)
    >>> box = joint(box_on_plate(plate, 60.0, 40.0, 4.0, 0.0), plate, 60.0, 0.0)
    >>> round(box.area), round(box.centroid, 6), round(box.inertia_u)
    (736, 30.0, 178005)
    """
    area = whole.area - plate.area
    centroid = (whole.area * whole.centroid - plate.area * plate.centroid) / area
    apart_u = plate.inertia_u + plate.area * (whole.centroid - plate.centroid) ** 2
    inertia_u = whole.inertia_u - apart_u - area * (centroid - whole.centroid) ** 2
    return Seam(whole, plate, area, inertia_u, whole.inertia_v - plate.inertia_v, centroid, apart, cell)
