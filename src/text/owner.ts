import type { RiskLevel } from '../schema/checklist.ts';
import { RISK_WORDS } from './risk.ts';
import { listOf } from './sheet.ts';

interface OpenItems {
  count: number;
  asked: number;
  safety: number;
  zones: readonly { title: string; count: number }[];
}

/** The owner's page: one page for whoever uses the pack, in words that need no knowledge of cells. */
export const ownerWords = {
  title: 'Before you use this pack',
  overline: (day: string | null) => ['Before you use this pack', ...(day === null ? [] : [day])].join(' · '),
  standingMark: 'owner’s page',
  caution: (day: string | null) =>
    `One sample${day === null ? '' : `, as found on ${day}`}. The whole sheet says more. No certification. Local codes and licensed practice come before anything on this page.`,
  lead: 'One page for whoever uses the pack. It prints on one sheet of paper.',
  toRemedies: 'To the remedies',

  sections: {
    hurts: 'What can hurt',
    yourself: 'What to do yourself',
    workshop: 'What only a workshop does',
    never: 'What never to do',
    untested: 'What was not tested or looked at',
  },
  hazard: ({ title, harm, risk }: { title: string; harm: string; risk: string }) => `${title} (${risk}): ${harm}`,
  risk: (risk: RiskLevel) => `${RISK_WORDS[risk]} risk`,
  riskUpTo: (risk: RiskLevel) => `up to ${RISK_WORDS[risk]} risk, not settled`,
  riskFoundUpTo: (found: RiskLevel, risk: RiskLevel) =>
    `${RISK_WORDS[found]} risk found, up to ${RISK_WORDS[risk]} while items are open`,
  noHazard: 'No way to come to harm was found. That is no promise that there is none.',
  work: (number: number, clears: 'high' | 'serious' | null, text: string) =>
    `${number}. ${clears === null ? 'Would also help' : `Clears a ${RISK_WORDS[clears]} risk`}: ${text}`,
  nothingYourself: 'Nothing that was found can be bettered from outside.',
  nothingWorkshop: 'Nothing that was found asks for a workshop.',
  withheld: 'Nothing puts a pack with such a sign right. Do the steps above.',
  never: [
    'Never open it: its cells stay live, and nothing switches them off.',
    'Never join its posts, or let a tool or wire bridge them.',
    'Never charge it at or below 0\u00a0°C, or by a charger for other batteries.',
    'Never use it again once swollen, smelling, smoking, crushed or soaked.',
    'Should it smoke, touch nothing: everyone out, call the fire service.',
  ],
  open: ({ count, asked, safety, zones }: OpenItems) =>
    `Still open: ${count} of ${asked} items${safety === 0 ? '' : `, ${safety} of them for safety`} (${zones.map(({ title, count: some }) => `${title} ${some}`).join(', ')}).`,
  openSafety: (title: string) => `Safety, still open: ${title}.`,
  shortRoute: (asked: number, all: number) =>
    `A short route was taken: only ${asked} of the checklist’s ${all} items were asked.`,
  unlooked: (count: number) =>
    count === 1 ? 'One item was not looked at singly.' : `${count} items were not looked at singly.`,
  noRun: 'How much energy it gives was not measured.',
  untried: (protections: readonly string[]) =>
    `Not tried far enough to tell: whether it protects itself against ${listOf(protections)}.`,
  protections: {
    overCurrent: 'too much current',
    short: 'a short circuit',
    lowTemperature: 'charging in the cold',
    highTemperature: 'heat',
    lowVoltage: 'being run too low',
    highVoltage: 'being charged too high',
  },
  /** By the side that was tried: the other one. */
  heatUntried: { charge: 'heat under load', load: 'heat while charging' },
  otherSamples: 'Other samples of the same model.',
  cut: (title: string, more: number) => `${title} · and ${more} more on the sheet`,
  allCut: (count: number) => `${count} on the sheet`,
};
