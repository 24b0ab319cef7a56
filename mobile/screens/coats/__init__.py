"""Coats: what dries, what is ready, what is next."""
