"""What pytest leaves alone here."""

collect_ignore = ["tab/tab.py"]  # it runs in a browser's Python only
