"""Every sample as version 1 had it opens with its entries, says what became of its tables, and is saved as version 2."""

import re
import tomllib
from pathlib import Path

import pytest
from textual.pilot import Pilot
from textual.widgets import Static

from rules.judging.judge import judge
from rules.sheet import read_sheet
from sample_sheets import document, sample, samples
from tests.support.driving import Drive, dealt_with, screen_of
from wizard.command_line import main
from wizard.desk.session import Session
from wizard.files.sheet_file import CannotRead, read, save

WELDS = r"weld_(upper|lower|steering_arm|caliper_bracket)\b"


def version_1(name: str, path: Path) -> Path:
    """A sample in a file as version 1 wrote it, with comments of the builder's own among the entries."""
    text = re.sub(WELDS, r"joint_\1", sample(name).read_text("utf-8")).replace("sheet_version = 2", "sheet_version = 1")
    text = re.sub(r"(?m)^(\[joint_.*)$", r"# mine, above \1\n\1 # mine, behind", text)
    path.write_text(text, "utf-8")
    return path


@pytest.mark.parametrize("name", samples())
def test_opens_as_the_sample_of_today(tmp_path: Path, name: str) -> None:
    file = read(version_1(name, tmp_path / "a.toml"))
    assert file.document == document(name)
    assert bool(file.told) == any(table.startswith("weld_") for table in document(name))


def test_some_samples_have_every_table() -> None:
    found = {table for name in samples() for table in document(name) if table.startswith("weld_")}
    assert found == {"weld_upper", "weld_lower", "weld_steering_arm", "weld_caliper_bracket"}


@pytest.mark.parametrize("name", ["scree_ox_strength", "dune_wren_finished"])
def test_saved_as_version_2_with_comments_and_order(tmp_path: Path, name: str) -> None:
    path = version_1(name, tmp_path / "a.toml")
    before = path.read_text("utf-8")
    session = Session(read(path))
    assert path.read_text("utf-8") == before, "opening writes nothing"
    session.put("job.notes", "Seen again")
    assert session.save()
    text = path.read_text("utf-8")
    held = tomllib.loads(text)
    assert held["sheet_version"] == 2
    assert {key: held[key] for key in document(name) if key != "job"} == {
        key: entry for key, entry in document(name).items() if key != "job"
    }
    assert not re.search(r"(?m)^\[?joint_(upper|lower|steering_arm|caliper_bracket)", text)
    expected = re.sub(r"(?m)^\[joint_(?!angles)", "[weld_", before).replace("sheet_version = 1", "sheet_version = 2")
    kept = [
        line
        for line in text.split("\n[[warning]]")[0].split("\n[[checklist]]")[0].splitlines()
        if "Seen again" not in line
    ]
    assert kept == [line for line in expected.splitlines() if not line.startswith("notes = ")]
    assert read(path).told == ""


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ('joint_upper.leg = "6 mm" # mine\n', 'weld_upper.leg = "6 mm" # mine\n'),
        ('joint_upper = { leg = "6 mm" }\n', '\n[weld_upper]\nleg = "6 mm"\n'),
        ('  [ joint_upper ]\n  leg = "6 mm"\n', '  [ weld_upper ]\n  leg = "6 mm"\n'),
        ('["joint_upper"]\nleg = "6 mm"\n', '["weld_upper"]\nleg = "6 mm"\n'),
        ('[joint_upper]\nleg = "6 mm"\n[confirmed]\n"joint_upper.leg" = "6 mm"\n',
         '[weld_upper]\nleg = "6 mm"\n[confirmed]\n"weld_upper.leg" = "6 mm"\n'),
        ('[job]\nnotes = """\n[joint_upper]\n"""\n', '[job]\nnotes = """\n[joint_upper]\n"""\n'),
        ('# [joint_upper] is mine\n[weld_upper]\nleg = "6 mm"\n', '# [joint_upper] is mine\n[weld_upper]\nleg = "6 mm"\n'),
    ],
)  # fmt: skip
def test_each_way_to_write_a_table_is_renamed_in_place(tmp_path: Path, before: str, after: str) -> None:
    path = tmp_path / "a.toml"
    path.write_text(f'sheet_version = 1 # mine\nunits = "metric"\n{before}', "utf-8")
    file = read(path)
    save(file, file.document)
    assert path.read_text("utf-8") == f'sheet_version = 2 # mine\nunits = "metric"\n{after}'


def test_both_names_are_saved_as_one_table_and_nothing_is_lost(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    path.write_text(
        'sheet_version = 1\n\n[joint_upper] # old\nleg = "6 mm" # mine\n\n[weld_upper] # new\nrun = "80 mm"\n'
    )
    file = read(path)
    assert file.document["weld_upper"] == {"leg": "6 mm", "run": "80 mm"}
    save(file, file.document)
    text = path.read_text("utf-8")
    assert tomllib.loads(text) == {"sheet_version": 2, "weld_upper": {"leg": "6 mm", "run": "80 mm"}}
    assert all(comment in text for comment in ("# old", "# mine", "# new"))


def test_both_names_that_differ_are_refused_by_name(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    path.write_text('[joint_upper]\nleg = "6 mm"\n[weld_upper]\nleg = "7 mm"\n')
    with pytest.raises(CannotRead, match=r"a\.toml cannot be read: weld_upper\.leg stands twice"):
        read(path)


def test_a_sheet_of_a_later_version_is_refused_in_words(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    path.write_text("sheet_version = 3\n")
    with pytest.raises(CannotRead, match="newer version"):
        read(path)


def test_check_says_so_in_one_line(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = version_1("scree_ox_strength", tmp_path / "a.toml")
    main(["check", str(path)])
    said = capsys.readouterr()
    assert said.err.count("\n") == 1
    assert "[joint_upper] is now [weld_upper], [joint_lower] is now [weld_lower]" in said.err
    main(["check", str(sample("scree_ox_strength"))])
    today = capsys.readouterr()
    assert today.err == ""
    assert said.out.splitlines()[1:] == today.out.splitlines()[1:]


@pytest.mark.parametrize("name", ["joint_upper.leg", "joint_steering_arm.run"])
def test_an_earlier_name_is_still_explained(capsys: pytest.CaptureFixture[str], name: str) -> None:
    assert main(["explain", str(sample("scree_ox_strength")), name]) == 0
    assert f"{name}: here called weld_{name.removeprefix('joint_')}" in capsys.readouterr().out


def test_the_samples_are_of_today() -> None:
    for name in samples():
        assert document(name).get("sheet_version") == 2, name
        assert not judge(read_sheet(document(name)), light=True).sheet.unknown, name


def test_the_wizard_says_so_until_the_next_answer(tmp_path: Path, drive: Drive) -> None:
    path = version_1("scree_ox_strength", tmp_path / "a.toml")

    async def act(pilot: Pilot[None]) -> None:
        await dealt_with(pilot)
        screen = screen_of(pilot)
        said = screen.query_one("#trouble", Static)
        assert "[joint_upper] is now [weld_upper]" in str(said.render())
        screen.session.put("job.notes", "Seen")
        screen.show_all()
        assert "joint_upper" not in str(said.render())

    drive(path, act)
