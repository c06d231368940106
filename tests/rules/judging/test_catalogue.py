"""The catalogue ends with the sources: what each is, what was read of it, and which checks rest on it."""

import re

from rules.judging.catalogue import as_markdown
from rules.judging.trade import trade
from rules.tables.sources import SOURCES

CHECKS, LIST = as_markdown().split("## Sources\n")


def section(key: str) -> str:
    return LIST.split(f"### {key}\n")[1].split("\n### ")[0]


def test_the_list_of_sources_is_the_last_part_and_holds_no_check() -> None:
    assert CHECKS.count("\n## ") == len(trade().checks)
    assert "\n## " not in LIST


def test_a_source_stands_with_its_title_its_edition_what_was_read_and_the_checks_that_cite_it() -> None:
    found = section("49 CFR 571.110")
    assert "Safety standard 110, tire selection and rims" in found and "read: the text" in found
    assert "- checks: `tyre-rim-diameter`, `tyre-rim-width`\n" in found


def test_a_source_known_from_memory_or_an_abstract_says_so_in_the_list() -> None:
    assert "read: memory" in section("AISC Manual")
    assert "read: an abstract" in section("SAE J2696")


def test_each_source_stands_once_and_every_check_it_lists_cites_it() -> None:
    headings = re.findall(r"^### (.+)$", LIST, re.MULTILINE)
    assert len(set(headings)) == len(headings) and set(headings) <= {source.key for source in SOURCES}
    for key in headings:
        for line in re.findall(r"^- checks: (.+)$", section(key), re.MULTILINE):
            for name in re.findall(r"`(.+?)`", line):
                assert key in trade().checks[name].note.source


def test_a_source_that_nothing_cites_is_left_out() -> None:
    assert "### Beer and Johnston" not in LIST  # worked examples in the tests alone
