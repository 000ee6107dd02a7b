import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, writeBarcode } from 'zxing-wasm/writer';

const wasmPath = createRequire(import.meta.url).resolve('zxing-wasm/writer/zxing_writer.wasm');
prepareZXingModule({ overrides: { wasmBinary: readFileSync(wasmPath).buffer as ArrayBuffer } });

/** The modules of a code, true where dark, as an encoder of its own makes them. */
export async function codeMatrix(text: string, format: 'QRCode' | 'DataMatrix'): Promise<boolean[][]> {
  const { error, symbol } = await writeBarcode(text, { format, addQuietZones: false });
  if (error !== '') throw new Error(`codeMatrix: ${error}`);
  const { data, width, height } = symbol;
  return Array.from({ length: height }, (_, y) =>
    Array.from({ length: width }, (_, x) => (data[y * width + x] ?? 255) < 128),
  );
}
