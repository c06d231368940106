"""Which parts touch because they are made to. Rods in one vertical plane, so that each gap is read off two coordinates."""

import pytest

from rules.corner.kinds import by_design
from rules.corner.part import Part
from rules.measure.vectors import Vector
from rules.solids.shapes import Rod

FRAME = Part("frame at the upper arm", "frame", (Rod((200.0, -400.0, 470.0), (-200.0, -400.0, 470.0), 15.0),))


def shock(frame_end: Vector) -> Part:
    """From an end on the frame down to the lower arm."""
    return Part("shock", "shock", (Rod(frame_end, (0.0, -200.0, 280.0), 30.0),), stands_on="lower arm")


@pytest.mark.parametrize(
    ("frame_end", "hangs"),
    [
        ((0.0, -400.0, 470.0), True),  # at the tube's middle
        ((0.0, -400.0, 584.0), True),  # 114 above it, so 99 from its outside of 15
        ((0.0, -400.0, 586.0), False),  # 101
        ((0.0, -450.0, 700.0), False),  # far above: the shock has to pass the tube
    ],
)
def test_a_shock_hangs_on_the_tube_that_its_end_is_at_and_has_to_pass_any_other(frame_end: Vector, hangs: bool) -> None:
    hung = shock(frame_end)
    assert bool(by_design(hung, FRAME)) == bool(by_design(FRAME, hung)) == hangs


def test_hub_bolts_are_no_part_of_the_hub_as_bought() -> None:
    """Their nuts, which the builder adds, have to clear what turns before them; the ears are the maker's own business."""
    ends = ((0.0, 0.0, 0.0), (0.0, 10.0, 0.0), 5.0)
    flange = Part("hub flange", "wheel", (Rod(*ends),))
    assert not by_design(flange, Part("hub bolts", "upright", (Rod(*ends),)))
    assert by_design(flange, Part("hub mounting flange", "upright", (Rod(*ends),)))
