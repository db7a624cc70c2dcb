// Fills in how long a fit takes at the chosen field, and says how many the day has room for.
(() => {
  const minutesOf = (time) => {
    const [hours, minutes] = time.split(':').map(Number);
    return hours * 60 + minutes;
  };

  for (const form of document.querySelectorAll('form[data-fit-day]')) {
    const entry = (name) => form.elements.namedItem(name);
    const hint = form.querySelector('[data-room]');
    const chosen = () => entry('field').selectedOptions[0];

    const sayRoom = () => {
      const minutes = Number(entry('minutesPerFit').value || chosen().dataset.minutes);
      const fitters = Number(entry('fitters').value);
      const open = minutesOf(entry('closes').value) - minutesOf(entry('opens').value);
      const room = Math.floor(open / minutes) * fitters;
      hint.textContent = chosen().dataset.said + (room > 0 ? ' Room for ' + room + '.' : '');
    };

    entry('field').addEventListener('change', () => {
      entry('minutesPerFit').value = chosen().dataset.minutes;
      sayRoom();
    });
    form.addEventListener('input', sayRoom);
    if (chosen()) sayRoom();
  }
})();
