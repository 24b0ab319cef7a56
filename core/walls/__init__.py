"""Walls: shapes, openings, painted area."""
