"""Mixing by weight: portions, weigh-out, pots."""
