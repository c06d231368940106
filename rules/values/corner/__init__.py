"""The corner's parts, each built from the answers it rests on, and the room between them."""
