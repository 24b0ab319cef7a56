"""Every figure of the job worked by hand, read from core by way of the session."""

from collections.abc import Iterator
from dataclasses import replace

from core.mixing.plan import EACH, TOTAL, Plan, Pour
from core.mixing.portions import portions, small_below_g
from core.mixing.weigh_out import next_pour
from core.paints.blend import solids
from mobile.session.cans.can import can_now, reading_of
from mobile.session.cans.goes_over import goes_over
from mobile.session.cans.prices import prices_per_g
from mobile.session.job.hand_over import ahead
from mobile.session.job.shopping import price_of_all, wanted
from mobile.session.known import Known
from mobile.session.mix.begin import split
from mobile.session.mix.cups import for_people
from mobile.session.mix.from_cans import paint_of
from mobile.session.walls.amounts import Amount, amount_of
from mobile.session.walls.walls import area_of, job_area_m2
from mobile.store.entries import PotStarted
from mobile.store.pot import Pot
from mobile.store.pot_of import pot_of
from mobile.store.records import Mix
from tests.session import moth_cellar as job

PEOPLE = ("one", 0.3), ("two", 0.27), ("three", 0.23), ("four", 0.2)  # of the job: area shares
COATS = {
    "promoter": "promoter",
    "base": "base",
    "ember wing": "G1",
    "rose wing": "G2",
    "leaf": "G3",
    "halo": "G4",
    "dusk violet": "G5",
    "hot orange": "T1",
    "pale spark": "T2",
    "clear coat": "clear",
}
PAINTS = {
    "adhesion promoter": "PR",
    "fluorescent violet": "BF",
    "standard aubergine": "BS",
    "fluorescent orange": "FO",
    "fluorescent yellow": "FY",
    "fluorescent pink": "FP",
    "fluorescent green": "FG",
    "standard white": "SW",
    "clear glaze medium": "CM",
    "UV-transmitting clear coat": "CC",
}
STEP_G, CUP_G, OVER_G, CAN_7_GROSS_G, START_S = 0.1, 21.4, 4.6, 257.7, 1.9e9
NOW_G = {1: 640.0, 8: 314.4, 12: 836.9, 14: 1149.0}

Figure = tuple[str, object]


def figures(known: Known) -> dict[str, object]:
    """Give all figures by their names."""
    told: list[Figure] = [*areas(known), *weigh_out(known), *ledger(known), *cans(known)]
    told += among_four(known)
    for name, coat in COATS.items():
        told += of_coat(known, job.mix(known, name), coat)
    return dict([*told, *buying(known), *waits(known)])


def areas(known: Known) -> Iterator[Figure]:
    for name, wall in (("W1", "Wall 1"), ("W2", "Wall 2")):
        area = area_of(known, job.wall(known, wall).shape)
        yield f"area.{name}.gross", area.gross_m2
        yield f"area.{name}.net", area.net_m2
    yield "area.total", job_area_m2(known)


def of_coat(known: Known, mix: Mix, coat: str) -> Iterator[Figure]:
    amount = amount_of(known, mix)
    need, loads = amount.need, amount.loads
    assert loads is not None
    yield f"{coat}.area", sum(patch.area_m2 for _, patch in amount.patches)
    yield f"{coat}.g_m2", amount.rate.g_m2
    yield f"{coat}.density", amount.blend.density_g_ml
    yield f"{coat}.volume_solids", volume_solids(known, mix)
    yield f"{coat}.wall_g", need.wall_g
    yield f"{coat}.loss_g", need.kept_g
    yield f"{coat}.kit_g", need.kit_g
    yield f"{coat}.need_g", need.need_g
    yield f"{coat}.litres", need.need_l
    yield f"{coat}.batch_g", loads.batch_g
    yield from parts(known, mix, amount, coat)


def volume_solids(known: Known, mix: Mix) -> float:
    paints = [paint_of(known, part.paint) for part in mix.parts]
    densities = tuple(paint.density_g_ml or 0.0 for paint in paints)
    ratios = tuple(paint.solids_ratio or 0.0 for paint in paints)
    return solids(mix.parts, densities, ratios).solids_ratio


def parts(known: Known, mix: Mix, amount: Amount, coat: str) -> Iterator[Figure]:
    loads = amount.loads
    assert loads is not None
    if coat == "base":
        yield "base.loads", loads.loads_count
        yield "base.load_g", loads.load_g
    for one in portions(mix.parts, loads.load_g, STEP_G):
        paint = PAINTS[paint_of(known, one.paint).name]
        yield f"{coat}.part.{paint}", one.net_g * loads.loads_count
        if coat == "base":
            yield f"base.load.{paint}", one.net_g


