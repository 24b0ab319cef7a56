"""What the app can reach is found in every way that a module is named, and nothing else."""

import ast

import pytest

from mobile.pwa.inside import compile as inside
from mobile.pwa.inside.compile import Sources


def sources(**texts: str) -> Sources:
    """Make sources: `app__main="…"` is app/main.py, a name that ends in `__` is a package."""
    made: Sources = {}
    for name, text in texts.items():
        path = name.removesuffix("__").replace("__", "/")
        path += "/__init__.py" if name.endswith("__") else ".py"
        made[inside.module_name(path)] = (path, text.encode())
    return made


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("import tint", {"main", "tint"}),
        ("import tint.lamp", {"main", "tint", "tint.lamp"}),
        ("from tint import lamp", {"main", "tint", "tint.lamp"}),
        ("from tint import day as d", {"main", "tint"}),
        ("def late():\n    import tint", {"main", "tint"}),
        ("try:\n    import gone\nexcept ImportError:\n    import tint", {"main", "tint"}),
        ("if TYPE_CHECKING:\n    import tint", {"main"}),
        ("if typing.TYPE_CHECKING:\n    import tint", {"main"}),
        ("if TYPE_CHECKING:\n    pass\nelse:\n    import tint", {"main", "tint"}),
        ("if __name__ == '__main__':\n    import tint", {"main"}),
        ("if tint_wanted:\n    import tint", {"main", "tint"}),
        ("match kind:\n    case 1:\n        import tint", {"main", "tint"}),
        ("x = 'import tint'", {"main"}),
    ],
)
def test_each_way_to_import_is_followed(text: str, found: set[str]) -> None:
    given = sources(app__main=text, packages__tint__="", packages__tint__lamp="")
    assert inside.reached(given, ["main"]).keys() == found


def test_relative_imports_are_followed_from_where_they_stand() -> None:
    given = sources(
        app__main="import tint.lamp",
        packages__tint__="",
        packages__tint__lamp="from . import day\nfrom .night import glow",
        packages__tint__day="",
        packages__tint__night="",
        packages__tint__never="",
    )
    assert "tint.never" not in inside.reached(given, ["main"])
    assert {"tint.day", "tint.night"} <= inside.reached(given, ["main"]).keys()


def test_flets_late_names_lead_to_their_modules() -> None:
    flet = "_LAZY = {'Text': 'flet.text', 'Icons': 'flet.icons', 'margin': 'flet.sides'}"
    given = sources(
        app__main="import flet as ft\nft.Text('hello')\nft.margin.all(1)",
        packages__flet__=flet,
        packages__flet__text="",
        packages__flet__icons="",
        packages__flet__sides__="",
        packages__flet__sides__margin="",
    )
    found = inside.reached(given, ["main"]).keys()
    assert {"flet.text", "flet.sides", "flet.sides.margin"} <= found
    assert "flet.icons" not in found


def test_a_root_with_a_star_is_all_below_it() -> None:
    given = sources(app__core__="", app__core__walls__="", app__core__walls__area="", app__other="")
    assert inside.reached(given, ["core.*"]).keys() == {"core", "core.walls", "core.walls.area"}


def test_what_the_app_itself_imports_can_not_be_left_out() -> None:
    given = sources(app__main="import tint", packages__tint__="")
    with pytest.raises(ImportError, match=r"app/main\.py needs \['tint'\]"):
        inside.without(given, ["tint"])


def test_what_others_import_can_be_left_out() -> None:
    given = sources(app__main="import paint", packages__paint="import tint", packages__tint__="")
    assert "tint" not in inside.reached(inside.without(given, ["tint.*"]), ["main"])


def test_bytecode_has_no_docstrings_and_no_asserts() -> None:
    text = b'"""Say."""\nassert False\nanswer = 2\n'
    made = inside.compiled(ast.parse(text), "app/main.py", text)
    assert made[4:8] == (1).to_bytes(4, "little")  # PEP 552: by hash, unchecked
    assert b"Say." not in made
