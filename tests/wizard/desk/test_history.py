"""Undo and redo of answers: what was typed comes back as it was typed, and nothing is ever lost."""

from hypothesis import given
from hypothesis import strategies as st

from wizard.desk.history import Entries, History


def moved(stands: Entries, change: object, key: str) -> Entries:
    entries = {**stands, **getattr(change, key)}
    return {name: entry for name, entry in entries.items() if entry is not None}


class Sheet:
    """Entries with a history, as a session keeps them."""

    def __init__(self) -> None:
        self.stands: Entries = {}
        self.history = History()

    def put(self, name: str, entry: object, *, rest: bool = True) -> None:
        after = {**self.stands, name: entry}
        after = {key: value for key, value in after.items() if value is not None}
        self.history.note(self.stands, after)
        self.stands = after
        if rest:
            self.history.rest()

    def undo(self) -> bool:
        change = self.history.undo()
        self.stands = moved(self.stands, change, "before") if change else self.stands
        return change is not None

    def redo(self) -> bool:
        change = self.history.redo()
        self.stands = moved(self.stands, change, "after") if change else self.stands
        return change is not None


def test_answers_are_undone_one_at_a_time_and_done_again() -> None:
    sheet = Sheet()
    sheet.put("castor", "7 deg")
    sheet.put("spacing", "9 3/8 in")
    assert sheet.undo() and sheet.stands == {"castor": "7 deg"}
    assert sheet.undo() and sheet.stands == {}
    assert not sheet.undo()
    assert sheet.redo() and sheet.redo() and sheet.stands == {"castor": "7 deg", "spacing": "9 3/8 in"}
    assert not sheet.redo()


def test_an_answer_typed_letter_by_letter_is_one_step() -> None:
    sheet = Sheet()
    sheet.put("castor", "7 deg")
    for text in ("", "1", "12", "12 d"):
        sheet.put("castor", text or None, rest=False)
    assert sheet.undo() and sheet.stands == {"castor": "7 deg"}
    assert sheet.redo() and sheet.stands == {"castor": "12 d"}


def test_the_same_entry_left_and_come_back_to_is_two_steps() -> None:
    sheet = Sheet()
    sheet.put("castor", "7 deg")
    sheet.put("castor", "8 deg")
    assert sheet.undo() and sheet.stands == {"castor": "7 deg"}


def test_what_was_undone_is_not_lost_by_another_answer() -> None:
    sheet = Sheet()
    sheet.put("castor", "7 deg")
    sheet.undo()
    sheet.put("spacing", "10 in")
    assert sheet.undo() and sheet.stands == {}
    assert sheet.undo() and sheet.stands == {"castor": "7 deg"}


def test_nothing_changed_is_no_step_and_yes_is_not_one() -> None:
    sheet = Sheet()
    sheet.put("count", 1)
    sheet.put("count", 1)
    sheet.put("count", True)
    assert sheet.undo() and sheet.stands == {"count": 1}
    assert sheet.undo() and sheet.stands == {} and not sheet.undo()


STEPS = st.lists(
    st.one_of(
        st.tuples(st.sampled_from("ab"), st.sampled_from(["1", "2", None]), st.booleans()),
        st.sampled_from(["undo", "redo"]),
    ),
    max_size=30,
)


@given(STEPS)
def test_undone_to_the_beginning_it_is_empty_and_every_answer_ever_left_is_passed(steps: list[object]) -> None:
    sheet, left = Sheet(), []
    for step in steps:
        if isinstance(step, tuple):
            sheet.put(step[0], step[1], rest=step[2])
            if step[2]:
                left.append(sheet.stands)
        else:
            getattr(sheet, str(step))()
    passed = [sheet.stands]
    while sheet.redo():
        passed.append(sheet.stands)
    while sheet.undo():
        passed.append(sheet.stands)
    assert sheet.stands == {}
    assert all(stands in passed for stands in left)
