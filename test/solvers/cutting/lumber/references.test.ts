import { describe, expect, it } from 'vitest'
import { verifyCertificate } from '../../../../src/solvers/cutting/lumber/verifyCertificate.ts'
import { readLumberInstances } from '../../../references/cutting/readInstances.ts'
import { planned } from './solved.ts'

// Where instances and optima come from: test/references/cutting/README.md.
describe('solveLumber on the 30 reference instances', () => {
  it.each(readLumberInstances())('$name: proves the known optimum', ({ job, optimum }) => {
    const answer = planned(job)
    expect(answer.price).toBe(optimum)
    expect(answer.proven).toBe(true)
    expect(answer.bound).toBe(answer.price)
    expect(answer.plainPrice).toBeGreaterThanOrEqual(answer.price)
    const { certificate } = answer
    if (certificate === undefined) throw new Error('no certificate')
    expect(verifyCertificate(job, answer.price, certificate)).toBe(true)
    // One hundredth more is not the least price, and must not be shown to be.
    const more = { ...certificate, priceUnits: certificate.priceUnits + 1 }
    expect(verifyCertificate(job, answer.price + 0.01, more)).toBe(false)
  })
})
