"""Tables that run from one page to the next."""

import pytest

from tests.support.paper_reading import judged, pages
from wizard.paper.flow import Flow
from wizard.paper.pdf import Document, paper_size

ROWS = [(f"row {number}", "figure") for number in range(1, 5)]


@pytest.mark.parametrize("room", [4.0, 10.0, 14.0, 17.0, 40.0])
def test_no_heading_of_a_table_stands_with_one_row_alone_at_the_bottom_of_a_page(room: float) -> None:
    """A row takes 1.3 x 10 points = 4.6 mm and twice 0.8: 6.2 mm. Three of them and 1 mm before need 19.6 mm."""
    document = Document("Title", "Stamp", "")
    flow = Flow(judged({}), document, paper_size("letter"), "Heading")
    flow.y = flow.area.bottom + room
    flow.table((1, 1), ("What", "How much"), ROWS)
    found = [words for words in pages(document.written()) if "What" in words]
    assert len(found) == 1 and all(row in found[0] for row, _ in ROWS)
    assert len(document.pages) == (1 if room == 40.0 else 2)


def test_a_table_with_room_for_two_rows_begins_where_it_is() -> None:
    document = Document("Title", "Stamp", "")
    flow = Flow(judged({}), document, paper_size("letter"), "Heading")
    flow.y = flow.area.bottom + 21.0
    flow.table((1, 1), ("What", "How much"), ROWS)
    first, second = pages(document.written())
    assert "row 2" in first and "row 3" not in first and "What" in second and "row 3" in second
