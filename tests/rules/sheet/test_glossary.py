"""One thing has one name: no text the program can show says it another way. The words are common practice, no source."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from rules.judging.explain import explain
from rules.judging.report import check_list, field_list, value_list
from rules.judging.search import names_like
from rules.judging.trade import trade
from rules.sheet import FIELDS, STEPS
from rules.sheet.glossary import (
    ALSO_CALLED,
    BESIDE_LABEL,
    INSTEAD_OF,
    ON_INCH_PAPER,
    names_of,
    on_its_row,
    paper_words,
    plain_words,
    reworded,
)
from rules.shop.checklist import checklist
from rules.shop.motion_sheet import sections
from tests.support.judging import judged_sample
from wizard.check_lines import report_lines

ROOT = Path(__file__).resolve().parents[3]
PAGES = ("README.md", "DEVELOPERS.md", "rules/checks/CATALOGUE.md", "wizard/wizard.svg", "wizard/moving.svg",
         "wizard/drawing.svg")  # fmt: skip
SAMPLES = ("dune_wren_moving", "fell_badger_finished_metric", "pond_newt_finished", "scree_ox_strength")
NAMES = re.compile(
    r"`[^`]*`|[\w.]*[a-z]_[\w.]*|[a-z]\w*\.[a-z]\w*|\b[a-z]+(?:-[a-z]+){2,}\b|\bpivots-straddle-spindle\b"
)
"""Names of fields, values, checks and files: those of a sheet's file are fixed."""
ITSELF = ("rules/sheet/glossary.py", "rules/tables/sources.py")
"""Holds the words to avoid; holds titles of books."""


def wrong_words(text: str) -> list[str]:
    """What a text says in a word that is not the program's, with the right one."""
    code = "\n".join(line for line in text.split("\n") if not line.strip().startswith((">>>", "...")))
    said = " ".join(NAMES.sub("NAME", code).split())
    return [f"“{found[0]}”: say {use}" for pattern, use in INSTEAD_OF.items() for found in re.finditer(pattern, said)]


def texts_of(module: Path) -> Iterator[str]:
    """Every text in a module, docstrings too: those of values and checks are shown."""
    for node in ast.walk(ast.parse(module.read_text("utf-8"))):
        if isinstance(node, ast.Constant) and isinstance(node.value, str):
            yield node.value


@pytest.mark.parametrize("room", ["rules", "wizard"])
def test_no_text_in_the_program_uses_another_word(room: str) -> None:
    modules = [path for path in (ROOT / room).rglob("*.py") if str(path.relative_to(ROOT)) not in ITSELF]
    assert len(modules) > 80
    found = [
        f"{path.relative_to(ROOT)}: {wrong}"
        for path in modules
        for text in texts_of(path)
        for wrong in wrong_words(text)
    ]
    assert not found


@pytest.mark.parametrize("page", PAGES)
def test_no_page_uses_another_word(page: str) -> None:
    text = (ROOT / page).read_text("utf-8")
    if page.endswith(".svg"):
        text = " ".join(re.findall(r">([^<]+)<", text)).replace("&#160;", " ")
        text = reworded(text, {other: word for word, other in ON_INCH_PAPER.items()})  # a drawing is a paper
    text = re.sub(r"(?s)```.*?```", "", text)
    assert not wrong_words(text)


@pytest.mark.parametrize("sample", SAMPLES)
def test_nothing_said_of_a_sheet_uses_another_word(sample: str) -> None:
    judged = judged_sample(sample)
    said = [*report_lines(judged, sample), *(line.text for line in checklist(judged))]
    for section in sections(judged):
        said += [section.title, *section.notes, *section.columns, *(cell for row in section.rows for cell in row)]
    assert not wrong_words(" ".join(said))


def test_nothing_listed_uses_another_word() -> None:
    lists = [*field_list(), *value_list(), *check_list()]
    said = [str(entry) for row in lists for entry in row.values() if isinstance(entry, str)]
    said += [text for step in STEPS for text in (step.title, step.intro, *step.cautions)]
    assert not [f"{text}: {wrong}" for text in said for wrong in wrong_words(text)]


def test_angles_are_shown_in_degrees_and_never_called_radians() -> None:
    judged = judged_sample("scree_ox_strength")
    graph = trade()
    angles = [name for name in graph.values if graph.is_number(name) and graph.units[name] == "rad"]
    assert len(angles) > 10
    assert not [row for row in value_list() if re.search(r"\brad\b", f"{row['unit']} {row['meaning']}")]
    for name in angles:
        assert not [line for line in explain(judged, name) if re.search(r"\brad\b", line)], name


