"""A question that must be answered before going on."""

from collections.abc import Sequence
from typing import ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.content import Content
from textual.screen import ModalScreen
from textual.widgets import OptionList, Static
from textual.widgets.option_list import Option

from wizard.desk.words import plain


class Ask(ModalScreen[str]):
    """Asks, and closes with the name of the answer chosen; Escape chooses `instead`."""

    BINDINGS: ClassVar[list[BindingType]] = [Binding("escape", "instead", show=False)]

    def __init__(self, title: str, text: str, answers: Sequence[tuple[str, str]], *, instead: str) -> None:
        """answers: (name, words) of each, the safest first."""
        super().__init__()
        self._question, self._text, self._answers, self._instead = title, text, answers, instead

    def compose(self) -> ComposeResult:
        """Question, reason, answers."""
        with Vertical(id="box"):
            yield Static(plain(self._question, "bold"), markup=False)
            yield Static(plain(self._text), id="reason", markup=False)
            yield OptionList(
                *(Option(Content(words), id=name) for name, words in self._answers), markup=False, compact=True
            )
            yield Static(plain("Up and down, then Enter. Escape goes back.", "$foreground 65%"), markup=False)

    def on_option_list_option_selected(self, event: OptionList.OptionSelected) -> None:
        """Close with the answer."""
        self.dismiss(event.option_id or self._instead)

    def action_instead(self) -> None:
        """Close with the answer that changes nothing."""
        self.dismiss(self._instead)
