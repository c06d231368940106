"""One open sheet: what is kept, what is judged, what is saved."""

import tomllib
from collections.abc import Mapping
from pathlib import Path

import pytest

from rules.judging.judge import judge
from sample_sheets import sample
from wizard.desk.session import LINE_BREAK, Session
from wizard.files import sheet_file
from wizard.files.sheet_file import CannotSave, ChangedOnDisk, SheetFile


def session_on(tmp_path: Path, text: str) -> Session:
    path = tmp_path / "one.toml"
    path.write_text(f"sheet_version = 2\n{text}", "utf-8")
    return Session(sheet_file.read(path))


def test_entries_stay_as_typed(tmp_path: Path) -> None:
    session = session_on(tmp_path, 'units = "inch"\n[hub]\nmount_bolts = 4\n')
    session.put("wheel.width", " 8,5 in ")
    assert session.entry("wheel.width") == " 8,5 in "
    assert session.entry("hub.mount_bolts") == 4
    assert session.echo("wheel.width") == ("8 1/2 in",)


def test_an_unreadable_entry_is_kept_and_the_others_stand(tmp_path: Path) -> None:
    session = session_on(tmp_path, 'units = "inch"\n[wheel]\nwidth = "wide"\ndiameter = "15 in"\n')
    assert session.unreadable == ("wheel.width",)
    assert session.text("wheel.width") == "wide"
    assert session.accepted("wheel.diameter")
    session.put("wheel.centre_bore", "108 mm")
    session.save()
    assert tomllib.loads(session.path.read_text("utf-8"))["wheel"]["width"] == "wide"


def test_emptying_an_entry_takes_it_away(tmp_path: Path) -> None:
    session = session_on(tmp_path, 'units = "inch"\n[wheel]\nwidth = "8 in"\n')
    session.put("wheel.width", "  ")
    assert session.entry("wheel.width") is None
    assert session.document["wheel"] == {}


def test_no_is_an_answer(tmp_path: Path) -> None:
    session = session_on(tmp_path, 'units = "inch"\n')
    session.put("caliper.bleed_screw_on_top", False)
    assert session.entry("caliper.bleed_screw_on_top") is False
    assert session.accepted("caliper.bleed_screw_on_top")


def test_a_value_where_a_table_belongs_is_kept_under_another_name(tmp_path: Path) -> None:
    session = session_on(tmp_path, 'units = "inch"\nwheel = "the black ones"\n')
    session.put("wheel.width", "8 in")
    assert session.document["wheel"] == {"width": "8 in"}
    assert session.document["wheel_as_found"] == "the black ones"


def test_changing_the_units_of_a_sheet_changes_no_bare_number(tmp_path: Path) -> None:
    """A wheel's whole inches and a bolt circle that only one system can mean are the same in both: they stay."""
    session = session_on(
        tmp_path,
        'units = "inch"\n[wheel]\nwidth = "8 1/2"\ndiameter = 15\ncentre_bore = "108 mm"\nbolt_circle = "6 x 5.5"\n',
    )
    session.put("units", "metric")
    assert session.document["wheel"] == {
        "width": "8 1/2 in", "diameter": 15, "centre_bore": "108 mm", "bolt_circle": "6 x 5.5",
    }  # fmt: skip
    assert session.judged.worked.known["wheel.width"] == pytest.approx(215.9)


def test_showing_other_units_changes_no_entry(tmp_path: Path) -> None:
    session = session_on(tmp_path, 'units = "inch"\n[wheel]\nwidth = "8 1/2"\n')
    before = session.path.read_bytes()
    assert session.switch_units() == "metric"
    assert session.echo("wheel.width") == ("215.9 mm",)
    assert session.entry("wheel.width") == "8 1/2"
    session.save()
    assert session.path.read_bytes() == before


def test_notes_of_several_lines_are_one_line_on_screen(tmp_path: Path) -> None:
    session = session_on(tmp_path, 'units = "inch"\n[job]\nnotes = "one\\ntwo"\n')
    assert session.text("job.notes") == f"one{LINE_BREAK}two"
    session.put("job.notes", f"one{LINE_BREAK}three")
    assert session.entry("job.notes") == "one\nthree"


def test_control_characters_of_a_received_sheet_are_never_shown_and_never_lost(tmp_path: Path) -> None:
    session = session_on(tmp_path, 'units = "inch"\n[job]\nvehicle = "a\\u001b]2;x\\u0007"\n')
    assert "\x1b" not in session.text("job.vehicle")
    assert "job.vehicle" in session.faults
    session.put("wheel.width", "8 in")
    session.save()
    assert tomllib.loads(session.path.read_text("utf-8"))["job"]["vehicle"] == "a\x1b]2;x\x07"


