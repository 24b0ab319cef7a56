"""Dumb controls shared by screens; they know neither session nor store."""
