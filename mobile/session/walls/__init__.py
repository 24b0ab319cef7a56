"""What *Walls* knows and does: walls, zones, how much of a mix they need."""
