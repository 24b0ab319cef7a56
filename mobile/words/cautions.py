"""Cautions: each stands before the step that it is about, and ends by naming who decides.

They are usual cautions of the trade, never a permission and never a number that nobody measured.
"""

from dataclasses import dataclass

READ = "I have read it"


@dataclass(frozen=True, slots=True)
class Caution:
    """One caution: what it is about, what can hurt, and who decides."""

    title: str
    lines: tuple[str, ...]
    decides: str


CAUTIONS = {
    "survey": Caution(
        "Before you sand, scrape or drill",
        (
            "Old paint may hold lead; boards and textured coats may hold asbestos.",
            "Dust of masonry carries silica.",
            "Not sure what it is? Stop and have it tested.",
        ),
        "Testing and licensed people decide, and local rules.",
    ),
    "wipe-down": Caution(
        "Before the wipe-down",
        (
            "Solvent vapour is heavy and burns: no flames, no pilot lights, no sparks.",
            "Move air out at floor level, away from people.",
            "Gloves on. Rags go into a lidded metal bin.",
            "Someone should know where you are, and when you will be back.",
        ),
        "The label and its data sheet decide.",
    ),
    "promoter": Caution(
        "Before the promoter",
        (
            "Vapour gathers low in a basement: move air out before you start and while it dries.",
            "No flames, no pilot lights. Gloves and eye cover.",
            "A two-part product is not ordinary paint: pot life, and isocyanates in some.",
        ),
        "The label and its data sheet decide.",
    ),
    "blades": Caution(
        "Before you hang and trim",
        (
            "Cut away from the hand that holds; break blades into a sharps tin.",
            "A ladder stands on firm, level floor; a tower needs someone who may put it up.",
        ),
        "The maker of the ladder or tower and local rules decide.",
    ),
    "lamps": Caution(
        "Before you work under the lamps",
        (
            "Blacklight reaches eyes and skin unseen. Don't look into a lamp.",
            "UV-filtering glasses, covered skin; some medicines make skin tender to light.",
            "Keep one white light that all can reach. Cords and wet trays stay apart.",
        ),
        "The lamp's data sheet, a measured value and your doctor decide.",
    ),
    "solvent markers": Caution(
        "Before the outline",
        (
            "Some markers hold solvent: the vapour burns, and it gathers low.",
            "Move air, no flames, caps on between lines.",
        ),
        "The marker's label decides.",
    ),
    "clear coat": Caution(
        "Before the clear coat",
        (
            "Vapour gathers low: move air out before you start and while it dries.",
            "Exits and their signs are never covered; a public room may ask for a fire rating.",
            "Rinse water and leftovers never go down a venue's drain.",
        ),
        "The label, its data sheet and local code decide.",
    ),
}
