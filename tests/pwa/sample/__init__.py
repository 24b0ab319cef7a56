"""A small app in the place of ours: it uses the page's every service and shows what it hears."""
