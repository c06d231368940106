"""Marks of a tape: whole inches with halves to sixty-fourths in their lowest terms. Common practice, no source."""

_PARTS = (2, 4, 8, 16, 32, 64)


def with_a_space(top: int, bottom: int) -> tuple[str, ...]:
    """What a fraction of more than one may mean: the marks it becomes with a space that was left out, then the mark it is.

    Empty where no space makes a mark of it.

    >>> with_a_space(93, 8), with_a_space(11, 16), with_a_space(16, 8)
    (('9 3/8', '11 5/8'), (), ())
    """
    if bottom not in _PARTS or top < bottom:
        return ()
    digits = str(top)
    split = [(digits[:at], digits[at:]) for at in range(1, len(digits))]
    spaced = [
        f"{whole} {part}/{bottom}" for whole, part in split if part[0] != "0" and int(part) % 2 and int(part) < bottom
    ]
    return (*spaced, f"{top // bottom} {top % bottom}/{bottom}") if spaced else ()
