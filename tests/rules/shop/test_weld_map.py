"""The weld map: joints by number, sizes in words, common words once, and a balanced order of runs."""

from typing import Any

import pytest

from rules.drawn.full_size.shapes import PaperCircle, PaperWords, Stroke
from rules.drawn.weld_symbol import weld_symbol
from rules.shop.weld_map import Joint, in_common, joints, order_of_runs
from sample_sheets import document
from tests.support.judging import judged_document


def found(**changes: dict[str, Any]) -> tuple[Joint, ...]:
    sheet = document("scree_ox_strength")
    for table, entries in changes.items():
        sheet[table] = {**sheet[table], **entries}
    return joints(judged_document(sheet))


def test_joints_are_numbered_in_the_order_of_the_sheet() -> None:
    assert [(joint.number, joint.parts) for joint in found()] == [
        (1, "Two upper lugs to the back of the plate"),
        (2, "Two lower lugs to the back of the plate"),
        (3, "Steering arm to the channel's rear side"),
        (4, "Caliper bracket to the plate's front edge"),
        (5, "Channel to the back of the plate"),
        (6, "Channel, where made of strips: sides to its back"),
    ]


def test_what_the_sheet_does_not_ask_has_its_row_of_blanks_and_no_place_in_the_order() -> None:
    """A channel of three strips is welded to the plate and to itself, a tube to the plate alone, a plate alone to nothing."""
    assert found()[-1].words == "form, leg, length, sides, prep, gap: ________"
    assert "6" not in order_of_runs(found())
    for beam, more in (("tube", ["Tube to the back of the plate"]), ("none", [])):
        assert [joint.parts for joint in found(upright={"beam": beam})[4:]] == more
    gusseted = found(plate={"gusset_at": "upper lugs", "gusset_thickness": "1/4 in", "gusset_along_plate": "1 in",
                            "gusset_along_lug": "1 in"})  # fmt: skip
    assert gusseted[-1].parts == "Gussets to lugs and plate"


def test_sizes_stand_in_words() -> None:
    upper, _, arm, *_ = found()
    assert upper.words == "fillet on both sides; leg 7/16 in; 4.2 in long, each run"
    assert arm.words == "fillet round a rectangle; leg 7/16 in; 3 9/16 in by 1 9/16 in, all round"
    bevel = found(weld_upper={"form": "full bevel"})[0]
    assert bevel.words.startswith("full bevel; welded through") and "leg" not in bevel.words


def test_the_seam_of_beam_and_plate_has_the_leg_and_share_that_strength_counts_on() -> None:
    assert found()[4].words == "fillet on one side; leg 3/8 in; along both its edges, all of it"
    assert "5a, 1b" in order_of_runs(found()) and order_of_runs(found()).endswith("5b")
    half = found(upright={"seam_share": "60 %"})[4]
    assert half.words.endswith("along both its edges, 60 % of it, in runs spread evenly")
    sheet = document("scree_ox_strength")
    del sheet["upright"]["seam_leg"]
    assert joints(judged_document(sheet))[4].words == "form, leg, length, sides, prep, gap: ________"


def test_what_is_not_on_the_sheet_is_a_blank() -> None:
    sheet = document("scree_ox_strength")
    del sheet["weld_upper"]["leg"], sheet["weld_lower"]["form"]
    upper, lower, *_ = joints(judged_document(sheet))
    assert "leg ____" in upper.words
    assert lower.words == "form, leg, length, sides, prep, gap: ________"
    assert weld_symbol(lower.form, lower.leg, lower.run, "inch") == ()


def test_process_and_preheat_are_said_once() -> None:
    said = list(in_common(found()))
    assert ("Process and filler, joints 1, 2, 3, 4", "MIG ER70S-6") in said
    preheats = [words for words, _ in said if words.startswith("Preheat")]
    assert preheats == ["Preheat, joints 1, 2, 4", "Preheat, joint 3"]


def test_the_two_sides_of_a_joint_do_not_follow_each_other() -> None:
    """Joint 3 goes round, so it has one run; the others have two."""
    assert order_of_runs(found()) == "1a, 2a, 3, 4a, 5a, 1b, 2b, 4b, 5b"


def test_symbols_by_form() -> None:
    """AWS A2.4: two triangles for both sides, one below the line for the arrow's side, a circle for all round."""

    def triangles(form: str, units: Any = "inch") -> list[Stroke]:
        items = weld_symbol(form, "3/8 in", "4 in", units)
        return [item for item in items if isinstance(item, Stroke) and item.closed and not item.filled]

    both = triangles("fillet on both sides")
    assert sorted(max(y for _, y in item.points) > 0 for item in both) == [False, True]
    (one,) = triangles("fillet on one side")
    assert min(y for _, y in one.points) < 0
    upright = [point for point in one.points if point[0] == min(x for x, _ in one.points)]
    assert len(upright) == 2, "the upright leg stands at the left"
    assert any(
        isinstance(item, PaperCircle) for item in weld_symbol("fillet round a tube or cup", "6 mm", "", "metric")
    )
    assert not any(isinstance(item, PaperCircle) for item in weld_symbol("fillet on one side", "6 mm", "", "metric"))
    assert not triangles("full bevel")
    sizes = [
        item.text
        for item in weld_symbol("fillet on one side", "6 mm", "80 mm", "metric")
        if isinstance(item, PaperWords)
    ]
    assert sizes == ["z 6", "80"], "ISO 2553: z for the leg"
    dashed = [
        item for item in weld_symbol("fillet on one side", "6 mm", "", "metric") if getattr(item, "pen", "") == "hidden"
    ]
    assert len(dashed) == 1, "and a dashed line for the other side"


@pytest.mark.parametrize(
    ("form", "leg", "run", "apart", "along", "words", "runs"),
    [
        ("", "", "", "", "", "form, leg, length, sides, prep, gap: ________", ("7",)),
        ("full bevel", "6", "40", "", "", "full bevel; welded through, back gouged or seen; gap ____; 40 long", ("7",)),
        ("fillet on one side", "6", "40", "", "", "fillet on one side; leg 6; 40 long", ("7",)),
        ("fillet on both sides", "6", "40", "50", "", "fillet on both sides; leg 6; 40 long, each run", ("7a", "7b")),
        ("fillet on both sides", "", "", "", "", "fillet on both sides; leg ____; ____ long, each run", ("7a", "7b")),
        (
            "fillet round a rectangle",
            "5",
            "40",
            "30",
            "",
            "fillet round a rectangle; leg 5; 40 by 30, all round",
            ("7",),
        ),
        (
            "fillet round a rectangle",
            "5",
            "",
            "",
            "",
            "fillet round a rectangle; leg 5; ____ by ____, all round",
            ("7",),
        ),
        ("fillet round a tube or cup", "5", "", "38", "", "fillet round a tube or cup; leg 5; round 38", ("7",)),
        ("fillet round a tube or cup", "5", "40", "", "", "fillet round a tube or cup; leg 5; round ____", ("7",)),
        ("fillet", "5", "40", "", "half of it", "fillet; leg 5; half of it", ("7a", "7b")),
    ],
)
def test_a_weld_in_words_with_blanks_for_what_is_not_entered(
    form: str, leg: str, run: str, apart: str, along: str, words: str, runs: tuple[str, ...]
) -> None:
    joint = Joint(7, "upper", "Lug to plate", form, leg, run, apart, "", "", bool(form), along)
    assert (joint.words, joint.runs) == (words, runs)
