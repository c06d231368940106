"""Limits: the verdict on, inside and outside each, and the words made from the same figures.

An inch is 25.4 mm (the international inch of 1959): 6 mm is 0.236 in, a quarter is 0.25, so within 6 %.
"""

from math import inf, radians

import pytest

from rules.graph.bands import AtLeast, AtMost, Between, ByChoice, Limits, figure, in_both


@pytest.mark.parametrize(
    ("number", "unit", "said"),
    [
        (6.0, "mm", "6 mm"),
        (1.6, "mm", "1.6 mm"),
        (-25.0, "mm", "-25 mm"),
        (1.1, "1", "1.1"),
        (0.65, "share", "65 %"),
        (radians(12), "rad", "12 deg"),
        (12.0, "deg", "12 deg"),
        (230.0, "°C", "230 °C"),
        (8 / 3, "1", "2.667"),
        (85.0, "price", "85"),
    ],
)
def test_a_figure_is_said_with_its_unit(number: float, unit: str, said: str) -> None:
    assert figure(number, unit) == said


@pytest.mark.parametrize(
    ("number", "said"),
    [  # 18 mm is 0.7087 in: 3/4 is 5.8 % more. 17.9 mm is 0.7047: 6.4 %, and 11/16 is 2.4 % less.
        (18.0, "18 mm (3/4 in)"), (17.9, "17.9 mm (11/16 in)"),
        # 27 mm is 1.0630 in: 1 is 5.9 % less. 27.1 mm is 1.0669: 6.3 %, and 1 1/8 is 5.4 % more.
        (27.0, "27 mm (1 in)"), (27.1, "27.1 mm (1 1/8 in)"),
        (1.5, "1.5 mm (1/16 in)"), (1.4, "1.4 mm"), (0.0, "0 mm"), (-25.0, "-25 mm"),
    ],
)  # fmt: skip
def test_beside_a_length_stands_the_coarsest_fraction_within_six_in_a_hundred(number: float, said: str) -> None:
    assert in_both(number, "mm") == said


@pytest.mark.parametrize(
    ("number", "unit", "said"),
    [
        (6.0, "mm", "6 mm (1/4 in)"),
        (3.0, "mm", "3 mm (1/8 in)"),
        (25.0, "mm", "25 mm (1 in)"),
        (1.6, "mm", "1.6 mm (1/16 in)"),
        (1.49, "mm", "1.49 mm"),
        (0.3, "mm", "0.3 mm"),
        (0.0, "mm", "0 mm"),
        (-25.0, "mm", "-25 mm"),
        (10.0, "deg", "10 deg"),
    ],
)
def test_a_length_worth_a_fraction_has_one_beside_it(number: float, unit: str, said: str) -> None:
    assert in_both(number, unit) == said


@pytest.mark.parametrize("length", [1.5, 2.0, 5.0, 7.0, 11.0, 16.5, 33.0, 47.0, 120.0, 333.0])
def test_the_fraction_beside_a_length_is_within_6_percent_of_it(length: float) -> None:
    whole, _, rest = in_both(length, "mm").partition("(")[2].removesuffix(" in)").rpartition(" ")
    top, _, bottom = rest.partition("/")
    inches = float(whole or 0) + (float(top) / float(bottom) if bottom else float(top))
    assert inches * 25.4 == pytest.approx(length, rel=0.06)


@pytest.mark.parametrize(
    ("number", "verdict"), [(6.0, "good"), (7.0, "good"), (5.99, "watch"), (3.0, "watch"), (2.99, "stop")]
)
def test_at_least(number: float, verdict: str) -> None:
    assert AtLeast("mm", 6.0, 3.0).verdict(number) == verdict


@pytest.mark.parametrize(
    ("number", "verdict"), [(1.6, "good"), (-9.0, "good"), (1.61, "watch"), (6.0, "watch"), (6.01, "stop")]
)
def test_at_most(number: float, verdict: str) -> None:
    assert AtMost("mm", 1.6, 6.0).verdict(number) == verdict


@pytest.mark.parametrize(
    ("number", "verdict"),
    [(-0.1, "stop"), (0.0, "watch"), (7.99, "watch"), (8.0, "good"), (12.0, "good"), (12.1, "watch"), (15.1, "stop")],
)
def test_between(number: float, verdict: str) -> None:
    assert Between("deg", 8.0, 12.0, least=0.0, most=15.0).verdict(number) == verdict


def test_without_a_watch_what_is_not_good_is_a_stop_and_without_end_nothing_is() -> None:
    assert AtLeast("mm", 6.0).verdict(5.9) == AtMost("mm", 6.0).verdict(6.1) == "stop"
    assert AtLeast("mm", 6.0, -inf).verdict(-1e9) == AtMost("mm", 6.0, inf).verdict(1e9) == "watch"
    assert Between("mm", -1.0, 1.0).verdict(1e9) == Between("mm", -1.0, 1.0).verdict(-1e9) == "watch"


def test_a_length_typed_in_inches_reaches_the_same_length_in_mm() -> None:
    assert AtMost("mm", 0.3 * 3).verdict(0.9) == "good"  # 0.3 x 3 is stored as 0.8999999999999999
    assert AtLeast("mm", 3 * 0.1 * 25.4).verdict(0.3 * 25.4) == "good"


