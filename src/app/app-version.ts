declare const __APP_VERSION__: string;

/** From package.json, put in when the app is built. */
export const APP_VERSION = __APP_VERSION__;
