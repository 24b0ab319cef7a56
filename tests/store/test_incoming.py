"""A file comes back as it went; what is damaged, hostile or newer is refused with a reason."""

import json
from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from mobile.store import incoming
from mobile.store.errors import (
    Foreign,
    Newer,
    TooLarge,
    Unreadable,
)
from mobile.store.export import exported
from mobile.store.incoming import Incoming, read_file
from mobile.store.migrations import Document, schema_of
from tests.store import made
from tests.store.moth_cellar import BACKUP, ONE_JOB

Change = Callable[[dict[str, Any]], object]


def changed(change: Change, data: bytes = b"") -> bytes:
    """Give the backup with a change."""
    found = json.loads(data or BACKUP)
    change(found)
    return json.dumps(found).encode()


def of(found: dict[str, Any], kind: str, number: int = 0) -> dict[str, Any]:
    """Give a record of a kind."""
    some: list[dict[str, Any]] = [one for one in found["records"] if one["kind"] == kind]
    return some[number]


def test_a_file_is_read_and_written_to_the_same_bytes() -> None:
    for data in (BACKUP, ONE_JOB):
        found = read_file(data)
        assert exported(found.records, found.job, schema_of()) == data
    assert read_file(BACKUP).job is None
    assert read_file(ONE_JOB).job in {record.id for record in read_file(ONE_JOB).records}


def test_layout_and_the_order_of_names_do_not_matter() -> None:
    assert read_file(json.dumps(json.loads(BACKUP), indent=3).encode()) == read_file(BACKUP)


def test_a_file_of_the_first_app_says_its_phone_and_is_read() -> None:
    assert read_file(changed(lambda found: found.update(device=made.PHONE))) == read_file(BACKUP)


@settings(max_examples=200)
@given(st.binary(max_size=200))
def test_any_bytes_are_refused(data: bytes) -> None:
    with pytest.raises(Foreign):
        read_file(data)


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=9),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(max_size=9), inner),
    max_leaves=12,
)


@settings(max_examples=200)
@given(st.dictionaries(st.sampled_from(["job", "records", "schema", "device", "more"]), JSON))
def test_any_json_under_our_name_is_refused_or_read_as_an_empty_book(found: dict[str, Any]) -> None:
    try:
        read = read_file(json.dumps({"format": "duskcoat-book", **found}).encode())
    except (Unreadable, Newer):
        return
    assert read == Incoming(None, ())


@pytest.mark.parametrize(
    "data",
    [
        b"",
        b" ",
        b"null",
        b"[]",
        b"{}",
        b"5",
        b'"duskcoat"',
        b"PK\x03\x04",
        b'{"type": "FeatureCollection", "features": []}',
        b'{"format": "another", "records": [], "schema": 1, "job": null}',
        "Farben;Gramm\nDämmerung;5".encode(),
        "\ufeff{}".encode("utf-16"),
        b"[" * 100_000,
        b'{"a":' * 100_000,
    ],
)
def test_what_another_program_wrote_is_refused_as_that(data: bytes) -> None:
    with pytest.raises(Foreign):
        read_file(data)


@pytest.mark.parametrize("data", [b"\xef\xbb\xbf" + BACKUP, BACKUP[:-2], BACKUP + b"{}"])
def test_ours_with_a_mark_before_it_cut_short_or_with_more_behind_is_damaged(data: bytes) -> None:
    with pytest.raises(Unreadable) as refusal:
        read_file(data)
    assert type(refusal.value) is Unreadable


def test_utf_16_is_refused() -> None:
    with pytest.raises(Unreadable):
        read_file(BACKUP.decode().encode("utf-16"))


def test_ours_nested_deep_is_refused() -> None:
    for deep in ("[" * 50_000, "[" * 300 + "]" * 300, '{"a":' * 400 + "1" + "}" * 400):
        for where in ('"job": null', '"away": false'):
            name = where.partition(":")[0]
            data = BACKUP.decode().replace(where, f"{name}: {deep}", 1).encode()
            assert data != BACKUP
            with pytest.raises(Unreadable):
                read_file(data)


def test_a_name_that_stands_twice_is_refused() -> None:
    for twice in ('"job": null, "job": null', '"away": false, "away": false'):
        once = twice.partition(",")[0]
        with pytest.raises(Unreadable, match="twice"):
            read_file(BACKUP.decode().replace(once, twice, 1).encode())


