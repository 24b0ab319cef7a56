"""Pots that are done, their cups and jars."""
