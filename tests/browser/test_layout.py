"""The checks of layout find what is wrong, and nothing else."""

from tests.browser.layout import outside, overlaps, small
from tests.browser.phone import Box


def box(name: str, left: float, top: float, *, parent: str = "", cut: bool = False) -> Box:
    return Box(
        id=name,
        parent=parent,
        role="button",
        name=name,
        left=left,
        top=top,
        width=100.0,
        height=50.0,
        tap=True,
        value="",
        chosen=False,
        off=False,
        cut=cut,
    )


def test_what_lies_over_its_neighbour_is_named() -> None:
    assert overlaps((box("a", 0, 0), box("b", 90, 40))) == ("'a' and 'b' overlap by 10 × 10",)


def test_neighbours_that_meet_do_not_overlap() -> None:
    assert overlaps((box("a", 0, 0), box("b", 100, 0), box("c", 0, 49.5))) == ()


def test_what_is_inside_a_board_does_not_overlap_it() -> None:
    inside = (box("a", 0, 0), box("b", 10, 0, parent="a"), box("c", 20, 0, parent="b"))
    assert overlaps(inside) == ()
    assert len(overlaps((*inside, box("d", 30, 0, parent="a")))) == 2


def test_what_leaves_the_window_is_named_unless_it_scrolls() -> None:
    boxes = (box("a", 320, 0), box("b", 0, 900), box("c", -20, 0), box("d", 0, 900, cut=True))
    assert [said.partition(" ")[0] for said in outside(boxes, 412, 915)] == ["'a'", "'b'", "'c'"]


def test_what_is_too_small_for_a_thumb_is_named() -> None:
    assert small((box("a", 0, 0),)) == ()
    assert small((box("a", 0, 0),), least=64) == ("'a' is 100 × 50",)
    assert small((box("a", 0, 0, cut=True),), least=64) == ()
