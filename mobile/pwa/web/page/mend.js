// Mends what Flutter trips over; has to run before Flutter does.

// A system without a language gives "c", and Flutter dies of it.
const known = (tag) => { try { return Intl.getCanonicalLocales(tag).length > 0; } catch { return false; } };
const languages = [...(navigator.languages ?? []), navigator.language].filter(known);
if (languages.length < (navigator.languages?.length ?? 0) + 1) {
  const usable = Object.freeze(languages.length ? [...new Set(languages)] : ['en']);
  Object.defineProperty(navigator, 'languages', { get: () => usable });
  Object.defineProperty(navigator, 'language', { get: () => usable[0] });
}

// Flutter's number keyboard has no decimal point.
const put = Element.prototype.setAttribute;
Element.prototype.setAttribute = function (name, value) {
  return put.call(this, name, name === 'inputmode' && value === 'numeric' ? 'decimal' : value);
};
