// Starts Flutter from this site alone, without its own service worker.
import './start.js'; // without it Flutter would find nobody to talk to, and never try again
import { failed } from './splash.js';

const base = new URL('.', document.baseURI).pathname;

// What Flet's client looks for.
globalThis.flet = {
  pyodide: true, multiView: false, noCdn: true, webSocketEndpoint: '', entrypointBaseUrl: base, assetBase: base,
  routeUrlStrategy: 'hash', webRenderer: 'canvaskit', canvasKitBaseUrl: `${base}canvaskit/`,
  fontFallbackBaseUrl: 'assets/fonts/', appPackageUrl: '',
};
_flutter.buildConfig = { builds: [{ compileTarget: 'dart2js', renderer: 'canvaskit', mainJsPath: 'main.dart.js' }] };

const config = {
  renderer: 'canvaskit', entrypointBaseUrl: base, assetBase: base,
  canvasKitBaseUrl: flet.canvasKitBaseUrl, fontFallbackBaseUrl: flet.fontFallbackBaseUrl,
};
_flutter.loader.load({
  config,
  onEntrypointLoaded: async (entry) => (await entry.initializeEngine(config)).runApp(),
}).catch((problem) => failed(String(problem)));
