"""What is said before a weigh-out that speaks for another batch."""


def cans_allow(grams: str, paint: str) -> str:
    """Say how much the cans allow."""
    return f"The cans allow {grams}; {paint} runs out first."


def too_small(net: str, paint: str, least: str) -> str:
    """Say that a part is too small for the scale."""
    return f"{net} g of {paint}: to 1 % this scale weighs no less than {least} g."


def instead(grams: str) -> str:
    """Offer other grams."""
    return f"{grams} g instead"


def let_down(tint: str, carrier: str, grams: tuple[str, ...]) -> str:
    """Say how a strong paint is let down first."""
    strong, weak, use, left = grams
    return (
        f"Or let it down first: {strong} g of {tint} in {weak} g of {carrier}, stirred. "
        f"{use} g of that, then {left} g of {carrier}, are the two parts."
    )


def use_jar(number: int, grams: str) -> str:
    """Offer to use a jar of this colour up in this pot."""
    return f"Use up jar {number}, {grams} of this colour"


def at_most(grams: str) -> str:
    """Say in short how much the cans allow."""
    return f"The cans allow {grams}."


def small(paint: str) -> str:
    """Say in short that a part is too small for the scale."""
    return f"Too little {paint} for this scale."


def off(grams: str) -> str:
    """Say in short that the scale is off by too much."""
    return f"The scale is {grams} g off."
