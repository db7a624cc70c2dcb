// Keys for what a phone's number pad lacks: eighths and units go into the reading last touched.
// Enter leads from reading to reading, and from the last one records.
(() => {
  const form = document.querySelector('form.readings');
  const keys = form && form.querySelector('.keys');
  if (!keys) return;
  const readings = [...form.querySelectorAll('input[data-reading]')];
  let current = readings.find((input) => input.autofocus) || readings[0];
  readings.forEach((input) => input.addEventListener('focus', () => { current = input; }));

  readings.slice(0, -1).forEach((input, i) => input.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter' || event.isComposing) return;
    event.preventDefault();
    readings[i + 1].focus();
  }));

  const without = (text, end) => text.replace(end, '').trimEnd();
  const FRACTION = /[\s-]*\d+\s*\/\s*\d+\s*$/;
  const UNIT = /\s*("|in|cm|mm)\s*$/;

  keys.hidden = false;
  keys.addEventListener('click', (event) => {
    const key = event.target.closest('button');
    if (!key) return;
    const bare = without(current.value, UNIT);
    current.value = key.dataset.fraction
      ? `${without(bare, FRACTION)} ${key.dataset.fraction}`.trim()
      : `${bare} ${key.dataset.unit}`.trim();
    current.focus();
    current.dispatchEvent(new Event('change', { bubbles: true }));
  });
})();
