"""The scale and the bucket: what they take, how they are read, and the daily check weight."""

from dataclasses import replace

from core.errors import require
from core.mixing.check_weight import ScaleError, scale_error, suffers
from core.paints.blend import DENSITY_G_ML, ML_PER_L
from mobile import clock
from mobile.session.job.jobs import CAPACITY_G, settings_now
from mobile.session.known import Known
from mobile.session.session import Session, Undo
from mobile.store.entries import ScaleChecked
from mobile.words import scale as words

BUCKET_L = 0.1, 200.0
FORM, CHECK_FORM = "job/scale", "job/check"


def room_g(known: Known, density_g_ml: float | None = None, cup_g: float | None = None) -> float:
    """Find how much paint scale and bucket take; where no density is known the scale alone says.

    The cup that was weighed last stands on the scale, where no other is named.
    """
    settings = known.settings
    on_scale_g = settings.scale_capacity_g - ((settings.cup_g or 0.0) if cup_g is None else cup_g)
    if settings.bucket_l is None or density_g_ml is None:
        return max(0.0, on_scale_g)
    require("density_g_ml", density_g_ml, *DENSITY_G_ML)
    return max(0.0, min(on_scale_g, settings.bucket_l * density_g_ml * ML_PER_L))


async def set_scale(session: Session, capacity_g: float, bucket_l: float | None) -> None:
    """Keep what the scale can carry and the bucket can hold."""
    require("capacity_g", capacity_g, *CAPACITY_G)
    if bucket_l is not None:
        require("bucket_l", bucket_l, *BUCKET_L)
    before = session.known.settings
    after = replace(settings_now(session), scale_capacity_g=capacity_g, bucket_l=bucket_l)
    await session.keep(after, forget=(FORM,))
    session.tell(words.KEPT, Undo(things=(before,)))


async def check_scale(session: Session, known_g: float, reads_g: float) -> ScaleError:
    """Keep what a known mass showed on the scale."""
    step_g = session.known.settings.scale_step_g
    found = scale_error(known_g, reads_g, step_g)
    entry = ScaleChecked(*session.stamp(), known_g, reads_g, step_g)
    await session.keep(entry, replace(settings_now(session), check_g=known_g), forget=(CHECK_FORM,))
    session.tell(words.checked(found.error_g, step_g), Undo(entries=(entry.id,)))
    return found


def check_of_today(known: Known) -> ScaleChecked | None:
    """Give the newest check of today; None where the scale was not checked."""
    today = clock.day(clock.now_s())
    return next((e for e in reversed(known.of(ScaleChecked)) if clock.day(e.at_s) == today), None)


def error_g(known: Known) -> float:
    """Give how far off the scale is by today's check; 0 without one, or if it says nothing."""
    check = check_of_today(known)
    if check is None:
        return 0.0
    found = scale_error(check.known_g, check.reads_g, check.scale_step_g)
    return found.error_g if found.speaks else 0.0


def part_suffers(known: Known, part_g: float) -> bool:
    """Tell whether a part is so small that the scale's error spoils it."""
    off_g = error_g(known)
    return bool(off_g) and suffers(part_g, off_g, known.settings.scale_step_g)
