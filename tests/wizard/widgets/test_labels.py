"""Where labels go, on a small field of cells."""

from wizard.widgets.labels import LabelWords, PlacedWords, place


def field(*rows: str) -> list[bytes]:
    """Cells from a sketch: a blank is free."""
    return [bytes(character != " " for character in row) for row in rows]


def lettered(placed: list[PlacedWords], width: int, height: int) -> list[str]:
    rows = [[" "] * width for _ in range(height)]
    for label in placed:
        for row, line in enumerate(label.lines, start=label.row):
            for column, character in enumerate(line, start=label.column):
                if character != " ":
                    assert rows[row][column] == " "
                    rows[row][column] = character
    return ["".join(row).rstrip() for row in rows]


def test_a_cell_stays_free_between_a_line_and_its_label() -> None:
    drawn = field("     |       ")
    assert lettered(place([LabelWords("rim", None, 5, 0, True, 1)], drawn, 13), 13, 1) == ["       rim"]
    assert lettered(place([LabelWords("rim", None, 5, 0, False, 1)], drawn, 13), 13, 1) == [" rim"]


def test_a_label_may_touch_the_edge_of_the_picture() -> None:
    drawn = field("    |    ")
    assert lettered(place([LabelWords("hub", None, 4, 0, False, 1)], drawn, 9), 9, 1) == ["hub"]
    assert lettered(place([LabelWords("hub", None, 4, 0, True, 1)], drawn, 9), 9, 1) == ["      hub"]


def test_a_taken_row_sends_the_label_to_the_next_free_one() -> None:
    drawn = field(" | ==== = ", " | ==== = ", " |        ")
    assert lettered(place([LabelWords("rotor", None, 1, 1, True, 1)], drawn, 10), 10, 3) == ["", "", "   rotor"]


def test_a_label_goes_no_further_than_two_rows_from_what_it_names() -> None:
    drawn = field("|     ", "|=====", "|=====", "|=====")
    assert place([LabelWords("hub", None, 0, 3, True, 1)], drawn, 6) == []
    assert len(place([LabelWords("hub", None, 0, 2, True, 1)], drawn, 6)) == 1


def test_a_figure_goes_below_its_name_where_one_line_is_too_long() -> None:
    drawn = field(*["|" + " " * 15] * 3)
    placed = place([LabelWords("ground offset", "30 mm", 0, 1, True, 1)], drawn, 16)
    assert [line.rstrip() for line in placed[0].lines] == ["ground offset", "30 mm"]


def test_lines_on_the_left_end_together() -> None:
    drawn = field(*[" " * 15 + "|"] * 3)
    (placed,) = place([LabelWords("ground offset", "30 mm", 15, 1, False, 1)], drawn, 16)
    assert placed.lines == ("ground offset", "        30 mm")


def test_other_words_keep_a_row_away_from_a_label_of_two_lines() -> None:
    drawn = field(*["|" + " " * 15] * 5)
    labels = [LabelWords("ground offset", "30 mm", 0, 0, True, 1), LabelWords("rotor", None, 0, 2, True, 1)]
    assert [row.strip() for row in lettered(place(labels, drawn, 16), 16, 5)] == [
        "ground offset", "30 mm", "", "rotor", "",
    ]  # fmt: skip


def test_a_label_of_two_lines_keeps_a_row_away_from_words_already_there() -> None:
    drawn = field(*["|" + " " * 15] * 4)
    labels = [LabelWords("rotor", None, 0, 0, True, 1), LabelWords("ground offset", "30 mm", 0, 1, True, 1)]
    assert [row.strip() for row in lettered(place(labels, drawn, 16), 16, 4)] == [
        "rotor", "", "ground offset", "30 mm",
    ]  # fmt: skip


def test_a_label_far_from_what_it_names_gets_a_leader_through_free_cells() -> None:
    drawn = field("|    #        ")
    (placed,) = place([LabelWords("rim", None, 0, 0, True, 1)], drawn, 14)
    assert placed.leader == (0, 1, 5)
    (near,) = place([LabelWords("rim", None, 0, 0, True, 1)], field("|             "), 14)
    assert near.leader is None