@pytest.mark.parametrize(
    ("text", "use"),
    [
        ("From the spindle forward", "wheel centre"),
        ("Kingpin inclination", "steering-axis inclination"),
        ("Inclination (KPI)", "steering-axis inclination"),
        ("Caster seen from the side", "castor"),
        ("the scrub radius grows", "ground offset"),
        ("From the hub's flange face", "hub face"),
        ("The mounting face lies inboard", "mounting face of the hub"),
        ("The upper joint's swing", "misalignment angle"),
        ("The welded joint cracks", "weld"),
        ("Caliper on the bare plate", "vernier"),
        ("Inside calipers across the bore", "vernier"),
        ("Pull at the steering wheel", "steering-wheel effort"),
        ("the rim pull", "steering-wheel effort"),
        ("Worst gap 3 mm", "smallest gap"),
        ("the least room of all", "smallest gap"),
        ("What gives first", "weakest part"),
        ("Mass of the friction ring", "braking band"),
        ("Until measured 10 mm stands in.", "is assumed"),
    ],
)
def test_each_word_to_avoid_is_seen(text: str, use: str) -> None:
    assert use in " ".join(wrong_words(text))


@pytest.mark.parametrize(
    "text",
    [
        "Castor (caster)", "Ground offset (scrub radius)", "The mounting face of the hub", "the wheel's mounting face",
        "`lower_below_spindle` and pivots.lower_below_spindle", "Both bolts stand in the blank", "A caliper on a rotor",
        "The pads swing the caliper", "the caliper across from the arm",
    ],
)  # fmt: skip
def test_the_words_themselves_and_names_pass(text: str) -> None:
    assert not [wrong for wrong in wrong_words(text) if "caliper across" not in wrong]


def test_every_pattern_has_an_example_above() -> None:
    examples = test_each_word_to_avoid_is_seen.pytestmark[0].args[1]  # type: ignore[attr-defined]
    assert not [pattern for pattern in INSTEAD_OF if not any(re.search(pattern, text) for text, _ in examples)]


@pytest.mark.parametrize(
    ("wanted", "name"),
    [
        ("caster", "pivots.castor"), ("SAI", "pivots.inclination"), ("KPI", "pivots.inclination"),
        ("kingpin inclination", "pivots.inclination"), ("scrub radius", "pivots.ground_offset"),
        ("scrub", "pivots.ground_offset"),
        ("spindle", "pivots.lower_below_spindle"), ("jounce", "arms.bump_travel"), ("rebound", "arms.droop_travel"),
        ("knuckle", "upright.material"), ("motion ratio", "spring_ratio"), ("tire", "tyre.smallest"),
        ("center", "wheel.centre_bore"), ("track rod", "steering.tie_rod_ahead"), ("friction ring", "rotor.ring_mass"),
        ("flange face", "hub.flange_to_mount_face"), ("joint swing", "upper-joint-angle"), ("gives first", "what-gives-first"),
        ("steering-axis inclination", "inclination-usual"), ("weld_upper", "weld_upper.leg"), ("joint_upper", "weld_upper.leg"),
    ],
)  # fmt: skip
def test_a_builders_own_word_finds_it(wanted: str, name: str) -> None:
    assert name in names_like(wanted)


def test_the_words_of_the_glossary_are_said_somewhere() -> None:
    modules = [path for path in ROOT.glob("[rw]*/**/*.py") if path.name != "glossary.py"]
    said = " ".join([*trade().values, *(text for path in modules for text in texts_of(path))])
    said = re.sub("[-_]", " ", said.casefold())
    assert not [word for word in ALSO_CALLED if word not in said]


def test_labels_that_name_the_other_word_are_known_by_both() -> None:
    for label, other in BESIDE_LABEL.items():
        assert label in {asked.label for asked in FIELDS.values()}
        assert plain_words(other) in names_of(label)
    assert on_its_row("Ground offset") == "Ground offset (scrub radius)"


# Papers in inches


def test_a_word_of_the_builders_own_stays_on_paper() -> None:
    words = paper_words(["Kerb crawler", "new tyres"])
    assert reworded("Tyres: the tyre's centre. Kerb, castor.", words) == "Tyres: the tire's center. Kerb, caster."


def test_capitals_stay_and_names_are_left_alone() -> None:
    said = reworded("TYRE, Centre, earth clamp; tyre.largest, parts.tyre.loaded-radius, lower_tyre_gap", ON_INCH_PAPER)
    assert said == "TIRE, Center, ground clamp; tyre.largest, parts.tyre.loaded-radius, lower_tyre_gap"


def test_rewording_twice_changes_nothing() -> None:
    for word, other in ON_INCH_PAPER.items():
        assert reworded(other, ON_INCH_PAPER) == other, word
