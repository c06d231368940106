"""From the foot to the pads, and which axle locks first. N, mm, MPa."""

from math import pi

from rules.graph.results import OutsideRange


def pressure(effort: float, ratio: float, bore: float, share: float = 1.0) -> float:
    """Line pressure, MPa, under a foot's push, N: effort x pedal ratio x share of a balance bar / area of the bore, mm.

    Source: statics. 445 N (100 lbf) at 6 to 1 on 22.225 mm (7/8 in), 387.9 mm2: 6.883 MPa, 998 psi.

    >>> round(pressure(444.82, 6.0, 22.225), 2)
    6.88
    """
    return effort * ratio * share / (pi * bore**2 / 4)


def pedal_travel(volume: float, bore: float, ratio: float) -> float:
    """How far the foot goes, mm, to push a volume, mm3, out of a bore, mm. Geometry.

    >>> round(pedal_travel(4000.0, 22.225, 6.0), 1)
    61.9
    """
    return ratio * volume / (pi * bore**2 / 4)


def piston_volume(diameter: float, pistons: int, both_sides: bool, moves: float) -> float:
    """What the two calipers of an axle take, mm3. pistons: on one side; a fixed caliper has as many on the other side.

    >>> round(piston_volume(54.0, 1, False, 0.5))
    2290
    """
    return 2 * pistons * (2 if both_sides else 1) * pi * diameter**2 / 4 * moves


def rear_locks_at(front_share: float, front_weight: float, height: float, wheelbase: float) -> float:
    """Deceleration, g, from which the rear wheels lock before the front ones; nought where they do at any.

    front_share: of the braking force; front_weight: of the car's weight, standing. height: of the centre of gravity, mm. Both
    axles use the same grip where share = weight + deceleration x height / wheelbase: beyond that the rear is too light for its
    brakes. Source: statics, moments about a tyre's foot. Raises OutsideRange without height or wheelbase.

    >>> round(rear_locks_at(0.7, 0.5, 600.0, 2400.0), 9)
    0.8
    """
    if height <= 0 or wheelbase <= 0:
        raise OutsideRange("the centre of gravity's height and the wheelbase are not above nought")
    return max((front_share - front_weight) * wheelbase / height, 0.0)
