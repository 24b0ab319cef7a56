"""Job: schedule, settings, export."""
