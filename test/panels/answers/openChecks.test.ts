import { describe, expect, it } from 'vitest'
import { byUrgency, openChecks } from '../../../src/panels/answers/openChecks.ts'
import type { Check } from '../../../src/reports/checks/runChecks.ts'

const check = (change: Partial<Check>): Check => ({
  id: 'test',
  title: 'Test',
  verdict: 'ok',
  quantity: 'length',
  measured: 8,
  limits: {},
  why: '',
  source: '',
  fix: undefined,
  partIds: [],
  ...change,
})

describe('byUrgency', () => {
  it('puts what needs work first and keeps the order of equals', () => {
    const checks = [
      check({ id: 'a' }),
      check({ id: 'b', verdict: 'look' }),
      check({ id: 'c', verdict: 'fix' }),
      check({ id: 'd', verdict: 'look' }),
    ]
    expect(byUrgency(checks).map((c) => c.id)).toEqual(['c', 'b', 'd', 'a'])
    expect(openChecks(checks).map((c) => c.id)).toEqual(['b', 'c', 'd'])
  })
})
