"""The service worker with its table: each path of the site, its SHA-256 and its type."""

import hashlib
import json
from pathlib import PurePosixPath

from mobile.pwa.packages import Unfit
from mobile.pwa.page import CSP, WEB

TYPES = {
    ".bin": "application/octet-stream",
    ".frag": "application/octet-stream",
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript",
    ".json": "application/json",
    ".mjs": "text/javascript",
    ".otf": "font/otf",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".txt": "text/plain; charset=utf-8",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
    ".woff2": "font/woff2",
    ".zip": "application/zip",
    "": "text/plain; charset=utf-8",
}


def media_type(path: str) -> str:
    """Say what type a file is served as."""
    suffix = PurePosixPath(path).suffix
    if suffix not in TYPES:
        raise Unfit(f"{path}: no type is known for {suffix}.", "Add it in mobile/pwa/offline.py.")
    return TYPES[suffix]


def worker(files: dict[str, bytes]) -> bytes:
    """Write the service worker for exactly these files."""
    table = {path: (sha256(data), media_type(path)) for path, data in sorted(files.items())}
    version = {"csp": CSP, "seal": sha256(CSP.encode())[:8], "files": table}
    script = (WEB / "sw.js").read_text("utf-8")
    return f"'use strict';\nconst VERSION = {json.dumps(version, indent=1)};\n{script}".encode()


def sha256(data: bytes) -> str:
    """Hash bytes, in hexadecimal."""
    return hashlib.sha256(data).hexdigest()
