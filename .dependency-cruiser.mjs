/**
 * The architecture as two tables. A folder of src/ may import itself and what its line names;
 * `main.tsx` and `App.tsx` alone may see everything. Type-only imports count.
 */
const core = ['units', 'geometry', 'catalog', 'solvers', 'design', 'hive', 'reports']
const mayImport = {
  units: [],
  geometry: ['units'],
  catalog: ['units'],
  solvers: ['units', 'geometry'],
  design: ['units', 'catalog'],
  hive: ['units', 'geometry', 'catalog', 'design'],
  reports: ['units', 'geometry', 'catalog', 'solvers', 'design', 'hive'],
  sheets: core,
  workers: [...core, 'sheets'],
  store: [...core, 'workers'],
  scene: [...core, 'store'],
  panels: [...core, 'sheets', 'store'],
}
/** npm packages that each folder may name; a folder not listed may name none. */
const mayUse = {
  design: ['zod', 'fflate'],
  reports: ['zod'],
  sheets: ['pdfkit', 'fflate'],
  store: ['zustand', 'react'],
  scene: ['three', 'react', '@react-three/fiber'],
  panels: ['react', 'react-dom', '@fontsource/ibm-plex-sans'],
  workers: ['@expo-google-fonts/ibm-plex-sans'],
}

const layers = Object.entries(mayImport).map(([folder, allowed]) => ({
  name: `layer-${folder}`,
  severity: 'error',
  comment: `${folder}/ may import only: ${[folder, ...allowed].join(', ')}`,
  from: { path: `^src/${folder}/` },
  to: { path: '^src/', pathNot: `^src/(${[folder, ...allowed].join('|')})/` },
}))

const packages = Object.keys(mayImport).map((folder) => {
  const allowed = (mayUse[folder] ?? []).join('|')
  return {
    name: `packages-${folder}`,
    severity: 'error',
    comment: `${folder}/ may use only these packages: ${allowed || 'none'}`,
    from: { path: `^src/${folder}/` },
    to: {
      dependencyTypes: ['npm', 'npm-dev', 'npm-no-pkg', 'unknown', 'core'],
      ...(allowed && { pathNot: `(^|node_modules/)(@types/)?(${allowed})(/|$)` }),
    },
  }
})

export default {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'resolvable',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '\\?(url|worker)' },
    },
    {
      name: 'src-not-to-test',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^(test|e2e|scripts)/' },
    },
    ...layers,
    ...packages,
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.js'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default'],
    },
  },
}
