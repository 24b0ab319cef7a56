"""What the app knows, and the verbs that change it."""
