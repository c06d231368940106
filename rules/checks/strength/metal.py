"""Is the strength of the metal known."""

from rules.graph.declare import check
from rules.graph.results import Judgement, NotJudged, Waits
from rules.measure.units import MPa
from rules.tables import sources
from rules.tables.materials import BESIDE_WELD, Metal


@check(
    "metal-known",
    step="upright",
    title="Strength of the metal is on paper",
    good="the yield is off the certificate of this very metal",
    watch="a published minimum is assumed",
    source=sources.COMMON_PRACTICE.saying("bar of unknown origin has unknown strength"),
)
def metal_known(
    strength_asked: bool | None,
    upright_yield: MPa | None,
    upright_material: Metal | None,
    certificate_yield: MPa | None,
) -> Judgement:
    """Whether the yield used is the builder's own metal's. Beside a weld the softest published state counts."""
    if upright_material is None and certificate_yield is None:
        if strength_asked:
            raise Waits("upright.material")
        raise NotJudged("the metal of the upright is not entered", "upright.material")
    if upright_yield is None:
        raise Waits("upright_yield")
    text = "{upright_yield} of yield is counted on after welding."
    rows = () if upright_material is None or upright_material == "other" else BESIDE_WELD[upright_material]
    figures = {f"row_{at}": (row.yields, "MPa") for at, row in enumerate(rows)} if len(rows) > 1 else {}
    if figures:
        named = [f"{{row_{at}}} in {row.printed[0].key}" for at, row in enumerate(rows)]
        text += f" Beside a weld sources differ, and the lowest counts: {', '.join(named)}."
    if certificate_yield is None:
        return Judgement(
            "watch", f"{text} It is a published least figure for the metal.", "Ask for the mill certificate.", figures
        )
    if upright_material == "other":
        return Judgement(
            "watch", f"{text} Nothing is published here for this metal after welding.",
            "Have somebody who answers for it confirm the figure beside a weld.",
        )  # fmt: skip
    return Judgement("good", text, figures=figures)
