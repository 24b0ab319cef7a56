"""What *Mix* says."""

from mobile.words.grams import first_up, grams, unbroken

# The list
EMPTY = "Write the first mix"
EMPTY_MORE = "A mix is its paints and how many parts of each by weight. Then the scale pours it."
NEW_MIX, POTS, RECIPE = "New mix", "Pots", "Recipe"
TOO_MUCH, ALL_IN = "too much poured", "all is in"
USES = {
    "promoter": "promoter",
    "base": "base",
    "glaze": "glaze",
    "opaque": "opaque",
    "clear": "clear coat",
}

# How a pot came out
NOT_PLANNED = "not in the recipe"
FATES = {"spill": "part of it spilt", "more": "added to", "correction": "colour corrected"}
AS_PLANNED, ON_THE_SCALE, NOT_WEIGHED = "as planned", "on the scale", "nothing poured"

# The recipe
NAME, PARTS, PLANNED, ADD_PART = "Name", "Parts", "Planned grams", "Add a part"
PLANNED_MORE = "With planned grams this mix stands in the row of what is weighed next."
REMOVE_MIX = "Take it off the list"
ALL_PARTS, BY_MASS = "All parts", "parts by weight"
TODO_PARTS, TODO_PAINT, TODO_NUMBER = (
    "it needs parts",
    "a part has no paint",
    "a paint has no parts",
)
TODO_WRONG = "something above is not right yet"

TYPED_AS = (("parts", "Parts"), ("percent", "Percent"), ("grams", "Grams"))
NOTES, OWN_LOOKS = "Notes", "How the mix looks, if you know it"
EARLIER_VERSIONS = "Earlier versions"
WHY = {"typed": "changed by hand", "corrected": "corrected after a brush-out"}

NO_POT, ALL_MIXES = "That pot is not in this book", "All mixes"
NO_POT_MORE = "It was weighed on another phone, or its job was taken off."
TAKE_OFF = "Take it off the scale, as it was"

# Before the weigh-out
GRAMS, CUP, AMOUNT = "Grams", "Empty cup", "How much"
LIKE_POT, MORE_OF_SAME = "as it was really poured", "More of the same"
HOW_MUCH = "How many grams? Type them below."
ONE_SCALE = "There is one scale, and another pot stands on it."
NO_CAN, FROM_CAN = "no can yet", "straight from the can"
PORTIONS_NOTE = (
    "To the scale's step, so that they add up to the batch: largest remainders, Hamilton 1792. "
    "The order of pouring is this project's planning model."
)


def mix_number(number: int) -> str:
    """Name a mix that was given no name."""
    return f"Mix {number}"


def can(number: int) -> str:
    """Name a can."""
    return f"can {number}"


def can_of(number: int, paint: str) -> str:
    """Name a can with its paint."""
    return f"can {number}, {paint}"


def part(number: int) -> str:
    """Name a part by its place."""
    return f"part {number}"


def part_of(number: int, of: int) -> str:
    """Say which part of how many."""
    return f"Part {number} of {of}"


def paint_in(number: int | None, paint: str) -> str:
    """Name a paint with its can, if it has one."""
    return paint if number is None else can_of(number, paint)


def pot(number: int) -> str:
    """Name a pot."""
    return f"Pot {number}"


def mostly(mix: str, paint: str) -> str:
    """Say which paint a mix is mostly of: its chip shows that one."""
    return f"{mix}, mostly {paint}"


def title(count: int) -> str:
    """Say how many mixes there are."""
    return f"{count} mix" if count == 1 else f"{count} mixes"


def weigh(name: str, batch: str) -> str:
    """Say what the main button weighs."""
    return f"Weigh {name}, {batch}"


def load(grams: str, number: int, of: int) -> str:
    """Say which load of how many; one alone by its grams."""
    return grams if of == 1 else f"load {number} of {of}"


def loads(grams: str, count: int) -> str:
    """Say how many loads of so many grams."""
    return grams if count == 1 else f"{count} × {grams}"


def use_and_coats(use: str, count: int) -> str:
    """Say the use of a mix, and how many coats it gets."""
    return USES[use] if not count else f"{USES[use]}, {count} coat{'s' if count > 1 else ''}"


def carry_on(name: str, where: str) -> str:
    """Say where a weigh-out stands."""
    together = where.replace(" ", "\xa0")
    return f"Carry on: {name}, {together}"


