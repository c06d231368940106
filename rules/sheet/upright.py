"""What the upright and its arms are made of, where their strength is judged."""

from typing import Literal

from rules.graph.asking import Step, ask
from rules.measure.units import Mm, MPa, Share
from rules.tables.materials import Metal

Beam = Literal["none", "box", "channel", "tube"]
HubBoltAccess = Literal["access holes", "welded nuts", "studs"]
BeamCut = Literal["not cut", "face on the plate", "both faces"]
ArmForm = Literal["flat bar", "round bar", "box", "round tube"]


class Upright(Step):
    """The upright as a carrying part. A sheet is finished without any of it."""

    name = "upright"
    title = "Upright strength"
    intro = (
        "The plate with its beam, the steering arm, the caliper bracket and the snout, each at the place where it is "
        "weakest. The plate's own sizes come from the plate step, the loads from the loads step. All of this may stay "
        "empty: what is left empty is not judged."
    )
    cautions = (
        "These figures inform; they certify nothing. Loads off road can exceed any multiple.",
        "They count one hard hit, not years of small ones: a weld cracks at its edge long before the metal yields. Look at "
        "every weld after the first runs, and again all season.",
        "Where the rules or the road ask for an engineer, the engineer decides, not this sheet.",
    )

    material: Metal = ask(
        "Metal of the upright",
        "choice",
        "Metal and condition off the certificate; DOM tube is 1020 or 1026 drawn tube. If nobody knows, it is other.",
        may_be_empty=True,
    )
    certificate_yield: MPa = ask(
        "Yield strength, certificate",
        "pressure",
        "The yield printed on the mill certificate of this very metal. For other: the yield left beside a weld, from "
        "somebody who answers for it.",
        may_be_empty=True,
        between=("100 MPa", "1600 MPa"),
        usual=("230 MPa", "700 MPa"),
    )
    beam: Beam = ask(
        "Beam on the back of the plate",
        "choice",
        "What is welded up the inboard face of the plate, behind the hub, along its whole length; none is plate alone. A "
        "channel counts only with its toes on the plate.",
        may_be_empty=True,
    )
    beam_width: Mm = ask(
        "Beam width, fore and aft",
        "length",
        "Across the beam, fore and aft; for a tube its outside diameter. By name too: 1 3/4 x 0.120 tube, 3 x 2 x 1/4 box.",
        may_be_empty=True,
        mark="section",
        between=("10 mm", "200 mm"),
        usual=("30 mm", "120 mm"),
        reading_error="0.2 mm",
    )
    beam_depth: Mm = ask(
        "Beam depth",
        "length",
        "From the plate's back to the beam's inboard face. Not asked for a tube.",
        may_be_empty=True,
        between=("8 mm", "150 mm"),
        usual=("25 mm", "100 mm"),
        reading_error="0.2 mm",
    )
    beam_wall: Mm = ask(
        "Beam wall thickness",
        "length",
        "Vernier on a cut end, burr off. The thinnest place counts.",
        may_be_empty=True,
        between=("1 mm", "20 mm"),
        usual=("3 mm", "13 mm"),
        reading_error="0.05 mm",
    )
    beam_corner_radius: Mm = ask(
        "Outside corner radius of the box",
        "length",
        "Radius gauge on the box's outside corner. Empty counts as twice the wall, as rolled.",
        may_be_empty=True,
        between=("0 mm", "40 mm"),
        usual=("0 mm", "20 mm"),
        reading_error="0.5 mm",
    )
    beam_to_pivots: bool = ask(
        "Beam runs past both pivots",
        "yes or no",
        "Does the beam reach beyond both pivots' heights in full section? Empty counts as no: the plate alone there.",
        may_be_empty=True,
    )
    beam_top: Mm = ask(
        "Beam end above wheel centre",
        "length",
        "Only where the beam stops short of a pivot: straight up from the wheel centre to where its full section ends.",
        may_be_empty=True,
        further=True,
        between=("10 mm", "500 mm"),
        usual=("55 mm", "105 mm"),
        reading_error="1 mm",
    )
    beam_bottom: Mm = ask(
        "Beam end below wheel centre",
        "length",
        "Only where the beam stops short of a pivot: straight down from the wheel centre to where its full section ends.",
        may_be_empty=True,
        further=True,
        between=("10 mm", "500 mm"),
        usual=("55 mm", "105 mm"),
        reading_error="1 mm",
    )
    beam_cut: BeamCut = ask(
        "Beam cut by the centre bore",
        "choice",
        "What the hub's bore takes of the beam. Empty counts as a box's face on the plate; a channel has none there.",
        may_be_empty=True,
        further=True,
    )
    hub_bolt_access: HubBoltAccess = ask(
        "Way to the hub bolts",
        "choice",
        "Only where the hub bolts' heads stand under the beam: how they are held or reached. Empty counts as no way.",
        may_be_empty=True,
    )
    section_above: Mm = ask(
        "Weakest level above wheel centre",
        "length",
        "Straight up from the wheel centre to the level just clear of the hub and its bolts, where the upright is weakest.",
        may_be_empty=True,
        between=("5 mm", "400 mm"),
        usual=("40 mm", "130 mm"),
        reading_error="1 mm",
    )
    section_below: Mm = ask(
        "Weakest level below wheel centre",
        "length",
        "Straight down from the wheel centre to the level just clear of the hub and its bolts, where the upright is weakest.",
        may_be_empty=True,
        between=("5 mm", "400 mm"),
        usual=("40 mm", "130 mm"),
        reading_error="1 mm",
    )
    steering_arm_form: ArmForm = ask(
        "Steering arm form",
        "choice",
        "Shape of the arm's section at its root. The arm counts as the same metal as the upright, welded on.",
        may_be_empty=True,
    )
    steering_arm_length: Mm = ask(
        "Steering arm length",
        "length",
        "From the middle of the tie-rod joint straight to the arm's root, where its weld or bolts begin.",
        may_be_empty=True,
        between=("10 mm", "400 mm"),
        usual=("60 mm", "220 mm"),
        reading_error="1 mm",
    )
    steering_arm_root_above: Mm = ask(
        "Arm's root above wheel centre",
        "length",
        "Straight up from wheel-centre height to the middle of the arm's root, where it joins the upright. Minus when below.",
        may_be_empty=True,
        between=("-400 mm", "400 mm"),
        usual=("-100 mm", "100 mm"),
        reading_error="2 mm",
    )
    steering_arm_width: Mm = ask(
        "Steering arm width at the root",
        "length",
        "Level across the arm, the way the tie rod pushes. For a round arm its diameter.",
        may_be_empty=True,
        mark="section",
        between=("5 mm", "150 mm"),
        usual=("25 mm", "100 mm"),
        reading_error="0.2 mm",
    )
    steering_arm_height: Mm = ask(
        "Steering arm height at the root",
        "length",
        "Up and down across the arm. Not asked for a round arm.",
        may_be_empty=True,
        between=("3 mm", "150 mm"),
        usual=("10 mm", "50 mm"),
        reading_error="0.2 mm",
    )
    arm_on_wall: Mm = ask(
        "Wall under the steering arm",
        "length",
        "Where the arm is welded to the middle of a box's or channel's flat wall: its thickness, with any pad. 0: it is not.",
        may_be_empty=True,
        further=True,
        between=("0 mm", "40 mm"),
        usual=("0 mm", "20 mm"),
        reading_error="0.05 mm",
    )
    arm_on_wall_width: Mm = ask(
        "Free width of that wall",
        "length",
        "Across that wall, between the insides of the walls or plates that hold its edges.",
        may_be_empty=True,
        further=True,
        between=("10 mm", "300 mm"),
        usual=("30 mm", "120 mm"),
        reading_error="0.5 mm",
    )
    seam_leg: Mm = ask(
        "Leg of beam-to-plate weld",
        "length",
        "Of the two runs that join the beam to the plate along its edges.",
        may_be_empty=True,
        further=True,
        between=("1 mm", "20 mm"),
        usual=("3 mm", "10 mm"),
        reading_error="0.5 mm",
    )
    seam_share: Share = ask(
        "Share of that seam welded",
        "percent",
        "How much of its length is welded: 100 for a run without gaps, 50 for as much gap as weld. Empty counts as 50.",
        may_be_empty=True,
        further=True,
        between=("10 %", "100 %"),
        usual=("60 %", "100 %"),
    )
    steering_arm_wall: Mm = ask(
        "Steering arm wall",
        "length",
        "Wall of a box or tube arm. Not asked for a solid bar.",
        may_be_empty=True,
        between=("1 mm", "20 mm"),
        usual=("3 mm", "10 mm"),
        reading_error="0.05 mm",
    )
    bracket_arm_length: Mm = ask(
        "Caliper bracket, free length",
        "length",
        "From the bracket's weld or bolts out to the line through the two caliper bolts.",
        may_be_empty=True,
        between=("3 mm", "250 mm"),
        usual=("22 mm", "43 mm"),
        reading_error="1 mm",
    )
    bracket_arm_width: Mm = ask(
        "Caliper bracket, width at root",
        "length",
        "Along the rotor's edge, where the bracket leaves its weld or bolts. Holes in it taken off.",
        may_be_empty=True,
        between=("10 mm", "300 mm"),
        usual=("60 mm", "200 mm"),
        reading_error="0.5 mm",
    )
    bracket_arm_offset: Mm = ask(
        "Rotor middle to bracket middle",
        "length",
        "Square across: from the middle of the rotor's thickness to the middle of the bracket's.",
        may_be_empty=True,
        between=("0 mm", "120 mm"),
        usual=("0 mm", "65 mm"),
        reading_error="0.5 mm",
    )
    snout_diameter: Mm = ask(
        "Snout diameter at its root",
        "length",
        "Only where the hub runs on a fixed snout or pin: its smallest diameter where it meets the upright.",
        may_be_empty=True,
        between=("10 mm", "120 mm"),
        usual=("30 mm", "59 mm"),
        reading_error="0.05 mm",
    )
    snout_bore: Mm = ask(
        "Bore of the snout",
        "length",
        "The largest diameter of the hole at its root, 0 where it is solid. Empty counts as two thirds of its diameter.",
        may_be_empty=True,
        further=True,
        between=("0 mm", "110 mm"),
        usual=("0 mm", "40 mm"),
        reading_error="0.1 mm",
    )
    snout_yield: MPa = ask(
        "Yield strength of the snout",
        "pressure",
        "Off the snout's certificate; beside a weld, what is left of it there.",
        may_be_empty=True,
        between=("100 MPa", "1600 MPa"),
        usual=("230 MPa", "1000 MPa"),
    )
