"""The commands that write papers: which files, where, on what paper, and what they refuse to write over."""

import errno
import os
import shutil
import subprocess
import sys
import tomllib
from pathlib import Path

import pypdfium2
import pytest
import tomli_w

from sample_sheets import FINISHED, sample
from tests.support.base_sheet import MOVING, changed
from wizard.command_line import main
from wizard.paper.folder import LIST


@pytest.fixture
def sheet(tmp_path: Path) -> Path:
    path = tmp_path / "car.toml"
    shutil.copyfile(sample(FINISHED), path)
    return path


@pytest.fixture
def moving(tmp_path: Path) -> Path:
    """A finished sheet with steering and arms."""
    path = tmp_path / "car.toml"
    path.write_text(tomli_w.dumps(changed(MOVING)), "utf-8")
    return path


def papers(sheet: Path) -> set[str]:
    return {path.name for path in (sheet.parent / "car_papers").iterdir()} - {LIST}


def page_size(path: Path) -> tuple[float, float]:
    """mm, upright."""
    width, height = pypdfium2.PdfDocument(path)[0].get_size()
    return tuple(sorted((width / 72 * 25.4, height / 72 * 25.4)))  # type: ignore[return-value]


def test_the_drawing_is_written_for_both_sides_on_the_paper_of_the_sheets_units(
    sheet: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["drawing", str(sheet)]) == 0
    assert papers(sheet) == {"drawing_left.pdf", "drawing_right.pdf"}
    assert page_size(sheet.parent / "car_papers/drawing_left.pdf") == pytest.approx((215.9, 279.4), abs=0.1)
    assert len(capsys.readouterr().out.splitlines()) == 2


def test_side_paper_and_folder_can_be_chosen(sheet: Path, tmp_path: Path) -> None:
    folder = tmp_path / "bench"
    assert main(["drawing", str(sheet), "--side", "right", "--paper", "a4", "--folder", str(folder)]) == 0
    assert page_size(folder / "drawing_right.pdf") == pytest.approx((210, 297), abs=0.1)
    assert main(["drawing", str(sheet), "--side", "left", "--svg", "--folder", str(folder)]) == 0
    assert (folder / "drawing_left.svg").read_text("utf-8").lstrip().startswith("<")


def test_a_large_single_sheet_and_the_whole_view_have_names_of_their_own(sheet: Path) -> None:
    assert main(["drawing", str(sheet), "--side", "left", "--view", "whole", "--one-sheet"]) == 0
    assert papers(sheet) == {"drawing_left_whole_one_sheet.pdf"}


def test_the_checklist_as_pdf_whole_and_for_the_welder(sheet: Path) -> None:
    assert main(["checklist", str(sheet), "--pdf"]) == 0
    assert main(["checklist", str(sheet), "--pdf", "--welder"]) == 0
    assert papers(sheet) == {"checklist.pdf", "checklist_welder.pdf"}


def test_the_welders_part_is_shorter_than_the_whole(sheet: Path, capsys: pytest.CaptureFixture[str]) -> None:
    main(["checklist", str(sheet)])
    whole = capsys.readouterr().out
    main(["checklist", str(sheet), "--welder"])
    welder = capsys.readouterr().out
    assert "FIRST DRIVE" in whole and "FIRST DRIVE" not in welder
    assert "WELD" in welder


def test_the_hand_over_folder_holds_what_welder_and_cutter_need(sheet: Path) -> None:
    assert main(["handover", str(sheet)]) == 0
    assert papers(sheet) >= {
        "checklist_builder.pdf", "checklist_helper.pdf", "checklist.txt", "checklist.md", "welding_sheet.pdf",
        "drawing_left.pdf", "drawing_right.pdf", "drawing_left.svg", "drawing_right.svg",
    }  # fmt: skip


def test_the_motion_sheet_is_text_markdown_or_pdf(moving: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["motion", str(moving)]) == 0
    assert capsys.readouterr().out.startswith("MOTION SHEET, FRONT END\nTitle    Round figures\n")
    assert main(["motion", str(moving), "--markdown"]) == 0
    assert capsys.readouterr().out.startswith("# Motion sheet, front end\n")
    assert not (moving.parent / "car_papers").exists()
    assert main(["motion", str(moving), "--pdf"]) == 0
    path = moving.parent / "car_papers/motion_sheet.pdf"
    assert capsys.readouterr().out == f"{path}\n"
    assert page_size(path) == pytest.approx((210, 297), abs=0.1)


