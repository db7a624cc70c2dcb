// A list that hears nothing any more must not go on saying "may wear".
(() => {
  const list = document.getElementById('sideline');
  const warning = document.getElementById('stale');
  if (!list || !warning) return;
  const oldest = Number(list.dataset.oldestSeconds) * 1000;
  let heard = Date.now();

  const hour = (at) => new Date(at).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });

  const sayTimes = () => {
    for (const time of list.querySelectorAll('time')) {
      time.textContent = new Date(time.dateTime).toLocaleTimeString();
    }
  };

  const forget = () => {
    const since = 'Not known since ' + hour(heard);
    for (const state of list.querySelectorAll('.state')) {
      state.className = 'state unknown';
      state.textContent = 'Not known';
    }
    for (const why of list.querySelectorAll('.why')) {
      why.className = 'why';
      why.textContent = since;
    }
    warning.textContent = 'No connection. ' + since + '.';
    warning.hidden = false;
  };

  // After a sleep of the phone the clock has moved on though no timer ran: look at it first.
  const look = () => {
    if (Date.now() - heard > oldest) forget();
  };

  document.body.addEventListener('htmx:sseMessage', () => {
    heard = Date.now();
    warning.hidden = true;
    sayTimes();
  });
  document.addEventListener('visibilitychange', look);
  window.addEventListener('pageshow', look);
  window.addEventListener('offline', forget);
  setInterval(look, 500);
  sayTimes();
})();
