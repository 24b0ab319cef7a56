"""How a recipe's shares come about."""

from mobile.parts.sheet import How, HowStep
from mobile.screens.mix.recipes.form import PAINT, PARTS, RecipeForm, shares_now
from mobile.session.view import View
from mobile.words import mix as words
from mobile.words import weigh_out as weigh_words


def how(form: RecipeForm, name: str, view: View) -> How | None:
    """Say how each share comes about; None while there is none."""
    ratios = shares_now(form, view)
    known = [(row, ratio) for row, ratio in zip(form.parts, ratios, strict=True) if ratio]
    if not known:
        return None
    terms = " + ".join(row[PARTS].strip() for row, _ in known)
    whole = sum(view.read("parts_count", row[PARTS]) for row, _ in known)
    total = view.show("parts_count", whole)
    steps = [HowStep(words.ALL_PARTS, terms, total, "")]
    for at, (row, ratio) in enumerate(known, 1):
        paint = row[PAINT].strip() or words.part(at)
        share = view.show("share_ratio", ratio)
        steps.append(HowStep(paint, f"{row[PARTS].strip()} ÷ {total}", share, weigh_words.FRACTION))
    return How(name, words.BY_MASS, tuple(steps))
