"""Room that tools take round a bolt's head or a nut. Common practice, no source: sockets of a 1/2 in drive, measured in shops.

A socket is about 1.3 widths across flats and 3 mm more outside; the jaw of an open spanner about 2 widths across flats.
"""

SOCKET_LONG = 80.0
"""mm from the head's face: the socket on its ratchet."""
SPANNER_LONG = 120.0
"""mm from the bolt's middle: as much of a spanner as a hand needs."""


def socket_outside(across_flats: float) -> float:
    """Outside diameter of a socket, mm.

    >>> round(socket_outside(19.0), 1)
    27.7
    """
    return 1.3 * across_flats + 3.0


def thin_socket_outside(across_flats: float) -> float:
    """Outside diameter of a thin-walled socket, mm, as for wheel nuts in narrow pockets.

    >>> round(thin_socket_outside(19.0), 1)
    25.5
    """
    return 1.2 * across_flats + 2.7


def spanner_outside(across_flats: float) -> float:
    """Outside diameter of an open spanner's jaw, mm.

    >>> spanner_outside(19.0)
    38.0
    """
    return 2.0 * across_flats
