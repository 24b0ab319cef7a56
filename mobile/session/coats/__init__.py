"""What *Coats* knows and does: coats, where each wall stands, what is due."""
