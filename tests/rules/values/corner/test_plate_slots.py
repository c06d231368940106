"""Which pieces a plate with tabs has slots for, and which of them it waits for."""

import pytest

from rules.corner.part import Part
from rules.graph.results import Waits
from rules.sheet.upright import Beam
from rules.values.corner.plate_slots import plate_slots
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
