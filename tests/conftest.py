"""For all tests: property tests keep no diary, and no clock hurries them on a busy machine."""

from hypothesis import HealthCheck, settings

settings.register_profile(
    "house", deadline=None, database=None, suppress_health_check=[HealthCheck.too_slow]
)
settings.load_profile("house")
