"""A changed document put into the text a person wrote: comments, order, spacing and hand formatting stay.

tomlkit reads the text into its parts: for each table a list of keys and items, with the spaces and comments around them.
Those lists are edited and written out again. What comes out is read back before it is used.
"""

import re
import tomllib
from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, TypeAlias, cast

from rules.sheet import STEPS, WORKED_OUT
from rules.sheet.confirmed import CONFIRMED
from rules.sheet.earlier import EARLIER_NAMES, TwoAnswers, carried_over, name_today
from wizard.files.sheet_text import (
    EARLIER_HEADER,
    HEADER,
    LONGEST_LINE,
    entry_text,
    is_table,
    table_text,
    to_text,
    worked_out_text,
)

if TYPE_CHECKING:
    from tomlkit import TOMLDocument
    from tomlkit.items import AoT, Comment, Item, Key, Table

    Part: TypeAlias = tuple[Key | None, Item]
    Block: TypeAlias = Table | TOMLDocument

_TOP = ("sheet_version", "title", "units", *(step.name for step in STEPS), CONFIRMED)
_WITHIN: dict[str, Sequence[str]] = {step.name: list(step.asked()) for step in STEPS}
_NAMES = ("id", "check")
"""What tells the tables of one list apart."""
_EARLIER = re.compile(rf"""(?m)^(?P<before>[ \t\["']*)(?P<name>{"|".join(EARLIER_NAMES)})(?=[ \t."'\]=])""")
"""An earlier name where a line begins with it: in a header, before a dot, or as a confirmed answer's between quotes."""
_MARK = "\ufeff"
_SET_ASIDE = "# What stood here could not be changed in place. It is kept here as it was:\n"


class _NotInPlace(Exception):  # noqa: N818 - never leaves this module
    """A change that this module has no way of making in the text as it stands."""


def edited(text: str, document: Mapping[str, object]) -> str:
    """The text with what differs from `document` changed in place; read as TOML it then gives that document.

    The text must be TOML; a byte-order mark before it stays. Raises what `to_text` raises.
    """
    if text.startswith(_MARK):
        return _MARK + edited(text.removeprefix(_MARK), document)
    text = _with_names_of_today(text.replace(EARLIER_HEADER, HEADER))
    held = tomllib.loads(text)
    if same(held, document):
        return text
    new_line = "\r\n" if "\r\n" in text else "\n"
    own = worked_out_text(held).replace("\n", new_line)
    answers = _answers(held)
    if text.endswith(own) and same(_read(text.removesuffix(own)), answers):
        # What the program wrote and nobody touched is written anew; taking it apart would cost most of the time.
        changed = _edit(text.removesuffix(own), answers, _answers(document), new_line)
        changed += new_line * (bool(changed) and not changed.endswith("\n"))
        changed += worked_out_text(document).replace("\n", new_line)
    else:
        changed = _edit(text, held, document, new_line)
    return changed if same(_read(changed), document) else _set_aside(text, document)


def _with_names_of_today(text: str) -> str:
    """The text with its tables under today's names where they stand; as it is where that would say something else.

    A text of several lines may begin a line like a header, and two tables may now be one: both are seen by reading it.
    """
    renamed = _EARLIER.sub(lambda found: found["before"] + name_today(found["name"]), text)
    if renamed == text:  # so stand most sheets, and reading one takes long
        return text
    held = _read(renamed)
    try:
        return renamed if held is not None and same(carried_over(held), carried_over(tomllib.loads(text))) else text
    except TwoAnswers:  # on the way to being written over
        return text


def same(one: object, other: object) -> bool:
    """Whether two entries are written alike: 1, 1.0 and true differ, and so does one moment in two time zones."""
    if isinstance(one, Mapping) and isinstance(other, Mapping):
        return one.keys() == other.keys() and all(same(entry, other[name]) for name, entry in one.items())
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and all(map(same, one, other))
    return type(one) is type(other) and ((one == other and _written(one) == _written(other)) or one != one != other)


