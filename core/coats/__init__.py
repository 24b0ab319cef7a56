"""Coats: one step on one wall."""