def weigh_out(known: Known) -> Iterator[Figure]:
    mix = job.mix(known, "ember wing")
    loads = amount_of(known, mix).loads
    assert loads is not None
    yield "weigh.small_below_g", small_below_g(loads.load_g)
    order = split(known, mix, loads.load_g, CUP_G)
    ways = (("running", 0.0, TOTAL), ("each", 0.0, EACH), ("gross", CUP_G, TOTAL))
    for name, offset_g, way in ways:
        plan = Plan(order, 1.0, STEP_G, offset_g, way)
        poured: tuple[Pour, ...] = ()
        while target := next_pour(plan, poured):
            yield f"weigh.{PAINTS[paint_of(known, target.paint).name]}.{name}", target.reads_g
            poured = (*poured, Pour(target.paint, target.net_g))
    yield from over_pour(known, mix, loads.load_g)


def among_four(known: Known) -> Iterator[Figure]:
    """Split what all loads of the base come to, once boxed, by the share of each person."""
    mix = job.mix(known, "base")
    loads = amount_of(known, mix).loads
    assert loads is not None
    pot = begun(known, job.mix(known, "ember wing"), 1.0)
    boxed = replace(pot, poured=(Pour("base", loads.batch_g),))
    cups = for_people(boxed, PEOPLE)
    for number, (_, net_g) in enumerate(cups, 1):
        yield f"split.person{number}", net_g


def over_pour(known: Known, mix: Mix, batch_g: float) -> Iterator[Figure]:
    pot = begun(known, mix, batch_g)
    first, second, _ = pot.started.portions
    poured = Pour(first.paint, first.net_g), Pour(second.paint, second.net_g + OVER_G)
    three = replace(pot, poured=poured).answers(5000.0, prices_per_g(known, pot))
    yield "over.make.factor", three.make.factor_ratio
    yield "over.make.total", three.make.total_g
    for one in three.make.adds:
        yield f"over.make.add.{PAINTS[paint_of(known, one.paint).name]}", one.net_g
    yield "over.make.extra_g", three.make.extra_g
    yield "over.make.extra_minor", three.make.extra_price
    yield "over.keep.share", three.keep.share_ratio
    yield "over.keep.share_planned", three.keep.planned_ratio
    yield "over.keep.total", three.keep.total_g
    yield "over.tip.lost_g", three.tip.lost_g
    yield "over.tip.lost_minor", three.tip.lost_price


def begun(known: Known, mix: Mix, batch_g: float) -> Pot:
    order = split(known, mix, batch_g, CUP_G)
    stamp = "pot", START_S, "phone"
    started = PotStarted(
        *stamp, mix.job, mix.id, mix.name, 3, order, ("",) * len(order), STEP_G, CUP_G
    )
    return pot_of(started, ())


def ledger(known: Known) -> Iterator[Figure]:
    can = job.can(known, 7)
    now = can_now(known, can)
    found = reading_of(now, CAN_7_GROSS_G, STEP_G)
    told = {line.name: line.value for line in found.working}
    yield "ledger.tare", can.tare_g
    yield "ledger.dried_bound", now.dried_bound_g
    yield "ledger.dried", now.dried_bound_g / 2
    yield "ledger.should_be", now.balance.should_be_g
    yield "ledger.net", found.net_g
    yield "ledger.gap", found.gap_g
    yield "ledger.u", told["u_g"]
    yield "ledger.speak_above_g", told["speak_above_g"]
    yield "ledger.flag", int(found.speaks)


def cans(known: Known) -> Iterator[Figure]:
    for number, gross_g in NOW_G.items():
        can = job.can(known, number)
        found = reading_of(can_now(known, can), gross_g, STEP_G)
        yield f"can.can {number}.tare", can.tare_g
        yield f"can.can {number}.net", found.net_g
        for one in goes_over(known, can, found.net_g):
            yield f"can.can {number}.m2_left", one.over_m2


def buying(known: Known) -> Iterator[Figure]:
    several = wanted(known)
    for one in several:
        name, basket = PAINTS[one.paint.name], one.basket
        assert basket is not None
        yield f"buy.{name}.g", one.net_g
        yield f"buy.{name}.litres", one.volume_l
        yield f"buy.{name}.set", list(basket.counts)
        yield f"buy.{name}.price_minor", basket.price
        yield f"buy.{name}.spare_litres", basket.spare_l
    yield "buy.total_minor", price_of_all(several)


def waits(known: Known) -> Iterator[Figure]:
    plan = ahead(known, START_S)
    assert plan is not None
    yield "wait.waits_only_h", plan.waits_only_s / 3600
    yield "wait.nonstop_h", (plan.hand_over_s - START_S) / 3600
