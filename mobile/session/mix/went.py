"""Where a pot went: on walls, in tools, dried off, left in it, in cups and jars, to waste."""

from dataclasses import dataclass

from core.cans.drying import dried_off
from core.mixing.account import Account, Used, account
from core.working import Working
from mobile.session.cans.can import air_of
from mobile.session.known import Known, found
from mobile.session.mix.cups import cups_of
from mobile.session.mix.jars import left_g
from mobile.session.mix.leftovers import jars_of
from mobile.session.mix.pots import pots
from mobile.session.walls.amounts import hold_ups
from mobile.store.entries import CupFilled, StoodOpen, ThrownAway, WeighedBack
from mobile.store.pot import Pot


@dataclass(frozen=True, slots=True)
class WhereItWent:
    """What became of a pot: what its cups and jars hold, what is waste, and the account of it.

    `moved_g` went out of its jars into other pots.
    """

    in_cups_g: float
    in_jars_g: float
    moved_g: float
    waste_g: float
    account: Account
    dried: Working


def where_it_went(known: Known, pot: Pot) -> WhereItWent:
    """Put together what became of a pot."""
    in_cups_g = sum(cup.now_g for cup in cups_of(known, pot))
    jars = jars_of(known, pot)
    in_jars_g = sum(left_g(known, jar) for jar in jars)
    moved_g = sum(jar.net_g for jar in jars) - in_jars_g
    thrown_g = sum(e.net_g for e in known.of(ThrownAway) if e.pot == pot.id)
    waste_g = thrown_g + pot.tipped_g
    dried = tuple(
        dried_off(e.open_s, e.across_m, air_of(e)) for e in known.of(StoodOpen) if e.pot == pot.id
    )
    there_g = pot.left_g + in_cups_g + in_jars_g
    bound_g = sum(one.bound_g for one in dried)
    used = Used(pot.made_g, there_g, waste_g, bound_g, tools_g(known, pot), moved_g)
    reading = CupFilled | WeighedBack
    count = sum(1 for e in known.entries if isinstance(e, reading) and e.pot == pot.id)
    went = account(used, pot.plan.scale_step_g, len(pot.poured) + count)
    working = tuple(line for one in dried for line in one.working)
    return WhereItWent(in_cups_g, in_jars_g, moved_g, waste_g, went, working)


def tools_g(known: Known, pot: Pot) -> float:
    """Give what tools and cups usually keep of a pot: its part of what they keep of its mix."""
    mix = found(known.mixes, pot.started.mix)
    if mix is None:
        return 0.0
    own = (one for one in pots(known) if one.started.mix == mix.id and one.ended == "stirred")
    made_g = sum(one.made_g for one in own)
    kept_g = sum(one.hold_up_g * one.wettings_count for one in hold_ups(known, mix))
    return kept_g * min(1.0, pot.made_g / made_g) if made_g else 0.0
