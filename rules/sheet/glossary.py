"""What else builders call the things on a sheet. Common practice, no source: words heard in shops and printed in catalogues.

One thing has one name in the program; the others are known to the search, to `buildsheet explain` and to help.
"""

import re
from collections.abc import Mapping

ALSO_CALLED: Mapping[str, tuple[str, ...]] = {
    "ackermann": ("ackerman", "akerman"),
    "arm": ("wishbone", "control arm", "a-arm"),
    "backspacing": ("back space", "rear space"),
    "bolt circle": ("bolt pattern", "stud pattern", "PCD", "pitch circle"),
    "bump": ("jounce", "compression"),
    "caliper": ("calliper",),
    "camber": ("camber angle",),
    "castor": ("caster",),
    "centre": ("center",),
    "droop": ("rebound", "extension"),
    "ground offset": ("scrub radius", "scrub", "kingpin offset"),
    "hub": ("wheel bearing unit",),
    "inclination": ("steering-axis inclination", "SAI", "kingpin inclination", "KPI", "king pin"),
    "kickback": ("kick back", "bump kick"),
    "mechanical trail": ("caster trail", "castor trail"),
    "nut seat": ("lug nut taper", "cone seat"),
    "offset": ("ET",),
    "pivot": ("kingpin", "ball joint", "uniball", "heim joint"),
    "plate": ("mounting plate",),
    "rotor": ("disc", "disk", "brake disc"),
    "self centring": ("self centering", "returnability"),
    "shock": ("damper", "coil-over", "coilover"),
    "snout": ("stub axle", "spindle snout"),
    "spindle": ("wheel centre", "wheel center"),
    "spring ratio": ("motion ratio", "installation ratio"),
    "stud": ("wheel stud", "lug bolt"),
    "tie rod": ("track rod", "tierod"),
    "track": ("tread width",),
    "travel": ("wheel travel",),
    "tyre": ("tire",),
    "upright": ("knuckle", "steering knuckle", "spindle", "hub carrier"),
    "wheel": ("rim",),
}
"""The word the program uses, in lower case, and the others. A word may stand for several things: each then has it."""


def plain_words(text: str) -> str:
    """Lower case, with a space in place of `-`, `_` and other marks, so that `tie_rod` and `tie-rod` are one.

    >>> plain_words("Tie-rod end: wheel.centre_bore")
    'tie rod end wheel centre bore'
    """
    return " ".join(re.findall(r"[^\W_]+", text.casefold()))


def also_called(text: str) -> tuple[str, ...]:
    """The other words for what a label or a name speaks of.

    >>> also_called("Castor")
    ('caster',)
    """
    words = plain_words(text)
    found = (others for term, others in ALSO_CALLED.items() if re.search(rf"\b{term}s?\b", words))
    return tuple(dict.fromkeys(other for others in found for other in others))
