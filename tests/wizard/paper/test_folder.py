"""The hand-over folder: everything in it, nothing over what a person changed, each file whole."""

import json
import os
import stat
from collections.abc import Mapping
from pathlib import Path
from typing import Any, Literal

import pytest

from rules.judging.judge import Judged
from rules.measure.quantity import EntryError
from rules.shop.digest import sheet_digest
from tests.support.paper_reading import document, judged, pages
from wizard.files.atomic_file import own_name
from wizard.files.sheet_file import CannotSave
from wizard.paper import folder as hand_over
from wizard.paper import swap
from wizard.paper.cut import NotDrawn, cut_files
from wizard.paper.folder import LIST, ChangedByHand, write_hand_over, write_papers
from wizard.paper.papers import paper_size

PAPERS = {
    "first_page.pdf", "fixture.pdf", "general_arrangement.pdf", "part_sheets.pdf", "welding_sheet.pdf",
    "checklist_helper.pdf", "checklist_builder.pdf", "checklist.txt", "checklist.md", "drawing_left.pdf", "drawing_left.svg",
    "drawing_right.pdf", "drawing_right.svg",
}  # fmt: skip
FIXTURE = ("fixture_base", "fixture_post_1", "fixture_post_2", "fixture_foot")
CUT = {"hub_plate_left_in.dxf", "hub_plate_right_in.dxf", *(f"{name}_in.dxf" for name in FIXTURE)}


@pytest.fixture(autouse=True)
def quick_papers(monkeypatch: pytest.MonkeyPatch) -> None:
    """What is drawn and typeset has tests of its own; here it only has to arrive."""
    for module, make in (("checklist_pdf", "checklist_pdf"), ("welding_sheet", "welding_sheet_pdf")):
        monkeypatch.setattr(
            f"wizard.paper.{module}.{make}", lambda judged, document, paper, *_: stand_in(document, paper)
        )
    monkeypatch.setattr("wizard.paper.arrangement_sheet.arrangement_pdf", lambda judged, paper: paper.encode())
    monkeypatch.setattr("wizard.paper.fixture_sheet.fixture_pdf", lambda judged, paper: paper.encode())
    monkeypatch.setattr("wizard.paper.part_sheets.part_sheets_pdf", lambda judged, paper: paper.encode())
    monkeypatch.setattr("rules.drawn.full_size.left_views", lambda judged: None)
    monkeypatch.setattr("rules.drawn.full_size.of_views", lambda judged, side, views: side)
    monkeypatch.setattr("wizard.paper.drawing.on_pages", lambda judged, side, paper: f"{paper} {side}".encode())
    monkeypatch.setattr("wizard.paper.drawing_svg.as_svg", lambda judged, side: f"<svg>{side}</svg>")
    monkeypatch.setattr("wizard.paper.cut.cut_files", cut_once)


_cut: dict[tuple[str, str], dict[str, bytes] | NotDrawn] = {}


def cut_once(judged: Judged, units: Literal["in", "mm"]) -> dict[str, bytes]:
    """As `cut_files`, each sheet's once: what stands in them has tests of its own."""
    key = repr(judged.sheet), units
    if key not in _cut:
        try:
            _cut[key] = cut_files(judged, units)
        except NotDrawn as why:
            _cut[key] = why
    made = _cut[key]
    if isinstance(made, NotDrawn):
        raise made
    return made


def stand_in(document: Mapping[str, object], paper: str) -> bytes:
    return f"{document['title']} {paper_size(paper)}".encode()


def write(folder: Path, sheet: dict[str, Any] | None = None, **options: Any) -> list[Path]:
    sheet = sheet or document()
    return write_hand_over(judged(sheet), sheet, folder, "a4", **options).papers


def contents(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.iterdir()}


def names(folder: Path) -> set[str]:
    return {path.name for path in folder.iterdir()}


