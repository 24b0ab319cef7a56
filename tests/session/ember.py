"""Ember wing of the demo job: three paints, three cans, one recipe; the figures are public below.

Made up for this project. 232 g split 3 : 1 : 8 at 0.1 g, and its running totals, are worked by
hand: 58.0 + 19.3 + 154.7, least remainders last; small below the root of 3 g x 232 g = 26.4 g.
"""

from core.paints.recipe import Part
from mobile.session.session import Session
from mobile.store.entries import CanWeighed
from mobile.store.records import Can, Job, Mix, Paint, Settings
from tests.session.shelf import Shelf

STAMP = (1000.0, "phone")
JOB = Job("job", *STAMP, "Moth Cellar")
ORANGE = Paint("FO", *STAMP, "fluorescent orange", "#ff7a1a", "#ff7a1a", 1.14)
YELLOW = Paint("FY", *STAMP, "fluorescent yellow", "#f2ee2c", "#eaff3d", 1.11)
MEDIUM = Paint("CM", *STAMP, "clear glaze medium", "", "", 1.03)
CAN_7 = Can("can7", *STAMP, 7, "FO", 0.25, 56.6, "unopened")
CAN_8 = Can("can8", *STAMP, 8, "FY", 0.25, 56.6, "unopened")
CAN_12 = Can("can12", *STAMP, 12, "CM", 1.0, 96.0, "unopened")
WEIGHED = (
    CanWeighed("w7", *STAMP, "can7", 257.7, 56.6, 201.1),
    CanWeighed("w8", *STAMP, "can8", 314.4, 56.6, 257.8),
    CanWeighed("w12", *STAMP, "can12", 836.9, 96.0, 740.9),
)
PARTS = (Part("FO", 3.0), Part("FY", 1.0), Part("CM", 8.0))
EMBER = Mix("ember", *STAMP, "job", "ember wing", PARTS, "glaze", 232.0)
SETTINGS = Settings("settings", *STAMP, job="job", cup_g=21.4)
RECORDS = (
    *(JOB, ORANGE, YELLOW, MEDIUM, CAN_7, CAN_8, CAN_12),
    *WEIGHED,
    *(EMBER, SETTINGS),
)


def ember(*more: object) -> Session:
    """Give a session with the job on a shelf."""
    return Session(Shelf(*RECORDS, *more), "phone")  # type: ignore[arg-type]


def again(session: Session) -> Session:
    """Start the app again: the same shelf, nothing remembered."""
    return Session(session.shelf, "phone")
