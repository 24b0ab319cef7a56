"""A weigh-out, from its start to a full cup, with what goes wrong."""
