/**
 * Type under which the bytes of every log are kept. What a phone calls a picked file differs and tells nothing of its
 * columns; and a type that came in with a bundle could turn text into a page that runs.
 */
export const LOG_TYPE = 'text/plain';
