/** What a letter or word in a state column says; 0 where it says nothing. */
export const STATE = { none: 0, out: 1, in: 2, rest: 3 } as const;

const OUT = /^(d|dis|dch|dchg|out|entl)$|dis-?charg|dchg|discha|entlad|d[ée]charg|descarg|scaric/;
const IN = /^(c|ch|chg|cha|in|lad)$|charg|chg|laden|ladung|carga|carica/;
const REST = /^(r|i|p|s|o|rst|ocv)$|rest|idle|paus|ocv|ruhe|stand|open|stop|off|halt|wait|zero/;

export function stateOf(text: string): number {
  const word = text
    .trim()
    .toLowerCase()
    .replace(/[_\s]+/g, ' ');
  if (OUT.test(word)) return STATE.out;
  if (IN.test(word)) return STATE.in;
  return REST.test(word) ? STATE.rest : STATE.none;
}
