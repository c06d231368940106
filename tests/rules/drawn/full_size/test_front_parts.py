"""What the words on the front view speak of: each one's leader line begins on that, by hand from the round sheet."""

import pytest

from rules.drawn.full_size.front import front_view
from rules.drawn.full_size.shapes import PaperWords
from tests.support.base_sheet import changed
from tests.support.judging import judged_document

PLATE = {
    "plate.thickness": "10 mm", "plate.width": "130 mm", "plate.height": "300 mm", "plate.spindle_from_top": "150 mm",
    "plate.spindle_from_front": "60 mm", "plate.bore": "90 mm",
}  # fmt: skip
UPPER, LOWER = (-122.4, 129.7), (-77.5, -125.0)
"""From 400 up at the hub to 275 up at the lower pivot, the axis stands 25 + 275 tan 10 = 73.5 inboard of the tyre's middle,
which is at -4. The pivots are 260 apart: 260 / sqrt(1 + tan2 10 + tan2 6) = 254.7 higher is 44.9 more inboard."""


@pytest.fixture(scope="module")
def words() -> list[PaperWords]:
    found = front_view(judged_document(changed(PLATE)), "whole").items
    return [item for item in found if isinstance(item, PaperWords) and item.led]


@pytest.mark.parametrize(
    ("begins", "across", "up"),
    [
        # x from the hub face, outboard plus; its height from the wheel centre, above or below where a part is round.
        # The hub face is 10 - 6 = 4 outboard of the tyre's middle; the rim is 240 wide about that, its bead seats 381 across.
        ("rim ø", (-124.0, 116.0), (190.4, 190.6)),
        ("barrel inside ø", (-124.0, 116.0), (179.9, 180.1)),
        # 6 of hat stand on the hub; the wheel lies on it between its bore of 108 and the bolt circle of 135
        ("wheel mounting face", (6.0, 6.0), (54.0, 67.5)),
        # the rotor's middle is 44 from the hat's face, 6 - 44 = -38, and 22 thick; 280 across
        ("rotor ø", (-49.0, -27.0), (100.0, 140.0)),
        # it reaches 44 outboard of the rotor's middle and 60 inboard, and 22 beyond the edge
        ("caliper at", (-98.0, 6.0), (95.0, 162.0)),
        ("studs", (0.0, 45.0), (67.5, 67.5)),
        # 60 inboard of the hub face its own face stands, and its back is 10 more inboard; round a bore of 90
        ("plate 10 mm thick", (-70.0, -60.0), (45.0, 150.0)),
        ("upper pivot,", (UPPER[0] - 0.1, UPPER[0] + 0.1), (UPPER[1] - 0.1, UPPER[1] + 0.1)),
        ("lower pivot,", (LOWER[0] - 0.1, LOWER[0] + 0.1), (-LOWER[1] - 0.1, -LOWER[1] + 0.1)),
        # 31 in and 33 in across
        ("smallest tyre ø", (-4.0 - 134.0, -4.0 + 134.0), (393.6, 393.8)),
        ("largest tyre ø", (-4.0 - 159.0, -4.0 + 159.0), (419.0, 419.2)),
    ],
)
def test_a_leader_line_begins_on_what_its_words_speak_of(
    words: list[PaperWords], begins: str, across: tuple[float, float], up: tuple[float, float]
) -> None:
    told = [one.led[0] for one in words if one.text.startswith(begins)]
    assert told
    for x, y in told:
        assert across[0] - 1e-6 <= x <= across[1] + 1e-6
        assert up[0] - 1e-6 <= abs(y) <= up[1] + 1e-6
