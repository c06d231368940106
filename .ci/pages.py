"""Writes the pages that are made from the program itself: the catalogue of checks, the picture in the README, and the
licences of the libraries.

python .ci/pages.py           write them
python .ci/pages.py --check   fail if one is stale
"""

import asyncio
import os
import re
import shutil
import sys
import tempfile
from pathlib import Path

HERE = Path(__file__).resolve().parent.parent
PICTURE = HERE / "wizard" / "wizard.svg"
SIZE = (120, 40)


def picture() -> str:
    """The wizard at 120 x 40 on the finished sample, pivots step, as SVG."""
    os.environ.pop("NO_COLOR", None)
    os.environ.pop("TEXTUAL_THEME", None)
    with tempfile.TemporaryDirectory() as folder:
        os.environ["BUILDSHEET_STATE"] = folder
        from sample_sheets import FINISHED, sample

        sheet = Path(folder) / "dune_wren.toml"
        shutil.copyfile(sample(FINISHED), sheet)
        text = asyncio.run(_screenshot(sheet))
    # A picture in a page loads nothing from elsewhere: the reader's own fixed-width letters will do.
    text = re.sub(r"@font-face \{.*?\}", "", text, flags=re.DOTALL)
    text = re.sub(r"font-family: [^;]+;", "font-family: monospace;", text)
    text = re.sub(r"<!--.*?-->", "", text, flags=re.DOTALL)
    # The drawn window of some other system around it is not ours.
    text = re.sub(r'<g transform="translate\(26,22\)">.*?</g>', "", text, flags=re.DOTALL)
    # The picture's own class names carry a hash of its content; a fixed one keeps changes readable.
    return re.sub(r"terminal-\d+", "terminal-picture", text)


async def _screenshot(sheet: Path) -> str:
    from textual.widgets import Input

    from wizard.app import BuildSheetApp

    app = BuildSheetApp(sheet, demo=True)
    async with app.run_test(size=SIZE) as pilot:
        await pilot.pause()
        await pilot.press("f7")  # a finished sheet opens at its review; the pivots stand before it
        await pilot.pause()
        for entry in app.screen.query(Input):
            entry.cursor_blink = False
        await pilot.pause()
        return app.export_screenshot(title="buildsheet")


def pages() -> dict[Path, str]:
    """Every generated page and what it should hold."""
    from licences import as_page

    from rules.judging.catalogue import as_markdown

    return {
        HERE / "rules" / "checks" / "CATALOGUE.md": as_markdown(),
        PICTURE: picture(),
        HERE / ".ci" / "LICENCES.md": as_page(HERE / "constraints.txt"),
    }


def main() -> int:
    """Write the pages, or with --check say which are stale."""
    stale = [path for path, text in pages().items() if not path.is_file() or path.read_text("utf-8") != text]
    if "--check" in sys.argv:
        for path in stale:
            print(f"stale: {path.relative_to(HERE)}; run python .ci/pages.py")
        return 1 if stale else 0
    for path, text in pages().items():
        path.write_text(text, "utf-8")
    print(f"{len(stale)} page(s) changed")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
