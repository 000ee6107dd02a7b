import { describe, expect, it } from 'vitest';
import { fuseBlocks } from '../../../src/sheet/model/live-tests/fuse-blocks.ts';
import { leadBlocks } from '../../../src/sheet/model/live-tests/lead-blocks.ts';
import { overcurrentBlocks } from '../../../src/sheet/model/live-tests/overcurrent-blocks.ts';
import { contextOf, idOf, mainLead, PACK_300, trip } from './bench-tests.ts';
import { MANY_NAMEPLATE, MANY_TESTS } from './many-tests.ts';
import { plain, plots, result, textsOf } from './texts-of.ts';

// Facts of the trade: common practice, no source.
describe('a pack that opens at once at 400 A and after some seconds at 220 A', () => {
  const context = contextOf({
    trips: [
      trip(1, { currentA: 400, heldForS: 0.1, opened: true }),
      trip(2, { currentA: 220, heldForS: 8, opened: true, recovery: 'loadOff', recoveredAfterS: 30 }),
    ],
  });

  it('is instant + delayed', () => {
    expect(result(overcurrentBlocks(context), 'overcurrent').value).toBe('instant + delayed');
  });

  it('tells each trip with its share of the claim and how the pack came back', () => {
    const blocks = overcurrentBlocks(context);
    expect(result(blocks, `trip-${idOf(1)}`)).toMatchObject({
      value: '400 A · opened after 0.1 s',
      rows: ['Of the promised continuous current: 2 ×'],
    });
    expect(result(blocks, `trip-${idOf(2)}`)).toMatchObject({
      value: '220 A · opened after 8 s',
      rows: ['Of the promised continuous current: 1.1 ×', 'Came back: with the load taken off, after 30 s'],
    });
  });

  it('draws both, and says so to a reader who cannot see it', () => {
    const [plot] = plots(overcurrentBlocks(context));
    expect(plain(plot?.drawing.alt ?? '')).toBe(
      'Time against current, both by decades. 400 A: opened after 0.1 s; 220 A: opened after 8 s.',
    );
    expect(textsOf(plot?.drawing).map(plain)).toEqual(expect.arrayContaining(['400 A', '220 A', 'continuous']));
  });
});

describe('a pack that carries 800 A until heat opens it', () => {
  // 35 mm² of copper, XLPE, from 90 °C: k = 143 A·s½/mm² (BS 7671 Table 43.1), t = (143 · 35 ÷ 800)² = 39.1 s;
  // unrounded k of 142.9: 39.1 s.
  const context = contextOf({
    trips: [trip(1, { currentA: 800, heldForS: 94, opened: true, heatSeen: true, coolingNeeded: true })],
    leads: [mainLead(1), mainLead(2, { printedMm2: 50 })],
  });

  it('is heat only, with the time its weakest main lead stands the current, and a fuse as the remedy', () => {
    const verdict = result(overcurrentBlocks(context), 'overcurrent');
    expect(verdict.value).toBe('heat only: nothing watches the current');
    expect(verdict.rows).toContain('Ended by heat alone: 94 s at 800 A');
    expect(verdict.rows).toContain(
      'Main leads stand the highest current: 800 A for at least 39.1 s (Lead 1, from 90 °C, as the insulation is marked)',
    );
    expect(verdict.rows).toContain('What to do: a fuse at the terminal, sized by the fuse advice');
    expect(verdict.formula).toContain('t = (k · S ÷ I)²');
    expect(verdict.sources).toContain('BS 7671 434.5.2 and Table 43.1; IEC 60364-5-54 Annex A');
  });

  it('advises 250 A: 1.25 × 200 A at least, 150 % of the 180 A its 35 mm² leads bear at most', () => {
    // 33 CFR 183.425 Table 5: AWG 2, 90 °C insulation: 180 A.
    const fuse = result(fuseBlocks(context), 'fuse');
    expect(fuse.value).toBe('250 A, 14.4 V DC or more');
    expect(fuse.rows).toEqual([
      'At least: 250 A (1.25 × the continuous current)',
      'At most: 270 A (150 % of what the main leads are allowed)',
      'Rated for DC of: 14.4 V or more',
      'Interrupts: 20 kA or more (the fault current is not known, or only from below)',
      'Who does it: local codes and a licensed practitioner come first',
    ]);
    expect(fuse.sources[0]).toContain('NEC 210.20(A)');
  });

  it('draws the leads dashed beyond 5 s and the fuse with the kind whose figures they are', () => {
    const [plot] = plots(overcurrentBlocks(context));
    const texts = textsOf(plot?.drawing).map(plain);
    expect(texts).toContain('lead, at least');
    expect(texts).toContain('250 A fuse, 32 V bolt-in');
    expect(texts).toContain('Lead 1 stands');
    expect(plain(plot?.caption ?? '')).toContain('by the figures of 32 V bolt-in fuses');
    expect(result(overcurrentBlocks(context), 'overcurrent').sources).toContain(
      'times of a 32 V blade and bolt-in fuse: one fuse maker’s data sheet',
    );
  });
});

