import type { Part } from '../../../hive/part.ts'
import { type Member, memberOf } from './contact.ts'

/** All parts but the frames, as fasteners see them, in the hive's order. */
export interface Members {
  readonly all: readonly Member[]
  /** By what stands before the slash of the id: `front-wall`, `lid`, `ring`. */
  readonly in: (assembly: string) => readonly Member[]
  readonly find: (id: string) => Member | undefined
  /** Those of an assembly whose id goes on like this after the slash. */
  readonly named: (assembly: string, ...starts: readonly string[]) => readonly Member[]
}

/** Sorts the parts once. Linear in the parts; frames are passed over. */
export const membersOf = (parts: readonly Part[]): Members => {
  const all: Member[] = []
  const byAssembly = new Map<string, Member[]>()
  const byId = new Map<string, Member>()
  for (const part of parts) {
    if (part.group === 'frames') continue
    const member = memberOf(part)
    all.push(member)
    byId.set(part.id, member)
    const assembly = part.id.slice(0, part.id.indexOf('/'))
    const known = byAssembly.get(assembly)
    if (known === undefined) byAssembly.set(assembly, [member])
    else known.push(member)
  }
  const inAssembly = (assembly: string) => byAssembly.get(assembly) ?? NONE
  return {
    all,
    in: inAssembly,
    find: (id) => byId.get(id),
    named: (assembly, ...starts) =>
      inAssembly(assembly).filter(({ part }) =>
        starts.some((start) => part.id.startsWith(start, assembly.length + 1)),
      ),
  }
}

const NONE: readonly Member[] = []
