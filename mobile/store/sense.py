"""What a record may say: what core would refuse, and what no place of the app could draw.

One small function a kind. Only files that come in are asked: what the app itself keeps was checked
by the verb that kept it. What records must be to each other is in `together.py`.
"""

import re
from collections.abc import Callable
from typing import Any, Final

from core.cans.buying import MARGIN_RATIO
from core.cans.drying import ACROSS_M
from core.cans.price import require_sizes, worth
from core.cans.weighing import GROSS_G, LABEL_L
from core.coats.need import AREA_M2, COATS_COUNT, HOLD_UP_G, LOSSES_COUNT, WETTINGS_COUNT
from core.coats.rate import FILM_UM, G_M2, LOSS_RATIO, SPREAD_M2_L
from core.coats.schedule import USES, require_schedule
from core.errors import Refused, require
from core.mixing.check_weight import CHECK_G
from core.mixing.over_pour import PRICE_PER_G
from core.mixing.plan import NET_G, WAYS
from core.mixing.scale import SCALE_STEP_G
from core.paints.blend import DENSITY_G_ML, SOLIDS_RATIO
from core.paints.recipe import require_recipe
from core.waits.pair import INSTANT_S, require_wait
from core.walls.area import DEDUCTED_ABOVE_M2, painted_area
from mobile.store import records as r
from mobile.store.asks import ID, LOOK, ROWS_COUNT, like, maybe, one_of
from mobile.store.errors import Senseless
from mobile.store.export import words_in
from mobile.store.sense_entries import ENTRY_CHECKS

SETTINGS: Final = "settings"
TAKEN: Final = frozenset({"weigh", "new"})  # ids of a draft, and of what an address makes new
FORM: Final = re.compile(r"[ -~]{1,300}")
FIELD: Final = re.compile(r"[a-z_]{1,40}(\.[0-9]{1,3}\.[0-9])?")
HALF: Final = re.compile("[\ud800-\udfff]")  # of a sign: no screen draws it
LETTERS_COUNT: Final = 0, 2000  # of any text: a screen would stand still at a book's worth
CAN_NUMBER: Final = 1, 9999  # what goes on a lid
PLANNED_G: Final = 1.0, 1e5
LOT_COUNT: Final = 0, 60
BUCKET_L: Final = 0.1, 200.0
CAPACITY_G: Final = 10.0, 1e5  # a pocket scale to a platform
TEXT_RATIO: Final = 0.5, 4.0
MIXED: Final = ("promoter", "base", "glaze", "opaque", "clear")
TOOLS: Final = ("sleeve", "mini sleeve", "brush", "tray", "bucket", "cup")


def require_sense(record: r.Record) -> None:
    """Raise `Senseless` if a record says what can't be."""
    try:
        _of_any(record)
        CHECKS[type(record)](record)
    except Refused as refusal:
        raise Senseless(type(record).__name__, name_of(record), refusal) from None


def name_of(record: r.Record) -> str:
    """Give what a person calls a record by; its id where it has no name."""
    if isinstance(record, r.Can):
        return str(record.number)
    return getattr(record, "name", "") or record.id


def _of_any(record: r.Record) -> None:
    require("at_s", record.at_s, *INSTANT_S)
    texts = words_in(record)
    require("letters_count", max(map(len, texts)), *LETTERS_COUNT)
    if half := HALF.search("\n".join(texts)):
        raise Refused("text", ascii(half[0]), *LETTERS_COUNT)
    if isinstance(record, r.Draft):
        like("id", record.id, FORM)
    else:
        like("id", record.id, ID)
    if isinstance(record, r.Settings) != (record.id == SETTINGS):
        raise Refused("id", record.id, 0, 0)
    if record.id in TAKEN and not isinstance(record, r.Draft):
        raise Refused("id", record.id, 0, 0)


def _job(job: r.Job) -> None:
    require("deducted_above_m2", job.deducted_above_m2, *DEDUCTED_ABOVE_M2)
    require_schedule(job.steps, job.waits)
    for step in job.steps:
        like("step", step.id, ID)


def _wall(wall: r.Wall) -> None:
    require("openings_count", len(wall.shape.openings), *ROWS_COUNT)
    painted_area(wall.shape)


