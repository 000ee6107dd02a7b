import * as v from 'valibot';

/**
 * A hybrid logical clock stamp as sortable text: 15 digits of milliseconds since 1970, 6 digits of counter, 32
 * hexadecimal digits of device id, joined by dots. Plain string order is time order.
 */
export const stampSchema = v.pipe(v.string(), v.regex(/^\d{15}\.\d{6}\.[0-9a-f]{32}$/, 'must be a clock stamp'));
export type Stamp = string;
