"""Paints and recipes."""
