"""Where a figure or a rule comes from: one record for each publication, and one for each kind of reason that is none.

A record says what was read of a publication: its text (or the page of it that is cited), an abstract, a quotation in
some other work, or nothing but memory. Whatever was less than the text is said wherever it is cited. "Standard" and
"handbook" are kept for publications with a title that anyone can look up: course notes, slides, makers' advice and trade
pages are common practice, however good. Titles of standards are shortened. A place in a publication is cited with `at`,
what is not in it with `saying`.
"""

from collections.abc import Iterable
from typing import Literal

from rules.measure.records import dataclass, replace

Grade = Literal["standard", "handbook", "common practice", "no published figure"]
Read = Literal["the text", "an abstract", "a quotation", "memory"]

WEAKEST_FIRST: tuple[Grade, ...] = ("no published figure", "common practice", "handbook", "standard")

_READ_WORDS: dict[Read | None, str] = {
    None: "",
    "the text": "",
    "an abstract": "known from an abstract",
    "a quotation": "as quoted elsewhere",
    "memory": "from memory",
}


@dataclass(frozen=True, slots=True)
class Source:
    """One source. key: the short name it is cited by. read: None where there is nothing to read, as with geometry.

    edition: edition, year or both; "edition not recorded" where the quotation named none. clause: the place in it.
    remark: how far it reaches here, or what is not in it.
    """

    key: str
    author: str
    title: str
    edition: str
    read: Read | None
    grade: Grade
    clause: str = ""
    remark: str = ""

    def at(self, clause: str, remark: str = "", *, read: Read | None = None) -> "Source":
        """The same publication at one place. read: where that place was read otherwise than the rest.

        >>> ISO_281.at("a1", "95 %").citation
        'ISO 281:2007 a1 (as quoted elsewhere): 95 %'
        """
        return replace(self, clause=clause, remark=remark, read=read or self.read)

    def saying(self, remark: str) -> "Source":
        """The same source with what has to be said beside it.

        >>> COMMON_PRACTICE.saying("draw for the middle of the tyres").citation
        'common practice, no source: draw for the middle of the tyres'
        """
        return replace(self, remark=remark)

    @property
    def citation(self) -> str:
        """On one line: short name, place, how it was read if not as text, remark.

        >>> AISC_360.at("Table J3.4", "written for buildings").citation, GILLESPIE.at("ch. 8").citation
        ('AISC 360-16 Table J3.4: written for buildings', 'Gillespie ch. 8 (from memory)')
        """
        read = _READ_WORDS[self.read]
        place = " ".join(part for part in (self.key, self.clause, f"({read})" if read else "") if part)
        return f"{place}: {self.remark}" if self.remark else place

    @property
    def entry(self) -> str:
        """As a list of sources gives it: who, what, which edition, what was read of it. The place is left out.

        >>> AISC_360.entry
        'American Institute of Steel Construction, Specification for Structural Steel Buildings, 2016; read: the text'
        """
        published = ", ".join(part for part in (self.author, self.title, self.edition) if part)
        return f"{published}; read: {self.read}" if self.read else published


Cited = Source | tuple[Source, ...]
"""What a value or a check is given: one source, or several."""


def several(given: Cited) -> tuple[Source, ...]:
    """One source or several, as several.

    >>> several(COMMON_PRACTICE) == several((COMMON_PRACTICE,)) == (COMMON_PRACTICE,)
    True
    """
    return (given,) if isinstance(given, Source) else given


def cited(sources: Iterable[Source]) -> str:
    """Several sources on one line.

    >>> cited((AISC_360.at("J3.3"), COMMON_PRACTICE))
    'AISC 360-16 J3.3; common practice, no source'
    """
    return "; ".join(source.citation for source in sources)


def weakest(sources: Iterable[Source]) -> Grade:
    """The grade of whatever rests on all of them. At least one.

    >>> weakest((AISC_360, SHIGLEY_9, COMMON_PRACTICE))
    'common practice'
    """
    return min((source.grade for source in sources), key=WEAKEST_FIRST.index)


# What is no publication. Its title says what it is in the list of sources.

_ISO = "International Organization for Standardization"
COMMON_PRACTICE = Source(
    "common practice, no source", "", "what fabricators do; nobody to quote", "", None, "common practice"
)
MAKERS_ADVICE = Source(
    "makers' advice, no standard", "", "catalogues, data sheets, bulletins of makers", "", None, "common practice"
)
GEOMETRY = Source("geometry", "", "plain geometry: follows from the shapes alone", "", None, "common practice")
ARITHMETIC = Source("arithmetic", "", "follows from the figures alone", "", None, "common practice")
STATICS = Source("statics", "", "balance of forces and moments", "", None, "common practice")
PHYSICS = Source("physics", "", "energy, heat flow and the like, from first principles", "", None, "common practice")
DERIVED = Source("derived", "", "worked out for this program and checked a second way", "", None, "common practice")
AS_ENTERED = Source("the builder's own answer", "", "what was typed into the sheet", "", None, "common practice")
OWN = Source(
    "this program's own figure, nobody published one", "", "chosen for this program", "", None, "no published figure"
)
NO_FIGURE = Source("no published figure", "", "looked for and not found in print", "", None, "no published figure")

