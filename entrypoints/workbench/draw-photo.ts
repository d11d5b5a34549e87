import { fitted } from '../../src/session/own-photos';

/** How much is lost to be small: what is stamped or painted on a machine stays to be read. */
const QUALITY = 0.82;

/**
 * A photo drawn anew: the same picture upright, smaller, as a JPEG of its points alone. Nothing else of the file is left,
 * neither where nor when nor with what it was taken.
 * @returns null where the browser can't open it as a picture
 */
export async function drawPhoto(file: File): Promise<ArrayBuffer | null> {
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return null;
  }
  try {
    const { width, height } = fitted(picture.width, picture.height);
    const canvas = document.createElement('canvas');
    Object.assign(canvas, { width, height });
    const pen = canvas.getContext('2d');
    if (!pen) return null;
    // A JPEG knows no holes: what can be seen through is white, as on paper.
    pen.fillStyle = '#fff';
    pen.fillRect(0, 0, width, height);
    pen.drawImage(picture, 0, 0, width, height);
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', QUALITY));
    return blob ? await blob.arrayBuffer() : null;
  } finally {
    picture.close();
  }
}

/** Bytes of a JPEG as an inline picture: the address of a page's own memory would not outlive the page in a saved file. */
export function inlineJpeg(bytes: ArrayBuffer): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(new Blob([bytes], { type: 'image/jpeg' }));
  });
}
