"""Why the book can't be opened, a commit did not happen or a file is refused; nothing has changed.

A file that came in is refused with `Unreadable` or one of its kinds, or with `Newer`.
"""

from core.errors import Refused


class Busy(OSError):
    """Another tab has the book, or a commit is still under way."""


class Full(OSError):
    """No room for this commit; what was committed before is intact."""


class Newer(OSError):
    """A newer app wrote this book, or this file: nothing was touched; start the newer app."""


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


class Foreign(Unreadable):
    """Another program wrote this file, or it is no text at all."""


class TooLarge(Unreadable):
    """A file is larger than any that this app writes."""


class WrongFile(Unreadable):
    """A file of one job where everything was asked for, or the other way round."""


class Senseless(Unreadable):
    """A record says what can't be: `kind` is its class, `refusal` is what core has against it."""

    def __init__(self, kind: str, name: str, refusal: Refused) -> None:
        super().__init__(str(refusal), (kind, name))
        self.kind, self.name, self.refusal = kind, name, refusal


class Astray(Unreadable):
    """A record names another one, in its field `field`, that is not there."""

    def __init__(self, kind: str, name: str, field: str) -> None:
        super().__init__("leads nowhere", (kind, name, field))
        self.kind, self.name, self.field = kind, name, field


class Clash(Unreadable):
    """A file and the book have one entry with two contents, or one id for two kinds of record."""

    def __init__(self, kind: str, name: str) -> None:
        super().__init__("is here already, with other contents", (kind, name))
        self.kind, self.name = kind, name