def test_everything_is_written_and_returned(tmp_path: Path) -> None:
    folder = tmp_path / "new" / "hand over"
    written = write(folder)
    assert {path.name for path in written} == PAPERS | CUT
    assert all(path.is_file() and path.stat().st_size for path in written)
    assert names(folder) == PAPERS | CUT | {LIST}
    assert (folder / "drawing_left.pdf").read_bytes() == b"a4 left"
    assert (folder / "drawing_right.svg").read_text() == "<svg>right</svg>"
    assert (folder / "checklist_builder.pdf").read_bytes() == stand_in(document(), "a4")
    assert (folder / "checklist.txt").read_text("utf-8").startswith("SHOP CHECKLIST")


def test_a_plate_that_is_not_drawn_gives_no_cut_file(tmp_path: Path) -> None:
    write(tmp_path, document(plate={}))
    assert names(tmp_path) == PAPERS | {LIST}


def test_metric_sheets_give_files_in_mm(tmp_path: Path) -> None:
    write(tmp_path, document("fell_badger_finished_metric"))
    assert {name for name in names(tmp_path) if name.endswith(".dxf")} == {
        "hub_plate_left_mm.dxf",
        "hub_plate_right_mm.dxf",
        *(f"{name}_mm.dxf" for name in FIXTURE),
    }


def test_writing_again_replaces_what_nobody_changed(tmp_path: Path) -> None:
    write(tmp_path)
    before = (tmp_path / "checklist.txt").read_text("utf-8")
    write(tmp_path, document(title="Another title"))
    after = (tmp_path / "checklist.txt").read_text("utf-8")
    assert "Another title" in after
    assert before != after
    write(tmp_path)
    assert (tmp_path / "checklist.txt").read_text("utf-8") == before


def test_a_changed_file_is_asked_about_and_nothing_is_written(tmp_path: Path) -> None:
    write(tmp_path)
    (tmp_path / "checklist.md").write_text("my notes")
    before = {path.name: path.read_bytes() for path in tmp_path.iterdir()}
    with pytest.raises(ChangedByHand) as asked:
        write(tmp_path, document(title="Another title"))
    assert asked.value.paths == (tmp_path / "checklist.md",)
    assert "checklist.md" in str(asked.value)
    assert {path.name: path.read_bytes() for path in tmp_path.iterdir()} == before


def test_overwriting_is_only_on_request_and_is_then_ours(tmp_path: Path) -> None:
    write(tmp_path)
    (tmp_path / "checklist.md").write_text("my notes")
    write(tmp_path, overwrite=True)
    assert "my notes" not in (tmp_path / "checklist.md").read_text("utf-8")
    write(tmp_path, document(title="Another title"))
    assert "Another title" in (tmp_path / "checklist.md").read_text("utf-8")


def test_a_file_of_our_name_that_we_never_wrote_is_asked_about(tmp_path: Path) -> None:
    (tmp_path / "welding_sheet.pdf").write_bytes(b"somebody else's")
    with pytest.raises(ChangedByHand) as asked:
        write(tmp_path)
    assert asked.value.paths == (tmp_path / "welding_sheet.pdf",)
    assert names(tmp_path) == {"welding_sheet.pdf"}


def test_a_file_that_holds_just_what_would_be_written_is_not_asked_about(tmp_path: Path) -> None:
    write(tmp_path)
    (tmp_path / LIST).unlink()
    write(tmp_path)
    assert names(tmp_path) == PAPERS | CUT | {LIST}


def test_other_files_are_never_touched(tmp_path: Path) -> None:
    (tmp_path / "photo.jpg").write_bytes(b"photo")
    write(tmp_path)
    write(tmp_path, document(plate={}), overwrite=True)
    assert (tmp_path / "photo.jpg").read_bytes() == b"photo"


def test_a_cut_file_the_sheet_no_longer_gives_is_taken_away_unless_it_was_changed(tmp_path: Path) -> None:
    write(tmp_path)
    (tmp_path / "hub_plate_left_in.dxf").write_text("edited")
    write(tmp_path, document(plate={}))
    assert names(tmp_path) == PAPERS | {LIST, "hub_plate_left_in.dxf"}
    assert (tmp_path / "hub_plate_left_in.dxf").read_text() == "edited"
    # It is still known for ours and changed, so the next drawing of a plate asks.
    with pytest.raises(ChangedByHand):
        write(tmp_path)


