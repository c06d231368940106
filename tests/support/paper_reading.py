"""Reading papers back: the words of each page, and how large the letters are."""

import tomllib
from typing import Any

import pypdfium2
import pypdfium2.raw as pdfium

from rules.judging.judge import Judged
from rules.sheet.glossary import reworded
from rules.shop.wording import words_on_paper
from sample_sheets import sample
from tests.support.judging import judged_document

PLATE: dict[str, object] = {
    "revision": "C", "metal": "mild steel plate", "condition": "hot rolled, heat 7731", "process": "laser",
    "thickness": "3/8 in", "width": "5 in", "height": "11 in", "corner_radius": "3/4 in", "spindle_from_top": "5 1/2 in",
    "spindle_from_front": "2 1/2 in", "bore": "3 in", "hole_diameter": "13 mm", "weld_process": "mig",
    "filler": "0.9 mm solid wire",
}  # fmt: skip


def document(name: str = "dune_wren_finished", /, **changed: object) -> dict[str, Any]:
    """A sample with a plate drawn; changed: other top-level entries of the document."""
    return {**tomllib.loads(sample(name).read_text("utf-8")), "plate": PLATE, **changed}


def judged(sheet: dict[str, Any]) -> Judged:
    return judged_document(sheet)


def pages(data: bytes) -> list[str]:
    """The words of each page, in one line."""
    pdf = pypdfium2.PdfDocument(data)
    return [" ".join(page.get_textpage().get_text_range().split()) for page in pdf]


def on_paper(text: object, judged: Judged) -> str:
    """A text of the program as the papers of this sheet have it; `test_wording.py` says by hand what that is."""
    return reworded(str(text), words_on_paper(judged))


def squeezed(text: object) -> str:
    """Without spaces, since a wrapped line has a break where the text has none."""
    return "".join(str(text).split())


def letter_sizes(data: bytes) -> set[float]:
    """Sizes of all letters, in points as printed."""
    sizes = set()
    for page in pypdfium2.PdfDocument(data):
        for item in page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_TEXT]):
            matrix = item.get_matrix()
            upright = (matrix.c**2 + matrix.d**2) ** 0.5
            sizes.add(round(_font_size(item) * upright, 2))
    return sizes


def _font_size(item: Any) -> float:
    import ctypes

    size = ctypes.c_float()
    assert pdfium.FPDFTextObj_GetFontSize(item.raw, ctypes.byref(size))
    return size.value


def is_black_and_white(data: bytes) -> bool:
    """Whether no pixel has a colour."""
    for page in pypdfium2.PdfDocument(data):
        picture = page.render(scale=1).to_pil().convert("RGB")
        if any(red != green or green != blue for _, (red, green, blue) in picture.getcolors(1 << 24)):
            return False
    return True
