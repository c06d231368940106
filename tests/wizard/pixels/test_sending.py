"""What is sent, read back as a terminal would."""

import pytest
from PIL import Image

from tests.support.shown_pixels import Shown, kitty, sixels, taken_away
from wizard.pixels.answers import Able
from wizard.pixels.layer import Layer

RED, GREEN, BLUE = (255, 0, 0), (0, 255, 0), (0, 0, 255)
CELL = (5, 7)
BOTH = pytest.mark.parametrize("how", ["kitty", "sixel"])


def able(how: str, largest: tuple[int, int] = (1000, 1000)) -> Able:
    return Able("kitty" if how == "kitty" else "sixel", CELL, largest=largest)


def picture(columns: int = 12, rows: int = 15) -> Image.Image:
    """Red, with a green block of cells from (2, 1) to (4, 3) and a free one from (6, 8) to (9, 9)."""
    image = Image.new("RGBA", (columns * CELL[0], rows * CELL[1]), RED)
    image.paste(GREEN, (2 * 5, 1 * 7, 4 * 5, 3 * 7))
    image.paste((*RED, 0), (6 * 5, 8 * 7, 9 * 5, 9 * 7))
    return image


def shown(how: str, sent: str) -> list[Shown]:
    return kitty(sent) if how == "kitty" else sixels(sent)


def on_screen(pictures: list[Shown]) -> dict[tuple[int, int], tuple[int, int, int]]:
    """Pixels of the whole screen."""
    return {
        (one.column * CELL[0] + x, one.row * CELL[1] + y): colour
        for one in pictures
        for (x, y), colour in one.pixels.items()
    }


def expected(image: Image.Image, at: tuple[int, int]) -> dict[tuple[int, int], tuple[int, int, int]]:
    found = {}
    for y in range(image.height):
        for x in range(image.width):
            pixel = image.getpixel((x, y))
            assert isinstance(pixel, tuple)
            if pixel[3]:
                found[at[0] * CELL[0] + x, at[1] * CELL[1] + y] = (pixel[0], pixel[1], pixel[2])
    return found


@BOTH
@pytest.mark.parametrize("largest", [(1000, 1000), (23, 1000)])
def test_every_pixel_stands_where_it_belongs_and_free_cells_stay_free(how: str, largest: tuple[int, int]) -> None:
    image = picture()
    sent = Layer(1).shows(image, able(how, largest), (30, 4))
    assert on_screen(shown(how, sent)) == expected(image, (30, 4))


def test_no_sixel_picture_is_larger_than_the_terminal_takes() -> None:
    sent = Layer(1).shows(picture(), able("sixel", (23, 1000)), (0, 0))
    assert {one.wide for one in sixels(sent)} == {20}  # four columns of 5 px


@BOTH
def test_the_cursor_is_where_it_was(how: str) -> None:
    sent = Layer(1).shows(picture(), able(how), (0, 0))
    assert sent.count("\x1b7") == sent.count("\x1b8") == len(shown(how, sent))
    assert sent.endswith("\x1b8")


def test_sixels_have_no_more_colours_than_the_terminal_has_and_the_largest_areas_keep_theirs() -> None:
    """Twenty stripes from 19 px down to none wide; a share of a hundredth is 2.55 of 255."""
    image = Image.new("RGBA", (250, 70), RED)
    stripes, left = [], 0
    for wide in range(19, -1, -1):
        stripes.append((11 * wide, 255 - 12 * wide, 128))
        image.paste(stripes[-1], (left, 0, left + wide, 70))
        left += wide
    sent = Layer(1).shows(image, Able("sixel", CELL, 8), (0, 0))
    shown_in = {colour for one in sixels(sent) for colour in one.pixels.values()}
    assert len(shown_in) <= 8
    for stripe in stripes[:6]:
        assert any(all(abs(a - b) <= 2 for a, b in zip(stripe, colour, strict=True)) for colour in shown_in), stripe


@BOTH
def test_what_did_not_change_is_not_sent_again(how: str) -> None:
    layer, image = Layer(1), picture()
    layer.shows(image, able(how), (0, 0))
    assert layer.shows(picture(), able(how), (0, 0)) == ""
    image.paste(BLUE, (0, 8 * 7, 5, 9 * 7))  # in the second six rows of cells
    again = shown(how, layer.shows(image, able(how), (0, 0)))
    assert [(one.column, one.row) for one in again] == [(0, 6)]


@BOTH
def test_what_text_was_written_over_is_sent_again(how: str) -> None:
    layer, image = Layer(1), picture()
    layer.shows(image, able(how), (0, 0))
    layer.spoilt(11, 13)  # in the second and third
    again = shown(how, layer.shows(image, able(how), (0, 0)))
    assert [one.row for one in again] == [6, 12]
    assert layer.shows(image, able(how), (0, 0)) == ""


def test_kitty_is_told_to_take_the_picture_away_and_then_gets_it_whole_again() -> None:
    layer = Layer(1)
    names = [one.name for one in kitty(layer.shows(picture(), able("kitty"), (0, 0)))]
    assert len(set(names)) == 3 and 0 not in names
    assert taken_away(layer.taken_away()) == names
    assert layer.taken_away() == ""
    assert len(kitty(layer.shows(picture(), able("kitty"), (0, 0)))) == 3


def test_a_smaller_picture_leaves_nothing_of_the_larger() -> None:
    layer = Layer(1)
    names = [one.name for one in kitty(layer.shows(picture(), able("kitty"), (0, 0)))]
    sent = layer.shows(picture(rows=6), able("kitty"), (0, 0))
    assert set(taken_away(sent)) >= set(names[1:])


def test_a_picture_that_moves_does_not_stay_where_it_was() -> None:
    layer = Layer(1)
    names = [one.name for one in kitty(layer.shows(picture(), able("kitty"), (0, 0)))]
    sent = layer.shows(picture(), able("kitty"), (3, 0))
    assert taken_away(sent) == names
    assert {one.column for one in kitty(sent)} == {3}


def test_two_pictures_have_different_names() -> None:
    one, other = (kitty(Layer(base).shows(picture(), able("kitty"), (0, 0))) for base in (1, 2))
    assert not {each.name for each in one} & {each.name for each in other}
