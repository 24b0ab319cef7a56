"""A pot that is done, and how it is now."""

from mobile.session.mix.begin import start_pot
from mobile.session.mix.pots import pot_by, pots
from mobile.session.mix.weigh_out import on_the_mark, stirred
from mobile.session.session import Session
from mobile.store.pot import Pot
from tests.screens.mix_place import now
from tests.session import moth_cellar as job


async def poured(session: Session) -> None:
    """Pour what is left on the mark, and stir it."""
    while now(session).target:
        await on_the_mark(session, now(session))
    await stirred(session, now(session))


async def ember_done() -> tuple[Session, Pot]:
    """Give the demo job with a pot of ember wing of 232 g."""
    session = await job.at_moth_cellar()
    await start_pot(session, job.mix(session.known, "ember wing"), 232.0, None)
    await poured(session)
    return session, pots(session.known)[-1]


def again(session: Session, pot: Pot) -> Pot:
    """Give a pot as it is now."""
    found = pot_by(session.known, pot.id)
    assert found is not None
    return found
