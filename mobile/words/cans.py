"""What *Cans* says."""

# All cans
TITLE = "Cans"
EMPTY = "Number your first can"
EMPTY_MORE = "Its number goes on the lid, its empty weight in here. Then a scale says what is left."
WEIGH, NEW, PICK = "Weigh a can", "New can", "Which can is on the scale?"
PAINTS = "Paints"
NEVER_WEIGHED, SHORTEST = "not weighed yet", "emptiest first"

# One can on the scale
ASK = "What does the scale read?"
ASK_MORE = "The can as its empty weight was taken: with its lid, or without."
LESS = "Less than the empty can"
KEEP_NEXT, NOT_KEPT = "Keep, next can", "typed, not kept yet"
SHOULD_BE, MISSING, MORE, AGREES = "should be", "gap, missing", "gap, more than booked", "gap"
WHERE = "Spilt, lent, or another mix?"
CHANGE = "Change"
POURS, NOTHING_YET, WEIGHED, POURED = "what happened to it", "Nothing yet.", "weighed", "poured"
SEE_POURS = "Pours"
LID, LID_SMALL, LID_WAS_OFF, KEEP_LID = "Lid off", "part of it dries", "lid off", "Keep it"
LID_OFF_FOR, ACROSS, AIR, HUMIDITY = "Lid off for", "Can across, inside", "Air", "Humidity"
DRAUGHTS = (("still", "Still air"), ("moving", "A draught"))
LID_MORE = (
    "What stood open dries a little; the ledger takes off half of what it can be at the most."
)
TARE_FIRST = "Its empty weight comes first: without it nobody knows what is paint."
LITRES_UNKNOWN = "Litres need its density."
NET, LITRES = "net", "by its density"
HOW_NOTE = "Of what a lid off can let dry at the most, half is taken off."

# What a can is
LOT = "Lot, off the label"
NUMBER, PAINT, LABEL, DENSITY = "Can number", "Paint", "Paint on the label", "Density"
LOOKS = "How it looks"
EMPTY_WEIGHS, UNOPENED_WEIGHS = "Empty can weighs", "Weighed unopened"
EMPTY_GRAMS, UNOPENED_GRAMS = "Empty can", "Unopened, on the scale"
EMPTY_HINT = "A like can, empty and scraped, with its lid."
UNOPENED_HINT = (
    "What the label says is in it comes off. Makers fill to about 1 %; weigh it once it is empty."
)
PUT_AWAY = "Put it away: empty or gone"
KNOWN_PAINTS = "Paints you have"
TARE_FROM = {"empty": "from the empty can", "unopened": "from weighing it unopened"}


def kept(number: int) -> str:
    """Say that a can was kept."""
    return f"Can {number} is kept."


def weighed(number: int, net_g: float) -> str:
    """Say what a weighing settled."""
    return f"Can {number}: {net_g:.1f} g, kept."


def gone(number: int) -> str:
    """Say that a can is off the list."""
    return f"Can {number} is off the list."


def lid_kept(number: int) -> str:
    """Say that a lid off was logged."""
    return f"Can {number}: its open lid is in the ledger."


def dried(grams: str) -> str:
    """Say what dried off at the most."""
    return f"At most {grams} dried off; half of that comes off the ledger."


def into(number: int, name: str) -> str:
    """Say which pot a pour went into."""
    return f"pot {number}, {name}"


def out(grams: str) -> str:
    """Say what went out."""
    return f"−{grams}"


def over(mix: str, area: str) -> str:
    """Say how much wall what is left goes over in one coat."""
    return f"goes over {area}, {mix}"


def over_assumed(mix: str, area: str) -> str:
    """Say it where the rate is the usual one."""
    return f"goes over about {area}, {mix}, at a usual rate"


def can(number: int) -> str:
    """Name a can."""
    return f"Can {number}"


def keep(number: str) -> str:
    """Say what the main button keeps."""
    return f"Keep can {number}" if number else "Keep the can"


def of_label(left: str, label: str) -> str:
    """Say the litres left, of those on the label."""
    return f"{left} of {label}".strip() if label else left


def typed(text: str) -> str:
    """Say that a reading was typed and not kept."""
    return f"{text} g typed, not kept"


def how_title(number: int, paint: str) -> str:
    """Head the working of a reading."""
    return f"Can {number}, {paint}"


def left(grams: str) -> str:
    """Say what is in a can."""
    return f"{grams} left"


def about(litres: str, share: str) -> str:
    """Say the litres, and how full that is."""
    return f"{litres}, {share} of a full can" if share else litres


def tare(grams: str, whence: str) -> str:
    """Say the empty weight, and where it comes from."""
    known = TARE_FROM.get(whence, "")
    return f"empty {grams}, {known}" if known else f"empty {grams}"


def last(grams: str, when: str) -> str:
    """Say the last weighing."""
    return f"{grams} weighed {when}"


def less(grams: str) -> str:
    """Say why a reading can't be."""
    return f"It weighs {grams} empty. Type on, or is it another can?"


def spoken(number: int, paint: str, share: str) -> str:
    """Say what a drawn can shows."""
    return f"can {number}, {paint}" + (f", {share} full" if share else "")
