import { expect, it } from 'vitest';
import { RISK_SCALE_LINES, riskLine } from '../../src/text/risk.ts';

it('says risk, severity with its numeral and likelihood with its letter', () => {
  expect(riskLine({ severity: 2, likelihood: 'C', risk: 'serious' })).toBe(
    'serious risk · severity II critical · likelihood C occasional',
  );
});

it('says nothing of a finding without a hazard', () => {
  expect(riskLine({ severity: null, likelihood: null, risk: null })).toBeNull();
});

it('says that the scale is tailored and claims no compliance with MIL-STD-882E', () => {
  expect(RISK_SCALE_LINES.join(' ')).toMatch(/tailored.*no claim of compliance with MIL-STD-882E/);
});
