// Tells an old browser so, in words that it understands; the modules beside it would only fail silently.
(function () {
  var able = 'noModule' in HTMLScriptElement.prototype && typeof WebAssembly === 'object' && 'Tag' in WebAssembly
    && 'crypto' in window && 'locks' in navigator && 'indexedDB' in window && 'at' in Array.prototype;
  if (able || !window.isSecureContext) return; // over plain http much is missing: the start says what
  document.addEventListener('DOMContentLoaded', function () {
    document.getElementById('starting').hidden = true;
    document.getElementById('old').hidden = false;
  });
})();
