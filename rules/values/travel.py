"""How the wheel moves through bump and droop: camber, castor, track, roll centre, bump steer."""