def give_up(in_cup_g: float) -> str:
    """Offer to end a weigh-out."""
    return f"Tip it out, {grams(in_cup_g)} lost" if in_cup_g else "Don't weigh it"


def off_the_scale(number: int) -> str:
    """Say that a pot is as it was."""
    return f"Pot {number} is off the scale, as it was."


def pots_so_far(count: int) -> str:
    """Say how many pots came of a mix."""
    return (
        "no pot yet"
        if not count
        else f"{count} pot so far"
        if count == 1
        else f"{count} pots so far"
    )


def all_pots(count: int) -> str:
    """Offer all pots."""
    return f"All {count} pots"


def tipped_out(lost: str) -> str:
    """Say that a pot was given up."""
    return f"tipped out, {lost} g lost"


def made_bigger(planned: str) -> str:
    """Say that an over-pour was made good."""
    return f"made bigger, from {unbroken(planned)}"


def with_stray(much: str, paint: str) -> str:
    """Say that the wrong can went in."""
    return f"{much} g of {paint} in it"


def kept_more(paint: str) -> str:
    """Say that an over-pour was kept."""
    return f"more {paint}"


def kept(name: str) -> str:
    """Say that a recipe was kept."""
    return f"{name} is kept."


def removed(name: str) -> str:
    """Say that a recipe is off the job."""
    return f"{name} is off the list; its pots stay."


def keep(name: str) -> str:
    """Say what the main button keeps."""
    return f"Keep {name}"


def parts_label(number: int, typed_as: str = "parts") -> str:
    """Label the field of a part's number, or of its percent or grams."""
    return f"{dict(TYPED_AS)[typed_as]} {number}"


def adds_up(percent: str) -> str:
    """Say that the percents don't add up to a hundred."""
    return f"They add up to {percent} %; each counts as its share of that."


def until(when: str, why: str) -> str:
    """Say until when a version was the recipe, and why it was changed."""
    return f"until {when}, {WHY[why]}"


def version(parts: tuple[tuple[str, str], ...]) -> str:
    """Say the parts of a version."""
    return ", ".join(f"{share} {name}" for name, share in parts)


def paint_label(number: int) -> str:
    """Label a paint's field."""
    return f"Paint {number}"


def change_looks(said: str) -> str:
    """Say what a chip in a recipe does."""
    return f"{said}. Change its looks"


def twice(paint: str) -> str:
    """Say that a paint is in a recipe already."""
    return f"{first_up(paint)} is in the recipe already. Put both parts together."


def weigh_grams(typed: str) -> str:
    """Say what the main button weighs out."""
    return f"Weigh {typed} g" if typed else "Weigh"


def cup_line(cup_g: float | None) -> str:
    """Say what is known of the cup."""
    if cup_g is None:
        return "Put the cup on and tare it to zero. Its own weight helps if the scale goes off."
    return f"Cup {grams(cup_g)}, tared to zero."


def cup_counted(cup_g: float) -> str:
    """Say that the scale counts the cup in."""
    return f"Cup {grams(cup_g)}, counted in since the scale went off."


def can_unknown(number: int) -> str:
    """Say that a can was never weighed."""
    return f"can {number}, not weighed yet"


def can_left(number: int, has_g: float) -> str:
    """Say what a can has left."""
    return f"can {number} has {grams(has_g)} left"


def can_short(number: int, short: str) -> str:
    """Say that a can has too little."""
    return f"can {number} is {short} g short"


def lacks(paint: str, short_g: float, has_g: float) -> str:
    """Say how much of a paint is missing."""
    return f"{paint} is {grams(short_g)} short, its cans hold {grams(has_g)}"


def cans_lack(short: tuple[str, ...]) -> str:
    """Say that the cans can't give it, and what to do."""
    return f"{first_up('; '.join(short))}. Weigh them again, add a can, or make less."


def weigh_it(number: int) -> str:
    """Say that a can's ledger can't be right."""
    return f"can {number}: more poured than it had, weigh it"


def planned(planned_g: str, within_g: str = "") -> str:
    """Say what was planned of a part, and how near *On the mark* says it is."""
    return f"planned {planned_g} g" + (f", within {within_g} g" if within_g else "")


def all_in(in_all: str) -> str:
    """Say how much is in, and what to do with the number."""
    return f"{in_all} in it. Write the number on the cup."


def stirred(number: int, in_cup_g: float) -> str:
    """Say that a pot is done."""
    return f"Pot {number}, {grams(in_cup_g)}, is done."
