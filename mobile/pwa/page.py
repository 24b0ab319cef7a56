"""The page of the site: index, manifest, content security policy."""

import json
from pathlib import Path
from string import Template

WEB = Path(__file__).parent / "web"
NAME = "Duskcoat"
ABOUT = (
    "The phone beside the scale and the tray: walls, mixes, waits and cans for blacklight murals."
)
GROUND, INK = "#0E1014", "#ECE7DC"  # as mobile.theme's dark look, so that nothing flashes
CSP = "; ".join(
    (
        "default-src 'none'",
        "script-src 'self' 'wasm-unsafe-eval'",
        "connect-src 'self'",
        "img-src 'self' blob: data:",
        "style-src 'self' 'unsafe-inline'",  # Flutter writes style elements
        "font-src 'self'",
        "worker-src 'self'",
        "manifest-src 'self'",
        "media-src 'self' blob:",
        "frame-src 'self'",
        "base-uri 'self'",
        "form-action 'none'",
    )
)


def files(base: str) -> dict[str, bytes]:
    """Make the page's own files for a site that lives at `base`, as in "/" or "/phone/"."""
    words = {"base": base, "csp": CSP, "name": NAME, "about": ABOUT, "ground": GROUND, "ink": INK}
    index = Template((WEB / "index.html").read_text("utf-8")).substitute(words)
    scripts = {f"page/{path.name}": path.read_bytes() for path in (WEB / "page").glob("*.js")}
    return {"index.html": index.encode(), "manifest.webmanifest": manifest(), **scripts}


def manifest() -> bytes:
    """Say how the app is put on a phone; all addresses count from the manifest's own."""
    icons = [
        {"src": "icons/icon.svg", "sizes": "any", "type": "image/svg+xml"},
        {"src": "icons/icon-192.png", "sizes": "192x192", "type": "image/png"},
        {"src": "icons/icon-512.png", "sizes": "512x512", "type": "image/png"},
        {
            "src": "icons/icon-maskable-512.png",
            "sizes": "512x512",
            "type": "image/png",
            "purpose": "maskable",
        },
    ]
    entries = {
        "id": "./",
        "start_url": "./",
        "scope": "./",
        "name": NAME,
        "short_name": NAME,
        "description": ABOUT,
        "lang": "en",
        "display": "standalone",
        "background_color": GROUND,
        "theme_color": GROUND,
        "icons": icons,
    }
    return json.dumps(entries, indent=1).encode()
