// Says that a script of the page did not come, as over a poor signal: nothing else may be there to say it.
addEventListener('error', function (event) {
  var script = event.target;
  if (!(script instanceof HTMLScriptElement)) return;
  function tell() {
    var part = function (id) { return document.getElementById(id); }, again = part('again');
    if (part('splash').hidden || !part('failed').hidden) return; // the app is up; or this follows from the first
    part('starting').hidden = part('slow').hidden = true;
    part('failed').hidden = part('lost').hidden = again.hidden = false;
    part('reason').textContent = script.src + ' could not be loaded.';
    again.onclick = again.onclick || function () { location.reload(); };
  }
  if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', tell);
  else tell();
}, true);
