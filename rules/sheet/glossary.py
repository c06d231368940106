"""What else builders call the things on a sheet. Common practice, no source: words heard in shops and printed in catalogues.

One thing has one name in the program; the others are known to the search, to `buildsheet explain` and to help.
"""

import re
from collections.abc import Iterable, Mapping

ALSO_CALLED: Mapping[str, tuple[str, ...]] = {
    "ackermann": ("ackerman", "akerman"),
    "arm": ("wishbone", "control arm", "a-arm"),
    "arms the relay rod hangs on": ("pitman arm", "idler arm"),
    "backspacing": ("back space", "backspace", "rear space"),
    "bolt circle": ("bolt pattern", "stud pattern", "lug pattern", "PCD", "pitch circle"),
    "bump rubber": ("bump stop", "bumpstop"),
    "braking band": ("friction ring", "swept area"),
    "bump": ("jounce", "compression"),
    "caliper": ("calliper",),
    "camber": ("camber angle",),
    "castor": ("caster", "caster angle", "castor angle"),
    "centre": ("center",),
    "centre of gravity": ("CG", "centre of mass", "center of mass"),
    "droop": ("rebound", "extension"),
    "gap": ("clearance",),
    "ground offset": ("scrub radius", "scrub", "kingpin offset"),
    "hat": ("bell",),
    "hub": ("wheel bearing unit",),
    "hub face": ("flange face", "wheel flange"),
    "inclination": ("steering-axis inclination", "SAI", "kingpin inclination", "KPI", "king pin"),
    "kickback": ("kick back", "bump kick"),
    "mechanical trail": ("caster trail", "castor trail"),
    "misalignment angle": ("joint swing", "joint articulation", "swivel angle"),
    "mounting face": ("mount face", "knuckle flange"),
    "nut seat": ("lug nut taper", "cone seat"),
    "offset": ("ET",),
    "pivot": ("kingpin", "ball joint", "uniball", "heim joint", "rose joint"),
    "plate": ("mounting plate",),
    "price": ("cost",),
    "relay rod": ("centre link", "center link", "drag link"),
    "rim effort": ("steering-wheel effort", "pull on the steering wheel"),
    "rotor": ("disc", "disk", "brake disc"),
    "self centring": ("self centering", "returnability"),
    "shock": ("damper", "coil-over", "coilover"),
    "smallest tyre": ("tyre size", "tire size"),
    "largest tyre": ("tyre size", "tire size"),
    "load one tyre may carry": ("load index", "load rating"),
    "speed symbol": ("speed rating",),
    "snout": ("stub axle", "spindle snout"),
    "spring ratio": ("motion ratio", "installation ratio"),
    "stud": ("wheel stud", "lug bolt"),
    "stub shaft nut": ("axle nut",),
    "tie rod": ("track rod", "tierod"),
    "track": ("tread width",),
    "travel": ("wheel travel",),
    "tyre": ("tire",),
    "upright": ("knuckle", "steering knuckle", "spindle", "hub carrier"),
    "weakest part": ("gives first",),
    "wheel": ("rim",),
    "wheel centre": ("spindle", "spindle centre", "wheel center"),
    "wheel nut": ("lug nut",),
}
"""The word the program uses, in lower case, and the others. A word may stand for several things: each then has it."""

BESIDE_LABEL: Mapping[str, str] = {"Castor": "caster", "Ground offset": "scrub radius"}
"""A label, and the other word that its row shows behind it: what half of the builders look for."""

INSTEAD_OF: Mapping[str, str] = {
    r"(?i)\bspindles?\b": "wheel centre (many call the upright a spindle), or the wheel's axis",
    r"(?i)\bking ?pins?\b|\bKPI\b|\bSAI\b": "steering-axis inclination, steering axis",
    r"(?i)(?<!castor \()\bcaster\b": "castor, in a label castor (caster)",
    r"(?i)(?<!ground offset \()\bscrub radius\b": "ground offset, in a label ground offset (scrub radius)",
    r"(?i)\bflange'?s? face\b|\bflange's own face\b": "hub face",
    r"(?i)\bmount face\b|(?<!wheel )(?<!wheel's )(?<!its )(?<!hub's )\bmounting face\b(?! of the (?:hub|wheel)\b)":
        "mounting face of the hub",
    r"(?i)\bjoints?'?s? (?:swings?|articulat\w+)\b|\bswings? of (?:the|a|every) joint\b|\bswing angle": "misalignment angle",
    r"(?i)\bweld(?:ed|ing)? joints?\b|\bjoints? (?:is|are|will really be|to be) welded\b": "weld",
    r"(?i)\b(?:inside|digital|dial|slide) calipers?\b|\bcaliper (?:across|on (?:the bare|the flange|the ear|a cut))"
    r"|\b(?:micrometer|gauge) or caliper\b|\bcaliper or micrometer\b": "vernier, where the tool is meant",
    r"(?i)\b(?:effort|pull|force) (?:at|on) the (?:steering wheel|steering wheel's rim|rim)\b|\brim (?:pull|effort)\b"
    r"|\bhand force\b": "steering-wheel effort",
    r"(?i)\b(?:least|worst|narrowest|tightest|minimum) (?:gaps?|room|clearances?)\b|\bsmallest (?:room|clearances?)\b":
        "smallest gap",
    r"(?i)\bgives? first\b|\bfirst to give\b|\bweakest link\b": "weakest part",
    r"(?i)\bfriction rings?\b|\bswept (?:face|band|area)s?\b|\brubbed faces?\b|\bbrak(?:e|ing) rings?\b": "braking band",
    r"(?i)\bstands? in(?=[.,;:)]|$| until\b| for\b)|\bstand-ins?\b|\bstood in(?=[.,;:)]|$| for\b)": "is assumed",
}  # fmt: skip
"""What no text of the program says, as a pattern, and the word for it. A quotation's own words are its source's."""

