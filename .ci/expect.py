"""Rewrites what every sample sheet must give, NAME.expected.toml beside it, from what it gives now.

python .ci/expect.py [NAME ...]     write them, or those of some samples; read the difference before you keep it
"""

import sys

from rules.judging.judge import Judged, judge
from rules.sheet import read_sheet
from sample_sheets import document, expected_file, samples

LISTED = ("stop", "watch", "waiting")


def as_text(name: str, judged: Judged) -> str:
    """The verdict, and the checks that are not good; a list that would be empty is left out."""
    text = f"# What {name} must give. Checks not named here are good, or rest on a step nobody filled in.\n"
    text += f'verdict = "{judged.verdict}"\n'
    for verdict in LISTED:
        checks = [finding.check for finding in judged.findings if finding.verdict == verdict]
        if checks:
            text += f"{verdict} = [\n" + "".join(f'    "{check}",\n' for check in checks) + "]\n"
    return text


def main(names: list[str]) -> None:
    """Write the file of each sample; say how many changed."""
    texts = {expected_file(name): as_text(name, judge(read_sheet(document(name)))) for name in names}
    changed = [path for path, text in texts.items() if not path.is_file() or path.read_text("utf-8") != text]
    for path, text in texts.items():
        path.write_text(text, "utf-8")
    print(f"{len(changed)} of {len(texts)} changed")


if __name__ == "__main__":
    main(sys.argv[1:] or samples())
