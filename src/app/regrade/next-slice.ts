/** Lets the page answer taps and draw before the next piece of long work. */
export function nextSlice(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}
