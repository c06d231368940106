"""Sources: a standard or a handbook is a publication with a name, and what was not read as text says so."""

import dataclasses
from typing import get_args

import pytest

from rules.tables import sources
from rules.tables.sources import SOURCES, WEAKEST_FIRST, Grade, Read, Source, cited, weakest

PUBLISHED = [source for source in SOURCES if source.grade in {"standard", "handbook"}]
NAMELESS = (
    "course notes",
    "lecture",
    "slides",
    "trade page",
    "advice",
    "engineering site",
    "retail",
    "forum",
    "web page",
)


def key(source: Source) -> str:
    return source.key


def fit_for_its_grade(source: Source) -> bool:
    """Whether a source may call itself a standard or a handbook."""
    words = f"{source.key} {source.author} {source.title}".lower()
    named = source.author and source.title and source.edition and source.read
    return bool(named) and not any(nameless in words for nameless in NAMELESS)


@pytest.mark.parametrize("source", PUBLISHED, ids=key)
def test_a_standard_or_handbook_names_its_author_title_and_edition_and_what_was_read(source: Source) -> None:
    assert fit_for_its_grade(source)


@pytest.mark.parametrize(
    "wrong",
    [
        {"author": ""},
        {"title": ""},
        {"edition": ""},
        {"read": None},
        {"title": "Lecture slides on frames"},
        {"author": "one maker's advice"},
        {"key": "trade pages"},
    ],
    ids=str,
)
def test_a_record_that_names_no_publication_would_be_found(wrong: dict[str, str]) -> None:
    assert not fit_for_its_grade(dataclasses.replace(sources.SHIGLEY_9, **wrong))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    "read, words", [("memory", "from memory"), ("an abstract", "abstract"), ("a quotation", "quoted")]
)
def test_what_was_not_read_as_text_says_so_wherever_it_is_cited(read: Read, words: str) -> None:
    assert words in sources.AISC_360.at("J3.3", "for buildings", read=read).citation
    assert words not in sources.AISC_360.at("J3.3", "for buildings").citation


def test_a_record_known_from_memory_or_an_abstract_cannot_be_cited_without_saying_so() -> None:
    for source in SOURCES:
        for one in (source, source.at("p. 1"), source.saying("so")):
            assert ("from memory" in one.citation) == (source.read == "memory")
            assert ("abstract" in one.citation) == (source.read == "an abstract")


def test_a_place_in_a_publication_is_still_that_publication() -> None:
    place = sources.SHIGLEY_9.at("Table 8-15", "one K is good to 10 %")
    assert place.citation == "Shigley 9th ed. Table 8-15: one K is good to 10 %"
    assert place.entry == sources.SHIGLEY_9.entry and place.key == sources.SHIGLEY_9.key
    assert sources.SHIGLEY_9.clause == ""  # the record itself is as it was


def test_every_key_is_used_once_and_every_word_is_of_the_known_ones() -> None:
    assert len({source.key for source in SOURCES}) == len(SOURCES)
    assert {source.grade for source in SOURCES} <= set(get_args(Grade)) == set(WEAKEST_FIRST)
    assert {source.read for source in SOURCES} <= {*get_args(Read), None}


def test_what_is_no_publication_is_never_graded_as_one() -> None:
    for source in SOURCES:
        if source.read is None:
            assert source.grade in {"common practice", "no published figure"}


@pytest.mark.parametrize(
    "names, grade",
    [
        (("AISC_360",), "standard"),
        (("AISC_360", "SHIGLEY_9"), "handbook"),
        (("SHIGLEY_9", "AISC_360"), "handbook"),
        (("AISC_360", "COMMON_PRACTICE", "SHIGLEY_9"), "common practice"),
        (("COMMON_PRACTICE", "OWN", "AISC_360"), "no published figure"),
    ],
    ids=str,
)
def test_what_rests_on_several_sources_is_graded_by_the_weakest(names: tuple[str, ...], grade: Grade) -> None:
    assert weakest(getattr(sources, name) for name in names) == grade


def test_several_sources_stand_on_one_line() -> None:
    assert cited((sources.ISO_281.at("a1"), sources.OWN)) == (
        "ISO 281:2007 a1 (as quoted elsewhere); this program's own figure, nobody published one"
    )


def test_the_terminology_is_that_of_sae_j670_and_sae_j2696_is_known_from_its_abstract() -> None:
    assert sources.SAE_J670.title == "Vehicle Dynamics Terminology"
    assert not any("850219" in source.key for source in SOURCES)
    assert sources.SAE_J2696.read == "an abstract"
