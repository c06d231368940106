"""Which pieces a plate with tabs has slots for, and which of them it waits for."""

from math import hypot

import pytest

from rules.corner.part import Part
from rules.corner.slots import PlateSlots, Slot
from rules.graph.results import Waits
from rules.measure.outline import LighterBy, Outline, PlainHole, PlateEnds
from rules.sheet.plate import Plate
from rules.sheet.upright import Beam
from rules.values.corner.plate_slots import _edge_near, narrowest_beside_slots, plate_slots
from rules.values.wheel_end.hub_bolts import BoltPlaces
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


CARD = {"width": 140.0, "height": 300.0, "spindle_from_top": 150.0, "spindle_from_front": 70.0, "bore": 80.0,
        "hole_diameter": 12.0}  # fmt: skip
HOLES = LighterBy((PlainHole(60.0, 20.0), PlainHole(-60.0, 20.0)))
BOLTS = BoltPlaces(((50.0, -100.0), (-50.0, -100.0)))


@pytest.mark.parametrize(
    ("at", "left", "beside"),
    [
        # A slot of 30 x 10, level: 15 to each side of its middle, 5 up and down.
        ((0.0, 130.0), 15.0, "the plate's upper edge"), ((0.0, -130.0), 15.0, "the plate's lower edge"),
        ((45.0, 110.0), 10.0, "the plate's front edge"), ((-45.0, 110.0), 10.0, "the plate's rear edge"),
        ((0.0, 50.0), -5.0, "the lightening hole above"), ((0.0, 78.0), 3.0, "the lightening hole above"),
        ((0.0, -79.0), 4.0, "the lightening hole below"),
        ((45.0, -80.0), 9.0, "a hub bolt hole"), ((-45.0, -82.0), 7.0, "a hub bolt hole"),
        ((30.0, 10.0), hypot(15, 5) - 40, "the centre bore"),
    ],
)  # fmt: skip
def test_the_narrowest_metal_beside_a_slot(at: tuple[float, float], left: float, beside: str) -> None:
    """Holes of 20, 60 above and below; hub bolt holes of 12, 100 below; a bore of 80."""
    slots = PlateSlots((Slot(at, 30.0, 10.0, 0.0, "upper lugs"),))
    found = narrowest_beside_slots(slots, Plate.record(CARD), PlateEnds(), HOLES, BOLTS)
    assert (found.slot, found.beside) == ("slot for the upper lugs", beside)
    assert found.mm == pytest.approx(left) or (left < 0 and found.mm <= 0)


def test_the_narrowest_metal_between_two_slots() -> None:
    """8 between one 90 and one 108 above; and no bore, no holes asked for, no bolts placed."""
    slots = PlateSlots(tuple(Slot((0.0, above), 30.0, 10.0, 0.0, "upper lugs") for above in (108.0, 90.0)))
    bare = Plate.record({key: size for key, size in CARD.items() if key not in ("bore", "hole_diameter")})
    found = narrowest_beside_slots(slots, bare, PlateEnds(), LighterBy(), None)
    assert (found.mm, found.slot) == (pytest.approx(8.0), "lower slot for the upper lugs")
    assert found.beside == "the upper slot for the upper lugs"
