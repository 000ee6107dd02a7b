import { readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

/**
 * The scripts and styles that index.html loads before anything lazy: its own tags and preloads, and what those
 * scripts import statically, followed through.
 */
export function firstLoad(folder) {
  const html = readFileSync(join(folder, 'index.html'), 'utf8');
  const tags = [...html.matchAll(/(?:src|href)="\.?\/?(assets\/[^"]+\.(?:js|css))"/g)].map((match) => match[1]);
  const js = new Set();
  const queue = tags.filter((name) => name.endsWith('.js'));
  for (let name = queue.pop(); name !== undefined; name = queue.pop()) {
    if (js.has(name)) continue;
    js.add(name);
    const text = readFileSync(join(folder, name), 'utf8');
    for (const match of text.matchAll(
      /(?:^|[;}\s])(?:import|export)\s*(?:[\w*{}\s,$]+from\s*)?["'](\.[^"']+\.js)["']/g,
    )) {
      queue.push(normalize(join(dirname(name), match[1])));
    }
  }
  return { js: [...js].sort(), css: tags.filter((name) => name.endsWith('.css')).sort() };
}
