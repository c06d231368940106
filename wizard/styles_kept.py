"""What the style sheet gives to a widget is worked out once for all that stand alike."""

from typing import Any

from textual.css.stylesheet import Stylesheet
from textual.dom import DOMNode


class ReadOnce(Stylesheet):
    """The style sheet, read once for a theme.

    Textual reads it anew for a theme in a copy, so that a fault in it changes nothing, and then once more when the first widget
    of another kind comes: what it had read is not in the copy's memory but in its own.
    """

    def reparse(self) -> None:
        """Read it with the theme's colours; what comes later reads only what it brings."""
        self.parse()


class StylesKept(dict[Any, Any]):
    """The memory that Textual's style sheet takes while it styles new widgets, kept for all pages to come.

    Its own lasts for one call and one parent, and a page's entries have a row each for parent. Which rules hold for a widget
    follows from its type, name, classes and state and from those of all around it; so that is the key, in place of the
    parent itself. The colours of another theme need another memory.
    """

    def get(self, key: Any, default: Any = None) -> Any:
        """What was given to a widget that stood like this one."""
        return super().get(_by_place(key), default)

    def __setitem__(self, key: Any, rules: Any) -> None:
        super().__setitem__(_by_place(key), rules)


def _by_place(key: tuple[Any, ...]) -> tuple[Any, ...]:
    parent, *widget = key
    return (*widget, *_place(parent))


def _place(node: DOMNode | None) -> list[Any]:
    """Each widget from this one up, as far as a rule can tell it from another."""
    told: list[Any] = []
    while node is not None:
        told += (node._css_type_name, node.id, node.classes, node._pseudo_classes_cache_key)
        node = node._parent if isinstance(node._parent, DOMNode) else None
    return told