# What can be read by anyone but is neither standard nor handbook.

COURSE_NOTES = Source(
    "course notes on vehicle structures",
    "",
    "open notes of a university course",
    "undated",
    "the text",
    "common practice",
)
LECTURE_SLIDES = Source(
    "lecture slides on frame loads", "", "slides of a university course", "undated", "the text", "common practice"
)
RACE_RULES = Source(
    "student race car rules", "", "rules of student off-road and road race series", "edition not recorded",
    "a quotation", "common practice",
)  # fmt: skip
SAE_J2696 = Source(
    "SAE J2696", "SAE International", "on hubs and brake rotors; title not recorded", "2012", "an abstract",
    "common practice",
)  # fmt: skip

# Standards, specifications and regulations.

AISC_360 = Source(
    "AISC 360-16", "American Institute of Steel Construction", "Specification for Structural Steel Buildings", "2016",
    "the text", "standard",
)  # fmt: skip
AISC_MANUAL = Source(
    "AISC Manual", "American Institute of Steel Construction", "Steel Construction Manual", "edition not recorded",
    "memory", "handbook",
)  # fmt: skip
ARRETE_1994 = Source(
    "French arrêté of 24 October 1994", "French Republic", "Arrêté du 24 octobre 1994 relatif aux pneumatiques", "1994",
    "the text", "standard",
)  # fmt: skip
ASME_B1_1 = Source(
    "ASME B1.1", "American Society of Mechanical Engineers", "Unified Inch Screw Threads", "1974 and 2019", "a quotation",
    "standard",
)  # fmt: skip
ASTM_A36 = Source(
    "ASTM A36", "ASTM International", "Carbon Structural Steel", "edition not recorded", "a quotation", "standard"
)
ASTM_A513 = Source(
    "ASTM A513", "ASTM International", "Electric-Resistance-Welded Carbon and Alloy Steel Mechanical Tubing",
    "edition not recorded", "a quotation", "standard",
)  # fmt: skip
ASTM_B209 = Source(
    "ASTM B209", "ASTM International", "Aluminum and Aluminum-Alloy Sheet and Plate", "edition not recorded",
    "a quotation", "standard",
)  # fmt: skip
ASTM_B221 = Source(
    "ASTM B221", "ASTM International", "Aluminum-Alloy Extruded Bars, Rods, Wire, Profiles and Tubes",
    "edition not recorded", "a quotation", "standard",
)  # fmt: skip
AWS_A5_1 = Source(
    "AWS A5.1", "American Welding Society", "Carbon Steel Electrodes for Shielded Metal Arc Welding",
    "edition not recorded", "a quotation", "standard",
)  # fmt: skip
AWS_A5_18 = Source(
    "AWS A5.18", "American Welding Society", "Carbon Steel Electrodes and Rods for Gas Shielded Arc Welding",
    "edition not recorded", "a quotation", "standard",
)  # fmt: skip
AWS_A5_28 = Source(
    "AWS A5.28", "American Welding Society", "Low-Alloy Steel Electrodes and Rods for Gas Shielded Arc Welding",
    "edition not recorded", "memory", "standard",
)  # fmt: skip
AWS_D1_1 = Source(
    "AWS D1.1", "American Welding Society", "Structural Welding Code, Steel", "edition not recorded", "a quotation",
    "standard",
)  # fmt: skip
CFR_178_46 = Source(
    "49 CFR 178.46", "United States, Department of Transportation", "Specification 3AL seamless aluminum cylinders",
    "text in force when read", "the text", "standard",
)  # fmt: skip
CFR_571_110 = Source(
    "49 CFR 571.110", "United States, Department of Transportation", "Safety standard 110, tire selection and rims",
    "text in force when read", "the text", "standard",
)  # fmt: skip
EN_10219 = Source(
    "EN 10219-2", "European Committee for Standardization", "Cold formed welded structural hollow sections",
    "edition not recorded", "memory", "standard",
)  # fmt: skip
EN_1993_1_8 = Source(
    "EN 1993-1-8", "European Committee for Standardization", "Design of steel structures: design of joints", "2005", "memory",
    "standard",
)  # fmt: skip
EN_1993_1_9 = Source(
    "EN 1993-1-9", "European Committee for Standardization", "Design of steel structures: fatigue", "2005", "memory", "standard",
)  # fmt: skip
EN_1999_1_1 = Source(
    "EN 1999-1-1", "European Committee for Standardization", "Design of aluminium structures: general structural rules", "2007",
    "memory", "standard",
)  # fmt: skip
FED_STD_H28 = Source(
    "FED-STD-H28/2B", "United States, General Services Administration", "Screw-Thread Standards for Federal Services",
    "1991", "a quotation", "handbook",
)  # fmt: skip
ISO_76 = Source(
    "ISO 76", _ISO, "Rolling bearings: static load ratings", "edition not recorded", "a quotation", "standard"
)
ISO_261 = Source(
    "ISO 261", _ISO, "General purpose metric screw threads: general plan",
    "edition not recorded", "memory", "standard",
)  # fmt: skip
ISO_262 = replace(ISO_261, key="ISO 262", title="Selected sizes of metric threads for bolts and nuts")
ISO_281 = Source(
    "ISO 281:2007", _ISO,
    "Rolling bearings: dynamic load ratings and rating life", "2007", "a quotation", "standard",
)  # fmt: skip
ISO_TR_1281 = Source(
    "ISO/TR 1281-1", _ISO, "Rolling bearings: explanatory notes on ISO 281",
    "edition not recorded", "memory", "standard",
)  # fmt: skip
ISO_898 = Source(
    "ISO 898-1", _ISO,
    "Mechanical properties of fasteners: bolts, screws and studs", "edition not recorded", "a quotation", "standard",
)  # fmt: skip
ISO_965 = Source(
    "ISO 965-1", _ISO, "General purpose metric screw threads: tolerances",
    "edition not recorded", "memory", "standard",
)  # fmt: skip
ISO_4000 = Source(
    "ISO 4000-1", _ISO, "Passenger car tyres and rims: tyres", "edition not recorded", "a quotation", "standard"
)
ISO_8855 = Source(
    "ISO 8855:2011", _ISO,
    "Road vehicles: vehicle dynamics and road-holding ability, vocabulary", "2011", "a quotation", "standard",
)  # fmt: skip
ISO_4014 = Source("ISO 4014", _ISO, "Hexagon head bolts: product grades A and B",
    "edition not recorded", "memory", "standard")  # fmt: skip
