"""Stock by name, as steel yards name it. Common practice, no source."""

import pytest

from rules.judging.offers import Offer, offer
from rules.measure.quantity import INCH, EntryError, Units
from rules.measure.section_marks import read_section
from rules.sheet import FIELDS
from tests.support.base_sheet import changed
from tests.support.judging import judged_document


@pytest.mark.parametrize(
    ("entry", "units", "sizes"),
    [
        ("1 3/4 x 0.120 tube", "inch", (1.75 * INCH, 0.12 * INCH)),
        ("1-3/4x.120", "inch", (1.75 * INCH, 0.12 * INCH)),
        ("1 3/4 x 0.120", "inch", (1.75 * INCH, 0.12 * INCH)),
        ('1-3/4" x .120 wall DOM', "inch", (1.75 * INCH, 0.12 * INCH)),
        ("1 3/4 x 0.120 ERW tube", "inch", (1.75 * INCH, 0.12 * INCH)),
        ("1 3/4 x 11ga", "inch", None),  # a gauge number has no one thickness
        ("45 x 3 mm tube", "inch", (45.0, 3.0)),
        ("45x3", "metric", (45.0, 3.0)),
        ("3 x 2 x 1/4 box", "inch", (3 * INCH, 2 * INCH, INCH / 4)),
        ("80 × 40 × 4 box", "metric", (80.0, 40.0, 4.0)),
        ("2 x 1/2 flat bar", "inch", (2 * INCH, INCH / 2)),
        ("1 3/4 x 0.120 tube", "metric", (1.75 * INCH, 0.12 * INCH)),  # no stock is named in fractions of a millimetre
        ("1 3/4 in", "inch", None),
        ("tube", "inch", None),
        (45, "metric", None),
    ],
)
def test_names_of_stock(entry: object, units: Units, sizes: tuple[float, ...] | None) -> None:
    found = read_section(entry, units)
    assert found == (pytest.approx(sizes) if sizes else None)


def test_a_size_out_of_bounds_or_a_slip_is_refused_as_ever() -> None:
    with pytest.raises(EntryError):
        FIELDS["upright.beam_width"].read("1 3/4 x 1/0 tube", "inch")
    with pytest.raises(EntryError):
        FIELDS["upright.beam_width"].read("40 x 0.120 tube", "inch")


def test_the_other_sizes_of_the_name_are_offered_in_their_own_rows_and_echoed() -> None:
    found = judged_document(changed({"upright.beam": "box", "upright.beam_width": "80 x 40 x 4 box"}))
    assert found.worked.known["upright.beam_width"] == pytest.approx(80.0)
    assert offer("upright.beam_depth", found) == Offer("40 mm", "by its name")
    assert offer("upright.beam_wall", found) == Offer("4 mm", "by its name")
    asked = FIELDS["upright.beam_width"]
    assert asked.in_words("80 x 40 x 4 box", 80.0, "metric") == "80 mm x 40 mm x 4 mm"
