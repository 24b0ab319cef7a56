"""What a hand does, in the actions that WebDriver and WebDriver BiDi share (W3C)."""

Point = tuple[float, float]
Steps = list[dict[str, object]]

KEYS = {
    "Enter": "\ue007",
    "Tab": "\ue004",
    "Backspace": "\ue003",
    "Escape": "\ue00c",
    "Control": "\ue009",
}
DOWN: dict[str, object] = {"type": "pointerDown", "button": 0}
UP: dict[str, object] = {"type": "pointerUp", "button": 0}


def move(point: Point, over_ms: int = 0) -> dict[str, object]:
    """Move to a point of the window."""
    x, y = round(point[0]), round(point[1])
    return {"type": "pointerMove", "x": x, "y": y, "duration": over_ms}


def rest(for_ms: int) -> dict[str, object]:
    """Stay where one is."""
    return {"type": "pause", "duration": for_ms}


def finger(steps: Steps, kind: str = "touch") -> Steps:
    """Let a finger (or the mouse) do the steps."""
    source = {"type": "pointer", "id": kind, "parameters": {"pointerType": kind}}
    return [{**source, "actions": steps}]


def tap(point: Point, kind: str) -> Steps:
    """Touch a point for a moment."""
    return finger([move(point), DOWN, rest(30), UP], kind)


def drag(start: Point, end: Point, kind: str) -> Steps:
    """Drag from one point to another, and rest before letting go: no fling."""
    between = [(start[i] + (end[i] - start[i]) / 2) for i in (0, 1)]
    way = [move((between[0], between[1]), 120), move(end, 120)]
    return finger([move(start), DOWN, *way, rest(200), UP], kind)


def stroke(key: str) -> Steps:
    """Press a key and let it go."""
    value = KEYS.get(key, key)
    return [{"type": "keyDown", "value": value}, {"type": "keyUp", "value": value}]


def typing(text: str) -> Steps:
    """Type a text."""
    steps = [step for letter in text for step in stroke(letter)]
    return [{"type": "key", "id": "keys", "actions": steps}]


def chord(keys: str) -> Steps:
    """Press one key, or one with another held: `Enter`, `Control+a`."""
    held, _, last = keys.rpartition("+")
    if not held:
        return [{"type": "key", "id": "keys", "actions": stroke(last)}]
    down, up = stroke(held)
    return [{"type": "key", "id": "keys", "actions": [down, *stroke(last), up]}]
