"""A save changes what was answered and nothing else: comments, order, spacing and hand formatting stay."""

import copy
import tomllib
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.sheet import STEPS
from sample_sheets import FINISHED, sample
from tests.support.judging import judged_document
from wizard.files.saving import complete_document
from wizard.files.sheet_edit import edited, same
from wizard.files.sheet_text import EARLIER_HEADER, HEADER, to_text

SET_ASIDE = "could not be changed in place"
BY_HAND = """\
# Ours, for the second car.  Measured on Saturday.

units   = "inch"      # tape is in inches
title = "Second car"  # not the first

# the hub came off a wreck
[hub]
  pilot_diameter = "2 1/2 in"   # callipers, twice
stud_length="1.5 in"

    # check again
    bolt_circle = '5 x 4.5 in'

[[extras]]
what = "spare rotor" # in the box

[job]     # the customer's words
vehicle = "dune car"
notes = '''
two lines # no comment
kept as they are'''

# end of the sheet
"""


def changed(text: str, **tables: dict[str, object] | None) -> str:
    """The text after entries were changed; None takes one out."""
    document: dict[str, Any] = tomllib.loads(text)
    for name, entries in tables.items():
        table = document.setdefault(name, {})
        for key, entry in (entries or {}).items():
            if entry is None:
                del table[key]
            else:
                table[key] = entry
    result = edited(text, document)
    assert tomllib.loads(result) == document
    assert SET_ASIDE not in result
    return result


def test_an_unchanged_document_gives_the_text_back_to_the_byte() -> None:
    assert edited(BY_HAND, tomllib.loads(BY_HAND)) == BY_HAND


def test_a_changed_answer_changes_its_own_characters_only() -> None:
    result = changed(BY_HAND, hub={"pilot_diameter": "64 mm"})
    assert result == BY_HAND.replace('"2 1/2 in"', '"64 mm"')


def test_a_new_answer_goes_behind_the_one_asked_before_it() -> None:
    result = changed(BY_HAND, hub={"nut_seat": "ball"}, job={"use": "dunes"})
    assert result == BY_HAND.replace('stud_length="1.5 in"\n', 'stud_length="1.5 in"\nnut_seat = "ball"\n').replace(
        'vehicle = "dune car"\n', 'vehicle = "dune car"\nuse = "dunes"\n'
    )


def test_an_answer_taken_out_leaves_its_comment() -> None:
    result = changed(BY_HAND, hub={"pilot_diameter": None})
    assert result == BY_HAND.replace('  pilot_diameter = "2 1/2 in"   # callipers, twice\n', "# callipers, twice\n")


def test_a_new_table_goes_in_its_place_and_a_comment_stays_with_the_table_below_it() -> None:
    text = 'title = "x"\n\n[job]\nvehicle = "y"\n\n# the hub came off a wreck\n[hub]\nstud_length = "1.5 in"\n'
    assert changed(text, wheel={"width": "8 in"}) == text.replace("# the hub", '[wheel]\nwidth = "8 in"\n\n# the hub')


def test_the_first_table_of_all_and_the_last() -> None:
    assert changed("# mine", job={"vehicle": "y"}) == '# mine\n\n[job]\nvehicle = "y"\n'
    assert changed("[job]", job={"vehicle": "y"}) == '[job]\nvehicle = "y"\n'
    assert changed("[job]", hub={"nut_seat": "ball"}) == '[job]\n\n[hub]\nnut_seat = "ball"\n'
    assert changed("[job] # why", job={"vehicle": "y"}) == '[job] # why\nvehicle = "y"\n'


def test_a_comment_about_a_table_not_filled_in_yet_stays_above_its_first_answer() -> None:
    text = "[hub]\n# on Saturday\n\n[pivots]\n"
    assert changed(text, hub={"nut_seat": "ball"}) == text.replace("Saturday\n", 'Saturday\nnut_seat = "ball"\n')


def test_windows_line_ends_and_a_byte_order_mark_stay() -> None:
    text = "\ufeff" + BY_HAND.replace("\n", "\r\n")
    document = tomllib.loads(BY_HAND)
    document["hub"]["nut_seat"] = "ball"
    document["pivots"] = {"spacing": "9 in"}
    result = edited(text, document)
    assert result.startswith("\ufeff# Ours")
    assert "\n" not in result.replace("\r\n", "")
    assert tomllib.loads(result.removeprefix("\ufeff")) == document


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ('wheel.width = "8 in" # a\n', 'wheel.width = "9 in" # a\nwheel.offset = "1 in"\n'),
        (
            "[wheel.a]\nx = 1 # a\n[job]\n[wheel] # b\nwidth = 1\n",
            '[wheel.a]\nx = 1 # a\n[job]\n[wheel] # b\nwidth = "9 in"\noffset = "1 in"\n',
        ),
        ("wheel = {width = 1} # a\n", None),
        ("[wheel]\nwidth = [ # a\n 1] # b\n", None),
    ],
)
def test_other_ways_to_write_a_table(text: str, wanted: str | None) -> None:
    document = tomllib.loads(text)
    document["wheel"] |= {"width": "9 in", "offset": "1 in"}
    result = edited(text, document)
    assert tomllib.loads(result) == document
    assert wanted is None or result == wanted
    assert all(comment in result for comment in ("# a", "# b") if comment in text)


def test_a_single_entry_where_a_table_goes_makes_way_for_it() -> None:
    text = "# top\nwheel = 5 # the black ones\ntitle = 'x'\n"
    document = {"title": "x", "wheel_as_found": 5, "wheel": {"width": "8 in"}}
    result = edited(text, document)
    assert tomllib.loads(result) == document
    assert "# the black ones" in result
    assert SET_ASIDE not in result


