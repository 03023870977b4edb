import { formatDesign } from '../../design/formatDesign.ts'
import { useDesignStore } from '../../store/designStore.ts'

/** Hands a file to the person. Must be called straight from a click, or some browsers refuse it. */
export const saveFile = (name: string, blob: Blob): void => {
  const url = URL.createObjectURL(blob)
  const link = document.createElement('a')
  link.href = url
  link.download = name
  document.body.append(link)
  link.click()
  link.remove()
  // Some browsers start to read the file only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(url), 60_000)
}

/** Saves the present design as a file that can be opened again. */
export const saveDesignFile = (): void => {
  const { design } = useDesignStore.getState()
  const blob = new Blob([formatDesign(design)], { type: 'application/json' })
  saveFile(fileName(design.title.name, 'json'), blob)
}

/** A file name from the hive's name: `quarry-lane-long-hive.json`. */
export const fileName = (hiveName: string, ending: string): string => {
  const plain = hiveName
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
  return `${plain || 'hive'}.${ending}`
}
