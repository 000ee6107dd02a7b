/** The least a browser can do for a stored photo: decode and resize to 2048 px, draw, encode at the same quality; no checks, no hashes, no thumbnail. */
self.addEventListener('message', async ({ data }: MessageEvent<Blob>) => {
  const bitmap = await createImageBitmap(data, { resizeWidth: 2048, resizeHeight: 1536, resizeQuality: 'high' });
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  canvas.getContext('2d', { alpha: false, willReadFrequently: true })?.drawImage(bitmap, 0, 0);
  const encoded = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.85 });
  self.postMessage(encoded.size);
});
