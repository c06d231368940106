"""How a value and a check are declared: what they say of themselves, beside the plain function.

A family is written once: `each=({"which": "lower"}, {"which": "upper"})` declares one member for each of these. `which`
in the function's name, in the names of its parameters and (in braces) in its texts stands for the member's word:
`which_pivot_offset` is `lower_pivot_offset`, `{which}` is "lower", `{Which}` is "Lower". A parameter called `which`
receives the word itself.
"""

from collections.abc import Callable, Iterable, Mapping
from functools import cached_property
from typing import Any, TypeVar

from rules.graph.bands import Limits
from rules.graph.results import Verdict
from rules.measure.quantity import Units
from rules.measure.records import dataclass
from rules.measure.said import capital, in_units
from rules.tables.sources import Cited, Grade, Source, cited, several, weakest

F = TypeVar("F", bound=Callable[..., Any])

Member = Mapping[str, str]
"""What each placeholder of a family stands for in one member, as it is written in a name: `steering_arm`."""
ALONE: tuple[Member, ...] = ({},)
Wording = str | Callable[[Member], str]
"""A text, that of a family with its placeholders in braces, or what gives that of one member."""


@dataclass(frozen=True)
class ValueNote:
    """What a value says of itself: subject, formula in words, sources. heavy: takes too long to be done at every key.

    as_declared: its formula, that of a family with its placeholders. stands_for: the question it answers while nobody has;
    empty where there is none.
    """

    subject: str
    as_declared: str
    sources: tuple[Source, ...]
    member: Member
    heavy: bool = False
    stands_for: str = ""

    @property
    def formula(self) -> str:
        """Its formula in words."""
        return in_words(self.as_declared, self.member)

    @cached_property
    def source(self) -> str:
        """Its sources on one line."""
        return cited(self.sources)


@dataclass(frozen=True)
class CheckNote:
    """What a check says of itself. step: the table it belongs to. try_changing: fields worth solving for.

    as_declared: the words of its verdicts, those of a family with their placeholders. good, shown, watch, stop: its limits
    in words, in both unit systems; empty where it has no such verdict. limits: the figures behind the words. never_good:
    whether it can only be worse.
    """

    id: str
    step: str
    title: str
    as_declared: Mapping[str, Wording]
    member: Member
    sources: tuple[Source, ...]
    grade: Grade
    try_changing: tuple[str, ...]
    limits: Limits | None = None
    never_good: bool = False
    heavy: bool = False

    @cached_property
    def _words(self) -> Mapping[str, str]:
        return self.words_in(None)

    @property
    def good(self) -> str:
        """When it is good, in words."""
        return self._words["good"]

    @property
    def shown(self) -> str:
        """When its figure is only shown, in words."""
        return self._words["shown"]

    @property
    def watch(self) -> str:
        """When it is to be watched, in words."""
        return self._words["watch"]

    @property
    def stop(self) -> str:
        """When it is a stop, in words."""
        return self._words["stop"]

    def words_in(self, units: Units | None) -> Mapping[str, str]:
        """Its limits in words by verdict, in one unit system; in both without one.

        Put together when somebody reads them: most starts of the program read none. Raises KeyError for a figure in braces
        that its limits do not have.
        """
        texts = {
            verdict: text(self.member) if callable(text) else in_words(text, self.member)
            for verdict, text in self.as_declared.items()
        }
        if self.limits is not None:
            return {"shown": ""} | self.limits.in_words(texts, units)
        return {verdict: in_units(text, units) for verdict, text in texts.items()}

    @cached_property
    def source(self) -> str:
        """Its sources on one line."""
        return cited(self.sources)

    @property
    def best(self) -> Verdict:
        """The best verdict it can give: some are never good, because nobody has published a limit."""
        if self.as_declared["shown"]:
            return "shown"
        return "watch" if self.never_good else "good"


@dataclass(frozen=True, slots=True)
class Declared:
    """One value or check as declared: its name in the graph, what it says of itself, and which member of a family it is."""

    name: str
    note: Any
    member: Member


@dataclass(frozen=True, slots=True)
class Every:
    """Marks a parameter that takes every value of one role, by name: `Annotated[Mapping[str, float], Every(SAFETY)]`."""

    role: str


@dataclass(frozen=True, slots=True)
class Waiting:
    """Marks a parameter that takes the names of those values of a role, among all that the function takes, that are begun but
    wait for an entry: `Annotated[tuple[str, ...], Waiting(PART)]`. What nobody has begun is not judged, and no such value unless
    `or_not_begun`."""

    role: str
    or_not_begun: bool = False


@dataclass(frozen=True, slots=True)
class Role:
    """Gives values of a class a role, for those that take every one of them: `Annotated[Part, Role(PART)]`."""

    role: str


