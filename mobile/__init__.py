"""The Flet app, its store and the generator of the offline site."""
