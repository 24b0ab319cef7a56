"""What core would refuse is refused in a file, with the record's kind and name."""

import json
from typing import Any, get_args

import pytest

from mobile.session.job.jobs import CAPACITY_G
from mobile.session.walls.amounts import TOOLS, USUAL_TOOLS
from mobile.session.walls.rates import USUAL_G_M2
from mobile.store import sense
from mobile.store.codec import KINDS
from mobile.store.errors import Senseless
from mobile.store.incoming import read_file
from mobile.store.records import Record
from tests.store.moth_cellar import BACKUP
from tests.store.test_incoming import changed, of

WAIT = {"minimum_s": 0.0, "maximum_s": None, "minimum_from": "end", "maximum_from": "end"}


def test_each_kind_of_record_is_asked() -> None:
    assert sense.CHECKS.keys() == set(get_args(Record)) == set(KINDS.values())


def test_its_words_are_those_of_the_app() -> None:
    assert sense.MIXED == tuple(USUAL_G_M2) == tuple(USUAL_TOOLS)
    assert sense.TOOLS == TOOLS
    assert sense.CAPACITY_G == CAPACITY_G


# Each a record, what it says that can't be, and what core has against it.
IMPOSSIBLE: tuple[tuple[str, dict[str, Any], str], ...] = (
    ("Wall", {"at_s": -1.0}, "at_s"),
    ("Wall", {"at_s": 1e12}, "at_s"),
    ("Wall", {"id": "../wall"}, "id"),
    ("Zone", {"id": "new"}, "id"),
    ("Zone", {"id": "weigh"}, "id"),
    ("Settings", {"id": "another"}, "id"),
    ("Wall", {"name": "x" * 2001}, "letters_count"),
    ("Wall", {"name": "half \ud83d"}, "text"),
    ("Job", {"deducted_above_m2": 101.0}, "deducted_above_m2"),
    ("Zone", {"area_m2": -0.1}, "zone_area_m2"),
    ("Zone", {"coats_count": 0}, "coats_count"),
    ("Zone", {"coats_count": 21}, "coats_count"),
    ("Paint", {"density_g_ml": 0.0}, "density_g_ml"),
    ("Paint", {"solids_ratio": 1.1}, "solids_ratio"),
    ("Paint", {"spread_m2_l": 0.0}, "spread_m2_l"),
    ("Paint", {"g_m2": 1e6}, "rate_g_m2"),
    ("Paint", {"day": "orange"}, "day"),
    ("Paint", {"lamp": "#12345"}, "lamp"),
    ("Paint", {"sizes": [{"label_l": 0.0, "price": None}]}, "size_l"),
    ("Paint", {"sizes": [{"label_l": 1.0, "price": -1.0}]}, "price"),
    ("Paint", {"sizes": [{"label_l": 0.001, "price": 1e9}]}, "price_per_g"),
    ("Paint", {"waits": [{"use": "polish", "wait": {**WAIT, "usual": False}}]}, "use"),
    (
        "Paint",
        {"waits": [{"use": "", "wait": {**WAIT, "minimum_s": -1.0, "usual": False}}]},
        "minimum_s",
    ),
    ("Can", {"number": 0}, "can_number"),
    ("Can", {"number": 10_000}, "can_number"),
    ("Can", {"label_l": 61.0}, "label_l"),
    ("Can", {"tare_g": -5.0}, "tare_g"),
    ("Can", {"across_m": 2.0}, "across_m"),
    ("Can", {"tare_from": "a guess"}, "tare"),
    ("Mix", {"parts": []}, "paints_count"),
    ("Mix", {"use": "outline"}, "use"),
    ("Mix", {"planned_g": 0.5}, "planned_g"),
    ("Mix", {"g_m2": 0.0}, "rate_g_m2"),
    ("Mix", {"spread_m2_l": 101.0}, "spread_m2_l"),
    ("Mix", {"dft_um": 0.5}, "dft_um"),
    ("Mix", {"loss_ratio": 0.95}, "loss_ratio"),
    ("Mix", {"cups_count": -1}, "cups_count"),
    ("Mix", {"tools": [{"tool": "sponge", "wettings_count": 1}]}, "tool"),
    ("Mix", {"tools": [{"tool": "brush", "wettings_count": 1001}]}, "wettings_count"),
    ("Mix", {"day": "red"}, "day"),
    ("Mix", {"typed_as": "cups"}, "typed_as"),
    ("Mix", {"versions": [{"until_s": 1.0, "parts": [], "why": "typed"}]}, "paints_count"),
    ("Can", {"lot": "1" * 61}, "lot_letters_count"),
    ("Settings", {"way": "by hand"}, "way"),
    ("Settings", {"bucket_l": 0.0}, "bucket_l"),
    ("Settings", {"check_g": 0.5}, "known_g"),
    ("PotStarted", {"way": "by hand"}, "way"),
    ("PotStarted", {"parts_band_ratio": [0.01]}, "bands_count"),
    ("PotStarted", {"lots": ["1"] * 25}, "lots_count"),
    ("AimChanged", {"portions": []}, "portions_count"),
    ("AimChanged", {"cans": []}, "cans_count"),
    ("AimChanged", {"why": "whim"}, "why"),
    ("StrayPoured", {"net_g": -1.0}, "net_g"),
    ("Spilt", {"left_g": -1.0}, "left_g"),
    ("CupFilled", {"net_g": -1.0}, "net_g"),
    ("WeighedBack", {"net_g": 1e6}, "net_g"),
    ("StoodOpen", {"open_s": -1.0}, "open_s"),
    ("StoodOpen", {"air_c": 99.0}, "air_c"),
    ("ThrownAway", {"net_g": -1.0}, "net_g"),
    ("LeftoverKept", {"number": 0}, "pot_number"),
    ("LeftoverKept", {"net_g": -1.0}, "net_g"),
    ("LeftoverKept", {"coldest_c": 99.0}, "coldest_c"),
    ("LeftoverKept", {"use_by_day": "soon"}, "day"),
    ("ScaleChecked", {"known_g": 0.0}, "known_g"),
    ("CanStirred", {"day": "today"}, "day"),
    ("Settings", {"look": "bright"}, "look"),
    ("Settings", {"units": "old"}, "units"),
    ("Settings", {"text_ratio": 9.0}, "text_ratio"),
    ("Settings", {"scale_step_g": 0.0}, "scale_step_g"),
    ("Settings", {"scale_capacity_g": 5.0}, "capacity_g"),
    ("Settings", {"cup_g": -1.0}, "cup_g"),
    ("Settings", {"margin_ratio": 1.5}, "margin_ratio"),
    ("Settings", {"keeps": [{"tool": "sponge", "hold_up_g": 1.0}]}, "tool"),
    ("Settings", {"keeps": [{"tool": "brush", "hold_up_g": -1.0}]}, "hold_up_g"),
    ("Draft", {"fields": [["parts.²0.1", "5"]]}, "field"),
    ("PotStarted", {"portions": []}, "portions_count"),
    ("PotStarted", {"cans": []}, "cans_count"),
    ("PotStarted", {"scale_step_g": 20.0}, "scale_step_g"),
    ("PotStarted", {"number": 0}, "pot_number"),
    ("PotStarted", {"cup_g": -1.0}, "cup_g"),
    ("Poured", {"net_g": -1.0}, "net_g"),
    ("Poured", {"reads_g": 1e6}, "reads_g"),
    ("MadeMore", {"factor_ratio": 0.5}, "factor_ratio"),
    ("ScaleRestarted", {"reads_g": 1e6}, "reads_g"),
    ("ScaleRestarted", {"offset_g": -1e6}, "offset_g"),
    ("CanWeighed", {"tare_g": -1.0}, "tare_g"),
    ("CanWeighed", {"gross_g": 0.0}, "gross_g"),
    ("CanWeighed", {"net_g": 5.0}, "net_g"),
    ("LidOff", {"open_s": -1.0}, "open_s"),
    ("LidOff", {"rh_ratio": 1.0}, "rh_ratio"),
    ("CoatFinished", {"finished_at_s": -1.0}, "finished_at_s"),
    ("CoatFinished", {"started_at_s": 9e9}, "started_at_s"),
    ("StillTacky", {"more_s": -1.0}, "more_s"),
    ("CautionRead", {"day": "today"}, "day"),
)


