"""Finding things by what builders call them. The words themselves are common practice, no source."""

import pytest

from rules.judging import search
from rules.judging.search import is_exactly, matches, names_like, nearest, nearest_key
from rules.sheet import FIELDS
from rules.sheet.glossary import ALSO_CALLED, also_called, names_of, plain_words


@pytest.mark.parametrize(
    ("word", "name"),
    [
        ("caster", "pivots.castor"),
        ("SAI", "pivots.inclination"),
        ("KPI", "pivots.inclination"),
        ("kingpin", "pivots.inclination"),
        ("scrub", "pivots.ground_offset"),
        ("scrub radius", "pivots.ground_offset"),
        ("jounce", "arms.bump_travel"),
        ("rebound", "arms.droop_travel"),
        ("knuckle", "upright.material"),
        ("spindle", "upright.material"),
        ("motion ratio", "spring_ratio"),
        ("tire", "tyre.largest"),
        ("center", "wheel.centre_bore"),
        ("track rod", "steering.tie_rod_ahead"),
        ("track-rod", "tie_rod_load"),
        ("backspac", "wheel.backspacing"),
        ("caster trail", "mechanical_trail"),
        ("tires", "tyre.largest"),
        ("rims", "wheel.width"),
        ("lug pattern", "wheel.bolt_circle"),
        ("backspace", "wheel.backspacing"),
        ("bump stop", "spring.bump_rubber"),
        ("rose joint", "pivots.upper_kind"),
        ("tire size", "tyre.smallest"),
        ("load index", "tyre.load_capacity"),
        ("caster angle", "pivots.castor"),
    ],
)
def test_a_common_word_finds_the_thing(word: str, name: str) -> None:
    assert name in names_like(word)


@pytest.mark.parametrize("word", ["", "  ", "--", "xyzzy", "scrubb", "gearbox"])
def test_what_nothing_is_called_finds_nothing(word: str) -> None:
    assert names_like(word) == ()


@pytest.mark.parametrize(
    ("key", "meant"),
    [
        ("pivots.scrub_radius", "pivots.ground_offset"),
        ("pivots.KPI", "pivots.inclination"),
        ("pivots.cator", "pivots.castor"),
        ("wheel.bolt_pattern", "wheel.bolt_circle"),
        ("tire", "tyre"),
    ],
)
def test_a_key_nobody_knows_is_named_with_what_others_call_so_before_what_is_spelt_so(key: str, meant: str) -> None:
    assert nearest_key(key) == meant


def test_what_is_called_exactly_so_comes_first() -> None:
    assert names_like("caster")[0] == "pivots.castor"
    assert is_exactly("KPI", "pivots.inclination")
    assert not is_exactly("knuckle", names_like("knuckle")[0])


def test_a_short_word_begins_a_word_and_is_not_found_inside_one() -> None:
    assert not matches("ire", "tyre and fire")
    assert matches("fir", "tyre and fire")


def test_every_word_wanted_must_be_there() -> None:
    assert matches("lower bolt", "Lower pivot bolt thread")
    assert not matches("lower screw", "Lower pivot bolt thread")


@pytest.mark.parametrize("term", ALSO_CALLED)
def test_every_term_is_a_word_of_the_program(term: str) -> None:
    from rules.judging.trade import trade

    words = [plain_words(text) for text in (*FIELDS, *trade().values, *trade().checks)]
    words += [plain_words(asked.label) for asked in FIELDS.values()]
    words += [plain_words(node.note.title) for node in trade().checks.values()]
    assert any(term in text for text in words), "nobody would find anything by its other words"


def test_a_term_is_found_as_a_word_only() -> None:
    assert "tire" in also_called("Smallest tyre") and "tire" in also_called("tyres")
    assert "wishbone" not in also_called("armour")


@pytest.mark.parametrize(
    ("key", "real"),
    [
        ("pivots.castr", "pivots.castor"),
        ("wheel.backspaceing", "wheel.backspacing"),
        ("wheels", "wheel"),
        ("wheel.zzz", ""),
        ("zzz.width", ""),
        ("zzz", ""),
    ],
)
def test_the_nearest_real_key(key: str, real: str) -> None:
    assert nearest_key(key) == real


def test_a_file_of_thousands_of_keys_nobody_knows_asks_what_a_step_is_called_once(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    asked_for: list[str] = []

    def counted(label: str) -> tuple[str, ...]:
        asked_for.append(label)
        return names_of(label)

    monkeypatch.setattr(search, "names_of", counted)
    assert {nearest_key(f"wheel.zq{number}") for number in range(1000)} == {""}
    assert len(asked_for) <= sum(asked.step == "wheel" for asked in FIELDS.values())


def test_nearest_names_of_a_misspelt_value() -> None:
    assert "hub_height_offset" in nearest("hub_hight_ofset")
    assert nearest("qqqqqq") == ()
