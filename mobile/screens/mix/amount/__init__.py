"""How much of a mix."""
