"""Castor read on turn plates: the difference of camber between 20 deg out and 20 deg in, times 1.46.

The factors 1.46 at 20 deg and 1.93 at 15 deg are common practice, no source. By hand: 1 / (2 sin 20 deg), for small
castor; how near it comes to the true castor with a leaning axis is worked out with a general rotation.
"""

from math import asin, degrees, radians, sin, tan

import numpy as np
import pytest
from scipy.optimize import brentq
from scipy.spatial.transform import Rotation

from rules.values.steering.returning import castor_by_turning
from tests.support.declared import the_value

camber_turned_20_in, camber_turned_20_out = the_value("camber_turned_20_in"), the_value("camber_turned_20_out")


def read(steer: float, inclination: float, castor: float) -> float:
    """Camber of a left wheel on its turn plate, deg, top outboard positive; everything in deg."""
    axis = np.array([-tan(radians(castor)), -tan(radians(inclination)), 1.0])
    axis /= np.linalg.norm(axis)

    def spin(turn: float) -> np.ndarray:
        return Rotation.from_rotvec(axis * turn).apply([0.0, 1.0, 0.0])

    def off(turn: float) -> float:
        return float(np.arctan2(-spin(turn)[0], spin(turn)[1])) - radians(steer)

    return degrees(asin(-spin(brentq(off, -1.0, 1.0, xtol=1e-14))[2]))


def test_the_factor_is_the_one_in_use() -> None:
    assert castor_by_turning(1.0, 0.0) == pytest.approx(1.46, abs=0.005)
    assert castor_by_turning(1.0, 0.0) == pytest.approx(1.4619, abs=5e-5)
    assert 1 / (2 * sin(radians(15))) == pytest.approx(1.93, abs=0.005)


CASES = [(10, 6), (10, 0), (0, 6), (12, 10), (8, 4), (10, -3), (15, 12)]


@pytest.mark.parametrize(("inclination", "castor"), CASES)
def test_both_cambers_are_those_of_a_general_rotation(inclination: float, castor: float) -> None:
    lean = (radians(inclination), radians(castor))
    assert degrees(camber_turned_20_out(*lean)) == pytest.approx(read(20, inclination, castor), abs=1e-9)
    assert degrees(camber_turned_20_in(*lean)) == pytest.approx(read(-20, inclination, castor), abs=1e-9)


@pytest.mark.parametrize(("inclination", "castor"), CASES)
def test_what_the_plates_read_is_the_castor_to_a_twentieth_part(inclination: float, castor: float) -> None:
    lean = (radians(inclination), radians(castor))
    found = degrees(castor_by_turning(camber_turned_20_out(*lean), camber_turned_20_in(*lean)))
    assert found == pytest.approx(castor, rel=0.05, abs=1e-9)


def test_without_castor_both_cambers_are_alike_and_the_plates_read_nought() -> None:
    # Inclination 10 deg, turned 19.684588 deg on the ground: 0.590912 deg of camber, derived; 20 deg give a little more.
    lean = (radians(10), 0.0)
    assert camber_turned_20_out(*lean) == pytest.approx(camber_turned_20_in(*lean), abs=1e-12)
    assert 0.590912 < degrees(camber_turned_20_out(*lean)) < 0.62


def test_the_two_cambers_changed_over_turn_the_sign_of_the_castor() -> None:
    assert castor_by_turning(radians(-1.5), radians(2.6)) == pytest.approx(radians(-5.99), abs=radians(0.01))
