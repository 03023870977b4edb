import { useOpenStore } from '../store/openDesign.ts'
import { say, useNotice } from './notice.ts'

/** Shows the message that stands until the person has read it. */
export const NoticeBar = () => {
  const notice = useNotice()
  const opened = useOpenStore((s) => s.message)
  const dismiss = useOpenStore((s) => s.dismissMessage)
  const text = [opened?.text, notice].filter(Boolean).join('\n')
  const close = () => {
    dismiss()
    say('')
  }
  return (
    <div role="status">
      {text !== '' && (
        <div className="notice">
          <span>{text}</span>
          <button type="button" className="plain" onClick={close}>
            Close
          </button>
        </div>
      )}
    </div>
  )
}
