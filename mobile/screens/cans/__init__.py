"""Cans: weighing and what is left."""
