/** What to say when a photo cannot be taken in: what happened to which file, and what to do about it. */
const PROBLEM_SENTENCES = {
  empty: (file: string) =>
    `${file} is empty (0 bytes), so there is nothing to add. Wait until the phone has finished saving it, then pick it again, or take the picture again.`,
  notAPicture: (file: string) =>
    `${file} is not a picture, whatever its name says. Nothing was added. Pick a JPEG, PNG, WebP, GIF, HEIC or AVIF file.`,
  unreadable: (file: string) =>
    `${file} could not be fetched from where it is kept. Nothing was added. If it is in a cloud folder, download it to this phone first, then pick it again.`,
  cannotDecode: (file: string) =>
    `${file} is of a kind that this browser cannot open (often HEIC). Nothing was added and the file is unchanged. In the phone’s camera settings choose “Most compatible” (JPEG) and take the picture again, or save it as JPEG and pick that.`,
  damaged: (file: string) =>
    `${file} is damaged or breaks off before its end. Nothing was added and the file is unchanged. Copy it to this phone again, or take the picture again before the pack is taken further apart.`,
  tooLarge: (file: string) =>
    `${file} is too large: at most 100 megapixels and 300 MB can be taken in. Nothing was added. Choose a smaller picture size in the camera and take the picture again.`,
  outOfMemory: (file: string) =>
    `${file} was too much for the phone’s memory. Nothing was added and the file is unchanged. Close other apps and pages and pick it again, or set the camera to 12 megapixels and take the picture again.`,
  canvasBlocked: (file: string) =>
    `${file} would have been stored as noise, because this browser scrambles drawn pictures to hinder tracking. Nothing was added. Allow this site to read canvas pixels, or open it in another browser.`,
  cancelled: (file: string) => `${file} was not added, because it was cancelled. Pick it again to add it.`,
} as const;

export type PhotoProblem = keyof typeof PROBLEM_SENTENCES;

/** An empty name stands for a picture without one, e.g. straight from the camera. */
export function photoProblemSentence(problem: PhotoProblem, fileName: string): string {
  return PROBLEM_SENTENCES[problem](fileName === '' ? 'The picture' : `“${fileName}”`);
}

export const photoStepWords = {
  reading: 'Reading the picture',
  shrinking: 'Turning and shrinking it',
  finishing: 'Checking and hashing it',
} as const;
