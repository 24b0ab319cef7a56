"""Flet's web client, taken apart: what this site needs of it, changed as little as can be."""

import json

from mobile.pwa.packages import Client, Unfit

AS_THEY_ARE = (
    "flutter.js",
    "canvaskit/canvaskit.js",
    "canvaskit/canvaskit.wasm",
    "canvaskit/chromium/canvaskit.js",
    "canvaskit/chromium/canvaskit.wasm",
    "pyodide/pyodide.mjs",
    "pyodide/pyodide.asm.mjs",
    "pyodide/pyodide.asm.wasm",
    "assets/AssetManifest.bin",
    "assets/AssetManifest.bin.json",
    "assets/NOTICES",
    "assets/packages/wakelock_plus/assets/no_sleep.js",
    "assets/shaders/ink_sparkle.frag",
    "assets/shaders/stretch_effect.frag",
)

SIGNS = "material-icons.woff2"
"""The signs that Flutter's own controls draw, cut from Flet's icon font; the app draws its own."""

ANIMATIONS = b'"https://cdn.jsdelivr.net/npm/@rive-app/flutter-native-wasm@44.0.0/"'
NO_ANIMATIONS = b'"noop/"'
STUB = b"self.RiveNative = () => new Promise(() => {}); // nothing here is animated by it\n"


def files(client: Client, fonts: dict[str, bytes]) -> dict[str, bytes]:
    """Take the client's files, with our own fonts; raise `Unfit` where something is not as known.

    Parameters
    ----------
    client : Client
        Flet's web client.
    fonts : dict of str to bytes
        File name -> bytes: `SIGNS`, and the text font, whose names end with a weight, as in
        `figures-400.woff2`.

    Returns
    -------
    dict of str to bytes
        Path in the site -> bytes.
    """
    taken = {path: client.read(path) for path in AS_THEY_ARE}
    taken["main.dart.js"] = without_animations(client)
    taken["noop/wasm/rive_native.js"] = STUB
    taken["pyodide/pyodide-lock.json"] = empty_lock(client)
    taken["assets/FontManifest.json"] = font_manifest(client, sorted(fonts))
    return taken | {f"assets/fonts/{name}": data for name, data in fonts.items()}


def without_animations(client: Client) -> bytes:
    """Point the one script that Flet's client asks a foreign host for to a stub of ours."""
    script = client.read("main.dart.js")
    count = script.count(ANIMATIONS)
    if count != 1:
        raise Unfit(
            f"flet-web {client.release}: main.dart.js holds {ANIMATIONS.decode()} {count} times.",
            "Look for the new address and change mobile/pwa/flutter.py.",
        )
    return script.replace(ANIMATIONS, NO_ANIMATIONS)


def empty_lock(client: Client) -> bytes:
    """Keep of Pyodide's list of packages only the header that it compares itself with."""
    try:
        info = json.loads(client.read("pyodide/pyodide-lock.json"))["info"]
    except (ValueError, KeyError, TypeError) as problem:
        raise Unfit(f"flet-web {client.release}: pyodide-lock.json has no info.") from problem
    return json.dumps({"info": info, "packages": {}}, sort_keys=True).encode()


def font_manifest(client: Client, fonts: list[str]) -> bytes:
    """List the signs and the text font, which also answers to "Roboto", Flutter's own choice."""
    if b'"MaterialIcons"' not in client.read("assets/FontManifest.json"):
        raise Unfit(f"flet-web {client.release}: FontManifest.json lists no MaterialIcons.")
    text = [{"asset": f"fonts/{name}", "weight": weight(name)} for name in fonts if name != SIGNS]
    families = [{"family": family, "fonts": text} for family in ("Figures", "Roboto")]
    signs = {"family": "MaterialIcons", "fonts": [{"asset": f"fonts/{SIGNS}"}]}
    return json.dumps([signs, *families], sort_keys=True).encode()


def weight(name: str) -> int:
    """Read the weight off a font's name, such as `figures-400.woff2`."""
    digits = name.rpartition(".")[0].rpartition("-")[2]
    if not digits.isdecimal():
        raise Unfit(
            f"assets/fonts/{name} doesn't end with its weight.", "Name it like figures-400.woff2."
        )
    return int(digits)
