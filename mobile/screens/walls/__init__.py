"""Walls: measuring to scale."""
