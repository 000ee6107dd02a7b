/** Said when the app cannot start. */
export const startWords = {
  title: 'Underlid cannot reach its records',
  again: 'Load again',
  problems: {
    unavailable:
      'This browser gives Underlid no place to keep records, perhaps because this is a private window. Open it in an ordinary window.',
    newer:
      'The records on this phone were written by a newer Underlid. Nothing was changed. Load the page again to get the newer version.',
    migrationFailed:
      'The records on this phone could not be brought to the form this version needs. They were set aside unchanged. Load the page again; if it stays so, keep the phone as it is and restore a bundle on another.',
    failed:
      'The records could not be opened. Nothing was changed. Close other tabs of Underlid and load the page again.',
  },
};