@pytest.mark.parametrize(("kind", "says", "name"), IMPOSSIBLE, ids=str)
def test_a_record_that_says_what_cant_be_is_refused(
    kind: str, says: dict[str, Any], name: str
) -> None:
    data = changed(lambda found: of(found, kind).update(says))
    with pytest.raises(Senseless) as refusal:
        read_file(data)
    assert (refusal.value.kind, refusal.value.refusal.name) == (kind, name)


@pytest.mark.parametrize(
    ("change", "kind", "called", "name"),
    [
        (lambda f: of(f, "Wall")["shape"].update(width_m=0.0), "Wall", "Wall 1", "width_m"),
        (
            lambda f: of(f, "Wall")["shape"]["openings"][0].update(count=99),
            "Wall",
            "Wall 1",
            "openings_m2",
        ),
        (lambda f: of(f, "Job")["steps"][0].update(use="polish"), "Job", "", "unknown_uses_count"),
        (lambda f: of(f, "Job")["steps"][0].update(work_s=-1.0), "Job", "", "work_s"),
        (lambda f: of(f, "Job")["steps"][0].update(id="a/b"), "Job", "", "astray_waits_count"),
        (lambda f: of(f, "Job")["waits"][0].update(after="x"), "Job", "", "astray_waits_count"),
        (
            lambda f: of(f, "Job")["waits"][0]["wait"].update(maximum_s=1.0),
            "Job",
            "",
            "maximum_s",
        ),
        (lambda f: of(f, "Mix", 2)["parts"][0].update(parts_count=0.0), "Mix", "", "parts_count"),
        (
            lambda f: of(f, "Mix", 2)["parts"].append(of(f, "Mix", 2)["parts"][0]),
            "Mix",
            "ember wing",
            "different_paints_count",
        ),
    ],
)
def test_what_core_refuses_is_refused_with_the_name(
    change: Any, kind: str, called: str, name: str
) -> None:
    with pytest.raises(Senseless) as refusal:
        read_file(changed(change))
    assert (refusal.value.kind, refusal.value.refusal.name) == (kind, name)
    assert called in refusal.value.name
    assert refusal.value.name in str(refusal.value)


def test_what_the_app_itself_keeps_makes_sense() -> None:
    assert len(read_file(BACKUP).records) == len(json.loads(BACKUP)["records"])
