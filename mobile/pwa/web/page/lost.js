// Says that a script of the page did not come, as over a poor signal: nothing else may be there to say it.
addEventListener('error', function (event) {
  var script = event.target;
  if (!(script instanceof HTMLScriptElement)) return;
  function tell() {
    var again = document.getElementById('again'), failed = document.getElementById('failed');
    if (!failed.hidden) return; // the others only follow from the first
    document.getElementById('starting').hidden = true;
    failed.hidden = again.hidden = document.getElementById('splash').hidden = false;
    document.getElementById('reason').textContent = script.src + ' could not be loaded.';
    again.onclick = again.onclick || function () { location.reload(); };
  }
  if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', tell);
  else tell();
}, true);
