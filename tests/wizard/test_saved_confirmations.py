"""The builder's yes to an unusual answer, in the file and in an open sheet."""

from pathlib import Path

from sample_sheets import document, sample
from wizard.command_line import main
from wizard.desk.session import Session
from wizard.files.sheet_edit import edited
from wizard.files.sheet_file import read
from wizard.files.sheet_text import from_bytes, to_text

NAME = "wheel.pad_thickness"


def opened(folder: Path) -> Session:
    path = folder / "car.toml"
    text, _, _ = sample("pond_newt_finished").read_text("utf-8").partition("\n[confirmed]")  # nothing is confirmed yet
    path.write_text(text, "utf-8")
    return Session(read(path))


def test_a_yes_is_kept_in_the_file_and_goes_when_the_answer_changes(tmp_path: Path) -> None:
    session = opened(tmp_path)
    session.put(NAME, "25 mm")
    assert session.judged.sheet.unusual == (NAME,)
    session.confirm(NAME)
    assert session.judged.sheet.unusual == () and session.save()
    assert '[confirmed]\n"wheel.pad_thickness" = "25 mm"\n' in (tmp_path / "car.toml").read_text("utf-8")
    assert Session(read(tmp_path / "car.toml")).judged.sheet.confirmed == {NAME}
    session.put(NAME, "26 mm")
    assert session.judged.sheet.unusual == (NAME,) and session.save()
    assert "confirmed" not in read(tmp_path / "car.toml").document


def test_a_bare_number_is_confirmed_with_its_unit(tmp_path: Path) -> None:
    session = opened(tmp_path)
    session.put(NAME, "25")
    session.confirm(NAME)
    yes = session.document["confirmed"]
    assert isinstance(yes, dict) and yes[NAME] == "25 mm" and session.judged.sheet.confirmed == {NAME}


def test_a_yes_goes_when_what_it_was_odd_beside_changes(tmp_path: Path) -> None:
    session = opened(tmp_path)
    session.put(NAME, "25 mm")  # odd beside the stud's thread as well
    session.confirm(NAME)
    assert NAME not in session.judged.asks_about
    session.put("hub.stud_thread", "14 x 1.5 mm")
    assert session.judged.sheet.confirmed == frozenset() and NAME in session.judged.asks_about
    assert session.save() and "confirmed" not in read(tmp_path / "car.toml").document


def test_the_table_is_written_behind_the_steps_and_read_back() -> None:
    sheet = document("pond_newt_finished")
    del sheet["confirmed"]
    whole = {"confirmed": {NAME: "25 mm"}, **sheet}
    text = to_text(whole)
    assert text.index("[pivots]") < text.index("[confirmed]") and from_bytes(text.encode(), "x.toml") == whole


def test_a_yes_is_put_into_a_text_that_a_person_wrote() -> None:
    text = '# mine\ntitle = "x"\n\n[wheel]\npad_thickness = "25 mm"  # twice measured\n'
    after = edited(text, {"title": "x", "wheel": {"pad_thickness": "25 mm"}, "confirmed": {NAME: "25 mm"}})
    assert "# twice measured" in after and '"wheel.pad_thickness" = "25 mm"' in after


def test_check_lists_what_was_confirmed(tmp_path: Path, capsys) -> None:  # type: ignore[no-untyped-def]
    session = opened(tmp_path)
    session.put(NAME, "25 mm")
    session.confirm(NAME)
    session.save()
    main(["check", str(tmp_path / "car.toml")])
    assert "ASKED ABOUT, AND CONFIRMED: metal at the stud hole." in capsys.readouterr().out


def test_a_yes_to_an_answer_that_is_not_there_is_kept_and_said_to_be_unknown(tmp_path: Path) -> None:
    path = tmp_path / "car.toml"
    text = '\n[confirmed]\n"job.corner_weight" = "10 lb"\n"wheel.widht" = "12 in"\n'
    path.write_text('sheet_version = 2\nunits = "inch"\n\n[wheel]\nwidth = "8 in"\n' + text, "utf-8")
    session = Session(read(path))
    assert session.judged.sheet.unknown == ("confirmed.wheel.widht",)
    session.put("wheel.width", "9 in")
    assert session.save() and text in path.read_text("utf-8")


def test_words_in_place_of_the_programs_own_list_are_kept_and_pointed_out(tmp_path: Path) -> None:
    for name in ("warning", "checklist"):
        path = tmp_path / "car.toml"
        path.write_text(
            f'sheet_version = 2\nunits = "inch"\n{name} = "mind the dog"\n\n[wheel]\nwidth = "8 in"\n', "utf-8"
        )
        session = Session(read(path))
        assert [fault.where for fault in session.judged.sheet.faults] == [name]
        session.put("wheel.width", "9 in")
        assert session.save()
        assert read(path).document[name] == "mind the dog" and read(path).document["wheel"] == {"width": "9 in"}
