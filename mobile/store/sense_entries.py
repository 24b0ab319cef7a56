"""What an entry may say: `sense.py` of what happened."""

from collections.abc import Callable
from typing import Any, Final

from core.cans.drying import Air, dried_off
from core.cans.weighing import net
from core.errors import require
from core.mixing.check_weight import scale_error
from core.mixing.plan import FACTOR_RATIO, NET_G, Plan, each_in_cup_g
from core.mixing.scale import READING_G, SCALE_STEP_G
from core.waits.pair import INSTANT_S, MORE_S
from mobile.store import entries as e
from mobile.store.asks import DAY, like, maybe, one_of
from mobile.store.records import Record

POT_NUMBER: Final = 1, 10**6
COLDEST_C: Final = -60.0, 60.0
NET_HAIR_G: Final = 0.01  # of a weighing: what a sum in binary can be off, and far more


def _pot_started(pot: e.PotStarted) -> None:
    plan = Plan(pot.portions, 1.0, pot.scale_step_g, 0.0, pot.way, pot.parts_band_ratio)
    each_in_cup_g(plan, ())
    count = len(pot.portions)
    require("cans_count", len(pot.cans), count, count)
    require("lots_count", len(pot.lots), 0, count)
    require("pot_number", pot.number, *POT_NUMBER)
    maybe("cup_g", pot.cup_g, NET_G)


def _aim_changed(aim: e.AimChanged) -> None:
    bands = aim.parts_band_ratio
    each_in_cup_g(Plan(aim.portions, 1.0, SCALE_STEP_G[0], parts_band_ratio=bands), ())
    require("cans_count", len(aim.cans), len(aim.portions), len(aim.portions))
    one_of("why", aim.why, ("more", "correction", "spilt"))


def _stray_poured(pour: e.StrayPoured) -> None:
    require("net_g", pour.net_g, *NET_G)


def _spilt(spilt: e.Spilt) -> None:
    require("left_g", spilt.left_g, *NET_G)


def _cup_filled(cup: e.CupFilled) -> None:
    require("net_g", cup.net_g, *NET_G)


def _weighed_back(back: e.WeighedBack) -> None:
    require("net_g", back.net_g, *NET_G)


def _stood_open(cup: e.StoodOpen) -> None:
    dried_off(cup.open_s, cup.across_m, Air(cup.air_c, cup.rh_ratio, cup.air_m_per_s))


def _thrown_away(waste: e.ThrownAway) -> None:
    require("net_g", waste.net_g, *NET_G)


def _leftover_kept(jar: e.LeftoverKept) -> None:
    require("pot_number", jar.number, *POT_NUMBER)
    require("net_g", jar.net_g, *NET_G)
    maybe("coldest_c", jar.coldest_c, COLDEST_C)
    if jar.use_by_day:
        like("day", jar.use_by_day, DAY)


def _scale_checked(check: e.ScaleChecked) -> None:
    scale_error(check.known_g, check.reads_g, check.scale_step_g)


def _can_stirred(stirred: e.CanStirred) -> None:
    like("day", stirred.day, DAY)


def _poured(pour: e.Poured) -> None:
    require("net_g", pour.net_g, *NET_G)
    maybe("reads_g", pour.reads_g, READING_G)


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
    maybe("started_at_s", coat.started_at_s, (INSTANT_S[0], coat.finished_at_s))


def _still_tacky(tacky: e.StillTacky) -> None:
    require("more_s", tacky.more_s, *MORE_S)


def _caution_read(caution: e.CautionRead) -> None:
    like("day", caution.day, DAY)


def _whatever(_: object) -> None:
    """Ask nothing more of what only names something."""


ENTRY_CHECKS: Final[dict[type[Record], Callable[[Any], None]]] = {
    e.PotStarted: _pot_started,
    e.AimChanged: _aim_changed,
    e.Poured: _poured,
    e.StrayPoured: _stray_poured,
    e.Spilt: _spilt,
    e.CupFilled: _cup_filled,
    e.WeighedBack: _weighed_back,
    e.StoodOpen: _stood_open,
    e.ThrownAway: _thrown_away,
    e.LeftoverKept: _leftover_kept,
    e.ScaleChecked: _scale_checked,
    e.CanStirred: _can_stirred,
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
