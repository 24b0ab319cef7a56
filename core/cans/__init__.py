"""Cans: tare, net, what is left."""
