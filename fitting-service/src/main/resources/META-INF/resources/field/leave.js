// On every page: where this device holds players for the field, signing out leads over the wiping.
document.addEventListener('click', (event) => {
  const out = event.target.closest('a[href="/sign-out"]');
  if (!out || document.body.classList.contains('field') || !localStorage.getItem('tapeline-field')) return;
  event.preventDefault();
  location.href = '/fitting/field/#/sign-out';
});
