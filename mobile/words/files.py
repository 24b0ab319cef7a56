"""What is said of files: a job or everything as one file, and such a file coming back."""

from core.errors import Refused
from mobile.words import trouble

# What screens call them
TITLE, SMALL = "Files", "save, take in, back up"
EXPORT_JOB, EXPORT_JOB_MORE = "This job as a file", "for another phone, or to keep"
IMPORT, IMPORT_MORE = "A job from a file", "it comes beside what is here"
BACK_UP, BACK_UP_MORE = "Back up everything", "one file of all jobs, cans and settings"
RESTORE, RESTORE_MORE = "Restore a backup", "it takes the place of everything here"
RESTORE_ASK = (
    "The backup takes the place of all that is on this phone. What is here now is put aside first, "
    "and stands at the end of Files."
)
BEFORE_MORE = "from before a backup was restored: save it as a file"
ACCEPT = ".json,application/json"

SAVED = "The file is in the phone's downloads."
NO_JOB = "There is no job yet to make a file of."
NOTHING = "Nothing was changed."
EMPTY = "That file is empty, larger than 64 MB, or the phone can't read it."
TOO_LARGE = "That file is larger than 64 MB: Duskcoat writes none like it."
FOREIGN = "That is no file of Duskcoat. Choose one that Duskcoat has written."
NEWER = "A newer Duskcoat wrote that file. Take the new version on this phone first."
DAMAGED = "That file is damaged or cut short. Get it once more from where it came from."
IS_BACKUP = "That file is a backup of everything. Restore it, or choose the file of one job."
IS_JOB = "That file holds one job. Take it in as a job, or choose a backup."
SAME = "That is what this phone holds already."

KINDS = {
    "Job": "the job",
    "Wall": "the wall",
    "Zone": "the zone",
    "Paint": "the paint",
    "Can": "can",
    "Mix": "the mix",
    "Settings": "the settings",
    "Draft": "something half typed",
    "PotStarted": "the pot",
    "AimChanged": "a pot that was made more",
    "Poured": "a pour",
    "StrayPoured": "a pour from the wrong can",
    "Spilt": "a cup that was knocked over",
    "CupFilled": "a cup of a pot",
    "WeighedBack": "what was left of a pot",
    "StoodOpen": "a cup that stood open",
    "ThrownAway": "what went to waste of a pot",
    "LeftoverKept": "a jar",
    "ScaleChecked": "a check of the scale",
    "CanStirred": "a can that was stirred",
    "MadeMore": "a bigger batch",
    "KeptOver": "an over-pour",
    "ScaleRestarted": "a scale that went off",
    "TippedOut": "a pot that was tipped out",
    "Stirred": "a pot that was stirred",
    "CanWeighed": "the weighing of a can",
    "LidOff": "a lid that was off",
    "CoatFinished": "a finished coat",
    "StillTacky": "a coat that was tacky",
    "CautionRead": "a caution that was read",
    "Undone": "something taken back",
}
NAMED = ("Job", "Wall", "Zone", "Paint", "Can", "Mix", "PotStarted")
NAME_MOST = 40  # letters
WHY = {
    "at_s": "It has no day that a calendar knows.",
    "id": "It has no proper key.",
    "text": "A text in it can't be drawn.",
    "letters_count": "A text in it is longer than any name.",
    "different_steps_count": "Two of its steps are one.",
    "unknown_uses_count": "A step is of no kind that is known.",
    "early_hand_overs_count": "The hand-over is not its last step.",
    "different_pairs_count": "Two waits are for one pair of steps.",
    "astray_waits_count": "A wait does not lead to a later step.",
    "unknown_from_count": "A wait is counted from nowhere.",
    "different_paints_count": "A paint stands in it twice.",
    "paints_count": "It has no parts, or more than 24.",
    "portions_count": "It has no parts, or more than 24.",
    "cans_count": "Its cans don't go with its parts.",
    "unplanned_paints_count": "A paint went in that is no part of it.",
    "pours_count": "More was poured than anyone can.",
    "places_count": "It has more walls and zones than anyone paints.",
    "coats_in_all_count": "It has more coats than anyone paints.",
    "started_at_s": "It began after its end.",
}


def taken_in(job: str, new_count: int, changed_count: int, stay_count: int) -> str:
    """Say what a job's file has brought."""
    if not new_count + changed_count:
        stays = " What is newer on this phone stays." if stay_count else ""
        return f"{job}: all of that file is here already. {NOTHING}{stays}"
    changed = f", {changed_count} changed" if changed_count else ""
    stays = f", {stay_count} newer here and left as they are" if stay_count else ""
    return f"{job} is on this phone: {new_count} added{changed}{stays}."


def moved(on_lid: int, here: int) -> str:
    """Say that a can got another number, as this phone has one with that number."""
    return f"Can {on_lid} of the file is can {here} here: paint {here} on its lid."


def put_away(job: str) -> str:
    """Say where a job is that was put away before its file was made."""
    return f"{job} is put away: it is among the other jobs."


def restored(aside: str) -> str:
    """Say that a backup is in place, and where that is which was here before."""
    kept = f" What was here before is at the end of Files: {aside}." if aside else ""
    return f"The backup is in place.{kept}"


def declined(why: str) -> str:
    """Say why a file is not taken, and that all is as it was."""
    return f"{why} {NOTHING}"


def of_file(name: str, said: str) -> str:
    """Say which file is not taken."""
    return f"{_short(name)}: {said}" if name else said


def damaged(kind: str) -> str:
    """Say that a file is damaged, and where if that is known."""
    where = KINDS.get(kind)
    return f"{DAMAGED} In it, {where} can't be read." if where else DAMAGED


def called(kind: str, name: str) -> str:
    """Name what is wrong in a file: by its name where it has one."""
    return f"{KINDS[kind]} {_short(name)}" if kind in NAMED else KINDS[kind]


def _short(name: str) -> str:
    """Give as much of a name as stands in a line, and none of what can't be drawn."""
    return name.encode("utf-8", "replace").decode("utf-8")[:NAME_MOST]


def cant_be(kind: str, name: str, why: str) -> str:
    """Say what in a file can't be, and why."""
    return f"In that file, {called(kind, name)} can't be. {why}"


def why(refusal: Refused, said: str) -> str:
    """Say what is wrong with a figure of a file; `said` is how one that was typed is refused."""
    if refusal.name in WHY:
        return WHY[refusal.name]
    if isinstance(refusal.value, str):
        return f"{trouble.named(refusal.name)}: what it says is not known."
    return f"{said.rstrip('.')}."


def astray(kind: str, name: str) -> str:
    """Say that something in a file belongs to what is not in it."""
    return f"In that file, {called(kind, name)} belongs to something that is missing."


def clash(kind: str, name: str) -> str:
    """Say that file and phone tell one thing in two ways."""
    return (
        f"This phone has {called(kind, name)} too, and the file tells it otherwise. "
        "What has happened is never changed."
    )


def job_file(job: str, day: str) -> str:
    """Name the file of a job.

    >>> job_file("Moth Cellar, 2nd", "2031-05-17")
    'duskcoat-moth-cellar-2nd-2031-05-17.json'
    """
    letters = (sign if sign.isalnum() else " " for sign in job.lower())
    words = "".join(letters)[:NAME_MOST].split()
    return f"{'-'.join(['duskcoat', *words, day])}.json"


def backup_file(day: str) -> str:
    """Name the file of everything."""
    return f"duskcoat-backup-{day}.json"
