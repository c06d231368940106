"""The corner in space: what its parts are, how they move, and how much room there is between them. mm and radians.

part.py says what a part is; the parts themselves are values of the graph (rules/values/corner), each built from the answers
it rests on. placing.py moves them with the front end; kinds.py says how much room two kinds of part want, and which touch
because they are made to; room.py compares every two parts of different motion groups.
"""