def test_a_file_of_a_newer_app_is_told_apart() -> None:
    def tomorrow(found: dict[str, Any]) -> None:
        found.update(schema=schema_of() + 1, more={"unknown": [1]})

    with pytest.raises(Newer):
        read_file(changed(tomorrow))


def test_too_large_a_file_is_not_even_looked_at(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(incoming, "MOST_BYTES", len(BACKUP) - 1)
    with pytest.raises(TooLarge):
        read_file(BACKUP)


def lifted(document: Document) -> Document:
    for paint in document["Paint"].values():
        paint["name"] = paint.pop("title")
    return document


def test_a_file_of_an_older_schema_is_brought_up_by_the_migrations() -> None:
    def older(found: dict[str, Any]) -> None:
        found["schema"] = 1
        for record in found["records"]:
            if record["kind"] == "Paint":
                record["title"] = record.pop("name")

    data = changed(older)
    assert read_file(data, (lifted,)).records == read_file(BACKUP).records
    with pytest.raises(Unreadable, match="schema 1 to 2"):
        read_file(changed(lambda found: found.update(schema=1)), (lifted,))


def test_a_file_of_schema_1_is_read() -> None:
    step = {"id": "b", "name": "base", "use": "base"}
    wait = {"minimum_s": 900.0, "maximum_s": None}
    stamp = {"at_s": 1.0, "device": "phone"}
    job: dict[str, Any] = {"kind": "Job", "id": "j", **stamp, "name": "Moth Cellar", "away": False}
    job |= {"steps": [{**step, "wait": wait}], "deducted_above_m2": 0.5}
    head = {"format": "duskcoat-book", "device": "phone", "job": "j", "schema": 1}
    read = read_file(json.dumps({**head, "records": [job]}).encode())
    assert [pair.before for pair in read.records[0].waits] == ["j:hand-over"]  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("change", "place"),
    [
        (lambda f: f.update(more=1), "more"),
        (lambda f: f.pop("job"), "job"),
        (lambda f: f.update(job=5), "job"),
        (lambda f: f.update(job="nobody"), "job"),
        (lambda f: f.update(schema=0), "schema"),
        (lambda f: f.update(schema=True), "schema"),
        (lambda f: f.update(schema="2"), "schema"),
        (lambda f: f.update(records={}), "records"),
        (lambda f: f["records"].append(5), "records"),
        (lambda f: f["records"].append({}), "records"),
        (lambda f: f["records"][0].pop("id"), "records.1"),
        (lambda f: f["records"][0].update(id=""), "records.1"),
        (lambda f: f["records"][0].update(order=1), "records.1"),
        (lambda f: f["records"][0].update(kind="about"), "records.1"),
        (lambda f: f["records"][0].update(kind="Brush"), "Brush"),
        (lambda f: f["records"].append(f["records"][0]), "twice"),
        (lambda f: f["records"].append({**of(f, "Paint"), "id": of(f, "Wall")["id"]}), "one id"),
        (lambda f: of(f, "Wall")["shape"].update(width_m="5"), "shape.width_m"),
        (lambda f: of(f, "Wall")["shape"].pop("openings"), "shape.openings"),
        (lambda f: of(f, "Can").update(number=7.0), "number"),
        (lambda f: of(f, "Can").update(gone=0), "gone"),
        (lambda f: of(f, "Poured").update(net_g=10**400), "net_g"),
        (lambda f: of(f, "Poured").update(net_g=float("nan")), "no number"),
        (lambda f: of(f, "Poured").update(net_g=float("-inf")), "no number"),
    ],
)
def test_a_damaged_file_is_refused_with_the_place(change: Change, place: str) -> None:
    with pytest.raises(Unreadable) as refusal:
        read_file(changed(change))
    assert place in str(refusal.value)
    assert type(refusal.value) is Unreadable


def test_a_number_too_large_for_any_program_is_refused() -> None:
    for number in ("1e999", "9" * 5000):
        with pytest.raises(Unreadable):
            read_file(BACKUP.replace(b'"net_g": 58.1', f'"net_g": {number}'.encode(), 1))


def test_what_does_not_belong_to_the_one_job_is_refused() -> None:
    spare = {**of(json.loads(BACKUP), "Paint"), "id": "spare"}
    alone = changed(lambda found: found["records"].append(spare), ONE_JOB)
    with pytest.raises(Unreadable, match="not of that job"):
        read_file(alone)
    half_typed = of(json.loads(BACKUP), "Draft")
    with pytest.raises(Unreadable, match="not of that job"):
        read_file(changed(lambda found: found["records"].append(half_typed), ONE_JOB))
