"""The worked examples of DEVELOPERS.md, followed to the letter: each block goes where the line above it says."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

_BLOCK = re.compile(r"^```(?:python|toml)\n(.*?)^```$", re.DOTALL | re.MULTILINE)
_NEW = re.compile(r"New, `([^`]+)`:")
_PLACE = re.compile(r"In `([^`]+)`, (at the end|at the end of `(\w+)`|after (the|each) line `([^`]+)`):")


@dataclass(frozen=True, slots=True)
class Example:
    """One block. into: the file, from the top of the project. place: what the page says of where in it; empty for a new file."""

    into: str
    place: str
    text: str
    end_of: str = ""
    after: str = ""
    each: bool = False

    def put_into(self, text: str) -> str:
        """A file's text with the block in its place. Raises ValueError where the page names no such place, or several."""
        if self.end_of:
            found = re.search(rf"^{self.end_of}\b[^\n]*[\[(]\n.*?(?=^[\])])", text, re.DOTALL | re.MULTILINE)
            if found is None:
                raise ValueError(f"{self.into} has no list {self.end_of}")
            return text[: found.end()] + self.text + text[found.end() :]
        if self.after:
            lines = text.splitlines(keepends=True)
            places = [number for number, line in enumerate(lines) if line.startswith(self.after)]
            if not places or (len(places) > 1 and not self.each):
                raise ValueError(f"{self.into} has {len(places)} lines {self.after!r}")
            return "".join(line + self.text * (number in places) for number, line in enumerate(lines))
        # What is indented goes on with the class at the end of the file; a function stands two lines below, a table one.
        lines = 0 if self.text[0].isspace() else 1 if self.into.endswith(".toml") else 2
        return text + "\n" * lines + self.text


def examples(page: str) -> Iterator[Example]:
    """Every block of code on a page. Raises ValueError for one that does not say where it goes."""
    for block in _BLOCK.finditer(page):
        said = page[: block.start()].rstrip().rpartition("\n\n")[2].replace("\n", " ")
        if new := _NEW.fullmatch(said):
            yield Example(new[1], "", block[1])
        elif place := _PLACE.fullmatch(said):
            yield Example(place[1], place[2], block[1], place[3] or "", place[5] or "", place[4] == "each")
        else:
            raise ValueError(f"a block does not say where it goes: {said!r}")


def follow(page: str, project: Path) -> list[str]:
    """Put every block of a page into a project. Returns the files touched, in order. Raises ValueError as above."""
    touched: dict[str, None] = {}
    for example in examples(page):
        path = project / example.into
        if path.exists() != bool(example.place):
            raise ValueError(f"{example.into} is {'not ' if example.place else ''}there")
        path.write_text(example.put_into(path.read_text("utf-8")) if example.place else example.text, "utf-8")
        touched[example.into] = None
    return list(touched)
