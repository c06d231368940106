"""How the front end moves: plain geometry in mm and radians. It knows nothing of sheets."""
