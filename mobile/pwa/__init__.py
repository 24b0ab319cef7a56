"""The generator of the offline site."""