describe('what cannot be told of over-current', () => {
  it('says that 100 A held for 60 s under a claim of 200 A was not far enough', () => {
    const context = contextOf({ trips: [trip(1, { currentA: 100, heldForS: 60, opened: false })] });
    const verdict = result(overcurrentBlocks(context), 'overcurrent');
    expect(verdict.value).toBe('not tested far enough');
    expect(verdict.rows).toContain('Highest carried without opening: 100 A for 60 s');
    expect(verdict.rows.join(' ')).toContain('Still needed: “None seen” takes 1.5 ×');
    expect(verdict.rows.join(' ')).toContain('Main leads stand the highest current: not known');
  });

  it('says nothing before a trip was tried', () => {
    expect(overcurrentBlocks(contextOf({}))).toEqual([]);
    expect(fuseBlocks(contextOf({}))).toEqual([]);
  });
});

describe('fuse advice', () => {
  it('says that nothing fits where 16 mm² must carry 200 A: 250 A at least, 150 % of 100 A at most', () => {
    // 33 CFR 183.425 Table 5, 90 °C: 16 mm² lies between AWG 6 (13.3 mm², 100 A) and AWG 4 (21.2 mm²).
    const fuse = result(fuseBlocks(contextOf({ leads: [mainLead(1, { printedMm2: 16 })] })), 'fuse');
    expect(fuse.value).toBe('no standard size fits');
    expect(fuse.rows).toContain(
      'Why: a fuse for the continuous current is 250 A or more, but the leads bear no more than 150 A: larger leads, or less current',
    );
  });

  it('asks for 17.9 kA, never less than the 17.805 kA of four cells of 0.205 mΩ', () => {
    // 4 · 3.65 V ÷ (4 · 0.205 mΩ) = 17 805 A, an upper estimate.
    const fuse = result(fuseBlocks(contextOf(MANY_TESTS, MANY_NAMEPLATE)), 'fuse');
    expect(fuse.rows).toContain('Interrupts: 17.9 kA or more');
    expect(fuse.rows).toContain('Fault current: 17.9 kA (an upper estimate, cells only)');
  });

  it('names 3.6 kA as a lower estimate, from 1 mΩ of DC resistance a cell, and asks for 20 kA', () => {
    // 3.65 V ÷ 1 mΩ = 3650 A.
    const cells = [1, 2, 3, 4].map((number) => ({ number, resistanceMohm: 1 }));
    const cellSets = [
      { id: idOf(1), made: mainLead(1).made, state: 'rested' as const, resistanceBy: 'dc' as const, cells },
    ];
    const fuse = result(fuseBlocks(contextOf({ leads: [mainLead(1)], cellSets })), 'fuse');
    expect(fuse.rows).toContain('Fault current: 3.6 kA (a lower estimate, from DC resistance)');
    expect(fuse.rows.join(' ')).toContain('Interrupts: 20 kA or more');
  });

  it('is drawn as class C above 32 V, and only with the time that was read: 1.6 × within 4 h', () => {
    // Excerpt of UL 248-2:2019: 201–1200 A open at 160 % within 240 min; no least time is known.
    const plate = { ...PACK_300, nominalVoltageV: 38.4, cellsInSeries: 12, chargeVoltageV: 43.2 };
    const context = contextOf(
      { leads: [mainLead(1)], trips: [trip(1, { currentA: 300, heldForS: 2, opened: true })] },
      plate,
    );
    const [plot] = plots(overcurrentBlocks(context));
    expect(textsOf(plot?.drawing).map(plain)).toContain('250 A fuse, class C');
  });

  it('names what is still needed', () => {
    const { continuousCurrentA: _, ...plate } = PACK_300;
    const fuse = result(fuseBlocks(contextOf({ leads: [mainLead(1, { way: 'overInsulation' })] }, plate)), 'fuse');
    expect(fuse.value).toBe('cannot be told yet');
    expect(fuse.rows[0]).toBe(
      'Still needed: the continuous current on the nameplate; section and temperature mark of the insulation of every main lead',
    );
    expect(fuse.formula).toBeNull();
  });
});