ON_INCH_PAPER: Mapping[str, str] = {
    "aluminium": "aluminum",
    "castor": "caster",
    "centre": "center",
    "centres": "centers",
    "centred": "centered",
    "centring": "centering",
    "colour": "color",
    "colours": "colors",
    "earth clamp": "ground clamp",
    "galvanised": "galvanized",
    "grey": "gray",
    "kerb": "curb",
    "kerbs": "curbs",
    "millimetre": "millimeter",
    "millimetres": "millimeters",
    "neighbouring": "neighboring",
    "neighbours": "neighbors",
    "spanner": "wrench",
    "spanners": "wrenches",
    "tyre": "tire",
    "tyres": "tires",
    "weighbridge": "truck scale",
}
"""Where a shop that measures in inches has another word, or spells it another way. On its papers only."""


def paper_words(own: Iterable[str]) -> dict[str, str]:
    """What papers in inches put in place of the program's words. own: the builder's own texts, whose words stay theirs.

    >>> "tyre" in paper_words(["Red car"]), "tyre" in paper_words(["Tyre from the old car"])
    (True, False)
    """
    said = f" {plain_words(' '.join(own))} "
    return {word: other for word, other in ON_INCH_PAPER.items() if f" {word} " not in said}


def reworded(text: str, words: Mapping[str, str]) -> str:
    """The text with some words in place of others, capitals kept. Names such as `tyre.largest` and `a_b` stay.

    >>> reworded("TYRE: the tyre's centre, off-centre, see tyre.largest.", {"tyre": "tire", "centre": "center"})
    "TIRE: the tire's center, off-center, see tyre.largest."
    """
    if not words:
        return text
    return re.sub(rf"(?i)(?<![\w.])({'|'.join(words)})(?![\w]|\.\w|-\w+-\w)", lambda found: _as(found[0], words), text)


def _as(found: str, words: Mapping[str, str]) -> str:
    other = words[found.casefold()]
    return other.upper() if found.isupper() else other.capitalize() if found[0].isupper() else other


def plain_words(text: str) -> str:
    """Lower case, with a space in place of `-`, `_` and other marks, so that `tie_rod` and `tie-rod` are one.

    >>> plain_words("Tie-rod end: wheel.centre_bore")
    'tie rod end wheel centre bore'
    """
    return " ".join(re.findall(r"[^\W_]+", text.casefold()))


def also_called(text: str) -> tuple[str, ...]:
    """The other words for what a label or a name speaks of.

    >>> also_called("Castor")
    ('caster', 'caster angle', 'castor angle')
    """
    words = plain_words(text)
    found = (others for term, others in ALSO_CALLED.items() if re.search(rf"\b{term}s?\b", words))
    return tuple(dict.fromkeys(other for others in found for other in others))


def on_its_row(label: str) -> str:
    """A label as its row shows it.

    >>> on_its_row("Castor"), on_its_row("Top speed")
    ('Castor (caster)', 'Top speed')
    """
    return f"{label} ({BESIDE_LABEL[label]})" if label in BESIDE_LABEL else label


def names_of(label: str) -> tuple[str, ...]:
    """What a label is called in plain words, by itself and by others.

    >>> names_of("Castor")[:2], names_of("Steering-axis inclination")[:2], names_of("Top speed")
    (('castor', 'caster'), ('inclination', 'steering axis inclination'), ('top speed',))
    """
    own = plain_words(label)
    for term, others in ALSO_CALLED.items():
        names = (term, *map(plain_words, others))
        if own in names:
            return names
    return (own,)