@pytest.mark.parametrize(
    "content", [b"", b"{", b"[]", b"\xff\xfe", b'{"checklist.txt": 5}', b"[" * 5000, b'"text"', b"null"]
)
def test_a_spoilt_list_makes_it_ask_and_not_crash(tmp_path: Path, content: bytes) -> None:
    write(tmp_path)
    (tmp_path / LIST).write_bytes(content)
    with pytest.raises(ChangedByHand) as asked:
        write(tmp_path, document(title="Another title"))
    assert tmp_path / "checklist.txt" in asked.value.paths


def test_a_list_that_names_files_elsewhere_takes_nothing_away(tmp_path: Path) -> None:
    outside, folder = tmp_path / "precious.toml", tmp_path / "papers"
    outside.write_bytes(b"precious")
    folder.mkdir()
    mark = hand_over.digest(b"precious")
    (folder / LIST).write_text(json.dumps({"../precious.toml": mark, str(outside): mark, "..": mark, "a\x00b": mark}))
    write(folder)
    assert outside.read_bytes() == b"precious"


@pytest.mark.parametrize("at", range(1, 6))
def test_a_full_disk_leaves_the_old_folder_whole(at: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Wherever among the new files the disk is full; and the message says so, and that the old ones are untouched."""
    write(tmp_path)
    before = contents(tmp_path)
    real, calls = os.fsync, []

    def fail(handle: int) -> None:
        if stat.S_ISREG(os.fstat(handle).st_mode):
            calls.append(handle)
            if len(calls) == at:
                raise OSError(28, "No space left on device")
        real(handle)

    monkeypatch.setattr(os, "fsync", fail)
    with pytest.raises(CannotSave, match=r"the disk is full.*untouched"):
        write(tmp_path, document(title="Another title"))
    assert contents(tmp_path) == before, "no new file, no half file, nothing left lying about"


@pytest.mark.parametrize("at", range(1, 13))
def test_a_failing_exchange_puts_all_back(at: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Each file is moved twice, the old one aside and the new one in; the move that fails is tried at every place."""
    write(tmp_path)
    before = contents(tmp_path)
    real, calls = Path.rename, []

    def fail(path: Path, target: Path) -> Path:
        if ".tmp" not in path.name:
            calls.append(path)
            if len(calls) == at:
                raise OSError(5, "Input/output error")
        return real(path, target)

    monkeypatch.setattr(Path, "rename", fail)
    sheet = document(title="Another title")
    sheet["plate"] = {**sheet["plate"], "width": "5 1/4 in"}
    with pytest.raises(CannotSave):
        write(tmp_path, sheet)
    monkeypatch.undo()
    assert contents(tmp_path) == before


def test_what_a_killed_run_moved_aside_is_put_back(tmp_path: Path) -> None:
    """As left by a run that ended between two moves: its process does not run any more."""
    write(tmp_path)
    before = contents(tmp_path)
    machine, gone = own_name("new").split("-")[1], 4_000_000
    stage = tmp_path / f".buildsheet-{machine}-{gone}-0123abcd.new"
    stage.mkdir()
    (tmp_path / "checklist.txt").rename(stage / "old.checklist.txt")
    (stage / "checklist.md").write_bytes(b"new, not yet in place")
    finished = tmp_path / f".buildsheet-{machine}-{gone}-0123abce.done"
    finished.mkdir()
    (finished / "old.welding_sheet.pdf").write_bytes(b"of the sheet before")
    write(tmp_path)
    assert contents(tmp_path) == before


def test_another_run_under_way_is_left_alone(tmp_path: Path) -> None:
    write(tmp_path)
    stage = tmp_path / own_name("new")  # this very process runs
    stage.mkdir()
    (stage / "checklist.txt").write_bytes(b"being written")
    write(tmp_path)
    assert (stage / "checklist.txt").read_bytes() == b"being written"


def test_papers_of_the_same_answers_are_kept_and_others_named(tmp_path: Path) -> None:
    """Cut files in other units and other views stay as long as they are of these answers; then each is named as it goes."""
    sheet = document()
    judged_sheet = judged(sheet)
    other = {"hub_plate_left_mm.dxf": b"in mm", "drawing_left_whole.pdf": b"down to the ground"}
    write_papers(other, tmp_path, sheet_digest(judged_sheet.sheet))
    again = write_hand_over(judged_sheet, sheet, tmp_path, "a4")
    assert again.removed == [] and set(other) < names(tmp_path)
    changed = document()
    changed["plate"] = {**changed["plate"], "width": "5 1/4 in"}
    after = write_hand_over(judged(changed), changed, tmp_path, "a4")
    assert {path.name for path in after.removed} == set(other)
    assert not set(other) & names(tmp_path)


def test_a_sheet_with_a_stop_has_no_cut_file_in_its_folder(tmp_path: Path) -> None:
    wrong = document()
    wrong["caliper"] = {**wrong["caliper"], "reach_above_rotor": "3 in"}
    assert judged(wrong).verdict == "stop"
    write(tmp_path)
    write(tmp_path, wrong)
    assert names(tmp_path) == PAPERS | {LIST}
    write(tmp_path, wrong, as_is=True)
    assert names(tmp_path) == PAPERS | CUT | {LIST}


def test_after_a_failure_the_next_writing_goes_through(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    sheet = document(title="Another title")
    write(tmp_path)
    put = swap.put
    monkeypatch.setattr(swap, "put", lambda target, *rest: _fails() if target.name == LIST else put(target, *rest))
    with pytest.raises(CannotSave):
        write(tmp_path, sheet)
    monkeypatch.setattr(swap, "put", put)
    write(tmp_path, sheet)
    assert "Another title" in (tmp_path / "checklist.txt").read_text("utf-8")


def _fails() -> None:
    raise OSError(5, "Input/output error")


def test_a_folder_that_is_a_file_is_refused_in_plain_words(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("x")
    with pytest.raises(CannotSave):
        write(tmp_path / "file")


def test_a_folder_in_place_of_a_paper_is_refused(tmp_path: Path) -> None:
    (tmp_path / "checklist.txt").mkdir()
    with pytest.raises(CannotSave, match="there is a folder of that name"):
        write(tmp_path)


def test_a_write_protected_paper_stays_as_it_is(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    write(tmp_path)
    monkeypatch.setattr(os, "access", lambda *_: False)  # an administrator may write it all the same
    with pytest.raises(CannotSave, match="not allowed"):
        write(tmp_path, document(title="Another title"))


def test_an_unreadable_paper_size_writes_nothing(tmp_path: Path) -> None:
    sheet = document()
    with pytest.raises(EntryError):
        write_hand_over(judged(sheet), sheet, tmp_path / "papers", "napkin")
    assert not (tmp_path / "papers").exists()


def test_a_link_stays_a_link(tmp_path: Path) -> None:
    write(tmp_path / "papers")
    paper, elsewhere = tmp_path / "papers" / "checklist.txt", tmp_path / "elsewhere.txt"
    paper.rename(elsewhere)
    paper.symlink_to(elsewhere)
    write(tmp_path / "papers", document(title="Another title"))
    assert paper.is_symlink()
    assert "Another title" in elsewhere.read_text("utf-8")


def test_a_paper_with_nothing_on_it_is_left_out_and_the_first_page_says_so(tmp_path: Path) -> None:
    """Half done: no plate, no pivots. A general arrangement and a fixture would each be a page with one line on it."""
    sheet = document("dune_wren_half_done")
    result = judged(sheet)
    written = write_hand_over(result, sheet, tmp_path / "papers").papers
    names = {path.name for path in written}
    assert "welding_sheet.pdf" in names and not names & {"general_arrangement.pdf", "fixture.pdf"}
    words = " ".join(pages((tmp_path / "papers" / "first_page.pdf").read_bytes()))
    assert "Not drawn yet, since plate or pivots cannot be placed: general arrangement and fixture." in words
