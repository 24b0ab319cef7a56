"""A recipe: its parts, looks, versions."""
