import { useEffect, useState } from 'react'

/** The value as it was when it last stood still for so long. */
export const useSettled = <T>(value: T, quietMs: number): T => {
  const [settled, setSettled] = useState(value)
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), quietMs)
    return () => clearTimeout(timer)
  }, [value, quietMs])
  return settled
}
