"""What is said of the scale and the bucket."""

from mobile.words.grams import scale

TITLE, MORE = "Scale and bucket", "what they take, check weight"
WEIGHING = "Weighing out"
WAYS = (("total", "Running total"), ("each", "Tare each part"), ("can", "Can on the scale"))
WAYS_MORE = {
    "total": "The cup stays on; the scale counts up from part to part.",
    "each": "The cup stays on and is tared to zero before each part.",
    "can": "The can stands on the scale, tared: what it loses went into the cup.",
}
STEP, CAPACITY, BUCKET = "The scale's step", "The scale's capacity", "The bucket takes"
STEPS_G = (("0.01", "0.01 g"), ("0.1", "0.1 g"), ("1.0", "1 g"))
CHECK = "Check weight"
CHECK_NOTE = (
    "One mass can't tell a scale that is off by a share, which leaves a colour as it is, from one "
    "that is off by so many grams. So the grams count: parts whose band is smaller are warned of."
)
CHECK_MORE = "Once a day: a mass that you know, and what the scale shows for it."
KNOWN, SHOWS, KEEP_CHECK = "A known mass", "The scale shows", "Keep the check"
SPOKEN, AWAKE = "Steps spoken, by a voice on this phone", "The screen while weighing"
ON_OFF = (("off", "Off"), ("on", "On"))
AWAKES = (("off", "As the phone has it"), ("on", "Stays on"))
KEPT = "Scale and bucket are kept."
NOT_TODAY = "not checked today"


def checked(error_g: float, step_g: float) -> str:
    """Say how far off the scale is."""
    if abs(error_g) < step_g / 2:
        return "The scale shows what it should."
    more = "too much" if error_g > 0 else "too little"
    return f"The scale shows {scale(abs(error_g), step_g)} g {more}."


def suffers(names: tuple[str, ...], error_g: float, step_g: float) -> str:
    """Warn of parts that are smaller than the scale's error lets them be."""
    off = scale(abs(error_g), step_g)
    return f"The scale is {off} g off today: too much for {', '.join(names)}."
