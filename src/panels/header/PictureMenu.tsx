import { useState } from 'react'
import { answersFor } from '../../store/answers.ts'
import { useDesignStore } from '../../store/designStore.ts'
import type { OutsideWork, Picture } from '../actions.ts'
import { say } from '../notice.ts'
import { Menu } from './Menu.tsx'
import { fileName, saveFile } from './saveFile.ts'

const SIZES = [
  { widthPx: 1920, heightPx: 1200, name: 'Picture for a screen, 1920 × 1200' },
  { widthPx: 3840, heightPx: 2400, name: 'Picture for print, 3840 × 2400' },
] as const

/** Pictures of the view and the cut list as a table file. */
export const PictureMenu = ({ outside }: { readonly outside: OutsideWork }) => {
  const [isClear, setClear] = useState(false)
  const name = () => useDesignStore.getState().design.title.name

  const savePicture = async (picture: Omit<Picture, 'ground'>) => {
    try {
      const ground = isClear ? 'transparent' : 'paper'
      const blob = await outside.drawPicture({ ...picture, ground })
      if (blob === undefined) return say('There is no picture of the hive to save in this browser.')
      saveFile(fileName(name(), 'png'), blob)
    } catch (error) {
      say(`The picture could not be made. ${error instanceof Error ? error.message : ''}`)
    }
  }
  const saveCsv = () => {
    const { answer } = answersFor(useDesignStore.getState().design)
    if (answer === undefined) return say('There is no hive to list yet.')
    const csv = outside.buildCutListCsv(answer.design)
    saveFile(fileName(name(), 'csv'), new Blob([csv], { type: 'text/csv' }))
  }
  return (
    <Menu name="Export">
      <h3>The view as a PNG</h3>
      <label className="menu-check">
        <input type="checkbox" checked={isClear} onChange={(e) => setClear(e.target.checked)} />
        Clear ground, to lay over something
      </label>
      {SIZES.map(({ name: title, ...size }) => (
        <button key={title} type="button" onClick={() => savePicture(size)}>
          {title}
        </button>
      ))}
      <h3>Lists</h3>
      <button type="button" onClick={saveCsv}>
        Cut list as CSV
        <small>For a spreadsheet</small>
      </button>
    </Menu>
  )
}
