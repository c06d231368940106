"""A judged sheet as shapes in mm: for the screen, for paper at full size, for the cutter."""
