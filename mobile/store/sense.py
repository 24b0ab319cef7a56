"""What a record may say: what core would refuse, and what no place of the app could draw.

One small function a kind. Only files that come in are asked: what the app itself keeps was checked
by the verb that kept it. What records must be to each other is in `together.py`.
"""

import re
from collections.abc import Callable, Iterable
from typing import Any, Final

from core.cans.buying import MARGIN_RATIO
from core.cans.drying import ACROSS_M, Air, dried_off
from core.cans.price import require_sizes, worth
from core.cans.weighing import GROSS_G, LABEL_L, net
from core.coats.need import AREA_M2, COATS_COUNT, HOLD_UP_G, LOSSES_COUNT, WETTINGS_COUNT
from core.coats.rate import FILM_UM, G_M2, LOSS_RATIO, SPREAD_M2_L
from core.coats.schedule import USES, require_schedule
from core.errors import Refused, require
from core.mixing.over_pour import PRICE_PER_G
from core.mixing.plan import FACTOR_RATIO, NET_G, Plan, each_in_cup_g
from core.mixing.scale import READING_G, SCALE_STEP_G
from core.paints.blend import DENSITY_G_ML, SOLIDS_RATIO
from core.paints.recipe import require_recipe
from core.waits.pair import INSTANT_S, MORE_S, require_wait
from core.walls.area import DEDUCTED_ABOVE_M2, painted_area
from mobile.store import entries as e
from mobile.store import records as r
from mobile.store.errors import Senseless
from mobile.store.export import words_in

SETTINGS: Final = "settings"
TAKEN: Final = frozenset({"weigh", "new"})  # ids of a draft, and of what an address makes new
ID: Final = re.compile(r"[0-9A-Za-z_.:-]{1,100}")  # it is part of an address
FORM: Final = re.compile(r"[ -~]{1,300}")
FIELD: Final = re.compile(r"[a-z_]{1,40}(\.[0-9]{1,3}\.[0-9])?")
HALF: Final = re.compile("[\ud800-\udfff]")  # of a sign: no screen draws it
LOOK: Final = re.compile(r"#[0-9a-fA-F]{6}|")
DAY: Final = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
LETTERS_COUNT: Final = 0, 2000  # of any text: a screen would stand still at a book's worth
ROWS_COUNT: Final = 0, 5000
CAN_NUMBER: Final = 1, 9999  # what goes on a lid
POT_NUMBER: Final = 1, 10**6
PLANNED_G: Final = 1.0, 1e5
CAPACITY_G: Final = 10.0, 1e5  # a pocket scale to a platform
TEXT_RATIO: Final = 0.5, 4.0
NET_HAIR_G: Final = 0.01  # of a weighing: what a sum in binary can be off, and far more
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
        _like("id", record.id, FORM)
    else:
        _like("id", record.id, ID)
    if isinstance(record, r.Settings) != (record.id == SETTINGS):
        raise Refused("id", record.id, 0, 0)
    if record.id in TAKEN and not isinstance(record, r.Draft):
        raise Refused("id", record.id, 0, 0)


def _like(name: str, text: str, form: re.Pattern[str]) -> None:
    if not form.fullmatch(text):
        raise Refused(name, text[:40], 0, 0)


def _one_of(name: str, text: str, known: Iterable[str]) -> None:
    if text not in known:
        raise Refused(name, text[:40], 0, 0)


def _maybe(name: str, value: float | None, limits: tuple[float, float]) -> None:
    if value is not None:
        require(name, value, *limits)


def _job(job: r.Job) -> None:
    require("deducted_above_m2", job.deducted_above_m2, *DEDUCTED_ABOVE_M2)
    require_schedule(job.steps, job.waits)
    for step in job.steps:
        _like("step", step.id, ID)


def _wall(wall: r.Wall) -> None:
    require("openings_count", len(wall.shape.openings), *ROWS_COUNT)
    painted_area(wall.shape)


def _zone(zone: r.Zone) -> None:
    # One that is larger than its wall can be kept: the wall was measured anew.
    require("zone_area_m2", zone.area_m2, *AREA_M2)
    require("coats_count", zone.coats_count, *COATS_COUNT)


def _paint(paint: r.Paint) -> None:
    _like("day", paint.day, LOOK)
    _like("lamp", paint.lamp, LOOK)
    _maybe("density_g_ml", paint.density_g_ml, DENSITY_G_ML)
    _maybe("solids_ratio", paint.solids_ratio, SOLIDS_RATIO)
    _maybe("spread_m2_l", paint.spread_m2_l, SPREAD_M2_L)
    _maybe("rate_g_m2", paint.g_m2, G_M2)
    if paint.sizes:
        require_sizes(paint.sizes)
    if paint.density_g_ml is not None and any(size.price is not None for size in paint.sizes):
        price_per_g = worth(paint.sizes, paint.density_g_ml).price_per_g
        require("price_per_g", price_per_g, *PRICE_PER_G)
    require("waits_count", len(paint.waits), *ROWS_COUNT)
    for label in paint.waits:
        _one_of("use", label.use, ("", *USES))
        require_wait(label.wait)


