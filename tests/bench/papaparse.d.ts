/** The package brings no types; this is all of it that is used. */
declare module 'papaparse' {
  const papa: { parse(text: string, options: { header: boolean; skipEmptyLines: boolean }): { data: string[][] } };
  export default papa;
}
