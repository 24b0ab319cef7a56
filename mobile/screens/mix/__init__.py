"""Mix: recipes, weigh-out, pots."""
