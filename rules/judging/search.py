"""Finding a question, a value or a check by part of its name or by what else builders call it."""

from collections.abc import Iterable
from functools import cache, lru_cache

from rules.judging.trade import trade
from rules.sheet import FIELDS, STEPS
from rules.sheet.earlier import name_today
from rules.sheet.glossary import also_called, names_of, plain_words

SHORT = 3
"""Letters. So short a word must begin one of the words searched; a longer one may stand anywhere in them."""


@cache
def searched(text: str) -> str:
    """A text and all that it is also called, as plain words with a space before each."""
    return f" {plain_words(' '.join((text, *also_called(text))))}"


def matches(wanted: str, text: str) -> bool:
    """Whether every word wanted, or the one thing of several, is in a text or in what it is also called.

    >>> matches("KPI", "Pivots: Inclination"), matches("tire age", "Smallest tyre"), matches("tires", "Smallest tyre")
    (True, False, True)
    """
    words = searched(text)
    return all(_is_in(words, word) or _is_in(words, one_of(word)) for word in plain_words(wanted).split())


def _is_in(words: str, word: str) -> bool:
    return (f" {word}" if len(word) <= SHORT else word) in words


def one_of(word: str) -> str:
    """The word for one thing, of the word for several.

    >>> one_of("rims"), one_of("bus")
    ('rim', 'bus')
    """
    return word.removesuffix("s") if len(word) > SHORT else word


@cache
def _called(label: str) -> frozenset[str]:
    own = plain_words(label)
    return frozenset((own, *names_of(label), *names_of(one_of(own))))


def farness(wanted: str, label: str) -> int:
    """How far what is wanted is from a label: 0 called just so, 1 in its own words, 2 in what it is also called, 3 elsewhere.

    Where nothing is wanted everything is as near.

    >>> [farness(*pair) for pair in (("wishbone", "Arms"), ("arm", "Arm points"), ("tire", "Smallest tyre"), ("tire", "Use"))]
    [0, 1, 2, 3]
    """
    words, own = plain_words(wanted), plain_words(label)
    if not words or words in _called(label):
        return 0
    if all(_is_in(f" {own}", word) or _is_in(f" {own}", one_of(word)) for word in words.split()):
        return 1
    return 2 if matches(wanted, label) else 3


@cache
def _named() -> dict[str, str]:
    """Every name that can be explained, and the text it is searched by."""
    fields = {name: f"{asked.label} {name}" for name, asked in FIELDS.items()}
    checks = {name: f"{node.note.title} {name}" for name, node in trade().checks.items()}
    return {**fields, **{name: name for name in trade().values}, **checks}


def names_like(wanted: str) -> tuple[str, ...]:
    """Names that part of a name or another word for it finds: what is called exactly so, questions, values, checks."""
    wanted = name_today(wanted)
    if not plain_words(wanted):
        return ()
    found = [name for name, text in _named().items() if matches(wanted, text)]
    return tuple(sorted(found, key=lambda name: not is_exactly(wanted, name)))


def title_of(name: str) -> str:
    """What a figure or a check is headed with.

    >>> title_of("spring_ratio"), title_of("caliper-clears-barrel")
    ('spring ratio', 'Caliper inside the wheel barrel')
    """
    checks = trade().checks
    return checks[name].note.title if name in checks else name.replace("_", " ")


def is_exactly(wanted: str, name: str) -> bool:
    """Whether a question is called just so, or was, or just so by others: `caster` is `pivots.castor`."""
    return name_today(wanted) == name or plain_words(wanted) in _exactly(name)


def _exactly(name: str) -> tuple[str, ...]:
    return names_of(FIELDS[name].label) if name in FIELDS else ()


def nearest(wanted: str, names: Iterable[str] = (), most: int = 3) -> tuple[str, ...]:
    """Real names that a misspelt one may have meant. names: what to choose from; all that can be explained by default."""
    from difflib import get_close_matches  # slow to load, and most names are known

    return tuple(get_close_matches(wanted, list(names) or list(_named()), n=most))


def nearest_key(unknown: str) -> str:
    """The question or step that a key of a sheet nobody knows may have meant: what others call so, else what is spelt nearly
    so; empty where there is neither.

    >>> nearest_key("pivots.caster"), nearest_key("pivots.scrub_radius"), nearest_key("tire"), nearest_key("pivots.horses")
    ('pivots.castor', 'pivots.ground_offset', 'tyre', '')
    """
    step, _, key = name_today(unknown).rpartition(".")
    keys, called = _keys_of(step)
    near = called.get(plain_words(key)) or "".join(nearest(key, keys, most=1) if keys else ())
    return f"{step}.{near}" if near and step else near


@lru_cache(64)
def _keys_of(step: str) -> tuple[tuple[str, ...], dict[str, str]]:
    """The keys of a step, or the names of all steps for an empty one, and which of them each plain word stands for.

    Kept: a file may hold thousands of keys that nobody knows, in few steps.
    """
    labels = {asked.key: asked.label for asked in FIELDS.values() if asked.step == step}
    keys = labels if step else {one.name: one.name for one in STEPS}
    return tuple(keys), {called: key for key in reversed(keys) for called in names_of(keys[key])}