def _written(entry: object) -> object:
    return entry if isinstance(entry, int) else str(entry)  # Python refuses to write out an enormous integer


def _answers(document: Mapping[str, object]) -> dict[str, object]:
    return {name: entry for name, entry in document.items() if name not in WORKED_OUT}


def _read(text: str) -> dict[str, object] | None:
    try:
        return tomllib.loads(text)
    except (ValueError, RecursionError):
        return None


def _set_aside(text: str, document: Mapping[str, object]) -> str:
    """The document written anew below the old text as comments: the last resort, which loses nothing either."""
    width = LONGEST_LINE // 2
    lines = [line[start : start + width] for line in text.splitlines() for start in range(0, len(line) or 1, width)]
    shown = ("".join(each if each.isprintable() or each == "\t" else "?" for each in line) for line in lines)
    return _SET_ASIDE + "".join(f"# {line}".rstrip() + "\n" for line in shown) + "\n" + to_text(document)


def _edit(text: str, held: Mapping[str, object], wanted: Mapping[str, object], new_line: str) -> str:
    """The text, which gives `held`, made to give `wanted`; as it is where that cannot be done."""
    from tomlkit.exceptions import TOMLKitError

    try:
        return _Editor(new_line).edit(text, held, wanted)
    except (_NotInPlace, TOMLKitError, ValueError, RecursionError):
        return text


