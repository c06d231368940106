"""The colours of the program. `look.tcss` says where they go."""

from textual.theme import Theme

LOOK = Theme(
    name="workbench",
    primary="#6fa8c9", secondary="#c9a36f", accent="#e3b34c", foreground="#ecebe6", background="#15191c",
    surface="#232a2f", panel="#20262b", success="#86cf86", warning="#f2bd55", error="#ff7a6b", dark=True,
)  # fmt: skip
