"""The same examples in every run of the suite; `.ci/long_run` draws new ones by a seed that it prints."""

from hypothesis import settings

settings.register_profile("the same each run", derandomize=True, deadline=None)
settings.register_profile("by seed", derandomize=False, deadline=None, database=None, print_blob=True)
settings.load_profile("the same each run")