@pytest.mark.parametrize(
    ("limits", "good", "watch", "stop"),
    [
        (AtLeast("mm", 6.0, 3.0), "6 mm (1/4 in) or more", "3 to 6 mm", "less than 3 mm (1/8 in)"),
        (AtLeast("mm", 6.0), "6 mm (1/4 in) or more", "", "less than 6 mm (1/4 in)"),
        (AtLeast("mm", 6.0, -inf), "6 mm (1/4 in) or more", "less than 6 mm (1/4 in)", ""),
        (AtMost("share", 0.5, 0.8), "up to 50 %", "50 to 80 %", "more than 80 %"),
        (AtMost("deg", 12.0), "up to 12 deg", "", "more than 12 deg"),
        (AtMost("1", 2.0, inf), "up to 2", "more than 2", ""),
        (Between("deg", 8.0, 12.0), "8 to 12 deg", "anything else", ""),
        (Between("deg", 8.0, 12.0, least=0.0), "8 to 12 deg", "anything else down to 0 deg", "less than 0 deg"),
        (Between("mm", 8.0, 12.0, most=40.0), "8 to 12 mm", "anything else up to 40 mm", "more than 40 mm"),
        (
            Between("deg", 8.0, 12.0, least=0.0, most=15.0),
            "8 to 12 deg",
            "anything else down to 0 deg and up to 15 deg",
            "less than 0 deg or more than 15 deg",
        ),
    ],
)
def test_the_words_follow_from_the_figures(limits: Limits, good: str, watch: str, stop: str) -> None:
    assert limits.in_words({"good": "", "watch": "", "stop": ""}) == {"good": good, "watch": watch, "stop": stop}


def test_words_of_a_checks_own_take_the_place_of_all_three_and_their_figures_are_filled_in() -> None:
    limits = AtLeast("1", 1.1, 1.0, other={"floor": (3.0, "mm")})
    said = {"good": "{good} x the load", "watch": "{watch} to {good} x, {floor} at least", "stop": ""}
    assert limits.in_words(said) == {"good": "1.1 x the load", "watch": "1 to 1.1 x, 3 mm at least", "stop": ""}


def test_a_side_without_end_has_no_figure_to_be_named() -> None:
    with pytest.raises(KeyError, match="most"):
        Between("deg", 8.0, 12.0).in_words({"good": "to {most}", "watch": "", "stop": ""})
    with pytest.raises(KeyError, match="watch"):
        AtLeast("mm", 6.0, -inf).in_words({"good": "{good}", "watch": "{watch}", "stop": ""})


def test_limits_with_no_verdict_of_their_own_have_only_the_words_given() -> None:
    limits = Limits(other={"plasma": (1.5, "1")})
    assert limits.in_words({"good": "{plasma} x", "watch": "", "stop": "less"})["good"] == "1.5 x"
    assert not any(limits.standard_words().values())


USE = ByChoice("deg", "job.use", {"road": Between("deg", 2.0, 8.0), "dunes": Between("deg", 4.0, 12.0)})


@pytest.mark.parametrize(
    ("limits", "number", "in_hand"),
    [
        (AtLeast("mm", 6.0, 3.0), 10.0, 4.0),
        (AtLeast("mm", 6.0, 3.0), 6.0, 0.0),
        (AtLeast("mm", 6.0, 3.0), 2.0, -4.0),
        (AtMost("mm", 1.5, 6.0), 1.0, 0.5),
        (AtMost("mm", 1.5, 6.0), 1.5, 0.0),
        (AtMost("mm", 1.5, 6.0), 8.0, -6.5),
        (Between("deg", 8.0, 12.0), 9.0, 1.0),  # the nearer end counts
        (Between("deg", 8.0, 12.0), 11.5, 0.5),
        (Between("deg", 8.0, 12.0), 7.0, -1.0),
        (Between("deg", 8.0, 12.0), 15.0, -3.0),
        (USE, 7.0, 1.0),  # of no choice: 4 to 8
    ],
)
def test_how_far_inside_good_a_number_is(limits: Limits, number: float, in_hand: float) -> None:
    assert limits.in_hand(number) == in_hand


@pytest.mark.parametrize(
    ("number", "verdict"),
    [(3.0, "watch"), (1.6, "watch"), (1.4, "stop"), (13.9, "watch"), (14.1, "stop"), (5.0, "good")],
)
def test_of_no_choice_holds_what_all_choices_share(number: float, verdict: str) -> None:
    """4 to 8 is good of both; 1.5 to 14 is no stop of both."""
    limits = ByChoice("deg", "job.use", {
        "road": Between("deg", 2.0, 8.0, least=1.0, most=14.0), "dunes": Between("deg", 4.0, 12.0, least=1.5, most=20.0),
    })  # fmt: skip
    assert limits.of(None).verdict(number) == verdict


@pytest.mark.parametrize(("choice", "in_hand"), [("road", 1.0), ("dunes", 3.0), ("sea", 1.0)])
def test_how_far_inside_good_by_choice(choice: str, in_hand: float) -> None:
    assert USE.in_hand(7.0, choice) == in_hand
