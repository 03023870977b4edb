/**
 * `npm test`: installs what is missing, then runs every check in order and stops at the first that
 * fails. Each check is the npm script `check:NAME` and runs alone by that name. The last line counts
 * tests, with each check that is not a test runner as one.
 */
import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { ensureInstalled, ROOT, runNpm } from './install.mjs'

const CHECKS = ['types', 'core', 'lint', 'deps', 'dead', 'unit', 'build', 'size', 'e2e']

const vitestCounts = (results) => ({
  passed: results.numPassedTests,
  failed: results.numFailedTests,
})

const playwrightCounts = ({ stats }) => ({
  passed: stats.expected + stats.flaky,
  failed: stats.unexpected,
})

/** The test runners leave their results here. */
const COUNTS = {
  unit: { file: 'test-results/unit.json', read: vitestCounts },
  e2e: { file: 'test-results/e2e.json', read: playwrightCounts },
}

const readCounts = ({ file, read }) => {
  try {
    return read(JSON.parse(readFileSync(join(ROOT, file), 'utf8')))
  } catch {
    return { passed: 0, failed: 0 }
  }
}

const runCheck = (name) => {
  const counts = COUNTS[name]
  // A count that an earlier run left must never be taken for this one's.
  if (counts) rmSync(join(ROOT, counts.file), { force: true })
  console.log(`\n--- ${name} ---`)
  const start = performance.now()
  const isGood = runNpm(['run', '--silent', `check:${name}`]) === 0
  const seconds = (performance.now() - start) / 1000
  const { passed, failed } = counts ? readCounts(counts) : { passed: Number(isGood), failed: 0 }
  // A runner that fails without a failing test (it broke, or found none) still counts as a failure.
  return { name, seconds, passed, failed: isGood ? failed : Math.max(1, failed), isGood }
}

const runAll = () => {
  const done = []
  for (const name of CHECKS) {
    done.push(runCheck(name))
    if (!done.at(-1).isGood) break
  }
  return done
}

const printSummary = (done) => {
  console.log('\n--- summary ---')
  for (const { name, seconds, passed, failed, isGood } of done) {
    const counts = failed > 0 ? `${passed} passed, ${failed} failed` : `${passed} passed`
    console.log(
      `${isGood ? 'ok  ' : 'FAIL'} ${name.padEnd(6)} ${seconds.toFixed(1).padStart(6)} s  ${counts}`,
    )
  }
  for (const name of CHECKS.slice(done.length))
    console.log(`     ${name.padEnd(6)}         not run`)
}

const sum = (values) => values.reduce((total, value) => total + value, 0)

let done = []
try {
  ensureInstalled()
  done = runAll()
  printSummary(done)
} catch (error) {
  console.error(error.message)
  done = [...done, { passed: 0, failed: 1 }]
}
const failed = sum(done.map((check) => check.failed))
process.exitCode = failed > 0 ? 1 : 0
console.log(`${sum(done.map((check) => check.passed))} passed, ${failed} failed`)
