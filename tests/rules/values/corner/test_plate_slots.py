"""Which pieces a plate with tabs has slots for, and which of them it waits for."""

import pytest

from rules.corner.part import Part
from rules.graph.results import Waits
from rules.measure.outline import Outline
from rules.sheet.upright import Beam
from rules.values.corner.plate_slots import _edge_near, plate_slots
from tests.rules.corner.test_slots import PLATE, beam, lugs

LUGS, BEAM = lugs(0.0), beam(160.0)


def slotted(
    upper: Part | None = LUGS, kind: Beam | None = "none", part: Part | None = None, wall: float | None = None,
    upper_thick: float | None = 10.0, lower_thick: float | None = None,
) -> list[str]:  # fmt: skip
    """What each slot is of."""
    return [
        slot.piece for slot in plate_slots(24.0, PLATE, upper, None, part, kind, wall, upper_thick, lower_thick).slots
    ]


@pytest.mark.parametrize("kind", ["none", "tube", None])
@pytest.mark.parametrize("part", [None, BEAM])
def test_a_tube_or_no_beam_has_no_tabs_and_is_not_waited_for(kind: Beam | None, part: Part | None) -> None:
    assert slotted(kind=kind, part=part) == slotted(kind=kind, part=part, wall=4.0) == ["upper lugs"]


@pytest.mark.parametrize("kind", ["box", "channel"])
def test_a_beam_with_sides_has_tabs_and_is_waited_for(kind: Beam) -> None:
    """160 mm long: each of its two sides has two tabs."""
    assert slotted(kind=kind, part=BEAM, wall=4.0) == ["upper lugs"] + 4 * ["beam"]
    for part, wall, missing in (
        (None, 4.0, ("beam_part",)),
        (BEAM, None, ("upright.beam_wall",)),
        (None, None, ("beam_part", "upright.beam_wall")),
    ):
        with pytest.raises(Waits) as waits:
            slotted(kind=kind, part=part, wall=wall)
        assert waits.value.fields == missing


def test_lugs_are_waited_for_where_they_are_begun_and_only_there() -> None:
    assert slotted(upper=None, upper_thick=None) == []
    with pytest.raises(Waits) as waits:
        slotted(upper=None, lower_thick=10.0)
    assert waits.value.fields == ("upper_lugs_part", "lower_lugs_part")


@pytest.mark.parametrize(
    ("corner", "edge"),
    [((-65.0, 0.0), "front"), ((75.0, 0.0), "rear"), ((0.0, 95.0), "upper"), ((0.0, -145.0), "lower"),
     ((-75.0, 0.0), "front"), ((0.0, 102.0), "upper"), ((-68.0, 90.0), "front"), ((-60.0, 98.5), "upper")],
)  # fmt: skip
def test_which_edge_of_the_plate_is_nearest(corner: tuple[float, float], edge: str) -> None:
    """Of a left piece, its front at the left: 70 ahead of the wheel centre and 80 behind, 100 above and 150 below."""
    assert _edge_near(corner, Outline(-70.0, 80.0, -150.0, 100.0, 10.0)) == edge
