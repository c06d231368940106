"""Papers beside the sheet: written whole, never over what a person changed."""

from pathlib import Path

import pytest

from wizard.paper_file import CannotWrite, ChangedByHand, beside, free_name, write_paper


def test_the_name_follows_the_sheets() -> None:
    assert beside(Path("a/car.toml"), ".md") == Path("a/car.checklist.md")


def test_a_paper_of_ours_is_replaced_without_a_word(tmp_path: Path) -> None:
    paper = tmp_path / "car.checklist.txt"
    write_paper(paper, "one")
    write_paper(paper, "two")
    assert paper.read_text("utf-8") == "two"


def test_a_paper_changed_by_hand_is_asked_about(tmp_path: Path) -> None:
    paper = tmp_path / "car.checklist.txt"
    write_paper(paper, "one")
    paper.write_text("one, signed", "utf-8")
    with pytest.raises(ChangedByHand):
        write_paper(paper, "two")
    assert paper.read_text("utf-8") == "one, signed"
    write_paper(paper, "two", overwrite=True)
    assert paper.read_text("utf-8") == "two"
    assert free_name(paper).name == "car.checklist-2.txt"


def test_a_paper_that_cannot_be_written_says_why(tmp_path: Path) -> None:
    with pytest.raises(CannotWrite, match="cannot be written"):
        write_paper(tmp_path / "gone" / "car.checklist.txt", "one")
