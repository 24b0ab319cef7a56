"""Waits between steps."""
