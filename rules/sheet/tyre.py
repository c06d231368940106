"""The tyres the upright must suit."""

from rules.graph.asking import Step, ask
from rules.measure.marks import TyreMark
from rules.measure.units import Kg, Mm, Price


class Tyre(Step):
    """Smallest and largest tyre, and what their maker says."""

    name = "tyre"
    bought = "tyre"
    title = "Tyre"
    intro = (
        "The tyre comes first: its size sets the height of the wheel centre, and so where the steering axis meets the "
        "ground. Give the smallest and the largest tyre you will ever fit; the layout is drawn for the middle."
    )
    cautions = (
        "Never fit a tyre to a rim its maker does not list, nor a 16 in tyre to a 16.5 in rim.",
        "Printed sizes are not measured sizes. Mount one and measure it before metal is cut.",
    )

    smallest: TyreMark = ask(
        "Smallest tyre",
        "tyre mark",
        "The size mark on the sidewall of the smallest tyre you will run. Load index and speed letter may follow it.",
    )
    largest: TyreMark = ask(
        "Largest tyre",
        "tyre mark",
        "The size mark of the largest tyre you will run. The same as the smallest if there is only one.",
    )
    design_diameter: Mm = ask(
        "Design tyre diameter",
        "length",
        "Outside diameter the layout is drawn for. Leave empty to use the middle of the two tyres.",
        may_be_empty=True,
        between=("300 mm", "1600 mm"),
        usual=("500 mm", "1050 mm"),
        reading_error="3 mm",
        bought="",
    )
    loaded_radius: Mm = ask(
        "Loaded radius",
        "length",
        "Ground to wheel centre with the design tyre at running pressure under the real load. Half the diameter is "
        "used until it is measured.",
        may_be_empty=True,
        between=("120 mm", "800 mm"),
        usual=("240 mm", "520 mm"),
        reading_error="3 mm",
    )
    rim_width_least: Mm = ask(
        "Narrowest rim allowed",
        "length",
        "From the tyre maker's list for this exact tyre: the narrowest rim, bead seat to bead seat.",
        between=("60 mm", "600 mm"),
        usual=("4 in", "12 in"),
        mark="rim width",
    )
    rim_width_most: Mm = ask(
        "Widest rim allowed",
        "length",
        "From the same list: the widest rim.",
        between=("60 mm", "600 mm"),
        usual=("5 in", "14 in"),
        mark="rim width",
    )
    load_capacity: Kg = ask(
        "Load one tyre may carry",
        "mass",
        "From the sidewall, at the pressure you will run. Leave empty to use the load index in the size marks.",
        may_be_empty=True,
        between=("50 kg", "5000 kg"),
        usual=("300 kg", "1900 kg"),
    )
    speed_symbol: str = ask(
        "Speed symbol",
        "speed symbol",
        "The letter after the load index on the sidewall. Leave empty if it is in the size mark.",
        may_be_empty=True,
    )
    price_each: Price = ask("Price each", "price", "What one tyre costs, fitted.", may_be_empty=True)
