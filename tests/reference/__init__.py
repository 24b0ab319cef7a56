"""The job worked by hand: every figure of a first whole job, and what must move with what."""
