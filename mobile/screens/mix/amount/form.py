"""What is typed of how much a mix takes, and how it is read."""

from dataclasses import dataclass, replace

from core.coats.need import WETTINGS_COUNT
from core.coats.rate import FILM_UM, G_M2, LOSS_RATIO, SPREAD_M2_L
from core.errors import Refused, require
from mobile.session.view import Limits, View
from mobile.session.walls.amounts import USUAL_TOOLS
from mobile.store.records import Mix, Wetting

USUAL, GRAMS, SPREAD, FILM = "usual", "g_m2", "spread_m2_l", "dft_um"
RATES: dict[str, tuple[str, Limits]] = {
    GRAMS: ("rate_g_m2", G_M2),
    SPREAD: ("spread_m2_l", SPREAD_M2_L),
    FILM: ("dft_um", FILM_UM),
}
TOOLS = ("sleeve", "mini sleeve", "brush", "tray", "bucket")
NO = "no"


@dataclass(frozen=True, slots=True)
class AmountForm:
    """What has been typed, untouched: what a coat takes, losses, tools, cups, kit, walls."""

    kind: str = USUAL
    rate: str = ""
    loss: str = ""
    tools: tuple[tuple[str, ...], ...] = ()
    cups: str = "1"
    kit: str = NO
    walls: tuple[tuple[str, ...], ...] = ()

    def into(self, mix: Mix, view: View) -> Mix:
        """Read the form into a mix; raise `Refused` at the first field that can't be."""
        g_m2, spread_m2_l, dft_um = (self._rate(kind, view) for kind in RATES)
        loss_ratio = view.read("loss_ratio", self.loss) if self.loss.strip() else 0.0
        require("loss_ratio", loss_ratio, *LOSS_RATIO)
        return replace(
            mix,
            g_m2=g_m2,
            spread_m2_l=spread_m2_l,
            dft_um=dft_um,
            loss_ratio=loss_ratio,
            tools=tuple(Wetting(tool, whole("wettings_count", n, view)) for tool, n in self.tools),
            cups_count=whole("wettings_count", self.cups, view),
            kit=self.kit != NO,
            walls=tuple(wall for (wall,) in self.walls),
        )

    def _rate(self, kind: str, view: View) -> float | None:
        if self.kind != kind:
            return None
        name, limits = RATES[kind]
        value = view.read(name, self.rate)
        require(name, value, *limits)
        return value


def whole(name: str, text: str, view: View) -> int:
    """Read how many; nothing typed is none."""
    value = view.read(name, text) if text.strip() else 0.0
    require(name, value, *WETTINGS_COUNT)
    if value != int(value):
        raise Refused(name, text, *WETTINGS_COUNT)
    return int(value)


def form_of(mix: Mix, view: View) -> AmountForm:
    """Write what is kept of a mix as one would type it; the usual tools while nobody said."""
    kept = ((GRAMS, mix.g_m2), (SPREAD, mix.spread_m2_l), (FILM, mix.dft_um))
    kind, value = next(((kind, value) for kind, value in kept if value is not None), (USUAL, None))
    tools = USUAL_TOOLS[mix.use] if mix.tools is None else mix.tools
    counts = {one.tool: one.wettings_count for one in tools}
    return AmountForm(
        kind,
        view.typed(RATES[kind][0], value) if kind in RATES else "",
        view.typed("loss_ratio", mix.loss_ratio) if mix.loss_ratio else "",
        tuple((tool, str(counts.get(tool, 0))) for tool in TOOLS),
        str(mix.cups_count),
        "yes" if mix.kit else NO,
        tuple((wall,) for wall in mix.walls),
    )
