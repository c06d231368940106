"""Keys, declared once: what is pressed, what it does, and how the key line, help and the page of all keys print it."""

from collections.abc import Iterable

from textual.binding import Binding, BindingType

from rules.measure.records import dataclass

PRINTED = {
    "escape": ("Escape", "Esc"), "enter": ("Enter", "Enter"), "tab": ("Tab", "Tab"), "delete": ("Delete", "Delete"),
    "up": ("Up", "↑"), "down": ("Down", "↓"), "left": ("Left", "←"), "right": ("Right", "→"), "home": ("Home", "Home"),
    "end": ("End", "End"), "pageup": ("Page Up", "PgUp"), "pagedown": ("Page Down", "PgDn"), "space": ("Space", "Space"),
    "backspace": ("Backspace", "Backspace"),
}  # fmt: skip
"""A key's name in full, and short for the key line."""


def printed(key: str) -> str:
    """One key in words.

    >>> printed("ctrl+g"), printed("shift+left"), printed("f1"), printed("w")
    ('Ctrl+g', 'Shift+Left', 'F1', 'w')
    """
    *held, last = key.split("+")
    name = PRINTED[last][0] if last in PRINTED else last.upper() if len(last) > 1 else last
    return "+".join([*(one.capitalize() for one in held), name])


def short(key: str) -> str:
    """One key as the key line prints it.

    >>> short("ctrl+g"), short("pageup"), short("f1")
    ('^g', 'PgUp', 'F1')
    """
    if key.startswith("ctrl+"):
        return f"^{key.removeprefix('ctrl+')}"
    return PRINTED[key][1] if key in PRINTED else printed(key)


@dataclass(frozen=True, slots=True)
class Key:
    """keys: as Textual names them, with commas between. action: what it runs; without a dot, one of the screen's own.

    does: what it does, in words. word: the same in a word or two, for the key line. told: a list or an entry answers to
    the key by itself; here it is only told of, and clicked. first: before an entry takes the key for itself.
    """

    keys: str
    action: str
    does: str
    word: str = ""
    told: bool = False
    first: bool = False

    @property
    def names(self) -> str:
        """The keys in words: "F1 or Ctrl+g"."""
        each = [printed(key) for key in self.keys.split(",")]
        return (" or " if len(each) == 2 else ", ").join(each)

    @property
    def short(self) -> str:
        """The first of the keys, short."""
        return short(self.keys.split(",")[0])

    @property
    def run(self) -> str:
        """The action with whose it is; empty where there is nothing to run."""
        return self.action if "." in self.action or not self.action else f"screen.{self.action}"


def bindings(keys: Iterable[Key]) -> list[BindingType]:
    """What a screen or a widget listens to."""
    return [Binding(key.keys, key.action, key.does, show=False, priority=key.first) for key in keys if not key.told]


Shown = Key | tuple[Key, ...]
"""One place of the key line: a key, or several with one word, that of the first."""
ALL_KEYS = Key("ctrl+p", "app.all_keys", "all keys of this page, as a list to pick from", "all keys")
QUIT = Key("ctrl+q", "app.quit", "save and quit", "quit", first=True)
LOOK = Key("f11", "app.next_look", "colours on a dark or on a light ground")
APP = (ALL_KEYS, LOOK, QUIT)
"""Keys that work everywhere."""
BACK = Key("escape", "back", "back", "back")
MORE = Key("ctrl+d", "more", "open or close the rows set aside on this step", first=True)
TAKE_ALL = Key("ctrl+e", "take_all", "take over all that stands grey in the rows in sight", first=True)
TYPING = (
    Key("enter", "", "take the answer, and on to the next row or step", told=True),
    Key("tab,shift+tab,up,down", "", "move between entries", told=True),
    Key("=", "", "in an empty row: take over what stands grey, or a start value that fits", told=True),
    Key("left,right", "", "choose; the underlined letters choose too", told=True),
    Key("delete,backspace", "", "take a choice away", told=True),
    Key("ctrl+j", "", "a new line, in a text of several lines", told=True),
)
"""Keys of an entry."""
