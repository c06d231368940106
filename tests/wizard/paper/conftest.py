"""Pages as pixels: a PDF rasterised by another program's renderer, and distances measured on it in mm."""

from collections.abc import Callable
from typing import Any

import numpy as np
import pypdfium2
import pytest


@pytest.fixture(autouse=True)
def one_day(monkeypatch: pytest.MonkeyPatch) -> None:
    """Papers carry the day they are written and the digest of their sheet, which here are always the same."""
    monkeypatch.setattr("wizard.paper.stamp.today", lambda: "2026-03-04")
    monkeypatch.setattr("wizard.paper.stamp.sheet_digest", lambda sheet: "0123abcd")


Grey = Any
"""A picture as a numpy array: 0 black, 255 white, first row at the top of the page."""


class Paper:
    """The pages of a PDF file, rasterised at so many dots an inch, and the words on them."""

    def __init__(self, pdf: bytes, dpi: int) -> None:
        self.document, self.dpi = pypdfium2.PdfDocument(pdf), dpi
        self._seen: tuple[int, Grey] | None = None

    def __len__(self) -> int:
        return len(self.document)

    def words(self, page: int) -> str:
        """The text of a page with line breaks as spaces."""
        return " ".join(self.document[page].get_textpage().get_text_range().split())

    def size(self, page: int) -> tuple[float, float]:
        """Width and height in mm, as the file states them."""
        width, height = self.document[page].get_size()
        return width * 25.4 / 72, height * 25.4 / 72

    def grey(self, page: int) -> Grey:
        """The page as pixels; the last one looked at is kept, since several distances are measured on one page."""
        if self._seen is None or self._seen[0] != page:
            picture = self.document[page].render(scale=self.dpi / 72, grayscale=True).to_numpy()
            self._seen = page, picture.reshape(picture.shape[:2])
        return self._seen[1]

    def part(self, page: int, left: float, bottom: float, right: float, top: float) -> Grey:
        """A rectangle of the page given in mm from its lower left corner."""
        picture, per_mm = self.grey(page), self.dpi / 25.4
        rows = picture.shape[0]
        return picture[
            round(rows - top * per_mm) : round(rows - bottom * per_mm), round(left * per_mm) : round(right * per_mm)
        ]

    def mm(self, pixels: float) -> float:
        """Pixels as mm."""
        return pixels * 25.4 / self.dpi


def runs(line: Grey, least: float = 0.0) -> list[tuple[float, float]]:
    """Dark stretches along a row or column as (start, end) in pixels; the greys at their ends count in part.

    least: pixels; shorter ones are left out.
    """
    ink = (255.0 - np.asarray(line, dtype=float)) / 255.0
    dark = ink > 0.02
    edges = np.flatnonzero(np.diff(np.concatenate(([False], dark, [False])).astype(int)))
    found = []
    for start, end in zip(edges[::2], edges[1::2], strict=True):
        weights = ink[start:end]
        width, middle = weights.sum(), (weights * (np.arange(start, end) + 0.5)).sum() / weights.sum()
        if width >= least:
            found.append((middle - width / 2, middle + width / 2))
    return found


def bars(paper: Paper, page: int, upright: bool) -> list[float]:
    """Lengths in mm of the solid bars on a page that lie level, or stand upright: those 1.2 mm thick and over 80 mm long."""
    picture = paper.grey(page)
    picture = picture.T if upright else picture
    per_mm, lengths = paper.dpi / 25.4, []
    candidates = np.flatnonzero((picture < 128).sum(axis=1) > 80 * per_mm)
    # Rows next to each other are one bar, or one line; a bar is thicker than any line.
    for group in np.split(candidates, np.flatnonzero(np.diff(candidates) > 1) + 1):
        if len(group) > 0.8 * per_mm:
            found = [paper.mm(end - start) for start, end in runs(picture[group[len(group) // 2]])]
            lengths += [length for length in found if 80 < length < 130]
    return sorted(lengths)


@pytest.fixture(scope="session")
def rasterised() -> Callable[[bytes, int], Paper]:
    """A PDF file rasterised at so many dots an inch."""
    return Paper


@pytest.fixture(scope="session")
def dark_runs() -> Callable[..., list[tuple[float, float]]]:
    """Dark stretches along a line of pixels."""
    return runs


@pytest.fixture(scope="session")
def bar_lengths() -> Callable[[Paper, int, bool], list[float]]:
    """Lengths of the check bars found on a page."""
    return bars
