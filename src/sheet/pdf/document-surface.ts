import type { jsPDF } from 'jspdf';
import type { PathStep } from '../../drawing/display-list.ts';
import type { PdfStroke, PdfStyle, PdfSurface, PdfText } from '../../drawing/paint-pdf.ts';
import { FONT_NAME, LACKING, type Typeface } from './typeface.ts';

/** The drawing layer's page, on jsPDF in points. Images are the JPEG bytes as they are, by photo id. */
export function documentSurface(
  doc: jsPDF,
  typeface: Typeface,
  pictures: ReadonlyMap<string, Uint8Array | string>,
): PdfSurface {
  return {
    polyline(points, stroke) {
      trace(
        doc,
        points.map(([x, y], place): PathStep => [place === 0 ? 'M' : 'L', x, y]),
        { stroke, fill: null },
      );
    },
    path(steps, style) {
      trace(doc, steps, style);
    },
    box({ x, y, width, height, radius }, style) {
      const how = begin(doc, style);
      if (how === null) return;
      if (radius > 0) doc.roundedRect(x, y, width, height, radius, radius, how);
      else doc.rect(x, y, width, height, how);
    },
    ellipse({ cx, cy, rx, ry }, style) {
      const how = begin(doc, style);
      if (how !== null) doc.ellipse(cx, cy, rx, ry, how);
    },
    text(mark) {
      writeText(doc, typeface, mark);
    },
    image(photoId, { x, y, width, height }) {
      const bytes = pictures.get(photoId);
      if (!(bytes instanceof Uint8Array))
        throw new RangeError(`image: bytes must be loaded first, got photo ${photoId}`);
      doc.addImage(bytes, 'JPEG', x, y, width, height, photoId, 'NONE');
    },
  };
}

/** Sets stroke and fill; says which of them jsPDF is to paint, null for neither. */
function begin(doc: jsPDF, { stroke, fill }: PdfStyle): 'S' | 'F' | 'FD' | null {
  if (stroke !== null) setStroke(doc, stroke);
  if (fill !== null) doc.setFillColor(fill);
  if (stroke === null) return fill === null ? null : 'F';
  return fill === null ? 'S' : 'FD';
}

function setStroke(doc: jsPDF, { colour, width, dash, cap, join }: PdfStroke): void {
  doc.setDrawColor(colour);
  doc.setLineWidth(width);
  doc.setLineDashPattern(dash, 0);
  doc.setLineCap(cap);
  doc.setLineJoin(join);
}

function trace(doc: jsPDF, steps: readonly PathStep[], style: PdfStyle): void {
  const how = begin(doc, style);
  if (how === null) return;
  for (const step of steps) {
    if (step[0] === 'M') doc.moveTo(step[1], step[2]);
    else if (step[0] === 'L') doc.lineTo(step[1], step[2]);
    else if (step[0] === 'C') doc.curveTo(step[1], step[2], step[3], step[4], step[5], step[6]);
    else doc.close();
  }
  if (how === 'S') doc.stroke();
  else if (how === 'F') doc.fill();
  else doc.fillStroke();
}

function writeText(doc: jsPDF, typeface: Typeface, mark: PdfText): void {
  const text = typeface.printable(mark.text);
  const width = typeface.widthOf(text, mark);
  const x = mark.x - (mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? width / 2 : width);
  doc.setFont(FONT_NAME[mark.weight], 'normal');
  doc.setFontSize(mark.size);
  if (mark.halo !== null) {
    setStroke(doc, { colour: mark.halo.colour, width: mark.halo.width, dash: [], cap: 'round', join: 'round' });
    // An artifact: readers that go by marked content do not read the words twice.
    writeOperator(doc, '/Artifact BMC');
    doc.text(text, x, mark.y, { renderingMode: 'stroke' });
    writeOperator(doc, 'EMC');
  }
  doc.setTextColor(mark.colour);
  doc.text(text, x, mark.y);
  drawBoxes(doc, typeface, { ...mark, text, x });
}

/** jsPDF has the operation, its types do not. */
function writeOperator(doc: jsPDF, operator: string): void {
  (doc.internal as unknown as { write(text: string): void }).write(operator);
}

/** The outline of every □: its glyph in the file is blank. */
function drawBoxes(doc: jsPDF, typeface: Typeface, { text, x, y, size, weight, colour }: PdfText): void {
  for (let at = text.indexOf(LACKING); at !== -1; at = text.indexOf(LACKING, at + 1)) {
    const left = x + typeface.widthOf(text.slice(0, at), { size, weight });
    const side = 0.5 * size;
    setStroke(doc, { colour, width: 0.05 * size, dash: [], cap: 'butt', join: 'miter' });
    doc.rect(left + 0.05 * size, y - 0.55 * size, side, side, 'S');
  }
}
