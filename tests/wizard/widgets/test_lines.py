"""The lines above and below the form."""

import pytest

from wizard.desk.keys import ALL_KEYS, QUIT, Key
from wizard.widgets.lines import that_fit

BACK, GO, CHANGES = (
    Key("escape", "back", "back", "back"),
    Key("f5", "go", "go", "go there"),
    Key("c", "c", "c", "changes"),
)
KEYS = (BACK, GO, CHANGES, ALL_KEYS, QUIT)
# As printed: "Esc back" 8, "F5 go there" 11, "c changes" 9, "^p all keys" 11, "^q quit" 7, and 2 cells between any two.


@pytest.mark.parametrize(
    ("width", "kept"),
    [
        (54, KEYS),
        (53, (BACK, GO, ALL_KEYS, QUIT)),
        (43, (BACK, GO, ALL_KEYS, QUIT)),
        (42, (BACK, ALL_KEYS, QUIT)),
        (5, (ALL_KEYS, QUIT)),
    ],
)
def test_a_key_is_shown_whole_or_not_at_all_and_the_list_of_all_keys_stays(width: int, kept: tuple[Key, ...]) -> None:
    assert that_fit(KEYS, width) == kept