describe('leads', () => {
  it('take bare strands of 8.2 mm for 36.97–42.25 mm² and count the 180 A of the least of it', () => {
    // π/4 · 8.2² · (0.70 … 0.80) = 36.97 … 42.25; Table 5 at 90 °C: 180 A up to AWG 1 (42.4 mm²) less half a per cent.
    const { printedMm2: _, ...strands } = mainLead(1, { way: 'bareStrands', diameterMm: 8.2, rulerId: idOf(9) });
    const lead = result(leadBlocks(contextOf({ leads: [strands] })), `lead-${idOf(1)}`);
    expect(lead.value).toBe('36.97–42.25 mm²');
    expect(lead.rows).toContain('Known by: bare strands, 8.2 mm across (by the photo ruler)');
    expect(lead.rows).toContain('Allowed continuously: 180–210 A (180 A counts: the least it may be)');
    expect(lead.formula).toContain('S = π ÷ 4 · d² · (0.75 ± 0.05)');
  });

  it('add the ± 0.4 mm of a diameter from a photo, as long as it is that diameter', () => {
    // Relative half-widths 0.05 ÷ 0.75 and 2 · 0.4 ÷ 8.2, as squares: 11.81 %; 39.61 mm² ± 4.68.
    const { printedMm2: _, ...strands } = mainLead(1, { way: 'bareStrands', diameterMm: 8.2, rulerId: idOf(9) });
    const from = (mm: number) =>
      result(leadBlocks(contextOf({ leads: [{ ...strands, byPhoto: { mm, plusMinusMm: 0.4 } }] })), `lead-${idOf(1)}`);
    expect(from(8.2).value).toBe('34.93–44.29 mm²');
    expect(from(8.2).rows).toContain('Known by: bare strands, 8.2 mm across (by the photo ruler, ± 0.4 mm)');
    expect(from(8).value).toBe('36.97–42.25 mm²');
    expect(from(8).rows).toContain('Known by: bare strands, 8.2 mm across (by the photo ruler)');
  });

  it('give no section and no current for a diameter over the insulation', () => {
    const { printedMm2: _, ...over } = mainLead(1, { way: 'overInsulation', diameterMm: 11 });
    const lead = result(leadBlocks(contextOf({ leads: [over] })), `lead-${idOf(1)}`);
    expect(lead.value).toBe('section not known');
    expect(lead.rows).toContain('Why: a diameter over the insulation tells no section');
    expect(lead.rows.join(' ')).not.toContain('Allowed continuously');
    expect(lead.formula).toBeNull();
  });

  it('count one of two alone where they are not noted as equal: 180 A, not 360 A', () => {
    const lead = result(leadBlocks(contextOf({ leads: [mainLead(1, { count: 2 })] })), `lead-${idOf(1)}`);
    expect(lead.title).toBe('Lead 1 · main lead, 2 in parallel');
    expect(lead.rows).toContain('Allowed continuously: 180 A');
    expect(lead.rows).toContain('Counted: one alone: not noted as equal, so one may carry all');
  });

  it('fall short of 200 A promised with 180 A, not of 180 A; where they are 180–210 A they may', () => {
    const rows = (given: Parameters<typeof mainLead>[1], continuousCurrentA: number) =>
      result(
        leadBlocks(contextOf({ leads: [mainLead(1, given)] }, { ...PACK_300, continuousCurrentA })),
        `lead-${idOf(1)}`,
      ).rows.filter((row) => row.toLowerCase().includes('fall'));
    expect(rows({}, 200)).toEqual(['Falls short of: 200 A promised']);
    expect(rows({}, 180)).toEqual([]);
    expect(rows({ place: 'sense' }, 200)).toEqual([]);
    const strands = { way: 'bareStrands', diameterMm: 8.2 } as const;
    expect(rows(strands, 200)).toEqual(['May fall short of: 200 A promised']);
    expect(rows(strands, 211)).toEqual(['Falls short of: 211 A promised']);
    const { continuousCurrentA: _, ...unclaimed } = PACK_300;
    const without = result(leadBlocks(contextOf({ leads: [mainLead(1)] }, unclaimed)), `lead-${idOf(1)}`);
    expect(without.rows.join(' ')).not.toMatch(/fall/i);
  });

  it('say of a bar of 20 × 3 mm its 60 mm² and that no table gives its current', () => {
    const bar = {
      id: idOf(1),
      made: mainLead(1).made,
      place: 'link' as const,
      form: 'bar' as const,
      widthMm: 20,
      thicknessMm: 3,
      metal: 'copper' as const,
    };
    const lead = result(leadBlocks(contextOf({ leads: [bar] })), `lead-${idOf(1)}`);
    expect(lead.value).toBe('60 mm²');
    expect(lead.rows).toContain('At the promised current: 3.33 A/mm²');
    expect(lead.rows).toContain('Allowed continuously: not known (no table of ours gives it for a bar)');
  });

  it('have no line of withstand where they begin as hot as they may get, and the trips are still drawn', () => {
    const context = contextOf({
      leads: [mainLead(1, { insulationDegC: 260 })],
      trips: [trip(1, { currentA: 400, heldForS: 2, opened: true })],
    });
    const [plot] = plots(overcurrentBlocks(context));
    expect(textsOf(plot?.drawing).map(plain)).toContain('400 A');
    expect(textsOf(plot?.drawing).join(' ')).not.toContain('stands');
  });

  it('are named in the plot by number alone, whole on a phone, whatever the tester called them', () => {
    const label = 'Main leads, both starter and house, as delivered';
    const context = contextOf({
      leads: [mainLead(1, { label })],
      trips: [trip(1, { currentA: 400, heldForS: 2, opened: true })],
    });
    const [plot] = plots(overcurrentBlocks(context));
    expect(textsOf(plot?.drawing).map(plain)).toContain('Lead 1 stands');
    expect(plain(plot?.drawing.alt ?? '')).toContain(`Lead 1 · ${label} stands 400 A for`);
  });

  it('are not said to melt where that takes longer than the 10 s the equation holds to', () => {
    const context = contextOf({ leads: [mainLead(1)], trips: [trip(1, { currentA: 400, heldForS: 1, opened: true })] });
    expect(result(leadBlocks(context), `lead-${idOf(1)}`).rows.join(' ')).not.toContain('melts');
  });

  it('melt at 5000 A before 3 s, an upper bound by Onderdonk, and stand it for less', () => {
    const context = contextOf({
      leads: [mainLead(1)],
      trips: [trip(1, { currentA: 5000, heldForS: 1, opened: true })],
    });
    const { rows } = result(leadBlocks(context), `lead-${idOf(1)}`);
    // A = 35 mm² = 69 073 circular mil; t = A² · log₁₀(1 + 993/324) ÷ (33 · 5000²) = 3.52 s. Adiabatic: (142.9 · 35 ÷ 5000)² = 1 s.
    expect(rows).toContain('Its copper melts after: 3.52 s (an upper bound: no heat lost, whatever covers it)');
    expect(rows.join(' ')).toContain('Stands the highest current tried: 5000 A for 1 s');
  });
});