class _Editor:
    """Edits one text. new_line: how its lines end."""

    def __init__(self, new_line: str) -> None:
        import tomlkit
        from tomlkit import items

        self._parse, self._items, self._new_line = tomlkit.parse, items, new_line

    def edit(self, text: str, held: Mapping[str, object], wanted: Mapping[str, object]) -> str:
        """The text, which gives `held`, made to give `wanted`."""
        whole = self._parse(text)
        if whole.as_string() != text:
            raise _NotInPlace
        self._fit([whole], held, wanted, _TOP)
        return whole.as_string()

    # A table

    def _fit(
        self, blocks: "Sequence[Block]", held: Mapping[str, object], wanted: Mapping[str, object], order: Sequence[str]
    ) -> None:
        """Make a table hold `wanted` where it holds `held`. blocks: its parts, for TOML lets a table stand in several."""
        there: dict[str, list[Item]] = {}
        for block in blocks:
            for key, item in _body(block):
                if key is not None:
                    there.setdefault(key.key, []).append(item)
        stay = {name for name, items in there.items() if name in wanted and self._fits(items[0], wanted[name])}
        for name in stay:
            if not same(held[name], wanted[name]):
                self._change(there[name], held[name], wanted[name], _WITHIN.get(name, ()) if order is _TOP else ())
        for block in blocks:
            _body(block)[:] = [part for old in _body(block) for part in self._stands(old, held, wanted, stay)]
        home = next((block for block in blocks if not self._is_only_above_others(block)), blocks[0])
        for name, entry in wanted.items():
            if name not in stay:
                (self._add_block if is_table(entry) else self._add_line)(home, name, entry, order)

    def _fits(self, item: "Item", entry: object) -> bool:
        """Whether an entry can take the place of an item: a table of a table, a single entry of a single entry."""
        if isinstance(item, self._items.Table):
            return isinstance(entry, Mapping)
        return isinstance(item, self._items.AoT) == is_table(entry) and not isinstance(entry, Mapping)

    def _change(self, there: "Sequence[Item]", held: object, wanted: object, order: Sequence[str]) -> None:
        """Change what stands in a table or in a list of tables. Single entries are not touched here."""
        if isinstance(held, Mapping) and isinstance(wanted, Mapping):
            self._fit([item for item in there if isinstance(item, self._items.Table)], held, wanted, order)
        elif isinstance(there[0], self._items.AoT) and isinstance(held, list) and isinstance(wanted, list):
            self._fit_list([item for item in there if isinstance(item, self._items.AoT)], held, wanted)

    def _stands(
        self, part: "Part", held: Mapping[str, object], wanted: Mapping[str, object], stay: set[str]
    ) -> "list[Part]":
        """What takes a part's place: itself, its new entry with the old comment, or only its comments."""
        key, item = part
        if key is None:
            return [part]
        name = key.key
        if name not in stay:
            return [(None, comment) for comment in self._comments(item)]
        if isinstance(item, self._items.Table | self._items.AoT) or same(held[name], wanted[name]):
            return [part]
        if isinstance(item, self._items.Array):
            self._comments(item)  # refuses where there are any between its values
        _, new = self._line(name, wanted[name])
        for around in ("indent", "comment_ws", "comment", "trail"):
            setattr(new.trivia, around, getattr(item.trivia, around))
        return [(key, new)]

    def _comments(self, item: "Item") -> "list[Comment]":
        """Every comment in and behind an item, each as a line of its own."""
        if isinstance(item, self._items.Whitespace | self._items.Null):
            return []
        within: list[Item] = []
        if isinstance(item, self._items.Table):
            within = [inner for _, inner in item.value.body]
        elif isinstance(item, self._items.AoT):
            within = list(item.body)
        elif isinstance(item, self._items.Array) and "#" in item.as_string():
            raise _NotInPlace
        own = item.trivia.comment.strip()
        first = [self._items.Comment(self._items.Trivia(comment=own, trail=self._new_line))] if own else []
        return first + [comment for inner in within for comment in self._comments(inner)]

    # A list of tables

    def _fit_list(self, lists: "Sequence[AoT]", held: Sequence[object], wanted: Sequence[object]) -> None:
        there = [table for each in lists for table in each.body]
        free = list(range(len(there)))
        result: list[Table] = []
        for entry in wanted:
            place = next((place for place in free if _alike(held[place], entry)), None)
            if place is None:
                made = self._parse(table_text("list", [entry]).replace("\n", self._new_line))["list"]
                result.append(cast("AoT", made).body[0])
                continue
            free.remove(place)
            was = held[place]
            if isinstance(was, Mapping) and isinstance(entry, Mapping) and not same(was, entry):
                self._fit([there[place]], was, entry, ())
            result.append(there[place])
        left: list[Part] = [(None, comment) for place in free for comment in self._comments(there[place])]
        for each in lists:
            each.body.clear()
        lists[0].body.extend(result)
        for table in result[:-1]:
            self._leave_blank_line(table)
        if left:
            self._end_line(result[-1])
            result[-1].value.body.extend(left)

    # Adding

    def _add_line(self, block: "Block", name: str, entry: object, order: Sequence[str]) -> None:
        """A single entry behind the one that is asked before it, else behind the last, and before every table."""
        body = _body(block)
        lines = {key.key: place for place, (key, item) in enumerate(body) if key and not self._is_block(key, item)}
        place = _place(name, lines, order)
        if place is None:  # the first: below the comments at the top
            blocks = [place for place, (key, item) in enumerate(body) if key]
            place = min(blocks, default=len(body)) if not isinstance(block, self._items.Table) else 0
            while place < len(body) and isinstance(body[place][1], self._items.Comment):
                place += 1
        while place and place in lines.values() and isinstance(body[place - 1][1], self._items.Comment):
            place -= 1  # a comment belongs to the line below it
        self._end_line(body[place - 1][1] if place else block)
        body.insert(place, self._line(name, entry))

    def _add_block(self, block: "Block", name: str, entry: object, order: Sequence[str]) -> None:
        """A table behind the one that comes before it. What the program works out stands last."""
        if isinstance(block, self._items.Table):
            raise _NotInPlace
        body = block.body
        blocks = {key.key: place for place, (key, item) in enumerate(body) if key and self._is_block(key, item)}
        place = len(body)
        if name not in WORKED_OUT:
            before = {other: at for other, at in blocks.items() if other not in WORKED_OUT}
            found = _place(name, before, order)
            place = (
                min((blocks[other] for other in WORKED_OUT if other in blocks), default=place)
                if found is None
                else found
            )
        made = self._parsed(table_text(name, entry))
        gap: list[Part] = []
        carried: list[Part] = []
        if place:
            above = body[place - 1][1]
            carried = self._carried(above) if place < len(body) else []
            if self._last_body(above) is None and not isinstance(above, self._items.Whitespace):
                gap = [(None, self._items.Whitespace(self._new_line))]
            self._leave_blank_line(above)
        if place < len(body):
            self._leave_blank_line(made[-1][1])
        body[place:place] = [*gap, *made, *carried]

    def _carried(self, item: "Item") -> "list[Part]":
        """Comments that touch the header below, taken out of the table above it: they are about what comes below."""
        body = self._last_body(item)
        place = len(body or ())
        while body and place and isinstance(body[place - 1][1], self._items.Comment):
            place -= 1
        if not body or not place or not isinstance(body[place - 1][1], self._items.Whitespace):
            return []
        taken = body[place:]
        del body[place:]
        return taken

    def _last_body(self, item: "Item") -> "list[Part] | None":
        """The list of parts that ends a table or a list of tables; None for a single entry."""
        if isinstance(item, self._items.AoT):
            return self._last_body(item.body[-1])
        if not isinstance(item, self._items.Table):
            return None
        body: list[Part] = item.value.body
        return (self._last_body(body[-1][1]) if body else None) or body

    def _leave_blank_line(self, item: "Item") -> None:
        """See that what comes next is set off by an empty line."""
        self._end_line(item)
        body = self._last_body(item)
        if body is not None and not (body and isinstance(body[-1][1], self._items.Whitespace)):
            body.append((None, self._items.Whitespace(self._new_line)))

    def _end_line(self, item: "Item | Block") -> None:
        """End the line that the text ended in, before something is put behind it."""
        if isinstance(item, self._items.Table | self._items.AoT):
            body = self._last_body(item)
            if body:
                self._end_line(body[-1][1])
                return
        if isinstance(item, self._items.Item) and not isinstance(item, self._items.Whitespace | self._items.Null):
            item.trivia.trail = item.trivia.trail or self._new_line

    # Parts

    def _is_only_above_others(self, block: "Block") -> bool:
        return isinstance(block, self._items.Table) and block.is_super_table()

    def _is_block(self, key: "Key", item: "Item") -> bool:
        """Whether it has a header of its own; `wheel.width = ...` makes a table too, but in a line."""
        return isinstance(item, self._items.AoT) or (isinstance(item, self._items.Table) and not key.is_dotted())

    def _line(self, name: str, entry: object) -> "Part":
        [made] = self._parsed(entry_text(name, entry))
        return made

    def _parsed(self, text: str) -> "list[Part]":
        return self._parse(text.replace("\n", self._new_line)).body


def _body(block: "Block") -> "list[Part]":
    from tomlkit import TOMLDocument

    return block.body if isinstance(block, TOMLDocument) else block.value.body


def _alike(one: object, other: object) -> bool:
    """Whether two tables of a list are about the same thing."""
    if not isinstance(one, Mapping) or not isinstance(other, Mapping):
        return False
    return any(name in one and same(one[name], other.get(name)) for name in _NAMES) or same(one, other)


def _place(name: str, places: Mapping[str, int], order: Sequence[str]) -> int | None:
    """Where a name goes among those that are there, by place; None where nothing is there."""
    if not places:
        return None
    if name in order:
        at = list(order).index(name)
        if earlier := [places[other] for other in order[:at] if other in places]:
            return earlier[-1] + 1
        if later := [places[other] for other in order[at:] if other in places]:
            return later[0]
    return max(places.values()) + 1
