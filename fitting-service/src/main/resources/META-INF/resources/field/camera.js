// Reads a helmet's code with the camera, where the browser can.
import { button, el } from './dom.js';

const EVERY_MS = 200;

export const canScan = () => 'BarcodeDetector' in window && Boolean(navigator.mediaDevices?.getUserMedia);

const tagIn = (text) => text.trim().toUpperCase().split(/[/=\s]/).pop();

/** The tag; nothing when the fitter closes the camera or it cannot be used. */
export const scan = async () => {
  let stream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
  } catch {
    return undefined;
  }
  const detector = new window.BarcodeDetector();
  const video = el('video', { autoplay: '', playsinline: '', 'aria-label': 'Camera' });
  video.srcObject = stream;
  const dialog = el('dialog', { class: 'camera', 'aria-label': 'Scan the tag' }, video);
  return new Promise((done) => {
    let timer;
    const end = (found) => {
      clearInterval(timer);
      stream.getTracks().forEach((track) => track.stop());
      dialog.remove();
      done(found);
    };
    dialog.append(button('Type it instead', 'wide big', () => end(undefined)));
    dialog.addEventListener('cancel', () => end(undefined));
    document.body.append(dialog);
    dialog.showModal();
    timer = setInterval(async () => {
      const codes = await detector.detect(video).catch(() => []);
      if (codes.length > 0) end(tagIn(codes[0].rawValue));
    }, EVERY_MS);
  });
};
