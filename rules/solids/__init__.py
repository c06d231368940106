"""Plain solids in space and the exact gap between any two of them. mm and radians; it knows nothing of sheets.

shapes.py says what can be described; `solid` makes a part ready to be moved and compared; `gap`, `nearer` and
`turning_gap` compare. Underneath, every shape is a union of pieces (pieces.py), each the hull of simple points or arcs,
rounded by a radius, and one method finds how far two such hulls are apart or inside each other (hulls.py).
"""
