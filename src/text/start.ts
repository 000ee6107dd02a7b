/** Said when the app cannot start. */
export const startWords = {
  title: 'Underlid cannot reach its records',
  again: 'Load again',
  loadNewer: 'Use the newer version',
  problems: {
    unavailable:
      'This browser gives Underlid no place to keep records, perhaps because this is a private window. Open it in an ordinary window.',
    newer:
      'The records on this phone were written by a newer Underlid than this one. They were not touched. Load the page again, with a signal, to get the newer version.',
    migrationFailed:
      'The records on this phone could not be brought to the form this version needs. They were left exactly as they were, and nothing will be written over them. A later version may open them: load the page again when there is one.',
    failed:
      'The records could not be opened. Nothing was changed. Close other tabs of Underlid and load the page again.',
  },
  /** Where the records are there and cannot be opened: all entries as they lie, without photos. */
  raw: 'Save the records as they are',
  rawHint:
    'One JSON file with every entry and every checklist on this phone, exactly as stored; photos and logs stay where they are. Keep it: it can be read even if nothing else can.',
  rawBusy: 'Reading the records …',
  rawFailed: 'The records could not be read either. Nothing was changed.',
  rawSaved: (entryCount: number) => `${entryCount} entries handed over as a file.`,
};
