"""Writes the pages that are made from the program itself: the catalogue of checks, the pictures in the README, and the
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
SIZE = (120, 40)


def picture(sample_name: str, keys: tuple[str, ...]) -> str:
    """The wizard at 120 x 40 on a whole sample, after these keys from its review, as SVG."""
    os.environ.pop("NO_COLOR", None)
    with tempfile.TemporaryDirectory() as folder:
        os.environ["BUILDSHEET_STATE"] = folder
        from sample_sheets import sample

        sheet = Path(folder) / f"{sample_name}.toml"
        shutil.copyfile(sample(sample_name), sheet)
        text = asyncio.run(_screenshot(sheet, keys))
    # A picture in a page loads nothing from elsewhere: the reader's own fixed-width letters will do.
    text = re.sub(r"@font-face \{.*?\}", "", text, flags=re.DOTALL)
    text = re.sub(r"font-family: [^;]+;", "font-family: monospace;", text)
    text = re.sub(r"<!--.*?-->", "", text, flags=re.DOTALL)
    # The drawn window of some other system around it is not ours.
    text = re.sub(r'<g transform="translate\(26,22\)">.*?</g>', "", text, flags=re.DOTALL)
    # The picture's own class names carry a hash of its content; a fixed one keeps changes readable.
    return re.sub(r"terminal-\d+", "terminal-picture", text)


async def _screenshot(sheet: Path, keys: tuple[str, ...]) -> str:
    from textual.widgets import Input

    from wizard.app import BuildSheetApp

    app = BuildSheetApp(sheet, demo=True)
    async with app.run_test(size=SIZE) as pilot:
        for key in keys:
            await pilot.pause()
            await pilot.press(key)
        await app.workers.wait_for_complete()
        await pilot.pause()
        for entry in app.screen.query(Input):
            entry.cursor_blink = False
        await pilot.pause()
        return app.export_screenshot(title="buildsheet")


def drawing(sample_name: str) -> str:
    """The full-size drawing of a sample's left upright as SVG, as if written on one fixed day."""
    from rules.judging.judge import judge
    from rules.sheet import read_sheet
    from sample_sheets import document
    from wizard.paper import stamp
    from wizard.paper.drawing_svg import drawing_svg

    stamp.today = lambda: "2026-01-31"
    return drawing_svg(judge(read_sheet(document(sample_name))))


def pages() -> dict[Path, str]:
    """Every generated page and what it should hold."""
    from licences import as_page

    from rules.judging.catalogue import as_markdown
    from sample_sheets import SHOWN

    return {
        HERE / "rules" / "checks" / "CATALOGUE.md": as_markdown(),
        HERE / "wizard" / "wizard.svg": picture(SHOWN, ("f7", *["down"] * 3)),  # a whole sheet opens at its review
        HERE / "wizard" / "moving.svg": picture(SHOWN, ("f12", *["up"] * 6, *["left"] * 4)),
        HERE / "wizard" / "drawing.svg": drawing(SHOWN),
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
