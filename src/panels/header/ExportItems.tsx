import { useState } from 'react'
import { cutListCsv } from '../../sheets/cutListCsv.ts'
import { fileNameFor } from '../../sheets/fileNames.ts'
import { answersFor } from '../../store/answers.ts'
import { useDesignStore } from '../../store/designStore.ts'
import { useViewStore } from '../../store/viewStore.ts'
import type { OutsideWork, PictureWish } from '../actions.ts'
import { say } from '../notice.ts'
import { saveFile } from './saveFile.ts'

const SIZES = [
  { widthPx: 1920, heightPx: 1200, name: 'Picture for a screen, 1920 × 1200' },
  { widthPx: 3840, heightPx: 2400, name: 'Picture for print, 3840 × 2400' },
] as const

/** The lists of the workshop, by the names that they have as tables. */
const LISTS = [
  'shopping list',
  'boards',
  'sheets',
  'set-ups',
  'fasteners',
  'hardware',
  'assembly',
  'labels',
] as const

/** Pictures of the view, and the lists as table files. */
export const ExportItems = ({ outside }: { readonly outside: OutsideWork }) => {
  const [isClear, setClear] = useState(false)
  const name = () => useDesignStore.getState().design.title.name

  const savePicture = async (picture: Omit<PictureWish, 'ground'>) => {
    try {
      const ground = isClear ? 'transparent' : 'paper'
      const blob = await outside.drawPicture({ ...picture, ground })
      if (blob === undefined) return say('There is no picture of the hive to save in this browser.')
      saveFile(fileNameFor(name(), '', 'png'), blob)
    } catch (error) {
      say(`The picture could not be made. ${error instanceof Error ? error.message : ''}`)
    }
  }
  const saveCsv = () => {
    const { answer } = answersFor(useDesignStore.getState().design)
    if (answer === undefined) return say('There is no hive to list yet.')
    const csv = cutListCsv(answer.report.shop, useViewStore.getState().units)
    saveTable(answer.design.title.name, 'cut list', csv)
  }
  const saveList = async (list: (typeof LISTS)[number]) => {
    const { answer } = answersFor(useDesignStore.getState().design)
    if (answer === undefined) return say('There is no hive to list yet.')
    const [{ shopTables }, { wholeAnswerOf }] = await Promise.all([
      import('../../sheets/shopCsv.ts'),
      import('../../store/wholeAnswer.ts'),
    ])
    const tables = shopTables(
      wholeAnswerOf(answer).report.shop,
      useViewStore.getState().units.length,
    )
    const table = tables.find(({ name: listName }) => listName === list)
    if (table === undefined) return say(`The ${list} are not planned yet.`)
    saveTable(answer.design.title.name, list, table.csv)
  }
  return (
    <>
      <p className="menu-heading">The view as a PNG</p>
      <label className="menu-check">
        <input type="checkbox" checked={isClear} onChange={(e) => setClear(e.target.checked)} />
        Clear ground, to lay over something
      </label>
      {SIZES.map(({ name: title, ...size }) => (
        <button key={title} type="button" onClick={() => savePicture(size)}>
          {title}
        </button>
      ))}
      <p className="menu-heading">Lists</p>
      <button type="button" onClick={saveCsv}>
        Cut list as CSV
        <small>For a spreadsheet</small>
      </button>
      <p className="menu-heading">Workshop lists for a spreadsheet</p>
      <div className="menu-pairs">
        {LISTS.map((list) => (
          <button key={list} type="button" onClick={() => saveList(list)}>
            {list.charAt(0).toUpperCase() + list.slice(1)}
          </button>
        ))}
      </div>
    </>
  )
}

const saveTable = (name: string, list: string, csv: string): void => {
  // The mark in front tells spreadsheets that the file is UTF-8.
  const blob = new Blob(['\uFEFF', csv], { type: 'text/csv' })
  saveFile(fileNameFor(name, list, 'csv'), blob)
}