def test_saving_writes_warnings_in_the_sheets_own_units(tmp_path: Path) -> None:
    session = session_on(tmp_path, 'units = "inch"\n[job]\ncorner_weight = "520 lb"\n[wheel]\nload_rating = "540 lb"\n')
    session.switch_units()
    session.put("wheel.load_rating", "540 lb")
    session.save()
    written = tomllib.loads(session.path.read_text("utf-8"))
    load = next(warning for warning in written["warning"] if warning["check"] == "wheel-load")
    assert load["verdict"] == "watch"
    assert "lb" in load["text"] and "kg" not in load["text"]


class Broken:
    """A disk that is full until it is not."""

    full = True
    read = staticmethod(sheet_file.read)
    save_beside = staticmethod(sheet_file.save_beside)

    def save(self, sheet: SheetFile, document: Mapping[str, object], *, overwrite: bool = False) -> SheetFile:
        if self.full:
            raise CannotSave("the disk is full")
        return sheet_file.save(sheet, document, overwrite=overwrite)


def test_a_failed_save_loses_nothing_and_says_so(half_done: Path) -> None:
    disk = Broken()
    session = Session(sheet_file.read(half_done), disk=disk)
    session.put("hub.stud_length", "1.7 in")
    assert session.save() is False
    assert session.trouble == "the disk is full"
    assert session.entry("hub.stud_length") == "1.7 in"
    disk.full = False
    assert session.save() is True
    assert session.trouble is None
    assert tomllib.loads(half_done.read_text("utf-8"))["hub"]["stud_length"] == "1.7 in"


def test_a_file_changed_meanwhile_is_not_overwritten(half_done: Path) -> None:
    session = Session(sheet_file.read(half_done))
    theirs = half_done.read_text("utf-8").replace("half done", "theirs")
    half_done.write_text(theirs, "utf-8")
    session.put("hub.stud_length", "1.7 in")
    with pytest.raises(ChangedOnDisk):
        session.save()
    assert half_done.read_text("utf-8") == theirs


def test_with_nobody_to_ask_mine_goes_beside_a_changed_file(half_done: Path) -> None:
    session = Session(sheet_file.read(half_done))
    theirs = half_done.read_text("utf-8").replace("half done", "theirs")
    half_done.write_text(theirs, "utf-8")
    session.put("hub.stud_length", "1.7 in")
    session.save_come_what_may()
    assert half_done.read_text("utf-8") == theirs
    assert session.path != half_done
    assert tomllib.loads(session.path.read_text("utf-8"))["hub"]["stud_length"] == "1.7 in"


def test_taking_theirs_gives_what_is_on_disk(half_done: Path) -> None:
    session = Session(sheet_file.read(half_done))
    session.put("title", "mine")
    half_done.write_text(half_done.read_text("utf-8").replace("half done", "theirs"), "utf-8")
    session.take_theirs()
    assert "theirs" in session.judged.sheet.title
    assert session.save() is True


def test_ticks_in_the_checklist_survive_a_save(finished: Path) -> None:
    session = Session(sheet_file.read(finished))
    session.put("job.notes", "x")
    session.save()
    lines = session.document["checklist"]
    assert isinstance(lines, list)
    lines[0]["left"] = True
    session.put("job.notes", "y")
    session.save()
    first = tomllib.loads(finished.read_text("utf-8"))["checklist"][0]
    assert first["id"] == lines[0]["id"]
    assert first["left"] is True


def test_a_fraction_is_echoed_as_the_number_it_is(half_done: Path) -> None:
    session = Session(sheet_file.read(half_done))
    session.put("hub.stud_length", "16/8")
    assert session.echo("hub.stud_length")[0] == "2 in"


def moving_session(tmp_path: Path) -> Session:
    path = tmp_path / "moving.toml"
    path.write_bytes(sample("dune_wren_moving").read_bytes())
    return Session(sheet_file.read(path))


def test_what_is_judged_so_far_says_what_is_put_off_and_judged_is_whole(tmp_path: Path) -> None:
    session = moving_session(tmp_path)
    session.put("pivots.spacing", "8.7 in")
    so_far = session.judged_so_far
    assert not so_far.whole
    assert session.judged_so_far is so_far
    assert session.judged.whole
    assert session.judged.findings == judge(session.sheet).findings
    assert session.judged_so_far.whole


def test_what_is_saved_is_judged_whole(tmp_path: Path) -> None:
    session = moving_session(tmp_path)
    session.put("pivots.spacing", "8.7 in")
    assert not session.judged_so_far.whole
    session.save()
    kept = session.path.read_text("utf-8")
    assert "eing worked out" not in kept
    assert session.judged_so_far.whole


def test_the_rest_can_be_judged_without_a_change(tmp_path: Path) -> None:
    session = moving_session(tmp_path)
    session.put("pivots.spacing", "8.7 in")
    assert not session.judged_so_far.whole
    session.judge_the_rest()
    assert session.judged_so_far.whole
