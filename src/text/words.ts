/** Words that stand on more than one screen. */
export const words = {
  back: 'Back',
  bench: 'Bench',
  cancel: 'Cancel',
  close: 'Close',
  next: 'Next',
  done: 'Done',
  undo: 'Undo',
  opening: 'Opening …',
  saved: 'saved',
  saving: 'saving …',
  notSaved: 'not saved',
  tryAgain: 'Try again',
  notFetched: 'Not on the phone yet',
  notFetchedHint:
    'This part of Underlid has not been fetched. Once there is a signal, try again. Nothing is lost meanwhile.',
  notSavedWhat: (names: readonly string[]) => {
    const shown = names.slice(0, 3).join(', ');
    return `Not saved: ${names.length > 3 ? `${shown} and ${names.length - 3} more` : shown}.`;
  },
  notSavedOf: (packs: readonly string[]) => `Not saved yet: something of ${packs.join(', ')}.`,
  draftsNotKept: 'Not kept: what you typed or ticked here. It stays on the screen as long as the page is open.',
  safety: 'safety',
  stop: 'stop',
  takenBack: (label: string) => `taken back: ${label}`,
  inventedDemo: 'invented demo',
  sample: (sample: string) => `sample ${sample}`,
  unnamed: 'Pack without a name',
  packName: (name: string | undefined) => (name === undefined || name === '' ? 'Pack' : name),
  packLabel: (name: string, sample: string) =>
    [name === '' ? 'Pack without a name' : name, sample === '' ? '' : `sample ${sample}`].filter(Boolean).join(' · '),
  countOf: (done: number, all: number) => (all > 0 && done === all ? 'done' : `${done} of ${all}`),
};

/** Why a change is not saved, and what to do. */
export const writeProblems = {
  quotaFull:
    'This phone has no room left for Underlid. What you did is still on the screen. Save everything as a bundle in Keep, free some space, then try again.',
  old: 'A newer Underlid has taken over the records, perhaps in another tab. Load this page again; what was saved is there.',
  closed:
    'The connection to this phone’s records was lost. What you did is still on the screen: try again, or load the page again.',
  refused:
    'Underlid cannot keep this as it stands. It is still on the screen: change it, or copy it elsewhere. Everything else is saved.',
  failed:
    'This phone did not take the change. What you did is still on the screen: try again. If it keeps failing, save everything as a bundle in Keep.',
};
