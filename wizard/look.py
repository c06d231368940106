"""The colours of the program, one set on a dark ground and one on a light one. `look.tcss` says where they go."""

from textual.theme import Theme

DARK = Theme(
    name="workbench",
    primary="#6fa8c9", secondary="#c9a36f", accent="#e3b34c", foreground="#ecebe6", background="#15191c",
    surface="#232a2f", panel="#20262b", success="#86cf86", warning="#f2bd55", error="#ff7a6b", dark=True,
)  # fmt: skip
LIGHT = Theme(
    name="drawing board",
    primary="#2f6f96", secondary="#8a5a14", accent="#8f5b00", foreground="#1d2326", background="#f6f4ee",
    surface="#e6e3d9", panel="#dcd8cb", success="#1f6b2a", warning="#8f5b00", error="#8d2e33", dark=False,
)  # fmt: skip
LOOKS = (DARK, LIGHT)