@dataclass(frozen=True, slots=True)
class AnswersOf:
    """Marks a parameter that takes every answer given in some steps, by dotted name, but those set aside."""

    steps: tuple[str, ...]
    set_aside: frozenset[str] = frozenset()


def for_names(member: Member) -> Member:
    """What a member says that could stand in a name: no spaces, no dots."""
    return {placeholder: word for placeholder, word in member.items() if word.isidentifier()}


def in_name(name: str, member: Member) -> str:
    """A name with every placeholder in it replaced. member: as `for_names` leaves it.

    >>> in_name("which_pivot_offset", {"which": "lower"}), in_name("weld_of_part_leg", {"part": "steering_arm"})
    ('lower_pivot_offset', 'weld_of_steering_arm_leg')
    """
    parts = name.split("_")
    return "_".join(map(member.get, parts, parts))


def word_of(name: str, member: Member) -> str:
    """What a member says for a name in braces, with a capital where the name has one. Raises KeyError where it says nothing.

    >>> word_of("part", {"part": "steering_arm"}), word_of("Part", {"part": "steering_arm"})
    ('steering arm', 'Steering arm')
    """
    placeholder = name if name in member else name.lower()
    said = member[placeholder].replace("_", " ")
    if name not in (placeholder, placeholder.capitalize()):
        raise KeyError(name)
    return said if name == placeholder else capital(said)


def in_words(text: str, member: Member) -> str:
    """A text with every placeholder in braces replaced by its word, `{Which}` with a capital.

    >>> in_words("{Which} pivot, {part}: {gap}", {"which": "lower", "part": "steering_arm"})
    'Lower pivot, steering arm: {gap}'
    """
    said, *pieces = text.split("{") if member else [text]
    for piece in pieces:
        name, _, rest = piece.partition("}")
        try:
            said += word_of(name, member) + rest
        except KeyError:
            said += "{" + piece
    return said


def value(
    subject: str,
    *,
    formula: str,
    source: Cited | Callable[[Any], Cited],
    each: Iterable[Member] = ALONE,
    heavy: bool = False,
    stands_for: str = "",
) -> Callable[[F], F]:
    """Mark a pure function as a value, or as a family of them.

    formula: in words, as `explain` prints it. source: of all, or what gives that of one member. heavy: may be put off, with
    all that rests on it, while somebody types. stands_for: the question, by dotted name, that it answers while nobody has:
    whatever takes that question then rests on this value's inputs.
    """

    def mark(function: F) -> F:
        function.declared = tuple(  # type: ignore[attr-defined]
            Declared(
                in_name(function.__name__, for_names(member)),
                ValueNote(
                    subject,
                    formula,
                    several(source(member) if callable(source) else source),
                    member,
                    heavy,
                    in_braces(stands_for, member),
                ),
                member,
            )
            for member in each
        )
        return function

    return mark


def check(
    id: str,
    *,
    step: str,
    title: str,
    limits: Limits | None = None,
    good: Wording = "",
    shown: Wording = "",
    watch: Wording = "",
    stop: Wording = "",
    never_good: str = "",
    source: Cited,
    grade: Grade | None = None,
    try_changing: tuple[str, ...] = (),
    each: Iterable[Member] = ALONE,
    heavy: bool = False,
) -> Callable[[F], F]:
    """Mark a function as a check, or as a family of them.

    limits: the figures it is judged by; its words follow from them. good, shown, watch, stop: the words where they must say more,
    with `{good}`, `{watch}` and other figures of the limits in braces; empty where it has no such verdict. never_good: why
    it is never good. grade: that of the weakest source, unless one is given. heavy: may be put off while somebody types. A
    parameter annotated with a class of limits receives them.
    """

    sources = several(source)
    said: dict[str, Wording] = {"good": never_good or good, "shown": shown, "watch": watch, "stop": stop}

    def mark(function: F) -> F:
        function.declared = tuple(_checked(member) for member in each)  # type: ignore[attr-defined]
        return function

    def _checked(member: Member) -> Declared:
        name = in_braces(id, member).replace("_", "-")
        return Declared(
            name,
            CheckNote(
                name,
                in_braces(step, member),
                in_words(title, member),
                said,
                member,
                sources,
                grade or weakest(sources),
                tuple(filter(None, (in_braces(field, member) for field in try_changing))),
                limits,
                bool(never_good),
                heavy,
            ),
            member,
        )

    return mark


def in_braces(name: str, member: Member) -> str:
    """A dotted name with placeholders in braces replaced by the members' own spelling.

    >>> in_braces("pivots.{which}_radius", {"which": "lower"})
    'pivots.lower_radius'
    """
    if "{" in name:
        for placeholder, word in member.items():
            name = name.replace(f"{{{placeholder}}}", word)
    return name
