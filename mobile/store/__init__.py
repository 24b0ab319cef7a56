"""What survives: the book and its doors."""
