"""The same few examples in every run of the suite; `.ci/long_run` draws many new ones by a seed that it prints.

No example has a time it must be done in, and none is drawn too slowly: a busy machine fails no test.
"""

from hypothesis import HealthCheck, settings

from tests.support.examples import IN_THE_SUITE

ANY_SPEED = settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])

settings.register_profile("the same each run", ANY_SPEED, derandomize=True, max_examples=IN_THE_SUITE)
settings.register_profile("by seed", ANY_SPEED, derandomize=False, database=None, print_blob=True, max_examples=500)
settings.load_profile("the same each run")
