"""One folder a place, one file a screen."""