def test_a_motion_sheet_of_nothing_is_refused_in_a_line(sheet: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for form in ([], ["--markdown"], ["--pdf"]):
        assert main(["motion", str(sheet), *form]) == 2
        captured = capsys.readouterr()
        assert captured.out == "" and "Neither steering nor arms are entered" in captured.err
    assert not (sheet.parent / "car_papers").exists()


def test_only_the_checklist_has_a_welders_part(moving: Path, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit):
        main(["motion", str(moving), "--welder"])
    assert "--welder" in capsys.readouterr().err


def test_the_hand_over_folder_holds_the_motion_sheet_where_there_is_one(sheet: Path, moving: Path) -> None:
    assert main(["handover", str(moving)]) == 0
    assert papers(moving) >= {"motion_sheet.pdf", "motion_sheet.txt"}
    shutil.copyfile(sample(FINISHED), sheet)  # the same sheet without steering and arms: what is stale is taken away
    assert main(["handover", str(sheet)]) == 0
    assert not {name for name in papers(sheet) if name.startswith("motion")}


def test_a_paper_changed_by_hand_is_not_written_over_unless_told(
    sheet: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["checklist", str(sheet), "--pdf"]) == 0
    paper = sheet.parent / "car_papers/checklist.pdf"
    paper.write_text("my own notes", "utf-8")
    assert main(["checklist", str(sheet), "--pdf"]) == 2
    assert paper.read_text("utf-8") == "my own notes"
    assert "checklist.pdf" in capsys.readouterr().err
    assert main(["checklist", str(sheet), "--pdf", "--overwrite"]) == 0
    assert paper.read_bytes().startswith(b"%PDF")


def test_writing_one_paper_leaves_the_others_alone(sheet: Path) -> None:
    main(["checklist", str(sheet), "--pdf"])
    main(["drawing", str(sheet), "--side", "left", "--svg"])
    assert papers(sheet) == {"checklist.pdf", "drawing_left.svg"}


def test_what_cannot_be_done_is_said_in_a_line_and_nothing_is_written(
    sheet: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    half = sheet.with_name("half.toml")
    shutil.copyfile(sample("dune_wren_half_done"), half)
    for command, told in (
        (["cut", str(half)], "outline"),
        (["drawing", str(half), "--paper", "napkin"], "napkin"),
        (["drawing", str(sheet.with_name("absent.toml"))], "absent.toml"),
    ):
        assert main(command) == 2
        captured = capsys.readouterr()
        assert captured.out == "" and told in captured.err
    assert not (sheet.parent / "half_papers").exists()


# A sheet with a stop


@pytest.fixture
def wrong(tmp_path: Path) -> Path:
    """Finished, but its caliper hits the wheel."""
    path = tmp_path / "car.toml"
    document = tomllib.loads(sample(FINISHED).read_text("utf-8"))
    document["caliper"]["reach_above_rotor"] = "3 in"
    path.write_text(tomli_w.dumps(document), "utf-8")
    return path


def test_cut_refuses_a_sheet_with_a_stop_and_says_what_is_wrong(
    wrong: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["cut", str(wrong)]) == 1
    said = capsys.readouterr()
    assert "DO NOT CUT. The caliper hits the wheel barrel" in said.err and "--as-is" in said.err
    assert not (wrong.parent / "car_papers").exists() and said.out == ""


def test_cut_as_is_writes_with_the_words_in_the_drawing_and_exit_status_1(wrong: Path) -> None:
    assert main(["cut", str(wrong), "--as-is"]) == 1
    for name in papers(wrong):
        assert b"DO NOT CUT. The caliper hits" in (wrong.parent / "car_papers" / name).read_bytes(), name
    assert main(["cut", str(wrong).replace("car.toml", "gone.toml")]) == 2


def test_a_sheet_without_a_stop_is_cut_without_asking(sheet: Path) -> None:
    assert main(["cut", str(sheet)]) == 0
    assert "hub_plate_left_in.dxf" in papers(sheet)


def test_every_file_of_the_folder_of_such_a_sheet_says_so(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "car.toml"
    document = changed(MOVING)
    document["caliper"]["reach_above_rotor"] = "3 in"
    path.write_text(tomli_w.dumps(document), "utf-8")
    assert main(["handover", str(path)]) == 0
    written = [Path(line) for line in capsys.readouterr().out.splitlines()]
    assert {"motion_sheet.txt", "checklist.md", "drawing_left.svg"} <= {file.name for file in written}
    for file in written:
        if file.suffix == ".pdf":
            for page in pypdfium2.PdfDocument(file):
                words = " ".join(page.get_textpage().get_text_range().split())
                assert "DO NOT CUT. The caliper hits the wheel barrel" in words, (file.name, words[:80])
                assert "Sheet " in words and "written " in words, file.name
        else:
            words = " ".join(file.read_text("utf-8").split())
            assert "DO NOT CUT. The caliper hits the wheel" in words, file.name
            assert "written 20" in words, file.name


def test_papers_of_other_answers_are_named_as_they_go(sheet: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["cut", str(sheet), "--units", "mm"]) == 0
    document = tomllib.loads(sheet.read_text("utf-8"))
    document["plate"]["width"] = "5 1/4 in"
    sheet.write_text(tomli_w.dumps(document), "utf-8")
    capsys.readouterr()
    assert main(["handover", str(sheet)]) == 0
    said = capsys.readouterr().err
    assert "hub_plate_left_mm.dxf: removed, it was of other answers than these" in said
    assert "hub_plate_left_mm.dxf" not in papers(sheet)


def test_fixture_and_model_are_papers_of_their_own(sheet: Path) -> None:
    assert (
        main(["fixture", str(sheet)]) == 0
        and main(["model", str(sheet)]) == 0
        and main(["model", str(sheet), "--stl"]) == 0
    )
    assert papers(sheet) == {
        "fixture.pdf", "upright_left.3mf", "upright_right.3mf", "upright_left.stl", "upright_right.stl",
    }  # fmt: skip


# Folders that are none, and outputs nobody reads


def odd_folders(around: Path) -> dict[str, tuple[str, str]]:
    """Each where nothing can be written: what is asked for, and a part of what is said."""
    (around / "file").write_text("mine")
    (around / "nowhere").symlink_to("gone")
    (around / "loop").symlink_to("loop")
    (around / "taken" / "checklist.pdf").mkdir(parents=True)
    (around / "notes").mkdir()
    (around / "notes" / "checklist.pdf").write_text("mine")
    os.mkfifo(around / "pipe")
    (around / "device").symlink_to("/dev/full")
    (around / "pipes").mkdir()
    os.mkfifo(around / "pipes" / "checklist.pdf")
    return {
        "file": (str(around / "file"), "a file, or a link that leads nowhere, stands where that folder should be"),
        "under a file": (str(around / "file" / "papers"), "part of its path is a file"),
        "pipe": (str(around / "pipe"), "a file, or a link that leads nowhere"),
        "device": (str(around / "device"), "a file, or a link that leads nowhere"),
        "a pipe of a paper's name": (str(around / "pipes"), "not an ordinary file"),
        "dangling link": (str(around / "nowhere"), "a file, or a link that leads nowhere"),
        "loop": (str(around / "loop"), "a file, or a link that leads nowhere"),
        "long name": (str(around / ("n" * 300)), "its name is too long"),
        "a folder of a paper's name": (str(around / "taken"), "there is a folder of that name"),
        "a file of a paper's name": (str(around / "notes"), "Changed by hand, or not written by this program"),
        "nul": (str(around / "a\0b"), "a character that no file name can have"),
    }


def test_a_folder_that_is_none_is_refused_in_one_sentence_and_nothing_there_is_lost(
    sheet: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for what, (folder, told) in odd_folders(tmp_path).items():
        assert main(["checklist", str(sheet), "--pdf", "--folder", folder]) == 2, what
        said = capsys.readouterr()
        assert told in said.err and len(said.err.splitlines()) == 1 and said.out == "", (what, said.err)
    assert (tmp_path / "file").read_text() == "mine" and (tmp_path / "notes" / "checklist.pdf").read_text() == "mine"
    assert (tmp_path / "taken" / "checklist.pdf").is_dir() and not (tmp_path / "gone").exists()
    assert {path.name for path in (tmp_path / "notes").iterdir()} == {"checklist.pdf"}


def test_a_folder_made_for_papers_that_cannot_be_written_goes_again(
    sheet: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def fail(*_: object) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    monkeypatch.setattr("wizard.paper.swap.put", fail)
    there = tmp_path / "there"
    there.mkdir()
    for folder in ("new", "there"):
        assert main(["checklist", str(sheet), "--pdf", "--folder", str(tmp_path / folder)]) == 2
        assert "the disk is full" in capsys.readouterr().err
    assert {path.name for path in tmp_path.iterdir()} == {"car.toml", "there"}


@pytest.mark.parametrize("odd", ["HOME", "SOURCE_DATE_EPOCH", "working folder"])
def test_papers_are_the_same_whatever_is_odd_about_the_place_they_are_written_from(
    odd: str, sheet: Path, tmp_path: Path
) -> None:
    script = (
        "import os, sys; os.rmdir(os.getcwd()) if sys.argv[1] == 'working folder' else None;"
        "from wizard.command_line import main; sys.exit(main(['checklist', sys.argv[2], '--pdf', '--folder', sys.argv[3]]))"
    )
    written = []
    for where in ("usual", odd):
        started_in = tmp_path / f"in {where}"
        started_in.mkdir()
        about = {"HOME": "/dev/null"} if where == "HOME" else {"SOURCE_DATE_EPOCH": "x"} if where == odd else {}
        folder = tmp_path / where
        done = subprocess.run(
            # -P, as `buildsheet` is started: nothing is loaded from the working folder. Python 3.13.0 fails in one that is gone.
            [sys.executable, "-P", "-c", script, where, str(sheet), str(folder)], cwd=started_in, capture_output=True, text=True,
            check=False, env={**os.environ, "PYTHONPATH": os.pathsep.join(map(os.path.abspath, sys.path)), **about},
        )  # fmt: skip
        assert (done.returncode, done.stderr) == (0, "")
        written.append((folder / "checklist.pdf").read_bytes())
    assert written[0] == written[1]


def test_cut_files_are_written_without_a_word_where_the_home_folder_is_none(sheet: Path, tmp_path: Path) -> None:
    about = {"HOME": "/dev/null", "PYTHONPATH": os.pathsep.join(map(os.path.abspath, sys.path))}
    os_about = {name: held for name, held in os.environ.items() if not name.startswith("XDG_")}
    done = subprocess.run(
        [sys.executable, "-m", "wizard", "cut", str(sheet), "--as-is", "--folder", str(tmp_path / "cut")],
        capture_output=True, text=True, check=False, env=os_about | about,
    )  # fmt: skip
    assert done.returncode in (0, 1) and done.stderr == ""
    assert list((tmp_path / "cut").glob("*.dxf"))


def test_a_folder_without_a_name_is_not_the_one_this_happens_to_be_started_in(
    sheet: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    for empty in ("", "  "):
        with pytest.raises(SystemExit) as ended:
            main(["checklist", str(sheet), "--pdf", "--folder", empty])
        assert ended.value.code == 2 and "a folder needs a name" in capsys.readouterr().err
    assert {path.name for path in tmp_path.iterdir()} == {"car.toml"}


def test_a_path_is_printed_with_a_mark_for_what_a_terminal_would_obey(
    sheet: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = tmp_path / "two\nlines \x1b[31m"
    assert main(["checklist", str(sheet), "--pdf", "--folder", str(folder)]) == 0
    said = capsys.readouterr().out
    assert len(said.splitlines()) == 1 and "\x1b" not in said
    assert (folder / "checklist.pdf").is_file()


def test_started_without_a_place_to_print_to_the_paper_is_written_all_the_same(
    sheet: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("sys.stdout", None)
    assert main(["checklist", str(sheet), "--pdf"]) == 0
    assert papers(sheet) == {"checklist.pdf"}