ISO_4032 = Source("ISO 4032", _ISO, "Hexagon regular nuts: product grades A and B",
    "edition not recorded", "memory", "standard")  # fmt: skip
ASME_B18_2_1 = Source(
    "ASME B18.2.1", "American Society of Mechanical Engineers", "Square, hex, heavy hex bolts and screws, inch series",
    "edition not recorded", "memory", "standard",
)  # fmt: skip
ASME_B18_2_2 = Source("ASME B18.2.2", "American Society of Mechanical Engineers", "Nuts for general applications, inch series",
    "edition not recorded", "memory", "standard")  # fmt: skip
ISO_273 = Source("ISO 273", _ISO, "Fasteners: clearance holes for bolts and screws",
    "edition not recorded", "memory", "standard")  # fmt: skip
ASME_B18_2_8 = Source("ASME B18.2.8", "American Society of Mechanical Engineers", "Clearance holes for bolts, screws, and studs",
    "edition not recorded", "memory", "standard")  # fmt: skip
JIS_D_4218 = Source(
    "JIS D 4218:2021", "Japanese Standards Association", "Wheels for automobiles: contours of rims (title from memory)",
    "2021", "a quotation", "standard",
)  # fmt: skip
SAE_J328 = Source(
    "SAE J328", "SAE International", "Wheels, passenger car and light truck: performance and test procedures", "2021",
    "a quotation", "standard",
)  # fmt: skip
SAE_J429 = Source(
    "SAE J429", "SAE International", "Mechanical and Material Requirements for Externally Threaded Fasteners",
    "edition not recorded", "a quotation", "standard",
)  # fmt: skip
SAE_J670 = Source(
    "SAE J670", "SAE International", "Vehicle Dynamics Terminology", "edition not recorded", "a quotation", "standard"
)
UN_R13H = Source(
    "UN Regulation 13-H", "United Nations Economic Commission for Europe", "Approval of passenger cars with regard to braking",
    "edition not recorded", "memory", "standard",
)  # fmt: skip
UN_R30 = Source(
    "UN Regulation 30", "United Nations Economic Commission for Europe",
    "Pneumatic tyres for motor vehicles and their trailers", "edition not recorded", "a quotation", "standard",
)  # fmt: skip
UN_R54 = Source(
    "UN Regulation 54", "United Nations Economic Commission for Europe",
    "Pneumatic tyres for commercial vehicles and their trailers", "edition not recorded", "a quotation", "standard",
)  # fmt: skip

