"""Words beside choices. Names of grades, electrodes and gases from memory; common practice, no source."""

import pytest

from rules.graph.results import DoesNotApply, NotJudged
from tests.support.declared import the_check


@pytest.mark.parametrize(
    ("metal", "condition", "verdict"),
    [
        ("mild steel plate", "A36 hot rolled, heat 4130887", "good"),  # a heat number is no grade
        ("mild steel plate", "S355J2 as rolled", "good"), ("4130", "4130 normalised", "good"),
        ("mild steel plate", "A36, not stainless", "good"), ("4130", "normalised, certificate of May 2024", "good"),
        ("mild steel plate", "6061-T6", "watch"), ("mild steel plate", "Chromoly, normalized", "watch"),
        ("mild steel plate", "4140 annealed", "watch"), ("4130", "A36 hot rolled", "watch"), ("4130", "stainless 304", "watch"),
    ],
)  # fmt: skip
def test_a_condition_that_names_another_metal_than_the_one_chosen_is_told(
    metal: str, condition: str, verdict: str
) -> None:
    assert the_check("condition-names-metal")(metal, condition, frozenset()).verdict == verdict


@pytest.mark.parametrize(
    ("metal", "condition"),
    [
        ("mild steel plate", "12L14 cold drawn"), ("mild steel plate", "11SMnPb30"), ("mild steel plate", "EN1A leaded"),
        ("mild steel plate", "EN8 normalised"), ("mild steel plate", "C45"), ("mild steel plate", "1095 annealed"),
        ("mild steel plate", "080M40"), ("mild steel plate", "leaf spring, annealed"), ("mild steel plate", "AR450"),
        ("mild steel plate", "S690QL"), ("mild steel plate", "titanium"), ("4130", "brass, annealed"),
        ("mild steel plate", "hot rolled, grade unknown"), ("4130", "4130, no certificate"), ("mild steel plate", "scrap"),
    ],
)  # fmt: skip
def test_a_steel_that_is_not_welded_so_is_told_whatever_is_confirmed(metal: str, condition: str) -> None:
    """Free-cutting steel holds sulphur or lead and cracks hot; above about 0.35 % carbon steel hardens and cracks cold."""
    found = the_check("condition-names-metal")(metal, condition, frozenset({"plate.condition"}))
    assert found.verdict == "watch" and not found.asks_about


@pytest.mark.parametrize("condition", ["D2", "rusty", "Grade 7 of the yard", "{odd}"])
def test_a_condition_that_names_nothing_known_is_asked_about_once(condition: str) -> None:
    asked = the_check("condition-names-metal")("mild steel plate", condition, frozenset())
    assert (asked.verdict, asked.asks_about) == ("watch", "plate.condition")
    said = the_check("condition-names-metal")("mild steel plate", condition, frozenset({"plate.condition"}))
    assert (said.verdict, said.asks_about) == ("good", "")


@pytest.mark.parametrize(
    "condition",
    ["A572 grade 50", "S275JR+AR", "St 52-3", "1018", "1020 hot rolled", "low-carbon", "070M20", "300W", "EN 3"],
)
def test_plate_that_is_sold_for_welding_is_asked_nothing(condition: str) -> None:
    assert the_check("condition-names-metal")("mild steel plate", condition, frozenset()).verdict == "good"


def test_without_the_metal_chosen_its_condition_is_not_judged() -> None:
    with pytest.raises(NotJudged) as why:
        the_check("condition-names-metal")(None, "A36", frozenset())
    assert why.value.fields == ("plate.metal",)


@pytest.mark.parametrize(("metal", "condition"), [("other", "6061-T6"), ("4130", None)])
def test_without_both_there_is_nothing_to_compare(metal: str | None, condition: str | None) -> None:
    with pytest.raises(DoesNotApply):
        the_check("condition-names-metal")(metal, condition, frozenset())


@pytest.mark.parametrize(
    ("parts", "made_from", "verdict"),
    [
        ("Arm to the channel", "plate, bar or tube", "good"), ("lugs that set the castor", "plate, bar or tube", "good"),
        ("Arm to the cast knuckle", "plate, bar or tube", "watch"), ("forged eye to plate", None, "watch"),
        ("Lug to lug, not cast", "plate, bar or tube", "good"),
        ("Lugs of 4140", "plate, bar or tube", "watch"), ("Lug from a leaf spring", "plate, bar or tube", "watch"),
        ("The donor's arm, cut off", "plate, bar or tube", "watch"),
    ],
)  # fmt: skip
def test_a_casting_named_among_the_parts_of_a_weld_is_told(parts: str, made_from: str | None, verdict: str) -> None:
    assert the_check("steering-arm-weld-parts-in-words")(parts, made_from).verdict == verdict


