"""What *Mix* knows and does: recipes, weigh-outs, pots, cups, jars."""
