"""What *Job* says."""

from collections.abc import Callable

Saying = Callable[[str], str]


def first_job(others: int) -> str:
    """Name a job that was begun without a name."""
    return "My job" if others == 0 else f"My job {others + 1}"


def begun(name: str) -> str:
    """Say that a job was begun."""
    return f"{name} is begun."


def now_at(name: str) -> str:
    """Say which job is on the screen."""
    return f"Now at {name}."


def named(name: str) -> str:
    """Say the job's new name."""
    return f"The job is called {name}."


def rule_set(name: str) -> str:
    """Say that the rule for openings has changed."""
    return f"{name}: the rule for openings is kept."


def step_kept(name: str) -> str:
    """Say that a step is in the schedule."""
    return f"{name} is in the schedule."