def _can(can: r.Can) -> None:
    require("can_number", can.number, *CAN_NUMBER)
    _maybe("label_l", can.label_l, LABEL_L)
    _maybe("tare_g", can.tare_g, GROSS_G)
    _maybe("across_m", can.across_m, ACROSS_M)
    _one_of("tare", can.tare_from, ("", "empty", "unopened"))


def _mix(mix: r.Mix) -> None:
    require_recipe(mix.parts)
    _one_of("use", mix.use, MIXED)
    _maybe("planned_g", mix.planned_g, PLANNED_G)
    _maybe("rate_g_m2", mix.g_m2, G_M2)
    _maybe("spread_m2_l", mix.spread_m2_l, SPREAD_M2_L)
    _maybe("dft_um", mix.dft_um, FILM_UM)
    require("loss_ratio", mix.loss_ratio, *LOSS_RATIO)
    require("cups_count", mix.cups_count, *WETTINGS_COUNT)
    tools = mix.tools or ()
    require("tools_count", len(tools), *LOSSES_COUNT)
    for wetting in tools:
        _one_of("tool", wetting.tool, TOOLS)
        require("wettings_count", wetting.wettings_count, *WETTINGS_COUNT)


def _settings(settings: r.Settings) -> None:
    _one_of("look", settings.look, ("dark", "dim", "light"))
    _one_of("units", settings.units, ("metric", "us"))
    require("text_ratio", settings.text_ratio, *TEXT_RATIO)
    require("scale_step_g", settings.scale_step_g, *SCALE_STEP_G)
    require("capacity_g", settings.scale_capacity_g, *CAPACITY_G)
    _maybe("cup_g", settings.cup_g, NET_G)
    require("margin_ratio", settings.margin_ratio, *MARGIN_RATIO)
    for keeps in settings.keeps:
        _one_of("tool", keeps.tool, TOOLS)
        require("hold_up_g", keeps.hold_up_g, *HOLD_UP_G)


def _draft(draft: r.Draft) -> None:
    require("fields_count", len(draft.fields), *ROWS_COUNT)
    for name, _ in draft.fields:
        _like("field", name, FIELD)


def _pot_started(pot: e.PotStarted) -> None:
    each_in_cup_g(Plan(pot.portions, 1.0, pot.scale_step_g), ())
    require("cans_count", len(pot.cans), len(pot.portions), len(pot.portions))
    require("pot_number", pot.number, *POT_NUMBER)
    _maybe("cup_g", pot.cup_g, NET_G)


def _poured(pour: e.Poured) -> None:
    require("net_g", pour.net_g, *NET_G)
    _maybe("reads_g", pour.reads_g, READING_G)


def _made_more(more: e.MadeMore) -> None:
    require("factor_ratio", more.factor_ratio, *FACTOR_RATIO)


def _scale_restarted(restart: e.ScaleRestarted) -> None:
    require("reads_g", restart.reads_g, *READING_G)
    require("offset_g", restart.offset_g, *READING_G)


def _can_weighed(weighed: e.CanWeighed) -> None:
    paint_g = net(weighed.gross_g, weighed.tare_g).net_g
    require("net_g", weighed.net_g, max(0.0, paint_g - NET_HAIR_G), paint_g + NET_HAIR_G)
    require("net_g", weighed.net_g, *NET_G)


def _lid_off(lid: e.LidOff) -> None:
    dried_off(lid.open_s, lid.across_m, Air(lid.air_c, lid.rh_ratio, lid.air_m_per_s))


def _coat_finished(coat: e.CoatFinished) -> None:
    require("finished_at_s", coat.finished_at_s, *INSTANT_S)
    _maybe("started_at_s", coat.started_at_s, (INSTANT_S[0], coat.finished_at_s))


def _still_tacky(tacky: e.StillTacky) -> None:
    require("more_s", tacky.more_s, *MORE_S)


def _caution_read(caution: e.CautionRead) -> None:
    _like("day", caution.day, DAY)


def _whatever(_: object) -> None:
    """Ask nothing more of what only names something."""


CHECKS: Final[dict[type[r.Record], Callable[[Any], None]]] = {
    r.Job: _job,
    r.Wall: _wall,
    r.Zone: _zone,
    r.Paint: _paint,
    r.Can: _can,
    r.Mix: _mix,
    r.Settings: _settings,
    r.Draft: _draft,
    e.PotStarted: _pot_started,
    e.Poured: _poured,
    e.MadeMore: _made_more,
    e.KeptOver: _whatever,
    e.ScaleRestarted: _scale_restarted,
    e.TippedOut: _whatever,
    e.Stirred: _whatever,
    e.CanWeighed: _can_weighed,
    e.LidOff: _lid_off,
    e.CoatFinished: _coat_finished,
    e.StillTacky: _still_tacky,
    e.CautionRead: _caution_read,
    e.Undone: _whatever,
}
