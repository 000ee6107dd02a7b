// npm start: builds the app, serves dist/ and prints the address. Ends with its server when it is told to end.
import { build, preview } from 'vite';

await build({ logLevel: 'warn' });
const server = await preview({
  preview: { port: Number(process.env.PORT ?? 4180), host: process.env.HOST ?? 'localhost' },
});
console.log(`
Underlid is ready at ${server.resolvedUrls.local[0]}
On its first screen, “Lay out the demo bench” brings two invented packs to look at.
A phone needs HTTPS to install it: see “Put it on a phone” in README.md. Ctrl-C ends the server.
`);

for (const signal of ['SIGINT', 'SIGTERM']) {
  process.on(signal, () => {
    server.close().finally(() => process.exit(0));
  });
}
