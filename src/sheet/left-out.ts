/** Stands in for jsPDF's optional HTML and SVG renderers, which the sheet does not use (see vite.config.ts). */
export default null;
