"""The five places, in the order in which they stand on the bar, and what holds everywhere."""

COATS, MIX, CANS, WALLS, JOB = "Coats", "Mix", "Cans", "Walls", "Job"
PLACES = (COATS, MIX, CANS, WALLS, JOB)

UNDO, CLOSE, BACK, HOW, KEEP, REMOVE, CLEAR = (
    *("Undo", "Close", "Back", "How?", "Keep", "Remove", "Clear"),
)
UNKNOWN = "not known yet"
DRAFT = "Typed earlier and not kept yet."
DEMO = "Look at the demo job"
OPENING = "Getting the book out."
TAKE_OVER = "Use it here"
IN_OTHER_TAB = "Duskcoat is in use in another tab or window."
IN_OTHER_TAB_MORE = "Two at once could write over each other, so only one keeps the book."
TAKEN_OVER = "Duskcoat was opened in another tab: this one keeps nothing more."
NEW_VERSION = "A new version is here. Nothing you kept changes."
USE_NEW = "Use it now"
LATER = "Later"
ASIDE = "A damaged book was put aside; the last good one is in use."
ASIDE_SAVE = "Save the damaged one as a file"
NEWER = (
    "This phone's book was written by a newer Duskcoat. Nothing was changed: start that version."
)
DAMAGED = "The book can't be read and there is no good copy. It was left as it is."
DAMAGED_MORE = "Save it as a file first: what is in it may still be read elsewhere."
AGAIN = "Try again"
DAMAGED_SAVE = "Save it as a file"
BEGIN_ANEW = "Put it aside and begin anew"
UNSHOWABLE = "What is in the book can't be shown."
UNSHOWABLE_MORE = "Nothing in it was changed. Save it as a file first, then start again."
SAVE = "Save everything as a file"
NO_RING = "This phone may not ring with its screen off."
LOCKED = "places locked until it is stirred"


def on_the_scale(name: str, batch: str) -> str:
    """Say what is on the scale."""
    return f"{name[:1].upper()}{name[1:]}, {batch}"
