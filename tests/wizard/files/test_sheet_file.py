"""Reading and saving: every refusal, and nothing lost whatever goes wrong in between."""

import errno
import os
import signal
import stat
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest

from wizard.files import atomic_file, sheet_file
from wizard.files.atomic_file import Held
from wizard.files.sheet_file import (
    SHEET_VERSION,
    CannotRead,
    CannotSave,
    ChangedOnDisk,
    new,
    read,
    save,
    save_beside,
    to_text,
)

OLD = {"sheet_version": 2, "title": "old", "wheel": {"width": "8 in"}}
MINE = {"sheet_version": 2, "title": "mine", "wheel": {"width": "8 1/2 in"}}
COMMENTED = b'# measured twice\ntitle = "old"\n'


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A saved sheet."""
    path = tmp_path / "left front.toml"
    save(new(path), OLD)
    return path


def names(folder: Path) -> list[str]:
    return sorted(entry.name for entry in folder.iterdir())


def refusal(path: Path, content: bytes | str) -> str:
    path.write_bytes(content if isinstance(content, bytes) else content.encode())
    with pytest.raises(CannotRead) as caught:
        read(path)
    assert str(path) in str(caught.value)
    return str(caught.value)


# Reading


def test_a_sheet_reads_as_it_stands(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    data = b'\xef\xbb\xbftitle = "x"\r\n[wheel]\r\nwidth = "9 3/8 in"\r\nunknown = 1\r\n'
    path.write_bytes(data)
    sheet = read(path)
    assert sheet.document == {"title": "x", "wheel": {"width": "9 3/8 in", "unknown": 1}}
    assert sheet.text == data.decode()
    assert sheet.path == path


def test_faults_of_single_entries_are_not_refused(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    path.write_text('title = 5\njob = 1\n"\\u001b" = "\\u001b[31m"\n[wheel]\nwidth = nan\n')
    document = read(path).document
    assert document["job"] == 1
    assert document["\x1b"] == "\x1b[31m"


def test_the_largest_sheet_is_read_and_one_byte_more_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    most = b"title = 1\n" + (b"#" * 999 + b"\n") * 196 + b"#" * 598
    assert len(most) == 192 * 1024
    path.write_bytes(most)
    assert read(path).document == {"title": 1}
    assert "no room for warnings and checklist" in refusal(path, most + b"#")


def test_warnings_and_checklist_may_take_the_rest(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    answers = b"title = 1\n" + (b"#" * 999 + b"\n") * 196
    lines = to_text({"checklist": [{"id": "x" * 900} for _ in range(70)]}).split("\n\n", 1)[1].encode()
    assert len(answers) + len(lines) < 256 * 1024 - 500
    path.write_bytes(answers + b"\n" + lines)
    assert len(read(path).document["checklist"]) == 70  # type: ignore[arg-type]
    assert "bigger than 256 kB" in refusal(path, answers + b"\n" + lines * 2)


def test_a_line_of_1000_characters_is_read_and_of_1001_refused(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    path.write_bytes(('title = "' + "é" * 990 + '"\r\n').encode())
    assert read(path).document == {"title": "é" * 990}
    said = refusal(path, '\ntitle = "' + "é" * 991 + '"\n')
    assert "line 2 has 1,001 characters, and the most is 1,000" in said


def test_a_separator_that_is_no_line_break_does_not_hide_a_long_line(tmp_path: Path) -> None:
    assert "line 1 has" in refusal(tmp_path / "a.toml", 'a = "' + ("x" * 600 + "\u2028") * 2 + '"')


@pytest.mark.parametrize("encoding", ["latin-1", "utf-16"])
def test_other_encodings_are_refused_with_the_line(tmp_path: Path, encoding: str) -> None:
    said = refusal(tmp_path / "a.toml", '\ntitle = "é"\n'.encode(encoding))
    assert f"line {2 if encoding == 'latin-1' else 1}: this is not UTF-8 text" in said
    assert "save it as UTF-8" in said


@pytest.mark.parametrize(
    ("content", "place", "advice"),
    [
        ('title = "x"\n\n[wheel]\nwidth = 9 3/8 in\n', "line 4, column 11", 'spacing = "9 3/8 in"'),
        ('a = "9 3/8""\n', "line 1, column 12", '“a = "9 3/8""”'),
        ("a = [1,\n  2\n\n\n", "line 2, column 4", "“2”"),
        ("a = 1\r\nb = True\r\n", "line 2, column 5", "“b = True”"),
        ("[a]\n[a]\n", "line 2, column 3", "may stand only once"),
        ("a = 1\na = 2", "line 2, column 6", "may stand only once"),
        ('a = "\x1b[31m"\n', "line 1, column 6", "\ufffd[31m"),
        ("a = 1\x00\n", "line 1, column 6", "\ufffd"),
        ('a = "\\ud800"\n', "line 1, column 12", "ud800"),
        ("=", "line 1, column 1", "“=”"),
    ],
)
def test_what_is_not_toml_is_refused_with_its_place(tmp_path: Path, content: str, place: str, advice: str) -> None:
    said = refusal(tmp_path / "a.toml", content)
    assert place in said
    assert "not TOML" in said
    assert advice in said
    assert "\x1b" not in said
    assert "\x00" not in said


@pytest.mark.parametrize(
    "content", ["a = " + "[" * 900 + "]" * 90, "a = " + "[" * 22 + "]" * 22, "a" + ".a" * 400 + " = 1"]
)
def test_deep_nesting_is_refused(tmp_path: Path, content: str) -> None:
    assert "more than 20 deep" in refusal(tmp_path / "a.toml", content)


def test_nesting_at_the_limit_is_read_and_saved(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    path.write_text("a = " + "[" * 20 + "]" * 20)
    sheet = read(path)
    saved = save(sheet, sheet.document)
    assert read(path).document == saved.document == sheet.document
    assert repr(saved)


def test_a_huge_whole_number_survives_reading_showing_and_saving(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    path.write_text("[wheel]\nwidth = 0x" + "f" * 800 + "\n")
    sheet = read(path)
    assert "wheel" in repr(sheet)
    save(sheet, sheet.document)
    assert read(path).document == {"wheel": {"width": 16**800 - 1}}


@pytest.mark.parametrize(
    ("version", "said"),
    [
        ("3", "newer version"),
        ("0x" + "f" * 900, "newer version"),
        ("0", "sheet_version = 2"),
        ("1.0", "whole number"),
        ("true", "whole number"),
        ('"\\u001b1"', "whole number"),
        ("{ a = 1 }", "whole number"),
    ],
)
def test_another_sheet_version_is_refused(tmp_path: Path, version: str, said: str) -> None:
    message = refusal(tmp_path / "a.toml", f"sheet_version = {version}")
    assert said in message
    assert "\x1b" not in message
    assert len(message) < 400


def test_a_missing_file_a_folder_and_a_pipe_are_refused(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.toml")
    (tmp_path / "loop.toml").symlink_to("loop.toml")
    (tmp_path / "plain").write_text("")
    for name, said in [
        ("gone.toml", "no such file"),
        ("", "it is a folder"),
        ("pipe.toml", "not an ordinary file"),
        ("loop.toml", "leads back to itself"),
        ("plain/a.toml", "not a folder"),
        ("n" * 300, "name is too long"),
        ("nul\x00.toml", "no file name can have"),
    ]:
        with pytest.raises(CannotRead, match=said):
            read(tmp_path / name)


def test_a_file_without_permission_is_refused(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def deny(*_: object) -> None:
        raise PermissionError(errno.EACCES, "Permission denied")

    monkeypatch.setattr(os, "open", deny)
    with pytest.raises(CannotRead, match="no permission to read it"):
        read(path)


def test_an_error_nobody_foresaw_is_named(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(*_: object) -> None:
        raise OSError(errno.EIO, "Input/output error")

    monkeypatch.setattr(os, "open", fail)
    with pytest.raises(CannotRead, match="the system says “Input/output error”"):
        read(path)


def test_a_file_name_cannot_steer_the_terminal(tmp_path: Path) -> None:
    with pytest.raises(CannotRead) as caught:
        read(tmp_path / "a\x1b]2;x\x07\udc9b.toml")
    assert "a\ufffd]2;x\ufffd\ufffd.toml" in str(caught.value)


# Saving


def test_a_new_sheet_is_saved_and_reads_back(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    sheet = new(path)
    assert (sheet.text, sheet.document) == (None, {"sheet_version": SHEET_VERSION})
    saved = save(sheet, MINE)
    assert read(path) == saved
    assert saved.document == MINE
    assert path.read_text() == to_text(MINE)
    assert names(tmp_path) == ["a.toml"]


def test_the_saved_document_is_apart_from_the_one_being_edited(path: Path) -> None:
    edited: dict[str, Any] = {"wheel": {"width": "8 in"}}
    saved = save(read(path), edited)
    edited["wheel"]["width"] = "9 in"
    assert saved.document == {"wheel": {"width": "8 in"}}


def test_saving_again_and_again(path: Path) -> None:
    sheet = read(path)
    for title in ("one", "two", "three"):
        sheet = save(sheet, OLD | {"title": title})
        assert read(path).document["title"] == title
    assert names(path.parent) == [path.name]


def test_an_unchanged_sheet_is_not_written(path: Path) -> None:
    before = path.stat()
    saved = save(read(path), OLD)
    after = path.stat()
    assert (after.st_ino, after.st_mtime_ns) == (before.st_ino, before.st_mtime_ns)
    assert saved.text == read(path).text


@pytest.mark.parametrize("mode", [0o600, 0o640, 0o666])
def test_permissions_stay(path: Path, mode: int) -> None:
    path.chmod(mode)
    save(read(path), MINE)
    assert stat.S_IMODE(path.stat().st_mode) == mode


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() != 0, reason="only root may give a file away")
def test_root_does_not_take_a_sheet_from_its_owner(path: Path) -> None:
    """User and group 65534 are those of nobody; common practice of Linux systems."""
    os.chown(path, 65534, 65534)
    path.chmod(0o600)
    sheet = save(read(path), {"title": "by root"})
    for file in (path, save_beside(sheet, {"title": "beside"}).path):
        found = file.stat()
        assert (found.st_uid, found.st_gid, stat.S_IMODE(found.st_mode)) == (65534, 65534, 0o600)


@pytest.mark.parametrize("refused", [errno.EPERM, errno.ENOSYS, errno.EIO])
def test_a_system_that_lets_no_owner_be_kept_still_takes_the_sheet(
    path: Path, refused: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(*_: object) -> None:
        raise OSError(refused, os.strerror(refused))

    monkeypatch.setattr(os, "chown", fail)
    monkeypatch.setattr("wizard.files.sheet_file.held_by", lambda file: Held(0o640, 65534, 65534))
    save(read(path), {"title": "of somebody else"})
    assert stat.S_IMODE(path.stat().st_mode) == 0o640
    assert read(path).document == {"title": "of somebody else"}


def test_a_new_file_gets_the_usual_permissions(tmp_path: Path) -> None:
    before = os.umask(0o027)
    try:
        save(new(tmp_path / "a.toml"), MINE)
    finally:
        os.umask(before)
    assert stat.S_IMODE((tmp_path / "a.toml").stat().st_mode) == 0o640


def test_a_disk_without_permissions_still_takes_the_sheet(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(*_: object, **__: object) -> None:
        raise PermissionError(errno.EPERM, "Operation not permitted")

    monkeypatch.setattr(os, "chmod", fail)
    monkeypatch.setattr(Path, "chmod", fail)
    save(read(path), MINE)
    assert read(path).document == MINE


def test_a_link_stays_a_link_and_its_target_is_written(path: Path, tmp_path: Path) -> None:
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    link = elsewhere / "link.toml"
    link.symlink_to(path)
    save(read(link), MINE)
    assert link.is_symlink()
    assert read(path).document == MINE
    assert names(elsewhere) == ["link.toml"]


def test_a_disk_without_hard_links_takes_a_new_sheet_and_still_overwrites_nothing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(*_: object, **__: object) -> None:
        raise PermissionError(errno.EPERM, "Operation not permitted")

    monkeypatch.setattr(os, "link", fail)
    save(new(tmp_path / "a.toml"), MINE)
    assert read(tmp_path / "a.toml").document == MINE
    assert save_beside(new(tmp_path / "a.toml"), OLD).path.name == "a.mine.toml"
    assert save_beside(new(tmp_path / "a.toml"), OLD).path.name == "a.mine-2.toml"
    assert names(tmp_path) == ["a.mine-2.toml", "a.mine.toml", "a.toml"]


def test_a_link_that_cannot_be_looked_at_is_never_replaced_by_a_file(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    link = path.with_name("link.toml")
    link.symlink_to(path)
    sheet = read(link)

    def fail(*_: object, **__: object) -> None:
        raise OSError(errno.EIO, "Input/output error")

    for call in ("readlink", "lstat"):
        with monkeypatch.context() as patch:
            patch.setattr(os, call, fail)
            with pytest.raises(CannotSave, match="Input/output error"):
                save(sheet, MINE)
        assert link.is_symlink()


def test_a_file_that_cannot_get_its_permissions_is_not_written_with_others(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path.chmod(0o666)
    sheet = read(path)

    def fail(*_: object, **__: object) -> None:
        raise OSError(errno.EIO, "Input/output error")

    monkeypatch.setattr(os, "chmod", fail)
    before = os.umask(0o022)
    try:
        with pytest.raises(CannotSave, match="Input/output error"):
            save(sheet, MINE)
    finally:
        os.umask(before)
    assert read(path).document == OLD


def test_a_link_to_a_file_not_made_yet(tmp_path: Path) -> None:
    (tmp_path / "link.toml").symlink_to("a.toml")
    save(new(tmp_path / "link.toml"), MINE)
    assert read(tmp_path / "a.toml").document == MINE
    assert (tmp_path / "link.toml").is_symlink()


# Changed on disk


def test_a_file_changed_meanwhile_is_not_overwritten(path: Path) -> None:
    sheet = read(path)
    path.write_text('title = "theirs"\n')
    with pytest.raises(ChangedOnDisk, match="changed by somebody else"):
        save(sheet, MINE)
    assert path.read_text() == 'title = "theirs"\n'
    assert names(path.parent) == [path.name]


def test_keep_mine_take_theirs_or_both(path: Path) -> None:
    sheet = read(path)
    path.write_text('title = "theirs"\n')
    beside = save_beside(sheet, MINE)
    assert beside.path == path.with_name("left front.mine.toml")
    assert read(beside.path) == beside
    assert read(path).document == {"title": "theirs"}
    kept = save(sheet, MINE, overwrite=True)
    assert read(path) == kept
    save(kept, OLD)  # and from there saving goes on as usual
    assert read(path).document == OLD


def test_a_deleted_file_is_not_made_again_unasked(path: Path) -> None:
    sheet = read(path)
    path.unlink()
    with pytest.raises(ChangedOnDisk, match="moved or deleted"):
        save(sheet, MINE)
    assert names(path.parent) == []
    save(sheet, MINE, overwrite=True)
    assert read(path).document == MINE


def test_a_file_that_appeared_is_not_overwritten_unasked(path: Path) -> None:
    with pytest.raises(ChangedOnDisk, match="already a file"):
        save(new(path), MINE)
    assert read(path).document == OLD
    save(new(path), MINE, overwrite=True)
    assert read(path).document == MINE


def test_a_file_that_appears_during_the_save_is_not_overwritten(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "a.toml"
    usual = os.fsync

    def slow(handle: int) -> None:
        path.write_text('title = "theirs"\n')
        usual(handle)

    monkeypatch.setattr(os, "fsync", slow)
    with pytest.raises(ChangedOnDisk, match="already a file"):
        save(new(path), MINE, overwrite=True)  # asked for before anybody could know of the other file
    assert read(path).document == {"title": "theirs"}
    assert names(tmp_path) == ["a.toml"]


def test_the_same_change_made_elsewhere_is_no_conflict(path: Path) -> None:
    sheet = read(path)
    save(read(path), MINE)
    assert save(sheet, MINE).text == read(path).text


# Beside


def test_saving_beside_takes_the_next_free_name(path: Path) -> None:
    taken = path.with_name("left front.mine.toml")
    taken.symlink_to("nowhere")
    second = save_beside(read(path), MINE)
    third = save_beside(read(path), OLD)
    assert (second.path.name, third.path.name) == ("left front.mine-2.toml", "left front.mine-3.toml")
    assert (read(second.path).document, read(third.path).document) == (MINE, OLD)
    assert taken.is_symlink()
    assert not taken.exists()


def test_a_name_without_an_ending_gets_one_beside(tmp_path: Path) -> None:
    assert save_beside(new(tmp_path / "sheet"), MINE).path.name == "sheet.mine.toml"


def test_saving_beside_a_protected_private_file_can_go_on(path: Path) -> None:
    path.chmod(0o400)
    beside = save_beside(read(path), MINE)
    assert stat.S_IMODE(beside.path.stat().st_mode) == 0o600
    save(beside, OLD)
    assert read(beside.path).document == OLD


def test_beside_in_a_folder_that_is_gone(tmp_path: Path) -> None:
    with pytest.raises(CannotSave, match="folder is not there"):
        save_beside(new(tmp_path / "gone" / "a.toml"), MINE)


# Comments


def test_comments_survive_saves_keep_mine_and_a_copy_beside(path: Path) -> None:
    path.write_bytes(b"\xef\xbb\xbf" + COMMENTED)
    path.chmod(0o640)
    sheet = read(path)
    saved = save(sheet, {"title": "new"})
    assert path.read_bytes() == b"\xef\xbb\xbf" + COMMENTED.replace(b"old", b"new")
    assert (read(path), stat.S_IMODE(path.stat().st_mode)) == (saved, 0o640)
    beside = save_beside(saved, {"title": "mine"})
    assert beside.path.read_bytes() == b"\xef\xbb\xbf" + COMMENTED.replace(b"old", b"mine")
    assert names(path.parent) == ["left front.mine.toml", "left front.toml"]


def test_comments_of_theirs_are_kept_when_mine_overwrites(path: Path) -> None:
    sheet = read(path)
    path.write_bytes(b'# theirs\ntitle = "theirs"\n')
    save(sheet, MINE, overwrite=True)
    assert '# theirs\ntitle = "mine"\n' in path.read_text()
    assert read(path).document == MINE


def test_what_they_made_unreadable_is_overwritten_when_told_to_with_the_comments_last_read(path: Path) -> None:
    path.write_bytes(COMMENTED)
    sheet = read(path)
    path.write_bytes(b"\xff")
    save(sheet, {"title": "mine"}, overwrite=True)
    assert path.read_bytes() == COMMENTED.replace(b"old", b"mine")


# Saves that fail


@pytest.mark.parametrize("call", ["fsync", "open", "put"])
@pytest.mark.parametrize(
    ("number", "said"),
    [
        (errno.ENOSPC, "the disk is full"),
        (errno.EDQUOT, "share of the disk is used up"),
        (errno.EROFS, "can only be read"),
        (errno.EFBIG, "of that size are not allowed"),
        (errno.EACCES, "not allowed"),
        (errno.EPERM, "not allowed"),
        (errno.EIO, "the system says"),
    ],
)
@pytest.mark.parametrize("there", [True, False])
def test_a_failed_save_leaves_everything_as_it_was(
    path: Path, monkeypatch: pytest.MonkeyPatch, call: str, number: int, said: str, there: bool
) -> None:
    sheet = read(path) if there else new(path.with_name("b.toml"))

    def fail(*_: object) -> None:
        raise OSError(number, os.strerror(number))

    for name in ("replace", "link", "rename") if call == "put" else (call,):
        monkeypatch.setattr(os, name, fail)
    with pytest.raises(CannotSave, match=said) as caught:
        save(sheet, MINE)
    monkeypatch.undo()
    assert str(sheet.path) in str(caught.value)
    assert "untouched" in str(caught.value)
    assert read(path).document == OLD
    assert names(path.parent) == [path.name]


def test_a_half_written_temporary_file_is_removed(path: Path) -> None:
    """A real write that fails half-way: the system allows this process files of 300 bytes at most."""
    code = (
        "import resource, sys\n"
        "from wizard.files.sheet_file import CannotSave, read, save\n"
        "sheet = read(sys.argv[1])\n"
        "resource.setrlimit(resource.RLIMIT_FSIZE, (300, 300))\n"
        "try:\n    save(sheet, {'job': {'notes': 'long ' * 5000}})\n"
        "except CannotSave as error:\n    print('refused:', error)\n"
    )
    assert "refused:" in python(code, path).communicate()[0]
    assert read(path).document == OLD
    assert names(path.parent) == [path.name]


def test_an_interrupted_save_cleans_up(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def interrupt(*_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(os, "fsync", interrupt)
    with pytest.raises(KeyboardInterrupt):
        save(read(path), MINE)
    assert read(path).document == OLD
    assert names(path.parent) == [path.name]


def test_a_folder_that_cannot_be_synced_is_no_failure(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    usual = os.fsync
    folders = []

    def fsync(handle: int) -> None:
        if stat.S_ISDIR(os.fstat(handle).st_mode):
            folders.append(handle)
            raise OSError(errno.EINVAL, "Invalid argument")
        usual(handle)

    monkeypatch.setattr(os, "fsync", fsync)
    save(read(path), MINE)
    assert read(path).document == MINE
    assert len(folders) == 1


def test_places_where_no_file_can_be_made(tmp_path: Path) -> None:
    (tmp_path / "plain").write_text("")
    (tmp_path / "folder.toml").mkdir()
    os.mkfifo(tmp_path / "pipe.toml")
    (tmp_path / "loop.toml").symlink_to("loop.toml")
    before = names(tmp_path)
    for name, said in [
        ("gone/a.toml", "folder is not there"),
        ("plain/a.toml", "not a folder"),
        ("folder.toml", "there is a folder of that name"),
        ("pipe.toml", "not an ordinary file"),
        ("loop.toml", "leads back to itself"),
        ("n" * 300 + ".toml", "name is too long"),
        ("nul\x00.toml", "no file name can have"),
    ]:
        for overwrite in (False, True):
            with pytest.raises(CannotSave, match=said):
                save(new(tmp_path / name), MINE, overwrite=overwrite)
    assert names(tmp_path) == before


def test_a_write_protected_file_stays_protected(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path.chmod(0o444)
    sheet = read(path)
    monkeypatch.setattr(os, "access", lambda *_: False)  # an administrator may write it all the same
    with pytest.raises(CannotSave, match="writing there is not allowed"):
        save(sheet, MINE, overwrite=True)
    assert read(path).document == OLD


@pytest.mark.parametrize(
    ("held", "said"),
    [
        (None, "TOML cannot hold"),
        ("\ud800", "TOML cannot hold"),
        ([10**5000], "TOML cannot hold"),
        ({1: 2}, "TOML cannot hold"),
        ("x" * 300_000, "bigger than 256 kB"),
        ({"k" * 1001: 1}, "1,000"),
        ([[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]], "20 deep"),
    ],
)
def test_what_could_not_be_read_again_is_not_saved(path: Path, held: object, said: str) -> None:
    with pytest.raises(CannotSave, match=said):
        save(read(path), {"job": held})
    with pytest.raises(CannotSave, match=said):
        save_beside(read(path), {"job": held})
    assert read(path).document == OLD
    assert names(path.parent) == [path.name]


# Kills


def python(code: str, path: Path) -> "subprocess.Popen[str]":
    environment = os.environ | {"PYTHONPATH": os.pathsep.join([str(Path(sheet_file.__file__).parents[2]), *sys.path])}
    return subprocess.Popen([sys.executable, "-c", code, str(path)], stdout=subprocess.PIPE, text=True, env=environment)


@pytest.mark.parametrize(("call", "survives"), [("fsync", "old"), ("replace", "old"), ("scandir", "mine")])
def test_killed_at_each_stage(path: Path, call: str, survives: str) -> None:
    code = (
        "import os, signal, sys\n"
        "from wizard.files import sheet_edit, sheet_file\n"
        "sheet = sheet_file.read(sys.argv[1])\n"
        f"os.{call} = lambda *_: os.kill(os.getpid(), signal.SIGKILL)\n"
        "sheet_file.save(sheet, {'title': 'mine'})\n"
    )
    process = python(code, path)
    process.communicate()
    assert process.returncode == -signal.SIGKILL
    assert read(path).document["title"] == survives
    rest = [name for name in names(path.parent) if name != path.name]
    assert all(name.startswith(".buildsheet-") and name.endswith(".tmp") for name in rest)
    assert len(rest) == (1 if survives == "old" else 0)


def test_killed_in_a_loop_of_saves(path: Path) -> None:
    code = (
        "import itertools, sys\n"
        "from wizard.files.sheet_file import read, save\n"
        "sheet = read(sys.argv[1])\n"
        "for number in itertools.count():\n"
        "    print(number, flush=True)\n"
        "    sheet = save(sheet, {'title': 'mine', 'job': {'notes': str(number % 10) * 20000}})\n"
    )
    for saves in (2, 5, 9, 14):
        process = python(code, path)
        assert process.stdout is not None
        for _ in range(saves):
            assert process.stdout.readline()
        process.kill()
        process.communicate()
        document: dict[str, Any] = read(path).document
        notes = document["job"]["notes"]
        assert notes == notes[0] * 20000


def test_what_killed_and_ancient_runs_left_is_swept_and_everything_else_is_left(path: Path) -> None:
    days_ago = time.time() - 2 * 24 * 60 * 60
    gone = subprocess.Popen([sys.executable, "-c", ""])
    gone.wait()
    machine = atomic_file._machine()
    elsewhere = f"{int(machine, 16) ^ 1:08x}"
    left_over = [f".buildsheet-{machine}-{gone.pid}-0123.tmp"]
    ancient = [f".buildsheet-{elsewhere}-1-0123.tmp", ".buildsheet-0123.tmp"]
    others = [
        f".buildsheet-{machine}-{os.getppid()}-0123.tmp",
        f".buildsheet-{elsewhere}-{gone.pid}-45.tmp",
        ".buildsheet-45.tmp", ".buildsheet-0123.toml", "buildsheet-1.tmp", ".buildsheet-papers.json",
    ]  # fmt: skip
    for name in (*left_over, *ancient, *others):
        path.with_name(name).write_text("")
        if name in ancient:
            os.utime(path.with_name(name), (days_ago, days_ago))
    save(read(path), MINE)
    assert names(path.parent) == sorted([*others, path.name])


def test_a_sweep_that_fails_does_not_spoil_the_save(path: Path) -> None:
    orphan = path.with_name(".buildsheet-0123.tmp")
    orphan.mkdir()
    os.utime(orphan, (0, 0))
    save(read(path), MINE)
    assert read(path).document == MINE
