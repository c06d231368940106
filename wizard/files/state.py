"""What the program remembers between runs, as it stands in the state file."""

from typing import Annotated, Literal

from pydantic import AfterValidator, BaseModel, ConfigDict


def _one_line(path: str) -> str:
    if not path.isprintable():
        raise ValueError("a path with a character that cannot be shown")
    return path


class State(BaseModel):
    """The sheets opened lately, the last one first, how the picture was last drawn, and the colours, by name.

    What a newer version wrote there besides stays.
    """

    model_config = ConfigDict(extra="allow")

    recent: list[Annotated[str, AfterValidator(_one_line)]] = []
    drawing: Literal["", "pixels", "braille", "blocks", "plain"] = ""
    look: str = ""
