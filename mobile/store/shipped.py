"""Files that ship with the app: `assets/`, from the checkout or from the site's stored archive."""

import mobile


def shipped(name: str) -> bytes:
    """Read a file of `assets/`; the app may lie in a zip, so its loader is asked."""
    loader, origin = mobile.__spec__.loader, mobile.__file__
    root = origin.replace("\\", "/").rsplit("/", 2)[0]
    data: bytes = loader.get_data(f"{root}/assets/{name}")  # type: ignore[union-attr]
    return data
