"""What *Job* knows and does: jobs, the schedule, the hand-over, files."""
