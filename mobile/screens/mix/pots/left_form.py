"""What is typed of what is left: in each vessel, how long it stood open, how a jar keeps."""

from dataclasses import dataclass, replace

from core.cans.drying import OPEN_S
from core.errors import Refused
from mobile.parts.fields import Field
from mobile.session.forms import Edit
from mobile.session.mix.cups import Cup
from mobile.session.mix.leftovers import COLDEST_C, FREEZES_C, MONTHS_COUNT, Back
from mobile.session.view import View
from mobile.store.pot import Pot
from mobile.words import cups as words

OFF, MONTHS = "off", "months"


@dataclass(frozen=True, slots=True)
class LeftForm:
    """What has been typed, untouched: a row a vessel, how long open, how a jar keeps."""

    left: tuple[tuple[str, ...], ...] = ()
    off: str = ""
    months: str = ""
    coldest: str = ""

    def with_vessels(self, cups: tuple[Cup, ...]) -> "LeftForm":
        """Give a row to the pot and each of its cups: there may be others since it was typed."""
        typed = {row[0]: row[1] for row in self.left}
        vessels = "", *(cup.id for cup in cups)
        return replace(self, left=tuple((one, typed.get(one, "")) for one in vessels))

    def weighed(self, view: View) -> Back:
        """Read what is left in each vessel; what is empty was not weighed."""
        told = ((cup, text) for cup, text in self.left if text.strip())
        left = tuple((cup, view.read("left_g", text)) for cup, text in told)
        return Back(left, view.read("open_s", self.off) if self.off.strip() else 0.0)

    def frost(self, view: View) -> bool:
        """Tell whether it stands where it may freeze."""
        try:
            coldest_c = view.read("coldest_c", self.coldest)
        except Refused:
            return False
        return coldest_c <= FREEZES_C

    def keeps(self, view: View) -> tuple[float | None, float | None]:
        """Read how long it keeps and how cold it stands."""
        months = view.read("months_count", self.months) if self.months.strip() else None
        return months, view.read("coldest_c", self.coldest) if self.coldest.strip() else None


def left_typed(edit: Edit[LeftForm], cups: tuple[Cup, ...], name: str, text: str) -> None:
    """Put what is typed of a vessel into the form, or how long all stood open."""

    def changed(now: LeftForm) -> LeftForm:
        rows = now.with_vessels(cups).left
        return replace(now, left=tuple((cup, text if cup == name else old) for cup, old in rows))

    if name == OFF:
        edit(lambda now: replace(now, off=text))
    else:
        edit(changed)


def jar_typed(edit: Edit[LeftForm], name: str, text: str) -> None:
    """Put what is typed of a jar into the form."""
    if name == MONTHS:
        edit(lambda now: replace(now, months=text))
    else:
        edit(lambda now: replace(now, coldest=text))


def left_fields(form: LeftForm, pot: Pot, cups: tuple[Cup, ...], view: View) -> tuple[Field, ...]:
    """Ask what is left in the pot and in each cup, and how long they stood open."""
    names = {cup.id: words.left_label(words.cup(cup.label, cup.whom)) for cup in cups}
    most = {cup.id: cup.net_g for cup in cups}
    vessels = tuple(
        Field(
            cup,
            view.label(names.get(cup, words.IN_POT), "left_g"),
            text,
            view.error("left_g", text, (0.0, most.get(cup, pot.in_cup_g))),
        )
        for cup, text in form.left
    )
    wrong = view.error("open_s", form.off, OPEN_S)
    return (*vessels, Field(OFF, view.label(words.OPEN_FOR, "open_s"), form.off, wrong))


def jar_fields(form: LeftForm, view: View) -> tuple[Field, ...]:
    """Ask how long a jar keeps, and how cold it stands."""
    months = view.error("months_count", form.months, MONTHS_COUNT)
    coldest = view.error("coldest_c", form.coldest, COLDEST_C)
    return (
        Field(MONTHS, words.USE_BY, form.months, months),
        Field("coldest", view.label(words.COLDEST, "coldest_c"), form.coldest, coldest),
    )
