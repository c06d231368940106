"""The colours of a picture, on a dark and on a light ground: a colour for each kind of part that must be told apart.

They are chosen by their distance: also as red-, green- and blue-blind people see them no two are near (`tests/wizard/desk/
test_picture_colours.py`). Place, shape and words say the same: a label, a hatched area, a dashed edge, a line of text.
"""

from collections.abc import Mapping
from typing import Literal

from rules.drawn.scene import PartDrawn

ToldApart = Literal["tyre", "wheel", "brake", "metal", "linkage", "axis", "lit", "clash"]
Colours = Mapping[ToldApart, str]
KIND_OF: Mapping[PartDrawn, ToldApart] = {
    "tyre": "tyre", "rim": "wheel", "rotor": "brake", "caliper": "brake", "hub": "metal", "plate": "metal", "arm": "metal",
    "tie rod": "linkage", "shock": "linkage", "pivot": "axis", "axis": "axis", "gap": "axis", "lit": "lit", "clash": "clash",
}  # fmt: skip
"""What is not named here are quiet lines: the frame, the ground, lines of reference."""
QUIET: Mapping[PartDrawn, int] = {"frame": 60, "ground": 70, "centre line": 45, "dimension": 70}
"""Of the colour of the page's letters, in per cent."""
BOLD: frozenset[PartDrawn] = frozenset(("plate", "arm", "tie rod", "pivot", "axis", "gap", "lit", "clash"))
ON_DARK: Colours = {
    "tyre": "#8c9591", "wheel": "#826cf8", "brake": "#a9772a", "metal": "#ecebe6", "linkage": "#629bbe", "axis": "#f7da59",
    "lit": "#9bc7a5", "clash": "#ff7a6b",
}  # fmt: skip
ON_LIGHT: Colours = {
    "tyre": "#504e55", "wheel": "#8b56b9", "brake": "#381301", "metal": "#1d2326", "linkage": "#02375d", "axis": "#79720f",
    "lit": "#407b62", "clash": "#8d2e33",
}  # fmt: skip


def component(part: PartDrawn) -> str:
    """The name of a part's style.

    >>> component("tie rod")
    'drawn--tie-rod'
    """
    return f"drawn--{part.replace(' ', '-')}"


def style_sheet(widget: str) -> str:
    """The colours as the style sheet of a widget."""
    rules = [f"{widget} > .{component(part)} {{ color: $foreground {share}%; }}" for part, share in QUIET.items()]
    for part, kind in KIND_OF.items():
        name, bold = component(part), "text-style: bold;" if part in BOLD else ""
        rules.append(f"{widget} > .{name} {{ color: {ON_DARK[kind]}; {bold} }}")
        rules.append(f"{widget}:light > .{name} {{ color: {ON_LIGHT[kind]}; }}")
    return "\n".join(rules)
