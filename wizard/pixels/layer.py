"""What of a widget's picture stands on the screen in pixels, so that only what changed is sent again."""

from typing import TYPE_CHECKING

from wizard.pixels.answers import Able
from wizard.pixels.sending import PicturePiece, palette, pieces, sent, taken_away

if TYPE_CHECKING:
    from PIL.Image import Image


class Layer:
    """The pieces of one picture."""

    def __init__(self, base: int) -> None:
        """base: a number no other picture on the screen has."""
        self._base = base
        self._standing: dict[int, PicturePiece] = {}
        self._at = (0, 0)
        self._able: Able | None = None

    def shows(self, image: "Image", able: Able, at: tuple[int, int]) -> str:
        """What has to be sent so that the picture stands there. at: column and row on the screen."""
        cleared = "" if (able, at) == (self._able, self._at) else self.taken_away()
        self._able, self._at = able, at
        new = {piece.number: piece for piece in pieces(image, able)}
        changed = [piece for number, piece in new.items() if not _alike(piece, self._standing.get(number))]
        gone = set(self._standing) - set(new)
        self._standing = new
        colours = palette(image, able.colours) if changed and able.how == "sixel" else None
        put = "".join(sent(piece, able, at, self._base, colours) for piece in changed)
        return cleared + taken_away(gone, able, self._base) + put

    def spoilt(self, top: int, bottom: int) -> None:
        """Text was written in these rows of the widget, the last not included: what stood there must be sent again."""
        for number, piece in self._standing.items():
            if piece.meets(top, bottom):
                self._standing[number] = piece.without_image()

    def taken_away(self) -> str:
        """What takes the whole picture off the screen."""
        told = taken_away(self._standing, self._able, self._base) if self._able else ""
        self._standing = {}
        return told


def _alike(one: PicturePiece, other: PicturePiece | None) -> bool:
    if other is None or other.image is None or one.image is None or one.image.size != other.image.size:
        return False
    return one.image.tobytes() == other.image.tobytes()
