"""Colours: what is typed or picked of a look, and what a mixture of paints looks like."""
