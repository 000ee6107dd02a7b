/** "photo-07.jpg": as many digits as the greatest number needs, two at least, so that a folder lists them in order. */
export function photoFileName(number: number, photoCount: number): string {
  return `photo-${String(number).padStart(Math.max(2, String(photoCount).length), '0')}.jpg`;
}