def _zone(zone: r.Zone) -> None:
    # One that is larger than its wall can be kept: the wall was measured anew.
    require("zone_area_m2", zone.area_m2, *AREA_M2)
    require("coats_count", zone.coats_count, *COATS_COUNT)


def _paint(paint: r.Paint) -> None:
    like("day", paint.day, LOOK)
    like("lamp", paint.lamp, LOOK)
    maybe("density_g_ml", paint.density_g_ml, DENSITY_G_ML)
    maybe("solids_ratio", paint.solids_ratio, SOLIDS_RATIO)
    maybe("spread_m2_l", paint.spread_m2_l, SPREAD_M2_L)
    maybe("rate_g_m2", paint.g_m2, G_M2)
    if paint.sizes:
        require_sizes(paint.sizes)
    if paint.density_g_ml is not None and any(size.price is not None for size in paint.sizes):
        price_per_g = worth(paint.sizes, paint.density_g_ml).price_per_g
        require("price_per_g", price_per_g, *PRICE_PER_G)
    require("waits_count", len(paint.waits), *ROWS_COUNT)
    for label in paint.waits:
        one_of("use", label.use, ("", *USES))
        require_wait(label.wait)


def _can(can: r.Can) -> None:
    require("can_number", can.number, *CAN_NUMBER)
    maybe("label_l", can.label_l, LABEL_L)
    maybe("tare_g", can.tare_g, GROSS_G)
    maybe("across_m", can.across_m, ACROSS_M)
    one_of("tare", can.tare_from, ("", "empty", "unopened"))
    require("lot_letters_count", len(can.lot), *LOT_COUNT)


def _mix(mix: r.Mix) -> None:
    require_recipe(mix.parts)
    one_of("use", mix.use, MIXED)
    maybe("planned_g", mix.planned_g, PLANNED_G)
    maybe("rate_g_m2", mix.g_m2, G_M2)
    maybe("spread_m2_l", mix.spread_m2_l, SPREAD_M2_L)
    maybe("dft_um", mix.dft_um, FILM_UM)
    require("loss_ratio", mix.loss_ratio, *LOSS_RATIO)
    require("cups_count", mix.cups_count, *WETTINGS_COUNT)
    tools = mix.tools or ()
    require("tools_count", len(tools), *LOSSES_COUNT)
    for wetting in tools:
        one_of("tool", wetting.tool, TOOLS)
        require("wettings_count", wetting.wettings_count, *WETTINGS_COUNT)
    like("day", mix.day, LOOK)
    like("lamp", mix.lamp, LOOK)
    one_of("typed_as", mix.typed_as, ("parts", "percent", "grams"))
    require("versions_count", len(mix.versions), *ROWS_COUNT)
    for version in mix.versions:
        require("until_s", version.until_s, *INSTANT_S)
        require_recipe(version.parts)
        one_of("why", version.why, ("typed", "corrected"))


def _settings(settings: r.Settings) -> None:
    one_of("look", settings.look, ("dark", "dim", "light"))
    one_of("units", settings.units, ("metric", "us"))
    require("text_ratio", settings.text_ratio, *TEXT_RATIO)
    require("scale_step_g", settings.scale_step_g, *SCALE_STEP_G)
    require("capacity_g", settings.scale_capacity_g, *CAPACITY_G)
    maybe("cup_g", settings.cup_g, NET_G)
    require("margin_ratio", settings.margin_ratio, *MARGIN_RATIO)
    one_of("way", settings.way, WAYS)
    maybe("bucket_l", settings.bucket_l, BUCKET_L)
    maybe("known_g", settings.check_g, CHECK_G)
    for keeps in settings.keeps:
        one_of("tool", keeps.tool, TOOLS)
        require("hold_up_g", keeps.hold_up_g, *HOLD_UP_G)


def _draft(draft: r.Draft) -> None:
    require("fields_count", len(draft.fields), *ROWS_COUNT)
    for name, _ in draft.fields:
        like("field", name, FIELD)


CHECKS: Final[dict[type[r.Record], Callable[[Any], None]]] = {
    **ENTRY_CHECKS,
    r.Job: _job,
    r.Wall: _wall,
    r.Zone: _zone,
    r.Paint: _paint,
    r.Can: _can,
    r.Mix: _mix,
    r.Settings: _settings,
    r.Draft: _draft,
}
