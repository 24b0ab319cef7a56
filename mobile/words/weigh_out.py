"""What is said at the scale: the weigh-out, the over-pour, the pot that is done."""

from collections.abc import Callable

from core.errors import Refused
from mobile.words import trouble
from mobile.words.grams import first_up, grams, listed, money, unbroken

# At the scale
LEAVE, WENT_OFF, ON_THE_MARK, SCALE_READS = "Leave", "Scale went off", "On the mark", "Scale reads"
WITH_CUP = "cup and all, the scale should read"
TARED, NOT_AGAIN = "tared to zero: it should read", "not tared again: it should read"
CAN_TARED = "the can on the scale, tared: it should read"
CAN_NOT_AGAIN = "the can, not tared again: it should read"
MINUS = "\u2212"
SPURTS = "Pour in spurts: after a tare a scale swallows slow drops."
SHOULD_READ, THE_SCALE_READS, ALL_STIRRED = (
    "the scale should read",
    "the scale reads",
    "All stirred?",
)
BAND_NOTE = "On the mark is kept as within the band, not as exact."
WITHIN, TYPE_READING = "on the mark", "Type what the scale reads."
CARRY_ON, PUT_BACK = "Carry on", "Put the cup back on the scale. What does it show?"
PUT_ON = "Put the cup on the scale. What does it show?"
CUP_AFTER, IN_THE_CUP = "the cup then", "In the cup"

# Too much
OVER_NOTE = "The least batch that holds the parts, as they were rounded to the scale's step."
KEPT_OVER = "Left as it is; the pot keeps what was really poured."
TIP = "Tip it out, start again"
MORE, AGAIN = "more", "again"
TARE_AGAIN = " Put an empty cup on, and tare it."
TOO_MUCH_TO_MAKE = "Scale, bucket or cans don't take that batch."
TOO_HEAVY = "That is more than scale or bucket take."
CANS_HOLD, CANS_UNKNOWN = (
    "Cans and scale hold it.",
    "Not every can was weighed: look into it first.",
)

SAID_ALL_IN = "All is in. Stir it."

BOX = "This mix has several loads: box them, all into one bucket, and stir before you roll."

# Done
STIRRED = "Stirred, done"
FRACTION, SUM = "definition of the mass fraction, ISO 80000-9", "conservation of mass"
POT_NOTE = "On the mark counts as the planned grams; a typed reading as what was read."

# From how much more than planned a part is said to be stronger: everyday words, no standard.
STRONGER = ((1.03, "hardly stronger"), (1.1, "a touch stronger"), (1.3, "stronger"))
MUCH_STRONGER = "much stronger"

SENTENCES = {
    "parts_count": "More than 0, at most 100000.",
    "different_paints_count": "Two parts are of one paint. Put them together.",
    "portions_count": "That is more parts than anyone weighs into one pot.",
    "paints_count": "A recipe has 1 to 24 paints.",
}
Show = Callable[[str, float], str]


def refused(refusal: Refused, show: Show) -> str:
    """Say why something can't be weighed, and what would do."""
    if isinstance(refusal.value, str):
        return trouble.refused(refusal, show)
    low, high = show(refusal.name, refusal.low), show(refusal.name, refusal.high)
    above = refusal.value > refusal.high
    sentences = SENTENCES | {
        "portion_g": f"One part would be {refusal.value:.2g} g; the scale shows {low}. Weigh more.",
        "batch_g": f"With this cup the scale takes {high}. Weigh it in more than one pot.",
        "reads_g": f"The scale takes {high} at most. Read again."
        if above
        else f"Less than before: {low} were on the scale. Read again, or it went off.",
    }
    sentences |= {
        "reads_under_cup_g": f"That is below the cup's own {low}. Is it on the scale? Read again.",
        "reads_with_cup_g": f"Cup and paint weigh {low}. Read again, or it was knocked over.",
        "bucket_g": f"The bucket takes {high}. Weigh it in more than one pot.",
        "can_reads_g": "Less than before: more had left the can. Read again, or it was tared.",
    }
    if refusal.name == "batch_g" and not above:
        return trouble.refused(refusal, show)
    return sentences.get(refusal.name) or trouble.refused(refusal, show)


def spoken(paint: str, can: int | None, reads: str, way: str) -> str:
    """Say a step aloud, in whole words."""
    whence = f"Can {can}, {paint}" if can is not None else first_up(paint)
    if way == "can":
        return f"{whence}. The can should read minus {reads} grams."
    return f"{whence}. The scale should read {reads} grams."


def runs_out(number: int, others: tuple[int, ...]) -> str:
    """Say that a can runs out in this pour, and which go on."""
    rest = listed(tuple(f"can {other}" for other in others))
    return f"Can {number} runs out in it: go on with {rest}."


