"""Names lead somewhere, as far as they must; pots and cans add up."""

from typing import Any

import pytest

from mobile.store.errors import Astray, Senseless, Unreadable
from mobile.store.incoming import read_file
from tests.store.test_incoming import changed, of


@pytest.mark.parametrize(
    ("kind", "field", "value"),
    [
        ("Wall", "job", "nobody"),
        ("Zone", "job", ""),
        ("Mix", "job", "nobody"),
        ("Can", "paint", "nobody"),
        ("CanWeighed", "can", "nobody"),
        ("LidOff", "can", ""),
        ("CanStirred", "can", ""),
        ("AimChanged", "pot", "nobody"),
        ("CupFilled", "pot", "nobody"),
        ("PotStarted", "job", "nobody"),
        ("MadeMore", "pot", "nobody"),
        ("TippedOut", "pot", ""),
        ("CoatFinished", "job", "nobody"),
        ("StillTacky", "coat", "nobody"),
        ("Undone", "entry", "nobody"),
    ],
)
def test_a_record_that_leads_nowhere_is_refused(kind: str, field: str, value: str) -> None:
    with pytest.raises(Astray) as refusal:
        read_file(changed(lambda found: of(found, kind).update({field: value})))
    assert (refusal.value.kind, refusal.value.field) == (kind, field)


def test_a_part_of_an_unknown_paint_and_a_pour_from_nowhere_are_refused() -> None:
    with pytest.raises(Astray, match="parts"):
        read_file(changed(lambda f: of(f, "Mix")["parts"][0].update(paint="nobody")))
    with pytest.raises(Astray, match="pot"):
        read_file(changed(lambda f: of(f, "Poured").update(pot="nobody", can="nobody")))


@pytest.mark.parametrize(
    ("kind", "change"),
    [
        ("Zone", {"mix": "gone"}),
        ("Zone", {"wall": "gone"}),
        ("Mix", {"walls": ["gone"]}),
        ("PotStarted", {"mix": "gone"}),
        ("CoatFinished", {"place": "gone"}),
        ("CoatFinished", {"step": "gone"}),
        ("CautionRead", {"job": "gone"}),
        ("Settings", {"job": "gone"}),
        ("Poured", {"pot": "of another job"}),
    ],
)
def test_what_a_person_may_have_taken_off_since_is_no_reason(
    kind: str, change: dict[str, Any]
) -> None:
    read_file(changed(lambda found: of(found, kind).update(change)))


def test_what_was_taken_back_may_lead_nowhere() -> None:
    def demo_taken_back(found: dict[str, Any]) -> None:
        things = {"Job", "Wall", "Zone", "Mix", "Paint", "Can"}
        found["records"] = [one for one in found["records"] if one["kind"] not in things]
        happened = [one["id"] for one in found["records"] if one["kind"] != "Undone"]
        stamp = {"at_s": 1.0, "device": "phone", "kind": "Undone"}
        found["records"] += [
            {**stamp, "id": f"undone-{n}", "entry": one}
            for n, one in enumerate(happened)
            if one not in {"settings", "walls/new"}
        ]

    read_file(changed(demo_taken_back))


def test_pots_that_nobody_could_weigh_out_are_refused() -> None:
    for kind, change in (
        ("Poured", {"paint": "another"}),
        ("MadeMore", {"factor_ratio": 90_000.0}),
        ("ScaleRestarted", {"offset_g": 1e5}),
        ("KeptOver", {"device": 5}),
    ):
        with pytest.raises(Unreadable):
            read_file(changed(lambda f, k=kind, c=change: of(f, k).update(c)))  # type: ignore[misc]


def test_a_can_that_was_poured_from_too_often_to_be_drawn_is_refused() -> None:
    def often(found: dict[str, Any]) -> None:
        pour = of(found, "Poured", -1)
        found["records"] += [{**pour, "id": f"p-{n}", "net_g": 0.0} for n in range(10_001)]

    with pytest.raises(Senseless, match="pours_count"):
        read_file(changed(often))


def test_a_job_of_more_coats_than_a_phone_can_put_in_order_is_refused() -> None:
    def endless(found: dict[str, Any]) -> None:
        steps, zone = of(found, "Job")["steps"], of(found, "Zone")
        steps[:0] = [{**steps[0], "id": f"s-{n}"} for n in range(180)]
        found["records"] += [{**zone, "id": f"z-{n}"} for n in range(120)]

    with pytest.raises(Senseless, match="coats_in_all_count"):
        read_file(changed(endless))
