"""A screen is put together from what is seen of each widget."""

from collections.abc import Callable, Mapping, Sequence
from itertools import pairwise
from typing import cast

from textual._compositor import Compositor
from textual.geometry import Region
from textual.strip import Strip


class SeenOnly(Compositor):
    """Textual's own way paints every widget in sight whole, also the grounds that others cover, and cuts all of it to pieces.

    Half of the time that a page takes to open went there. Here a widget paints the rows in which something of it is seen and
    has changed, and only those are cut.
    """

    def _render_chops(self, crop: Region, is_rendered_line: Callable[[int], bool]) -> Sequence[Mapping[int, Strip]]:
        """For each line what stands from each cut to the next, nearest widget first; nothing outside of what is asked for."""
        cuts = self.cuts
        chops: list[dict[int, Strip | None]] = [dict.fromkeys(line[:-1]) for line in cuts]
        first, end = crop.column_span
        free = [
            {cut for cut, to in pairwise(line) if cut < end and to > first}
            if y in crop.line_range and is_rendered_line(y)
            else set[int]()
            for y, line in enumerate(cuts)
        ]
        for widget, (region, clip) in self.visible_widgets.items():
            seen = region.intersection(clip)
            left, right = seen.column_span
            rows = [y for y in seen.line_range if any(left <= cut < right for cut in free[y])]
            if not rows:
                continue
            top = rows[0]
            strips = widget.render_lines(Region(seen.x - region.x, top - region.y, seen.width, rows[-1] + 1 - top))
            for y in rows:
                within = [cut for cut in cuts[y] if left <= cut <= right]
                pieces = strips[y - top].divide([cut - left for cut in within[1:]])
                for cut, piece in zip(within, pieces, strict=False):
                    if cut in free[y]:
                        free[y].discard(cut)
                        chops[y][cut] = piece
        return cast("Sequence[Mapping[int, Strip]]", chops)
