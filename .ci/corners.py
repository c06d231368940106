"""Random whole corners against general mesh libraries: every gap to 0.2 mm, every overlap found, none invented.

python .ci/corners.py [COUNT [SEED]]     200 corners by default; prints every pair that differs, and how many were compared
"""

import sys
from pathlib import Path
from random import Random

sys.path.insert(0, str(Path(__file__).parent.parent))

from tests.support.corners import corner, differences


def main(count: int, seed: int) -> int:
    """Compare so many corners. Returns 1 where any pair differs."""
    pairs = overlapping = wrong = corners = tried = 0
    while corners < count:
        made = corner(Random(f"{seed}, {tried}"))
        tried += 1
        if made is None:
            continue
        corners += 1
        if corners % 20 == 0:
            print(f"{corners} corners, {pairs} pairs so far", flush=True)
        for names, gap, fault in differences(*made):
            pairs += 1
            overlapping += gap is not None and gap < 0
            if fault:
                wrong += 1
                print(f"corner {seed}, {tried - 1}: {names}: {fault}", flush=True)
    print(f"{corners} corners, {pairs} pairs, {overlapping} overlapping, {wrong} differ")
    return bool(wrong)


if __name__ == "__main__":
    numbers = [int(word) for word in sys.argv[1:]]
    sys.exit(main(*(numbers + [200, 1][len(numbers) :])))
