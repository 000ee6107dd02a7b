import type { RiskLevel } from '../schema/checklist.ts';
import { RISK_WORDS } from './risk.ts';

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
    untested: 'What was not tested',
  },
  hazard: ({ title, harm, risk }: { title: string; harm: string; risk: string }) => `${title} (${risk}): ${harm}`,
  risk: (risk: RiskLevel) => `${RISK_WORDS[risk]} risk`,
  riskUpTo: (risk: RiskLevel) => `up to ${RISK_WORDS[risk]} risk, not settled`,
  noHazard: 'No way to come to harm was found. That is no promise that there is none.',
  nothingYourself: 'Nothing from outside was found that would better it.',
  nothingWorkshop: 'Nothing listed.',
  withheld: 'Nothing puts a pack with such a sign right. Do the steps above.',
  never: [
    'Never open it: its cells stay live, and nothing switches them off.',
    'Never join its posts, or let a tool or wire bridge them.',
    'Never charge it at or below 0\u00a0°C, or by a charger for other batteries.',
    'Never use it again once swollen, smelling, smoking, crushed or soaked.',
    'Should it smoke, touch nothing: everyone out, call the fire service.',
  ],
  open: (count: number, asked: number) => `${count} of ${asked} items are still open.`,
  openSafety: (title: string) => `Safety, still open: ${title}.`,
  notAsked: (count: number) => `${count} items of the checklist were not asked: a short route was taken.`,
  unlooked: (count: number) =>
    count === 1 ? 'One item was not looked at singly.' : `${count} items were not looked at singly.`,
  noRun: 'How much energy it gives was not measured.',
  otherSamples: 'Other samples of the same model.',
  more: (count: number) => (count === 1 ? 'and one more on the sheet' : `and ${count} more on the sheet`),
};
