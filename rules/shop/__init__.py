"""A judged sheet as words for the shop: checklist, layout, weld words, motion tables."""
