"""What only the page can do."""