def test_the_earlier_header_no_longer_says_that_comments_are_lost() -> None:
    text = to_text({"title": "x"}).replace(HEADER, EARLIER_HEADER) + "# mine\n"
    assert edited(text, {"title": "y"}) == to_text({"title": "y"}) + "# mine\n"


def test_a_sheet_the_program_wrote_stays_as_it_would_write_it_anew() -> None:
    """An answer or a table taken out and put back stands where it stood, so that a form filled in any order reads well."""
    document = in_order(tomllib.loads(sample(FINISHED).read_text("utf-8")))
    text = to_text(document)
    for step in ("job", "wheel", "pivots"):
        for key in list(document[step])[::5]:
            fewer = copy.deepcopy(document)
            del fewer[step][key]
            assert edited(edited(text, fewer), document) == text, key
        without = {name: held for name, held in document.items() if name != step}
        assert edited(edited(text, without), document) == text


def in_order(document: dict[str, Any]) -> dict[str, Any]:
    """The same with the entries of each step in the order they are asked in."""
    asked = {step.name: list(step.asked()) for step in STEPS}
    return {
        name: {key: held[key] for key in sorted(held, key=asked[name].index)} if name in asked else held
        for name, held in document.items()
    }


def test_ticks_and_comments_in_the_checklist_stay_when_it_is_made_anew() -> None:
    document: dict[str, Any] = tomllib.loads(sample(FINISHED).read_text("utf-8"))
    text = to_text(complete_document(document, judged_document(document)))
    at = text.index("\n", text.index("id = ", text.index("[[checklist]]")))
    by_hand = f"{text[:at]} # done twice{text[at:]}\n# that is all\n"
    del document["hub"]["pilot_diameter"]
    document["caliper"]["reach_above_rotor"] = "3 in"
    wanted = complete_document(document, judged_document(document))
    result = edited(by_hand, wanted)
    assert tomllib.loads(result) == wanted
    assert "# done twice" in result
    assert "# that is all" in result
    assert SET_ASIDE not in result


def test_comments_of_a_warning_that_is_gone_stay() -> None:
    text = '[[warning]]\ncheck = "a" # one\n# two\n\n[[warning]]\ncheck = "b" # three\n'
    result = edited(text, {"warning": [{"check": "b"}, {"check": "c"}]})
    assert tomllib.loads(result) == {"warning": [{"check": "b"}, {"check": "c"}]}
    assert all(comment in result for comment in ("# one", "# two", "# three"))
    gone = edited(text, {})
    assert all(comment in gone for comment in ("# one", "# two", "# three"))


def test_what_cannot_be_changed_in_place_is_set_aside_whole() -> None:
    text = "[job]\na = [ # why\n 1]\n" + "b = '" + "long " * 190 + "'\n"
    result = edited(text, {"job": {"a": {"b": 2}}})
    assert tomllib.loads(result) == {"job": {"a": {"b": 2}}}
    assert SET_ASIDE in result
    assert "# a = [ # why\n" in result


# Any text, any change

WORDS = st.sampled_from(["8 in", "", "# no comment", '9 3/8"', "a\nb", "é", "x" * 30])
ENTRIES = WORDS | st.integers(-9, 9) | st.booleans() | st.just(1.0) | st.lists(st.integers(0, 2), max_size=2)
KEYS = st.sampled_from(["vehicle", "use", "notes", "width", "offset", "id", "a b", "x"])
TABLES = st.dictionaries(KEYS, ENTRIES, max_size=4)
LISTS = st.lists(st.dictionaries(st.sampled_from(["id", "done", "x"]), ENTRIES, max_size=3), min_size=1, max_size=3)
NAMES = st.sampled_from(["job", "wheel", "hub", "later"])
DOCUMENTS = st.builds(
    lambda top, tables, lists: {**top, **tables, **lists},
    st.dictionaries(st.sampled_from(["title", "units", "colour"]), ENTRIES, max_size=3),
    st.dictionaries(NAMES, TABLES, max_size=4),
    st.dictionaries(st.sampled_from(["warning", "checklist", "extras"]), LISTS, max_size=3),
)
GAPS = st.lists(st.sampled_from(["", "", " ", "\n", "# c{}\n", "\n# c{}\n\n", "  # c{}\n"]), min_size=60, max_size=60)


def with_comments(text: str, gaps: list[str]) -> str:
    """A text with blank lines and numbered comments strewn between the lines that start an entry or a table."""
    lines, out, inside = text.split("\n"), "", False
    for number, line in enumerate(lines):
        gap = gaps[number % len(gaps)]
        if not inside and not (line.startswith((" ", "]")) or '"""' in line) and gap != " ":
            out += gap.format(number)
        elif not inside and line and gap == " " and not line.startswith((" ", "]")) and not line.endswith(("[", '"""')):
            line += f"  # c{number}"
        out += line + "\n"
        if line.count('"""') % 2:
            inside = not inside
    return out


@given(DOCUMENTS, DOCUMENTS, GAPS, st.sampled_from(["\n", "\r\n"]))
def test_any_change_of_any_text_gives_the_document_and_keeps_every_comment(
    held: dict[str, object], wanted: dict[str, object], gaps: list[str], new_line: str
) -> None:
    text = with_comments(to_text(held), gaps)
    comments = {f"# c{number}" for number in range(len(text)) if f"# c{number}\n" in text}
    assert tomllib.loads(text) == held
    result = edited(text.replace("\n", new_line), wanted)
    assert same(tomllib.loads(result), wanted)
    assert SET_ASIDE not in result
    assert all(f"{comment}{new_line}" in result for comment in comments)
