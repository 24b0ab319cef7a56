"""How much of a mix its walls and zones need: grams a m², on the wall, in tools, in loads."""

from dataclasses import dataclass, replace

from core.cans.buying import MARGIN_RATIO
from core.coats.need import Coats, HoldUp, Kit, Need, Patch, need
from core.coats.places import ZONED
from core.coats.rate import Rate
from core.errors import Refused, require
from core.mixing.loads import Loads, loads
from core.paints.blend import Blend
from core.working import Working
from mobile.session.coats.standing import job_coats
from mobile.session.job.jobs import settings_now
from mobile.session.known import Known, found
from mobile.session.mix.from_cans import paint_of
from mobile.session.mix.scale import room_g
from mobile.session.session import Session
from mobile.session.walls.rates import rate_of
from mobile.session.walls.walls import place_area_m2
from mobile.store.records import Mix, Paint, ToolKeeps, Wetting
from mobile.words import amounts as words

TOOLS = ("sleeve", "mini sleeve", "brush", "tray", "bucket", "cup")
# What stands in while nobody said: common practice, no published source.
USUAL_KEEPS_G = {
    "sleeve": 58.0,  # 230 mm, scraped
    "mini sleeve": 22.0,
    "brush": 8.0,
    "tray": 45.0,
    "bucket": 25.0,
    "cup": 7.0,
}
ROLLED = Wetting("sleeve", 1), Wetting("tray", 1)
USUAL_TOOLS = {
    "promoter": ROLLED,
    "base": (*ROLLED, Wetting("bucket", 1)),
    "glaze": (Wetting("mini sleeve", 1),),
    "opaque": (Wetting("brush", 1),),
    "clear": ROLLED,
}
LEAST_G = 0.1
KEEPS_G = 0.0, 200.0  # a large sleeve, not scraped


@dataclass(frozen=True, slots=True)
class Amount:
    """What a mix needs; `stands_in` names what nobody said yet."""

    patches: tuple[tuple[str, Patch], ...]  # by the name of the wall or zone
    rate: Rate
    blend: Blend
    need: Need
    loads: Loads | None  # None where nothing is needed
    stands_in: tuple[str, ...]

    @property
    def working(self) -> Working:
        """Put the workings one after the other."""
        then = self.loads.working if self.loads else ()
        return (*self.blend.working[:1], *self.rate.working, *self.need.working, *then)


def amount_of(known: Known, mix: Mix) -> Amount:
    """Find what a mix needs for all its coats; raise `Refused` if it can't be."""
    paints = tuple(paint_of(known, part.paint) for part in mix.parts)
    reckoned = rate_of(mix, paints)
    stands_in = [*reckoned.stands_in, *(["tools"] if mix.tools is None else [])]
    one, rate = reckoned.blend, reckoned.rate
    patches = patches_of(known, mix)
    coats = Coats(tuple(patch for _, patch in patches), rate.g_m2)
    kit = Kit(cling_g=keeps_g(known, "cup")) if mix.kit else None
    held = hold_ups(known, mix) if patches else ()
    needed = need(coats, one.density_g_ml, held, kit if patches else None)
    split = (
        loads(needed.need_g, load_most_g(known, one.density_g_ml))
        if needed.need_g >= LEAST_G
        else None
    )
    return Amount(patches, rate, one, needed, split, tuple(stands_in))


def load_most_g(known: Known, density_g_ml: float) -> float:
    """Give what scale and bucket take of paint, the cup on the scale known."""
    return room_g(known, density_g_ml)


def patches_of(known: Known, mix: Mix) -> tuple[tuple[str, Patch], ...]:
    """Give what a mix goes on: its zones, or the walls that have steps of its use."""
    if mix.use in ZONED and any(zone.mix == mix.id for zone in known.job_zones):
        return tuple(
            (zone.name, Patch(zone.area_m2, zone.coats_count))
            for zone in known.job_zones
            if zone.mix == mix.id
        )
    uses = {step.id: step.use for step in known.job.steps} if known.job else {}
    counts: dict[str, int] = {}
    for coat in job_coats(known):
        on_it = not mix.walls or coat.wall in mix.walls
        if uses[coat.step] == mix.use and coat.place == coat.wall and on_it:
            counts[coat.place] = counts.get(coat.place, 0) + coat.coats_count
    return tuple(
        (wall.name, Patch(place_area_m2(known, wall_id), count))
        for wall_id, count in counts.items()
        if (wall := found(known.walls, wall_id))
    )


def patch_g(patch: Patch, amount: Amount) -> float:
    """Give what one wall or zone takes in all its coats."""
    return patch.area_m2 * patch.coats_count * amount.rate.g_m2


def lacking_paints(known: Known, mix: Mix, amount: Amount) -> tuple[Paint, ...]:
    """Give the paints of a mix whose labels would say what is assumed now."""
    paints = [paint_of(known, part.paint) for part in mix.parts]
    no_density = "density" in amount.stands_in
    no_solids = "solids" in amount.stands_in
    return tuple(
        paint
        for paint in paints
        if (no_density and paint.density_g_ml is None) or (no_solids and paint.solids_ratio is None)
    )


def keeps_g(known: Known, tool: str) -> float:
    """Give what a tool keeps: as weighed, else the usual."""
    weighed = {one.tool: one.hold_up_g for one in known.settings.keeps}
    return weighed.get(tool, USUAL_KEEPS_G[tool])


def hold_ups(known: Known, mix: Mix) -> tuple[HoldUp, ...]:
    """Give what tools and cups keep of a mix over all its coats."""
    tools = USUAL_TOOLS[mix.use] if mix.tools is None else mix.tools
    several = [*tools, Wetting("cup", mix.cups_count)]
    return tuple(
        HoldUp(one.tool, keeps_g(known, one.tool), one.wettings_count)
        for one in several
        if one.wettings_count
    )


def amounts(known: Known) -> tuple[tuple[Mix, Amount], ...]:
    """Give what each mix of the open job needs; one that can't be reckoned is left out."""
    told = []
    for mix in known.job_mixes:
        try:
            told.append((mix, amount_of(known, mix)))
        except Refused:
            continue
    return tuple(told)


async def set_keeps(session: Session, keeps: tuple[ToolKeeps, ...], margin_ratio: float) -> None:
    """Keep what tools keep, and how much is bought above the need."""
    for one in keeps:
        require("hold_up_g", one.hold_up_g, *KEEPS_G)
    require("margin_ratio", margin_ratio, *MARGIN_RATIO)
    settings = replace(settings_now(session), keeps=keeps, margin_ratio=margin_ratio)
    await session.keep(settings, forget=("job/tools",))
    session.tell(words.TOOLS_KEPT)