def test_of_a_part_entered_as_cast_its_own_check_speaks() -> None:
    with pytest.raises(DoesNotApply):
        the_check("upper-weld-parts-in-words")("cast ear", "production casting or forging")


@pytest.mark.parametrize(
    ("process", "filler", "verdict"),
    [
        ("mig", "ER70S-6 0.9 mm, argon with 18 % CO2", "good"), ("mig", "ER70S-6 0.9 mm, CO2", "good"),
        ("mig", "ER70S-6, pure argon", "watch"), ("mig", "E7018 3.2 mm", "watch"),
        ("tig", "ER70S-2 1.6 mm, argon", "good"), ("tig", "ER80S-D2, pure argon", "good"),
        ("tig", "ER70S-6, C25", "watch"), ("tig", "ER70S-2, argon with 2 % oxygen", "watch"),
        ("mig", "ER70S-6 0.9 mm, argon", "watch"), ("mig", "ER70S-6, helium", "watch"),
        ("mig", "ER70S-6, no gas", "watch"), ("mig", "Gasless ER70S-6", "watch"), ("tig", "ER70S-2 without gas", "watch"),
        ("mig", "E71T-11, no gas", "good"), ("mig", "E71T-GS flux-cored, gasless", "good"),
        ("stick", "E7018, no gas", "good"),
        ("stick", "E7018 1/8 in, dried", "good"), ("stick", "ER70S-6", "watch"), ("stick", "E7018, argon", "watch"),
    ],
)  # fmt: skip
def test_filler_and_gas_of_another_process_are_told(process: str, filler: str, verdict: str) -> None:
    assert the_check("filler-and-gas-suit-process")(process, "mild steel plate", filler, frozenset()).verdict == verdict


@pytest.mark.parametrize("filler", ["coat hanger", "silicon bronze, argon", "the grey reel"])
def test_a_filler_of_no_known_class_is_asked_about_once(filler: str) -> None:
    asked = the_check("filler-and-gas-suit-process")("tig", "mild steel plate", filler, frozenset())
    assert (asked.verdict, asked.asks_about) == ("watch", "plate.filler")
    said = the_check("filler-and-gas-suit-process")("tig", "mild steel plate", filler, frozenset({"plate.filler"}))
    assert said.verdict == "good"


@pytest.mark.parametrize(
    ("process", "filler"),
    [("mig", "G3Si1 1.0 mm, M21"), ("mig", "G 42 4 M21 3Si1"), ("mig", "SG2, argon with 18 % CO2"), ("mig", "A18, 5 % CO2"),
     ("stick", "E 42 4 B 32 H5"), ("tig", "4130 rod, argon"), ("mig", "70S-6, argon with 15 % CO2")],
)  # fmt: skip
def test_fillers_as_packets_name_them_are_asked_nothing(process: str, filler: str) -> None:
    assert the_check("filler-and-gas-suit-process")(process, "mild steel plate", filler, frozenset()).verdict == "good"


def test_argon_alone_is_aluminiums_own_gas() -> None:
    assert the_check("filler-and-gas-suit-process")("mig", "other", "ER5356, pure argon", frozenset()).verdict == "good"


@pytest.mark.parametrize(
    ("words", "metal", "thickness", "verdict"),
    [
        ("warmed to 600 C", "mild steel plate", 12.0, "stop"),  # no weld is: common practice, no source
        ("400 C by crayon", "mild steel plate", 12.0, "good"),
        ("none", "mild steel plate", 12.0, "good"),
        ("none", "mild steel plate", 19.05, "good"),
        ("none, welded cold", "mild steel plate", 20.0, "watch"),  # over 3/4 in, as at the welds
        ("100 F by torch", "mild steel plate", 20.0, "good"),
        ("none", "4130", 6.1, "stop"),  # every source wants 150 C over 6 mm, less what a crayon reads
        ("145 C", "4130", 6.1, "good"),
        ("144 C", "4130", 6.1, "stop"),
        ("none", "4130", 6.0, "good"),
        ("none", "other", 30.0, "good"),
    ],
)
def test_the_plates_preheat_is_judged_as_its_welds_is(words: str, metal: str, thickness: float, verdict: str) -> None:
    found = the_check("plate-preheat")(words, metal, thickness)
    assert found.verdict == verdict and (verdict == "good" or found.change)


def test_of_a_preheat_that_names_no_heat_nothing_is_said() -> None:
    check = the_check("plate-preheat")
    for words in (None, "as the filler maker says"):
        with pytest.raises(DoesNotApply):
            check(words, "4130", 10.0)
    assert check("700 C", None, None).verdict == "stop"  # whatever the metal
    with pytest.raises(NotJudged) as missing:
        check("100 C", "4130", None)
    assert missing.value.fields == ("plate.thickness",)
