"""What *Cans* knows and does: cans, paints, what they are worth."""
