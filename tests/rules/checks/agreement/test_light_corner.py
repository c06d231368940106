"""A corner so light beside its tyre, wheel and studs that its weight was read in another unit. Common practice, no source.

The four-seater weighs 345 kg a corner on tyres of load index 111, which is 1,090 kg (UN Regulation 54), wheels of 800 kg and six
12 x 1.25 mm studs of 92.1 mm2 (ISO 898-1, from memory): 3.2, 2.3 and 1.60 mm2 a kg. As pounds it is 156.5 kg: 7.0, 5.1, 3.53.
"""

import pytest

from rules.graph.results import DoesNotApply, NotJudged
from rules.judging.judge import judge
from rules.measure.marks import BoltCircle, Thread
from rules.sheet import read_sheet
from rules.sheet.confirmed import Confirmed
from sample_sheets import document
from tests.support.base_sheet import edited
from tests.support.declared import the_check
from tests.support.judging import judged_sample

CHECK, NAME = the_check("corner-light-for-its-parts"), "corner-light-for-its-parts"
STUDS = (Thread("M12x1.25", 12.0, 1.25), BoltCircle("6 x 114.3 mm", 6, 114.3))
SOUND = (
    "dune_wren_finished",
    "dune_wren_moving",
    "fell_badger_finished_metric",
    "pond_newt_finished",
    "scree_ox_strength",
)


def test_both_weights_of_a_car_in_the_wrong_unit_are_asked_about() -> None:
    car, before = document("fell_badger_finished_metric"), judged_sample("fell_badger_finished_metric")
    in_pounds = edited(car, {"job.corner_weight": "345 lb", "job.vehicle_weight": "1390 lb"})
    assert "job.corner_weight" in judge(read_sheet(in_pounds), before=before).asks_about


@pytest.mark.parametrize("sample", SOUND)
def test_a_sound_car_is_not_asked(sample: str) -> None:
    assert next(found.verdict for found in judged_sample(sample).findings if found.check == NAME) == "good"


@pytest.mark.parametrize(
    ("tyre", "wheel", "corner", "verdict"),
    [
        # 552.4 mm2 of stud are 3.2 a kg at 172.6 kg. At 170 kg: 5.5 and 4.5 times are 935 and 765 kg.
        (936.0, 766.0, 170.0, "watch"), (935.0, 766.0, 170.0, "good"), (936.0, 765.0, 170.0, "good"),
        (1090.0, 800.0, 174.0, "good"), (1090.0, 800.0, 172.0, "watch"),
    ],
)  # fmt: skip
def test_one_part_near_what_such_a_corner_has_is_enough(tyre: float, wheel: float, corner: float, verdict: str) -> None:
    assert CHECK(corner, tyre, wheel, *STUDS, Confirmed()).verdict == verdict
    assert CHECK(corner, tyre, wheel, *STUDS, Confirmed({"job.corner_weight"})).verdict == "good"


def test_what_is_missing_is_named() -> None:
    with pytest.raises(NotJudged) as missing:
        CHECK(150.0, 1090.0, None, *STUDS, Confirmed())
    assert missing.value.fields == ("wheel.load_rating",)
    with pytest.raises(DoesNotApply):
        CHECK(None, 1090.0, 800.0, *STUDS, Confirmed())