def band(low: str, high: str) -> str:
    """Say between which readings a part is on the mark."""
    return f"band {low} to {high} g"


def cup_said(in_cup_g: float) -> str:
    """Say what the drawn cup shows."""
    return f"the cup, {grams(in_cup_g)} in it"


def typed(text: str) -> str:
    """Say that a reading was typed and not used."""
    return f"typed {text}"


def undo_pour(net_g: float) -> str:
    """Say which pour *Undo* takes back."""
    return f"Undo {grams(net_g)}"


def over(much: str) -> str:
    """Say how much is too much."""
    return f"{much} g over"


def more_than_cans(has: str) -> str:
    """Say that a reading is more than there was."""
    return unbroken(f"Only {has} in its cans")


def short(much: str) -> str:
    """Say how much is still to pour."""
    return f"{much} g short"


def not_this(should: str) -> str:
    """Say what the scale should have read."""
    return f"not {should}"


def gauge_said(should: str, said: str) -> str:
    """Say what the gauge shows."""
    return f"should read {should} g: {said}"


def use(text: str) -> str:
    """Say which reading the main button uses."""
    return f"Use {text} g" if text else "Use"


def poured(net_g: float) -> str:
    """Say what was logged."""
    return f"{grams(net_g)} poured."


def missed(much: str, paint: str) -> str:
    """Say that paint was poured and not logged."""
    return f"{much} g of {paint} had gone in and were not logged. Carry on logs them."


def kept_count(logged: str) -> str:
    """Say that the scale kept its count."""
    return f"It kept its count: {logged} g in the cup, as logged."


def zeroed(logged: str) -> str:
    """Say that the scale was switched on under the full cup."""
    return f"It began at zero with the cup on it: {logged} g are in, as logged."


def log_believed(logged: str) -> str:
    """Say that nothing checks the log."""
    return f"The cup's own weight is not known, so the log is believed: {logged} g in it."


def cup_and_log(logged: str) -> str:
    """Say that cup and log agree."""
    return f"Cup and log agree: {logged} g in it."


def restarted(missed_g: float) -> str:
    """Say that the weigh-out goes on."""
    found = f" {grams(missed_g)} had been poured and is logged." if missed_g else ""
    return f"The scale is back.{found}"


def make(total: str) -> str:
    """Offer a bigger batch."""
    return f"Make {total} g instead"


def extra(more: str, price: float | None = None) -> str:
    """Say what a bigger batch costs."""
    return f"{more} g more" if price is None else f"{more} g more, worth {money(price)}"


def adds(pours: tuple[tuple[str, str], ...]) -> str:
    """Say what is poured for a bigger batch: 1.5 g more of can 8, then 167.0 g of can 12."""
    each = [
        f"{much} g {'more of' if not at else 'of'} {place}"
        for at, (place, much) in enumerate(pours)
    ]
    return f"{', then '.join(each)}." if each else ""


def made_more(batch_g: float) -> str:
    """Say the new batch."""
    return f"The batch is {grams(batch_g)} now."


def stronger(ratio: float, paint: str) -> str:
    """Say what keeping an over-pour does."""
    times = max(ratio, 1 / ratio)
    much = next((said for below, said in STRONGER if times < below), MUCH_STRONGER)
    return f"Keep it, {much if ratio >= 1 else much.replace('stronger', 'weaker')} in {paint}"


def no_loss(total: str) -> str:
    """Say that keeping it loses nothing."""
    return f"no paint lost, {total} g in all"


def shares(now: str, planned_share: str, paint: str) -> str:
    """Say a part's share as it is, and as planned."""
    return f"{now} {paint}, where the recipe has {planned_share}."


def pours(count: int, more: str, took: str) -> str:
    """Say how many pours an answer asks for, and how long they take whoever pours here."""
    if not count:
        return ""
    pours = f"1 pour {more}" if count == 1 else f"{count} pours {more}"
    return f"{pours}, about {took} as you pour." if took else f"{pours}."


def lose(lost: str, price: float | None = None) -> str:
    """Say what tipping it out costs."""
    return f"lose {lost} g" if price is None else f"lose {lost} g, worth {money(price)}"


def waste(paints: tuple[str, ...]) -> str:
    """Say where it goes."""
    verb = "goes" if len(paints) == 1 else "go"
    return f"{first_up(listed(paints))} {verb} to the waste tub, never to a drain."


def tipped(number: int, lost_g: float, *, again: bool = False) -> str:
    """Say that a pot is lost; another one for the same batch begins with an empty cup."""
    return f"Pot {number} tipped out, {grams(lost_g)} lost.{TARE_AGAIN if again else ''}"