# Handbooks and textbooks.

ALUMINUM_MANUAL = Source(
    "Aluminum Design Manual", "Aluminum Association", "Aluminum Design Manual, specification for aluminum structures", "2010",
    "memory", "handbook",
)  # fmt: skip
BARTON = Source(
    "Barton and Fieldhouse", "Barton and Fieldhouse (names from memory)", "Automotive Chassis Engineering",
    "edition not recorded", "the text", "handbook",
)  # fmt: skip
BEER = Source(
    "Beer and Johnston", "Beer, Johnston and DeWolf", "Mechanics of Materials", "edition not recorded", "a quotation",
    "handbook",
)  # fmt: skip
BLODGETT = Source("Blodgett", "Blodgett", "Design of Welded Structures", "edition not recorded", "the text", "handbook")
BLUNDELL = Source(
    "Blundell and Harty", "Blundell and Harty (names from memory)",
    "The Multibody Systems Approach to Vehicle Dynamics", "edition not recorded", "the text", "handbook",
)  # fmt: skip
BORESI = Source(
    "Boresi and Schmidt", "Boresi and Schmidt", "Advanced Mechanics of Materials", "edition not recorded", "a quotation",
    "handbook",
)  # fmt: skip
BROWN = Source(
    "Brown, Robertson and Serpento", "Brown, Robertson and Serpento", "Motor Vehicle Structures", "edition not recorded",
    "the text", "handbook",
)  # fmt: skip
DAY = Source("Day", "Day", "Braking of Road Vehicles", "edition not recorded", "the text", "handbook")
GERE = Source("Gere", "Gere", "Mechanics of Materials", "edition not recorded", "a quotation", "handbook")
GILLESPIE = Source(
    "Gillespie", "Gillespie", "Fundamentals of Vehicle Dynamics", "edition not recorded", "memory", "handbook"
)
KHURMI = Source(
    "Khurmi and Gupta", "Khurmi and Gupta", "Theory of Machines", "edition not recorded", "a quotation", "handbook"
)
MMPDS = Source(
    "MMPDS", "Battelle Memorial Institute", "Metallic Materials Properties Development and Standardization",
    "edition not recorded", "a quotation", "handbook",
)  # fmt: skip
MOTT = Source(
    "Mott", "Mott", "Machine Elements in Mechanical Design", "edition not recorded", "a quotation", "handbook"
)
ROARK = Source(
    "Roark 7th ed.", "Young and Budynas", "Roark's Formulas for Stress and Strain", "7th ed.", "memory", "handbook"
)
SCI_P355 = Source(
    "SCI P355",
    "Steel Construction Institute",
    "Design of composite beams with large web openings",
    "2011",
    "memory",
    "handbook",
)
SHIGLEY_8 = Source(
    "Shigley 8th ed.",
    "Budynas and Nisbett",
    "Shigley's Mechanical Engineering Design",
    "8th ed.",
    "the text",
    "handbook",
)
SHIGLEY_9 = Source(
    "Shigley 9th ed.",
    "Budynas and Nisbett",
    "Shigley's Mechanical Engineering Design",
    "9th ed.",
    "the text",
    "handbook",
)
SHIGLEY_10 = Source(
    "Shigley 10th ed.", "Budynas and Nisbett", "Shigley's Mechanical Engineering Design, solutions", "10th ed.",
    "the text", "handbook",
)  # fmt: skip
SHIGLEY_MISCHKE = Source(
    "Shigley and Mischke 5th ed.", "Shigley and Mischke", "Mechanical Engineering Design", "5th ed.", "a quotation",
    "handbook",
)  # fmt: skip
TABOREK = Source("Taborek", "Taborek", "Mechanics of Vehicles", "edition not recorded", "memory", "handbook")
TIMOSHENKO = Source(
    "Timoshenko and Woinowsky-Krieger", "Timoshenko and Woinowsky-Krieger", "Theory of Plates and Shells",
    "edition not recorded", "memory", "handbook",
)  # fmt: skip
TIMOSHENKO_GOODIER = Source(
    "Timoshenko and Goodier", "Timoshenko and Goodier", "Theory of Elasticity", "edition not recorded", "memory",
    "handbook",
)  # fmt: skip
UGURAL = Source(
    "Ugural", "Ugural", "Mechanical Design (title from memory)", "edition not recorded", "a quotation", "handbook"
)
WENTZELL = Source("Wentzell", "Wentzell", "Machine Design", "edition not recorded", "a quotation", "handbook")
SOURCES = tuple(thing for thing in tuple(globals().values()) if isinstance(thing, Source))
"""Every record above, in the order it stands."""
