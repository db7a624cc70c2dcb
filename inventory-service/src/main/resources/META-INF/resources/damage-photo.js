// A photo is made smaller before it is sent, so that it goes through with little signal. Whatever
// cannot be done here is left to the service, which takes the photo as it is.
(() => {
  const MOST = 20 * 1024 * 1024;
  const PATIENCE_MILLIS = 5000;

  const shrunk = async (file, longest) => {
    const picture = await createImageBitmap(file);
    const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(picture.width * scale);
    canvas.height = Math.round(picture.height * scale);
    canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise((done) => { canvas.toBlob(done, 'image/jpeg', 0.85); });
    return blob && blob.size < file.size ? new File([blob], 'damage.jpg', { type: blob.type }) : file;
  };

  document.querySelectorAll('input[type=file][data-shrink]').forEach((input) => {
    const form = input.form;
    let working = Promise.resolve();
    let waiting = false;
    input.addEventListener('change', () => {
      const [file] = input.files;
      if (!file) return;
      form.setAttribute('aria-busy', 'true');
      working = shrunk(file, Number(input.dataset.shrink)).then((small) => {
        const files = new DataTransfer();
        files.items.add(small);
        input.files = files.files;
      }).catch(() => {}).then(() => {
        const [now] = input.files;
        // A body that is too large would be turned away whole, and the report with it.
        if (now && now.size > MOST) {
          input.value = '';
          const told = document.createElement('p');
          told.className = 'field-error';
          told.setAttribute('role', 'alert');
          told.textContent = 'The photo is larger than 20 MB and was left out. You can send without it.';
          input.after(told);
        }
        form.removeAttribute('aria-busy');
      });
    });
    // The report matters more than a small photo: it waits for that a little, and never for ever.
    form.addEventListener('submit', (event) => {
      if (!form.hasAttribute('aria-busy')) return;
      event.preventDefault();
      if (waiting) return;
      waiting = true;
      const button = event.submitter;
      const enough = new Promise((done) => { setTimeout(done, PATIENCE_MILLIS); });
      Promise.race([working, enough]).then(() => {
        const [asItIs] = input.files;
        if (asItIs && asItIs.size > MOST) input.value = '';
        form.removeAttribute('aria-busy');
        // Not within the event that was stopped: there the browser would pass over it.
        setTimeout(() => form.requestSubmit(button));
      });
    });
  });
})();
