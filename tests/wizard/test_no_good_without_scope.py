"""Nowhere does a sheet read plain `good`: whatever says so says in the same breath what was judged and what was not."""

import json
import re
from pathlib import Path
from typing import Any

import pytest
from textual.pilot import Pilot

from rules.judging.judge import Judged
from rules.judging.report import as_data
from sample_sheets import document, expected_file, sample, samples
from tests.support.driving import Drive, TextOf, app_of, dealt_with, screen_of
from tests.support.judging import judged_sample
from tests.support.paper_reading import pages
from wizard.check_lines import report_lines
from wizard.desk.pages import REVIEW
from wizard.desk.session import Session
from wizard.files.sheet_file import read
from wizard.paper.checklist_text import as_markdown, as_text
from wizard.paper.folder import usual_paper, write_hand_over
from wizard.running import last_line

NAMES = samples()
WHOLE = [name for name in NAMES if expected_file(name).parent.name != "changed"]
SCOPE, GROUPS = "<scope>", r"good \(\d+ of \d+ groups(?: judged)?\)|good, \d+ of \d+\b|good \d+/\d+\b"
OPEN = r"(?: \(\d+ open\))?"
WITH_SCOPE = re.compile(rf"good{OPEN}(?: in what was judged)?{OPEN}\. {SCOPE}|{GROUPS}", re.IGNORECASE)
ONE_CHECK = re.compile(r"\bGOOD: |would be good", re.IGNORECASE)
"""What single checks say, and what would make one good."""


def bare(text: str, judged: Judged) -> list[str]:
    """Every place where a text says good without scope, with what stands round it."""
    line = " ".join(text.split()).replace(" ".join(judged.scope.split()), SCOPE)
    line = ONE_CHECK.sub("", WITH_SCOPE.sub("", line))
    return [
        line[max(0, found.start() - 60) : found.end() + 30] for found in re.finditer(r"\bgood\b", line, re.IGNORECASE)
    ]


def test_what_counts_as_plain_and_what_does_not() -> None:
    judged = judged_sample("pond_newt_finished")
    assert (
        bare("Verdict: good.", judged) and bare("This sheet: good", judged) and bare("GOOD in what was judged.", judged)
    )
    assert not bare(f"Verdict: good. {judged.scope}", judged) and not bare(
        f"GOOD in what was judged. {judged.scope}", judged
    )
    assert not bare("This sheet: good (3 of 7 groups judged)", judged)


@pytest.mark.parametrize("name", NAMES)
def test_check_checklist_and_farewell(name: str) -> None:
    judged = judged_sample(name)
    outputs = {
        "check": "\n".join(report_lines(judged, "x.toml")),
        "checklist": as_text(judged, document(name)),
        "markdown": as_markdown(judged, document(name)),
        "welder's": as_text(judged, document(name), "welder"),
    }
    assert {output: found for output, text in outputs.items() if (found := bare(text, judged))} == {}


@pytest.mark.parametrize("name", NAMES)
def test_data_have_the_groups_beside_the_verdict(name: str) -> None:
    data: dict[str, Any] = json.loads(json.dumps(as_data(judged_sample(name), "x.toml")))
    assert (
        data["verdict"]
        and set(data["groups"])
        and all({"verdict", "judged", "of"} <= set(group) for group in data["groups"].values())
    )
    places = list(data)
    assert "groups" in places and abs(places.index("groups") - places.index("verdict")) <= 2


@pytest.mark.parametrize("name", WHOLE)
def test_every_paper_of_the_folder(name: str, tmp_path: Path) -> None:
    judged = judged_sample(name)
    write_hand_over(judged, document(name), tmp_path, usual_paper(judged), as_is=True)
    papers = [path for path in tmp_path.iterdir() if path.suffix in (".pdf", ".txt", ".md", ".svg")]
    assert len(papers) >= 8
    plain = {}
    for paper in papers:
        text = " ".join(pages(paper.read_bytes())) if paper.suffix == ".pdf" else paper.read_text("utf-8")
        if found := bare(re.sub(r"</text>\s*<text[^>]*>", " ", text), judged):
            plain[paper.name] = found
    assert plain == {}


@pytest.mark.parametrize("size", [(80, 24), (120, 40)])
@pytest.mark.parametrize("name", ["dune_wren_finished", "scree_ox_strength", "dune_wren_half_done"])
def test_the_screens(name: str, size: tuple[int, int], tmp_path: Path, drive: Drive, text_of: TextOf) -> None:
    """The sheet, its review and the start screen. A step's own `good` and a check's stand in columns of their own."""
    path = tmp_path / "sheet.toml"
    path.write_bytes(sample(name).read_bytes())
    shown: list[str] = []

    async def act(pilot: Pilot[None]) -> None:
        shown.append(text_of(app_of(pilot)).splitlines()[0])
        screen_of(pilot).open_page(REVIEW)
        await dealt_with(pilot)
        lines = text_of(app_of(pilot)).splitlines()
        shown.append(lines[0])
        shown.append(" ".join(lines))
        await pilot.press("ctrl+o")
        await dealt_with(pilot)
        shown.append(text_of(app_of(pilot)))

    drive(path, act, size=size)
    judged = judged_sample(name)
    for text in (*shown[:2], shown[3]):
        assert bare(text, judged) == []
    assert "Judged" in shown[2] and " ".join(judged.scope.split())[:20] in " ".join(shown[2].split())


def test_the_last_line_after_the_wizard(tmp_path: Path) -> None:
    path = tmp_path / "sheet.toml"
    path.write_bytes(sample("pond_newt_finished").read_bytes())
    session = Session(read(path))
    assert "good" in last_line(session) and bare(last_line(session), session.judged) == []
