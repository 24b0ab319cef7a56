"""Why the book can't be opened or a commit did not happen; nothing has changed then."""


class Busy(OSError):
    """Another tab has the book, or a commit is still under way."""


class Full(OSError):
    """No room for this commit; what was committed before is intact."""


class Newer(OSError):
    """A newer app wrote this book: nothing was touched; start the newer app."""


class Damaged(OSError):
    """Nothing in the book reads whole; nothing was overwritten.

    `files` are its bytes as found, each under a name that a person can be shown.
    """

    def __init__(self, why: str, files: tuple[tuple[str, bytes], ...] = ()) -> None:
        super().__init__(why)
        self.files = files


class Unreadable(ValueError):
    """A document is not what the book's schema says; `path` leads to the first such place."""

    def __init__(self, why: str, path: tuple[str, ...] = ()) -> None:
        super().__init__(why, path)
        self.why, self.path = why, path

    def __str__(self) -> str:
        return f"{'.'.join(self.path)}: {self.why}" if self.path else self.why

    def under(self, name: str) -> "Unreadable":
        """Say where the place is, one level further out."""
        return Unreadable(self.why, (name, *self.path))
